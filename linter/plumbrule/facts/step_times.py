"""Steps done to one part, and the hours between them, as facts ask for them: what the plan leaves unsaid is missing."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order
from plumbrule.plan.steps import Step


class StepsOf:
    """The steps that are done to one part. `names` are what a step may call it: a wall goes by its own name and, for
    laying, by that of the panels on it."""

    def __init__(self, order: Order, desk: Desk, names: Sequence[str]) -> None:
        self.order = order
        self._desk = desk
        self._names = frozenset(names)

    def written(self) -> None:
        """Raises Missing where the plan has no steps at all."""
        if not self.order.written:
            raise Missing(["/steps"])

    def step(self, name: str) -> Step:
        """The step of that name."""
        return self.order.step(name)

    def sure(self, *tasks: str) -> tuple[str, ...]:
        """Steps with one of these tasks that say they are done to the part."""
        self.written()
        return tuple(name for task in tasks for name in self.order.doing(task) if self._works_on(name))

    def possible(self, *tasks: str) -> tuple[str, ...]:
        """The same, and those that do not say what they are done to: for what must not happen."""
        self.written()
        doing = [name for task in tasks for name in self.order.doing(task)]
        return tuple(name for name in doing if self.step(name).works_on is None or self._works_on(name))

    def done(self, tasks: Sequence[str], covers: Sequence[str]) -> tuple[str, ...]:
        """Steps with one of these tasks that are sure to be done to the part before every one of `covers`.

        Raises Missing where only steps that do not say what they work on could be meant.
        """
        found = tuple(name for name in self.sure(*tasks) if self.before_all(name, covers))
        if not found:
            unsaid = [name for name in self.possible(*tasks) if self.step(name).works_on is None]
            if any(self.before_all(name, covers) for name in unsaid):
                raise Missing([f"/steps/{name}/works_on" for name in unsaid])
        self.note(*(found or covers))
        return found

    def not_after(self, tasks: Sequence[str], covers: Sequence[str]) -> tuple[str, ...]:
        """Steps with one of these tasks of which nothing says that they come after all of `covers`."""
        return tuple(
            name for name in self.possible(*tasks) if not covers or not all(self.before(one, name) for one in covers)
        )

    def before(self, first: str, second: str) -> bool:
        """Whether the hands of the one are done before the other begins."""
        return self.order.before(first, second)

    def before_all(self, name: str, later: Iterable[str]) -> bool:
        """Whether a step is done before every one of `later`."""
        return all(self.order.before(name, one) for one in later)

    def hours(self, first: str, second: str) -> float:
        """Hours that are sure to lie between two steps. Raises Missing where the wait of the first is still open."""
        wait = self.step(first).then_wait
        self._desk.need(Input(True if wait is not None else None, f"/steps/{first}/then_wait"))
        return self.order.waited(first, second)

    def note(self, *names: str) -> None:
        """Says that these steps were read."""
        for name in names:
            self._desk.need(Input(True, f"/steps/{name}"))

    def _works_on(self, name: str) -> bool:
        return not self._names.isdisjoint(self.step(name).works_on or ())
