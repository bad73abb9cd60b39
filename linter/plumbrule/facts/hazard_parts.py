"""Which walls, boards and steel a step is done to, and who is in the room: what every row of a hazard asks."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cache

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics.task_table import TaskTable, task_table
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.steps import Step
from plumbrule.plan.walls import Wall


@cache
def task_rows() -> TaskTable:
    """What tasks, tins and woods do to people: read once."""
    return task_table(tables())


class Parts:
    """The parts of a plan by name, as steps speak of them. A step that does not say what it works on is done to every
    part that its task may be done to: the worse case."""

    def __init__(self, plan: Plan, supports: Sequence[Support]) -> None:
        self.plan = plan
        self.model = plan.model
        self.supports = supports
        self.walls: Mapping[str, Wall] = plan.model.walls or {}
        self._boxes = {box: name for name, wall in self.walls.items() for box in wall.boxes or {}}
        self._boxes |= {opening: name for name, wall in self.walls.items() for opening in wall.openings or {}}
        self._on = {support.name: support.wall_name for support in supports}

    def walls_of(self, step: Step) -> tuple[str, ...]:
        """Names of the walls it is done to, or at."""
        if step.works_on is None:
            return tuple(self.walls)
        found: dict[str, None] = {}
        for name in step.works_on:
            found.update(dict.fromkeys(self._walls_at(name)))
        return tuple(name for name in found if name in self.walls)

    def boards_of(self, step: Step) -> tuple[str, ...]:
        """Names of the boards it is done to."""
        boards = self.model.boards or {}
        return tuple(boards) if step.works_on is None else tuple(name for name in step.works_on if name in boards)

    def fields_of(self, step: Step) -> tuple[str, ...]:
        """Names of the panel fields it is done to."""
        fields = self.model.panels or {}
        return tuple(fields) if step.works_on is None else tuple(name for name in step.works_on if name in fields)

    def supports_of(self, step: Step) -> tuple[Support, ...]:
        """The angles, brackets and cleats it is done to, and those under the boards it is done to."""
        if step.works_on is None:
            return tuple(self.supports)
        names = set(step.works_on)
        for name in self.boards_of(step):
            names.update((self.model.boards or {})[name].bears_on)
        return tuple(support for support in self.supports if support.name in names)

    def under(self, board: str) -> tuple[Support, ...]:
        """What one board lies on."""
        names = (self.model.boards or {})[board].bears_on
        return tuple(support for support in self.supports if support.name in names)

    def _walls_at(self, name: str) -> Iterator[str]:
        if name in self.walls:
            yield name
        elif name in (self.model.panels or {}):
            yield from (self.model.panels or {})[name].walls
        elif name in self._on:
            yield self._on[name]
        elif name in self._boxes:
            yield self._boxes[name]
        elif name in (self.model.trims or {}):
            yield from (self.model.trims or {})[name].walls or self.walls
        elif name in (self.model.sealants or {}):
            yield from self._sealed_by(name)

    def _sealed_by(self, sealant: str) -> Iterator[str]:
        """The walls of the panels it seals. Of a sealant that no panel field names it may be any wall."""
        fields = [field for field in (self.model.panels or {}).values() if field.sealed_with == sealant]
        for field in fields:
            yield from field.walls
        if not fields:
            yield from self.walls


def children(desk: Desk, plan: Plan) -> bool:
    """Whether children use the room. Raises Missing where nobody says who does: a list of nobody says nothing."""
    site = plan.model.site
    people = desk.need(Input((site.people or None) if site else None, "/site/people"))
    assert isinstance(people, list | tuple)
    return "children" in people
