"""The nearest of the words that are allowed."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

MOST_LISTED = 12


def near(word: str, words: Iterable[str], most: int = 1) -> list[str]:
    """Up to `most` of `words` that are spelled nearly like `word`, nearest first. Small and capital letters, spaces,
    hyphens and underscores count as alike."""
    from difflib import get_close_matches

    if len(word) > 60:
        return []
    plain: dict[str, str] = {}
    for candidate in words:
        plain.setdefault(_plain(candidate), candidate)
    wanted = _plain(word)
    if wanted in plain and most == 1:
        return [plain[wanted]]
    found = get_close_matches(wanted, plain, n=most, cutoff=0.6)
    if len(found) < most and len(wanted) >= 3:
        # `oak` is a part of `red oak`, too far from it for a measure of letters.
        found += [key for key in plain if wanted in key.split("-") and key not in found][: most - len(found)]
    return [plain[key] for key in found]


def nearest(word: str, words: Iterable[str]) -> str | None:
    """The one of `words` that was probably meant, or None."""
    found = near(word, words)
    return found[0] if found else None


def offer(word: str, words: Iterable[str], quote: str = "`", other: Sequence[str] = ()) -> str:
    """What to say after an unknown word: the nearest, then all of them if they are few, else the nearest few. `other`
    is listed after the words, but is none itself."""
    known = list(dict.fromkeys(words))
    close = near(word, known, most=1)
    said = f"Did you mean {quote}{close[0]}{quote}?" if close else ""
    if len(known) == 1:
        return f"Write {either([*known, *other])}."
    if len(known) <= MOST_LISTED:
        return f"{said} Write {either([*known, *other])}.".strip()
    few = near(word, known, most=5)
    if len(few) > 1:
        return f"{said} Near to it are {', '.join(few)}.".strip()
    return said or f"It is none of the {len(known)} words that are known here, such as {', '.join(known[:5])}."


def either(words: Sequence[str]) -> str:
    """`a`, `a or b`, `a, b or c`."""
    if len(words) == 1:
        return words[0]
    return f"{', '.join(words[:-1])} or {words[-1]}"


def _plain(word: str) -> str:
    return word.casefold().replace("_", "-").replace(" ", "-")
