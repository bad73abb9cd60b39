"""Plans with one classic mistake each in the order of the work: that finding, at its line, and nothing else at all."""

from __future__ import annotations

import pytest
from shipped_plans import examined

# plan, rule, level, pointer, what is found beside it
MISTAKES = [
    ("handed-over-before-it-is-proved", "handed-over-unproved", "stop-work", "/steps/hand-over/after", set()),
    ("hung-on-wet-filler", "wait-cut-short", "correction", "/steps/hang/after", set()),
    ("nobody-drills-the-pilots", "step-missing", "correction", "/steps", set()),
]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, beside):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer) for one in found] == [("breaks", level, pointer)]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "beside"), MISTAKES)
def test_nothing_else_is_wrong_with_the_plan(name, rule, level, pointer, beside):
    inspection = examined(f"faulty/{name}").inspection
    assert {one.rule.id for one in inspection.findings} - {rule} == beside
    assert not inspection.not_inspected


@pytest.mark.parametrize("name", ["alcove-seat", "boathouse-niche", "bracket-shelf", "cleat-shelf", "display-shelf", "panel-wall"])  # noqa: E501  # fmt: skip
def test_the_order_of_a_clean_plan_holds_throughout(name):
    inspection = examined(name).inspection
    assert not [one.rule.id for one in inspection.findings if one.rule.trade == "sequence"]
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "sequence"]
    assert {rule for rule, _ in inspection.held} >= {"step-missing", "wait-cut-short", "job-lasts-long"}


def test_the_wet_filler_and_the_proof_are_told_with_their_times():
    (finding,) = [
        one for one in examined("faulty/hung-on-wet-filler").inspection.findings if one.rule.id == "wait-cut-short"
    ]
    assert (finding.measure, finding.limit) == (0.0, 24.0)
    assert finding.text.startswith("Step hang (fix steel) after patch (patch wall): ")
