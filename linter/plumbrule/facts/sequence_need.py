"""What the plan calls for: each task without which another cannot be done well, and whether a step does it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_sequence import TASK
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order, order
from plumbrule.facts.sequence_parts import named, parts, unsaid
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.screws import Screw

DUSTY = ("cut away lining", "strip wall covering", "scrape wall", "abrade wall")
# What a shop puts on before the steel is bought is no step of this plan.
OWN_COAT = frozenset({"primer", "primer and enamel", "oil and wax"})


class Call(NamedTuple):
    """One task that is called for: on which part, where that is written, and whether it truly is."""

    task: str
    part: str
    pointer: str
    needed: bool = True


def need_rows(plan: Plan, carried: Sequence[Support]) -> tuple[Row, ...]:
    """One row for each task on each part. Those of one plan belong together, so that they are told as one."""
    steps = order(plan)
    calls = (*_looks(plan, carried), *_steel(plan, steps, carried), *_boards(plan, steps, carried), *_room(plan, steps))
    return tuple(_row(steps, call) for call in dict.fromkeys(calls))


def _row(steps: Order, call: Call) -> Row:
    of_all = call.part == ""
    desk = Desk(TASK, call.pointer, "/steps", call.task if of_all else f"{call.task} at {call.part}")
    desk.set("task", call.task, call.pointer)
    desk.set("needed", call.needed, call.pointer)

    def written() -> bool:
        desk.need(Input(value=True, pointer="/steps"))
        if steps.doing(call.task) if of_all else named(steps, call.task, call.part):
            return True
        if silent := unsaid(steps, call.task):
            raise Missing(silent)
        return False

    desk.get("written", written)
    return desk.row()


def _looks(plan: Plan, carried: Sequence[Support]) -> Iterator[Call]:
    """What is to be looked at and marked. What the plan says was looked at needs no step any more."""
    record, walls = plan.model.record, plan.model.walls or {}
    measured = record is not None and record.measured is not None and not plan.to_measure
    holding = dict.fromkeys(support.wall_name for support in carried)
    panelled = dict.fromkeys(wall for field in (plan.model.panels or {}).values() for wall in field.walls)
    for name, wall in walls.items():
        here = f"/walls/{name}"
        yield Call("measure room", name, here, not measured)
        if name in holding:
            found = wall.framing is not None and bool(wall.framing.found_by)
            searched = wall.services is not None and bool(wall.services.looked_with)
            yield Call("find studs", name, here, not found)
            yield Call("search for services", name, here, not searched)
        if name in holding or name in panelled:
            yield Call("snap level line", name, here)


def _steel(plan: Plan, steps: Order, carried: Sequence[Support]) -> Iterator[Call]:
    """What hangs on the wall, from the saw to the wall."""
    screws = plan.model.screws or {}
    for support in carried:
        name, here = support.name, support.pointer
        yield Call("fix cleats" if support.kind == "cleat" else "fix steel", name, here)
        drilled = [one.holes.screw.value for one in support.drillings if one.leg == "wall"]
        if any(_wants_pilot(screws[screw]) for screw in drilled if screw in screws):
            yield Call("drill pilot holes", name, here)
        if support.lining_behind.value == "cut away":
            yield Call("cut away lining", support.wall_name, f"/walls/{support.wall_name}")
        cut = any(named(steps, task, name) for task in ("cut steel", "drill steel"))
        if support.kind == "angle":
            yield Call("deburr steel", name, here, cut)
            yield Call("coat steel", name, here, cut and support.coating.value in OWN_COAT)


def _wants_pilot(screw: Screw) -> bool:
    """Whether a hole is drilled for it first; a plan that says none means that it bores its own way."""
    return screw.pilot is not None and screw.pilot != "none"


def _boards(plan: Plan, steps: Order, carried: Sequence[Support]) -> Iterator[Call]:
    screwed = {board for support in carried for board, _ in support.boards
               if any(one.leg == "seat" for one in support.drillings)}  # fmt: skip
    for name, board in (plan.model.boards or {}).items():
        here = f"/boards/{name}"
        down = bool(named(steps, "screw board down", name))
        filled = any(crack.fill in ("epoxy", "wood patch") for crack in board.cracks.values())
        finished = board.finish is not None and board.finish.kind not in (None, "none")
        yield Call("fill cracks", name, here, filled)
        yield Call("sand board", name, here, bool(board.sanding))
        yield Call("finish board", name, here, finished)
        rounded = any(edge.ease != "sharp" for edge in (board.edges.front, board.edges.back, board.edges.ends))
        yield Call("ease edges", name, f"{here}/edges", rounded and board.carries in ("seating", "standing"))
        yield Call("set board", name, here, not down)
        yield Call("screw board down", name, here, name in screwed)


def _room(plan: Plan, steps: Order) -> Iterator[Call]:
    """What is done to walls and floor, and the end of it all."""
    cut_open = parts(plan)
    for name, field in (plan.model.panels or {}).items():
        # Laid wall by wall, each wall is asked for; else the field as a whole.
        by_wall = not named(steps, "lay panels", name) and any(named(steps, "lay panels", wall) for wall in field.walls)
        for part in field.walls if by_wall else (name,):
            yield Call("lay panels", part, f"/panels/{name}")
    for name, trim in (plan.model.trims or {}).items():
        if trim.along == "floor":
            yield Call("fit base trim", name, f"/trims/{name}")
    panelled = {wall for field in (plan.model.panels or {}).values() for wall in field.walls}
    opened = {wall for name in steps.doing("cut away lining") for wall in cut_open.seen(steps, name, "wall")}
    for name, wall in (plan.model.walls or {}).items():
        if wall.blocking and name in opened:
            yield Call("fit blocking", name, f"/walls/{name}/blocking")
            # No steel is as large as the hole that a block goes in by.
            yield Call("patch wall", name, f"/walls/{name}/blocking", not named(steps, "skim wall", name))
        # A primer is no last coat.
        yield Call(
            "paint wall", name, f"/walls/{name}", name not in panelled and bool(named(steps, "prime wall", name))
        )
        for box in wall.boxes or {}:
            yield Call("restore circuit", box, f"/walls/{name}/boxes/{box}", bool(steps.doing("isolate circuit", box)))
    dusty = any(steps.step(name).where == "in the room" for task in DUSTY for name in steps.doing(task))
    yield Call("protect room", "", "/steps", dusty)
    yield Call("hand over", "", "/steps", bool(plan.model.boards or plan.model.panels))
