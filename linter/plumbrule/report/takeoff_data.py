"""The take-off as JSON, as schema/takeoff.schema.json publishes it: lengths in mm, volumes in ml, masses in kg."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from plumbrule import __version__
from plumbrule.facts.purchase_sticks import KERF, StickJob
from plumbrule.facts.takeoff import Takeoff
from plumbrule.facts.takeoff_drilling import DrillSheet, HoleRow
from plumbrule.facts.takeoff_panels import CutPiece, PanelSheet
from plumbrule.reading.units import to_si
from plumbrule.report.clean import clean
from plumbrule.report.data import dumps, indented
from plumbrule.report.outcome import verdict_of
from plumbrule.report.takeoff_figures import Amount, amounts

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined

Entry = dict[str, Any]


def data(takeoff: Takeoff, examined: Examined, *, pretty: bool = False) -> str:
    """The whole take-off as JSON text. What is not known is null, with the plan pointers to fill in beside it."""
    text = dumps(
        {
            "plumbrule": __version__, "path": clean(examined.path), "title": clean(examined.plan.model.title),
            "system": examined.system, "verdict": verdict_of(examined.inspection, "correction"),
            "not_inspected": len(examined.inspection.not_inspected),
            "units": {"length": "mm", "volume": "ml", "mass": "kg", "angle": "°"},
            "needs": [need_entry(one) for one in amounts(takeoff, examined.system)],
            "bought_for_nothing": [{"group": group, "name": clean(name)} for group, name in takeoff.unused],
            "sticks": [sticks_entry(job) for job in takeoff.sticks],
            "panels": [panels_entry(sheet) for sheet in takeoff.panels],
            "drilling": [drill_entry(sheet) for sheet in takeoff.drilling],
        }
    )  # fmt: skip
    return (indented(text) if pretty else text) + "\n"


def need_entry(one: Amount) -> Entry:
    """One need beside what is bought. Numbers are in SI whatever the plan's system."""
    row = one.row
    unit = {"in": "mm", "fl oz": "ml"}.get(one.unit, one.unit)
    missing = dict.fromkeys(
        clean(pointer) for field, pointers in row.missing.items() if field.startswith(("needed_", "bought_", "stick"))
        for pointer in pointers
    )  # fmt: skip
    mass = row.values.get("mass")
    return {
        "group": row.values["group"], "name": clean(row.label.partition(" ")[2]), "pointer": clean(row.pointer),
        "part": clean(row.part), "counted_by": row.values["amount"], "unit": unit or None,
        "needed": _si(one.needed, one.unit), "bought": _si(one.bought, one.unit), "state": one.state,
        "mass": mass if isinstance(mass, float) else None, "missing": list(missing), "reason": clean(one.why) or None,
    }  # fmt: skip


def sticks_entry(job: StickJob) -> Entry:
    """What is cut from sticks of one kind; `cuts` is null where it is not known yet."""
    made = job.cut_list()
    stick = job.stick.value
    return {
        "group": job.line.group, "name": clean(job.line.name), "part": clean(job.part),
        "stick": float(stick) if isinstance(stick, int | float) else None, "saw_cut": KERF,
        "pieces": [
            {"name": clean(piece.name), "part": clean(piece.part), "note": clean(piece.note) or None,
             "length": float(piece.length.value) if isinstance(piece.length.value, int | float) else None}
            for piece in job.pieces
        ],
        "cuts": None if made is None else [
            {"pieces": [{"name": clean(piece.name), "length": piece.length} for piece in one.pieces], "left": one.left}
            for one in made.sticks
        ],
        "at_least": None if made is None else made.at_least, "missing": [clean(pointer) for pointer in job.wanting],
    }  # fmt: skip


def panels_entry(sheet: PanelSheet) -> Entry:
    """One panel field: courses from the floor, pieces from the left, and what is cut from which panel."""
    return {
        "name": clean(sheet.name), "pointer": clean(sheet.pointer), "length": sheet.length, "height": sheet.height,
        "needed": sheet.needed if not sheet.missing else None, "missing": [clean(pointer) for pointer in sheet.missing],
        "courses": [
            {"wall": clean(course.wall), "number": course.number, "bottom": list(course.bottom),
             "top": list(course.top), "scribed": course.scribed,
             "pieces": [piece_entry(piece) for piece in course.pieces]}
            for course in sheet.courses
        ],
        "cut_panels": [
            {"number": panel.number, "left": panel.left,
             "pieces": [{"wall": clean(one.wall), "course": one.course, "place": one.place, "length": one.length}
                        for one in panel.pieces]}
            for panel in sheet.panels
        ],
    }  # fmt: skip


def piece_entry(piece: CutPiece) -> Entry:
    """One piece of panel."""
    return {
        "place": piece.place, "length": piece.length, "panel": piece.panel, "from_offcut": piece.from_offcut,
        "whole": piece.whole, "low": piece.low, "high": piece.high, "notched": piece.notched,
    }  # fmt: skip


def drill_entry(sheet: DrillSheet) -> Entry:
    """One part to be drilled; marks from its left end."""
    return {
        "kind": sheet.kind, "name": clean(sheet.name), "pointer": clean(sheet.pointer), "wall": clean(sheet.wall),
        "section": clean(sheet.section) or None, "wall_leg": sheet.wall_leg or None,
        "wall_leg_size": sheet.wall_leg_size, "seat_leg_size": sheet.seat_leg_size, "thickness": sheet.thickness,
        "material": sheet.metal or None, "length": sheet.length,
        "ends": {"left": sheet.ends[0], "right": sheet.ends[1]},
        "hand": clean(sheet.hand) or None, "lining_behind": sheet.lining_behind or None,
        "starts_on_wall": list(sheet.starts), "rows": [hole_entry(row) for row in sheet.rows], "holes": sheet.holes,
        "to_right_end": {"wall": sheet.to_right_end("wall"), "seat": sheet.to_right_end("seat")},
        "on_wall": list(sheet.on_wall), "missing": [clean(pointer) for pointer in sheet.missing],
    }  # fmt: skip


def hole_entry(row: HoleRow) -> Entry:
    """One row of holes."""
    return {
        "leg": row.leg, "row": row.letter, "from_heel": row.from_heel, "bit": row.bit, "slot": row.slot,
        "slot_runs": row.slot_runs or None, "sink_angle": row.sink_angle, "sink_diameter": row.sink_diameter,
        "screw": clean(row.screw), "pilot_thread": row.pilot_thread, "pilot_shank": row.pilot_shank,
        "marks": list(row.marks),
    }  # fmt: skip


def _si(value: float | None, unit: str) -> float | None:
    if value is None or unit not in ("in", "fl oz"):
        return value
    return to_si(value, unit) if unit == "in" else to_si(value, unit) / to_si(1, "ml")
