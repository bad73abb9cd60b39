"""One call of every public function of the load path, at several places of its range, for the rework test."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import (
    angle_beam,
    back_angle,
    board_strip,
    board_twist,
    bracket,
    cleat,
    continuous,
    front_drop,
    group,
    hold_down,
    leg,
    load_cases,
    loads,
    push,
    returns,
    sharing,
    slip,
    tables,
    wall_leg,
)
from plumbrule.mechanics.beam_loads import LineLoad, PointLoad
from plumbrule.mechanics.section import angle_section, sharp_angle

TABLES = tables.load()
A36 = TABLES.steel("A36")
STATIONS = [222.25 + 406.4 * i for i in range(6)]
TWO_INCH = angle_section(50.8, 50.8, 3.175, 6.35, TABLES.angle(50.8, 50.8, 3.175))
THIN = sharp_angle(76.2, 76.2, 2.0, 3.0)
STOUT = sharp_angle(40.0, 40.0, 6.0, 6.0)
PERSON = hold_down.BoardLoad("P", loads.person_load(), 385.0, True)
WEIGHT = hold_down.BoardLoad("W", loads.board_weight(0.6, 1524, 381, 44.45), 195.0, False)
TOE = hold_down.toe(50.8)


def beam() -> continuous.ContinuousBeam:
    """Uneven spans, overhangs, a load on an end, on a support, in a span and in both overhangs."""
    return continuous.continuous_beam(
        3000.0,
        [200.0, 900.0, 1300.0, 2500.0],
        points=[PointLoad(at, 100.0 + at / 10) for at in (0.0, 150.0, 900.0, 1000.0, 1250.0, 2500.0, 2700.0, 3000.0)],
        lines=[LineLoad(0.0, 3000.0, 0.4), LineLoad(100.0, 1100.0, loads.seat_line_load())],
    )


def _moments() -> list[Any]:
    found = beam()
    return [found.moment(at) for at in (0, 100, 200, 500, 900, 1200, 2499, 2500, 2900, 3000)]


def _shared(count: int = 6) -> sharing.SharedPerson:
    stations = [200.0 + 400.0 * i for i in range(count)]
    screw = slip.slip_stiffness(0.42, 6.35, 4.3942, 12.7)
    return sharing.shared_person(
        loads.person_load(), length=stations[-1] + 200, stations=stations,
        second_moment=sharing.stiffness_second_moment(TWO_INCH.second_moment, 12000.0, 381.0, 44.45),
        stiffness=sharing.position_stiffness(screw, 1),
    )  # fmt: skip


def _twist() -> board_twist.BoardTwist:
    return board_twist.board_twist(length=2463.8, depth=381, thickness=44.45, modulus=12000, shear_ratio=0.077)


def _around(way: wall_leg.WallLeg) -> wall_leg.ScrewLever:
    return wall_leg.screw_lever(way, gauge=31.75, leg=50.8, to_toe=9.525, head=15.875, pitch=406.4)


def _drop() -> front_drop.FrontDrop:
    held = hold_down.hold_down([PERSON, WEIGHT], toe=TOE, seat_row=31.75, screws=6)
    return front_drop.front_drop(
        wall_moment=hold_down.wall_moment([PERSON, WEIGHT], [1.0, 1.0]), front=385.0,
        rotation=front_drop.position_rotation(
            pull_stiffness=slip.pull_stiffness(6.35, 46.0), lever=wall_leg.lever("up", 31.75, 50.8),
            leg_width=_around("up").width, thickness=3.175,
        ),
        positions=4, beyond=336.0, pull=held.pull, contact=held.contact, toe=TOE, seat_row=31.75, to_toe=9.525,
        thickness=3.175, leg_length=774.0, seat_pull_stiffness=slip.pull_stiffness(4.166, 21.2), seat_screws=6,
    )  # fmt: skip


def _return_loads() -> list[Any]:
    cases: tuple[returns.ReturnCase, ...] = ("D", "S1 corner", "S1 midspan", "S2", "S3", "S5 corner")
    return [
        returns.return_load(case, person=loads.person_load(), line_load=1.75, weight=275.0, length=2463.8)
        for case in cases
    ]


LOAD_CALLS: dict[str, Callable[[], Any]] = {
    "combination_duration": lambda: [load_cases.combination_duration(cases) for cases in load_cases.COMBINATIONS],
    "board_weight": lambda: loads.board_weight(0.6, 2463.8, 381.0, 44.45),
    "steel_weight": lambda: loads.steel_weight(TWO_INCH.area, 2476.5),
    "weight_of": lambda: loads.weight_of(12.0),
    "person_load": lambda: [loads.person_load(), loads.person_load(900.0)],
    "seat_line_load": loads.seat_line_load,
    "seat_area_load": lambda: loads.seat_area_load(0.0048, 381.0),
    "storage_line_load": loads.storage_line_load,
    "lean_load": lambda: [loads.lean_load(height) for height in (450.0, 609.6, 1400.0, 1524.0, 2000.0)],
    "put_on_suddenly": lambda: loads.put_on_suddenly(loads.person_load()),
    "dropped": lambda: loads.dropped(loads.person_load(), 0.0, 5.0),
    "push_share": lambda: [push.push_share([50.0, 400.0, 800.0], i, (0.0, 900.0)) for i in range(3)],
    "push_couple": lambda: [
        push.push_couple(1112.0, h, leg, gauges, 50.8)
        for h in (3.0, 31.75, 47.6) for leg in ("up", "down") for gauges in ([31.75], [15.0, 35.0])
    ],
    "push_pulls": lambda: [push.push_pulls(1112.0, h, [15.0, 35.0], 50.8) for h in (3.0, 25.0, 47.6)],
    "bracket_push": lambda: push.bracket_push(1112.0, 38.0, 250.0, [40.0, 210.0], 30_000.0),
    "lumber_stress": lambda: [
        cleat.lumber_stress(TABLES.framing("spruce-pine-fir"), "No. 2", stress)
        for stress in ("bending", "shear", "bearing")
    ],
    "cleat_modulus": lambda: cleat.cleat_modulus(38.0, 89.0, 6.5),
    "cleat_moment_capacity": lambda: cleat.cleat_moment_capacity(5.4, 40_000.0),
    "cleat_shear_capacity": lambda: cleat.cleat_shear_capacity(0.84, 38.0, 89.0, 60.0, 43.0, 6.5),
    "person_on_beam": lambda: cleat.person_on_beam(30_000.0, 1112.0, 400.0, 60.0),
    "drawn_off": lambda: push.drawn_off(1112.0, 380.0, [50.0, 400.0, 800.0], 0),
    "side_of_push": lambda: push.side_of_push(1112.0, 80.0, 60.0, [50.0, 400.0, 800.0], 0),
    "joint_slip": lambda: slip.joint_slip(0.42, 6.35),
    "slip_stiffness": lambda: [slip.slip_stiffness(0.42, 6.35, 4.3942, gap) for gap in (0.0, 12.7, 25.4)],
    "pull_stiffness": lambda: slip.pull_stiffness(6.35, 46.8),
    "continuous_beam": lambda: [beam().reactions, beam().support_moments, _moments(), beam().greatest_moment()],
    "spread_load": lambda: back_angle.spread_load(1.75, 275.0, 2463.8),
    "spread_reactions": lambda: back_angle.spread_reactions(1.86, STATIONS, 2476.5).reactions,
    "stiffness_second_moment": lambda: sharing.stiffness_second_moment(78668.0, 12000.0, 381.0, 44.45),
    "position_stiffness": lambda: sharing.position_stiffness(730.0, 2),
    "shared_person": lambda: [_shared(count) for count in (4, 6, 23)],
    "person_force": lambda: [
        back_angle.person_force(case, loads.person_load(), share)
        for case in ("S1", "S3", "S5")
        for share in (None, _shared().inside)
    ],
    "person_couple": lambda: [
        back_angle.person_couple(case, loads.person_load(), 50.8, _twist().drop_of_point(1112.0), depth)
        for case in ("S1", "S3", "S5") for depth in (381.0, 150.0)
    ],
    "spread_couple": lambda: [back_angle.spread_couple(850.0, 50.8, 8.0, depth) for depth in (381.0, 200.0)],
    "greatest_spread_force": lambda: [
        back_angle.greatest_spread_force(back_angle.spread_reactions(1.86, places, 2476.5), 8.0)
        for places in (STATIONS, [100.0, 600.0, 1200.0, 1800.0, 2400.0], [300.0, 2000.0])
    ],
    "return_load": _return_loads,
    "return_forces": lambda: [
        returns.return_forces(load, 385.8, places)
        for load in _return_loads()
        for places in ([50.0, 330.0], [50.0, 210.0, 368.0])
    ],
    "return_couple": lambda: [returns.return_couple(case, -230.0, 50.8) for case in ("S1 corner", "S2", "D")],
    "return_front_force": lambda: [
        returns.return_front_force(
            loads.person_load(), 385.8, [50.0, 210.0, 368.0], second_moment=TWO_INCH.second_moment, screw_stiffness=k,
            screws=2,
        )
        for k in (100.0, 4700.0)
    ],
    "return_drop": lambda: returns.return_drop(600.0, 385.8, [50.0, 330.0], 730.0, 1),
    "board_twist": lambda: [
        _twist(), _twist().drop_of_point(1112.0), _twist().moment_of_point(1112.0), _twist().drop_of_spread(1.86),
    ],
    "front_strip": lambda: [
        board_strip.front_strip(length, 381.0, lengthwise_check=check, crack_to_front=crack)
        for length in (1500.0, 4000.0) for check in (True, False) for crack in (None, 90.0)
    ],
    "person_bending": lambda: [
        board_strip.person_bending(case, 1112.0, 2463.8, 190.5, 44.45) for case in ("S1", "S3", "S5")
    ],
    "spread_bending": lambda: [board_strip.spread_bending(1.86, length, 381.0, 44.45) for length in (800.0, 2463.8)],
    "person_shear": lambda: board_strip.person_shear(1112.0, 190.5, 44.45),
    "across_moment": lambda: [
        *(board_strip.across_moment(case, 1112.0, 2463.8) for case in ("S1", "S3", "S5")),
        board_strip.across_moment("S2", 1.75, 2463.8),
    ],
    "across_stress": lambda: board_strip.across_stress(133.0, 44.45),
    "corner_hold_down": lambda: [
        board_strip.corner_hold_down(case, person=1112.0, line_load=1.75, weight=275.0, length=2463.8, front_drop=7.0)
        for case in ("S1", "S2", "S3", "S5")
    ],
    "toe": lambda: TOE,
    "hold_down": lambda: [
        hold_down.hold_down(loaded, toe=TOE, seat_row=31.75, screws=6)
        for loaded in ([PERSON], [WEIGHT], [PERSON, WEIGHT],
                       [hold_down.BoardLoad("P", 100.0, 20.0, True), hold_down.BoardLoad("q", 50.0, 40.0, False)])
    ],
    "wall_moment": lambda: [hold_down.wall_moment([PERSON, WEIGHT], s) for s in ([1.0, 1.0], [0.5, 0.27])],
    "toe_of_fillet_moment": lambda: hold_down.toe_of_fillet_moment([PERSON, WEIGHT], 9.525),
    "beyond_toe": lambda: hold_down.beyond_toe([PERSON, WEIGHT], TOE),
    "greatest_overhang": lambda: hold_down.greatest_overhang(1112.0, 620.0, toe=TOE, seat_row=31.75, screws=6),
    "effective_width": lambda: [
        hold_down.effective_width(beyond, 1524.0, at_end=end, along_wall=along)
        for beyond in (0.0, 336.0, 900.0) for end in (True, False) for along in (True, False)
    ],
    "across_at_toe": lambda: hold_down.across_at_toe([PERSON, WEIGHT], TOE, 774.0, 1524.0),
    "per_width": lambda: hold_down.per_width("m", "bending", [PERSON, WEIGHT], 9.525, "k", 774.0, 1524.0),
    "station_share": lambda: [wall_leg.station_share(n, 406.4, width) for n in (1, 4, 9) for width in (100.0, 774.0)],
    "lever": lambda: [wall_leg.lever(way, 31.75, 50.8) for way in ("up", "down")],
    "pull": lambda: wall_leg.pull(30000.0, 27.0),
    "pulls_of_rows": lambda: [
        wall_leg.pulls_of_rows(30000.0, way, rows, 50.8)
        for way in ("up", "down") for rows in ([31.75], [15.875, 41.275])
    ],
    "on_lining": lambda: [
        wall_leg.on_lining(couple, way, 31.75, 50.8, 82.55)
        for way, couples in (("up", (9000.0, 45000.0, 80000.0)), ("down", (9000.0, 30000.0)))
        for couple in couples
    ],
    "screw_lever": lambda: [_around(way) for way in ("up", "down")],
    "wall_leg_capacity": lambda: [
        wall_leg.wall_leg_capacity(way, _around(way), thickness=3.175, yield_stress=A36.yield_stress, hole=7.9375)
        for way in ("up", "down")
    ],
    "leg_moment": lambda: leg.leg_moment([PERSON, WEIGHT], 9.525, 774.0, 1524.0),
    "leg_capacity": lambda: [
        leg.leg_capacity(limit, 3.175, A36.yield_stress) for limit in ("strength", "no lasting set", "lasting load")
    ],
    "leg_shear_capacity": lambda: leg.leg_shear_capacity(3.175, A36.yield_stress, 100.0),
    "leg_under_edge": lambda: leg.leg_under_edge(1112.0, TOE, 9.525),
    "torque_between": lambda: leg.torque_between(0.5, 1112.0, 385.0),
    "torque_capacity": lambda: leg.torque_capacity(A36.yield_stress, TWO_INCH.torsion, 3.175),
    "radius_clash": lambda: leg.radius_clash(3.0, 1.6, 6.35),
    "position_rotation": lambda: _drop().from_wall_screws,
    "front_drop": _drop,
    "held_capacity": lambda: angle_beam.held_capacity(TWO_INCH, A36.yield_stress),
    "free_stretch": lambda: angle_beam.free_stretch(TWO_INCH, A36.yield_stress),
    "pressed_tip_capacity": lambda: [
        angle_beam.pressed_tip_capacity(angle, A36.yield_stress) for angle in (STOUT, TWO_INCH, THIN)
    ],
    "overhang_reaction": lambda: angle_beam.overhang_reaction(1112.0, 100.0, 406.4),
    "idle_screw_load": lambda: angle_beam.idle_screw_load(78668.0, 406.4, 0.79),
    "bracket_screws": lambda: bracket.bracket_screws(500.0, 250.0, 200.0, [10.0, 40.0, 180.0]),
    "arm_moment": lambda: bracket.arm_moment(500.0, 250.0, 6.0, 30.0),
    "unbraced_drop": lambda: bracket.unbraced_drop(500.0, 250.0, 30.0, 30.0, 5.0),
    "brace": lambda: [bracket.brace(500.0, out, 200.0, 180.0) for out in (150.0, 250.0)],
    "nearer_bracket": lambda: bracket.nearer_bracket(500.0, 80.0, 600.0),
    "require_reach": lambda: [bracket.require_reach(front, 200.0) for front in (180.0, 240.0)],
    "uneven_bending": lambda: bracket.uneven_bending(3.5),
    "across_on_arms": lambda: [
        bracket.across_on_arms(case, 1112.0, front, 280.0)  # type: ignore[arg-type]
        for case in ("S1", "S3", "S5")
        for front in (250.0, 300.0, 400.0)
    ],
    "drop_beyond": lambda: [bracket.drop_beyond(2.5, front, 280.0) for front in (250.0, 340.0)],
    "held_by_seat_screws": lambda: bracket.held_by_seat_screws(0.15, 1112.0),
    "screw_group": lambda: group.screw_group([(0.0, 0.0), (30.0, 10.0), (5.0, 70.0)]),
    "in_plane": lambda: group.in_plane(
        group.screw_group([(0.0, 0.0), (30.0, 10.0), (5.0, 70.0)]), across=30.0, up=-400.0, couple=9000.0
    ),
    "vertical_line": lambda: group.vertical_line(400.0, 90.0, 4, 75.0),
    "out_of_plane": lambda: [
        group.out_of_plane(9000.0, [10.0, 70.0], pivot=True), group.out_of_plane(9000.0, [-30.0, 30.0], pivot=False),
    ],
}  # fmt: skip
