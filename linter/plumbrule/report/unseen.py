"""What was not inspected and why, what to measure so that it can be, and what was taken as the worse case."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from plumbrule.inspection.types import Finding
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many
from plumbrule.report.paper import Paper
from plumbrule.report.places import part_name, short_labels, spot, words_of

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.plan.plan_file import Plan

# So many rules or rows are named of a longer list, which is in the order of their levels; the rest are counted.
_NAMED = 4


@dataclass(slots=True)
class Wanting:
    """One thing to measure: its pointer, and the rules that wait for it with how many checks each."""

    pointer: str
    rules: dict[str, int] = field(default_factory=dict)


def wanting(
    not_inspected: Sequence[Finding], to_measure: Sequence[str] = (), plan: Plan | None = None
) -> list[Wanting]:
    """Everything to measure, also what the plan itself marks `measure on site` though no rule waits for it. With the
    plan, in the order of somebody who walks through the room once; else in the order of the findings."""
    things: dict[str, Wanting] = {}
    for finding in not_inspected:
        for pointer in finding.missing:
            thing = things.setdefault(pointer, Wanting(pointer))
            thing.rules[finding.rule.id] = thing.rules.get(finding.rule.id, 0) + finding.judgements()
    for pointer in to_measure:
        things.setdefault(pointer, Wanting(pointer))
    if plan is None or len(things) < 2:
        return list(things.values())
    from plumbrule.report.walking import walked

    return [things[pointer] for pointer in walked(plan.model, things)]


def unseen(paper: Paper, examined: Examined) -> None:
    """Writes what was not inspected, as loud as what breaks."""
    inspection = examined.inspection
    found = inspection.not_inspected
    things = wanting(found, examined.to_measure, examined.plan)
    if not found:
        paper.line("not inspected: nothing that these rules look at.")
    else:
        checks = sum(finding.judgements() for finding in found)
        paper.line(f"NOT INSPECTED   {many(checks, 'check')} of {many(_rules(found), 'rule')}", "yellow", "bold")
    if things:
        measure(paper, examined, things)
    beyond = [finding for finding in found if finding.reason]
    if beyond:
        paper.blank()
        paper.line("outside the rulebook: no published figure covers these, and none is guessed. Ask an engineer.")
        _beyond(paper, examined, beyond)
    if inspection.assumed:
        paper.blank()
        count = many(len(inspection.assumed), "thing")
        was = "was" if len(inspection.assumed) == 1 else "were"
        paper.line(f"{count} {was} taken as the worse case because the plan is silent (plumbrule workings --defaults):")
        alike: dict[str, list[str]] = {}
        for pointer, says in inspection.assumed:
            alike.setdefault(says, []).append(one_line(pointer))
        for says, pointers in alike.items():
            paper.line(f"{', '.join(pointers)}   {one_line(says)}", indent=3, hang=3)


def measure(paper: Paper, examined: Examined, things: Sequence[Wanting]) -> None:
    """Writes what is still to measure: each thing with its place, what it is, and the rules that wait for it."""
    from plumbrule.report.walking import DATUM, meaning, wants_the_datum

    one = len(things) == 1
    this, order = ("this 1 thing", "") if one else (f"these {len(things)} things", ", in the order of a walk")
    paper.line(f"measure {this} and run again{order}:", "bold")
    if wants_the_datum(thing.pointer for thing in things):
        paper.line(DATUM, hang=3)
    for number, thing in enumerate(things, 1):
        paper.apart(f"{number}  {words_of(thing.pointer)}", spot(examined.document, thing.pointer), "bold")
        paper.labelled("what", meaning(thing.pointer))
        paper.labelled("key", one_line(thing.pointer))
        waiting = _waiting(thing.rules)
        paper.labelled("waiting", waiting or "no rule of this rulebook; the plan says: measure on site")
    if any(_is_long(thing.rules) for thing in things):
        paper.line("every rule that waits, by name: plumbrule inspect PLAN --format json", indent=3)


def _is_long(listed: Collection[object]) -> bool:
    """Whether naming them all would take more room than saying how many there are."""
    return len(listed) > _NAMED + 1


def _waiting(rules: dict[str, int]) -> str:
    """The rules that wait for one thing with their checks: all of a few, else the gravest and how many more."""
    named = [f"{rule}{f' ({count} checks)' if count > 1 else ''}" for rule, count in rules.items()]
    if not _is_long(named):
        return ", ".join(named)
    return (
        f"{len(named)} rules, {many(sum(rules.values()), 'check')}: {', '.join(named[:_NAMED])} "
        f"and {len(named) - _NAMED} more"
    )


def _beyond(paper: Paper, examined: Examined, findings: Sequence[Finding]) -> None:
    """Each reason once for each part, with where it lies and all the rules that cannot say anything for it."""
    reasons: dict[tuple[str, str], list[Finding]] = {}
    for finding in findings:
        reasons.setdefault((finding.row.part, finding.reason), []).append(finding)
    for (part, reason), group in reasons.items():
        first = group[0]
        paper.apart(f"-  {part_name(part)}", spot(examined.document, first.pointer), "bold")
        paper.labelled("reason", one_line(reason))
        paper.labelled("waiting", ", ".join(f"{finding.rule.id} at {_rows(finding)}" for finding in group))


def _rows(finding: Finding) -> str:
    rows = (finding.row, *finding.also_at)
    if not _is_long(rows):
        return short_labels(rows)
    return f"{short_labels(rows[:_NAMED])} and {len(rows) - _NAMED} more"


def _rules(findings: Sequence[Finding]) -> int:
    return len({finding.rule.id for finding in findings})
