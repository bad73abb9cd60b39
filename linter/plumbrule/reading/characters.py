"""Bytes to text: UTF-8 only, and none of the characters that hide, reorder or break lines unseen."""

from __future__ import annotations

import re

from plumbrule.reading.fault import NOWHERE, Fault, Place, Unreadable

LARGEST = 1_000_000  # bytes

# C0 without tab, line feed and carriage return; C1 (U+0085 breaks lines for the parser, not for editors); zero width,
# bidirectional and other invisible marks; line and paragraph separators; a byte order mark inside; surrogates;
# noncharacters.
_REFUSED = re.compile(
    "[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ud800-\udfff\ufdd0-\ufdef\ufffe\uffff]"
)
_LINE_END = re.compile("\r\n|\r|\n")

_ENCODINGS = (
    (b"\xff\xfe\x00\x00", "UTF-32"),
    (b"\x00\x00\xfe\xff", "UTF-32"),
    (b"\xff\xfe", "UTF-16"),
    (b"\xfe\xff", "UTF-16"),
)
_FORMATS = (
    (b"%PDF", "a PDF"),
    (b"\x89PNG", "a PNG picture"),
    (b"\xff\xd8\xff", "a JPEG picture"),
    (b"GIF8", "a GIF picture"),
    (b"PK\x03\x04", "a zip archive or an office document"),
    (b"\x1f\x8b", "a compressed file"),
    (b"\x7fELF", "a program"),
    (b"AC10", "a CAD drawing"),
)


def refuse(path: str, found: str, write: str, place: Place = NOWHERE, pointer: str = "") -> Unreadable:
    """One fault, ready to raise."""
    return Unreadable([Fault(path, place, pointer, found, write)])


def decode(source: bytes, path: str) -> str:
    """The text of `source` without its byte order mark. Raises Unreadable with what was found instead of UTF-8 text."""
    if len(source) > LARGEST:
        raise refuse(
            path, f"The file has {len(source):,} bytes.", f"A plan has at most {LARGEST:,}: is this the right file?"
        )
    for start, name in _ENCODINGS:
        if source.startswith(start):
            raise _encoded(path, name)
    if name := _unmarked(source):
        raise _encoded(path, name)
    for start, name in _FORMATS:
        if source.startswith(start):
            raise refuse(path, f"This is {name}, not a text file.", "Give the plan as a text file in YAML.")
    try:
        text = source.decode("utf-8")
    except UnicodeDecodeError as error:
        raise _undecodable(source, path, error) from None
    text = text.removeprefix("\ufeff")
    if not text.isprintable() and (found := _REFUSED.search(text)):
        if found[0] == "\x00":
            raise refuse(
                path, "This is a binary file, or one with a null character.", "Give the plan as a text file in YAML.",
                place_at(text, found.start()),
            )  # fmt: skip
        faults = [
            Fault(
                path,
                place_at(text, hit.start()),
                "",
                f"{_named(hit[0])} stands here, which cannot be seen.",
                "Delete it.",
            )
            for hit, _ in zip(_REFUSED.finditer(text), range(20), strict=False)
        ]
        raise Unreadable(faults)
    return text


def _encoded(path: str, name: str) -> Unreadable:
    return refuse(path, f"The file is {name} text.", "Save it as UTF-8.")


def _unmarked(source: bytes) -> str:
    """UTF-16 or UTF-32 without a mark: nulls in every other place of what would be plain letters."""
    head = source[:200]
    if len(head) < 4 or b"\x00" not in head:
        return ""
    if head[:3] == b"\x00\x00\x00" or head[1:4] == b"\x00\x00\x00":
        return "UTF-32"
    even, odd = head[0::2], head[1::2]
    if even.count(0) > 0.8 * len(even) and not odd.count(0):
        return "UTF-16"
    if odd.count(0) > 0.8 * len(odd) and not even.count(0):
        return "UTF-16"
    return ""


def _undecodable(source: bytes, path: str, error: UnicodeDecodeError) -> Unreadable:
    before = source[: error.start].decode("utf-8").removeprefix("\ufeff")
    place = place_at(before + "?", len(before))
    if b"\x00" in source:
        return refuse(path, "This is a binary file, not text.", "Give the plan as a text file in YAML.", place)
    byte = source[error.start]
    try:
        letter = bytes([byte]).decode("cp1252")
    except UnicodeDecodeError:
        letter = ""
    meant = f" (in Windows text it would be {letter})" if letter.isprintable() and letter else ""
    return refuse(path, f"The byte {byte:02X} here is not UTF-8{meant}.", "Save the file as UTF-8.", place)


def _named(character: str) -> str:
    import unicodedata

    name = unicodedata.name(character, "") or "a control character"
    return f"U+{ord(character):04X} ({name.lower()})"


def place_at(text: str, start: int, end: int | None = None) -> Place:
    """The place of `text[start:end]`, one character if no end is given. Lines end at CRLF, CR or LF."""
    if end is None:
        end = min(start + 1, len(text))
    line, column = position(text, start)
    end_line, end_column = position(text, end)
    return Place(line, column, start, end_line, end_column, end)


def position(text: str, index: int) -> tuple[int, int]:
    """Line and column, from 0, of a code point."""
    line = begin = 0
    for found in _LINE_END.finditer(text, 0, index):
        line += 1
        begin = found.end()
    return line, index - begin
