"""The reduction term R_d that turns a yield load into a reference value: by diameter and by angle to the grain."""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.bearing_wood import counts_as_small
from plumbrule.mechanics.given import Given, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Worked
from plumbrule.reading.units import from_si

MODES = ("I_m", "I_s", "II", "III_m", "III_s", "IV")

_TABLE = "AWC NDS 2018, Table 12.3.1B"
_FACTORS = {"I_m": 4.0, "I_s": 4.0, "II": 3.6, "III_m": 3.2, "III_s": 3.2, "IV": 3.2}
_QUARTER = 6.35
_THIN = 0.17
_TIE = 1e-9


class Reduction(NamedTuple):
    """R_d for each yield mode, by its name in `MODES`."""

    by_mode: dict[str, Worked]


def thin_factor(root_diameter: Given) -> Worked:
    """K_D by the **root** diameter of a threaded screw: 2.2 up to 0.17 in., 10 D_r + 0.5 (in.) above.

    `root_diameter` in mm, under 1/4 in. The two lines meet at 0.17 in.; a circulated correction to `10 D - 0.5`
    would jump from 2.2 to 1.2 there and does not give the printed tables. Raises NotPossible at 1/4 in. and up.
    """
    inches = from_si(positive("the root diameter", root_diameter), "in")
    if si(root_diameter) >= _QUARTER * (1 - _TIE):
        raise NotPossible("K_D is for root diameters under 1/4 in")
    thin = inches <= _THIN + _TIE
    return Worked(
        "K_D", "reduction for thin screws, by root diameter", "D_r <= 0.17 ? 2.2 : 10 * D_r + 0.5",
        (number("D_r", root_diameter, "in"),), 2.2 if thin else 10 * inches + 0.5, "", _TABLE, published_units=True,
        steps=steps(root_diameter),
    )  # fmt: skip


def grain_factor(grain_angle: float) -> Worked:
    """K_theta = 1 + 0.25 theta/90 for the largest angle, 0 to 90 degrees, between load and grain in any member."""
    if not 0 <= grain_angle <= 90:
        raise NotPossible(f"an angle to the grain lies between 0 and 90 degrees, not {grain_angle:g}")
    return Worked(
        "K_th", "reduction for the angle to the grain", "1 + th / 360", (number("th", grain_angle, "°"),),
        1 + grain_angle / 360, "", _TABLE, published_units=True,
    )  # fmt: skip


def reduction(diameter: Given, root_diameter: Given, grain_angle: float) -> Reduction:
    """R_d of every mode for a threaded screw of nominal `diameter` and `root_diameter`, mm.

    Under 1/4 in. nominal: K_D. From 1/4 in. with a root under 1/4 in., as every 1/4 and 5/16 lag screw: K_D K_theta.
    Above: 4, 4, 3.6, 3.2, 3.2, 3.2 times K_theta. Raises NotPossible when the root is thicker than the screw.
    """
    if positive("the root diameter", root_diameter) > positive("the screw's diameter", diameter) * (1 + _TIE):
        raise NotPossible("the root of a screw cannot be thicker than the screw")
    thin_root = si(root_diameter) < _QUARTER * (1 - _TIE)
    if counts_as_small(diameter):
        k_d = thin_factor(root_diameter)
        worked = _term("R_d", "K_D", k_d.value, k_d)
        return Reduction(dict.fromkeys(MODES, worked))
    k_th = grain_factor(grain_angle)
    if thin_root:
        k_d = thin_factor(root_diameter)
        worked = _term("R_d", "K_D * K_th", k_d.value * k_th.value, k_d, k_th)
        return Reduction(dict.fromkeys(MODES, worked))
    terms = {factor: _term("R_d", f"{factor:g} * K_th", factor * k_th.value, k_th) for factor in (4.0, 3.6, 3.2)}
    return Reduction({mode: terms[_FACTORS[mode]] for mode in MODES})


def _term(symbol: str, formula: str, value: float, *factors: Worked) -> Worked:
    return Worked(
        symbol, "reduction term", formula, tuple(number(factor.symbol, factor, "") for factor in factors), value, "",
        _TABLE, steps=factors,
    )  # fmt: skip
