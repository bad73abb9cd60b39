"""What an inspection says: findings, what was not inspected, and the tally."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from typing import Literal

from plumbrule.catalogue.fact import Row
from plumbrule.rulebook.rule import Level, Rule

Verdict = Literal["holds", "breaks", "not inspected", "allowed", "failed"]
Bound = Literal["at least", "at most", ""]


@dataclass(frozen=True, slots=True)
class Departure:
    """An allowed departure as the plan writes it. `margin` is the margin, in SI, when it was allowed."""

    name: str
    rule: str
    at: str
    reason: str
    allowed_by: str
    until: date
    margin: float | None
    pointer: str


@dataclass(frozen=True, slots=True)
class Finding:
    """One rule on one row, and on the rows that gave the very same (`also_at`).

    `measure`, `limit` and `margin` are in SI, in `unit`; they are None for a rule about words and wherever nothing was
    compared. `bound` says which way the limit works. `missing` are the plan pointers to fill in, `reason` is why a rule
    failed or why the published formulas say nothing. `level` is the level in force: house and trial applied.
    """

    rule: Rule
    verdict: Verdict
    level: Level
    row: Row
    pointer: str
    text: str
    measure: float | None = None
    limit: float | None = None
    margin: float | None = None
    unit: str = ""
    bound: Bound = ""
    missing: tuple[str, ...] = ()
    reason: str = ""
    departure: Departure | None = None
    also_at: tuple[Row, ...] = ()

    def judgements(self) -> int:
        """How many single judgements this finding stands for."""
        return 1 + len(self.also_at)


@dataclass(frozen=True, slots=True)
class DepartureNote:
    """Something to put right about an allowed departure itself: it is `unused`, `expired`, or `void` because the
    margin has become worse than when it was allowed. Counts as a correction."""

    departure: Departure
    kind: Literal["unused", "expired", "void"]
    text: str


@dataclass(frozen=True, slots=True)
class Tally:
    """Judgements by verdict. `does_not_apply` is counted apart and never shown as holding."""

    holds: int = 0
    breaks: int = 0
    not_inspected: int = 0
    allowed: int = 0
    failed: int = 0
    does_not_apply: int = 0


@dataclass(frozen=True, slots=True)
class Inspection:
    """All of one plan. `findings` are what breaks, fails or is allowed, worst first; `not_inspected` stands beside
    them, as loud; `assumed` are the worse cases that were taken where the plan is silent: plan pointer and sentence.
    `held` are the rules that held somewhere on a part: rule and part, in order."""

    findings: tuple[Finding, ...]
    not_inspected: tuple[Finding, ...]
    tally: Tally
    about_departures: tuple[DepartureNote, ...] = ()
    assumed: tuple[tuple[str, str], ...] = ()
    held: tuple[tuple[str, str], ...] = ()
    milliseconds: dict[str, float] = field(default_factory=dict)
