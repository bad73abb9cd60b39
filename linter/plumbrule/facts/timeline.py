"""When each step of a plan is done: day and hour, over the working hours of the house."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, NamedTuple

from plumbrule.facts.order import order
from plumbrule.mechanics.calendar import WorkingHours, day_and_clock
from plumbrule.mechanics.precedence import Task, Times, in_turn, lasts, longest_chain, times
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.steps import Step
from plumbrule.plan.words import USUAL_DAYS, USUAL_END, USUAL_START, WEEKDAYS

if TYPE_CHECKING:
    from plumbrule.plan.house import Hours


class Placed(NamedTuple):
    """One step and its times, in hours from the midnight before the first day. They are None where a step that it
    waits for, or the step itself, does not say how long it takes: `missing` names where to write that first."""

    name: str
    task: str
    start: float | None
    finish: float | None
    ready: float | None
    spare: float | None
    on_longest_chain: bool | None
    missing: tuple[str, ...]

    @property
    def begins(self) -> tuple[int, str] | None:
        """Day, counted from 1, and time on the clock at which the hands begin."""
        return None if self.start is None else day_and_clock(self.start)

    @property
    def done(self) -> tuple[int, str] | None:
        """Day and time on the clock at which the hands are done."""
        return None if self.finish is None else day_and_clock(self.finish)


class Timeline(NamedTuple):
    """Every step in its turn, how long the whole lasts, and what was assumed of the working hours.

    `takes_missing` are the pointers of all times that nobody gave; while there are any, `lasts` is None.
    """

    steps: tuple[Placed, ...]
    lasts: Worked | None
    takes_missing: tuple[str, ...]
    assumed: str


def timeline(plan: Plan, hours: Hours | None = None) -> Timeline:
    """The timeline of the plan's steps, made once for these working hours. Raises NotPossible where the house file
    leaves no time to work in."""
    key = f"timeline {hours!r}"
    if key not in plan.reckoned:
        plan.reckoned[key] = _timeline(plan, hours)
    found: Timeline = plan.reckoned[key]
    return found


def working_hours(hours: Hours | None) -> tuple[WorkingHours, str]:
    """The house's working hours, the job beginning on its first working day; and what was assumed where it is silent.

    Raises NotPossible where no time to work is left.
    """
    starts = hours.starts if hours is not None and hours.starts is not None else USUAL_START
    ends = hours.ends if hours is not None and hours.ends is not None else USUAL_END
    days = hours.days if hours is not None and hours.days is not None else USUAL_DAYS
    numbers = sorted(WEEKDAYS.index(day) for day in days)
    first = numbers[0] if numbers else 0
    said = [] if hours is not None and hours.starts and hours.ends else [f"hands work from {starts} to {ends}"]
    if hours is None or hours.days is None:
        said.append("Monday to Friday")
    assumed = f"no working hours in a house file: {', '.join(said)}, is taken; waits run on" if said else ""
    return WorkingHours(_clock(starts), _clock(ends), tuple(number - first for number in numbers)), assumed


def _clock(text: str) -> float:
    hour, _, minute = text.partition(":")
    return int(hour) + int(minute) / 60


def _timeline(plan: Plan, hours: Hours | None) -> Timeline:
    during, assumed = working_hours(hours)
    steps = order(plan).steps
    tasks = {name: task_of(step, _coats(plan, step)) for name, step in steps.items()}
    turn = in_turn({name: (*task.after, *task.at_once_after) for name, task in tasks.items()})
    wanting = _wanting(steps, turn)
    known = {name: task for name, task in tasks.items() if not wanting[name]}
    found = times(known, during)
    takes_missing = tuple(
        f"/steps/{name}/{key}"
        for name, step in steps.items()
        for key in ("takes", "then_wait")
        if getattr(step, key) is None
    )
    chain = frozenset(() if takes_missing else longest_chain(found))
    placed = [_placed(name, steps[name], found.get(name), wanting[name], chain if not takes_missing else None)
              for name in turn]  # fmt: skip
    placed.sort(key=lambda one: (one.start is None, one.start or 0.0))
    whole = lasts(tasks, found) if found and not takes_missing else None
    return Timeline(tuple(placed), whole, takes_missing, assumed)


def task_of(step: Step, coats: int) -> Task:
    """A step as the graph takes it."""
    return Task(
        step.takes or 0.0, step.then_wait or 0.0, tuple(step.after), tuple(step.at_once_after), coats,
        step.between_coats or 0.0,
    )  # fmt: skip


def _coats(plan: Plan, step: Step) -> int:
    """How often the hands come back: as many coats as the boards get, two where only the wait between them is said."""
    if step.between_coats is None:
        return 1
    boards = [board for name, board in (plan.model.boards or {}).items() if name in (step.works_on or (name,))]
    coats = [
        int(count or 0)
        for board in boards
        if step.task == "finish board" and board.finish is not None
        for count in (board.finish.coats.top, board.finish.coats.bottom, board.finish.coats.edges)
    ]
    return max([*coats, 1]) if coats else 2


def _wanting(steps: Mapping[str, Step], turn: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
    """Where the time is wanting that keeps a step from being placed: the nearest such steps before it, or its own."""
    found: dict[str, tuple[str, ...]] = {}
    for name in turn:
        step = steps[name]
        own = tuple(f"/steps/{name}/{key}" for key in ("takes", "then_wait") if getattr(step, key) is None)
        before = [pointer for other in (*step.after, *step.at_once_after) for pointer in found[other]]
        found[name] = own or tuple(dict.fromkeys(before))
    return found


def _placed(
    name: str, step: Step, found: Times | None, missing: tuple[str, ...], chain: frozenset[str] | None
) -> Placed:
    if found is None:
        return Placed(name, step.task, None, None, None, None, None, missing)
    on_chain = None if chain is None else name in chain
    spare = None if chain is None else max(found.latest - found.start, 0.0)
    return Placed(name, step.task, found.start, found.finish, found.ready, spare, on_chain, missing)
