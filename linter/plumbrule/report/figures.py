"""Numbers of a calculation as printed: so many figures, in units that fit together so that it can be worked again."""

from __future__ import annotations

from plumbrule.reading import units
from plumbrule.reading.shown import digits, pair
from plumbrule.reading.units import UNITS, Dimension, from_si, to_si

# Within one system these fit together: lbf/in × in is lbf, MPa × mm² is N. A formula true in one is true in the other.
_INCH: dict[Dimension, str] = {
    units.LENGTH: "in", units.AREA: "in²", units.VOLUME: "in³", units.SECOND_MOMENT: "in⁴", units.FORCE: "lbf",
    units.MOMENT: "in·lbf", units.LINE_LOAD: "lbf/in", units.STRESS: "psi", units.COMPLIANCE: "in/lbf",
    units.MASS: "lb", units.DENSITY: "lb/in³",
    units.TIME: "h", units.ANGLE: "°",
}  # fmt: skip
_METRIC: dict[Dimension, str] = {
    units.LENGTH: "mm", units.AREA: "mm²", units.VOLUME: "mm³", units.SECOND_MOMENT: "mm⁴", units.FORCE: "N",
    units.MOMENT: "N·mm", units.LINE_LOAD: "N/mm", units.STRESS: "MPa", units.COMPLIANCE: "mm/N",
    units.MASS: "kg", units.DENSITY: "kg/mm³",
    units.TIME: "h", units.ANGLE: "°",
}  # fmt: skip


def fitting_unit(unit: str, system: str) -> str | None:
    """The unit of the same kind that fits the others of `system` (`inch` or `metric`). None where there is none.

    Plain numbers and percentages stay; temperatures too, since Fahrenheit has another zero.
    """
    dimension = UNITS[unit].dimension
    if dimension in (units.NUMBER, units.TEMPERATURE, units.EXPANSION):
        return unit
    return unit_for(dimension, system)


def unit_for(dimension: Dimension, system: str) -> str | None:
    """The unit of `dimension` that fits the others of `system`, empty for a plain number, None where there is none."""
    if dimension == units.NUMBER:
        return ""
    if dimension == units.TEMPERATURE:
        return "°C"
    if dimension == units.EXPANSION:
        return "per °C"
    return (_METRIC if system == "metric" else _INCH).get(dimension)


def converted(value: float, unit: str, into: str) -> float:
    """`value` in `unit`, in another unit of the same kind. Exact where the two are the same."""
    return value if unit == into else from_si(to_si(value, unit), into)


def significant(value: float, figures: int) -> str:
    """`value` with at most so many significant figures: `0.21875`, `19749`, `-3.2`. Never 0 unless it is 0."""
    return digits(value, figures)


def with_unit(text: str, unit: str) -> str:
    """`0.75 in`, `82°`, `30 %`, `4`."""
    return text if not unit else f"{text}°" if unit == "°" else f"{text} {unit}"


def quantity(value: float, unit: str, system: str, figures: int = 6) -> str:
    """A value kept in `unit` as a reader of `system` writes it, in decimals: `0.21875 in`, `68 °F`."""
    into = "°F" if unit == "°C" and system == "inch" else fitting_unit(unit, system) or unit
    return with_unit(significant(converted(value, unit, into), figures), into)


def compared(measure: float, limit: float, unit: str, system: str) -> tuple[str, str]:
    """A measure and its limit as `found` prints them: the same only where they are equal."""
    return pair(measure, limit, unit, "metric" if system == "metric" else "inch")


def ratio(value: float, other: float) -> str:
    """`value / other`, never printed as 1 unless it is: 1.004, not 1.00."""
    share = value / other
    text = ""
    for figures in range(3, 18):
        text = significant(share, figures)
        if float(text) != 1 or share == 1:
            break
    return text


def many(count: int, thing: str, plural: str = "") -> str:
    """`1 finding`, `3 findings`, `no findings`."""
    return f"{count or 'no'} {thing if count == 1 else plural or thing + 's'}"
