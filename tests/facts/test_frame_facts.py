"""Studs, blocks and walls: places by hand, what is not known named, and no wall passed by for want of studs."""

from __future__ import annotations

import pytest
from framing_rows import block_of, screw_of, studs_of, wall_of

from plumbrule.reading.units import to_si

ALCOVE, LEDGE, NICHE = "alcove-seat", "display-shelf", "cleat-shelf"
BLOCK = "/walls/left/blocking/seat-block-left"


def inch(value):
    return to_si(value, "in")


def test_studs_stand_from_left_to_right_with_their_dressed_size():
    rows = studs_of(ALCOVE, "back")
    assert [row.values["centre"] for row in rows] == pytest.approx(
        [inch(x) for x in (2.25, 14.75, 30.75, 46.75, 57.75)]
    )
    assert rows[0].values["width"] == pytest.approx(inch(1.5))  # 2x4 dressed, NDS Supplement Table 1A
    assert rows[0].values["depth"] == pytest.approx(inch(3.5))
    assert rows[0].values["has_one_before"] is False
    assert rows[1].values["spacing_before"] == pytest.approx(inch(12.5))
    assert all(row.values["used"] for row in rows)


def test_studs_that_no_screw_is_meant_for_are_not_used():
    used = [row.values["used"] for row in studs_of(LEDGE, "long")]
    assert used == [False, False, True, True, True, True, True, False, False, False]


def test_a_wall_that_things_hang_on_has_a_row_even_when_nobody_found_a_stud():
    (row,) = studs_of(ALCOVE, "back", gone=("/walls/back/framing/centres",))
    assert row.missing["centre"] == ("/walls/back/framing/centres",)
    screw = screw_of(ALCOVE, "W1 of seat-back", gone=("/walls/back/framing/centres",))
    assert "/walls/back/framing/centres" in screw.missing["wood_beside"]


def test_a_block_stands_between_its_studs():
    row = block_of(ALCOVE, "seat-block-left")
    # Studs at 29-1/4 and 47-1/4, 1-1/2 wide: 30 to 46-1/2 is clear, and the block is 16-1/2 long.
    assert row.values["end_fit"] == pytest.approx(0, abs=1e-9)
    assert (row.values["height"], row.values["depth"]) == pytest.approx((inch(9.25), inch(3.5)))
    assert row.values["end_screw_bite"] == pytest.approx(inch(3 - 1.5))
    assert row.values["carries_people"] is True


@pytest.mark.parametrize(("length", "fit"), [("16 in", 0.5), ("17 in", -0.5)])
def test_a_block_that_does_not_fit_says_so_with_its_sign(length, fit):
    row = block_of(ALCOVE, "seat-block-left", {f"{BLOCK}/length": length})
    assert row.values["end_fit"] == pytest.approx(inch(fit))


def test_a_gap_at_the_end_takes_bite_from_the_end_screw_and_an_overlap_gives_none():
    short = block_of(ALCOVE, "seat-block-left", {f"{BLOCK}/length": "16 in"})
    long = block_of(ALCOVE, "seat-block-left", {f"{BLOCK}/length": "17 in"})
    assert short.values["end_screw_bite"] == pytest.approx(inch(3 - 1.5 - 0.5))
    assert long.values["end_screw_bite"] == pytest.approx(inch(3 - 1.5))


def test_a_lag_screw_at_an_end_counts_without_its_tip():
    row = block_of(
        ALCOVE, "seat-block-left", {"/screws/block-screw/kind": "lag screw", "/screws/block-screw/diameter": "1/4 in"},
        gone=("/screws/block-screw/size",),
    )  # fmt: skip
    # E of a 1/4 lag is 5/32 in, NDS 2018 Table L2
    assert row.values["end_screw_full_bite"] == pytest.approx(inch(1.5 - 0.1562))


def test_ends_that_nobody_wrote_down_are_named():
    row = block_of(ALCOVE, "seat-block-left", gone=(f"{BLOCK}/each_end",))
    assert row.missing["end_screw_count"] == (f"{BLOCK}/each_end",)
    assert row.missing["end_screw_full_bite"] == (f"{BLOCK}/each_end",)


def test_wall_facts():
    row = wall_of(ALCOVE, "back")
    assert row.values["lining_thickness"] == pytest.approx(inch(0.5))
    assert row.values["lining_cut"] is True
    assert row.values["ways_found"] == 2
    assert row.values["proof_loaded"] is True
    assert wall_of(LEDGE, "long").values["lining_cut"] is False


def test_two_readings_of_one_detector_are_one_way():
    row = wall_of(ALCOVE, "back", {"/walls/back/framing/found_by": ["magnet", "magnet"]})
    assert row.values["ways_found"] == 1


@pytest.mark.parametrize(
    ("works_on", "proved"),
    [(["seat"], True), (["seat-back"], True), (["seat-left"], False), (["back"], False)],
    ids=str,
)
def test_a_proof_load_counts_for_the_board_or_for_the_steel_it_is_put_on(works_on, proved):
    row = wall_of(ALCOVE, "back", {"/steps/prove-load/works_on": works_on})
    assert row.values["proof_loaded"] is proved


def test_a_wall_without_steps_does_not_pass_as_proved():
    row = wall_of(ALCOVE, "back", gone=("/steps",))
    assert row.missing["proof_loaded"] == ("/steps",)


def test_what_the_wall_is_framed_with_follows_from_a_stud_size_and_from_nothing_else():
    assert wall_of(LEDGE, "long").values["framing_kind"] == "wood studs"
    unsaid = wall_of(LEDGE, "long", gone=("/walls/long/framing/stud",))
    assert unsaid.missing["framing_kind"] == ("/walls/long/framing/kind",)


@pytest.mark.parametrize(
    ("ways", "searched"),
    [(["cable scanner"], True), (["drawings", "box opened"], True), (["drawings"], False), ([], False)],
)
def test_drawings_alone_are_no_search_for_cables(ways, searched):
    assert wall_of(LEDGE, "long", {"/walls/long/services/looked_with": ways}).values["searched"] is searched
