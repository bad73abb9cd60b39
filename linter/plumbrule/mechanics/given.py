"""What a formula is given: a bare SI number, or a worked value that then becomes one of its steps."""

from __future__ import annotations

from math import isfinite

from plumbrule.mechanics.worked import NotPossible, Number, Worked
from plumbrule.reading.units import UNITS

Given = float | Worked


def si(given: Given) -> float:
    """The SI value (mm, N, MPa, °, %) of a number that is SI already, or of a worked value in whatever unit."""
    if isinstance(given, Worked):
        row = UNITS[given.unit]
        return row.offset + row.factor * given.value
    return float(given)


def steps(*givens: Given) -> tuple[Worked, ...]:
    """The worked ones among `givens`, each once, in order."""
    worked = [given for given in givens if isinstance(given, Worked)]
    if len(worked) < 2:
        return tuple(worked)
    return tuple({id(given): given for given in worked}.values())


def number(symbol: str, given: Given, unit: str) -> Number:
    """`given` as a symbol of a formula, in `unit`."""
    if isinstance(given, Worked):
        if given.unit == unit:
            return Number(symbol, given.value, unit)
        given = si(given)
    row = UNITS[unit]
    return Number(symbol, (given - row.offset) / row.factor, unit)


def finite(name: str, given: Given) -> float:
    """The SI value. Raises NotPossible when it is not a finite number."""
    value = si(given)
    if not isfinite(value):
        raise NotPossible(f"{name} is {value}, which is not a measure")
    return value


def positive(name: str, given: Given) -> float:
    """The SI value. Raises NotPossible unless it is finite and above zero."""
    value = finite(name, given)
    if value <= 0:
        raise NotPossible(f"{name} is {value:g}; it must be more than zero")
    return value


def not_negative(name: str, given: Given) -> float:
    """The SI value. Raises NotPossible unless it is finite and not below zero."""
    value = finite(name, given)
    if value < 0:
        raise NotPossible(f"{name} is {value:g}; it cannot be less than zero")
    return value
