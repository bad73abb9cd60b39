"""How the measure of a finding and its limit were worked out: every line, or those that decide, as printed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plumbrule.catalogue.fact import Value
from plumbrule.inspection.types import Finding
from plumbrule.language import TOLERANCE, parse, reads
from plumbrule.language.nodes import Call, Name
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si
from plumbrule.report.rule_line import expression_line
from plumbrule.report.worked_line import Line, line


class Sum(NamedTuple):
    """The lines that decide, first worked first, and how many of the whole calculation are left out."""

    lines: tuple[Line, ...]
    left_out: int


def lines_of_finding(finding: Finding, system: str) -> Sum:
    """The calculation of a finding as it is printed under it, in the units of `system` (`inch` or `metric`).

    Where a value is the least or the greatest of several, only the one that governs is followed further.
    """
    rule, row = finding.rule, finding.row
    whole = worked_of_finding(finding)
    deciding: dict[int, Worked] = {}
    for field in _fields(finding):
        for worked in essential(row.worked[field]):
            deciding.setdefault(id(worked), worked)
    lines = [line(worked, system) for worked in deciding.values()]
    names: dict[str, Value] = {**row.values, **rule.values()}
    for symbol, expression, value in (
        ("measure", rule.measure, finding.measure),
        ("limit", rule.bounds.at_least if finding.bound == "at least" else rule.bounds.at_most, finding.limit),
    ):
        if expression is None or value is None:
            continue
        words = rule.measure_says if symbol == "measure" else f"{finding.bound} this"
        made = expression_line(symbol, expression, names, finding, value, words, system)
        if made is not None:
            lines.append(made)
    return Sum(tuple(lines), len(whole) - len(deciding))


def worked_of_finding(finding: Finding) -> tuple[Worked, ...]:
    """Every worked line behind what the rule compared, each once, in the order of working."""
    found: dict[int, Worked] = {}
    for field in _fields(finding):
        found.update((id(worked), worked) for worked in finding.row.worked[field].lines())
    return tuple(found.values())


def essential(worked: Worked) -> Iterator[Worked]:
    """The lines that decide `worked`, in the order of working, `worked` last: of its steps those whose value it uses,
    and of the arguments of a `min` or `max` those that govern."""
    seen: set[int] = set()
    yield from _essential(worked, seen)


def _essential(worked: Worked, seen: set[int]) -> Iterator[Worked]:
    if id(worked) in seen:
        return
    seen.add(id(worked))
    used = _used(worked)
    for step in worked.steps:
        if any(symbol == step.symbol or _same(value, to_si(step.value, step.unit)) for symbol, value in used.items()):
            yield from _essential(step, seen)
    yield worked


def _used(worked: Worked) -> dict[str, float]:
    """The numbers that decide a line, in SI, by symbol."""
    numbers = {number.symbol: to_si(number.value, number.unit) for number in worked.numbers}
    node = parse(worked.formula, formula=True)
    if isinstance(node, Call) and node.function in ("min", "max") and all(isinstance(a, Name) for a in node.arguments):
        result = to_si(worked.value, worked.unit)
        return {symbol: value for symbol, value in numbers.items() if _same(value, result)}
    return {symbol: value for symbol, value in numbers.items() if symbol in reads(node)}


def _same(one: float, other: float) -> bool:
    return abs(one - other) <= TOLERANCE * max(abs(one), abs(other))


def _fields(finding: Finding) -> list[str]:
    """The fields that the rule compares and that were reckoned, in one order."""
    rule = finding.rule
    expressions = (rule.measure, rule.bounds.at_least, rule.bounds.at_most) if rule.measure else (rule.that,)
    read = frozenset[str]().union(*(expression.reads for expression in expressions if expression))
    return sorted(field for field in read if field in finding.row.worked)
