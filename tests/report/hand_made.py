"""Inspections made by hand: a potter's bench shelf on one angle, with every kind of thing a report may have to say."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date
from types import SimpleNamespace
from typing import Any

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.types import Departure, DepartureNote, Finding, Inspection, Tally
from plumbrule.language import Expression, Number, Type, expression
from plumbrule.mechanics.worked import Number as Put
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.places import Document, read
from plumbrule.reading.units import UNITS
from plumbrule.report.terms import Terms, terms_of
from plumbrule.rulebook.rule import Bounds, Caution, Citation, RemedyHint, Rule, Setting, Source
from plumbrule.rulebook.rulebook import Rulebook

PLAN = """\
plan: 1
title: Pottery studio, drying shelf
holes:
  wall: {screw: lag, diameter: 5/16 in, from_heel: [1-1/4 in]}
angles:
  kiln-side:
    wall: north
    length: 48 in
    lining_behind: left in place
    wall_holes: {pattern: wall, from_left: [3/8 in, 19 in, 35 in]}
departures:
  old-hole:
    {rule: hole-near-end, at: /angles/kiln-side, reason: The hole was there., allowed_by: engineer, until: "2027-03-01"}
"""

SPEC = Source("aisc-360", "Specification for Structural Steel Buildings", "AISC", "library")
NDS = Source("nds", "National Design Specification for Wood Construction", "AWC", "library")


def document(path: str = "drying-shelf.yaml") -> Document:
    return read(PLAN.encode(), path)


def rule(
    name: str = "hole-near-end",
    *,
    trade: str = "steel",
    level: Any = "stop-work",
    looks_at: str = "hole",
    measure: str | None = "end_distance",
    at_least: str | None = None,
    at_most: str | None = None,
    that: str | None = None,
    settings: tuple[Setting, ...] = (),
    unit: str = "mm",
    title: str = "Hole drilled too near the end of the steel",
    why: str = "The steel beyond the hole tears out when someone leans on the shelf, and the end drops.",
    remedies: tuple[RemedyHint, ...] = (RemedyHint("diameter", "smaller"), RemedyHint("end_distance", "larger")),
    on_trial: bool = False,
) -> Rule:
    """A rule as the rulebook would have read it."""
    types: dict[str, Type] = {**CATALOGUE[looks_at].types(), **{setting.name: setting.type for setting in settings}}

    def read_one(source: str | None) -> Expression | None:
        return None if source is None else expression(source, types)

    return Rule(
        id=name, trade=trade, title=title, level=level, looks_at=looks_at, when=None,
        measure=read_one(measure) if that is None else None, measure_says="steel beyond the hole",
        bounds=Bounds(read_one(at_least), read_one(at_most)), that=read_one(that),
        settings={setting.name: setting for setting in settings}, says="{row} has {measure}; {limit} is needed.",
        why=why,
        sources=(Citation(SPEC, "Table J3.4", "published"), Citation(NDS, "12.5.1", "common practice")),
        caution=Caution("WARNING", "An end that drops can throw what stands on it. Do not load it."),
        defer="The local code and a licensed engineer decide about steel that carries people.",
        remedies=remedies, since="0.1.0", on_trial=on_trial, unit=unit, path=f"{name}.yaml",
    )  # fmt: skip


FACTOR = Setting("factor", Number(UNITS[""].dimension), "", 1.5, 1.25, None, "multiple of the hole diameter", "1.5")


def row(
    label: str = "hole 1 of kiln-side",
    *,
    kind: str = "hole",
    values: dict[str, Any] | None = None,
    worked: dict[str, Worked] | None = None,
    pointer: str = "/angles/kiln-side/wall_holes",
    part: str = "/angles/kiln-side",
    **rest: Any,
) -> Row:
    given = {"diameter": 7.9375, "end_distance": 9.525, "leg": "wall"} if values is None else values
    parts: dict[str, Any] = {"inputs": {}, "missing": {}, "outside": {}, "failed": {}, "assumed": {}, **rest}
    return Row(kind=kind, pointer=pointer, part=part, label=label, values=given, worked=worked or {}, **parts)


END = Worked(
    symbol="e",
    words="steel from the hole to the nearer end, drilling at its worst",
    formula="x - d",
    numbers=(Put("x", 9.525, "mm"), Put("d", 0.79375, "mm")),
    value=8.73125,
    unit="mm",
    source="from memory",
)


def finding(made: Rule | None = None, on: Row | None = None, **rest: Any) -> Finding:
    """A hole 11/32 in from the end where 15/32 in is needed."""
    made = made or rule(at_least="factor * diameter", settings=(FACTOR,))
    on = on or row(values={"diameter": 7.9375, "end_distance": 8.73125, "leg": "wall"}, worked={"end_distance": END})
    given: dict[str, Any] = {
        "verdict": "breaks", "level": made.level, "pointer": "/angles/kiln-side/wall_holes/from_left/0",
        "text": "hole 1 of kiln-side has 11/32 in; 15/32 in is needed.",
        "measure": 8.73125, "limit": 11.90625, "margin": -3.175, "unit": "mm", "bound": "at least", **rest,
    }  # fmt: skip
    return Finding(rule=made, row=on, **given)


def not_inspected(**rest: Any) -> Finding:
    made = rule(
        "screw-beside-stud", trade="framing", looks_at="screw", measure="wood_beside", at_least="1.5 * diameter",
        title="Screw beside the middle of its stud",
    )  # fmt: skip
    on = row(
        "screw 2 of kiln-side", kind="screw", values={"leg": "wall"}, missing={"wood_beside": ("/walls/north/framing",)}
    )
    given: dict[str, Any] = {
        "verdict": "not inspected", "level": "stop-work", "pointer": "/walls/north/framing",
        "text": "screw 2 of kiln-side: not inspected, because the plan leaves out what it needs.",
        "missing": ("/walls/north/framing", "/angles/kiln-side/wall_holes/drilled_within"), **rest,
    }  # fmt: skip
    return Finding(rule=made, row=on, **given)


def beyond() -> Finding:
    made = rule("screw-pulls-out", trade="framing", looks_at="screw", measure="withdrawal", at_least="250 * lbf",
                unit="N", title="Screw pulls out of the wood")  # fmt: skip
    return Finding(
        rule=made, verdict="not inspected", level="stop-work", row=row("screw 3 of kiln-side", kind="screw", values={}),
        pointer="/angles/kiln-side", reason="No published withdrawal value covers a drywall screw.",
        text="screw 3 of kiln-side: the published figures do not cover this. No published withdrawal value covers it.",
    )  # fmt: skip


def failed() -> Finding:
    made = rule("hole-land", level="correction", measure="land", at_least="0.5 * steel", title="Countersink too deep")
    return finding(
        made, row("hole 3 of kiln-side"), verdict="failed", level="stop-work", measure=None, limit=None, margin=None,
        bound="", pointer="/angles/kiln-side", reason="division by zero",
        text="hole 3 of kiln-side: this could not be worked out, so it must not be built on. Division by zero.",
    )  # fmt: skip


DEPARTURE = Departure(
    "old-hole", "hole-near-end", "/angles/kiln-side", "The hole was there before.", "engineer", date(2027, 3, 1),
    -3.175, "/departures/old-hole",
)  # fmt: skip


def allowed() -> Finding:
    return finding(verdict="allowed", departure=DEPARTURE)


def note() -> DepartureNote:
    return DepartureNote(
        DEPARTURE, "expired", "The departure old-hole ran out on 2027-03-01: ask again, or put it right."
    )


def inspection(*findings: Finding, unseen: tuple[Finding, ...] = (), **rest: Any) -> Inspection:
    def count(verdict: str) -> int:
        return sum(each.judgements() for each in (*findings, *unseen) if each.verdict == verdict)

    tally = Tally(41, count("breaks"), count("not inspected"), count("allowed"), count("failed"), 12)
    return Inspection(findings, unseen, **{"tally": tally, **rest})


@dataclass
class Run:
    """A plan as a report is given it, and the rulebook it was inspected by."""

    examined: Any
    terms: Terms
    rulebook: Rulebook = field(default_factory=lambda: rulebook())


def rulebook(*rules: Rule, **rest: Any) -> Rulebook:
    given = rules or (
        rule(at_least="factor * diameter", settings=(FACTOR,)),
        not_inspected().rule,
        beyond().rule,
        failed().rule,
    )
    return Rulebook(given, {"aisc-360": SPEC, "nds": NDS}, "0123456789abcdef", "0.1.0", **rest)


def run(
    made: Inspection,
    *,
    path: str = "drying-shelf.yaml",
    system: str = "inch",
    book: Rulebook | None = None,
    **terms: Any,
) -> Run:
    book = book or rulebook()
    to_measure = terms.pop("to_measure", ())
    examined = SimpleNamespace(
        path=path, document=document(path), plan=None, rows=terms.pop("rows", {}), to_measure=to_measure, system=system,
        inspection=made, milliseconds={},
    )  # fmt: skip
    return Run(examined, terms_of(book, **terms), book)


def everything() -> Inspection:
    """One of each."""
    low = finding(
        rule("rough-edge", level="advisory", looks_at="angle", that='coating != "bare"', title="Edges left rough"),
        row("kiln-side", kind="angle", values={"coating": "bare"}, pointer="/angles/kiln-side"),
        measure=None, limit=None, margin=None, bound="", level="advisory", pointer="/angles/kiln-side/length",
        text="kiln-side is left bare.",
    )  # fmt: skip
    again = row("hole 2 of kiln-side")
    return inspection(
        failed(), finding(also_at=(again,)), low, allowed(), unseen=(not_inspected(), beyond()),
        about_departures=(note(),),
        assumed=(("/angles/kiln-side/drilled_within", "1/32 in, as for a hand-held drill"),),
        held=(("hole-near-end", "/angles/other"),),
    )  # fmt: skip
