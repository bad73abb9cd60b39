"""Purchase lists with one mistake each: that finding, at its line, and nothing else to put right."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from shipped_plans import GOOD, PLANS, rulebook

from plumbrule.inspection.examine import Examined, examine
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.rulebook.file import ExampleFile

# plan, rule, level, pointer
MISTAKES = [
    ("four-pieces-from-one-bar", "too-few-sticks", "correction", "/purchase/steel/seed-steel/count"),
    ("shorter-screws-on-the-order", "other-screws-bought", "stop-work", "/purchase/screws/wall-screw/length"),
]


def examined(name: str, *changes: dict[str, Any]) -> Examined:
    document = read_file(PLANS / f"{name}.yaml")
    if changes:
        file = ExampleFile.model_validate({"plan": name, "at": "/purchase", "patch": list(changes)})
        document = patched(document, file.patch)
    return examine(document, rulebook(), date(2026, 6, 1))


def of_purchase(found: Examined) -> list[tuple[str, str, str]]:
    return [
        (one.rule.id, one.verdict, one.row.label) for one in found.inspection.findings if one.rule.trade == "purchase"
    ]


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer) for one in found] == [("breaks", level, pointer)]


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_nothing_else_is_to_be_put_right(name, rule, level, pointer):
    inspection = examined(f"faulty/{name}").inspection
    assert {one.rule.id for one in inspection.findings if one.level != "advisory"} == {rule}
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "purchase"]


@pytest.mark.parametrize("name", GOOD)
def test_the_purchase_list_of_a_clean_plan_holds_throughout(name):
    inspection = examined(name).inspection
    assert not [one.rule.id for one in inspection.findings if one.rule.trade == "purchase" and one.level != "advisory"]
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "purchase"]


def test_a_plan_that_buys_nothing_says_so_once():
    found = examined("alcove-seat", {"op": "remove", "path": "/purchase"})
    unseen = [one for one in found.inspection.not_inspected if one.row.kind == "need"]
    assert [(one.rule.id, one.missing) for one in unseen] == [("not-on-the-list", ("/purchase",))]


def test_a_plan_without_steps_says_once_that_nobody_knows_what_they_need():
    found = examined("bracket-shelf", {"op": "remove", "path": "/steps"})
    unseen = [one for one in found.inspection.not_inspected if one.row.label == "what the steps need"]
    assert [(one.rule.id, one.missing) for one in unseen] == [("not-on-the-list", ("/steps",))]


def test_a_piece_longer_than_every_stick_is_one_finding_and_no_failure():
    """59-1/2 in out of sticks of 4 ft: however many are bought, none gives it."""
    found = examined("alcove-seat", {"op": "replace", "path": "/purchase/steel/seat-steel/stick", "value": "4 ft"})
    assert of_purchase(found) == [("stick-too-short", "breaks", "steel seat-steel")]


def test_every_screw_counts_whatever_names_it():
    """Blocks are held by four screws at each of their two ends: 2 x 2 x 4 = 16 for two blocks."""
    found = examined("alcove-seat", {"op": "replace", "path": "/purchase/screws/block-screw/count", "value": 15})
    assert of_purchase(found) == [("too-few-bought", "breaks", "screws block-screw")]


@pytest.mark.parametrize(
    ("path", "value", "rule"),
    [
        ("/purchase/screws/wall-lag/count", 0, "too-few-bought"),
        ("/purchase/panels/cladding", {"cartons": 6}, "too-few-bought"),
        ("/purchase/sealants/perimeter/count", 0, "tin-runs-out"),
        ("/purchase/finishes/seat/volume", "100 ml", "tin-runs-out"),
        ("/purchase/paints/left/volume", "100 ml", "tin-runs-out"),
        ("/purchase/backers/perimeter/length", "1 m", "roll-runs-out"),
        ("/purchase/boards/seat/thickness", "1 in", "board-bought-too-thin"),
        ("/purchase/boards/seat/depth", "10 in", "board-bought-too-narrow"),
        ("/purchase/boards/seat/length", "40 in", "board-bought-too-short"),
        ("/purchase/electrical/lights/depth", "1 in", "extender-of-another-depth"),
        ("/purchase/timber/4x10/stick", "12 in", "stick-too-short"),
        ("/purchase/timber/4x10/species", "western cedars", "another-wood-bought"),
    ],
)
def test_one_slip_is_one_finding(path, value, rule):
    found = of_purchase(examined("alcove-seat", {"op": "replace", "path": path, "value": value}))
    assert [identity for identity, _, _ in found] == [rule]


@pytest.mark.parametrize("group", [
    "panels", "steel", "screws", "washers", "boards", "timber", "trims", "sealants", "backers", "finishes", "primers",
    "paints", "fillers", "cleaners", "abrasives", "electrical",
])  # fmt: skip
def test_whatever_is_left_out_of_the_list_is_missed(group):
    before = [one for one in examined("alcove-seat").rows["need"] if one.values["group"] == group]
    found = examined("alcove-seat", {"op": "remove", "path": f"/purchase/{group}"})
    missed = [
        (one.rule.id, 1 + len(one.also_at)) for one in found.inspection.findings if one.rule.id == "not-on-the-list"
    ]
    assert sum(count for _, count in missed) == len(before) > 0
