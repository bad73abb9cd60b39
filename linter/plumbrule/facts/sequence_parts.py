"""Which parts a step works on, seen from another trade: the wall of an angle, the steel under a board."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

from plumbrule.facts.order import Order
from plumbrule.plan.plan_file import Plan

# The same part; the walls it is on; what carries it.
Seen = Literal["same", "wall", "under"]

# Tasks that belong to the room: where the plan does not say what they are done to, that is the whole of it.
OF_THE_ROOM = frozenset({"measure room", "protect room", "snap level line", "make rags safe", "hand over"})


class Parts:
    """The parts of a plan as steps name them."""

    def __init__(self, plan: Plan) -> None:
        model = plan.model
        self._walls: dict[str, tuple[str, ...]] = {}
        for section in (model.angles, model.brackets, model.cleats, model.boards):
            self._walls.update((name, (part.wall,)) for name, part in (section or {}).items())
        for name, field in (model.panels or {}).items():
            self._walls[name] = tuple(field.walls)
        for name, trim in (model.trims or {}).items():
            self._walls[name] = tuple(model.walls or {}) if trim.walls is None else tuple(trim.walls)
            if (corner := (model.corners or {}).get(trim.along or "")) is not None and trim.walls is None:
                self._walls[name] = tuple(wall for wall in (corner.from_, corner.to) if wall is not None)
        for name, wall in (model.walls or {}).items():
            self._walls[name] = (name,)
            inside: tuple[Mapping[str, object] | None, ...] = (wall.blocking, wall.boxes, wall.openings)
            self._walls.update((one, (name,)) for held in inside for one in held or {})
        self._under = {name: tuple(board.bears_on) for name, board in (model.boards or {}).items()}

    def seen(self, steps: Order, step: str, how: Seen) -> tuple[str, ...]:
        """The parts that a step works on, or the walls they are on, or what carries them. A step that names none has
        none here."""
        works_on = steps.step(step).works_on or ()
        if how == "same":
            return tuple(works_on)
        of = self._walls if how == "wall" else self._under
        return tuple(dict.fromkeys(part for one in works_on for part in of.get(one, ())))


def named(steps: Order, task: str, part: str) -> tuple[str, ...]:
    """The steps with that task that say that they work on the part. A task of the room works on all of it unless it
    says otherwise."""
    return tuple(
        name for name in steps.doing(task, part) if steps.step(name).works_on is not None or task in OF_THE_ROOM
    )


def unsaid(steps: Order, task: str) -> tuple[str, ...]:
    """Where steps with that task ought to say what they work on and do not."""
    if task in OF_THE_ROOM:
        return ()
    return tuple(f"{steps.pointer(name)}/works_on" for name in steps.doing(task) if steps.step(name).works_on is None)


def parts(plan: Plan) -> Parts:
    """The parts of the plan, looked up once."""
    found: Parts | None = plan.reckoned.get("parts of steps")
    if found is None:
        found = plan.reckoned["parts of steps"] = Parts(plan)
    return found
