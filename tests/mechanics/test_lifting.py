"""Lifting: further out, higher up and fewer hands never make it lighter; and what cannot be is refused."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.mechanics import lifting
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import NotPossible
from plumbrule.reading.units import to_si

FEW = settings(max_examples=60, deadline=None)
INCH = 25.4
reaches = st.floats(1.0, 900.0)
heights = st.floats(0.0, 2200.0)
more = st.floats(0.0, 500.0)


def limit(reach: float, height: float, travel: float) -> float:
    return si(lifting.recommended_weight(reach, height, travel))


@FEW
@given(reach=reaches, height=heights, travel=heights, step=more)
def test_further_out_and_a_longer_way_never_allow_more(reach: float, height: float, travel: float, step: float) -> None:
    here = limit(reach, height, travel)
    assert 0 <= here <= to_si(51, "lb") * (1 + 1e-12)
    assert limit(reach + step, height, travel) <= here + 1e-12
    assert limit(reach, height, travel + step) <= here + 1e-12


@FEW
@given(reach=reaches, up=st.floats(0.0, 2000.0), step=more)
def test_the_further_from_the_knuckles_the_less(reach: float, up: float, step: float) -> None:
    knuckles = 30 * INCH
    assert limit(reach, knuckles + up + step, 0.0) <= limit(reach, knuckles + up, 0.0) + 1e-12


@pytest.mark.parametrize(("reach", "height", "travel"), [(25.001, 30, 10), (10, 70.001, 10), (10, 30, 70.001)])
def test_beyond_its_range_the_equation_recommends_nothing(reach: float, height: float, travel: float) -> None:
    assert limit(reach * INCH, height * INCH, travel * INCH) == 0.0


@pytest.mark.parametrize(("reach", "height", "travel"), [(25, 30, 10), (10, 70, 10), (10, 30, 70)])
def test_at_the_end_of_its_range_it_still_does(reach: float, height: float, travel: float) -> None:
    assert limit(reach * INCH, height * INCH, travel * INCH) > 0.0


@FEW
@given(mass=st.floats(0.1, 200.0), people=st.integers(1, 8))
def test_what_is_shared_adds_up(mass: float, people: int) -> None:
    assert si(lifting.each_lifts(mass, people)) * people == pytest.approx(mass, rel=1e-12)


@FEW
@given(length=st.floats(10.0, 4000.0), grow=st.floats(1.0, 3.0))
def test_mass_grows_with_length_and_density(length: float, grow: float) -> None:
    assert si(lifting.board_mass(0.6, length * grow, 300.0, 40.0)) == pytest.approx(
        grow * si(lifting.board_mass(0.6, length, 300.0, 40.0)), rel=1e-12
    )
    assert si(lifting.board_mass(0.3 * grow, length, 300.0, 40.0)) >= si(lifting.board_mass(0.3, length, 300.0, 40.0))


@pytest.mark.parametrize(
    "call",
    [
        lambda: lifting.board_mass(0.0, 1000.0, 300.0, 40.0),
        lambda: lifting.board_mass(0.6, -1.0, 300.0, 40.0),
        lambda: lifting.board_mass(0.6, float("nan"), 300.0, 40.0),
        lambda: lifting.block_mass(35.0, 1000.0, 300.0, 0.0),
        lambda: lifting.angle_mass(5.0, 5.0, 12.0, 1000.0),
        lambda: lifting.each_lifts(20.0, 0),
        lambda: lifting.each_lifts(-20.0, 1),
        lambda: lifting.recommended_weight(0.0, 762.0, 100.0),
        lambda: lifting.recommended_weight(250.0, -1.0, 100.0),
        lambda: lifting.recommended_weight(250.0, 762.0, float("inf")),
        lambda: lifting.wall_area(0.0, 2400.0, 2400.0),
    ],
)
def test_what_cannot_be_is_refused(call: object) -> None:
    with pytest.raises(NotPossible):
        call()  # type: ignore[operator]
