"""What bounds of a board on brackets add to those of firm supports: hand sums, directions, and what is refused. How
safe they are is for the plates to say (`tests/plate/test_bracket_bounds.py`)."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plumbrule.mechanics import bracket
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.reading.units import from_si, to_si


def inch(value: float) -> float:
    return to_si(value, "in")


def test_spread_bending_by_hand():
    assert bracket.uneven_bending(2.5).value == pytest.approx(4.375)


def test_across_the_grain_by_hand():
    """250 lb: 33 in·lbf/in between arms. 3 in beyond them 1.1 x 250 x 3/(4 + 3) = 117.9, twice that of a drop."""
    person = to_si(250, "lbf")

    def pounds(case, front):
        return from_si(bracket.across_on_arms(case, person, inch(front), inch(12)).value, "lbf")

    assert pounds("S1", 11) == pytest.approx(33)
    assert pounds("S3", 12) == pytest.approx(55)
    assert pounds("S5", 12) == pytest.approx(66)
    assert pounds("S1", 15) == pytest.approx(117.857, rel=1e-4)
    assert pounds("S3", 15) == pytest.approx(117.857, rel=1e-4)
    assert pounds("S5", 15) == pytest.approx(235.714, rel=1e-4)


def test_drop_beyond_the_arms_by_hand():
    assert bracket.drop_beyond(2.0, 240.0, 200.0).value == pytest.approx(2.0 * 1.2**2.5)
    assert bracket.drop_beyond(2.0, 190.0, 200.0).value == 2.0


def test_seat_screws_by_hand():
    """A tenth of a person of 1,112 N lifts: 111.2, and half as much again."""
    assert bracket.held_by_seat_screws(0.1, 1112.0).value == pytest.approx(166.8)
    assert bracket.held_by_seat_screws(0.0, 1112.0).value == 0.0


@given(st.floats(100, 3000), st.floats(100, 600), st.floats(0.5, 1.3), st.floats(1.0, 1.5))
def test_neither_load_nor_reach_ever_helps(person, arm, part, more):
    front = part * arm
    for case in ("S1", "S3", "S5"):
        base = bracket.across_on_arms(case, person, front, arm).value
        assert bracket.across_on_arms(case, person * more, front, arm).value >= base
        assert bracket.across_on_arms(case, person, front * more, arm).value >= base
        assert bracket.across_on_arms(case, person, front, arm * more).value <= base
    assert bracket.drop_beyond(2.0, front * more, arm).value >= bracket.drop_beyond(2.0, front, arm).value >= 2.0
    assert bracket.held_by_seat_screws(0.2, person * more).value >= bracket.held_by_seat_screws(0.2, person).value


def test_a_board_may_reach_three_tenths_beyond_its_arms_and_no_farther():
    assert bracket.require_reach(260.0, 200.0).value == pytest.approx(60.0)
    with pytest.raises(OutsideRulebook, match="longer arms"):
        bracket.require_reach(260.1, 200.0)


@pytest.mark.parametrize("work", [
    lambda: bracket.uneven_bending(-1.0),
    lambda: bracket.across_on_arms("S1", 1112.0, 300.0, 0.0),
    lambda: bracket.across_on_arms("S1", -1.0, 300.0, 200.0),
    lambda: bracket.drop_beyond(2.0, 0.0, 200.0),
    lambda: bracket.held_by_seat_screws(-0.1, 1112.0),
    lambda: bracket.require_reach(260.0, float("nan")),
])  # fmt: skip
def test_what_cannot_be(work):
    with pytest.raises(NotPossible):
        work()
