"""A screw's head on the steel: the ring it bears on, and the pull that draws it through."""

from __future__ import annotations

from math import pi

from plumbrule.mechanics.bearing_wood import require_gravity
from plumbrule.mechanics.given import Given, number, positive, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.table_rows import Steel
from plumbrule.mechanics.worked import NotPossible, Worked
from plumbrule.reading.units import from_si

_GEOMETRY = "geometry of head and hole"
_HALF_INCH, _LEAST_HEAD, _LEAST_WASHER = 12.7, 7.9375, 1.27
_TIE = 1e-9


def ring(bearing_width: Given, hole: Given) -> Worked:
    """Nominal ring (d_w - d_h)/2 in mm, screw centred. `bearing_width`: across the flats of a hex head, the diameter
    of another, or the washer's outside; `hole` the drilled hole. Negative: the head drops through."""
    value = (positive("the head", bearing_width) - positive("the hole", hole)) / 2
    return Worked(
        "o_n", "overlap of the head round its hole, screw centred", "(d_w - d_h) / 2",
        (number("d_w", bearing_width, "mm"), number("d_h", hole, "mm")), value, "mm", _GEOMETRY,
        steps=steps(bearing_width, hole),
    )  # fmt: skip


def ring_worst(bearing_width: Given, diameter: Given, hole: Given) -> Worked:
    """Worst ring o = (d_w + D)/2 - d_h in mm, the screw hard against one side of its hole. Negative: one side of the
    head hangs over the hole. Raises NotPossible when the screw does not go into the hole."""
    head, size, drilled = positive("the head", bearing_width), positive("the screw", diameter), positive("hole", hole)
    if drilled < size * (1 - _TIE):
        raise NotPossible(f"a screw of {size:g} mm does not go through a hole of {drilled:g} mm")
    return Worked(
        "o", "overlap of the head at its worst, screw against one side", "(d_w + D) / 2 - d_h",
        (number("d_w", bearing_width, "mm"), number("D", diameter, "mm"), number("d_h", hole, "mm")),
        (head + size) / 2 - drilled, "mm", _GEOMETRY, steps=steps(bearing_width, diameter, hole),
    )  # fmt: skip


def pull_over(thickness: Given, bearing_width: Given, steel: Steel, *, eccentric: bool) -> Worked:
    """Allowable pull in N at which the steel would give way under a head: 1.5 t d_w Fu / 3, d_w counted up to 1/2 in.

    `eccentric` halves it: a single row in the corner of a leg is pulled on one side. mm, MPa. Raises OutsideRulebook
    for metals other than carbon steel and for a head or washer under 5/16 in., where the formula stops.
    """
    sheet, head = positive("the steel", thickness), positive("the head", bearing_width)
    if steel.metal != "carbon steel":
        raise outside("steel grade")
    if head < _LEAST_HEAD * (1 - _TIE):
        raise outside("small head")
    share = 0.5 if eccentric else 1.0
    value = share * 1.5 * sheet * min(head, _HALF_INCH) * steel.ultimate / 3
    return Worked(
        "P_ov", "pull at which the steel gives way under the head" + (", pulled on one side" if eccentric else ""),
        f"{share} * 1.5 * t_a * min(d_w, d_most) * F_u / 3",
        (number("t_a", thickness, "mm"), number("d_w", bearing_width, "mm"), number("d_most", _HALF_INCH, "mm"),
         number("F_u", steel.ultimate, "MPa")),
        value, "N", "AISI S100 screw provisions, allowable pull-over with factor 3.0; halved when eccentric",
        steps=steps(thickness, bearing_width),
    )  # fmt: skip


def washer_counts(outside_diameter: Given, thickness: Given) -> bool:
    """Whether a washer is one to the tension rules: at least 0.05 in. thick and 5/16 in. wide. mm.

    The thickness is the basic one: a 0.049 washer of the standard is rounded from it and does not count.
    """
    wide = positive("the washer", outside_diameter) >= _LEAST_HEAD * (1 - _TIE)
    return wide and positive("the washer's thickness", thickness) >= _LEAST_WASHER * (1 - _TIE)


def pull_through(gravity: Given, head: Given, side_thickness: Given, style: str) -> Worked:
    """Reference pull W_H in lbf that draws a **round** head through a wood side member such as a cleat.

    690 pi D_H G^2 t below 2.5 D_H of wood, 1725 pi D_H^2 G^2 from there; `head` at most 1/2 in., mm. Raises
    OutsideRulebook for a countersunk head, which the clause does not cover; never for use on a steel leg.
    """
    if style in ("flat", "oval", "bugle", "trim"):
        raise outside("countersunk head in wood")
    density = require_gravity(gravity)
    head_inches = from_si(positive("the head", head), "in")
    side_inches = from_si(positive("the side member", side_thickness), "in")
    if head_inches > 0.5 + _TIE:
        raise NotPossible("the clause stops at heads of 1/2 in: enter 1/2 in for a larger one")
    value = 690 * pi * head_inches * density**2 * min(side_inches, 2.5 * head_inches)
    return Worked(
        "W_H", "pull that draws the head through the wood", "690 * pi * D_H * G^2 * min(t_ns, 2.5 * D_H)",
        (number("D_H", head, "in"), number("G", gravity, ""), number("t_ns", side_thickness, "in")), value, "lbf",
        "AWC NDS 2018, 12.2.5.1 eq. 12.2-6", published_units=True, steps=steps(gravity, head, side_thickness),
    )  # fmt: skip
