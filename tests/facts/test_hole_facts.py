"""Holes in steel. Where nothing else is said, the expected figure was worked by hand from the measures of the plan."""

from __future__ import annotations

from math import dist, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from steel_rows import ON_SITE, TEMPLATE, hole_of, inches, plan_of

from plumbrule.facts.hole import hole_rows
from plumbrule.facts.supports import supports
from plumbrule.reading.units import to_si

SEAT = ("alcove-seat", "seat-back")
LEDGE = ("display-shelf", "ledge-back")
SIXTEENTHS = st.integers(min_value=1, max_value=30)


def near(inch: float, slack: float = 1e-9) -> object:
    return pytest.approx(inches(inch), abs=inches(slack))


# Where it lies


@pytest.mark.parametrize(
    ("plan", "part", "label", "edge"),
    [
        ("alcove-seat", "seat-back", "W3", 3.5 - 1.125 - 1 / 32),
        ("alcove-seat", "seat-back", "V3", 3.5 - 2.5 - 1 / 32),
        ("alcove-seat", "seat-back", "S1", 2.5 - 2 - 1 / 32),
        ("display-shelf", "ledge-back", "W1", 2 - 1.25 - 1 / 32),
        ("display-shelf", "ledge-back", "S1", 3 - 2 - 1 / 32),
        # 250 - 40 - 0.5 mm and, for the slot across the grain, 200 - 60 - (10 - 5)/2 - 0.5 mm
        ("bracket-shelf", "shelf-bracket", "W1 (bracket 1)", 209.5 / 25.4),
        ("bracket-shelf", "shelf-bracket", "S1 (bracket 1)", 137.0 / 25.4),
    ],
)
def test_edge_distance_is_to_the_toe_with_the_drill_off_by_what_the_plan_allows(plan, part, label, edge):
    assert hole_of(plan, part, label).values["edge_distance"] == near(edge)


def test_a_slot_of_a_return_runs_along_its_leg_and_shortens_the_end_not_the_edge():
    # across the board's grain is along an angle that stands on the wall beside it
    row = hole_of("alcove-seat", "seat-left", "S1")
    assert row.values["edge_distance"] == near(2.5 - 2 - 1 / 32)
    assert row.values["end_distance"] == near(2.75 - (5 / 8 - 7 / 32) / 2 - 1 / 32)
    other = hole_of("alcove-seat", "seat-left", "S1", {"/holes/seat-slot/slot_runs": "along the grain"})
    assert other.values["edge_distance"] == near(2.5 - 2 - (5 / 8 - 7 / 32) / 2 - 1 / 32)
    assert other.values["end_distance"] == near(2.75 - 1 / 32)


def test_the_nearer_end_counts_and_says_how_it_is_cut():
    row = hole_of("alcove-seat", "seat-left", "W1")
    assert (row.values["end_distance"], row.values["end_cut"]) == (near(1.25 - 1 / 32), "square")
    row = hole_of("alcove-seat", "seat-left", "W3")
    assert (row.values["end_distance"], row.values["end_cut"]) == (near(3 - 1 / 32), "mitred")


def test_a_mitre_for_an_inside_corner_is_cut_out_of_the_seat_leg_from_the_heel():
    # the cut runs at 45 degrees from the end of the heel: a right isosceles triangle
    x, y = 16 - 10.75 - (5 / 8 - 7 / 32) / 2, 2.0
    assert hole_of("alcove-seat", "seat-left", "S2").values["end_distance"] == near((x - y) / sqrt(2) - 1 / 32)
    # in a corner of 120 degrees it runs at 60: half an equilateral triangle
    blunt = {"/corners/left-back/angle": "120°"}
    expected = x * sqrt(3) / 2 - y / 2 - 1 / 32
    assert hole_of("alcove-seat", "seat-left", "S2", blunt).values["end_distance"] == near(expected)


def test_the_wall_leg_of_a_mitred_end_stays_square():
    assert hole_of("alcove-seat", "seat-back", "W1").values["end_distance"] == near(2 - 1 / 32)


def test_a_mitre_for_an_outside_corner_leaves_the_toe_the_longer_edge():
    changes = {"/angles/seat-pier/ends/right": "mitred"}
    x, from_toe = 16 - 13.25 - (5 / 8 - 7 / 32) / 2, 0.5
    assert hole_of("alcove-seat", "seat-pier", "S2", changes).values["end_distance"] == near(
        (x - from_toe) / sqrt(2) - 1 / 32
    )


def test_a_cope_takes_off_as_much_as_the_other_leg_stands_in_the_way():
    # the other seat leg reaches 2-1/2 - 1/2 in from the finished face, this angle begins 1/4 in from it
    row = hole_of(*SEAT, "S1", {"/angles/seat-back/ends/left": "coped"})
    assert row.values["end_distance"] == near(5.75 - 1.75 - 1 / 32)


def test_a_cope_round_nothing_that_is_in_the_plan_is_not_known():
    row = hole_of(*LEDGE, "S1", {"/angles/ledge-back/ends/left": "coped"})
    assert row.missing["end_distance"] == ("/corners",)


def test_a_mitre_without_a_corner_is_not_known():
    row = hole_of(*LEDGE, "S1", {"/angles/ledge-back/ends/left": "mitred"})
    assert row.missing["end_distance"] == ("/corners",)
    assert row.missing["end_cut"] == ("/corners",)


def test_pitch_is_to_the_nearest_hole_of_the_same_leg_in_either_direction():
    assert hole_of(*SEAT, "W2").values["pitch"] == near(2.5 - 1.125)
    assert hole_of(*SEAT, "S2").values["pitch"] == near(12)
    row = hole_of(*SEAT, "S1", {"/angles/seat-back/seat_holes/from_left": ["5 in", "8 in", "20 in"]})
    assert row.values["pitch"] == near(3)


def test_pitch_of_slots_is_between_their_nearer_ends():
    row = hole_of("alcove-seat", "seat-left", "S1")
    assert row.values["pitch"] == near(8 - (5 / 8 - 7 / 32))


def test_a_hole_alone_in_its_leg_has_no_pitch():
    row = hole_of(*LEDGE, "S1", {"/angles/ledge-back/seat_holes/from_left": ["5 in"]})
    assert row.values["neighbours"] == 0
    assert "pitch" not in row.values and "pitch" not in row.missing


def test_heel_room_ends_where_the_fillet_begins():
    assert hole_of(*SEAT, "W1").values["heel_room"] == near(1.125 - 0.25 - 0.375 - 1 / 32)


def test_heads_outside_the_heel_have_room_to_the_back_of_the_angle():
    assert hole_of(*LEDGE, "S1").values["heel_room"] == near(2 - 1 / 32)


def test_a_cleat_has_no_heel_and_is_measured_to_its_nearer_edge():
    plan = plan_of("cleat-shelf")
    found = supports(plan)
    rows = [row for row in hole_rows(plan, found) if row.values["support"] == "cleat"]
    assert rows
    assert all("heel_room" not in row.values and "deburr" not in row.values for row in rows)
    for support in found:
        for drilling in support.drillings:
            row = next(one for one in rows if one.part == support.pointer and one.label == drilling.label)
            size = support.wall_leg_size if drilling.leg == "wall" else support.seat_leg_size
            nearer = min(drilling.y.value, size.value - drilling.y.value)
            assert row.values["edge_distance"] == pytest.approx(nearer - drilling.holes.drilled_within.value)


# The head


def test_a_hex_head_bears_with_its_flats_and_reaches_with_its_corners():
    row = hole_of(*SEAT, "W1", gone=("/screws/wall-lag/washer",))
    assert row.values["bearing_width"] == near(0.5)
    assert row.values["head_radius"] == near(0.5 / sqrt(3))


def test_the_ring_under_a_hex_head_and_under_a_washer():
    # 1/4 in lag, 7/16 in hex, 5/16 in hole: 1/16 in nominal, 1/32 in at the worst; 1/8 in with a 5/8 in washer
    changes = {
        "/screws/wall-lag/diameter": "1/4 in",
        "/screws/wall-lag/head/diameter": "7/16 in",
        "/holes/lag-pair/diameter": "5/16 in",
        "/screws/wall-lag/washer": {"outside": "5/8 in", "inside": "9/32 in", "thickness": "1/16 in"},
    }
    row = hole_of(*SEAT, "W1", changes)
    assert row.values["ring_worst"] == near(0.125)
    row = hole_of(*SEAT, "W1", changes, gone=("/screws/wall-lag/washer",))
    assert row.values["ring"] == near(1 / 16)
    assert row.values["ring_worst"] == near(1 / 32)


def test_a_screw_that_does_not_go_in_has_play_below_zero_and_no_worst_ring():
    row = hole_of(*SEAT, "W1", {"/holes/lag-pair/diameter": "9/32 in"})
    assert row.values["play"] == near(-1 / 32)
    assert "does not go through" in row.failed["ring_worst"]


@pytest.mark.parametrize(
    ("size", "head", "hole", "thickness", "land"),
    [
        # ASME B18.6.3 heights of 82 degree flat heads as printed in Machinery's Handbook: 0.083 0.100 0.116 0.132 in
        ("No. 6", 0.279, 0.156, 0.125, 0.042),
        ("No. 8", 0.332, 0.1875, 0.125, 0.025),
        ("No. 10", 0.385, 0.203, 0.125, 0.009),
        ("No. 12", 0.438, 0.234, 0.125, -0.007),
        ("No. 8", 0.332, 0.1875, 0.1875, 0.0875),
        ("No. 10", 0.385, 0.203, 0.1875, 0.0715),
        ("No. 12", 0.438, 0.234, 0.1875, 0.0555),
    ],
)
def test_the_land_under_a_flush_head_is_that_of_the_head_table(size, head, hole, thickness, land):
    changes = {
        "/screws/wall-screw/size": size,
        "/screws/wall-screw/length": "2 in",
        "/screws/wall-screw/thread": "1-1/2 in",
        "/screws/wall-screw/head/diameter": f"{head} in",
        "/holes/sunk/diameter": f"{hole} in",
        "/holes/sunk/countersink/diameter": f"{head} in",
        "/sections/ledge-steel/thickness": f"{thickness} in",
    }
    assert hole_of(*LEDGE, "W1", changes).values["land"] == near(land, 1e-6)


def test_a_sink_cut_deeper_than_its_head_counts_as_it_is_cut():
    # (0.6 - 17/64)/(2 tan 41°), tan 41° = 0.869287
    row = hole_of(*LEDGE, "W1", {"/holes/sunk/countersink/diameter": "0.6 in"})
    assert row.values["sink_depth"] == near((0.6 - 17 / 64) / (2 * 0.869287), 1e-6)


def test_a_small_trim_head_is_not_given_the_height_of_a_standard_one():
    changes = {"/screws/wall-screw/head": {"style": "trim", "angle": "82°", "diameter": "0.4 in"}}
    row = hole_of(*LEDGE, "W1", {**changes, "/holes/sunk/countersink/diameter": "0.4 in"})
    assert row.values["sink_depth"] == near((0.4 - 0.242) / (2 * 0.869287), 1e-6)


@pytest.mark.parametrize(
    ("changes", "gone", "stand"),
    [
        ({}, (), 0.0),
        ({"/holes/sunk/countersink/diameter": "3/8 in"}, (), (1 / 2 - 3 / 8) / (2 * 0.869287)),
        ({}, ("/holes/sunk/countersink",), (1 / 2 - 17 / 64) / (2 * 0.869287)),
        (
            {"/screws/wall-screw/head": {"style": "oval", "angle": "82°", "diameter": "1/2 in", "height": "1/16 in"}},
            (),
            1 / 16,
        ),
        (
            {
                "/screws/wall-screw/head": {"style": "pan", "diameter": "1/2 in", "height": "9/64 in"},
                "/screws/wall-screw/washer": {"outside": "5/8 in", "inside": "9/32 in", "thickness": "1/16 in"},
            },
            ("/holes/sunk/countersink",),
            9 / 64 + 1 / 16,
        ),
    ],
)
def test_how_far_a_head_stands_proud(changes, gone, stand):
    assert hole_of(*LEDGE, "W1", changes, gone).values["head_stand"] == near(stand, 1e-6)


@pytest.mark.parametrize(
    ("from_heel", "faces"),
    [
        ("1-1/4 in", True),
        # board 1-3/4 in on a 1/4 in leg: its top is 2 in from the heel, half the sink is 33/128 in
        ("2-1/4 in", True),
        ("2-3/8 in", False),
    ],
)
def test_a_head_faces_the_board_as_long_as_any_of_it_is_beside_its_edge(from_heel, faces):
    changes = {"/holes/sunk/from_heel": [from_heel], "/sections/ledge-steel/legs/wall": "3 in"}
    row = hole_of(*LEDGE, "W1", changes)
    assert row.values["faces_board"] is faces
    assert ("board_gap" in row.values) is faces


def test_a_head_on_a_leg_that_hangs_down_faces_no_board():
    assert hole_of(*SEAT, "W1").values["faces_board"] is False


def test_at_a_return_the_end_of_the_board_faces_the_leg_with_the_gap_of_that_end():
    changes = {f"/angles/{name}/wall_leg": "up" for name in ("seat-back", "seat-left", "seat-pier")}
    changes["/boards/seat/gaps/left"] = "3/16 in"
    changes["/boards/seat/gaps/right"] = "1/4 in"
    for part, gap in (("seat-back", 1 / 8), ("seat-left", 3 / 16), ("seat-pier", 1 / 4)):
        row = hole_of("alcove-seat", part, "W1", changes)
        assert row.values["faces_board"] is True
        assert row.values["board_gap"] == near(gap)


# What it carries


def test_strength_of_a_hole_for_a_quarter_inch_screw_in_an_eighth_of_an_inch():
    """AISC 360-22 J3.11a and the AISI sheet-screw form, worked by hand with F_u 58 ksi: 2.4 d t F_u/2 = 2175 lbf,
    1.2 l_c t F_u/2 = 653 lbf at l_c 0.15 in, 2.7 t d F_u/3 = 1631 lbf."""
    changes = {
        "/screws/wall-lag/diameter": "1/4 in",
        "/holes/lag-pair/diameter": "9/32 in",
        "/holes/lag-pair/drilled_within": "0 in",
        "/sections/seat-steel/thickness": "1/8 in",
        # l_c = 0.15 in from the hole's rim to the toe: 3.5 - 0.15 - 9/64
        "/holes/lag-pair/from_heel/1": "3.209375 in",
    }
    row = hole_of(*SEAT, "V3", changes)
    assert row.values["bearing_strength"] == pytest.approx(to_si(2175, "lbf"), rel=1e-9)
    assert row.values["tear_out_strength"] == pytest.approx(to_si(652.5, "lbf"), rel=1e-9)
    assert row.values["hole_strength"] == pytest.approx(to_si(652.5, "lbf"), rel=1e-9)
    assert hole_of(*SEAT, "W3", changes).values["hole_strength"] == pytest.approx(to_si(1631.25, "lbf"), rel=1e-9)


def test_no_strength_is_given_for_aluminium():
    row = hole_of(*SEAT, "W1", {"/sections/seat-steel/steel": "6061-T6"})
    assert "bearing_strength" in row.outside and "bearing_strength" not in row.values


# What is not known


@pytest.mark.parametrize(
    ("on_site", "field"),
    [
        ("/sections/seat-steel/legs/wall", "edge_distance"),
        ("/holes/lag-pair/from_heel/0", "edge_distance"),
        ("/holes/lag-pair/from_heel/0", "pitch"),
        ("/holes/lag-pair/drilled_within", "edge_distance"),
        ("/holes/lag-pair/diameter", "play"),
        ("/angles/seat-back/length", "end_distance"),
        ("/angles/seat-back/left", "end_distance"),
        ("/walls/back/framing/centres/1", "end_distance"),
        ("/sections/seat-steel/thickness", "steel"),
        ("/sections/seat-steel/inside_radius", "heel_room"),
        ("/screws/wall-lag/washer/outside", "ring_worst"),
    ],
)
def test_what_waits_to_be_measured_is_named_and_never_a_number(on_site, field):
    # steel of no known grade, since a known one would have a published fillet
    row = hole_of(*SEAT, "W1", {**TEMPLATE, on_site: ON_SITE, "/sections/seat-steel/steel": "unmarked"})
    assert field not in row.values
    assert row.missing[field] == (on_site,)


@pytest.mark.parametrize(
    ("gone", "field", "missing"),
    [
        (("/walls/back/framing/centres",), "end_distance", "/walls/back/framing/centres"),
        (("/screws/wall-lag/head", "/screws/wall-lag/washer"), "ring", "/screws/wall-lag/head"),
        (("/screws/wall-lag/head",), "head_stand", "/screws/wall-lag/head"),
        (("/sections/seat-steel/steel",), "bearing_strength", "/sections/seat-steel/steel"),
        (("/boards/seat/bears_on/0",), "carries_people", "/boards/seat/bears_on"),
    ],
)
def test_what_is_left_out_is_named_and_never_a_number(gone, field, missing):
    row = hole_of(*SEAT, "W1", gone=gone)
    assert field not in row.values
    assert missing in row.missing[field]


def test_only_what_is_left_out_is_named():
    row = hole_of(*SEAT, "W1", {**TEMPLATE, "/angles/seat-back/left": ON_SITE})
    assert row.missing["end_distance"] == ("/angles/seat-back/left",)


def test_where_the_studs_are_not_known_one_hole_of_unknown_place_stands_for_all():
    row = hole_of(*SEAT, "W1", gone=("/walls/back/framing",))
    assert row.values["edge_distance"] == near(3.5 - 1.125 - 1 / 32)
    assert "end_distance" in row.missing


def test_what_was_taken_where_the_plan_is_silent_is_said():
    row = hole_of(*SEAT, "W1", gone=("/holes/lag-pair/drilled_within", "/holes/lag-pair/deburr"))
    assert row.values["edge_distance"] == near(3.5 - 1.125 - 1 / 16)
    assert row.values["deburr"] == "no"
    assert {"/holes/lag-pair/drilled_within", "/holes/lag-pair/deburr"} <= row.assumed.keys()


# Directions


@settings(max_examples=25)
@given(SIXTEENTHS, SIXTEENTHS)
def test_a_hole_further_from_the_heel_is_nearer_to_the_edge_and_has_more_heel_room(one, other):
    low, high = sorted((one, other))
    rows = [hole_of(*LEDGE, "W1", {"/holes/sunk/from_heel": [f"{n}/16 in"]}).values for n in (low, high)]
    assert rows[0]["edge_distance"] >= rows[1]["edge_distance"]
    assert rows[0]["heel_room"] <= rows[1]["heel_room"]


@settings(max_examples=25)
@given(st.integers(min_value=1, max_value=16), st.integers(min_value=1, max_value=16))
def test_careless_drilling_never_helps(one, other):
    low, high = sorted((one, other))
    rows = [hole_of(*SEAT, "W1", {"/holes/lag-pair/drilled_within": f"{n}/64 in"}).values for n in (low, high)]
    for field in ("edge_distance", "end_distance", "heel_room"):
        assert rows[0][field] >= rows[1][field]


@settings(max_examples=25)
@given(st.integers(min_value=22, max_value=60), st.integers(min_value=22, max_value=60))
def test_a_wider_hole_never_bears_better(one, other):
    low, high = sorted((one, other))
    rows = [hole_of(*SEAT, "W1", {"/holes/lag-pair/diameter": f"{n}/64 in"}).values for n in (low, high)]
    assert rows[0]["ring_worst"] >= rows[1]["ring_worst"]
    assert rows[0]["tear_out_strength"] >= rows[1]["tear_out_strength"]


@settings(max_examples=30)
@given(
    st.lists(st.integers(min_value=20, max_value=900), min_size=1, max_size=6),
    st.lists(st.integers(min_value=12, max_value=240), min_size=1, max_size=4),
)
def test_the_nearest_hole_is_the_one_that_measuring_each_against_each_finds(marks, rows):
    changes = {
        "/brackets/shelf-bracket/width": "920 mm",
        "/brackets/shelf-bracket/from_left": ["1200 mm"],
        "/brackets/shelf-bracket/wall_holes/from_left": [f"{mark} mm" for mark in marks],
        "/holes/upright/from_heel": [f"{row} mm" for row in rows],
    }
    plan = plan_of("bracket-shelf", changes, ("/brackets/shelf-bracket/at",))
    holes = [row for row in hole_rows(plan, supports(plan)) if row.values["leg"] == "wall"]
    places = [(mark, row) for row in rows for mark in marks]
    assert len(holes) == len(places)
    for number, (hole, (x, y)) in enumerate(zip(holes, places, strict=True)):
        others = [dist((x, y), place) for other, place in enumerate(places) if other != number]
        assert hole.values["neighbours"] == len(others)
        assert hole.values.get("pitch") == (pytest.approx(min(others)) if others else None)
