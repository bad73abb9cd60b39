"""Rows of panels: each field, each panelled wall with its ends and cut-outs, each course, each piece."""

from __future__ import annotations

import math
from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_panels import PANEL_FIELD
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.layout import KERF, WallLayout, layouts
from plumbrule.facts.panels_cut_rows import cut_rows
from plumbrule.facts.panels_piece_rows import course_rows, piece_rows
from plumbrule.facts.panels_wall_rows import end_rows, unlaid, wall_row
from plumbrule.facts.supports import Support
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan

_SAW = "nothing is written: a saw cut of 1/8 in between pieces is taken"


def panels_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind; none where the plan has no panels."""
    fields = plan.model.panels or {}
    laid = layouts(plan, carried)
    return {
        "panel_field": tuple(
            _field_row(name, part, [one for one in laid if one.field_name == name]) for name, part in fields.items()
        ),
        "panel_wall": tuple(wall_row(plan, fields[one.field_name], one) for one in laid),
        "panel_end": tuple(row for one in laid for row in end_rows(plan, one, laid)),
        "cut_out": tuple(row for one in laid for row in cut_rows(plan, fields[one.field_name], one, carried)),
        "course": tuple(row for one in laid for row in course_rows(fields[one.field_name], one)),
        "piece": tuple(row for one in laid for row in piece_rows(fields[one.field_name], one)),
    }


def _field_row(name: str, part: PanelField, laid: Sequence[WallLayout]) -> Row:
    here = f"/panels/{name}"
    desk = Desk(PANEL_FIELD, here, here, f"panels {name}")
    desk.copy("core", Input(part.panel.core, f"{here}/panel/core"))
    desk.set("edges", part.panel.edges, f"{here}/panel/edges")
    joints = Input(part.gaps.joints, f"{here}/gaps/joints")
    desk.get("gap_in_joints", lambda: desk.length(joints) > 0)
    desk.get("joint_gap", lambda: desk.length(joints))
    unready = next((one for one in laid if not one.pieces), None)
    if unready is not None:
        unlaid(desk, unready, "pieces", "panels_needed", "panels_least", "waste")
        return desk.row()
    pieces = [piece for one in laid for piece in one.pieces]
    inputs = (f"{here}/courses", f"{here}/panel/length")
    desk.set("pieces", float(len(pieces)), *inputs)
    needed = sum(one.panels_needed for one in laid)
    kerf = Input(KERF, f"{here}/panel/length", _SAW)

    def panels_needed() -> float:
        desk.need(kerf)
        return float(needed)

    desk.get("panels_needed", panels_needed)
    desk.set("panels_least", float(max(one.least_needed for one in laid)), *inputs)
    length, height = part.panel.length, part.panel.height
    assert length is not None and height is not None
    used = math.fsum(piece.area for piece in pieces)
    desk.set("waste", 100 * (1 - used / (needed * length * height)), *inputs)
    return desk.row()
