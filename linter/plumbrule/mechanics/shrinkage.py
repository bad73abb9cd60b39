"""Shrinkage of wood from green: by how much it has shrunk at a moisture, and a movement worked from that.

The printed coefficients of movement go before these formulas wherever they hold.
"""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

# Moisture at which wood begins to shrink; the cedars and redwoods of low saturation point have 22 in their rows.
SATURATION = 30.0
_LUMBER: dict[str, tuple[float, float]] = {"width": (6.031, 0.215), "thickness": (5.062, 0.181)}
_TIE = 1e-9


def partial_shrinkage(total: Given, moisture: Given) -> Worked:
    """Shrinkage in % from green to `moisture` %, S_0 (30 - M)/30, of the `total` shrinkage to oven-dry in %.

    Raises NotPossible above 30 %, where wood has not begun to shrink.
    """
    whole, percent = positive("the total shrinkage", total), not_negative("the moisture", moisture)
    if percent > SATURATION + _TIE:
        raise NotPossible(f"at {percent:g} % wood has not begun to shrink")
    return Worked(
        "S_M", "shrinkage from green to this moisture", "S_0 * (30 - M) / 30",
        (number("S_0", total, "%"), number("M", moisture, "%")), whole * (SATURATION - percent) / SATURATION, "%",
        "Wood Handbook ch. 4, eq. 4-7, from memory", steps=steps(total, moisture),
    )  # fmt: skip


def lumber_shrinkage(moisture: Given, face: Literal["width", "thickness"]) -> Worked:
    """Shrinkage in % of softwood framing lumber from green to `moisture` %: 6.031 - 0.215 M over its width, 5.062 -
    0.181 M over its thickness; 8 to 19 %. Raises OutsideRulebook outside, NotPossible for another face."""
    if face not in _LUMBER:
        raise NotPossible(f"{face} is neither width nor thickness")
    percent = not_negative("the moisture", moisture)
    if not 8 - _TIE <= percent <= 19 + _TIE:
        raise OutsideRulebook("The shrinkage of framing lumber is published from 8 to 19 % moisture only.")
    start, slope = _LUMBER[face]
    return Worked(
        "S_w" if face == "width" else "S_t", f"shrinkage of framing lumber, {face}", f"{start} - {slope} * M",
        (number("M", moisture, "%"),), start - slope * percent, "%", "FPL-RP-489 (1989), Moisture content and the "
        "shrinkage of lumber", published_units=True, steps=steps(moisture),
    )  # fmt: skip


def movement_by_shrinkage(
    width: Given, shrinkage: Given, moisture: Given, fitted: Given, saturation: Given = SATURATION
) -> Worked:
    """Change of a `width` in mm from the moisture it was `fitted` at to `moisture`, %, by its total `shrinkage` in %.

    D (M - M_i)/(100 F/S - F + M_i), negative where it shrinks; above the `saturation` point F nothing moves, so both
    moistures count up to it. Raises NotPossible for measures that cannot be.
    """
    size, whole = positive("the width", width), positive("the total shrinkage", shrinkage)
    start = positive("the saturation point", saturation)
    end, begun = (min(not_negative("the moisture", value), start) for value in (moisture, fitted))
    value = size * (end - begun) / (100 * start / whole - start + begun)
    return Worked(
        "dD_S", "change of the width by its shrinkage",
        "D * (min(M, F) - min(M_i, F)) / (100 * F / S - F + min(M_i, F))",
        (number("D", width, "mm"), number("M", moisture, "%"), number("M_i", fitted, "%"),
         Number("F", si(saturation), "%"), number("S", shrinkage, "%")),
        value, "mm", "Wood Handbook ch. 13, eq. 13-3, from memory", steps=steps(width, shrinkage, moisture, fitted),
    )  # fmt: skip
