"""Plans to break, and ways to break them: by text, where places matter, and by value, where only the verdict does."""

from __future__ import annotations

import copy
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

from pydantic import BaseModel

from plumbrule import shipped
from plumbrule.plan.plan_file import Plan, PlanFile
from plumbrule.plan.read import plan_from_text, read_plan
from plumbrule.reading import shape
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import Document, read
from plumbrule.reading.pointer import parent
from plumbrule.reading.take import _steps

HERE = Path(__file__).parent
SHIPPED = ("alcove-seat", "display-shelf", "panel-wall")
PLANS = (*SHIPPED, "storeroom-brackets")


@cache
def text_of(name: str) -> str:
    """The text of a shipped plan, or of the one beside this file that uses all other keys."""
    folder = shipped.folder("plans") if name in SHIPPED else HERE
    return (folder / f"{name}.yaml").read_text(encoding="utf-8")


def changed(name: str, *changes: tuple[str, str]) -> str:
    """The text of a plan with each old text, at its first place, replaced by the new one."""
    text = text_of(name)
    for old, new in changes:
        assert old in text, f"{old!r} is not in {name}"
        text = text.replace(old, new, 1)
    return text


def plan_of(text: str) -> Plan:
    """The plan in a text. Raises Unreadable."""
    return plan_from_text(text.encode(), "plan.yaml")


def faults_of(text: str) -> tuple[Fault, ...]:
    """What is wrong with a plan; nothing if it can be read."""
    try:
        plan_of(text)
    except Unreadable as error:
        return error.faults
    return ()


def faults_in(document: Document) -> tuple[Fault, ...]:
    """What is wrong with a plan that was read as YAML already."""
    try:
        read_plan(document)
    except Unreadable as error:
        return error.faults
    return ()


@cache
def document_of(name: str) -> Document:
    return read(text_of(name).encode(), f"{name}.yaml")


def sections_of(name: str) -> Iterator[Document]:
    """The plan one section at a time, the lines of the others left empty: places stay what they are in the whole plan,
    and a thousand readings cost a tenth."""
    lines = text_of(name).splitlines(keepends=True)
    starts = [number for number, line in enumerate(lines) if line[0].isalpha()]
    head = [number for number in starts if lines[number].startswith(("plan:", "title:"))]
    for start, end in zip(starts, [*starts[1:], len(lines)], strict=True):
        kept = {*head, *range(start, end)}
        text = "".join(line if number in kept else "\n" for number, line in enumerate(lines))
        yield read(text.encode(), f"{name}.yaml")


def keys_of(document: Document) -> Iterator[str]:
    """The pointers of everything that has a key."""
    return (pointer for pointer, spot in document.spots.items() if spot.key is not None)


def model_around(document: Document, pointer: str) -> type[BaseModel] | None:
    """The model that a key belongs to; None for a name that the plan's author chose."""
    above = shape.trail(PlanFile, _steps(document, parent(pointer))).wanted if parent(pointer) else PlanFile
    found = shape.models(above)
    return found[0] if found else None


def without(document: Document, pointer: str) -> str:
    """The text without one entry of a mapping, whether it stands in braces or on lines of its own."""
    spot, text = document.spots[pointer], document.text
    assert spot.key is not None
    above = document.spots[parent(pointer)].value
    start, end = spot.key.start, spot.value.end
    if text[above.start] != "{":
        return text[: text.rfind("\n", 0, start) + 1] + text[(text + "\n").find("\n", end) + 1 :]
    after = end + len(text[end:]) - len(text[end:].lstrip())
    if text[after] == ",":
        rest = text[after + 1 :]
        return text[:start] + rest.lstrip(" ")
    before = text[:start].rstrip()
    return (before[:-1] if before.endswith(",") else before) + text[end:]


def with_value(document: Document, pointer: str, value: str) -> str:
    """The text with another value at a pointer."""
    place = document.spots[pointer].value
    return document.text[: place.start] + value + document.text[place.end :]


def with_key(document: Document, pointer: str, key: str) -> str:
    """The text with another key at a pointer."""
    place = document.spots[pointer].key
    assert place is not None
    return document.text[: place.start] + key + document.text[place.end :]


def line_and_column(text: str, offset: int) -> tuple[int, int]:
    """Where an offset is, counted from 0, without the reader's help."""
    return text.count("\n", 0, offset), offset - (text.rfind("\n", 0, offset) + 1)


def edited(value: Any, pointer: list[str], edit: Any) -> Any:
    """A copy of a document's value in which `edit(container, key)` was applied to one place."""
    made = copy.deepcopy(value)
    container = made
    for step in pointer[:-1]:
        container = container[int(step)] if isinstance(container, list) else container[step]
    last = pointer[-1]
    edit(container, int(last) if isinstance(container, list) else last)
    return made
