"""The panels of a field as they are cut: course by course, wall by wall, and what comes out of which panel."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from plumbrule.facts.layout import CoursePlace, PiecePlace, WallLayout, layouts
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan

# Areas nearer than this are the same, and so is a whole panel's height: a thousandth of a square millimetre is no cut.
_SAME_AREA = 1.0
_SAME = 1e-6


class CutPiece(NamedTuple):
    """One piece: its place in the course from the left, its length along it, which panel it is cut from, its lowest and
    highest point above the datum, and whether anything is cut out of it or off its height."""

    wall: str
    course: int
    place: int
    length: float
    panel: int
    from_offcut: bool
    whole: bool
    low: float
    high: float
    notched: bool


class CutCourse(NamedTuple):
    """One course of one wall: height of its lower and upper edge at either end, mm above the datum."""

    wall: str
    number: int
    bottom: tuple[float, float]
    top: tuple[float, float]
    scribed: bool
    pieces: tuple[CutPiece, ...]


class CutPanel(NamedTuple):
    """One panel that is cut: what comes out of it, and what is left along its length, the cuts not counted."""

    number: int
    pieces: tuple[CutPiece, ...]
    left: float


class PanelSheet(NamedTuple):
    """The cut sheet of one panel field. `missing` are pointers that keep it from being laid out."""

    name: str
    pointer: str
    length: float | None
    height: float | None
    courses: tuple[CutCourse, ...]
    panels: tuple[CutPanel, ...]
    needed: int
    missing: tuple[str, ...]


def panel_sheets(plan: Plan, carried: Sequence[Support]) -> tuple[PanelSheet, ...]:
    """A sheet for each panel field."""
    laid = layouts(plan, carried)
    return tuple(
        _sheet(plan, name, [wall for wall in laid if wall.field_name == name]) for name in plan.model.panels or {}
    )


def _sheet(plan: Plan, name: str, walls: Sequence[WallLayout]) -> PanelSheet:
    field = (plan.model.panels or {})[name]
    scribed = field.courses.scribed == "first course"
    courses = tuple(
        CutCourse(
            wall.wall_name, course.number, (course.bottom_left, course.bottom_right),
            (course.top_left, course.top_right), scribed and course.number == 1,
            tuple(_piece(wall.wall_name, piece, course, field.panel.length)
                  for piece in wall.pieces if piece.course == course.number),
        )
        for wall in walls for course in wall.courses
    )  # fmt: skip
    from_panel: dict[int, list[CutPiece]] = {}
    for course in courses:
        for piece in course.pieces:
            from_panel.setdefault(piece.panel, []).append(piece)
    length = field.panel.length
    panels = tuple(
        CutPanel(number, tuple(sorted(pieces, key=lambda one: -one.length)),
                 (length or 0.0) - sum(piece.length for piece in pieces))
        for number, pieces in sorted(from_panel.items())
        if len(pieces) > 1 or not pieces[0].whole
    )  # fmt: skip
    missing = tuple(dict.fromkeys(pointer for wall in walls for pointer in wall.missing))
    return PanelSheet(
        name, f"/panels/{name}", length, field.panel.height, courses, panels,
        sum(wall.panels_needed for wall in walls), missing,
    )  # fmt: skip


def _piece(wall: str, piece: PiecePlace, course: CoursePlace, panel: float | None) -> CutPiece:
    low = min(min(slab.low0, slab.low1) for slab in piece.slabs)
    high = max(max(slab.high0, slab.high1) for slab in piece.slabs)
    return CutPiece(
        wall, piece.course, piece.index, piece.right - piece.left, piece.panel_number, piece.from_offcut, piece.whole,
        low, high, piece.area < _between(piece, course) - _SAME_AREA,
    )  # fmt: skip


def _between(piece: PiecePlace, course: CoursePlace) -> float:
    """The area of the piece if nothing were cut out of it. Where floor or ceiling cuts a course, its slabs are followed
    one by one, so that the slope makes no difference and a cut-out does."""
    level = abs(course.top_left - course.top_right) < _SAME and abs(course.bottom_left - course.bottom_right) < _SAME
    if level:
        return (piece.right - piece.left) * (course.top_left - course.bottom_left)
    found: dict[tuple[float, float], tuple[float, float, float, float]] = {}
    for slab in piece.slabs:
        low0, low1, high0, high1 = found.get((slab.x0, slab.x1), slab[2:])
        found[slab.x0, slab.x1] = (min(low0, slab.low0), min(low1, slab.low1), max(high0, slab.high0),
                                   max(high1, slab.high1))  # fmt: skip
    return sum((x1 - x0) * (high0 - low0 + high1 - low1) / 2 for (x0, x1), (low0, low1, high0, high1) in found.items())
