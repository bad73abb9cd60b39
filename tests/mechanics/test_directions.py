"""Which way things must go, whatever the numbers: what makes a joint weaker on the wall never helps it here."""

from __future__ import annotations

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from workings import A36, SCREWS, TABLES, through_leg

from plumbrule.mechanics import bearing_wood, combined, head, hole, lining, pilot, screw_length, tolerance, withdrawal
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import OutsideRulebook, Worked

FEW = settings(max_examples=60, deadline=None)
screws = st.sampled_from(SCREWS)
gravities = st.floats(0.31, 0.73)
gaps = st.floats(0.0, 31.0)
angles = st.floats(0.0, 90.0)
more = st.floats(0.01, 40.0)
bites = st.floats(60.0, 110.0)
ROUNDING = 1e-9


def not_above(smaller: float, larger: float) -> bool:
    return smaller <= larger + ROUNDING * max(abs(smaller), abs(larger), 1.0)


def pulled(screw: Fastener, length: float, layers: float, gravity: float) -> Worked:
    bite = screw_length.penetration(length, 3.175, layers)
    thread = screw_length.thread_by_rule(screw.kind, screw.diameter, length)
    tip = screw_length.tip_length(screw)
    held = screw_length.thread_in_wood(screw.kind, bite, thread, tip)
    return withdrawal.withdrawal(screw.kind, gravity, screw.diameter, held)


@FEW
@given(screws, st.floats(70, 150), more, gaps, gravities)
def test_a_longer_screw_never_lowers_withdrawal(
    screw: Fastener, length: float, extra: float, layers: float, gravity: float
) -> None:
    shorter, longer = (pulled(screw, size, layers, gravity).value for size in (length, length + extra))
    assert not_above(shorter, longer)


@FEW
@given(screws, st.floats(70, 150), gaps, more, gravities)
def test_more_layers_never_raise_withdrawal(
    screw: Fastener, length: float, layers: float, extra: float, gravity: float
) -> None:
    assert not_above(pulled(screw, length, layers + extra, gravity).value, pulled(screw, length, layers, gravity).value)


@FEW
@given(screws, gaps, st.floats(0.01, 10), angles, bites)
def test_a_wider_gap_never_raises_side_strength(
    screw: Fastener, gap: float, extra: float, angle: float, bite: float
) -> None:
    assume(gap + extra <= 31.7)
    wide, narrow = through_leg(screw, gap + extra, angle, bite=bite), through_leg(screw, gap, angle, bite=bite)
    assert wide.worked.value < narrow.worked.value * (1 + ROUNDING)
    for mode in ("II", "III_m", "III_s", "IV"):
        assert wide.modes[mode].value < narrow.modes[mode].value


@FEW
@given(screws, gaps, angles, bites, more)
def test_a_deeper_bite_never_lowers_side_strength(
    screw: Fastener, gap: float, angle: float, bite: float, extra: float
) -> None:
    assert not_above(
        through_leg(screw, gap, angle, bite=bite).worked.value,
        through_leg(screw, gap, angle, bite=bite + extra).worked.value,
    )


@FEW
@given(screws, gaps, bites, angles, angles)
def test_across_the_grain_is_never_stronger(screw: Fastener, gap: float, bite: float, one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert not_above(
        through_leg(screw, gap, high, bite=bite).worked.value, through_leg(screw, gap, low, bite=bite).worked.value
    )


@FEW
@given(screws, gravities, gravities, angles)
def test_denser_wood_never_bears_or_holds_less(screw: Fastener, one: float, other: float, angle: float) -> None:
    light, dense = sorted((one, other))
    for find in (
        lambda g: bearing_wood.wood_bearing(g, screw.diameter, angle).value,
        lambda g: withdrawal.withdrawal_per_length(screw.kind, g, screw.diameter).value,
    ):
        assert not_above(find(light), find(dense))


@FEW
@given(st.floats(5, 20), st.floats(3, 10), st.floats(0, 5), st.floats(0.01, 5))
def test_a_larger_hole_never_helps_ring_edge_or_play(head_size: float, screw: float, over: float, more: float) -> None:
    small, large = screw + over, screw + over + more
    assert head.ring(head_size, large).value < head.ring(head_size, small).value
    assert head.ring_worst(head_size, screw, large).value < head.ring_worst(head_size, screw, small).value
    assert tolerance.play(large, screw).value > tolerance.play(small, screw).value
    edge = large
    assert hole.clear_distance(edge, large).value < hole.clear_distance(edge, small).value


@FEW
@given(st.floats(5, 20), st.floats(3, 10), st.floats(0, 5))
def test_the_worst_ring_is_never_wider_than_the_nominal_one(head_size: float, screw: float, over: float) -> None:
    assert not_above(head.ring_worst(head_size, screw, screw + over).value, head.ring(head_size, screw + over).value)


errors = st.floats(0, 10)


@FEW
@given(st.floats(-10, 10), errors, errors, errors, st.floats(0, 80))
def test_adding_errors_is_never_less_than_squaring_them_away(
    drawn: float, found: float, drilled: float, play: float, bite: float
) -> None:
    run = tolerance.lean(bite)
    face = tolerance.offset_at_face(drawn, found=found, drilled=drilled, play=play)
    worst = tolerance.offset_at_tip(face, run)
    likely = tolerance.offset_rss(drawn, found=found, drilled=drilled, play=play, lean=run)
    assert not_above(likely.value, worst.value)
    assert not_above(abs(drawn), face.value)


@FEW
@given(st.floats(1, 2000), st.floats(1, 2000), st.floats(1, 500), st.floats(1, 500), st.floats(1.001, 3))
def test_both_at_once(z: float, w: float, v: float, t: float, factor: float) -> None:
    use = combined.combined(side_force=v, pull=t, side_capacity=z, pull_capacity=w)
    heavier = combined.combined(side_force=v * factor, pull=t * factor, side_capacity=z, pull_capacity=w)
    assert heavier.use.value == pytest.approx(use.use.value * factor)
    # The interaction is a weighted mean of the two uses, so it lies between them and never below the lesser.
    low, high = sorted((use.side_use.value, use.pull_use.value))
    assert low * (1 - ROUNDING) <= use.use.value <= (low + high) * (1 + ROUNDING)
    assert use.use.value == pytest.approx((v**2 / z + t**2 / w) / use.resultant.value)


@FEW
@given(screws, gravities)
def test_a_pilot_range_is_a_range_and_never_wider_than_the_screw(screw: Fastener, gravity: float) -> None:
    for found in (pilot.thread_pilot(screw, gravity), pilot.shank_pilot(screw, gravity)):
        assert found.least.value <= found.most.value <= screw.diameter * (1 + ROUNDING)
    assert pilot.thread_pilot(screw, gravity).most.value <= 0.875 * screw.diameter


@FEW
@given(st.floats(1.0, 12.0), st.floats(0.5, 60.0), st.floats(3.0, 10.0))
def test_a_thicker_leg_never_weakens_a_hole(thickness: float, clear: float, diameter: float) -> None:
    thin = hole.hole_strength(diameter, thickness, clear, A36)
    thick = hole.hole_strength(diameter, thickness * 1.1, clear, A36)
    assert thin.worked.value < thick.worked.value
    assert thin.worked.value == min(thin.crushing.value, thin.tear_out.value, thin.sheet.value)


@FEW
@given(st.floats(1, 31), st.floats(0, 1))
def test_a_loose_packer_restores_nothing(layers: float, part: float) -> None:
    thickness = layers * part
    for covers, fixed in ((True, False), (False, True), (False, False)):
        packer = lining.Packer(thickness, covers_stud=covers, fixed_to_stud=fixed, bearing=23.0)
        assert lining.packed_gap(layers, packer).value == layers
    solid = lining.Packer(thickness, covers_stud=True, fixed_to_stud=True, bearing=23.0)
    assert lining.packed_gap(layers, solid).value == pytest.approx(layers - thickness)


@FEW
@given(st.floats(0.05, 0.95))
def test_outside_is_never_a_number(gravity: float) -> None:
    screw = TABLES.wood_screw(10)
    if 0.31 <= gravity <= 0.73:
        assert withdrawal.withdrawal_per_length(screw.kind, gravity, screw.diameter).value > 0
    else:
        with pytest.raises(OutsideRulebook):
            withdrawal.withdrawal_per_length(screw.kind, gravity, screw.diameter)
        with pytest.raises(OutsideRulebook):
            bearing_wood.wood_bearing(gravity, screw.diameter, 0)
