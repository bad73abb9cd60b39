"""The angle as a beam between its screws: its bending strength held and free, and its overhang past the last screw."""

from __future__ import annotations

from math import sqrt
from typing import NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.leg import YIELDING
from plumbrule.mechanics.section import AngleSection
from plumbrule.mechanics.slip import STEEL_MODULUS
from plumbrule.mechanics.worked import Worked

_F10 = "ANSI/AISC 360-22 F10"
# Limits of the ratio of leg to thickness with the toe pressed, in sqrt(E/F_y); both from memory.
_COMPACT, _SLENDER = 0.54, 0.91


def held_capacity(section: AngleSection, yield_stress: Given) -> Worked:
    """Bending in N·mm of an angle held sideways by wall, screws and board: F_y S/1.67, S at the upright leg's tip."""
    fy = positive("F_y", yield_stress)
    return Worked(
        "M_a", "bending the angle may take, held sideways", f"F_y * S / {YIELDING}",
        (number("F_y", yield_stress, "MPa"), number("S", section.modulus_tip, "mm³")),
        fy * section.modulus_tip.value / YIELDING, "N·mm", f"{_F10}, geometric axis, restrained",
        steps=(*steps(yield_stress), section.modulus_tip),
    )  # fmt: skip


class FreeStretch(NamedTuple):
    """A stretch that nothing holds sideways: its bending strength, its second moment, and how far it drifts sideways
    as a share of its drop."""

    capacity: Worked
    second_moment: Worked
    drift: Worked


def free_stretch(section: AngleSection, yield_stress: Given) -> FreeStretch:
    """An angle without lining behind it or board screwed to it: 0.80 S, and I_eff = (I_x I_y - I_xy²)/I_y.

    The 0.80 is for equal legs bent about a leg-parallel axis. F_y in MPa, results in N·mm and mm⁴.
    """
    fy, modulus = positive("F_y", yield_stress), section.modulus_tip
    i_x, i_y, i_xy = section.second_moment, section.second_moment_sideways, section.product
    capacity = Worked(
        "M_a", "bending the angle may take, free sideways", f"F_y * 0.8 * S / {YIELDING}",
        (number("F_y", yield_stress, "MPa"), number("S", modulus, "mm³")), fy * 0.8 * modulus.value / YIELDING,
        "N·mm", f"{_F10}.2", steps=(*steps(yield_stress), modulus),
    )  # fmt: skip
    numbers = tuple(number(line.symbol, line, "mm⁴") for line in (i_x, i_y, i_xy))
    effective = Worked(
        "I_eff", "second moment against going down, free sideways", "(I_x * I_y - I_xy^2) / I_y", numbers,
        (i_x.value * i_y.value - i_xy.value**2) / i_y.value, "mm⁴", "unsymmetrical bending", steps=(i_x, i_y, i_xy),
    )  # fmt: skip
    drift = Worked(
        "r_d", "drift sideways as a share of the drop", "I_xy / I_y", numbers[2:] + numbers[1:2],
        i_xy.value / i_y.value, "", "unsymmetrical bending", steps=(i_y, i_xy),
    )  # fmt: skip
    return FreeStretch(capacity, effective, drift)


def pressed_tip_capacity(section: AngleSection, yield_stress: Given) -> Worked:
    """Bending in N·mm with the tip of the upright leg pressed, as in a sagging angle with its wall leg up.

    A slender tip buckles: b/t over 0.54 sqrt(E/F_y) gives F_y S (2.43 - 1.72 (b/t) sqrt(F_y/E)), over 0.91 sqrt(E/F_y)
    0.71 E S/(b/t)²; never over 1.5 F_y S, all over 1.67. Compare with `held_capacity`: the lower one counts.
    """
    fy, ratio = positive("F_y", yield_stress), section.upright / section.thickness
    s, limit = section.modulus_tip.value, sqrt(STEEL_MODULUS / fy)
    if ratio <= _COMPACT * limit:
        formula, value = f"1.5 * F_y * S / {YIELDING}", 1.5 * fy * s / YIELDING
    elif ratio <= _SLENDER * limit:
        formula = f"min(1.5, 2.43 - 1.72 * b_l / t_a * sqrt(F_y / E_s)) * F_y * S / {YIELDING}"
        value = min(1.5, 2.43 - 1.72 * ratio / limit) * fy * s / YIELDING
    else:
        formula = f"0.71 * E_s / (b_l / t_a)^2 * S / {YIELDING}"
        value = 0.71 * STEEL_MODULUS / ratio**2 * s / YIELDING
    numbers = {
        "b_l": number("b_l", section.upright, "mm"), "t_a": number("t_a", section.thickness, "mm"),
        "E_s": number("E_s", STEEL_MODULUS, "MPa"), "F_y": number("F_y", yield_stress, "MPa"),
        "S": number("S", section.modulus_tip, "mm³"),
    }  # fmt: skip
    return Worked(
        "M_tip", "bending the angle may take with its tip pressed", formula,
        tuple(value for name, value in numbers.items() if name in formula), value, "N·mm",
        f"{_F10}.3; the limits of b/t are from memory", steps=(*steps(yield_stress), section.modulus_tip),
    )  # fmt: skip


def overhang_reaction(force: Given, overhang: Given, pitch: Given) -> Worked:
    """Force P (1 + c/s) in N on the last screw position from a load at the end of an overhang c past it, mm.

    `pitch` s to the next position, which is pushed up by P c/s.
    """
    p, c, s = not_negative("P", force), not_negative("the overhang", overhang), positive("the pitch", pitch)
    return Worked(
        "R_c", "force on the last position, the load at the overhanging end", "P * (1 + c / s)",
        (number("P", force, "N"), number("c", overhang, "mm"), number("s", pitch, "mm")), p * (1 + c / s), "N",
        "lever rule", steps=steps(force, overhang, pitch),
    )  # fmt: skip


def idle_screw_load(second_moment: Given, pitch: Given, slack: Given) -> Worked:
    """Force in N that bends the angle over two pitches until a screw `slack` mm loose begins to bear, 48 E I d/(2 s)³.

    `second_moment` in mm⁴, `pitch` in mm. Below it the loose screw does nothing: why sharing asks for tight holes.
    """
    i, s, d = positive("I", second_moment), positive("s", pitch), not_negative("the slack", slack)
    return Worked(
        "P_0", "force before a loose screw begins to bear", "48 * E_s * I_x * d / (2 * s)^3",
        (number("E_s", STEEL_MODULUS, "MPa"), number("I_x", second_moment, "mm⁴"), number("d", slack, "mm"),
         number("s", pitch, "mm")),
        48 * STEEL_MODULUS * i * d / (2 * s) ** 3, "N", "simple span over two pitches",
        steps=steps(second_moment, pitch, slack),
    )  # fmt: skip
