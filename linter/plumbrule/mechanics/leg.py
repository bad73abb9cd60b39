"""A leg of an angle bent as a strip from the toe of its fillet: what it carries, with and without a lasting set."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.hold_down import BoardLoad, per_width
from plumbrule.mechanics.loads import PATCH
from plumbrule.mechanics.worked import NotPossible, Worked

LegLimit = Literal["strength", "no lasting set", "lasting load"]
YIELDING = 1.67
SHEARING = 1.5
_F11 = "ANSI/AISC 360-22 F11, rectangular bar"


def leg_moment(loads: Sequence[BoardLoad], to_toe: Given, width: Given, length: Given) -> Worked:
    """Bending m of the seat leg per width at the toe of its fillet, N·mm/mm = N.

    People over the effective `width` L_e, spread loads over the `length` L; `to_toe` k from the heel, mm.

    With the L_e of a place at an end it is a bound: no plate solution passes it, wherever the person is. With that of a
    place inside, kept as its worked example has it, steel that has not yet yielded shows up to a twentieth more on
    boards 15 in deep; so whoever judges a leg by it must look at an end too, which asks for more.
    """
    return per_width("m", "bending of the seat leg per width", loads, to_toe, "k", width, length)


def leg_capacity(limit: LegLimit, thickness: Given, yield_stress: Given) -> Worked:
    """Bending per width in N that a leg may take, `thickness` in mm, `yield_stress` F_y in MPa (30 ksi if unknown).

    strength: F_y t²/(4 x 1.67). no lasting set: F_y t²/6. lasting load (weight, goods): F_y t²/(6 x 1.67).
    """
    t, fy = positive("the steel", thickness), positive("the yield stress", yield_stress)
    rows: dict[LegLimit, tuple[str, str, float]] = {
        "strength": ("bending the leg may take", f"F_y * t_a^2 / (4 * {YIELDING})", 4 * YIELDING),
        "no lasting set": ("bending up to which the leg springs back", "F_y * t_a^2 / 6", 6),
        "lasting load": ("bending the leg may take for good", f"F_y * t_a^2 / (6 * {YIELDING})", 6 * YIELDING),
    }
    if limit not in rows:
        raise NotPossible(f"{limit} is not a limit of a leg")
    words, formula, divisor = rows[limit]
    return Worked(
        "m_a", words, formula, (number("F_y", yield_stress, "MPa"), number("t_a", thickness, "mm")),
        fy * t**2 / divisor, "N", _F11, steps=steps(thickness, yield_stress),
    )  # fmt: skip


def leg_shear_capacity(thickness: Given, yield_stress: Given, width: Given) -> Worked:
    """Shear in N of `width` mm of leg, 0.6 F_y t/1.5 per width. Never governs; worked so that nobody has to ask."""
    value = 0.6 * positive("F_y", yield_stress) * positive("t", thickness) * positive("the width", width) / SHEARING
    return Worked(
        "V_a", "shear the leg may take", f"0.6 * F_y * t_a * L_e / {SHEARING}",
        (number("F_y", yield_stress, "MPa"), number("t_a", thickness, "mm"), number("L_e", width, "mm")), value, "N",
        "ANSI/AISC 360-22 J4-3", steps=steps(thickness, yield_stress, width),
    )  # fmt: skip


def leg_under_edge(person: Given, toe: Given, to_toe: Given, patch: Given = PATCH) -> Worked:
    """Bending m of the seat leg per width in N where a person sits at the wall on a board held along three sides.

    m = P (y_t - k)/(l_p + 2 (y_t - k)): the board bears on the toe over the sitter and 45 degrees to each side.
    """
    p, arm = positive("the person", person), positive("the toe", toe) - positive("k", to_toe)
    if arm <= 0:
        raise NotPossible("the leg has no flat beyond its fillet")
    return Worked(
        "m", "bending of the seat leg per width, a person at the wall", "P * (y_t - k) / (l_p + 2 * (y_t - k))",
        (number("P", person, "N"), number("y_t", toe, "mm"), number("k", to_toe, "mm"), number("l_p", patch, "mm")),
        p * arm / (positive("the patch", patch) + 2 * arm), "N", "45 degrees of spread, common practice",
        steps=steps(person, toe, to_toe, patch),
    )  # fmt: skip


def torque_between(share: Given, person: Given, out: Given) -> Worked:
    """Torque eta P y/2 in N·mm in the angle on each side of a screw position, a person P at `out` y mm."""
    value = positive("the share", share) * not_negative("the person", person) * positive("y", out) / 2
    return Worked(
        "T_t", "torque in the angle between screw positions", "eta * P * y_P / 2",
        (number("eta", share, ""), number("P", person, "N"), number("y_P", out, "mm")), value, "N·mm", "statics",
        steps=steps(share, person, out),
    )  # fmt: skip


def torque_capacity(yield_stress: Given, torsion_constant: Given, thickness: Given) -> Worked:
    """Torque 0.6 F_y J/(1.67 t) in N·mm of an open section. Above it, seat screws within 2 in. of every position let
    the board, a hundred times stiffer, carry it instead."""
    fy, j = positive("F_y", yield_stress), positive("J", torsion_constant)
    return Worked(
        "T_ta", "torque the angle may take", f"0.6 * F_y * J / ({YIELDING} * t_a)",
        (number("F_y", yield_stress, "MPa"), number("J", torsion_constant, "mm⁴"), number("t_a", thickness, "mm")),
        0.6 * fy * j / (YIELDING * positive("t", thickness)), "N·mm", "thin open section, shear yield at 0.6 F_y",
        steps=steps(yield_stress, torsion_constant, thickness),
    )  # fmt: skip


def radius_clash(board_radius: Given, back_gap: Given, fillet: Given) -> Worked:
    """How far the back edge of a board clears the inside radius of the angle, mm: its own rounding plus the gap behind
    it less the fillet. Negative: the board rides up on the fillet instead of lying on the leg."""
    value = not_negative("r_b", board_radius) + not_negative("the gap", back_gap) - not_negative("r", fillet)
    return Worked(
        "c_r", "clearance of the board's back edge to the fillet", "r_b + g_b - r",
        (number("r_b", board_radius, "mm"), number("g_b", back_gap, "mm"), number("r", fillet, "mm")), value, "mm",
        "geometry", steps=steps(board_radius, back_gap, fillet),
    )  # fmt: skip
