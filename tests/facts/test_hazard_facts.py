"""What is read off a plan about who may be hurt: which walls, boards and tins a step meets, and what is owned."""

from __future__ import annotations

from typing import Any

import pytest
from steel_rows import plan_of

from plumbrule.catalogue.fact import Row
from plumbrule.facts.hazards import hazards_rows
from plumbrule.facts.protection import protection_needed
from plumbrule.facts.supports import supports
from plumbrule.reading.units import to_si

FT2 = to_si(1, "ft²")
LB = to_si(1, "lb")


def rows_of(name: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> dict[str, tuple[Row, ...]]:
    plan = plan_of(name, changes, gone)
    return hazards_rows(plan, supports(plan))


def row_of(
    kind: str, name: str, pointer: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()
) -> Row:
    return next(row for row in rows_of(name, changes, gone)[kind] if row.pointer == pointer)


def step_of(name: str, step: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    return row_of("hazard_step", name, f"/steps/{step}", changes, gone)


def wall_of(name: str, wall: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    return row_of("old_wall", name, f"/walls/{wall}", changes, gone)


def test_a_wall_is_touched_by_its_steps_and_by_what_is_fixed_to_it() -> None:
    assert wall_of("alcove-seat", "back").values["disturbed"] == ("cut", "ground", "drilled")
    assert wall_of("display-shelf", "long").values["disturbed"] == ("drilled",)
    assert wall_of("display-shelf", "long", gone=("/steps",)).values["disturbed"] == ("drilled",)
    assert wall_of("panel-wall", "north").values["disturbed"] == ("pried", "ground")
    untouched = wall_of("panel-wall", "north", gone=("/steps",))
    assert untouched.values["touched"] is False


def test_the_face_that_is_ground_is_the_whole_wall_and_what_is_cut_its_strips() -> None:
    # 14-1/6 ft, 8-1/2 ft at one end and 8 ft 5-3/4 in at the other
    whole = 170 / 12 * (102 + 101.75) / 2 / 12
    assert wall_of("panel-wall", "north").values["paint_disturbed"] == pytest.approx(whole * FT2)
    # without sanding: 59-1/2 in of steel with a leg of 3-1/2 in
    gone = ("/steps/abrade",)
    cut = wall_of("alcove-seat", "back", {"/steps/dust/after": ["rinse"]}, gone)
    assert cut.values["paint_disturbed"] == pytest.approx(59.5 * 3.5 * 25.4**2)
    assert wall_of("display-shelf", "long").values["paint_disturbed"] == 0
    assert wall_of("display-shelf", "long", gone=("/steps",)).missing["paint_disturbed"] == ("/steps",)


def test_lining_that_is_cut_for_no_steel_may_be_all_of_the_wall() -> None:
    step = {"task": "cut away lining", "works_on": ["north"]}
    row = wall_of("panel-wall", "north", {"/steps/open": step, "/steps/dust/after": ["rinse"]}, ("/steps/abrade",))
    assert row.values["paint_disturbed"] == pytest.approx(170 / 12 * (102 + 101.75) / 2 / 12 * FT2)


def test_a_year_that_nobody_writes_down_is_taken_as_old_and_said() -> None:
    row = wall_of("display-shelf", "long", gone=("/site/year_built",))
    assert row.values["year_known"] is False and "year_built" not in row.values
    assert "old house" in row.assumed["/site/year_built"]
    untouched = wall_of("panel-wall", "north", gone=("/site/year_built", "/steps"))
    assert not untouched.assumed


def test_a_region_that_nobody_writes_down_is_elsewhere() -> None:
    assert wall_of("display-shelf", "long").values["region"] == "US"
    assert wall_of("cleat-shelf", "back").values["region"] == "CA"
    assert wall_of("bracket-shelf", "bench").values["region"] == "elsewhere"
    assert wall_of("display-shelf", "long", gone=("/site/region",)).values["region"] == "elsewhere"


def test_lead_safe_work_is_wanted_in_every_step_that_disturbs_the_wall() -> None:
    one = {"/steps/abrade/controls": ["lead-safe work"]}
    assert wall_of("panel-wall", "north", one).values["lead_safe"] is False
    assert wall_of("panel-wall", "north", {**one, "/steps/base-off/controls": ["lead-safe work"]}).values["lead_safe"]


def test_a_swab_tells_lead_but_not_asbestos() -> None:
    swabs = {f"/walls/north/surface/tests/{kind}/method": "swab" for kind in ("lead", "asbestos")}
    row = wall_of("panel-wall", "north", swabs)
    assert (row.values["lead"], row.values["asbestos"]) == ("not found", "not tested")
    assert "swab" in row.assumed["/walls/north/surface/tests/asbestos"]
    found = wall_of("panel-wall", "north", {**swabs, "/walls/north/surface/tests/asbestos/result": "found"})
    assert found.values["asbestos"] == "found"


def test_dust_of_a_hole_is_that_of_what_is_drilled() -> None:
    assert step_of("cleat-shelf", "pilots").values["dust"] == "gypsum"
    tile = {"/walls/back/lining": [{"material": "tile", "thickness": "9 mm"}]}
    assert step_of("cleat-shelf", "pilots", tile).values["dust"] == "masonry"
    brick = {"/walls/cheek-left/framing": {"kind": "masonry"}}
    assert step_of("cleat-shelf", "pilots", brick).values["dust"] == "masonry"
    unknown = step_of("cleat-shelf", "pilots", gone=("/walls/back/framing",))
    assert unknown.missing["dust"] == ("/walls/back/framing",)


def test_a_step_that_does_not_say_what_it_is_done_to_is_done_to_all() -> None:
    species = {"/boards/seat/species": "teak"}
    assert step_of("alcove-seat", "sand", species, ("/steps/sand/works_on",)).values["wood_risk"] == "allergy"
    assert step_of("alcove-seat", "finish", gone=("/steps/finish/works_on",)).values["vapour"] == "mild"


def test_what_is_rinsed_off_is_what_was_washed_on() -> None:
    assert step_of("panel-wall", "wash").values["alkali"] is True
    assert step_of("panel-wall", "rinse").values["alkali"] is True
    assert step_of("alcove-seat", "rinse").values["alkali"] is False
    mild = step_of("panel-wall", "rinse", {"/steps/wash/with": "mild detergent"})
    assert mild.values["alkali"] is False
    assert step_of("panel-wall", "rinse", gone=("/steps/wash/with",)).missing["alkali"] == ("/steps/wash/with",)


@pytest.mark.parametrize(
    ("finish", "vapour", "rags"),
    [("linseed oil", "flammable", "safe"), ("lacquer", "strong", "none"), ("clear epoxy", "mild", "none"),
     ("two-part polyurethane", "two-part", "none"), ("mineral oil", "none", "none")],
)  # fmt: skip
def test_what_is_in_the_tin(finish: str, vapour: str, rags: str) -> None:
    row = step_of("bracket-shelf", "finish", {"/boards/shelf/finish/kind": finish})
    assert (row.values["vapour"], row.values["rags"]) == (vapour, rags)
    assert row.values["epoxy"] is (finish == "clear epoxy")


def test_paint_may_be_an_oil_paint_and_that_is_said() -> None:
    row = step_of("bracket-shelf", "finish", {"/boards/shelf/finish/kind": "paint"})
    assert row.values["vapour"] == "flammable" and "oil paint" in row.assumed["/boards/shelf/finish/kind"]


def test_rags_are_safe_in_water_at_once_or_flat_outdoors() -> None:
    assert step_of("bracket-shelf", "finish").values["rags"] == "safe"
    assert step_of("bracket-shelf", "finish", gone=("/steps/rags/controls",)).values["rags"] == "no way written"
    later = {"/steps/rags/after": ["finish"]}
    assert step_of("bracket-shelf", "finish", later, ("/steps/rags/at_once_after",)).values["rags"] == "left"
    own = {"/steps/finish/controls": ["rags laid flat outdoors"], "/steps/hand-over/after": ["prove-load"]}
    assert step_of("bracket-shelf", "finish", own, ("/steps/rags",)).values["rags"] == "safe"


def test_steel_that_is_painted_on_site_is_not_powder_coated() -> None:
    coat = {"/sections/ledge-steel/coating": "powder coat"}
    row = step_of("display-shelf", "coat", coat)
    assert row.values["vapour"] == "strong" and "oil enamel" in row.assumed["/steps/coat/works_on"]


def test_the_heaviest_thing_counts_as_bought_and_as_finished() -> None:
    # 62.4 x 1.12 x 0.60 pcf: 62 x 17-1/2 x 2 in as bought, 59-5/16 x 17 x 1-3/4 in finished
    pcf = 62.4 * 1.12 * 0.60 / 1728
    assert step_of("alcove-seat", "settle").values["mass_lifted"] == pytest.approx(pcf * 62 * 17.5 * 2 * LB)
    assert step_of("alcove-seat", "set").values["mass_lifted"] == pytest.approx(pcf * 59.3125 * 17 * 1.75 * LB)
    assert step_of("alcove-seat", "set").values["each_lifts"] == pytest.approx(pcf * 59.3125 * 17 * 1.75 * LB / 2)
    # the longest angle: 5-3/4 x 1/4 in, 59-1/2 in long
    assert step_of("alcove-seat", "hang").values["mass_lifted"] == pytest.approx(490 / 1728 * 1.4375 * 59.5 * LB)
    # four panels of 48 x 8 x 3/8 in at 35 pcf
    assert step_of("panel-wall", "settle").values["mass_lifted"] == pytest.approx(4 * 35 / 1728 * 48 * 8 * 0.375 * LB)


def test_a_sheet_weighs_what_the_heaviest_of_its_kind_weighs() -> None:
    row = step_of("bracket-shelf", "set", {"/boards/shelf/species": "MDF"})
    size = 1000 * 220 * 38 / 304.8**3
    assert row.values["mass_lifted"] == pytest.approx(53 * size * LB)


def test_how_high_the_work_goes_counts_from_the_floor_under_it() -> None:
    # 8 ft 5-3/4 in of ceiling and 1/2 in of drop at the right, more than 8 ft 6 in at the left
    assert step_of("panel-wall", "lay").values["reach_height"] == pytest.approx(102.25 * 25.4)
    assert step_of("panel-wall", "seal").values["reach_height"] == pytest.approx(102.25 * 25.4)
    low = step_of("panel-wall", "seal", {"/sealants/perimeter/joints": ["floor"]})
    assert "reach_height" not in low.values and "reach_height" not in low.missing
    assert step_of("display-shelf", "hang").values["reach_height"] == pytest.approx(56.25 * 25.4)
    unknown = step_of("panel-wall", "lay", gone=("/walls/north/ceiling",))
    assert unknown.missing["reach_height"] == ("/walls/north/ceiling/left", "/walls/north/ceiling/right")


def test_only_windows_over_the_board_count() -> None:
    window = {"left": "2 in", "width": "26 in", "bottom": "48 in", "top": "80 in", "edge": "casing"}
    over = row_of("board_climb", "alcove-seat", "/boards/seat", {"/walls/back/openings/w": window})
    assert over.values["sill_over_board"] == pytest.approx(30.5 * 25.4)
    beside = row_of("board_climb", "display-shelf", "/boards/ledge",
                    {"/walls/long/openings": {"w": {**window, "bottom": "80 in", "top": "90 in"}}})  # fmt: skip
    assert beside.values["under_a_window"] is False
    door = row_of(
        "board_climb",
        "alcove-seat",
        "/boards/seat",
        {"/walls/back/openings/w": {**window, "bottom": "0 in", "top": "12 in"}},
    )
    assert door.values["under_a_window"] is False
    assert row_of("board_climb", "alcove-seat", "/boards/seat", gone=("/walls/back/openings",)).missing[
        "under_a_window"
    ] == ("/walls/back/openings",)


def test_what_must_be_owned_is_what_the_steps_wear_and_use() -> None:
    needed = protection_needed(plan_of("bracket-shelf"))
    assert needed["metal can with lid"] == ("/steps/rags",)
    assert needed["chemical gloves"] == ("/steps/finish",)
    assert needed["dust extraction"] == ("/steps/sand",)
    assert "ventilation" not in needed and "area kept clear" not in needed
    assert protection_needed(plan_of("alcove-seat"))["two-pole contact tester"] == ("/steps/prove", "/steps/extend")
    assert not protection_needed(plan_of("bracket-shelf", gone=("/steps",)))


def test_protection_is_on_hand_or_bought() -> None:
    rows = {row.label: row for row in rows_of("alcove-seat")["protection"]}
    assert rows["vapour respirator"].values["bought"] == 1 and not rows["vapour respirator"].values["on_hand"]
    assert rows["extinguisher"].values["bought"] == 0 and rows["extinguisher"].values["on_hand"]
    (whole,) = rows_of("alcove-seat", gone=("/steps",))["protection"]
    assert whole.missing["on_hand"] == whole.missing["bought"] == ("/steps",)
    lacking = {row.label: row for row in rows_of("alcove-seat", gone=("/purchase",))["protection"]}
    assert lacking["vapour respirator"].missing["bought"] == ("/purchase",)
