"""The clock of one board: from coat to coat, from the last coat or pour to work, to setting, and to a lasting load."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.step_times import StepsOf

_PUTS_WEIGHT_ON = ("proof load", "hand over")
_CUTS_INTO = ("flatten board", "sand board", "ease edges", "cut board to length")
_CATCHES_DUST = ("dust extraction", "HEPA vacuum", "wet sanding")


class Clock:
    """The steps of one board. Where a step may come before or after another, the shorter time counts: none at all."""

    def __init__(self, desk: Desk, steps: StepsOf) -> None:
        self._desk, self._steps = desk, steps

    def doing(self, task: str) -> tuple[str, ...]:
        """The steps that do it to this board. Raises Missing where there is none, or none that says so."""
        found = self._steps.sure(task)
        if not found:
            unsaid = self._steps.possible(task)
            raise Missing([f"/steps/{name}/works_on" for name in unsaid] or ["/steps"])
        return found

    def dust_taken_away(self) -> bool:
        """Whether every step that sands the board says where its dust goes."""
        sandings = self.doing("sand board")
        for name in sandings:
            self._desk.need(Input(True, f"/steps/{name}/controls"))
        return all(any(one in _CATCHES_DUST for one in self._steps.step(name).controls) for name in sandings)

    def between_coats(self, coats: float) -> float:
        """Shortest wait from coat to coat, within a step or from one finishing step to the next. Raises Missing where
        there are more `coats` on a side than steps and one of these does not say what it waits between them."""
        steps = self.doing("finish board")
        found: list[float] = []
        for name in steps:
            wait = self._steps.step(name).between_coats
            if wait is not None:
                found.append(self._desk.length(Input(wait, f"/steps/{name}/between_coats")))
            elif coats > len(steps):
                raise Missing([f"/steps/{name}/between_coats"])
        for place, first in enumerate(steps):
            for second in steps[place + 1 :]:
                if self._steps.before(second, first):
                    found.append(self._steps.hours(second, first))
                else:
                    found.append(self._steps.hours(first, second))
        if not found:
            raise Missing([f"/steps/{name}/between_coats" for name in steps])
        return min(found)

    def set_after_finish(self) -> bool:
        """Whether some setting of the board is not sure to come before its finish."""
        self._steps.note(*self.doing("finish board"))
        return bool(self._later("finish board", self._settings()))

    def set_after(self) -> float:
        """From the last coat until the board is carried and set."""
        return self._shortest("finish board", self._settings())

    def _settings(self) -> tuple[str, ...]:
        """The steps that set the board; where none does, those that screw it down set it too."""
        return self._steps.possible("set board") or self._steps.possible("screw board down")

    def loaded_after(self, task: str) -> float:
        """From a step of that task until the board is proved or handed over or, where no step does that, set."""
        loads = self._steps.possible(*_PUTS_WEIGHT_ON)
        for weights in (loads, self._steps.possible("screw board down"), self._steps.possible("set board")):
            if self._later(task, weights):
                return self._shortest(task, weights)
        raise Missing(["/steps"])

    def pours(self, cracks: int) -> int:
        """How many pours one of `cracks` that are filled is sure to get: a step may be for another crack."""
        steps = self.doing("fill cracks")
        self._steps.note(*steps)
        return max(1, len(steps) - (cracks - 1))

    def worked(self) -> bool:
        """Whether the board is worked with tools after it was filled, or may be."""
        self._steps.note(*self.doing("fill cracks"))
        return bool(self._later("fill cracks", self._steps.possible(*_CUTS_INTO)))

    def worked_after(self) -> float:
        """From the last pour until a tool goes over the fill."""
        return self._shortest("fill cracks", self._steps.possible(*_CUTS_INTO))

    def _later(self, task: str, others: Sequence[str]) -> tuple[tuple[str, str], ...]:
        """Pairs of a step of that task and one of `others` that is not sure to be done before it."""
        return tuple(
            (name, other) for name in self.doing(task) for other in others if not self._steps.before(other, name)
        )

    def _shortest(self, task: str, others: Sequence[str]) -> float:
        pairs = self._later(task, others)
        if not pairs:
            raise Missing(["/steps"])
        return min(self._steps.hours(name, other) for name, other in pairs)
