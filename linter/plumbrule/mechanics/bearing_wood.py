"""How hard wood and steel push back on a screw's side, and how hard a screw is to bend.

The empirical formulas are printed in psi and inches and rounded to 50 psi, so they are worked in those units.
"""

from __future__ import annotations

from math import cos, floor, radians, sin

from plumbrule.mechanics.given import Given, number, positive, si, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.table_rows import Fastener, Steel
from plumbrule.mechanics.worked import NotPossible, Number, Worked
from plumbrule.reading.units import from_si

_TABLE = "AWC NDS 2018, Table 12.3.3 note 2"
_STEEL = "AWC NDS 2018, Appendix I.2"
_LIGHTEST, _HEAVIEST = 0.31, 0.73
_QUARTER = 6.35
# NDS Tables 12K and 12M print this for the 33 ksi grade; 2.2 x 45,000 / 1.6 would be 61,875.
_UNKNOWN_STEEL = 61850.0
# A quarter-inch screw written as 6.35 mm is a quarter-inch screw.
_TIE = 1e-9


def counts_as_small(diameter: Given) -> bool:
    """Whether a screw of nominal `diameter` mm is under 1/4 in., where the rules for thin fasteners hold."""
    return si(diameter) < _QUARTER * (1 - _TIE)


def require_gravity(gravity: Given) -> float:
    """The specific gravity. Raises OutsideRulebook outside the published range 0.31 to 0.73, NotPossible for <= 0."""
    value = positive("the specific gravity", gravity)
    if value < _LIGHTEST - _TIE:
        raise outside("light wood")
    if value > _HEAVIEST + _TIE:
        raise outside("heavy wood")
    return value


def wood_bearing(gravity: Given, diameter: Given, grain_angle: float) -> Worked:
    """Dowel bearing strength F_e of wood, psi, rounded to 50 psi as the tables are.

    `gravity` 0.31 to 0.73; nominal `diameter` mm (never the root); `grain_angle` between load and grain, 0 to 90
    degrees: 0 for a weight on a stud, 90 for a weight on a horizontal block. Under 1/4 in. the angle does not
    matter. Raises OutsideRulebook for other wood, NotPossible for an angle that cannot be.
    """
    if not 0 <= grain_angle <= 90:
        raise NotPossible(f"an angle to the grain lies between 0 and 90 degrees, not {grain_angle:g}")
    if counts_as_small(diameter):
        return bearing_small(gravity, diameter)
    if grain_angle == 0:
        return bearing_parallel(gravity)
    if grain_angle == 90:
        return bearing_perpendicular(gravity, diameter)
    return bearing_at_angle(bearing_parallel(gravity), bearing_perpendicular(gravity, diameter), grain_angle)


def bearing_small(gravity: Given, diameter: Given) -> Worked:
    """F_e = 16600 G^1.84 psi for D < 1/4 in., any grain angle. `diameter` mm. Raises NotPossible at 1/4 in. and up."""
    if not counts_as_small(diameter):
        raise NotPossible("the thin-fastener bearing strength stops short of 1/4 in")
    value = 16600 * require_gravity(gravity) ** 1.84
    return _rounded(
        "F_e", "bearing strength of the wood", "16600 * G^1.84", value, (number("G", gravity, ""),), gravity
    )


def bearing_parallel(gravity: Given) -> Worked:
    """F_e = 11200 G psi for D >= 1/4 in., load along the grain."""
    value = 11200 * require_gravity(gravity)
    return _rounded(
        "F_e_par", "bearing strength along the grain", "11200 * G", value, (number("G", gravity, ""),), gravity
    )


def bearing_perpendicular(gravity: Given, diameter: Given) -> Worked:
    """F_e = 6100 G^1.45 / sqrt(D) psi for D >= 1/4 in., load across the grain; D nominal, `diameter` in mm."""
    inches = from_si(positive("the screw's diameter", diameter), "in")
    value = 6100 * require_gravity(gravity) ** 1.45 / inches**0.5
    return _rounded(
        "F_e_perp", "bearing strength across the grain", "6100 * G^1.45 / sqrt(D)", value,
        (number("G", gravity, ""), number("D", diameter, "in")), gravity,
    )  # fmt: skip


def bearing_at_angle(parallel: Given, perpendicular: Given, grain_angle: float) -> Worked:
    """Hankinson's formula: F_e in MPa at `grain_angle` degrees, from those along and across the grain."""
    along, across = positive("the strength along", parallel), positive("the strength across", perpendicular)
    angle = radians(grain_angle)
    value = along * across / (along * sin(angle) ** 2 + across * cos(angle) ** 2)
    return Worked(
        "F_e_a", "bearing strength at an angle to the grain",
        "F_par * F_perp / (F_par * sin(a)^2 + F_perp * cos(a)^2)",
        (number("F_par", parallel, "MPa"), number("F_perp", perpendicular, "MPa"), number("a", grain_angle, "°")),
        value, "MPa", "AWC NDS 2018, 12.3.4 eq. 12.3-11", steps=steps(parallel, perpendicular),
    )  # fmt: skip


def steel_bearing(ultimate: Given, formed: str) -> Worked:
    """Dowel bearing strength of carbon steel in MPa from its tensile stress `ultimate` in MPa: 2.4 Fu/1.6 when hot
    rolled, 2.2 Fu/1.6 when cold formed. Raises NotPossible for another forming."""
    factors = {"hot rolled": 2.4, "cold formed": 2.2}
    if formed not in factors:
        raise NotPossible(f"no bearing factor is published for steel that is {formed}")
    value = factors[formed] * positive("the tensile stress", ultimate) / 1.6
    return Worked(
        "F_es", "bearing strength of the steel", f"{factors[formed]} * F_u / 1.6", (number("F_u", ultimate, "MPa"),),
        value, "MPa", _STEEL, steps=steps(ultimate),
    )  # fmt: skip


def steel_bearing_of(steel: Steel) -> Worked:
    """Dowel bearing strength of a named metal. Steel of no promised grade gets 61,850 psi, the table's weakest, never
    the 87,000 of A36. Raises OutsideRulebook for aluminium and stainless steel."""
    if steel.metal != "carbon steel":
        raise outside("steel grade")
    if steel.formed == "unknown":
        return Worked(
            "F_es", "bearing strength of steel of no promised grade", "F_es",
            (Number("F_es", _UNKNOWN_STEEL, "psi"),), _UNKNOWN_STEEL, "psi",
            "AWC NDS 2018, Tables 12K and 12M note 2, the 33 ksi grade",
            caution="The grade is not written down, so the weakest tabulated steel is taken.",
        )  # fmt: skip
    return steel_bearing(steel.ultimate, steel.formed)


def bending_yield(fastener: Fastener) -> Worked:
    """Bending yield strength F_yb of a lag or wood screw in psi, by nominal diameter."""
    psi = from_si(fastener.bending_yield, "psi")
    return Worked(
        "F_yb", "bending yield strength of the screw", "F_yb", (number("F_yb", fastener.bending_yield, "psi"),), psi,
        "psi", "AWC NDS 2018, Appendix I Table I1",
    )  # fmt: skip


def _rounded(
    symbol: str, words: str, formula: str, value: float, numbers: tuple[Number, ...], *givens: Given
) -> Worked:
    """A table value: to the nearest 50 psi, halves upward."""
    return Worked(
        symbol, f"{words}, to 50 psi", f"50 * floor(({formula}) / 50 + 0.5)", numbers,
        50.0 * floor(value / 50 + 0.5), "psi", _TABLE, published_units=True, steps=steps(*givens),
    )  # fmt: skip
