"""The holes of one leg as they are set out: rows from the heel, marks along the leg, and which hole is nearest."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from typing import NamedTuple

from plumbrule.facts.desk import Input
from plumbrule.facts.drilling import Drilling


class Grid(NamedTuple):
    """Every mark carries every row, so the nearest hole is always the next mark of the same row or the next row of
    the same mark, never one across. `marks` and `rows` are sorted where all are known; `wanting` are those that are
    not."""

    holes: int
    marks: tuple[tuple[float, Input], ...]
    rows: tuple[tuple[float, Input], ...]
    wanting: tuple[Input, ...]

    def next_mark(self, x: float) -> tuple[float, Input] | None:
        """Distance in mm along the leg to the nearest other mark, and that mark; None where there is no other."""
        return _next(self.marks, x)

    def next_row(self, y: float) -> tuple[float, Input] | None:
        """Distance in mm across the leg to the nearest other row, and that row; None where there is no other."""
        return _next(self.rows, y)


def grid(drillings: Sequence[Drilling]) -> Grid:
    """The grid of the holes of one leg of one support, as `facts.drilling` gives them: row by row."""
    first_row = [drilling for drilling in drillings if drilling.y.pointer == drillings[0].y.pointer]
    marks = [drilling.x for drilling in first_row]
    rows = [drilling.y for drilling in drillings[:: len(first_row)]] if first_row else []
    wanting = tuple(place for place in (*marks, *rows) if place.value is None)
    return Grid(len(drillings), _sorted(marks), _sorted(rows), wanting)


def _sorted(places: Sequence[Input]) -> tuple[tuple[float, Input], ...]:
    known = [(float(place.value), place) for place in places if isinstance(place.value, int | float)]
    return tuple(sorted(known, key=lambda one: one[0]))


def _next(places: Sequence[tuple[float, Input]], here: float) -> tuple[float, Input] | None:
    own = bisect_left(places, here, key=lambda one: one[0])
    # A second one at the very same place is as near as can be, so only the one that is `here` is left out.
    beside = [places[index] for index in (own - 1, own + 1) if 0 <= index < len(places)]
    return min(((abs(place - here), source) for place, source in beside), key=lambda one: one[0], default=None)
