"""One screw in one hole: what was bought, what it passes, what it goes into, and where all that is written."""

from __future__ import annotations

from functools import lru_cache
from typing import NamedTuple

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import Wood, wood_of
from plumbrule.mechanics.clearance import gauge_diameter
from plumbrule.mechanics.given import si
from plumbrule.mechanics.outside import INSIDE, outside, screw_kind_word
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.resolve import Given
from plumbrule.plan.screws import Screw


class Fastening(NamedTuple):
    """A screw as driven. `here` is the pointer of the screw in the plan; `height` is above the datum."""

    support: Support
    drilling: Drilling
    screw: Screw
    here: str
    wood: Wood
    height: Input

    @property
    def in_wall(self) -> bool:
        """Whether it goes through the wall leg."""
        return self.drilling.leg == "wall"

    def of_screw(self, key: str) -> Input:
        """A value of the screw that stands directly under it."""
        return Input(getattr(self.screw, key), f"{self.here}/{key}")

    def head(self, key: str) -> Input:
        """A value of the screw's head."""
        return Input(getattr(self.screw.head, key) if self.screw.head else None, f"{self.here}/head/{key}")


def fastenings(plan: Plan, support: Support) -> tuple[Fastening, ...]:
    """Every screw of a support."""
    made = []
    for drilling in support.drillings:
        name = drilling.holes.screw.value or ""
        screw = (plan.model.screws or {})[name]
        made.append(
            Fastening(
                support, drilling, screw, f"/screws/{name}", wood_of(support, drilling), _height(support, drilling)
            )
        )
    return tuple(made)


def diameter(screw: Screw, here: str) -> Input:
    """Nominal diameter in mm: as written, or that of the screw's number. `here` is the screw's pointer."""
    if screw.size is not None:
        return Input(si(gauge_diameter(screw.size)), f"{here}/size")
    return Input(screw.diameter, f"{here}/{'diameter' if screw.kind == 'lag screw' else 'size'}")


def published(desk: Desk) -> Fastener:
    """The row of the tables for the screw on the desk. Raises OutsideRulebook for any kind or size without one."""
    return published_of(desk.text("kind"), desk.number("diameter"))


def published_of(kind: str, diameter: float) -> Fastener:
    """The row of the tables for a screw. Raises OutsideRulebook for any kind or size without one."""
    word = screw_kind_word(kind)
    if word != INSIDE:
        raise outside(word)
    return _of_size(kind, diameter)


@lru_cache(maxsize=256)
def _of_size(kind: str, diameter: float) -> Fastener:
    return tables().fastener(kind, diameter)


def given(source: Given[float], says: str = "") -> Input:
    """A value of a drilling pattern, with what was taken where the plan is silent."""
    return Input(source.value, source.pointer, says if source.assumed else "")


def _height(support: Support, drilling: Drilling) -> Input:
    """Height of a wall hole above the datum. The heel lies level with the seat leg's upper face where the wall leg
    hangs down, and with its lower face where it stands up; a cleat is measured down from its upper edge."""
    up = support.wall_leg == "up"
    needed = [support.bears_at, drilling.y, *([support.thickness] if up else [])]
    pointers = [pointer for source in needed for pointer in (source.pointer, *source.also)]
    if any(source.value is None for source in needed):
        wanting = [p for source in needed if source.value is None for p in (source.pointer, *source.also)]
        return Input(None, wanting[0], also=tuple(wanting[1:]))
    bears_at, from_heel = _mm(support.bears_at), _mm(drilling.y)
    value = bears_at - _mm(support.thickness) + from_heel if up else bears_at - from_heel
    return Input(value, pointers[0], also=tuple(pointers[1:]))


def _mm(source: Input) -> float:
    assert isinstance(source.value, int | float)
    return float(source.value)
