"""Plans with one classic mistake each at a box: that finding, at its line, and nothing else wrong with any box."""

from __future__ import annotations

import pytest
from shipped_plans import GOOD, examined

# plan, rule, level, pointer
MISTAKES = [
    (
        "tape-sinks-the-switch",
        "rim-behind-a-face-that-burns",
        "stop-work",
        "/walls/loom-side/boxes/loom-light/extender",
    ),
    ("proved-dead-with-a-pen", "pen-proves-nothing", "stop-work", "/steps/dead/verified"),
    ("power-on-with-the-box-open", "power-on-before-the-cover", "stop-work", "/steps/power"),
]


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name: str, rule: str, level: str, pointer: str) -> None:
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, 1 + len(one.also_at)) for one in found] == [
        ("breaks", level, pointer, 1)
    ]


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_nothing_else_is_wrong_with_the_box(name: str, rule: str, level: str, pointer: str) -> None:
    inspection = examined(f"faulty/{name}").inspection
    others = {one.rule.id for one in inspection.findings if one.rule.trade == "electrical"}
    assert others == {rule}
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "electrical"]


@pytest.mark.parametrize("name", GOOD)
def test_the_boxes_of_a_good_plan_hold_throughout(name: str) -> None:
    inspection = examined(name).inspection
    wrong = [one.rule.id for one in inspection.findings if one.rule.trade == "electrical" and one.level != "advisory"]
    assert not wrong
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "electrical"]
