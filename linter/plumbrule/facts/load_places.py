"""The places at which a support is screwed to the wall, each with its screws row by row, for the load path."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.facts.desk import Desk
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.stations import Stations
from plumbrule.facts.supports import Support
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.plan_file import Plan

_SAME = 1e-6


class Drilled(NamedTuple):
    """One hole with its screw: how far from the heel (a cleat: its upper edge), and both as they were worked out."""

    heel: float
    drilling: Drilling
    screw: Row
    hole: Row


class Place(NamedTuple):
    """One place: `x` from the left end of the support, `on_wall` from that of the wall, mm, and its screws row by row,
    the row nearest the heel first."""

    x: float
    on_wall: float
    rows: tuple[tuple[Drilled, ...], ...]

    @property
    def screws(self) -> int:
        """How many screws there are."""
        return sum(len(row) for row in self.rows)

    @property
    def all(self) -> tuple[Drilled, ...]:
        """Every screw."""
        return tuple(one for row in self.rows for one in row)


Rows = Mapping[int, tuple[Row, Row]]


def places_of(plan: Plan, support: Support, rows: Rows, desk: Desk) -> tuple[Place, ...]:
    """Every place of a support at which a screw is meant for wood. `rows` gives screw and hole by `id` of a drilling.
    Raises Missing, and OutsideRulebook where nothing holds."""
    stations = Stations(plan, support)
    wall = [drilling for drilling in support.drillings if drilling.leg == "wall"]
    holding = [drilling for drilling in wall if stations.reaches(desk, drilling)]
    desk.need_all(*(source for one in holding for source in (one.x, one.y, one.on_wall)))
    found: list[list[Drilled]] = []
    at: list[tuple[float, float]] = []
    for one in sorted(holding, key=lambda one: (desk.length(one.x), desk.length(one.y))):
        x = desk.length(one.x)
        if not at or x - at[-1][0] > _SAME:
            at.append((x, desk.length(one.on_wall)))
            found.append([])
        found[-1].append(Drilled(desk.length(one.y), one, *rows[id(one)]))
    if not found:
        raise OutsideRulebook("No wall screw of this part is meant for wood, so nothing holds it up.")
    return tuple(Place(x, on_wall, _by_row(holes)) for (x, on_wall), holes in zip(at, found, strict=True))


def _by_row(holes: list[Drilled]) -> tuple[tuple[Drilled, ...], ...]:
    rows: list[list[Drilled]] = []
    for one in holes:
        if not rows or one.heel - rows[-1][0].heel > _SAME:
            rows.append([])
        rows[-1].append(one)
    return tuple(tuple(row) for row in rows)
