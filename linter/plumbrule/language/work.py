"""Tree to one function: three truth values, a tolerance on every comparison, and no result that is not finite."""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeAlias

from plumbrule.language import closures
from plumbrule.language.closures import TOLERANCE, Step, Value, Values, equal, less
from plumbrule.language.faults import CannotWork
from plumbrule.language.functions import FUNCTIONS
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
    parts,
    reads,
)

__all__ = ["TOLERANCE", "Value", "Values", "Work", "compile_", "equal", "less"]

Work: TypeAlias = Callable[[Values], Value]

_BINARY: dict[str, Callable[[Step, Step], Step]] = {
    "+": closures.plus,
    "-": closures.minus,
    "*": closures.times,
    "^": closures.power,
    "<": closures.below,
    "<=": closures.at_most,
    ">": closures.above,
    ">=": closures.at_least,
    "==": closures.same,
    "!=": closures.unlike,
    "in": closures.within,
    "&&": closures.both,
    "||": closures.either,
}
_FAILURES = (CannotWork, TypeError, ArithmeticError, ValueError)


def compile_(node: Node, formula: bool = False) -> Work:
    """The function that works `node` out for given values, which are in SI.

    None is unknown, and so is a name that is not given: `false && unknown` is false, `true || unknown` is true,
    anything else that needs an unknown is unknown. The tree must have passed `check`. A value of another kind than
    was checked, a division by what equals zero, and a result that is not finite raise CannotWork. With `formula`,
    a divisor must be exactly zero to be refused: a formula may well divide by a very small number.
    """
    step, _ = _step(node, 0.0 if formula else TOLERANCE)

    def work(values: Values) -> Value:
        try:
            return step(values)  # type: ignore[no-any-return]  # closures are as loose as the values they pass on
        except (TypeError, ArithmeticError, ValueError) as fault:
            raise CannotWork(f"It cannot be worked out: {fault}.") from fault

    return work


def _step(node: Node, nearly_zero: float) -> tuple[Step, bool]:
    """The closure, and whether it gives the same whatever the values are; such a one is worked here and now."""
    if isinstance(node, Name):
        return closures.name(node.name), False
    if isinstance(node, Numeral | Quoted | Answer | UnitName):
        return closures.constant(node.value), True
    below = [_step(part, nearly_zero) for part in parts(node)]
    step = _composed(node, [part for part, _ in below], nearly_zero)
    if all(fixed for _, fixed in below):
        try:
            return closures.constant(step({})), True
        except _FAILURES:
            return step, False  # it fails when it is worked, not when the rulebook is read
    return step, False


def _composed(node: Node, below: list[Step], nearly_zero: float) -> Step:
    if isinstance(node, Binary):
        if node.operator == "/":
            return closures.over(below[0], below[1], nearly_zero)
        return _BINARY[node.operator](*below)
    if isinstance(node, Unary):
        return closures.negative(*below) if node.operator == "-" else closures.negation(*below)
    if isinstance(node, Choice):
        return closures.choice(*below)
    if isinstance(node, Several):
        return closures.several(tuple(below))
    if isinstance(node, Call):
        return closures.call(FUNCTIONS[node.function], tuple(below))
    if isinstance(node, Macro):
        over, body = below
        names = tuple(sorted(reads(node.body) - {node.item}))
        return closures.macro(node.kind == "all", over, node.item, body, names)
    raise TypeError(f"{type(node).__name__} is no node of an expression")
