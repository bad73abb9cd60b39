"""Adhesive on a piece that is cut somewhere from a panel with lines on its back: the least that can lie on it."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plumbrule.mechanics.panel_glue import glued_area, sure_lines, weight
from plumbrule.mechanics.worked import NotPossible

LENGTHS, WIDTHS, SPACINGS = st.integers(10, 2000), st.integers(1, 60), st.integers(61, 600)


@given(LENGTHS, WIDTHS, SPACINGS)
def test_no_cut_leaves_fewer_lines_than_are_sure(length, width, spacing):
    """Every millimetre of the panel is tried as the left end of the piece."""
    least = min(
        sum(1 for line in range(-2, length // spacing + 3)
            if begin <= line * spacing and line * spacing + width <= begin + length)
        for begin in range(spacing)
    )  # fmt: skip
    assert least - 1 <= sure_lines(length, width, spacing) <= least


@given(LENGTHS, WIDTHS, SPACINGS, st.integers(1, 500))
def test_a_longer_piece_has_no_less_and_wider_spacing_no_more(length, width, spacing, more):
    assert sure_lines(length + more, width, spacing) >= sure_lines(length, width, spacing)
    assert sure_lines(length, width, spacing + more) <= sure_lines(length, width, spacing)


@given(st.integers(60, 2000), st.integers(60, 300), WIDTHS, SPACINGS, st.sampled_from(["strips", "beads", "dabs"]))
def test_what_is_glued_is_never_more_than_the_piece(length, tall, width, spacing, covers):
    area = float(length * tall)
    assert 0 <= glued_area(area, length, covers, width, spacing) <= area
    assert glued_area(area, length, "whole back") == area


def test_by_hand():
    # 17-1/2 in with beads of 3/8 in: (17.5 - 0.375) / 16 = 1.07, / 8 = 2.14, / 4 = 4.28
    assert [sure_lines(17.5, 0.375, spacing) for spacing in (16, 8, 4)] == [1, 2, 4]
    assert glued_area(17.5 * 7, 17.5, "beads", 0.375, 8) == pytest.approx(2 * 0.375 * 7)
    # dabs of 2 in every 8 in over 20 x 20 in: (20 - 2) / 8 = 2.25 both ways
    assert glued_area(400, 20, "dabs", 2, 8) == pytest.approx(2 * 2 * 4)
    # a panel of 48 x 7 x 3/8 in at 35 lb/ft3 weighs 48 x 7 x 0.375 / 1728 x 35 = 2.552 lb
    panel = weight(48 * 7 * 25.4**2, 0.375 * 25.4, 35 * 0.45359237 / 304.8**3)
    assert panel.value / 0.45359237 == pytest.approx(2.552, abs=0.0005)


@pytest.mark.parametrize(("length", "width", "spacing"), [(0, 1, 1), (1, 0, 1), (1, 1, 0), (-5, 1, 1)])
def test_nothing_has_no_lines(length, width, spacing):
    with pytest.raises(NotPossible):
        sure_lines(length, width, spacing)
