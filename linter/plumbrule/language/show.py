"""An expression as a reader sees it: the numbers put in, no bracket too many, ordinary signs."""

from __future__ import annotations

import re
from collections.abc import Mapping

from plumbrule.language.faults import BadExpression, CannotWork
from plumbrule.language.nodes import (
    Answer,
    Binary,
    Call,
    Choice,
    Macro,
    Name,
    Node,
    Numeral,
    Quoted,
    Several,
    Unary,
    UnitName,
    reads,
    walk,
)
from plumbrule.language.tree import parse
from plumbrule.language.work import compile_

_SIGNS = {
    "*": "×", "-": "−", "<=": "≤", ">=": "≥", "==": "=", "!=": "≠", "&&": "and", "||": "or",
}  # fmt: skip
_CHOICE, _OR, _AND, _COMPARISON, _SUM, _FRACTION, _PRODUCT, _SIGN, _POWER, _ATOM = range(10)
_LEVELS = {
    "||": _OR, "&&": _AND, "+": _SUM, "-": _SUM, "*": _PRODUCT, "/": _PRODUCT, "^": _POWER,
}  # fmt: skip
_PLAIN = re.compile(r"[0-9]+(\.[0-9]+)?")
_WITH_UNIT = re.compile(r"[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?( ?[^\d\s/+\-−]+)?")


def show(node: Node, values: Mapping[str, str]) -> str:
    """The formula with `values` put in for the names they have; a name without a value stays.

    A value is text as it is to be printed, with or without a unit (`8.1 mm`, `2-1/2 in`, `−3`); it gets brackets
    where it would otherwise be read wrongly.
    """
    return _show(node, values)[0]


def rework(formula: str, numbers: Mapping[str, float]) -> float:
    """The value of a printed formula, worked again from the numbers printed beside it.

    Raises BadExpression for a formula that cannot be read or a symbol without a number, CannotWork for one that
    has no finite value.
    """
    node = parse(formula, formula=True)
    wanting = reads(node) - numbers.keys()
    if wanting:
        first = next(part for part in walk(node) if isinstance(part, Name) and part.name in wanting)
        raise BadExpression(f'"{first.name}" has no number.', first.start, first.end, "Give every symbol one.")
    result = compile_(node, formula=True)(dict(numbers))
    if not isinstance(result, int | float) or isinstance(result, bool):
        raise CannotWork(f"{formula} is not a number.")
    return float(result)


def _show(node: Node, values: Mapping[str, str]) -> tuple[str, int]:
    """The text, and how tightly it holds together."""
    if isinstance(node, Name):
        text = values.get(node.name)
        return (node.name, _ATOM) if text is None else (text, _tightness(text))
    if isinstance(node, Numeral):
        return node.text, _ATOM
    if isinstance(node, UnitName):
        return node.name, _ATOM
    if isinstance(node, Quoted):
        return (f'"{node.value}"' if '"' not in node.value else f"'{node.value}'"), _ATOM
    if isinstance(node, Answer):
        return ("true" if node.value else "false"), _ATOM
    if isinstance(node, Unary):
        return _unary(node, values), _SIGN
    if isinstance(node, Binary):
        return _binary(node, values)
    if isinstance(node, Choice):
        test, yes = _at(node.test, values, _OR), _at(node.yes, values, _OR)
        return f"{test} ? {yes} : {_at(node.no, values, _CHOICE)}", _CHOICE
    if isinstance(node, Several):
        return f"[{_commas(node.items, values)}]", _ATOM
    if isinstance(node, Call):
        return f"{node.function}({_commas(node.arguments, values)})", _ATOM
    return _macro(node, values), _ATOM


def _unary(node: Unary, values: Mapping[str, str]) -> str:
    if node.operator == "!":
        twice = isinstance(node.operand, Unary) and node.operand.operator == "!"
        return f"not {_at(node.operand, values, _SIGN if twice else _POWER)}"
    return f"−{_at(node.operand, values, _POWER)}"


def _binary(node: Binary, values: Mapping[str, str]) -> tuple[str, int]:
    operator = node.operator
    level = _LEVELS.get(operator, _COMPARISON)
    if operator == "^":
        return f"{_at(node.left, values, _ATOM)}^{_at(node.right, values, _SIGN)}", level
    # The same sign again needs no bracket on the right when it makes no difference which is worked first.
    loose = operator in ("&&", "||") and isinstance(node.right, Binary) and node.right.operator == operator
    left = _at(node.left, values, level + (level == _COMPARISON))
    right = _at(node.right, values, level if loose else level + 1)
    return f"{left} {_SIGNS.get(operator, operator)} {right}", level


def _macro(node: Macro, values: Mapping[str, str]) -> str:
    inside = {name: text for name, text in values.items() if name != node.item}
    return f"{_at(node.over, values, _ATOM)}.{node.kind}({node.item}, {_show(node.body, inside)[0]})"


def _commas(nodes: tuple[Node, ...], values: Mapping[str, str]) -> str:
    return ", ".join(_show(node, values)[0] for node in nodes)


def _at(node: Node, values: Mapping[str, str], level: int) -> str:
    text, tightness = _show(node, values)
    return text if tightness >= level else f"({text})"


def _tightness(text: str) -> int:
    """A bare number or word stands anywhere, a number with a unit anywhere but under a power. A mixed fraction reads as
    one only between spaces (`2-1/2 in + 1/4 in`), and so does a unit with a stroke in it."""
    if _PLAIN.fullmatch(text) or text.startswith(('"', "[")):
        return _ATOM
    if _WITH_UNIT.fullmatch(text):
        return _SIGN
    if text.startswith(("-", "−")):
        return _SUM
    return _FRACTION if text[:1].isdigit() else _ATOM
