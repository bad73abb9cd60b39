"""Every angle, bracket and cleat as a whole: what it is made of, how it is held, where it ends, what lies on it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from plumbrule.catalogue.fact import Row, Value
from plumbrule.catalogue.rows_steel import ANGLE, BRACKET, CLEAT
from plumbrule.facts.board_side import relief, sides
from plumbrule.facts.corner import ENDS, corner_at, past_wall_end, round_corner, runs_into
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.reference import tables
from plumbrule.facts.stations import Stations
from plumbrule.facts.supports import Support, boards_on
from plumbrule.mechanics import section
from plumbrule.mechanics.given import Given
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.plan_file import Plan

DAMP = ("damp", "mouldy")


def support_rows(plan: Plan, supports: Sequence[Support]) -> tuple[Row, ...]:
    """One row an angle, a bracket at its place, and a cleat."""
    work: dict[str, Callable[[Plan, Sequence[Support], Support], Row]] = {
        "angle": _angle_row, "bracket": _bracket_row, "cleat": _cleat_row,
    }  # fmt: skip
    return tuple(work[support.kind](plan, supports, support) for support in supports)


def _angle_row(plan: Plan, supports: Sequence[Support], support: Support) -> Row:
    desk = Desk(ANGLE, support.pointer, support.pointer, support.label)
    _support(desk, plan, support)
    desk.copy("length", support.length)
    desk.copy("wall_leg_size", support.wall_leg_size)
    desk.copy("seat_leg_size", support.seat_leg_size)
    _steel(desk, plan, support)
    desk.set("wall_leg", support.wall_leg, f"{support.pointer}/wall_leg")
    desk.get("is_return", lambda: _is_return(desk, support))
    Stations(plan, support).work(desk)
    shares = any(round_corner(plan, support, supports, end) for end in ENDS)
    desk.set("shares_corner", shares, support.pointer)
    if shares:
        desk.get("corner_overlap", lambda: runs_into(desk, plan, support, supports) or 0.0)
    desk.get("past_wall_end", lambda: _past_wall(desk, plan, support))
    _play(desk, plan, support)
    _heel(desk, plan, support)
    desk.get("section_area", lambda: _section(desk, support).area)
    desk.get("second_moment", lambda: _section(desk, support).second_moment)
    desk.get("mass", lambda: _mass(desk, support))
    return desk.row()


def _bracket_row(plan: Plan, supports: Sequence[Support], support: Support) -> Row:
    desk = Desk(BRACKET, support.pointer, support.pointer, support.label)
    bracket = (plan.model.brackets or {})[support.name]
    _support(desk, plan, support)
    desk.copy("arm", support.seat_leg_size)
    desk.copy("upright", support.wall_leg_size)
    desk.copy("width", support.length)
    _steel(desk, plan, support)
    desk.set("braced", bracket.braced, f"{support.pointer}/braced")
    desk.get("board_depth", lambda: _board_depth(desk, support))
    Stations(plan, support).work(desk, runs=False)
    return desk.row()


def _cleat_row(plan: Plan, supports: Sequence[Support], support: Support) -> Row:
    desk = Desk(CLEAT, support.pointer, support.pointer, support.label)
    _support(desk, plan, support)
    desk.copy("length", support.length)
    desk.copy("width", support.wall_leg_size)
    desk.copy("thickness", support.thickness)
    cleat = (plan.model.cleats or {})[support.name]
    desk.copy("species", Input(cleat.species, f"{support.pointer}/species"))
    Stations(plan, support).work(desk)
    return desk.row()


# What all of them have


def _support(desk: Desk, plan: Plan, support: Support) -> None:
    site, wall = plan.model.site, support.wall
    desk.copy("carries_people", support.carries_people)
    use = Input(site.use if site else None, "/site/use")
    desk.get("public_room", lambda: desk.word(use) == "public room")
    desk.copy("lining_behind", support.lining_behind)
    desk.copy("separation", Input(wall.separation if wall else None, f"/walls/{support.wall_name}/separation"))
    desk.get("proof_loaded", lambda: _proof_loaded(plan, support))


def _proof_loaded(plan: Plan, support: Support) -> bool:
    """Whether a proof load is among the steps, on the support or on a board that lies on it. Raises Missing."""
    if plan.model.steps is None:
        raise Missing(["/steps"])
    names = {support.name, *(name for name, _ in support.boards)}
    unsaid = []
    for name, step in plan.model.steps.items():
        if step.task == "proof load":
            if step.works_on is None:
                unsaid.append(f"/steps/{name}/works_on")
            elif names & set(step.works_on):
                return True
    if unsaid:
        raise Missing(unsaid)
    return False


def _steel(desk: Desk, plan: Plan, support: Support) -> None:
    humidity = plan.model.site.humidity if plan.model.site else None
    surface = support.wall.surface if support.wall else None
    desk.copy("thickness", support.thickness)
    desk.copy("steel_grade", support.steel)
    desk.get("yield_stress", lambda: tables().steel(desk.text("steel_grade")).yield_stress)
    desk.copy("coating", support.coating)
    desk.get("woods", lambda: _woods(desk, support))
    desk.copy("dampest", Input(humidity.dampest if humidity else None, "/site/humidity/dampest"))
    state = Input(surface.state if surface else None, f"/walls/{support.wall_name}/surface/state")

    def damp() -> bool:
        desk.need(state)
        return any(word in DAMP for word in (surface.state if surface else None) or ())

    desk.get("damp_wall", damp)


def _woods(desk: Desk, support: Support) -> Value:
    desk.need(boards_on(support))
    return tuple(dict.fromkeys(board.species for _, board in support.boards))


# An angle


def _is_return(desk: Desk, support: Support) -> bool:
    desk.need(boards_on(support))
    return any(board.wall != support.wall_name for _, board in support.boards)


def _past_wall(desk: Desk, plan: Plan, support: Support) -> float:
    width = Input(support.wall.width if support.wall else None, f"/walls/{support.wall_name}/width")
    desk.need_all(support.left, support.length, width)
    return max(past_wall_end(desk, plan, support, end) for end in ENDS)


def _play(desk: Desk, plan: Plan, support: Support) -> None:
    """What is left of the wall between two others, where it must go in without bending."""
    met = [corner_at(plan, support.wall_name, end) for end in ENDS]
    between = all(one is not None and one.corner.turn == "inside" for one in met)
    desk.set("between_walls", between, f"/walls/{support.wall_name}")
    if between:
        width = Input(support.wall.width if support.wall else None, f"/walls/{support.wall_name}/width")

        def play() -> float:
            desk.need_all(support.length, width)
            return desk.length(width) - desk.length(support.length)

        desk.get("play", play)


def _heel(desk: Desk, plan: Plan, support: Support) -> None:
    """Only a leg that stands up beside the board has its fillet in the board's way."""
    desk.copy("fillet", support.fillet)

    def meets() -> bool:
        if support.wall_leg == "up":
            desk.need(boards_on(support))
            return True
        return False

    desk.get("board_meets_fillet", meets)
    if support.wall_leg == "up":
        desk.get("edge_relief", lambda: min(relief(desk, side) for side in sides(desk, plan, support)))


def _section(desk: Desk, support: Support) -> section.AngleSection:
    wall, seat, thickness = desk.numbers("wall_leg_size", "seat_leg_size", "thickness")
    grade = support.steel.value
    bent = isinstance(grade, str) and tables().steel(grade).formed not in ("hot rolled", "unknown")
    return section.angle_section(wall, seat, thickness, 0.0, None if bent else tables().angle(wall, seat, thickness))


def _mass(desk: Desk, support: Support) -> Worked:
    grade = desk.word(
        support.steel
        if support.steel.value is not None
        else Input("unmarked", support.steel.pointer, "nothing is written: the weight of steel is taken")
    )
    light = tables().steel(grade).metal == "aluminium"
    length: Given = desk.number("length")
    return section.mass(_section(desk, support), length, section.ALUMINIUM_DENSITY if light else section.STEEL_DENSITY)


# A bracket


def _board_depth(desk: Desk, support: Support) -> float:
    desk.need(boards_on(support))
    depths = [Input(board.depth, f"/boards/{name}/depth") for name, board in support.boards]
    desk.need_all(*depths)
    return max(desk.length(depth) for depth in depths)
