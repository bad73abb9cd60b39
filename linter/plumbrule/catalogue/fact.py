"""One thing that can be measured of a row: its name, its type, the unit it is kept in, and what it means."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from plumbrule.language import ListOf, Number, Truth, Type, Word
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import UNITS

Value = float | str | bool | tuple[float, ...] | tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Fact:
    """A field of a row. `unit` is the unit the value is kept in (SI); empty for words, truths and plain numbers."""

    name: str
    type: Type
    unit: str
    says: str


@dataclass(frozen=True, slots=True)
class RowType:
    """What a rule may look at: `kind` is the word after `looks_at`, `facts` are the names its expressions may use."""

    kind: str
    says: str
    facts: tuple[Fact, ...]
    by_name: Mapping[str, Fact] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        by_name = {fact.name: fact for fact in self.facts}
        if len(by_name) != len(self.facts):
            raise ValueError(f"{self.kind}: a fact is named twice")
        object.__setattr__(self, "by_name", by_name)

    def types(self) -> dict[str, Type]:
        """Name to type, as the rule language wants them."""
        return {fact.name: fact.type for fact in self.facts}


@dataclass(frozen=True, slots=True)
class Row:
    """One stud, screw, hole, angle … of a plan, worked out.

    A field stands in exactly one of `values`, `missing` (the plan pointers it waits for), `outside` (why the published
    formulas do not cover it) and `failed` (why it could not be worked out), or in none where it does not exist on this
    row: a seat screw has no stud. `part` is the pointer of the named part the row belongs to.
    """

    kind: str
    pointer: str
    part: str
    label: str
    values: Mapping[str, Value]
    worked: Mapping[str, Worked]
    inputs: Mapping[str, tuple[str, ...]]
    missing: Mapping[str, tuple[str, ...]]
    outside: Mapping[str, str]
    failed: Mapping[str, str]
    assumed: Mapping[str, str]


def number(name: str, unit: str, says: str) -> Fact:
    """A measured quantity kept in `unit`, which must be an SI unit of the table (factor 1, no offset)."""
    row = UNITS[unit]
    if unit != "%" and (row.factor, row.offset) != (1.0, 0.0):
        raise ValueError(f"{name}: {unit} is not a unit that values are kept in")
    return Fact(name, Number(row.dimension), unit, says)


def count(name: str, says: str) -> Fact:
    """A plain number: a count or a ratio."""
    return Fact(name, Number(UNITS[""].dimension), "", says)


def word(name: str, allowed: tuple[str, ...], says: str) -> Fact:
    """One word of a closed list."""
    return Fact(name, Word(tuple(allowed)), "", says)


def words(name: str, allowed: tuple[str, ...], says: str) -> Fact:
    """A list of words, each of a closed list."""
    return Fact(name, ListOf(Word(tuple(allowed))), "", says)


def truth(name: str, says: str) -> Fact:
    """True or false."""
    return Fact(name, Truth(), "", says)
