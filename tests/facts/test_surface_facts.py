"""How a wall is made ready: which wall has a face at all, what counts as done before, and how long it then waits."""

from __future__ import annotations

import pytest
from finishing_rows import face_of, faces_of
from steel_rows import inches

from plumbrule.catalogue.fact import Row

NORTH = "/walls/north/surface"


def north(changes=None, gone=()) -> Row:
    return face_of("panel-wall", "north", changes, gone)


def step(task: str, **more) -> dict:
    return {"task": task, "works_on": ["north"], **more}


def test_each_panelled_wall_has_a_face_and_each_painted_one():
    rows = faces_of("alcove-seat")
    assert [(row.label, row.pointer, row.part, row.values["bonded"]) for row in rows.values()] == [
        ("surface of wall back", "/walls/back/surface", "/walls/back", True),
        ("surface of wall pier", "/walls/pier/surface", "/walls/pier", True),
        ("surface of wall left", "/walls/left/surface", "/walls/left", False),
    ]
    assert faces_of("display-shelf") == {}


def test_panels_on_clips_are_not_bonded():
    assert faces_of("panel-wall", {"/panels/cladding/adhesive": {"kind": "none"}}) == {}


def test_an_adhesive_that_nobody_names_leaves_the_wall_unknown():
    row = north(gone=("/panels/cladding/adhesive",))
    assert row.missing["bonded"] == ("/panels/cladding/adhesive",)
    assert row.missing["adhesive_area"] == ("/panels/cladding/adhesive",)
    assert "washed" in row.values


def test_a_wall_whose_face_nobody_looked_at_names_what_to_look_at():
    row = north(gone=(NORTH,))
    assert row.missing["coating"] == (f"{NORTH}/coating",)
    assert row.missing["state"] == (f"{NORTH}/state",)
    assert row.missing["gap_under_panel"] == (f"{NORTH}/out_of_flat",)
    assert row.missing["bare_spots"] == (f"{NORTH}/coating", f"{NORTH}/state")
    assert row.missing["paint_under"] == (f"{NORTH}/coating",)
    assert row.missing["paint_age"] == (f"{NORTH}/coated_ago",)


def test_without_steps_everything_that_is_done_is_missing():
    row = north(gone=("/steps",))
    fields = (
        *("washed", "rinsed", "dries", "abraded", "abrade_grain", "cleaned_after_sanding", "wiped", "primed"),
        *("bond_tried", "bond_tried_for", "panels_settled", "panels_settle", "rolled", "rolled_at_once"),
    )
    for field in fields:
        assert row.missing[field] == ("/steps",), field
    assert not row.failed


def test_a_plan_that_never_lays_its_panels_is_not_judged_for_their_order():
    row = north({"/steps/lay/task": "record open wall"})
    assert row.missing["washed"] == ("/steps",)
    assert row.missing["rolled"] == ("/steps",)


# What counts as done


@pytest.mark.parametrize(
    ("field", "name"),
    [("washed", "wash"), ("abraded", "abrade"), ("wiped", "wipe"), ("bond_tried", "try"), ("panels_settled", "settle"),
     ("rolled", "roll")],
)  # fmt: skip
def test_a_step_that_does_something_else_is_not_it(field, name):
    assert north().values[field] is True
    assert north({f"/steps/{name}/task": "record open wall"}).values[field] is False


@pytest.mark.parametrize(("field", "name"), [("washed", "wash"), ("wiped", "wipe"), ("panels_settled", "settle")])
def test_a_step_that_does_not_say_what_it_works_on_proves_nothing(field, name):
    assert north(gone=(f"/steps/{name}/works_on",)).missing[field] == (f"/steps/{name}/works_on",)


def test_a_step_that_laying_does_not_wait_for_is_not_done_before():
    loose = north({"/steps/wipe/after": ["base-off"], "/steps/lay/after": ["dust", "try", "dry-lay"]})
    assert loose.values["wiped"] is False
    assert loose.values["washed"] is True


def test_a_second_laying_that_waits_for_nothing_undoes_it():
    row = north({"/steps/lay-first": step("lay panels", works_on=["cladding"])})
    assert row.values["washed"] is False
    assert row.values["wiped"] is False


def test_another_wall_s_wash_is_not_this_wall_s():
    rows = faces_of("alcove-seat", {"/steps/wash/works_on": ["back"]})
    assert rows["surface of wall back"].values["washed"] is True
    assert rows["surface of wall pier"].values["washed"] is False


def test_acclimatising_in_a_workshop_is_no_settling():
    assert north({"/steps/settle/where": "workshop"}).values["panels_settled"] is False


# Order and waits


def test_waits_are_the_least_that_is_promised():
    row = north()
    assert row.values["dries"] == 24
    assert row.values["wipe_waits"] == pytest.approx(0.25)
    assert row.values["bond_tried_for"] == pytest.approx(72 + 40 / 60 + 0.25)
    assert row.values["panels_settle"] == pytest.approx(72 + 1 + 40 / 60 + 0.25)


def test_water_that_may_come_at_any_time_may_come_last():
    again = {"/steps/rinse-again": step("rinse wall", after=["rinse"], then_wait="48 h")}
    assert north(again).values["dries"] == 0


def test_water_after_sanding_dries_before_laying():
    late = {"/steps/rinse-again": step("rinse wall", after=["dust"], then_wait="5 h"),
            "/steps/wipe/after": ["try", "dry-lay", "rinse-again"]}  # fmt: skip
    assert north(late).values["dries"] == pytest.approx(5 + 40 / 60 + 0.25)


def test_the_last_of_two_primers_counts():
    twice = {"/steps/first": step("prime wall", after=["dust"], then_wait="20 days"),
             "/steps/second": step("prime wall", after=["first"], then_wait="2 h"),
             "/steps/wipe/after": ["try", "dry-lay", "second"]}  # fmt: skip
    assert north(twice).values["prime_waits"] == pytest.approx(2 + 40 / 60 + 0.25)


def test_new_paint_is_as_old_as_its_wait_and_old_paint_as_the_plan_says():
    assert north().values["paint_age"] == 11 * 8766
    fresh = {"/steps/repaint": step("paint wall", after=["dust"], then_wait="3 days"),
             "/steps/wipe/after": ["try", "dry-lay", "repaint"]}  # fmt: skip
    assert north(fresh).values["paint_age"] == pytest.approx(72 + 40 / 60 + 0.25)
    papered = north({f"{NORTH}/coating": "wallpaper"})
    assert papered.values["paint_under"] is False
    assert "paint_age" not in papered.values | papered.missing


def test_the_last_sanding_counts_and_where_none_is_last_the_coarsest():
    fine_last = {"/steps/abrade/grit": 80, "/steps/fine": step("abrade wall", grit=220, after=["abrade"]),
                 "/steps/dust/after": ["fine"]}  # fmt: skip
    assert (north(fine_last).values["abrade_grit"], north(fine_last).values["abrade_grain"]) == (220, 68)
    either = {**fine_last, "/steps/fine": step("abrade wall", grit=60, after=["rinse"]),
              "/steps/dust/after": ["abrade", "fine"]}  # fmt: skip
    assert north(either).values["abrade_grain"] == 268


def test_dust_is_taken_off_after_each_sanding_and_before_all_that_follows():
    primed = {"/steps/prime": step("prime wall", after=["abrade"]), "/steps/wipe/after": ["try", "dry-lay", "prime"]}
    assert north(primed).values["cleaned_after_sanding"] is False
    primed["/steps/prime"] = step("prime wall", after=["dust"])
    assert north(primed).values["cleaned_after_sanding"] is True


def test_what_lays_the_wall_bare_wants_primer_after_it():
    assert north().values["bare_spots"] is False
    patched = {"/steps/patch": step("patch wall", after=["base-off"]), "/steps/wash/after": ["plates-off", "patch"]}
    assert north(patched).values["bare_spots"] is True
    assert north(patched).values["primed"] is False
    primed = {
        **patched,
        "/steps/prime": step("prime wall", after=["dust"]),
        "/steps/wipe/after": ["try", "dry-lay", "prime"],
    }
    assert north(primed).values["primed"] is True
    assert north({f"{NORTH}/state": ["bare board"]}).values["bare_spots"] is True
    assert north({f"{NORTH}/coating": "none"}, gone=(f"{NORTH}/state",)).values["bare_spots"] is True


def test_a_wall_that_only_gets_primer_is_primed_by_it():
    row = face_of("alcove-seat", "left", {"/steps/paint/task": "record open wall"})
    assert row.values["primed"] is True


# Flatness and weight


def test_no_piece_is_longer_than_its_wall():
    """1/64 in under 2 ft, and pieces of at most 30 in: (30/24)² of it."""
    row = face_of("alcove-seat", "pier")
    assert row.values["gap_under_panel"] == pytest.approx(inches((30 / 24) ** 2 / 64))
    assert face_of("alcove-seat", "back").values["gap_under_panel"] == pytest.approx(inches(1 / 32))


def test_strips_count_for_what_they_cover_and_dabs_for_nothing_known():
    strips = {
        "kind": "acrylic foam tape",
        "covers": "strips",
        "width": "1 in",
        "spacing": "4 in",
        "thickness": "1/16 in",
    }
    row = north({"/panels/cladding/adhesive": strips})
    assert row.values["adhesive_area"] == pytest.approx(inches(1) ** 2 * 96)
    assert "dab" in north({"/panels/cladding/adhesive/covers": "dabs"}).outside["adhesive_area"]
    gone = north({"/panels/cladding/adhesive/covers": "beads"})
    assert gone.missing["adhesive_area"] == ("/panels/cladding/adhesive/width", "/panels/cladding/adhesive/spacing")
    impossible = north({"/panels/cladding/adhesive": {**strips, "width": "5 in"}})
    assert "apart" in impossible.failed["adhesive_area"]


def test_a_bond_tried_on_a_like_wall_of_the_field_speaks_for_both():
    rows = faces_of("alcove-seat")
    assert all(rows[f"surface of wall {wall}"].values["bond_tried"] for wall in ("back", "pier"))
    for change in ({"/walls/pier/surface/state": ["chalking"]}, {"/walls/pier/surface/coating": "flat paint"}):
        rows = faces_of("alcove-seat", change)
        assert rows["surface of wall pier"].values["bond_tried"] is False
        assert rows["surface of wall back"].values["bond_tried"] is True
