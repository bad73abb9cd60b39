"""A figure that remembers how it came about: symbol, formula, the numbers put in, unit and source."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple


class Number(NamedTuple):
    """One symbol of a formula, with its value in `unit` (a symbol of `reading.units`)."""

    symbol: str
    value: float
    unit: str


class Worked(NamedTuple):
    """One line of a calculation.

    `formula` is written in the rule language over the symbols of `numbers`, so that anyone can work it again;
    `value` is the result in `unit`. `published_units` marks a formula that is only true in the units shown (an
    empirical one); any other may be printed in inches and pounds or in millimetres and newtons alike.
    `steps` are the lines this one stands on, first worked first.
    """

    symbol: str
    words: str
    formula: str
    numbers: tuple[Number, ...]
    value: float
    unit: str
    source: str
    caution: str = ""
    published_units: bool = False
    steps: tuple[Worked, ...] = ()

    def lines(self) -> Iterator[Worked]:
        """Every line once, in the order of working, this one last."""
        seen: set[int] = set()
        yield from self._lines(seen)

    def _lines(self, seen: set[int]) -> Iterator[Worked]:
        if id(self) in seen:
            return
        seen.add(id(self))
        for step in self.steps:
            yield from step._lines(seen)
        yield self


class OutsideRulebook(Exception):
    """The published formulas do not cover this case. The reason is one sentence for the person on site; no number
    is ever given instead."""

    def __init__(self, reason: str) -> None:
        super().__init__(reason)
        self.reason = reason


class NotPossible(ValueError):
    """A dimension that cannot be: negative, not finite, or contradicting another. Names the argument."""
