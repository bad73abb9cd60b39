"""Rows of the room as a whole: its corners, how far its measures agree, and what must go in between its walls."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_room import CORNER, NICHE, ROOM
from plumbrule.facts.board_place import Placed, front_edge, walled_ends
from plumbrule.facts.board_screws import placed_boards
from plumbrule.facts.corner import corner_at
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.on_wall import fields_on
from plumbrule.facts.room_ends import board_ends, steel_ends
from plumbrule.facts.supports import Support
from plumbrule.mechanics.room import closing_gap, niche_narrows, turned_too_far
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import BothEnds, Corner


def room_fit_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind."""
    corners = plan.model.corners or {}
    placed = placed_boards(plan, carried)
    return {
        "corner": tuple(_corner(plan, carried, placed, name, corner) for name, corner in corners.items()),
        "room": tuple(_room(plan, names) for names in _rounds(corners)),
        "niche": tuple(_niches(plan, placed)),
        "board_end": board_ends(plan, placed),
        "steel_end": steel_ends(plan, carried),
    }


def _corner(plan: Plan, carried: Sequence[Support], placed: Mapping[str, Placed], name: str, corner: Corner) -> Row:
    here = f"/corners/{name}"
    desk = Desk(CORNER, here, here, f"corner {name}")
    desk.set("turn", corner.turn, f"{here}/turn")
    desk.copy("angle", _angle(plan, name, corner))
    desk.set("angle_measured", plan.is_written(f"{here}/angle"), f"{here}/angle")
    desk.set("fits_something", _fits_something(plan, carried, placed, corner), here)
    before, after = corner.from_, corner.to
    walls = plan.model.walls or {}
    desk.set("two_walls", before is not None and after is not None, here)
    if before is not None and after is not None:
        floors = walls[before].floor_drop, walls[after].floor_drop
        ceilings = walls[before].ceiling, walls[after].ceiling
        desk.get("floor_difference", lambda: _apart(desk, *_both(floors, before, after, "floor_drop")))
        desk.get("ceiling_difference", lambda: _apart(desk, *_both(ceilings, before, after, "ceiling")))
    return desk.row()


def _both(ends: tuple[BothEnds | None, BothEnds | None], before: str, after: str, key: str) -> tuple[Input, Input]:
    """The same point as measured on the wall before the corner and on the wall after it."""
    one, other = ends
    return (
        Input(one.right if one else None, f"/walls/{before}/{key}/right"),
        Input(other.left if other else None, f"/walls/{after}/{key}/left"),
    )


def _apart(desk: Desk, one: Input, other: Input) -> float:
    desk.need_all(one, other)
    return abs(desk.length(one) - desk.length(other))


def _angle(plan: Plan, name: str, corner: Corner) -> Input:
    at = f"/corners/{name}/angle"
    return Input(corner.angle, at, "" if plan.is_written(at) else "nothing is written: a square corner is taken")


def _fits_something(plan: Plan, carried: Sequence[Support], placed: Mapping[str, Placed], corner: Corner) -> bool:
    for one in placed.values():
        if any(met.corner is corner for met in walled_ends(one).values()):
            return True
    for wall, end in ((corner.from_, 1), (corner.to, 0)):
        if wall is not None and any(one.wall_name == wall and one.ends[end] in ("mitred", "coped") for one in carried):
            return True
    return all(wall is not None and bool(fields_on(plan, wall)) for wall in (corner.from_, corner.to))


def _rounds(corners: Mapping[str, Corner]) -> Iterator[tuple[str, ...]]:
    """The corners of each closed room, in the order in which one walks through them."""
    after = {corner.from_: name for name, corner in corners.items() if corner.from_ and corner.to}
    seen: set[str] = set()
    for start in after:
        way: list[str] = []
        wall: str | None = start
        while wall in after and wall not in seen:
            seen.add(wall)
            way.append(after[wall])
            wall = corners[after[wall]].to
        if way and wall == start:
            yield tuple(way)


def _room(plan: Plan, names: Sequence[str]) -> Row:
    corners = plan.model.corners or {}
    here = "/corners"
    desk = Desk(ROOM, here, here, f"the room of {', '.join(str(corners[name].from_) for name in names)}")
    desk.set("walls", float(len(names)), here)
    widths = [
        Input((plan.model.walls or {})[str(corners[name].from_)].width, f"/walls/{corners[name].from_}/width")
        for name in names
    ]
    angles = [_angle(plan, name, corners[name]) for name in names]

    def turns() -> list[float]:
        desk.need_all(*angles)
        return [
            (180 - desk.length(angle)) * (1 if corners[name].turn == "inside" else -1)
            for name, angle in zip(names, angles, strict=True)
        ]

    def gap() -> Worked:
        desk.need_all(*widths, *angles)
        return closing_gap([desk.length(width) for width in widths], turns())

    desk.get("turned_too_far", lambda: turned_too_far(turns()))
    desk.get("closing_gap", gap)
    return desk.row()


def _niches(plan: Plan, placed: Mapping[str, Placed]) -> Iterator[Row]:
    for name in plan.model.walls or {}:
        left, right = corner_at(plan, name, "left"), corner_at(plan, name, "right")
        if left is None or right is None or "outside" in (left.corner.turn, right.corner.turn):
            continue
        between = [one for one in placed.values() if one.board.wall == name and len(walled_ends(one)) == 2]
        here = f"/walls/{name}"
        desk = Desk(NICHE, here, here, f"the niche at wall {name}")
        desk.set("board_between", bool(between), *(one.here for one in between))
        if between:
            # What is furthest from square is noted first: a finding stands there.
            angles = (left.angle, right.angle)

            def narrows(
                desk: Desk = desk, across: list[Placed] = between, angles: tuple[Input, Input] = angles
            ) -> Worked:
                desk.need_all(*sorted(angles, key=_off_square), *(one.of("depth") for one in across))
                deepest = max(front_edge(desk, one) for one in across)
                return niche_narrows(deepest, *(desk.length(angle) for angle in angles))

            desk.get("narrows", narrows)
        yield desk.row()


def _off_square(angle: Input) -> float:
    return -abs(angle.value - 90.0) if isinstance(angle.value, int | float) else 0.0
