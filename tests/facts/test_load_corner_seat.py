"""A seat on brackets whose one end also lies on an angle: the brackets carry it as if that end were not there, and the
angle is held to all that would lean on it if they gave. Beside it: boards that run past their last bracket."""

from __future__ import annotations

import pytest

from plumbrule import shipped
from plumbrule.facts.facts import work_out
from plumbrule.facts.load_brackets import _with_ends
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.reading.units import to_si

PLANS = shipped.folder("plans")


def rows(plan, *patch):
    return work_out(read_plan(patched(read_file(PLANS / f"{plan}.yaml"), list(patch)))).rows


def row(found, kind, label):
    return next(row for row in found[kind] if row.label == label)


def replace(path, value):
    return {"op": "replace", "path": path, "value": value}


ALONE = replace("/boards/seat/bears_on", ["seat-bracket"])
UNDER = "under one person"


def test_the_end_angle_helps_no_bracket():
    with_end, alone = rows("corner-seat"), rows("corner-seat", ALONE)
    for number in (1, 2, 3, 4):
        for load in ("its own weight", "one person", "full seat", "a push off the wall"):
            load = "own weight" if load == "its own weight" else load
            for field in ("side_force", "screw_pull"):
                found, bare = (
                    next(
                        one.values[field]
                        for one in some["station_load"]
                        if one.values["case"] == load and f"seat-bracket {number} " in one.label
                    )
                    for some in (with_end, alone)
                )
                assert found >= bare * (1 - 1e-9), (number, load, field)


def test_the_end_angle_is_held_to_all_that_may_lean_on_it():
    """A person whole; what is spread by its moment about the back edge, at the front edge."""
    found = row(rows("corner-seat"), "station_load", f"place 1 of seat-end {UNDER}")
    whole = next(line for line in found.worked["side_force"].lines() if line.symbol == "R")
    assert whole.value > to_si(250, "lbf")
    weight = next(number.value for number in whole.numbers if number.symbol == "W")
    assert weight == pytest.approx(to_si(62.4 * 1.12 * 0.60 * 53.75 * 14 * 1.75 / 1728, "lbf"), rel=0.01)


def test_without_the_end_angle_a_push_along_the_wall_is_outside():
    found = rows("corner-seat", ALONE)
    place = row(found, "station_load", "place 1 of seat-bracket 1 under a push along the wall")
    assert "turns brackets on their screws" in place.outside["both_use"]
    assert row(found, "push_load", "seat under a push along the wall").values["stopped_by"] == "left end"


def test_with_it_the_push_draws_the_angle_off_its_wall():
    found = rows("corner-seat")
    pushed = [one for one in found["station_load"] if one.values["case"] == "a push along the wall"]
    assert {one.part for one in pushed} == {"/angles/seat-end"}
    assert all(one.values["screw_pull"] > to_si(250, "lbf") for one in pushed)


def test_an_angle_on_the_back_wall_beside_brackets_stays_mixed():
    on = (replace("/angles/seat-end/wall", "back"), replace("/angles/seat-end/left", "80 in"))
    found = rows("corner-seat", *on)
    assert row(found, "board_load", f"seat {UNDER}").values["not_covered"] == "angles, brackets and cleats are mixed"


def test_an_end_angle_at_one_stud_is_absent_and_says_so():
    one = replace("/angles/seat-end/wall_holes/from_left", ["1-1/2 in"])
    found = row(rows("corner-seat", one), "board_load", f"seat {UNDER}")
    assert found.values["not_covered"] == "a return is screwed at one place"


# Boards past their last bracket.


@pytest.mark.parametrize("over", [0.1, 0.25, 0.5])
def test_three_brackets_by_the_three_moment_equation(over):
    """Two spans s, P at c past the end: M = -P c, so the end takes P (1 + 1.25 c/s) and the middle is lifted by 1.5."""
    s = 400.0
    places, length = (over * s, over * s + s, over * s + 2 * s), 2 * s + 2 * over * s
    shares = _with_ends(places, (), length)
    assert shares[0][1] == pytest.approx(1 + 1.25 * over, rel=1e-4)
    assert shares[1][2] == pytest.approx(1.5 * over, rel=1e-4)
    assert shares[2][1] == pytest.approx(shares[0][1])


def test_two_brackets_by_the_lever_rule():
    shares = _with_ends((100.0, 500.0), (), 600.0)
    assert [share[1] for share in shares] == pytest.approx([1.25, 1.25], rel=1e-4)
    assert [share[2] for share in shares] == pytest.approx([0.25, 0.25], rel=1e-4)
    assert [share[0] for share in shares] == pytest.approx([300.0, 300.0])


def test_a_firm_end_may_send_more_to_a_bracket_never_less_than_counted():
    places, length = (104.0, 510.0, 917.0, 1323.0), 1365.0
    bare, held = _with_ends(places, (), length), _with_ends(places, (0.0,), length)
    assert held[1][0] > bare[1][0] * 0.9
    assert held[0][1] < bare[0][1]
