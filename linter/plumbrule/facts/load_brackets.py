"""A board on brackets: what comes to each, and what that pulls on its screws from the top down."""

from __future__ import annotations

from functools import lru_cache
from itertools import pairwise

from plumbrule.catalogue.rows_loads import BOARD_LOAD
from plumbrule.facts.desk import Desk, Once
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.load_three_sides import reactions
from plumbrule.facts.supports import Support
from plumbrule.mechanics import bracket, loads
from plumbrule.mechanics.given import si
from plumbrule.mechanics.spring_beam import bend, walked
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

_SAME = 1e-6
_GIVING = 1.1


class Brackets:
    """The brackets under one board, from left to right. An end that also lies on an angle or cleat of the wall there is
    no help to them: they must carry the board without it, and also what its stiffness sends to them."""

    def __init__(self, ground: Ground) -> None:
        self._ground = ground
        self.on = tuple(support for support in ground.path.supports if support.kind == "bracket")
        self.centres = Once(BOARD_LOAD, self._centres)

    def _centres(self, desk: Desk) -> tuple[float, ...]:
        """Centre line of each bracket from the left end of the board, mm, in the order of the path's supports."""
        on = self.on
        desk.need_all(*(source for support in on for source in (support.left, support.length)))
        begins, whole = self._ground.left.take(desk), self._ground.sizes.take(desk).length
        found = tuple(desk.length(support.left) + desk.length(support.length) / 2 - begins for support in on)
        if any(not -_SAME <= place <= whole + _SAME for place in found):
            raise OutsideRulebook("A bracket stands beside its board and not under it, so it carries nothing.")
        return tuple(min(max(place, 0.0), whole) for place in found)

    def on_each(self, desk: Desk, load: Load) -> tuple[tuple[float, float, float], ...]:
        """For each bracket what is spread on it (weight, then the load) and the one force, N."""
        ground = self._ground
        sizes, weight = ground.sizes.take(desk), si(ground.weight.take(desk))
        centres = self.centres.take(desk)
        order = sorted(range(len(centres)), key=lambda index: centres[index])
        places = tuple(centres[index] for index in order)
        share = dict(zip(order, reactions(1.0, places, sizes.length), strict=True))
        line, point = size(ground.line(desk, load)), size(ground.point(desk, load))
        worst = dict.fromkeys(order, 1.0)
        for end, beyond in ((0, places[0]), (-1, sizes.length - places[-1])):
            run = abs(places[end] - places[1 if end == 0 else -2])
            if beyond > 0:
                worst[order[end]] = si(bracket.nearer_bracket(1.0, beyond, run))
        ends = tuple(at for at, held in ((0.0, ground.path.left), (sizes.length, ground.path.right)) if held)
        # Over three brackets or more a stiff board sends more than the lever rule of two to the one beside its end.
        for held in {(), ends}:
            for index, (spread, one, _) in zip(order, _with_ends(places, held, sizes.length), strict=True):
                share[index], worst[index] = max(share[index], spread), max(worst[index], one)
        if load.kind == "S3":
            # The second person stands 24 in from the first: what of him comes to the same bracket by the lever rule.
            widest = max((b - a for a, b in pairwise(places)), default=0.0)
            point *= 1 + max(0.0, 1 - si(loads.BETWEEN_PEOPLE) / widest)
        # Arms bend most where their neighbours bend less: plate solutions show up to a twelfth more of a spread load.
        weight, line = _GIVING * weight, _GIVING * line
        return tuple((share[i] * weight / sizes.length, share[i] * line, worst[i] * point) for i in range(len(centres)))

    def spread_run(self, desk: Desk, run: float) -> float:
        """The length that bends under a spread load: `run`, and beside an end that is held the way from that end to
        the second bracket, since the first may give."""
        path, length = self._ground.path, self._ground.sizes.take(desk).length
        places = sorted(self.centres.take(desk))
        return max(run, places[1] if path.left else 0.0, length - places[-2] if path.right else 0.0)

    def lifted(self, desk: Desk, support: Support) -> float:
        """Which part of one person's weight lifts the board off a bracket, standing wherever it lifts most."""
        centres, length = self.centres.take(desk), self._ground.sizes.take(desk).length
        order = sorted(range(len(centres)), key=lambda index: centres[index])
        found = _with_ends(tuple(centres[index] for index in order), (), length)
        return found[order.index(self.on.index(support))][2]

    def tipping(self, desk: Desk, support: Support, load: Load) -> tuple[Worked, Worked]:
        """The load on one bracket, N, and its moment about the wall, N·mm."""
        ground = self._ground
        sizes = ground.sizes.take(desk)
        weight, spread, force = self.on_each(desk, load)[self.on.index(support)]
        arm = desk.length(support.seat_leg_size)
        middle = sizes.back + sizes.depth / 2
        out = sizes.back + sizes.depth * (0.5 if load.kind == "S2" else loads.STORAGE_PLACE)
        tip = max(sizes.front, arm) if force else 0.0
        desk.need_all(support.wall_leg_size, support.length, support.thickness)
        strip = (arm + desk.length(support.wall_leg_size)) * desk.length(support.length)
        own = si(loads.steel_weight(strip, desk.length(support.thickness)))
        numbers = (
            Number("W", weight, "N"), Number("Q", spread, "N"), Number("P", force, "N"), Number("y_W", middle, "mm"),
            Number("y_Q", out, "mm"), Number("y_P", tip, "mm"), Number("W_s", own, "N"), Number("l", arm, "mm"),
        )  # fmt: skip
        whole = Worked(
            "R_b",
            "load on the bracket",
            "W + Q + P + W_s",
            (*numbers[:3], numbers[6]),
            weight + spread + force + own,
            "N",
            "statics",
        )
        moment = Worked(
            "M_b", "moment of the load about the wall", "W * y_W + Q * y_Q + P * y_P + W_s * l / 2", numbers,
            weight * middle + spread * out + force * tip + own * arm / 2, "N·mm", "statics",
        )  # fmt: skip
        return whole, moment

    def demands(self, desk: Desk, support: Support, load: Load) -> tuple[Demand, ...]:
        """What a load puts on the wall screws of one bracket, as one place."""
        places = self._ground.places_on(desk, support)
        if len(places) > 1:
            raise OutsideRulebook("A bracket with screws beside each other is not covered: put them on one line.")
        whole, moment = self.tipping(desk, support, load)
        upright = desk.length(support.wall_leg_size)
        heels = [row[0].heel for row in places[0].rows]
        if heels[-1] > upright:
            raise NotPossible("a screw is not on the upright")
        out = si(moment) / si(whole)
        screws = bracket.bracket_screws(whole, out, upright, [upright - heel for heel in reversed(heels)])
        return (Demand(whole, 0.0, moment, "not of this kind", whole, tuple(reversed(screws.pulls))),)


@lru_cache(maxsize=64)
def _with_ends(
    places: tuple[float, ...], ends: tuple[float, ...], length: float
) -> tuple[tuple[float, float, float], ...]:
    """For each bracket its share of an even load of 1 N/mm, N, and of a person where he presses it most and where he
    lifts the board off it most, the ends of the board held up as well. Firm supports: the more they give the less is
    sent from one to the next."""
    stations = tuple(sorted({*places, *ends}))
    spread = reactions(1.0, stations, length)
    stiff = 1e6 / min(b - a for a, b in pairwise(stations)) ** 3
    firm = [(place, stiff) for place in stations]
    person = walked(length, firm, 1.0, 0.0, length)
    found = []
    for index, place in enumerate(stations):
        if not any(abs(place - at) < _SAME for at in places):
            continue
        # By the reciprocal theorem: what a person anywhere sends here is how this place's own unit load moves him. He
        # lifts most at an end past the next bracket or, where no end runs past, between two others.
        _, risen = bend(length, firm, 1.0, [(place, -1.0)]).lowest(0.0, length)
        found.append((spread[index], person[index][1], max(0.0, stiff * risen)))
    return tuple(found)
