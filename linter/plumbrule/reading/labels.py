"""What is written like a label, not like a quantity: screw sizes, grits, dates and names."""

from __future__ import annotations

import re
from typing import NamedTuple

from plumbrule.reading.notation import NotAQuantity

SCREW_SIZE = "^(?:No[.] ?|#)(?:[4-9]|1[0-9]|2[0-4])$"
GRIT = "^P[1-9][0-9]{1,3}$"
DATE = "^[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])$"
NAME = "^[A-Za-z][A-Za-z0-9-]{0,59}$"

_SIZE = re.compile("(?:No[.] ?|#)([4-9]|1[0-9]|2[0-4])")
_LOOSE_SIZE = re.compile("(?:no|nr|number|size|#)?[. ]{0,2}([0-9]{1,3})", re.IGNORECASE)
_GRIT = re.compile("P([1-9][0-9]{1,3})")
_LOOSE_GRIT = re.compile("([pP#]?) ?([0-9]{1,4})(?: ?grit)?", re.IGNORECASE)
_NAME = re.compile(NAME[1:-1])
_DATE = re.compile(DATE[1:-1])


class Unquoted(str):
    """A scalar that was written without quotes and that an older reader would turn into a date."""

    __slots__ = ()


class GritSize(NamedTuple):
    """Abrasive by number: the United States scale, or ISO 6344 (`P150`) when `iso`. The two part above 220."""

    number: int
    iso: bool = False

    def __str__(self) -> str:
        return f"P{self.number}" if self.iso else str(self.number)


def screw_size(text: object) -> int:
    """The number of a screw, 4 to 24, from `No. 10` or `"#10"`. Raises NotAQuantity."""
    if isinstance(text, str) and (found := _SIZE.fullmatch(text)):
        return int(found[1])
    shown = _shown(text)
    if text is None or text == "":
        raise NotAQuantity("The size is empty.", "A bare # starts a comment: write No. 10.")
    loose = _LOOSE_SIZE.fullmatch(shown)
    if loose and 4 <= int(loose[1]) <= 24:
        raise NotAQuantity(f"{shown} is not a screw size as it is written here.", f"Write No. {int(loose[1])}.")
    if loose:
        raise NotAQuantity(f"There is no screw size {loose[1]} here.", "Write No. 4 to No. 24, or give the diameter.")
    raise NotAQuantity(f"{shown} is not a screw size.", "Write it like No. 10.")


def grit(value: object) -> GritSize:
    """A grit from a whole number (United States scale) or `P150` (ISO 6344), 12 to 5000. Raises NotAQuantity."""
    if type(value) is int and 12 <= value <= 5000:
        return GritSize(value)
    if isinstance(value, str) and (found := _GRIT.fullmatch(value)) and 12 <= int(found[1]) <= 5000:
        return GritSize(int(found[1]), iso=True)
    shown = _shown(value)
    loose = _LOOSE_GRIT.fullmatch(shown)
    if loose and 12 <= int(loose[2]) <= 5000:
        number = int(loose[2])
        meant = f"P{number}" if loose[1] in ("p", "P") else f"{number} or P{number}"
        raise NotAQuantity(f"{shown} is not a grit as it is written here.", f"Write {meant}.")
    raise NotAQuantity(f"{shown} is not a grit." if shown else "The grit is empty.", "Write it like 150 or P150.")


def day(value: object) -> str:
    """A calendar date as written, `YYYY-MM-DD`, in quotes. Raises NotAQuantity, also for a day that does not exist."""
    from datetime import date

    shown = _shown(value)
    if isinstance(value, str) and _DATE.fullmatch(value):
        try:
            date.fromisoformat(value)
        except ValueError:
            raise NotAQuantity(
                f"There is no day {shown}.", "Write year, month and day of a real day.", notation=False
            ) from None
        if isinstance(value, Unquoted):
            raise NotAQuantity(f"{shown} stands without quotes.", f'Put the date in quotes: "{shown}".')
        return str(value)
    raise NotAQuantity(
        f"{shown} is not a date." if shown else "The date is empty.",
        'Write year, month and day in quotes, like "2026-03-02".',
    )


def name(value: object) -> str:
    """A name of a part: a letter, then letters, digits and hyphens, 60 at most. Raises NotAQuantity."""
    if isinstance(value, str) and _NAME.fullmatch(value):
        return value
    shown = _shown(value)
    if value is not None and not isinstance(value, str):
        raise NotAQuantity(f"{shown} stands where a name is needed.", "Write a name like seat-1.")
    meant = re.sub("[^A-Za-z0-9]+", "-", shown).strip("-")[:60].rstrip("-")
    if meant and not meant[0].isalpha():
        meant = f"n-{meant}"
    write = f"Write {meant}." if meant and _NAME.fullmatch(meant) else "Write a name like seat-1."
    if not shown:
        raise NotAQuantity("The name is empty.", "Write a name like seat-1.")
    if " " in shown:
        raise NotAQuantity("Names have no spaces.", write)
    if len(shown) > 60:
        raise NotAQuantity("Names have at most 60 letters.", write)
    if not shown[0].isalpha():
        raise NotAQuantity("Names start with a letter.", write)
    raise NotAQuantity("Names have only the letters a to z, digits and hyphens.", write)


def _shown(value: object) -> str:
    """A value as the subject of a sentence, never longer than a line."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "`true`" if value else "`false`"
    if isinstance(value, (list, tuple)):
        return "A list"
    if isinstance(value, dict):
        return "A group of keys"
    text = f"{value:g}" if isinstance(value, float) else str(value)
    return text if len(text) <= 60 else f"{text[:57]}…"
