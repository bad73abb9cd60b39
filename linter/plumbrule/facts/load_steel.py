"""Rows of the steel itself under each load: the leg that bends at its heel, and the angle as a beam."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import BEAM_LOAD, LEG_LOAD
from plumbrule.facts import load_back_alone, load_three_sides
from plumbrule.facts.desk import Desk
from plumbrule.facts.load_board import require_plain
from plumbrule.facts.load_brackets import Brackets
from plumbrule.facts.load_ground import Ground, steel_line
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics import angle_beam, back_angle, bracket, hold_down, leg, wall_leg
from plumbrule.mechanics.beam_loads import LineLoad
from plumbrule.mechanics.continuous import continuous_beam
from plumbrule.mechanics.given import Given, number, si, steps
from plumbrule.mechanics.worked import Number, Worked

Start = Callable[[Desk, Load], None]
_PEOPLE = ("S1", "S3", "S5", "SP", "S7")
_BESIDE = 2 * 25.4


def leg_rows(ground: Ground, brackets: Brackets | None, loads: Sequence[Load], start: Start) -> list[Row]:
    """The seat leg of each support, or the arm of each bracket, where it is bent most."""
    carried = ground.path.carried
    found = []
    for load in loads:
        if carried == "three sides" and load.kind in _PEOPLE:
            found += [_leg(ground, brackets, support, load, "at the wall", start) for support in ground.path.supports]
        elif carried == "back angle alone":
            assert ground.path.back is not None
            places = ("inside", "at an end") if load.kind in _PEOPLE else ("inside",)
            found += [_leg(ground, brackets, ground.path.back, load, place, start) for place in places]
        elif brackets is not None:
            found += [_leg(ground, brackets, support, load, "at an end", start) for support in brackets.on]
            if load.kind in _PEOPLE:
                found += [_leg(ground, None, support, load, "at the wall", start) for support in _steel(ground)]
    return found


def _steel(ground: Ground) -> list[Support]:
    """The angles at the ends of a board on brackets."""
    return [support for support in ground.path.returns if support.kind == "angle"]


def _said(load: Load) -> str:
    return load.case if load.kind != "D" else "its own weight"


def _leg(ground: Ground, brackets: Brackets | None, support: Support, load: Load, place: str, start: Start) -> Row:
    where = "" if place == "at the wall" or brackets is not None else f", {place}"
    desk = Desk(LEG_LOAD, support.pointer, support.pointer, f"leg of {support.label} under {_said(load)}{where}")
    start(desk, load)
    desk.set("place", place, support.pointer)
    desk.get("moment", lambda: _moment(desk, ground, brackets, support, load, place))
    for field, limit in (
        ("strength", "strength"), ("springs_back", "no lasting set"), ("lasting_strength", "lasting load"),
    ):  # fmt: skip
        desk.get(field, lambda limit=limit: _leg_strength(desk, ground, support, limit))  # type: ignore[misc]
    if ground.path.carried == "back angle alone" and load.kind in _PEOPLE:
        desk.get("torque", lambda: _torque(desk, ground, load, place))
        desk.get("torque_strength", lambda: _torque_strength(desk, ground, support))
        desk.get("seat_screw_at_each", lambda: _beside(desk, ground, support))
    return desk.row()


def _moment(desk: Desk, ground: Ground, brackets: Brackets | None, support: Support, load: Load, place: str) -> Worked:
    if brackets is not None:
        require_plain(ground, support)
        whole, moment = brackets.tipping(desk, support, load)
        desk.need_all(support.thickness, support.fillet, support.length)
        toe = desk.length(support.thickness) + desk.length(support.fillet)
        return bracket.arm_moment(whole, si(moment) / si(whole), toe, desk.length(support.length))
    if place == "at the wall":
        iron = ground.iron[id(support)].take(desk)
        return leg.leg_under_edge(size(ground.point(desk, load)) or 1e-9, hold_down.toe(iron.seat), iron.to_toe)
    at = load_back_alone.cantilever(desk, ground, load)
    width = load_back_alone.spread_width(at, at_end=place == "at an end")
    return leg.leg_moment(at.on, at.iron.to_toe, width, at.length)


def _leg_strength(desk: Desk, ground: Ground, support: Support, limit: leg.LegLimit) -> Worked:
    desk.need_all(support.thickness, support.steel)
    return leg.leg_capacity(
        limit, desk.length(support.thickness), tables().steel(desk.word(support.steel)).yield_stress
    )


def _torque(desk: Desk, ground: Ground, load: Load, place: str) -> Worked:
    at, back = load_back_alone.cantilever(desk, ground, load), ground.path.back
    assert back is not None
    places = ground.places_on(desk, back)
    runs = [b.x - a.x for a, b in pairwise(places)] or [at.iron.length]
    eta = wall_leg.station_share(len(places), min(runs), load_back_alone.spread_width(at, at_end=place == "at an end"))
    return leg.torque_between(eta, size(ground.point(desk, load)), ground.sizes.take(desk).front)


def _torque_strength(desk: Desk, ground: Ground, support: Support) -> Worked:
    iron = ground.iron[id(support)].take(desk)
    return leg.torque_capacity(iron.steel.yield_stress, iron.section.torsion, iron.thickness)


def _beside(desk: Desk, ground: Ground, support: Support) -> bool:
    """Whether a seat screw stands within 2 in of every place, so that the board takes the twist."""
    seats = [one.x for one in support.drillings if one.leg == "seat"]
    desk.need_all(*seats)
    marks = [desk.length(seat) for seat in seats]
    places = ground.places_on(desk, support)
    return all(any(abs(mark - place.x) <= _BESIDE * (1 + 1e-9) for mark in marks) for place in places)


def beam_rows(ground: Ground, loads: Sequence[Load], start: Start) -> list[Row]:
    """Each angle as a beam over its places, under each load."""
    carried = ground.path.carried
    if carried not in ("three sides", "back angle alone", "brackets"):
        return []
    on = _steel(ground) if carried == "brackets" else ground.path.supports
    return [_beam(ground, support, load, start) for load in loads for support in on]


def _beam(ground: Ground, support: Support, load: Load, start: Start) -> Row:
    desk = Desk(BEAM_LOAD, support.pointer, support.pointer, f"{support.label} as a beam under {_said(load)}")
    start(desk, load)
    is_return = support in ground.path.returns
    desk.get("moment", lambda: return_bends(desk, ground, support, load) if is_return else _bends(desk, ground, load))

    def strength() -> Worked:
        iron = ground.iron[id(support)].take(desk)
        fy = iron.steel.yield_stress
        return min(
            (angle_beam.held_capacity(iron.section, fy), angle_beam.pressed_tip_capacity(iron.section, fy)), key=si
        )

    desk.get("strength", strength)
    return desk.row()


def _bends(desk: Desk, ground: Ground, load: Load) -> Worked:
    """Spread loads as on firm places; one person as on a simple span of the longest run, or at an overhanging end."""
    back = ground.path.back
    assert back is not None
    places, sizes, iron = ground.places_on(desk, back), ground.sizes.take(desk), ground.iron[id(back)].take(desk)
    stations = [place.x for place in places]
    line = ground.line(desk, load)
    own = back_angle.spread_load(0.0 if line is None else line, ground.weight.take(desk), sizes.length)
    beam = continuous_beam(
        iron.length, stations, lines=[LineLoad(0.0, iron.length, si(own) + steel_line(iron))]
    ).greatest_moment()
    spread = abs(beam.value)
    run = max(b - a for a, b in pairwise(stations))
    over = max(stations[0], iron.length - stations[-1])
    force = size(ground.point(desk, load))
    return Worked(
        "M_x", "bending of the angle", "M_q + P * max(s / 4, c)",
        (Number("M_q", spread, "N·mm"), Number("P", force, "N"), Number("s", run, "mm"), Number("c", over, "mm")),
        spread + force * max(run / 4, over), "N·mm", "statics; one span by itself, which is the safe side",
        steps=(beam, own),
    )  # fmt: skip


def return_bends(desk: Desk, ground: Ground, support: Support, load: Load) -> Worked:
    """The steel reaches past its last screws to the board's front edge, where its load stands."""
    whole, forces = load_three_sides.on_one_return(desk, ground, support, load)
    out = load_three_sides.outs(desk, ground, support, ground.places_on(desk, support))
    front = ground.sizes.take(desk).front
    worst: Given = 0.0
    at = 0.0
    for place in out:
        moment = si(whole) * (front - place) - sum(
            si(force) * (other - place) for force, other in zip(forces, out, strict=True) if other > place
        )
        if abs(moment) > abs(si(worst)):
            worst, at = moment, place
    others = [
        Number(f"V_{i}", si(force), "N") for i, (force, other) in enumerate(zip(forces, out, strict=True), 1)
        if other > at
    ]  # fmt: skip
    arms = [Number(f"y_{i}", other, "mm") for i, other in enumerate(out, 1) if other > at]
    less = "".join(f" - {v.symbol} * ({y.symbol} - y)" for v, y in zip(others, arms, strict=True))
    return Worked(
        "M_x", "bending of the return at its worst place", f"abs(R * (y_f - y){less})",
        (number("R", whole, "N"), Number("y_f", front, "mm"), Number("y", at, "mm"), *others, *arms),
        abs(si(worst)), "N·mm", "statics", steps=steps(whole, *forces),
    )  # fmt: skip
