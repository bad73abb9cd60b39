"""What a cover plate on a panelled wall comes up against: trim, ceiling, wall ends, openings, other plates."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumbrule.facts.board_place import finish
from plumbrule.facts.corner import ENDS, corner_at
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.electrical_cover import plate_side
from plumbrule.facts.on_wall import Area, apart, fields_on
from plumbrule.facts.panels_ground import trims_along
from plumbrule.mechanics.given import si
from plumbrule.mechanics.slabs import Line, height
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.fixtures import Box
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall


def work_trim(desk: Desk, plan: Plan, wall_name: str, name: str, box: Box, here: str) -> None:
    """The room that its plate has. Needs `panelled` and the plate's sizes; nothing where no panel lies round it."""
    if desk.known("panelled") and desk.true("panelled"):
        desk.get("plate_free", lambda: min(_ways(desk, plan, wall_name, name, box, here)))


def _ways(desk: Desk, plan: Plan, wall_name: str, name: str, box: Box, here: str) -> Iterator[float]:
    wall, at = (plan.model.walls or {})[wall_name], f"/walls/{wall_name}"
    desk.need_all(
        Input(box.centre, f"{here}/centre"), Input(box.up, f"{here}/up"), Input(wall.openings, f"{at}/openings")
    )
    desk.numbers("plate_width", "plate_height")
    width = desk.length(Input(wall.width, f"{at}/width"))
    plate = _area(box, *desk.numbers("plate_width", "plate_height"))
    floor, ceiling = _floor(desk, wall, at, width), _ceiling(desk, wall, at, width)
    yield plate.y0 - max(_over(floor, plate)) - _covers(desk, plan, "floor", wall_name)
    yield min(_over(ceiling, plate)) - _covers(desk, plan, "ceiling", wall_name) - plate.y1
    for end, off in zip(ENDS, (plate.x0, width - plate.x1), strict=True):
        met = corner_at(plan, wall_name, end)
        thick = 0.0
        if met is not None and met.corner.turn == "inside" and met.beyond and fields_on(plan, met.beyond):
            thick = finish(desk, plan, met.beyond)
        yield off - thick
    for key, one in (wall.openings or {}).items():
        sides = [
            Input(getattr(one, side), f"{at}/openings/{key}/{side}") for side in ("left", "width", "bottom", "top")
        ]
        desk.need_all(*sides)
        left, across, bottom, top = (desk.length(side) for side in sides)
        yield apart(plate, Area(left, left + across, bottom, top))
    for other, part in (wall.boxes or {}).items():
        # What is not known of another box keeps its own row from being inspected.
        if other != name and part.centre is not None and part.up is not None and (sizes := _sizes(part)) is not None:
            yield apart(plate, _area(part, *sizes))


def _area(box: Box, width: float, height: float) -> Area:
    x, y = box.centre or 0.0, box.up or 0.0
    return Area(x - width / 2, x + width / 2, y - height / 2, y + height / 2)


def _sizes(box: Box) -> tuple[float, float] | None:
    """The plate of another box, where it is known."""
    try:
        width, height = (si(plate_side(box, side)) for side in ("width", "height"))
    except (Missing, OutsideRulebook):
        return None
    return width, height


def _floor(desk: Desk, wall: Wall, at: str, width: float) -> Line:
    drop, here = wall.floor_drop, f"{at}/floor_drop"
    desk.need(Input(drop, here))
    assert drop is not None
    ends = [desk.length(Input(getattr(drop, end), f"{here}/{end}")) for end in ENDS]
    bends = [
        (desk.length(Input(one.at, f"{here}/points/{index}/at")),
         -desk.length(Input(one.drop, f"{here}/points/{index}/drop")))
        for index, one in enumerate(drop.points)
    ]  # fmt: skip
    return ((0.0, -ends[0]), *bends, (width, -ends[1]))


def _ceiling(desk: Desk, wall: Wall, at: str, width: float) -> Line:
    ceiling, here = wall.ceiling, f"{at}/ceiling"
    desk.need(Input(ceiling, here))
    assert ceiling is not None
    ends = [desk.length(Input(getattr(ceiling, end), f"{here}/{end}")) for end in ENDS]
    bends = [
        (desk.length(Input(one.at, f"{here}/points/{index}/at")),
         desk.length(Input(one.height, f"{here}/points/{index}/height")))
        for index, one in enumerate(ceiling.points)
    ]  # fmt: skip
    return ((0.0, ends[0]), *bends, (width, ends[1]))


def _over(line: Line, plate: Area) -> Sequence[float]:
    """The heights of a line at both sides of the plate and where it bends between them."""
    return [height(line, plate.x0), height(line, plate.x1), *(y for x, y in line if plate.x0 < x < plate.x1)]


def _covers(desk: Desk, plan: Plan, along: str, wall_name: str) -> float:
    """How far the trim there stands up from the floor, or hangs down from the ceiling."""
    found = [Input(trim.covers, f"/trims/{name}/covers") for name, trim in trims_along(plan, along, wall_name)]
    desk.need_all(*found)
    return max((desk.length(one) for one in found), default=0.0)
