"""One call of every public calculation about abrasives, finishes, adhesive and the order of steps."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import bonding, coats, grit, precedence, tables
from plumbrule.mechanics.calendar import WorkingHours
from plumbrule.mechanics.precedence import Task

TABLES = tables.load()


def _chains() -> list[Any]:
    """A chain within one day, one over a night and a week-end, and one of coats."""
    found = []
    for tasks in (
        {"measure": Task(2), "find": Task(1, after=("measure",))},
        {"lay": Task(12, wait=1), "roll": Task(1, wait=72, at_once_after=("lay",)), "seal": Task(1, after=("roll",))},
        {"sand": Task(4), "oil": Task(3, wait=500, after=("sand",), coats=3, between=24)},
    ):
        worked = precedence.times(tasks, WorkingHours(8.0, 16.0, (0, 1, 2, 3, 4)))
        found.append(precedence.lasts(tasks, worked))
    return found


FINISHING_CALLS: dict[str, Callable[[], Any]] = {
    "gap_under_panel": lambda: [bonding.gap_under_panel(1.5, edge, 1219.2) for edge in (600.0, 1219.2, 2438.4)],
    "bonded_area": lambda: [bonding.bonded_area(2.5e5), bonding.bonded_area(2.5e5, 25.0, 100.0)],
    "bond_shear": lambda: [bonding.bond_shear(mass, 2.5e5) for mass in (0.0, 1.4, 8.0)],
    "clock": lambda: [
        coats.clock(TABLES, row["name"], what)
        for row in TABLES.data["finishes"]["rows"]
        for what in ("recoat", "handle", "cure")
    ],
    "pour_depth": lambda: [coats.pour_depth(25.4, pours) for pours in (1, 3)],
    "step": lambda: [grit.step(201.0, fine) for fine in (125.0, 201.0, 268.0)],
    "lasts": _chains,
}
