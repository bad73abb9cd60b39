"""The punch list: verdict first, one block a finding, what was not inspected as loud, at the end who decides."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from plumbrule.report.allowed import departures
from plumbrule.report.block import block
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many
from plumbrule.report.outcome import Outcome, at_or_above, exit_code, judged, levels_of, verdict_of
from plumbrule.report.paper import JOIN, Paper
from plumbrule.report.places import by_part, house_changes, part_name
from plumbrule.report.terms import Terms
from plumbrule.report.unseen import unseen
from plumbrule.rulebook.rule import LEVELS

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.inspection.types import Inspection, Tally
    from plumbrule.reading.fault import Fault
    from plumbrule.rulebook.rulebook import Rulebook

CLOSING = (
    "This is what the rulebook found. It is no permit and no engineer's word: "
    "the local code and a licensed person decide."
)
_VERDICT_TONES = {"pass": ("green", "bold"), "fail": ("red", "bold"), "unreadable": ("red", "bold")}


def plan(examined: Examined, terms: Terms) -> str:
    """The whole of one plan, from its verdict to its departures."""
    inspection = examined.inspection
    paper = Paper(terms.width, terms.colour)
    _head(paper, examined, terms)
    broken = [finding for finding in inspection.findings if finding.verdict != "allowed"]
    number = 0
    told: dict[str, int] = {}
    for part, positions in by_part([finding.row.part for finding in broken]).items():
        paper.blank()
        paper.line(f"{part_name(part)}: {len(positions)}", "bold")
        paper.rule()
        for position in positions:
            if position != positions[0]:
                paper.blank()
            number += 1
            finding = broken[position]
            block(paper, number, finding, examined.document, examined.system, told.get(finding.rule.id))
            told.setdefault(finding.rule.id, number)
    paper.blank()
    paper.rule()
    unseen(paper, examined)
    departures(paper, examined)
    if terms.timing:
        _timing(paper, examined)
    return paper.text()


def unreadable(path: str, faults: Sequence[Fault], terms: Terms) -> str:
    """Why a plan could not be read: every fault with its place, what stands there and what to write."""
    paper = Paper(terms.width, terms.colour)
    if terms.alone:
        paper.apart(f"plumbrule inspect {one_line(path)}", terms.rulebook_line(), "bold")
    paper.apart(f"UNREADABLE   {many(len(faults), 'fault')}", one_line(path), *_VERDICT_TONES["unreadable"])
    paper.blank()
    for fault in faults:
        paper.line(one_line(str(fault)), hang=3)
    return paper.text()


def whole(outcomes: Sequence[Outcome], terms: Terms, rulebook: Rulebook) -> Iterable[str]:
    """The report of a run, piece by piece: one line a plan where there are several, the plans that have something to
    say, and the end."""
    if not terms.alone:
        yield _overview(outcomes, terms)
    for outcome in outcomes:
        if terms.alone or outcome.verdict != "pass" or any(outcome.levels) or outcome.unseen or terms.timing:
            yield outcome.part + "\n"
    yield _end(outcomes, terms)


def _head(paper: Paper, examined: Examined, terms: Terms) -> None:
    inspection = examined.inspection
    verdict = verdict_of(inspection, terms.stop_at)
    command = f"plumbrule inspect {one_line(examined.path)}"
    paper.apart(command, terms.rulebook_line() if terms.alone else "", "bold")
    paper.line(_verdict_words(inspection, terms), *_VERDICT_TONES[verdict])
    paper.blank()
    stop_work, corrections, advisories = levels_of(inspection)
    tally = inspection.tally
    counts = "   ".join(
        said.replace(" ", JOIN)
        for said in (
            f"{stop_work} stop-work",
            f"{corrections} correction{'' if corrections == 1 else 's'}",
            f"{advisories} advisor{'y' if advisories == 1 else 'ies'}",
            "|",
            f"{len(inspection.not_inspected)} not inspected",
            f"{_allowed(inspection)} allowed",
            f"{tally.holds} hold",
        )
    )
    paper.line(counts, "bold", indent=2)
    paper.line(_tally_words(tally), "dim", indent=2)
    if terms.alone:
        house_changes(paper, terms)


def _verdict_words(inspection: Inspection, terms: Terms) -> str:
    """Never says that a plan passes when nothing was judged, nor leaves out that something was not."""
    levels = levels_of(inspection)
    tally = inspection.tally
    if at_or_above(levels, terms.stop_at):
        worst = next(level for level, count in zip(LEVELS, levels, strict=True) if count)
        return f"FAILS at: {worst}"
    if not judged(tally):
        return "NOTHING WAS JUDGED: no rule of this rulebook came to a verdict on this plan"
    words = f"PASSES at: {terms.stop_at}"
    if inspection.not_inspected:
        words += f", as far as it was inspected: {many(tally.not_inspected, 'check')} could not be made"
    return words


def _tally_words(tally: Tally) -> str:
    judged = tally.holds + tally.breaks + tally.not_inspected + tally.allowed + tally.failed
    return (
        f"{many(judged, 'check')}: {tally.holds} hold, {tally.breaks} break, {tally.failed} could not be worked out, "
        f"{tally.not_inspected} not inspected, {tally.allowed} allowed; {tally.does_not_apply} more did not apply"
    )


def _allowed(inspection: Inspection) -> int:
    return sum(finding.verdict == "allowed" for finding in inspection.findings)


def _overview(outcomes: Sequence[Outcome], terms: Terms) -> str:
    paper = Paper(terms.width, terms.colour)
    paper.apart(f"plumbrule inspect: {many(len(outcomes), 'plan')}", terms.rulebook_line(), "bold")
    house_changes(paper, terms)
    words = {"pass": "passes", "fail": "FAILS", "unreadable": "UNREADABLE"}
    for outcome in outcomes:
        tally = outcome.tally
        said, tones = words[outcome.verdict], _VERDICT_TONES[outcome.verdict]
        if outcome.verdict == "fail" and not judged(tally):
            said = "NOT JUDGED"
        elif outcome.verdict == "pass" and outcome.unseen:
            said, tones = "passes so far", ("yellow", "bold")
        right = f"{said:<14}"
        if outcome.verdict != "unreadable":
            right += (
                f"{tally.holds:>6} hold {tally.breaks + tally.failed:>4} break {tally.not_inspected:>4} not inspected "
            )
            right += f"{tally.allowed:>3} allowed"
            right += f" {outcome.milliseconds / 1e3:>7.3f} s" if terms.timing else ""
        else:
            right += f"{many(len(outcome.faults), 'fault')}"
        paper.apart(one_line(outcome.path), right, *tones, indent=2)
    return paper.text() + "\n"


def _end(outcomes: Sequence[Outcome], terms: Terms) -> str:
    paper = Paper(terms.width, terms.colour)
    if terms.not_looked_at:
        paper.line(f"not looked at by this rulebook: {', '.join(terms.not_looked_at)}", "yellow", hang=3)
    paper.line(CLOSING, hang=3)
    paper.line(_exit_words(outcomes, terms), "bold", hang=3)
    return paper.text()


def _exit_words(outcomes: Sequence[Outcome], terms: Terms) -> str:
    code = exit_code(outcomes)
    failing = sum(at_or_above(outcome.levels, terms.stop_at) for outcome in outcomes)
    found = f"{many(failing, 'finding')} at or above {terms.stop_at}"
    blind = sum(outcome.verdict == "unreadable" for outcome in outcomes)
    if blind:
        return f"exit {code}: {many(blind, 'plan')} could not be read; {found} in the others"
    if not any(judged(outcome.tally) for outcome in outcomes):
        found += "; nothing was judged, so nothing is known of these plans, and that is no pass"
    unmade = sum(outcome.tally.not_inspected for outcome in outcomes)
    if unmade:
        found += f"; {many(unmade, 'check')} not made for want of a measure or a published figure"
    return f"exit {code}: {found}"


def _timing(paper: Paper, examined: Examined) -> None:
    paper.blank()
    stages = "   ".join(f"{stage} {spent:.1f}" for stage, spent in examined.milliseconds.items())
    paper.line(f"milliseconds   {stages}", "bold")
    slowest = sorted(examined.inspection.milliseconds.items(), key=lambda entry: (-entry[1], entry[0]))
    for rule, spent in slowest:
        paper.line(f"{spent:8.3f}  {rule}", indent=3)
