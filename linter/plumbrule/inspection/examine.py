"""One plan, from its text to its inspection: the way every command and every example takes."""

from __future__ import annotations

import time
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date

from plumbrule.catalogue.fact import Row
from plumbrule.facts.facts import work_out
from plumbrule.inspection.departures import barred
from plumbrule.inspection.inspect import inspect
from plumbrule.inspection.types import Departure, Inspection
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.read import read_plan
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import Document
from plumbrule.reading.shown import System
from plumbrule.reading.spelling import nearest
from plumbrule.rulebook.rulebook import Rulebook


@dataclass(frozen=True, slots=True)
class Examined:
    """A plan that was read, worked out and inspected. `system` is how its author measures: `inch` or `metric`."""

    path: str
    document: Document
    plan: Plan
    rows: Mapping[str, tuple[Row, ...]]
    to_measure: tuple[str, ...]
    system: System
    inspection: Inspection
    milliseconds: dict[str, float] = field(default_factory=dict)


def examine(document: Document, rulebook: Rulebook, today: date, timing: bool = False) -> Examined:
    """Reads, works out and inspects one plan. Raises Unreadable with every fault of the plan."""
    spent: dict[str, float] = {}
    started = time.perf_counter()
    plan = read_plan(document)
    departures = _departures(plan, rulebook)
    spent["plan"] = _since(started)
    started = time.perf_counter()
    facts = work_out(plan, rulebook.hours, rulebook.loads)
    spent["facts"] = _since(started)
    started = time.perf_counter()
    inspection = inspect(facts.rows, rulebook, departures, today, facts.system, timing)
    spent["rules"] = _since(started)
    return Examined(
        document.path, document, plan, facts.rows, plan.to_measure, facts.system, inspection, spent if timing else {}
    )


def _since(started: float) -> float:
    return (time.perf_counter() - started) * 1e3


def _departures(plan: Plan, rulebook: Rulebook) -> Sequence[Departure]:
    """The plan's departures, each from a rule that exists and may be departed from. Raises Unreadable."""
    made, faults = [], []
    document = plan.document
    for name, entry in plan.model.departures.items():
        pointer = f"/departures/{name}"
        rule = rulebook.rule(entry.rule)
        if rule is None:
            near = nearest(entry.rule, [known.id for known in rulebook.rules])
            write = f"Did you mean {near}?" if near else "See: plumbrule rulebook."
            place = document.place(f"{pointer}/rule")
            faults.append(Fault(document.path, place, f"{pointer}/rule", f"No rule {entry.rule}.", write))
            continue
        if why_not := barred(rule.trade, rule.level):
            place = document.place(f"{pointer}/rule")
            faults.append(Fault(document.path, place, f"{pointer}/rule", why_not, "Put the plan right instead."))
            continue
        made.append(
            Departure(
                name, entry.rule, entry.at, entry.reason, entry.allowed_by, entry.until, _margin(entry.margin), pointer
            )
        )
    if faults:
        raise Unreadable(faults)
    return made


def _margin(written: str | float | None) -> float | None:
    """The margin when it was allowed, in SI. A plain number is a margin without a unit."""
    if written is None or not isinstance(written, str):
        return written
    from plumbrule.reading.notation import measure

    return measure(written.lstrip("-")).value * (-1 if written.startswith("-") else 1)
