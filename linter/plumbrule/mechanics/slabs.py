"""Shapes on a wall cut into slabs between plumb lines: exact area, parts, and smallest width of a piece of panel."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

# Two edges closer than this are one edge, mm.
TIE = 1e-6

Line = tuple[tuple[float, float], ...]


class Slab(NamedTuple):
    """A part between two plumb lines at `x0` and `x1`, mm: its lower and its upper edge at either of them."""

    x0: float
    x1: float
    low0: float
    low1: float
    high0: float
    high1: float


class Rect(NamedTuple):
    """A rectangle on the wall, mm."""

    x0: float
    y0: float
    x1: float
    y1: float


class Chord(NamedTuple):
    """A level stretch from edge to edge of a piece that is the same from `y0` to `y1`, mm."""

    y0: float
    y1: float
    x0: float
    x1: float


def height(line: Line, x: float) -> float:
    """Height at `x` of a line through points in order of x, level beyond its ends, mm. Requires a point."""
    before = line[0]
    if x <= before[0]:
        return before[1]
    for point in line[1:]:
        if x <= point[0]:
            return before[1] + (point[1] - before[1]) * (x - before[0]) / (point[0] - before[0])
        before = point
    return before[1]


def outline(rect: Rect, floor: Line, ceiling: Line, cuts: Iterable[Rect] = ()) -> tuple[Slab, ...]:
    """What is left of a rectangle above a floor line, below a ceiling line and outside the cuts, left to right and
    bottom to top. An empty line does not touch it. Edges run straight between the slab's plumb lines, so that nothing
    is rounded off."""
    x0, y0, x1, y1 = rect
    if x1 - x0 <= TIE or y1 - y0 <= TIE:
        return ()
    near = [cut for cut in cuts if cut.x0 < x1 and x0 < cut.x1 and cut.y0 < y1 and y0 < cut.y1]
    if not near and not floor and not ceiling:
        return (Slab(x0, x1, y0, y0, y1, y1),)
    found: list[Slab] = []
    waiting = sorted(near, reverse=True)
    open_cuts: list[Rect] = []
    for left, right in pairwise(_plumb_lines(rect, floor, ceiling, near)):
        # Cuts come in from the left and go out at the right, so that a slab is not held against all of them.
        open_cuts = [cut for cut in open_cuts if right <= cut.x1 + TIE]
        while waiting and waiting[-1].x0 <= left + TIE:
            if right <= (cut := waiting.pop()).x1 + TIE:
                open_cuts.append(cut)
        low0 = low1 = y0
        high0 = high1 = y1
        if floor:
            at_left, at_right = height(floor, left), height(floor, right)
            if at_left + at_right > low0 + low1:
                low0, low1 = at_left, at_right
        if ceiling:
            at_left, at_right = height(ceiling, left), height(ceiling, right)
            if at_left + at_right < high0 + high1:
                high0, high1 = at_left, at_right
        if high0 + high1 - low0 - low1 <= TIE:
            continue
        # Where floor and ceiling cross, a rounding may turn the end of the slab upside down.
        high0, high1 = max(low0, high0), max(low1, high1)
        spans = [(low0, low1, high0, high1)]
        for cut in open_cuts:
            spans = [part for span in spans for part in _without(span, cut)]
        spans.sort()
        found.extend(Slab(left, right, *span) for span in spans)
    return tuple(found)


def area(slabs: Iterable[Slab]) -> float:
    """Area of a shape in mm²: the slabs lie side by side, each between two straight edges."""
    return math.fsum(
        (slab.x1 - slab.x0) * (slab.high0 - slab.low0 + slab.high1 - slab.low1) / 2 for slab in slabs
    )  # fmt: skip


def parts(slabs: Sequence[Slab]) -> tuple[tuple[Slab, ...], ...]:
    """The pieces that hang together. Two that meet only in a point do not."""
    if len(slabs) < 2:
        return (tuple(slabs),) if slabs else ()
    whose = list(range(len(slabs)))

    def first(index: int) -> int:
        while whose[index] != index:
            index = whose[index]
        return index

    for index, slab in enumerate(slabs):
        for other in range(index):
            before = slabs[other]
            if before.x1 == slab.x0 and min(before.high1, slab.high0) - max(before.low1, slab.low0) > TIE:
                one, two = first(other), first(index)
                whose[max(one, two)] = min(one, two)
    groups: dict[int, list[Slab]] = {}
    for index, slab in enumerate(slabs):
        groups.setdefault(first(index), []).append(slab)
    return tuple(tuple(group) for group in groups.values())


def smallest_width(piece: Sequence[Slab]) -> float:
    """The width of a piece where it is narrowest, mm, necks beside cuts included: the shortest way from edge to edge,
    plumb or level. Level ways that end on a sloping edge are left out, since every wedge has one of no length; the
    plumb way there says how thin it is."""
    plumb = min(min(slab.high0 - slab.low0, slab.high1 - slab.low1) for slab in piece)
    if len(piece) == 1:
        return min(plumb, piece[0].x1 - piece[0].x0)
    return min(plumb, min((chord.x1 - chord.x0 for chord in chords(piece)), default=plumb))


def chords(piece: Sequence[Slab]) -> Iterator[Chord]:
    """The level stretches of a piece between plumb edges, from the bottom up."""
    levels = sorted({level for slab in piece for level in slab[2:]})
    for y0, y1 in pairwise(levels):
        if y1 - y0 <= TIE:
            continue
        middle = (y0 + y1) / 2
        begun: float | None = None
        reached, slanted = -math.inf, False
        for slab in piece:
            at_left, at_right = slab.low0 < middle < slab.high0, slab.low1 < middle < slab.high1
            if not (at_left or at_right):
                continue
            if begun is not None and slab.x0 != reached:
                if not slanted:
                    yield Chord(y0, y1, begun, reached)
                begun = None
            if begun is None:
                begun, slanted = slab.x0, False
            slanted = slanted or not (at_left and at_right)
            reached = slab.x1
        if begun is not None and not slanted:
            yield Chord(y0, y1, begun, reached)


def _without(span: tuple[float, float, float, float], cut: Rect) -> Iterator[tuple[float, float, float, float]]:
    """What a cut leaves of a span: the part below it and the part above. No edge crosses the cut's within the slab."""
    low0, low1, high0, high1 = span
    low, high = (low0 + low1) / 2, (high0 + high1) / 2
    if cut.y0 >= high - TIE or cut.y1 <= low + TIE:
        yield span
        return
    if low < cut.y0 - TIE:
        yield (low0, low1, cut.y0, cut.y0)
    if cut.y1 < high - TIE:
        yield (cut.y1, cut.y1, high0, high1)


def _plumb_lines(rect: Rect, floor: Line, ceiling: Line, cuts: Sequence[Rect]) -> list[float]:
    """Every x at which an edge begins, ends, bends or crosses another, from the left end to the right."""
    x0, y0, x1, y1 = rect
    found = {x0, x1}
    levels = [y0, y1]
    for cut in cuts:
        found.update((cut.x0, cut.x1))
        levels.extend((cut.y0, cut.y1))
    for line in (floor, ceiling):
        for (ax, ay), (bx, by) in pairwise(line):
            if bx <= x0 or x1 <= ax:
                continue
            found.update((ax, bx))
            found.update(
                ax + (level - ay) * (bx - ax) / (by - ay) for level in levels if (ay - level) * (by - level) < 0
            )
    if floor and ceiling:
        for left, right in pairwise(sorted(found)):
            one, two = height(ceiling, left) - height(floor, left), height(ceiling, right) - height(floor, right)
            if one * two < 0:
                found.add(left + (right - left) * one / (one - two))
    lines = [x0]
    for x in sorted(found):
        if x - lines[-1] > TIE and x < x1 - TIE:
            lines.append(x)
    lines.append(x1)
    return lines
