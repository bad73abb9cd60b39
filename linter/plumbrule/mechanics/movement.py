"""How far a board moves across the grain over the year, and how little along it."""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.board_wood import published
from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.moisture import DOUBT
from plumbrule.mechanics.shrinkage import movement_by_shrinkage
from plumbrule.mechanics.table_rows import Board
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked
from plumbrule.reading.units import from_si

Sawn = Literal["flat", "quarter"]

_COEFFICIENT = "Wood Handbook ch. 13, eq. 13-2, from memory"
_LEAST, _MOST = 6.0, 14.0
_TIE = 1e-9
# Of the whole shrinkage along the grain, green to oven-dry; 0.1 to 0.2 % is printed.
_ALONG = 0.002
_STEEL = 6.5e-6


def movement_coefficient(board: Board, sawn: Sawn = "flat") -> Worked:
    """C, the part of a width that 1 % of moisture adds, as printed: tangential, or radial where a board is known to
    be quarter-sawn. Never worked back from the shrinkage.

    Raises OutsideRulebook where none is printed for the species, NotPossible for another word.
    """
    if sawn not in ("flat", "quarter"):
        raise NotPossible(f"{sawn} is neither flat nor quarter")
    flat = sawn == "flat"
    printed = board.swell_tangential if flat else board.swell_radial
    value = published(board, printed, "movement across the grain")
    remembered = ("C_T" if flat else "C_R") in board.from_memory
    return Worked(
        "C", f"movement per % of moisture, {sawn}-sawn", "C", (Number("C", value, ""),), value, "",
        f"{board.source}{', from memory' if remembered else ''}",
    )  # fmt: skip


def movement(width: Given, coefficient: Given, moisture: Given, fitted: Given) -> Worked:
    """Change dD = D C (M - M_i) in mm of a `width` mm from the moisture it was `fitted` at to `moisture`, both %;
    negative where it shrinks.

    The coefficients hold from 6 to 14 %, taken 1 % further for the doubt that a band carries. Raises OutsideRulebook
    beyond: see `board_movement`.
    """
    size, swell = positive("the width", width), positive("the coefficient of movement", coefficient)
    for value in (moisture, fitted):
        if not coefficient_holds(finite("the moisture", value)):
            raise OutsideRulebook(
                "The published coefficients of movement hold from 6 to 14 % moisture, and this board goes past that: "
                "let it settle in the room before it is measured and fitted."
            )
    return Worked(
        "dD", "change of the width", "D * C * (M - M_i)",
        (number("D", width, "mm"), number("C", coefficient, ""), number("M", moisture, "%"),
         number("M_i", fitted, "%")),
        size * swell * (si(moisture) - si(fitted)), "mm", _COEFFICIENT,
        steps=steps(width, coefficient, moisture, fitted),
    )  # fmt: skip


def board_movement(board: Board, sawn: Sawn, width: Given, moisture: Given, fitted: Given) -> Worked:
    """Change of a board's `width` mm, any moisture in %: by the printed coefficient where that holds, and beyond by
    the larger of coefficient and shrinkage formula.

    Raises OutsideRulebook where the species has no printed coefficient, or is taken past it without a printed
    shrinkage.
    """
    coefficient = movement_coefficient(board, sawn)
    first, last = not_negative("the moisture", moisture), not_negative("the moisture", fitted)
    if coefficient_holds(first) and coefficient_holds(last):
        return movement(width, coefficient, moisture, fitted)
    total = board.shrink_tangential if sawn == "flat" else board.shrink_radial
    whole = published(board, total, "shrinkage")
    shrunk = movement_by_shrinkage(width, whole, moisture, fitted, board.saturation)
    size, swell, limit = si(width), si(coefficient), board.saturation
    # Past saturation nothing moves any more, by either formula.
    plain = size * swell * (min(first, limit) - min(last, limit))
    swells = first >= last
    return Worked(
        "dD", "change of the width, past the range of the coefficient",
        f"{'max' if swells else 'min'}(D * C * (min(M, F) - min(M_i, F)), dD_S)",
        (number("D", width, "mm"), number("C", coefficient, ""), number("M", moisture, "%"),
         number("M_i", fitted, "%"), Number("F", limit, "%"), number("dD_S", shrunk, "mm")),
        max(plain, shrunk.value) if swells else min(plain, shrunk.value), "mm", _COEFFICIENT,
        caution="Past 6 to 14 % the coefficient is a rough guide.",
        steps=steps(width, coefficient, moisture, fitted, shrunk),
    )  # fmt: skip


def along_grain_movement(length: Given, moisture: Given, fitted: Given) -> Worked:
    """Change of a board's `length` mm along the grain: 0.2 % over the 30 % from green to oven-dry, the upper end of
    what is printed for straight grain."""
    size = positive("the length", length)
    change = not_negative("the moisture", moisture) - not_negative("the moisture", fitted)
    return Worked(
        "dL", "change of the length along the grain", "L * s_L / 30 * (M - M_i)",
        (number("L", length, "mm"), Number("s_L", _ALONG, ""), number("M", moisture, "%"), number("M_i", fitted, "%")),
        size * _ALONG / 30 * change, "mm", "Wood Handbook ch. 4, from memory", steps=steps(length, moisture, fitted),
    )  # fmt: skip


def steel_growth(length: Given, warmest: Given, coldest: Given) -> Worked:
    """By how much steel of `length` mm is longer at its `warmest` than at its `coldest`, mm: 6.5e-6 per °F. °C."""
    size, hot, cold = positive("the length", length), finite("the temperature", warmest), finite("it", coldest)
    if hot < cold:
        raise NotPossible("coldest is warmer than warmest")
    return Worked(
        "dL_s", "growth of the steel", "alpha * L * (T_1 - T_0)",
        (Number("alpha", _STEEL, "per °F"), number("L", length, "in"), number("T_1", warmest, "°F"),
         number("T_0", coldest, "°F")),
        _STEEL * from_si(size, "in") * (from_si(hot, "°F") - from_si(cold, "°F")), "in",
        "AISC Manual, expansion of steel, from memory", published_units=True, steps=steps(length, warmest, coldest),
    )  # fmt: skip


def coefficient_holds(moisture: float) -> bool:
    """Whether the printed coefficients hold at a moisture in %: from 6 to 14 %, and 1 % further for the doubt that a
    band carries."""
    return _LEAST - DOUBT - _TIE <= moisture <= _MOST + DOUBT + _TIE
