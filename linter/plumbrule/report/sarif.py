"""The report as SARIF 2.1.0 (OASIS), for code review and continuous integration.

Levels: stop-work is `error`, correction `warning`, advisory `note`. What was not inspected is of kind `open` and level
`none`; what a departure allows is a result with a suppression and its justification.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any

from plumbrule import __version__
from plumbrule.catalogue.fact import Row
from plumbrule.inspection.types import DepartureNote, Finding
from plumbrule.report.block import cited, margin
from plumbrule.report.clean import clean, markdown_off, one_line
from plumbrule.report.data import departure_entry, dumps, indented, tally_entry
from plumbrule.report.outcome import Outcome, exit_code
from plumbrule.report.places import labels, where
from plumbrule.report.terms import Terms

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.fault import Fault
    from plumbrule.reading.places import Document
    from plumbrule.rulebook.rule import Rule
    from plumbrule.rulebook.rulebook import Rulebook

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
DEPARTURE_RULE = "departure"
LEVELS = {"stop-work": "error", "correction": "warning", "advisory": "note"}
Entry = dict[str, Any]
_EXITS = ("nothing at or above", "findings at or above", "a plan could not be read; run to stop at")


def plan(examined: Examined, terms: Terms) -> str:
    """The results of one plan, as JSON texts with a comma between."""
    inspection = examined.inspection
    results = [_result(finding, examined) for finding in (*inspection.findings, *inspection.not_inspected)]
    results += [_about_departure(note, examined) for note in inspection.about_departures]
    return ",".join(dumps(result) for result in results)


def unreadable(path: str, faults: Sequence[Fault], terms: Terms) -> str:
    """The faults of a plan that could not be read, as notifications with a comma between."""
    return ",".join(dumps(_notification(fault)) for fault in faults)


def whole(outcomes: Sequence[Outcome], terms: Terms, rulebook: Rulebook) -> Iterable[str]:
    """The log of a run."""
    results = ",".join(outcome.part for outcome in outcomes if outcome.verdict != "unreadable" and outcome.part)
    notes = ",".join(outcome.part for outcome in outcomes if outcome.verdict == "unreadable" and outcome.part)
    code = exit_code(outcomes)
    invocation = dumps({
        "executionSuccessful": code != 2,
        "exitCode": code,
        "exitCodeDescription": f"{_EXITS[code]} {terms.stop_at}",
    })  # fmt: skip
    driver = dumps({
        "name": "plumbrule",
        "version": __version__,
        "semanticVersion": __version__,
        "shortDescription": {"text": "Checks the plan of a wall-hung seat, shelf or panelled wall."},
        "rules": [*(_descriptor(rule) for rule in rulebook.rules), _DEPARTURE_DESCRIPTOR],
        "properties": {
            "rulebook": terms.digest, "house": clean(terms.house),
            "changes": [clean(change) for change in terms.changes],
        },
    })  # fmt: skip
    read = [outcome for outcome in outcomes if outcome.verdict != "unreadable"]
    about = dumps({
        "stopAt": terms.stop_at,
        "notLookedAt": list(terms.not_looked_at),
        "tally": {clean(outcome.path): tally_entry(outcome.tally) for outcome in read},
    })  # fmt: skip
    text = (
        f'{{"$schema":"{SCHEMA}","version":"2.1.0","runs":[{{"tool":{{"driver":{driver}}},'
        f'"columnKind":"unicodeCodePoints",'
        f'"invocations":[{invocation[:-1]},"toolConfigurationNotifications":[{notes}]}}],'
        f'"results":[{results}],"properties":{about}}}]}}'
    )
    yield (indented(text) if terms.pretty else text) + "\n"


def address(path: str) -> str:
    """A path as a percent-encoded URI, relative to the folder the command was run in where that is possible."""
    from pathlib import Path
    from urllib.parse import quote

    given = Path(path)
    if given.is_absolute():
        try:
            given = given.relative_to(Path.cwd())
        except ValueError:
            return "file://" + quote(given.as_posix().encode("utf-8", "surrogateescape"))
    text = given.as_posix()
    return quote(text.encode("utf-8", "surrogateescape"), safe="/._-~")


def _result(finding: Finding, examined: Examined) -> Entry:
    open_ = finding.verdict == "not inspected"
    text = finding.text
    if finding.also_at:
        text += f" Also at {labels(finding.also_at)}."
    if open_ and finding.missing:
        text += f" Measure and write down: {', '.join(finding.missing)}."
    elif compared := margin(finding, examined.system):
        text += f" {compared[:1].upper()}{compared[1:]}."
    result: Entry = {
        "ruleId": finding.rule.id,
        "kind": "open" if open_ else "fail",
        "level": "none" if open_ else LEVELS[finding.level],
        "message": {"text": markdown_off(one_line(text))},
        "locations": [_location(examined.document, finding.pointer, finding.row)],
        "partialFingerprints": {"plumbrule/v1": _fingerprint(finding)},
        "properties": {
            "trade": finding.rule.trade, "tradeLevel": finding.level, "verdict": finding.verdict,
            "measure": finding.measure, "limit": finding.limit, "margin": finding.margin, "unit": finding.unit,
            "missing": list(finding.missing), "reason": clean(finding.reason),
        },
    }  # fmt: skip
    if finding.also_at:
        related = [_location(examined.document, row.pointer, row) for row in finding.also_at]
        result["relatedLocations"] = [{"id": number, **entry} for number, entry in enumerate(related, 1)]
    if finding.departure is not None:
        departure = finding.departure
        result["suppressions"] = [{
            "kind": "inSource",
            "status": "accepted",
            "justification": one_line(f"{departure.reason} Allowed by {departure.allowed_by} until {departure.until}."),
            "location": _location(examined.document, departure.pointer),
            "properties": departure_entry(departure),
        }]  # fmt: skip
    return result


def _about_departure(note: DepartureNote, examined: Examined) -> Entry:
    from hashlib import sha256

    return {
        "ruleId": DEPARTURE_RULE,
        "kind": "fail",
        "level": LEVELS["correction"],
        "message": {"text": markdown_off(one_line(note.text))},
        "locations": [_location(examined.document, note.departure.pointer)],
        "partialFingerprints": {
            "plumbrule/v1": sha256(f"{DEPARTURE_RULE}\n{note.kind}\n{note.departure.name}".encode()).hexdigest()[:32]
        },
        "properties": {"kind": note.kind, "tradeLevel": "correction"},
    }


def _location(document: Document, pointer: str, row: Row | None = None) -> Entry:
    place = where(document, pointer)
    entry: Entry = {
        "physicalLocation": {
            "artifactLocation": {"uri": address(document.path)},
            "region": {
                "startLine": place.line, "startColumn": place.column,
                "endLine": place.end_line, "endColumn": place.end_column,
            },
        },
        "logicalLocations": [{"fullyQualifiedName": clean(pointer) or "/", "kind": "member"}],
    }  # fmt: skip
    if row is not None:
        entry["logicalLocations"][0]["name"] = clean(row.label)
        entry["message"] = {"text": markdown_off(one_line(row.label))}
    return entry


def _fingerprint(finding: Finding) -> str:
    """The same as long as the rule, the part and the row's label are, wherever they move in the file."""
    from hashlib import sha256

    text = "\n".join((finding.rule.id, finding.row.part, finding.row.kind, finding.row.label))
    return sha256(text.encode("utf-8", "replace")).hexdigest()[:32]


def _notification(fault: Fault) -> Entry:
    return {
        "level": "error",
        "message": {"text": markdown_off(one_line(f"{fault.pointer} {fault.found} {fault.write}"))},
        "locations": [{
            "physicalLocation": {
                "artifactLocation": {"uri": address(fault.path)},
                "region": {
                    "startLine": fault.place.line + 1, "startColumn": fault.place.column + 1,
                    "endLine": fault.place.end_line + 1, "endColumn": fault.place.end_column + 1,
                },
            }
        }],
    }  # fmt: skip


def _descriptor(rule: Rule) -> Entry:
    caution = f"{rule.caution.signal}: {rule.caution.text}"
    sources = "; ".join(cited(citation) for citation in rule.sources)
    return {
        "id": rule.id,
        "shortDescription": {"text": markdown_off(one_line(rule.title))},
        "fullDescription": {"text": markdown_off(one_line(rule.why))},
        "help": {"text": markdown_off(one_line(f"{rule.why} {caution} {rule.defer} Source: {sources}."))},
        "defaultConfiguration": {"level": LEVELS[rule.level]},
        "properties": {"trade": rule.trade, "level": rule.level, "since": rule.since, "onTrial": rule.on_trial},
    }


_DEPARTURE_DESCRIPTOR: Entry = {
    "id": DEPARTURE_RULE,
    "shortDescription": {"text": "An allowed departure that is unused, has run out, or no longer holds."},
    "fullDescription": {
        "text": "A departure is allowed for one place, by a person, until a day, while the margin gets no worse."
    },
    "help": {"text": "Take the departure out of the plan, ask again, or put right what it allowed."},
    "defaultConfiguration": {"level": LEVELS["correction"]},
}
