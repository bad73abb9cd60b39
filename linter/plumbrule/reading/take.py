"""A document to a model, or every mistake in it: one fault a mistake, where it stands, in words for the trade."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, TypeVar

from pydantic import BaseModel, ValidationError

from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import Document
from plumbrule.reading.pointer import build

T = TypeVar("T", bound=BaseModel)

_MOST_FAULTS = 100


def take(kind: type[T], document: Document) -> T:
    """`document` as a `kind`. Raises Unreadable with every fault, in the order of the file.

    A fault about a name stands at the key, about a value at the value, about something missing at what it is missing
    from; a key without a value is a fault, whatever the model thinks of it.
    """
    try:
        made = kind.model_validate(document.value)
    except ValidationError as error:
        raise Unreadable(_faults(kind, document, error.errors(include_url=False))) from None
    except RecursionError:
        raise Unreadable([Fault(document.path, document.place(""), "", "The file is nested too deep.", "")]) from None
    if document.empty:
        raise Unreadable(_faults(kind, document, []))
    if untrue := _truths_for_numbers(made, document):
        raise Unreadable(untrue)
    return made


@dataclass(slots=True)
class _Error:
    """One of pydantic's errors, with the place it is about."""

    raw: dict[str, Any]
    path: tuple[str | int, ...]
    branches: tuple[tuple[int, str], ...]
    wanted: Any
    inside: tuple[type[BaseModel], ...]
    at_key: bool

    @property
    def type(self) -> str:
        return str(self.raw["type"])


def _faults(kind: type[BaseModel], document: Document, raw: list[Any]) -> list[Fault]:
    from plumbrule.reading import sentences, shape

    errors = []
    for each in raw:
        way = shape.trail(kind, each["loc"])
        errors.append(_Error(dict(each), way.path, way.branches, way.wanted, way.inside, way.at_key))
    errors, faults = _one_branch(kind, document, errors)
    blank = {pointer: shape.trail(kind, _steps(document, pointer)) for pointer in document.empty}
    unknown = {build(each.path) for each in errors if each.type == "extra_forbidden"}
    for pointer, way in blank.items():
        if pointer in unknown:
            continue
        special = [
            e for e in errors if build(e.path) == pointer and e.type == "written" and "bare #" in str(e.raw["ctx"])
        ]
        name = str(way.path[-1]) if way.path and isinstance(way.path[-1], str) else ""
        found, write = sentences.say(special[0].raw, way.wanted, name) if special else sentences.empty(name, way.wanted)
        if name and found.startswith("The size"):
            found = f"{name} is empty."
        faults.append(Fault(document.path, document.key_place(pointer), pointer, found, write))
    errors = [each for each in errors if build(each.path) not in blank or each.type == "extra_forbidden"]
    meant = _meant(errors, faults, document)
    for each in errors:
        if each.type == "extra_forbidden":
            continue
        if each.type == "missing":
            if (each.path[:-1], each.path[-1]) in meant:
                continue
            above = build(each.path[:-1])
            name = str(each.path[-1])
            found, write = sentences.missing(name, each.wanted)
            faults.append(Fault(document.path, _parent_place(document, above), above, found, write))
            continue
        pointer = build(each.path)
        if each.type == "literal_error" and each.branches and each.branches[-1][0] == len(each.path):
            # A word of a value that may also be written in another way: name that way too.
            either = shape.trail(kind, _steps(document, pointer)).wanted
            found, write = sentences.neither(each.raw.get("input"), [each.raw], either, _called(each.path))
        else:
            found, write = sentences.say(each.raw, each.wanted, _called(each.path), document.written(pointer))
        below = str((each.raw.get("ctx") or {}).get("at", "")) if each.type == "mistake" else ""
        place = document.key_place(pointer) if each.at_key else document.place(pointer + below)
        if each.type == "mistake" and isinstance(each.raw.get("input"), dict) and not below:
            place = document.key_place(pointer)
        faults.append(Fault(document.path, place, pointer + below, found, write))
    return _in_order(faults)


def _one_branch(kind: type[BaseModel], document: Document, errors: list[_Error]) -> tuple[list[_Error], list[Fault]]:
    """Where a value may be written in several ways pydantic reports each way: keep the one that was meant."""
    from plumbrule.reading import sentences, shape

    faults: list[Fault] = []
    while True:
        points: dict[tuple[str | int, ...], list[str]] = {}
        for each in errors:
            for depth, label in each.branches:
                labels = points.setdefault(each.path[:depth], [])
                if label not in labels:
                    labels.append(label)
        split = sorted((point for point, labels in points.items() if len(labels) > 1), key=len)
        if not split:
            return errors, faults
        point = split[0]
        here = [each for each in errors if any(each.path[:depth] == point for depth, _ in each.branches)]
        rest = [each for each in errors if each not in here]
        fitting = {label: [each for each in here if (len(point), label) in each.branches] for label in points[point]}
        deeper = {label: some for label, some in fitting.items() if all(len(e.path) > len(point) for e in some)}
        if deeper:
            kept = min(deeper.values(), key=len)
            for each in kept:
                each.branches = tuple(branch for branch in each.branches if branch[0] != len(point))
            errors = rest + kept
            continue
        pointer = build(point)
        wanted = shape.trail(kind, _steps(document, pointer)).wanted
        found, write = sentences.neither(here[0].raw.get("input"), [e.raw for e in here], wanted, _called(point))
        faults.append(Fault(document.path, document.place(pointer), pointer, found, write))
        errors = rest


def _meant(errors: list[_Error], faults: list[Fault], document: Document) -> set[tuple[Any, Any]]:
    """Add the faults of unknown keys; give the missing keys that they were meant for."""
    import re

    from plumbrule.reading import sentences

    missing = {(each.path[:-1], each.path[-1]) for each in errors if each.type == "missing"}
    meant: set[tuple[Any, Any]] = set()
    for each in errors:
        if each.type != "extra_forbidden":
            continue
        above, name = each.path[:-1], str(each.path[-1])
        hints: dict[str, str] = {}
        for model in each.inside:
            hints.update(getattr(model, "HINTS", {}))
        found, write, key = sentences.unknown_key(name, build(above), each.inside, hints)
        meant.add((above, key))
        if name in hints:
            meant |= {
                (at, wanting) for at, wanting in missing if at == above and wanting in re.split("[^A-Za-z0-9_]+", write)
            }
        pointer = build(each.path)
        faults.append(Fault(document.path, document.key_place(pointer), pointer, found, write))
    return meant


def _called(path: tuple[str | int, ...]) -> str:
    """What a place is called in a sentence: its key, or of an item of a list, the key of the list."""
    return next((step for step in reversed(path) if isinstance(step, str)), "value")


def _parent_place(document: Document, pointer: str) -> Any:
    place = document.key_place(pointer)
    # The whole file is no place to look: its first line is.
    return place if pointer else place._replace(end_line=place.line, end_column=place.column, end=place.start)


def _steps(document: Document, pointer: str) -> list[str | int]:
    """A pointer as pydantic's location: the items of lists by number."""
    from plumbrule.reading.pointer import split

    value = document.value
    steps: list[str | int] = []
    for token in split(pointer):
        if isinstance(value, list):
            steps.append(int(token))
            value = value[int(token)]
        else:
            steps.append(token)
            value = value.get(token) if isinstance(value, dict) else None
    return steps


def _truths_for_numbers(made: BaseModel, document: Document) -> list[Fault]:
    """`plan: true`: to a closed list of words and numbers, true equals 1. Everything else that is true or false in the
    file must be so in the model."""
    faults = []
    for pointer, truth, value in _truths("", document.value, made):
        if isinstance(value, int) and not isinstance(value, bool):
            shown = "`true`" if truth else "`false`"
            faults.append(
                Fault(document.path, document.place(pointer), pointer, f"{shown} stands where a number is needed.",
                      f"Write {value}.")
            )  # fmt: skip
    return faults


def _truths(pointer: str, value: Any, made: Any) -> list[tuple[str, bool, Any]]:
    from plumbrule.reading.pointer import join

    if isinstance(value, bool):
        return [(pointer, value, made)]
    found: list[tuple[str, bool, Any]] = []
    if isinstance(value, dict):
        fields = type(made).model_fields if isinstance(made, BaseModel) else {}
        by_key = {info.alias or name: name for name, info in fields.items()}
        for key, inner in value.items():
            if isinstance(inner, (bool, dict, list)):
                below = (
                    getattr(made, by_key[key], None)
                    if key in by_key
                    else made.get(key)
                    if isinstance(made, dict)
                    else None
                )
                found += _truths(join(pointer, key), inner, below)
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            if isinstance(inner, (bool, dict, list)):
                below = made[index] if isinstance(made, tuple) and index < len(made) else None
                found += _truths(join(pointer, index), inner, below)
    return found


def _in_order(faults: list[Fault]) -> list[Fault]:
    """One fault a place and mistake, as they come in the file; none below a place that is itself at fault."""
    faults.sort(key=lambda fault: (fault.place.start, fault.pointer))
    seen: set[tuple[str, str]] = set()
    kept = []
    for fault in faults:
        if (fault.pointer, fault.found) not in seen:
            seen.add((fault.pointer, fault.found))
            kept.append(fault)
    return kept[:_MOST_FAULTS]
