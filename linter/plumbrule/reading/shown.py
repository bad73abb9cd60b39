"""Numbers as they are printed: trade fractions, few digits, and never a fail that reads like a pass.

Values come in SI; `unit` is a symbol of the unit table that says what is shown, `system` whether the reader works in
inches or in millimetres.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from typing import Literal, NamedTuple

from plumbrule.reading.units import (
    ANGLE,
    AREA,
    DENSITY,
    EXPANSION,
    FORCE,
    LENGTH,
    LINE_LOAD,
    MASS,
    MOMENT,
    SECOND_MOMENT,
    STRESS,
    TEMPERATURE,
    TIME,
    UNITS,
    VOLUME,
    Dimension,
    from_si,
)

System = Literal["inch", "metric"]

TOLERANCE = 1e-9  # relative: numbers nearer than this are equal, in a rule and on paper
_MOST_DECIMALS = 13

_BY_DIMENSION: dict[Dimension, tuple[str, str]] = {
    LENGTH: ("in", "mm"), AREA: ("in²", "mm²"), VOLUME: ("in³", "mm³"), SECOND_MOMENT: ("in⁴", "mm⁴"),
    MASS: ("lb", "kg"), FORCE: ("lbf", "N"), MOMENT: ("in·lbf", "N·m"), LINE_LOAD: ("lbf/ft", "N/mm"),
    STRESS: ("psi", "MPa"), DENSITY: ("lb/ft³", "kg/m³"), TEMPERATURE: ("°F", "°C"), ANGLE: ("°", "°"),
    EXPANSION: ("per °F", "per °C"),
}  # fmt: skip
# Units that say more than their dimension: a floor load is no stress, a liquid no section modulus.
_BY_UNIT: dict[str, tuple[str, str]] = {
    "lbf/ft²": ("lbf/ft²", "kPa"), "kPa": ("lbf/ft²", "kPa"), "ft²": ("ft²", "m²"), "m²": ("ft²", "m²"),
    "fl oz": ("fl oz", "ml"), "ml": ("fl oz", "ml"), "l": ("gal", "l"), "gal": ("gal", "l"), "qt": ("qt", "ml"),
    "pt": ("pt", "ml"), "N/m": ("lbf/ft", "N/m"), "kN/m": ("lbf/ft", "kN/m"), "kN": ("lbf", "kN"),
    "ksi": ("ksi", "MPa"),
}  # fmt: skip


class _Shown(NamedTuple):
    """A text and the number that a reader takes from it."""

    text: str
    value: float | Fraction


def printed_unit(unit: str, system: System) -> str:
    """The unit in which a value that the catalogue gives in `unit` is printed. Raises KeyError for an unknown unit."""
    either = _BY_UNIT.get(unit) or _BY_DIMENSION.get(UNITS[unit].dimension) or (unit, unit)
    return either[system == "metric"]


def length(mm: float, system: System) -> str:
    """A length: inches as a fraction where one to 1/64 is exact, else to three decimals; or millimetres to 0.1."""
    return quantity(mm, "mm", system)


def quantity(value: float, unit: str, system: System) -> str:
    """One SI value with its unit, in as many digits as a trade reads."""
    return together((value,), unit, system)[0]


def pair(measure: float, limit: float, unit: str, system: System) -> tuple[str, str]:
    """A measure and its limit, in the same unit and the fewest digits that keep them in their true order. Equal texts
    mean that the two are equal within the tolerance."""
    first, second = together((measure, limit), unit, system)
    return first, second


def together(values: Sequence[float], unit: str, system: System) -> tuple[str, ...]:
    """Several SI values that are compared with each other, printed so that they order as they are. A value that is
    not finite is printed as `no number`."""
    finite = [value for value in values if math.isfinite(value)]
    dimension = UNITS[unit].dimension
    printed = _time_unit(finite) if dimension == TIME else printed_unit(unit, system)
    if dimension == AREA and finite:
        printed = _area_unit(finite, printed, system)
    # Never wider than the tolerance of a judgement, which is relative to 1 for what is smaller than 1: what is judged
    # unequal must not be printed as equal.
    scale = 1e-6 if printed.startswith("per ") else min(1.0, UNITS[printed].factor)
    leveled = _leveled(finite, scale)
    chosen: list[_Shown] = []
    for write in _ways(leveled, printed):
        chosen = [write(from_si(value, printed)) for value in leveled]
        if _ordered(leveled, chosen):
            break
    texts = iter(_with_unit(shown.text, printed) for shown in chosen)
    return tuple(next(texts) if math.isfinite(value) else "no number" for value in values)


def figure(value: float, unit: str) -> str:
    """A value that is already in `unit`, for a worked line: six significant digits, so that the line can be worked
    again from what is printed."""
    return _with_unit(digits(value), unit)


def digits(value: float, significant: int = 6) -> str:
    """A number to so many significant digits, without an exponent where it can be read without."""
    if not math.isfinite(value):
        return "no number"
    if value == 0:
        return "0"
    size = math.floor(math.log10(abs(value)))
    if -5 <= size < 15:
        return _plain(value, max(0, significant - 1 - size))
    mantissa, _, exponent = f"{value:.{significant - 1}e}".partition("e")
    return f"{mantissa.rstrip('0').rstrip('.') if '.' in mantissa else mantissa}e{int(exponent)}"


def equal(first: float, second: float, scale: float = 1.0) -> bool:
    """Whether two SI values are equal within the tolerance; `scale` is the least that
    the tolerance is relative to."""
    return abs(first - second) <= TOLERANCE * max(abs(first), abs(second), abs(scale))


def _leveled(values: Sequence[float], scale: float) -> list[float]:
    """The values, with those that count as equal made equal to the last of them (the limit)."""
    leveled: list[float] = []
    for index, value in enumerate(values):
        same = next((other for other in reversed(values[index + 1 :]) if equal(value, other, scale)), value)
        leveled.append(same)
    return leveled


def _ordered(values: Sequence[float], shown: Sequence[_Shown]) -> bool:
    pairs = ((a, b) for a in range(len(values)) for b in range(a))
    return all(
        (values[a] > values[b]) == (shown[a].value > shown[b].value)
        and (values[a] < values[b]) == (shown[a].value < shown[b].value)
        for a, b in pairs
    )


def _ways(values: Sequence[float], unit: str) -> Iterator[Callable[[float], _Shown]]:
    """Ways to write a number, coarsest first."""
    if unit == "in":
        # 9/16 for 0.582 would be another number than the one compared: a fraction stands only where it is exact.
        if all(_is_fraction(from_si(value, unit)) for value in values):
            yield _fraction
        first = 3
    elif unit.startswith("per "):
        yield from (_significant(count) for count in range(2, 16))
        return
    elif unit == "":
        whole = all(value == round(value) for value in values)
        yield from (_decimal(count, 0 if whole else 2) for count in range(0 if whole else 2, _MOST_DECIMALS + 1))
        return
    elif unit in ("mm", "°", "°C", "°F", "%"):
        first = 1
    else:
        largest = max((abs(from_si(value, unit)) for value in values), default=0.0)
        first = 0 if largest >= 100 else 1 if largest >= 10 else 2 if largest >= 1 else 3
    yield from (_decimal(count) for count in range(first, _MOST_DECIMALS + 1))
    # A small value in a large unit: 1 mm⁴ is 0.0000024 in⁴.
    yield from (_significant(count) for count in range(4, 18))


def _is_fraction(inches: float) -> bool:
    return abs(inches * 64 - round(inches * 64)) < 1e-6


def _fraction(inches: float) -> _Shown:
    """A whole number of sixty-fourths, in lowest terms."""
    value = Fraction(round(inches * 64), 64)
    whole, rest = divmod(abs(value), 1)
    sign = "-" if value < 0 else ""
    if not rest:
        return _Shown(f"{sign}{whole}", value)
    part = f"{rest.numerator}/{rest.denominator}"
    return _Shown(f"{sign}{whole}-{part}" if whole else f"{sign}{part}", value)


def _decimal(decimals: int, least: int = 0) -> Callable[[float], _Shown]:
    def write(value: float) -> _Shown:
        text = _plain(value, decimals)
        # What is not nothing must not read as nothing.
        if text == "0" and abs(value) > 1e-9:
            text = digits(value, 2)
        if least:
            whole, _, after = text.partition(".")
            text = f"{whole}.{after.ljust(least, '0')}"
        return _Shown(text, float(text))

    return write


def _significant(count: int) -> Callable[[float], _Shown]:
    def write(value: float) -> _Shown:
        text = f"{value:.{count - 1}e}"
        mantissa, _, exponent = text.partition("e")
        if "." in mantissa:
            mantissa = mantissa.rstrip("0").rstrip(".")
        text = f"{mantissa}e{int(exponent)}" if value else "0"
        return _Shown(text, float(text))

    return write


def _plain(value: float, decimals: int) -> str:
    """Fixed decimals without the zeros at their end; never a minus before nothing."""
    text = f"{value:.{decimals}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _time_unit(hours: Sequence[float]) -> str:
    """The largest unit in which every one of the values is whole; minutes below an hour, else hours."""
    some = [abs(value) for value in hours if value]
    for unit in ("years", "days"):
        size = UNITS[unit].factor
        if some and all(value >= size and abs(value / size - round(value / size)) < 1e-9 for value in some):
            return unit
    return "min" if some and max(some) < 1 else "h"


def _area_unit(areas: Sequence[float], unit: str, system: System) -> str:
    """Square feet or metres for surfaces, square inches or millimetres for the section of a piece of steel."""
    large = "m²" if system == "metric" else "ft²"
    least = 0.1 if system == "metric" else 1.0
    return large if min(map(abs, areas)) >= least * UNITS[large].factor * (1 - TOLERANCE) else unit


def _with_unit(text: str, unit: str) -> str:
    if unit in ("days", "years") and text == "1":
        unit = unit[:-1]
    return text if not unit else f"{text}{unit}" if unit == "°" else f"{text} {unit}"
