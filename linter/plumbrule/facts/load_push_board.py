"""One row for every push at a seat: which ends stop it, and what the screws up into the board have to hold."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import PUSH_LOAD
from plumbrule.facts.board_place import screw_spot
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.fastening import published_of
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import PUSH_ALONG, PUSH_OUT, Load
from plumbrule.facts.load_places import Rows
from plumbrule.facts.load_push import far_returns, stopped_by
from plumbrule.facts.reference import tables
from plumbrule.facts.row_field import numbers_of, of_row
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import cleat_gravity
from plumbrule.mechanics import factors, push
from plumbrule.mechanics.bearing_wood import steel_bearing_of, wood_bearing
from plumbrule.mechanics.given import Given, number, si, steps
from plumbrule.mechanics.lateral import side_strength
from plumbrule.mechanics.screw_length import bearing_length, require_penetration
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import Number, Worked

_ACROSS = 90.0
# Which way a slot runs so that it lets the board go.
_LETS_GO = {PUSH_OUT.case: "across the grain", PUSH_ALONG.case: "along the grain"}


def push_rows(ground: Ground, rows: Rows, start: Callable[[Desk, Load], None]) -> list[Row]:
    """The board under each push."""
    return [_Pushed(ground, rows, load).write(start) for load in ground.kinds.pushes()]


class _Pushed:
    def __init__(self, ground: Ground, rows: Rows, load: Load) -> None:
        self._ground, self._rows, self._load = ground, rows, load

    def write(self, start: Callable[[Desk, Load], None]) -> Row:
        ground, load, path = self._ground, self._load, self._ground.path
        desk = Desk(PUSH_LOAD, path.pointer, path.pointer, f"{path.name} under {load.case}")
        start(desk, load)
        desk.get("push", lambda: self._force(desk))
        desk.get("stopped_by", lambda: stopped_by(desk, ground))
        if load is PUSH_ALONG and desk.known("stopped_by") and desk.text("stopped_by") == "both ends":
            return desk.row()
        desk.get("screws", lambda: float(len(self._holding(desk))))
        if desk.known("screws") and desk.number("screws") == 0:
            return desk.row()
        desk.get("screw_force", lambda: self._worst(desk))
        desk.get("screw_strength", lambda: min((self._strength(desk, *one) for one in self._holding(desk)), key=si))
        return desk.row()

    def _force(self, desk: Desk) -> Given:
        self._ground.path.require("three sides", "cleats", "back angle alone", "brackets")
        force = self._ground.point(desk, self._load)
        assert force is not None
        return force

    def _holding(self, desk: Desk) -> list[tuple[Support, Drilling]]:
        """The screws that hold the board this way, within its ends. Raises Missing."""
        self._ground.path.require("three sides", "cleats", "back angle alone", "brackets")
        return self._ground.once((self._load, "seat screws"), desk, self._found)

    def _found(self, desk: Desk) -> list[tuple[Support, Drilling]]:
        ground, path = self._ground, self._ground.path
        supports = path.along_back
        if self._load is PUSH_ALONG:
            ends = far_returns(ground, stopped_by(desk, ground))
            # Brackets do not count along the wall, and nor does any screw in them.
            supports = (*(() if path.carried == "brackets" else supports), *ends)
        found = []
        for support in supports:
            for one in support.drillings:
                if one.leg != "seat" or self._slides(desk, one):
                    continue
                spot = screw_spot(desk, ground.placed, support, one)
                if spot.to_left >= 0 and spot.to_right >= 0:
                    found.append((support, one))
        return found

    def _slides(self, desk: Desk, one: Drilling) -> bool:
        holes = one.holes
        desk.need(Input(True, holes.slot.pointer))
        if holes.slot.value is None:
            return False
        return desk.word(Input(holes.slot_runs.value, holes.slot_runs.pointer)) == _LETS_GO[self._load.case]

    def _worst(self, desk: Desk) -> Worked:
        """All screws together take the push, the board turning on them as a rigid one."""
        ground, force = self._ground, self._force(desk)
        found = self._holding(desk)
        sizes = ground.sizes.take(desk)
        spots = [screw_spot(desk, ground.placed, support, one) for support, one in found]
        along = [spot.to_left for spot in spots]
        if len(found) == 1 or max(along) - min(along) < 1.0:
            count = 1.0 if self._load is PUSH_OUT else float(len(found))
            return Worked(
                "V_s", "push on one screw", "H / n", (number("H", force, "N"), Number("n", count, "")),
                si(force) / count, "N", "statics", steps=steps(force),
            )  # fmt: skip
        if self._load is PUSH_ALONG:
            reach = sizes.front - sizes.back
            return max((push.side_of_push(force, 0.0, reach, along, i) for i in range(len(along))), key=si)
        share = max((push.push_share(along, i, (0.0, sizes.length)) for i in range(len(along))), key=si)
        return Worked(
            "V_s", "push on the worst screw", "eta * H", (number("eta", share, ""), number("H", force, "N")),
            share.value * si(force), "N", "statics", steps=(share, *steps(force)),
        )  # fmt: skip

    def _strength(self, desk: Desk, support: Support, one: Drilling) -> Worked:
        ground, screw = self._ground, self._rows[id(one)][0]
        bite, tip, side, gravity, diameter, edge = (
            si(given) for given in numbers_of(
                desk, screw, "bite", "tip", "steel", "specific_gravity", "diameter", "edge_distance"
            )
        )  # fmt: skip
        row = published_of(str(of_row(desk, screw, "kind")), diameter)
        factors.loaded_edge(row.diameter, max(edge, 0.0), _ACROSS)
        if support.kind == "cleat":
            cleat = (ground.plan.model.cleats or {})[support.name]
            wood = cleat_gravity(desk, Input(cleat.species, f"{support.pointer}/species"))
            line = _reference(row, gravity, wood, "", side, bite, tip)
        else:
            line = _reference(row, gravity, 0.0, desk.word(support.steel), side, bite, tip)
        service = ground.service.take(desk)
        return factors.adjusted(
            line, factors.load_duration(self._load.duration), factors.wet_service(service, "lateral", row.diameter)
        )


@lru_cache(maxsize=256)
def _reference(
    row: Fastener, gravity: float, side_gravity: float, steel: str, side: float, bite: float, tip: float
) -> Worked:
    """Side strength of a screw up into a board, the wood loaded across its grain. Steel and board touch."""
    require_penetration(row.kind, row.diameter, bite, tip)
    bearing = steel_bearing_of(tables().steel(steel)) if steel else wood_bearing(side_gravity, row.diameter, _ACROSS)
    return side_strength(
        diameter=row.diameter, root_diameter=row.root_diameter, bending_yield=row.bending_yield,
        main_bearing=wood_bearing(gravity, row.diameter, _ACROSS), side_bearing=bearing,
        main_length=bearing_length(bite, tip), side_length=side, gap=0.0, grain_angle=_ACROSS,
    ).worked  # fmt: skip
