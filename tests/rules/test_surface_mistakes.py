"""Plans with one classic mistake each on a wall's face or a board's finish: that finding at its line, nothing else."""

from __future__ import annotations

import pytest
from shipped_plans import examined

TRADES = ("surface", "finishing", "boards", "framing", "steel")

# plan, rule, level, pointer
MISTAKES = [
    ("grease-sanded-in", "sanded-before-washing", "correction", "/steps/abrade"),
    ("tape-over-a-hollow", "tape-too-thin-for-the-wall", "correction", "/panels/cladding/adhesive/thickness"),
    ("varnished-on-top-only", "one-sided-finish", "correction", "/boards/chart-shelf/finish/coats/bottom"),
    ("from-80-to-220", "grit-jump", "correction", "/boards/parts-shelf/sanding/1"),
    ("books-on-soft-varnish", "loaded-before-the-finish-cured", "correction", "/steps/finish/then_wait"),
]


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, len(one.also_at)) for one in found] == [("breaks", level, pointer, 0)]


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_nothing_else_is_wrong_with_the_wall_or_the_board(name, rule, level, pointer):
    findings = examined(f"faulty/{name}").inspection.findings
    others = {one.rule.id for one in findings if one.rule.trade in TRADES and one.level != "advisory"}
    assert others == {rule}


@pytest.mark.parametrize(("name", "rule", "level", "pointer"), MISTAKES)
def test_everything_of_wall_and_board_could_be_inspected(name, rule, level, pointer):
    inspection = examined(f"faulty/{name}").inspection
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade in TRADES]
    assert not [one for one in inspection.findings if one.verdict == "failed"]


@pytest.mark.parametrize(
    "name", ["alcove-seat", "boathouse-niche", "display-shelf", "bracket-shelf", "cleat-shelf", "panel-wall"]
)
def test_walls_and_finishes_of_a_clean_plan_hold_throughout(name):
    inspection = examined(name).inspection
    found = [one for one in inspection.findings if one.rule.trade in ("surface", "finishing")]
    assert not [one.rule.id for one in found if one.level != "advisory"]
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade in ("surface", "finishing")]
