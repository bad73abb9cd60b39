"""What carries boards, laid open for measuring: each angle, bracket and cleat with every hole it is drilled with."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal, NamedTuple

from plumbrule.facts.desk import Input
from plumbrule.facts.drilling import Drilling, Leg, along, in_bracket, placed, studs_wanted
from plumbrule.facts.reference import tables
from plumbrule.plan import resolve
from plumbrule.plan.boards import Board
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.supports import Bracket, Cleat, SteelAngle, SteelSection
from plumbrule.plan.walls import Wall

__all__ = ["Drilling", "Leg", "Support", "boards_on", "leg_size", "people_on", "supports", "through"]

Kind = Literal["angle", "bracket", "cleat"]

INCH = 25.4
# A board whose top is lower than this is sat or stood on, whatever it is called (common practice: the lowest shelf
# under 24 in is built as a step).
STEP_HEIGHT = 24 * INCH


class Support(NamedTuple):
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


class _Shape(NamedTuple):
    wall_leg: Input
    seat_leg: Input
    thickness: Input
    fillet: Input
    steel: Input
    coating: Input


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
    shape = _rolled(plan, angle.section)
    boards = _boards(plan, name)
    return Support(
        kind="angle", name=name, pointer=here, label=name,
        wall_name=angle.wall, wall=(plan.model.walls or {}).get(angle.wall),
        left=Input(angle.left, f"{here}/left"), length=Input(angle.length, f"{here}/length"),
        bears_at=Input(angle.bears_at, f"{here}/bears_at"), wall_leg=angle.wall_leg,
        wall_leg_size=shape.wall_leg, seat_leg_size=shape.seat_leg, thickness=shape.thickness, fillet=shape.fillet,
        steel=shape.steel, coating=shape.coating,
        lining_behind=_lining_behind(plan, here, angle.lining_behind),
        ends=(angle.ends.left, angle.ends.right), boards=boards,
        carries_people=people_on(plan, boards, here, angle.bears_at),
        drillings=(
            *along(plan, angle, "wall", angle.wall_holes, f"{here}/wall_holes"),
            *along(plan, angle, "seat", angle.seat_holes, f"{here}/seat_holes"),
        ),
    )  # fmt: skip


def _brackets(plan: Plan, name: str, bracket: Bracket) -> Iterator[Support]:
    here = f"/brackets/{name}"
    shape = _rolled(plan, bracket.section) if bracket.section else _bought(bracket, here)
    boards = _boards(plan, name)
    places = resolve.bracket_places(plan, name, bracket)
    # Brackets that nobody placed still stand for themselves: one of unknown place, so that no rule passes them by.
    nowhere = (
        (f"{here}/from_left",)
        if places is not None
        else (resolve.bracket_places_wanted(plan, name, bracket) or studs_wanted(plan, bracket.wall))
    )
    for number, place in enumerate(places or (resolve.Station(None, None, None, nowhere),), 1):
        centre = placed(plan, place.on_wall, place.pointers)
        width = Input(bracket.width, f"{here}/width")
        left = None if place.on_wall is None or bracket.width is None else place.on_wall - bracket.width / 2
        yield Support(
            kind="bracket", name=name, pointer=here, label=f"{name} {number}",
            wall_name=bracket.wall, wall=(plan.model.walls or {}).get(bracket.wall),
            left=placed(plan, left, (centre.pointer, *centre.also, width.pointer)), length=width,
            bears_at=Input(bracket.bears_at, f"{here}/bears_at"), wall_leg="down",
            wall_leg_size=shape.wall_leg, seat_leg_size=shape.seat_leg, thickness=shape.thickness,
            fillet=shape.fillet, steel=shape.steel, coating=shape.coating,
            lining_behind=_lining_behind(plan, here, bracket.lining_behind),
            ends=("square", "square"), boards=boards,
            carries_people=people_on(plan, boards, here, bracket.bears_at),
            drillings=(
                *in_bracket(plan, bracket, place, "wall", bracket.wall_holes, f"{here}/wall_holes", number),
                *in_bracket(plan, bracket, place, "seat", bracket.seat_holes, f"{here}/seat_holes", number),
            ),
        )  # fmt: skip


def _cleat(plan: Plan, name: str, cleat: Cleat) -> Support:
    here = f"/cleats/{name}"
    size = resolve.lumber(cleat.size)
    height = Input(size.wide if size else cleat.width, f"{here}/{'size' if cleat.size else 'width'}")
    thickness = Input(size.narrow if size else cleat.thickness, f"{here}/{'size' if cleat.size else 'thickness'}")
    boards = _boards(plan, name)
    seat = along(plan, cleat, "seat", cleat.seat_holes, f"{here}/seat_holes") if cleat.seat_holes else ()
    nothing = Input(None, here)
    return Support(
        kind="cleat", name=name, pointer=here, label=name,
        wall_name=cleat.wall, wall=(plan.model.walls or {}).get(cleat.wall),
        left=Input(cleat.left, f"{here}/left"), length=Input(cleat.length, f"{here}/length"),
        bears_at=Input(cleat.bears_at, f"{here}/bears_at"), wall_leg="",
        wall_leg_size=height, seat_leg_size=thickness, thickness=thickness,
        fillet=nothing, steel=nothing, coating=nothing,
        lining_behind=_lining_behind(plan, here, cleat.lining_behind),
        ends=("square", "square"), boards=boards,
        carries_people=people_on(plan, boards, here, cleat.bears_at),
        drillings=(*along(plan, cleat, "wall", cleat.wall_holes, f"{here}/wall_holes"), *seat),
    )  # fmt: skip


def _boards(plan: Plan, support: str) -> tuple[tuple[str, Board], ...]:
    return tuple((name, board) for name, board in (plan.model.boards or {}).items() if support in board.bears_on)


def people_on(plan: Plan, boards: Sequence[tuple[str, Board]], here: str, bears_at: float | None) -> Input:
    """Whether people sit, stand or step on a board here. A low board carries people whatever it is called, and one
    that does decides it. Steel that no board is said to lie on is no proof that nobody sits there: it is not known."""
    if not boards:
        unsaid = [f"/boards/{name}/bears_on" for name in plan.model.boards or {}] or ["/boards"]
        return Input(None, unsaid[0], also=tuple(unsaid[1:]))
    wanted: list[str] = []
    for name, board in boards:
        at = {"bears": f"{here}/bears_at", "thick": f"/boards/{name}/thickness", "carries": f"/boards/{name}/carries"}
        if board.carries in ("seating", "standing"):
            return Input(True, at["carries"])
        if bears_at is not None and board.thickness is not None:
            if bears_at + board.thickness < STEP_HEIGHT:
                return Input(True, at["bears"], also=(at["thick"],))
        else:
            wanted += [at["bears"]] if bears_at is None else []
            wanted += [at["thick"]] if board.thickness is None else []
        wanted += [at["carries"]] if board.carries is None else []
    if wanted:
        first, *others = dict.fromkeys(wanted)
        return Input(None, first, also=tuple(others))
    return Input(False, f"/boards/{boards[0][0]}/carries", also=(f"{here}/bears_at",))


def _rolled(plan: Plan, name: str) -> _Shape:
    """The steel shape that angles and brackets are cut from. Requires that it exists."""
    section = (plan.model.sections or {})[name]
    here = f"/sections/{name}"
    return _Shape(
        Input(section.legs.wall, f"{here}/legs/wall"), Input(section.legs.seat, f"{here}/legs/seat"),
        Input(section.thickness, f"{here}/thickness"), _fillet(section, f"{here}/inside_radius"),
        Input(section.steel, f"{here}/steel"),
        Input(section.coating, f"{here}/coating", _default(plan, f"{here}/coating", "bare steel is taken")),
    )  # fmt: skip


def _bought(bracket: Bracket, here: str) -> _Shape:
    return _Shape(
        Input(bracket.upright, f"{here}/upright"), Input(bracket.arm, f"{here}/arm"),
        Input(bracket.thickness, f"{here}/thickness"), Input(bracket.inside_radius, f"{here}/inside_radius"),
        Input(bracket.steel, f"{here}/steel"), Input(bracket.coating, f"{here}/coating"),
    )  # fmt: skip


def _fillet(section: SteelSection, pointer: str) -> Input:
    """The radius inside the heel: as written or, for a hot-rolled grade in a published size, that of the table."""
    wall, seat, thickness = section.legs.wall, section.legs.seat, section.thickness
    if section.inside_radius is not None or section.steel is None or wall is None or seat is None or thickness is None:
        return Input(section.inside_radius, pointer)
    if tables().steel(section.steel).formed != "hot rolled":
        return Input(None, pointer)
    row = tables().angle(wall, seat, thickness)
    if row is None or row.to_toe is None:
        return Input(None, pointer)
    said = f"nothing is written: the fillet of the published {row.name} is taken"
    return Input(row.to_toe - thickness, pointer, said)


def _lining_behind(plan: Plan, here: str, value: str) -> Input:
    pointer = f"{here}/lining_behind"
    return Input(value, pointer, _default(plan, pointer, "lining left in place is taken, the weaker case"))


def _default(plan: Plan, pointer: str, says: str) -> str:
    return "" if plan.is_written(pointer) else f"nothing is written: {says}"


def through(support: Support, leg: Leg) -> Input:
    """The thickness of steel or wood that a screw in this leg passes. A cleat is screwed to the wall through its
    thickness and to the board through its height."""
    if support.kind == "cleat" and leg == "seat":
        return support.wall_leg_size
    return support.thickness


def leg_size(support: Support, leg: Leg) -> Input:
    """How far this leg reaches from its heel; for a cleat its height on the wall, or its thickness out of it."""
    return support.wall_leg_size if leg == "wall" else support.seat_leg_size


def boards_on(support: Support) -> Input:
    """The boards that lie on a support; where none is said to, what would say so."""
    if support.boards:
        return Input(support.boards, f"/boards/{support.boards[0][0]}/bears_on")
    return Input(None, support.carries_people.pointer, also=support.carries_people.also)
