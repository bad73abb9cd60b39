"""What is brushed on walls and steel, and what is worn out on walls and boards: primers, paints, abrasives."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from plumbrule.catalogue.fact import Row
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import order
from plumbrule.facts.purchase_lines import ByLine, Line, begin, count_bought, line_for, volume_bought
from plumbrule.facts.supports import Support
from plumbrule.facts.wall_face import face
from plumbrule.mechanics import quantities
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import NotPossible, Worked
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.labels import GritSize

COATS = 2.0
COATS_SAID = "nothing says how many coats: two are taken"
# The two scales of grit agree up to here, so that either will do.
_AGREE = 220


def face_rows(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """One row a line that should stand in the purchase list."""
    yield from _walls_primed(plan)
    yield from _walls_painted(plan)
    yield from _steel_coated(plan, carried)
    yield from _abrasives(plan)


def _walls_primed(plan: Plan) -> Iterator[Row]:
    """A primer for the bare spots: as much as the patches take, which nobody can reckon from a plan."""
    steps = order(plan)
    lines: ByLine[str] = ByLine()
    for name in steps.doing("prime wall"):
        for wall in steps.step(name).works_on or ("wall",):
            lines.put(line_for(plan, "primers", "wall", wall), steps.pointer(name))
    for line, pointers in lines.each():
        yield begin(line, "not reckoned", pointers[0]).row()


def _walls_painted(plan: Plan) -> Iterator[Row]:
    steps = order(plan)
    painted: ByLine[str] = ByLine()
    unsaid = [f"{steps.pointer(name)}/works_on" for name in steps.doing("paint wall") if not steps.step(name).works_on]
    names = [one for name in steps.doing("paint wall") for one in steps.step(name).works_on or ()]
    for wall in dict.fromkeys(one for one in names if one in (plan.model.walls or {})):
        painted.put(line_for(plan, "paints", wall, "wall"), wall)
    if unsaid:
        desk = begin(line_for(plan, "paints", "wall"), "volume", unsaid[0].rpartition("/")[0])
        desk.get("needed_volume", partial(_unsaid, unsaid))
        volume_bought(desk, line_for(plan, "paints", "wall"))
        yield desk.row()
    for line, walls in painted.each():
        desk = begin(line, "volume", f"/walls/{walls[0]}")
        desk.get("spread_area", partial(_painted, desk, plan, walls, line))
        desk.get("needed_volume", partial(_coats, desk, "paint"))
        volume_bought(desk, line)
        yield desk.row()


def _unsaid(pointers: Sequence[str]) -> float:
    raise Missing(pointers)


def _painted(desk: Desk, plan: Plan, walls: Sequence[str], line: Line) -> Worked:
    area = _faces(desk, plan, walls)
    coats = desk.length(Input(COATS, line.at, COATS_SAID))
    return quantities.coats_area(area, coats)


def _faces(desk: Desk, plan: Plan, walls: Sequence[str]) -> Worked:
    """The faces of these walls, openings not taken off: cutting in round them takes as much."""
    found: list[Worked] = []
    wanting: list[str] = []
    for name in walls:
        wall, here = (plan.model.walls or {})[name], f"/walls/{name}"
        try:
            found.append(face(desk, wall, here))
        except Missing as missing:
            wanting.extend(missing.pointers)
    if wanting:
        raise Missing(wanting)
    if not found:
        raise NotPossible("it is done to no wall")
    return found[0] if len(found) == 1 else quantities.total("A", "faces of the walls", "mm²", found)


def _coats(desk: Desk, what: str) -> Worked:
    desk.number("spread_area")
    area = desk.line("spread_area")
    assert area is not None
    return quantities.coats_volume(area, what)


def _steel_coated(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """Primer in one coat and enamel in two, on steel that is painted before it is hung."""
    wanted: dict[str, ByLine[Support]] = {"primers": ByLine(), "paints": ByLine()}
    angles, brackets = plan.model.angles or {}, plan.model.brackets or {}
    for support in carried:
        if support.kind == "cleat":
            continue
        section = angles[support.name].section if support.kind == "angle" else brackets[support.name].section
        if section is None:
            continue
        coating = support.coating.value
        for group in ("primers", "paints"):
            if coating == "primer and enamel" or (coating == "primer" and group == "primers"):
                wanted[group].put(line_for(plan, group, section, "steel", else_at="steel"), support)
    for group, coats in (("primers", 1.0), ("paints", COATS)):
        for line, steel in wanted[group].each():
            desk = begin(line, "volume", steel[0].pointer)
            desk.get("spread_area", partial(_steel, desk, steel, coats, line))
            desk.get("needed_volume", partial(_coats, desk, "paint" if group == "paints" else "primer"))
            volume_bought(desk, line)
            yield desk.row()


def _steel(desk: Desk, steel: Sequence[Support], coats: float, line: Line) -> Worked:
    desk.need_all(*(size for one in steel for size in (one.wall_leg_size, one.seat_leg_size, one.length)))
    found: list[Given] = [
        quantities.legs(*(desk.length(size) for size in (one.wall_leg_size, one.seat_leg_size, one.length)))
        for one in steel
    ]
    many = desk.length(Input(coats, line.at, COATS_SAID if coats > 1 else ""))
    # A hundred brackets alike would make a line that nobody can read.
    area = found[0] if len(found) == 1 else (
        quantities.total("A", "faces of the steel", "mm²", found) if len(found) <= 6 else sum(si(one) for one in found)
    )  # fmt: skip
    return quantities.coats_area(area, many)


def _abrasives(plan: Plan) -> Iterator[Row]:
    """Each grit with the boards that are sanded and the walls that are abraded with it."""
    used: ByLine[tuple[str, str, GritSize]] = ByLine()
    walls = plan.model.walls or {}
    for name, board in (plan.model.boards or {}).items():
        for place, grit in enumerate(board.sanding or ()):
            if grit is not None:
                used.put(_grit_line(plan, grit), (f"/boards/{name}/sanding/{place}", name, grit))
    for name, step in (plan.model.steps or {}).items():
        if step.task == "abrade wall" and step.grit is not None:
            for wall in step.works_on or walls:
                if wall in walls:
                    used.put(_grit_line(plan, step.grit), (f"/steps/{name}/grit", wall, step.grit))
    for line, faces in used.each():
        desk = begin(line, "wear", faces[0][0])
        desk.get("needed_count", partial(_worn, desk, plan, faces))
        count_bought(desk, line)
        yield desk.row()


def _grit_line(plan: Plan, grit: GritSize) -> Line:
    """`grit-120` or `grit-P120`; up to 220 the one will do for the other."""
    own, other = (f"grit-P{grit.number}", f"grit-{grit.number}")[:: 1 if grit.iso else -1]
    return line_for(plan, "abrasives", own, *((other,) if grit.number <= _AGREE else ()))


def _worn(desk: Desk, plan: Plan, faces: Sequence[tuple[str, str, GritSize]]) -> Worked:
    boards: list[Worked] = []
    walls: list[str] = []
    for pointer, name, _ in faces:
        desk.need(Input(True, pointer))
        board = (plan.model.boards or {}).get(name) if pointer.startswith("/boards/") else None
        if board is None:
            walls.append(name)
            continue
        here = f"/boards/{name}"
        sizes = [Input(getattr(board, key), f"{here}/{key}") for key in ("length", "depth", "thickness")]
        desk.need_all(*sizes)
        boards.append(quantities.surface(*(desk.length(size) for size in sizes)))
    wood = boards[0] if len(boards) == 1 else quantities.total("A_b", "faces of the boards", "mm²", boards)
    scuffed = _faces(desk, plan, list(dict.fromkeys(walls))) if walls else 0.0
    return quantities.discs(faces[0][2].number, wood if boards else 0.0, scuffed)
