"""Angles that meet round a corner: what a mitre takes from a leg, and how far one stands in the other's way.

Along each wall distances are from the corner of the finished faces; across it, from that face into the room. A leg
that lies behind the face, since the lining was cut away, begins at a negative depth. Corner angles are those between
the two faces, more than 20 and less than 160 degrees.
"""

from __future__ import annotations

from math import cos, radians, sin

from plumbrule.mechanics.given import Given, finite, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Worked


def to_inside_mitre(from_end: Given, from_heel: Given, corner: Given) -> Worked:
    """From a hole's centre square to a mitre for an inside corner, x sin(th/2) - y cos(th/2), mm.

    The cut halves the corner: it starts at the end of the heel and runs back, so the toe is the shorter edge.
    Negative: the hole lies in what is cut off.
    """
    half = _half(corner)
    value = finite("x", from_end) * sin(half) - finite("y", from_heel) * cos(half)
    return Worked(
        "a_0", "from the hole's centre square to the mitre", "x * sin(th / 2) - y * cos(th / 2)",
        (number("x", from_end, "mm"), number("y", from_heel, "mm"), number("th", corner, "°")), value, "mm",
        "geometry", steps=steps(from_end, from_heel),
    )  # fmt: skip


def to_outside_mitre(from_end: Given, from_heel: Given, leg: Given, corner: Given) -> Worked:
    """The same for an outside corner, x sin(th/2) - (b - y) cos(th/2), mm: there the toe is the longer edge, and the
    length of a mitred piece is taken at its long edge."""
    half = _half(corner)
    value = finite("x", from_end) * sin(half) - (positive("b", leg) - finite("y", from_heel)) * cos(half)
    return Worked(
        "a_0", "from the hole's centre square to the mitre", "x * sin(th / 2) - (b - y) * cos(th / 2)",
        (number("x", from_end, "mm"), number("b", leg, "mm"), number("y", from_heel, "mm"), number("th", corner, "°")),
        value, "mm", "geometry", steps=steps(from_end, from_heel, leg),
    )  # fmt: skip


def mitre_runs_out(leg: Given, corner: Given) -> Worked:
    """How far a leg mitred for an outside corner runs past the end of its wall at the toe, b / tan(th/2), mm."""
    half = _half(corner)
    value = positive("b", leg) * cos(half) / sin(half)
    return Worked(
        "m", "how far the mitre runs past the wall at the toe", "b / tan(th / 2)",
        (number("b", leg, "mm"), number("th", corner, "°")), value, "mm", "geometry", steps=steps(leg),
    )  # fmt: skip


def clear_of(other_depth: Given, other_from_corner: Given, own_back: Given, own_depth: Given, corner: Given) -> Worked:
    """How far from the corner a piece must end to clear another round it, mm.

    `other_depth` is how far the other stands out from its own wall and `other_from_corner` where it ends along it;
    `own_back` and `own_depth` are where this piece begins and ends across its wall. At a square corner this is
    `other_depth`. At a sharper one the toe of this piece comes to the other's face first; at a blunter one the heel
    does, unless the other's end leans out of the way before.
    """
    angle = _angle(corner)
    back, depth = finite("y_0", own_back), finite("y_1", own_depth)
    other, end = finite("d_o", other_depth), finite("c_o", other_from_corner)
    value = (other + max(back * cos(angle), depth * cos(angle))) / sin(angle)
    formula = "(d_o + max(y_0 * cos(th), y_1 * cos(th))) / sin(th)"
    numbers = [number("d_o", other_depth, "mm"), number("y_0", own_back, "mm"), number("y_1", own_depth, "mm"),
               number("th", corner, "°")]  # fmt: skip
    if si(corner) > 90:
        value = min(value, end * cos(angle) + other * sin(angle))
        formula = f"min({formula}, c_o * cos(th) + d_o * sin(th))"
        numbers.append(number("c_o", other_from_corner, "mm"))
    return Worked(
        "c_0", "where this piece must end to clear the other", formula, tuple(numbers), value, "mm", "geometry",
        steps=steps(other_depth, other_from_corner, own_back, own_depth),
    )  # fmt: skip


def run_into(clear: Given, from_corner: Given) -> Worked:
    """How far a piece that ends `from_corner` from the corner runs into one it should keep `clear` of, mm."""
    value = finite("c_0", clear) - finite("c", from_corner)
    return Worked(
        "o", "length in which it runs into the other", "c_0 - c",
        (number("c_0", clear, "mm"), number("c", from_corner, "mm")), value, "mm", "geometry",
        steps=steps(clear, from_corner),
    )  # fmt: skip


def _angle(corner: Given) -> float:
    degrees = si(corner)
    if not 20 < degrees < 160:
        raise NotPossible(f"a corner of {degrees:g} degrees is not one that two angles meet at")
    return radians(degrees)


def _half(corner: Given) -> float:
    return _angle(corner) / 2
