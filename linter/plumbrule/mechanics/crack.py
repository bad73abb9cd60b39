"""What a crack along the grain takes from a board. What it is filled with gives nothing back."""

from __future__ import annotations

from math import hypot
from typing import Literal

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

Fill = Literal["none", "epoxy", "wood patch", "butterfly key"]

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


def twist_share(depth: Given, thickness: Given) -> Worked:
    """What a crack leaves of the shear modulus in twist: 1 without one, 0.5 for a crack up to half the thickness, mm.

    The shear strength along the grain is not lowered again, since half of it is lost to checks already. Raises
    NotPossible for a deeper crack: it parts the board, which then does not twist as one (`cut_front_drop`).
    """
    deep, board = _checked(depth, thickness)
    if cuts_through(depth, thickness):
        raise NotPossible(f"a crack of {deep:g} mm parts a board of {board:g} mm, so it does not twist as one")
    value = 0.5 if deep else 1.0
    return Worked(
        "k_G", f"part of the twist stiffness left: {'a shallow crack' if deep else 'no crack'}", "k_G",
        (Number("k_G", value, ""),), value, "", "common practice", steps=steps(depth, thickness),
    )  # fmt: skip


def cut_front_drop(
    force: Given, span: Given, modulus: Given, shear_modulus: Given, to_crack: Given, thickness: Given
) -> Worked:
    """Front-edge drop in mm under `force` N at midspan of a board that a crack parts for its whole length.

    What lies in front of the crack, `to_crack` mm wide, hangs on the back no more: it is a beam between the returns,
    P L³/(48 E I), and turns under a load on its edge, held at its ends. Its shear modulus, MPa, is taken at half, so
    that a parted board never drops less than one with a shallow crack. `span`, `thickness` mm, `modulus` MPa. Under a
    spread load take `simple_span.even_sag` with the load and section of the whole width: nothing holds the back.
    """
    p, length = not_negative("the load", force), positive("the span", span)
    e, g = positive("the modulus", modulus), positive("the shear modulus", shear_modulus)
    front, t = positive("the wood in front of the crack", to_crack), positive("the board's thickness", thickness)
    numbers = (
        number("P", force, "N"), number("L", span, "mm"), number("E", modulus, "MPa"),
        number("G", shear_modulus, "MPa"), number("y_c", to_crack, "mm"), number("t", thickness, "mm"),
    )  # fmt: skip
    value = p * length**3 / (4 * e * front * t**3) + 3 * p * front * length / (8 * g * t**3)
    return Worked(
        "w_c", "front drop of the piece before the crack",
        "P * L^3 / (4 * E * y_c * t^3) + 3 * P * y_c * L / (8 * G * t^3)", numbers, value, "mm",
        "beam and twist of a free piece; derived here",
        steps=steps(force, span, modulus, shear_modulus, to_crack, thickness),
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
