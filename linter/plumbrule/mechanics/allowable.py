"""From the average strength of clear wood to a stress that an ungraded board may carry.

A slab without a grade stamp has no design value. The documented way to one starts from the lower edge of what clear
pieces of green wood reach, and divides for time, safety and what knots and slope of grain take. The averages are
published; the figures of the way itself (scatter, divisors, gains by drying, strength ratios) are from memory.
"""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.board_wood import published, require_thickness
from plumbrule.mechanics.given import Given, finite, number, si, steps
from plumbrule.mechanics.table_rows import Board
from plumbrule.mechanics.worked import NotPossible, Number, Worked

Stress = Literal["bending", "shear", "bearing", "tension across"]
Quality = Literal["unknown", "sound front"]

_WAY = "in the manner of ASTM D2555 and D245, from memory"
_MEMORY = "The scatter, divisors, gains by drying and strength ratios are from memory; the averages are published."
_NO_STAMP = "An ungraded board has no design value: where it matters, take a grade-stamped board or ask an engineer."

_WORDS: dict[str, tuple[str, str]] = {
    "bending": ("MOR", "bending strength"),
    "shear": ("tau", "shear strength along the grain"),
    "bearing": ("c_p", "strength across the grain in compression"),
    "tension across": ("t_p", "strength across the grain in tension"),
}
_SCATTER: dict[str, float] = {"bending": 0.16, "shear": 0.14, "tension across": 0.25}
# What drying to 15 % is allowed to add to the green average. Nothing is published for tension across the grain.
_GAIN: dict[str, float] = {"bending": 1.35, "shear": 1.13, "bearing": 1.5}
# Kept below 1 for all but bending: checks undo what drying adds, and bending alone shows it in whole boards.
_MOST: dict[str, float] = {"bending": 1.0, "shear": 0.67, "bearing": 0.67}
# Where no green value is printed: not above the lowest of all species of the table.
_LEAST: dict[str, float] = {"bending": 0.64, "shear": 0.60, "bearing": 0.60, "tension across": 0.67}
_RATIOS: dict[str, float] = {"unknown": 0.26, "sound front": 0.50}
_SHEAR_RATIO = 0.5
_TWO_INCHES = 50.8


def strength_ratio(quality: Quality) -> Worked:
    """SR: 0.26 for a board nobody looked at, 0.50 for a `sound front`: a front third free of knots over a quarter of
    the thickness, and grain that runs out no faster than 1 in 12. Never more without a grade stamp.

    Raises NotPossible for any other word.
    """
    if quality not in _RATIOS:
        raise NotPossible(f"{quality} is not one of {', '.join(_RATIOS)}")
    value = _RATIOS[quality]
    return Worked(
        "SR", f"what knots and slope of grain leave: {quality}", "SR", (Number("SR", value, ""),), value, "", _WAY,
        caution=_MEMORY,
    )  # fmt: skip


def seasoning(board: Board, stress: Stress) -> Worked:
    """K_s: which part of the average at 12 % counts, since the way starts from green wood and allows drying 1.35 in
    bending, 1.13 in shear and 1.5 in bearing.

    At most 1 in bending and 0.67 otherwise; where no green average is printed 0.64 in bending and 0.60 in shear and
    bearing, which no species of the table goes below; 0.67 in tension across the grain. Raises OutsideRulebook where
    the average at 12 % is missing too.
    """
    dry, green = _average(board, stress), _green(board, stress)
    if green is None:
        least = _LEAST[stress]
        why = "no green average is printed" if stress in _GAIN else "nothing is published"
        return Worked(
            "K_s", f"part of the seasoned average that counts in {stress}; {why}", "K_s",
            (Number("K_s", least, ""),), least, "", f"house value, with {_WAY}", caution=_MEMORY,
        )  # fmt: skip
    gain, most = _GAIN[stress], _MOST[stress]
    return Worked(
        "K_s", f"part of the seasoned average that counts in {stress}", "min(k * F_green / F_12, K_most)",
        (Number("k", gain, ""), Number("F_green", green, "MPa"), Number("F_12", dry, "MPa"),
         Number("K_most", most, "")),
        min(gain * green / dry, most), "", f"{board.source}; {_WAY}", caution=_MEMORY,
    )  # fmt: skip


def exclusion(board: Board, stress: Stress) -> Worked:
    """The stress, MPa at 12 %, that 95 of 100 clear pieces reach: the average less 1.645 times its scatter, which is
    16 % in bending, 14 % in shear and 25 % in tension across. Bearing is taken at its average (NotPossible)."""
    if stress not in _SCATTER:
        raise NotPossible(f"{stress} is taken at its average")
    symbol, words = _WORDS[stress]
    average, scatter = _average(board, stress), _SCATTER[stress]
    return Worked(
        f"{symbol}_5", f"{words} that 95 of 100 clear pieces reach", f"{symbol} * (1 - 1.645 * V)",
        (Number(symbol, average, "MPa"), Number("V", scatter, "")), average * (1 - 1.645 * scatter), "MPa",
        f"{board.source}; {_WAY}", caution=_MEMORY,
    )  # fmt: skip


def safety_divisor(board: Board) -> Worked:
    """d_v for ten years of load and safety: 2.1 softwood, 2.3 hardwood."""
    value = 2.1 if board.kind == "softwood" else 2.3
    return Worked(
        "d_v", f"divisor for time and safety, {board.kind}", "d_v", (Number("d_v", value, ""),), value, "", _WAY,
        caution=_MEMORY,
    )  # fmt: skip


def size_factor(thickness: Given) -> Worked:
    """C_F = (2 in. / t)^(1/9), at most 1: a thick board is likelier to hold a flaw. `thickness` mm."""
    value = require_thickness(thickness)
    return Worked(
        "C_F", "size", "(t_0 / max(t_0, t))^(1 / 9)",
        (Number("t_0", _TWO_INCHES, "mm"), number("t", thickness, "mm")),
        (_TWO_INCHES / max(_TWO_INCHES, value)) ** (1 / 9), "", _WAY, steps=steps(thickness),
    )  # fmt: skip


def bending_allowable(board: Board, thickness: Given, quality: Quality, seasoned: Given | None = None) -> Worked:
    """F_b in MPa of a flat board for a load of ten years, before C_D and C_M.

    `thickness` mm; `seasoned` takes the place of K_s. Raises OutsideRulebook where the species has no published
    bending strength, NotPossible for a K_s that is not above 0 and at most 1.
    """
    factors = (exclusion(board, "bending"), _seasoned(board, "bending", seasoned), strength_ratio(quality),
               size_factor(thickness), safety_divisor(board))  # fmt: skip
    return _combined("F_b", "bending stress an ungraded board may carry", "MOR_5 * K_s * SR * C_F / d_v", factors)


def shear_allowable(board: Board, seasoned: Given | None = None) -> Worked:
    """F_v in MPa along the grain, half of it lost to checks whatever the board looks like. Errors as
    `bending_allowable`."""
    checks = Worked(
        "SR_v", "what checks leave in shear", "SR_v", (Number("SR_v", _SHEAR_RATIO, ""),), _SHEAR_RATIO, "", _WAY,
        caution=_MEMORY,
    )  # fmt: skip
    factors = (exclusion(board, "shear"), _seasoned(board, "shear", seasoned), checks, safety_divisor(board))
    return _combined("F_v", "shear stress an ungraded board may carry", "tau_5 * K_s * SR_v / d_v", factors)


def bearing_allowable(board: Board, seasoned: Given | None = None) -> Worked:
    """F_c_p in MPa across the grain, the average over 1.67; no C_D and no C_b belong to it. Errors as
    `bending_allowable`."""
    average = _average(board, "bearing")
    season = _seasoned(board, "bearing", seasoned)
    return Worked(
        "F_c_p", "bearing stress across the grain a board may carry", "c_p * K_s / 1.67",
        (Number("c_p", average, "MPa"), number("K_s", season, "")), average * si(season) / 1.67, "MPa",
        f"{board.source}; {_WAY}", caution=_NO_STAMP, steps=(season,),
    )  # fmt: skip


def tension_across_allowable(board: Board, seasoned: Given | None = None) -> Worked:
    """F_t_p in MPa across the grain. No standard gives such a value, because wood splits there without warning: a
    stress above it is to be avoided, not designed. Errors as `bending_allowable`."""
    factors = (exclusion(board, "tension across"), _seasoned(board, "tension across", seasoned), safety_divisor(board))
    return _combined(
        "F_t_p", "tension across the grain, as a mark only", "t_p_5 * K_s / d_v", factors,
        "No standard allows a board to be relied on across its grain; this is a mark, not a design value.",
    )  # fmt: skip


def _combined(symbol: str, words: str, formula: str, factors: tuple[Worked, ...], caution: str = _NO_STAMP) -> Worked:
    value = 1.0
    for factor in factors[:-1]:
        value *= factor.value
    return Worked(
        symbol, words, formula, tuple(Number(factor.symbol, factor.value, factor.unit) for factor in factors),
        value / factors[-1].value, "MPa", _WAY, caution=caution, steps=factors,
    )  # fmt: skip


def _seasoned(board: Board, stress: Stress, seasoned: Given | None) -> Worked:
    if seasoned is None:
        return seasoning(board, stress)
    value = finite("K_s", seasoned)
    if not 0 < value <= 1:
        raise NotPossible(f"K_s is {value:g}; it lies above 0 and at most at 1")
    if isinstance(seasoned, Worked):
        return seasoned
    return Worked("K_s", "part of the seasoned average that counts, as given", "K_s", (Number("K_s", value, ""),),
                  value, "", "as given")  # fmt: skip


def _average(board: Board, stress: Stress) -> float:
    if stress not in _WORDS:
        raise NotPossible(f"{stress} is not one of {', '.join(_WORDS)}")
    values = {"bending": board.rupture, "shear": board.shear, "bearing": board.compression_across,
              "tension across": board.tension_across}  # fmt: skip
    return published(board, values[stress], _WORDS[stress][1])


def _green(board: Board, stress: Stress) -> float | None:
    values = {"bending": board.rupture_green, "shear": board.shear_green, "bearing": board.compression_across_green}
    return values.get(stress)
