"""Plans with one classic mistake each in a board: that finding, at its line, and nothing else to put right."""

from __future__ import annotations

import pytest
from shipped_plans import examined

TRADES = ("boards", "framing", "steel")

# plan, rule, level, pointer, how many boards, cracks or screws have it, what may be found beside it
MISTAKES = [
    ("slab-straight-from-the-sawmill", "moisture-not-settled", "correction", "/boards/larch-slab/moisture", 1,
     {"settles-too-short"}),
    ("screwed-down-front-and-back", "board-held-in-two-rows", "correction", "/holes/arm/diameter", 1,
     {"no-room-to-move"}),
    ("check-through-the-slab", "crack-too-deep", "correction", "/boards/bread-shelf/cracks/shake/depth", 1, set()),
    ("screw-beside-the-check", "screw-near-a-crack", "correction", "/boards/score-shelf/cracks/check/from_left", 1,
     set()),
    ("thick-shelf-jams-between-its-piers", "cannot-be-tilted-in", "correction", "/boards/pier-shelf/length", 1, set()),
    ("tape-behind-the-panel-forgotten", "board-does-not-fit", "correction", "/boards/print-shelf/length", 1, set()),
    ("cut-before-the-panels-are-up", "cut-to-length-too-early", "correction", "/steps/cut/after", 1, set()),
    ("shoe-shelf-at-chair-height", "low-shelf-without-a-seats-load", "correction", "/boards/coat-shelf/load/point", 1,
     set()),
    ("book-shelf-in-the-corridor", "reaches-into-a-public-way", "correction", "/boards/new-book-shelf/depth", 1, set()),
    ("wide-gap-at-the-end", "short-bearing-on-the-return", "correction", "/boards/ticket-shelf/gaps/right", 1, set()),
]  # fmt: skip


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count", "beside"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, level, pointer, count, beside):
    found = [one for one in examined(f"faulty/{name}").inspection.findings if one.rule.id == rule]
    assert [(one.verdict, one.level, one.pointer, 1 + len(one.also_at)) for one in found] == [
        ("breaks", level, pointer, count)
    ]


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count", "beside"), MISTAKES)
def test_nothing_else_is_wrong_with_the_board_its_steel_or_its_framing(name, rule, level, pointer, count, beside):
    found = examined(f"faulty/{name}").inspection.findings
    others = {one.rule.id for one in found if one.rule.trade in TRADES and one.level != "advisory"}
    assert others - {rule} == beside


@pytest.mark.parametrize(("name", "rule", "level", "pointer", "count", "beside"), MISTAKES)
def test_everything_of_the_board_could_be_inspected(name, rule, level, pointer, count, beside):
    inspection = examined(f"faulty/{name}").inspection
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade in TRADES]
    assert not [one for one in inspection.findings if one.verdict == "failed"]


@pytest.mark.parametrize("name", ["alcove-seat", "display-shelf", "bracket-shelf", "cleat-shelf"])
def test_the_boards_of_a_clean_plan_hold_throughout(name):
    inspection = examined(name).inspection
    wrong = [one.rule.id for one in inspection.findings if one.rule.trade == "boards" and one.level != "advisory"]
    assert not wrong
    assert not [one.rule.id for one in inspection.not_inspected if one.rule.trade == "boards"]
