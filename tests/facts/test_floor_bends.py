"""A floor or ceiling that bends between the ends of its wall, wherever a height is reckoned from it."""

from __future__ import annotations

import pytest
from board_rows import board_of
from hypothesis import given
from hypothesis import strategies as st
from steel_rows import plan_of

from plumbrule.catalogue.rows_purchase import NEED
from plumbrule.facts.desk import Desk, Missing
from plumbrule.facts.layout import layouts
from plumbrule.facts.supports import supports
from plumbrule.facts.wall_face import face

INCH = 25.4


def with_floor(points, left="0 in", right="0 in"):
    return {"/walls/long/floor_drop": {"left": left, "right": right, "points": points}}


def test_the_height_of_a_board_is_that_over_the_hollow_under_it():
    """Top at 58 in; the ledge runs from 37 to 109 in, the hollow of 1 in lies under it at 73 in."""
    ledge = board_of("display-shelf", "ledge", with_floor([{"at": "73 in", "drop": "1 in"}]))
    assert ledge.values["height_most"] / INCH == pytest.approx(59)
    # at its ends the floor has come down 37/73 and (168 - 109)/(168 - 73) of the inch
    assert ledge.values["height_least"] / INCH == pytest.approx(58 + min(37 / 73, 59 / 95))


def test_a_hollow_beside_a_board_is_no_matter():
    ledge = board_of(
        "display-shelf", "ledge", with_floor([{"at": "20 in", "drop": "1 in"}, {"at": "30 in", "drop": "0 in"}])
    )
    assert ledge.values["height_most"] / INCH == pytest.approx(58)


def test_a_bend_that_is_still_to_be_measured_is_named():
    changes = {"/record/status": "template", **with_floor([{"at": "73 in", "drop": "measure on site"}])}
    missing = board_of("display-shelf", "ledge", changes).missing["height_most"]
    assert missing == ("/walls/long/floor_drop/points/0/drop",)


@given(st.integers(1, 15), st.integers(0, 8))
def test_a_bend_on_the_straight_line_changes_nothing(place, eighths):
    """A point that lies on the line from end to end is a measure, not a bend."""
    right = eighths * 2
    bend = {"at": f"{4318 * place / 16:g} mm", "drop": f"{right * place / 16:g} mm"}
    floor = {"left": "0 mm", "right": f"{right} mm", "points": [bend]}
    plain = plan_of("panel-wall", {"/walls/north/floor_drop": {"left": "0 mm", "right": f"{right} mm"}})
    bent = plan_of("panel-wall", {"/walls/north/floor_drop": floor})
    one, other = (sum(p.area for p in layouts(plan, supports(plan))[0].pieces) for plan in (plain, bent))
    assert one == pytest.approx(other, rel=1e-6)


def test_a_wall_is_as_large_as_its_ceiling_lets_it_be():
    """170 in wide, 8 ft at both ends and 12 ft in the middle: 14-1/6 ft by 10 ft on the average, in two halves."""
    high = {"left": "8 ft", "right": "8 ft", "points": [{"at": "85 in", "height": "12 ft"}]}
    plan = plan_of("panel-wall", {"/walls/north/ceiling": high})
    wall = plan.model.walls["north"]
    desk = Desk(NEED, "", "", "")
    assert face(desk, wall, "/walls/north").value / (304.8**2) == pytest.approx(170 / 12 * 10)


def test_a_bend_of_the_ceiling_still_to_be_measured_is_named():
    high = {"left": "8 ft", "right": "8 ft", "points": [{"at": "85 in", "height": "measure on site"}]}
    plan = plan_of("panel-wall", {"/record/status": "template", "/walls/north/ceiling": high})
    with pytest.raises(Missing) as missing:
        face(Desk(NEED, "", "", ""), plan.model.walls["north"], "/walls/north")
    assert missing.value.pointers == ("/walls/north/ceiling/points/0/height",)
