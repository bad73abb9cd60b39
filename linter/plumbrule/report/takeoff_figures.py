"""Figures of a take-off: marks for one tape, amounts that order as they are, and why a figure is not known."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_purchase import GROUPS
from plumbrule.facts.takeoff import Takeoff
from plumbrule.reading.shown import System, digits, length, together
from plumbrule.reading.units import INCH, from_si
from plumbrule.report.clean import one_line
from plumbrule.report.figures import quantity

UNKNOWN = "?"


class Amount(NamedTuple):
    """What is needed and bought of one thing, as numbers in `unit` and as texts; None and `?` where it is not known.

    `state` says in a word how they stand: `enough`, `short`, `not listed`, `on hand`, `not reckoned`, `not known`.
    """

    row: Row
    needed: float | None
    bought: float | None
    unit: str
    shown: tuple[str, str, str]
    state: str
    why: str


def mark(mm: float | None, system: System) -> str:
    """A place on the tape without its unit: a fraction where one to 1/64 in is exact, else every digit that counts."""
    if mm is None:
        return UNKNOWN
    if system == "metric":
        return digits(mm)
    inches = mm / INCH
    if abs(inches * 64 - round(inches * 64)) < 1e-6:
        return length(mm, system).removesuffix(" in")
    return digits(inches)


def marks(values: Sequence[float | None], system: System) -> list[str]:
    """Several places on the tape."""
    return [mark(value, system) for value in values]


def spaced(*words: str) -> str:
    """Words with room between them, each safe to print; empty ones left out."""
    return "   ".join(one_line(word) for word in words if word)


def unit_of(system: System) -> str:
    """What marks are in: `inches` or `millimetres`."""
    return "millimetres" if system == "metric" else "inches"


def by(values: Sequence[float | None], system: System) -> str:
    """`48 x 7`."""
    return " x ".join(marks(values, system))


def amounts(takeoff: Takeoff, system: System) -> list[Amount]:
    """Every need beside what is bought of it, in the order of the purchase list."""
    rows = sorted(takeoff.needs, key=lambda row: GROUPS.index(str(row.values["group"])))
    return [amount(row, system, takeoff.bought) for row in rows]


def amount(row: Row, system: System, listed: bool = True) -> Amount:
    """One need. `listed` is false where the plan has no purchase list, so that nothing is missing from it."""
    kind = str(row.values["amount"])
    field, unit = {"length": ("length", "mm"), "volume": ("volume", "mm³")}.get(kind, ("count", ""))
    needed, bought = _number(row, f"needed_{field}"), _number(row, f"bought_{field}")
    if kind == "wear" and needed is not None:
        needed = float(-(-needed // 1))
    state = _state(row, kind, needed, bought, listed)
    known = [value for value in (needed, bought) if value is not None]
    if unit:
        printed = ("fl oz" if system == "inch" else "ml") if kind == "volume" else ("in" if system == "inch" else "mm")
        over = [bought - needed] if needed is not None and bought is not None else []
        texts = list(together([*known, *over], printed, system))
        if kind == "length":
            texts = by_the_run([*known, *over], system) or texts
        numbers = [from_si(value, printed) for value in known]
    else:
        printed = {"sticks": "sticks", "wear": "discs"}.get(kind, "pieces")
        over = [bought - needed] if needed is not None and bought is not None else []
        texts = [digits(value) for value in (*known, *over)]
        numbers = known
    placed = iter(zip(numbers, texts, strict=False))
    first = next(placed) if needed is not None else (None, UNKNOWN)
    second = next(placed) if bought is not None else (None, "-" if row.values.get("listed") is not True else UNKNOWN)
    if kind == "not reckoned":
        first, printed = (None, "some"), ""
        second = (None, "yes" if row.values.get("listed") is True else "-")
    return Amount(row, first[0], second[0], printed, (first[1], second[1], texts[-1] if over else ""), state,
                  reason(row, f"needed_{field}", f"bought_{field}"))  # fmt: skip


def by_the_run(values: Sequence[float], system: System) -> list[str]:
    """What is sold by the run, in feet or metres; nothing where that would show two unlike lengths alike."""
    unit, size = ("m", 1000.0) if system == "metric" else ("ft", 304.8)
    found = [f"{quantity(value / size, '', system, 4)} {unit}" for value in values]
    return found if len(set(found)) == len(set(values)) else []


def reason(row: Row, *fields: str) -> str:
    """Why one of these fields is not known; empty where all are, or where the row does not have them."""
    for field in fields:
        if field in row.missing:
            return f"measure {', '.join(one_line(pointer) for pointer in row.missing[field])}"
        if field in row.outside:
            return one_line(row.outside[field])
        if field in row.failed:
            return one_line(row.failed[field])
    return ""


def _state(row: Row, kind: str, needed: float | None, bought: float | None, listed: bool) -> str:
    if row.values.get("on_hand") is True:
        return "on hand"
    if listed and row.values.get("listed") is not True:
        return "not listed"
    if row.values.get("fits_stick") is False:
        return "short"
    if kind == "not reckoned":
        return "not reckoned"
    if needed is None or bought is None:
        return "not known"
    return "short" if bought < needed * (1 - 1e-9) else "enough"


def _number(row: Row, field: str) -> float | None:
    value = row.values.get(field)
    return float(value) if isinstance(value, int | float) else None
