"""Which way each input of a box and of a room works, where the formulas end, and rooms that are known to close."""

from __future__ import annotations

from math import isclose

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plumbrule.language import rework
from plumbrule.mechanics import box, room
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook

MM = st.floats(0.5, 80)
MORE = st.floats(0.1, 20)


@given(MM, MM, MM, MORE)
def test_a_thicker_face_sinks_a_rim_and_a_deeper_extender_lifts_it(set_back, face, extender, more):
    rim = si(box.rim_behind(set_back, face, extender))
    assert si(box.rim_behind(set_back + more, face, extender)) > rim
    assert si(box.rim_behind(set_back, face + more, extender)) > rim
    assert si(box.rim_behind(set_back, face, extender + more)) < rim


@given(st.floats(90, 200), st.floats(40, 80), st.floats(0, 10), MORE)
def test_a_wider_plate_laps_more_and_a_wider_gap_less(plate, size, gap, more):
    lap = si(box.cover_lap(plate, size, gap))
    assert si(box.cover_lap(plate + more, size, gap)) > lap
    assert si(box.cover_lap(plate, size + more, gap)) < lap
    assert si(box.cover_lap(plate, size, gap + more)) < lap


@given(MM, st.floats(-10, 10), MORE)
def test_a_deeper_extender_or_a_deeper_rim_wants_a_longer_screw(extender, behind, more):
    length = si(box.device_screw(extender, behind))
    assert si(box.device_screw(extender + more, behind)) > length
    assert si(box.device_screw(extender, behind + more)) >= length


def test_a_wider_plate_for_each_device_more():
    widths = [si(box.plate_width("standard", gangs)) for gangs in (1, 2, 3, 4)]
    assert widths == sorted(widths)


@pytest.mark.parametrize(("name", "gangs"), [("standard", 5), ("standard", 6), ("midsize", 2), ("oversize", 1)])
def test_a_plate_that_no_standard_knows_is_measured(name, gangs):
    for work in (box.plate_width, box.plate_height):
        with pytest.raises(OutsideRulebook, match="measure the plate"):
            work(name, gangs)


@pytest.mark.parametrize("wrong", [float("nan"), float("inf"), -1.0])
def test_measures_that_cannot_be_are_refused(wrong):
    for work in (
        lambda: box.rim_behind(0, wrong, 0), lambda: box.rim_behind(0, 0, wrong), lambda: box.cover_lap(wrong, 50, 1),
        lambda: box.cover_lap(70, wrong, 1), lambda: box.cover_lap(70, 50, wrong), lambda: box.device_screw(wrong, 0),
        lambda: room.gap_change(wrong, 90), lambda: room.niche_narrows(wrong, 90, 90),
        lambda: room.closing_gap([wrong, 1, 1], [120, 120, 120]),
    ):  # fmt: skip
        with pytest.raises(NotPossible):
            work()


# A room of four square corners; one with a pier in it; a triangle of 3, 4 and 5; a bay of a hexagon.
CLOSED = {
    "rectangle": ([3000, 2000, 3000, 2000], [90, 90, 90, 90]),
    "with a pier": ([3000, 2000, 1200, 400, 600, 400, 1200, 2000], [90, 90, 90, -90, -90, 90, 90, 90]),
    "triangle": ([3000, 4000, 5000], [90, 180 - 36.86989764584402, 180 - 53.13010235415598]),
    "hexagon": ([900] * 6, [60] * 6),
}


@pytest.mark.parametrize("shape", CLOSED)
def test_rooms_that_are_known_to_close(shape):
    widths, turns = CLOSED[shape]
    assert si(room.closing_gap(widths, turns)) == pytest.approx(0, abs=1e-6)
    assert si(room.turned_too_far(turns)) == pytest.approx(0, abs=1e-9)


@given(st.floats(1, 500), st.integers(0, 3))
def test_a_wall_misread_by_some_opens_a_square_room_by_as_much(slip, which):
    widths, turns = CLOSED["rectangle"]
    misread = [width + (slip if place == which else 0) for place, width in enumerate(widths)]
    assert si(room.closing_gap(misread, turns)) == pytest.approx(slip, rel=1e-9)


@given(st.floats(-20, 20))
def test_a_corner_misread_by_some_turns_the_room_by_as_much(slip):
    assert si(room.turned_too_far([90, 90, 90, 90 + slip])) == pytest.approx(abs(slip), abs=1e-9)


def test_a_room_is_three_walls_or_more_with_a_corner_after_each():
    for widths, turns in (([1, 2], [90, 90]), ([1, 2, 3], [90, 90])):
        with pytest.raises(NotPossible, match="closed room"):
            room.closing_gap(widths, turns)


@given(st.floats(10, 800), st.floats(21, 159))
def test_the_gap_changes_with_depth_and_with_how_far_a_corner_is_from_square(depth, corner):
    change = si(room.gap_change(depth, corner))
    assert si(room.gap_change(depth * 1.5, corner)) >= change
    # A corner as far on the other side of square changes it as much the other way.
    assert si(room.gap_change(depth, 180 - corner)) == pytest.approx(change, rel=1e-9, abs=1e-9)
    assert si(room.gap_change(depth, 90)) == 0


@given(st.floats(10, 800), st.floats(30, 150))
def test_walls_that_lean_to_the_same_side_narrow_nothing(depth, corner):
    assert si(room.niche_narrows(depth, corner, 180 - corner)) == pytest.approx(0, abs=1e-6)
    sign = si(room.niche_narrows(depth, corner, corner))
    assert isclose(corner, 90) or (sign > 0) == (corner < 90)


def test_the_tangent_of_89_degrees_by_the_table():
    """Tables print cot 89° = 0.01746."""
    assert si(room.gap_change(1000, 89)) == pytest.approx(17.46, abs=0.005)
    assert si(room.niche_narrows(1000, 89, 89)) == pytest.approx(34.91, abs=0.01)


@pytest.mark.parametrize("angle", [20, 160, 0, 180, -90])
def test_a_corner_that_no_board_is_fitted_into(angle):
    with pytest.raises(NotPossible, match="corner"):
        room.gap_change(400, angle)


@pytest.mark.parametrize(
    "worked",
    [
        box.rim_behind(3.2, 11.1, 12.7), box.cover_lap(69.85, 57.15, 1.6), box.device_screw(15.9, -1.6),
        room.gap_change(430, 89.2), room.niche_narrows(430, 89.2, 90.4), room.turned_too_far([90, 90, 90, 88]),
        room.closing_gap([3000, 2000, 3010, 2000], [90, 90, 90, 90]), box.plate_width("standard", 2),
    ],
    ids=lambda worked: worked.symbol,
)  # fmt: skip
def test_every_line_works_out_again(worked):
    value = rework(worked.formula, {number.symbol: number.value for number in worked.numbers})
    assert value == pytest.approx(worked.value, rel=1e-9, abs=1e-12)
