"""The take-off as tables of comma-separated values, RFC 4180: one table a kind of thing, units in the headings."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING

from plumbrule.facts.takeoff import Takeoff
from plumbrule.reading.shown import System, digits
from plumbrule.reading.units import INCH
from plumbrule.report.clean import one_line
from plumbrule.report.takeoff_figures import amounts

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined

TABLES = ("needs", "sticks", "panels", "drilling")
# A spreadsheet takes a cell that begins like this for a formula, and would work it.
_LIVE = ("=", "+", "-", "@", "\t", "\r")
Cell = str | float | int | None


def tables(takeoff: Takeoff, examined: Examined, wanted: Sequence[str] = TABLES) -> str:
    """The tables asked for. One alone stands by itself; several are each headed by a line with its name, with an empty
    line between. Lengths are decimals in inches or millimetres, as the plan is written."""
    made = {"needs": _needs, "sticks": _sticks, "panels": _panels, "drilling": _drilling}
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    for place, name in enumerate(wanted):
        if len(wanted) > 1:
            if place:
                writer.writerow([])
            writer.writerow([name])
        for row in made[name](takeoff, examined):
            writer.writerow([_safe(cell) for cell in row])
    return out.getvalue()


def _needs(takeoff: Takeoff, examined: Examined) -> Iterator[Sequence[Cell]]:
    yield "group", "name", "needed", "bought", "over", "unit", "state", "mass (kg)", "wanting"
    for one in amounts(takeoff, examined.system):
        mass = one.row.values.get("mass")
        over = None if one.needed is None or one.bought is None else one.bought - one.needed
        yield (
            one.row.values["group"], one.row.label.partition(" ")[2], one.needed, one.bought, over, one.unit, one.state,
            mass if isinstance(mass, float) else None, one.why,
        )  # type: ignore[misc]  # fmt: skip
    for group, name in takeoff.unused:
        yield group, name, 0, None, None, "", "bought for nothing", None, ""


def _sticks(takeoff: Takeoff, examined: Examined) -> Iterator[Sequence[Cell]]:
    unit, per = _unit(examined.system)
    yield "group", "name", f"stick ({unit})", "stick number", "piece", f"length ({unit})", "ends", f"left over ({unit})"
    for job in takeoff.sticks:
        made = job.cut_list()
        notes = {piece.name: piece.note for piece in job.pieces}
        if made is None:
            for piece in job.pieces:
                yield (job.line.group, job.line.name, _length(job.stick.value, per), None, piece.name,
                       _length(piece.length.value, per), piece.note, None)  # fmt: skip
            continue
        for number, stick in enumerate(made.sticks, 1):
            for cut in stick.pieces:
                yield (job.line.group, job.line.name, _length(made.stick, per), number, cut.name,
                       _length(cut.length, per), notes.get(cut.name, ""), _length(stick.left, per))  # fmt: skip


def _panels(takeoff: Takeoff, examined: Examined) -> Iterator[Sequence[Cell]]:
    unit, per = _unit(examined.system)
    yield (
        "field", "wall", "course", "piece from the left", f"length ({unit})", f"lowest ({unit})",
        f"highest ({unit})", "panel number", "from an offcut", "whole", "notched or ripped",
    )  # fmt: skip
    for sheet in takeoff.panels:
        for course in sheet.courses:
            for piece in course.pieces:
                yield (
                    sheet.name, course.wall, course.number, piece.place, _length(piece.length, per),
                    _length(piece.low, per), _length(piece.high, per), piece.panel, _yes(piece.from_offcut),
                    _yes(piece.whole), _yes(piece.notched),
                )  # fmt: skip


def _drilling(takeoff: Takeoff, examined: Examined) -> Iterator[Sequence[Cell]]:
    unit, per = _unit(examined.system)
    yield (
        "part", "kind", "hand", "leg", "row", f"from heel ({unit})", f"bit ({unit})", f"slot ({unit})", "slot runs",
        "hole number", f"from left end ({unit})", "screw", f"pilot thread ({unit})", f"pilot shank ({unit})",
    )  # fmt: skip
    for sheet in takeoff.drilling:
        for row in sheet.rows:
            for number, mark in enumerate(row.marks, 1):
                yield (
                    sheet.name, sheet.kind, sheet.hand, row.leg, row.letter, _length(row.from_heel, per),
                    _length(row.bit, per), _length(row.slot, per), row.slot_runs, number, _length(mark, per), row.screw,
                    _length(row.pilot_thread, per), _length(row.pilot_shank, per),
                )  # fmt: skip


def _unit(system: System) -> tuple[str, float]:
    return ("mm", 1.0) if system == "metric" else ("in", INCH)


def _length(value: object, per: float) -> float | None:
    return float(value) / per if isinstance(value, int | float) else None


def _yes(value: bool) -> str:
    return "yes" if value else "no"


def _safe(cell: Cell) -> str:
    """A number in plain digits; a text that no spreadsheet takes for a formula."""
    if cell is None:
        return ""
    if isinstance(cell, int | float):
        return digits(float(cell), 10)
    text = one_line(cell)
    return f"'{text}" if text.startswith(_LIVE) else text
