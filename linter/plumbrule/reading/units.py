"""One table of units: what a plan may be written in, what a rule may name, and what each is in SI.

Inside, everything is mm, N, MPa, kg, h, °C, degrees of angle and percent. A force is kept apart from a mass by its
dimension (length 1, mass 1, time -2), so 250 lb is never taken for 250 lbf.
"""

from __future__ import annotations

from typing import NamedTuple


class Dimension(NamedTuple):
    """Powers of length, mass, time, temperature and angle. A plain number has all of them 0."""

    length: int = 0
    mass: int = 0
    time: int = 0
    temperature: int = 0
    angle: int = 0

    def times(self, other: Dimension) -> Dimension:
        return Dimension(*(a + b for a, b in zip(self, other, strict=True)))

    def over(self, other: Dimension) -> Dimension:
        return Dimension(*(a - b for a, b in zip(self, other, strict=True)))


NUMBER = Dimension()
LENGTH = Dimension(length=1)
AREA = Dimension(length=2)
VOLUME = Dimension(length=3)
MASS = Dimension(mass=1)
TIME = Dimension(time=1)
FORCE = Dimension(length=1, mass=1, time=-2)
MOMENT = FORCE.times(LENGTH)
LINE_LOAD = FORCE.over(LENGTH)
STRESS = FORCE.over(AREA)
DENSITY = MASS.over(VOLUME)
TEMPERATURE = Dimension(temperature=1)
EXPANSION = NUMBER.over(TEMPERATURE)
ANGLE = Dimension(angle=1)
SECOND_MOMENT = AREA.times(AREA)
COMPLIANCE = LENGTH.over(FORCE)

INCH = 25.4
FOOT = 304.8
POUND_FORCE = 4.4482216152605
POUND = 0.45359237


class Unit(NamedTuple):
    """`value_in_si = offset + factor * value_in_this_unit`."""

    symbol: str
    dimension: Dimension
    factor: float
    offset: float = 0.0


_UNITS = (
    Unit("", NUMBER, 1.0),
    Unit("%", NUMBER, 1.0),
    Unit("mm", LENGTH, 1.0),
    Unit("cm", LENGTH, 10.0),
    Unit("m", LENGTH, 1000.0),
    Unit("in", LENGTH, INCH),
    Unit("ft", LENGTH, FOOT),
    Unit("mm²", AREA, 1.0),
    Unit("in²", AREA, INCH**2),
    Unit("ft²", AREA, FOOT**2),
    Unit("m²", AREA, 1e6),
    Unit("mm³", VOLUME, 1.0),
    Unit("in³", VOLUME, INCH**3),
    Unit("ml", VOLUME, 1e3),
    Unit("l", VOLUME, 1e6),
    Unit("fl oz", VOLUME, 29573.5295625),
    Unit("pt", VOLUME, 473176.473),
    Unit("qt", VOLUME, 946352.946),
    Unit("gal", VOLUME, 3785411.784),
    Unit("mm⁴", SECOND_MOMENT, 1.0),
    Unit("in⁴", SECOND_MOMENT, INCH**4),
    Unit("kg", MASS, 1.0),
    Unit("g", MASS, 1e-3),
    Unit("lb", MASS, POUND),
    Unit("h", TIME, 1.0),
    Unit("s", TIME, 1.0 / 3600.0),
    Unit("min", TIME, 1.0 / 60.0),
    Unit("days", TIME, 24.0),
    Unit("years", TIME, 8766.0),
    Unit("N", FORCE, 1.0),
    Unit("kN", FORCE, 1e3),
    Unit("lbf", FORCE, POUND_FORCE),
    Unit("N·mm", MOMENT, 1.0),
    Unit("N·m", MOMENT, 1e3),
    Unit("in·lbf", MOMENT, INCH * POUND_FORCE),
    Unit("N/mm", LINE_LOAD, 1.0),
    Unit("kN/m", LINE_LOAD, 1.0),
    Unit("N/m", LINE_LOAD, 1e-3),
    Unit("lbf/in", LINE_LOAD, POUND_FORCE / INCH),
    Unit("lbf/ft", LINE_LOAD, POUND_FORCE / FOOT),
    Unit("mm/N", COMPLIANCE, 1.0),
    Unit("in/lbf", COMPLIANCE, INCH / POUND_FORCE),
    Unit("MPa", STRESS, 1.0),
    Unit("kPa", STRESS, 1e-3),
    Unit("psi", STRESS, POUND_FORCE / INCH**2),
    Unit("ksi", STRESS, 1e3 * POUND_FORCE / INCH**2),
    Unit("lbf/ft²", STRESS, POUND_FORCE / FOOT**2),
    Unit("kg/m³", DENSITY, 1e-9),
    Unit("lb/ft³", DENSITY, POUND / FOOT**3),
    Unit("lb/in³", DENSITY, POUND / INCH**3),
    Unit("kg/mm³", DENSITY, 1.0),
    Unit("°C", TEMPERATURE, 1.0),
    Unit("°F", TEMPERATURE, 5.0 / 9.0, -160.0 / 9.0),
    Unit("per °C", EXPANSION, 1.0),
    Unit("per °F", EXPANSION, 1.8),
    Unit("°", ANGLE, 1.0),
)

UNITS: dict[str, Unit] = {unit.symbol: unit for unit in _UNITS}

# Names a rule may multiply by: `1.5 * inch`, `250 * lbf`. Temperatures are left out on purpose: an offset is no factor.
CONSTANTS: dict[str, Unit] = {
    "mm": UNITS["mm"], "cm": UNITS["cm"], "inch": UNITS["in"], "foot": UNITS["ft"],
    "N": UNITS["N"], "kN": UNITS["kN"], "lbf": UNITS["lbf"],
    "MPa": UNITS["MPa"], "psi": UNITS["psi"], "ksi": UNITS["ksi"],
    "kg": UNITS["kg"], "pound": UNITS["lb"],
    "hour": UNITS["h"], "minute": UNITS["min"], "day": UNITS["days"], "degree": UNITS["°"],
}  # fmt: skip


def to_si(value: float, unit: str) -> float:
    """`value` in SI. Raises KeyError for a unit that is not in the table."""
    row = UNITS[unit]
    return row.offset + row.factor * value


def from_si(value: float, unit: str) -> float:
    """The SI `value` in `unit`. Raises KeyError for a unit that is not in the table."""
    row = UNITS[unit]
    return (value - row.offset) / row.factor


def si_unit(dimension: Dimension) -> str:
    """The symbol of the unit in which values of a dimension are kept. Raises KeyError where nothing is kept in it."""
    return _SI[dimension]


_SI: dict[Dimension, str] = {
    unit.dimension: unit.symbol
    for unit in reversed(_UNITS)
    if unit.factor == 1.0 and not unit.offset and unit.symbol != "%"
}
