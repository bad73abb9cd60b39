"""The report as JUnit XML: one suite a plan, one case a rule and part, for build servers that read nothing else."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from plumbrule.inspection.types import Finding
from plumbrule.report.block import margin
from plumbrule.report.clean import clean, one_line
from plumbrule.report.outcome import Outcome
from plumbrule.report.places import labels, spot
from plumbrule.report.terms import Terms
from plumbrule.rulebook.rule import LEVELS

if TYPE_CHECKING:
    from xml.etree.ElementTree import Element

    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.fault import Fault
    from plumbrule.rulebook.rulebook import Rulebook


def plan(examined: Examined, terms: Terms) -> str:
    """The suite of one plan. A case is named after its rule and its part. It fails when the rule breaks there at or
    above the level that fails the run; below it, and where a departure allows it, the case passes and its output says
    so. It is an error when the rule could not be worked out, and skipped when it was not inspected and nothing
    broke."""
    from xml.etree.ElementTree import Element, tostring

    inspection = examined.inspection
    cases: dict[tuple[str, str], list[Finding]] = {(rule, part): [] for rule, part in inspection.held}
    for finding in (*inspection.findings, *inspection.not_inspected):
        cases.setdefault((finding.rule.id, finding.row.part), []).append(finding)
    suite = Element("testsuite", name=clean(examined.path))
    for (rule, part), findings in sorted(cases.items()):
        case = Element("testcase", classname=rule, name=f"{rule} at {clean(part) or '/'}")
        _fill(case, findings, examined, terms)
        suite.append(case)
    for note in inspection.about_departures:
        case = Element("testcase", classname="departure", name=f"departure {clean(note.departure.name)}")
        if LEVELS.index("correction") <= LEVELS.index(terms.stop_at):
            _add(case, "failure", note.kind, one_line(note.text), spot(examined.document, note.departure.pointer))
        suite.append(case)
    _count(suite)
    return tostring(suite, encoding="unicode")


def unreadable(path: str, faults: Sequence[Fault], terms: Terms) -> str:
    """The suite of a plan that could not be read: one case, an error."""
    from xml.etree.ElementTree import Element, tostring

    suite = Element("testsuite", name=clean(path))
    case = Element("testcase", classname="plan", name="the plan can be read")
    _add(case, "error", "unreadable", f"{len(faults)} faults", "\n".join(one_line(str(fault)) for fault in faults))
    suite.append(case)
    _count(suite)
    return tostring(suite, encoding="unicode")


def whole(outcomes: Sequence[Outcome], terms: Terms, rulebook: Rulebook) -> Iterable[str]:
    """The document of a run."""
    yield '<?xml version="1.0" encoding="UTF-8"?>\n<testsuites name="plumbrule">\n'
    for outcome in outcomes:
        yield outcome.part + "\n"
    yield "</testsuites>\n"


def _fill(case: Element, findings: Sequence[Finding], examined: Examined, terms: Terms) -> None:
    from xml.etree.ElementTree import SubElement

    failed = [finding for finding in findings if finding.verdict == "failed"]
    breaks = [finding for finding in findings if finding.verdict == "breaks"]
    fails = [finding for finding in breaks if LEVELS.index(finding.level) <= LEVELS.index(terms.stop_at)]
    unseen = [finding for finding in findings if finding.verdict == "not inspected"]
    if failed:
        _add(case, "error", "failed", one_line(failed[0].text), _told(failed, examined))
    elif fails:
        _add(case, "failure", fails[0].level, one_line(fails[0].text), _told(fails, examined))
    elif unseen:
        wanted = sorted({pointer for finding in unseen for pointer in finding.missing})
        reasons = sorted({finding.reason for finding in unseen if finding.reason})
        message = f"not inspected; measure: {', '.join(wanted)}" if wanted else f"not inspected; {'; '.join(reasons)}"
        SubElement(case, "skipped", message=one_line(message))
    rest = [finding for finding in findings if finding not in failed and (failed or finding not in fails)]
    if rest:
        SubElement(case, "system-out").text = _told(rest, examined)


def _told(findings: Sequence[Finding], examined: Examined) -> str:
    told = []
    for finding in findings:
        line = f"{finding.level} ({finding.verdict}) {spot(examined.document, finding.pointer)}: {finding.text}"
        if compared := margin(finding, examined.system):
            line += f" {compared}."
        if finding.also_at:
            line += f" Also at {labels(finding.also_at)}."
        if finding.departure is not None:
            departure = finding.departure
            line += f" Allowed by {departure.allowed_by} until {departure.until}: {departure.reason}"
        told.append(one_line(f"{line} {finding.rule.caution.signal}: {finding.rule.caution.text}"))
    return "\n".join(told)


def _add(case: Element, tag: str, kind: str, message: str, text: str) -> None:
    from xml.etree.ElementTree import SubElement

    SubElement(case, tag, message=message, type=kind).text = text


def _count(suite: Element) -> None:
    suite.set("tests", str(len(suite)))
    for name, tag in (("failures", "failure"), ("errors", "error"), ("skipped", "skipped")):
        suite.set(name, str(len(suite.findall(f"testcase/{tag}"))))
