"""How far a run of panels grows and shrinks at its edges over the year: by warmth and, where it drinks, by damp air."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.movement import coefficient_holds
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

_EXPANSION = "change of length by warmth, alpha L dT"
_HELD = "a panel that is held at the middle of its length moves half as far at each end; from memory"
_MIDDLE = "a run that is held at the middle of its length; what its joints take does not reach its ends; from memory"


def thermal_strain(expansion: Given, warmest: Given, coldest: Given) -> Worked:
    """The part of its length that something grows by from its `coldest` to its `warmest`: alpha (T_1 - T_0).

    `expansion` per °C, more than zero; temperatures in °C. Raises NotPossible when coldest is warmer than warmest.
    Source: definition of the coefficient of linear expansion.
    """
    grows = positive("the expansion", expansion)
    hot, cold = finite("warmest", warmest), finite("coldest", coldest)
    if hot < cold:
        raise NotPossible("coldest is warmer than warmest")
    return Worked(
        "e_T", "part of its length that warmth adds over the year", "alpha * (T_1 - T_0)",
        (number("alpha", expansion, "per °C"), number("T_1", warmest, "°C"), number("T_0", coldest, "°C")),
        grows * (hot - cold), "", _EXPANSION, steps=steps(expansion, warmest, coldest),
    )  # fmt: skip


def humidity_strain(swelling: Given, dampest: Given, driest: Given, source: str) -> Worked:
    """The part of its length that something grows by between the room's `driest` and `dampest` air: s (RH_1 - RH_0).

    `swelling` is the part of a length that 1 % of relative humidity adds; humidities in %. For sheets whose swelling is
    published over the humidity of the air. Raises NotPossible when driest is damper than dampest. `source` is that of
    `swelling`.
    """
    grows = positive("the swelling", swelling)
    damp, dry = not_negative("dampest", dampest), not_negative("driest", driest)
    if damp < dry:
        raise NotPossible("driest is damper than dampest")
    return Worked(
        "e_M", "part of its length that damp air adds over the year", "s * (RH_1 - RH_0)",
        (number("s", swelling, ""), number("RH_1", dampest, "%"), number("RH_0", driest, "%")),
        grows * (damp - dry), "", source, steps=steps(swelling, dampest, driest),
    )  # fmt: skip


def humidity_swelling(growth: Given, dampest: Given, driest: Given, source: str) -> Worked:
    """The part of a length that 1 % of relative humidity adds, from a `growth` in % that a standard allows between two
    humidities in %. Raises NotPossible unless `dampest` is damper than `driest`."""
    grown = positive("the growth", growth)
    span = not_negative("dampest", dampest) - not_negative("driest", driest)
    if span <= 0:
        raise NotPossible("the growth is not given between two humidities")
    return Worked(
        "s", "part of its length that 1 % of humidity adds", "g / 100 / (RH_b - RH_a)",
        (number("g", growth, "%"), number("RH_b", dampest, "%"), number("RH_a", driest, "%")),
        grown / 100 / span, "", source, steps=steps(growth, dampest, driest),
    )  # fmt: skip


def wood_strain(coefficient: Given, damp: Given, dry: Given, source: str) -> Worked:
    """The part of its length that wood grows by between the `dry` and the `damp` moisture of its room: C (M_1 - M_0).

    `coefficient` is the part of a length that 1 % of moisture adds; moistures in %. Raises OutsideRulebook where the
    room goes past the 6 to 14 % for which coefficients are printed, NotPossible when dry is above damp.
    """
    grows = positive("the coefficient of movement", coefficient)
    high, low = not_negative("the damp end", damp), not_negative("the dry end", dry)
    if high < low:
        raise NotPossible("the dry end of the band is above the damp end")
    if not (coefficient_holds(low) and coefficient_holds(high)):
        raise OutsideRulebook(
            "The published coefficients of movement hold from 6 to 14 % moisture, and wood in this room goes past "
            "that: leave the gaps that the maker of the panels asks for."
        )
    return Worked(
        "e_M", "part of its length that moisture adds over the year", "C * (M_1 - M_0)",
        (number("C", coefficient, ""), number("M_1", damp, "%"), number("M_0", dry, "%")),
        grows * (high - low), "", source, steps=steps(coefficient, damp, dry),
    )  # fmt: skip


def strain(thermal: Given, moisture: Given) -> Worked:
    """Both parts together. Warm air is mostly dry air, so the sum is the worse case, never the usual one."""
    warm, damp = not_negative("the thermal part", thermal), not_negative("the part by damp", moisture)
    return Worked(
        "e", "part of its length that it moves over the year", "e_T + e_M",
        (number("e_T", thermal, ""), number("e_M", moisture, "")), warm + damp, "",
        "sum of both, the worse case", steps=steps(thermal, moisture),
    )  # fmt: skip


def growth(length: Given, part: Given) -> Worked:
    """By how much a free `length` in mm changes when `part` of it is added, mm."""
    size, share = positive("the length", length), not_negative("the part", part)
    return Worked(
        "dL", "change of the length over the year", "L * e", (number("L", length, "mm"), number("e", part, "")),
        size * share, "mm", _EXPANSION, steps=steps(length, part),
    )  # fmt: skip


def edge_movement(run: Given, piece: Given, part: Given, joints: float = 0.0, joint: Given = 0.0) -> Worked:
    """How far the end of a `run` of panels in mm moves over the year, mm, when `part` of every length is added.

    The run is held in its middle, so that each end moves half of it; `joints` open joints of `joint` mm take up what
    they can. An end never moves less than that of the `piece` in mm which lies there, held in its own middle. Valid for
    a run that pushes as one: whoever lays from hard against a wall has the whole growth at the other end. Raises
    NotPossible for a piece longer than its run.
    """
    whole, one = positive("the run", run), positive("the panel", piece)
    share, room = not_negative("the part", part), not_negative("the joint", joint)
    if one > whole * (1 + 1e-9):
        raise NotPossible("the panel is longer than its run")
    if not joints or not room:
        return Worked(
            "m", "movement of the edge over the year", "e * L / 2", (number("e", part, ""), number("L", run, "mm")),
            share * whole / 2, "mm", _HELD, steps=steps(part, run),
        )  # fmt: skip
    return Worked(
        "m", "movement of the edge over the year", "max(e * l, e * L - n * j) / 2",
        (number("e", part, ""), number("l", piece, "mm"), number("L", run, "mm"), Number("n", joints, ""),
         number("j", joint, "mm")),
        max(share * one, share * whole - joints * si(joint)) / 2, "mm", _MIDDLE,
        steps=steps(part, piece, run, joint),
    )  # fmt: skip
