"""A solid block between two studs: what a screw in it sends to its ends, and what its end screws can take.

The block's grain runs along the wall, so a weight loads a screw in it across the grain, and its own end screws run
into end grain, where they hold nothing in withdrawal worth counting: pull and twist must go through their shear.
"""

from __future__ import annotations

from math import hypot
from typing import NamedTuple

from plumbrule.mechanics.bearing_wood import wood_bearing
from plumbrule.mechanics.factors import end_grain, toe_screw
from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.lateral import SideStrength, side_strength
from plumbrule.mechanics.lining import require_gap
from plumbrule.mechanics.screw_length import bearing_length, penetration, require_penetration, tip_length
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook, Worked

_STATICS = "statics: a beam on two supports"
_ABSENT = (
    "A block that is held by glue or by one screw an end can turn or drop out: it counts as absent; drive two screws "
    "or more into each end."
)
_ACROSS = 90.0


class EndShares(NamedTuple):
    """What comes to the two ends of a block, N: left and right, from a force at a place along it."""

    left: Worked
    right: Worked


def end_shares(force: Given, position: Given, length: Given) -> EndShares:
    """Shares V (l - x)/l and V x/l in N of a force at `position` x from the left end of a clear `length` l, mm.

    For the side force and for the pull alike. Raises NotPossible when the place is not on the block.
    """
    load, place, span = finite("the force", force), finite("the place", position), positive("the length", length)
    if not 0 <= place <= span:
        raise NotPossible(f"a place {place:g} mm along a block of {span:g} mm is not on it")
    numbers = (number("V", force, "N"), number("x", position, "mm"), number("l", length, "mm"))
    given = steps(force, position, length)
    left = Worked("V_left", "share of the left end", "V * (l - x) / l", numbers, load * (span - place) / span, "N",
                  _STATICS, steps=given)  # fmt: skip
    right = Worked("V_right", "share of the right end", "V * x / l", numbers, load * place / span, "N", _STATICS,
                   steps=given)  # fmt: skip
    return EndShares(left, right)


def twist(couple: Given, force: Given, height: Given) -> Worked:
    """Twist M in N·mm that the nearer end must hold **whole**: the couple of the leg plus the side force times the
    height in mm of its line off the block's axis, taken as adding up."""
    value = abs(finite("the couple", couple)) + abs(finite("the force", force)) * abs(finite("the height", height))
    return Worked(
        "M_t", "twist at the nearer end", "abs(M) + abs(V) * abs(h)",
        (number("M", couple, "N·mm"), number("V", force, "N"), number("h", height, "mm")), value, "N·mm",
        "statics; the block's own stiffness is not relied on to share it", steps=steps(couple, force, height),
    )  # fmt: skip


def end_screw_force(share: Given, pull_share: Given, twist: Given, count: int, pitch: Given) -> Worked:
    """Force in N on the worst end screw of one end: V/n with T/n + the couple of the twist, at right angles.

    `share` and `pull_share` in N are what comes to this end, `twist` in N·mm; `count` screws stand one above the
    other at `pitch` mm, so the twist pulls them in and out of the wall. For two screws its part is M/pitch. Raises
    OutsideRulebook for fewer than two screws: such a block counts as absent.
    """
    if count < 2:
        raise OutsideRulebook(_ABSENT)
    v, t = abs(finite("the share", share)), abs(finite("the pull", pull_share))
    moment, spacing = not_negative("the twist", twist), positive("the pitch", pitch)
    value = hypot(v / count, t / count + 6 * moment / (spacing * count * (count + 1)))
    return Worked(
        "F_end", "force on the worst end screw of the block",
        "sqrt((V / n)^2 + (T / n + 6 * M_t / (s * n * (n + 1)))^2)",
        (number("V", v, "N"), number("T", t, "N"), number("M_t", twist, "N·mm"), number("s", pitch, "mm"),
         number("n", float(count), "")),
        value, "N", "statics: an even line of screws under force and couple, added as vectors",
        steps=steps(share, pull_share, twist, pitch),
    )  # fmt: skip


class EndScrew(NamedTuple):
    """The side strength of one screw through a stud into the end of a block: reference, and with C_eg (and C_tn)."""

    reference: SideStrength
    worked: Worked


def end_screw_strength(
    fastener: Fastener, *, length: Given, stud_thickness: Given, end_gap: Given, stud_gravity: Given,
    block_gravity: Given, slanting: bool = False,
) -> EndScrew:  # fmt: skip
    """Side strength in N, before C_D and C_M, of one screw through a stud of `stud_thickness` mm into end grain.

    `end_gap` is the gap in mm between the block's end and the stud: the screw bridges it like a lining.
    Both woods bear across their grain, C_eg 0.67 is in, and C_tn 0.83 when the screw is driven at a slant. Raises
    OutsideRulebook when the bite into the block is below the least, or a wood is outside the tables.
    """
    bite = penetration(length, stud_thickness, end_gap)
    tip = tip_length(fastener)
    require_penetration(fastener.kind, fastener.diameter, bite, tip)
    reference = side_strength(
        diameter=fastener.diameter,
        root_diameter=fastener.root_diameter,
        bending_yield=fastener.bending_yield,
        main_bearing=wood_bearing(block_gravity, fastener.diameter, _ACROSS),
        side_bearing=wood_bearing(stud_gravity, fastener.diameter, _ACROSS),
        main_length=bearing_length(bite, tip),
        side_length=stud_thickness,
        gap=require_gap(end_gap, bite),
        grain_angle=_ACROSS,
    )
    factors = [end_grain(fastener.kind, "lateral")]
    if slanting:
        factors.append(toe_screw("lateral"))
    value = si(reference.worked)
    for factor in factors:
        value *= factor.value
    worked = Worked(
        "Z_end", "side strength of one end screw in end grain",
        " * ".join(("Z", *(factor.symbol for factor in factors))),
        (number("Z", reference.worked, "N"), *(number(factor.symbol, factor, "") for factor in factors)), value, "N",
        "AWC NDS 2018, 12.5.2.2" + (" and 12.5.4" if slanting else ""), steps=(reference.worked, *factors),
    )  # fmt: skip
    return EndScrew(reference, worked)
