"""Which plans were named: files as they are, folders walked, `-` for standard input."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import NamedTuple

from plumbrule.cli.stream import Refused
from plumbrule.reading.characters import LARGEST

STANDARD_INPUT = "-"
STDIN_NAME = "standard input"
_ENDINGS = (".yaml", ".yml")


class Named(NamedTuple):
    """A plan to be read: its path, or what came in on standard input."""

    path: str
    source: bytes | None = None


def named(words: Sequence[str], but_not: Path | None = None) -> list[Named]:
    """The plans that `words` name, each once, in the order they were named; folders sorted. The house file that may lie
    among them is no plan. Raises Refused: nothing was named, or a folder without plans."""
    if not words:
        raise Refused("inspect: no plan was named. Name a plan, a folder of plans, or - for standard input.")
    found: dict[str, Named] = {}
    for word in words:
        if word == STANDARD_INPUT:
            found.setdefault(STANDARD_INPUT, _standard_input())
        elif os.path.isdir(word):  # noqa: PTH112 - a name with a NUL in it is no folder, and no error
            inside = [path for path in _walk(word) if not _same(path, but_not)]
            if not inside:
                raise Refused(f"inspect: there is no plan in {word}: no file in it ends in {' or '.join(_ENDINGS)}.")
            found.update((path, found.get(path, Named(path))) for path in inside)
        else:
            found.setdefault(word, Named(word))
    return list(found.values())


def one(word: str | None, command: str) -> Named:
    """The one plan that a command works on. Raises Refused."""
    if word is None:
        raise Refused(f"{command}: no plan was named. Name one, or - for standard input.")
    return _standard_input() if word == STANDARD_INPUT else Named(word)


def _standard_input() -> Named:
    if sys.stdin is None or sys.stdin.isatty():
        raise Refused("- reads a plan from standard input, and nothing is piped into it. Name a file instead.")
    return Named(STDIN_NAME, sys.stdin.buffer.read(LARGEST + 1))


def _walk(folder: str) -> Iterator[str]:
    """Plan files below `folder`, sorted; links and what begins with a dot are left alone."""
    for place, folders, files in os.walk(folder):
        folders[:] = sorted(name for name in folders if not name.startswith("."))
        for name in sorted(files):
            path = Path(place, name)
            if name.startswith(".") or not name.lower().endswith(_ENDINGS) or path.is_symlink() or not path.is_file():
                continue
            yield str(path)


def _same(path: str, other: Path | None) -> bool:
    return other is not None and other.exists() and Path(path).samefile(other)
