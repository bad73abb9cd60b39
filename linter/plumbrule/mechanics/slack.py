"""Room for a board to move: at each screw, behind the board, and in front of it."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Worked

_GEOMETRY = "geometry of screw and slot"
_MOVES = "the board moves from the row that is fixed; derived from the coefficient of movement"
_TIE = 1e-9


def slack_needed(distance: Given, coefficient: Given, dry: Given, damp: Given, fitted: Given) -> Worked:
    """How far the board moves past a screw, mm, either way: |y_j - y_fixed| C max|M - M_i|.

    `distance` across the grain from the row of screws that holds the board, **not** from its middle, mm; moistures in
    %: the year's `dry` and `damp` end and that at which it is `fitted`. Raises NotPossible when dry is above damp.
    """
    away, swell = abs(finite("the distance", distance)), positive("the coefficient of movement", coefficient)
    low, high, start = (not_negative("the moisture", value) for value in (dry, damp, fitted))
    if low > high + _TIE:
        raise NotPossible("the dry end of the band is above the damp end")
    return Worked(
        "s_need", "movement of the board past the screw", "abs(y) * C * max(abs(M_damp - M_i), abs(M_dry - M_i))",
        (number("y", distance, "mm"), number("C", coefficient, ""), number("M_damp", damp, "%"),
         number("M_dry", dry, "%"), number("M_i", fitted, "%")),
        away * swell * max(abs(high - start), abs(low - start)), "mm", _MOVES,
        steps=steps(distance, coefficient, dry, damp, fitted),
    )  # fmt: skip


def play_needed(swelling: Given, shrinking: Given) -> Worked:
    """How far the board moves past a screw, mm, either way: the larger of what it swells from the row that holds it
    to the year's damp end and what it shrinks to the dry one, each from `movement.board_movement`. This serves past
    the range of the coefficient, where `slack_needed` would not be true."""
    up, down = finite("the swelling", swelling), finite("the shrinking", shrinking)
    return Worked(
        "s_need", "movement of the board past the screw", "max(abs(dD_damp), abs(dD_dry))",
        (number("dD_damp", swelling, "mm"), number("dD_dry", shrinking, "mm")), max(abs(up), abs(down)), "mm", _MOVES,
        steps=steps(swelling, shrinking),
    )  # fmt: skip


def slack_given(opening: Given, diameter: Given, drilled: Given, *, countersunk: bool) -> Worked:
    """The play in mm a screw leaves the board in one direction: (slot or hole - D)/2, less what the hole may be
    `drilled` out of place. `opening`: length of the slot across the grain, or the hole, mm.

    Below zero nothing is left. A countersunk head centres itself and leaves no play however long the slot. Raises
    NotPossible when the screw does not go in.
    """
    wide, size = positive("the slot or hole", opening), positive("the screw's diameter", diameter)
    error = not_negative("the drilling error", drilled)
    if wide < size * (1 - _TIE):
        raise NotPossible(f"a screw of {size:g} mm does not go into {wide:g} mm")
    if countersunk:
        return Worked(
            "s_given", "play left to the board, the head centres itself", "0 - d_d", (number("d_d", drilled, "mm"),),
            -error, "mm", _GEOMETRY, steps=steps(drilled),
        )  # fmt: skip
    return Worked(
        "s_given", "play left to the board at the screw", "(s - D) / 2 - d_d",
        (number("s", opening, "mm"), number("D", diameter, "mm"), number("d_d", drilled, "mm")),
        (wide - size) / 2 - error, "mm", _GEOMETRY, steps=steps(opening, diameter, drilled),
    )  # fmt: skip


def slot_needed(needed: Given, diameter: Given, drilled: Given) -> Worked:
    """Least length in mm across the grain of the slot that leaves the play `needed`: D + 2 (s + d_d)."""
    play, error = not_negative("the play needed", needed), not_negative("the drilling error", drilled)
    value = positive("the screw's diameter", diameter) + 2 * (play + error)
    return Worked(
        "s_least", "least length of the slot across the grain", "D + 2 * (s_need + d_d)",
        (number("D", diameter, "mm"), number("s_need", needed, "mm"), number("d_d", drilled, "mm")), value, "mm",
        _GEOMETRY, steps=steps(diameter, needed, drilled),
    )  # fmt: skip


def back_gap_needed(fixed: Given, back: Given, coefficient: Given, damp: Given, fitted: Given) -> Worked:
    """Gap in mm the board needs behind it: what it swells from the `fixed` row back to its `back` edge, both places
    in mm from the wall; nothing where it is fitted damper than the year's damp end. Moistures in %."""
    away = finite("the fixed row", fixed) - finite("the back edge", back)
    if away < 0:
        raise NotPossible("the fixed row lies behind the board")
    swell = positive("the coefficient of movement", coefficient)
    change = not_negative("the moisture", damp) - not_negative("the moisture", fitted)
    return Worked(
        "s_back", "gap needed behind the board", "(y_fixed - y_back) * C * max(M_damp - M_i, 0)",
        (number("y_fixed", fixed, "mm"), number("y_back", back, "mm"), number("C", coefficient, ""),
         number("M_damp", damp, "%"), number("M_i", fitted, "%")),
        away * swell * max(change, 0.0), "mm", _MOVES, steps=steps(fixed, back, coefficient, damp, fitted),
    )  # fmt: skip


def front_gap_needed(width: Given, coefficient: Given, damp: Given, fitted: Given) -> Worked:
    """Gap in mm in front of a board whose front edge is captured by a nosing or a wall: its whole swelling, since it
    may be pushed from either side. `width` mm, moistures in %."""
    size, swell = positive("the width", width), positive("the coefficient of movement", coefficient)
    change = not_negative("the moisture", damp) - not_negative("the moisture", fitted)
    return Worked(
        "s_front", "gap needed before a captured front edge", "D * C * max(M_damp - M_i, 0)",
        (number("D", width, "mm"), number("C", coefficient, ""), number("M_damp", damp, "%"),
         number("M_i", fitted, "%")),
        size * swell * max(change, 0.0), "mm", _MOVES, steps=steps(width, coefficient, damp, fitted),
    )  # fmt: skip


def end_gap_left(opening: Given, length: Given, growth: Given, steel: Given) -> Worked:
    """Gap in mm left at the ends of a board between two walls, both ends together, when the board has grown by
    `growth` and what it hangs on by `steel`; at least zero before it binds. mm."""
    value = positive("the opening", opening) - positive("the length", length)
    value -= max(not_negative("the growth of the board", growth), not_negative("the growth of the steel", steel))
    return Worked(
        "s_end", "gap left at both ends together", "W - L - max(dL, dL_s)",
        (number("W", opening, "mm"), number("L", length, "mm"), number("dL", growth, "mm"),
         number("dL_s", steel, "mm")),
        value, "mm", "geometry", steps=steps(opening, length, growth, steel),
    )  # fmt: skip


def shortfall(needed: Given, given: Given) -> Worked:
    """By how much the play at a screw falls short of what the board needs there, mm; negative is room to spare."""
    value = not_negative("the play needed", needed) - si(given)
    return Worked(
        "s_short", "play that is missing", "s_need - s_given",
        (number("s_need", needed, "mm"), number("s_given", given, "mm")), value, "mm", _GEOMETRY,
        steps=steps(needed, given),
    )  # fmt: skip
