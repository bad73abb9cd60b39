"""A beam on springs, solved by direct stiffness: deflections, and the largest force a walking load puts on a spring.

Numbers only: the lines that can be worked again are built on them by `back_angle`. Beam elements of two nodes with a
cubic shape between them, so the answer is exact for loads at nodes; the equations are banded and the stiffness is
positive with two springs or more, so they are swept without exchanging rows.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from plumbrule.mechanics.worked import NotPossible, OutsideRulebook

_BAND = 3
_MOST = 120
_HAIR = 1e-5


class Bent(NamedTuple):
    """Drop v and slope of a beam at its nodes, mm: `at` rises; between nodes the drop is a cubic."""

    at: tuple[float, ...]
    drop: tuple[float, ...]
    slope: tuple[float, ...]

    def drop_at(self, place: float) -> float:
        """The drop at any place of the beam."""
        node = next((i for i in range(len(self.at) - 1) if place <= self.at[i + 1]), len(self.at) - 2)
        length = self.at[node + 1] - self.at[node]
        x = (place - self.at[node]) / length
        return (
            (1 - 3 * x**2 + 2 * x**3) * self.drop[node]
            + (x - 2 * x**2 + x**3) * length * self.slope[node]
            + (3 * x**2 - 2 * x**3) * self.drop[node + 1]
            + (x**3 - x**2) * length * self.slope[node + 1]
        )

    def lowest(self, start: float, end: float) -> tuple[float, float]:
        """The place of the largest drop between two places, and that drop. Exact: the cubics' own turning points."""
        places = {start, end, *(x for x in self.at if start < x < end)}
        for node in range(len(self.at) - 1):
            places |= {x for x in self._turns(node) if start < x < end}
        return max(((x, self.drop_at(x)) for x in sorted(places)), key=lambda found: found[1])

    def _turns(self, node: int) -> list[float]:
        length = self.at[node + 1] - self.at[node]
        rise = self.drop[node + 1] - self.drop[node]
        left, right = self.slope[node] * length, self.slope[node + 1] * length
        a, b, c = 3 * (left + right - 2 * rise), 2 * (3 * rise - 2 * left - right), left
        if a == 0:
            roots = [-c / b] if b else []
        elif b * b < 4 * a * c:
            roots = []
        else:
            root = (b * b - 4 * a * c) ** 0.5
            roots = [(-b + root) / (2 * a), (-b - root) / (2 * a)]
        return [self.at[node] + x * length for x in roots if 0 < x < 1]


def bend(
    length: float,
    springs: Sequence[tuple[float, float]],
    rigidity: float,
    forces: Sequence[tuple[float, float]],
) -> Bent:
    """The beam of `length` mm and `rigidity` EI (N·mm²) on `springs` (place mm, stiffness N/mm) under point `forces`
    (place mm, N down). Raises OutsideRulebook for fewer than two springs, NotPossible for impossible measures."""
    if len({place for place, _ in springs}) < 2:
        raise OutsideRulebook("A beam on one spring can turn about it, so it carries nothing that is not right above.")
    if length <= 0 or rigidity <= 0 or any(stiffness <= 0 for _, stiffness in springs):
        raise NotPossible("length, rigidity and springs must be more than zero")
    wanted = [x for x, _ in (*springs, *forces)]
    if min(wanted) < 0 or max(wanted) > length or len(wanted) > _MOST:
        raise NotPossible("a spring or a force is off the beam, or there are too many")
    places = _nodes(length, [x for x, _ in springs], [x for x, _ in forces])
    rows = [[0.0] * (2 * len(places)) for _ in range(2 * len(places))]
    for node in range(len(places) - 1):
        _add_element(rows, node, places[node + 1] - places[node], rigidity)
    for place, stiffness in springs:
        node = _nearest(places, place)
        rows[2 * node][2 * node] += stiffness
    load = [0.0] * (2 * len(places))
    for place, force in forces:
        load[2 * _nearest(places, place)] += force
    moved = _sweep(rows, load)
    return Bent(tuple(places), tuple(moved[0::2]), tuple(moved[1::2]))


def _nodes(length: float, springs: Sequence[float], forces: Sequence[float]) -> list[float]:
    """Springs first, then ends and forces that are not within a hair of what is there: an element of next to no length
    would drown the others' stiffness in rounding."""
    found: list[float] = []
    for place in (*springs, 0.0, length, *forces):
        if all(abs(place - node) > _HAIR * length for node in found):
            found.append(place)
    return sorted(found)


def _nearest(places: Sequence[float], place: float) -> int:
    return min(range(len(places)), key=lambda index: abs(places[index] - place))


def _add_element(rows: list[list[float]], node: int, length: float, rigidity: float) -> None:
    l = length  # noqa: E741
    shape = (
        (12.0, 6 * l, -12.0, 6 * l),
        (6 * l, 4 * l**2, -6 * l, 2 * l**2),
        (-12.0, -6 * l, 12.0, -6 * l),
        (6 * l, 2 * l**2, -6 * l, 4 * l**2),
    )
    for i in range(4):
        for j in range(4):
            rows[2 * node + i][2 * node + j] += rigidity / l**3 * shape[i][j]


def _sweep(rows: list[list[float]], load: list[float]) -> list[float]:
    size = len(load)
    for pivot in range(size):
        for row in range(pivot + 1, min(pivot + _BAND + 1, size)):
            factor = rows[row][pivot] / rows[pivot][pivot]
            if factor:
                for column in range(pivot, min(pivot + _BAND + 1, size)):
                    rows[row][column] -= factor * rows[pivot][column]
                load[row] -= factor * load[pivot]
    found = [0.0] * size
    for row in range(size - 1, -1, -1):
        known = sum(rows[row][c] * found[c] for c in range(row + 1, min(row + _BAND + 1, size)))
        found[row] = (load[row] - known) / rows[row][row]
    return found


def spring_forces(bent: Bent, springs: Sequence[tuple[float, float]]) -> tuple[float, ...]:
    """What each spring carries, N, in the order of `springs`."""
    return tuple(stiffness * bent.drop[_nearest(bent.at, place)] for place, stiffness in springs)


def walked(
    length: float, springs: Sequence[tuple[float, float]], rigidity: float, start: float, end: float
) -> list[tuple[float, float]]:
    """For each spring, the place between `start` and `end` from which a unit load puts most on it, and that share.

    By the reciprocal theorem the share of a spring from a load at x is its stiffness times the drop at x under a unit
    load at the spring, so one solution a spring covers every place exactly.
    """
    found = []
    for place, stiffness in springs:
        at, drop = bend(length, springs, rigidity, [(place, 1.0)]).lowest(start, end)
        found.append((at, stiffness * drop))
    return found
