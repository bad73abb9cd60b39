"""What a rule is, once it has been read and checked."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal, NamedTuple, get_args

from plumbrule.language import Expression, Type

Level = Literal["stop-work", "correction", "advisory"]
LEVELS: tuple[Level, ...] = get_args(Level)  # worst first

Basis = Literal["published", "common practice", "from memory"]
BASES: tuple[Basis, ...] = get_args(Basis)

Signal = Literal["DANGER", "WARNING", "CAUTION", "NOTICE"]  # ANSI Z535.4
SIGNALS: tuple[Signal, ...] = get_args(Signal)

TRADES = (
    "framing", "steel", "boards", "loads", "surface", "panels",
    "joints", "electrical", "finishing", "hazards", "sequence", "purchase",
)  # fmt: skip


class Source(NamedTuple):
    """A publication of the bibliography."""

    id: str
    title: str
    published_by: str
    where: str


class Citation(NamedTuple):
    """On whose authority a rule stands: which publication, which clause, and whether the text itself was seen."""

    source: Source
    clause: str
    basis: Basis


class Caution(NamedTuple):
    """What to look out for, under its signal word."""

    signal: Signal
    text: str


class RemedyHint(NamedTuple):
    """An input worth trying: the field of the row, and `smaller`, `larger` or the word to put there."""

    change: str
    go: str


class Setting(NamedTuple):
    """A limit of a rule that a house may move within its range. Values in SI; `written` as it stands in the file."""

    name: str
    type: Type
    unit: str
    value: float
    least: float | None
    most: float | None
    says: str
    written: str


class Bounds(NamedTuple):
    """What the measure is held to. `between` is both at once."""

    at_least: Expression | None
    at_most: Expression | None


class Rule(NamedTuple):
    """One rule. Either `measure` (kept in `unit`, SI) with `bounds`, or `that`."""

    id: str
    trade: str
    title: str
    level: Level
    looks_at: str
    when: Expression | None
    measure: Expression | None
    measure_says: str
    bounds: Bounds
    that: Expression | None
    settings: Mapping[str, Setting]
    says: str
    why: str
    sources: tuple[Citation, ...]
    caution: Caution
    defer: str
    remedies: tuple[RemedyHint, ...]
    since: str
    on_trial: bool
    unit: str
    path: str

    def values(self) -> dict[str, float]:
        """The settings in force, by name."""
        return {name: setting.value for name, setting in self.settings.items()}

    def reads(self) -> frozenset[str]:
        """Every field of the row that decides this rule, settings left out."""
        expressions = (self.when, self.measure, self.bounds.at_least, self.bounds.at_most, self.that)
        names = frozenset[str]().union(*(expression.reads for expression in expressions if expression))
        return names - self.settings.keys()
