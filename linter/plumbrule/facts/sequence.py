"""Rows of the steps and of what they wait for."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_sequence import JOB, STEP, TASK
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order, order
from plumbrule.facts.sequence_cover import cover_rows
from plumbrule.facts.sequence_need import need_rows
from plumbrule.facts.sequence_order import order_rows
from plumbrule.facts.sequence_parts import parts
from plumbrule.facts.sequence_proof import PROOF, proof_load
from plumbrule.facts.sequence_wait import wait_rows
from plumbrule.facts.supports import Support
from plumbrule.facts.timeline import Placed, Timeline, timeline
from plumbrule.mechanics.calendar import DAY, day_and_clock
from plumbrule.mechanics.worked import NotPossible, Worked
from plumbrule.plan.plan_file import Plan

if TYPE_CHECKING:
    from plumbrule.plan.house import Hours

HAND_OVER = "hand over"


def sequence_rows(plan: Plan, carried: Sequence[Support], hours: Hours | None = None) -> dict[str, tuple[Row, ...]]:
    """Rows by kind. `hours` are the working hours of the house, where it has any.

    Where the plan has no steps, the job and one need say so, once for all.
    """
    steps = order(plan)
    if not steps.written:
        return {"job": (_no_job(),), "task": (_no_need(),)}
    line = timeline(plan, hours)
    return {
        "job": (_job_row(steps, line),),
        "step": tuple(_step_row(plan, steps, one, line) for one in line.steps),
        "order": order_rows(plan),
        "wait": wait_rows(plan),
        "task": need_rows(plan, carried),
        "cover": cover_rows(plan, carried),
    }


def _no_job() -> Row:
    desk = Desk(JOB, "/steps", "/steps", "the job")
    for fact in JOB.facts:
        desk.copy(fact.name, Input(None, "/steps"))
    return desk.row()


def _no_need() -> Row:
    desk = Desk(TASK, "/steps", "/steps", "the steps")
    desk.set("needed", value=True)
    # What every plan begins with stands for all that it calls for.
    desk.set("task", "measure room")
    desk.copy("written", Input(None, "/steps"))
    return desk.row()


def _job_row(steps: Order, line: Timeline) -> Row:
    desk = Desk(JOB, "/steps", "/steps", "the job")
    wanting = line.takes_missing

    takes = tuple(f"{steps.pointer(name)}/takes" for name in steps.steps) or ("/steps",)
    clock = Input(value=True, pointer="/steps", assumed=line.assumed)

    def whole(value: float) -> float:
        desk.need(Input(value=True, pointer=takes[0], also=takes[1:]))
        if wanting:
            raise Missing(wanting)
        return value

    def lasts() -> Worked | float:
        desk.need(clock)
        whole(0.0)
        return line.lasts if line.lasts is not None else 0.0

    def day(value: float) -> float:
        desk.need(clock)
        return whole(value)

    desk.set("steps", float(len(steps.steps)))
    desk.get("hands", lambda: whole(sum(step.takes or 0.0 for step in steps.steps.values())))
    desk.get("person_hours", lambda: whole(sum((step.takes or 0.0) * step.people for step in steps.steps.values())))
    desk.get("lasts", lasts)
    done = max((one.finish for one in line.steps if one.finish is not None), default=0.0)
    desk.get("done", lambda: day(done))
    desk.get("days", lambda: day(float(day_and_clock(done)[0])))
    return desk.row()


def _step_row(plan: Plan, steps: Order, one: Placed, line: Timeline) -> Row:
    step, here = steps.step(one.name), steps.pointer(one.name)
    desk = Desk(STEP, here, here, f"{one.name} ({one.task})")
    desk.set("task", one.task, f"{here}/task")
    desk.copy("takes", Input(step.takes, f"{here}/takes"))
    desk.copy("wait_after", Input(step.then_wait, f"{here}/then_wait"))
    desk.set("people", float(step.people), f"{here}/people")

    waits = Input(value=True, pointer=f"{here}/after")

    def placed(value: float | bool | None, wanting: tuple[str, ...] = one.missing) -> float | bool:
        desk.need(waits)
        if value is None:
            raise Missing(wanting)
        return value

    desk.get("start", lambda: placed(one.start))
    desk.get("finish", lambda: placed(one.finish))
    desk.get("ready", lambda: placed(one.ready))
    desk.get("first_day", lambda: placed(one.start) // DAY + 1.0)
    desk.get("begins_at", lambda: placed(one.start) % DAY)
    desk.get("last_day", lambda: placed(one.finish) // DAY + 1.0)
    desk.get("done_at", lambda: placed(one.finish) % DAY)
    desk.get("on_longest_chain", lambda: placed(one.on_longest_chain, line.takes_missing))
    desk.get("spare", lambda: placed(one.spare, line.takes_missing))
    desk.set("at_once", bool(step.at_once_after), f"{here}/at_once_after")
    if step.at_once_after:
        desk.get("held_over", lambda: _held_over(desk, one, line, step.at_once_after, here))
    _hand_over(desk, plan, steps, one.name)
    if one.task == PROOF:
        proof_load(desk, plan, steps, one.name)
    return desk.row()


def _held_over(desk: Desk, one: Placed, line: Timeline, others: Sequence[str], here: str) -> float:
    desk.need(Input(others, f"{here}/at_once_after"))
    if one.start is None:
        raise Missing(one.missing)
    done = [other.finish for other in line.steps if other.name in others and other.finish is not None]
    if len(done) < len(set(others)):
        raise NotPossible(f"{one.name} is placed before what it follows")
    return one.start - min(done)


def _hand_over(desk: Desk, plan: Plan, steps: Order, name: str) -> None:
    """Whether the step is done, and its wait over, before its part is handed over. A job in several parts may hand over
    several times: a step is before each of those that hand over a part of its own, else before one of them."""
    here = steps.pointer(name)
    last = [other for other in steps.doing(HAND_OVER) if other != name]
    follows = bool(last) and steps.step(name).task != HAND_OVER
    desk.set("hand_over_follows", follows, *(f"{steps.pointer(other)}/after" for other in last))
    if not follows:
        return
    own = [other for other in last if _hands_over(plan, steps, other, name)]
    read = tuple(f"{steps.pointer(other)}/after" for other in own or last)
    before = [other for other in own or last if steps.before(name, other)]

    def done() -> bool:
        desk.need(Input(value=True, pointer=read[0], also=read[1:]))
        if not before:
            return False
        unsaid = [other for other in last if steps.step(other).works_on is None]
        if len(last) > 1 and unsaid and not all(steps.before(name, other) for other in unsaid):
            raise Missing([f"{steps.pointer(other)}/works_on" for other in unsaid])
        return len(before) == len(own) if own else True

    desk.get("before_hand_over", done)
    if before:
        rests = min(steps.waited(name, other) for other in before)
        desk.set("rests_before_hand_over", rests, f"{here}/then_wait")


def _hands_over(plan: Plan, steps: Order, hand_over: str, name: str) -> bool:
    """Whether a handing over that names parts names one that the step is done to, or what carries such a part."""
    of = parts(plan)
    handed = {*of.seen(steps, hand_over, "same"), *of.seen(steps, hand_over, "under")}
    return not handed.isdisjoint(of.seen(steps, name, "same"))
