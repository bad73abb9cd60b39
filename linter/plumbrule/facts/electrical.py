"""Rows of electrical boxes and of fittings that may not be covered or heated."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_electrical import FIXTURES
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.electrical_box import box_row
from plumbrule.facts.electrical_fitting import fitting_row
from plumbrule.facts.electrical_zones import zone_rows
from plumbrule.facts.on_wall import fields_on, on_it
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall


def electrical_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind. A wall that the work touches and on which nobody looked for boxes or fittings says so in its row
    of fixtures: nothing can be said of what nobody listed."""
    walls = plan.model.walls or {}
    return {
        "fixtures": tuple(
            _fixtures(plan, name, wall)
            for name, wall in walls.items()
            if fields_on(plan, name) or on_it(plan, carried, name)
        ),
        "box": tuple(
            box_row(plan, carried, wall_name, name, box)
            for wall_name, wall in walls.items()
            for name, box in (wall.boxes or {}).items()
        ),
        "fitting": tuple(
            fitting_row(plan, carried, wall_name, name, fitting)
            for wall_name, wall in walls.items()
            for name, fitting in (wall.fittings or {}).items()
        ),
        "cable_zone": zone_rows(plan, carried),
    }


def _fixtures(plan: Plan, name: str, wall: Wall) -> Row:
    here = f"/walls/{name}"
    desk = Desk(FIXTURES, here, here, f"wall {name}")

    def boxes_listed() -> bool:
        desk.need(Input(wall.boxes, f"{here}/boxes"))
        opened = wall.services is not None and "box opened" in (wall.services.looked_with or ())
        return bool(wall.boxes) or not opened

    def fittings_listed() -> bool:
        desk.need_all(Input(wall.fittings, f"{here}/fittings"), Input(wall.boxes, f"{here}/boxes"))
        lamps = sum(box.holds == "luminaire" for box in (wall.boxes or {}).values())
        return sum(fitting.kind == "luminaire" for fitting in (wall.fittings or {}).values()) >= lamps

    desk.get("boxes_listed", boxes_listed)
    desk.get("fittings_listed", fittings_listed)
    return desk.row()
