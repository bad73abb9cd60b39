"""Plans with one classic mistake each in the layout of panels: that finding, at its line, and nothing else of it."""

from __future__ import annotations

import pytest
from shipped_plans import examined

from plumbrule.rulebook.load import load

# plan, rule, level, pointer, how many walls, pieces or cut-outs have it, what comes with it
MISTAKES = [
    ("line-set-from-the-high-end", "level-line-too-high", "correction", "/panels/wainscot/courses/level_line", 1,
     {"wall-not-covered"}),
    ("half-stagger-leaves-a-strip", "narrow-end-piece", "correction", "/panels/listening-wall/courses/stagger", 6,
     set()),
    ("panels-behind-the-angle", "panel-clamped-under-a-shelf", "correction", "/steps/lay/after", 1, set()),
]  # fmt: skip


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count", "beside"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, count, beside):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, 1 + len(one.also_at)) for one in found] == [
        ("breaks", level, pointer, count)
    ]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count", "beside"), MISTAKES)
def test_nothing_else_is_wrong_with_the_panels(name, rule, level, pointer, count, beside):
    found = examined(f"faulty/{name}").inspection.findings
    others = {one.rule.id for one in found if one.rule.trade == "panels" and one.level != "advisory"}
    assert others - {rule} == beside


@pytest.mark.parametrize("name", ["alcove-seat", "panel-wall"])
def test_the_good_plans_are_clean(name):
    found = [one for one in examined(name).inspection.findings if one.rule.trade == "panels"]
    assert [(one.rule.id, one.verdict) for one in found] == []


def test_every_rule_of_the_trade_judges_a_shipped_plan():
    """A rule that never looks at anything proves nothing on a good plan."""
    idle = {"gap-at-a-tongue", "too-few-glue-lines", "panel-clamped-under-a-shelf", "panel-joints-stand-open"}
    judged = set()
    for name in ("alcove-seat", "panel-wall"):
        judged |= {rule for rule, _ in examined(name).inspection.held}
    trade = {rule.id for rule in load().rules if rule.trade == "panels"}
    assert trade - judged <= idle
