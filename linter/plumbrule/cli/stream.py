"""Where a report goes: standard output in the width and colour it has, or a file that is replaced in one step."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

from plumbrule.report.paper import WIDEST


class Refused(Exception):
    """What was asked for cannot be done. The text is one sentence that says what to do instead."""


class Closed(Exception):
    """Nobody reads standard output any more."""


def columns() -> int:
    """How wide the terminal is; the widest where there is none to ask. `COLUMNS` wins."""
    asked = os.environ.get("COLUMNS", "")
    if asked.isdigit() and int(asked) > 0:
        return int(asked)
    try:
        return os.get_terminal_size(sys.stdout.fileno()).columns or WIDEST
    except (OSError, ValueError, AttributeError):
        return WIDEST


def to_a_terminal() -> bool:
    """Whether standard output is a terminal."""
    with suppress(ValueError, AttributeError):
        return sys.stdout.isatty()
    return False


def in_colour() -> bool:
    """Colour is for terminals only, and never where NO_COLOR is set or the terminal says that it has none."""
    return to_a_terminal() and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"


def put(pieces: Iterable[str], *, exact: bool = False) -> None:
    """Writes to standard output. `exact` is for machines: UTF-8 whatever the terminal's encoding. For people, a sign
    that the terminal does not have becomes a question mark rather than an error."""
    reconfigure = getattr(sys.stdout, "reconfigure", None)
    if reconfigure is not None:
        if exact:
            reconfigure(encoding="utf-8", errors="replace", newline="\n")
        else:
            reconfigure(errors="replace")
    try:
        for piece in pieces:
            sys.stdout.write(piece)
        sys.stdout.flush()
    except BrokenPipeError:
        raise Closed from None


def complain(text: str) -> None:
    """One line on standard error."""
    reconfigure = getattr(sys.stderr, "reconfigure", None)
    if reconfigure is not None:
        reconfigure(errors="replace")
    print(text, file=sys.stderr)


def checked_target(target: Path) -> Path:
    """The file to be written, links followed, before any work is done. Raises Refused: there is no such folder, or
    something stands there that is not an ordinary file."""
    try:
        real = target.resolve()
        if not real.parent.is_dir():
            raise Refused(f"--out: there is no folder {real.parent}. Make it first, or write somewhere else.")
        if real.exists() and not real.is_file():
            raise Refused(f"--out: {target} is not an ordinary file. Name a file to write.")
        if not os.access(real.parent, os.W_OK):
            raise Refused(f"--out: the folder {real.parent} cannot be written to. Write somewhere else.")
    except (OSError, ValueError, RuntimeError) as error:
        raise Refused(f"--out: {target} cannot be written: {error}. Name another file.") from None
    return real


def replace(target: Path, pieces: Iterable[str]) -> None:
    """Writes a file beside `target`, then puts it in its place: a reader sees the old report or the new, never half of
    one. Raises Refused when it cannot be written."""
    beside = target.with_name(f".{target.name}.{os.getpid()}.new")
    try:
        descriptor = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_NOFOLLOW", 0), 0o666)
        try:
            with os.fdopen(descriptor, "w", encoding="utf-8", errors="replace", newline="\n") as file:
                file.writelines(pieces)
                file.flush()
                os.fsync(file.fileno())
            if target.exists():
                beside.chmod(target.stat().st_mode & 0o777)
            beside.replace(target)
        except BaseException:
            beside.unlink(missing_ok=True)
            raise
    except OSError as error:
        raise Refused(f"--out: {target} cannot be written: {error.strerror or error}. Name another file.") from None
