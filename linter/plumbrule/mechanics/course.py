"""Courses of panels over one wall: bands from a level line, joints from first pieces, pieces cut to what they meet."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NamedTuple

from plumbrule.mechanics.slabs import TIE, Line, Rect, Slab, area, height, outline, parts, smallest_width
from plumbrule.mechanics.worked import NotPossible

Begin = Literal["left", "right", "centre"]

# More pieces on one wall than anybody would lay: a slip in a measure.
MOST_PIECES = 20_000


class Run(NamedTuple):
    """Where panels may lie on a wall, mm: from `left` to `right`, above `floor` and below `ceiling` with the gaps
    taken off, outside `cuts`."""

    left: float
    right: float
    floor: Line
    ceiling: Line
    cuts: tuple[Rect, ...] = ()


class Laying(NamedTuple):
    """How panels are laid, mm: `level_line` is the top of the first course, `firsts` are the first pieces of the
    courses, bottom up and repeated. Laid from the centre, a first piece says how far the middle panel reaches to the
    right of the centre line. `bottom` is the lower edge of a first course that is not cut to the floor, where it is not
    a whole panel below the level line."""

    length: float
    height: float
    level_line: float
    firsts: tuple[float, ...]
    begin: Begin = "left"
    joint: float = 0.0
    bottom: float | None = None


class Band(NamedTuple):
    """One course: its number from the floor, and between which heights a whole panel would lie."""

    number: int
    bottom: float
    top: float


class Laid(NamedTuple):
    """One piece. `from_left` counts the pieces of its course, `slot` is the place of its panel there, `left` and
    `right` are its own ends."""

    course: int
    from_left: int
    slot: tuple[float, float]
    left: float
    right: float
    slabs: tuple[Slab, ...]
    area: float
    smallest_width: float
    whole: bool


def firsts_of_stagger(length: float, share: float) -> tuple[float, ...]:
    """First pieces that shift each course by a share of a panel: 1/3 of 48 in gives 48, 32, 16 in.

    `share` lies between 0 and 1, both left out. Raises NotPossible.
    """
    if not 0 < share < 1:
        raise NotPossible(f"a stagger of {share:g} of a panel shifts no joint")
    firsts: list[float] = []
    shift = 0.0
    while len(firsts) < 64:
        firsts.append(length * (1 - shift))
        shift = (shift + share) % 1
        if shift < 1e-9 or shift > 1 - 1e-9:
            return tuple(firsts)
    return tuple(firsts)


def bands(run: Run, laying: Laying) -> tuple[Band, ...]:
    """The courses from the floor to the ceiling. The first hangs one panel below the level line and is cut to the
    floor; whatever lies lower than that is not covered. Raises NotPossible where there are too many."""
    _possible(run, laying)
    highest = max(y for _, y in run.ceiling)
    whole = laying.level_line - laying.height
    found = [Band(1, whole if laying.bottom is None else max(whole, laying.bottom), laying.level_line)]
    while found[-1].top + laying.joint < highest - TIE:
        bottom = found[-1].top + laying.joint
        found.append(Band(len(found) + 1, bottom, bottom + laying.height))
        if len(found) > MOST_PIECES:
            raise NotPossible(f"more than {MOST_PIECES:,} courses")
    return tuple(found)


def slots(run: Run, laying: Laying, number: int) -> tuple[tuple[float, float], ...]:
    """Between which ends the panels of a course lie, left to right, the outer ones cut to the run."""
    first = laying.firsts[(number - 1) % len(laying.firsts)]
    if laying.begin == "left":
        start = run.left + first - laying.length
    elif laying.begin == "right":
        start = run.right - first
    else:
        start = (run.left + run.right) / 2 + first - laying.length
    pitch = laying.length + laying.joint
    count = (run.right - run.left) / pitch
    if count > MOST_PIECES:
        raise NotPossible(f"more than {MOST_PIECES:,} panels in a course")
    # From the panel that lies furthest left and still shows.
    step = int((run.left - start) // pitch)
    found: list[tuple[float, float]] = []
    while True:
        left = start + step * pitch
        if left >= run.right - TIE:
            return tuple(found)
        left, right = max(left, run.left), min(left + laying.length, run.right)
        if right - left > TIE:
            found.append((left, right))
        step += 1


def lay(run: Run, laying: Laying) -> tuple[Laid, ...]:
    """Every piece, course by course from the floor, left to right. A panel that a cut parts makes several pieces.
    Raises NotPossible where sizes are not above zero or there are more than 20,000 pieces."""
    found: list[Laid] = []
    floor_top = max(point[1] for point in run.floor)
    ceiling_bottom = min(point[1] for point in run.ceiling)
    whole_area = laying.length * laying.height
    for number, bottom, top in bands(run, laying):
        floor = run.floor if floor_top > bottom + TIE else ()
        ceiling = run.ceiling if ceiling_bottom < top - TIE else ()
        cuts = [cut for cut in run.cuts if cut.y0 < top and bottom < cut.y1]
        index = 0
        for slot in slots(run, laying, number):
            left, right = slot
            for slabs in parts(outline(Rect(left, bottom, right, top), floor, ceiling, cuts)):
                index += 1
                size = area(slabs)
                found.append(
                    Laid(
                        number, index, slot, min(slab.x0 for slab in slabs), max(slab.x1 for slab in slabs), slabs,
                        size, smallest_width(slabs), size >= whole_area * (1 - 1e-9),
                    )
                )  # fmt: skip
        if len(found) > MOST_PIECES:
            raise NotPossible(f"more than {MOST_PIECES:,} pieces on one wall")
    return tuple(found)


def level_bottom(run: Run) -> float:
    """Where the lower edge of a first course lies that stays level: as low as the floor lets it."""
    return max(
        height(run.floor, x) for x in (run.left, run.right, *(x for x, _ in run.floor if run.left < x < run.right))
    )


def joints(pieces: Sequence[Laid], joint: float = 0.0) -> dict[int, tuple[float, ...]]:
    """For each course, where one panel ends and the next begins, mm from the left end of the wall: the middle of the
    joint. An opening or a cut between two panels is no joint."""
    found: dict[int, list[float]] = {}
    for piece in pieces:
        found.setdefault(piece.course, [])
    rights = {(piece.course, round(piece.right, 6)) for piece in pieces if piece.right == piece.slot[1]}
    for piece in pieces:
        if piece.left == piece.slot[0] and (piece.course, round(piece.left - joint, 6)) in rights:
            x = piece.left - joint / 2
            if x not in found[piece.course]:
                found[piece.course].append(x)
    return {course: tuple(sorted(at)) for course, at in found.items()}


def stagger(below: Sequence[float], above: Sequence[float]) -> float | None:
    """The shortest way from a joint to one in the course below, mm. None where either course has no joint."""
    return min((abs(one - other) for one in above for other in below), default=None)


def at_end(run: Run, band: Band, x: float) -> tuple[float, float]:
    """Lower and upper edge of a course at `x`, mm: the band as floor and ceiling leave it, never upside down."""
    low = max(band.bottom, height(run.floor, x))
    return low, max(low, min(band.top, height(run.ceiling, x)))


def _possible(run: Run, laying: Laying) -> None:
    for name, size in (
        ("length", laying.length),
        ("height", laying.height),
        ("width of the wall", run.right - run.left),
    ):
        if not size > 0:
            raise NotPossible(f"the {name} left for panels is not above zero")
    if laying.joint < 0:
        raise NotPossible("a joint is not narrower than nothing")
    if not laying.firsts or any(not 0 < first <= laying.length + TIE for first in laying.firsts):
        raise NotPossible("a first piece is longer than a panel, or nothing")
    if not run.floor or not run.ceiling:
        raise NotPossible("the wall has no floor or no ceiling")
