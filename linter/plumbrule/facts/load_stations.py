"""One row for each place where steel or a cleat is screwed to the wall, under each load: what comes to its screws, and
what screws, wall leg, head and hole may take."""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from functools import lru_cache
from itertools import pairwise
from typing import TypeVar

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import STATION_LOAD
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.head import LET_IN
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load
from plumbrule.facts.load_places import Place
from plumbrule.facts.reference import tables
from plumbrule.facts.row_field import number_of, numbers_of, of_row
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import framing_gravity, stud_width
from plumbrule.mechanics import combined, factors, wall_leg, withdrawal
from plumbrule.mechanics.given import Given, number, si, steps
from plumbrule.mechanics.worked import Number, OutsideRulebook, Worked

Demands = Callable[[Desk], Sequence[Demand]]
T = TypeVar("T")
_STATICS = "statics"
# Where nothing is published for a framing species, the least of those that are.
_LEAST_ACROSS = 2.3
_CRUSHED = (
    "The leg presses its edge into what is behind it more than that can take, and two rows of screws with a crushed "
    "edge are not covered here: make the couple smaller or the steel wider."
)


class StationRow:
    """Writes the row of one place under one load. `index` is the place's number; None where nobody knows the places."""

    def __init__(self, ground: Ground, support: Support, index: int | None, load: Load, demands: Demands) -> None:
        self._ground, self._support, self._load, self._demands = ground, support, load, demands
        self._index = index

    def write(self, start: Callable[[Desk], None]) -> Row:
        """The finished row; `start` fills in what every row of a load has."""
        support = self._support
        desk = Desk(STATION_LOAD, self._pointer(), support.pointer, self._label())
        start(desk)
        desk.set("support", support.kind, support.pointer)
        desk.set("is_return", support in self._ground.path.returns, support.pointer)
        desk.get("screws", lambda: float(self._place(desk).screws))
        desk.get("sharing", lambda: self._demand(desk).sharing)
        desk.get("side_force", lambda: self._demand(desk).side)
        desk.get("steel_force", lambda: self._demand(desk).steel)
        desk.get("couple", lambda: self._demand(desk).couple)
        desk.get("screw_side_force", lambda: _each(desk, self._demand(desk).side, self._place(desk)))
        desk.get("screw_pull", lambda: max(self._pulls(desk), key=lambda line: line.value))
        desk.get("side_strength", lambda: self._kept(desk, ("side", self._load.duration), self._side))
        desk.get("pull_strength", lambda: self._kept(desk, ("pull", self._load.duration), self._pull))
        desk.get("both_use", lambda: self._both(desk, self._demand(desk).side))
        desk.get("both_use_unshared", lambda: self._unshared(desk))
        if support.kind == "angle":
            desk.get("leg_pull", lambda: self._kept(desk, ("leg", self._load), self._leg)[0])
            desk.get("leg_strength", lambda: self._kept(desk, ("leg", self._load), self._leg)[1])
        desk.get("head_sunk", lambda: self._kept(desk, "sunk", self._sunk))
        if not desk.known("head_sunk") or not desk.true("head_sunk"):
            desk.get("head_strength", lambda: self._least(desk, "pull_over", "screw"))
        if support.kind != "cleat":
            desk.get("hole_strength", lambda: self._least(desk, "hole_strength", "hole"))
        return desk.row()

    def _pointer(self) -> str:
        """The first hole of the place, as nearly as can be said without knowing it."""
        wall = [one for one in self._support.drillings if one.leg == "wall"]
        if self._index is not None and self._index < len(wall):
            return wall[self._index].pointer
        return wall[0].pointer if wall else self._support.pointer

    def _label(self) -> str:
        said = f" under {self._load.case}" if self._load.case != "own weight" else " under its own weight"
        if self._index is None:
            return f"the places of {self._support.label}{said}"
        return f"place {self._index + 1} of {self._support.label}{said}"

    def _place(self, desk: Desk) -> Place:
        return self._ground.places_on(desk, self._support)[self._index or 0]

    def _demand(self, desk: Desk) -> Demand:
        return self._demands(desk)[self._index or 0]

    def _pulls(self, desk: Desk) -> tuple[Worked, ...]:
        return self._kept(desk, ("pulls", self._load), self._work_pulls)

    def _kept(self, desk: Desk, key: Hashable, work: Callable[[Desk], T]) -> T:
        return self._ground.once((id(self._support), self._index, key), desk, work)

    def _least(self, desk: Desk, field: str, which: str) -> Given:
        return self._kept(desk, field, lambda own: _least(own, self._place(own), field, which))

    def _work_pulls(self, desk: Desk) -> tuple[Worked, ...]:
        """Pull on a screw of each row, the row nearest the heel first, N."""
        demand, place, support = self._demand(desk), self._place(desk), self._support
        if demand.pulls:
            return tuple(_per_screw(line, len(row)) for line, row in zip(demand.pulls, place.rows, strict=True))
        down: wall_leg.WallLeg = "up" if support.wall_leg == "up" else "down"
        leg = desk.length(support.wall_leg_size)
        width, crush = self._kept(desk, "bearing", lambda own: self._bearing(own, place))
        if len(place.rows) == 1:
            heel = place.rows[0][0].heel
            try:
                line = wall_leg.on_lining(demand.couple, down, heel, leg, width, crush).pull
            except OutsideRulebook:
                # The pull is more than with a firm edge. Where that is too much already there is a number to show.
                line = wall_leg.pull(demand.couple, wall_leg.lever(down, heel, leg))
                if line.value <= si(self._kept(desk, ("pull", self._load.duration), self._pull)):
                    raise
            return (_per_screw(line, len(place.rows[0])),)
        lines = wall_leg.pulls_of_rows(demand.couple, down, [row[0].heel for row in place.rows], leg)
        reach = max(row[0].heel for row in place.rows) if down == "up" else leg - min(row[0].heel for row in place.rows)
        kept = (0.15 if down == "up" else 0.25) * reach
        if sum(line.value for line in lines) > 2 * kept * crush * width * (1 + 1e-9):
            raise OutsideRulebook(_CRUSHED)
        return tuple(_per_screw(line, len(row)) for line, row in zip(lines, place.rows, strict=True))

    def _bearing(self, desk: Desk, place: Place) -> tuple[float, float]:
        """Length of leg that bears (mm) and what it bears on may take (MPa): the lining, or the wood behind it."""
        support = self._support
        if support.kind == "cleat":
            width = self._pitch(desk, place)
        else:
            width = min(
                float(si(lever.width)) for _, lever in self._kept(desk, "levers", lambda own: self._levers(own, place))
            )
        if support.lining_behind.value == "left in place":
            desk.need(support.lining_behind)
            return width, wall_leg.LINING_CRUSH
        framing = support.wall.framing if support.wall else None
        here = f"/walls/{support.wall_name}/framing"
        name = desk.word(Input(framing.species if framing else None, f"{here}/species"))
        framing_gravity(desk, Input(name, f"{here}/species"))
        across = tables().framing(name).bearing_across or _LEAST_ACROSS
        if any(one.drilling.holes.into.value is not None for one in place.all):
            return width, across
        return min(width, desk.length(stud_width(framing, here))), across

    def _pitch(self, desk: Desk, place: Place) -> float:
        """The shorter run beside the place, mm; all of the support where it is the only one."""
        places = self._ground.places_on(desk, self._support)
        runs = [abs(other.x - place.x) for other in places if other is not place]
        return min(runs) if runs else desk.length(self._support.length)

    def _levers(self, desk: Desk, place: Place) -> list[tuple[float, wall_leg.ScrewLever]]:
        """For each row its distance from the heel and the leg round its screw."""
        iron = self._ground.iron[id(self._support)].take(desk)
        pitch = self._pitch(desk, place)
        down: wall_leg.WallLeg = "up" if self._support.wall_leg == "up" else "down"
        found = []
        for row in place.rows:
            (head,) = numbers_of(desk, row[0].hole, "bearing_width")
            found.append((row[0].heel, _lever(down, row[0].heel, iron.wall, si(iron.to_toe), si(head), pitch)))
        return found

    def _leg(self, desk: Desk) -> tuple[Worked, Worked]:
        """The pull and the strength of the leg at the row where it is nearest to its strength."""
        place, iron = self._place(desk), self._ground.iron[id(self._support)].take(desk)
        pulls = self._pulls(desk)
        down: wall_leg.WallLeg = "up" if self._support.wall_leg == "up" else "down"
        pairs = []
        for line, row, (_, lever) in zip(pulls, place.rows, self._levers(desk, place), strict=True):
            (hole,) = numbers_of(desk, row[0].hole, "diameter")
            strength = wall_leg.wall_leg_capacity(
                down, lever, thickness=iron.thickness, yield_stress=iron.steel.yield_stress, hole=si(hole)
            )
            pairs.append((_times(line, len(row)), strength))
        return max(pairs, key=lambda pair: si(pair[0]) / si(pair[1]))

    def _factors(self, desk: Desk, pull: factors.Pull) -> list[Worked]:
        place = self._place(desk)
        service = self._ground.service.take(desk)
        diameter = max(si(number_of(desk, one.screw, "diameter")) for one in place.all)
        found = [factors.load_duration(self._load.duration), factors.wet_service(service, pull, diameter)]
        if pull == "lateral":
            found.append(factors.group(diameter, len(place.rows)))
            if len(place.rows) > 1:
                heels = [row[0].heel for row in place.rows]
                found.append(factors.geometry(diameter, min(b - a for a, b in pairwise(heels))))
        return found

    def _side(self, desk: Desk) -> Worked:
        return factors.adjusted(
            _as_line(self._least(desk, "side_strength", "screw"), "Z"),
            *self._kept(desk, ("lateral", self._load.duration), lambda own: self._factors(own, "lateral")),
        )

    def _pull(self, desk: Desk) -> Worked:
        plain = _as_line(self._least(desk, "withdrawal", "screw"), "W_p")
        return withdrawal.pull_capacity(
            factors.adjusted(
                plain,
                *self._kept(desk, ("withdrawal", self._load.duration), lambda own: self._factors(own, "withdrawal")),
            ),
            self._least(desk, "root_strength", "screw"),
        )

    def _both(self, desk: Desk, side: Worked) -> Worked:
        """Both at once on the screw that is pulled most, which also carries its share of the weight."""
        desk.numbers("screw_pull", "side_strength", "pull_strength")
        pull = max(self._pulls(desk), key=lambda line: line.value)
        return combined.combined(
            side_force=abs(si(_each(desk, side, self._place(desk)))), pull=pull,
            side_capacity=desk.line("side_strength") or 0.0, pull_capacity=desk.line("pull_strength") or 0.0,
        ).use  # fmt: skip

    def _unshared(self, desk: Desk) -> Worked:
        """The same where no other place helps; where none does anyway, that is what was worked before."""
        demand, line = self._demand(desk), desk.line("both_use")
        if demand.alone is demand.side and line is not None:
            desk.number("both_use")
            return line
        return self._both(desk, demand.alone)

    def _sunk(self, desk: Desk) -> bool:
        return (
            any(of_row(desk, one.hole, "head_style") in LET_IN for one in self._place(desk).all)
            and self._support.kind != "cleat"
        )


def _least(desk: Desk, place: Place, field: str, which: str) -> Given:
    found = [number_of(desk, one.screw if which == "screw" else one.hole, field) for one in place.all]
    return min(found, key=si)


def _as_line(given: Given, symbol: str) -> Worked:
    if isinstance(given, Worked):
        return given
    return Worked(symbol, "given", f"{symbol}_0", (Number(f"{symbol}_0", given, "N"),), given, "N", "given")


def _each(desk: Desk, side: Worked, place: Place) -> Worked:
    count = place.screws
    return Worked(
        "V_1", "weight on one screw", "abs(V) / n", (number("V", side, "N"), Number("n", float(count), "")),
        abs(si(side)) / count, "N", _STATICS, steps=steps(side),
    )  # fmt: skip


def _per_screw(line: Worked, count: int) -> Worked:
    if count == 1:
        return line
    return Worked(
        "T_1", "pull on one screw of the row", "T / n", (number("T", line, "N"), Number("n", float(count), "")),
        si(line) / count, "N", _STATICS, steps=(line,),
    )  # fmt: skip


def _times(line: Worked, count: int) -> Worked:
    if count == 1:
        return line
    return Worked(
        "T_r", "pull on all screws of the row", "T * n", (number("T", line, "N"), Number("n", float(count), "")),
        si(line) * count, "N", _STATICS, steps=(line,),
    )  # fmt: skip


@lru_cache(maxsize=512)
def _lever(
    down: wall_leg.WallLeg, heel: float, leg: float, to_toe: float, head: float, pitch: float
) -> wall_leg.ScrewLever:
    return wall_leg.screw_lever(down, gauge=heel, leg=leg, to_toe=to_toe, head=head, pitch=pitch)
