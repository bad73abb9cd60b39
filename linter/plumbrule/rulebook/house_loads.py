"""The loads of a house: heavier than the benchmarks, never lighter, and said in every report."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from plumbrule.mechanics import loads
from plumbrule.plan.house import House
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import Document
from plumbrule.reading.units import to_si

# From the benchmark of mechanics up to what is still a person, a seat, a shelf.
_RANGES: dict[str, tuple[str, float, str, float, str]] = {
    "person": ("one person", loads.PERSON, "250 lbf", to_si(450, "lbf"), "450 lbf"),
    "seat": ("a full seat", loads.SEAT_LINE_LOAD, "120 lbf/ft", to_si(300, "lbf/ft"), "300 lbf/ft"),
    "storage": ("storage", loads.STORAGE_LINE_LOAD, "25 lbf/ft", to_si(150, "lbf/ft"), "150 lbf/ft"),
    "lean": ("leaning", loads.LEAN, "50 lbf", to_si(250, "lbf"), "250 lbf"),
}
_TIE = 1e-9


def loads_of(house: House, document: Document) -> tuple[str, ...]:
    """What the house raised, in words. Raises Unreadable with every load that lies outside its range."""
    said, faults = [], []
    for pointer, key, value in _given(house):
        words, least, least_said, most, most_said = _RANGES[key]
        written = _written(document, pointer)
        if least * (1 - _TIE) <= value <= most * (1 + _TIE):
            said.append(f"loads: {words}{_use(pointer, key)} {least_said} made {written}")
            continue
        found = f"{written} is {'below' if value < least else 'above'} what a board may be tried with."
        write = f"Write {least_said} to {most_said}: a house may ask more than the benchmark, not less."
        faults.append(Fault(document.path, document.place(pointer), pointer, found, write))
    if faults:
        raise Unreadable(sorted(faults, key=lambda fault: fault.place.start))
    return tuple(said)


def _given(house: House) -> Iterator[tuple[str, str, float]]:
    given = house.loads
    if given is None:
        return
    for key in ("person", "seat", "lean"):
        value = getattr(given, key)
        if value is not None:
            yield f"/loads/{key}", key, float(value)
    for use, value in (given.storage or {}).items():
        if value is not None:
            yield f"/loads/storage/{use}", "storage", float(value)


def _written(document: Document, pointer: str) -> object:
    value: Any = document.value
    for part in pointer.split("/")[1:]:
        value = value[part]
    return value


def _use(pointer: str, key: str) -> str:
    return f" of {pointer.rsplit('/', 1)[1]}" if key == "storage" else ""
