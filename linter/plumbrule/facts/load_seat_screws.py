"""What holds a board down: the seat screws at its back corners, or all along a back angle alone."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import hypot

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import HOLD_DOWN
from plumbrule.facts import load_back_alone, load_three_sides
from plumbrule.facts.board_place import back_edge, screw_spot
from plumbrule.facts.desk import Desk
from plumbrule.facts.load_brackets import Brackets
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.load_places import Rows
from plumbrule.facts.row_field import number_of, numbers_of
from plumbrule.facts.supports import Support
from plumbrule.mechanics import board_strip, bracket, factors, withdrawal
from plumbrule.mechanics.back_angle import spread_load
from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import Number, OutsideRulebook, Worked

# Screws within this of a corner hold it down.
NEAR = 6 * 25.4
_CASE = {"S1": "S1", "SP": "S1", "S7": "S1", "S3": "S3", "S5": "S5"}


def hold_down_rows(
    ground: Ground, brackets: Brackets | None, rows: Rows, loads: Sequence[Load], start: Callable[[Desk, Load], None]
) -> list[Row]:
    """Each corner of a board on three sides, or the row of screws along a back angle, under each load."""
    path = ground.path
    if path.carried == "three sides":
        places = ["left corner", "right corner"]
    elif path.carried == "back angle alone":
        places = ["along the back"]
    elif brackets is not None:
        people = [load for load in loads if load.kind in _CASE]
        return [_on_bracket(ground, brackets, rows, load, one, start) for load in people for one in brackets.on]
    else:
        return []
    return [_row(ground, rows, load, place, start) for load in loads for place in places]


def _row(ground: Ground, rows: Rows, load: Load, place: str, start: Callable[[Desk, Load], None]) -> Row:
    back = ground.path.back
    assert back is not None
    said = load.case if load.kind != "D" else "its own weight"
    desk = Desk(HOLD_DOWN, f"{back.pointer}/seat_holes", back.pointer, f"{place} of {ground.path.name} under {said}")
    start(desk, load)
    desk.set("place", place, back.pointer)
    alone = place == "along the back"
    desk.get("screws", lambda: float(len(_holding(desk, ground, rows, place))))
    desk.get("pull", lambda: _pull_alone(desk, ground, load) if alone else _pull_corner(desk, ground, load))
    desk.get("strength", lambda: _strength(desk, ground, load, _holding(desk, ground, rows, place), alone))
    return desk.row()


def _on_bracket(
    ground: Ground, brackets: Brackets, rows: Rows, load: Load, support: Support, start: Callable[[Desk, Load], None]
) -> Row:
    """The screws of one bracket: who stands past the next one, or between two others, lifts the board off it."""
    label = f"board on {support.label} under {load.case}"
    desk = Desk(HOLD_DOWN, f"{support.pointer}/seat_holes", support.pointer, label)
    start(desk, load)
    screws = [rows[id(one)][0] for one in support.drillings if one.leg == "seat"]
    desk.set("place", "on a bracket", support.pointer)
    desk.set("screws", float(len(screws)), f"{support.pointer}/seat_holes")

    def pull() -> Worked:
        force, part = ground.point(desk, load), brackets.lifted(desk, support)
        assert force is not None
        return bracket.held_by_seat_screws(part, force)

    desk.get("pull", pull)
    desk.get("strength", lambda: _strength(desk, ground, load, screws, False))
    return desk.row()


def _pull_alone(desk: Desk, ground: Ground, load: Load) -> Worked:
    return load_back_alone.held_down(desk, ground, load).per_screw


def _pull_corner(desk: Desk, ground: Ground, load: Load) -> Worked:
    sizes, weight = ground.sizes.take(desk), ground.weight.take(desk)
    line, point = ground.line(desk, load), ground.point(desk, load)
    parts: list[Worked] = []
    if point is None or size(point) == 0 or line is not None:
        own = spread_load(0.0 if line is None else line, weight, sizes.length)
        sag = load_three_sides.drop_of_spread(desk, ground, own)
        parts.append(
            board_strip.corner_hold_down(
                "S2", person=0.0, line_load=0.0 if line is None else line, weight=weight, length=sizes.length,
                front_drop=sag,
            )
        )  # fmt: skip
    if point is not None and size(point) > 0:
        one = load_three_sides.person(point, load)
        parts.append(
            board_strip.corner_hold_down(
                _CASE[load.kind], person=one, line_load=0.0, weight=weight, length=sizes.length,  # type: ignore[arg-type]
                front_drop=load_three_sides.drop_of_person(desk, ground, one),
            )
        )  # fmt: skip
    return parts[0] if len(parts) == 1 else add("H_all", "pull that holds a back corner down", parts, "statics")


def _holding(desk: Desk, ground: Ground, rows: Rows, place: str) -> list[Row]:
    """The seat screws that hold there: the row that counts, or all within 6 in of the corner."""
    return ground.once(("holding", place), desk, lambda own: _work_holding(own, ground, rows, place))


def _work_holding(desk: Desk, ground: Ground, rows: Rows, place: str) -> list[Row]:
    path, back = ground.path, ground.path.back
    assert back is not None
    if place == "along the back":
        furthest, _ = load_back_alone.seat_row(desk, ground)
        return [
            rows[id(one)][0]
            for one in back.drillings
            if one.leg == "seat" and abs(desk.length(one.y) - furthest) < 1e-6
        ]
    side = path.left if place == "left corner" else path.right
    edge = back_edge(desk, ground.placed)
    found = []
    for support in (back, *((side,) if side is not None else ())):
        for one in support.drillings:
            if one.leg != "seat":
                continue
            spot = screw_spot(desk, ground.placed, support, one)
            along = spot.to_left if place == "left corner" else spot.to_right
            # Along the back it is the way from the end that counts, along a return the way from the back edge.
            way = along if support is back else hypot(max(along, 0.0), spot.across - edge)
            if way <= NEAR * (1 + 1e-9):
                found.append(rows[id(one)][0])
    return found


def _strength(desk: Desk, ground: Ground, load: Load, screws: list[Row], alone: bool) -> Worked:
    if not screws:
        if alone:
            raise OutsideRulebook("No screw holds the board down on its steel, so it tips off: put screws up into it.")
        return Worked("W_c", "no screw holds this corner down", "0", (), 0.0, "N", "statics")
    each = [_one(desk, ground, load, screw) for screw in screws]
    least = min(each, key=si)
    if alone:
        return least
    return Worked(
        "W_c", "pull the screws of this corner may take", "n * T_a",
        (Number("n", float(len(each)), ""), Number("T_a", si(least), "N")), len(each) * si(least), "N",
        "statics, each as the weakest", steps=(least,),
    )  # fmt: skip


def _one(desk: Desk, ground: Ground, load: Load, screw: Row) -> Worked:
    plain, root, diameter = numbers_of(desk, screw, "withdrawal", "root_strength", "diameter")
    line = (
        plain
        if isinstance(plain, Worked)
        else Worked("W_p", "given", "W_0", (Number("W_0", plain, "N"),), plain, "N", "")
    )
    service = ground.service.take(desk)
    held = factors.adjusted(
        line, factors.load_duration(load.duration), factors.wet_service(service, "withdrawal", diameter)
    )
    return withdrawal.pull_capacity(held, root)


def seat_screw(desk: Desk, ground: Ground) -> tuple[float, float]:
    """Diameter and thread in the wood of the seat screw that gives most, mm."""
    back = ground.path.back
    assert back is not None
    found: list[tuple[Given, Given]] = []
    for one in back.drillings:
        if one.leg == "seat":
            row = ground.rows[id(one)][0]
            found.append((number_of(desk, row, "diameter"), number_of(desk, row, "thread_in_wood")))
    if not found:
        raise OutsideRulebook("No screw holds the board down on its steel, so it tips off: put screws up into it.")
    diameter, thread = min(found, key=lambda pair: si(pair[0]) * si(pair[1]))
    return si(diameter), si(thread)
