"""Ends of boards and of steel at the walls round a corner, as those walls will stand when they are finished."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_room import BOARD_END, STEEL_END
from plumbrule.facts.board_place import Placed, finish, front_edge, walled_ends
from plumbrule.facts.corner import ENDS, End, Met, corner_at
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.on_wall import fields_on
from plumbrule.facts.order import order
from plumbrule.facts.panels_first import panels_up_first
from plumbrule.facts.supports import Support
from plumbrule.mechanics.room import gap_change
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.plan_file import Plan


def board_ends(plan: Plan, placed: Mapping[str, Placed]) -> tuple[Row, ...]:
    """One row for each end of a board that lies against a wall."""
    return tuple(_board_end(plan, one, end, met) for one in placed.values() for end, met in walled_ends(one).items())


def steel_ends(plan: Plan, carried: Sequence[Support]) -> tuple[Row, ...]:
    """One row for each end of an angle or cleat at an inside corner whose other wall gets panels."""
    return tuple(_steel_ends(plan, carried))


def _board_end(plan: Plan, placed: Placed, end: End, met: Met) -> Row:
    desk = Desk(BOARD_END, f"{placed.here}/gaps/{end}", placed.here, f"the {end} end of board {placed.name}")
    desk.copy("gap", placed.gap(end))

    def change() -> Worked:
        desk.need_all(met.angle, placed.of("depth"))
        return gap_change(desk.length(placed.of("depth")), desk.length(met.angle))

    desk.get("gap_change", change)
    desk.set("side_wall_in_plan", met.beyond is not None, placed.here)
    if met.beyond is not None:
        wall = (plan.model.walls or {}).get(met.beyond)
        width = Input(wall.width if wall else None, f"/walls/{met.beyond}/width")

        def past() -> float:
            desk.need_all(width, placed.of("depth"))
            return desk.length(width) - front_edge(desk, placed)

        desk.get("side_wall_past", past)
    return desk.row()


def _steel_ends(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    for support in carried:
        if support.kind == "bracket":
            continue
        for end in ENDS:
            met = corner_at(plan, support.wall_name, end)
            if met is None or met.corner.turn != "inside" or met.beyond is None or not fields_on(plan, met.beyond):
                continue
            yield _steel_end(plan, support, end, met.beyond)


def _steel_end(plan: Plan, support: Support, end: End, beyond: str) -> Row:
    at = "left" if end == "left" else "length"
    desk = Desk(STEEL_END, f"{support.pointer}/{at}", support.pointer, f"the {end} end of {support.label}")

    def clear() -> float:
        width = Input(support.wall.width if support.wall else None, f"/walls/{support.wall_name}/width")
        if end == "left":
            from_corner = desk.length(support.left)
        else:
            desk.need_all(support.left, support.length, width)
            from_corner = desk.length(width) - desk.length(support.left) - desk.length(support.length)
        return from_corner - finish(desk, plan, beyond)

    def panels_first() -> bool:
        steps = order(plan)
        if not steps.written:
            raise Missing(["/steps"])
        fixing = (*steps.doing("fix steel", support.name), *steps.doing("fix cleats", support.name))
        laying = steps.doing("lay panels", beyond)
        for step in (*fixing, *laying):
            desk.need(Input(True, steps.pointer(step)))
        return panels_up_first(plan, support, beyond)

    desk.get("clear", clear)
    desk.get("panels_first", panels_first)
    return desk.row()
