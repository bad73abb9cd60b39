"""What is put on a wall, as rectangles seen from the room: steel, cleats, the edges of boards, panels."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import hypot
from typing import NamedTuple, TypeVar

from plumbrule.facts.board_place import Placed, front_edge, left_end, walled_ends
from plumbrule.facts.board_screws import placed_boards
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.layout import WallLayout, layouts, panel_over
from plumbrule.facts.supports import Support
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan

T = TypeVar("T")
# Beyond the room left round a box its panel begins: looked for this far out.
_ASIDE = 6.35


class Area(NamedTuple):
    """A rectangle on a wall, mm: from the left end of the wall, and above the datum."""

    x0: float
    x1: float
    y0: float
    y1: float

    def grown(self, by: float) -> Area:
        """The same with `by` mm more on every side."""
        return Area(self.x0 - by, self.x1 + by, self.y0 - by, self.y1 + by)


class Stood(NamedTuple):
    """A board at a wall: its edge there, and how far its front stands out of the lining of that wall. `own` is false
    for the wall round a corner that only its end lies at."""

    placed: Placed
    area: Area
    own: bool


def apart(one: Area, other: Area) -> float:
    """The way from one to the other, mm; below zero, how deep they overlap."""
    across = max(one.x0 - other.x1, other.x0 - one.x1)
    up = max(one.y0 - other.y1, other.y0 - one.y1)
    return hypot(across, up) if across > 0 and up > 0 else max(across, up)


def plate(desk: Desk, support: Support) -> Area:
    """The part of a support that lies flat on its wall. Raises Missing."""
    up = support.kind != "cleat" and support.wall_leg == "up"
    desk.need_all(
        support.left, support.length, support.bears_at, support.wall_leg_size, *([support.thickness] if up else [])
    )
    left, bears, size = (desk.length(one) for one in (support.left, support.bears_at, support.wall_leg_size))
    low = bears - desk.length(support.thickness) if up else bears - size
    return Area(left, left + desk.length(support.length), low, low + size)


def boards_at(desk: Desk, plan: Plan, carried: Sequence[Support], wall: str) -> list[Stood]:
    """Every board whose back or end lies at the wall. Raises Missing, and OutsideRulebook in a corner that is not
    square."""
    found: list[Stood] = []
    wanting: list[str] = []
    for placed in placed_boards(plan, carried).values():
        try:
            if placed.board.wall == wall:
                found.append(_own(desk, placed))
            else:
                found.extend(_round_the_corner(desk, placed, wall))
        except Missing as missing:
            wanting.extend(missing.pointers)
    if wanting:
        raise Missing(wanting)
    return found


def on_it(plan: Plan, carried: Sequence[Support], wall: str) -> bool:
    """Whether steel, a cleat or a board is put on the wall, or lies at it with an end."""
    return any(one.wall_name == wall for one in carried) or any(
        placed.board.wall == wall or any(met.beyond == wall for met in walled_ends(placed).values())
        for placed in placed_boards(plan, carried).values()
    )


def nearest_part(plates: Sequence[Area], boards: Sequence[Stood], area: Area) -> float:
    """From the area to the nearest steel, cleat or board edge on its wall, mm; below zero it is behind it."""
    return min([*(apart(area, one) for one in plates), *(apart(area, one.area) for one in boards)])


def plates_at(desk: Desk, carried: Sequence[Support], wall: str) -> list[Area]:
    """What lies flat on the wall. Raises one Missing that names everything wanting."""
    found: list[Area] = []
    wanting: list[str] = []
    for one in carried:
        if one.wall_name == wall:
            try:
                found.append(plate(desk, one))
            except Missing as missing:
                wanting.extend(missing.pointers)
    if wanting:
        raise Missing(wanting)
    return found


def fields_on(plan: Plan, wall: str) -> tuple[tuple[str, PanelField], ...]:
    """The panel fields that cover the wall."""
    return tuple((name, field) for name, field in (plan.model.panels or {}).items() if wall in field.walls)


def panels_over(plan: Plan, carried: Sequence[Support], wall: str, area: Area) -> tuple[str, ...]:
    """The panel fields that lie over any part of the area. A wall whose panels could not be laid out counts as covered
    all over: that is the worse case."""
    laid = {one.field_name: one for one in layouts(plan, carried) if one.wall_name == wall}
    return tuple(name for name, _ in fields_on(plan, wall) if _over(laid.get(name), area))


def panels_round(plan: Plan, carried: Sequence[Support], wall: str, area: Area) -> tuple[str, ...]:
    """The panel fields that lie round the area, whatever is cut out for it."""
    room = [field.cut_outs.box or 0.0 for _, field in fields_on(plan, wall)]
    return panels_over(plan, carried, wall, area.grown(max(room, default=0.0) + _ASIDE))


def to_panels(plan: Plan, carried: Sequence[Support], wall: str, field: str, area: Area) -> float:
    """From the area to the nearest panel of the field on its wall, mm; nothing where one lies over it or where the
    panels could not be laid out."""
    for laid in layouts(plan, carried):
        if laid.wall_name == wall and laid.field_name == field and laid.pieces:
            slabs = (slab for piece in laid.pieces for slab in piece.slabs)
            ways = (apart(area, Area(s.x0, s.x1, min(s.low0, s.low1), max(s.high0, s.high1))) for s in slabs)
            return max(min(ways), 0.0)
    return 0.0


def _over(laid: WallLayout | None, area: Area) -> bool:
    return laid is None or not laid.pieces or panel_over(laid, area.x0, area.x1, area.y0, area.y1)


def _heights(desk: Desk, placed: Placed) -> tuple[float, float]:
    bears = [one.bears_at for one in placed.supports]
    if not bears:
        raise Missing([f"{placed.here}/bears_on"])
    desk.need_all(*bears, placed.of("thickness"))
    low = max(desk.length(height) for height in bears)
    return low, low + desk.length(placed.of("thickness"))


def _own(desk: Desk, placed: Placed) -> Stood:
    low, high = _heights(desk, placed)
    desk.need(placed.of("length"))
    begins = left_end(desk, placed)
    return Stood(placed, Area(begins, begins + desk.length(placed.of("length")), low, high), own=True)


def _round_the_corner(desk: Desk, placed: Placed, wall: str) -> Iterable[Stood]:
    for end, met in walled_ends(placed).items():
        if met.beyond != wall:
            continue
        low, high = _heights(desk, placed)
        desk.need(placed.of("depth"))
        front = front_edge(desk, placed)
        if end == "right":
            yield Stood(placed, Area(0.0, front, low, high), own=False)
        else:
            part = (placed.plan.model.walls or {}).get(wall)
            width = Input(part.width if part else None, f"/walls/{wall}/width")
            desk.need(width)
            yield Stood(placed, Area(desk.length(width) - front, desk.length(width), low, high), own=False)
