"""Every edge of the panels of shipped plans, with figures worked by hand; and what is told where the plan is silent."""

from __future__ import annotations

from typing import Any

import pytest
from steel_rows import plan_of

from plumbrule.catalogue.fact import Row
from plumbrule.facts.joints import joints_rows, sealant_volumes
from plumbrule.facts.joints_edges import edges
from plumbrule.facts.layout import layouts
from plumbrule.facts.supports import supports
from plumbrule.reading.units import to_si

FIELD = "/panels/cladding"
EXPANSION = f"{FIELD}/panel/expansion"
LEFT = "joint in the left corner of wall north"
CEILING = "joint under the ceiling of wall north"


def rows_of(name: str, kind: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> dict[str, Row]:
    return {row.label: row for row in joints_rows(plan_of(name, changes, gone), ()).get(kind, ())}


def inches(row: Row, field: str) -> float:
    value = row.values[field]
    assert isinstance(value, float)
    return value / 25.4


def test_a_plan_without_panels_has_no_joints() -> None:
    assert joints_rows(plan_of("display-shelf"), ()) == {}


def test_the_edges_of_two_walls_round_an_inside_corner_and_a_bare_end() -> None:
    assert list(rows_of("alcove-seat", "joint")) == [
        "joint under the ceiling of wall back", "joint over the floor of wall back",
        "joint in the left corner of wall back", "joint in the right corner of wall back",
        "joint under the ceiling of wall pier", "joint over the floor of wall pier",
        "joint in the left corner of wall pier", "edge at the right corner of wall pier",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("name", "label", "field", "expected"),
    [
        # 170 in wide, 102 and 101-3/4 in to the ceiling, floor falling by 1/2 in; window 40 in wide, 36 to 82 in up
        ("panel-wall", CEILING, "length", 170.0002),
        ("panel-wall", LEFT, "length", 102),
        ("panel-wall", "joint in the right corner of wall north", "length", 102.25),
        ("panel-wall", "joint round window of wall north", "length", 2 * 46 + 2 * 40),
        ("panel-wall", CEILING, "run", 102.25),
        ("panel-wall", LEFT, "run", 170),
        ("panel-wall", "joint round window of wall north", "run", 170),
        # 10 °F of foamed PVC at 1.2e-4 per °C: 6.667e-4 of 170 in, and half of it
        ("panel-wall", LEFT, "movement", 0.05667),
        ("panel-wall", CEILING, "movement", 0.03408),
        ("panel-wall", LEFT, "gap_needed", 0.22667),
        # 3/8 panel, 1/16 tape, 3/16 strip
        ("panel-wall", LEFT, "depth", 0.25),
        # 18 °F on 60 and on 95-3/8 in
        ("alcove-seat", "joint in the left corner of wall back", "movement", 0.036),
        ("alcove-seat", "joint under the ceiling of wall back", "movement", 0.05723),
    ],
)
def test_figures_by_hand(name: str, label: str, field: str, expected: float) -> None:
    assert inches(rows_of(name, "joint")[label], field) == pytest.approx(expected, abs=6e-6, rel=1e-4)


def test_the_expansion_of_the_core_is_assumed_and_said() -> None:
    """Of the published range of foamed PVC, 0.7 to 1.5e-4, the worst: 5/4 of what the plan's own data sheet says."""
    row = rows_of("panel-wall", "joint", None, (EXPANSION,))[LEFT]
    assert row.assumed[EXPANSION].endswith("1.50e-4 per °C is taken, the most that is published for foamed PVC")
    assert inches(row, "movement") == pytest.approx(0.05667 * 5 / 4, rel=1e-3)
    given = rows_of("panel-wall", "joint", {EXPANSION: "6e-5 per °C"})[LEFT]
    assert not given.assumed
    assert inches(given, "movement") == pytest.approx(0.05667 / 2, rel=1e-3)


@pytest.mark.parametrize(
    ("core", "strain"),
    [
        # 10 °F and 20 % of humidity: wood across its grain, 5.8e-5 x 5.5556, and 0.0033 x 20 / 40
        ("MDF", 5.8e-5 * 50 / 9 + 0.00165),
        ("gypsum", 1.62e-5 * 50 / 9 + 7.2e-6 * 20),
        ("aluminium composite", 2.4e-5 * 50 / 9),
    ],
)
def test_what_a_core_adds_to_its_length(core: str, strain: float) -> None:
    row = rows_of("panel-wall", "joint", {f"{FIELD}/panel/core": core}, (EXPANSION,))[LEFT]
    assert row.values["strain"] == pytest.approx(strain)
    most = "the most that is published" in row.assumed[EXPANSION]
    assert most is (core != "MDF"), "the figure of MDF is that of wood, and the note says so"


def test_solid_wood_moves_far_more_across_its_grain_than_along_it() -> None:
    found = rows_of("panel-wall", "joint", {f"{FIELD}/panel/core": "solid wood"})
    assert found[CEILING].values["strain"] > 10 * found[LEFT].values["strain"]
    assert found["joint round window of wall north"].values["movement"] == found[CEILING].values["movement"]


def test_a_core_of_which_nothing_is_published_gets_no_number() -> None:
    assert "damp air" in rows_of("panel-wall", "joint", {f"{FIELD}/panel/core": "plywood"})[LEFT].outside["movement"]
    felt = rows_of("panel-wall", "joint", {f"{FIELD}/panel/core": "PET felt"}, (EXPANSION,))[LEFT]
    assert felt.missing["movement"] == (EXPANSION,)


@pytest.mark.parametrize(
    ("gone", "label", "field", "missing"),
    [
        ("/site/temperature", LEFT, "movement", {"/site/temperature/coldest", "/site/temperature/warmest"}),
        (f"{FIELD}/gaps/inside_corner", LEFT, "gap", {f"{FIELD}/gaps/inside_corner"}),
        ("/walls/north/ceiling", CEILING, "movement", {"/walls/north/ceiling/left", "/walls/north/ceiling/right"}),
        ("/sealants/perimeter/joints", LEFT, "sealed", {"/sealants/perimeter/joints"}),
        ("/sealants/perimeter/backer", LEFT, "depth", {"/sealants/perimeter/backer"}),
        ("/sealants/perimeter/class", LEFT, "gap_needed", {"/sealants/perimeter/class"}),
        ("/trims", LEFT, "trimmed", {"/trims"}),
        ("/corners/north-west", "left end of wall north", "kind", {"/corners"}),
        ("/walls/north/openings", "openings of wall north", "kind", {"/walls/north/openings"}),
    ],
)
def test_what_is_missing_is_named(gone: str, label: str, field: str, missing: set[str]) -> None:
    taken = (gone, "/steps/base-on", "/purchase/trims") if gone == "/trims" else (gone,)
    changes = {"/steps/hand-over/after": ["power"]} if gone == "/trims" else None
    assert set(rows_of("panel-wall", "joint", changes, taken)[label].missing[field]) == missing


def test_an_end_at_a_casing_is_a_joint_and_a_free_end_is_none() -> None:
    changes = {"/walls/north/ends": {"left": "door casing", "right": "open"}}
    found = rows_of("panel-wall", "joint", changes, ("/corners",))
    assert found["joint at the door casing left of wall north"].values["kind"] == "opening"
    assert not any("right" in label for label in found)


def test_panels_round_the_corner_hide_the_joint_of_those_that_run_through() -> None:
    found = rows_of("alcove-seat", "joint")
    assert found["joint in the right corner of wall back"].values["hidden"] is True
    assert found["joint in the left corner of wall pier"].values["hidden"] is False
    silent = rows_of("alcove-seat", "joint", None, ("/corners/back-pier/panels_run_through",))
    missing = silent["joint in the left corner of wall pier"].missing["hidden"]
    assert missing == ("/corners/back-pier/panels_run_through",)


def test_panels_that_are_not_scribed_leave_what_the_floor_falls() -> None:
    floor = rows_of(
        "panel-wall", "joint", {f"{FIELD}/courses/scribed": "none", f"{FIELD}/courses/level_line": "8-1/4 in"}
    )
    row = floor["joint over the floor of wall north"]
    assert (inches(row, "gap"), inches(row, "gap_widest")) == pytest.approx((0.25, 0.75))


def test_a_sealant_by_hand() -> None:
    """170.0002 + 102 + 102.25 + 172 in of joint, 1/4 in wide and 1/4 in deep."""
    found = sealant_volumes(plan_of("panel-wall"), ())["perimeter"]
    assert found.volume is not None and found.backer_length is not None
    assert to_si(found.volume.value, found.volume.unit) == pytest.approx(546.2502 / 16 * 25.4**3, rel=1e-6)
    assert to_si(found.backer_length.value, found.backer_length.unit) == pytest.approx(546.2502 * 25.4, rel=1e-6)


def test_what_a_hidden_joint_takes_is_not_bought() -> None:
    """Ceilings 60.0005 and 30 in, corners 95 and 95-3/8 in; the right corner of back is behind the pier's panels."""
    found = sealant_volumes(plan_of("alcove-seat"), ())["perimeter"]
    assert found.backer_length is not None
    assert found.backer_length.value == pytest.approx((60.00052 + 30 + 95 + 95.375) * 25.4, rel=1e-6)


def test_sealant_along_trims_is_a_fillet_that_is_assumed_and_said() -> None:
    changes = {"/sealants/perimeter/joints": ["trims"]}
    found = sealant_volumes(plan_of("panel-wall", changes), ())["perimeter"]
    assert found.volume is not None and found.backer_length is not None
    # along the floor only: 170.0007 in with legs of 1/4 in
    assert found.volume.value == pytest.approx(170.00074 / 32 * 25.4**3, rel=1e-6)
    assert found.backer_length.value == 0
    assert "fillet" in dict(found.assumed)["/sealants/perimeter/joints"]


def test_a_sealant_that_only_runs_along_trims_waits_for_the_panels_too() -> None:
    row = rows_of("panel-wall", "sealant", {"/sealants/perimeter/joints": ["trims"]})["sealant perimeter"]
    assert (row.values["joints"], row.values["settled"]) == (1, 72)


def test_a_sealant_lacks_what_its_joints_lack() -> None:
    found = sealant_volumes(plan_of("panel-wall", None, (f"{FIELD}/gaps/opening",)), ())["perimeter"]
    assert found.volume is None and found.missing == (f"{FIELD}/gaps/opening",)


def test_when_it_goes_in_and_what_is_painted_after_it() -> None:
    row = rows_of("alcove-seat", "sealant")["sealant perimeter"]
    assert row.values["settled"] == 73  # 72 h after rolling, and the hour that the shoe takes
    assert row.values["painted"] is False
    painted = rows_of("alcove-seat", "sealant", {"/steps/paint/works_on": ["pier"]})["sealant perimeter"]
    assert painted.values["painted"] is True and painted.values["cured"] == 0


def test_paint_that_is_sure_to_be_there_before_does_not_count() -> None:
    changes = {"/steps/paint/works_on": ["pier"], "/steps/seal/after": ["roll", "shoe", "paint"]}
    assert rows_of("alcove-seat", "sealant", changes)["sealant perimeter"].values["painted"] is False


def test_a_trim_hides_the_worst_of_its_edges() -> None:
    found = rows_of("alcove-seat", "trim")
    # 1/4 in and half of 1.2e-3 of 95-1/2 in
    assert inches(found["trim shoe"], "to_hide") == pytest.approx(0.25 + 0.0573, abs=1e-4)
    assert found["trim pier-edge"].values["along"] == "outside corner"
    assert found["trim pier-edge"].values["set_before_panels"] is True
    assert found["trim shoe"].values["set_before_panels"] is False


def test_each_of_two_fields_has_the_sealant_it_is_sealed_with() -> None:
    second = {
        "/panels/other": {
            "walls": ["left"], "panel": {"length": "48 in", "height": "7 in", "thickness": "3/8 in", "edges": "square"},
            "courses": {"level_line": "7 in", "starters": {"left": ["48 in"]}}, "sealed_with": "second",
        },
        "/sealants/second": {"kind": "silicone", "joints": ["ceiling", "floor"]},
        "/corners/left-back/panels_run_through": "left",
    }  # fmt: skip
    found = rows_of("alcove-seat", "joint", second)
    assert found["joint under the ceiling of wall left"].values["sealant"] == "silicone"
    assert found["joint under the ceiling of wall back"].values["sealant"] == "hybrid polymer"


@pytest.mark.parametrize("name", ["alcove-seat", "panel-wall", "boathouse-niche"])
def test_joints_are_as_long_as_the_edges_of_the_pieces_that_are_laid(name: str) -> None:
    """Two ways to one length: along the walls as they stand, and along the pieces of the layout, gaps and what is cut
    out for steel taken off. The wall is never shorter; round an opening the pieces stand off by the gap."""
    plan = plan_of(name)
    mine: dict[tuple[str, str], float] = {}
    for edge, row in zip(edges(plan), joints_rows(plan, ())["joint"], strict=True):
        key = edge.wall_name, str(row.values["kind"])
        mine[key] = mine.get(key, 0.0) + float(row.values["length"])  # type: ignore[arg-type]
    compared = 0
    for layout in layouts(plan, supports(plan)):
        for kind, long in layout.edges.items():
            if long and kind != "open end":
                ratio = mine[layout.wall_name, kind] / long
                assert 0.975 <= ratio <= 1.03 if kind == "opening" else 1 <= ratio <= 1.06, (layout.wall_name, kind)
                compared += 1
    assert compared >= 4


HOLLOW = {"left": "0 in", "right": "1/2 in", "points": [{"at": "80 in", "drop": "3 in"}]}
HUMP = {"left": "1/2 in", "right": "1/2 in", "points": [{"at": "80 in", "drop": "0 in"}]}
VAULT = {"left": "102 in", "right": "102 in", "points": [{"at": "85 in", "height": "132 in"}]}
FLOOR = "joint over the floor of wall north"


def test_a_hollow_between_the_ends_opens_the_gap_over_the_floor() -> None:
    """The panels reach down to 7-3/4 less 8 in: 1/4 in below the datum, and 2-3/4 in over a hollow of 3 in."""
    row = rows_of("panel-wall", "joint", {"/walls/north/floor_drop": HOLLOW})[FLOOR]
    assert inches(row, "gap_widest") == pytest.approx(2.75)
    assert inches(row, "gap") == pytest.approx(0.25)
    # from 0 to 80 in falling 3 in, from 80 to 170 in rising 2-1/2 in
    assert inches(row, "length") == pytest.approx((80**2 + 3**2) ** 0.5 + (90**2 + 2.5**2) ** 0.5)


def test_a_hump_between_the_ends_closes_the_gap_under_level_panels() -> None:
    """The lower edge stays 8-1/4 less 8 in over the datum: 3/4 in at the ends, 1/4 in over the hump."""
    changes = {
        "/walls/north/floor_drop": HUMP,
        f"{FIELD}/courses/scribed": "none",
        f"{FIELD}/courses/level_line": "8-1/4 in",
    }
    row = rows_of("panel-wall", "joint", changes)[FLOOR]
    assert inches(row, "gap") == pytest.approx(0.25)
    assert inches(row, "gap_widest") == pytest.approx(0.75)


def test_a_ceiling_that_rises_between_the_ends_makes_its_joint_longer_and_the_panels_taller() -> None:
    """132 in over the datum at 85 in, and the floor there has fallen by half of 1/2 in."""
    row = rows_of("panel-wall", "joint", {"/walls/north/ceiling": VAULT})[CEILING]
    assert inches(row, "length") == pytest.approx(2 * (85**2 + 30**2) ** 0.5)
    assert inches(row, "run") == pytest.approx(132.25)


def test_a_bend_still_to_be_measured_keeps_the_joints_from_being_known() -> None:
    bent = {"left": "0 in", "right": "1/2 in", "points": [{"at": "80 in", "drop": "measure on site"}]}
    row = rows_of("panel-wall", "joint", {"/record/status": "template", "/walls/north/floor_drop": bent})[FLOOR]
    for field in ("gap", "gap_widest", "length", "movement"):
        assert row.missing[field] == ("/walls/north/floor_drop/points/0/drop",)
