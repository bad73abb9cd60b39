"""Gathers what is wrong with a plan as a whole, each at the place in the file where it stands."""

from __future__ import annotations

from plumbrule.reading.fault import Fault
from plumbrule.reading.places import Document

INCH = 25.4
MOST = 100


class Enough(Exception):
    """So much is wrong that looking on would help nobody, and could be made to take for ever."""


class Complaints:
    """Faults of one document. A pointer names a value; `key=True` puts the fault on its name instead."""

    def __init__(self, document: Document) -> None:
        self._document = document
        self._faults: list[Fault] = []

    def add(self, pointer: str, found: str, write: str, *, key: bool = False) -> None:
        """One more fault. Both sentences are whole; the second says what to write instead. Raises Enough at the
        hundredth."""
        place = self._document.key_place(pointer) if key else self._document.place(pointer)
        self._faults.append(Fault(self._document.path, place, pointer, found, write))
        if len(self._faults) >= MOST:
            raise Enough

    def written(self, pointer: str) -> str:
        """A value as it stands in the file, without its quotes."""
        text = self._document.written(pointer)
        return text[1:-1] if text[:1] in ("'", '"') and text[-1:] == text[:1] and len(text) > 1 else text

    def faults(self) -> list[Fault]:
        """All of them in the order of the file. What several users of one pattern complain of is said once."""
        return sorted(dict.fromkeys(self._faults), key=lambda fault: (fault.place.start, fault.pointer))


def length(mm: float, like: str) -> str:
    """A length reckoned from others, written in the manner of `like`: inches and fractions, or millimetres."""
    if like.rstrip().endswith("m"):
        return f"{mm:.1f}".removesuffix(".0") + " mm"
    sign, sixty_fourths = ("-" if mm < 0 else ""), round(abs(mm) / INCH * 64)
    whole, part = divmod(sixty_fourths, 64)
    if not part:
        return f"{sign}{whole} in"
    below = 64
    while part % 2 == 0:
        part, below = part // 2, below // 2
    return f"{sign}{whole}-{part}/{below} in" if whole else f"{sign}{part}/{below} in"
