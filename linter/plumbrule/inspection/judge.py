"""One rule on one row: the verdict, the two numbers that were compared, and what is wanting."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.inspection.types import Bound, Verdict
from plumbrule.language import TOLERANCE, CannotWork, Expression
from plumbrule.language import Value as Worth
from plumbrule.rulebook.rule import Rule


class Judgement(NamedTuple):
    """`verdict` is None where the rule does not apply to the row."""

    verdict: Verdict | None
    measure: float | None = None
    limit: float | None = None
    margin: float | None = None
    bound: Bound = ""
    missing: tuple[str, ...] = ()
    reason: str = ""


DOES_NOT_APPLY = Judgement(None)
HOLDS = Judgement("holds")
BREAKS = Judgement("breaks")


def judge(rule: Rule, row: Row, settings: Mapping[str, float]) -> Judgement:
    """Judges `row` by `rule`. Never raises: what cannot be worked out is the verdict `failed`, with its reason."""
    names: Mapping[str, Worth] = {**row.values, **settings} if settings else row.values
    try:
        if rule.when is not None:
            applies = rule.when.work(names)
            if applies is None:
                return _unknown(row, rule.when)
            if applies is False:
                return DOES_NOT_APPLY
        if rule.that is not None:
            so = rule.that.work(names)
            if so is None:
                return _unknown(row, rule.that)
            return HOLDS if so else BREAKS
        return _compare(rule, row, names)
    except CannotWork as error:
        return Judgement("failed", reason=str(error))


def _compare(rule: Rule, row: Row, names: Mapping[str, Worth]) -> Judgement:
    assert rule.measure is not None
    measure = rule.measure.work(names)
    bounds = [
        (bound, expression, expression.work(names))
        for bound, expression in (("at least", rule.bounds.at_least), ("at most", rule.bounds.at_most))
        if expression is not None
    ]
    unknown = [rule.measure] if measure is None else []
    unknown += [expression for _, expression, limit in bounds if limit is None]
    if unknown:
        return _unknown(row, *unknown)
    assert isinstance(measure, int | float)
    worst: Judgement | None = None
    for bound, _, limit in bounds:
        assert isinstance(limit, int | float)
        margin = measure - limit if bound == "at least" else limit - measure
        if abs(margin) <= TOLERANCE * max(abs(measure), abs(limit), 1.0):
            margin = 0.0
        verdict: Verdict = "breaks" if margin < 0 else "holds"
        if worst is None or worst.margin is None or margin < worst.margin:
            worst = Judgement(verdict, float(measure), float(limit), float(margin), bound)  # type: ignore[arg-type]
    assert worst is not None
    return worst


def _unknown(row: Row, *expressions: Expression) -> Judgement:
    """Not inspected, naming all there is to measure; failed, where the row itself could not be worked out."""
    reads = sorted(frozenset[str]().union(*(expression.reads for expression in expressions)))
    failed = [row.failed[name] for name in reads if name in row.failed]
    if failed:
        return Judgement("failed", reason="; ".join(dict.fromkeys(failed)))
    missing = tuple(dict.fromkeys(pointer for name in reads for pointer in row.missing.get(name, ())))
    outside = "; ".join(dict.fromkeys(row.outside[name] for name in reads if name in row.outside))
    if not missing and not outside:
        lacking = ", ".join(name for name in reads if name not in row.values)
        return Judgement("failed", reason=f"the rule reads {lacking}, which {row.label} does not have")
    return Judgement("not inspected", missing=missing, reason=outside)
