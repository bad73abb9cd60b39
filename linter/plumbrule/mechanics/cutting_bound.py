"""The bound of the linear programme on how many sticks a cutting takes, and cuttings made by rounding it.

Patterns are made as they are needed (column generation); the bound is worked in whole numbers at the end, so that
rounding can make it lower than it is, never higher.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import floor

from plumbrule.mechanics.cutting_stock import Pattern, Search, first_fit, sticks_of

_STEPS = 600
# How much is tried in all: counted, not timed, so that every machine finds the same.
_ALL_NODES = 60_000
_PRICE = 10**9
_BETTER = 1e-9
_SMALL = 24


def linear_bound(stock: int, sizes: Sequence[int], demand: Sequence[int]) -> Fraction:
    """The optimum of the linear programme, or something below it where the work had to be cut short; 0 at the worst.

    Source: Gilmore and Gomory 1961 (column generation), Farley 1990 (the bound from any prices).
    """
    return _Programme(stock, sizes, demand, _Patience(_ALL_NODES)).bound()


def rounded(stock: int, sizes: Sequence[int], demand: Sequence[int]) -> tuple[list[Pattern], int]:
    """A cutting made from the linear programme, and the least number of sticks by it. Each round keeps the whole part
    of every pattern, or one stick of the fullest, and works the rest again; what is small is searched through."""
    left = tuple(demand)
    made: list[Pattern] = []
    bound: int | None = None
    patience = _Patience(_ALL_NODES)
    while any(left):
        if bound is not None and sum(left) <= _SMALL:
            made += _small(stock, sizes, left, bound - sticks_of(made))
            break
        if patience.nodes < 0:
            made += first_fit(stock, sizes, left)
            break
        programme = _Programme(stock, sizes, left, patience)
        found = programme.bound()
        if bound is None:
            bound = -(-found.numerator // found.denominator)
        kept = programme.whole_part()
        if not kept:
            made += first_fit(stock, sizes, left)
            break
        made += kept
        left = tuple(
            count - sum(pattern.times * pattern.counts[kind] for pattern in kept) for kind, count in enumerate(left)
        )
    return made, bound or 0


def _small(stock: int, sizes: Sequence[int], demand: tuple[int, ...], sticks: int) -> list[Pattern]:
    usual = first_fit(stock, sizes, demand)
    if sticks_of(usual) <= sticks:
        return usual
    found = Search(stock, sizes).within(demand, sticks)
    return found if found is not None else usual


class _Patience:
    """What is left of the work that may be spent."""

    def __init__(self, nodes: int) -> None:
        self.nodes = nodes


class _Programme:
    """The linear programme of one demand: patterns of the basis, how many sticks of each, and the prices of pieces."""

    def __init__(self, stock: int, sizes: Sequence[int], demand: Sequence[int], patience: _Patience) -> None:
        self._stock, self._demand, self._patience = stock, demand, patience
        self._kinds = [kind for kind, count in enumerate(demand) if count]
        self._sizes = [sizes[kind] for kind in self._kinds]
        self._most = [min(demand[kind], stock // sizes[kind]) for kind in self._kinds]
        rows = range(len(self._kinds))
        self._columns = [[self._most[row] if row == column else 0 for row in rows] for column in rows]
        self._inverse = [[1 / self._most[row] if row == column else 0.0 for column in rows] for row in rows]
        self._used = [demand[kind] / most for kind, most in zip(self._kinds, self._most, strict=True)]
        self._solve()

    def bound(self) -> Fraction:
        """A proved bound: pieces at their prices, over the most that one stick can be worth at them."""
        prices = [max(0, floor(price * _PRICE)) for price in self._prices()]
        best = self._best(prices)
        if best is None or not best[0]:
            return Fraction(0)
        return Fraction(
            sum(price * self._demand[kind] for price, kind in zip(prices, self._kinds, strict=True)), best[0]
        )

    def whole_part(self) -> list[Pattern]:
        """The whole sticks of every pattern; where there are none, one stick of the pattern that has most."""
        counted = [
            (floor(used + _BETTER), used, column) for used, column in zip(self._used, self._columns, strict=True)
        ]
        kept = [(times, column) for times, _, column in counted if times > 0]
        if not kept:
            kept = [(1, max(counted, key=lambda one: (one[1], one[2]))[2])]
        made: list[Pattern] = []
        left = list(self._demand)
        for times, column in kept:
            counts = [0] * len(left)
            for kind, count in zip(self._kinds, column, strict=True):
                counts[kind] = count
            fits = min(left[kind] // count for kind, count in enumerate(counts) if count)
            if times := min(times, fits):
                made.append(Pattern(tuple(counts), times))
                left = [have - times * count for have, count in zip(left, counts, strict=True)]
        return made

    def _prices(self) -> list[float]:
        return [sum(row[kind] for row in self._inverse) for kind in range(len(self._kinds))]

    def _solve(self) -> None:
        for _ in range(_STEPS):
            # One exchange of patterns costs about as much as this many tries.
            self._patience.nodes -= len(self._kinds) ** 2 // 8
            best = self._best([max(0, floor(price * _PRICE)) for price in self._prices()])
            if best is None or best[0] <= _PRICE * (1 + _BETTER) + len(self._kinds) * max(self._most):
                return
            if not self._enter(best[1]):
                return

    def _enter(self, column: list[int]) -> bool:
        """The pattern `column` comes into the basis for the one that is used up first. False where none is."""
        moved = [sum(a * b for a, b in zip(row, column, strict=True)) for row in self._inverse]
        leaving, step = -1, float("inf")
        for row, (used, by) in enumerate(zip(self._used, moved, strict=True)):
            if by > _BETTER and used / by < step:
                leaving, step = row, used / by
        if leaving < 0:
            return False
        pivot = moved[leaving]
        turned = [value / pivot for value in self._inverse[leaving]]
        for row, by in enumerate(moved):
            if row == leaving:
                continue
            self._used[row] = max(0.0, self._used[row] - step * by)
            if by:
                self._inverse[row] = [a - by * b for a, b in zip(self._inverse[row], turned, strict=True)]
        self._inverse[leaving], self._used[leaving] = turned, step
        self._columns[leaving] = list(column)
        return True

    def _best(self, prices: Sequence[int]) -> tuple[int, list[int]] | None:
        """The pattern that is worth most at these prices, exactly; None where patience ends."""
        # Dearest by length first, in whole numbers: finer than any worth that could be missed by it.
        dear = [(price << 64) // size for price, size in zip(prices, self._sizes, strict=True)]
        order = sorted((kind for kind, price in enumerate(prices) if price), key=lambda kind: (-dear[kind], kind))
        best_worth, best_counts = 0, [0] * len(prices)
        counts = [0] * len(prices)
        patience = self._patience

        def fill(at: int, left: int, worth: int) -> bool:
            nonlocal best_worth, best_counts
            patience.nodes -= 1
            if patience.nodes < 0:
                return False
            if worth > best_worth:
                best_worth, best_counts = worth, counts[:]
            for place in range(at, len(order)):
                kind = order[place]
                size, price = self._sizes[kind], prices[kind]
                # What is left can be worth no more than filled to its end with the dearest kind by length.
                if (worth - best_worth) * size + left * price <= 0:
                    break
                for number in range(min(self._most[kind], left // size), 0, -1):
                    counts[kind] = number
                    if not fill(place + 1, left - number * size, worth + number * price):
                        return False
                counts[kind] = 0
            return True

        return (best_worth, best_counts) if fill(0, self._stock, 0) else None
