"""A board held at its back and both ends, on angles or on cleats: what a load puts on each place of its supports."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from plumbrule.facts.board_place import recess
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground, steel_line
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.load_places import Drilled, Place
from plumbrule.facts.reference import tables
from plumbrule.facts.row_field import numbers_of
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import cleat_gravity
from plumbrule.mechanics import back_angle, board_twist, crack, loads, returns, sharing, simple_span, slip
from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, number, si
from plumbrule.mechanics.worked import Number, Worked

_STATICS = "statics"
_RETURN: dict[str, returns.ReturnCase] = {
    "D": "D", "S1": "S1 corner", "S2": "S2", "S3": "S3", "S5": "S5 corner", "S6": "S2", "SP": "S1 corner",
    "S7": "S1 corner",
}  # fmt: skip
_PERSON: dict[str, back_angle.PersonCase] = {"S1": "S1", "S3": "S3", "S5": "S5", "SP": "S1", "S7": "S1"}


def person(given: Given, load: Load) -> Given:
    """One person of a load: the formulas double a person who drops by themselves."""
    return si(given) / 2 if load.kind == "S5" else given


def front_drop(desk: Desk, ground: Ground, load: Load) -> Worked:
    """How far the middle of the front edge goes down under a load by itself, the returns firm, instant, mm."""
    point, line = ground.point(desk, load), ground.line(desk, load)
    parts: list[Worked] = []
    if point is not None and size(point) > 0:
        parts.append(drop_of_person(desk, ground, point))
    if line is not None or not parts:
        spread = line if line is not None else si(ground.weight.take(desk)) / ground.sizes.take(desk).length
        parts.append(drop_of_spread(desk, ground, spread))
    return parts[0] if len(parts) == 1 else add("w_f", "front drop", parts, _STATICS)


def drop_of_person(desk: Desk, ground: Ground, force: Given) -> Worked:
    """The front drop under one force at midspan of the front edge, mm."""
    sizes, cracks = ground.sizes.take(desk), ground.cracks.take(desk)
    modulus, ratio = ground.modulus(desk), ground.shear_ratio(desk)
    if cracks.to_front is not None:
        return crack.cut_front_drop(
            force, sizes.length, modulus, modulus.value * ratio, cracks.to_front, sizes.thickness
        )
    return _twist(sizes.length, sizes.depth, sizes.thickness, si(modulus), ratio).drop_of_point(force)


def drop_of_spread(desk: Desk, ground: Ground, line: Given) -> Worked:
    """The front drop under an even load per length, mm."""
    sizes, cracks = ground.sizes.take(desk), ground.cracks.take(desk)
    modulus, ratio = ground.modulus(desk), ground.shear_ratio(desk)
    if cracks.to_front is not None:
        second = simple_span.rectangle_second_moment(sizes.depth, sizes.thickness)
        return simple_span.even_sag(line, sizes.length, modulus, second)
    return _twist(sizes.length, sizes.depth, sizes.thickness, si(modulus), ratio).drop_of_spread(line)


def settling(desk: Desk, ground: Ground, load: Load) -> Worked:
    """How far the front of the worse return goes down as its front screws slip, the board's weight on it, mm."""
    found: list[Worked] = []
    for support in ground.path.returns:
        places = ground.places_on(desk, support)
        out = outs(desk, ground, support, places)
        front = max(range(len(places)), key=lambda index: out[index])
        stiff = sum(_stiffness(desk, drilled) for drilled in places[front].all)
        force = on_one_return(desk, ground, support, load, midspan=True)[1][front]
        found.append(
            Worked(
                "d_s", "the front screws of a return slip", "V / k_s",
                (number("V", force, "N"), Number("k_s", stiff, "N/mm")), si(force) / stiff, "mm", "statics",
                steps=(force,),
            )
        )  # fmt: skip
    return max(found, key=si)


def _stiffness(desk: Desk, drilled: Drilled) -> float:
    gravity, gap, diameter = (
        si(given) for given in numbers_of(desk, drilled.screw, "specific_gravity", "gap", "diameter")
    )
    return _slip(gravity, diameter, _root(str(drilled.screw.values["kind"]), diameter), gap)


@lru_cache(maxsize=128)
def _twist(length: float, depth: float, thickness: float, modulus: float, ratio: float) -> board_twist.BoardTwist:
    return board_twist.board_twist(length=length, depth=depth, thickness=thickness, modulus=modulus, shear_ratio=ratio)


def lever_out(desk: Desk, support: Support) -> float:
    """How far before the wall the board bears on a support at the most, mm: the leg, or the cleat's thickness."""
    return desk.length(support.seat_leg_size)


def on_back(desk: Desk, ground: Ground, load: Load) -> tuple[Demand, ...]:
    """What a load puts on each place of the back angle or cleat."""
    back = ground.path.back
    assert back is not None
    places = ground.places_on(desk, back)
    sizes, weight = ground.sizes.take(desk), ground.weight.take(desk)
    leg, whole = lever_out(desk, back), desk.length(back.length)
    point, line = ground.point(desk, load), ground.line(desk, load)
    steel = steel_line(ground.iron[id(back)].take(desk)) if back.kind == "angle" else wood_line(desk, ground, back)
    stations = tuple(place.x for place in places)
    own = back_angle.spread_load(line if line is not None else 0.0, weight, sizes.length)
    spread_drop = drop_of_spread(desk, ground, own)
    q = greatest(si(own), stations, whole, si(spread_drop))
    metal = greatest(steel, stations, whole, 0.0) if steel else 0.0
    lasting = _sum("V_q", "weight spread on this place", ("R_q", q), ("R_s", metal), own)
    couple = back_angle.spread_couple(lasting, leg, spread_drop, sizes.depth)
    if point is None or size(point) == 0:
        return tuple(Demand(lasting, metal, couple, "not of this kind", lasting) for _ in places)
    one, case = person(point, load), _PERSON[load.kind]
    word = whether_shared(desk, ground, back, places)
    share = _shared(desk, ground, back, places, one) if word == "shared" else None
    tipping = back_angle.person_couple(case, one, leg, drop_of_person(desk, ground, one), sizes.depth)
    moment = _plus("M", "couple on this place", tipping, couple)
    alone = _plus("V", "weight on this place, no other helping", back_angle.person_force(case, one, None), lasting)
    found = []
    for place in places:
        given = None if share is None else (share.end if place in (places[0], places[-1]) else share.inside)
        side = _plus("V", "weight on this place", back_angle.person_force(case, one, given), lasting)
        found.append(Demand(side, metal, moment, word, alone))
    return tuple(found)


def on_return(desk: Desk, ground: Ground, support: Support, load: Load) -> tuple[Demand, ...]:
    """What a load puts on each place of a return, in the order of its places."""
    places, forces = ground.places_on(desk, support), on_one_return(desk, ground, support, load)[1]
    leg = lever_out(desk, support)
    if support.kind == "angle":
        iron = ground.iron[id(support)].take(desk)
        metal = steel_line(iron) * iron.length / len(places)
    else:
        metal = wood_line(desk, ground, support) * desk.length(support.length) / len(places)
    found = []
    for force in forces:
        case = _RETURN[load.kind if load.kind in _RETURN else "D"]
        side = _sum("V", "weight on this place", ("V_r", force.value), ("W_s", metal), force)
        found.append(Demand(side, metal, returns.return_couple(case, side, leg), "not of this kind", side))
    return tuple(found)


def on_one_return(
    desk: Desk, ground: Ground, support: Support, load: Load, *, midspan: bool = False
) -> tuple[Worked, tuple[Worked, ...]]:
    """What a return carries at the front edge, and of that each of its places, in their order. `midspan`: with a person
    in the middle of the seat and not at its corner."""

    def work(own: Desk) -> tuple[Worked, tuple[Worked, ...]]:
        return _work_return(own, ground, support, load, midspan=midspan)

    return ground.once((id(support), "return", load, midspan), desk, work)


def _work_return(
    desk: Desk, ground: Ground, support: Support, load: Load, *, midspan: bool
) -> tuple[Worked, tuple[Worked, ...]]:
    places = ground.places_on(desk, support)
    sizes, weight = ground.sizes.take(desk), ground.weight.take(desk)
    out = outs(desk, ground, support, places)
    point, line = ground.point(desk, load), ground.line(desk, load)
    given = 0.0 if point is None else person(point, load)
    kind = load.kind if load.kind in _RETURN else "D"
    case = "S1 midspan" if midspan and kind in ("S1", "SP", "S7") else _RETURN[kind]
    parts = [_load(case, given, line, weight, sizes.length)]
    if load.kind == "S7":
        parts.append(_load("S2", 0.0, line, weight, sizes.length))
    if load.kind != "D":
        parts.append(_load("D", 0.0, 0.0, weight, sizes.length))
    if ground.path.carried == "brackets":
        parts = [_leaning(desk, ground, load)]
    whole = parts[0] if len(parts) == 1 else add("R", "load on the return at the front edge", parts, _STATICS)
    order = sorted(range(len(places)), key=lambda index: out[index])
    out_rising = [out[index] for index in order]
    forces = list(returns.return_forces(whole, sizes.front, out_rising))
    if support.kind == "angle":
        section = ground.iron[id(support)].take(desk).section
        front = places[order[-1]]
        stiff = sum(_stiffness(desk, drilled) for drilled in front.all) / front.screws
        forces[-1] = returns.return_front_force(
            whole, sizes.front, out_rising, second_moment=section.second_moment, screw_stiffness=stiff,
            screws=front.screws,
        )  # fmt: skip
    by_place = dict(zip(order, forces, strict=True))
    return whole, tuple(by_place[index] for index in range(len(places)))


def _load(case: returns.ReturnCase, point: Given, line: Given | None, weight: Given, length: float) -> Worked:
    return returns.return_load(
        case, person=point, line_load=0.0 if line is None else line, weight=weight, length=length
    )


def _leaning(desk: Desk, ground: Ground, load: Load) -> Worked:
    """The most that comes to one end beside brackets: were they to give, the board would lean on it alone, and what
    turns it about its back would be held by this end at the front edge. Nothing is taken off for the brackets."""
    sizes, weight = ground.sizes.take(desk), si(ground.weight.take(desk))
    line, point = size(ground.line(desk, load)), size(ground.point(desk, load))
    people = point * (2 if load.kind == "S3" else 1)
    spread = line * sizes.length
    out = {"S2": 0.5}.get(load.kind, loads.STORAGE_PLACE)
    middle, at = sizes.back + sizes.depth / 2, sizes.back + sizes.depth * out
    return Worked(
        "R", "load on the end at the front edge, the brackets taken to give", "P + (W * y_W + Q * y_Q) / y_f",
        (Number("P", people, "N"), Number("W", weight, "N"), Number("y_W", middle, "mm"), Number("Q", spread, "N"),
         Number("y_Q", at, "mm"), Number("y_f", sizes.front, "mm")),
        people + (weight * middle + spread * at) / sizes.front, "N", "statics about the back edge, derived here",
    )  # fmt: skip


def wood_line(desk: Desk, ground: Ground, support: Support) -> float:
    """Weight of a cleat per length, N/mm, as that of a board of its wood."""
    made = (ground.plan.model.cleats or {})[support.name]
    gravity = cleat_gravity(desk, Input(made.species, f"{support.pointer}/species"))
    desk.need_all(support.thickness, support.wall_leg_size)
    one = loads.board_weight(gravity, 1.0, desk.length(support.wall_leg_size), desk.length(support.thickness))
    return si(one)


def outs(desk: Desk, ground: Ground, support: Support, places: Sequence[Place]) -> tuple[float, ...]:
    """How far each place of a return stands before the heel of the back, mm."""
    behind = recess(desk, ground.path.behind)
    if support is ground.path.left:
        wall = support.wall
        width = desk.length(Input(wall.width if wall else None, f"/walls/{support.wall_name}/width"))
        return tuple(width - place.on_wall + behind for place in places)
    return tuple(place.on_wall + behind for place in places)


def whether_shared(desk: Desk, ground: Ground, support: Support, places: Sequence[Place]) -> str:
    """Whether the places of the back share one person, or why not."""
    if support.kind != "angle":
        return "not of this kind"
    over = max(si(numbers_of(desk, one.hole, "play")[0]) for place in places for one in place.all)
    modes = [_mode(one.screw.worked.get("side_strength")) for place in places for one in place.all]
    for place in places:
        for one in place.all:
            numbers_of(desk, one.screw, "side_strength")
    word = "shared"
    for mode in modes:
        found = sharing.sharing_word(
            positions=len(places), spliced=False, hole_over=max(over, 0.0), mode=mode,
            returns=len(ground.path.returns),
        )  # fmt: skip
        word = found if found != "shared" else word
    return word


def _mode(strength: Worked | None) -> str:
    """The yield mode that governs a screw's side strength, which is the least of them all."""
    return "" if strength is None else min(strength.numbers, key=lambda one: one.value).symbol.removeprefix("Z_")


def _shared(desk: Desk, ground: Ground, support: Support, places: Sequence[Place], one: Given) -> sharing.SharedPerson:
    iron, sizes, modulus = ground.iron[id(support)].take(desk), ground.sizes.take(desk), ground.modulus(desk)
    stiffest = 0.0
    for place in places:
        here = sum(_stiffness(desk, drilled) for drilled in place.all)
        stiffest = max(stiffest, here)
    return _walk(
        si(one), iron.length, tuple(place.x for place in places),
        si(iron.section.second_moment), si(modulus), sizes.depth, sizes.thickness, stiffest,
    )  # fmt: skip


@lru_cache(maxsize=256)
def _slip(gravity: float, diameter: float, root: float, gap: float) -> float:
    return si(slip.slip_stiffness(gravity, diameter, root, gap))


@lru_cache(maxsize=256)
def _root(kind: str, diameter: float) -> float:
    return tables().fastener(kind, diameter).root_diameter


@lru_cache(maxsize=256)
def _walk(
    one: float, length: float, stations: tuple[float, ...], second: float, modulus: float, depth: float,
    thickness: float, stiffness: float,
) -> sharing.SharedPerson:  # fmt: skip
    bar = sharing.stiffness_second_moment(second, modulus, depth, thickness)
    return sharing.shared_person(
        one, length=length, stations=stations, second_moment=bar,
        stiffness=sharing.position_stiffness(stiffness, 1),
    )  # fmt: skip


@lru_cache(maxsize=512)
def greatest(line: float, stations: tuple[float, ...], length: float, front_drop: float) -> float:
    """What a spread load puts on the worst place of a back angle, N: what its ends are spared comes to those inside."""
    return back_angle.greatest_spread_force(back_angle.spread_reactions(line, stations, length), front_drop).value


@lru_cache(maxsize=512)
def reactions(line: float, stations: tuple[float, ...], length: float) -> tuple[float, ...]:
    """What a spread load puts on each place of an angle as a beam over firm places, N."""
    return tuple(line_.value for line_ in back_angle.spread_reactions(line, stations, length).reactions)


def _sum(symbol: str, words: str, first: tuple[str, float], second: tuple[str, float], under: Worked) -> Worked:
    return Worked(
        symbol, words, f"{first[0]} + {second[0]}", (Number(*first, "N"), Number(*second, "N")),
        first[1] + second[1], "N", _STATICS, steps=(under,),
    )  # fmt: skip


def _plus(symbol: str, words: str, first: Worked, second: Worked) -> Worked:
    return add(symbol, words, (first, second), _STATICS)
