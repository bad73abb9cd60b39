"""Which way things go in the load path, whatever the numbers: more load, longer spans, thinner boards, fewer screws,
wider pitch and longer levers never help."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from worked_examples import A36, ANGLE, LEG, SPF, STEEL, TABLES, TOE

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
    loads,
    push,
    returns,
    sharing,
    slip,
    wall_leg,
)
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import OutsideRulebook

FEW = settings(max_examples=60, deadline=None)
forces, more = st.floats(10, 3000), st.floats(1.01, 3)
lengths, depths, thicknesses = st.floats(600, 3000), st.floats(150, 600), st.floats(18, 60)
gauges = st.floats(12, 45)
TIE = 1e-9


def not_above(smaller: float, larger: float) -> bool:
    return smaller <= larger + TIE * max(abs(smaller), abs(larger), 1.0)


def twist(length: float, depth: float, thickness: float, ratio: float = 0.06) -> board_twist.BoardTwist:
    return board_twist.board_twist(length=length, depth=depth, thickness=thickness, modulus=9000.0, shear_ratio=ratio)


# The board on three sides.


@FEW
@given(lengths, depths, thicknesses, forces, more)
def test_longer_thinner_or_softer_boards_never_drop_less(span: float, b: float, t: float, p: float, f: float) -> None:
    base = twist(span, b, t)
    for worse in (twist(span * f, b, t), twist(span, b, t / f), twist(span, b, t, 0.06 / f)):
        assert not_above(base.drop_of_point(p).value, worse.drop_of_point(p).value)
        assert not_above(base.drop_of_spread(p / 1000).value, worse.drop_of_spread(p / 1000).value)
    assert base.drop_of_point(p * f).value == pytest.approx(f * base.drop_of_point(p).value)


@FEW
@given(lengths, depths, thicknesses, forces, more)
def test_longer_or_thinner_boards_are_never_less_stressed(span: float, b: float, t: float, p: float, f: float) -> None:
    def stresses(length: float, thickness: float, load: float) -> list[float]:
        strip = board_strip.front_strip(length, b, lengthwise_check=False)
        return [
            board_strip.person_bending("S1", load, length, strip, thickness).value,
            board_strip.spread_bending(load / 1000, length, b, thickness).value,
        ]

    for worse in (stresses(span * f, t, p), stresses(span, t / f, p), stresses(span, t, p * f)):
        assert all(not_above(mine, theirs) for mine, theirs in zip(stresses(span, t, p), worse, strict=True))


@FEW
@given(lengths, depths, st.floats(10, 300))
def test_a_crack_or_a_check_never_widens_the_strip(span: float, b: float, crack: float) -> None:
    whole = board_strip.front_strip(span, b, lengthwise_check=False).value
    checked = board_strip.front_strip(span, b, lengthwise_check=True).value
    cracked = board_strip.front_strip(span, b, lengthwise_check=False, crack_to_front=crack).value
    assert checked < whole
    assert cracked == min(whole, crack)


@FEW
@given(st.integers(4, 8), st.floats(250, 700), st.floats(100, 20000), st.floats(1e4, 1e6), more)
def test_a_softer_angle_or_stiffer_screws_never_share_better(
    count: int, pitch: float, spring: float, second: float, f: float
) -> None:
    def share(k: float, moment: float) -> sharing.SharedPerson:
        places = [150 + pitch * i for i in range(count)]
        return sharing.shared_person(
            1000.0, length=places[-1] + 150, stations=places, second_moment=moment, stiffness=k
        )

    base = share(spring, second)
    assert not_above(base.inside.value, share(spring * f, second).inside.value)
    assert not_above(base.inside.value, share(spring, second / f).inside.value)
    # A screw takes at least its even part, and about all of the person at most.
    assert 1000 / count - 1e-6 <= base.inside.value <= 1100
    assert base.end.value <= 1000
    assert base.end.value >= min(base.inside.value, 1000) - 1e-6


@FEW
@given(forces, st.floats(100, 500), st.floats(0.3, 0.9), more)
def test_a_return_is_never_helped_by_a_deeper_board_or_closer_screws(
    load: float, front: float, part: float, f: float
) -> None:
    first, last = 40.0, 40.0 + part * (front - 45)
    base = returns.return_forces(load, front, [first, last])
    assert not_above(base[-1].value, returns.return_forces(load, front * f, [first, last])[-1].value)
    closer = first + (last - first) / f
    assert not_above(base[-1].value, returns.return_forces(load, front, [first, closer])[-1].value)
    assert sum(line.value for line in base) == pytest.approx(load)


@FEW
@given(st.lists(st.floats(20, 400), min_size=2, max_size=5, unique=True), forces, st.floats(100, 5e4))
def test_a_return_balances_and_its_front_screw_is_the_worst(places: list[float], load: float, k: float) -> None:
    stations = sorted(places)
    assume(all(b - a > 20 for a, b in pairwise(stations)))
    front = stations[-1] + 15.0
    line = returns.return_forces(load, front, stations)
    assert sum(force.value for force in line) == pytest.approx(load)
    turning = sum(force.value * y for force, y in zip(line, stations, strict=True))
    assert turning == pytest.approx(load * front)
    assert max(force.value for force in line) == line[-1].value
    worst = returns.return_front_force(
        load, front, stations, second_moment=ANGLE.second_moment, screw_stiffness=k, screws=1
    )
    assert worst.value >= line[-1].value - 1e-6


# The slip of screws.


@FEW
@given(st.sampled_from([8, 10, 12, 14]), st.floats(0, 25), st.floats(0.1, 6))
def test_a_wider_gap_never_makes_a_screw_stiffer(gauge: int, gap: float, extra: float) -> None:
    screw = TABLES.wood_screw(gauge)
    near, far = (slip.slip_stiffness(SPF, screw.diameter, screw.root_diameter, g).value for g in (gap, gap + extra))
    assert far < near
    assert near <= slip.joint_slip(SPF, screw.diameter).value * (1 + TIE)


# The back angle alone.


def loaded(p: float, y: float) -> list[hold_down.BoardLoad]:
    return [hold_down.BoardLoad("P", p, y, True), hold_down.BoardLoad("W", 100.0, 120.0, False)]


@FEW
@given(forces, st.floats(60, 500), st.floats(5, 40), st.integers(2, 12), more)
def test_seat_screws_are_never_helped_by_load_overhang_or_loss(
    p: float, y: float, row: float, count: int, f: float
) -> None:
    def worst(force: float, out: float, gauge: float, screws: int) -> float:
        return hold_down.hold_down(loaded(force, out), toe=TOE, seat_row=gauge, screws=screws).per_screw.value

    base = worst(p, y, row, count)
    assert not_above(base, worst(p * f, y, row, count))
    assert not_above(base, worst(p, y * f, row, count))
    assert not_above(base, worst(p, y, row, count - 1))
    assert not_above(base, worst(p, y, min(row * f, 45.0), count))


@FEW
@given(forces, st.floats(60, 500), st.floats(5, 40), st.integers(1, 12))
def test_a_board_on_its_toe_is_in_balance(p: float, y: float, row: float, count: int) -> None:
    found = hold_down.hold_down(loaded(p, y), toe=TOE, seat_row=row, screws=count)
    assert found.contact.value == pytest.approx(found.pull.value + p + 100)
    about_row = p * (y - row) + 100 * (120 - row)
    assert found.contact.value * (si(TOE) - row) == pytest.approx(about_row)
    assert found.per_screw.value * count >= found.pull.value - 1e-6


@FEW
@given(st.floats(0, 500), st.floats(300, 3000), more)
def test_an_end_or_grain_out_of_the_wall_never_spreads_further(beyond: float, length: float, f: float) -> None:
    def width(at_end: bool, along: bool, over: float = beyond) -> float:
        return hold_down.effective_width(over, length, at_end=at_end, along_wall=along).value

    assert width(True, True) <= width(False, True) <= length
    assert width(False, False) <= width(False, True)
    assert width(True, False) <= width(True, True)
    assert width(False, True) <= width(False, True, beyond * f)


@FEW
@given(st.integers(1, 12), st.floats(100, 900), st.floats(50, 1500), more)
def test_fewer_stations_or_wider_pitch_never_share_better(count: int, pitch: float, width: float, f: float) -> None:
    base = wall_leg.station_share(count, pitch, width).value
    assert not_above(base, wall_leg.station_share(count, pitch * f, width).value)
    assert not_above(base, wall_leg.station_share(count, pitch, width / f).value)
    assert not_above(wall_leg.station_share(count + 1, pitch, width).value, base)
    assert base <= 1


@FEW
@given(st.floats(1e3, 5e5), gauges, more)
def test_pull_goes_with_the_couple_and_against_the_lever(couple: float, gauge: float, f: float) -> None:
    for way in ("up", "down"):
        base = wall_leg.pull(couple, wall_leg.lever(way, gauge, LEG)).value
        assert wall_leg.pull(couple * f, wall_leg.lever(way, gauge, LEG)).value > base
    up = [wall_leg.lever("up", g, LEG).value for g in (gauge, min(gauge * f, 50.0))]
    down = [wall_leg.lever("down", g, LEG).value for g in (gauge, min(gauge * f, 50.0))]
    assert up[0] <= up[1] and down[0] >= down[1]


@FEW
@given(st.floats(1e3, 9e4), gauges, st.floats(20, 120), more)
def test_a_lining_never_lowers_the_pull(couple: float, gauge: float, width: float, f: float) -> None:
    for way in ("up", "down"):
        plain = wall_leg.pull(couple, wall_leg.lever(way, gauge, LEG)).value
        try:
            found = wall_leg.on_lining(couple, way, gauge, LEG, width)
        except OutsideRulebook:
            with pytest.raises(OutsideRulebook):
                wall_leg.on_lining(couple * f, way, gauge, LEG, width)
            continue
        assert found.pull.value >= plain * (1 - TIE)
        assert found.pull.value * found.arm.value == pytest.approx(couple)
        assert found.crushed == (plain > found.limit.value * (1 + TIE))


@FEW
@given(st.floats(1e3, 5e5), gauges, st.floats(1.05, 3))
def test_stacked_rows_balance_the_couple(couple: float, gauge: float, f: float) -> None:
    assume(gauge * f < 50)
    for way in ("up", "down"):
        rows = [gauge, gauge * f]
        pulls = wall_leg.pulls_of_rows(couple, way, rows, LEG)
        arms = [wall_leg.lever(way, g, LEG).value for g in rows]
        assert sum(t.value * z for t, z in zip(pulls, arms, strict=True)) == pytest.approx(couple)


@FEW
@given(st.floats(12, 45), st.floats(8, 20), st.floats(60, 600), more)
def test_the_wall_leg_is_weaker_thinner_wider_pitched_or_further_out(
    gauge: float, head: float, pitch: float, f: float
) -> None:
    def capacity(g: float, s: float, t: float) -> float:
        around = wall_leg.screw_lever("up", gauge=g, leg=LEG, to_toe=9.525, head=head, pitch=s)
        return wall_leg.wall_leg_capacity("up", around, thickness=t, yield_stress=A36.yield_stress, hole=6.0).value

    base = capacity(gauge, pitch, STEEL)
    assert not_above(capacity(gauge, pitch, STEEL / f), base)
    assert not_above(capacity(gauge, pitch / f, STEEL), base)
    assert not_above(capacity(min(gauge * f, 50.0), pitch, STEEL), base)


@FEW
@given(forces, st.floats(60, 500), st.floats(1.0, 8.0), more)
def test_a_leg_is_never_helped_by_load_or_thinness(p: float, y: float, t: float, f: float) -> None:
    bending = leg.leg_moment(loaded(p, y), 9.5, 300.0, 1000.0).value
    assert leg.leg_moment(loaded(p * f, y), 9.5, 300.0, 1000.0).value > bending
    assert leg.leg_moment(loaded(p, y), 9.5, 300.0 / f, 1000.0).value > bending
    limits = [leg.leg_capacity(limit, t, 248.0).value for limit in ("lasting load", "strength", "no lasting set")]
    assert limits[0] < limits[1] < limits[2]
    assert leg.leg_capacity("strength", t / f, 248.0).value < limits[1]


@FEW
@given(forces, st.floats(100, 500), st.floats(1.0, 6.0), st.integers(2, 12), more)
def test_the_front_never_drops_less_for_more_load_or_fewer_screws(
    p: float, front: float, t: float, count: int, f: float
) -> None:
    def drop(force: float, steel: float, screws: int) -> float:
        held = hold_down.hold_down(loaded(force, front), toe=TOE, seat_row=31.75, screws=screws)
        turning = front_drop.position_rotation(pull_stiffness=5000.0, lever=27.0, leg_width=80.0, thickness=steel)
        return front_drop.front_drop(
            wall_moment=hold_down.wall_moment(loaded(force, front), [1.0, 1.0]), front=front, rotation=turning,
            positions=3, beyond=front - si(TOE), pull=held.pull, contact=held.contact, toe=TOE, seat_row=31.75,
            to_toe=9.525, thickness=steel, leg_length=400.0, seat_pull_stiffness=2000.0, seat_screws=screws,
        ).drop.value  # fmt: skip

    base = drop(p, t, count)
    assert base > 0
    assert not_above(base, drop(p * f, t, count))
    assert not_above(base, drop(p, t / f, count))
    assert not_above(base, drop(p, t, count - 1))


# Brackets, groups, loads, the angle as a beam.


@FEW
@given(
    forces,
    st.floats(50, 400),
    st.floats(100, 400),
    st.lists(st.floats(0.15, 0.95), min_size=2, max_size=4, unique=True),
    more,
)
def test_a_bracket_is_never_helped_by_load_or_reach(
    p: float, e: float, tall: float, parts: list[float], f: float
) -> None:
    heights = [tall * part for part in sorted(parts)]
    assume(all(b - a > 1 for a, b in pairwise(heights)))
    base = bracket.bracket_screws(p, e, tall, heights)
    arms = [h - 0.1 * tall for h in heights]
    assert sum(t.value * z for t, z in zip(base.pulls, arms, strict=True)) == pytest.approx(p * e)
    assert base.greatest_pull.value == base.pulls[-1].value
    assert bracket.bracket_screws(p * f, e, tall, heights).greatest_pull.value > base.greatest_pull.value
    assert bracket.bracket_screws(p, e * f, tall, heights).greatest_pull.value > base.greatest_pull.value


@FEW
@given(forces, st.floats(50, 400), st.floats(50, 400), st.floats(50, 400))
def test_a_braced_bracket_is_in_balance(p: float, e: float, h: float, x: float) -> None:
    found = bracket.brace(p, e, h, x)
    # Level forces balance, and the brace lifts the arm about the wall.
    assert found.foot_push.value == pytest.approx(found.top_pull.value)
    assert found.thrust.value * h / (h**2 + x**2) ** 0.5 * x == pytest.approx(p * e)
    assert found.arm_moment.value == pytest.approx(p * max(e - x, 0))


@FEW
@given(st.lists(st.tuples(st.integers(-200, 200), st.integers(-200, 200)), min_size=2, max_size=6, unique=True),
       st.floats(-500, 500), st.floats(-500, 500))  # fmt: skip
def test_a_group_without_a_couple_shares_evenly(places: list[tuple[int, int]], across: float, up: float) -> None:
    found = group.screw_group([(float(x), float(y)) for x, y in places])
    even = (across**2 + up**2) ** 0.5 / len(places)
    forces_found = group.in_plane(found, across=across, up=up, couple=0.0)
    assert all(force.value == pytest.approx(even, abs=1e-9) for force in forces_found)
    turned = group.in_plane(found, across=across, up=up, couple=1000.0)
    assert max(force.value for force in turned) >= even - 1e-9


@FEW
@given(forces, st.floats(3, 120), st.floats(12, 48), st.sampled_from(["up", "down"]), more)
def test_a_push_off_the_wall_is_never_helped_by_force_or_height(
    force: float, h: float, g: float, leg: wall_leg.WallLeg, f: float
) -> None:
    def pull(force: float, h: float, gauges: list[float]) -> float:
        couple = push.push_couple(force, h, leg, gauges, 50.8)
        return sum(line.value for line in wall_leg.pulls_of_rows(couple, leg, gauges, 50.8))

    assert not_above(pull(force, h, [g]), pull(force * f, h, [g]))
    if leg == "down":  # above the screws the heel bears; lower down the tip of an upright leg may
        assert not_above(pull(force, h, [g]), pull(force, h * f, [g]))
    assert pull(force, h, [g]) >= force * (1 - TIE)
    assert pull(force, h, [g / 2, g]) >= force * (1 - TIE)


@FEW
@given(st.integers(2, 8), st.floats(100, 500), st.floats(0, 200))
def test_no_place_takes_less_than_an_even_share_of_a_push(count: int, pitch: float, over: float) -> None:
    places = [over + pitch * i for i in range(count)]
    shares = [push.push_share(places, i, (0.0, places[-1] + over)).value for i in range(count)]
    assert all(share >= 1 / count - TIE for share in shares)
    assert shares == pytest.approx(shares[::-1])
    if count == 2:
        assert min(shares) >= 1 - TIE


@FEW
@given(forces, st.floats(0, 300), st.floats(200, 900), more)
def test_overhangs_and_sudden_loads_only_add(p: float, c: float, s: float, f: float) -> None:
    assert angle_beam.overhang_reaction(p, c, s).value >= p
    assert angle_beam.overhang_reaction(p, c * f, s).value >= angle_beam.overhang_reaction(p, c, s).value
    assert bracket.nearer_bracket(p, c, s).value >= p
    assert loads.put_on_suddenly(p).value == 2 * p


@FEW
@given(forces, st.floats(30, 80), st.floats(0, 12.7), st.floats(150, 600), more)
def test_a_couple_never_falls_with_the_drop(p: float, b_l: float, drop: float, depth: float, f: float) -> None:
    small, large = sorted((drop, min(drop * f, 12.7)))
    for kind in ("S1", "S3", "S5"):
        one, two = (back_angle.person_couple(kind, p, b_l, d, depth).value for d in (small, large))
        assert not_above(one, two)
    one, two = (back_angle.spread_couple(p, b_l, d, depth).value for d in (small, large))
    assert not_above(one, two) and one >= p * b_l * (1 - TIE)
