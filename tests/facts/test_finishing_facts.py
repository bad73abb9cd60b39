"""Sanding, coats and fills: each change of grit is a row, and each wait the shortest that the steps promise."""

from __future__ import annotations

import pytest
from finishing_rows import finishing_of
from steel_rows import inches

from plumbrule.catalogue.fact import Row


def finish(changes=None, gone=(), plan="cleat-shelf") -> Row:
    (row,) = finishing_of(plan, "finish", changes, gone)
    return row


def fill(changes=None, gone=()) -> Row:
    return finishing_of("alcove-seat", "fill", changes, gone)[0]


def test_every_change_of_grit_is_a_row_at_the_finer_grit():
    rows = finishing_of("cleat-shelf", "grit_step")
    assert [(row.label, row.pointer, row.part) for row in rows] == [
        ("sanding of board shelf from 80 to 120", "/boards/shelf/sanding/1", "/boards/shelf"),
        ("sanding of board shelf from 120 to 180", "/boards/shelf/sanding/2", "/boards/shelf"),
    ]
    # charts of abrasives: 192, 116 and 82 micrometres
    assert [row.values["ratio"] for row in rows] == [pytest.approx(192 / 116), pytest.approx(116 / 82)]


def test_grits_that_nobody_wrote_are_one_row_that_wants_them():
    (row,) = finishing_of("cleat-shelf", "grit_step", gone=("/boards/shelf/sanding",))
    assert set(row.missing.values()) == {("/boards/shelf/sanding",)}
    assert finishing_of("panel-wall", "grit_step") == ()


def test_both_scales_are_told_apart():
    rows = finishing_of("cleat-shelf", "grit_step", {"/boards/shelf/sanding": ["P220", "P320", 320]})
    assert [row.values["ratio"] for row in rows] == [pytest.approx(68 / 46), pytest.approx(46 / 35)]


def test_a_grit_that_nobody_makes_is_outside():
    rows = finishing_of("cleat-shelf", "grit_step", {"/boards/shelf/sanding": [80, 130, 180]})
    assert all("130" in row.outside["ratio"] for row in rows)
    assert "130" in finish({"/boards/shelf/sanding": [80, 130]}).outside["last_grain"]


def test_a_board_left_bare_has_no_coats_to_count():
    row = finish({"/boards/shelf/finish": {"kind": "none"}})
    assert row.values["kind"] == "none"
    assert "coats_top" not in row.values


def test_coats_that_are_not_written_are_none_and_said_to_be_assumed():
    row = finish(gone=("/boards/shelf/finish/coats/bottom",))
    assert row.values["coats_bottom"] == 0
    assert "no coat" in row.assumed["/boards/shelf/finish/coats/bottom"]


def test_a_finish_that_nobody_names_is_missing():
    row = finish(gone=("/boards/shelf/finish",))
    for field in ("kind", "film", "coats_top", "cure_needed", "coarsest_grain"):
        assert row.missing[field] == ("/boards/shelf/finish",), field


def test_one_coat_waits_for_no_other():
    coats = {"top": 1, "bottom": 1, "edges": 1}
    row = finish({"/boards/shelf/finish/coats": coats}, gone=("/steps/finish/between_coats",))
    assert "between_coats" not in row.values | row.missing
    assert finish(gone=("/steps/finish/between_coats",)).missing["between_coats"] == ("/steps/finish/between_coats",)


def test_finishing_in_several_steps_waits_from_one_to_the_next():
    second = {
        "task": "finish board",
        "works_on": ["shelf"],
        "after": ["finish"],
        "between_coats": "9 h",
        "then_wait": "21 days",
    }
    row = finish({"/steps/finish/then_wait": "3 h", "/steps/more": second, "/steps/set/after": ["more", "fix"]})
    assert row.values["between_coats"] == 3
    assert row.values["set_after"] == 21 * 24


def test_a_setting_that_does_not_wait_for_the_finish_gives_it_no_time():
    row = finish({"/steps/set/after": ["fix"]})
    assert (row.values["set_after_finish"], row.values["set_after"], row.values["loaded_after"]) == (True, 0, 0)


def test_a_board_that_is_finished_where_it_hangs_is_not_set_afterwards():
    row = finish(
        {"/steps/set/after": ["sand", "fix"], "/steps/finish/after": ["set"], "/steps/prove/after": ["finish"]}
    )
    assert row.values["set_after_finish"] is False
    assert "set_after" not in row.values
    assert row.values["loaded_after"] == 21 * 24


def test_the_first_lasting_load_counts_and_handing_over_is_one():
    row = finish({"/steps/over": {"task": "hand over", "after": ["fix"]}})
    assert row.values["loaded_after"] == 0


def test_every_step_that_sands_says_where_its_dust_goes():
    again = {"task": "sand board", "works_on": ["shelf"], "after": ["sand"]}
    assert finish().values["dust_taken_away"] is True
    assert finish({"/steps/more": again}).values["dust_taken_away"] is False
    assert finish(gone=("/steps/sand/works_on",)).missing["dust_taken_away"] == ("/steps/sand/works_on",)


@pytest.mark.parametrize(
    ("edge", "eased"),
    [({"ease": "round", "size": "2 mm"}, 2), ({"ease": "sharp"}, 0), ({"ease": "bullnose"}, 3), ({}, 0)],
)
def test_the_sharpest_edge_is_the_one_that_counts(edge, eased):
    """The other edges are rounded to 3 mm; a full round takes half of 32 mm."""
    assert finish({"/boards/shelf/edges/back": edge}).values["sharpest_edge"] == eased


def test_people_sit_on_what_is_low_or_meant_for_it():
    assert finish(plan="alcove-seat").values["carries_people"] is True
    assert finish().values["carries_people"] is False


# Fills


def test_only_epoxy_is_poured():
    assert len(finishing_of("alcove-seat", "fill")) == 1
    assert finishing_of("alcove-seat", "fill", {"/boards/seat/cracks/end-check/fill": "wood patch"}) == ()


def test_a_crack_is_sure_of_one_pour_where_a_step_may_be_for_another():
    again = {"task": "fill cracks", "works_on": ["seat"], "after": ["fill"], "then_wait": "24 h"}
    other = {"depth": "1/8 in", "length": "2 in", "width": "1/8 in", "fill": "epoxy"}
    assert fill({"/steps/more": again}).values["pour"] == pytest.approx(inches(1 / 8))
    both = fill({"/steps/more": again, "/boards/seat/cracks/other": other})
    assert (both.values["pours"], both.values["pour"]) == (1, pytest.approx(inches(1 / 4)))


def test_a_fill_that_no_step_makes_is_missing():
    row = fill({"/steps/fill/task": "ease edges"})
    assert row.missing["pours"] == ("/steps",)
    assert row.missing["worked"] == ("/steps",)


def test_the_first_tool_after_the_pour_counts():
    assert fill().values["worked_after"] == 48
    early = {"/steps/sand/after": ["flatten"]}
    assert fill(early).values["worked_after"] == 0


def test_oil_goes_into_wood_and_not_into_epoxy():
    assert fill().values["finish_soaks_in"] is False
    assert fill({"/boards/seat/finish/kind": "tung oil"}).values["finish_soaks_in"] is True
    assert fill({"/boards/seat/finish": {"kind": "none"}}).values["finish_soaks_in"] is False
