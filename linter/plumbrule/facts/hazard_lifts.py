"""What a step lifts, and how high it goes: boards, steel, cartons; ladders and platforms."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.hazard_parts import Parts, task_rows
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics.board_wood import SHEETS
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.lifting import (
    angle_mass,
    block_mass,
    board_mass,
    each_lifts,
    reach_to_hands,
    recommended_weight,
)
from plumbrule.mechanics.task_table import TaskRow
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.steps import Step
from plumbrule.plan.walls import Wall
from plumbrule.reading.units import from_si


def work_lifting(desk: Desk, parts: Parts, name: str, step: Step, task: TaskRow) -> None:
    """Mass, who lifts how much of it, what one person may, and how high the work goes."""
    boards = parts.boards_of(step)
    lifted = _lifts(parts, step, task)
    if lifted:
        desk.get("mass_lifted", lambda: _heaviest(desk, parts, step, task))
        desk.get("each_lifts", lambda: _each(desk, step.people))
    if task.lifts in ("as bought", "as finished") and boards:
        desk.get("lift_length", lambda: max(_length(desk, parts, board) for board in boards))
    if step.task == "set board" and boards:
        desk.get("lift_height", lambda: max(_bears_at(desk, parts.under(board), board) for board in boards))
        desk.get("lift_limit", lambda: min((_limit(desk, parts, board) for board in boards), key=si))
    if task.reaches == "wall" and _goes_up(parts, step):
        desk.get("reach_height", lambda: _to_the_top(desk, parts, step))
    elif task.reaches == "steel":
        on = parts.supports_of(step)
        if on:
            desk.get("reach_height", lambda: _bears_at(desk, on, ""))


def _each(desk: Desk, people: int) -> Worked:
    mass = desk.number("mass_lifted")
    return each_lifts(desk.line("mass_lifted") or mass, people)


def _lifts(parts: Parts, step: Step, task: TaskRow) -> bool:
    if task.lifts == "nothing":
        return False
    if task.lifts == "steel":
        return any(support.kind != "cleat" for support in parts.supports_of(step))
    return bool(parts.boards_of(step)) or (step.task == "acclimatise" and bool(parts.fields_of(step)))


def _heaviest(desk: Desk, parts: Parts, step: Step, task: TaskRow) -> Worked:
    """The heaviest of what is lifted. Everything missing of any of it is named together."""
    found: list[Worked] = []
    wanting: list[str] = []
    for work in _masses(desk, parts, step, task):
        try:
            found.append(work())
        except Missing as missing:
            wanting.extend(missing.pointers)
    if wanting:
        raise Missing(wanting)
    return max(found, key=si)


def _masses(desk: Desk, parts: Parts, step: Step, task: TaskRow) -> Iterator[Callable[[], Worked]]:
    if task.lifts == "steel":
        for support in parts.supports_of(step):
            if support.kind != "cleat":
                yield partial(_steel, desk, support)
        return
    for board in parts.boards_of(step):
        yield partial(_board, desk, parts, board, task.lifts == "as bought")
    if step.task == "acclimatise":
        for field in parts.fields_of(step):
            yield partial(_carton, desk, parts, field)


def _steel(desk: Desk, support: Support) -> Worked:
    """An angle, or one bracket: its upright and its arm, as wide as it is."""
    sizes = (support.wall_leg_size, support.seat_leg_size, support.thickness, support.length)
    desk.need_all(*sizes)
    return angle_mass(*(desk.length(size) for size in sizes))


def _board(desk: Desk, parts: Parts, name: str, as_bought: bool) -> Worked:
    """One board. As it is bought it is at least as large as finished, and longer by what is cut off later."""
    board, here = (parts.model.boards or {})[name], f"/boards/{name}"
    desk.need_all(*(Input(getattr(board, key), f"{here}/{key}") for key in ("length", "depth", "thickness")))
    sizes = [desk.length(Input(getattr(board, key), f"{here}/{key}")) for key in ("length", "depth", "thickness")]
    if as_bought:
        sizes[0] += board.cut_long_by or 0.0
        purchase = parts.model.purchase
        bought = (purchase.boards or {}).get(name) if purchase else None
        for place, key in enumerate(("length", "depth", "thickness")):
            sizes[place] = max(sizes[place], getattr(bought, key, None) or 0.0)
    if board.species in SHEETS:
        return block_mass(task_rows().sheets[board.species], *sizes)
    return board_mass(tables().board(desk.word(Input(board.species, f"{here}/species"))).gravity, *sizes)


def _carton(desk: Desk, parts: Parts, name: str) -> Worked:
    """One carton of panels."""
    panel, here = (parts.model.panels or {})[name].panel, f"/panels/{name}/panel"
    sources = [Input(getattr(panel, key), f"{here}/{key}")
               for key in ("density", "length", "height", "thickness", "per_carton")]  # fmt: skip
    desk.need_all(*sources)
    density, length, height, thickness, count = (desk.length(source) for source in sources)
    return block_mass(from_si(density, "lb/ft³"), length, height, thickness, count)


def _length(desk: Desk, parts: Parts, board: str) -> float:
    return desk.length(Input((parts.model.boards or {})[board].length, f"/boards/{board}/length"))


def _bears_at(desk: Desk, supports: tuple[Support, ...], board: str) -> float:
    """The highest place that any of these bears at, mm above the datum."""
    if not supports:
        raise Missing([f"/boards/{board}/bears_on"])
    desk.need_all(*(support.bears_at for support in supports))
    return max(desk.length(support.bears_at) for support in supports)


def _limit(desk: Desk, parts: Parts, name: str) -> Worked:
    """What one person may lay where the board goes, from the floor up: the longest way there is."""
    depth: Given = desk.length(Input((parts.model.boards or {})[name].depth, f"/boards/{name}/depth"))
    height = _bears_at(desk, parts.under(name), name)
    return recommended_weight(reach_to_hands(depth), height, height)


def _goes_up(parts: Parts, step: Step) -> bool:
    """Whether it reaches the top of a wall. Sealant along a floor or a trim does not."""
    sealants = parts.model.sealants or {}
    named = [sealants[name] for name in step.works_on or () if name in sealants]
    if step.task == "seal joints" and named:
        return any(one.joints is None or not set(one.joints) <= {"floor", "trims"} for one in named)
    return bool(parts.walls_of(step))


def _at_the_bends(desk: Desk, wall: Wall, here: str, wanting: list[str]) -> Iterator[float]:
    """Where floor or ceiling bend between the ends: the highest of one over the lowest of the other, the worse case."""
    tops = [
        Input(point.height, f"{here}/ceiling/points/{index}/height")
        for index, point in enumerate(wall.ceiling.points if wall.ceiling else ())
    ]
    drops = [
        Input(point.drop, f"{here}/floor_drop/points/{index}/drop")
        for index, point in enumerate(wall.floor_drop.points if wall.floor_drop else ())
    ]
    if not tops and not drops:
        return
    for end in ("left", "right"):
        tops.append(Input(getattr(wall.ceiling, end, None), f"{here}/ceiling/{end}"))
        drops.append(Input(getattr(wall.floor_drop, end, None), f"{here}/floor_drop/{end}"))
    try:
        desk.need_all(*tops, *drops)
    except Missing as missing:
        wanting.extend(missing.pointers)
    else:
        yield max(desk.length(top) for top in tops) + max(desk.length(drop) for drop in drops)


def _to_the_top(desk: Desk, parts: Parts, step: Step) -> float:
    """The highest ceiling over the floor under it, of the walls it is done to, mm."""
    found = []
    wanting: list[str] = []
    for name in parts.walls_of(step):
        wall, here = parts.walls[name], f"/walls/{name}"
        for end in ("left", "right"):
            top = Input(getattr(wall.ceiling, end, None), f"{here}/ceiling/{end}")
            drop = Input(getattr(wall.floor_drop, end, None), f"{here}/floor_drop/{end}")
            try:
                desk.need_all(top, drop)
            except Missing as missing:
                wanting.extend(missing.pointers)
            else:
                found.append(desk.length(top) + desk.length(drop))
        found.extend(_at_the_bends(desk, wall, here, wanting))
    if wanting:
        raise Missing(wanting)
    return max(found)
