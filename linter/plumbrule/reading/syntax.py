"""What the YAML parser could not read, told to someone who has never seen YAML."""

from __future__ import annotations

import re
from typing import Any

from plumbrule.reading.characters import place_at
from plumbrule.reading.fault import Fault

_LOST_NUMBER = re.compile(r"([A-Za-z0-9_-]{1,60})?[ \t]{0,8}[:,\[{][ \t]{0,80}(#([0-9]{1,3}))(?![0-9])")
_LOST_HERE = re.compile(r"[ \t]*(#([0-9]{1,3}))(?![0-9])")


def lost_screw(path: str, text: str, start: int, pointer: str, name: str) -> Fault | None:
    """The fault for a bare `#10` where a value should start: it began a comment, and the value is lost."""
    found = _LOST_HERE.match(text, start)
    return _lost(path, text, found.span(1), found[2], pointer, name) if found else None


def _lost_in_braces(path: str, text: str, begin: int, end: int) -> Fault | None:
    """The same inside braces, where it also took the rest of the line with it and the parser stumbled later."""
    found = _LOST_NUMBER.search(text, begin, end)
    return _lost(path, text, found.span(2), found[3], "", found[1] or "The value") if found else None


def _lost(path: str, text: str, span: tuple[int, int], number: str, pointer: str, name: str) -> Fault:
    write = f"A bare # starts a comment: write No. {number}."
    return Fault(path, place_at(text, *span), pointer, f"{name} is empty.", write)


def syntax_fault(path: str, text: str, error: Any) -> Fault:
    """The fault for an error of the parser, which is an exception with `problem`, `context` and their marks."""
    mark = getattr(error, "problem_mark", None)
    context_mark = getattr(error, "context_mark", None)
    problem = str(getattr(error, "problem", "") or error)
    context = str(getattr(error, "context", "") or "")
    index = min(mark.index if mark else 0, len(text))
    begin = min(context_mark.index if context_mark else index, index)
    line_begin = max(text.rfind("\n", 0, begin), text.rfind("\r", 0, begin)) + 1
    if "flow" in context and (lost := _lost_in_braces(path, text, line_begin, index)):
        return lost
    found, write, at = _say(problem, context, text, index, begin)
    return Fault(path, place_at(text, at), "", found, write)


def _say(problem: str, context: str, text: str, index: int, begin: int) -> tuple[str, str, int]:
    """What was found, what to write, and the code point to show."""
    character = text[index] if index < len(text) else ""
    line = _line(text, index)
    if "escape" in problem or "escape" in context:
        return (
            "A backslash inside double quotes has a meaning of its own.",
            "Use single quotes, or write the backslash twice.",
            index,
        )
    if "quoted scalar" in context:
        return (
            "A quotation mark opens here and does not close.",
            "Close it on the same line. Inches need no quotes: write 3 in, or quote the whole value.",
            begin,
        )
    if "mapping values are not allowed" in problem:
        if re.match("[ \t]*[^ #'\"\\[{][^:#]*: [^:#]*:( |$)", line):
            return (
                "There is a second colon in this line.",
                "Put one key a line, or braces round the inner keys: {key: value}. Text with a colon needs quotes.",
                index,
            )
        above, begin_above = _line_above(text, index)
        if glued := re.fullmatch("[ \t]*([A-Za-z][A-Za-z0-9_-]*):([^ ].*)", above):
            at = begin_above + glued.end(1)
            return "There is no space after this colon.", f"Write {glued[1]}: {glued[2].strip()}.", at
        if above and ":" not in above and not above.lstrip().startswith(("#", "-")):
            at = begin_above + len(above) - len(above.lstrip())
            return "This line has no colon.", "Write `key: value`, with a space after the colon.", at
        return (
            "This line stands further in than the line before it allows.",
            "Start keys that belong together in the same column, and put `:` after each.",
            index,
        )
    if character == "\t" or ("\t" in line[: len(line) - len(line.lstrip())]):
        return "A tab stands here.", "Indent with spaces: two a step.", index
    if "cannot start any token" in problem:
        return (
            f"A value cannot start with {character}.",
            f'Put the value in quotes, like "{character}…", or leave the sign out.',
            index,
        )
    if "block scalar" in context:
        return "| and > begin a block of text, which starts on the next line.", "Put the value in quotes.", begin
    if character in (",", "]", "}") and "flow mapping" not in context and "flow sequence" not in context:
        return (
            f"A {character} stands here with nothing before it that it could belong to.",
            "Delete it, or open the list with [ or the group of keys with {.",
            index,
        )
    if "flow mapping" in context:
        return (
            "The brace { is not closed, or a comma is missing between two keys.",
            "Write {key: value, key: value}.",
            begin if not character or "\n" in text[begin:index] else index,
        )
    if "flow sequence" in context:
        return (
            "The bracket [ is not closed, or a comma is missing between two items.",
            "Write [item, item].",
            begin if not character or "\n" in text[begin:index] else index,
        )
    if "simple key" in context or "could not find expected ':'" in problem:
        return "This line has no colon.", "Write `key: value`, with a space after the colon.", begin
    if "block" in context:
        if text[max(0, index - 1) : index] in ('"', "'") or _after_quote(text, index):
            return (
                "Something follows a closed quotation mark.",
                "Put the quotes round the whole value, or leave them out.",
                index,
            )
        return (
            "This line does not line up with the lines above it.",
            "Start keys that belong together in the same column.",
            index,
        )
    if "document start" in problem:
        return (
            "The plan ended in the line before: what follows belongs to nothing.",
            "Write `key: value` lines only, all starting in the first column.",
            index,
        )
    return "This cannot be read as YAML.", "Write `key: value`, one a line, inner keys two spaces further in.", index


def _line_above(text: str, index: int) -> tuple[str, int]:
    """The line before that of `index` without its line end, and where it begins; nothing in the first line."""
    end = max(text.rfind("\n", 0, index), text.rfind("\r", 0, index))
    if end < 0:
        return "", 0
    if text[end - 1 : end + 1] == "\r\n":
        end -= 1
    begin = max(text.rfind("\n", 0, end), text.rfind("\r", 0, end)) + 1
    return text[begin : min(end, begin + 2000)], begin


def _line(text: str, index: int) -> str:
    begin = max(text.rfind("\n", 0, index), text.rfind("\r", 0, index)) + 1
    return re.split("\r|\n", text[begin : begin + 2000], maxsplit=1)[0]


def _after_quote(text: str, index: int) -> bool:
    return text[:index].rstrip(" \t")[-1:] in ('"', "'")
