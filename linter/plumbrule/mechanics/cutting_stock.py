"""The fewest sticks that given pieces can be cut from, the saw cut counted; and, where that is not proved, how few it
could be at best.

Every length is turned into whole millionths of a millimetre, in which sixty-fourths of an inch and decimals of a
millimetre are both exact, so that whether a piece still fits is never a matter of rounding.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import isfinite
from typing import NamedTuple

from plumbrule.mechanics.worked import NotPossible

SCALE = 1_000_000
MOST_PIECES = 100_000
# Beyond these the search for a better cutting gives up, and says how far it got.
MOST_NODES = 20_000
MOST_STICKS_SEARCHED = 150
MOST_KINDS = 60
MOST_KINDS_SEARCHED = 200


class Piece(NamedTuple):
    """One piece to be cut: what it is for, and its length over all in mm."""

    name: str
    length: float


class CutStick(NamedTuple):
    """What is cut from one stick, longest first, and what is left of it, mm."""

    pieces: tuple[Piece, ...]
    left: float


class CutList(NamedTuple):
    """Sticks of one length with what is cut from each. Fewer than `at_least` cannot do."""

    stick: float
    kerf: float
    sticks: tuple[CutStick, ...]
    at_least: int

    @property
    def proven(self) -> bool:
        """Whether no cutting takes fewer sticks."""
        return self.at_least == len(self.sticks)


class Pattern(NamedTuple):
    """How many of each kind are cut from one stick, and from how many sticks alike."""

    counts: tuple[int, ...]
    times: int


class Cutting(NamedTuple):
    """Patterns that give every piece, and the sticks that it takes at least."""

    patterns: tuple[Pattern, ...]
    at_least: int

    @property
    def sticks(self) -> int:
        return sum(pattern.times for pattern in self.patterns)


def cut(pieces: Sequence[Piece], stick: float, kerf: float, thorough: bool = True) -> CutList:
    """The fewest sticks of `stick` mm for these pieces, with a saw cut of `kerf` mm after each piece. Of the last cut
    no more is needed than is there: pieces and the cuts between them may fill a stick to its end. Unless
    `thorough`, only what costs next to nothing is tried, and the fewest sticks are then seldom proved.

    Raises NotPossible: a length that is no measure, a piece that is longer than the stick, more than 100,000 pieces.
    Source: the cutting stock problem, by its standard statement (unit demands: bin packing).
    """
    if len(pieces) > MOST_PIECES:
        raise NotPossible(f"{len(pieces):,} pieces are more than a cut list of {MOST_PIECES:,} takes")
    if not isfinite(stick) or stick <= 0 or not isfinite(kerf) or kerf < 0:
        raise NotPossible("a stick has a length, and a saw cut is nothing or more")
    long = max(pieces, key=lambda piece: piece.length, default=None)
    if long is not None and not (isfinite(long.length) and whole(long.length) <= whole(stick)):
        raise NotPossible(f"{long.name} is longer than the stick it is to be cut from")
    if any(not piece.length > 0 for piece in pieces):
        raise NotPossible("a piece has a length of more than nothing")
    waiting: dict[int, list[Piece]] = {}
    for piece in pieces:
        waiting.setdefault(whole(piece.length), []).append(piece)
    sizes = sorted(waiting, reverse=True)
    gap = whole(kerf)
    made = fewest(whole(stick) + gap, [size + gap for size in sizes], [len(waiting[size]) for size in sizes], thorough)
    queues = [iter(waiting[size]) for size in sizes]
    sticks = []
    for pattern in made.patterns:
        taken = sum(count * (size + gap) for count, size in zip(pattern.counts, sizes, strict=True))
        left = max(whole(stick) - taken, 0) / SCALE
        for _ in range(pattern.times):
            chosen = (next(queue) for queue, count in zip(queues, pattern.counts, strict=True) for _ in range(count))
            sticks.append(CutStick(tuple(chosen), left))
    return CutList(stick, kerf, tuple(sticks), made.at_least)


def whole(length: float) -> int:
    """Millimetres as a whole number of their millionths."""
    return round(length * SCALE)


def fewest(stock: int, sizes: Sequence[int], demand: Sequence[int], thorough: bool = True) -> Cutting:
    """Patterns for `demand` pieces of each of `sizes` (falling, each once, none above `stock`), with the fewest sticks
    that the search finds and the least that is proved.

    First fit and the bounds by length settle most jobs; then a search that tries every way within the waste that
    is allowed; then the bound of the linear programme, rounded.
    """
    best = first_fit(stock, sizes, demand)
    least = max(by_length(stock, sizes, demand), by_halves(stock, sizes, demand))
    if not thorough:
        return Cutting(tuple(best), least)
    if least < sticks_of(best) and len(sizes) <= MOST_KINDS_SEARCHED:
        best, least = _searched(stock, sizes, demand, best, least)
    if least < sticks_of(best) and len(sizes) <= MOST_KINDS:
        from plumbrule.mechanics.cutting_bound import rounded

        found, bound = rounded(stock, sizes, demand)
        least = max(least, bound)
        if found and sticks_of(found) < sticks_of(best):
            best = found
    return Cutting(tuple(best), least)


def sticks_of(patterns: Sequence[Pattern]) -> int:
    """How many sticks a set of cutting patterns takes, each as often as it is cut."""
    return sum(pattern.times for pattern in patterns)


def first_fit(stock: int, sizes: Sequence[int], demand: Sequence[int]) -> list[Pattern]:
    """Longest piece first, each into the first stick that still takes it."""
    bins: list[tuple[int, tuple[int, ...], int]] = []  # left over, counts, sticks alike
    for kind, (size, wanted) in enumerate(zip(sizes, demand, strict=True)):
        filled: list[tuple[int, tuple[int, ...], int]] = []
        for left, counts, times in bins:
            fits = min(left // size, wanted) if wanted else 0
            if not fits:
                filled.append((left, counts, times))
                continue
            many = min(times, wanted // fits)
            filled.append((left - fits * size, _with(counts, kind, fits), many))
            wanted -= many * fits
            rest = min(wanted, fits) if many < times else 0
            if rest:
                filled.append((left - rest * size, _with(counts, kind, rest), 1))
                wanted -= rest
            if times > many + bool(rest):
                filled.append((left, counts, times - many - bool(rest)))
        fits = stock // size
        nothing = (0,) * len(sizes)
        if wanted >= fits:
            filled.append((stock - fits * size, _with(nothing, kind, fits), wanted // fits))
        if wanted % fits:
            filled.append((stock - wanted % fits * size, _with(nothing, kind, wanted % fits), 1))
        bins = filled
    return [Pattern(counts, times) for _, counts, times in bins]


def by_length(stock: int, sizes: Sequence[int], demand: Sequence[int]) -> int:
    """The sticks that the pieces take end to end."""
    return -(-sum(size * count for size, count in zip(sizes, demand, strict=True)) // stock)


def by_halves(stock: int, sizes: Sequence[int], demand: Sequence[int]) -> int:
    """The sticks that it takes since no two pieces above half a stick share one: the bound L2 of Martello and Toth."""
    best = 0
    pairs = list(zip(sizes, demand, strict=True))
    # Any threshold gives a bound that is true; the longest short pieces give the sharp ones.
    for small in (0, *[size for size in sizes if 2 * size <= stock][:MOST_KINDS]):
        alone = sum(count for size, count in pairs if size > stock - small)
        halves = [(size, count) for size, count in pairs if 2 * size > stock and size <= stock - small]
        beside = sum(count * (stock - size) for size, count in halves)
        rest = sum(size * count for size, count in pairs if small <= size and 2 * size <= stock)
        more = max(0, -((beside - rest) // stock)) if rest > beside else 0
        best = max(best, alone + sum(count for _, count in halves) + more)
    return best


def _with(counts: tuple[int, ...], kind: int, more: int) -> tuple[int, ...]:
    return (*counts[:kind], counts[kind] + more, *counts[kind + 1 :])


def _searched(
    stock: int, sizes: Sequence[int], demand: Sequence[int], best: list[Pattern], least: int
) -> tuple[list[Pattern], int]:
    """A better cutting, or a proof that there is none: from the least number of sticks upward, as far as it gets."""
    while least < sticks_of(best) and least <= MOST_STICKS_SEARCHED:
        search = Search(stock, sizes)
        found = search.within(tuple(demand), least)
        if found is not None:
            return found, least
        if search.gave_up:
            break
        least += 1
    return best, least


class Search:
    """Whether pieces can be cut from so many sticks: every way is tried whose waste stays within what is allowed.

    The longest piece left is always cut next, and its stick is filled until nothing that is left fits any more: a
    piece moved there from another stick never makes a cutting worse.
    """

    def __init__(self, stock: int, sizes: Sequence[int], nodes: int = MOST_NODES) -> None:
        self._stock, self._sizes = stock, sizes
        self._nodes = nodes
        self._hopeless: set[tuple[tuple[int, ...], int]] = set()
        self.gave_up = False

    def within(self, demand: tuple[int, ...], sticks: int) -> list[Pattern] | None:
        """Patterns for `sticks` sticks or fewer; None where there are none or, with `gave_up`, none was found."""
        if not any(demand):
            return []
        spare = sticks * self._stock - sum(size * count for size, count in zip(self._sizes, demand, strict=True))
        if spare < 0 or (demand, sticks) in self._hopeless or self.gave_up:
            return None
        self._nodes -= 1
        if self._nodes < 0:
            self.gave_up = True
            return None
        first = next(kind for kind, count in enumerate(demand) if count)
        for counts in self._fillings(demand, first, spare):
            rest = tuple(count - used for count, used in zip(demand, counts, strict=True))
            found = self.within(rest, sticks - 1)
            if found is not None:
                return [Pattern(counts, 1), *found]
        if not self.gave_up:
            self._hopeless.add((demand, sticks))
        return None

    def _fillings(self, demand: tuple[int, ...], first: int, spare: int) -> Iterator[tuple[int, ...]]:
        """Every way to fill a stick with the first kind and others, nothing left that fits, wasting at most `spare`;
        the long pieces first, which are the hardest to place."""
        sizes = self._sizes
        counts = [0] * len(demand)
        kinds = [kind for kind in range(first, len(demand)) if demand[kind]]
        # What all kinds from a place on could still fill, at most.
        rest = [0] * (len(kinds) + 1)
        for place in range(len(kinds) - 1, -1, -1):
            rest[place] = rest[place + 1] + sizes[kinds[place]] * demand[kinds[place]]

        def fill(place: int, left: int) -> Iterator[tuple[int, ...]]:
            self._nodes -= 1
            if self._nodes < 0:
                self.gave_up = True
                return
            for at in range(place, len(kinds)):
                kind = kinds[at]
                size = sizes[kind]
                if left - rest[at] > spare:
                    return
                for number in range(min(demand[kind], left // size), 0, -1):
                    counts[kind] = number
                    yield from fill(at + 1, left - number * size)
                counts[kind] = 0
                if place == 0:
                    return
            if left <= spare and all(counts[kind] == demand[kind] or sizes[kind] > left for kind in kinds):
                yield tuple(counts)

        yield from fill(0, self._stock)
