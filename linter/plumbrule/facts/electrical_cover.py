"""The cut-out round a box, the plate that must hide it, and the screws that hold the device."""

from __future__ import annotations

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.on_wall import fields_on
from plumbrule.mechanics.box import cover_lap, device_screw, plate_height, plate_width
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.fixtures import Box, CoverPlate
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.pointer import get


def work_cover(desk: Desk, plan: Plan, wall_name: str, box: Box, here: str) -> None:
    """Cut-out, plate and lap. Needs `panelled` and `gangs`."""
    panelled = not (desk.known("panelled") and not desk.true("panelled"))
    if panelled:
        desk.get("cut_out", lambda: _cut_out(desk, plan, wall_name))
        desk.get("gap", lambda: _gap(desk, plan, wall_name))
    desk.get("plate_width", lambda: _plate(desk, box, here, "width"))
    desk.get("plate_height", lambda: _plate(desk, box, here, "height"))
    if panelled:
        desk.get("cover_lap", lambda: _lap(desk, box, here))


def work_device_screw(desk: Desk, plan: Plan) -> None:
    """The screws that are bought for devices, against what the extender asks for. Needs `rim_behind`."""
    if not (desk.known("extended") and desk.true("extended")):
        return
    bought = plan.model.purchase
    screws = (bought.electrical or {}).get("device screw") if bought else None
    at = "/purchase" if bought is None else "/purchase/electrical/device screw/length"
    desk.copy("device_screw", Input(screws.length if screws else None, at))
    desk.get("device_screw_needed", lambda: device_screw(*desk.numbers("extender", "rim_behind")))


def _cut_out(desk: Desk, plan: Plan, wall_name: str) -> bool:
    """Whether each field on the wall is cut out round its boxes. `cut_outs: {}` says that nothing is."""
    all_cut = True
    wanted = []
    for name, field in fields_on(plan, wall_name):
        at = f"/panels/{name}/cut_outs"
        if plan.is_written(at) and get(plan.document.value, at) == {}:
            desk.need(Input(True, at))
            all_cut = False
        else:
            wanted.append(Input(field.cut_outs.box, f"{at}/box"))
    if all_cut:
        desk.need_all(*wanted)
    return all_cut


def _gap(desk: Desk, plan: Plan, wall_name: str) -> float:
    gaps = [Input(field.cut_outs.box, f"/panels/{name}/cut_outs/box") for name, field in fields_on(plan, wall_name)]
    desk.need_all(*gaps)
    return max(desk.length(gap) for gap in gaps)


def _plate(desk: Desk, box: Box, here: str, side: str) -> Worked | float:
    cover = desk.need(Input(box.cover, f"{here}/cover"))
    if isinstance(cover, CoverPlate):
        return desk.length(Input(getattr(cover, side), f"{here}/cover/{side}"))
    work = plate_width if side == "width" else plate_height
    return work(str(cover), int(desk.number("gangs")))


def plate_side(box: Box, side: str) -> Given:
    """The width or the height of the plate of any box, mm. Raises Missing without a pointer, and OutsideRulebook."""
    if isinstance(box.cover, CoverPlate):
        written = box.cover.width if side == "width" else box.cover.height
        if written is None:
            raise Missing([])
        return written
    if box.cover is None or box.gangs is None:
        raise Missing([])
    return (plate_width if side == "width" else plate_height)(box.cover, box.gangs)


def _lap(desk: Desk, box: Box, here: str) -> Worked:
    width, height = Input(box.width, f"{here}/width"), Input(box.height, f"{here}/height")
    desk.need_all(width, height)
    plates = desk.numbers("plate_width", "plate_height")
    gap = desk.number("gap")
    sides: list[Given] = [desk.line("plate_width") or plates[0], desk.line("plate_height") or plates[1]]
    laps = [cover_lap(plate, desk.length(of), gap) for plate, of in zip(sides, (width, height), strict=True)]
    return min(laps, key=si)
