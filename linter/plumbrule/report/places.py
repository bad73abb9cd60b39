"""Where things are, as a reader finds them: file, line and column, the part's own name, and labels in a row."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.reading.fault import Place
from plumbrule.reading.places import Document
from plumbrule.report.clean import one_line
from plumbrule.report.paper import Paper
from plumbrule.report.terms import Terms

_ONE = {"boxes": "box", "studs": "stud"}


class Where(NamedTuple):
    """From 1, in code points; `end_column` is past the last character."""

    line: int
    column: int
    end_line: int
    end_column: int


def where(document: Document, pointer: str) -> Where:
    """The place of `pointer`: its value, or the key of the nearest thing above it that is written."""
    place = document.place(pointer)
    if pointer not in document.spots:
        place = _head_of(document, pointer)
    return Where(place.line + 1, place.column + 1, place.end_line + 1, place.end_column + 1)


def _head_of(document: Document, pointer: str) -> Place:
    while pointer and pointer not in document.spots:
        pointer = pointer.rpartition("/")[0]
    return document.key_place(pointer)


def spot(document: Document, pointer: str) -> str:
    """`alcove-seat.yaml:113:5`."""
    found = where(document, pointer)
    return f"{one_line(document.path)}:{found.line}:{found.column}"


def words_of(pointer: str) -> str:
    """A pointer as a person would say it: `diameter (seat-back, wall holes)` for a key of a named part."""
    *above, last = _names(pointer) or ["the plan"]
    if last.isdigit() and above:
        # A person counts from one.
        last = f"{above.pop()} {int(last) + 1}"
    inside = ", ".join(above[1:] if len(above) > 1 else above).replace("_", " ")
    return one_line(f"{last.replace('_', ' ')}{f' ({inside})' if inside else ''}")


def _names(pointer: str) -> list[str]:
    return [name.replace("~1", "/").replace("~0", "~") for name in pointer.split("/") if name]


def part_name(pointer: str) -> str:
    """The name of a part: `seat-back (angle)` for /angles/seat-back; `site` for what is no named part."""
    names = _names(pointer)
    if len(names) < 2:
        return one_line(names[0]) if names else "the plan"
    kind = _ONE.get(names[0], names[0].removesuffix("s")).replace("_", " ")
    return one_line(f"{names[1]} ({kind})")


def house_changes(paper: Paper, terms: Terms) -> None:
    """Writes what the house file changed of the rules, so that no report hides whose decision that was."""
    for number, change in enumerate(terms.changes):
        paper.labelled("house" if not number else "", one_line(change))


def labels(rows: Iterable[Row]) -> str:
    """The labels of rows, each once, ready to be printed on."""
    return ", ".join(dict.fromkeys(one_line(row.label) for row in rows))


def short_labels(rows: Iterable[Row]) -> str:
    """The labels of rows of one part, where the block they stand in has named the part and the kind of row: `screw W2
    of seat-back` is W2."""
    return ", ".join(dict.fromkeys(one_line(_short(row)) for row in rows))


def _short(row: Row) -> str:
    part = row.part.rpartition("/")[2]
    return row.label.removeprefix(f"{row.kind} ").removesuffix(f" of {part}")


def by_part(parts: Sequence[str]) -> dict[str, list[int]]:
    """Positions by part, parts in the order in which they come first."""
    grouped: dict[str, list[int]] = {}
    for position, part in enumerate(parts):
        grouped.setdefault(part, []).append(position)
    return grouped
