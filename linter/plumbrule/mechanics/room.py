"""Whether the measures of a room come back to where they began, and how a corner that is not square shows at a board.

Walls are walked from left to right, which is clockwise seen from above. At an inside corner the way turns by the rest
of the angle to 180 degrees, at an outside corner it turns back by as much.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import cos, hypot, radians, sin

from plumbrule.mechanics.given import Given, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_GEOMETRY = "geometry"
ROUND = 360.0
_SQUARE = Number("q", 90.0, "°")


def turned_too_far(turns: Sequence[float]) -> Worked:
    """By how much all corners of a closed room together turn more or less than once round, |t - 360|, degrees. Each of
    `turns` is 180 less the angle at an inside corner, and below zero at an outside one."""
    total = sum(turns)
    return Worked(
        "dt", "what the corners turn more or less than once round", "abs(t - r)",
        (Number("t", total, "°"), Number("r", ROUND, "°")), abs(total - ROUND), "°", _GEOMETRY,
    )  # fmt: skip


def closing_gap(widths: Sequence[float], turns: Sequence[float]) -> Worked:
    """How far from its start the way along all walls of a closed room ends, sqrt(x^2 + y^2), mm.

    `widths` are the walls in order, mm, and `turns` what the way turns after each of them, degrees. Raises NotPossible
    unless there are as many of one as of the other, and three at least.
    """
    if len(widths) != len(turns) or len(widths) < 3:
        raise NotPossible("a closed room has three walls or more, and a corner after each")
    x = y = heading = 0.0
    for width, turn in zip(widths, turns, strict=True):
        x += positive("the width of a wall", width) * cos(radians(heading))
        y += width * sin(radians(heading))
        heading += turn
    # Square corners leave the last bits of a sine behind.
    x, y = round(x, 9), round(y, 9)
    return Worked(
        "g", "from the end of the last wall to the beginning of the first", "sqrt(x^2 + y^2)",
        (Number("x", x, "mm"), Number("y", y, "mm")), hypot(x, y), "mm", _GEOMETRY,
    )  # fmt: skip


def gap_change(depth: Given, corner: Given) -> Worked:
    """By how much the gap at the end of a square board grows or shrinks from its back to its front edge,
    |d sin(90 - a) / sin(a)|, mm, in a corner of `corner` degrees (more than 20, less than 160)."""
    angle = radians(_angle(corner))
    value = abs(positive("the depth", depth) * sin(radians(90) - angle) / sin(angle))
    return Worked(
        "ds", "change of the gap from back to front", "abs(d * sin(q - a) / sin(a))",
        (number("d", depth, "mm"), number("a", corner, "°"), _SQUARE), value, "mm", _GEOMETRY,
        steps=steps(depth, corner),
    )  # fmt: skip


def niche_narrows(depth: Given, left: Given, right: Given) -> Worked:
    """By how much a niche between two side walls is narrower at `depth` mm before its back wall than at it,
    d (sin(90 - a_1)/sin(a_1) + sin(90 - a_2)/sin(a_2)), mm; below zero it widens. Corners as
    in `gap_change`."""
    one, other = radians(_angle(left)), radians(_angle(right))
    value = positive("the depth", depth) * (sin(radians(90) - one) / sin(one) + sin(radians(90) - other) / sin(other))
    return Worked(
        "n", "what the niche narrows from its back wall to the front of the board",
        "d * (sin(q - a_1) / sin(a_1) + sin(q - a_2) / sin(a_2))",
        (number("d", depth, "mm"), number("a_1", left, "°"), number("a_2", right, "°"), _SQUARE), value, "mm",
        _GEOMETRY, steps=steps(depth, left, right),
    )  # fmt: skip


def _angle(corner: Given) -> float:
    value = si(corner)
    if not 20 < value < 160:
        raise NotPossible(f"a corner of {value:g}° is not one that a board is fitted into")
    return value
