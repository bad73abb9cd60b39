"""What carries boards, laid open for measuring: each angle, bracket and cleat with every hole it is drilled with."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from plumbrule.facts.desk import Input
from plumbrule.plan import resolve
from plumbrule.plan.boards import Board
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.supports import Bracket, Cleat, HoleGroup, SteelAngle
from plumbrule.plan.walls import Wall

Leg = Literal["wall", "seat"]
Kind = Literal["angle", "bracket", "cleat"]

INCH = 25.4
# A board whose top is lower than this is sat or stood on, whatever it is called (common practice: the lowest shelf
# under 24 in is built as a step).
STEP_HEIGHT = 24 * INCH
_ROWS: dict[Leg, str] = {"wall": "WVUTZ", "seat": "SRQPN"}


@dataclass(frozen=True, slots=True)
class Drilling:
    """One hole of a support. `x` is from the left end of the support, `y` from its heel (a cleat: from its upper
    edge), `on_wall` from the left end of the wall. `stud` is the stud it is set out at or, where its place is given,
    the nearest one; None where it goes into a block or board, or no studs are known (`studs_wanted`)."""

    leg: Leg
    holes: resolve.Holes
    label: str
    pointer: str
    x: Input
    y: Input
    on_wall: Input
    stud: resolve.Stud | None
    studs_wanted: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Support:
    """One angle, one bracket at one place, or one cleat. Everything measured is an Input, since it may be wanting."""

    kind: Kind
    name: str
    pointer: str
    label: str
    wall_name: str
    wall: Wall | None
    left: Input
    length: Input
    bears_at: Input
    wall_leg: str
    wall_leg_size: Input
    seat_leg_size: Input
    thickness: Input
    fillet: Input
    steel: Input
    coating: Input
    lining_behind: Input
    ends: tuple[str, str]
    boards: tuple[tuple[str, Board], ...]
    carries_people: Input
    drillings: tuple[Drilling, ...]


def supports(plan: Plan) -> tuple[Support, ...]:
    """Every support of the plan, in its order: angles, brackets place by place, cleats."""
    model = plan.model
    made = [_angle(plan, name, angle) for name, angle in (model.angles or {}).items()]
    for name, bracket in (model.brackets or {}).items():
        made.extend(_brackets(plan, name, bracket))
    made.extend(_cleat(plan, name, cleat) for name, cleat in (model.cleats or {}).items())
    return tuple(made)


def _angle(plan: Plan, name: str, angle: SteelAngle) -> Support:
    here = f"/angles/{name}"
    steel = f"/sections/{angle.section}"
    section = (plan.model.sections or {})[angle.section]
    boards = _boards(plan, name)
    return Support(
        kind="angle", name=name, pointer=here, label=name,
        wall_name=angle.wall, wall=(plan.model.walls or {}).get(angle.wall),
        left=Input(angle.left, f"{here}/left"), length=Input(angle.length, f"{here}/length"),
        bears_at=Input(angle.bears_at, f"{here}/bears_at"), wall_leg=angle.wall_leg,
        wall_leg_size=Input(section.legs.wall, f"{steel}/legs/wall"),
        seat_leg_size=Input(section.legs.seat, f"{steel}/legs/seat"),
        thickness=Input(section.thickness, f"{steel}/thickness"),
        fillet=Input(section.inside_radius, f"{steel}/inside_radius"),
        steel=Input(section.steel, f"{steel}/steel"),
        coating=Input(section.coating, f"{steel}/coating", _default(plan, f"{steel}/coating", "bare steel is taken")),
        lining_behind=_lining_behind(plan, here, angle.lining_behind),
        ends=(angle.ends.left, angle.ends.right), boards=boards,
        carries_people=_people(plan, boards, here, angle.bears_at),
        drillings=(
            *_drillings(plan, angle, "wall", angle.wall_holes, f"{here}/wall_holes"),
            *_drillings(plan, angle, "seat", angle.seat_holes, f"{here}/seat_holes"),
        ),
    )  # fmt: skip


def _brackets(plan: Plan, name: str, bracket: Bracket) -> Iterator[Support]:
    here = f"/brackets/{name}"
    section = (plan.model.sections or {}).get(bracket.section) if bracket.section else None
    steel = f"/sections/{bracket.section}" if section else here
    boards = _boards(plan, name)
    places = resolve.bracket_places(plan, name, bracket)
    unknown = resolve.Station(None, None, None, resolve.studs_wanted(plan, bracket.wall))
    for number, place in enumerate(places if places is not None else (unknown,), 1):
        centre = _on_wall(place)
        left = None if centre.value is None or bracket.width is None else float(str(centre.value)) - bracket.width / 2
        yield Support(
            kind="bracket", name=name, pointer=here, label=f"{name} {number}",
            wall_name=bracket.wall, wall=(plan.model.walls or {}).get(bracket.wall),
            left=Input(left, centre.pointer, also=(*centre.also, f"{here}/width")),
            length=Input(bracket.width, f"{here}/width"),
            bears_at=Input(bracket.bears_at, f"{here}/bears_at"), wall_leg="down",
            wall_leg_size=Input(section.legs.wall, f"{steel}/legs/wall") if section else Input(bracket.upright, f"{here}/upright"),
            seat_leg_size=Input(section.legs.seat, f"{steel}/legs/seat") if section else Input(bracket.arm, f"{here}/arm"),
            thickness=Input(section.thickness if section else bracket.thickness, f"{steel}/thickness"),
            fillet=Input(section.inside_radius, f"{steel}/inside_radius") if section else Input(0.0, f"{here}/arm"),
            steel=Input(section.steel if section else bracket.steel, f"{steel}/steel"),
            coating=Input(section.coating, f"{steel}/coating", _default(plan, f"{steel}/coating", "bare steel is taken"))
            if section else Input(None, f"{here}/section"),
            lining_behind=_lining_behind(plan, here, bracket.lining_behind),
            ends=("square", "square"), boards=boards,
            carries_people=_people(plan, boards, here, bracket.bears_at),
            drillings=(
                *_bracket_drillings(plan, bracket, place, "wall", bracket.wall_holes, f"{here}/wall_holes"),
                *_bracket_drillings(plan, bracket, place, "seat", bracket.seat_holes, f"{here}/seat_holes"),
            ),
        )  # fmt: skip


def _cleat(plan: Plan, name: str, cleat: Cleat) -> Support:
    here = f"/cleats/{name}"
    size = resolve.lumber(cleat.size)
    boards = _boards(plan, name)
    seat = _drillings(plan, cleat, "seat", cleat.seat_holes, f"{here}/seat_holes") if cleat.seat_holes else ()
    nothing = Input(None, here)
    return Support(
        kind="cleat", name=name, pointer=here, label=name,
        wall_name=cleat.wall, wall=(plan.model.walls or {}).get(cleat.wall),
        left=Input(cleat.left, f"{here}/left"), length=Input(cleat.length, f"{here}/length"),
        bears_at=Input(cleat.bears_at, f"{here}/bears_at"), wall_leg="",
        wall_leg_size=Input(size.wide if size else cleat.width, f"{here}/{'size' if cleat.size else 'width'}"),
        seat_leg_size=Input(size.narrow if size else cleat.thickness, f"{here}/{'size' if cleat.size else 'thickness'}"),
        thickness=Input(size.narrow if size else cleat.thickness, f"{here}/{'size' if cleat.size else 'thickness'}"),
        fillet=nothing, steel=nothing, coating=nothing,
        lining_behind=_lining_behind(plan, here, cleat.lining_behind),
        ends=("square", "square"), boards=boards,
        carries_people=_people(plan, boards, here, cleat.bears_at),
        drillings=(*_drillings(plan, cleat, "wall", cleat.wall_holes, f"{here}/wall_holes"), *seat),
    )  # fmt: skip


def _drillings(plan: Plan, part: SteelAngle | Cleat, leg: Leg, group: HoleGroup, pointer: str) -> Iterator[Drilling]:
    """Every hole of one leg, from left to right, row by row. Where nobody knows how many there are, one of unknown
    place stands for them, so that no rule passes it by in silence."""
    stations = resolve.stations(plan, part, group, pointer)
    if stations is None:
        stations = (resolve.Station(None, None, None, resolve.stations_wanted(plan, part, pointer)),)
    found = resolve.studs(plan, part.wall) if leg == "wall" and group.into is None else None
    yield from _each(plan, part.wall, leg, group, pointer, stations, found)


def _bracket_drillings(
    plan: Plan, bracket: Bracket, place: resolve.Station, leg: Leg, group: HoleGroup, pointer: str
) -> Iterator[Drilling]:
    middle = None if bracket.width is None else bracket.width / 2
    marks: Sequence[tuple[float | None, str]] = [(middle, pointer)]
    if group.from_left is not None:
        marks = [(mark, f"{pointer}/from_left/{index}") for index, mark in enumerate(group.from_left)]
    stations = tuple(
        resolve.Station(
            mark,
            None if mark is None or middle is None or place.on_wall is None else place.on_wall - middle + mark,
            place.stud,
            (where, *place.pointers),
        )
        for mark, where in marks
    )
    found = resolve.studs(plan, bracket.wall) if leg == "wall" and group.into is None else None
    yield from _each(plan, bracket.wall, leg, group, pointer, stations, found)


def _each(
    plan: Plan, wall: str, leg: Leg, group: HoleGroup, pointer: str, stations: Sequence[resolve.Station],
    found: tuple[resolve.Stud, ...] | None,
) -> Iterator[Drilling]:  # fmt: skip
    holes = resolve.holes(plan, group, pointer)
    wants_stud = leg == "wall" and group.into is None
    wanted = resolve.studs_wanted(plan, wall) if wants_stud and not found else ()
    heels = holes.from_heel.value or (None,)
    for row, heel in enumerate(heels):
        place = f"{holes.from_heel.pointer}/{row}" if holes.from_heel.value else holes.from_heel.pointer
        letter = _ROWS[leg][min(row, len(_ROWS[leg]) - 1)]
        for number, station in enumerate(stations, 1):
            where = station.pointers[0] if station.pointers else pointer
            x = Input(station.from_left, where, also=station.pointers[1:] if station.from_left is None else ())
            yield Drilling(
                leg=leg, holes=holes, label=f"{letter}{number}",
                pointer=where if where.startswith(pointer) else pointer,
                x=x, y=Input(heel, place), on_wall=_on_wall(station),
                stud=_meant(station, found) if wants_stud else None, studs_wanted=wanted,
            )  # fmt: skip


def _on_wall(station: resolve.Station) -> Input:
    first, *others = station.pointers or ("/walls",)
    return Input(station.on_wall, first, also=tuple(others))


def _meant(station: resolve.Station, found: tuple[resolve.Stud, ...] | None) -> resolve.Stud | None:
    """The stud a hole is set out at, or the one nearest to where it is drawn."""
    if station.stud is not None or not found or station.on_wall is None:
        return station.stud
    if any(stud.centre is None for stud in found):
        return None
    here = station.on_wall
    return min(found, key=lambda stud: abs((stud.centre or 0.0) - here))


def _boards(plan: Plan, support: str) -> tuple[tuple[str, Board], ...]:
    return tuple((name, board) for name, board in (plan.model.boards or {}).items() if support in board.bears_on)


def _people(plan: Plan, boards: Sequence[tuple[str, Board]], here: str, bears_at: float | None) -> Input:
    """Whether people sit, stand or step on a board here. A low board carries people whatever it is called."""
    if not boards:
        return Input(None, "/boards") if plan.model.boards is None else Input(False, here)
    unknown = None
    for name, board in boards:
        low = bears_at is not None and board.thickness is not None and bears_at + board.thickness < STEP_HEIGHT
        if board.carries in ("seating", "standing"):
            return Input(True, f"/boards/{name}/carries")
        if low:
            return Input(True, f"{here}/bears_at", also=(f"/boards/{name}/thickness",))
        if bears_at is None or board.thickness is None:
            unknown = unknown or (f"{here}/bears_at" if bears_at is None else f"/boards/{name}/thickness")
        elif board.carries is None:
            unknown = unknown or f"/boards/{name}/carries"
    first = boards[0][0]
    return Input(None, unknown) if unknown else Input(False, f"/boards/{first}/carries")


def _lining_behind(plan: Plan, here: str, value: str) -> Input:
    pointer = f"{here}/lining_behind"
    return Input(value, pointer, _default(plan, pointer, "lining left in place is taken, the weaker case"))


def _default(plan: Plan, pointer: str, says: str) -> str:
    return "" if plan.is_written(pointer) else f"nothing is written: {says}"
