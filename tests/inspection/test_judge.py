"""One rule on one row: all verdicts, the tolerance, and what is named as missing."""

from __future__ import annotations

import pytest

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.judge import judge
from plumbrule.language import Truth, expression
from plumbrule.rulebook.rule import Bounds, Caution, Rule

NAMES = CATALOGUE["hole"].types()


def a_rule(when=None, measure=None, at_least=None, at_most=None, that=None) -> Rule:
    def number(text):
        return expression(text, NAMES) if text else None

    def truth(text):
        return expression(text, NAMES, Truth()) if text else None

    return Rule(
        id="a-rule", trade="steel", title="A rule", level="correction", looks_at="hole",
        when=truth(when), measure=number(measure), measure_says="", bounds=Bounds(number(at_least), number(at_most)),
        that=truth(that), settings={}, says="{row}", why="why", sources=(), caution=Caution("NOTICE", "care"),
        defer="someone", remedies=(), since="0.1.0", on_trial=False, unit="mm", path="a-rule.yaml",
    )  # fmt: skip


def a_row(missing=None, outside=None, failed=None, **values) -> Row:
    return Row(
        "hole",
        "/angles/a/wall_holes",
        "/angles/a",
        "a W1",
        values,
        {},
        {},
        missing or {},
        outside or {},
        failed or {},
        {},
    )


@pytest.mark.parametrize(
    ("edge", "verdict", "margin"),
    [
        (9.0, "breaks", -1.0),
        (10.0, "holds", 0.0),
        (11.0, "holds", 1.0),
        (10.0 - 1e-10, "holds", 0.0),
        (10.0 - 1e-6, "breaks", -1e-6),
    ],
)
def test_a_measure_on_its_limit_holds_and_one_below_by_more_than_rounding_breaks(edge, verdict, margin):
    judgement = judge(
        a_rule(measure="edge_distance", at_least="2 * diameter"), a_row(edge_distance=edge, diameter=5.0), {}
    )
    assert judgement.verdict == verdict
    assert judgement.margin == pytest.approx(margin, abs=1e-12)


def test_a_utilisation_of_1_004_is_not_1():
    judgement = judge(
        a_rule(measure="edge_distance / diameter", at_most="1"), a_row(edge_distance=5.02, diameter=5.0), {}
    )
    assert judgement.verdict == "breaks"


def test_between_reports_the_bound_that_is_nearer_to_breaking():
    rule = a_rule(measure="diameter", at_least="4 * mm", at_most="6 * mm")
    assert judge(rule, a_row(diameter=7.0), {})[:5] == ("breaks", 7.0, 6.0, -1.0, "at most")
    assert judge(rule, a_row(diameter=3.5), {})[:5] == ("breaks", 3.5, 4.0, -0.5, "at least")
    assert judge(rule, a_row(diameter=4.5), {})[:5] == ("holds", 4.5, 4.0, 0.5, "at least")


def test_what_is_missing_is_named_all_of_it():
    row = a_row(
        missing={
            "edge_distance": ("/sections/s/legs/wall",),
            "diameter": ("/holes/p/diameter", "/sections/s/legs/wall"),
        }
    )
    judgement = judge(a_rule(measure="edge_distance", at_least="2 * diameter"), row, {})
    assert judgement.verdict == "not inspected"
    assert set(judgement.missing) == {"/sections/s/legs/wall", "/holes/p/diameter"}


def test_an_unknown_condition_is_not_a_pass():
    row = a_row(missing={"carries_people": ("/boards/b/carries",)}, diameter=5.0)
    judgement = judge(a_rule(when="carries_people", measure="diameter", at_most="1 * mm"), row, {})
    assert (judgement.verdict, judgement.missing) == ("not inspected", ("/boards/b/carries",))


def test_a_condition_that_is_false_whatever_is_missing_does_not_apply():
    row = a_row(missing={"carries_people": ("/boards/b/carries",)}, leg="seat")
    assert judge(a_rule(when='leg == "wall" && carries_people', that="washer"), row, {}).verdict is None


def test_outside_the_rulebook_gives_its_reason_and_no_number():
    row = a_row(outside={"tear_out_strength": "The steel has no published strength."}, screw_diameter=5.0)
    judgement = judge(a_rule(measure="tear_out_strength", at_least="1 * lbf"), row, {})
    assert (judgement.verdict, judgement.measure, judgement.reason) == (
        "not inspected",
        None,
        "The steel has no published strength.",
    )


@pytest.mark.parametrize(
    ("rule", "row"),
    [
        (a_rule(measure="edge_distance / play", at_least="1"), a_row(edge_distance=5.0, play=0.0)),
        (a_rule(measure="edge_distance", at_least="1 * mm"), a_row(failed={"edge_distance": "it came out as nan"})),
        (a_rule(that="countersunk"), a_row(diameter=5.0)),
        (a_rule(that='leg == "wall"'), a_row(leg=5.0)),
    ],
    ids=["division by zero", "a fact that failed", "a field the row does not have", "a value of the wrong kind"],
)
def test_what_cannot_be_worked_out_fails_and_never_passes(rule, row):
    judgement = judge(rule, row, {})
    assert judgement.verdict == "failed"
    assert judgement.reason
