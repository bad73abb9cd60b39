"""What is to be left alone for a while, and what may touch it next."""

from __future__ import annotations

from collections.abc import Iterator

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_sequence import WAIT
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.order import Order, order
from plumbrule.facts.sequence_parts import parts
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.steps import Step

# These look, or stay off the part itself: they may be done while it dries.
HARMLESS = frozenset({
    "measure room", "find studs", "search for services", "test paint for lead", "test texture for asbestos",
    "record open wall", "snap level line", "test bond", "acclimatise", "protect room", "isolate circuit", "prove dead",
    "restore circuit", "dry lay panels", "make rags safe", "hand over",
})  # fmt: skip
# These belong to the step before them and must not wait for its cure.
AT_ONCE = frozenset({"roll panels", "rinse wall", "dust off wall"})
# These dry, whether the plan writes a wait after them or not.
DRIES = frozenset({"patch wall", "skim wall", "prime wall", "paint wall", "coat steel"})
# Work on the wall itself, which the panels on it and the steel screwed to it touch too.
ON_THE_WALL = frozenset({"patch wall", "skim wall", "prime wall", "paint wall"})
TOUCHES_THE_WALL = frozenset({"lay panels", "fix steel", "fix cleats"})


def wait_rows(plan: Plan) -> tuple[Row, ...]:
    """For each step that is to be left alone: every step that may touch its part too early, else the soonest one."""
    steps = order(plan)
    by_part: dict[str, list[str]] = {}
    on_walls: dict[str, list[str]] = {}
    for name, step in steps.steps.items():
        if step.task not in HARMLESS:
            for part in step.works_on or ():
                by_part.setdefault(part, []).append(name)
        if step.task in TOUCHES_THE_WALL:
            for wall in parts(plan).seen(steps, name, "wall"):
                on_walls.setdefault(wall, []).append(name)
    found: list[Row] = []
    for name, step in steps.steps.items():
        if step.then_wait or step.task in DRIES or _glues(plan, step):
            near = {other: None for part in step.works_on or () for other in by_part.get(part, ())}
            if step.task in ON_THE_WALL:
                near.update((other, None) for part in step.works_on or () for other in on_walls.get(part, ()))
            found.extend(_rows(plan, steps, name, [other for other in near if _touches(steps, name, other)]))
    return tuple(found)


def _glues(plan: Plan, step: Step) -> bool:
    """Whether a patch of wood is glued in: the glue dries, whether the plan writes a wait after it or not."""
    boards = plan.model.boards or {}
    filled = (boards[name] for name in step.works_on or () if name in boards) if step.task == "fill cracks" else ()
    return any(crack.fill == "wood patch" for board in filled for crack in board.cracks.values())


def _rows(plan: Plan, steps: Order, name: str, nexts: list[str]) -> Iterator[Row]:
    step = steps.step(name)
    asked = step.then_wait or 0.0
    nexts.sort(key=lambda other: steps.waited(name, other))
    for number, other in enumerate(nexts):
        waited = steps.waited(name, other)
        if number and waited >= asked:
            return
        here = steps.pointer(other)
        later = steps.step(other).task
        desk = Desk(WAIT, here, here, f"{other} ({later}) after {name} ({step.task})")
        desk.set("earlier_task", step.task, f"{steps.pointer(name)}/task")
        desk.set("later_task", later, f"{here}/task")
        desk.copy("asked", Input(step.then_wait, f"{steps.pointer(name)}/then_wait"))
        desk.set("waited", waited, f"{here}/after", f"{steps.pointer(name)}/then_wait")
        desk.set("wood_patch", _glues(plan, step), f"{steps.pointer(name)}/task")
        yield desk.row()


def _touches(steps: Order, name: str, other: str) -> bool:
    """Whether the other step, which works on a part of the first, may be done after it and does not belong to it."""
    if other == name or (steps.step(other).task in AT_ONCE and name in steps.step(other).at_once_after):
        return False
    return not steps.before(other, name)
