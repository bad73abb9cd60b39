"""The loads a plan is tried with, how long each lasts, on whose word it rests, and which of them go together.

No model code gives a load for a home bench or shelf. Apart from weight every figure is a choice: a benchmark taken
over from a rule that binds other places, or an advisory one. Reports must say so.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NamedTuple

from plumbrule.mechanics.factors import Duration, load_duration
from plumbrule.mechanics.given import number
from plumbrule.mechanics.worked import NotPossible, Worked

Case = Literal["D", "S1", "S2", "S3", "S4", "S5", "S6", "S7"]
Standing = Literal["statics", "benchmark", "advisory", "common practice"]

NO_CODE_LOAD = (
    "No model building code gives a load for a built-in home bench or shelf: apart from the weight itself, every load "
    "here is a choice, and a benchmark has no legal force in a home."
)


class LoadCase(NamedTuple):
    """One load. `words` is what a reader calls it, `where` where it may act, `standing` on what footing it rests:
    only `statics` is a fact; a `benchmark` binds other places by law and none of these."""

    case: Case
    words: str
    where: str
    duration: Duration
    standing: Standing
    source: str


CASES: dict[Case, LoadCase] = {
    row.case: row
    for row in (
        LoadCase("D", "weight", "spread over the board", "permanent", "statics", "weights of the materials"),
        LoadCase(
            "S1", "one person", "any point of the seat, the front edge, a corner and midspan among them", "people",
            "benchmark", "ADA Standards 2010, 903.6: 250 lbf at any point; binds listed public places only",
        ),
        LoadCase(
            "S2", "full seat", "spread over length and depth", "people", "benchmark",
            "120 lb/ft of seat, ICC 300 as cited in a bleacher permit; binds bleachers only",
        ),
        LoadCase(
            "S3", "two people", "front edge, 24 in apart, at the worst place", "people", "advisory",
            "two people of the one-person load, common practice",
        ),
        LoadCase(
            "S4", "sideways push", "any point, along the wall or outwards", "people", "benchmark",
            "ADA Standards 2010, 903.6: 250 lbf sideways; binds listed public places only",
        ),
        LoadCase(
            "S5", "dropping onto the seat", "as one person", "impact", "advisory",
            "twice the weight, the exact limit of a load put on suddenly from no height",
        ),
        LoadCase(
            "S6", "storage", "along the shelf, centred at two thirds of the depth", "stored goods", "common practice",
            "25 lb/ft of books, a state library weighing programme; 40 lb/ft in double rows, common practice",
        ),
        LoadCase(
            "S7", "leaning on the shelf", "front edge, at any point", "people", "advisory",
            "50 lbf by analogy with ASCE 7 in-fill loads",
        ),
    )
}  # fmt: skip

# People sit, push and drop one at a time: S1 to S5 are never added to each other.
COMBINATIONS: tuple[tuple[Case, ...], ...] = (
    ("D",), ("D", "S1"), ("D", "S2"), ("D", "S3"), ("D", "S4"), ("D", "S5"), ("D", "S6"), ("D", "S6", "S7"),
)  # fmt: skip


def combination_words(cases: Sequence[Case]) -> str:
    """What a reader calls loads that act together. Raises NotPossible for a set that is not in `COMBINATIONS`."""
    _listed(cases)
    return " and ".join(CASES[case].words for case in cases)


def standing(cases: Sequence[Case]) -> Standing:
    """The weakest footing among loads that act together: advisory, then common practice, benchmark, statics."""
    _listed(cases)
    order: tuple[Standing, ...] = ("advisory", "common practice", "benchmark", "statics")
    return min((CASES[case].standing for case in cases), key=order.index)


def combination_duration(cases: Sequence[Case]) -> Worked:
    """C_D of loads that act together: that of the shortest. Wood, and screws in wood, only; never steel.

    The lasting part of a combination must be tried alone as well, at 0.9: `COMBINATIONS` begins with it. Raises
    NotPossible for a set that is not in `COMBINATIONS`.
    """
    _listed(cases)
    factors = [load_duration(CASES[case].duration) for case in cases]
    symbols = [f"C_D_{case}" for case in cases]
    value = max(factor.value for factor in factors)
    return Worked(
        "C_D", f"load duration, {combination_words(cases)}: the shortest load sets it",
        f"max({', '.join(symbols)})" if len(symbols) > 1 else symbols[0],
        tuple(number(symbol, factor, "") for symbol, factor in zip(symbols, factors, strict=True)), value, "",
        "AWC NDS 2018, 2.3.2.2 and Table 2.3.2", steps=tuple(factors),
    )  # fmt: skip


def _listed(cases: Sequence[Case]) -> None:
    if tuple(cases) not in COMBINATIONS:
        raise NotPossible(f"{' + '.join(cases)} are not loads that are taken together")
