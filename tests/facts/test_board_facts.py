"""Boards in their rooms. Where nothing else is said, the figure was worked by hand from the measures of the plan."""

from __future__ import annotations

from math import hypot

import pytest
from board_rows import board_of, crack_of, screw_of
from hypothesis import given, settings
from hypothesis import strategies as st
from steel_rows import ON_SITE, TEMPLATE, inches

SEAT = ("alcove-seat", "seat")
LEDGE = ("display-shelf", "ledge")
NICHE = ("cleat-shelf", "shelf")
BRACKETED = ("bracket-shelf", "shelf")
PANEL = 3 / 8 + 1 / 16


def near(inch: float) -> object:
    return pytest.approx(inches(inch), abs=1e-9)


# Between its walls


def test_the_opening_is_the_wall_less_what_is_put_on_the_walls_at_its_ends():
    row = board_of(*SEAT)
    assert row.values["opening"] == near(60 - PANEL)
    assert row.values["spare"] == near(60 - PANEL - 59.3125 - 0.25)
    assert board_of(*NICHE).values["opening"] == pytest.approx(1200)


def test_adhesive_counts_with_its_panel_and_none_is_nothing():
    thin = board_of(*SEAT, {"/panels/cladding/adhesive/thickness": "1/8 in"})
    assert thin.values["opening"] == near(60 - 1 / 2)
    clips = board_of(*SEAT, {"/panels/cladding/adhesive": {"kind": "none"}})
    assert clips.values["opening"] == near(60 - 3 / 8)


def test_a_leg_that_stands_up_beside_an_end_is_what_the_end_faces():
    """The left leg is 1/4 in thick and stands on the studs, 1/2 in behind the lining: the lining is nearer. With the
    lining left in place it takes a quarter of an inch off the opening."""
    up = {"/angles/seat-left/wall_leg": "up"}
    assert board_of(*SEAT, up).values["opening"] == near(60 - PANEL)
    in_place = {**up, "/angles/seat-left/lining_behind": "left in place"}
    assert board_of(*SEAT, in_place).values["opening"] == near(60 - PANEL - 1 / 4)


def test_the_diagonal_is_that_of_a_right_triangle():
    row = board_of(*SEAT, {"/boards/seat/length": "4 in", "/boards/seat/thickness": "3 in",
                           "/boards/seat/cracks/end-check/length": "1 in"})  # fmt: skip
    assert row.values["diagonal"] == near(5)


def test_an_end_far_from_its_wall_stands_free():
    row = board_of(*NICHE, {"/boards/shelf/gaps/right": "300 mm", "/boards/shelf/length": "897 mm"})
    assert (row.values["walled_ends"], row.values["placed_by_gaps"]) == (1.0, False)
    # from the left wall: 3 mm gap, 897 mm board, 300 mm to the end of the wall
    assert row.values["spare"] == pytest.approx(300)


def test_a_board_with_a_left_has_no_end_against_a_wall():
    row = board_of(*LEDGE)
    assert row.values["walled_ends"] == 0.0
    assert row.values["spare"] == near(37)
    assert "end_gap_least" not in row.values


def test_a_corner_out_of_square_is_scribed_on_site_and_gives_no_number():
    row = board_of(*SEAT, {"/corners/back-pier/angle": "92°"})
    assert "scribed" in row.outside["opening"]
    assert "scribed" in row.outside["spare"]
    assert "opening" not in row.values


@pytest.mark.parametrize(
    ("gone", "field", "missing"),
    [
        (("/boards/seat/gaps/left",), "spare", "/boards/seat/gaps/left"),
        (("/boards/seat/gaps/right",), "end_gap_least", "/boards/seat/gaps/right"),
        (("/panels/cladding/adhesive",), "opening", "/panels/cladding/adhesive"),
        (("/panels/cladding/adhesive/thickness",), "opening", "/panels/cladding/adhesive/thickness"),
        (("/walls/left/lining",), "return_bearing", "/walls/left/lining"),
        (("/boards/seat/gaps/back",), "back_bearing", "/boards/seat/gaps/back"),
        (("/boards/seat/gaps/back",), "back_gap", "/boards/seat/gaps/back"),
        (("/boards/seat/moisture",), "back_gap_needed", "/boards/seat/moisture"),
        (("/site/temperature",), "fit_least", "/site/temperature/warmest"),
        (("/site/humidity/driest",), "dry_end", "/site/humidity/driest"),
        (("/walls/back/floor_drop",), "height_most", "/walls/back/floor_drop/left"),
        (("/walls/back/passage",), "walked_past", "/walls/back/passage/walked_past"),
        (("/boards/seat/load",), "declared_person", "/boards/seat/load/point"),
        (("/boards/seat/load",), "declared_line", "/boards/seat/load/uniform"),
        (("/boards/seat/cut_long_by",), "cut_long_by", "/boards/seat/cut_long_by"),
        (("/steps",), "acclimatised", "/steps"),
        (("/steps",), "cut_after_panels", "/steps"),
        (("/site/use",), "public_room", "/site/use"),
        (("/corners/left-back",), "return_bearing", "/corners"),
        (("/corners/left-back",), "corner_hold", "/corners"),
    ],
)
def test_what_is_left_out_is_named_and_never_a_number(gone, field, missing):
    row = board_of(*SEAT, gone=gone)
    assert missing in row.missing[field]
    assert field not in row.values


def test_a_gap_off_nothing_asks_for_the_corner():
    row = board_of(*NICHE, gone=("/corners/back-right",))
    for field in ("placed_by_gaps", "walled_ends", "meets_panels"):
        assert row.missing[field] == ("/corners",)


def test_a_support_still_to_be_measured_leaves_the_height_open():
    row = board_of(*SEAT, {**TEMPLATE, "/angles/seat-left/bears_at": ON_SITE})
    for field in ("supports_apart", "top", "height_least", "at_seat_height"):
        assert row.missing[field] == ("/angles/seat-left/bears_at",)
    # it is written down as a seat, so its height does not have to tell
    assert row.values["carries_people"] is True


# What it lies on


def test_lining_panel_and_gap_are_taken_off_the_return():
    # left: 2-1/2 leg, 1/2 lining cut away, bare wall, 1/8 gap; right: 3 leg, panel and tape besides
    assert board_of(*SEAT).values["return_bearing"] == near(min(2.5 - 0.5 - 0.125, 3 - 0.5 - PANEL - 0.125))
    wide = board_of(*SEAT, {"/boards/seat/gaps/right": "1 in"})
    assert wide.values["return_bearing"] == near(3 - 0.5 - PANEL - 1)
    assert wide.inputs["return_bearing"][0] == "/boards/seat/gaps/right"


def test_the_back_lies_before_the_finished_face_or_before_the_leg():
    assert board_of(*SEAT).values["back_bearing"] == near(2.5 - 0.5 - PANEL - 0.125)
    assert board_of(*LEDGE).values["back_bearing"] == near(3 - 0.25 - 1 / 16)


def test_brackets_are_no_ledge():
    row = board_of(*BRACKETED)
    assert row.values["back_ledges"] == 0.0
    assert "back_bearing" not in row.values


# Height and reach


def test_the_floor_is_taken_where_the_board_is():
    # the floor falls by 5/8 in over 60; the board runs from 1/8 to 59-7/16 in
    row = board_of(*SEAT)
    assert row.values["height_least"] == near(17.5 + 0.625 * 0.125 / 60)
    assert row.values["height_most"] == near(17.5 + 0.625 * 59.4375 / 60)
    assert row.values["underside_most"] == near(15.75 + 0.625 * 59.4375 / 60)


@pytest.mark.parametrize(
    ("bears", "carries", "people"),
    [
        ("22 in", "display", True),
        # a board of 1-3/4 in on 22-1/4 in is 24 in high, which is no longer low
        ("22-1/4 in", "display", False),
        ("40 in", "standing", True),
    ],
)
def test_a_low_board_carries_people_whatever_it_is_called(bears, carries, people):
    """common practice: the lowest shelf under 24 in is built as a step"""
    row = board_of(*LEDGE, {"/angles/ledge-back/bears_at": bears, "/boards/ledge/carries": carries})
    assert row.values["carries_people"] is people


def test_reach_is_off_the_finished_face_and_the_way_is_off_the_bare_wall():
    row = board_of(*LEDGE)
    assert row.values["reach"] == near(0.25 + 1 / 16 + 3.625)
    assert row.values["way_left"] == near(72 - 0.25 - 1 / 16 - 3.625)
    assert board_of(*SEAT).values["reach"] == near(0.125 + 17)


def test_an_area_load_is_spread_over_the_depth():
    # 100 lbf/ft2 on 17 in is 141.67 lbf/ft
    assert board_of(*SEAT).values["declared_line"] == pytest.approx(100 * 17 / 12 * 4.4482216152605 / 304.8)
    line = board_of(*SEAT, {"/boards/seat/load/uniform": "120 lbf/ft"})
    assert line.values["declared_line"] == pytest.approx(120 * 4.4482216152605 / 304.8)


@pytest.mark.parametrize(
    ("edge", "ease"),
    [({"ease": "sharp"}, 0), ({"ease": "chamfer", "size": "3/16 in"}, 3 / 16), ({"ease": "bullnose"}, 7 / 8)],
)
def test_what_is_taken_off_the_front_edge(edge, ease):
    assert board_of(*SEAT, {"/boards/seat/edges/front": edge}).values["front_ease"] == near(ease)


# Moisture and movement


def test_the_band_of_the_room_by_the_handbook_table():
    """Wood Handbook, Table 4-2: at 70 °F wood comes to 6.2 % in air of 30 % and to 9.2 % in air of 50 %. The data's
    doubt of 1 % to either side. Table values have one decimal."""
    row = board_of(*SEAT, {"/site/temperature": {"coldest": "70 °F", "warmest": "70 °F"},
                           "/site/humidity": {"driest": "30 %", "dampest": "50 %"}})  # fmt: skip
    assert row.values["fit_least"] == pytest.approx(6.2, abs=0.051)
    assert row.values["fit_most"] == pytest.approx(9.2, abs=0.051)
    assert row.values["dry_end"] == pytest.approx(5.2, abs=0.051)
    assert row.values["damp_end"] == pytest.approx(10.2, abs=0.051)


def test_a_board_without_screws_may_swell_to_the_wall_with_its_whole_depth():
    row = board_of(*NICHE)
    assert "fixed_row" not in row.values
    # Wood Handbook, Table 13-5: red oak, tangential, 0.00369 per %
    assert row.values["back_gap_needed"] == pytest.approx(295 * 0.00369 * (row.values["damp_end"] - 8))


def test_a_board_moves_from_the_row_of_most_screws():
    # five round holes in the back angle, 2 in from a heel that lies 1/2 in behind the lining
    row = board_of(*SEAT)
    assert (row.values["fixed_row"], row.values["rows_without_slots"]) == (near(1.5), 1.0)
    # Wood Handbook, Table 13-5: white ash, tangential, 0.00274 per %
    swell = (1.5 - PANEL - 0.125) * 0.00274 * (row.values["damp_end"] - 8)
    assert row.values["back_gap_needed"] == pytest.approx(inches(swell))


def test_round_holes_in_a_second_row_hold_the_board_twice():
    row = board_of(*SEAT, {"/angles/seat-left/seat_holes/pattern": "seat-round"})
    # two holes of the return stand 5-1/2 and 13-1/2 in out of the wall: two rows more
    assert row.values["rows_without_slots"] == 3.0
    assert row.values["fixed_row"] == near(1.5)
    assert row.inputs["rows_without_slots"][0] == "/holes/seat-round/diameter"


def test_a_countersunk_slot_holds_the_board_too():
    sunk = {"/holes/seat-slot/countersink": {"angle": "82°", "diameter": "3/8 in"}}
    assert board_of(*SEAT, sunk).values["rows_without_slots"] == 3.0


def test_plywood_is_outside_the_figures_of_movement_and_of_strength():
    row = board_of(*SEAT, {"/boards/seat/species": "plywood"})
    assert row.values["strength_published"] is False
    assert "maker" in row.outside["movement_per_cent"]
    assert "maker" in row.outside["back_gap_needed"]


def test_time_in_the_workshop_is_no_time_in_the_room():
    row = board_of(*SEAT, {"/steps/settle/where": "workshop"})
    assert row.values["acclimatised"] is False
    assert "settles" not in row.values


def test_a_cut_that_waits_for_the_panels_by_way_of_other_steps_waits():
    # cut-board waits for roll, which follows lay at once
    assert board_of(*SEAT).values["cut_after_panels"] is True
    early = {"/steps/cut-board/after": ["fill", "hang"]}
    assert board_of(*SEAT, early).values["cut_after_panels"] is False
    assert board_of(*NICHE).values["meets_panels"] is False


# Screws


def test_a_screw_on_a_return_is_measured_from_the_corner():
    # the left wall is 48 in wide and ends at the corner: 48 - 31-3/4 - 2-3/4 out of the back wall
    row = screw_of("alcove-seat", "screw S1 of seat-left")
    assert row.values["from_fixed_row"] == near(48 - 31.75 - 2.75 - 1.5)
    assert row.values["end_distance"] == near(2 - 0.5 - 0.125)
    front = PANEL + 0.125 + 17
    assert row.values["edge_distance"] == near(front - 13.5)
    # the pier begins at the corner, and panel and tape lie on it
    row = screw_of("alcove-seat", "screw S2 of seat-pier")
    assert row.values["from_fixed_row"] == near(0.25 + 13.25 - 1.5)
    assert row.values["end_distance"] == near(2.5 - 0.5 - PANEL - 0.125)


def test_play_is_half_of_what_the_slot_leaves_less_the_drilling():
    row = screw_of("alcove-seat", "screw S1 of seat-left")
    assert row.values["play_given"] == near((0.625 - 0.19) / 2 - 1 / 32)
    sunk = {"/holes/seat-slot/countersink": {"angle": "82°", "diameter": "3/8 in"}}
    assert screw_of("alcove-seat", "screw S1 of seat-left", sunk).values["play_given"] == near(-1 / 32)
    along = {"/holes/seat-slot/slot_runs": "along the grain"}
    assert screw_of("alcove-seat", "screw S1 of seat-left", along).values["play_given"] == near(
        (0.21875 - 0.19) / 2 - 1 / 32
    )


def test_movement_at_a_screw_by_the_worked_example():
    """The alcove of the worked example: 11-3/4 in of ash from the row that holds it, fitted at 9 % in a band of 5.1 to
    11.2 %, moves by 0.126 in. The same wood 12 in away in this plan's room, by the larger of the two ends."""
    row = screw_of("alcove-seat", "screw S1 of seat-left")
    board = board_of(*SEAT)
    change = max(board.values["damp_end"] - 8, 8 - board.values["dry_end"])
    assert row.values["play_needed"] == pytest.approx(inches(12) * 0.00274 * change)
    assert inches(11.75) * 0.00274 * 3.9 == pytest.approx(inches(0.126), rel=5e-3)


def test_past_the_range_of_the_coefficient_the_shrinkage_counts():
    """Air of 15 % at 75 °F dries wood to 3.5 %, below 5 %: the larger of coefficient and shrinkage formula. White ash
    shrinks 7.8 % (Wood Handbook, Table 4-3): 12 (3.5 - 8)/(3000/7.8 - 30 + 8) = 0.149 in against 0.148."""
    dry = {"/site/humidity/driest": "15 %", "/site/temperature": {"coldest": "62 °F", "warmest": "75 °F"}}
    row = screw_of("alcove-seat", "screw S1 of seat-left", dry)
    low = board_of(*SEAT, dry).values["dry_end"]
    assert low < 5
    by_hand = max(12 * 0.00274 * (8 - low), 12 * (8 - low) / (3000 / 7.8 - 30 + 8))
    assert row.values["play_needed"] == near(by_hand)


def test_a_screw_of_the_row_that_holds_needs_no_play():
    row = screw_of("alcove-seat", "screw S3 of seat-back")
    assert row.values["holds_the_board"] is True
    assert row.values["play_needed"] == 0.0


def test_without_a_wall_width_a_return_gives_no_places():
    row = screw_of("alcove-seat", "screw S1 of seat-left", {**TEMPLATE, "/walls/left/width": ON_SITE})
    for field in ("from_fixed_row", "edge_distance", "play_needed", "holds_the_board"):
        assert "/walls/left/width" in row.missing[field]


def test_a_screw_under_no_board_waits_for_the_board():
    row = screw_of("display-shelf", "screw S1 of ledge-back", gone=("/boards", "/purchase", "/steps"))
    for field in ("end_distance", "edge_distance", "holds_the_board", "play_given", "play_needed"):
        assert row.missing[field] == ("/boards",)


def test_the_corner_is_held_by_whichever_screw_is_nearest():
    row = board_of(*SEAT)
    back = PANEL + 0.125
    left = hypot(2 - 0.5 - 0.125, 48 - 31.75 - 10.75 - back)
    right = hypot(2.5 - 0.5 - PANEL - 0.125, 0.25 + 5.25 - back)
    assert row.values["corner_hold"] == near(max(left, right))


def test_two_boards_on_one_angle_each_get_their_own_screws():
    changes = {
        "/boards/ledge/length": "30 in",
        "/boards/second": {"species": "black cherry", "wall": "long", "bears_on": ["ledge-back"], "left": "70 in",
                           "length": "39 in", "depth": "3-5/8 in", "thickness": "1-3/4 in", "gaps": {"back": "1/16 in"},
                           "moisture": "8 %", "carries": "display"},
    }  # fmt: skip
    # holes at 43, 55, 67, 79, 91 and 103 in of the wall; the boards run from 37 to 67 and from 70 to 109
    assert board_of(*LEDGE, changes).values["screws"] == 3.0
    assert board_of("display-shelf", "second", changes).values["screws"] == 3.0


# Cracks


def test_a_crack_keeps_its_distance_from_screws_beside_and_past_it():
    # beside: the front return screw lies 17-9/16 - 13-1/2 in behind the front edge, the crack 8 in
    assert crack_of("alcove-seat", "end-check").values["screw_distance"] == near(8 - 4.0625)
    # past its end: 31 - 29-7/8 in from the third screw of the back row, in line with it
    moved = {
        "/boards/seat/cracks/end-check/from_left": "31 in",
        "/boards/seat/cracks/end-check/from_front": "16-1/16 in",
    }
    assert crack_of("alcove-seat", "end-check", moved).values["screw_distance"] == near(1.125)


@pytest.mark.parametrize("key", ["from_left", "from_front", "length"])
def test_a_crack_whose_place_nobody_wrote_is_not_cleared(key):
    pointer = f"/boards/seat/cracks/end-check/{key}"
    row = crack_of("alcove-seat", "end-check", gone=(pointer,))
    assert row.missing["screw_distance"] == (pointer,)


def test_a_crack_over_half_the_board_parts_it():
    """common practice: a check deeper than half the thickness counts as through"""
    deep = {"/boards/seat/cracks/end-check/depth": "57/64 in"}
    assert crack_of("alcove-seat", "end-check", deep).values["parts_the_board"] is True
    half = {"/boards/seat/cracks/end-check/depth": "7/8 in"}
    assert crack_of("alcove-seat", "end-check", half).values["parts_the_board"] is False
    assert crack_of("alcove-seat", "end-check", half).values["depth_share"] == pytest.approx(0.5)


# Directions


@settings(max_examples=25)
@given(st.integers(min_value=61, max_value=120), st.integers(min_value=1, max_value=40))
def test_a_wider_board_never_needs_less_room(tenths, more):
    def needed(depth: float) -> object:
        return board_of(*NICHE, {"/boards/shelf/depth": f"{depth} mm"}).values["back_gap_needed"]

    assert needed(tenths) <= needed(tenths + more)


@settings(max_examples=25)
@given(st.integers(min_value=70, max_value=99))
def test_no_moisture_of_fitting_does_away_with_the_movement(tenths):
    row = screw_of("alcove-seat", "screw S1 of seat-left", {"/boards/seat/moisture": f"{tenths / 10} %"})
    assert row.values["play_needed"] > 0


@settings(max_examples=25)
@given(st.integers(min_value=0, max_value=16), st.integers(min_value=1, max_value=16))
def test_a_wider_gap_never_leaves_more_ledge(sixteenths, more):
    def bearing(gap: int) -> object:
        return board_of(*SEAT, {"/boards/seat/gaps/right": f"{gap / 16} in"}).values["return_bearing"]

    assert bearing(sixteenths) >= bearing(sixteenths + more)
