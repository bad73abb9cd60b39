"""Allowed departures: which findings they cover, and which of them are worth nothing any more."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from plumbrule.inspection.types import Departure, DepartureNote, Finding
from plumbrule.language import TOLERANCE

# What people hang on, and what hurts, is not for a plan to allow.
NEVER_TRADES = ("hazards",)
NEVER_STOP_WORK_TRADES = ("framing", "loads", "electrical")


def barred(trade: str, level: str) -> str:
    """Why no departure may be made from a rule of this trade and level, or an empty text."""
    if trade in NEVER_TRADES:
        return "Hazards cannot be departed from."
    if level == "stop-work" and trade in NEVER_STOP_WORK_TRADES:
        return f"People's safety hangs on it: a stop-work rule of {trade} cannot be departed from."
    return ""


class Allowances:
    """The departures of one plan while it is inspected."""

    def __init__(self, departures: Sequence[Departure], today: date) -> None:
        self._departures = departures
        self._today = today
        self._used: set[str] = set()
        self._void: dict[str, Finding] = {}

    def apply(self, finding: Finding) -> Finding:
        """The finding, allowed where a departure covers it, is not expired, and the margin got no worse."""
        if finding.verdict != "breaks":
            return finding
        for departure in self._departures:
            if not self._covers(departure, finding):
                continue
            self._used.add(departure.name)
            if self._expired(departure):
                continue
            if departure.margin is not None and finding.margin is not None:
                slack = TOLERANCE * max(abs(departure.margin), abs(finding.margin), 1.0)
                if finding.margin < departure.margin - slack:
                    self._void.setdefault(departure.name, finding)
                    continue
            return replace(finding, verdict="allowed", departure=departure)
        return finding

    def notes(self) -> tuple[DepartureNote, ...]:
        """What is wrong with the departures themselves, in the order of the plan."""
        notes = []
        for departure in self._departures:
            if self._expired(departure):
                day = departure.until.isoformat()
                text = f"The departure {departure.name} ran out on {day}: ask again, or put it right."
                notes.append(DepartureNote(departure, "expired", text))
            elif departure.name not in self._used:
                text = f"The departure {departure.name} covers nothing any more: take it out of the plan."
                notes.append(DepartureNote(departure, "unused", text))
            elif departure.name in self._void:
                text = f"The departure {departure.name} no longer holds: the margin is worse than when it was allowed."
                notes.append(DepartureNote(departure, "void", text))
        return tuple(notes)

    def _covers(self, departure: Departure, finding: Finding) -> bool:
        if departure.rule != finding.rule.id or barred(finding.rule.trade, finding.rule.level):
            return False
        places = (finding.row.pointer, finding.row.part, finding.pointer)
        return any(place == departure.at or place.startswith(departure.at + "/") for place in places)

    def _expired(self, departure: Departure) -> bool:
        return departure.until < self._today
