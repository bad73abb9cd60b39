"""Plans with one classic mistake each at the edges of panels: that finding, at its line, and nothing else of the trade;
and the base plans, which have none."""

from __future__ import annotations

import pytest
from shipped_plans import PLANS, examined

# plan, rule, level, pointer, how many joints, sealants or trims have it
MISTAKES = [
    ("panels-sealed-the-same-day", "sealed-too-early", "correction", "/steps/seal/after", 1),
    ("painters-caulk-at-the-ends-of-a-long-run", "wrong-sealant-for-the-movement", "correction",
     "/panels/wainscot/gaps/inside_corner", 2),
    ("edge-trim-pushed-on-after-the-panels", "panels-laid-before-their-trim", "correction", "/steps/profile/after", 1),
]  # fmt: skip


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, count):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, 1 + len(one.also_at)) for one in found] == [
        ("breaks", level, pointer, count)
    ]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count"), MISTAKES)
def test_nothing_else_is_wrong_with_the_joints(name, rule, level, pointer, count):
    inspection = examined(f"faulty/{name}").inspection
    assert {one.rule.id for one in inspection.findings if one.rule.trade == "joints"} == {rule}
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "joints"]
    assert not [one for one in inspection.findings if one.verdict == "failed" and one.rule.trade == "joints"]


@pytest.mark.parametrize("path", sorted(PLANS.glob("*.yaml")), ids=lambda path: path.stem)
def test_the_joints_of_a_clean_plan_hold_throughout(path):
    inspection = examined(path.stem).inspection
    assert not [one.rule.id for one in inspection.findings if one.rule.trade == "joints"]
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "joints"]
