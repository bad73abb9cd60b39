"""What stands before what: the order that the steps of a plan promise, whoever works and however long it takes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from plumbrule.plan.plan_file import Plan
from plumbrule.plan.steps import Step


class Order:
    """The order of the steps, from `steps` alone: no working hours, no calendar.

    A step that stands before another is done with its hands before the other begins. Nothing is promised of two steps
    of which neither waits for the other, in whatever order they are written.
    """

    def __init__(self, plan: Plan) -> None:
        self.written = plan.model.steps is not None
        self.steps: Mapping[str, Step] = plan.model.steps or {}
        self._walls = {name: frozenset(field.walls) for name, field in (plan.model.panels or {}).items()}
        self._by_task: dict[str, list[str]] = {}
        for name, step in self.steps.items():
            self._by_task.setdefault(step.task, []).append(name)
        self._waits: dict[str, dict[str, float]] = {}

    def step(self, name: str) -> Step:
        """The step of that name."""
        return self.steps[name]

    def pointer(self, name: str) -> str:
        """Where the step is written."""
        return f"/steps/{name}"

    def doing(self, task: str, part: str | None = None) -> tuple[str, ...]:
        """The steps with that task, in the order of the file; with a part, those that are done to it.

        A panel field counts for each of its walls. A step that does not say what it works on counts for every part.
        """
        names = self._by_task.get(task, ())
        return tuple(names) if part is None else tuple(name for name in names if self.done_to(name, part))

    def done_to(self, name: str, part: str) -> bool:
        """Whether that step is done to the part, by the same reading as `doing`."""
        works_on = self.steps[name].works_on
        if works_on is None or part in works_on:
            return True
        return any(part in self._walls.get(one, ()) for one in works_on)

    def before(self, first: str, second: str) -> bool:
        """Whether the hands of `first` are done before `second` begins, whatever happens."""
        return first in self._waited_for(second)

    def waited(self, first: str, second: str) -> float:
        """Hours that are sure to lie between the end of the hands of `first` and the beginning of `second`.

        They are the longest chain between the two: waits, and the hands of the steps in between. Nothing where `first`
        does not stand before `second`, or where steps wait for each other.
        """
        return self._waited_for(second).get(first, 0.0)

    def earlier(self, name: str) -> Iterator[str]:
        """Every step that stands before that one."""
        return iter(self._waited_for(name))

    def _waited_for(self, name: str) -> dict[str, float]:
        """Step -> hours from the end of its hands to the beginning of that one, by their longest chain."""
        if name not in self._waits:
            for one in self._not_yet(name):
                self._waits[one] = self._reach_back(one)
        return self._waits[name]

    def _reach_back(self, name: str) -> dict[str, float]:
        """The same, from what is known of the steps that it names."""
        found: dict[str, float] = {}
        for earlier, at_once in self._direct(name):
            step = self.steps[earlier]
            wait = 0.0 if at_once else step.then_wait or 0.0
            found[earlier] = max(found.get(earlier, 0.0), wait)
            since = wait + (step.takes or 0.0)
            for other, hours in self._waits.get(earlier, {}).items():
                if found.get(other, -1.0) < hours + since:
                    found[other] = hours + since
        # A loop is refused when a plan is read; should one come here, nothing stands before itself.
        found.pop(name, None)
        return found

    def _not_yet(self, name: str) -> Iterator[str]:
        """That step and all before it that nobody asked for yet, each after those it names."""
        seen = {name}
        way = [(name, self._direct(name))]
        while way:
            for earlier, _ in way[-1][1]:
                if earlier not in seen and earlier not in self._waits:
                    seen.add(earlier)
                    way.append((earlier, self._direct(earlier)))
                    break
            else:
                yield way.pop()[0]

    def _direct(self, name: str) -> Iterator[tuple[str, bool]]:
        """The steps that one names, and whether it follows their hands at once."""
        step = self.steps[name]
        for other in step.after:
            if other in self.steps:
                yield other, False
        for other in step.at_once_after:
            if other in self.steps:
                yield other, True


def order(plan: Plan) -> Order:
    """The order of the plan's steps, made once."""
    found: Order | None = plan.reckoned.get("/steps")
    if found is None:
        found = plan.reckoned["/steps"] = Order(plan)
    return found
