"""What is wrong with an expression, shown under the text it was written in."""

from __future__ import annotations

from collections.abc import Iterable

WIDTH = 76
_ELLIPSIS = "…"


class BadExpression(Exception):
    """An expression that cannot be read, or that cannot mean anything.

    `message` and `hint` are whole sentences: what stands there, and what to write instead. `start` and `end` are
    offsets in the text, half open.
    """

    def __init__(self, message: str, start: int, end: int, hint: str = "") -> None:
        super().__init__(message, start, end, hint)
        self.message = message
        self.start = start
        self.end = end
        self.hint = hint

    def __str__(self) -> str:
        return f"{self.message} {self.hint}".rstrip()


class CannotWork(Exception):
    """An expression that has no value for these numbers: a division by zero, or a result that is not finite. The
    rule has failed, which is neither a pass nor a missing value."""


def caret(text: str, start: int, end: int) -> str:
    """The line of `text` that holds `start`, and below it `^` under everything from `start` to `end` on that line.

    A line over 76 characters is cut to the stretch around the fault.
    """
    start = max(0, min(start, len(text)))
    first = text.rfind("\n", 0, start) + 1
    last = text.find("\n", start)
    line = text[first : len(text) if last < 0 else last].replace("\t", " ").rstrip("\r")
    line = "".join(sign if sign.isprintable() else "\ufffd" for sign in line)  # a terminal obeys control characters
    left = min(start - first, len(line))
    right = max(left + 1, min(end - first, max(len(line), left + 1)))
    if len(line) > WIDTH:
        cut = max(0, min(left - WIDTH // 3, len(line) - WIDTH))
        head, tail = cut > 0, cut + WIDTH < len(line)
        line = (_ELLIPSIS if head else "") + line[cut : cut + WIDTH] + (_ELLIPSIS if tail else "")
        left, right = left - cut + head, min(right - cut, WIDTH) + head
    return f"{line}\n{' ' * left}{'^' * (right - left)}"


def nearest(word: str, allowed: Iterable[str]) -> str | None:
    """The one of `allowed` that `word` was most likely meant to be, or None when none is near."""
    choices = sorted(set(allowed))
    folded = {choice.lower().replace("-", "_").replace(" ", "_"): choice for choice in choices}
    plain = word.lower().replace("-", "_").replace(" ", "_")
    if plain in folded:
        return folded[plain]
    from difflib import get_close_matches  # 5 ms to import, needed for a mistake only

    close = get_close_matches(plain, folded, n=1, cutoff=0.6)
    return folded[close[0]] if close else None


def listed(words: Iterable[str], joined: str = "or", most: int = 40) -> str:
    """`"a", "b" or "c"`: words a reader may choose from."""
    names = [f'"{word}"' for word in words]
    if len(names) > most:
        names = [*names[:most], f"{len(names) - most} more"]
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {joined} {names[-1]}"
