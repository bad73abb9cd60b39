"""The take-off of the alcove, the niche and the panelled wall, held against sums on paper."""

from __future__ import annotations

from functools import cache

import pytest

from plumbrule import shipped
from plumbrule.facts.purchase_sticks import StickJob
from plumbrule.facts.takeoff import Takeoff, take_off
from plumbrule.plan.read import plan_from_file, read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.rulebook.file import ExampleFile

PLANS = shipped.folder("plans")
INCH = 25.4
FLUID_OUNCE = 29573.5295625


@cache
def taken(name: str) -> Takeoff:
    return take_off(plan_from_file(PLANS / f"{name}.yaml"))


def changed(name: str, *changes: dict) -> Takeoff:
    file = ExampleFile.model_validate({"plan": name, "at": "/purchase", "patch": list(changes)})
    return take_off(read_plan(patched(read_file(PLANS / f"{name}.yaml"), file.patch)))


def need(takeoff: Takeoff, label: str):
    (row,) = [row for row in takeoff.needs if row.label == label]
    return row


def job(takeoff: Takeoff, name: str) -> StickJob:
    (found,) = [one for one in takeoff.sticks if one.line.name == name]
    return found


def inches(values) -> list[float]:
    return [round(value / INCH, 6) for value in values]


# The marks are written as comments in the plans: 2, 14-1/2 … in the alcove, 3, 19 … on the ledge.
@pytest.mark.parametrize(
    ("plan", "part", "letter", "from_heel", "marks", "to_right"),
    [
        ("alcove-seat", "seat-back", "W", 1.125, [2, 14.5, 30.5, 46.5, 57.5], 2),
        ("alcove-seat", "seat-back", "V", 2.5, [2, 14.5, 30.5, 46.5, 57.5], 2),
        ("alcove-seat", "seat-left", "W", 1.125, [1.25, 7.125, 13], 3),
        ("alcove-seat", "seat-pier", "V", 2.375, [3, 8.875, 14.75], 1.25),
        ("display-shelf", "ledge-back", "W", 1.25, [3, 19, 35, 51, 67], 3),
        ("display-shelf", "ledge-back", "S", 2, [5, 17, 29, 41, 53, 65], 5),
    ],
)
def test_marks_from_the_left_end(plan, part, letter, from_heel, marks, to_right):
    (sheet,) = [one for one in taken(plan).drilling if one.name == part]
    (row,) = [one for one in sheet.rows if one.letter == letter]
    assert inches([row.from_heel]) == [from_heel]
    assert inches(row.marks) == marks
    assert inches([sheet.to_right_end(row.leg)]) == [to_right]


def test_marks_of_the_niche_and_of_brackets_alike():
    sheets = {one.name: one for one in taken("boathouse-niche").drilling}
    assert sheets["seat-back"].rows[0].marks == pytest.approx((51, 369, 775, 1181, 1437))
    assert (sheets["seat-left"].hand, sheets["seat-right"].hand) == ("left return of seat", "right return of seat")
    assert sheets["seat-back"].hand == ""
    (bracket,) = taken("bracket-shelf").drilling
    assert bracket.starts == pytest.approx((570, 970, 1370))
    assert bracket.on_wall == pytest.approx((600, 1000, 1400))
    assert [(row.letter, row.from_heel, row.marks) for row in bracket.rows] == [
        ("W", 40, (30,)), ("V", 210, (30,)), ("S", 60, (30,)), ("R", 150, (30,)),
    ]  # fmt: skip


def test_on_the_wall_the_marks_are_the_studs():
    (back,) = [one for one in taken("alcove-seat").drilling if one.name == "seat-back"]
    assert inches(back.on_wall) == [2.25, 14.75, 30.75, 46.75, 57.75]
    assert inches(back.starts) == [0.25]
    assert back.holes == 15


def test_sticks_and_what_each_leaves():
    """96 less 59-1/2 and 16 and two cuts of 1/8 is 20-1/4; 48 less twice 16-1/2 and two cuts 14-3/4; 96 less 60, 30
    and two cuts 5-3/4."""
    for name, cut, left in (
        ("seat-steel", [59.5, 16], 20.25), ("4x10", [16.5, 16.5], 14.75), ("shoe", [60, 30], 5.75),
        ("pier-edge", [95.5], 0.375),
    ):  # fmt: skip
        made = job(taken("alcove-seat"), name).cut_list()
        assert made is not None
        assert made.proven
        (stick,) = made.sticks
        assert inches(piece.length for piece in stick.pieces) == cut
        assert inches([stick.left]) == [left]
    assert [piece.note for piece in job(taken("alcove-seat"), "seat-steel").pieces] == [
        "mitred both ends", "mitred right",
    ]  # fmt: skip


def test_a_moulding_longer_than_its_stick_is_made_of_two():
    made = job(taken("panel-wall"), "base").cut_list()
    assert made is not None
    assert sorted(inches(piece.length for stick in made.sticks for piece in stick.pieces)) == [74, 96]


def test_a_door_breaks_the_run_of_a_moulding():
    door = {"left": "22 in", "width": "36 in", "bottom": "0 in", "top": "82 in", "edge": "casing"}
    takeoff = changed("panel-wall", {"op": "add", "path": "/walls/north/openings/door", "value": door})
    assert inches(piece.length.value for piece in job(takeoff, "base").pieces) == [22, 112]


@pytest.mark.parametrize(
    ("plan", "label", "count"),
    [
        ("alcove-seat", "screws wall-lag", 22), ("alcove-seat", "screws seat-screw", 9),
        ("alcove-seat", "screws block-screw", 16), ("alcove-seat", "washers wall-lag", 22),
        ("alcove-seat", "panels cladding", 28), ("panel-wall", "panels cladding", 47),
        ("display-shelf", "screws wall-screw", 5), ("display-shelf", "screws ledge-screw", 6),
        ("bracket-shelf", "screws wall-screw", 6), ("bracket-shelf", "steel shelf-bracket", 3),
        ("cleat-shelf", "screws cleat-screw", 8), ("alcove-seat", "electrical device screw", 6),
        ("alcove-seat", "protection dust respirator", 2),
    ],
)  # fmt: skip
def test_counts_that_the_plans_were_drawn_with(plan, label, count):
    assert need(taken(plan), label).values["needed_count"] == count


def test_quantities_of_the_alcove_on_paper():
    takeoff = taken("alcove-seat")
    # 3 x 2 x 59-5/16 x 17 and 3 x 2 x (59-5/16 + 17) x 1-3/4 in are 6851.16 in², 47.577 ft²; a gallon for 300
    assert need(takeoff, "finishes seat").values["needed_volume"] / FLUID_OUNCE == pytest.approx(20.30, abs=0.005)
    # 9 x 1/16 x 1/4 in and a fifth more, 231/128 in³ a fluid ounce
    assert need(takeoff, "fillers end-check").values["needed_volume"] / FLUID_OUNCE == pytest.approx(0.0935, abs=5e-5)
    # 2 coats on 48 x 95 in
    assert need(takeoff, "paints left").values["spread_area"] / INCH**2 == pytest.approx(9120)
    # both legs, both faces: 12 in round 59-1/2 and 16 in, 12 in round 16
    assert need(takeoff, "primers steel").values["spread_area"] / INCH**2 == pytest.approx(12 * 91.5)
    # 15.86 ft² of board at 5 ft² a disc; at 10 and 91.04 ft² of wall at 20
    assert need(takeoff, "abrasives grit-80").values["needed_count"] == pytest.approx(3.172, abs=5e-4)
    assert need(takeoff, "abrasives grit-120").values["needed_count"] == pytest.approx(1.586 + 4.547, abs=1e-3)
    # 5-3/4 x 1/4 in of steel at 490 lb/ft³, 75-1/2 in of it
    assert need(takeoff, "steel seat-steel").values["mass"] / 0.45359237 == pytest.approx(30.776, abs=1e-3)
    # 62.4 x 1.12 x 0.60 lb/ft³ of white ash, 59-5/16 x 17 x 1-3/4 in
    assert need(takeoff, "boards seat").values["mass"] / 0.45359237 == pytest.approx(42.82, abs=0.01)


def test_panels_of_the_alcove_course_by_course():
    (sheet,) = taken("alcove-seat").panels
    assert sheet.needed == 28
    back = [course for course in sheet.courses if course.wall == "back"]
    assert len(back) == 14
    assert inches(piece.length for piece in back[0].pieces) == [42, 17.5]
    assert inches(piece.length for piece in back[1].pieces) == [17.5, 42]
    assert [course.scribed for course in back] == [True] + [False] * 13
    # under the steel the second course is ripped to 5-5/8 in, over it the third to 4-5/8
    assert {round((piece.high - piece.low) / INCH, 4) for piece in back[1].pieces} == {5.625}
    assert {round((piece.high - piece.low) / INCH, 4) for piece in back[2].pieces} == {4.625}
    assert all(piece.notched for course in back[1:3] for piece in course.pieces)
    assert not any(piece.notched for piece in back[5].pieces)
    cut = [round(piece.length / INCH, 4) for panel in sheet.panels for piece in panel.pieces]
    assert len(cut) == 42
    for panel in sheet.panels:
        assert panel.left >= -1e-6


def test_what_is_bought_and_needed_by_nothing_is_shown():
    extra = changed("alcove-seat", {"op": "add", "path": "/purchase/abrasives/grit-320", "value": {"count": 5}})
    assert extra.unused == (("abrasives", "grit-320"),)
    assert taken("alcove-seat").unused == ()


def test_a_plan_without_a_list_is_still_taken_off():
    takeoff = changed("alcove-seat", {"op": "remove", "path": "/purchase"})
    assert not takeoff.bought
    assert need(takeoff, "screws wall-lag").values["needed_count"] == 22
    assert need(takeoff, "screws wall-lag").values["listed"] is False
    assert job(takeoff, "seat-steel").cut_list() is None


def test_what_is_to_be_measured_is_named():
    takeoff = changed(
        "alcove-seat", {"op": "replace", "path": "/record/status", "value": "template"},
        {"op": "replace", "path": "/angles/seat-back/length", "value": "measure on site"},
        {"op": "replace", "path": "/walls/back/width", "value": "measure on site"},
    )  # fmt: skip
    assert need(takeoff, "steel seat-steel").missing["needed_count"] == ("/angles/seat-back/length",)
    assert need(takeoff, "trims shoe").missing["needed_count"] == ("/walls/back/width",)
    assert "/angles/seat-back/length" in {
        one for row in takeoff.needs for one in row.missing.get("needed_count", ()) if row.label == "screws wall-lag"
    }
    (sheet,) = [one for one in takeoff.drilling if one.name == "seat-back"]
    assert "/angles/seat-back/length" in sheet.missing
    assert sheet.rows[0].marks == (None,)
    assert sheet.to_right_end("wall") is None


@pytest.mark.parametrize(
    ("adhesive", "field", "value"),
    [
        # dabs of 40 mm on squares of 300 mm, 3 mm thin
        ({"kind": "mastic", "covers": "dabs", "thickness": "3 mm", "width": "40 mm", "spacing": "300 mm"},
         "needed_volume", 3 * (40 / 300) ** 2),
        ({"kind": "mastic", "covers": "beads", "thickness": "2 mm", "width": "20 mm", "spacing": "200 mm"},
         "needed_volume", 2 * 0.1),
        ({"kind": "contact adhesive", "covers": "whole back", "thickness": "0.2 mm"}, "needed_volume", 0.2),
        ({"kind": "rubber tape", "covers": "strips", "thickness": "1 mm", "width": "25 mm", "spacing": "150 mm"},
         "needed_length", 1 / 150),
    ],
)  # fmt: skip
def test_adhesive_by_what_it_covers(adhesive, field, value):
    takeoff = changed("panel-wall", {"op": "replace", "path": "/panels/cladding/adhesive", "value": adhesive})
    row = need(takeoff, "adhesives cladding")
    assert row.values[field] == pytest.approx(value * row.values["spread_area"])
    # 170 x 101-1/4 in less the window of 40-1/2 x 46-1/2 in and three boxes, within a per cent
    assert row.values["spread_area"] / INCH**2 == pytest.approx(170 * 101.25 - 40.5 * 46.5, rel=0.01)


def test_a_saw_cut_that_nobody_wrote_down_is_said_to_be_taken():
    row = need(taken("alcove-seat"), "steel seat-steel")
    assert "saw cut" in row.assumed["/purchase/steel/seat-steel"]


def test_a_tin_for_one_wall_primes_no_other():
    """Left has its own tin, back and pier none: one line more, whichever step primes them."""
    lines = {"left": {"volume": "1 qt"}, "steel": {"volume": "1/2 pt"}}
    first = {"task": "prime wall", "works_on": ["left"], "after": ["dust"], "takes": "1 h", "then_wait": "7 days"}
    takeoff = changed(
        "alcove-seat",
        {"op": "replace", "path": "/purchase/primers", "value": lines},
        {"op": "replace", "path": "/steps/prime/works_on", "value": ["back", "pier"]},
        {"op": "add", "path": "/steps/prime-left", "value": first},
    )
    listed = {row.label: row.values["listed"] for row in takeoff.needs if row.values["group"] == "primers"}
    assert listed == {"primers wall": False, "primers left": True, "primers steel": True}


def test_filler_for_one_patched_wall_is_none_for_the_next():
    takeoff = changed(
        "alcove-seat",
        {
            "op": "replace",
            "path": "/purchase/fillers",
            "value": {"left": {"volume": "1 pt"}, "end-check": {"volume": "2 fl oz"}},
        },
    )
    listed = {row.label: row.values["listed"] for row in takeoff.needs if row.values["group"] == "fillers"}
    assert listed == {"fillers end-check": True, "fillers left": True, "fillers joint compound": False}
