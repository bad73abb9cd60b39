"""Names that must exist: every wall, screw, pattern, board or step that a plan speaks of."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from typing import NamedTuple

from plumbrule.plan import words
from plumbrule.plan.complaints import Complaints
from plumbrule.plan.plan_file import Plan, PlanFile
from plumbrule.plan.supports import HoleGroup
from plumbrule.reading.pointer import escape, split

# Section of the plan -> what one of its parts is called.
SECTIONS = {
    "walls": "wall", "corners": "corner", "screws": "screw", "sections": "steel section", "holes": "drilling pattern",
    "angles": "angle", "brackets": "bracket", "cleats": "cleat", "boards": "board", "panels": "panel field",
    "trims": "trim", "sealants": "sealant", "steps": "step",
}  # fmt: skip
IN_WALLS = {"blocking": "block", "boxes": "box", "openings": "opening", "fittings": "fitting"}
SUPPORTS = ("angle", "bracket", "cleat")
WORKED_ON = (
    "wall", "box", "angle", "bracket", "cleat", "board", "panel field", "trim", "sealant", "block", "opening",
)  # fmt: skip


class Named(NamedTuple):
    """A part that has a name."""

    kind: str
    name: str
    pointer: str


class Names:
    """Every named part of a plan, by its name."""

    def __init__(self, model: PlanFile) -> None:
        self._by_name: dict[str, list[Named]] = {}
        for part in _named(model):
            self._by_name.setdefault(part.name, []).append(part)

    def pointers(self, name: str, kinds: Collection[str]) -> list[str]:
        """Where parts of these kinds with this name are written."""
        found = self._by_name.get(name)
        return [part.pointer for part in found if part.kind in kinds] if found else []

    def known(self, kinds: Collection[str]) -> list[str]:
        """All names of these kinds."""
        return [name for name, parts in self._by_name.items() if any(part.kind in kinds for part in parts)]

    def kind_of(self, name: str) -> str | None:
        """What a name stands for, if for anything."""
        return self._by_name[name][0].kind if name in self._by_name else None


def _named(model: PlanFile) -> Iterator[Named]:
    for section, kind in SECTIONS.items():
        parts: Mapping[str, object] = getattr(model, section) or {}
        for name in parts:
            yield Named(kind, name, f"/{section}/{name}")
    for wall_name, wall in (model.walls or {}).items():
        for section, kind in IN_WALLS.items():
            for name in getattr(wall, section) or {}:
                yield Named(kind, name, f"/walls/{wall_name}/{section}/{name}")
    for board_name, board in (model.boards or {}).items():
        for name in board.cracks:
            yield Named("crack", name, f"/boards/{board_name}/cracks/{name}")


class Referring:
    """One look at all the names a plan uses."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self.model = plan.model
        self.names = Names(plan.model)
        self.complain = complaints.add
        self._document = plan.document

    def check(self) -> None:
        """Complains of every name that stands for nothing, for the wrong kind of part, or for two parts."""
        self._walls()
        self._supports()
        self._boards_and_panels()
        self._steps()
        self._departures()

    def one(self, name: str | None, pointer: str, *kinds: str, also: tuple[str, ...] = (), key: bool = False) -> bool:
        """Whether `name`, written at `pointer`, is a part of one of `kinds` or one of the words `also`."""
        if name is None or name in also or self.names.pointers(name, kinds):
            return name is not None
        known = [*self.names.known(kinds), *also]
        other = self.names.kind_of(name)
        wanted = _either(kinds) if len(kinds) <= 3 else "part that work is done to"
        if other is not None and other not in kinds:
            found = f"{name} is {_a(other)}, not {_a(wanted)}."
        elif len(kinds) > 3:
            found = f"Nothing in this plan is called {name}."
        else:
            found = f"No {wanted} called {name}."
        self.complain(pointer, found, _meant(name, known, wanted), key=key)
        return False

    def many(self, names: Iterable[str] | None, pointer: str, *kinds: str) -> None:
        """The same for each item of a list."""
        for index, name in enumerate(names or ()):
            self.one(name, f"{pointer}/{index}", *kinds)

    def _walls(self) -> None:
        for wall_name, wall in (self.model.walls or {}).items():
            for name, block in (wall.blocking or {}).items():
                if block.each_end is not None:
                    at = f"/walls/{wall_name}/blocking/{name}/each_end/screw"
                    self.one(block.each_end.screw, at, "screw")
        for name, corner in (self.model.corners or {}).items():
            at = f"/corners/{name}"
            self.one(corner.from_, f"{at}/from", "wall")
            self.one(corner.to, f"{at}/to", "wall")
            through = corner.panels_run_through
            if self.one(through, f"{at}/panels_run_through", "wall") and through not in (corner.from_, corner.to):
                here = " or ".join(wall for wall in (corner.from_, corner.to) if wall is not None)
                self.complain(f"{at}/panels_run_through", f"Wall {through} is not at this corner.", f"Write {here}.")

    def _supports(self) -> None:
        for name, pattern in (self.model.holes or {}).items():
            self.one(pattern.screw, f"/holes/{name}/screw", "screw")
        for name, angle in (self.model.angles or {}).items():
            at = f"/angles/{name}"
            self.one(angle.wall, f"{at}/wall", "wall")
            self.one(angle.section, f"{at}/section", "steel section")
            self._group(angle.wall_holes, f"{at}/wall_holes", angle.wall)
            self._group(angle.seat_holes, f"{at}/seat_holes", angle.wall)
        for name, bracket in (self.model.brackets or {}).items():
            at = f"/brackets/{name}"
            self.one(bracket.wall, f"{at}/wall", "wall")
            self.one(bracket.section, f"{at}/section", "steel section")
            self._group(bracket.wall_holes, f"{at}/wall_holes", bracket.wall)
            self._group(bracket.seat_holes, f"{at}/seat_holes", bracket.wall)
        for name, cleat in (self.model.cleats or {}).items():
            at = f"/cleats/{name}"
            self.one(cleat.wall, f"{at}/wall", "wall")
            self._group(cleat.wall_holes, f"{at}/wall_holes", cleat.wall)
            self._group(cleat.seat_holes, f"{at}/seat_holes", cleat.wall)

    def _group(self, group: HoleGroup | None, at: str, wall: str) -> None:
        if group is None:
            return
        self.one(group.pattern, f"{at}/pattern", "drilling pattern")
        self.one(group.screw, f"{at}/screw", "screw")
        if not self.one(group.into, f"{at}/into", "block") or group.into is None:
            return
        found = self.names.pointers(group.into, ("block",))
        if wall in (self.model.walls or {}) and f"/walls/{wall}/blocking/{group.into}" not in found:
            elsewhere = split(found[0])[1]
            here = list((self.model.walls or {})[wall].blocking or {})
            self.complain(
                f"{at}/into",
                f"Block {group.into} is in wall {elsewhere}, not in wall {wall}.",
                f"Write {' or '.join(here)}." if here else f"Wall {wall} has no blocking: add it there.",
            )

    def _boards_and_panels(self) -> None:
        for name, board in (self.model.boards or {}).items():
            self.one(board.wall, f"/boards/{name}/wall", "wall")
            self.many(board.bears_on, f"/boards/{name}/bears_on", *SUPPORTS)
        for name, field in (self.model.panels or {}).items():
            self.many(field.walls, f"/panels/{name}/walls", "wall")
            self.one(field.sealed_with, f"/panels/{name}/sealed_with", "sealant")
            for wall in field.courses.starters or {}:
                at = f"/panels/{name}/courses/starters/{wall}"
                if self.one(wall, at, "wall", key=True) and wall not in field.walls:
                    self.complain(at, f"Wall {wall} gets none of these panels.", f"Write {' or '.join(field.walls)}.",
                                  key=True)  # fmt: skip
        for name, trim in (self.model.trims or {}).items():
            self.one(trim.along, f"/trims/{name}/along", "corner", also=words.TRIM_RUNS)
            self.many(trim.walls, f"/trims/{name}/walls", "wall")

    def _steps(self) -> None:
        for name, step in (self.model.steps or {}).items():
            at = f"/steps/{name}"
            for index, part in enumerate(step.works_on or ()):
                if self.one(part, f"{at}/works_on/{index}", *WORKED_ON):
                    twice = self.names.pointers(part, WORKED_ON)
                    if len(twice) > 1:
                        self.complain(f"{at}/works_on/{index}",
                                      f"{part} could be {' or '.join(twice)}.",
                                      "Give each part a name of its own.")  # fmt: skip
            for key, others in (("after", step.after), ("at_once_after", step.at_once_after)):
                self.many(others, f"{at}/{key}", "step")

    def _departures(self) -> None:
        for name, departure in self.model.departures.items():
            at = f"/departures/{name}/at"
            try:
                steps = split(departure.at)
            except ValueError:
                self.complain(at, f"{departure.at} does not point at a part.", "Write it like /angles/seat-back.")
                continue
            # A row of a pattern has a pointer of its own that is not written in the plan: the part must exist.
            part = "".join(f"/{escape(step)}" for step in steps[:2])
            if part not in self._document.spots:
                known = [named.pointer for named in _named(self.model)]
                self.complain(at, f"There is nothing at {departure.at} in this plan.", _meant(part, known, "part"))


def _either(kinds: tuple[str, ...]) -> str:
    return kinds[0] if len(kinds) == 1 else f"{', '.join(kinds[:-1])} or {kinds[-1]}"


def _a(kind: str) -> str:
    return f"{'an' if kind[0] in 'aeiou' else 'a'} {kind}"


def _meant(name: str, known: list[str], wanted: str) -> str:
    """The nearest of the known names, or all of them if they are few."""
    from plumbrule.reading.spelling import MOST_LISTED, nearest

    if not known:
        return f"This plan has no {wanted} yet: add it, or take this line out."
    turned = (other for other in known if sorted(other.split("-")) == sorted(name.split("-")))
    close = next(turned, None) or nearest(name, known)
    if close is not None:
        return f"Did you mean {close}?"
    return f"Write {' or '.join(known)}." if len(known) <= MOST_LISTED else "Check the name."
