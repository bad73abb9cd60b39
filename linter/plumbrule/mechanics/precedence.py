"""Which step comes when: a graph of steps that wait for each other, its earliest and latest times, its longest chain.

The method is the critical path method (Kelley and Walker, 1959) with waits on the arrows and working hours under the
steps: forward for the earliest times, backward from the end for the latest.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

from plumbrule.mechanics.calendar import SLACK, Span, WorkingHours
from plumbrule.mechanics.worked import NotPossible, Number, Worked

SOURCE = "critical path method: each step as early as what it waits for allows"


class Task(NamedTuple):
    """One step. `hands` are hours of work, shared evenly among `coats`, with `between` hours of wait from one to the
    next; `wait` are the hours it is left alone afterwards. `after` waits for others with their waits, `at_once_after`
    for their hands only."""

    hands: float
    wait: float = 0.0
    after: tuple[str, ...] = ()
    at_once_after: tuple[str, ...] = ()
    coats: int = 1
    between: float = 0.0


class Times(NamedTuple):
    """When a step is done, in hours from the midnight before the first day.

    `ready` is the end of its wait. `latest` is the latest beginning that still lets everything end as early; `held_by`
    is the step that it waits for longest, empty where nothing holds it.
    """

    start: float
    finish: float
    ready: float
    latest: float
    held_by: str


def in_turn(after: Mapping[str, Sequence[str]]) -> tuple[str, ...]:
    """The names in an order in which each comes after those it waits for, else as they are given.

    Every name waited for must be among them. Raises NotPossible where names wait for each other.
    """
    wanting = {name: len(set(others)) for name, others in after.items()}
    waiting: dict[str, list[str]] = {name: [] for name in after}
    for name, others in after.items():
        for other in dict.fromkeys(others):
            waiting[other].append(name)
    free = [name for name, count in wanting.items() if count == 0]
    for name in free:
        for later in waiting[name]:
            wanting[later] -= 1
            if wanting[later] == 0:
                free.append(later)
    if len(free) < len(after):
        raise NotPossible("after: some steps wait for each other")
    return tuple(free)


def times(tasks: Mapping[str, Task], hours: WorkingHours) -> dict[str, Times]:
    """When each step can be done at the earliest, as many hands at work as there are steps that could go on, and how
    late it may begin. Raises NotPossible where steps wait for each other."""
    order = in_turn({name: (*task.after, *task.at_once_after) for name, task in tasks.items()})
    begin = hours.starts
    found: dict[str, tuple[Span, str]] = {}
    for name in order:
        task, free, held_by = tasks[name], begin, ""
        for other, wait in _waits(task, tasks):
            if (since := found[other][0].finish + wait) > free:
                free, held_by = since, other
        found[name] = _forward(task, free, hours), held_by
    end = max((span.finish + tasks[name].wait for name, (span, _) in found.items()), default=begin)
    latest = _latest(tasks, order, end, hours)
    return {
        name: Times(span.start, span.finish, span.finish + tasks[name].wait, latest[name], held_by)
        for name, (span, held_by) in found.items()
    }


def longest_chain(found: Mapping[str, Times]) -> tuple[str, ...]:
    """The steps that decide when everything is over, first to last: each waits for the one before it longest."""
    if not found:
        return ()
    chain = [max(found, key=lambda name: found[name].ready)]
    while held_by := found[chain[-1]].held_by:
        chain.append(held_by)
    return tuple(reversed(chain))


def lasts(tasks: Mapping[str, Task], found: Mapping[str, Times]) -> Worked:
    """How long everything lasts, from the first hour of work to the end of the last wait: the hands and the waits of
    the longest chain, and the nights and free days that fall between. Requires a chain."""
    chain = longest_chain(found)
    hands = sum(tasks[name].hands for name in chain)
    waits = tasks[chain[-1]].wait + sum((tasks[name].coats - 1) * tasks[name].between for name in chain)
    for name, later in pairwise(chain):
        waits += tasks[name].wait if name in tasks[later].after else 0.0
    whole = found[chain[-1]].ready - min(times.start for times in found.values())
    nights = whole - hands - waits
    if nights < SLACK:
        nights = 0.0
    return Worked(
        "T", "the hands and the waits of the longest chain, and the nights and free days between", "h + w + n",
        (Number("h", hands, "h"), Number("w", waits, "h"), Number("n", nights, "h")), hands + waits + nights, "h",
        SOURCE,
    )  # fmt: skip


def _waits(task: Task, tasks: Mapping[str, Task]) -> Iterator[tuple[str, float]]:
    for other in task.after:
        yield other, tasks[other].wait
    for other in task.at_once_after:
        yield other, 0.0


def _forward(task: Task, free: float, hours: WorkingHours) -> Span:
    coats = [hours.run(free, task.hands / task.coats)]
    while len(coats) < task.coats:
        coats.append(hours.run(coats[-1].finish + task.between, task.hands / task.coats))
    return Span(coats[0].start, coats[-1].finish)


def _backward(task: Task, by: float, hours: WorkingHours) -> Span:
    coats = [hours.run_back(by, task.hands / task.coats)]
    while len(coats) < task.coats:
        coats.append(hours.run_back(coats[-1].start - task.between, task.hands / task.coats))
    return Span(coats[-1].start, coats[0].finish)


def _latest(tasks: Mapping[str, Task], order: Sequence[str], end: float, hours: WorkingHours) -> dict[str, float]:
    """The latest beginning of each step."""
    done_by = {name: end - task.wait for name, task in tasks.items()}
    latest: dict[str, float] = {}
    for name in reversed(order):
        latest[name] = _backward(tasks[name], done_by[name], hours).start
        for other, wait in _waits(tasks[name], tasks):
            done_by[other] = min(done_by[other], latest[name] - wait)
    return latest
