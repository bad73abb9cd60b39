"""A rule's own expression as a printed line: `limit = 1.5 × 0.3125 in = 0.46875 in`."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from plumbrule.catalogue.fact import Value
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.types import Finding
from plumbrule.language import Expression, Node, Number, check, compile_, reads, show
from plumbrule.language.nodes import Binary, Call, Choice, Name, Several, Unary, UnitName
from plumbrule.reading.units import UNITS
from plumbrule.report.figures import converted, fitting_unit, significant, unit_for, with_unit
from plumbrule.report.worked_line import DIGITS, FIGURES, Line, gives


def expression_line(
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
    node, quantities = _fold(_taken(expression.node, names), system)
    if not isinstance(node, Binary | Unary | Call):
        return None
    unit = unit_for(UNITS[finding.unit].dimension, system)
    if unit is None:
        return None
    result = converted(value, finding.unit, unit)
    for figures in FIGURES:
        texts = dict(quantities)
        for name in reads(node) - quantities.keys():
            text = _text(name, names, finding, system, figures)
            if text is None:
                return None
            texts[name] = text
        put = show(node, texts)
        for digits in DIGITS:
            shown = significant(result, digits)
            if gives(put, shown, digits):
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
    return CATALOGUE[finding.row.kind].by_name[name].unit


def _taken(node: Node, names: Mapping[str, Value]) -> Node:
    """The tree with each `test ? yes : no` gone the way it went: a reader wants the factor that was used."""
    if isinstance(node, Choice):
        return _taken(node.yes if compile_(node.test)(names) else node.no, names)
    if isinstance(node, Binary):
        return replace(node, left=_taken(node.left, names), right=_taken(node.right, names))
    if isinstance(node, Unary):
        return replace(node, operand=_taken(node.operand, names))
    if isinstance(node, Call):
        return replace(node, arguments=tuple(_taken(argument, names) for argument in node.arguments))
    return node


def _fold(node: Node, system: str) -> tuple[Node, dict[str, str]]:
    """The tree with each constant quantity (`1/16 * inch`) as one name, and what is printed for these names."""
    quantities: dict[str, str] = {}

    def fold(node: Node) -> Node:
        if _has_unit(node) and not reads(node):
            kind = check(node, {})
            value = compile_(node)({})
            if isinstance(kind, Number) and isinstance(value, int | float):
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
    if isinstance(node, Call | Several):
        return any(_has_unit(part) for part in (node.arguments if isinstance(node, Call) else node.items))
    return False
