"""Lines of a calculation as printed: each can be worked again from its own text, and is, before it is shown.

A line reads `SYMBOL = FORMULA WITH NUMBERS = VALUE UNIT`. Taking the units off its numbers leaves a formula of the rule
language, and working that gives VALUE to every figure shown: within one line all units fit together.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import cache
from typing import NamedTuple

from plumbrule.catalogue.fact import Row, Value
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.types import Finding
from plumbrule.language import BadExpression, CannotWork, Expression, Node, check, compile_, parse, reads, rework, show
from plumbrule.language.nodes import Binary, Call, Choice, Name, Several, Unary, UnitName
from plumbrule.language.types import Number as NumberType
from plumbrule.mechanics.worked import Number, Worked
from plumbrule.reading.units import UNITS
from plumbrule.report.figures import converted, fitting_unit, significant, unit_for, with_unit

_FIGURES = (6, 8, 10, 12, 15, 17)
DIFFERS = "this line does not work out again: do not rely on it, and report it"


class Line(NamedTuple):
    """`put` is the formula with the numbers put in, `value` the result as printed, `formula` the formula in symbols.

    `agrees` is false where the printed numbers do not give the printed result: a mistake of the program, to be said.
    """

    symbol: str
    put: str
    value: str
    words: str
    source: str
    formula: str
    agrees: bool = True

    def sum(self) -> str:
        """The line itself. Its parts are separated by ` = `."""
        return f"{self.symbol} = {self.put} = {self.value}"


def line(worked: Worked, system: str) -> Line:
    """One worked line in the units of `system` (`inch` or `metric`); a formula that is only true in the units it was
    published in, in those."""
    node = parse(worked.formula, formula=True)
    symbol = worked.symbol.replace(" ", "_")
    for units in _unit_choices(worked, system):
        made = _made(node, worked.numbers, units, worked.value, worked.unit)
        if made:
            return Line(symbol, *made, worked.words, worked.source, worked.formula)
    numbers = {number.symbol: with_unit(significant(number.value, 12), number.unit) for number in worked.numbers}
    value = with_unit(significant(worked.value, 6), worked.unit)
    return Line(symbol, show(node, numbers), value, worked.words, worked.source, worked.formula, agrees=False)


def lines_of_finding(finding: Finding, system: str) -> list[Line]:
    """How the measure of a finding and its limit were worked out, first worked first."""
    rule, row = finding.rule, finding.row
    lines = [line(worked, system) for worked in worked_of_finding(finding)]
    names: dict[str, Value] = {**row.values, **rule.values()}
    for symbol, expression, value in (
        ("measure", rule.measure, finding.measure),
        ("limit", rule.bounds.at_least if finding.bound == "at least" else rule.bounds.at_most, finding.limit),
    ):
        if expression is None or value is None:
            continue
        words = rule.measure_says if symbol == "measure" else f"{finding.bound} this"
        made = _expression_line(symbol, expression, names, finding, value, words, system)
        if made is not None:
            lines.append(made)
    return lines


def worked_of_finding(finding: Finding) -> tuple[Worked, ...]:
    """Every worked line behind what the rule compared, each once, in the order of working."""
    rule = finding.rule
    expressions = (rule.measure, rule.bounds.at_least, rule.bounds.at_most) if rule.measure else (rule.that,)
    fields = sorted(frozenset[str]().union(*(expression.reads for expression in expressions if expression)))
    found: dict[int, Worked] = {}
    for field in fields:
        if field in finding.row.worked:
            found.update((id(worked), worked) for worked in finding.row.worked[field].lines())
    return tuple(found.values())


def rework_text(put: str) -> float:
    """The value of a printed formula, from its text alone. Raises BadExpression or CannotWork."""
    return rework(_units_of_numbers().sub(r"\1", put), {})


@cache
def _units_of_numbers() -> re.Pattern[str]:
    symbols = sorted((re.escape(symbol) for symbol in UNITS if symbol), key=len, reverse=True)
    return re.compile(rf"([0-9]) ?(?:{'|'.join(symbols)})(?![\w/·²³⁴])")


def _unit_choices(worked: Worked, system: str) -> Iterator[Mapping[str, str]]:
    """By symbol, the result under the empty name: units that fit `system`, then the units the line was worked in."""
    given = {"": worked.unit, **{number.symbol: number.unit for number in worked.numbers}}
    if not worked.published_units:
        fitting = {name: fitting_unit(unit, system) for name, unit in given.items()}
        known = {name: unit for name, unit in fitting.items() if unit is not None}
        if len(known) == len(given):
            yield known
    yield given


def _made(
    node: Node, numbers: tuple[Number, ...], units: Mapping[str, str], value: float, unit: str
) -> tuple[str, str] | None:
    """Formula with numbers, and result, with as many figures as it takes for the one to give the other."""
    result = converted(value, unit, units[""])
    for figures in _FIGURES:
        put = show(node, {
            number.symbol: with_unit(
                significant(converted(number.value, number.unit, units[number.symbol]), figures), units[number.symbol]
            )
            for number in numbers
        })  # fmt: skip
        for digits in (6, 7, 8):
            shown = significant(result, digits)
            if _gives(put, shown, digits):
                return put, with_unit(shown, units[""])
    return None


def _gives(put: str, shown: str, digits: int) -> bool:
    try:
        return significant(rework_text(put), digits) == shown
    except (BadExpression, CannotWork):
        return False


def _expression_line(
    symbol: str,
    expression: Expression,
    names: Mapping[str, Value],
    finding: Finding,
    value: float,
    words: str,
    system: str,
) -> Line | None:
    """The line of a rule's own expression. None where it is a single field or number, which `found` already says, or
    where it reads a list."""
    node, quantities = _fold(expression.node, system)
    if not isinstance(node, Binary | Unary | Call | Choice):
        return None
    unit = unit_for(UNITS[finding.unit].dimension, system)
    if unit is None:
        return None
    result = converted(value, finding.unit, unit)
    for figures in _FIGURES:
        texts = dict(quantities)
        for name in reads(node) - quantities.keys():
            text = _text(name, names, finding, system, figures)
            if text is None:
                return None
            texts[name] = text
        put = show(node, texts)
        for digits in (6, 7, 8):
            shown = significant(result, digits)
            if _gives(put, shown, digits):
                return Line(symbol, put, with_unit(shown, unit), words, "", expression.source)
    return Line(symbol, put, with_unit(significant(result, 6), unit), words, "", expression.source, agrees=False)


def _text(name: str, names: Mapping[str, Value], finding: Finding, system: str, figures: int) -> str | None:
    value = names.get(name)
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return f'"{value}"'
    if not isinstance(value, int | float):
        return None
    unit = _unit(name, finding)
    into = fitting_unit(unit, system)
    return None if into is None else with_unit(significant(converted(value, unit, into), figures), into)


def _unit(name: str, finding: Finding) -> str:
    if name in finding.rule.settings:
        return finding.rule.settings[name].unit
    return field_unit(finding.row, name)


def field_unit(row: Row, name: str) -> str:
    """The unit a field of a row is kept in."""
    return CATALOGUE[row.kind].by_name[name].unit


def _fold(node: Node, system: str) -> tuple[Node, dict[str, str]]:
    """The tree with each constant quantity (`1/16 * inch`) as one name, and what is printed for these names."""
    quantities: dict[str, str] = {}

    def fold(node: Node) -> Node:
        if _has_unit(node) and not reads(node):
            kind = check(node, {})
            value = compile_(node)({})
            if isinstance(kind, NumberType) and isinstance(value, int | float):
                unit = unit_for(kind.dimension, system)
                if unit is not None:
                    name = f"quantity{len(quantities)}"
                    si = next(
                        known for known in UNITS.values() if known.dimension == kind.dimension and known.factor == 1
                    )
                    quantities[name] = with_unit(significant(converted(value, si.symbol, unit), 12), unit)
                    return Name(name, node.start, node.end)
        if isinstance(node, Binary):
            return replace(node, left=fold(node.left), right=fold(node.right))
        if isinstance(node, Unary):
            return replace(node, operand=fold(node.operand))
        if isinstance(node, Choice):
            return replace(node, test=fold(node.test), yes=fold(node.yes), no=fold(node.no))
        if isinstance(node, Call):
            return replace(node, arguments=tuple(fold(argument) for argument in node.arguments))
        return node

    return fold(node), quantities


def _has_unit(node: Node) -> bool:
    if isinstance(node, UnitName):
        return node.name != "pi"
    if isinstance(node, Binary):
        return _has_unit(node.left) or _has_unit(node.right)
    if isinstance(node, Unary):
        return _has_unit(node.operand)
    if isinstance(node, Choice):
        return any(_has_unit(part) for part in (node.test, node.yes, node.no))
    if isinstance(node, Call | Several):
        return any(_has_unit(part) for part in (node.arguments if isinstance(node, Call) else node.items))
    return False
