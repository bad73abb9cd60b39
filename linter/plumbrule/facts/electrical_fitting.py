"""One row a heater, alarm, valve or the like: what is put over it or too near to it."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_electrical import FITTING
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.electrical_area import box_code
from plumbrule.facts.on_wall import (
    Area,
    Stood,
    apart,
    boards_at,
    fields_on,
    nearest_part,
    on_it,
    panels_over,
    plates_at,
    to_panels,
)
from plumbrule.facts.supports import Support
from plumbrule.plan.fixtures import FittingPart
from plumbrule.plan.plan_file import Plan

_HOT = ("radiator", "baseboard heater", "wall heater", "stove", "stovepipe", "cooktop", "luminaire")
_FOAM = ("foamed PVC", "polystyrene foam", "polyethylene foam")
_SAFE_CORES = ("gypsum", "mineral")
# Working space of a panelboard reaches this high (NEC 110.26(A)(3), from memory): what hangs above it is not in it.
_HEAD_HEIGHT = 78 * 25.4


def fitting_row(plan: Plan, carried: Sequence[Support], wall_name: str, name: str, fitting: FittingPart) -> Row:
    """The row of a fitting that is written in the plan."""
    here = f"/walls/{wall_name}/fittings/{name}"
    desk = Desk(FITTING, here, here, f"{fitting.kind} {name}" if fitting.kind != name else name)
    fields = fields_on(plan, wall_name)
    desk.copy("kind", Input(fitting.kind, f"{here}/kind"))
    desk.get("heats", lambda: desk.text("kind") in _HOT)
    desk.set("label_read", fitting.keep_clear is not None, f"{here}/keep_clear")
    desk.copy("keep_clear", Input(fitting.keep_clear, f"{here}/keep_clear"))

    def area() -> Area:
        sides = [Input(getattr(fitting, key), f"{here}/{key}") for key in ("left", "width", "bottom", "top")]
        desk.need_all(*sides)
        left, width, bottom, top = (desk.length(side) for side in sides)
        return Area(left, left + width, bottom, top)

    def boards() -> list[Stood]:
        return boards_at(desk, plan, carried, wall_name)

    def over() -> bool:
        for one, _ in fields:
            desk.need(Input(True, f"/panels/{one}/walls"))
        return bool(panels_over(plan, carried, wall_name, area()))

    def burnable() -> float:
        """An unknown core counts as one that burns."""
        here_now = area()
        ways = [max(apart(here_now, one.area), 0.0) for one in boards()]
        for one, field in fields:
            if field.panel.core not in _SAFE_CORES:
                said = "" if field.panel.core else "nothing is written: a core that burns is taken"
                desk.need(Input(field.panel.core or "burns", f"/panels/{one}/panel/core", said))
                ways.append(to_panels(plan, carried, wall_name, one, here_now))
        return min(ways)

    desk.get("panel_over_it", over if fields else lambda: False)
    part_near = on_it(plan, carried, wall_name)
    burns = [one for one, field in fields if field.panel.core not in _SAFE_CORES]
    if part_near:
        desk.get("board_near", lambda: True)
        desk.get("clear_of_parts", lambda: nearest_part(plates_at(desk, carried, wall_name), boards(), area()))
        desk.get("burnable_near", lambda: bool(burns) or bool(boards()))
    else:
        desk.set("board_near", False, here)
        desk.set("burnable_near", bool(burns), here)
    if not (desk.known("burnable_near") and not desk.true("burnable_near")):
        desk.get("burnable_distance", burnable)
    foam = [one for one, field in fields if field.panel.core in _FOAM]
    desk.set("foam_near", bool(foam), *(f"/panels/{one}/panel/core" for one in foam))
    if foam:
        desk.get("foam_distance", lambda: min(to_panels(plan, carried, wall_name, one, area()) for one in foam))
    _panelboard(desk, plan, carried, wall_name, fitting, here)
    return desk.row()


def _panelboard(
    desk: Desk, plan: Plan, carried: Sequence[Support], wall_name: str, fitting: FittingPart, here: str
) -> None:
    if fitting.kind != "panelboard":
        return
    desk.get("code", lambda: box_code(desk, plan))
    wall = (plan.model.walls or {})[wall_name]
    way = wall.passage.clear_width if wall.passage else None
    desk.copy("clear_in_front", Input(way, f"/walls/{wall_name}/passage/clear_width"))

    def low() -> list[Stood]:
        found = boards_at(desk, plan, carried, wall_name)
        return [one for one in found if one.area.y0 < _HEAD_HEIGHT]

    desk.get("board_before_it", lambda: bool(low()))
    if not (desk.known("board_before_it") and not desk.true("board_before_it")):

        def beside() -> float:
            left, width = Input(fitting.left, f"{here}/left"), Input(fitting.width, f"{here}/width")
            desk.need_all(left, width)
            centre = desk.length(left) + desk.length(width) / 2
            return min(max(one.area.x0 - centre, centre - one.area.x1, 0.0) for one in low())

        desk.get("beside_its_centre", beside)
