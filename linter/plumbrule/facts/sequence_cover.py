"""What gets covered, and whether somebody looked first: the open wall, and the joint at the floor."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_sequence import COVER
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order, order
from plumbrule.facts.sequence_parts import named, parts, unsaid
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan

# What closes a wall again: filler, or a steel leg or cleat on the place that was cut out.
CLOSES = ("patch wall", "skim wall", "lay panels", "fix steel", "fix cleats")
LOOK = "record open wall"


def cover_rows(plan: Plan, carried: Sequence[Support]) -> tuple[Row, ...]:
    """One row for each wall that is cut open, and each trim that covers a sealed joint at the floor."""
    steps = order(plan)
    return (*_open_walls(plan, steps), *_floor_joints(plan, steps))


def _open_walls(plan: Plan, steps: Order) -> Iterator[Row]:
    of = parts(plan)
    for wall in plan.model.walls or {}:
        cuts = named(steps, "cut away lining", wall)
        if not cuts:
            continue
        closing = [
            name
            for task in CLOSES
            for name in steps.doing(task)
            if wall in of.seen(steps, name, "wall") and not all(steps.before(name, cut) for cut in cuts)
        ]
        if not closing:
            continue
        # What must be seen: the wall after the last cut, with its blocks in.
        inside = (*cuts, *named(steps, "fit blocking", wall))
        looks = [name for name in named(steps, LOOK, wall) if all(steps.before(one, name) for one in inside)]
        unseen = [name for name in closing if not any(steps.before(look, name) for look in looks)]
        yield _open_wall(steps, wall, (unseen or closing)[0], seen=not unseen)


def _open_wall(steps: Order, wall: str, closer: str, *, seen: bool) -> Row:
    here = f"/walls/{wall}"
    task = steps.step(closer).task
    desk = Desk(COVER, here, steps.pointer(closer), f"open wall {wall}, which {closer} ({task}) closes")
    desk.set("covered", "open wall", here)
    desk.set("covered_by", task, f"{steps.pointer(closer)}/task")

    def looked() -> bool:
        desk.need(Input(value=True, pointer=f"{steps.pointer(closer)}/after"))
        if not seen and (silent := unsaid(steps, LOOK)):
            raise Missing(silent)
        return seen

    desk.get("done_before", looked)
    return desk.row()


def _floor_joints(plan: Plan, steps: Order) -> Iterator[Row]:
    sealants = [name for name, one in (plan.model.sealants or {}).items() if "floor" in (one.joints or ())]
    trims = [name for name, one in (plan.model.trims or {}).items() if one.along == "floor"]
    for trim in trims:
        for covering in named(steps, "fit base trim", trim):
            for sealant in sealants:
                yield _floor_joint(steps, sealant, covering, trim)


def _floor_joint(steps: Order, sealant: str, covering: str, trim: str) -> Row:
    here = f"/sealants/{sealant}"
    desk = Desk(COVER, here, steps.pointer(covering), f"floor joint of {sealant} behind {trim}")
    desk.set("covered", "floor joint", f"{here}/joints")
    desk.set("covered_by", "fit base trim", f"{steps.pointer(covering)}/task")

    def sealed() -> bool:
        desk.need(Input(value=True, pointer=f"{steps.pointer(covering)}/after"))
        seals = named(steps, "seal joints", sealant)
        if not seals and (silent := unsaid(steps, "seal joints")):
            raise Missing(silent)
        return any(steps.before(seal, covering) for seal in seals)

    desk.get("done_before", sealed)
    return desk.row()
