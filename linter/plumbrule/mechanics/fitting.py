"""Whether a board goes in between its walls: what the finished room leaves, and what it takes to be tilted in."""

from __future__ import annotations

from math import hypot

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import Worked

_GEOMETRY = "geometry"


def finished_opening(width: Given, left: Given, right: Given) -> Worked:
    """Clear width in mm between two finished walls: the bare `width`, less what lies on the `left` and `right` wall
    (panel and adhesive, or a leg that stands up beside the board). mm; negative where they take it all."""
    value = positive("the width", width) - not_negative("the left face", left) - not_negative("the right face", right)
    return Worked(
        "W", "clear width between the finished walls", "W_0 - f_1 - f_2",
        (number("W_0", width, "mm"), number("f_1", left, "mm"), number("f_2", right, "mm")), value, "mm", _GEOMETRY,
        steps=steps(width, left, right),
    )  # fmt: skip


def room_past(opening: Given, length: Given, gaps: Given) -> Worked:
    """What is left of an `opening` past a board of `length` with its `gaps`, both together, mm. Below zero the board
    is too long for it."""
    value = si(opening) - positive("the length", length) - not_negative("the gaps", gaps)
    return Worked(
        "r", "wall left past the board and its gaps", "W - L - s",
        (number("W", opening, "mm"), number("L", length, "mm"), number("s", gaps, "mm")), value, "mm", _GEOMETRY,
        steps=steps(opening, length, gaps),
    )  # fmt: skip


def tilting_width(length: Given, thickness: Given) -> Worked:
    """The widest that a board becomes, mm, while it is laid down with one end first: the diagonal of its edge."""
    value = hypot(positive("the length", length), positive("the thickness", thickness))
    return Worked(
        "L_d", "from corner to corner of the board's edge", "sqrt(L^2 + t^2)",
        (number("L", length, "mm"), number("t", thickness, "mm")), value, "mm", _GEOMETRY,
        steps=steps(length, thickness),
    )  # fmt: skip
