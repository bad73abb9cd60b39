"""What became of one plan, small enough to be handed from a worker process to the report as a whole."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Literal

from plumbrule.inspection.types import Inspection, Tally
from plumbrule.report.terms import Terms
from plumbrule.rulebook.rule import LEVELS, Level

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.fault import Fault

PlanVerdict = Literal["pass", "fail", "unreadable"]
EXIT_PASS, EXIT_FAIL, EXIT_UNREADABLE = 0, 1, 2


@dataclass(frozen=True, slots=True)
class Outcome:
    """`levels` counts what breaks or failed, and what is wrong with departures, by level, worst first; `unseen` counts
    the findings that could not be inspected. `part` is this plan's share of the report, `faults` why it cannot be
    read."""

    path: str
    verdict: PlanVerdict
    levels: tuple[int, int, int] = (0, 0, 0)
    unseen: int = 0
    tally: Tally = field(default_factory=Tally)
    part: str = ""
    faults: tuple[str, ...] = ()
    milliseconds: float = 0.0


def levels_of(inspection: Inspection) -> tuple[int, int, int]:
    """How many findings stand at each level, worst first. What is wrong with a departure counts as a correction; what a
    departure allows does not count."""
    counts = dict.fromkeys(LEVELS, 0)
    for finding in inspection.findings:
        if finding.verdict != "allowed":
            counts[finding.level] += 1
    counts["correction"] += len(inspection.about_departures)
    return counts["stop-work"], counts["correction"], counts["advisory"]


def at_or_above(levels: Sequence[int], stop_at: Level) -> int:
    """How many findings fail a run that stops at `stop_at`."""
    return sum(levels[: LEVELS.index(stop_at) + 1])


def judged(tally: Tally) -> int:
    """How many checks came to a verdict."""
    return tally.holds + tally.breaks + tally.allowed + tally.failed


def verdict_of(inspection: Inspection, stop_at: Level) -> PlanVerdict:
    """`fail` when anything stands at or above `stop_at`, and when nothing was judged at all: a run must not turn green
    on a plan of which nothing is known."""
    if not judged(inspection.tally):
        return "fail"
    return "fail" if at_or_above(levels_of(inspection), stop_at) else "pass"


def inspected(examined: Examined, terms: Terms, part: str) -> Outcome:
    """The outcome of a plan that was inspected."""
    inspection = examined.inspection
    return Outcome(
        examined.path,
        verdict_of(inspection, terms.stop_at),
        levels_of(inspection),
        len(inspection.not_inspected),
        inspection.tally,
        part,
        milliseconds=sum(examined.milliseconds.values()),
    )


def unreadable(path: str, faults: Sequence[Fault], part: str) -> Outcome:
    """The outcome of a plan that could not be read."""
    return Outcome(path, "unreadable", part=part, faults=tuple(str(fault) for fault in faults))


def exit_code(outcomes: Sequence[Outcome]) -> int:
    """2 when any plan could not be read, else 1 when any fails, else 0."""
    if any(outcome.verdict == "unreadable" for outcome in outcomes):
        return EXIT_UNREADABLE
    return EXIT_FAIL if any(outcome.verdict == "fail" for outcome in outcomes) else EXIT_PASS
