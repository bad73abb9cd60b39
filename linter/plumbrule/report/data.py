"""The report as JSON, as schema/report.schema.json publishes it: SI values, places from line 1 and column 1."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from plumbrule import __version__
from plumbrule.catalogue.fact import Row
from plumbrule.inspection.types import Departure, Finding, Tally
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.places import Document
from plumbrule.report.clean import clean
from plumbrule.report.figures import compared
from plumbrule.report.outcome import Outcome, exit_code, levels_of, verdict_of
from plumbrule.report.places import where
from plumbrule.report.sums import worked_of_finding
from plumbrule.report.terms import Terms
from plumbrule.report.unseen import wanting
from plumbrule.rulebook.rule import Citation

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.fault import Fault
    from plumbrule.rulebook.rulebook import Rulebook

Entry = dict[str, Any]


def plan(examined: Examined, terms: Terms) -> str:
    """One plan's entry of the report, as JSON text."""
    return dumps(plan_entry(examined, terms))


def unreadable(path: str, faults: Sequence[Fault], terms: Terms) -> str:
    """The entry of a plan that could not be read, as JSON text."""
    listed = [
        {
            "path": clean(fault.path), "line": fault.place.line + 1, "column": fault.place.column + 1,
            "pointer": clean(fault.pointer), "found": clean(fault.found), "write": clean(fault.write),
        }
        for fault in faults
    ]  # fmt: skip
    return dumps({"path": clean(path), "verdict": "unreadable", "faults": listed})


def whole(outcomes: Sequence[Outcome], terms: Terms, rulebook: Rulebook) -> Iterable[str]:
    """The report of a run. The plans' entries are put in as they are, so that each is written out only once."""
    head = dumps(head_entry(outcomes, terms))
    text = f'{head[:-1]},"plans":[{",".join(outcome.part for outcome in outcomes)}]}}'
    yield (indented(text) if terms.pretty else text) + "\n"


def head_entry(outcomes: Sequence[Outcome], terms: Terms) -> Entry:
    """What is the same for every plan of a run."""
    return {
        "plumbrule": __version__,
        "rulebook": {
            "version": terms.version, "digest": terms.digest, "house": clean(terms.house) or None,
            "changes": [clean(change) for change in terms.changes], "rules": terms.rules,
            "trades": list(terms.trades), "not_looked_at": list(terms.not_looked_at),
        },
        "stop_at": terms.stop_at,
        "exit": exit_code(outcomes),
        "says": "What the rulebook found. It is no permit: the local code and a licensed person decide.",
    }  # fmt: skip


def plan_entry(examined: Examined, terms: Terms) -> Entry:
    """One plan as plain values."""
    inspection, document = examined.inspection, examined.document
    stop_work, corrections, advisories = levels_of(inspection)
    entry: Entry = {
        "path": clean(examined.path),
        "verdict": verdict_of(inspection, terms.stop_at),
        "levels": {"stop-work": stop_work, "correction": corrections, "advisory": advisories},
        "tally": tally_entry(inspection.tally),
        "findings": [finding_entry(finding, document, examined.system) for finding in inspection.findings],
        "not_inspected": [_unseen_entry(finding, document) for finding in inspection.not_inspected],
        "to_measure": [
            {"pointer": clean(thing.pointer), **_line_and_column(document, thing.pointer), "rules": list(thing.rules)}
            for thing in wanting(inspection.not_inspected, examined.to_measure, examined.plan)
        ],
        "assumed": [
            {"pointer": clean(pointer), **_line_and_column(document, pointer), "says": clean(says)}
            for pointer, says in inspection.assumed
        ],
        "about_departures": [
            {"departure": departure_entry(note.departure), "kind": note.kind, "level": "correction",
             "says": clean(note.text), **_line_and_column(document, note.departure.pointer)}
            for note in inspection.about_departures
        ],
    }  # fmt: skip
    if terms.timing:
        entry["milliseconds"] = {"stages": dict(examined.milliseconds), "rules": dict(inspection.milliseconds)}
    return entry


def tally_entry(tally: Tally) -> Entry:
    """Judgements by verdict."""
    return {
        "holds": tally.holds, "breaks": tally.breaks, "not_inspected": tally.not_inspected, "allowed": tally.allowed,
        "failed": tally.failed, "does_not_apply": tally.does_not_apply,
    }  # fmt: skip


def finding_entry(finding: Finding, document: Document, system: str) -> Entry:
    """A finding as plain values. `measure`, `limit` and `margin` are in `unit`, which is SI; `shown` is how a reader of
    the plan's system sees them, with figures enough to tell them apart."""
    rule = finding.rule
    entry: Entry = {
        "rule": rule.id, "trade": rule.trade, "level": finding.level, "verdict": finding.verdict,
        "title": clean(rule.title), **_place_entry(finding, document), "on_trial": rule.on_trial,
        "measure": None, "limit": None, "bound": finding.bound or None, "margin": finding.margin,
        "says": clean(finding.text), "reason": clean(finding.reason) or None, "why": clean(rule.why),
        "sources": [citation_entry(citation) for citation in rule.sources],
        "caution": {"signal": rule.caution.signal, "text": clean(rule.caution.text)}, "defer": clean(rule.defer),
        "worked": [worked_entry(worked) for worked in worked_of_finding(finding)],
        "assumed": sorted({clean(pointer) for row in (finding.row, *finding.also_at) for pointer in row.assumed}),
        "also_at": [_row_entry(row, document) for row in finding.also_at],
        "remedies": [{"change": remedy.change, "go": clean(remedy.go), "tried": False} for remedy in rule.remedies],
        "departure": departure_entry(finding.departure) if finding.departure else None,
    }  # fmt: skip
    if finding.measure is not None and finding.limit is not None:
        measure, limit = compared(finding.measure, finding.limit, finding.unit, system)
        entry["measure"] = {"value": finding.measure, "unit": finding.unit, "shown": measure}
        entry["limit"] = {"value": finding.limit, "unit": finding.unit, "shown": limit}
    return entry


def citation_entry(citation: Citation) -> Entry:
    """On whose authority."""
    source = citation.source
    return {
        "id": source.id,
        "title": clean(source.title),
        "clause": clean(citation.clause),
        "basis": citation.basis,
    }


def worked_entry(worked: Worked) -> Entry:
    """One line of a calculation, in the units it was worked in."""
    return {
        "symbol": worked.symbol, "words": clean(worked.words), "formula": worked.formula,
        "numbers": [{"symbol": number.symbol, "value": number.value, "unit": number.unit} for number in worked.numbers],
        "value": worked.value, "unit": worked.unit, "source": clean(worked.source),
        "caution": clean(worked.caution) or None,
    }  # fmt: skip


def departure_entry(departure: Departure) -> Entry:
    """An allowed departure as the plan writes it."""
    return {
        "name": clean(departure.name), "rule": departure.rule, "at": clean(departure.at),
        "reason": clean(departure.reason), "allowed_by": clean(departure.allowed_by), "until": str(departure.until),
        "margin": departure.margin,
        "pointer": clean(departure.pointer),
    }  # fmt: skip


def dumps(value: Mapping[str, Any]) -> str:
    """Compact JSON. Figures that are not finite never get this far, and would be an error here."""
    import json

    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), allow_nan=False)


def indented(text: str) -> str:
    """The same JSON, indented for a person."""
    import json

    return json.dumps(json.loads(text), ensure_ascii=False, indent=2, allow_nan=False)


def _unseen_entry(finding: Finding, document: Document) -> Entry:
    rule = finding.rule
    return {
        "rule": rule.id, "trade": rule.trade, "level": finding.level, "title": clean(rule.title),
        **_place_entry(finding, document), "missing": [clean(pointer) for pointer in finding.missing],
        "reason": clean(finding.reason) or None, "says": clean(finding.text), "defer": clean(rule.defer),
        "also_at": [_row_entry(row, document) for row in finding.also_at],
    }  # fmt: skip


def _place_entry(finding: Finding, document: Document) -> Entry:
    return {
        "subject": clean(finding.row.label), "kind": finding.row.kind, "part": clean(finding.row.part),
        "pointer": clean(finding.pointer), **_line_and_column(document, finding.pointer),
    }  # fmt: skip


def _row_entry(row: Row, document: Document) -> Entry:
    return {"subject": clean(row.label), "pointer": clean(row.pointer), **_line_and_column(document, row.pointer)}


def _line_and_column(document: Document, pointer: str) -> Entry:
    place = where(document, pointer)
    return {"line": place.line, "column": place.column}
