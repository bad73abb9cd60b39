"""What is still to measure is listed in the order of somebody who walks through the room once, in plain words."""

from __future__ import annotations

from datetime import date
from typing import Any

from plumbrule import shipped
from plumbrule.inspection.examine import Examined, examine
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.report.paper import Paper
from plumbrule.report.places import words_of
from plumbrule.report.unseen import unseen
from plumbrule.report.walking import meaning, walked, walls_in_order, wants_the_datum
from plumbrule.report.workings import text
from plumbrule.rulebook.load import load

# As one would walk it: the left wall, round the corner to the back, on to the pier; then what is hung.
TO_MEASURE = [
    "/walls/left/floor_drop/left", "/walls/back/width", "/walls/back/floor_drop/left", "/walls/back/ceiling/right",
    "/walls/back/framing/centres/1", "/walls/back/boxes/kettle/centre", "/walls/back/boxes/kettle/up",
    "/walls/pier/width", "/angles/seat-left/left", "/boards/seat/length",
]  # fmt: skip


def _template(pointers: list[str], *changes: dict[str, Any]) -> Examined:
    waiting = [{"op": "replace", "path": pointer, "value": "measure on site"} for pointer in pointers]
    status = {"op": "replace", "path": "/record/status", "value": "template"}
    document = patched(read_file(shipped.folder("plans") / "alcove-seat.yaml"), [status, *waiting, *changes])
    return examine(document, load(), date(2026, 6, 1))


def test_a_template_lists_what_to_measure_in_walking_order() -> None:
    examined = _template(list(reversed(TO_MEASURE)))
    paper = Paper(100)
    unseen(paper, examined)
    shown = paper.text()
    keys = [line.split()[-1] for line in shown.splitlines() if line.strip().startswith("key ")]
    assert [key for key in keys if key in TO_MEASURE] == TO_MEASURE
    assert keys == TO_MEASURE
    assert shown.index("first the datum") < shown.index("floor drop")
    assert "face to face of the lining as it stands, not stud to stud" in shown
    assert "ceiling height above the datum, at the right end" in shown


def test_the_rules_that_wait_for_it_are_not_inspected() -> None:
    examined = _template(["/walls/back/width"])
    waiting = {one.rule.id for one in examined.inspection.not_inspected if "/walls/back/width" in one.missing}
    assert {"cannot-be-tilted-in", "no-room-for-the-driver"} <= waiting
    assert not {one.rule.id for one in examined.inspection.findings if one.verdict == "failed"}


def test_workings_of_a_template_end_with_the_same_list() -> None:
    shown = text(_template(TO_MEASURE), ["corner"])
    tail = shown[shown.index("TO MEASURE ON SITE   10 things") :]
    assert tail.index("width (back)") < tail.index("centre (back, boxes, kettle)") < tail.index("width (pier)")
    assert tail.index("width (pier)") < tail.index("left (seat-left)") < tail.index("length (seat)")
    assert "TO MEASURE" not in text(_template([]), ["corner"])


def test_walls_are_walked_round_their_corners_whatever_their_order_in_the_file() -> None:
    plan = read_plan(read_file(shipped.folder("plans") / "alcove-seat.yaml"))
    assert walls_in_order(plan.model) == ["left", "back", "pier"]
    turned = _template([], {"op": "replace", "path": "/corners/left-back", "value": {"from": "left", "turn": "inside"}},
                       {"op": "replace", "path": "/corners/pier-end",
                        "value": {"from": "pier", "to": "left", "turn": "inside"}},
                       {"op": "remove", "path": "/walls/left/ends"},
                       {"op": "remove", "path": "/corners/left-back"},
                       {"op": "replace", "path": "/walls/pier/floor_drop/right", "value": "1/8 in"})  # fmt: skip
    assert walls_in_order(turned.plan.model) == ["back", "pier", "left"]


def test_a_corner_is_measured_between_its_walls() -> None:
    model = read_plan(read_file(shipped.folder("plans") / "alcove-seat.yaml")).model
    wanted = ["/walls/left/width", "/corners/left-back/angle", "/walls/back/width", "/corners/back-pier/angle",
              "/walls/pier/width", "/corners/pier-end/angle", "/boards/seat/length", "/steps", "/purchase"]  # fmt: skip
    assert walked(model, sorted(wanted)) == wanted


def test_plain_words() -> None:
    assert meaning("/walls/left/floor_drop/left") == "how far the floor lies below the datum, at the left end"
    assert meaning("/walls/back/boxes/kettle/up") == "centre of the box opening above the datum"
    assert meaning("/walls/back/framing/centres/1").startswith("centre line of every stud found")
    assert meaning("/nothing/of/the/kind") == ""
    assert meaning("") == ""
    assert words_of("/walls/back/framing/centres/1") == "centres 2 (back, framing)"
    assert wants_the_datum(["/walls/back/boxes/kettle/up"])
    assert not wants_the_datum(["/walls/back/width", "/boards/seat/depth"])
