"""A panelled wall as a whole: floor and ceiling, first course, what covers what, and what is at its ends."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_panels import PANEL_END, PANEL_WALL
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.layout import WallLayout
from plumbrule.facts.panels_ground import RunEnd, trims_along
from plumbrule.mechanics.course import Laying, Run
from plumbrule.mechanics.course_edges import cover, floor_gap_most, seen_uncovered
from plumbrule.mechanics.slabs import Line, height
from plumbrule.mechanics.worked import NotPossible, Number, Worked
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan

# A trim of these kinds lies over the edge of the panels and hides it.
_HIDES = ("J", "L", "H", "outside corner", "end cap", "quarter round", "casing", "scribe moulding")
_LAID = (
    "run", "floor_fall", "ceiling_fall", "first_course_least", "first_course_most", "floor_gap_most", "wall_area",
    "panel_area", "gap_area", "cut_out_area", "joint_area", "uncovered", "uncovered_seen", "courses", "pieces",
)  # fmt: skip


def pointer_of(part: PanelField, layout: WallLayout) -> str:
    """Where the wall stands in its field."""
    return f"{layout.pointer}/walls/{part.walls.index(layout.wall_name)}"


def unlaid(desk: Desk, layout: WallLayout, *fields: str) -> None:
    """Fields that hang on a layout which could not be made: what it waits for, or why it cannot be."""

    def lacking() -> float:
        if layout.missing:
            raise Missing(layout.missing)
        raise NotPossible(layout.failed or f"wall {layout.wall_name}: no room is left for panels")

    for field in fields:
        desk.get(field, lacking)


def wall_row(plan: Plan, part: PanelField, layout: WallLayout) -> Row:
    """One panelled wall."""
    at, here = layout.pointer, f"/walls/{layout.wall_name}"
    pointer = pointer_of(part, layout)
    desk = Desk(PANEL_WALL, pointer, pointer, f"wall {layout.wall_name}")
    line = f"{at}/courses/level_line"
    desk.copy("panel_length", Input(part.panel.length, f"{at}/panel/length"))
    desk.copy("panel_height", Input(part.panel.height, f"{at}/panel/height"))
    desk.set("scribed", part.courses.scribed == "first course", f"{at}/courses/scribed")
    desk.copy("level_line", Input(part.courses.level_line, line))
    _floor_trim(desk, plan, layout)
    ground, laying = layout.ground, layout.laying
    if ground is None or ground.run is None or laying is None or not layout.pieces:
        unlaid(desk, layout, *_LAID)
        return desk.row()
    run = ground.run
    floor, ceiling = (f"{here}/floor_drop", f"{at}/gaps/floor"), (f"{here}/ceiling", f"{at}/gaps/ceiling")
    desk.set("run", run.right - run.left, f"{here}/width", f"{at}/gaps/inside_corner")
    low, high = _between(run.floor, run.left, run.right)
    desk.set("floor_fall", high - low, floor[0])
    below, above = _between(run.ceiling, run.left, run.right)
    desk.set("ceiling_fall", above - below, ceiling[0])
    desk.set("first_course_least", laying.level_line - high, line, *floor)
    gap = low - _between(ground.floor, run.left, run.right)[0]
    desk.get("first_course_most", lambda: _needs(desk, layout, laying.level_line, gap - low, gap, (line, *floor)))
    desk.set("floor_gap_most", floor_gap_most(run, laying, ground.floor), line, *floor)
    slabs = [slab for piece in layout.pieces for slab in piece.slabs]
    areas = cover(run, laying, slabs, ground.width, ground.floor, ground.ceiling)
    everything = (line, f"{at}/panel/height", *floor, *ceiling, f"{here}/width")
    for field, value in (("wall_area", areas.wall), ("panel_area", areas.pieces), ("gap_area", areas.gaps),
                         ("cut_out_area", areas.cut_outs), ("joint_area", areas.joints)):  # fmt: skip
        desk.set(field, value, *everything)
    # Less than a thousandth of a square millimetre is what doubles leave of sums this long.
    bare = areas.uncovered if areas.uncovered > 1e-3 else 0.0
    desk.set("uncovered", bare, *everything)
    desk.get("uncovered_seen", lambda: _seen(desk, run, laying, ground.floor, everything) if bare else 0.0)
    desk.set("courses", float(len(layout.courses)), line, f"{at}/panel/height")
    desk.set("pieces", float(len(layout.pieces)), f"{at}/courses")
    return desk.row()


def end_rows(plan: Plan, layout: WallLayout, laid: Sequence[WallLayout]) -> list[Row]:
    """The two ends of the panels on a wall; one row that lacks everything where the wall cannot be laid out."""
    here = f"/walls/{layout.wall_name}"
    ends = layout.ground.ends if layout.ground is not None else ()
    if not ends:
        desk = Desk(PANEL_END, here, here, f"the ends of the panels on {layout.wall_name}")
        unlaid(desk, layout, "meets", "panelled_beyond", "has_trim")
        return [desk.row()]
    return [_end_row(plan, layout, end, laid) for end in ends]


def _end_row(plan: Plan, layout: WallLayout, end: RunEnd, laid: Sequence[WallLayout]) -> Row:
    at = f"/corners/{end.corner}" if end.corner is not None else f"/walls/{layout.wall_name}/ends/{end.side}"
    desk = Desk(PANEL_END, at, at, f"the {end.side} end of the panels on {layout.wall_name}")
    desk.set("meets", end.meets, f"{at}/turn" if end.corner is not None else at)
    desk.set("panelled_beyond", end.beyond is not None, f"{layout.pointer}/walls")
    if end.corner is None:
        return desk.row()
    trims = [(name, (plan.model.trims or {})[name]) for name in end.trims]
    said = Input(None if plan.model.trims is None else bool(trims), "/trims")
    desk.copy("has_trim", said)
    if plan.model.trims is not None:
        desk.set("trim_over_edge", any(trim.kind in _HIDES for _, trim in trims), "/trims")
    if trims:
        covers = [Input(trim.covers, f"/trims/{name}/covers") for name, trim in trims]
        desk.get("trim_covers", lambda: max(desk.length(one) for one in covers))
    other = next((one for one in laid if one.wall_name == end.beyond), None)
    if other is not None:
        _row_step(desk, layout, other)
    return desk.row()


def _row_step(desk: Desk, layout: WallLayout, other: WallLayout) -> None:
    """By how much the courses here miss those round the corner: nothing within one field."""
    lines = [
        Input(one.laying and one.laying.level_line, f"{one.pointer}/courses/level_line") for one in (layout, other)
    ]

    def step() -> float:
        for one in (layout, other):
            if one.missing:
                raise Missing(one.missing)
        mine, theirs = (desk.length(line) for line in lines)
        assert layout.laying is not None and other.laying is not None
        pitch = layout.laying.height + layout.laying.joint
        uneven = abs(pitch - other.laying.height - other.laying.joint)
        off = (mine - theirs) % pitch
        return max(uneven, min(off, pitch - off))

    desk.get("row_step", step)


def _floor_trim(desk: Desk, plan: Plan, layout: WallLayout) -> None:
    trims = list(trims_along(plan, "floor", layout.wall_name))
    desk.copy("has_floor_trim", Input(None if plan.model.trims is None else bool(trims), "/trims"))
    if trims:
        covers = [Input(trim.covers, f"/trims/{name}/covers") for name, trim in trims]
        desk.get("floor_cover", lambda: max(desk.length(one) for one in covers))


def _needs(desk: Desk, layout: WallLayout, line: float, drop: float, gap: float, pointers: tuple[str, ...]) -> Worked:
    """The height that the first course would need at the lowest place of the floor."""
    for pointer in pointers:
        desk.need(Input(True, pointer))
    return Worked(
        "h_1", "height that the first course needs where the floor is lowest", "L + d - g",
        (Number("L", line, "mm"), Number("d", drop, "mm"), Number("g", gap, "mm")), line + drop - gap, "mm",
        "a level line over a falling floor",
    )  # fmt: skip


def _seen(desk: Desk, run: Run, laying: Laying, floor: Line, pointers: tuple[str, ...]) -> float:
    for pointer in pointers:
        desk.need(Input(True, pointer))
    hidden = desk.number("floor_cover") if desk.true("has_floor_trim") else 0.0
    left = seen_uncovered(run, laying, floor, hidden)
    return left if left > 1e-3 else 0.0


def _between(line: Line, left: float, right: float) -> tuple[float, float]:
    """Lowest and highest of a line between two places."""
    heights = [height(line, left), height(line, right), *(y for x, y in line if left < x < right)]
    return min(heights), max(heights)
