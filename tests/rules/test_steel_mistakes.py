"""Plans with one classic mistake each in their steel: that finding, at its line, and no other of either trade."""

from __future__ import annotations

import pytest
from shipped_plans import examined

# plan, rule, level, pointer, how many holes or parts have it
MISTAKES = [
    ("hole-too-near-the-end", "hole-near-steel-end", "stop-work", "/angles/basket-steel/left", 1),
    ("countersink-through-thin-steel", "countersink-deeper-than-the-steel", "stop-work",
     "/sections/ledge-steel/thickness", 3),
    ("flat-heads-in-plain-holes", "flat-head-in-a-plain-hole", "correction", "/screws/wall-screw/head/style", 3),
    ("hole-drilled-for-the-next-size", "hole-too-large", "correction", "/holes/wall/diameter", 3),
    ("heads-behind-the-board", "head-in-the-boards-way", "correction", "/screws/wall-screw/head/style", 3),
    ("bare-steel-under-oak", "bare-steel-on-tannin-wood", "correction", "/sections/shelf-steel/coating", 1),
    ("square-edge-on-the-fillet", "board-rides-on-the-fillet", "correction",
     "/boards/card-ledge/edges/back/ease", 1),
    ("washer-on-the-heel-radius", "head-on-the-heel-radius", "correction", "/holes/wall/from_heel/0", 3),
    ("steel-clashes-in-the-corner", "corner-clash", "correction", "/angles/back-steel/ends/left", 1),
    ("slots-along-the-grain", "seat-slot-wrong-way", "correction", "/holes/arm/slot_runs", 6),
    ("bare-heads-hold-the-board-down", "head-pulls-through", "correction", "/screws/shelf-screw/head/diameter", 3),
    ("bracket-wrong-way-round", "upright-shorter-than-arm", "advisory", "/brackets/wheel-bracket/upright", 3),
]  # fmt: skip


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, count):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert pointer in [one.pointer for one in found]
    first = next(one for one in found if one.pointer == pointer)
    assert (first.verdict, first.level, 1 + len(first.also_at)) == ("breaks", level, count)


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count"), MISTAKES)
def test_nothing_else_is_wrong_in_its_steel_or_its_framing(name, rule, level, pointer, count):
    found = examined(f"faulty/{name}").inspection.findings
    others = {one.rule.id for one in found if one.rule.trade in ("steel", "framing") and one.level != "advisory"}
    assert others <= {rule}


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count"), MISTAKES)
def test_everything_in_its_steel_could_be_inspected(name, rule, level, pointer, count):
    inspection = examined(f"faulty/{name}").inspection
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "steel"]
    assert not [one for one in inspection.findings if one.verdict == "failed"]


@pytest.mark.parametrize("name", ["alcove-seat", "display-shelf", "bracket-shelf", "cleat-shelf"])
def test_the_steel_of_a_clean_plan_holds_throughout(name):
    inspection = examined(name).inspection
    assert not [one.rule.id for one in inspection.findings if one.rule.trade == "steel"]
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "steel"]
