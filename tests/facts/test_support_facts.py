"""Supports laid open: where each hole is, what it hangs on, whether people come onto it."""

from __future__ import annotations

import pytest
from steel_rows import ON_SITE, TEMPLATE, inches, plan_of, supports_of

from plumbrule.facts.supports import boards_on, leg_size, supports, through


def marks(support, letter):
    return [drilling.x.value for drilling in support.drillings if drilling.label.startswith(letter)]


def test_holes_at_studs_are_marked_from_the_angles_own_left_end():
    """The drilling schedule of the alcove, worked by hand: studs at 2-1/4, 14-3/4, 30-3/4, 46-3/4, 57-3/4 in, the angle
    beginning at 1/4 in."""
    support = supports_of("alcove-seat")["seat-back"]
    expected = [pytest.approx(inches(mark)) for mark in (2, 14.5, 30.5, 46.5, 57.5)]
    assert marks(support, "W") == expected
    assert marks(support, "V") == expected
    assert [drilling.label for drilling in support.drillings][:6] == ["W1", "W2", "W3", "W4", "W5", "V1"]


def test_studs_by_spacing_outside_the_angle_get_no_hole():
    changes = {
        "/walls/long/framing": {"stud": "2x4", "species": "spruce-pine-fir", "first": "9 in", "spacing": "16 in"}
    }
    support = supports_of("display-shelf", changes)["ledge-back"]
    assert marks(support, "W") == [pytest.approx(inches(mark)) for mark in (3, 19, 35, 51, 67)]


def test_a_mark_is_where_a_person_would_move_it():
    back, left = (supports_of("alcove-seat")[name] for name in ("seat-back", "seat-left"))
    assert back.drillings[0].x.pointer == "/angles/seat-back/left"
    assert "/walls/back/framing/centres/0" in back.drillings[0].x.also
    assert left.drillings[0].x.pointer == "/angles/seat-left/wall_holes/from_left/0"
    assert left.drillings[0].pointer == "/angles/seat-left/wall_holes/from_left/0"


def test_brackets_stand_one_by_one_where_their_board_covers_a_stud():
    found = supports_of("bracket-shelf")
    assert list(found) == ["shelf-bracket 1", "shelf-bracket 2", "shelf-bracket 3"]
    # a bracket 40 mm wide has its left side 20 mm before the stud
    assert [support.left.value for support in found.values()] == [570.0, 970.0, 1370.0]
    labels = [drilling.label for drilling in found["shelf-bracket 2"].drillings]
    assert labels == ["W1 (bracket 2)", "V1 (bracket 2)", "S1 (bracket 2)", "R1 (bracket 2)"]
    assert marks(found["shelf-bracket 2"], "W") == [30.0]


def test_two_holes_side_by_side_in_a_bracket_are_marked_from_its_left_side():
    changes = {"/brackets/shelf-bracket/wall_holes/from_left": ["10 mm", "30 mm"]}
    support = supports_of("bracket-shelf", changes)["shelf-bracket 1"]
    assert marks(support, "W") == [10.0, 30.0]
    assert [d.on_wall.value for d in support.drillings if d.label.startswith("W")] == [580.0, 600.0]


@pytest.mark.parametrize(
    ("changes", "gone", "missing"),
    [
        ({}, ("/walls/bench/framing",), "/walls/bench/framing/centres"),
        ({**TEMPLATE, "/walls/bench/framing/centres/2": ON_SITE}, (), "/walls/bench/framing/centres/2"),
        (
            {"/brackets/shelf-bracket/from_left": []},
            ("/brackets/shelf-bracket/at",),
            "/brackets/shelf-bracket/from_left",
        ),
    ],
)
def test_brackets_that_nobody_placed_stand_for_themselves(changes, gone, missing):
    (support,) = supports_of("bracket-shelf", changes, gone).values()
    assert support.left.value is None
    assert support.left.pointer == missing
    assert support.drillings


def test_unknown_marks_name_only_what_is_open():
    support = supports_of("alcove-seat", {**TEMPLATE, "/angles/seat-left/left": ON_SITE})["seat-left"]
    on_wall = support.drillings[0].on_wall
    assert (on_wall.value, on_wall.pointer, on_wall.also) == (None, "/angles/seat-left/left", ())
    assert support.drillings[0].x.value == pytest.approx(inches(1.25))


# People


@pytest.mark.parametrize(
    ("changes", "gone", "people"),
    [
        ({}, (), True),
        # 15-3/4 in and 1-3/4 in of board is a step, whatever it is called
        ({"/boards/seat/carries": "display"}, (), True),
        ({}, ("/boards/seat/carries",), True),
        ({"/boards/seat/carries": "display", "/angles/seat-back/bears_at": "22 in"}, (), True),
        ({"/boards/seat/carries": "display", "/angles/seat-back/bears_at": "22-1/4 in"}, (), False),
        ({"/angles/seat-back/bears_at": "60 in"}, (), True),
    ],
)
def test_a_seat_and_whatever_lies_under_two_feet_carries_people(changes, gone, people):
    assert supports_of("alcove-seat", changes, gone)["seat-back"].carries_people.value is people


def test_whether_people_come_onto_it_is_unknown_where_use_or_height_is():
    high = {"/angles/seat-back/bears_at": "60 in"}
    support = supports_of("alcove-seat", high, ("/boards/seat/carries",))["seat-back"]
    assert support.carries_people == (None, "/boards/seat/carries", "", ())
    unmeasured = {**TEMPLATE, "/angles/seat-back/bears_at": ON_SITE, "/boards/seat/carries": "display"}
    support = supports_of("alcove-seat", unmeasured)["seat-back"]
    assert support.carries_people == (None, "/angles/seat-back/bears_at", "", ())


def test_steel_that_no_board_is_said_to_lie_on_is_not_taken_as_free_of_people():
    support = supports_of("alcove-seat", gone=("/boards/seat/bears_on/2",))["seat-pier"]
    assert support.carries_people == (None, "/boards/seat/bears_on", "", ())
    assert boards_on(support).value is None


# Steel


def test_the_fillet_of_a_published_rolled_size_is_taken_from_the_table():
    """AISC Shapes Database: k of L3-1/2x2-1/2x1/4 is 0.625 in, so its fillet is 0.375 in."""
    support = supports_of("alcove-seat", gone=("/sections/seat-steel/inside_radius",))["seat-back"]
    assert support.fillet.value == pytest.approx(inches(0.375))
    assert "L3-1/2x2-1/2x1/4" in support.fillet.assumed


@pytest.mark.parametrize(
    "changes",
    [
        {"/sections/seat-steel/steel": "A1011-SS33"},
        {"/sections/seat-steel/steel": "unmarked"},
        {"/sections/seat-steel/steel": "6061-T6"},
        {"/sections/seat-steel/legs/wall": "3-9/16 in"},
    ],
)
def test_a_bend_that_no_table_gives_is_not_known(changes):
    support = supports_of("alcove-seat", changes, ("/sections/seat-steel/inside_radius",))["seat-back"]
    assert support.fillet == (None, "/sections/seat-steel/inside_radius", "", ())


def test_a_bought_bracket_has_the_bend_and_coating_that_are_written_or_none():
    support = supports_of("bracket-shelf")["shelf-bracket 1"]
    assert (support.fillet.value, support.coating.value) == (5.0, "powder coat")
    gone = ("/brackets/shelf-bracket/inside_radius", "/brackets/shelf-bracket/coating")
    support = supports_of("bracket-shelf", gone=gone)["shelf-bracket 1"]
    assert (support.fillet.value, support.coating.value) == (None, None)


def test_a_coating_that_is_not_written_is_taken_as_none_and_said():
    support = supports_of("alcove-seat", gone=("/sections/seat-steel/coating",))["seat-back"]
    assert support.coating.value == "bare"
    assert support.coating.assumed


def test_a_screw_up_through_a_cleat_passes_its_height():
    cleats = [support for support in supports(plan_of("cleat-shelf")) if support.kind == "cleat"]
    assert cleats
    for cleat in cleats:
        assert through(cleat, "wall") == cleat.thickness
        assert through(cleat, "seat") == cleat.wall_leg_size
        assert leg_size(cleat, "wall") == cleat.wall_leg_size
        assert leg_size(cleat, "seat") == cleat.thickness
