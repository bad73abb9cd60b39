"""What tasks, products, finishes and woods do to people, typed: the table `tasks`."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, NamedTuple, TypeVar

from plumbrule.mechanics.table_rows import Basis
from plumbrule.mechanics.tables import Tables
from plumbrule.mechanics.worked import NotPossible

K = TypeVar("K")
T = TypeVar("T")

Dust = Literal["none", "wood", "gypsum", "paint", "masonry", "settled"]
Disturbs = Literal["nothing", "pried", "drilled", "ground", "stripped", "cut"]
Reaches = Literal["nothing", "wall", "steel"]
Lifts = Literal["nothing", "as bought", "as finished", "steel"]
Vapour = Literal["none", "mild", "flammable", "strong", "two-part"]
Risk = Literal["none", "allergy", "asthma", "cancer"]

# Weakest first: of two tins in one step the later word counts.
VAPOURS: tuple[Vapour, ...] = ("none", "mild", "flammable", "strong", "two-part")
RISKS: tuple[Risk, ...] = ("none", "allergy", "asthma", "cancer")


class TaskRow(NamedTuple):
    """What one task does. `noise` is the usual level at the ear in dBA, 0 where it is not loud."""

    name: str
    dust: Dust
    eyes: bool
    noise: float
    turning: bool
    sparks: bool
    laser: bool
    disturbs: Disturbs
    reaches: Reaches
    lifts: Lifts
    vapour: Vapour
    keep_out: bool
    basis: Basis

    @property
    def idle(self) -> bool:
        """Whether the task by itself hurts nobody: what is in the tin may."""
        quiet = self.dust == "none" and self.noise == 0 and self.vapour == "none"
        still = self.disturbs == self.lifts == self.reaches == "nothing"
        dangers = self.eyes or self.turning or self.sparks or self.laser or self.keep_out
        return quiet and still and not dangers


class Tin(NamedTuple):
    """What is in a product, a finish, an adhesive or a coat of paint."""

    name: str
    vapour: Vapour
    alkali: bool
    epoxy: bool
    self_heating: bool
    basis: Basis


class TaskTable(NamedTuple):
    """The table. A word that is not in it raises NotPossible."""

    tasks: Mapping[str, TaskRow]
    tins: Mapping[tuple[str, str], Tin]
    woods: Mapping[str, Risk]
    sheets: Mapping[str, float]

    def task(self, name: str) -> TaskRow:
        """The row of a task."""
        return _of(self.tasks, name, name)

    def tin(self, part: str, name: str) -> Tin:
        """What is in it. `part` is `products`, `finishes`, `adhesives` or `coats`."""
        return _of(self.tins, (part, name), name)

    def wood(self, species: str) -> Risk:
        """What the dust of a species is known for, beyond what any wood dust does."""
        return self.woods.get(species, "none")


def _of(rows: Mapping[K, T], key: K, name: str) -> T:
    if key not in rows:
        raise NotPossible(f"{name} is not in the table of what tasks do")
    return rows[key]


def task_table(tables: Tables) -> TaskTable:
    """The typed table, made anew at each call: whoever asks often keeps it."""
    data = tables.data["tasks"]
    tins = {
        (part, row["name"]): Tin(
            row["name"], row.get("vapour", "none"), row.get("alkali", False), row.get("epoxy", False),
            row.get("self_heating", False), row["basis"],
        )
        for part in ("products", "finishes", "adhesives", "coats")
        for row in data[part]
    }  # fmt: skip
    return TaskTable(
        {row["name"]: _task(row) for row in data["rows"]}, tins,
        {row["name"]: row["risk"] for row in data["woods"]},
        {row["name"]: float(row["density"]) for row in data["sheets"]},
    )  # fmt: skip


def _task(row: Mapping[str, Any]) -> TaskRow:
    return TaskRow(
        row["name"], row.get("dust", "none"), row.get("eyes", False), float(row.get("noise", 0)),
        row.get("turning", False), row.get("sparks", False), row.get("laser", False),
        row.get("disturbs", "nothing"), row.get("reaches", "nothing"), row.get("lifts", "nothing"),
        row.get("vapour", "none"), row.get("keep_out", False), row["basis"],
    )  # fmt: skip
