"""A wooden cleat on its screws: a beam that stands on edge, with the design values of its lumber."""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.table_rows import Framing
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

CleatStress = Literal["bending", "shear", "bearing"]
_GEOMETRY = "geometry of a rectangle"
# The grades that are at least No. 2. What may be below it, or bears no stamp, has no value here.
_AT_LEAST_NO_2 = ("clear", "select", "No. 1", "No. 2")
# A connection nearer than this many heights to the end of the piece splits it more easily: AWC NDS 2018, 3.4.3.3.
_NEAR_AN_END = 5.0
_SAME = 1e-9
_MEMORY = "Some of the design values are from memory."


def lumber_stress(framing: Framing, grade: str, stress: CleatStress) -> Worked:
    """Reference design value in MPa of dimension lumber of at least No. 2, before C_D and C_M; the size factor, which
    is 1 or more for a cleat, is not taken. Raises OutsideRulebook for a lower grade and where no value is known."""
    if grade not in _AT_LEAST_NO_2:
        raise OutsideRulebook(
            f"A cleat of grade {grade} has no design value here: take a piece stamped No. 2 or better."
        )
    value, symbol, words = {
        "bending": (framing.bending, "F_b", "bending stress"), "shear": (framing.shear, "F_v", "shear stress"),
        "bearing": (framing.bearing_across, "F_c_p", "bearing stress across the grain"),
    }[stress]  # fmt: skip
    if value is None:
        raise OutsideRulebook(
            f"No {words} of {framing.name} is known here: take a cleat of a species that has one, such as "
            "spruce-pine-fir."
        )
    return Worked(
        symbol, f"{words} that No. 2 lumber may carry", symbol, (Number(symbol, value, "MPa"),), value, "MPa",
        framing.source, caution=_MEMORY,
    )  # fmt: skip


def cleat_modulus(thickness: Given, height: Given, hole: Given) -> Worked:
    """Section modulus t (h - d)²/6 in mm³ of a cleat on edge, the hole of a screw taken off its height. mm."""
    t, h, d = positive("the cleat's thickness", thickness), positive("its height", height), not_negative("d", hole)
    if d >= h:
        raise NotPossible("the hole is as large as the cleat")
    return Worked(
        "S", "section modulus of the cleat at a hole", "t * (h - d)^2 / 6",
        (number("t", thickness, "mm"), number("h", height, "mm"), number("d", hole, "mm")), t * (h - d) ** 2 / 6, "mm³",
        _GEOMETRY, steps=steps(thickness, height, hole),
    )  # fmt: skip


def cleat_moment_capacity(stress: Given, modulus: Given) -> Worked:
    """Bending in N·mm that the cleat may carry, F_b S. `stress` in MPa with its factors, `modulus` in mm³."""
    return Worked(
        "M_a", "bending the cleat may carry", "F * S", (number("F", stress, "MPa"), number("S", modulus, "mm³")),
        positive("the stress", stress) * positive("the section modulus", modulus), "N·mm", "AWC NDS 2018, 3.3",
        steps=steps(stress, modulus),
    )  # fmt: skip


def cleat_shear_capacity(
    stress: Given, thickness: Given, height: Given, row: Given, to_end: Given, hole: Given
) -> Worked:
    """Shear in N along the grain that a cleat may carry beside a screw that holds it up, (2/3) F_v t d_e (d_e/h)² where
    the screw is nearer than five heights to the end of the cleat, (2/3) F_v t d_e farther in. MPa, mm.

    The board stands on the upper edge and the screw pushes the cleat up, so the wood above the screw carries: the
    upper edge is the loaded one, the lower edge the unloaded one, and d_e = `row`, from the upper edge to the middle of
    the lowest screw of the place. What hangs below it does nothing. `to_end` is from the screw to the nearer end of
    the cleat, `hole` the diameter of its hole. The clause, from memory, speaks of bolts and lag screws; a wood screw is
    taken alike. Raises NotPossible where the hole breaks out of either edge or the screw is not in the cleat.
    """
    t, h, y = positive("the cleat's thickness", thickness), positive("its height", height), positive("the row", row)
    end, d = not_negative("the distance to the end", to_end), not_negative("the hole", hole)
    if y - d / 2 <= 0 or y + d / 2 >= h:
        raise NotPossible("a hole breaks out of the edge of the cleat")
    value, formula = 2 * positive("the stress", stress) * t * y / 3, "2 * F * t * d_e / 3"
    numbers = [number("F", stress, "MPa"), number("t", thickness, "mm"), number("d_e", row, "mm")]
    near = end < _NEAR_AN_END * h * (1 - _SAME)
    if near:
        value, formula = value * (y / h) ** 2, f"{formula} * (d_e / h)^2"
        numbers.append(number("h", height, "mm"))
    return Worked(
        "V_a", f"shear the cleat may carry beside a screw {'near' if near else 'far from'} its end", formula,
        tuple(numbers), value, "N", f"AWC NDS 2018, 3.4.3.3 eq. {'3.4-6' if near else '3.4-7'} (from memory)",
        steps=steps(stress, thickness, height, row, to_end, hole),
    )  # fmt: skip


def person_on_beam(spread: Given, person: Given, run: Given, overhang: Given) -> Worked:
    """Bending in N·mm of a beam over many places: that of a spread load, and one person on its longest stretch as if
    the beam ended beside it, P s/4, or on its overhang, P c. N, mm."""
    m, p = not_negative("the bending", spread), not_negative("the person", person)
    s, c = positive("the stretch", run), not_negative("the overhang", overhang)
    return Worked(
        "M_x", "bending between two places", "M_q + P * max(s / 4, c)",
        (number("M_q", spread, "N·mm"), number("P", person, "N"), number("s", run, "mm"), number("c", overhang, "mm")),
        m + p * max(s / 4, c), "N·mm", "statics; one span by itself, which is the safe side",
        steps=steps(spread, person, run, overhang),
    )  # fmt: skip
