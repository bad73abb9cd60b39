"""What the load path answers to measures that cannot be and to plans it does not cover: a reason, never a number."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from worked_examples import ANGLE, LEG, PERSON, TOE

from plumbrule.mechanics import (
    angle_beam,
    back_angle,
    board_strip,
    board_twist,
    bracket,
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
    wall_leg,
)
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook

NAN = float("nan")
P = hold_down.BoardLoad("P", PERSON, 300.0, True)

IMPOSSIBLE: dict[str, Callable[[], object]] = {
    "a board without length": lambda: loads.board_weight(0.6, 0.0, 300.0, 40.0),
    "a board of no known length": lambda: loads.board_weight(0.6, NAN, 300.0, 40.0),
    "a negative mass": lambda: loads.weight_of(-1.0),
    "a person of nothing": lambda: loads.person_load(0.0),
    "screws beyond the leg": lambda: push.push_couple(1000.0, 40.0, "up", [55.0], 50.8),
    "rows of a push out of order": lambda: push.push_couple(1000.0, 40.0, "down", [40.0, 20.0], 50.8),
    "bracket screws all at the lower end": lambda: push.bracket_push(1000.0, 30.0, 250.0, [10.0, 20.0], 0.0),
    "loads that nobody adds": lambda: load_cases.combination_words(("S1", "S2")),
    "a negative gap": lambda: slip.slip_stiffness(0.42, 6.35, 4.4, -1.0),
    "a position without screws": lambda: sharing.position_stiffness(700.0, 0),
    "a case of its own": lambda: returns.return_load(
        "S4", person=PERSON, line_load=1.0, weight=1.0, length=2000.0  # type: ignore[arg-type]
    ),
    "two people on a short board": lambda: returns.return_load(
        "S3", person=PERSON, line_load=1.0, weight=1.0, length=500.0
    ),
    "stations out of order": lambda: returns.return_forces(PERSON, 300.0, [200.0, 100.0]),
    "a station in front of the board": lambda: returns.return_front_force(
        PERSON, 300.0, [100.0, 320.0], second_moment=ANGLE.second_moment, screw_stiffness=700.0, screws=1
    ),
    "wood as stiff in shear as in bending": lambda: board_twist.board_twist(
        length=1000.0, depth=300.0, thickness=40.0, modulus=9000.0, shear_ratio=0.6
    ),
    "a corner of no case": lambda: board_strip.corner_hold_down(
        "D", person=PERSON, line_load=1.0, weight=1.0, length=900.0, front_drop=1.0  # type: ignore[arg-type]
    ),
    "seat screws at the toe": lambda: hold_down.hold_down([P], toe=TOE, seat_row=49.6, screws=4),
    "no seat screw": lambda: hold_down.hold_down([P], toe=TOE, seat_row=30.0, screws=0),
    "no load": lambda: hold_down.hold_down([], toe=TOE, seat_row=30.0, screws=4),
    "two loads of one name": lambda: hold_down.hold_down([P, P], toe=TOE, seat_row=30.0, screws=4),
    "a share too few": lambda: hold_down.wall_moment([P], []),
    "a negative load": lambda: hold_down.beyond_toe([hold_down.BoardLoad("P", -1.0, 300.0, True)], TOE),
    "no station for a share": lambda: wall_leg.station_share(0, 400.0, 300.0),
    "a row beyond the leg": lambda: wall_leg.lever("up", 51.0, LEG),
    "rows out of order": lambda: wall_leg.pulls_of_rows(1000.0, "up", [40.0, 20.0], LEG),
    "a screw in the fillet": lambda: wall_leg.screw_lever(
        "up", gauge=9.0, leg=LEG, to_toe=9.5, head=12.0, pitch=400.0
    ),
    "a hole wider than the leg beside it": lambda: wall_leg.wall_leg_capacity(
        "down", wall_leg.screw_lever("down", gauge=50.0, leg=LEG, to_toe=9.5, head=1.0, pitch=400.0),
        thickness=3.0, yield_stress=248.0, hole=12.0,
    ),
    "a leg without a flat": lambda: leg.leg_under_edge(PERSON, 9.0, 9.5),
    "a limit of no name": lambda: leg.leg_capacity("guess", 3.0, 248.0),  # type: ignore[arg-type]
    "a drop without screws": lambda: front_drop.front_drop(
        wall_moment=1.0, front=300.0, rotation=1.0, positions=0, beyond=250.0, pull=1.0, contact=1.0, toe=TOE,
        seat_row=30.0, to_toe=9.5, thickness=3.0, leg_length=300.0, seat_pull_stiffness=1.0, seat_screws=1,
    ),
    "a bracket's screw off its upright": lambda: bracket.bracket_screws(100.0, 200.0, 150.0, [20.0, 160.0]),
    "a bracket held at its foot only": lambda: bracket.bracket_screws(100.0, 200.0, 300.0, [10.0, 20.0]),
    "a load at the bend": lambda: bracket.arm_moment(100.0, 5.0, 6.0, 30.0),
    "screws in one place": lambda: group.screw_group([(0.0, 0.0), (0.0, 0.0)]),
    "screws on both sides of an edge": lambda: group.out_of_plane(100.0, [-10.0, 20.0], pivot=True),
    "a negative overhang": lambda: angle_beam.overhang_reaction(100.0, -1.0, 400.0),
}  # fmt: skip

OUTSIDE: dict[str, Callable[[], object]] = {
    "a fall": lambda: loads.dropped(PERSON, 1.0, 5.0),
    "a return on one position": lambda: returns.return_forces(PERSON, 300.0, [100.0]),
    "a bracket on one screw": lambda: bracket.bracket_screws(100.0, 200.0, 150.0, [100.0]),
    "one screw under a couple": lambda: group.screw_group([(0.0, 0.0)]),
    "a line of one screw": lambda: group.vertical_line(100.0, 20.0, 1, 50.0),
    "a person shared by three": lambda: sharing.shared_person(
        PERSON, length=900.0, stations=[100.0, 400.0, 800.0], second_moment=1e5, stiffness=1e3
    ),
    "a board that turns too far, a person": lambda: back_angle.person_couple("S1", PERSON, LEG, 13.0, 300.0),
    "a board that turns too far, a full seat": lambda: back_angle.spread_couple(PERSON, LEG, 13.0, 300.0),
    "a board that turns too far, its corner": lambda: board_strip.corner_hold_down(
        "S1", person=PERSON, line_load=1.0, weight=1.0, length=900.0, front_drop=13.0
    ),
    "a lining that is crushed through": lambda: wall_leg.on_lining(5e5, "up", 31.75, LEG, 80.0),
}


@pytest.mark.parametrize("case", IMPOSSIBLE)
def test_what_cannot_be_is_named(case: str) -> None:
    with pytest.raises(NotPossible) as caught:
        IMPOSSIBLE[case]()
    assert len(str(caught.value)) > 15


@pytest.mark.parametrize("case", OUTSIDE)
def test_what_is_not_covered_gets_a_sentence(case: str) -> None:
    with pytest.raises(OutsideRulebook) as caught:
        OUTSIDE[case]()
    reason = caught.value.reason
    assert reason[0].isupper() and reason.endswith(".") and 40 < len(reason) < 260
