"""Plans in which somebody gets hurt in one classic way: that finding, at its line, and nothing else to put right."""

from __future__ import annotations

from datetime import date
from functools import cache

import pytest

from plumbrule import shipped
from plumbrule.inspection.examine import Examined, examine
from plumbrule.reading.places import read_file
from plumbrule.rulebook.load import load

PLANS = shipped.folder("plans")

# plan, rule, level, pointer, what may be found beside it
MISTAKES = [
    ("old-paint-sanded-untested", "old-paint-ground-untested", "stop-work", "/steps/abrade",
     {"old-paint-not-tested"}),
    ("oily-rags-in-the-bin", "oily-rags-left", "stop-work", "/steps/finish/controls", set()),
    ("grinder-beside-the-sawdust", "sparks-near-what-burns", "stop-work", "/steps/saw-steel/controls", set()),
]  # fmt: skip


@cache
def examined(name: str) -> Examined:
    return examine(read_file(PLANS / f"faulty/{name}.yaml"), load(), date(2026, 6, 1))


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, beside):
    found = [one for one in examined(name).inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, len(one.also_at)) for one in found] == [("breaks", level, pointer, 0)]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_nothing_else_is_wrong(name, rule, level, pointer, beside):
    found = examined(name).inspection.findings
    assert {one.rule.id for one in found if one.level != "advisory"} - {rule} == beside
    assert not [one for one in found if one.verdict == "failed"]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_everything_that_hurts_could_be_inspected(name, rule, level, pointer, beside):
    assert not [one.rule.id for one in examined(name).inspection.not_inspected if one.rule.trade == "hazards"]
