"""A rule explained by its own failing example: what it demands, what happens otherwise, the sum, and the cure."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

from plumbrule import shipped
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.inspect import finding_of
from plumbrule.inspection.types import Finding
from plumbrule.reading.places import read_file
from plumbrule.reading.take import take
from plumbrule.report.block import cited, hint, margin, sum_rows
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many
from plumbrule.report.paper import Paper
from plumbrule.report.sums import lines_of_finding
from plumbrule.rulebook.file import ExampleFile, ExamplesFile, RuleFile
from plumbrule.rulebook.files import rule_files
from plumbrule.rulebook.rule import Rule
from plumbrule.teaching.prove import Example


class NoLesson(Exception):
    """The rule's file cannot be found, so there is no example to teach from."""


def lesson(rule: Rule, folders: Sequence[Path] = (), width: int = 100, colour: bool = False) -> str:
    """The lesson of one rule as text. `folders` are where a team's own rules lie. Raises NoLesson, Unreadable."""
    examples = _examples(rule, folders)
    broken = examples.breaks[0]
    held = next((example for example in examples.holds if example.plan == broken.plan), examples.holds[0])
    paper = Paper(width, colour)
    paper.rule()
    trial = ", on trial" if rule.on_trial else ""
    paper.apart(rule.title, f"{rule.id}  [{rule.trade}, {rule.level}{trial}]", "bold")
    paper.rule()
    _demands(paper, rule)
    _heading(paper, "What happens otherwise")
    paper.line(one_line(rule.why), indent=3)
    _heading(paper, "The fault, worked")
    _worked(paper, rule, broken, ("breaks", "failed"))
    _heading(paper, "Put right")
    _worked(paper, rule, held, ("holds",))
    if rule.remedies:
        paper.labelled("cure", "worth trying: " + ", or ".join(hint(remedy) for remedy in rule.remedies))
    _heading(paper, "On whose authority, and who decides")
    for citation in rule.sources:
        paper.labelled("source", cited(citation))
    paper.labelled(rule.caution.signal, one_line(rule.caution.text), "bold")
    paper.labelled("who", one_line(rule.defer))
    told = [
        f"{len(group)} {says}"
        for group, says in (
            (examples.breaks, "breaking"),
            (examples.holds, "holding"),
            (examples.limit, "on the limit"),
            (examples.unknown, "with something left out"),
        )
        if group
    ]
    paper.labelled("tested", f"on {', '.join(told)}; in the rulebook since {rule.since}")
    return paper.text()


def _examples(rule: Rule, folders: Sequence[Path]) -> ExamplesFile:
    for folder in (shipped.folder("rules"), *folders):
        for path in rule_files(folder):
            if path.name == rule.path:
                return take(RuleFile, read_file(path)).examples
    raise NoLesson(f"The file of the rule {rule.id} is not where it was: there is no example to teach from.")


def _heading(paper: Paper, text: str) -> None:
    paper.blank()
    paper.line(text, "bold")


def _demands(paper: Paper, rule: Rule) -> None:
    paper.line("What it demands", "bold")
    looks = f"It looks at every {rule.looks_at}"
    paper.line(f"{looks} where {rule.when.source}" if rule.when else looks, indent=3, hang=3)
    if rule.that is not None:
        paper.line(f"This must be so: {rule.that.source}", indent=3, hang=3)
    if rule.measure is not None:
        for said, limit in (("at least", rule.bounds.at_least), ("at most", rule.bounds.at_most)):
            if limit is not None:
                paper.line(f"{rule.measure.source}  must be {said}  {limit.source}", indent=3, hang=3)
    for setting in rule.settings.values():
        paper.line(f"{setting.name} is {setting.written}: {one_line(setting.says)}", indent=6, hang=3)
    facts = CATALOGUE[rule.looks_at].by_name
    for name in sorted(rule.reads()):
        paper.line(f"{name}: {facts[name].says}", indent=6, hang=3)


def _worked(paper: Paper, rule: Rule, example: ExampleFile, wanted: tuple[str, ...]) -> None:
    worked = Example(rule, example)
    paper.labelled("plan", f"{example.plan}, {_changes(example.patch)}")
    finding = _first(rule, worked, wanted)
    if finding is None:
        paper.labelled("found", "nothing: this example no longer shows what it should. Run: plumbrule rulebook --check")
        return
    system = worked.facts.system
    if finding.verdict == "holds":
        paper.labelled("found", f"{finding.row.label}: this holds.")
    else:
        paper.labelled("found", one_line(finding.text))
    paper.labelled("margin", margin(finding, system))
    paper.rows("sum", sum_rows(lines_of_finding(finding, system), paper.room(), finding.row.kind, example.plan))


def _first(rule: Rule, example: Example, wanted: tuple[str, ...]) -> Finding | None:
    for row, judgement in example.judged:
        if judgement.verdict in wanted:
            return finding_of(rule, row, judgement, example.facts.system)
    return None


def _changes(patch: Sequence[dict[str, Any]]) -> str:
    """What was changed in the base plan, as a reader would say it."""
    if not patch:
        return "as it stands"
    told = []
    for step in patch[:4]:
        where = step.get("path", "")
        if step.get("op") == "remove":
            told.append(f"without {where}")
        else:
            told.append(f"with {where} {_value(step.get('value'))}")
    more = f", and {many(len(patch) - 4, 'more change')}" if len(patch) > 4 else ""
    return " and ".join(told) + more


def _value(value: object) -> str:
    if isinstance(value, dict):
        return "{" + ", ".join(f"{key}: {_value(item)}" for key, item in value.items()) + "}"
    if isinstance(value, list | tuple):
        return "[" + ", ".join(_value(item) for item in value) + "]"
    return str(value)
