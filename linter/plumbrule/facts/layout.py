"""The panels of each panelled wall, piece by piece, as they come to lie: worked once, read by several trades."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


class SlabPlace(NamedTuple):
    """A part of a piece between two plumb lines, mm on the wall: its lower and upper edge at either line."""

    x0: float
    x1: float
    low0: float
    low1: float
    high0: float
    high1: float


class CoursePlace(NamedTuple):
    """One course of a wall, counted from the floor: heights in mm above the datum at the ends of the run."""

    number: int
    bottom_left: float
    bottom_right: float
    top_left: float
    top_right: float


@dataclass(frozen=True, slots=True)
class PiecePlace:
    """One piece of panel. `course` and `index` count from 1, from the floor and from the left.

    `left` and `right` are the ends of the piece in mm from the left end of the wall, `slabs` its exact shape with
    everything cut out of it. `whole` is an uncut panel. `panel_number` counts the panels of the field, over all its
    walls; `from_offcut` says that another piece was cut from that panel before.
    """

    course: int
    index: int
    left: float
    right: float
    slabs: tuple[SlabPlace, ...]
    area: float
    smallest_width: float
    whole: bool
    from_offcut: bool
    panel_number: int


@dataclass(frozen=True, slots=True)
class WallLayout:
    """One wall of one panel field. What keeps it from being laid stands in `missing`: then it has no pieces.

    `face_thickness` is panel and adhesive, mm. `panels_needed` are the panels that are begun on this wall: the sum
    over the walls of a field is what the field takes. `edges` is the length of joint in mm where panels run against
    something: `ceiling`, `floor`, `inside corner`, `outside corner`, `opening`, `open end`.
    """

    field_name: str
    wall_name: str
    pointer: str
    missing: tuple[str, ...] = ()
    face_thickness: float | None = None
    courses: tuple[CoursePlace, ...] = ()
    pieces: tuple[PiecePlace, ...] = ()
    panels_needed: int = 0
    edges: Mapping[str, float] = field(default_factory=dict)


def layouts(plan: Plan, carried: Sequence[Support]) -> tuple[WallLayout, ...]:
    """One layout for each panel field and wall, in the order of laying. Worked once for a plan."""
    return ()


def panel_over(layout: WallLayout, x0: float, x1: float, y0: float, y1: float) -> bool:
    """Whether a panel lies over any part of the rectangle: `x` in mm from the left end of the wall, `y` above the
    datum."""
    return any(_covers(piece, x0, x1, y0, y1) for piece in layout.pieces if piece.left < x1 and x0 < piece.right)


def _covers(piece: PiecePlace, x0: float, x1: float, y0: float, y1: float) -> bool:
    return any(
        slab.x0 < x1 and x0 < slab.x1 and min(slab.low0, slab.low1) < y1 and y0 < max(slab.high0, slab.high1)
        for slab in piece.slabs
    )
