"""What the trade does first: for each step, each task that must be behind it on the same part."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_sequence import ORDER
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order, order
from plumbrule.facts.sequence_parts import Parts, Seen, named, parts, unsaid
from plumbrule.plan.plan_file import Plan


class Before(NamedTuple):
    """The task that comes first, and those that come after it on the same part, on its walls or on what lies on it.

    `each` says that every single step of the first must be followed by one of the second: what is drilled last must
    be deburred too.
    """

    earlier: str
    later: tuple[str, ...]
    seen: Seen = "same"
    each: bool = False


# Common practice of the trades. What is made ready before panels and finish, and circuits, are judged by rows of their
# own trades.
ORDERS = (
    Before("measure room", ("cut steel", "cut board to length", "snap level line", "lay panels"), "wall"),
    Before("find studs", ("drill pilot holes", "fix steel", "fix cleats", "fit blocking"), "wall"),
    Before("search for services", ("cut away lining", "fit blocking", "drill pilot holes", "fix steel", "fix cleats"),
           "wall"),
    Before("snap level line", ("drill pilot holes", "fix steel", "fix cleats", "dry lay panels", "lay panels"), "wall"),
    Before("cut away lining", ("fit blocking", "fix steel", "fix cleats"), "wall"),
    Before("fit blocking", ("patch wall", "skim wall", "fix steel", "fix cleats"), "wall"),
    Before("cut steel", ("deburr steel", "coat steel", "fix steel"), each=True),
    Before("drill steel", ("deburr steel", "coat steel", "fix steel"), each=True),
    Before("deburr steel", ("coat steel", "fix steel"), each=True),
    Before("coat steel", ("fix steel",)),
    Before("drill pilot holes", ("fix steel", "fix cleats")),
    Before("flatten board", ("fill cracks", "ease edges", "sand board"), each=True),
    Before("fill cracks", ("sand board",), each=True),
    Before("cut board to length", ("ease edges", "finish board"), each=True),
    Before("ease edges", ("finish board",), each=True),
    Before("sand board", ("finish board",), each=True),
    Before("acclimatise", ("flatten board", "sand board", "cut board to length", "finish board", "set board")),
    Before("cut board to length", ("set board", "screw board down")),
    Before("fix steel", ("set board", "screw board down"), "under"),
    Before("fix cleats", ("set board", "screw board down"), "under"),
    Before("set board", ("screw board down", "proof load")),
    Before("screw board down", ("proof load",)),
    Before("protect room", ("cut away lining", "strip wall covering", "scrape wall", "abrade wall"), "wall"),
    Before("remove base trim", ("lay panels",), "wall"),
    Before("dry lay panels", ("lay panels",)),
    Before("prime wall", ("paint wall",)),
    Before("prime wall", ("fit corner trim",), "wall"),
    Before("patch wall", ("paint wall",), each=True),
    Before("lay panels", ("fit base trim",), "wall"),
)  # fmt: skip


def order_rows(plan: Plan) -> tuple[Row, ...]:
    """One row for each step and each task of `ORDERS` that the plan does on one of its parts."""
    steps, of = order(plan), parts(plan)
    return tuple(
        row
        for rule in ORDERS
        if steps.doing(rule.earlier)
        for task in rule.later
        for name in steps.doing(task)
        for row in _row(steps, of, rule, name)
    )


def _row(steps: Order, of: Parts, rule: Before, name: str) -> Iterator[Row]:
    here, step = steps.pointer(name), steps.step(name)
    label = f"{name} ({step.task}) comes after {rule.earlier}"
    desk = Desk(ORDER, here, here, label)
    desk.set("earlier_task", rule.earlier, f"{here}/after")
    desk.set("later_task", step.task, f"{here}/task")
    if step.works_on is None:
        desk.copy("kept", Input(None, f"{here}/works_on"))
        yield desk.row()
        return
    targets = of.seen(steps, name, rule.seen)
    done_to = {part: named(steps, rule.earlier, part) for part in targets}
    silent = unsaid(steps, rule.earlier)
    if not silent and not any(done_to.values()):
        return

    def kept() -> bool:
        desk.need(Input(value=True, pointer=f"{here}/after"))
        open_parts = [part for part, doing in done_to.items() if not doing]
        for part, doing in done_to.items():
            if doing and not _in_turn(steps, rule, name, part, doing):
                return False
        if open_parts and silent:
            raise Missing(silent)
        return True

    desk.get("kept", kept)
    yield desk.row()


def _in_turn(steps: Order, rule: Before, name: str, part: str, doing: tuple[str, ...]) -> bool:
    """Whether the step waits for the earlier task on this part, and whether nothing of that is done too late."""
    if not any(steps.before(one, name) for one in doing):
        return False
    if not rule.each:
        return True
    task = steps.step(name).task
    return all(any(steps.before(one, later) for later in named(steps, task, part)) for one in doing)
