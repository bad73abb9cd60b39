"""The panels of each panelled wall, piece by piece, as they come to lie: worked once, read by several trades."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from plumbrule.facts.panels_cuts import Wanted, face
from plumbrule.facts.panels_ground import Ground, ground
from plumbrule.facts.supports import Support
from plumbrule.mechanics import course
from plumbrule.mechanics.course import Laid, Laying
from plumbrule.mechanics.course_edges import edges
from plumbrule.mechanics.panel_stock import Keeps, Piece, cut_from_panels
from plumbrule.mechanics.slabs import TIE, Slab
from plumbrule.mechanics.worked import NotPossible
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan

SlabPlace = Slab

# What a saw takes from a panel at each cut, mm: 1/8 in, a wide blade (from memory). A knife takes none.
KERF = 3.175
_SHARES = {"1/2": 1 / 2, "1/3": 1 / 3, "1/4": 1 / 4}


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
    """One wall of one panel field. What keeps it from being laid stands in `missing`, or why it cannot be in `failed`:
    then it has no pieces.

    `face_thickness` is panel and adhesive, mm. `panels_needed` are the panels that are begun on this wall: the sum
    over the walls of a field is what the field takes; `least_needed` is, on the first wall of a field, the fewest that
    the whole field could take, however it is cut. `edges` is the length of joint in mm where panels run against
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
    failed: str = ""
    least_needed: int = 0
    ground: Ground | None = None
    laying: Laying | None = None
    joints: Mapping[int, tuple[float, ...]] = field(default_factory=dict)


# An end of a run that is none of these is the casing or the side of something: panels stop there as at an opening.
_KINDS = ("inside corner", "outside corner", "open end")


class _Wall(NamedTuple):
    """A wall on the way to its layout."""

    name: str
    missing: tuple[str, ...]
    failed: str
    ground: Ground
    laying: Laying | None
    pieces: tuple[Laid, ...]


def layouts(plan: Plan, carried: Sequence[Support]) -> tuple[WallLayout, ...]:
    """One layout for each panel field and wall, in the order of laying. Worked once for a plan."""
    key = "panel layouts"
    if key not in plan.reckoned:
        plan.reckoned[key] = tuple(
            one for name, part in (plan.model.panels or {}).items() for one in _field(plan, carried, name, part)
        )
    found: tuple[WallLayout, ...] = plan.reckoned[key]
    return found


def panel_over(layout: WallLayout, x0: float, x1: float, y0: float, y1: float) -> bool:
    """Whether a panel lies over any part of the rectangle: `x` in mm from the left end of the wall, `y` above the
    datum."""
    return any(_covers(piece, x0, x1, y0, y1) for piece in layout.pieces if piece.left < x1 and x0 < piece.right)


def _covers(piece: PiecePlace, x0: float, x1: float, y0: float, y1: float) -> bool:
    return any(
        slab.x0 < x1 and x0 < slab.x1 and min(slab.low0, slab.low1) < y1 and y0 < max(slab.high0, slab.high1)
        for slab in piece.slabs
    )


def _field(plan: Plan, carried: Sequence[Support], name: str, part: PanelField) -> tuple[WallLayout, ...]:
    walls: list[_Wall] = []
    for wall_name in part.walls:
        walls.append(_lay(plan, carried, name, part, wall_name, walls))
    orders: list[Piece] = []
    items: list[tuple[int, ...]] = []
    for wall in walls:
        orders_here, items_here = _orders(wall, part.panel.edges != "square", len(orders))
        orders.extend(orders_here)
        items.append(items_here)
    length = part.panel.length or 0.0
    cutting = cut_from_panels(orders, length, KERF) if orders else None
    panels = cutting.panels if cutting else ()
    least = _least(cutting.least if cutting else 0, walls, part)
    first_cut = {panel: index for index, panel in reversed(list(enumerate(panels)))}
    thick = Wanted()
    face_thickness = face(thick, name, part)
    found: list[WallLayout] = []
    for wall, order_of in zip(walls, items, strict=True):
        known = None if thick.pointers else face_thickness
        if wall.laying is None or wall.ground.run is None or not wall.pieces:
            found.append(
                WallLayout(
                    name, wall.name, f"/panels/{name}", wall.missing, known, failed=wall.failed, ground=wall.ground
                )
            )
            continue
        pieces = tuple(
            PiecePlace(
                one.course, one.from_left, one.left, one.right, one.slabs, one.area, one.smallest_width, one.whole,
                first_cut[panels[order]] != order, panels[order],
            )
            for one, order in zip(wall.pieces, order_of, strict=True)
        )  # fmt: skip
        begun = {piece.panel_number for piece in pieces if not piece.from_offcut}
        ends = {end.side: "open end" if end.meets == "open" else end.meets for end in wall.ground.ends}
        ends = {side: what if what in _KINDS else "opening" for side, what in ends.items()}
        openings = [cut.rect for cut in wall.ground.cuts if cut.kind == "opening"]
        found.append(
            WallLayout(
                name, wall.name, f"/panels/{name}", (), known, _courses(wall), pieces, len(begun),
                edges(wall.ground.run, openings, ends["left"], ends["right"]), "", 0 if found else least,
                wall.ground, wall.laying, course.joints(wall.pieces, wall.laying.joint),
            )
        )  # fmt: skip
    return tuple(found)


def _least(by_length: int, walls: Sequence[_Wall], part: PanelField) -> int:
    """The fewest panels that the field could take, by the length of its pieces and by their area."""
    whole = (part.panel.length or 0.0) * (part.panel.height or 0.0)
    covered = math.fsum(one.area for wall in walls for one in wall.pieces)
    return max(by_length, math.ceil(covered / whole - 1e-9)) if whole else by_length


def _lay(
    plan: Plan, carried: Sequence[Support], name: str, part: PanelField, wall_name: str, before: Sequence[_Wall]
) -> _Wall:
    found = ground(plan, carried, name, part, wall_name)
    at = f"/panels/{name}"
    wanted = Wanted()
    length = wanted.take(part.panel.length, f"{at}/panel/length")
    height = wanted.take(part.panel.height, f"{at}/panel/height")
    line = wanted.take(part.courses.level_line, f"{at}/courses/level_line")
    joint = wanted.take(part.gaps.joints, f"{at}/gaps/joints")
    firsts = _firsts(wanted, plan, name, part, wall_name, length, before)
    missing = tuple(dict.fromkeys((*found.wanted, *wanted.pointers)))
    if missing or found.run is None:
        return _Wall(wall_name, missing, "", found, None, ())
    level = course.level_bottom(found.run) if part.courses.scribed == "none" else None
    laying = Laying(length, height, line, firsts, part.courses.from_, joint, level)
    try:
        return _Wall(wall_name, (), "", found, laying, course.lay(found.run, laying))
    except NotPossible as error:
        return _Wall(wall_name, (), f"wall {wall_name}: {error}", found, None, ())


def _firsts(
    wanted: Wanted, plan: Plan, name: str, part: PanelField, wall_name: str, length: float, before: Sequence[_Wall]
) -> tuple[float, ...]:
    """The first pieces of the courses of a wall. Where none are written for it, its rows go on round the corner with
    what is left of the last panel there."""
    at = f"/panels/{name}/courses"
    if part.courses.stagger is not None:
        firsts = course.firsts_of_stagger(length or 1.0, _SHARES[part.courses.stagger])
        middle = part.courses.from_ == "centre"
        # From the centre, the first course has a panel in the middle.
        return tuple((first - length / 2) % length or length for first in firsts) if middle and length else firsts
    starters = part.courses.starters or {}
    if wall_name in starters:
        return tuple(
            wanted.take(first, f"{at}/starters/{wall_name}/{index}") for index, first in enumerate(starters[wall_name])
        )
    side = {"left": "right", "right": "left"}.get(part.courses.from_)
    for wall in before:
        for end in wall.ground.ends:
            if end.side == side and end.beyond == wall_name and wall.pieces:
                last = {one.course: one for one in (wall.pieces if side == "right" else wall.pieces[::-1])}
                return tuple(_rest(length, one.slot[1] - one.slot[0]) for _, one in sorted(last.items()))
    wanted.take(None, f"{at}/starters/{wall_name}")
    return ()


def _rest(length: float, last: float) -> float:
    """What a saw leaves of the panel that the last piece was cut from, or a whole one where it leaves nothing."""
    rest = length - last - KERF
    return rest if rest > TIE else length


def _orders(wall: _Wall, profiled: bool, begun: int) -> tuple[list[Piece], tuple[int, ...]]:
    """What is cut for a wall, and for each of its pieces which order it belongs to, counted on from `begun`. Strips of
    one panel that lie above each other are one order: they are cut from it as they lie."""
    pieces, run = wall.pieces, wall.ground.run
    reach: list[list[float]] = []
    whose = [0] * len(pieces)
    last: tuple[int, tuple[float, float]] | None = None
    slots: list[tuple[float, float]] = []
    for index in sorted(range(len(pieces)), key=lambda index: (pieces[index].course, pieces[index].left)):
        one = pieces[index]
        if last == (one.course, one.slot) and one.left < reach[-1][1] - TIE:
            reach[-1][1] = max(reach[-1][1], one.right)
        else:
            last = (one.course, one.slot)
            reach.append([one.left, one.right])
            slots.append(one.slot)
        whose[index] = begun + len(reach) - 1
    orders: list[Piece] = []
    for (left, right), slot in zip(reach, slots, strict=True):
        keeps: Keeps = "none"
        if profiled and run is not None:
            at_left = left == slot[0] and left > run.left + TIE
            at_right = right == slot[1] and right < run.right - TIE
            keeps = "both" if at_left and at_right else "left" if at_left else "right" if at_right else "none"
        orders.append(Piece(right - left, keeps))
    return orders, tuple(whose)


def _courses(wall: _Wall) -> tuple[CoursePlace, ...]:
    """The courses at the ends of the run, as floor and ceiling leave them."""
    run, laying = wall.ground.run, wall.laying
    assert run is not None and laying is not None
    found = []
    for band in course.bands(run, laying):
        (low_left, high_left), (low_right, high_right) = (course.at_end(run, band, x) for x in (run.left, run.right))
        found.append(CoursePlace(band.number, low_left, low_right, high_left, high_right))
    return tuple(found)
