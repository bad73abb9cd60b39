"""Plans with one classic mistake of loads each: the finding of that mistake, on the part where it was made."""

from __future__ import annotations

from datetime import date

import pytest
from shipped_plans import PLANS, examined

from plumbrule.inspection.examine import examine
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.rulebook.load import load

MISTAKES = [
    ("floating-seat-on-a-back-angle", "person-on-a-back-angle-alone", "/boards/float-seat"),
    ("floating-seat-on-a-back-angle", "board-tips-off-its-steel", "/angles/seat-steel"),
    ("light-shelf-leans-forward", "shelf-sags-over-the-years", "/boards/cedar-shelf"),
    ("light-shelf-leans-forward", "shelf-leaned-on", "/angles/shelf-steel"),
    ("thin-board-under-people", "board-bends-too-far", "/boards/window-bench"),
    ("bench-held-at-one-end", "nothing-shows-it-carries-people", "/boards/window-bench"),
    ("lags-through-the-lining", "screw-too-weak-sideways", "/cleats/left"),
    ("every-screw-in-a-slot", "nothing-holds-the-board-against-a-push", "/boards/bench"),
    ("lags-through-the-lining", "screw-overloaded-both-ways", "/cleats/rear"),
    ("double-rows-of-books", "screw-overloaded-both-ways", "/angles/shelf-steel"),
]


@pytest.mark.parametrize(("name", "rule", "part"), MISTAKES)
def test_the_mistake_is_found_on_the_part_where_it_was_made(name, rule, part):
    found = [
        one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule and one.verdict == "breaks"
    ]
    assert part in {one.row.part for one in found}


def test_a_board_held_at_one_end_gets_no_number():
    inspection = examined("faulty/bench-held-at-one-end").inspection
    assert not [one for one in inspection.findings if one.rule.id == "board-bends-too-far"]
    assert "board-bends-too-far" in {one.rule.id for one in inspection.not_inspected}


@pytest.mark.parametrize("name", ["alcove-seat", "corner-seat", "display-shelf", "bracket-shelf", "cleat-shelf"])
def test_a_base_plan_carries_its_loads(name):
    inspection = examined(name).inspection
    assert not [one for one in inspection.findings if one.level != "advisory"]
    assert not inspection.not_inspected


def test_a_use_of_one_and_four_thousandths_breaks_and_reads_so():
    """1,414.24 N is the person at whom this screw has nothing left; he is 0.4 per cent heavier here."""
    document = patched(
        read_file(PLANS / "alcove-seat.yaml"),
        [{"op": "replace", "path": "/boards/seat/load/point", "value": "1420.3 N"}],
    )
    inspection = examine(document, load(), date(2026, 1, 1)).inspection
    label = "place 3 of seat-pier under one person"
    both = [one for one in inspection.findings if one.rule.id == "screw-overloaded-both-ways"]
    found = next(one for one in both if label in {one.row.label, *(row.label for row in one.also_at)})
    assert found.verdict == "breaks"
    assert 1.0035 < found.measure < 1.0045
