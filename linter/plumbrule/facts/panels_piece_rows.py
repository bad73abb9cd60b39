"""Courses and pieces: how tall, how far their joints stand apart, how narrow, how heavy, held by how much adhesive."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_panels import COURSE, PIECE
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.layout import CoursePlace, PiecePlace, WallLayout
from plumbrule.facts.panels_cuts import Cut
from plumbrule.facts.panels_wall_rows import pointer_of, unlaid
from plumbrule.mechanics.bonding import bond_shear
from plumbrule.mechanics.course import Run, stagger
from plumbrule.mechanics.panel_glue import Covers, glued_area, sure_lines, weight
from plumbrule.mechanics.slabs import TIE, height
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.plan.panels import PanelField

_CLIPS = "How clips or battens hold a panel is not published in general: ask for the data sheet of its maker."
_COURSE = (
    "number", "first", "top", "cut_to_floor", "cut_to_ceiling", "height_left", "height_right", "height_least",
    "height_share", "pieces", "joints", "over_joints", "stagger", "stagger_share",
)  # fmt: skip
_PIECE = (
    "course", "number", "length", "smallest_width", "area", "whole", "from_offcut", "panel", "notched", "end_piece",
    "end_length", "end_share", "mass", "glued_in_lines", "has_glue", "glued_area", "glue_lines", "glue_stress",
)  # fmt: skip


def course_rows(part: PanelField, layout: WallLayout) -> list[Row]:
    """Every course of a wall; one row that lacks everything where the wall cannot be laid out."""
    pointer = pointer_of(part, layout)
    if layout.laying is None or layout.ground is None or layout.ground.run is None or not layout.pieces:
        desk = Desk(COURSE, pointer, pointer, f"the courses on {layout.wall_name}")
        desk.copy("panel_height", Input(part.panel.height, f"{layout.pointer}/panel/height"))
        unlaid(desk, layout, *_COURSE)
        return [desk.row()]
    run = layout.ground.run
    found: list[Row] = []
    count: dict[int, int] = {}
    for piece in layout.pieces:
        count[piece.course] = count.get(piece.course, 0) + 1
    below: tuple[float, ...] = ()
    for place in layout.courses:
        joints = layout.joints.get(place.number, ())
        found.append(_course_row(part, layout, run, place, joints, below, count.get(place.number, 0), pointer))
        below = joints
    return found


def piece_rows(part: PanelField, layout: WallLayout) -> list[Row]:
    """Every piece of a wall; one row that lacks everything where the wall cannot be laid out."""
    pointer = pointer_of(part, layout)
    if layout.laying is None or layout.ground is None or layout.ground.run is None or not layout.pieces:
        desk = Desk(PIECE, pointer, pointer, f"the pieces on {layout.wall_name}")
        unlaid(desk, layout, *_PIECE)
        return [desk.row()]
    run, cuts = layout.ground.run, layout.ground.cuts
    glue = _Glue(part, layout)
    spaces = [run.left, run.right, *(x for cut in cuts if cut.kind == "opening" for x in (cut.rect.x0, cut.rect.x1))]
    length = layout.laying.length
    panel, line = f"{layout.pointer}/panel/length", f"{layout.pointer}/courses/level_line"
    wide = f"/walls/{layout.wall_name}/width"
    found: list[Row] = []
    course, near = 0, cuts
    for piece in layout.pieces:
        if piece.course != course:
            course = piece.course
            top = layout.laying.level_line + (course - 1) * (layout.laying.height + layout.laying.joint)
            low = top - layout.laying.height
            near = tuple(cut for cut in cuts if cut.rect.y0 <= top + TIE and low - TIE <= cut.rect.y1)
        label = f"course {piece.course} piece {piece.index} on {layout.wall_name}"
        desk = Desk(PIECE, pointer, pointer, label)
        first = first_piece_pointer(part, layout, piece.course)
        along = (first, panel, wide)
        desk.set("course", float(piece.course))
        desk.set("number", float(piece.index))
        desk.set("length", piece.right - piece.left, *along)
        desk.set("smallest_width", piece.smallest_width, line, *along)
        desk.set("area", piece.area, line, *along)
        desk.set("whole", piece.whole, *along)
        desk.set("from_offcut", piece.from_offcut, *along)
        desk.set("panel", float(piece.panel_number), *along)
        desk.set("notched", len(piece.slabs) > 1 or _is_cut(piece, near), *along)
        at_end = _ends_by_choice(layout, piece, spaces)
        desk.set("end_piece", at_end, *along)
        if at_end:
            desk.set("end_length", piece.right - piece.left, *along)
            desk.set("end_share", (piece.right - piece.left) / length, *along)
        glue.work(desk, piece)
        found.append(desk.row())
    return found


def first_piece_pointer(part: PanelField, layout: WallLayout, course: int) -> str:
    """What a carpenter would change to move the joints of that course."""
    at = f"{layout.pointer}/courses"
    firsts = (part.courses.starters or {}).get(layout.wall_name)
    if firsts:
        return f"{at}/starters/{layout.wall_name}/{(course - 1) % len(firsts)}"
    return f"{at}/stagger" if part.courses.stagger is not None else f"{at}/starters"


def _course_row(
    part: PanelField, layout: WallLayout, run: Run, place: CoursePlace, joints: tuple[float, ...],
    below: tuple[float, ...], pieces: int, pointer: str,
) -> Row:  # fmt: skip
    assert layout.laying is not None
    desk = Desk(COURSE, pointer, pointer, f"course {place.number} on {layout.wall_name}")
    at, here = layout.pointer, f"/walls/{layout.wall_name}"
    tall = layout.laying.height
    line, whole = f"{at}/courses/level_line", f"{at}/panel/height"
    top = layout.laying.level_line + (place.number - 1) * (tall + layout.laying.joint)
    bottom = top - tall
    if place.number == 1 and layout.laying.bottom is not None:
        bottom = max(bottom, layout.laying.bottom)
    floor = max(y for _, y in run.floor) > bottom + TIE
    ceiling = min(y for _, y in run.ceiling) < top - TIE
    up = (line, whole, *((f"{here}/floor_drop",) if floor else ()), *((f"{here}/ceiling",) if ceiling else ()))
    desk.set("number", float(place.number))
    desk.set("first", place.number == 1, *up)
    desk.set("top", place.number == len(layout.courses), *up)
    desk.set("cut_to_floor", floor, *up)
    desk.set("cut_to_ceiling", ceiling, *up)
    desk.set("height_left", place.top_left - place.bottom_left, *up)
    desk.set("height_right", place.top_right - place.bottom_right, *up)
    least = _least_height(run, bottom, top) if floor or ceiling else top - bottom
    desk.set("height_least", least, *up)
    desk.set("panel_height", tall, whole)
    desk.set("height_share", least / tall, *up)
    first = first_piece_pointer(part, layout, place.number)
    desk.set("pieces", float(pieces), first)
    desk.set("joints", float(len(joints)), first)
    apart = stagger(below, joints)
    desk.set("over_joints", apart is not None, first)
    if apart is not None:
        desk.set("stagger", apart, first, f"{at}/panel/length")
        desk.set("stagger_share", apart / layout.laying.length, first, f"{at}/panel/length")
    return desk.row()


def _least_height(run: Run, bottom: float, top: float) -> float:
    """The least height of a band between floor and ceiling: between two bends it is least at one of them."""
    places = {run.left, run.right, *(x for x, _ in (*run.floor, *run.ceiling) if run.left < x < run.right)}
    return min(max(0.0, min(top, height(run.ceiling, x)) - max(bottom, height(run.floor, x))) for x in places)


def _ends_by_choice(layout: WallLayout, piece: PiecePlace, spaces: list[float]) -> bool:
    """Whether a piece is cut to length at an end or an opening, with a neighbour beyond its other end: a longer first
    piece would have made it longer. A piece that fills its space alone is as long as that space."""
    left, right = (any(abs(x - end) <= TIE for x in spaces) for end in (piece.left, piece.right))
    return left != right and not piece.whole


def _is_cut(piece: PiecePlace, cuts: Sequence[Cut]) -> bool:
    slab = piece.slabs[0]
    low, high = max(slab.low0, slab.low1), min(slab.high0, slab.high1)
    return any(
        cut.rect.x0 < piece.right - TIE and piece.left + TIE < cut.rect.x1
        and (abs(cut.rect.y0 - high) <= TIE or abs(cut.rect.y1 - low) <= TIE)
        for cut in cuts
    )  # fmt: skip


class _Glue:
    """Weight and adhesive of one piece after another. Pieces of one size are worked once."""

    def __init__(self, part: PanelField, layout: WallLayout) -> None:
        at = f"{layout.pointer}/adhesive"
        glue = part.adhesive
        self._kind = Input(glue.kind if glue else None, f"{at}/kind" if glue else at)
        self._covers = Input(glue.covers if glue else None, f"{at}/covers" if glue else at)
        self._width = Input(glue.width if glue else None, f"{at}/width")
        self._spacing = Input(glue.spacing if glue else None, f"{at}/spacing")
        self._density = Input(part.panel.density, f"{layout.pointer}/panel/density")
        self._thickness = Input(part.panel.thickness, f"{layout.pointer}/panel/thickness")
        self._masses: dict[float, Worked] = {}
        self._stresses: dict[tuple[float, float], Worked] = {}

    def work(self, desk: Desk, piece: PiecePlace) -> None:
        """The fields about weight and adhesive of one piece."""
        desk.get("mass", lambda: self._mass(desk, piece))
        desk.get("glued_in_lines", lambda: self._in_lines(desk))
        desk.get("glued_area", lambda: self._area(desk, piece))
        desk.get("has_glue", lambda: desk.number("glued_area") > 0)
        if not desk.known("glued_in_lines") or desk.true("glued_in_lines"):
            desk.get("glue_lines", lambda: self._lines(desk, piece))
        if not desk.known("has_glue") or desk.true("has_glue"):
            desk.get("glue_stress", lambda: self._stress(desk, piece))

    def _mass(self, desk: Desk, piece: PiecePlace) -> Worked:
        desk.need_all(self._thickness, self._density)
        if piece.area not in self._masses:
            thickness, density = desk.length(self._thickness), desk.length(self._density)
            self._masses[piece.area] = weight(piece.area, thickness, density)
        return self._masses[piece.area]

    def _in_lines(self, desk: Desk) -> bool:
        if desk.word(self._kind) == "none":
            raise OutsideRulebook(_CLIPS)
        lines = desk.word(self._covers) != "whole back"
        if lines:
            desk.need_all(self._width, self._spacing)
        return lines

    def _area(self, desk: Desk, piece: PiecePlace) -> float:
        if not desk.true("glued_in_lines"):
            return piece.area
        how: Covers = "dabs" if desk.word(self._covers) == "dabs" else "strips"
        width, spacing = desk.length(self._width), desk.length(self._spacing)
        return glued_area(piece.area, piece.right - piece.left, how, width, spacing)

    def _lines(self, desk: Desk, piece: PiecePlace) -> float:
        desk.true("glued_in_lines")
        return sure_lines(piece.right - piece.left, desk.length(self._width), desk.length(self._spacing))

    def _stress(self, desk: Desk, piece: PiecePlace) -> Worked:
        mass, area = desk.number("mass"), desk.number("glued_area")
        if (mass, area) not in self._stresses:
            self._stresses[mass, area] = bond_shear(mass, area)
        return self._stresses[mass, area]
