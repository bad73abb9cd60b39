"""One row a box: its rim, its cut-out and cover, the work done in it, and what stands near it."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_electrical import BOX
from plumbrule.facts.board_place import finish
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.electrical_area import box_area, box_code
from plumbrule.facts.electrical_cover import work_cover, work_device_screw
from plumbrule.facts.electrical_near import work_cables, work_near
from plumbrule.facts.electrical_steps import work_steps
from plumbrule.facts.electrical_trim import work_trim
from plumbrule.facts.on_wall import fields_on, panels_round
from plumbrule.facts.supports import Support
from plumbrule.mechanics.box import rim_behind
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.fixtures import Box
from plumbrule.plan.plan_file import Plan

# Cores and linings that do not burn; any other face counts as one that does.
_SAFE_CORES = ("gypsum", "mineral")
_SAFE_LININGS = (
    "gypsum board", "plaster on wood lath", "plaster on metal lath", "gypsum plaster on brick", "cement board", "tile",
)  # fmt: skip


def box_row(plan: Plan, carried: Sequence[Support], wall_name: str, name: str, box: Box) -> Row:
    """The row of a box that is written in the plan."""
    here = f"/walls/{wall_name}/boxes/{name}"
    desk = Desk(BOX, here, here, f"box {name}")
    desk.get("code", lambda: box_code(desk, plan))
    desk.copy("holds", Input(box.holds, f"{here}/holds"))
    desk.copy("gangs", Input(box.gangs, f"{here}/gangs"))
    desk.get("public_room", lambda: public_room(desk, plan))
    desk.get("panelled", lambda: bool(_round_it(desk, plan, carried, wall_name, box, here)))
    desk.get("face_burns", lambda: _face_burns(desk, plan, carried, wall_name, box, here))
    desk.copy("set_back", Input(box.set_back, f"{here}/set_back"))
    said = "" if plan.is_written(f"{here}/extender") else "nothing is written: no extender is taken"
    desk.copy("extender", Input(box.extender, f"{here}/extender", said))

    def rim() -> Worked:
        desk.need(Input(box.set_back, f"{here}/set_back"))
        face = finish(desk, plan, wall_name) if desk.true("panelled") else 0.0
        return rim_behind(desk.number("set_back"), face, desk.number("extender"))

    desk.get("rim_behind", rim)
    desk.get("rim_proud", lambda: -desk.number("rim_behind"))
    desk.get("extended", lambda: desk.number("extender") > 0)
    work_device_screw(desk, plan)
    work_cover(desk, plan, wall_name, box, here)
    work_trim(desk, plan, wall_name, name, box, here)
    work_steps(desk, plan, wall_name, name)
    work_near(desk, plan, carried, wall_name, box, here)
    work_cables(desk, plan, carried, wall_name, box, here)
    return desk.row()


def public_room(desk: Desk, plan: Plan) -> bool:
    """Whether the room is a public one."""
    return desk.word(Input(plan.model.site.use if plan.model.site else None, "/site/use")) == "public room"


def _round_it(
    desk: Desk, plan: Plan, carried: Sequence[Support], wall_name: str, box: Box, here: str
) -> tuple[str, ...]:
    """The panel fields laid round the box. On a wall with panels a box of unknown place counts as among them."""
    on_wall = tuple(name for name, _ in fields_on(plan, wall_name))
    if not on_wall:
        return ()
    try:
        return panels_round(plan, carried, wall_name, box_area(desk, box, here))
    except Missing:
        return on_wall


def _face_burns(desk: Desk, plan: Plan, carried: Sequence[Support], wall_name: str, box: Box, here: str) -> bool:
    fields = _round_it(desk, plan, carried, wall_name, box, here)
    if fields:
        cores = [Input((plan.model.panels or {})[one].panel.core, f"/panels/{one}/panel/core") for one in fields]
        if any(core.value is not None and core.value not in _SAFE_CORES for core in cores):
            return True
        desk.need_all(*cores)
        return False
    wall = (plan.model.walls or {})[wall_name]
    desk.need(Input(wall.lining or None, f"/walls/{wall_name}/lining"))
    outer = len(wall.lining or ()) - 1
    material = (wall.lining or ())[outer].material
    return desk.word(Input(material, f"/walls/{wall_name}/lining/{outer}/material")) not in _SAFE_LININGS
