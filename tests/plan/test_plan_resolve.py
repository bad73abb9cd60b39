"""Studs, dressed sizes, patterns with overrides and places along steel, against measures reckoned by hand."""

from __future__ import annotations

import pytest
from plan_variants import changed, plan_of, text_of

from plumbrule import shipped
from plumbrule.plan import resolve, words
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.places import read_file

INCH = 25.4


def inches(*values: float) -> list[float]:
    return [pytest.approx(value * INCH) for value in values]


def alcove(*changes: tuple[str, str]) -> Plan:
    return plan_of(changed("alcove-seat", *changes))


def shelf(*changes: tuple[str, str]) -> Plan:
    return plan_of(changed("display-shelf", *changes))


def reading_room(*changes: tuple[str, str]) -> Plan:
    return plan_of(changed("panel-wall", *changes))


def store(*changes: tuple[str, str]) -> Plan:
    return plan_of(changed("storeroom-brackets", *changes))


def places(plan: Plan, name: str, key: str = "wall_holes") -> list[float | None] | None:
    angle = (plan.model.angles or {})[name]
    found = resolve.stations(plan, angle, getattr(angle, key), f"/angles/{name}/{key}")
    return None if found is None else [station.from_left for station in found]


def test_studs_that_were_found_are_taken_as_found() -> None:
    plan = alcove()
    studs = resolve.studs(plan, "back")
    assert studs is not None
    assert [stud.centre for stud in studs] == inches(2.25, 14.75, 30.75, 46.75, 57.75)
    assert studs[1].pointers == ("/walls/back/framing/centres/1",)
    assert [stud.number for stud in studs] == [1, 2, 3, 4, 5]


def test_studs_listed_out_of_order_are_numbered_from_the_left_and_keep_their_pointers() -> None:
    plan = alcove(("[2-1/4 in, 14-3/4 in, 30-3/4 in,", "[30-3/4 in, 2-1/4 in, 14-3/4 in,"))
    studs = resolve.studs(plan, "back")
    assert studs is not None
    assert [(stud.number, stud.pointers[0][-1]) for stud in studs[:3]] == [(1, "1"), (2, "2"), (3, "0")]


def test_studs_by_spacing_run_to_the_end_of_the_wall() -> None:
    """First at 1-1/2 in, every 16 in, 14 ft 2 in of wall: 1-1/2 + 10 x 16 = 161-1/2 in is the last of 170 in."""
    studs = resolve.studs(reading_room(), "north")
    assert studs is not None
    assert [stud.centre for stud in studs] == inches(*(1.5 + 16 * number for number in range(11)))
    assert studs[0].pointers == ("/walls/north/framing/first", "/walls/north/framing/spacing")


def test_a_stud_exactly_at_the_end_of_the_wall_counts() -> None:
    end = ("framing: {stud: 2x4, species: spruce-pine-fir, first: 1-1/2 in", "framing: {stud: 2x4, first: 10 in")
    studs = resolve.studs(reading_room(end), "north")
    assert studs is not None and studs[-1].centre == pytest.approx(170 * INCH)


def test_holes_at_studs_are_measured_from_the_end_of_the_angle() -> None:
    """The marks of the drilling schedules, worked by hand from stud centres less the left end of each angle."""
    assert places(alcove(), "seat-back") == inches(2, 14.5, 30.5, 46.5, 57.5)
    assert places(shelf(), "ledge-back") == inches(3, 19, 35, 51, 67)


def test_holes_at_given_places_know_where_they_are_on_the_wall() -> None:
    plan = alcove()
    angle = (plan.model.angles or {})["seat-left"]
    found = resolve.stations(plan, angle, angle.wall_holes, "/angles/seat-left/wall_holes")
    assert found is not None
    assert [station.on_wall for station in found] == inches(33, 38.875, 44.75)
    assert found[2].pointers == ("/angles/seat-left/wall_holes/from_left/2", "/angles/seat-left/left")


def test_a_stud_at_either_end_of_the_angle_is_within_reach() -> None:
    plan = shelf(("left: 38 in\n    length: 70 in", "left: 41 in\n    length: 64 in"), ("53 in, 65 in]", "53 in]"))
    assert places(plan, "ledge-back") == inches(0, 16, 32, 48, 64)


def test_unknown_studs_name_what_to_measure() -> None:
    plan = alcove(("centres: [2-1/4 in, 14-3/4 in, 30-3/4 in, 46-3/4 in, 57-3/4 in],\n", ""))
    angle = (plan.model.angles or {})["seat-back"]
    assert resolve.studs(plan, "back") is None
    assert places(plan, "seat-back") is None
    assert resolve.stations_wanted(plan, angle, "/angles/seat-back/wall_holes") == ("/walls/back/framing/centres",)


def test_a_spacing_that_waits_for_the_tape_leaves_the_studs_unknown() -> None:
    plan = reading_room(("spacing: 16 in", "spacing: measure on site"), ("status: for building", "status: template"))
    assert resolve.studs(plan, "north") is None
    assert resolve.studs_wanted(plan, "north") == ("/walls/north/framing/spacing",)


def test_a_stud_still_to_be_measured_leaves_all_places_unknown() -> None:
    """It could lie anywhere, also under the steel."""
    template = ("status: for building", "status: template")
    plan = alcove(("[2-1/4 in, 14-3/4 in,", "[2-1/4 in, measure on site,"), template)
    angle = (plan.model.angles or {})["seat-back"]
    assert places(plan, "seat-back") is None
    wanted = resolve.stations_wanted(plan, angle, "/angles/seat-back/wall_holes")
    assert wanted == ("/walls/back/framing/centres/1",)
    assert plan.to_measure == wanted


def test_a_value_comes_with_the_pointer_it_was_written_at() -> None:
    plan = store()
    rail = (plan.model.angles or {})["rail"]
    own = resolve.holes(plan, rail.wall_holes, "/angles/rail/wall_holes")
    assert own.diameter == (9.5, "/angles/rail/wall_holes/diameter", False)
    assert own.from_heel == ((30.0,), "/angles/rail/wall_holes/from_heel", False)
    assert own.drilled_within == (0.5, "/angles/rail/wall_holes/drilled_within", False)
    shared = resolve.holes(plan, rail.seat_holes, "/angles/rail/seat_holes")
    assert shared.diameter == (6.0, "/holes/under/diameter", False)
    assert shared.slot_runs == ("along the grain", "/holes/under/slot_runs", False)
    assert shared.screw.value == "short-screw"


def test_a_default_is_marked_as_assumed_and_names_where_to_write_it() -> None:
    plan = store()
    rail = (plan.model.angles or {})["rail"]
    shared = resolve.holes(plan, rail.seat_holes, "/angles/rail/seat_holes")
    assert shared.drilled_within == (pytest.approx(INCH / 16), "/holes/under/drilled_within", True)
    assert shared.deburr == ("no", "/holes/under/deburr", True)
    assert shared.into == (None, "/angles/rail/seat_holes/into", False)


def test_an_override_that_waits_for_the_tape_hides_the_pattern() -> None:
    """`measure on site` in the group is an answer: the pattern's own figure must not stand in for it."""
    plan = store(("diameter: 9.5 mm, from_heel: [30 mm]", "diameter: measure on site, from_heel: [30 mm]"))
    rail = (plan.model.angles or {})["rail"]
    found = resolve.holes(plan, rail.wall_holes, "/angles/rail/wall_holes")
    assert found.diameter == (None, "/angles/rail/wall_holes/diameter", False)


DRESSED = read_file(shipped.folder("rules") / "tables" / "lumber.yaml").value["rows"]


@pytest.mark.parametrize("row", DRESSED, ids=lambda row: row["name"])
def test_lumber_is_dressed_as_published(row: dict[str, float]) -> None:
    """NDS Supplement 2018 Table 1A; the 1 in row is from memory of American Softwood Lumber Standard PS 20."""
    assert resolve.lumber(str(row["name"])) == tuple(inches(row["thickness"], row["width"]))


def test_the_published_sizes_are_the_ones_a_stud_may_have() -> None:
    assert {row["name"] for row in DRESSED} >= set(words.STUD_SIZES)


def test_a_measured_stud_is_taken_as_measured() -> None:
    framing = (store().model.walls or {})["long"].framing
    assert framing is not None
    assert resolve.stud_size(framing) == (47.0, 100.0)


def test_a_block_laid_flat_shows_its_wide_side() -> None:
    flat = ((alcove().model.walls or {})["left"].blocking or {})["seat-block-left"]
    assert resolve.block_size(flat) == tuple(inches(9.25, 3.5))
    on_edge = ((store().model.walls or {})["long"].blocking or {})["pad"]
    assert resolve.block_size(on_edge) == (45.0, 145.0)


def test_a_wall_with_a_stud_size_has_wood_studs_unless_it_says_otherwise() -> None:
    wall = (alcove().model.walls or {})["back"]
    assert resolve.framing_kind(wall.framing, "/walls/back") == ("wood studs", "/walls/back/framing/kind", True)
    written = (store().model.walls or {})["long"]
    assert resolve.framing_kind(written.framing, "/walls/long") == ("wood studs", "/walls/long/framing/kind", False)
    bare = (store().model.walls or {})["side"]
    assert resolve.framing_kind(bare.framing, "/walls/side").value is None


def test_brackets_stand_where_they_are_listed_or_at_every_stud() -> None:
    plan = store()
    brackets = plan.model.brackets or {}
    listed = resolve.bracket_places(plan, "cut", brackets["cut"])
    assert listed is not None
    assert [(place.from_left, place.on_wall) for place in listed] == [(30.0, 450.0), (30.0, 1250.0)]
    at_studs = resolve.bracket_places(plan, "bought", brackets["bought"])
    assert at_studs is not None and [place.on_wall for place in at_studs] == [100.0, 500.0, 900.0]


def test_brackets_at_studs_stand_only_under_their_boards() -> None:
    shelf_on_it = ("bears_on: [cut, ledge, rail]", "bears_on: [bought]")
    plan = store(shelf_on_it, ("left: 400 mm\n    bears_on", "left: 450 mm\n    bears_on"))
    places = resolve.bracket_places(plan, "bought", (plan.model.brackets or {})["bought"])
    assert places is not None and [place.on_wall for place in places] == [500.0, 900.0]


def test_what_is_written_and_what_is_not() -> None:
    plan = alcove()
    assert plan.is_written("/angles/seat-back/bears_at") and not plan.is_written(
        "/angles/seat-back/wall_holes/diameter"
    )
    assert plan.as_written("/angles/seat-back/bears_at") == "15-3/4 in"
    assert plan.as_written("/angles/seat-back/wall_holes/diameter") == ""


def test_looked_and_found_nothing_is_not_the_same_as_not_looked() -> None:
    looked = (alcove().model.walls or {})["left"]
    assert looked.openings == {}
    not_looked = (alcove(("    openings: {}                     # {} says", "    # {} says")).model.walls or {})["left"]
    assert not_looked.openings is None


def test_a_plan_may_be_short() -> None:
    plan = plan_of("plan: 1\ntitle: Only a name yet\n")
    assert plan.model.walls is None and plan.to_measure == ()


def test_a_template_lists_what_is_to_be_measured() -> None:
    assert "measure on site" in text_of("storeroom-brackets")
    assert store().to_measure == ("/walls/long/ceiling/right",)


def test_a_board_still_to_be_measured_leaves_its_brackets_unknown() -> None:
    """Every stud of the wall would be more brackets than there may be: the unsafe guess."""
    plan = store(
        ("bears_on: [cut, ledge, rail]", "bears_on: [bought]"),
        ("left: 400 mm\n    bears_on", "left: measure on site\n    bears_on"),
    )
    bracket = (plan.model.brackets or {})["bought"]
    assert resolve.bracket_places(plan, "bought", bracket) is None
    assert resolve.bracket_places_wanted(plan, "bought", bracket) == ("/boards/shelf/left",)
