"""Rows of electrical boxes and of fittings that may not be covered or heated."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.facts.electrical_box import box_row, boxes_unknown
from plumbrule.facts.electrical_fitting import fitting_row, fittings_unknown
from plumbrule.facts.electrical_zones import zone_rows
from plumbrule.facts.on_wall import fields_on, on_it
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def electrical_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind. A wall that the work touches and on which nobody looked for boxes or fittings has one row that
    stands for them, so that no rule passes them by in silence."""
    return {
        "box": tuple(_boxes(plan, carried)),
        "fitting": tuple(_fittings(plan, carried)),
        "cable_zone": zone_rows(plan, carried),
    }


def _boxes(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    for wall_name, wall in (plan.model.walls or {}).items():
        for name, box in (wall.boxes or {}).items():
            yield box_row(plan, carried, wall_name, name, box)
        if wall.boxes is None and (fields_on(plan, wall_name) or on_it(plan, carried, wall_name)):
            yield boxes_unknown(plan, carried, wall_name)


def _fittings(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    for wall_name, wall in (plan.model.walls or {}).items():
        for name, fitting in (wall.fittings or {}).items():
            yield fitting_row(plan, carried, wall_name, name, fitting)
        if wall.fittings is None and (fields_on(plan, wall_name) or on_it(plan, carried, wall_name)):
            yield fittings_unknown(wall_name)
