"""Rows of a wooden cleat under each load: bent between its screws, sheared beside them, pressed by the board on top."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from itertools import pairwise

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import CLEAT_LOAD
from plumbrule.facts import load_three_sides
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.load_steel import return_bends
from plumbrule.facts.load_three_sides import wood_line
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics import allowable, back_angle, board_bearing, cleat, loads, lumber_factors
from plumbrule.mechanics.beam_loads import LineLoad
from plumbrule.mechanics.continuous import continuous_beam
from plumbrule.mechanics.factors import Duration, Service
from plumbrule.mechanics.given import number, si
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.supports import Cleat

Start = Callable[[Desk, Load], None]


def cleat_rows(ground: Ground, loads: Sequence[Load], start: Start) -> list[Row]:
    """Each cleat under a board, under each load."""
    return [
        _row(ground, support, load, start)
        for load in loads
        for support in ground.path.supports
        if support.kind == "cleat"
    ]


def _row(ground: Ground, support: Support, load: Load, start: Start) -> Row:
    said = load.case if load.kind != "D" else "its own weight"
    desk = Desk(CLEAT_LOAD, support.pointer, support.pointer, f"{support.label} as a beam under {said}")
    start(desk, load)
    is_return = support in ground.path.returns
    desk.get("moment", lambda: return_bends(desk, ground, support, load) if is_return else _bends(desk, ground, load))
    desk.get("moment_strength", lambda: _moment_strength(desk, ground, support, load))
    desk.get("shear", lambda: _shear(desk, ground, support, load))
    desk.get("shear_strength", lambda: _shear_strength(desk, ground, support, load))
    desk.get("pressure", lambda: _pressure(desk, ground, support, load))
    desk.get("pressure_strength", lambda: _stress(desk, ground, support, load, "bearing"))
    return desk.row()


def _bends(desk: Desk, ground: Ground, load: Load) -> Worked:
    back = ground.path.back
    assert back is not None
    stations = [place.x for place in ground.places_on(desk, back)]
    length, sizes, line = desk.length(back.length), ground.sizes.take(desk), ground.line(desk, load)
    own = back_angle.spread_load(0.0 if line is None else line, ground.weight.take(desk), sizes.length)
    wood = wood_line(desk, ground, back)
    beam = continuous_beam(length, stations, lines=[LineLoad(0.0, length, si(own) + wood)]).greatest_moment()
    run = max(b - a for a, b in pairwise(stations))
    over = max(stations[0], length - stations[-1])
    spread = Worked(
        "M_q", "bending by what is spread", "abs(M)", (number("M", beam, "N·mm"),), abs(beam.value), "N·mm", "statics",
        steps=(beam, own),
    )  # fmt: skip
    return cleat.person_on_beam(spread, size(ground.point(desk, load)), run, over)


def _shear(desk: Desk, ground: Ground, support: Support, load: Load) -> Worked:
    """No more than the whole of what comes to the worst place, and on a return all of its load."""
    if support in ground.path.returns:
        whole, _ = load_three_sides.on_one_return(desk, ground, support, load)
        places = load_three_sides.on_return(desk, ground, support, load)
        return max((whole, *(one.side for one in places)), key=lambda line: abs(si(line)))
    found = load_three_sides.on_back(desk, ground, load)
    return max((one.alone for one in found), key=si)


def _pressure(desk: Desk, ground: Ground, support: Support, load: Load) -> Worked:
    """A person bears on a hand's breadth of the cleat and the board's own thickness beside it, no wider than the half
    inch on which a board bears that turns; a spread load on a quarter of the board."""
    sizes = ground.sizes.take(desk)
    force, line = size(ground.point(desk, load)), size(ground.line(desk, load))
    thick = sizes.thickness
    if force:
        return board_bearing.board_bearing_stress(force, board_bearing.tip_bearing_area(si(loads.PATCH), thick))
    spread = line * sizes.length if line else si(ground.weight.take(desk))
    return board_bearing.board_bearing_stress(spread / 4, board_bearing.tip_bearing_area(sizes.depth / 2, thick))


def _moment_strength(desk: Desk, ground: Ground, support: Support, load: Load) -> Worked:
    thick, high, hole = _section(desk, support)
    return cleat.cleat_moment_capacity(
        _stress(desk, ground, support, load, "bending"), cleat.cleat_modulus(thick, high, hole)
    )


def _shear_strength(desk: Desk, ground: Ground, support: Support, load: Load) -> Worked:
    """The least of any place: a screw high up in the cleat, or one near its end, has less wood above it to hang on."""
    thick, high, hole = _section(desk, support)
    stress, length = _stress(desk, ground, support, load, "shear"), desk.length(support.length)
    found = [
        cleat.cleat_shear_capacity(stress, thick, high, place.rows[-1][0].heel, min(place.x, length - place.x), hole)
        for place in ground.places_on(desk, support)
    ]
    return min(found, key=si)


def _section(desk: Desk, support: Support) -> tuple[float, float, float]:
    """Thickness and height of a cleat, and the largest hole through it, mm."""
    wall = [one for one in support.drillings if one.leg == "wall"]
    bores = [Input(one.holes.diameter.value, one.holes.diameter.pointer) for one in wall]
    desk.need_all(support.thickness, support.wall_leg_size, *bores)
    return (
        desk.length(support.thickness), desk.length(support.wall_leg_size),
        max((desk.length(bore) for bore in bores), default=0.0),
    )  # fmt: skip


def _stress(desk: Desk, ground: Ground, support: Support, load: Load, stress: cleat.CleatStress) -> Worked:
    """What the wood of a cleat may carry. Framing lumber has design values by its grade; a board takes the way that
    boards without a stamp take, and counts as sound only where it is clear."""
    made: Cleat = (ground.plan.model.cleats or {})[support.name]
    here = support.pointer
    species, grade = Input(made.species, f"{here}/species"), Input(made.grade, f"{here}/grade")
    desk.need_all(species, grade)
    service = ground.service.take(desk)
    high = desk.length(support.wall_leg_size)
    return _allowed(desk.word(species), desk.word(grade), stress, high, load.duration, service)


@lru_cache(maxsize=128)
def _allowed(
    species: str, grade: str, stress: cleat.CleatStress, high: float, duration: Duration, service: Service
) -> Worked:
    if species in tables().names("framing"):
        reference = cleat.lumber_stress(tables().framing(species), grade, stress)
        return lumber_factors.adjusted_stress(reference, stress, duration, service)
    wood = tables().board(species)
    if stress == "bending":
        quality: allowable.Quality = "sound front" if grade == "clear" else "unknown"
        reference = allowable.bending_allowable(wood, high, quality)
    else:
        reference = allowable.shear_allowable(wood) if stress == "shear" else allowable.bearing_allowable(wood)
    return lumber_factors.adjusted_stress(reference, stress, duration, service)
