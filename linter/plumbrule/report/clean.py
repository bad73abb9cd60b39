"""Text of a plan or a rule made fit to print: no control sequences, nothing that turns text round or XML forbids."""

from __future__ import annotations

import re

# C0 and C1 controls, line and paragraph separators, bidirectional marks and overrides, lone surrogates, non-characters.
_UNSAFE = re.compile(
    "[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069\ud800-\udfff\ufeff\ufffe\uffff]"
)
_SPACE = re.compile(r"\s+")


def clean(text: str) -> str:
    """`text` without anything that a terminal, an editor or an XML reader would obey instead of showing."""
    return _UNSAFE.sub("", text)


def one_line(text: str) -> str:
    """The same on one line, runs of white space as one blank."""
    return _SPACE.sub(" ", clean(text)).strip()


def markdown_off(text: str) -> str:
    """Text for a SARIF message: braces would be placeholders there, square brackets links, so they are escaped."""
    text = clean(text).replace("\\", "\\\\").replace("{", "{{").replace("}", "}}")
    return text.replace("[", "\\[").replace("]", "\\]")
