"""What an angle's cross-section is worth: from the published row where there is one, else from two sharp rectangles.

The angle lies as on the wall: one leg upright, one leg out. Second moments about the level axis resist bending up
and down. The sharp-corner model agrees with the published rolled angles within 3 %.
"""

from __future__ import annotations

from math import sqrt
from typing import NamedTuple, Protocol

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.table_rows import AngleRow
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_SHARP = "two rectangles with sharp corners, exact"
# 7850 kg/m³, the density behind the published weights (490 lb/ft³).
STEEL_DENSITY = 7.85e-6
ALUMINIUM_DENSITY = 2.7e-6


class _Line(Protocol):
    def __call__(self, symbol: str, words: str, formula: str, value: float, unit: str, *more: Worked) -> Worked: ...


class AngleSection(NamedTuple):
    """An angle's section, mm based. `row` is the name of the published angle, empty for the sharp-corner model.

    centroid_up: from the underside of the level leg. centroid_out: from the back of the upright leg. second_moment:
    about the level axis; second_moment_sideways: about the upright one. modulus_tip: at the tip of the upright leg.
    product: of inertia, as a positive number. torsion: J. to_toe: from a leg's back to the toe of the fillet.
    """

    row: str
    upright: float
    level: float
    thickness: float
    area: Worked
    centroid_up: Worked
    centroid_out: Worked
    second_moment: Worked
    second_moment_sideways: Worked
    modulus_tip: Worked
    plastic_modulus: Worked
    product: Worked
    least_radius: Worked
    torsion: Worked
    to_toe: Worked


def angle_section(
    upright: Given, level: Given, thickness: Given, inside_radius: Given, row: AngleRow | None
) -> AngleSection:
    """The section of an angle with these outside legs, thickness and inside radius, mm.

    Where `row` is a published angle of these sizes its figures are taken (a bar size has a weight only, so its model
    is the sharp one); what the row lacks comes from the model. Raises NotPossible when the legs are not longer than
    the steel is thick, or when the row is of another size.
    """
    sharp = sharp_angle(upright, level, thickness, inside_radius)
    if row is None or row.area is None:
        return sharp
    sizes = sorted((sharp.upright, sharp.level))
    if max(abs(sizes[1] - row.long_leg), abs(sizes[0] - row.short_leg), abs(sharp.thickness - row.thickness)) > 0.01:
        raise NotPossible(f"{row.name} is not an angle of these sizes")
    stands = sharp.upright >= sharp.level
    strong = (row.second_moment_x, row.modulus_x, row.centroid_y)
    weak = (row.second_moment_y, row.modulus_y, row.centroid_x)
    second, modulus, up = strong if stands else weak
    sideways, _, out = weak if stands else strong
    area = _published("A", "area", row.area, "mm²", row)
    moment = _published("I_x", "second moment, up and down", second, "mm⁴", row)
    side_moment = _published("I_y", "second moment, sideways", sideways, "mm⁴", row)
    radius = _published("r_z", "least radius of gyration", row.least_radius, "mm", row)
    plastic = row.plastic_modulus_x
    return AngleSection(
        row.name, sharp.upright, sharp.level, sharp.thickness, area,
        _published("y_c", "height of the centroid", up, "mm", row),
        _published("x_c", "distance of the centroid from the wall", out, "mm", row),
        moment, side_moment,
        _published("S", "section modulus at the upright leg's tip", modulus, "mm³", row),
        _published("Z_p", "plastic modulus", plastic, "mm³", row) if stands and plastic else sharp.plastic_modulus,
        _product(area, moment, side_moment, radius), radius,
        _published("J", "torsion constant", row.torsion_constant, "mm⁴", row),
        _published("k", "from a leg's back to the toe of the fillet", row.to_toe, "mm", row),
    )  # fmt: skip


def sharp_angle(upright: Given, level: Given, thickness: Given, inside_radius: Given) -> AngleSection:
    """The sharp-corner model of an angle, exact for its two rectangles; the fillet only sets `to_toe` = t + radius.

    Legs and thickness outside sizes in mm, `inside_radius` >= 0 the fillet or the bend. Raises NotPossible when a leg
    is not longer than the thickness.
    """
    d, b, t = positive("the upright leg", upright), positive("the level leg", level), positive("the steel", thickness)
    radius = not_negative("the inside radius", inside_radius)
    if t >= min(d, b):
        raise NotPossible("a leg must be longer than the steel is thick")
    legs = (number("d", upright, "mm"), number("b", level, "mm"), number("t", thickness, "mm"))
    given = steps(upright, level, thickness)

    def line(symbol: str, words: str, formula: str, value: float, unit: str, *more: Worked) -> Worked:
        numbers = (*legs, *(Number(part.symbol, part.value, part.unit) for part in more))
        return Worked(symbol, words, formula, numbers, value, unit, _SHARP, steps=(*given, *more))

    area = line("A", "area", "(d + b - t) * t", (d + b - t) * t, "mm²")
    y = (d * t * d / 2 + (b - t) * t * t / 2) / area.value
    x = (b * t * b / 2 + (d - t) * t * t / 2) / area.value
    up = line("y_c", "height of the centroid", "(t * d^2 + (b - t) * t^2) / (2 * A)", y, "mm", area)
    out = line("x_c", "distance of the centroid from the wall", "(t * b^2 + (d - t) * t^2) / (2 * A)", x, "mm", area)
    i_x = (t * d**3 + (b - t) * t**3) / 3 - area.value * y**2
    i_y = (t * b**3 + (d - t) * t**3) / 3 - area.value * x**2
    moment = line(
        "I_x", "second moment, up and down", "(t * d^3 + (b - t) * t^3) / 3 - A * y_c^2", i_x, "mm⁴", area, up
    )
    sideways = line(
        "I_y", "second moment, sideways", "(t * b^3 + (d - t) * t^3) / 3 - A * x_c^2", i_y, "mm⁴", area, out
    )
    i_xy = area.value * x * y - (d**2 * t**2 + (b**2 - t**2) * t**2) / 4
    product = line(
        "I_xy", "product of inertia", "A * x_c * y_c - (d^2 * t^2 + (b^2 - t^2) * t^2) / 4", i_xy, "mm⁴",
        area, up, out,
    )  # fmt: skip
    least = (i_x + i_y) / 2 - sqrt(((i_x - i_y) / 2) ** 2 + i_xy**2)
    radius_z = line(
        "r_z", "least radius of gyration", "sqrt(((I_x + I_y) / 2 - sqrt(((I_x - I_y) / 2)^2 + I_xy^2)) / A)",
        sqrt(least / area.value), "mm", moment, sideways, product, area,
    )  # fmt: skip
    modulus = line("S", "section modulus at the upright leg's tip", "I_x / (d - y_c)", i_x / (d - y), "mm³", moment, up)
    torsion = line("J", "torsion constant", "(d + b - t) * t^3 / 3", (d + b - t) * t**3 / 3, "mm⁴")
    toe = Worked(
        "k", "from a leg's back to the toe of the fillet", "t + r", (legs[2], number("r", inside_radius, "mm")),
        t + radius, "mm", "geometry", steps=(*given, *steps(inside_radius)),
    )  # fmt: skip
    return AngleSection(
        "", d, b, t, area, up, out, moment, sideways, modulus, _plastic(line, d, b, t, area), product, radius_z,
        torsion, toe,
    )  # fmt: skip


def mass(section: AngleSection, length: Given, density: float = STEEL_DENSITY) -> Worked:
    """Mass in kg of `length` mm of the section; `density` in kg/mm³, steel unless said otherwise."""
    value = si(section.area) * positive("the length", length) * positive("the density", density)
    return Worked(
        "m", "mass", "A * L * rho",
        (number("A", section.area, "mm²"), number("L", length, "mm"), number("rho", density, "kg/mm³")), value, "kg",
        "geometry; 7850 kg/m³ for steel", steps=(section.area, *steps(length)),
    )  # fmt: skip


def _plastic(line: _Line, d: float, b: float, t: float, area: Worked) -> Worked:
    half = area.value / 2
    if b * t >= half:
        y = half / b
        formula = "b * (A^2 / (4 * b^2) + (t - A / (2 * b))^2) / 2 + t * (d - t) * ((d + t) / 2 - A / (2 * b))"
        value = b * (y**2 + (t - y) ** 2) / 2 + t * (d - t) * ((d + t) / 2 - y)
    else:
        y = d - half / t
        formula = "b * t * (d - A / (2 * t) - t / 2) + t * ((d - A / (2 * t) - t)^2 + (A / (2 * t))^2) / 2"
        value = b * t * (y - t / 2) + t * ((y - t) ** 2 + (d - y) ** 2) / 2
    return line("Z_p", "plastic modulus", formula, value, "mm³", area)


def _product(area: Worked, moment: Worked, sideways: Worked, radius: Worked) -> Worked:
    """From the published least radius: I_z = A r_z² and I_x + I_y = I_z + I_w."""
    i_x, i_y, i_z = moment.value, sideways.value, area.value * radius.value**2
    value = sqrt(i_x * i_y - i_z * (i_x + i_y - i_z))
    return Worked(
        "I_xy", "product of inertia", "sqrt(I_x * I_y - A * r_z^2 * (I_x + I_y - A * r_z^2))",
        tuple(Number(part.symbol, part.value, part.unit) for part in (area, moment, sideways, radius)), value, "mm⁴",
        "from the published least radius", steps=(area, moment, sideways, radius),
    )  # fmt: skip


def _published(symbol: str, words: str, value: float | None, unit: str, row: AngleRow) -> Worked:
    if value is None:
        raise NotPossible(f"{row.name} is published without {symbol}")
    return Worked(symbol, words, symbol, (Number(symbol, value, unit),), value, unit, f"{row.source}, {row.name}")
