"""All rows of a plan, in the order in which one is worked from another."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import TYPE_CHECKING, NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.facts.board import board_rows
from plumbrule.facts.crack import crack_rows
from plumbrule.facts.electrical import electrical_rows
from plumbrule.facts.finishing import finishing_rows
from plumbrule.facts.frame import block_rows, stud_rows
from plumbrule.facts.hazards import hazards_rows
from plumbrule.facts.hole import hole_rows
from plumbrule.facts.joints import joints_rows
from plumbrule.facts.load_chosen import chosen
from plumbrule.facts.load_rows import load_rows
from plumbrule.facts.panels import panels_rows
from plumbrule.facts.purchase import purchase_rows
from plumbrule.facts.room import site_row, wall_row
from plumbrule.facts.room_fit import room_fit_rows
from plumbrule.facts.screw import screw_rows
from plumbrule.facts.sequence import sequence_rows
from plumbrule.facts.steel import support_rows
from plumbrule.facts.supports import supports
from plumbrule.facts.surface import surface_rows
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.shown import System

if TYPE_CHECKING:
    from plumbrule.plan.house import Hours, Loads

MOST_ROWS = 20_000
_METRIC = re.compile(r"[0-9] ?(?:mm|cm|m)\b")
_INCH = re.compile(r"[0-9½¼¾⅛⅜⅝⅞] ?(?:in\b|ft\b|[\"″'′])")


class Facts(NamedTuple):
    """Rows by kind, and how the plan's author measures: `inch` or `metric`."""

    rows: Mapping[str, tuple[Row, ...]]
    system: System


def work_out(plan: Plan, hours: Hours | None = None, loads: Loads | None = None) -> Facts:
    """Works out every row. `hours` are the working hours of the house and `loads` what it has boards tried
    with, where it has any.

    Raises Unreadable when the plan would give more than 20,000 (a spacing of 0.001 in).
    """
    carried = supports(plan)
    holes = sum(len(support.drillings) for support in carried)
    if holes * 2 > MOST_ROWS:
        found = f"This plan has {holes:,} holes; more than {MOST_ROWS // 2:,} are a slip."
        place = plan.document.place("/angles")
        raise Unreadable([Fault(plan.document.path, place, "/angles", found, "Check the spacings and lists of holes.")])
    boards = board_rows(plan, carried)
    by_name = dict(zip(plan.model.boards or {}, boards, strict=True))
    rows: dict[str, tuple[Row, ...]] = {
        "site": (site_row(plan.model),),
        "wall": tuple(
            wall_row(name, wall, carried, plan.model.steps) for name, wall in (plan.model.walls or {}).items()
        ),
        "stud": stud_rows(plan, carried),
        "block": block_rows(plan, carried),
        "hole": hole_rows(plan, carried),
        "screw": screw_rows(plan, carried, by_name),
    }
    for row in support_rows(plan, carried):
        rows[row.kind] = (*rows.get(row.kind, ()), row)
    rows["board"] = boards
    rows["crack"] = crack_rows(plan, carried, by_name)
    rows.update(load_rows(plan, carried, rows["screw"], rows["hole"], chosen(loads)))
    for of_a_trade in (
        room_fit_rows,
        panels_rows,
        joints_rows,
        electrical_rows,
        surface_rows,
        finishing_rows,
        hazards_rows,
        purchase_rows,
    ):
        rows.update(of_a_trade(plan, carried))
    rows.update(sequence_rows(plan, carried, hours))
    return Facts(rows, _system(plan))


def _system(plan: Plan) -> System:
    """How the plan's author measures: metric when more lengths are written in mm, cm or m than in feet and inches."""
    text = plan.document.text
    return "metric" if len(_METRIC.findall(text)) > len(_INCH.findall(text)) else "inch"
