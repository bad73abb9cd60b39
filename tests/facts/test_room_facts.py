"""Corners, closed rooms, niches and the ends of boards and steel, against figures worked by hand."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from plumbrule import shipped
from plumbrule.catalogue.fact import Row
from plumbrule.facts.facts import work_out
from plumbrule.inspection.examine import examine
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import Document, read_file
from plumbrule.rulebook.load import load

SITE = "measure on site"
TEMPLATE = {"op": "replace", "path": "/record/status", "value": "template"}


def document(*changes: dict[str, Any], plan: str = "alcove-seat") -> Document:
    return patched(read_file(shipped.folder("plans") / f"{plan}.yaml"), list(changes))


def rows(*changes: dict[str, Any], kind: str, plan: str = "alcove-seat") -> dict[str, Row]:
    facts = work_out(read_plan(document(*changes, plan=plan)))
    return {row.pointer: row for row in facts.rows.get(kind, ())}


def put(path: str, value: Any) -> dict[str, Any]:
    return {"op": "replace", "path": path, "value": value}


def gone(path: str) -> dict[str, Any]:
    return {"op": "remove", "path": path}


def closed(pier: str = "48 in", front: str = "60 in", angle: str = "90°") -> tuple[dict[str, Any], ...]:
    """The alcove with a fourth wall across its mouth."""
    return (
        {"op": "add", "path": "/walls/front", "value": {"width": front}},
        put("/walls/pier/width", pier),
        put("/corners/pier-end", {"from": "pier", "to": "front", "turn": "inside", "angle": angle}),
        {"op": "add", "path": "/corners/front-left",
         "value": {"from": "front", "to": "left", "turn": "inside", "angle": "90°"}},
        gone("/walls/left/ends"),
    )  # fmt: skip


# Corners


def test_an_angle_that_nobody_wrote_is_taken_as_square_and_said() -> None:
    row = rows(gone("/corners/left-back/angle"), kind="corner")["/corners/left-back"]
    assert row.values["angle"] == 90
    assert row.values["angle_measured"] is False
    assert "square corner is taken" in row.assumed["/corners/left-back/angle"]


def test_a_corner_in_which_nothing_is_fitted_asks_for_nothing() -> None:
    assert rows(kind="corner")["/corners/pier-end"].values["fits_something"] is False
    assert rows(kind="corner", plan="panel-wall")["/corners/north-east"].values["fits_something"] is False
    assert rows(kind="corner")["/corners/left-back"].values["fits_something"] is True


def test_both_measures_of_one_ceiling() -> None:
    found = rows(put("/walls/pier/ceiling/left", "7'-9 3/4\""), kind="corner")["/corners/back-pier"]
    assert found.values["ceiling_difference"] == pytest.approx(25.4)
    assert "ceiling_difference" not in rows(kind="corner")["/corners/pier-end"].values
    wanting = rows(gone("/walls/pier/ceiling"), kind="corner")["/corners/back-pier"]
    assert wanting.missing["ceiling_difference"] == ("/walls/pier/ceiling/left",)


# Rooms that come round


def test_walls_that_do_not_come_round_are_no_room() -> None:
    assert rows(kind="room") == {}


def test_a_room_that_closes_and_one_that_does_not() -> None:
    assert rows(*closed(), kind="room")["/corners"].values["closing_gap"] == pytest.approx(0, abs=1e-6)
    # 48 in on the left and 47 on the right, 60 in behind and 63 in front: 1 and 3, sqrt(10)
    found = rows(*closed("47 in", "63 in"), kind="room")["/corners"]
    assert found.values["closing_gap"] == pytest.approx(25.4 * 10**0.5)
    assert found.values["turned_too_far"] == 0


def test_a_corner_misread_by_two_degrees() -> None:
    assert rows(*closed(angle="88°"), kind="room")["/corners"].values["turned_too_far"] == pytest.approx(2)


def test_a_width_still_to_be_measured_leaves_the_room_open() -> None:
    row = rows(TEMPLATE, *closed(SITE), kind="room")["/corners"]
    assert row.missing["closing_gap"] == ("/walls/pier/width",)


# Niches and ends


def test_a_niche_narrows_by_both_corners() -> None:
    """17-9/16 in to the front of the seat; tables print cot 89° = 0.017455."""
    found = rows(put("/corners/left-back/angle", "89°"), kind="niche")["/walls/back"]
    assert found.values["narrows"] == pytest.approx(17.5625 * 25.4 * 0.017455, rel=1e-4)
    widens = rows(put("/corners/left-back/angle", "91°"), kind="niche")["/walls/back"]
    assert widens.values["narrows"] == pytest.approx(-17.5625 * 25.4 * 0.017455, rel=1e-4)


def test_an_end_that_stands_free_is_no_end_at_a_wall() -> None:
    assert set(rows(kind="board_end")) == {"/boards/seat/gaps/left", "/boards/seat/gaps/right"}
    assert rows(kind="board_end", plan="display-shelf") == {}


def test_steel_against_a_wall_that_gets_panels() -> None:
    """A quarter inch off the bare wall, 3/8 of panel and 1/16 of tape."""
    found = rows(kind="steel_end")
    assert set(found) == {"/angles/seat-back/length", "/angles/seat-left/length", "/angles/seat-pier/left"}
    for row in found.values():
        assert row.values["clear"] == pytest.approx(-0.1875 * 25.4)
        assert row.values["panels_first"] is False


def test_steel_that_nothing_puts_before_the_panels_may_come_after_them() -> None:
    found = rows(put("/steps/wipe/after", ["edge", "try", "dry-lay"]), kind="steel_end")
    assert all(row.values["panels_first"] is True for row in found.values())


@pytest.mark.parametrize(
    ("pointer", "rules"),
    [
        ("/walls/back/ceiling/left", {"corner-ceilings-disagree"}),
        ("/boards/seat/depth", {"corner-out-of-square-at-a-board", "niche-narrows-to-the-front",
                                "side-wall-ends-before-the-board"}),
        ("/walls/back/width", {"cannot-be-tilted-in", "no-room-for-the-driver"}),
        ("/walls/back/boxes/kettle/set_back", {"rim-behind-a-face-that-burns", "rim-stands-proud"}),
        ("/walls/back/boxes/kettle/width", {"cover-leaves-a-hole", "box-behind-steel-or-board"}),
    ],
)  # fmt: skip
def test_what_a_template_leaves_to_the_site_makes_its_rules_not_inspected(pointer: str, rules: set[str]) -> None:
    examined = examine(document(TEMPLATE, put(pointer, SITE)), load(), date(2026, 6, 1))
    waiting = {one.rule.id for one in examined.inspection.not_inspected if pointer in one.missing}
    assert rules <= waiting
    assert not [one.rule.id for one in examined.inspection.findings if one.verdict == "failed"]


def test_a_booth_whose_walls_do_not_come_round() -> None:
    """900 on one side, 870 on the other: 30 mm."""
    plan = read_file(shipped.folder("plans") / "faulty" / "booth-does-not-close.yaml")
    findings = examine(plan, load(), date(2026, 6, 1)).inspection.findings
    found = [one for one in findings if one.rule.id == "room-does-not-close"]
    assert [(one.verdict, one.level, one.row.pointer) for one in found] == [("breaks", "correction", "/corners")]
    assert found[0].measure == pytest.approx(30)
    assert {one.rule.id for one in findings if one.level != "advisory"} == {"room-does-not-close"}
