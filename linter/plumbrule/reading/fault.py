"""What is wrong with a file, and where: the only way bad input is reported, whatever the file is."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple


class Place(NamedTuple):
    """A stretch of text, from 0, in code points, half open."""

    line: int
    column: int
    start: int
    end_line: int
    end_column: int
    end: int


NOWHERE = Place(0, 0, 0, 0, 0, 0)


class Spot(NamedTuple):
    """Where a value stands and, in a mapping, where its key stands."""

    value: Place
    key: Place | None


@dataclass(frozen=True, slots=True)
class Fault:
    """One mistake. `found` says what stands there, `write` what to write instead; both are whole sentences."""

    path: str
    place: Place
    pointer: str
    found: str
    write: str

    def __str__(self) -> str:
        where = f"{self.path}:{self.place.line + 1}:{self.place.column + 1}"
        pointer = f"  {self.pointer}" if self.pointer else ""
        return f"{where}{pointer}: {self.found} {self.write}".rstrip()


class Unreadable(Exception):
    """A file that cannot be used. Carries every fault that was found, in the order of the file."""

    def __init__(self, faults: Sequence[Fault]) -> None:
        super().__init__("\n".join(str(fault) for fault in faults))
        self.faults = tuple(faults)
