"""Plans in which somebody gets hurt in one classic way: that finding, at its line, and nothing else to put right."""

from __future__ import annotations

import pytest
from shipped_plans import examined

# plan, rule, level, pointer, what may be found beside it
MISTAKES = [
    ("old-paint-sanded-untested", "old-paint-ground-untested", "stop-work", "/steps/abrade",
     {"old-paint-not-tested"}),
    ("oily-rags-in-the-bin", "oily-rags-left", "stop-work", "/steps/finish/controls", set()),
    ("grinder-beside-the-sawdust", "sparks-near-what-burns", "stop-work", "/steps/saw-steel/controls", set()),
]  # fmt: skip


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, beside):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, len(one.also_at)) for one in found] == [("breaks", level, pointer, 0)]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_nothing_else_is_wrong(name, rule, level, pointer, beside):
    found = examined(f"faulty/{name}").inspection.findings
    assert {one.rule.id for one in found if one.level != "advisory"} - {rule} == beside
    assert not [one for one in found if one.verdict == "failed"]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_everything_that_hurts_could_be_inspected(name, rule, level, pointer, beside):
    assert not [
        one.rule.id for one in examined(f"faulty/{name}").inspection.not_inspected if one.rule.trade == "hazards"
    ]
