"""A board on a back angle alone: a cantilever that tips over the toe of the seat leg and pulls on what is behind."""

from __future__ import annotations

from itertools import pairwise
from typing import NamedTuple

from plumbrule.facts.desk import Desk
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground, Iron, steel_line
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.load_three_sides import reactions
from plumbrule.facts.row_field import numbers_of
from plumbrule.mechanics import front_drop, hold_down, loads, slip, wall_leg
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import Number, OutsideRulebook, Worked

_STATICS = "statics"


class Cantilever(NamedTuple):
    """The loads on the board, where it tips over, and the steel under it. `people` of `on` is a single force."""

    on: tuple[hold_down.BoardLoad, ...]
    toe: Worked
    iron: Iron
    length: float


def cantilever(desk: Desk, ground: Ground, load: Load) -> Cantilever:
    """The board's own weight and the load, each with its distance from the heel."""
    back = ground.path.back
    assert back is not None
    sizes, weight, iron = ground.sizes.take(desk), ground.weight.take(desk), ground.iron[id(back)].take(desk)
    point, line = ground.point(desk, load), ground.line(desk, load)
    on = [hold_down.BoardLoad("W", weight, sizes.back + sizes.depth / 2, False)]
    if line is not None:
        at = sizes.back + sizes.depth * (1 / 2 if load.kind == "S2" else loads.STORAGE_PLACE)
        on.append(hold_down.BoardLoad("Q", size(line) * sizes.length, at, False))
    if point is not None and size(point) > 0:
        # Two people 24 in apart: between them they mobilise little more leg than one does.
        times = 2 if load.kind == "S3" else 1
        on.append(hold_down.BoardLoad("P", size(point) * times, sizes.front, True))
    return Cantilever(tuple(on), hold_down.toe(iron.seat), iron, min(sizes.length, iron.length))


def spread_width(at: Cantilever, *, at_end: bool) -> Worked:
    """Length of leg and of board that a person on the front edge mobilises, mm."""
    person = next((one for one in at.on if one.point), None)
    beyond = max(0.0, si(person.out) - si(at.toe)) if person else 0.0
    return hold_down.effective_width(beyond, at.length, at_end=at_end, along_wall=True)


def seat_row(desk: Desk, ground: Ground) -> tuple[float, int]:
    """The row of seat screws that holds the board down: its distance from the heel, mm, and how many there are. Of
    several rows the one with the shorter lever counts, and only its screws."""
    back = ground.path.back
    assert back is not None
    seats = [one for one in back.drillings if one.leg == "seat"]
    if not seats:
        raise OutsideRulebook("No screw holds the board down on its steel, so it tips off: put screws up into it.")
    desk.need_all(*(source for one in seats for source in (one.x, one.y)))
    furthest = max(desk.length(one.y) for one in seats)
    return furthest, sum(abs(desk.length(one.y) - furthest) < 1e-6 for one in seats)


def demands(desk: Desk, ground: Ground, load: Load) -> tuple[Demand, ...]:
    """What a load puts on each place of the back angle."""
    back = ground.path.back
    assert back is not None
    places = ground.places_on(desk, back)
    at = cantilever(desk, ground, load)
    whole, stations = at.iron.length, tuple(place.x for place in places)
    shares = [force / whole for force in reactions(1.0, stations, whole)]
    greatest = max(shares)
    metal = steel_line(at.iron) * whole
    centre = si(at.iron.section.centroid_out)
    found = []
    for index, place in enumerate(places):
        runs = [abs(other.x - place.x) for other in places if other is not place]
        end = index in (0, len(places) - 1)
        if not runs:
            raise OutsideRulebook("Steel that is screwed to the wall at one place can turn about it.")
        eta = wall_leg.station_share(len(places), min(runs), spread_width(at, at_end=end))
        part: list[Given] = [eta if one.point else greatest for one in at.on]
        tipping = hold_down.wall_moment(at.on, part)
        own = metal * greatest
        couple = _with(tipping, own * centre, "M_s", "M", "couple on this place", "N·mm")
        people = sum(si(one.force) / (2 if load.kind == "S3" else 1) for one in at.on if one.point)
        spread = greatest * sum(si(one.force) for one in at.on if not one.point)
        side = Worked(
            "V", "weight on this place: all of a person and a share of the rest", "P + e_q * Q + W_s",
            (Number("P", people, "N"), Number("e_q", greatest, ""), Number("Q", spread / greatest, "N"),
             Number("W_s", own, "N")),
            people + spread + own, "N", _STATICS, steps=tipping.steps,
        )  # fmt: skip
        found.append(Demand(side, own, couple, "not of this kind", side))
    return tuple(found)


def _with(line: Worked, more: float, symbol: str, new: str, words: str, unit: str) -> Worked:
    return Worked(
        new, words, f"{symbol} + {new}_steel", (Number(symbol, si(line), unit), Number(f"{new}_steel", more, unit)),
        si(line) + more, unit, _STATICS, steps=(line,),
    )  # fmt: skip


def held_down(desk: Desk, ground: Ground, load: Load) -> hold_down.HoldDown:
    """The pull on the seat screws under a load."""
    at = cantilever(desk, ground, load)
    row, count = seat_row(desk, ground)
    return hold_down.hold_down(at.on, toe=at.toe, seat_row=row, screws=count)


def drop(desk: Desk, ground: Ground, load: Load, seat: tuple[float, float]) -> Worked:
    """How far the front edge goes down, instant, mm. `seat` are diameter and thread in the wood of a seat screw."""
    back = ground.path.back
    assert back is not None
    at, sizes = cantilever(desk, ground, load), ground.sizes.take(desk)
    row, count = seat_row(desk, ground)
    held = hold_down.hold_down(at.on, toe=at.toe, seat_row=row, screws=count)
    places = ground.places_on(desk, back)
    first = places[0]
    drilled = first.rows[0][0]
    size_of, thread, head = (
        si(given)
        for given in (
            *numbers_of(desk, drilled.screw, "diameter", "thread_in_wood"),
            *numbers_of(desk, drilled.hole, "bearing_width"),
        )
    )
    down: wall_leg.WallLeg = "up" if back.wall_leg == "up" else "down"
    runs = [abs(b.x - a.x) for a, b in pairwise(places)] or [at.iron.length]
    top = first.rows[-1 if down == "up" else 0][0]
    around = wall_leg.screw_lever(
        down, gauge=top.heel, leg=at.iron.wall, to_toe=at.iron.to_toe, head=head, pitch=min(runs)
    )
    turning = front_drop.position_rotation(
        pull_stiffness=slip.pull_stiffness(size_of, thread), lever=wall_leg.lever(down, top.heel, at.iron.wall),
        leg_width=around.width, thickness=at.iron.thickness,
    )  # fmt: skip
    people = any(one.point for one in at.on)
    return front_drop.front_drop(
        wall_moment=hold_down.wall_moment(at.on, [1.0] * len(at.on)), front=sizes.front, rotation=turning,
        positions=len(places), beyond=max(0.0, sizes.front - si(at.toe)), pull=held.pull, contact=held.contact,
        toe=at.toe, seat_row=row, to_toe=at.iron.to_toe, thickness=at.iron.thickness,
        leg_length=spread_width(at, at_end=False) if people else at.length,
        seat_pull_stiffness=slip.pull_stiffness(*seat), seat_screws=count,
    ).drop  # fmt: skip
