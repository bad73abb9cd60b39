"""All rules on all rows of a plan."""

from __future__ import annotations

import time
from collections.abc import Mapping, Sequence
from datetime import date

from plumbrule.catalogue.fact import Row
from plumbrule.inspection.departures import Allowances
from plumbrule.inspection.group import group, in_order
from plumbrule.inspection.judge import Judgement, judge
from plumbrule.inspection.say import say
from plumbrule.inspection.types import Departure, Finding, Inspection, Tally
from plumbrule.reading.shown import System
from plumbrule.rulebook.rule import Rule
from plumbrule.rulebook.rulebook import Rulebook


def inspect(
    rows: Mapping[str, Sequence[Row]],
    rulebook: Rulebook,
    departures: Sequence[Departure],
    today: date,
    system: System = "inch",
    timing: bool = False,
) -> Inspection:
    """Judges every row by every rule that looks at its kind. Pure: the same arguments give the same inspection.

    `system` (`inch` or `metric`) only decides how the numbers of a sentence are written.
    """
    counts = dict.fromkeys(("holds", "breaks", "not inspected", "allowed", "failed"), 0)
    does_not_apply = 0
    findings: list[Finding] = []
    held: set[tuple[str, str]] = set()
    allowances = Allowances(departures, today)
    spent: dict[str, float] = {}
    for rule in rulebook.rules:
        settings = rule.values()
        started = time.perf_counter() if timing else 0.0
        for row in rows.get(rule.looks_at, ()):
            judgement = judge(rule, row, settings)
            if judgement.verdict is None:
                does_not_apply += 1
            elif judgement.verdict == "holds":
                counts["holds"] += 1
                held.add((rule.id, row.part))
            else:
                finding = allowances.apply(finding_of(rule, row, judgement, system))
                counts[finding.verdict] += 1
                findings.append(finding)
        if timing:
            spent[rule.id] = (time.perf_counter() - started) * 1e3
    grouped = in_order(group(findings))
    assumed = {pointer: says for kind in rows.values() for row in kind for pointer, says in row.assumed.items()}
    return Inspection(
        findings=tuple(finding for finding in grouped if finding.verdict != "not inspected"),
        not_inspected=tuple(finding for finding in grouped if finding.verdict == "not inspected"),
        tally=Tally(
            counts["holds"],
            counts["breaks"],
            counts["not inspected"],
            counts["allowed"],
            counts["failed"],
            does_not_apply,
        ),
        about_departures=allowances.notes(),
        assumed=tuple(sorted(assumed.items())),
        held=tuple(sorted(held)),
        milliseconds=spent,
    )


def finding_of(rule: Rule, row: Row, judgement: Judgement, system: System) -> Finding:
    """A judgement made into a finding, with its sentence and its place. The rule must apply to the row."""
    assert judgement.verdict is not None
    level = "stop-work" if judgement.verdict == "failed" else rule.level
    unit = rule.unit
    return Finding(
        rule=rule,
        verdict=judgement.verdict,
        level=level,
        row=row,
        pointer=_place(rule, row, judgement),
        text=say(rule, row, judgement, system),
        measure=judgement.measure,
        limit=judgement.limit,
        margin=judgement.margin,
        unit=unit,
        bound=judgement.bound,
        missing=judgement.missing,
        reason=judgement.reason,
    )


def _place(rule: Rule, row: Row, judgement: Judgement) -> str:
    """Where a person would lay a hand: at what is missing, else at the first input a remedy would change, else at the
    first input of what was judged."""
    if judgement.missing:
        return judgement.missing[0]
    for hint in rule.remedies:
        for pointer in row.inputs.get(hint.change, ()):
            return pointer
    judged = rule.that or rule.measure
    for field in sorted(judged.reads) if judged else ():
        for pointer in row.inputs.get(field, ()):
            return pointer
    return row.pointer
