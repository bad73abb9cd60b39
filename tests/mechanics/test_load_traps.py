"""Shortcuts in the load path that look right and are unsafe. Each test states a shortcut's figure and fails for it."""

from __future__ import annotations

import csv
import inspect
from pathlib import Path

import pytest
from worked_examples import (
    A36,
    ANGLE,
    ASH,
    BACK,
    BACK_LENGTH,
    BOARD,
    DRAWN_FIRST,
    FRONT,
    FULL,
    LEG,
    PERSON,
    STEEL,
    TOE,
    WEIGHT,
    K,
    cap,
    in_inches,
    in_pounds,
    inches,
    pounds,
    return_at_front,
    seat_screw,
    shared,
)

from plumbrule.mechanics import (
    angle_beam,
    back_angle,
    board_strip,
    board_twist,
    hold_down,
    leg,
    load_cases,
    loads,
    returns,
    sharing,
    wall_leg,
)
from plumbrule.mechanics.beam_loads import PointLoad
from plumbrule.mechanics.continuous import continuous_beam
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.reading.units import to_si

ROW = inches(1.25)
PLATES = Path(__file__).parents[1] / "plate" / "boards.csv"


def plates() -> list[dict[str, str]]:
    with PLATES.open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


# The back angle given half of the board.


def test_the_back_takes_the_full_depth_of_a_spread_load() -> None:
    """At mid-length a plate on firm hinges puts 0.93 of the load of its whole depth on the back, not half."""
    load = back_angle.spread_load(FULL, 0.0, BOARD["length"])
    assert load.value == FULL.value
    worst = max(float(row["hinged_back_q"]) / 10 for row in plates())
    assert 0.9 < worst < 1.0


def test_the_back_corners_are_pulled_up() -> None:
    """Nothing in "back half, front half" holds a corner down: on angles that give, plates lift it by up to 0.5 P."""
    worst = max(float(row["corner_p"]) / 250 for row in plates() if float(row["hinged_drop_p"]) <= 0.5)
    assert 0.4 < worst <= 0.5
    hold = board_strip.corner_hold_down(
        "S1", person=PERSON, line_load=0.0, weight=0.0, length=BOARD["length"], front_drop=5.0
    )
    assert hold.value == pytest.approx(0.5 * si(PERSON))


def test_two_people_pull_a_corner_up_twice() -> None:
    given = {"person": PERSON, "line_load": 0.0, "weight": 0.0, "length": BOARD["length"], "front_drop": 5.0}
    one, two = (board_strip.corner_hold_down(case, **given).value for case in ("S1", "S3"))  # type: ignore[arg-type]
    assert two == 2 * one
    assert max(float(row["corner_pp"]) for row in plates()) > 0.5 * 250


def test_weight_relieves_no_corner() -> None:
    def hold(weight: float) -> float:
        return board_strip.corner_hold_down(
            "S1", person=PERSON, line_load=0.0, weight=weight, length=BOARD["length"], front_drop=5.0
        ).value

    assert hold(0.0) == hold(1000.0)


# A front strip of half the depth for short boards.


@pytest.mark.parametrize("span", [36, 48, 58])
def test_a_short_board_has_a_narrow_front_strip(span: float) -> None:
    """Below L/b = 5 half the depth is more than plates bear out (0.42 to 0.95 of what they find under L/b 4)."""
    strip = board_strip.front_strip(inches(span), inches(15), lengthwise_check=False)
    assert in_inches(strip) == pytest.approx(span / 10)
    assert in_inches(strip) < 7.5


def test_a_crack_narrows_the_front_strip() -> None:
    whole, checked, cracked = (
        board_strip.front_strip(inches(97), inches(15), lengthwise_check=check, crack_to_front=crack)
        for check, crack in ((False, None), (True, None), (False, inches(3)))
    )
    assert in_inches(cracked) == pytest.approx(3)
    assert in_inches(checked) == pytest.approx(6)
    assert cracked.value < checked.value < whole.value


# Returns.


def test_a_return_on_one_screw_counts_as_absent() -> None:
    with pytest.raises(OutsideRulebook, match="absent"):
        returns.return_forces(PERSON, FRONT, [inches(9)])


def test_a_return_is_loaded_at_the_front_edge() -> None:
    """At mid depth two stations would share R evenly; at the front the front one takes 120 % of it."""
    load, forces, _ = return_at_front(DRAWN_FIRST, "S1 corner")
    assert forces[-1] > 1.18 * load
    assert forces[0] < 0
    assert sum(forces) == pytest.approx(load)


# The couple of the leg.


def test_a_spread_load_bears_on_the_tip_of_the_leg() -> None:
    """At mid leg the couple would be half of what it is."""
    couple = back_angle.spread_couple(100.0, LEG, 1.0, BOARD["depth"])
    assert couple.value == pytest.approx(100.0 * LEG)


def test_the_lever_is_not_that_of_a_rigid_leg() -> None:
    up, down = wall_leg.lever("up", ROW, LEG), wall_leg.lever("down", ROW, LEG)
    assert in_inches(up) == pytest.approx(1.0625) and in_inches(up) < 1.25
    assert in_inches(down) == pytest.approx(0.5625) and in_inches(down) < 0.75


def test_leg_down_is_not_leg_up() -> None:
    up, down = (wall_leg.pull(1000.0, wall_leg.lever(way, ROW, LEG)).value for way in ("up", "down"))
    assert down / up == pytest.approx(1.89, abs=0.01)


def test_with_the_leg_down_the_hole_belongs_near_the_heel() -> None:
    near, far = (wall_leg.pull(1000.0, wall_leg.lever("down", inches(g), LEG)).value for g in (0.6, 1.25))
    assert near < 0.6 * far


def test_stacked_rows_do_not_share_a_couple_evenly() -> None:
    low, top = wall_leg.pulls_of_rows(1000.0, "up", [inches(0.625), inches(1.625)], LEG)
    assert top.value == pytest.approx(0.631 / 25.4 * 1000, rel=2e-3)
    assert low.value == pytest.approx(0.243 / 25.4 * 1000, rel=2e-3)


# Overhang and bearing.


def test_three_to_one_is_not_safe() -> None:
    """A 15 in. board on 4 in. of steel passes "overhang three times the bearing" and pulls on its screws 18.9 P."""
    loaded = [hold_down.BoardLoad("P", PERSON, FRONT, True)]
    held = hold_down.hold_down(loaded, toe=TOE, seat_row=ROW, screws=6)
    assert held.pull.value > 18 * si(PERSON)
    assert held.per_screw.value > 8 * seat_screw(ASH.gravity)[1].value
    limit = hold_down.greatest_overhang(PERSON, seat_screw(ASH.gravity)[1], toe=TOE, seat_row=ROW, screws=6)
    assert in_inches(limit) < 2


def test_screws_at_the_toe_hold_nothing_down() -> None:
    with pytest.raises(NotPossible, match="behind the toe"):
        hold_down.hold_down([hold_down.BoardLoad("P", PERSON, FRONT, True)], toe=TOE, seat_row=si(TOE), screws=6)


# Spreading a person too far.


def test_a_person_does_not_spread_over_the_pitch_or_the_length() -> None:
    beyond = FRONT - si(TOE)
    inside, end = (
        hold_down.effective_width(beyond, inches(97), at_end=at_end, along_wall=True).value for at_end in (False, True)
    )
    assert end < inside < inches(97)
    across = hold_down.effective_width(beyond, inches(97), at_end=False, along_wall=False).value
    assert (across - inches(4)) == pytest.approx(0.375 * (inside - inches(4)))


def test_the_end_of_a_shelf_is_its_weak_place() -> None:
    beyond = FRONT - si(TOE)
    shares = [
        wall_leg.station_share(
            6, inches(16), hold_down.effective_width(beyond, inches(97), at_end=at_end, along_wall=True)
        ).value
        for at_end in (False, True)
    ]
    assert shares[0] < shares[1]


# Sharing between screws.


@pytest.mark.parametrize(
    ("change", "word"),
    [
        ({}, "shared"),
        ({"positions": 3}, "few positions"),
        ({"spliced": True}, "spliced"),
        ({"hole_over": inches(3 / 32)}, "loose holes"),
        ({"mode": "I_s"}, "screws too soft"),
        ({"mode": "II"}, "screws too soft"),
        ({"returns": 1}, "returns missing"),
    ],
)
def test_screws_share_a_person_only_when_all_of_it_is_so(change: dict[str, object], word: str) -> None:
    given: dict[str, object] = {
        "positions": 6, "spliced": False, "hole_over": inches(1 / 16), "mode": "III_s", "returns": 2,
    }  # fmt: skip
    assert sharing.sharing_word(**(given | change)) == word  # type: ignore[arg-type]


def test_unshared_a_person_stands_on_one_position() -> None:
    assert back_angle.person_force("S1", PERSON, None).value == si(PERSON)
    assert back_angle.person_force("S1", PERSON, shared(DRAWN_FIRST).inside).value < si(PERSON)


def test_one_loose_screw_idles() -> None:
    """1/32 in. of slack under 2x2x1/8 takes 251 lbf over two pitches of 16 in. before the screw helps at all."""
    found = angle_beam.idle_screw_load(ANGLE.second_moment, inches(16), inches(1 / 32))
    assert in_pounds(found) == pytest.approx(251, abs=0.5)
    stiff = 48 * 29e6 * 0.189 / 16**3
    assert stiff == pytest.approx(64000, rel=0.005)
    assert pytest.approx(32, abs=0.5) == (48 * 29e6 * 0.189 / 8340) ** (1 / 3)


def test_even_supports_do_not_take_even_shares() -> None:
    """Not w s a screw: the ends and their neighbours take up to a quarter more, and some may be lifted."""
    even = back_angle.spread_reactions(1.0, [inches(16 * i) for i in range(6)], inches(80))
    shares = [reaction.value / inches(16) for reaction in even.reactions]
    assert max(shares) == pytest.approx(43 / 38)  # Civil Engineering Formulas, Table 2.1
    drawn = back_angle.spread_reactions(1.0, BACK, BACK_LENGTH)
    assert drawn.greatest.value / inches(16) == pytest.approx(1.13, abs=0.005)
    lifted = continuous_beam(3000.0, [0.0, 1000.0, 2000.0, 3000.0], points=[PointLoad(500.0, 1000.0)])
    assert lifted.reactions[2].value == pytest.approx(-150)


# Duration.


def test_people_sit_at_ten_years_and_steel_has_no_duration() -> None:
    assert load_cases.combination_duration(("D", "S1")).value == 1.0
    assert load_cases.combination_duration(("D", "S2")).value == 1.0
    assert load_cases.combination_duration(("D", "S5")).value == 1.6  # never 2.0
    assert load_cases.combination_duration(("D", "S6")).value == 0.9
    assert load_cases.combination_duration(("D", "S6", "S7")).value == 1.0
    for function in (leg.leg_capacity, wall_leg.wall_leg_capacity, leg.torque_capacity, angle_beam.held_capacity):
        assert not {"duration", "c_d"} & set(inspect.signature(function).parameters)


def test_the_lasting_part_is_tried_alone() -> None:
    assert load_cases.COMBINATIONS[0] == ("D",)
    assert load_cases.combination_duration(("D",)).value == 0.9


def test_loads_of_people_are_not_added_up() -> None:
    with pytest.raises(NotPossible):
        load_cases.combination_duration(("D", "S1", "S4"))
    people = {"S1", "S2", "S3", "S4", "S5"}
    assert all(len(people & set(cases)) <= 1 for cases in load_cases.COMBINATIONS)


def test_a_fall_has_no_number() -> None:
    with pytest.raises(OutsideRulebook, match="dropped"):
        loads.dropped(PERSON, 10.0, 5.0)
    assert loads.dropped(PERSON, 0.0, 5.0).value == pytest.approx(2 * si(PERSON))


def test_what_binds_nobody_here_says_so() -> None:
    assert "No model building code" in load_cases.NO_CODE_LOAD
    assert load_cases.standing(("D",)) == "statics"
    assert all(load_cases.standing(cases) != "statics" for cases in load_cases.COMBINATIONS[1:])
    assert load_cases.standing(("D", "S1")) == "benchmark"
    assert load_cases.standing(("D", "S6", "S7")) == "advisory"
    assert loads.below_benchmark(pounds(200)) and not loads.below_benchmark(pounds(250))


def test_a_low_shelf_is_a_step() -> None:
    by_height = {20: 250, 23.9: 250, 24: 50, 59.9: 50, 60: 0, 80: 0}
    for height, force in by_height.items():
        assert in_pounds(loads.lean_load(inches(height))) == pytest.approx(force)


# Bending across and along the grain, and plates of even stiffness.


def test_a_plank_is_not_a_plate_of_even_stiffness() -> None:
    """Tables of plates held on three sides take wood as stiff across as along. Roark case 2a gives an ash board of
    97 x 15 x 1-3/4 half of the drop it has: 0.165 q b⁴/(E t³) with a/b below 0.5 is 0.36 of it at most."""
    assert ASH.elastic_modulus is not None
    twist = board_twist.board_twist(
        **BOARD, modulus=ASH.elastic_modulus, shear_ratio=board_twist.SHEAR_RATIO["white ash"]
    )
    drop = twist.drop_of_spread(FULL).value
    q = si(FULL) / BOARD["depth"]
    # Levy: alpha 0.0775 at a/b 0.5 and less below, b the free edge.
    table = 0.0775 * q * BOARD["length"] ** 4 / (ASH.elastic_modulus * BOARD["thickness"] ** 3) * (15 / 97 / 0.5) ** 2
    assert table < 0.8 * drop


def test_an_unknown_wood_twists_most() -> None:
    known = board_twist.SHEAR_RATIO.values()
    assert all(ratio > board_twist.SHEAR_RATIO_UNKNOWN for ratio in known)


# Figures from the text beside the formulas.


def test_bending_of_the_back_angle_rarely_governs() -> None:
    """A person midway in an end span: 6.2 of 21.6 ksi."""
    beam = continuous_beam(BACK_LENGTH, BACK, points=[PointLoad(inches(8.75 + 8), si(PERSON))])
    stress = beam.greatest_moment().value / ANGLE.modulus_tip.value
    allowed = angle_beam.held_capacity(ANGLE, A36.yield_stress).value / ANGLE.modulus_tip.value
    assert stress == pytest.approx(to_si(6.2, "ksi"), rel=0.02)
    assert allowed == pytest.approx(to_si(21.6, "ksi"), rel=0.003)


def test_free_angle_is_softer_and_drifts() -> None:
    free = angle_beam.free_stretch(ANGLE, A36.yield_stress)
    assert free.second_moment.value / ANGLE.second_moment.value == pytest.approx(0.64, abs=0.01)
    assert free.drift.value == pytest.approx(0.60, abs=0.01)
    assert free.capacity.value == pytest.approx(0.8 * angle_beam.held_capacity(ANGLE, A36.yield_stress).value)


def test_pressed_tip_of_a_two_inch_angle_does_not_govern() -> None:
    ratio = angle_beam.pressed_tip_capacity(ANGLE, A36.yield_stress).value
    assert ratio / angle_beam.held_capacity(ANGLE, A36.yield_stress).value == pytest.approx(1.46, abs=0.005)


def test_strip_by_45_degrees_is_narrower_than_ours_and_ours_is_narrower_than_prying_tables() -> None:
    around = wall_leg.screw_lever("up", gauge=ROW, leg=LEG, to_toe=ANGLE.to_toe, head=inches(0.625), pitch=inches(16))
    arm = si(around.arm)
    assert inches(0.625) + 2 * arm < si(around.width) <= inches(0.625) + 3.5 * arm
    down = cap(1.25, 0.625, 0.3125, way="down")
    assert down.value > 0
    assert si(leg.leg_under_edge(PERSON, TOE, K)) < si(leg.leg_capacity("strength", STEEL, A36.yield_stress))


# What is not known must not be readable as nothing.


def test_nothing_of_the_load_path_may_be_left_out() -> None:
    may_default = {"patch", "crush", "force", "intensity", "points", "lines", "crack_to_front"}
    modules = (angle_beam, back_angle, board_strip, board_twist, hold_down, leg, loads, returns, wall_leg)
    for module in modules:
        for name, function in inspect.getmembers(module, inspect.isfunction):
            if function.__module__ != module.__name__ or name.startswith("_"):
                continue
            for parameter in inspect.signature(function).parameters.values():
                if parameter.default is not inspect.Parameter.empty:
                    # The loads themselves have a benchmark, which a house may raise.
                    benchmark = module is loads and parameter.name in ("person", "lean")
                    assert benchmark or parameter.name in may_default, f"{name}: {parameter.name}"


def test_nothing_of_the_load_path_takes_none() -> None:
    with pytest.raises(TypeError):
        back_angle.spread_load(None, WEIGHT, BOARD["length"])  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        back_angle.person_couple("S1", PERSON, LEG, None, 381.0)  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        returns.return_forces(PERSON, None, [10.0, 20.0])  # type: ignore[arg-type]


def test_a_board_that_turns_too_far_gets_no_couple() -> None:
    with pytest.raises(OutsideRulebook, match="1/2 in"):
        back_angle.person_couple("S1", PERSON, LEG, inches(0.51), BOARD["depth"])
    assert back_angle.person_couple("S1", PERSON, LEG, inches(0.5), BOARD["depth"]).value > 0
