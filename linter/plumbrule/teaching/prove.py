"""Runs the examples of a rule: each is a base plan and a patch, and must come out as it says."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache

from plumbrule import shipped
from plumbrule.catalogue.fact import Row
from plumbrule.facts.facts import Facts, work_out
from plumbrule.inspection.judge import Judgement, judge
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.read import read_plan
from plumbrule.reading.fault import Place, Unreadable
from plumbrule.reading.notation import NotAQuantity
from plumbrule.reading.patch import PatchRefused, patched
from plumbrule.reading.places import Document, read_file
from plumbrule.rulebook.file import ExampleFile, RuleFile
from plumbrule.rulebook.rule import Rule
from plumbrule.rulebook.settings import quantity

KINDS = ("breaks", "holds", "limit", "unknown")


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of one example. `says` tells what came out instead, and is empty where it came out as it should."""

    kind: str
    number: int
    place: Place
    says: str

    @property
    def proved(self) -> bool:
        return not self.says


class Example:
    """One example, worked out: the patched plan, and the rows it points at with what the rule says of them."""

    def __init__(self, rule: Rule, example: ExampleFile) -> None:
        self.example = example
        # Many examples are a base plan as it stands.
        self.document, self.plan, self.facts = _worked(example) if example.patch else _as_it_stands(example.plan)
        settings = rule.values()
        self.judged: list[tuple[Row, Judgement]] = [
            (row, judge(rule, row, settings))
            for row in self.facts.rows.get(rule.looks_at, ())
            if example.at in (row.pointer, row.part) or row.pointer.startswith(example.at + "/")
            if example.row is None or row.label == example.row
        ]


@lru_cache(maxsize=32)
def base_plan(name: str) -> Document:
    """A plan of the shipped folder, by its bare name. Raises Unreadable when there is none."""
    return read_file(shipped.folder("plans") / f"{name}.yaml")


def _worked(example: ExampleFile) -> tuple[Document, Plan, Facts]:
    document = patched(base_plan(example.plan), example.patch)
    plan = read_plan(document)
    return document, plan, work_out(plan)


@lru_cache(maxsize=32)
def _as_it_stands(name: str) -> tuple[Document, Plan, Facts]:
    document = base_plan(name)
    plan = read_plan(document)
    return document, plan, work_out(plan)


def prove(rule: Rule, file: RuleFile, document: Document) -> Iterator[Outcome]:
    """Every example of the rule, in the order of the file, and what a rule lacks to be provable."""
    if rule.measure is not None and not file.examples.limit:
        yield Outcome("limit", 0, document.place("/examples"), "a rule with a measure needs an example on its limit")
    # A rule whose facts all have a worse case to fall back on says so with `unknown: []`.
    if not file.examples.unknown and rule.reads() and "/examples/unknown" not in document.spots:
        yield Outcome("unknown", 0, document.place("/examples"), "an example with a needed fact left out is wanting")
    for kind in KINDS:
        for number, example in enumerate(getattr(file.examples, kind)):
            place = document.place(f"/examples/{kind}/{number}")
            try:
                says = _check(kind, Example(rule, example), example)
            except Unreadable as error:
                says = "the patched plan cannot be read: " + "; ".join(str(fault) for fault in error.faults[:3])
            except (NotAQuantity, PatchRefused) as error:
                says = str(error).removesuffix(".")
            yield Outcome(kind, number, place, says)


def _check(kind: str, example: Example, file: ExampleFile) -> str:
    if not example.judged:
        return f"nothing this rule looks at stands at {file.at}" + (f" with the label {file.row}" if file.row else "")
    applied = [(row, judgement) for row, judgement in example.judged if judgement.verdict is not None]
    if not applied:
        return f"the rule does not apply at {file.at}, so this proves nothing"
    failed = [judgement for _, judgement in applied if judgement.verdict == "failed"]
    if failed:
        return f"the rule failed: {failed[0].reason}"
    verdicts: Mapping[str, list[Judgement]] = {
        word: [judgement for _, judgement in applied if judgement.verdict == word]
        for word in ("holds", "breaks", "not inspected")
    }
    if kind == "breaks":
        wanted = verdicts["breaks"]
        return _measured(wanted, file) if wanted else f"it does not break: {_told(applied)}"
    if kind == "unknown":
        if not verdicts["not inspected"]:
            return f"it was inspected all the same: {_told(applied)}"
        named = {pointer for judgement in verdicts["not inspected"] for pointer in judgement.missing}
        if file.missing is not None and file.missing not in named:
            return f"{file.missing} is not named as missing, but {', '.join(sorted(named)) or 'nothing'}"
        return ""
    if len(verdicts["holds"]) != len(applied):
        return f"it does not hold: {_told(applied)}"
    if kind == "limit" and not any(judgement.margin == 0 for judgement in verdicts["holds"]):
        return f"it is not on the limit: {_told(applied)}"
    return _measured(verdicts["holds"], file)


def _measured(judgements: list[Judgement], file: ExampleFile) -> str:
    if file.measure is None:
        return ""
    wanted, _, _ = quantity(file.measure)
    slack = max(_last_digit(file.measure) / 2, 1e-9 * max(abs(wanted), 1.0))
    found = [judgement.measure for judgement in judgements if judgement.measure is not None]
    if any(abs(measure - wanted) <= slack * (1 + 1e-9) for measure in found):
        return ""
    return f"it measures {', '.join(f'{measure:.6g}' for measure in found)} in SI where {wanted:.6g} is expected"


def _last_digit(written: float | str) -> float:
    """What one unit in the last written decimal is worth in SI; a fraction or a whole number is taken as exact."""
    text = str(written)
    number = text.split()[0] if text.split() else text
    if "." not in number or "/" in number:
        return 0.0
    digits = len(number.split(".")[1].rstrip("%°"))
    one, _, _ = quantity(text.replace(number, "1", 1)) if isinstance(written, str) else (1.0, "", None)
    zero, _, _ = quantity(text.replace(number, "0", 1)) if isinstance(written, str) else (0.0, "", None)
    return float((one - zero) * 10.0**-digits)


def _told(applied: list[tuple[Row, Judgement]]) -> str:
    told = []
    for row, judgement in applied[:4]:
        numbers = "" if judgement.measure is None else f" ({judgement.measure:.6g} against {judgement.limit:.6g})"
        wanting = f", wants {', '.join(judgement.missing)}" if judgement.missing else ""
        told.append(f"{row.label} {judgement.verdict}{numbers}{wanting}")
    return "; ".join(told)
