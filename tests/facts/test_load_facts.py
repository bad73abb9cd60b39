"""The load path of whole plans against figures worked by hand, and what it says when an input is wanting.

The two plans are worked examples; their figures, in lbf, in and psi, were worked by hand before any of this program.
Steel's own weight, which the hand sums leave out, is taken off again, or the tolerance allows for it.
"""

from __future__ import annotations

from functools import cache

import pytest

from plumbrule import shipped
from plumbrule.facts.facts import work_out
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.reading.units import to_si

PLANS = shipped.folder("plans")
KINDS = ("board_load", "station_load", "hold_down", "leg_load", "beam_load", "block_load")


@cache
def facts(name):
    return work_out(read_plan(read_file(PLANS / f"{name}.yaml"))).rows


def row(name, kind, label):
    return next(row for row in facts(name)[kind] if row.label == label)


FLOAT, CEDAR = "faulty/floating-seat-on-a-back-angle", "faulty/light-shelf-leans-forward"
PERSON = "under one person"

# A seat 15 in deep on a 2 x 2 x 1/8 in angle: H = (250 x 13.24 + 38.2 x 5.74)/0.70, 1.5 and 1.2 of it over six screws.
BY_HAND = [
    (FLOAT, "board_load", "float-seat under its own weight", "weight", 38.2, "lbf", 0.002),
    (FLOAT, "board_load", f"float-seat {PERSON}", "front", 15.19, "in", 0.001),
    (FLOAT, "hold_down", f"along the back of float-seat {PERSON}", "pull", 1245, "lbf", 0.001),
    (FLOAT, "hold_down", f"along the back of float-seat {PERSON}", "strength", 140, "lbf", 0.003),
    (FLOAT, "leg_load", f"leg of seat-steel {PERSON}, inside", "moment", 126, "lbf", 0.003),
    (FLOAT, "leg_load", f"leg of seat-steel {PERSON}, at an end", "moment", 219, "lbf", 0.003),
    (FLOAT, "leg_load", f"leg of seat-steel {PERSON}, inside", "strength", 84.2, "lbf", 0.001),
    (FLOAT, "leg_load", f"leg of seat-steel {PERSON}, inside", "torque", 949, "in·lbf", 0.001),
    (FLOAT, "leg_load", f"leg of seat-steel {PERSON}, inside", "torque_strength", 303, "in·lbf", 0.002),
    (FLOAT, "station_load", f"place 2 of seat-steel {PERSON}", "couple", 1978, "in·lbf", 0.002),
    (FLOAT, "station_load", f"place 2 of seat-steel {PERSON}", "side_strength", 79.3, "lbf", 0.001),
    (FLOAT, "station_load", f"place 2 of seat-steel {PERSON}", "pull_strength", 319, "lbf", 0.002),
    (FLOAT, "station_load", f"place 2 of seat-steel {PERSON}", "screw_pull", 1862, "lbf", 0.002),
    (FLOAT, "board_load", f"float-seat {PERSON}", "across_stress", 376, "psi", 0.03),
    (FLOAT, "board_load", f"float-seat {PERSON}", "across_mark", 161, "psi", 0.002),
    (FLOAT, "board_load", f"float-seat {PERSON}", "drop", 3.4, "in", 0.02),
    (CEDAR, "board_load", "cedar-shelf under its own weight", "weight", 6.2, "lbf", 0.01),
    (CEDAR, "board_load", "cedar-shelf under storage", "across_stress", 12.5, "psi", 0.005),
    (CEDAR, "board_load", "cedar-shelf under storage", "across_mark", 41, "psi", 0.01),
    (CEDAR, "board_load", "cedar-shelf under storage", "drop", 2 * 0.088, "in", 0.01),
    (CEDAR, "board_load", "cedar-shelf under storage", "drop_limit", 0.114, "in", 0.005),
    (CEDAR, "hold_down", "along the back of cedar-shelf under storage", "pull", 29.9, "lbf", 0.003),
    (CEDAR, "hold_down", "along the back of cedar-shelf under storage", "strength", 35.9, "lbf", 0.002),
    (CEDAR, "hold_down", "along the back of cedar-shelf under leaning", "pull", 104, "lbf", 0.003),
    (CEDAR, "leg_load", "leg of shelf-steel under storage, inside", "moment", 4.8, "lbf", 0.01),
    (CEDAR, "leg_load", "leg of shelf-steel under storage, inside", "lasting_strength", 56.1, "lbf", 0.001),
    (CEDAR, "station_load", "place 2 of shelf-steel under storage", "screw_pull", 82, "lbf", 0.02),
    (CEDAR, "station_load", "place 2 of shelf-steel under leaning", "screw_pull", 339, "lbf", 0.005),
    (CEDAR, "station_load", "place 2 of shelf-steel under storage", "leg_strength", 301, "lbf", 0.002),
    (CEDAR, "station_load", "place 2 of shelf-steel under leaning", "side_strength", 63.7, "lbf", 0.001),
    (CEDAR, "station_load", "place 2 of shelf-steel under leaning", "both_use", 2.3, "", 0.01),
    (CEDAR, "station_load", "place 1 of shelf-steel under leaning", "both_use", 2.6, "", 0.01),
]  # fmt: skip


@pytest.mark.parametrize(("plan", "kind", "label", "field", "by_hand", "unit", "within"), BY_HAND)
def test_a_worked_example_comes_out_of_its_plan(plan, kind, label, field, by_hand, unit, within):
    expected = to_si(by_hand, unit) if unit else by_hand
    assert row(plan, kind, label).values[field] == pytest.approx(expected, rel=within)


def test_the_weight_without_the_steel_is_that_of_the_hand_sum():
    found = row(FLOAT, "station_load", f"place 2 of seat-steel {PERSON}").values
    assert found["side_force"] - found["steel_force"] == pytest.approx(to_si(260, "lbf"), rel=0.002)
    found = row(CEDAR, "station_load", "place 2 of shelf-steel under storage").values
    assert found["side_force"] - found["steel_force"] == pytest.approx(to_si(16.4, "lbf"), rel=0.005)


# Each leaves one input of the load path out: what is named then, and a field that waits for it.
LEFT_OUT = [
    ("/sections/seat-steel/thickness", "station_load", "couple", ("side_strength", "leg_strength")),
    ("/boards/seat/thickness", "board_load", "bending_stress", ("drop", "weight")),
    ("/boards/seat/length", "board_load", "bending_stress", ("drop",)),
    ("/boards/seat/depth", "board_load", "drop", ("front",)),
    ("/boards/seat/gaps/back", "station_load", "side_force", ("couple",)),
    ("/angles/seat-back/length", "beam_load", "moment", ()),
    ("/angles/seat-left/left", "station_load", "side_force", ()),
    ("/walls/left/width", "station_load", "side_force", ()),
    ("/walls/back/framing/species", "station_load", "side_strength", ()),
    ("/walls/left/blocking/seat-block-left/species", "block_load", "strength", ()),
    ("/walls/left/blocking/seat-block-left/each_end", "block_load", "force", ("strength",)),
    ("/screws/wall-lag/diameter", "station_load", "side_strength", ("both_use",)),
    ("/screws/wall-lag/length", "station_load", "side_strength", ("pull_strength",)),
    ("/screws/seat-screw/length", "hold_down", "strength", ()),
    ("/sections/seat-steel/steel", "leg_load", "strength", ("springs_back",)),
    ("/sections/seat-steel/legs/seat", "station_load", "couple", ("leg_strength",)),
    ("/site/humidity/dampest", "station_load", "side_strength", ("both_use",)),
    ("/site/temperature/coldest", "board_load", "bending_strength", ()),
    ("/boards/seat/cracks/end-check/depth", "board_load", "drop", ("bending_stress",)),
]  # fmt: skip


@pytest.mark.parametrize(("pointer", "kind", "field", "also"), LEFT_OUT)
def test_an_input_left_out_is_named_and_gives_no_number(pointer, kind, field, also):
    document = read_file(PLANS / "alcove-seat.yaml")
    patch = [
        {"op": "replace", "path": "/record/status", "value": "template"},
        {"op": "remove" if pointer.endswith("each_end") else "replace", "path": pointer, "value": "measure on site"},
    ]
    if pointer.endswith(("species", "steel", "dampest", "coldest")):
        patch[1] = {"op": "remove", "path": pointer}
    rows = work_out(read_plan(patched(document, patch))).rows[kind]
    waiting = [one for one in rows if field in one.missing]
    assert waiting
    assert any(pointer in wanted or wanted in pointer for one in waiting for wanted in one.missing[field])
    assert all(field not in one.values for one in waiting)
    assert all(any(other in one.missing for one in waiting) for other in also)


@pytest.mark.parametrize("gone", [["seat-back"], ["seat-left"], ["seat-pier"], ["seat-left", "seat-pier"]])
def test_every_board_has_its_rows_whatever_carries_it(gone):
    document = read_file(PLANS / "alcove-seat.yaml")
    on = [name for name in ("seat-back", "seat-left", "seat-pier") if name not in gone]
    patch = [{"op": "replace", "path": "/boards/seat/bears_on", "value": on}]
    rows = work_out(read_plan(patched(document, patch))).rows["board_load"]
    assert {one.values["case"] for one in rows} >= {"own weight", "one person", "full seat"}
    if on != ["seat-back"]:
        assert {one.values["carried"] for one in rows} == {"not covered"}
        assert all("bending_stress" in one.outside for one in rows)
