"""Quantities: which way they go, and what they refuse."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.language import rework
from plumbrule.mechanics import quantities
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import NotPossible

FEW = settings(max_examples=60, deadline=None)
sizes = st.floats(1.0, 5000.0)
areas = st.floats(0.0, 1e8)
more = st.floats(0.1, 500.0)


@FEW
@given(sizes, sizes, sizes, more)
def test_a_larger_board_never_takes_less(length, depth, thickness, extra):
    for work in (
        quantities.surface, lambda *three: quantities.coated(*three, 3, 3, 3), quantities.fill_volume, quantities.legs,
    ):  # fmt: skip
        assert si(work(length, depth, thickness)) < si(work(length + extra, depth, thickness))
        assert si(work(length, depth, thickness)) < si(work(length, depth + extra, thickness))
        assert si(work(length, depth, thickness)) < si(work(length, depth, thickness + extra))


@FEW
@given(sizes, sizes, sizes, st.integers(0, 5), st.integers(0, 5), st.integers(0, 5))
def test_a_coat_more_never_takes_less(length, depth, thickness, top, bottom, edges):
    once = si(quantities.coated(length, depth, thickness, top, bottom, edges))
    for extra in ((1, 0, 0), (0, 1, 0), (0, 0, 1)):
        coats = [count + one for count, one in zip((top, bottom, edges), extra, strict=True)]
        assert si(quantities.coated(length, depth, thickness, *coats)) > once


@FEW
@given(sizes, sizes, sizes)
def test_one_coat_all_round_is_the_whole_surface(length, depth, thickness):
    coated = si(quantities.coated(length, depth, thickness, 1, 1, 1))
    assert coated == pytest.approx(si(quantities.surface(length, depth, thickness)))


@FEW
@given(areas, st.floats(0.5, 5.0), st.floats(5.0, 50.0), st.floats(50.0, 400.0))
def test_strips_and_dabs_take_less_than_the_whole_back(area, thick, wide, apart):
    whole = si(quantities.glue_volume(area, thick))
    strips = si(quantities.glue_volume(area, thick, wide, apart))
    dabs = si(quantities.dabs_volume(area, thick, wide, apart))
    assert dabs <= strips * (1 + 1e-12)
    assert strips <= whole * (1 + 1e-12)
    assert si(quantities.strips(area, apart)) * wide * thick == pytest.approx(strips)


def test_a_coarse_grit_wears_out_sooner_and_a_wall_wears_least():
    area = 1e6
    coarse, fine = (si(quantities.discs(grit, area, 0.0)) for grit in (100, 120))
    wall = si(quantities.discs(120, 0.0, area))
    assert coarse == pytest.approx(2 * fine)
    assert wall < fine


def test_hard_wax_oil_goes_furthest():
    assert si(quantities.coats_volume(1e6, "hard-wax oil")) < si(quantities.coats_volume(1e6, "tung oil"))
    assert si(quantities.coats_volume(1e6, "paint")) == si(quantities.coats_volume(1e6, "lacquer"))


LINES = [
    quantities.surface(1500.0, 430.0, 45.0), quantities.coated(1500.0, 430.0, 45.0, 3, 2, 1),
    quantities.coats_volume(quantities.coats_area(2.5e6, 2.0), "paint"), quantities.fill_volume(228.6, 1.6, 6.4),
    quantities.glue_volume(1e6, 1.6), quantities.glue_volume(1e6, 1.6, 25.0, 150.0),
    quantities.dabs_volume(1e6, 3.0, 40.0, 300.0), quantities.strips(1e6, 150.0), quantities.legs(90.0, 64.0, 1500.0),
    quantities.discs(80, 1.5e6, 0.0), quantities.total("A", "faces", "mm²", [1e6, 2e6, 5e5]),
    quantities.total("A", "faces", "mm²", []),
]  # fmt: skip


@pytest.mark.parametrize("worked", LINES, ids=lambda line: line.symbol)
def test_every_line_works_out_again(worked):
    for line in worked.lines():
        value = rework(line.formula, {number.symbol: number.value for number in line.numbers})
        assert value == pytest.approx(line.value, rel=1e-9)


@pytest.mark.parametrize(
    "work",
    [
        lambda: quantities.surface(0.0, 430.0, 45.0),
        lambda: quantities.surface(1500.0, float("nan"), 45.0),
        lambda: quantities.coated(1500.0, 430.0, 45.0, -1, 2, 1),
        lambda: quantities.coats_volume(-1.0, "paint"),
        lambda: quantities.coats_area(1e6, 0.0),
        lambda: quantities.fill_volume(228.6, 1.6, 0.0),
        lambda: quantities.glue_volume(1e6, 0.0),
        lambda: quantities.glue_volume(1e6, 1.6, 200.0, 150.0),
        lambda: quantities.dabs_volume(1e6, 1.6, 200.0, 150.0),
        lambda: quantities.strips(1e6, 0.0),
        lambda: quantities.legs(90.0, 64.0, -1.0),
        lambda: quantities.discs(0, 1e6, 0.0),
        lambda: quantities.discs(120, -1e6, 0.0),
    ],
)
def test_what_cannot_be(work):
    with pytest.raises(NotPossible):
        work()
