"""Room to drive a screw: what stands beside its axis, and what the socket or bit must pass."""

from __future__ import annotations

from collections.abc import Iterator

from plumbrule.facts.board_place import finish
from plumbrule.facts.corner import corner_at
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import Fastening
from plumbrule.facts.panels_first import panels_up_first
from plumbrule.facts.screw_lengths import lining_thickness
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall

INSIDE_CORNER = "nothing says what stands at this end of the wall: an inside corner is taken"


def work_driver(desk: Desk, fastening: Fastening, plan: Plan) -> None:
    """A wall screw is driven square to its wall: another wall or a cabinet at the end of it meets the driver's body,
    the seat leg only the socket, since an extension reaches past it. A seat screw is driven up along the wall, and
    the wall leg, or lining that stands proud of it, goes on as far as the driver does."""
    head = fastening.head("diameter")
    desk.get("head_radius", lambda: desk.length(head) / 2)
    if fastening.in_wall:
        _beside_walls(desk, fastening, plan)
        if fastening.support.kind != "cleat":
            desk.get("socket_room", lambda: _from_other_leg(desk, fastening))
        return
    desk.set("beside_a_wall", True, fastening.support.pointer)
    desk.get("driver_room", lambda: _along_wall(desk, fastening, plan))


def _beside_walls(desk: Desk, fastening: Fastening, plan: Plan) -> None:
    ends = list(_blocked_ends(plan, fastening.support.wall_name, fastening.support.wall))
    desk.set("beside_a_wall", bool(ends), *(pointer for _, pointer, _ in ends))
    if not ends:
        return

    def room() -> float:
        desk.need_all(Input(True, fastening.drilling.pointer), fastening.drilling.on_wall)
        here = desk.length(fastening.drilling.on_wall)
        rooms = []
        for end, pointer, assumed in ends:
            desk.need(Input(end, pointer, assumed))
            wall = fastening.support.wall
            width = Input(wall.width if wall else None, f"/walls/{fastening.support.wall_name}/width")
            bare = here if end == "left" else desk.length(width) - here
            rooms.append(bare - _panels_beside(desk, plan, fastening.support, end))
        return min(rooms)

    desk.get("driver_room", room)


def _blocked_ends(plan: Plan, name: str, wall: Wall | None) -> Iterator[tuple[str, str, str]]:
    """The ends of a wall at which something stands out of it: end, pointer, and what was taken where nothing is
    written."""
    for end, key in (("left", "to"), ("right", "from_")):
        corner = next(((at, one) for at, one in (plan.model.corners or {}).items() if getattr(one, key) == name), None)
        written = getattr(wall.ends, end) if wall is not None and wall.ends is not None else None
        if corner is not None:
            if corner[1].turn == "inside":
                yield end, f"/corners/{corner[0]}/turn", ""
        elif written == "cabinet":
            yield end, f"/walls/{name}/ends/{end}", ""
        elif written is None:
            yield end, f"/walls/{name}/ends/{end}", INSIDE_CORNER


def _from_other_leg(desk: Desk, fastening: Fastening) -> float:
    thickness = fastening.support.thickness
    desk.need_all(fastening.drilling.y, thickness)
    return desk.length(fastening.drilling.y) - desk.length(thickness)


def _along_wall(desk: Desk, fastening: Fastening, plan: Plan) -> float:
    """From a seat screw's axis to the nearer of the hanging wall leg and the finished face of the wall below the
    steel: the board is screwed down when the panels are up."""
    support = fastening.support
    desk.need_all(fastening.drilling.y)
    from_heel = desk.length(fastening.drilling.y)
    leg = desk.length(support.thickness) if support.wall_leg == "down" else 0.0
    behind = desk.word(support.lining_behind)
    proud = lining_thickness(desk, support) if behind == "cut away" else 0.0
    return from_heel - max(leg, proud + finish(desk, plan, support.wall_name))


def _panels_beside(desk: Desk, plan: Plan, support: Support, end: str) -> float:
    """What panels take of the room beside a wall screw, mm: those of the wall round the corner, unless the steps put
    the support up before them."""
    met = corner_at(plan, support.wall_name, "left" if end == "left" else "right")
    if (
        met is None
        or met.beyond is None
        or not any(met.beyond in field.walls for field in (plan.model.panels or {}).values())
    ):
        return 0.0
    return finish(desk, plan, met.beyond) if panels_up_first(plan, support, met.beyond) else 0.0
