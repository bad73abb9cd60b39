"""Three plans worked by hand, in inches and pounds: what each is made of, for the tests that work them again.

Spruce-pine-fir studs, half an inch of gypsum, 2x2x1/8 angle of A36, wall leg up.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from plumbrule.mechanics import (
    back_angle,
    bearing_wood,
    board_twist,
    hold_down,
    loads,
    one_screw,
    returns,
    screw_length,
    sharing,
    slip,
    tables,
    wall_leg,
    withdrawal,
)
from plumbrule.mechanics.combined import Combined, combined
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.section import AngleSection, angle_section
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import from_si, to_si

TABLES = tables.load()
A36 = TABLES.steel("A36")
LAG = TABLES.fastener("lag screw", to_si(0.25, "in"))
NO_8, NO_10, NO_14 = (TABLES.wood_screw(gauge) for gauge in (8, 10, 14))
SPF = TABLES.framing("spruce-pine-fir").gravity


def inches(value: float) -> float:
    return to_si(value, "in")


def pounds(value: float) -> float:
    return to_si(value, "lbf")


def in_pounds(given: Given) -> float:
    return from_si(si(given), "lbf")


def in_inches(given: Given) -> float:
    return from_si(si(given), "in")


def in_inch_pounds(given: Given) -> float:
    return from_si(si(given), "in·lbf")


def in_psi(given: Given) -> float:
    return from_si(si(given), "psi")


LEG, STEEL, K = inches(2), inches(0.125), inches(0.375)
ANGLE: AngleSection = angle_section(LEG, LEG, STEEL, inches(0.25), TABLES.angle(LEG, LEG, STEEL))
TOE = hold_down.toe(LEG)


@dataclass(frozen=True, slots=True)
class WallScrew:
    """A screw through the leg into a stud or block: Z', W'p, slip stiffness, all with C_D 1.0."""

    fastener: Fastener
    side: Worked
    pull: Worked
    slip: Worked
    bite: Worked
    thread: Worked


def wall_screw(fastener: Fastener, length: float, layers: float, gap: float, grain: float = 0.0) -> WallScrew:
    bite = screw_length.penetration(inches(length), STEEL, inches(layers))
    thread = screw_length.thread_by_rule(fastener.kind, fastener.diameter, inches(length))
    side = one_screw.screw_side_strength(
        fastener, gravity=SPF, grain_angle=grain, loaded_edge_distance=inches(4), penetration=bite, gap=inches(gap),
        side_thickness=STEEL, side_bearing=bearing_wood.steel_bearing_of(A36),
    )  # fmt: skip
    pulled = one_screw.screw_withdrawal(fastener, gravity=SPF, penetration=bite, thread=thread)
    held = withdrawal.pull_capacity(pulled, withdrawal.root_tension(fastener.root_diameter))
    tip = screw_length.tip_length(fastener)
    return WallScrew(
        fastener, side.worked, held, slip.slip_stiffness(SPF, fastener.diameter, fastener.root_diameter, inches(gap)),
        bite, screw_length.thread_in_wood(fastener.kind, bite, thread, tip),
    )  # fmt: skip


def seat_screw(gravity: float) -> tuple[Worked, Worked]:
    """No. 8 x 1-1/4 through the seat leg into the board: thread in the board, and withdrawal."""
    bite = screw_length.penetration(inches(1.25), STEEL, 0.0)
    thread = screw_length.thread_by_rule("wood screw", NO_8.diameter, inches(1.25))
    held = screw_length.thread_in_wood("wood screw", bite, thread, screw_length.tip_length(NO_8))
    return held, withdrawal.withdrawal("wood screw", gravity, NO_8.diameter, held)


def cap(gauge: float, head: float, hole: float, pitch: float = 16.0, way: wall_leg.WallLeg = "up") -> Worked:
    around = wall_leg.screw_lever(
        way, gauge=inches(gauge), leg=LEG, to_toe=ANGLE.to_toe, head=inches(head), pitch=inches(pitch)
    )
    return wall_leg.wall_leg_capacity(way, around, thickness=STEEL, yield_stress=A36.yield_stress, hole=inches(hole))


@dataclass(frozen=True, slots=True)
class Station:
    """A row of the table of the examples."""

    side: float
    couple: float
    top: float
    use: Combined
    leg: float


def station(side: Given, couple: Given, screw: WallScrew, gauges: list[float], caps: list[Worked], c_d: float = 1.0
            ) -> Station:  # fmt: skip
    """One screw position: side force shared by its rows, the couple pulled through the top one."""
    rows = wall_leg.pulls_of_rows(couple, "up", [inches(g) for g in gauges], LEG)
    use = combined(
        side_force=si(side) / len(rows), pull=rows[-1], side_capacity=c_d * si(screw.side),
        pull_capacity=c_d * si(screw.pull),
    )  # fmt: skip
    leg = max(row.value / si(limit) for row, limit in zip(rows, caps, strict=True))
    return Station(in_pounds(side), in_inch_pounds(couple), in_pounds(rows[-1]), use, leg)


@dataclass(frozen=True, slots=True)
class Alcove:
    """One of the two ways the alcove seat was drawn."""

    back: WallScrew
    back_rows: list[float]
    back_caps: list[Worked]
    side: WallScrew
    side_rows: list[float]
    side_caps: list[Worked]
    side_stations: list[float]


BOARD = {"length": inches(97), "depth": inches(15), "thickness": inches(1.75)}
ASH, CEDAR = TABLES.board("white ash"), TABLES.board("western redcedar")
FRONT = STEEL + inches(1 / 16) + inches(15)
WEIGHT = loads.board_weight(ASH.gravity, **BOARD)
PERSON = loads.person_load()
FULL = loads.seat_line_load()
assert ASH.elastic_modulus is not None
TWIST = board_twist.board_twist(**BOARD, modulus=ASH.elastic_modulus, shear_ratio=board_twist.SHEAR_RATIO["white ash"])
BACK = [inches(8.75 + 16 * i) for i in range(6)]
BACK_LENGTH = inches(97.5)

_LAG_A = wall_screw(LAG, 3, 0.5, 0.5)
_LAG_B = wall_screw(LAG, 3.5, 0.0, 0.0)
_SCREW_B = wall_screw(NO_14, 3.5, 0.0, 0.0, grain=90.0)
_CAP_A = [cap(1.25, 0.625, 0.3125)]
_HEAD_14 = in_inches(NO_14.head or 0.0)
DRAWN_FIRST = Alcove(_LAG_A, [1.25], _CAP_A, _LAG_A, [1.25], _CAP_A, [inches(2), inches(13)])
DRAWN_AGAIN = Alcove(
    _LAG_B, [0.625, 1.625], [cap(g, 0.4375, 0.28125) for g in (0.625, 1.625)],
    _SCREW_B, [0.625, 1.625], [cap(g, _HEAD_14, 0.28125) for g in (0.625, 1.625)],
    [inches(2), inches(8.25), inches(14.5)],
)  # fmt: skip


def spread_couple(force: Given, line_load: Given) -> Worked:
    drop = TWIST.drop_of_spread(back_angle.spread_load(line_load, WEIGHT, BOARD["length"]))
    return back_angle.spread_couple(force, LEG, drop, BOARD["depth"])


def shared(alcove: Alcove) -> sharing.SharedPerson:
    assert ASH.elastic_modulus is not None
    second = sharing.stiffness_second_moment(
        ANGLE.second_moment, ASH.elastic_modulus, BOARD["depth"], BOARD["thickness"]
    )
    spring = sharing.position_stiffness(alcove.back.slip, len(alcove.back_rows))
    return sharing.shared_person(PERSON, length=BACK_LENGTH, stations=BACK, second_moment=second, stiffness=spring)


def dead_reactions() -> Any:
    return back_angle.spread_reactions(back_angle.spread_load(0.0, WEIGHT, BOARD["length"]), BACK, BACK_LENGTH)


def back_person(alcove: Alcove, case: back_angle.PersonCase, *, share: bool, c_d: float = 1.0) -> Station:
    dead = dead_reactions().greatest_inside
    force = back_angle.person_force(case, PERSON, shared(alcove).inside if share else None)
    couple = back_angle.person_couple(case, PERSON, LEG, TWIST.drop_of_point(PERSON), BOARD["depth"])
    return station(
        si(force) + si(dead), si(couple) + si(spread_couple(dead, 0.0)), alcove.back, alcove.back_rows,
        alcove.back_caps, c_d,
    )  # fmt: skip


def back_full(alcove: Alcove) -> Station:
    load = back_angle.spread_load(FULL, WEIGHT, BOARD["length"])
    force = back_angle.greatest_spread_force(
        back_angle.spread_reactions(load, BACK, BACK_LENGTH), TWIST.drop_of_spread(load)
    )
    return station(force, spread_couple(force, FULL), alcove.back, alcove.back_rows, alcove.back_caps)


def return_at_front(alcove: Alcove, case: returns.ReturnCase) -> tuple[float, list[float], Station]:
    """R, the force on each position, and the front position's row of the table."""
    total = sum(
        si(returns.return_load(c, person=PERSON, line_load=FULL, weight=WEIGHT, length=BOARD["length"]))
        for c in ("D", case)
    )  # type: ignore[misc]
    forces = returns.return_forces(total, FRONT, alcove.side_stations)
    couple = returns.return_couple(case, forces[-1], LEG)
    row = station(forces[-1], couple, alcove.side, alcove.side_rows, alcove.side_caps)
    return in_pounds(total), [in_pounds(force) for force in forces], row
