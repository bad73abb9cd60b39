"""How many panels a list of pieces takes when what is left of one is used for another, and the fewest it could take."""

from __future__ import annotations

import math
from bisect import bisect_left, insort
from collections.abc import Sequence
from itertools import accumulate
from typing import Literal, NamedTuple

from plumbrule.mechanics.slabs import TIE
from plumbrule.mechanics.worked import NotPossible

# Which end of a panel as it comes out of the carton a piece must keep. Square edges keep none: one cut is like another.
Keeps = Literal["none", "left", "right", "both"]
_ENDS: dict[Keeps, frozenset[str]] = {
    "none": frozenset(), "left": frozenset({"left"}), "right": frozenset({"right"}),
    "both": frozenset({"left", "right"}),
}  # fmt: skip


class Piece(NamedTuple):
    """A piece to be cut: its length in mm along the course, and the ends it must keep. Its height never matters: cut
    across first, so that what is left is as tall as the panel."""

    length: float
    keeps: Keeps = "none"


class Cutting(NamedTuple):
    """For each piece the panel it is cut from, counted from 1 in the order in which panels are begun; how many panels
    are begun; and the fewest that could do, by a bound that no cutting can beat."""

    panels: tuple[int, ...]
    needed: int
    least: int


def cut_from_panels(pieces: Sequence[Piece], length: float, kerf: float) -> Cutting:
    """Best fit, longest piece first. `kerf` is what each cut takes, mm, `length` that of a panel.

    A piece is cut from what is left of another panel only where it fits with the cut between them and the end that it
    must keep is still there. Best fit is not always the least; where `needed` is `least`, it is. Raises NotPossible for
    a piece longer than a panel. Source: the bound L2 for bin packing, as textbooks on knapsack problems give it, and
    one of pieces over a third; both leave the ends out, and so can only be too low.
    """
    if not length > 0 or kerf < 0:
        raise NotPossible("a panel has a length, and a cut takes nothing or something")
    if any(not 0 < piece.length <= length + TIE for piece in pieces):
        raise NotPossible("a piece is longer than a panel, or nothing")
    # What is left of each panel begun, shortest first, by the ends that are still there.
    left_over: dict[frozenset[str], list[tuple[float, int]]] = {}
    cut_of: list[list[int]] = []
    for index in sorted(range(len(pieces)), key=lambda index: -pieces[index].length):
        piece = pieces[index]
        keeps = _ENDS[piece.keeps]
        found = [
            (room[at], ends, at)
            for ends, room in left_over.items()
            if keeps <= ends and (at := bisect_left(room, (piece.length + kerf - TIE, 0))) < len(room)
        ]
        if found:
            (left, panel), ends, at = min(found, key=lambda one: one[0])
            del left_over[ends][at]
        else:
            left, panel, ends = length + kerf, len(cut_of), _ENDS["both"]
            cut_of.append([])
        cut_of[panel].append(index)
        insort(left_over.setdefault(ends - keeps, []), (left - piece.length - kerf, panel))
    return Cutting(
        _numbered(cut_of, len(pieces)), len(cut_of), fewest([piece.length for piece in pieces], length, kerf)
    )


def fewest(lengths: Sequence[float], length: float, kerf: float) -> int:
    """A number of panels below which no cutting can go: the longer pieces each take a panel, and the shorter ones have
    only so much room beside them."""
    full = length + kerf
    sizes = sorted((min(one, length) + kerf for one in lengths), reverse=True)
    sums = [0.0, *accumulate(sizes)]
    halves = sum(1 for size in sizes if size > full / 2)
    best = alone = 0
    for count, limit in [(len(sizes), 0.0), *((at + 1, sizes[at]) for at in range(len(sizes) - 1, halves - 1, -1))]:
        # The longer pieces beside which nothing of `limit` or longer fits have their panel to themselves.
        while alone < halves and sizes[alone] > full - limit + TIE:
            alone += 1
        short = sums[count] - sums[halves]
        over = short - ((halves - alone) * full - (sums[halves] - sums[alone]))
        best = max(best, halves + max(0, math.ceil(over / full - 1e-9)))
    return max(best, _by_thirds(sizes, halves, full))


def _by_thirds(sizes: Sequence[float], halves: int, full: float) -> int:
    """The bound that pieces over a third give: no three of them go into one panel, and beside one over half there is
    room for one of them at most. `sizes` are sorted, longest first; the first `halves` are over half a panel."""
    thirds = [size for size in sizes[halves:] if size > full / 3 + TIE]
    if not thirds:
        return halves
    beside = sum(1 for size in sizes[:halves] if size + thirds[-1] <= full + TIE)
    return halves + math.ceil(max(0, len(thirds) - beside) / 2)


def _numbered(cut_of: Sequence[Sequence[int]], count: int) -> tuple[int, ...]:
    """Panels counted by their first piece in the order of laying."""
    whose = [0] * count
    for number, indices in enumerate(sorted(cut_of, key=min), 1):
        for index in indices:
            whose[index] = number
    return tuple(whose)
