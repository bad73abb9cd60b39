"""What stands near a box: steel and boards over it, a seat to reach over or under, screws where its cables run."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import inf

from plumbrule.catalogue.rows_electrical import BOX
from plumbrule.facts.board_place import finish, front_edge
from plumbrule.facts.desk import Desk, Input, Missing, Once, least
from plumbrule.facts.electrical_area import box_area
from plumbrule.facts.fastening import Fastening, fastenings
from plumbrule.facts.on_wall import Area, Stood, apart, boards_at, nearest_part, on_it, plates_at
from plumbrule.facts.supports import STEP_HEIGHT, Support
from plumbrule.mechanics.worked import NotPossible
from plumbrule.plan.fixtures import Box
from plumbrule.plan.plan_file import Plan

_WAYS = ("up", "down", "left", "right")


def work_near(desk: Desk, plan: Plan, carried: Sequence[Support], wall_name: str, box: Box, here: str) -> None:
    """Height, what covers it, what one must reach over or under. Needs the plate's sizes."""
    desk.get("height", lambda: _height(desk, plan, wall_name, box, here))
    near = on_it(plan, carried, wall_name)
    desk.set("parts_near", near, here)
    if not near:
        for field in ("over_a_board", "under_a_seat", "beside_a_board"):
            desk.set(field, False, f"/walls/{wall_name}/boxes")
        return

    # What stands at the wall is asked for again and again; it is worked out once.
    boards = Once(BOX, lambda at: boards_at(at, plan, carried, wall_name))
    plates = Once(BOX, lambda at: plates_at(at, carried, wall_name))

    def area() -> Area:
        return box_area(desk, box, here)

    def plate() -> Area:
        box_area(desk, box, here)
        width, height = desk.numbers("plate_width", "plate_height")
        x, y = desk.length(Input(box.centre, f"{here}/centre")), desk.length(Input(box.up, f"{here}/up"))
        return Area(x - width / 2, x + width / 2, y - height / 2, y + height / 2)

    def nearest(of: Callable[[], Area]) -> float:
        """Everything that is wanting is asked for together."""
        wanting: list[str] = []
        for work in (of, lambda: plates.take(desk), lambda: boards.take(desk)):
            try:
                work()
            except Missing as missing:
                wanting.extend(missing.pointers)
        if wanting:
            raise Missing(wanting)
        return nearest_part(plates.take(desk), boards.take(desk), of())

    def stood(beside: Area) -> list[Stood]:
        """The boards that stand out straight above or below."""
        return [one for one in boards.take(desk) if min(one.area.x1, beside.x1) > max(one.area.x0, beside.x0)]

    def under_it(own: bool = True) -> list[Stood]:
        box_at = area()
        return [one for one in stood(box_at) if one.own >= own and one.area.y1 <= (box_at.y0 + box_at.y1) / 2]

    def seats_over_it() -> list[Stood]:
        box_at = area()
        middle = (box_at.y0 + box_at.y1) / 2
        return [one for one in stood(box_at) if one.area.y0 >= middle and one.area.y1 < STEP_HEIGHT]

    def reach(over: list[Stood]) -> float:
        return max(front_edge(desk, one.placed) - finish(desk, plan, wall_name) for one in over)

    def reach_in(over: list[Stood]) -> float:
        """From the front of a seat in to the box. One that lies at this wall with its end only is as deep along it."""
        box_at = area()
        middle, own = (box_at.x0 + box_at.x1) / 2, [one for one in over if one.own]
        ways = [reach(own)] if own else []
        ways += [one.area.x1 - middle if one.area.x0 == 0 else middle - one.area.x0 for one in over if not one.own]
        return max(ways)

    desk.get("clear_of_parts", lambda: nearest(area))
    desk.get("plate_clear_of_parts", lambda: nearest(plate))
    desk.get("over_a_board", lambda: bool(under_it()))
    if not (desk.known("over_a_board") and not desk.true("over_a_board")):
        desk.get("reach_over", lambda: reach(under_it()))
    desk.get("under_a_seat", lambda: bool(seats_over_it()))
    if not (desk.known("under_a_seat") and not desk.true("under_a_seat")):
        desk.get("reach_under", lambda: reach_in(seats_over_it()))
    desk.get("beside_a_board", lambda: bool(stood(plate())))
    if not (desk.known("beside_a_board") and not desk.true("beside_a_board")):

        def plug_room() -> float:
            at = plate()
            return min(max(one.area.y0 - at.y1, at.y0 - one.area.y1) for one in stood(at))

        desk.get("plug_room", plug_room)


def work_cables(desk: Desk, plan: Plan, carried: Sequence[Support], wall_name: str, box: Box, here: str) -> None:
    """How near the screws in the wall come to the way that the cables of the box take inside it."""
    mine = [one for one in carried if one.wall_name == wall_name]
    desk.set("screws_near", bool(mine), *(one.pointer for one in mine))
    known = "not known" not in box.cables_leave
    # An empty list says that no cable leaves the box, which nobody has seen.
    known = known and bool(box.cables_leave)
    desk.set("ways_known", known, f"{here}/cables_leave")
    if not mine:
        return
    said = "" if known else "which way cables leave the box is not known: all four ways are taken"
    ways = Input(tuple(box.cables_leave) if known else _WAYS, f"{here}/cables_leave", said)
    driven = [one for support in mine for one in fastenings(plan, support) if one.in_wall]

    def nearest() -> float:
        box_at = box_area(desk, box, here)
        found = desk.need(ways)
        assert isinstance(found, tuple)
        bands = [_band(box_at, way) for way in found]
        distances = least(desk, driven, lambda at, one: min(apart(_spot(at, one), band) for band in bands))
        if not distances:
            raise NotPossible("no screw of these supports goes into the wall")
        return max(distances[0], 0.0)

    desk.get("screw_off_way", nearest)


def _band(box: Area, way: str) -> Area:
    """The strip of wall, as wide as the box, that its cables may take."""
    if way == "up":
        return Area(box.x0, box.x1, box.y0, inf)
    if way == "down":
        return Area(box.x0, box.x1, -inf, box.y1)
    if way == "left":
        return Area(-inf, box.x1, box.y0, box.y1)
    return Area(box.x0, inf, box.y0, box.y1)


def _spot(desk: Desk, screw: Fastening) -> Area:
    desk.need_all(Input(True, screw.drilling.pointer), screw.drilling.on_wall, screw.height)
    x, y = desk.length(screw.drilling.on_wall), desk.length(screw.height)
    return Area(x, x, y, y)


def _height(desk: Desk, plan: Plan, wall_name: str, box: Box, here: str) -> float:
    wall = (plan.model.walls or {})[wall_name]
    drop = wall.floor_drop
    at = f"/walls/{wall_name}/floor_drop"
    up = Input(box.up, f"{here}/up")
    ends = [Input(drop.left if drop else None, f"{at}/left"), Input(drop.right if drop else None, f"{at}/right")]
    for index, point in enumerate(drop.points if drop else ()):
        ends.append(Input(point.drop, f"{at}/points/{index}/drop"))
    desk.need_all(up, *ends)
    return desk.length(up) + max(desk.length(end) for end in ends)
