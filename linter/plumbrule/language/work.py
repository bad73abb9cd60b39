"""Tree to closures: three truth values, a tolerance on every comparison, and no result that is not finite."""

from __future__ import annotations

import math
import sys
from collections.abc import Callable, Mapping
from typing import TypeAlias

from plumbrule.language.faults import CannotWork
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
)

Scalar: TypeAlias = float | str | bool | None
Value: TypeAlias = Scalar | tuple[Scalar, ...]
Values: TypeAlias = Mapping[str, Value]
Work: TypeAlias = Callable[[Values], Value]

TOLERANCE = 1e-9
_LARGEST = sys.float_info.max


def equal(a: float, b: float) -> bool:
    """Equal within 1e-9 of the larger, or within 1e-9 where both are below 1. What the language calls equal."""
    return abs(a - b) <= TOLERANCE * max(abs(a), abs(b), 1.0)


def less(a: float, b: float) -> bool:
    """`a` is below `b` by more than the tolerance."""
    return b - a > TOLERANCE * max(abs(a), abs(b), 1.0)


def compile_(node: Node, formula: bool = False) -> Work:
    """The function that works `node` out for given values.

    None is unknown, and so is a name that is not given: `false && unknown` is false, `true || unknown` is true,
    anything else that needs an unknown is unknown. The tree must have passed `check`; a value of another kind than
    was checked, a division by zero and a result that is not finite raise CannotWork. With `formula`, a divisor
    must be exactly zero to be refused (a formula in SI may divide by very small numbers).
    """
    inner = _Compiler(formula).work(node)

    def work(values: Values) -> Value:
        try:
            return inner(values)
        except (TypeError, ArithmeticError, ValueError) as fault:
            raise CannotWork(f"It cannot be worked out: {fault}.") from fault

    return work


def _finite(value: float, what: str) -> float:
    if not -_LARGEST <= value <= _LARGEST:
        raise CannotWork(f"{what} is not a finite number.")
    return value


class _Compiler:
    def __init__(self, formula: bool) -> None:
        self.nearly_zero = 0.0 if formula else TOLERANCE

    def work(self, node: Node) -> Work:
        if isinstance(node, Name):
            return _name(node.name)
        if isinstance(node, Numeral | Quoted | Answer | UnitName):
            return _constant(node.value)
        work = self.composed(node)
        if not reads(node) and not isinstance(node, Macro):
            try:
                return _constant(work({}))
            except (CannotWork, ArithmeticError, ValueError):
                return work  # it fails when it is worked, not when the rulebook is read
        return work

    def composed(self, node: Node) -> Work:
        if isinstance(node, Binary):
            return self.binary(node)
        if isinstance(node, Unary):
            return _negative(self.work(node.operand)) if node.operator == "-" else _not(self.work(node.operand))
        if isinstance(node, Choice):
            return _choice(self.work(node.test), self.work(node.yes), self.work(node.no))
        if isinstance(node, Several):
            return _several(tuple(self.work(item) for item in node.items))
        if isinstance(node, Call):
            return _call(node.function, tuple(self.work(argument) for argument in node.arguments))
        if isinstance(node, Macro):
            names = tuple(reads(node.body) - {node.item})
            return _macro(node.kind == "all", self.work(node.over), node.item, self.work(node.body), names)
        raise TypeError(f"{type(node).__name__} is no node of an expression")

    def binary(self, node: Binary) -> Work:
        left, right = self.work(node.left), self.work(node.right)
        if node.operator == "/":
            return _over(left, right, self.nearly_zero)
        return _BINARY[node.operator](left, right)


def _constant(value: Value) -> Work:
    return lambda _: value


def _name(name: str) -> Work:
    def work(values: Values) -> Value:
        value = values.get(name)
        if value.__class__ is float and not -_LARGEST <= value <= _LARGEST:  # type: ignore[operator]
            raise CannotWork(f"{name} is not a finite number.")
        return value

    return work


def _negative(operand: Work) -> Work:
    def work(values: Values) -> Value:
        a = operand(values)
        return None if a is None else -a  # type: ignore[operator]

    return work


def _not(operand: Work) -> Work:
    def work(values: Values) -> Value:
        a = operand(values)
        return None if a is None else not a

    return work


def _plus(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        return None if a is None or b is None else _finite(a + b, "A sum")  # type: ignore[operator]

    return work


def _minus(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        return None if a is None or b is None else _finite(a - b, "A difference")  # type: ignore[operator]

    return work


def _times(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        return None if a is None or b is None else _finite(a * b, "A product")  # type: ignore[operator]

    return work


def _over(left: Work, right: Work, nearly_zero: float) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        if -nearly_zero <= b <= nearly_zero:  # type: ignore[operator]
            raise CannotWork("It divides by zero.")
        return _finite(a / b, "A quotient")  # type: ignore[operator]

    return work


def _power(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        result = a**b  # type: ignore[operator]
        if isinstance(result, complex):
            raise CannotWork("A root is taken of a negative number.")
        return _finite(result, "A power")

    return work


def _below(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        return b - a > TOLERANCE * max(abs(a), abs(b), 1.0)  # type: ignore[operator,arg-type]

    return work


def _at_most(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        return a - b <= TOLERANCE * max(abs(a), abs(b), 1.0)  # type: ignore[operator,arg-type]

    return work


def _above(left: Work, right: Work) -> Work:
    return _below(right, left)


def _at_least(left: Work, right: Work) -> Work:
    return _at_most(right, left)


def _alike(a: Value, b: Value) -> bool:
    """Neither is None. A truth is never a number here: `check` keeps them apart."""
    if a.__class__ is str or a.__class__ is bool:
        return a == b
    return abs(a - b) <= TOLERANCE * max(abs(a), abs(b), 1.0)  # type: ignore[operator,arg-type]


def _equal(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        return None if a is None or b is None else _alike(a, b)

    return work


def _unequal(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, b = left(values), right(values)
        return None if a is None or b is None else not _alike(a, b)

    return work


def _within(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a, several = left(values), right(values)
        if a is None or several is None:
            return None
        found: Value = False
        for b in several:  # type: ignore[union-attr]
            if b is None:
                found = None
            elif _alike(a, b):
                return True
        return found

    return work


def _and(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a = left(values)
        if a is False:
            return False
        b = right(values)
        return b if a or b is False else None

    return work


def _or(left: Work, right: Work) -> Work:
    def work(values: Values) -> Value:
        a = left(values)
        if a is True:
            return True
        b = right(values)
        return b if a is False or b is True else None

    return work


_BINARY: dict[str, Callable[[Work, Work], Work]] = {
    "+": _plus, "-": _minus, "*": _times, "^": _power, "<": _below, "<=": _at_most, ">": _above, ">=": _at_least,
    "==": _equal, "!=": _unequal, "in": _within, "&&": _and, "||": _or,
}  # fmt: skip


def _choice(test: Work, yes: Work, no: Work) -> Work:
    def work(values: Values) -> Value:
        answer = test(values)
        if answer is None:
            return None
        return yes(values) if answer else no(values)

    return work


def _several(items: tuple[Work, ...]) -> Work:
    def work(values: Values) -> Value:
        found: list[Scalar] = []
        for item in items:
            value = item(values)
            if value is None:
                return None
            found.append(value)  # type: ignore[arg-type]
        return tuple(found)

    return work


def _macro(every: bool, over: Work, item: str, body: Work, names: tuple[str, ...]) -> Work:
    """All: false as soon as one is false. Exists: true as soon as one is true. Else unknown if one is unknown."""

    def work(values: Values) -> Value:
        several = over(values)
        if several is None:
            return None
        scope: dict[str, Value] = {name: values.get(name) for name in names}
        found: Value = every
        for value in several:  # type: ignore[union-attr]
            scope[item] = value
            answer = body(scope)
            if answer is None:
                found = None
            elif answer is not every:
                return answer
        return found

    return work


def _degrees(work: Callable[[float], float]) -> Callable[[float], float]:
    return lambda angle: work(math.radians(angle))


def _in_degrees(work: Callable[[float], float]) -> Callable[[float], float]:
    return lambda ratio: math.degrees(work(ratio))


_FUNCTIONS: dict[str, Callable[..., float]] = {
    "size": len, "min": min, "max": max, "sqrt": math.sqrt, "exp": math.exp, "ln": math.log, "log": math.log,
    "abs": abs, "ceil": math.ceil, "floor": math.floor, "sin": _degrees(math.sin), "cos": _degrees(math.cos),
    "tan": _degrees(math.tan), "asin": _in_degrees(math.asin), "acos": _in_degrees(math.acos),
    "atan": _in_degrees(math.atan),
}  # fmt: skip


def _call(function: str, arguments: tuple[Work, ...]) -> Work:
    call = _FUNCTIONS[function]

    def work(values: Values) -> Value:
        given = [argument(values) for argument in arguments]
        return None if None in given else float(call(*given))

    return work
