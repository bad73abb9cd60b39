"""Bytes of a YAML file to values, with the place of every one of them, under a strict reading policy.

UTF-8, at most 1 MB, 24 levels, 50,000 values and 2,000 characters a value; one document, no anchors, aliases, merge
keys, tags or directives, no key twice. Everything is checked on the parser's events, before anything is followed or
built, so a hostile file costs no more than it is long.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Set
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from plumbrule.reading.characters import decode, place_at, position, refuse
from plumbrule.reading.fault import NOWHERE, Fault, Place, Spot, Unreadable
from plumbrule.reading.pointer import escape, parent
from plumbrule.reading.scalars import NotFinite, resolve
from plumbrule.reading.syntax import lost_screw, syntax_fault

DEEPEST = 24
MOST_VALUES = 50_000
LONGEST_SCALAR = 2_000
MOST_FAULTS = 100

_DIRECTIVE = re.compile("^%", re.MULTILINE)


@dataclass(frozen=True, slots=True)
class Mark:
    """A point of the text, as the parser's own marks have it."""

    index: int
    line: int
    column: int


# Start and end of a value, start and end of its key (None without one): marks of the parser.
_Stretch = tuple[Any, Any, Any, Any]


class Spots(Mapping[str, Spot]):
    """Places by pointer, put together when they are asked for: most never are."""

    __slots__ = ("_stretches",)

    def __init__(self, stretches: dict[str, _Stretch]) -> None:
        self._stretches = stretches

    def __getitem__(self, pointer: str) -> Spot:
        start, end, key_start, key_end = self._stretches[pointer]
        return Spot(_place(start, end), None if key_start is None else _place(key_start, key_end))

    def __iter__(self) -> Iterator[str]:
        return iter(self._stretches)

    def __len__(self) -> int:
        return len(self._stretches)

    def __contains__(self, pointer: object) -> bool:
        return pointer in self._stretches

    def only(self, pointers: Set[str]) -> Spots:
        """These places alone."""
        return Spots({pointer: stretch for pointer, stretch in self._stretches.items() if pointer in pointers})


def _place(start: Any, end: Any) -> Place:
    return Place(start.line, start.column, start.index, end.line, end.column, end.index)


@dataclass(frozen=True, slots=True)
class Document:
    """A file that was read: its values as plain dicts, lists and scalars, and where each of them is written.

    `spots` is keyed by JSON Pointer; `empty` lists the pointers of keys and items that have no value.
    """

    path: str
    source: bytes
    text: str
    value: Any
    spots: Mapping[str, Spot]
    empty: tuple[str, ...] = ()

    def place(self, pointer: str) -> Place:
        """Where the value at `pointer` is written; if it is not written, the nearest value above it."""
        while pointer not in self.spots:
            if not pointer:
                return NOWHERE
            pointer = parent(pointer)
        return self.spots[pointer].value

    def key_place(self, pointer: str) -> Place:
        """Where the key of `pointer` is written; of an item of a list, the item; else the nearest value above."""
        if pointer in self.spots:
            spot = self.spots[pointer]
            return spot.key or spot.value
        return self.place(pointer)

    def written(self, pointer: str) -> str:
        """The text of the value at `pointer` exactly as it stands in the file, quotes included; nothing if it is not
        written."""
        if pointer not in self.spots:
            return ""
        place = self.spots[pointer].value
        return self.text[place.start : place.end]


def read(source: bytes, path: str) -> Document:
    """The document in `source`; `path` is only what faults call it. Raises Unreadable with every fault found: all
    faults of values, or the first of syntax."""
    text = decode(source, path)
    return _Builder(path, source, text).document()


def read_file(path: Path | str) -> Document:
    """The document in a file. Raises Unreadable, also when there is no such file or it is not a plain one."""
    from plumbrule.reading.files import load

    return read(load(Path(path)), str(path))


def events(text: str) -> tuple[Callable[[], Any], Any]:
    """A function that gives the parser's next event, None after the last, and the parser's error type.

    The C parser where it is installed, else the slower one in Python; both give the same events and marks.
    """
    from ruamel.yaml.error import YAMLError

    try:
        from ruamel.yaml.cyaml import CParser  # type: ignore[attr-defined]
    except ImportError:
        return pure_events(text)
    return CParser(text.encode()).get_event, YAMLError


def pure_events(text: str) -> tuple[Callable[[], Any], Any]:
    """As `events`, always with the parser written in Python."""
    from ruamel.yaml import YAML
    from ruamel.yaml.error import YAMLError

    stream = YAML(typ="safe", pure=True).parse(text)
    return lambda: next(stream, None), YAMLError


class _Frame:
    """A list or mapping that is being read."""

    __slots__ = ("block", "container", "end", "key", "key_event", "key_pointer", "lines", "pointer", "start")

    def __init__(self, container: Any, pointer: str, event: Any, lines: dict[str, int] | None) -> None:
        self.container = container
        self.pointer = pointer
        self.block = not event.flow_style
        self.start = event.start_mark
        self.end = event.end_mark
        self.lines = lines
        self.key: str | None = None
        self.key_event: Any = None
        self.key_pointer = ""


class _Builder:
    """One reading of one text."""

    __slots__ = ("empty", "faults", "path", "source", "stretches", "text")

    def __init__(self, path: str, source: bytes, text: str) -> None:
        self.path = path
        self.source = source
        self.text = text
        self.stretches: dict[str, _Stretch] = {}
        self.empty: list[str] = []
        self.faults: list[Fault] = []

    def document(self, make: Callable[[str], tuple[Callable[[], Any], Any]] | None = None) -> Document:
        following, error_type = (make or events)(self.text)
        try:
            value = self._build(following)
        except error_type as error:
            self.faults.append(syntax_fault(self.path, self.text, error))
        if self.faults:
            self.faults.sort(key=lambda fault: fault.place.start)
            raise Unreadable(self.faults[:MOST_FAULTS])
        return Document(self.path, self.source, self.text, value, Spots(self.stretches), tuple(self.empty))

    def _build(self, following: Callable[[], Any]) -> Any:
        from ruamel.yaml.events import (
            DocumentStartEvent,
            MappingEndEvent,
            MappingStartEvent,
            ScalarEvent,
            SequenceEndEvent,
            SequenceStartEvent,
        )

        frames: list[_Frame] = []
        frame: _Frame | None = None
        root: Any = None
        documents = values = 0
        stretches = self.stretches
        while (event := following()) is not None:
            kind = type(event)
            if kind is ScalarEvent:
                if event.anchor is not None or event.tag is not None:
                    self._no_marks(event, frame)
                if frame is not None and frame.lines is not None and frame.key is None:
                    self._key(frame, event)
                    continue
                values += 1
                pointer = self._pointer(frame)
                value: Any = event.value
                start, end = event.start_mark, event.end_mark
                if len(value) > LONGEST_SCALAR:
                    self._fault(event, pointer, f"This value has {len(value):,} characters.",
                                f"Keep it under {LONGEST_SCALAR:,}.")  # fmt: skip
                # The C parser says "" where the other says None.
                style = event.style
                if not style:
                    try:
                        value = resolve(value)
                    except NotFinite:
                        self._fault(event, pointer, f"{value[:20]} is not a number that can be measured.",
                                    "Write a number with its digits.")  # fmt: skip
                    if value is None:
                        start = self._nothing(frame, event, pointer)
                        end = end if event.value else start
                elif style == "|" or style == ">":
                    end = self._pulled_back(event)
                self._attach(frame, value, pointer, start, end)
                if frame is None:
                    root = value
            elif kind is MappingStartEvent or kind is SequenceStartEvent:
                if event.anchor is not None or event.tag is not None:
                    self._no_marks(event, frame)
                if frame is not None and frame.lines is not None and frame.key is None:
                    raise self._stop(event, "A list or a group of keys stands where a key is needed.",
                                     "Write a plain word before the colon.")  # fmt: skip
                values += 1
                pointer = self._pointer(frame)
                if len(frames) >= DEEPEST:
                    raise self._stop(event, f"This is nested more than {DEEPEST} levels deep.",
                                     "Nothing in a plan is: close the brackets.")  # fmt: skip
                mapping = kind is MappingStartEvent
                container: Any = {} if mapping else []
                if frame is None:
                    root = container
                frames.append(_Frame(container, pointer, event, {} if mapping else None))
                frame = frames[-1]
            elif kind is MappingEndEvent or kind is SequenceEndEvent:
                done = frames.pop()
                frame = frames[-1] if frames else None
                # A pair in a list without braces, [a: 1], ends at the next token, as a block does.
                closed = not done.block and self.text[event.end_mark.index - 1] in "}]"
                end = event.end_mark if closed else done.end
                self._attach(frame, done.container, done.pointer, done.start, end)
            elif kind is DocumentStartEvent:
                documents += 1
                if documents > 1:
                    raise self._stop(event, "A second document starts here.",
                                     "Put one plan in a file, without a line of ---.")  # fmt: skip
                if "%" in self.text and (found := _DIRECTIVE.search(self.text, 0, event.end_mark.index + 1)):
                    raise self._stop(None, "A line that starts with % is an order to the reader.",
                                     "Delete it.", place_at(self.text, found.start()))  # fmt: skip
            elif hasattr(event, "anchor"):
                self._alias(event, frame)
            if len(self.faults) >= MOST_FAULTS:
                raise Unreadable(sorted(self.faults, key=lambda fault: fault.place.start)[:MOST_FAULTS])
            if values > MOST_VALUES:
                raise self._stop(event, f"The file has more than {MOST_VALUES:,} values.", "Is this the right file?")
        if "" not in stretches:
            only = "has only comments" if self.text.strip() else "is empty"
            raise refuse(self.path, f"The file {only}.", "Write `plan: 1` in its first line and the plan below it.")
        return root

    def _pointer(self, frame: _Frame | None) -> str:
        if frame is None:
            return ""
        if frame.lines is None:
            return f"{frame.pointer}/{len(frame.container)}"
        return frame.key_pointer

    def _attach(self, frame: _Frame | None, value: Any, pointer: str, start: Any, end: Any) -> None:
        """Put a finished value into what it stands in, and note its places."""
        if frame is None:
            self.stretches[pointer] = (start, end, None, None)
            return
        frame.end = end
        if frame.lines is None:
            frame.container.append(value)
            self.stretches[pointer] = (start, end, None, None)
            return
        key = frame.key_event
        self.stretches[pointer] = (start, end, key.start_mark, key.end_mark)
        frame.container[frame.key] = value
        frame.key = None

    def _key(self, frame: _Frame, event: Any) -> None:
        """Take note of a key. A key twice is a fault at the second."""
        key = event.value
        pointer = f"{frame.pointer}/{escape(key)}"
        lines = frame.lines
        assert lines is not None
        if len(key) > LONGEST_SCALAR:
            self._fault(event, frame.pointer, "This key is too long.", "Write a short word before the colon.")
        if key == "<<" and not event.style:
            self._fault(event, frame.pointer, "<< merges one part into another.",
                        "Write the keys out, or name a section or a drilling pattern instead.")  # fmt: skip
        elif key in lines:
            self._fault(event, pointer, f"`{key}` is written twice; the first is on line {lines[key] + 1}.",
                        "Keep one of them.")  # fmt: skip
        elif not key:
            self._fault(event, frame.pointer, "There is no key before the colon.", "Write a word before the colon.")
        lines.setdefault(key, event.start_mark.line)
        frame.key = key
        frame.key_event = event
        frame.key_pointer = pointer

    def _nothing(self, frame: _Frame | None, event: Any, pointer: str) -> Any:
        """Note a key or item without a value, and whether a bare `#10` is the reason. Gives where the value would
        start: parsers differ on it, so it is just after the colon."""
        if frame is None:
            return event.start_mark
        self.empty.append(pointer)
        if event.value:
            return event.start_mark
        start = event.start_mark
        if frame.lines is not None:
            after = frame.key_event.end_mark
            colon = int(self.text[after.index : after.index + 1] == ":")
            start = Mark(after.index + colon, after.line, after.column + colon)
        if lost := lost_screw(self.path, self.text, start.index, pointer, frame.key or "The value"):
            self.faults.append(lost)
        return start

    def _pulled_back(self, event: Any) -> Mark:
        """The end of a block of text without the empty lines below it."""
        start = event.start_mark
        kept = self.text[start.index : event.end_mark.index].rstrip()
        lines, column = position(kept, len(kept))
        return Mark(start.index + len(kept), start.line + lines, column + (0 if lines else start.column))

    def _alias(self, event: Any, frame: _Frame | None) -> None:
        raise self._stop(event, f"*{event.anchor} repeats another part of the file.",
                         "Write it out. Name a section or a drilling pattern instead.",
                         pointer=frame.pointer if frame else "")  # fmt: skip

    def _no_marks(self, event: Any, frame: _Frame | None) -> None:
        """Anchors and tags."""
        pointer = frame.pointer if frame else ""
        if event.anchor is not None:
            self._fault(event, pointer, "Anchors make one line two places.",
                        "Name a section or a drilling pattern instead.")  # fmt: skip
        if event.tag is not None:
            self._fault(event, pointer, f"{str(event.tag)[:40]} is a tag, which asks for another type.",
                        "Delete it; put text in quotes if it must stay text.")  # fmt: skip

    def _fault(self, event: Any, pointer: str, found: str, write: str) -> None:
        self.faults.append(Fault(self.path, _place(event.start_mark, event.end_mark), pointer, found, write))

    def _stop(self, event: Any, found: str, write: str, place: Place | None = None, pointer: str = "") -> Unreadable:
        """Nothing after this can be read: the faults so far and this one."""
        at = place or _place(event.start_mark, event.end_mark)
        self.faults.append(Fault(self.path, at, pointer, found, write))
        self.faults.sort(key=lambda fault: fault.place.start)
        return Unreadable(self.faults[:MOST_FAULTS])
