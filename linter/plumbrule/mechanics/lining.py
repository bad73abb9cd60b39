"""What lies between steel and wood: when it is a gap that the screw must bridge, and when it bears."""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, si, steps
from plumbrule.mechanics.lateral import WIDEST_GAP
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.worked import NotPossible, Worked

_TIE = 1e-9
_STATICS = "statics: what bears nothing is bridged"


class Packer(NamedTuple):
    """A piece of plywood or wood let into the lining behind the steel.

    thickness: mm. covers_stud: it covers the whole stud face under the leg. fixed_to_stud: it is itself nailed or
    screwed to each stud for the same side load. bearing: dowel bearing strength of its wood, MPa.
    """

    thickness: float
    covers_stud: bool
    fixed_to_stud: bool
    bearing: float


def lining_gap(layers: Given) -> Worked:
    """The gap g in mm where the lining stays: all of it. Gypsum, foam, tile and plaster carry no screw sideways."""
    value = not_negative("the layers between", layers)
    return Worked(
        "g", "gap that the screw bridges", "g_l", (number("g_l", layers, "mm"),), value, "mm", _STATICS,
        steps=steps(layers),
    )  # fmt: skip


def packed_gap(layers: Given, packer: Packer) -> Worked:
    """The gap g in mm behind which a solid packer lies.

    Only a packer that covers the whole stud face under the leg **and** is fixed to each stud for the same side load
    bears; any other rides along with the screw, and the whole thickness stays a gap. What of the layers the packer
    does not fill stays a gap too. Raises NotPossible when the packer is thicker than what it fills.
    """
    total = not_negative("the layers between", layers)
    if packer.thickness < 0 or packer.thickness > total + 1e-6:
        raise NotPossible(f"a packer of {packer.thickness:g} mm does not fit into {total:g} mm of layers")
    if not (packer.covers_stud and packer.fixed_to_stud):
        return lining_gap(layers)
    return Worked(
        "g", "gap that is left beside a packer fixed to the stud", "max(g_l - t_p, 0)",
        (number("g_l", layers, "mm"), number("t_p", packer.thickness, "mm")), max(total - packer.thickness, 0.0),
        "mm", "statics: a packer bears only when it covers the stud and is fixed to it", steps=steps(layers),
    )  # fmt: skip


def main_bearing(stud: Given, packer: Packer) -> Worked:
    """F_em in MPa of a stud with a bearing packer on it: the weaker of the two."""
    value = min(si(stud), packer.bearing)
    return Worked(
        "F_em", "bearing strength, the weaker of packer and stud", "min(F_stud, F_packer)",
        (number("F_stud", stud, "MPa"), number("F_packer", packer.bearing, "MPa")), value, "MPa",
        "statics: the screw bears in both", steps=steps(stud),
    )  # fmt: skip


def require_gap(gap: Given, penetration: Given) -> Worked:
    """The gap in mm. Raises OutsideRulebook when it is over 1-1/4 in. or wider than the bite: the equations were
    never tried there, so no number is given."""
    wide, bite = not_negative("the gap", gap), si(penetration)
    if wide > WIDEST_GAP * (1 + _TIE) or wide > bite + _TIE:
        raise outside("wide gap")
    return lining_gap(gap)
