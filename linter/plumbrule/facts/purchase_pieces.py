"""What is bought by the piece: screws and their washers, brackets, boards, panels, box fittings, protection."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from plumbrule.catalogue.fact import Row
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.layout import WallLayout, layouts
from plumbrule.facts.order import order
from plumbrule.facts.protection import protection_needed
from plumbrule.facts.purchase_lines import ByLine, Line, begin, count_bought, line_for, size_bought, thickness_bought
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics.board_wood import SHEETS
from plumbrule.mechanics.lifting import board_mass
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.plan.boards import Board
from plumbrule.plan.panels import Panel
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.words import BOX_FITTINGS

# The two screws that hold a device in each gang grow longer when the rim comes forward.
_DEVICE_SCREWS = 2


def piece_rows(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """One row a thing."""
    yield from _panels(plan, carried)
    yield from _brackets(plan, carried)
    yield from _screws(plan, carried)
    yield from _boards(plan)
    yield from _box_fittings(plan)
    yield from _protection(plan)


def _panels(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    laid = layouts(plan, carried)
    for name, field in (plan.model.panels or {}).items():
        line = line_for(plan, "panels", name)
        desk = begin(line, "pieces", f"/panels/{name}")
        desk.get("needed_count", partial(_laid, desk, name, [one for one in laid if one.field_name == name]))
        if line.bought is not None:
            desk.get("bought_count", partial(_panels_bought, desk, line, name, field.panel))
        size_bought(desk, line, "length", Input(field.panel.length, f"/panels/{name}/panel/length"))
        thickness_bought(desk, line, Input(field.panel.thickness, f"/panels/{name}/panel/thickness"))
        yield desk.row()


def _laid(desk: Desk, name: str, walls: Sequence[WallLayout]) -> float:
    """The panels of a field, over all its walls: an offcut of one serves the next."""
    desk.need(Input(True, f"/panels/{name}"))
    if wanting := [pointer for wall in walls for pointer in wall.missing] or (
        [] if walls else [f"/panels/{name}/walls"]
    ):
        raise Missing(wanting)
    return float(sum(wall.panels_needed for wall in walls))


def _panels_bought(desk: Desk, line: Line, name: str, panel: Panel) -> float:
    """Panels, or cartons of so many; where both are written, the fewer."""
    found = []
    if line.says("count"):
        found.append(desk.length(line.of("count")))
    if line.says("cartons"):
        each = desk.length(Input(panel.per_carton, f"/panels/{name}/panel/per_carton"))
        found.append(desk.length(line.of("cartons")) * each)
    if not found:
        raise Missing([f"{line.at}/count"])
    return min(found)


def _brackets(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """Brackets as bought. Those of a steel shape are cut from sticks."""
    for name, bracket in (plan.model.brackets or {}).items():
        if bracket.section is not None:
            continue
        line = line_for(plan, "steel", name)
        desk = begin(line, "pieces", f"/brackets/{name}")
        places = [support.left for support in carried if support.kind == "bracket" and support.name == name]
        desk.get("needed_count", partial(_placed, desk, places))
        count_bought(desk, line)
        thickness_bought(desk, line, Input(bracket.thickness, f"/brackets/{name}/thickness"))
        yield desk.row()


def _placed(desk: Desk, places: Sequence[Input]) -> float:
    """How many places there are. One that nobody knows the place of may stand for several."""
    desk.need_all(*places)
    return float(len(places))


def _screws(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """Every hole takes a screw; the ends of blocks take theirs."""
    holes: dict[str, list[Input]] = {}
    ends: dict[str, list[Input]] = {}
    for support in carried:
        for drilling in support.drillings:
            holes.setdefault(drilling.holes.screw.value or "", []).append(drilling.x)
    for wall_name, wall in (plan.model.walls or {}).items():
        for name, block in (wall.blocking or {}).items():
            if block.each_end is not None:
                at = f"/walls/{wall_name}/blocking/{name}/each_end/count"
                ends.setdefault(block.each_end.screw, []).append(Input(block.each_end.count, at))
    for name, screw in (plan.model.screws or {}).items():
        if name not in holes and name not in ends:
            continue
        for group in ("screws", "washers") if screw.washer is not None else ("screws",):
            line = line_for(plan, group, name)
            desk = begin(line, "pieces", f"/screws/{name}")
            desk.get("needed_count", partial(_driven, desk, holes.get(name, ()), ends.get(name, ())))
            count_bought(desk, line)
            if group == "screws":
                size_bought(desk, line, "length", Input(screw.length, f"/screws/{name}/length"))
            elif screw.washer is not None:
                thickness_bought(desk, line, Input(screw.washer.thickness, f"/screws/{name}/washer/thickness"))
            yield desk.row()


def _driven(desk: Desk, holes: Sequence[Input], ends: Sequence[Input]) -> float:
    desk.need_all(*holes, *ends)
    return len(holes) + 2 * sum(desk.length(one) for one in ends)


def _boards(plan: Plan) -> Iterator[Row]:
    for name, board in (plan.model.boards or {}).items():
        line, here = line_for(plan, "boards", name), f"/boards/{name}"
        desk = begin(line, "pieces", here)
        desk.set("needed_count", 1.0, here)
        for key in ("length", "depth", "thickness"):
            desk.copy(f"finished_{key}", Input(getattr(board, key), f"{here}/{key}"))
        desk.get("rough_length", partial(_rough, desk, plan, board, here))
        desk.get("flattened", partial(_flattened, desk, plan, name))
        desk.get("mass", partial(_board_mass, desk, board, here))
        count_bought(desk, line)
        if line.bought is not None:
            for key in ("length", "depth", "thickness"):
                desk.copy(f"bought_{key}", line.of(key))
            said = line.bought.species or board.species
            desk.set("same_species", said == board.species, f"{line.at}/species")
        yield desk.row()


def _rough(desk: Desk, plan: Plan, board: Board, here: str) -> float:
    """The finished length and what is cut off later. Where nothing is written nothing is cut off: whether that is right
    where panels meet it is asked by the rules of boards."""
    length = desk.number("finished_length")
    pointer = f"{here}/cut_long_by"
    if not plan.is_written(pointer):
        return length
    return length + desk.length(Input(board.cut_long_by, pointer))


def _flattened(desk: Desk, plan: Plan, name: str) -> bool:
    """Whether a step takes wood off its faces. One that does not say of which board counts for every board."""
    desk.need(Input(plan.model.steps, "/steps"))
    steps = order(plan)
    return any(steps.done_to(step, name) for step in steps.doing("flatten board"))


def _board_mass(desk: Desk, board: Board, here: str) -> Worked:
    if board.species in SHEETS:
        raise OutsideRulebook("The weight of a sheet is on its data sheet.")
    sizes = desk.numbers("finished_length", "finished_depth", "finished_thickness")
    return board_mass(tables().board(desk.word(Input(board.species, f"{here}/species"))).gravity, *sizes)


def _box_fittings(plan: Plan) -> Iterator[Row]:
    """Extenders, and the longer device screws that a rim brought forward asks for."""
    found: ByLine[Input] = ByLine()
    gangs: list[Input] = []
    for wall_name, wall in (plan.model.walls or {}).items():
        for name, box in (wall.boxes or {}).items():
            at = f"/walls/{wall_name}/boxes/{name}"
            if box.extender is None or box.extender > 0:
                line = line_for(plan, "electrical", name, "box extender", "extension ring", "spacer")
                found.put(line, Input(box.extender, f"{at}/extender"))
                gangs.append(Input(box.gangs, f"{at}/gangs"))
    for line, depths in found.each():
        desk = begin(line, "pieces", depths[0].pointer.rpartition("/")[0])
        desk.get("needed_count", partial(_placed, desk, depths))
        count_bought(desk, line)
        # One line for boxes of several depths is held against the one that it does not fit.
        said = line.of("depth").value
        size_bought(desk, line, "depth", next((one for one in depths if one.value != said), depths[0]))
        desk.set("extends", True, f"{line.at}/fitting")
        if line.bought is not None:
            # A line that is called after a fitting buys that fitting.
            called = line.name if line.name in BOX_FITTINGS else None
            desk.copy("fitting", Input(line.bought.fitting or called, f"{line.at}/fitting"))
        yield desk.row()
    if gangs:
        line = line_for(plan, "electrical", "device screw")
        desk = begin(line, "pieces", gangs[0].pointer.rpartition("/")[0])
        desk.get("needed_count", partial(_device_screws, desk, gangs))
        count_bought(desk, line)
        yield desk.row()


def _device_screws(desk: Desk, gangs: Sequence[Input]) -> float:
    desk.need_all(*gangs)
    return _DEVICE_SCREWS * sum(desk.length(one) for one in gangs)


def _protection(plan: Plan) -> Iterator[Row]:
    """What the steps wear and control with: of what is worn, one for each who works. What is on hand is not bought."""
    steps = plan.model.steps or {}
    for thing, pointers in protection_needed(plan).items():
        line = line_for(plan, "protection", thing)
        desk = begin(line, "pieces", pointers[0])
        desk.set("on_hand", thing in plan.model.on_hand, "/on_hand")
        worn = [Input(step.people, f"/steps/{name}/people") for name, step in steps.items() if thing in step.wears]
        desk.get("needed_count", partial(_worn, desk, worn, pointers))
        count_bought(desk, line)
        yield desk.row()


def _worn(desk: Desk, people: Sequence[Input], pointers: Sequence[str]) -> float:
    for pointer in pointers:
        desk.need(Input(True, pointer))
    return max((desk.length(one) for one in people), default=1.0)
