"""What was worked out of a plan, row by row: each field, what it means, its value, and where that came from."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from plumbrule.catalogue.fact import Fact, Row, Value
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.language import TOLERANCE
from plumbrule.report.block import sum_row
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many, quantity
from plumbrule.report.paper import Paper
from plumbrule.report.places import labels, part_name, spot, words_of
from plumbrule.report.unseen import wanting
from plumbrule.report.walking import DATUM, meaning, wants_the_datum
from plumbrule.report.worked_line import line

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.places import Document


class UnknownKind(ValueError):
    """A kind of row that the catalogue does not have."""


def kinds_asked(only: Sequence[str]) -> tuple[str, ...]:
    """The kinds of row that were asked for, singular or plural, in the order of the catalogue; all where none was.

    Raises UnknownKind, whose text is one sentence with the nearest spelling.
    """
    if not only:
        return tuple(CATALOGUE)
    singular = {**{kind: kind for kind in CATALOGUE}, **{f"{kind}s": kind for kind in CATALOGUE}}
    asked = set()
    for word in only:
        if word.lower() not in singular:
            from plumbrule.reading.spelling import nearest

            near = nearest(word.lower(), tuple(CATALOGUE))
            hint = f"Did you mean {near}?" if near else f"Known are: {', '.join(CATALOGUE)}."
            raise UnknownKind(f"There is no kind of row called {one_line(word)}. {hint}")
        asked.add(singular[word.lower()])
    return tuple(kind for kind in CATALOGUE if kind in asked)


def text(examined: Examined, kinds: Sequence[str], width: int = 100, colour: bool = False) -> str:
    """Every row of these kinds, every field of it."""
    paper = Paper(width, colour)
    paper.apart(f"plumbrule workings {one_line(examined.path)}", f"units: {examined.system}", "bold")
    for kind in kinds:
        rows = examined.rows.get(kind, ())
        paper.blank()
        paper.line(f"{kind.upper()}   {many(len(rows), 'row')}   {CATALOGUE[kind].says}", "bold", hang=3)
        for row in rows:
            paper.blank()
            _row(paper, row, examined)
    _still_to_measure(paper, examined)
    return paper.text()


def _still_to_measure(paper: Paper, examined: Examined) -> None:
    """What a template leaves to be measured on site, in the order of the walk."""
    if not examined.to_measure:
        return
    things = wanting((), examined.to_measure, examined.plan)
    paper.blank()
    paper.line(
        f"TO MEASURE ON SITE   {many(len(things), 'thing')}, in the order of a walk round the room", "bold", hang=3
    )
    if wants_the_datum(examined.to_measure):
        paper.line(DATUM, hang=3)
    for number, thing in enumerate(things, 1):
        paper.apart(f"{number}  {words_of(thing.pointer)}", spot(examined.document, thing.pointer), "bold")
        paper.labelled("what", meaning(thing.pointer))


def defaults(examined: Examined, kinds: Sequence[str], width: int = 100, colour: bool = False) -> str:
    """Only what was taken as the worse case because the plan is silent, and which rows and fields rest on it."""
    paper = Paper(width, colour)
    assumed: dict[str, str] = {}
    resting: dict[str, dict[str, list[Row]]] = {}
    for kind in kinds:
        for row in examined.rows.get(kind, ()):
            for pointer, says in row.assumed.items():
                assumed.setdefault(pointer, says)
                using = [name for name, pointers in row.inputs.items() if pointer in pointers]
                resting.setdefault(pointer, {}).setdefault(", ".join(using), []).append(row)
    paper.apart(
        f"plumbrule workings {one_line(examined.path)} --defaults", f"{many(len(assumed), 'thing')} assumed", "bold"
    )
    for pointer in sorted(assumed):
        paper.blank()
        paper.apart(one_line(pointer), spot(examined.document, pointer), "bold")
        paper.labelled("taken", one_line(assumed[pointer]))
        for fields, resters in resting[pointer].items():
            paper.labelled("used in", f"{fields or 'no field'}: {labels(resters)}")
    return paper.text()


def _row(paper: Paper, row: Row, examined: Examined) -> None:
    part = part_name(row.part)
    named = one_line(row.label) if row.part in ("", row.pointer) else f"{one_line(row.label)}   {part}"
    paper.apart(named, spot(examined.document, row.pointer), "bold")
    paper.line(one_line(row.pointer) or "/", "dim", indent=3)
    for fact in CATALOGUE[row.kind].facts:
        for number, piece in enumerate(_field(row, fact, examined, paper.width - 6)):
            paper.line(piece, indent=3 if not number else 6, hang=3)
        if fact.name in row.worked:
            for worked in row.worked[fact.name].lines():
                shown = line(worked, examined.system)
                notes = "; ".join(note for note in (shown.formula, worked.source, worked.caution) if note)
                paper.rows("", sum_row(shown, paper.room(0), notes), indent=0)


def _field(row: Row, fact: Fact, examined: Examined, width: int) -> Iterator[str]:
    """The field's own lines; nothing where this row does not have it."""
    name = fact.name
    says = one_line(fact.says)
    if name in row.values:
        yield f"{name} = {shown_value(row, fact, examined.system)}   {says}"
        yield origin(row, name, examined.document)
    elif name in row.missing:
        yield f"{name}: missing   {says}"
        places = ", ".join(f"{one_line(pointer)} ({spot(examined.document, pointer)})" for pointer in row.missing[name])
        yield f"measure {places}"
    elif name in row.outside:
        yield f"{name}: outside the rulebook   {says}"
        yield one_line(row.outside[name])
    elif name in row.failed:
        yield f"{name}: FAILED   {says}"
        yield one_line(row.failed[name])


def shown_value(row: Row, fact: Fact, system: str) -> str:
    """A field's value as a reader of the plan's system writes it."""
    value = row.values[fact.name]
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, int | float):
        return quantity(float(value), fact.unit, system)
    if isinstance(value, tuple):
        return ", ".join(one_line(str(item)) for item in value) or "none"
    return one_line(value)


def origin(row: Row, name: str, document: Document) -> str:
    """Whether a value was assumed, measured or written in the plan as it stands, reckoned, or goes with the row."""
    pointers = row.inputs.get(name, ())
    written = [pointer for pointer in pointers if pointer not in row.assumed]
    said = [
        f"assumed, {one_line(pointer)}: {one_line(row.assumed[pointer])}"
        for pointer in pointers
        if pointer in row.assumed
    ]
    from_where = ", ".join(one_line(pointer) for pointer in written)
    if name in row.worked:
        said.append(f"reckoned from {from_where}" if written else "reckoned")
    elif len(written) == 1 and (told := _as_written(row.values[name], document.written(written[0]))):
        said.append(f"{told} at {from_where} ({spot(document, written[0])})")
    elif written:
        said.append(f"follows from {from_where}")
    elif not said:
        said.append("goes with the kind of part")
    return "; ".join(said)


def _as_written(value: Value, text: str) -> str:
    """`measured as 9 in` or `written` where the plan has this very value in one place; nothing where it follows from
    what is written there."""
    text = one_line(text)
    if isinstance(value, str | bool):
        same = text.strip("\"'") == (str(value).lower() if isinstance(value, bool) else value)
        return "written" if same else ""
    if isinstance(value, tuple) or not text:
        return ""
    from plumbrule.reading.notation import NotAQuantity, measure

    try:
        read = measure(text).value
    except NotAQuantity:
        return ""
    return f"measured as {text}" if abs(read - value) <= TOLERANCE * max(abs(read), 1.0) else ""
