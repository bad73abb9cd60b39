"""What the load path of one board stands on: its sizes and place, its wood, its weight, its cracks, the room, and
the steel or wood under it. Each is worked once and taken by many rows."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from functools import lru_cache, partial
from typing import Any, NamedTuple, TypeVar

from plumbrule.catalogue.rows_loads import BOARD_LOAD
from plumbrule.facts.board_place import Placed, back_edge, left_end, recess
from plumbrule.facts.desk import Desk, Input, Once
from plumbrule.facts.load_chosen import Chosen
from plumbrule.facts.load_kinds import Kinds, Load
from plumbrule.facts.load_path import Path
from plumbrule.facts.load_places import Place, Rows, places_of
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics import allowable, board_twist, crack, loads, lumber_factors, section, stiffness
from plumbrule.mechanics.board_wood import published, solid_board
from plumbrule.mechanics.factors import Duration, Service
from plumbrule.mechanics.given import si
from plumbrule.mechanics.moisture import equilibrium_moisture
from plumbrule.mechanics.table_rows import Board, Steel
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.plan_file import Plan

T = TypeVar("T")

# Wood that stays over this moisture, %, is wet to the published factors.
_WET = 19.0
_STEEL_WEIGHT = 490 * 4.4482216152605 / 1728 / 25.4**3


class Sizes(NamedTuple):
    """A board in mm: its size, and its back and front edge from the heel of what lies behind it."""

    length: float
    depth: float
    thickness: float
    back: float
    front: float


class Iron(NamedTuple):
    """The steel of an angle: legs and thickness in mm, where its flat begins, its section and its metal."""

    wall: float
    seat: float
    thickness: float
    length: float
    to_toe: Worked
    section: section.AngleSection
    steel: Steel


class Cracks(NamedTuple):
    """What cracks leave of a board: the wood before the nearest one that parts it, and the share of its twist."""

    to_front: float | None
    shallow: float


class Ground:
    """What one board stands on."""

    def __init__(self, plan: Plan, path: Path, rows: Rows, chosen: Chosen) -> None:
        self.plan, self.path, self.rows = plan, path, rows
        self.placed = Placed(plan, path.name, path.board, path.supports)
        self.kinds = Kinds(plan, path, chosen)
        self.sizes = Once(BOARD_LOAD, self._sizes)
        self.wood = Once(BOARD_LOAD, self._wood)
        self.weight = Once(BOARD_LOAD, self._weight)
        self.cracks = Once(BOARD_LOAD, self._cracks)
        self.left = Once(BOARD_LOAD, lambda desk: left_end(desk, self.placed))
        self.service = Once(BOARD_LOAD, self._service)
        self.places = {id(one): Once(BOARD_LOAD, partial(places_of, plan, one, rows)) for one in path.supports}
        self.iron = {id(one): Once(BOARD_LOAD, partial(_iron, one)) for one in path.supports}
        self._loads: dict[tuple[Load, str], Once[Worked | float | None]] = {}
        self._kept: dict[Hashable, Once[Any]] = {}

    def once(self, key: Hashable, desk: Desk, work: Callable[[Desk], T]) -> T:
        """What `work` gives, worked once for every row that asks with the same key."""
        if key not in self._kept:
            self._kept[key] = Once(BOARD_LOAD, work)
        result: T = self._kept[key].take(desk)
        return result

    def places_on(self, desk: Desk, support: Support) -> tuple[Place, ...]:
        """The places of one support."""
        return self.places[id(support)].take(desk)

    def point(self, desk: Desk, load: Load) -> Worked | float | None:
        """The force of a load, N."""
        return self._load(load, "point").take(desk)

    def line(self, desk: Desk, load: Load) -> Worked | float | None:
        """The spread load of a load, N/mm."""
        return self._load(load, "line").take(desk)

    def _load(self, load: Load, which: str) -> Once[Worked | float | None]:
        if (load, which) not in self._loads:
            work = self.kinds.point if which == "point" else self.kinds.line
            self._loads[load, which] = Once(BOARD_LOAD, lambda desk: work(desk, load))
        return self._loads[load, which]

    def _sizes(self, desk: Desk) -> Sizes:
        placed, back = self.placed, self.path.behind
        edges = [placed.of(key) for key in ("length", "depth", "thickness")]
        desk.need_all(*edges, placed.gap("back"))
        length, depth, thickness = (desk.length(edge) for edge in edges)
        if self.path.carried == "brackets":
            behind = desk.length(placed.gap("back")) + recess(desk, back)
        else:
            behind = back_edge(desk, placed) + recess(desk, back)
        return Sizes(length, depth, thickness, behind, behind + depth)

    def _wood(self, desk: Desk) -> Board:
        return _species(desk.word(self.path.measure("species")))

    def _weight(self, desk: Desk) -> Worked:
        sizes, wood = self.sizes.take(desk), self.wood.take(desk)
        return loads.board_weight(published(wood, wood.gravity, "weight"), *sizes[:3])

    def _cracks(self, desk: Desk) -> Cracks:
        to_front: float | None = None
        shallow = 1.0
        thick = self.path.measure("thickness")
        for name, one in self.path.board.cracks.items():
            here = f"{self.path.pointer}/cracks/{name}"
            depth, front = Input(one.depth, f"{here}/depth"), Input(one.from_front, f"{here}/from_front")
            desk.need_all(depth, thick)
            if crack.cuts_through(desk.length(depth), desk.length(thick)):
                to_front = min(desk.length(front), float("inf") if to_front is None else to_front)
            else:
                shallow = min(shallow, si(crack.twist_share(desk.length(depth), desk.length(thick))))
        return Cracks(to_front, shallow)

    def _service(self, desk: Desk) -> Service:
        site = self.plan.model.site
        cold = Input(site.temperature.coldest if site and site.temperature else None, "/site/temperature/coldest")
        damp = Input(site.humidity.dampest if site and site.humidity else None, "/site/humidity/dampest")
        desk.need_all(cold, damp)
        return _service(desk.length(cold), desk.length(damp))

    def quality(self, desk: Desk) -> allowable.Quality:
        """`sound front` for clear wood; anything else is taken as wood that nobody looked at."""
        at = f"{self.path.pointer}/grade"
        grade = self.path.board.grade
        if grade is None:
            desk.need(Input("unknown", at, "nothing is written: wood that nobody looked at is taken"))
        else:
            desk.need(Input(grade, at))
        return "sound front" if grade == "clear" else "unknown"

    def strength(self, desk: Desk, stress: allowable.Stress, load: Load) -> Worked:
        """The stress the board may carry under a load, MPa."""
        wood, service = self.wood.take(desk), self.service.take(desk)
        if stress == "bending":
            sizes = self.sizes.take(desk)
            return _bending(wood, sizes.thickness, self.quality(desk), load.duration, service)
        return _other(wood, stress, load.duration, service)

    def modulus(self, desk: Desk) -> Worked:
        """Stiffness along the grain, MPa."""
        return stiffness.board_modulus(self.wood.take(desk), self.service.take(desk))

    def shear_ratio(self, desk: Desk) -> float:
        """G/E of the board, half of it with a shallow crack. A species without a figure takes a low one."""
        at = self.path.measure("species")
        return board_twist.SHEAR_RATIO.get(desk.word(at), board_twist.SHEAR_RATIO_UNKNOWN) * (
            self.cracks.take(desk).shallow
        )


def steel_line(iron: Iron) -> float:
    """Weight of an angle per length, N/mm: 490 lb/ft³."""
    return si(iron.section.area) * _STEEL_WEIGHT


def _iron(support: Support, desk: Desk) -> Iron:
    desk.need_all(
        support.wall_leg_size, support.seat_leg_size, support.thickness, support.length, support.steel, support.fillet
    )
    wall, seat, thickness, length, fillet = (
        desk.length(source) for source in (support.wall_leg_size, support.seat_leg_size, support.thickness,
                                           support.length, support.fillet)
    )  # fmt: skip
    name = desk.word(support.steel)
    found, steel = _section(wall, seat, thickness, fillet, name)
    return Iron(wall, seat, thickness, length, found.to_toe, found, steel)


@lru_cache(maxsize=64)
def _section(
    wall: float, seat: float, thickness: float, fillet: float, name: str
) -> tuple[section.AngleSection, Steel]:
    steel = tables().steel(name)
    rolled = steel.formed in ("hot rolled", "unknown")
    row = tables().angle(wall, seat, thickness) if rolled else None
    return section.angle_section(wall, seat, thickness, fillet, row), steel


@lru_cache(maxsize=64)
def _species(name: str) -> Board:
    return solid_board(tables(), name)


@lru_cache(maxsize=64)
def _service(cold: float, damp: float) -> Service:
    return "damp" if equilibrium_moisture(cold, damp).value > _WET else "dry"


@lru_cache(maxsize=128)
def _bending(wood: Board, thickness: float, quality: allowable.Quality, duration: Duration, service: Service) -> Worked:
    return lumber_factors.adjusted_stress(
        allowable.bending_allowable(wood, thickness, quality),
        "bending",
        duration,
        service,
    )


@lru_cache(maxsize=128)
def _other(wood: Board, stress: allowable.Stress, duration: Duration, service: Service) -> Worked:
    reference = {
        "shear": allowable.shear_allowable, "bearing": allowable.bearing_allowable,
        "tension across": allowable.tension_across_allowable,
    }[stress](wood)  # fmt: skip
    return lumber_factors.adjusted_stress(reference, stress, duration, service)
