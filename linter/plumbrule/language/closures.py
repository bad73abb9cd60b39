"""The functions an expression is made of: each takes the values and gives a value, None where it is unknown.

Operands are closures too. A value of another kind than the tree was checked for raises TypeError, so that a slip in
a fact is never taken for an answer.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, TypeAlias

from plumbrule.language.faults import CannotWork

Scalar: TypeAlias = float | str | bool | None
Value: TypeAlias = Scalar | tuple[Scalar, ...]
Values: TypeAlias = Mapping[str, Value]
Step: TypeAlias = Callable[[Values], Any]

TOLERANCE = 1e-9


def equal(a: float, b: float) -> bool:
    """Equal within 1e-9 of the larger, or within 1e-9 where both are below 1: what the language calls equal."""
    return abs(a - b) <= TOLERANCE * max(abs(a), abs(b), 1.0)


def less(a: float, b: float) -> bool:
    """`a` is below `b` by more than the tolerance."""
    return b - a > TOLERANCE * max(abs(a), abs(b), 1.0)


def constant(value: Value) -> Step:
    return lambda _: value


def name(name: str) -> Step:
    def work(values: Values) -> Any:
        value: Any = values.get(name)
        if value.__class__ is float and value - value != 0.0:  # true of infinities and of what is no number
            raise CannotWork(f'"{name}" is not a finite number.')
        return value

    return work


def negative(operand: Step) -> Step:
    def work(values: Values) -> Any:
        a = operand(values)
        return None if a is None else -a

    return work


def plus(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        result = a + b
        if result - result != 0.0:
            raise CannotWork("A sum is not a finite number.")
        return result

    return work


def minus(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        result = a - b
        if result - result != 0.0:
            raise CannotWork("A difference is not a finite number.")
        return result

    return work


def times(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        result = a * b
        if result - result != 0.0:
            raise CannotWork("A product is not a finite number.")
        return result

    return work


def over(left: Step, right: Step, nearly_zero: float) -> Step:
    """A divisor of at most `nearly_zero`, either way, counts as zero."""

    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        if -nearly_zero <= b <= nearly_zero:
            raise CannotWork("It divides by zero.")
        result = a / b
        if result - result != 0.0:
            raise CannotWork("A quotient is not a finite number.")
        return result

    return work


def power(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        result = a**b
        if isinstance(result, complex):
            raise CannotWork("It takes the root of a negative number.")
        if result - result != 0.0:
            raise CannotWork("A power is not a finite number.")
        return result

    return work


def below(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        apart = b - a
        return apart > 0 and apart > TOLERANCE * max(abs(a), abs(b), 1.0)

    return work


def at_most(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        if a is None or b is None:
            return None
        apart = a - b
        return apart <= 0 or apart <= TOLERANCE * max(abs(a), abs(b), 1.0)

    return work


def above(left: Step, right: Step) -> Step:
    return below(right, left)


def at_least(left: Step, right: Step) -> Step:
    return at_most(right, left)


def _same(a: Any, b: Any) -> bool:
    """Neither is None."""
    kind = a.__class__
    if kind is str or kind is bool or b.__class__ is str or b.__class__ is bool:
        if kind is not b.__class__:
            raise TypeError(f"{a!r} is compared with {b!r}")
        return bool(a == b)
    return bool(a == b or abs(a - b) <= TOLERANCE * max(abs(a), abs(b), 1.0))


def same(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        return None if a is None or b is None else _same(a, b)

    return work


def unlike(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, b = left(values), right(values)
        return None if a is None or b is None else not _same(a, b)

    return work


def items_of(value: Any) -> Any:
    if not isinstance(value, tuple | list):
        raise TypeError(f"{value!r} is not a list")
    return value


def within(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a, items = left(values), right(values)
        if a is None or items is None:
            return None
        found: bool | None = False
        for b in items_of(items):
            if b is None:
                found = None
            elif _same(a, b):
                return True
        return found

    return work


def _truth(value: Any) -> Any:
    if value is True or value is False or value is None:
        return value
    raise TypeError(f"{value!r} is neither true nor false")


def negation(operand: Step) -> Step:
    def work(values: Values) -> Any:
        a = _truth(operand(values))
        return None if a is None else not a

    return work


def both(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a = left(values)
        if a is False:
            return False
        b = right(values)
        if a is True:
            return _truth(b)
        _truth(a)
        return None if _truth(b) is not False else False

    return work


def either(left: Step, right: Step) -> Step:
    def work(values: Values) -> Any:
        a = left(values)
        if a is True:
            return True
        b = right(values)
        if a is False:
            return _truth(b)
        _truth(a)
        return None if _truth(b) is not True else True

    return work


def choice(test: Step, yes: Step, no: Step) -> Step:
    def work(values: Values) -> Any:
        answer = _truth(test(values))
        if answer is None:
            return None
        return yes(values) if answer else no(values)

    return work


def several(items: tuple[Step, ...]) -> Step:
    def work(values: Values) -> Any:
        found = tuple(item(values) for item in items)
        return None if None in found else found

    return work


def macro(every: bool, listed: Step, item: str, body: Step, names: tuple[str, ...]) -> Step:
    """All: false as soon as one is false. Exists: true as soon as one is true. Else unknown if one is unknown.

    `names` are what the body reads beside its item.
    """

    def work(values: Values) -> Any:
        items = listed(values)
        if items is None:
            return None
        scope: dict[str, Any] = {name: values.get(name) for name in names}
        found: bool | None = every
        for value in items_of(items):
            scope[item] = value
            answer = _truth(body(scope))
            if answer is None:
                found = None
            elif answer is not every:
                return answer
        return found

    return work


def call(worked: Callable[..., float], arguments: tuple[Step, ...]) -> Step:
    def work(values: Values) -> Any:
        given = [argument(values) for argument in arguments]
        return None if None in given else float(worked(*given))

    return work
