"""The wall leg of an angle as a lever: what a couple pulls on its screws, and what the leg round a screw can take.

The leg bears on the lining where it is pressed in: with the wall leg **up** the seat leg is at the bottom and the heel
bears; with the wall leg **down** the free toe does, so near the screws that the pull doubles.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import sqrt
from typing import Literal, NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.leg import YIELDING
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked
from plumbrule.reading.units import to_si

WallLeg = Literal["up", "down"]
# Crushing stress of gypsum board, from memory.
LINING_CRUSH = to_si(300, "psi")
_BED = "thin leg on a lining that cannot pull, derived here"
_UP, _DOWN = 0.85, 0.75
_STRIP = "yield of the leg round a screw, bound on plate solutions, derived here"


def station_share(count: int, pitch: Given, width: Given) -> Worked:
    """Share eta of a person's couple that one of `count` positions takes, min(1, max(2/n, s/(2 L_e))).

    `pitch` s between positions and effective `width` L_e in mm.
    """
    if count < 1:
        raise NotPossible("there is no screw position")
    value = min(1.0, max(2 / count, positive("the pitch", pitch) / (2 * positive("the width", width))))
    return Worked(
        "eta", "share of a person's couple on one position", "min(1, max(2 / n, s / (2 * L_e)))",
        (Number("n", float(count), ""), number("s", pitch, "mm"), number("L_e", width, "mm")), value, "",
        "bound on plate solutions, derived here", steps=steps(pitch, width),
    )  # fmt: skip


def lever(wall_leg: WallLeg, gauge: Given, leg: Given) -> Worked:
    """Lever arm z in mm from a screw row to where the leg bears: 0.85 g (up), 0.75 (b_l - g) (down).

    `gauge` g from the heel, `leg` b_l in mm. The leg bends, so it bears before its edge; rigid arms are up to 25 %
    too long. Holds while the lining does not crush (`on_lining`).
    """
    g, b = positive("the gauge", gauge), positive("the leg", leg)
    if g >= b:
        raise NotPossible("the screw row is beyond the leg")
    if wall_leg == "up":
        return Worked(
            "z", "lever arm from the screws to the heel, wall leg up", f"{_UP} * g", (number("g", gauge, "mm"),),
            _UP * g, "mm", _BED, steps=steps(gauge),
        )  # fmt: skip
    return Worked(
        "z", "lever arm from the screws to the toe, wall leg down", f"{_DOWN} * (b_l - g)",
        (number("b_l", leg, "mm"), number("g", gauge, "mm")), _DOWN * (b - g), "mm", _BED, steps=steps(gauge, leg),
    )  # fmt: skip


def pull(couple: Given, arm: Given) -> Worked:
    """Pull T = M/z in N on one row from a couple M in N·mm over the lever z in mm."""
    value = not_negative("the couple", couple) / positive("the lever", arm)
    return Worked(
        "T", "pull on the screw row", "M / z", (number("M", couple, "N·mm"), number("z", arm, "mm")), value, "N",
        "statics of the leg", steps=steps(couple, arm),
    )  # fmt: skip


def pulls_of_rows(couple: Given, wall_leg: WallLeg, gauges: Sequence[Given], leg: Given) -> tuple[Worked, ...]:
    """Pull on each stacked row, T_i = M z_i/sum z², in the order of `gauges` (mm from the heel, rising).

    The screws stretch as they stand away from the bearing line. Side force is shared equally between rows.
    """
    if not gauges or any(si(a) >= si(b) for a, b in pairwise(gauges)):
        raise NotPossible("the rows are not in rising order from the heel")
    if len(gauges) == 1:
        return (pull(couple, lever(wall_leg, gauges[0], leg)),)
    arms = [lever(wall_leg, gauge, leg) for gauge in gauges]
    names = [f"z_{i}" for i in range(1, len(arms) + 1)]
    squares = sum(arm.value**2 for arm in arms)
    numbers = tuple(number(name, arm, "mm") for name, arm in zip(names, arms, strict=True))
    return tuple(
        Worked(
            f"T_{i}", f"pull on row {i} from the heel",
            f"M * {name} / ({' + '.join(f'{other}^2' for other in names)})",
            (number("M", couple, "N·mm"), *numbers), not_negative("the couple", couple) * arm.value / squares, "N",
            "rows turning about the bearing line, statics", steps=(*steps(couple), *arms),
        )
        for i, (name, arm) in enumerate(zip(names, arms, strict=True), 1)
    )  # fmt: skip


class OnLining(NamedTuple):
    """A pull with the lining's own strength looked at: the limit of the plain lever, the arm and pull that follow.

    crushed: the lining gives way at the edge, so the arm is shorter and the pull greater than M/z.
    """

    limit: Worked
    arm: Worked
    pull: Worked
    crushed: bool


def on_lining(
    couple: Given, wall_leg: WallLeg, gauge: Given, leg: Given, width: Given, crush: Given = LINING_CRUSH
) -> OnLining:
    """The pull T in N on one row from a couple, with the arm shortened where the lining crushes.

    Plain lever while T <= 2 (a - z) f b_e with a = g (up) or b_l - g (down), 0.3 g f b_e with the leg up; beyond,
    z = a - T/(2 f b_e). `width` b_e of leg per screw in mm, `crush` f in MPa (300 psi of gypsum, from memory; use the
    packer's compression across the grain where the leg bears on wood). Raises OutsideRulebook where no arm is left.
    """
    plain = lever(wall_leg, gauge, leg)
    reach = si(gauge) if wall_leg == "up" else si(leg) - si(gauge)
    bed = 2 * positive("the lining's strength", crush) * positive("the width", width)
    most = (reach - plain.value) * bed
    symbol = "g" if wall_leg == "up" else "(b_l - g)"
    sizes = [number("g", gauge, "mm")] if wall_leg == "up" else [number("b_l", leg, "mm"), number("g", gauge, "mm")]
    rest = (number("f_l", crush, "MPa"), number("b_e", width, "mm"))
    given = steps(gauge, leg, width, crush)
    limit = Worked(
        "T_l", "pull up to which the lining holds the lever", f"2 * ({symbol} - z) * f_l * b_e",
        (*sizes, number("z", plain, "mm"), *rest), most, "N", _BED, steps=(plain, *given),
        caution="The crushing stress of gypsum is from memory.",
    )  # fmt: skip
    tried = pull(couple, plain)
    if tried.value <= most * (1 + 1e-9):
        return OnLining(limit, plain, tried, False)
    moment = si(couple)
    root = reach**2 - 4 * moment / bed
    if root < 0:
        raise OutsideRulebook(
            "The lining crushes under the edge of the leg before any lever arm is left: cut the lining away and pack "
            "the angle solid, or make the couple smaller."
        )
    force = (reach - sqrt(root)) * bed / 2
    crushed = Worked(
        "T", "pull on the screw row, the lining crushed at the edge",
        f"({symbol} - sqrt({symbol}^2 - 2 * M / (f_l * b_e))) * f_l * b_e",
        (*sizes, number("M", couple, "N·mm"), *rest), force, "N", _BED, steps=(*steps(couple), limit, *given),
    )  # fmt: skip
    arm = Worked(
        "z", "lever arm, the lining crushed at the edge", f"{symbol} - T / (2 * f_l * b_e)",
        (*sizes, number("T", crushed, "N"), *rest), reach - force / bed, "mm", _BED, steps=(crushed,),
    )  # fmt: skip
    return OnLining(limit, arm, crushed, True)


class ScrewLever(NamedTuple):
    """The wall leg round one screw: how far from it the leg bends, and the length of leg that bends, mm."""

    arm: Worked
    width: Worked


def screw_lever(wall_leg: WallLeg, *, gauge: Given, leg: Given, to_toe: Given, head: Given, pitch: Given) -> ScrewLever:
    """m_s = g - k (up) or 0.75 (b_l - g) (down), and b_e = min(s, d_w + 3 m_s), mm.

    `to_toe` k of the fillet, `head` d_w of the head or washer, `pitch` s between positions. Raises NotPossible where
    the screw stands in the fillet.
    """
    g, b, k = positive("the gauge", gauge), positive("the leg", leg), positive("the toe of the fillet", to_toe)
    if g >= b or (wall_leg == "up" and g <= k):
        raise NotPossible("the screw row is in the fillet or beyond the leg")
    if wall_leg == "up":
        arm = Worked(
            "m_s", "from the screw to where the leg bends", "g - k",
            (number("g", gauge, "mm"), number("k", to_toe, "mm")), g - k, "mm", _STRIP, steps=steps(gauge, to_toe),
        )  # fmt: skip
    else:
        arm = Worked(
            "m_s", "from the screw to where the leg bears", f"{_DOWN} * (b_l - g)",
            (number("b_l", leg, "mm"), number("g", gauge, "mm")), _DOWN * (b - g), "mm", _STRIP,
            steps=steps(gauge, leg),
        )  # fmt: skip
    width = Worked(
        "b_e", "length of leg that bends for one screw", "min(s, d_w + 3 * m_s)",
        (number("s", pitch, "mm"), number("d_w", head, "mm"), number("m_s", arm, "mm")),
        min(positive("the pitch", pitch), positive("the head", head) + 3 * arm.value), "mm", _STRIP,
        steps=(*steps(pitch, head), arm),
    )  # fmt: skip
    return ScrewLever(arm, width)


def wall_leg_capacity(
    wall_leg: WallLeg, around: ScrewLever, *, thickness: Given, yield_stress: Given, hole: Given
) -> Worked:
    """Pull T in N that the leg round one screw may take: (M_p/1.67) b_e/m_s, wall leg down b_e less the hole.

    M_p = F_y t²/4 per width; `thickness`, `hole` in mm, `yield_stress` in MPa. No duration factor: it is steel. With
    the leg up the steel beyond the screw lifts freely, so nothing pries; with it down the prying is in z already.
    """
    t, fy = positive("the steel", thickness), positive("the yield stress", yield_stress)
    width, arm = around.width.value, around.arm.value
    drilled = positive("the hole", hole)
    clear = width if wall_leg == "up" else width - drilled
    if clear <= 0:
        raise NotPossible("the hole is wider than the leg that bends round it")
    formula = f"F_y * t_a^2 / (4 * {YIELDING}) * {'b_e' if wall_leg == 'up' else '(b_e - d_h)'} / m_s"
    numbers = [number("F_y", yield_stress, "MPa"), number("t_a", thickness, "mm"), number("b_e", around.width, "mm")]
    if wall_leg == "down":
        numbers.append(number("d_h", hole, "mm"))
    return Worked(
        "T_leg", "pull that the leg round one screw may take", formula, (*numbers, number("m_s", around.arm, "mm")),
        fy * t**2 / (4 * YIELDING) * clear / arm, "N", f"{_STRIP}; ANSI/AISC 360-22 F11",
        steps=(*steps(thickness, yield_stress, hole), around.arm, around.width),
    )  # fmt: skip
