"""What a crack along the grain takes from a board. What it is filled with gives nothing back."""

from __future__ import annotations

from math import hypot
from typing import Literal

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

Fill = Literal["none", "epoxy", "wood patch", "butterfly key"]

_HALF = "a crack deeper than half the board counts as through; common practice"
_TIE = 1e-9
_FILLS: dict[str, str] = {
    "none": "nothing is in the crack",
    "epoxy": "a fill levels the board and keeps dirt out; glue holds only in a fresh, clean, clamped break",
    "wood patch": "a patch levels the board; its glue line has no known strength",
    "butterfly key": "keys and battens count for nothing unless they are worked out by themselves",
}


def cuts_through(depth: Given, thickness: Given) -> bool:
    """Whether a crack parts the board for the load: through it, or deeper than half of it. mm."""
    deep, board = _checked(depth, thickness)
    return deep > board / 2 * (1 + _TIE)


def twisting_width(width: Given, to_crack: Given, depth: Given, thickness: Given) -> Worked:
    """Width in mm of the piece that twists as one: the whole board, or the part in front of a crack that parts it.
    Raises NotPossible when the crack lies off the board."""
    board, front = positive("the board's width", width), positive("the way to the crack", to_crack)
    if front >= board:
        raise NotPossible(f"a crack {front:g} mm from the front edge is off a board of {board:g} mm")
    if not cuts_through(depth, thickness):
        return Worked(
            "b_t", "width that twists as one, the crack shallow", "b", (number("b", width, "mm"),), board, "mm", _HALF,
            steps=steps(width),
        )  # fmt: skip
    return Worked(
        "b_t", "width that twists as one, up to the crack", "y_c", (number("y_c", to_crack, "mm"),), front, "mm",
        _HALF, steps=steps(to_crack),
    )  # fmt: skip


def twist_share(depth: Given, thickness: Given) -> Worked:
    """What a crack leaves of the shear modulus in twist: 1 without one, 0.5 for a crack up to half the thickness.

    A deeper one parts the board, and the share then belongs to the front piece, which is whole: 1. The shear strength
    along the grain is not lowered again, since half of it is lost to checks already.
    """
    deep, _ = _checked(depth, thickness)
    shallow = deep > 0 and not cuts_through(depth, thickness)
    value = 0.5 if shallow else 1.0
    words = "a shallow crack" if shallow else "no crack in the piece that twists"
    return Worked(
        "k_G", f"part of the twist stiffness left: {words}", "k_G", (Number("k_G", value, ""),), value, "",
        "common practice", steps=steps(depth, thickness),
    )  # fmt: skip


def fill_credit(fill: Fill) -> Worked:
    """Which part of the lost strength a filled crack counts for: none, whatever it is filled with. Raises NotPossible
    for a word that is no fill."""
    if fill not in _FILLS:
        raise NotPossible(f"{fill} is not one of {', '.join(_FILLS)}")
    return Worked(
        "k_fill", f"strength counted for {fill}: {_FILLS[fill]}", "k_fill", (Number("k_fill", 0.0, ""),), 0.0, "",
        "common practice",
    )  # fmt: skip


def screw_to_crack(x: Given, y: Given, start: Given, end: Given, crack_y: Given) -> Worked:
    """Distance in mm from a screw at (`x`, `y`) to a crack from `start` to `end` along the grain at `crack_y`, mm.

    Raises NotPossible for a crack that ends before it starts.
    """
    along, across = finite("the screw's place", x), finite("the screw's place", y)
    left, right = finite("the crack's start", start), finite("the crack's end", end)
    if right < left:
        raise NotPossible("the crack ends before it starts")
    beside = max(left - along, along - right, 0.0)
    return Worked(
        "a_c", "from the screw to the crack", "sqrt(max(x_1 - x, x - x_2, 0)^2 + (y - y_c)^2)",
        (number("x", x, "mm"), number("y", y, "mm"), number("x_1", start, "mm"), number("x_2", end, "mm"),
         number("y_c", crack_y, "mm")),
        hypot(beside, across - si(crack_y)), "mm", "geometry", steps=steps(x, y, start, end, crack_y),
    )  # fmt: skip


def _checked(depth: Given, thickness: Given) -> tuple[float, float]:
    deep, board = not_negative("the crack's depth", depth), positive("the board's thickness", thickness)
    if deep > board * (1 + _TIE):
        raise NotPossible(f"a crack of {deep:g} mm is deeper than the board of {board:g} mm")
    return deep, board
