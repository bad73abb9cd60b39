"""The loads that a board is tried with: which belong to it, how large each is, and what each rests on."""

from __future__ import annotations

from typing import Literal, NamedTuple

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.load_chosen import Chosen
from plumbrule.facts.load_path import Path
from plumbrule.facts.supports import people_on
from plumbrule.mechanics import loads
from plumbrule.mechanics.factors import Duration
from plumbrule.mechanics.given import Given, si
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.quantities import Load as DeclaredLoad

Kind = Literal["D", "S1", "S2", "S3", "S4", "S5", "S6", "SP", "S7"]


class Load(NamedTuple):
    """One load: the word a reader knows it by, what it rests on, the kind of it that the formulas know, how long it
    lasts, and whether it is the plan's own figure where that is below the benchmark."""

    case: str
    standing: str
    kind: Kind
    duration: Duration
    declared: bool = False


OWN_WEIGHT = Load("own weight", "lasting", "D", "permanent")
PUSH_OUT = Load("a push off the wall", "benchmark", "S4", "people")
PUSH_ALONG = Load("a push along the wall", "benchmark", "S4", "people")
_PEOPLE = (
    Load("one person", "benchmark", "S1", "people"),
    Load("full seat", "benchmark", "S2", "people"),
    Load("two people", "advisory", "S3", "people"),
    Load("dropping onto the seat", "advisory", "S5", "impact"),
)
_PERSON_DECLARED = Load("one person as declared", "declared", "S1", "people", declared=True)
_SEAT_DECLARED = Load("full seat as declared", "declared", "S2", "people", declared=True)
STORAGE = Load("storage", "lasting", "S6", "stored goods")
_BOOKS = Load("books", "advisory", "S6", "stored goods")
_ONE_PLACE = Load("a load at one place", "declared", "SP", "stored goods")
_LEAN = Load("leaning", "advisory", "S7", "people")
_TIE = 1e-9
_NO_STORAGE = ("display", "nothing", "storage")


class Kinds:
    """The loads of one board, and how large each is."""

    def __init__(self, plan: Plan, path: Path, chosen: Chosen) -> None:
        self.path, self._chosen = path, chosen
        under = path.behind if path.supports else None
        here, bears = (under.pointer, under.bears_at.value) if under else (path.pointer, None)
        assert bears is None or isinstance(bears, int | float)
        self.people = people_on(plan, ((path.name, path.board),), here, bears)
        self._bears = Input(bears, f"{here}/bears_at")
        load = path.board.load
        self._point = Input(load.point if load else None, f"{path.pointer}/load/point")
        self._uniform = Input(load.uniform if load else None, f"{path.pointer}/load/uniform")
        self._unmeasured = tuple(
            source.pointer for source in (self._point, self._uniform) if source.pointer in plan.to_measure
        )

    @property
    def declared_point(self) -> float | None:
        """The force the plan declares for one place, N."""
        return float(self._point.value) if isinstance(self._point.value, int | float) else None

    def all(self) -> tuple[Load, ...]:
        """Every load to try. Where nobody knows whether people come to the board, theirs are tried: they then wait for
        what is wanting."""
        if self.people.value is False:
            return (OWN_WEIGHT, *self._of_shelf())
        more: list[Load] = []
        if self.declared_point is not None and self.declared_point < self._chosen.person * (1 - _TIE):
            more.append(_PERSON_DECLARED)
        line = self._declared_line(None)
        if line is not None and line < self._chosen.seat * (1 - _TIE):
            more.append(_SEAT_DECLARED)
        length = self.path.board.length
        fit = [load for load in _PEOPLE if load.kind != "S3" or length is None or length >= loads.TWO_FIT_FROM - 1e-6]
        return (OWN_WEIGHT, *fit, *more)

    def pushes(self) -> tuple[Load, ...]:
        """The pushes to try: whoever sits or stands on a board also pulls at it and falls against it."""
        return () if self.people.value is False else (PUSH_OUT, PUSH_ALONG)

    def _of_shelf(self) -> tuple[Load, ...]:
        found = [STORAGE]
        if self._uniform.value is not None and self.path.board.carries in _NO_STORAGE:
            line = self._declared_line(None)
            if line is None or line < self._least("books") * (1 - _TIE):
                found.append(_BOOKS)
        if self._point.value is not None:
            found.append(_ONE_PLACE)
        return (*found, _LEAN)

    def require_people_known(self, desk: Desk) -> None:
        """Raises Missing where nobody knows whether people come to this board, or a declared load is to be measured."""
        desk.need(self.people)
        if self._unmeasured:
            raise Missing(self._unmeasured)

    def _declared_line(self, desk: Desk | None) -> float | None:
        value, depth = self._uniform.value, self.path.measure("depth")
        if not isinstance(value, DeclaredLoad):
            return None
        if not value.over_area:
            return float(value)
        if desk is not None:
            return float(value) * desk.length(depth)
        return None if not isinstance(depth.value, int | float) else float(value) * depth.value

    def point(self, desk: Desk, load: Load) -> Given | None:
        """The force of this load in N, or None where it is none of the kind. What the plan declares counts where it is
        more than the benchmark."""
        self.require_people_known(desk)
        own = self.declared_point
        if own is not None:
            desk.need(self._point)
        if load.kind in ("S1", "S3", "S4", "S5"):
            person = own if own is not None and (load.declared or own > self._chosen.person) else self._chosen.person
            given = loads.person_load(person)
            return loads.put_on_suddenly(given) if load.kind == "S5" else given
        if load.kind == "SP":
            return own
        if load.kind == "S7":
            thick = self.path.measure("thickness")
            desk.need_all(self._bears, thick)
            return loads.lean_load(
                desk.length(self._bears) + desk.length(thick), self._chosen.person, self._chosen.lean
            )
        return None

    def line(self, desk: Desk, load: Load) -> Given | None:
        """The spread load of this load in N/mm, or None where it is none of the kind."""
        self.require_people_known(desk)
        if load.kind not in ("S2", "S6", "S7"):
            return None
        own = self._declared_line(desk)
        if own is not None:
            desk.need(self._uniform)
        if load.kind == "S2":
            use = own if own is not None and (load.declared or own > self._chosen.seat) else self._chosen.seat
            return loads.seat_line_load(use)
        return self._stored(own, load)

    def _stored(self, own: float | None, load: Load) -> Given:
        """Books are taken at 25 lb/ft at least; what is displayed or stored at what the plan declares."""
        declared = load is not _BOOKS and self.path.board.carries in _NO_STORAGE
        use = "books" if load is _BOOKS else str(self.path.board.carries)
        # A house that names this use means it, whatever a plan declares below it.
        named = use in self._chosen.storage
        least = 0.0 if declared and own is not None and not named else self._least(use)
        return loads.storage_line_load(max(least, own or 0.0))

    def _least(self, use: str) -> float:
        return self._chosen.storage.get(use, loads.STORAGE_LINE_LOAD)


def size(given: Given | None) -> float:
    """A load that may be none, in SI."""
    return 0.0 if given is None else si(given)
