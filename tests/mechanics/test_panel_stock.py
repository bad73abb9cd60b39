"""Panels from offcuts: every cutting fits, none beats the bound, small cases against every cutting there is."""

from __future__ import annotations

import time
from collections import Counter
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plumbrule.mechanics.panel_stock import Piece, cut_from_panels, fewest
from plumbrule.mechanics.worked import NotPossible

LENGTHS = st.lists(st.integers(1, 48).map(float), max_size=40)
KEEPS = st.sampled_from(["none", "none", "left", "right", "both"])


def pieces_of(lengths):
    return [Piece(length) for length in lengths]


@given(LENGTHS, st.sampled_from([0.0, 0.125, 1.0]))
def test_every_panel_holds_what_is_cut_from_it(lengths, kerf):
    found = cut_from_panels(pieces_of(lengths), 48.0, kerf)
    for panel in set(found.panels):
        cut = [length for length, whose in zip(lengths, found.panels, strict=True) if whose == panel]
        assert sum(cut) + (len(cut) - 1) * kerf <= 48.0 + 1e-6
    assert found.least <= found.needed == len(set(found.panels)) <= len(lengths)
    assert sum(lengths) <= found.needed * 48.0 + 1e-6


@given(st.lists(st.tuples(st.integers(1, 48).map(float), KEEPS), max_size=30))
def test_no_end_of_a_panel_is_used_twice(orders):
    found = cut_from_panels([Piece(length, keeps) for length, keeps in orders], 48.0, 0.0)
    used: Counter[tuple[int, str]] = Counter()
    for (_, keeps), panel in zip(orders, found.panels, strict=True):
        for end in ("left", "right") if keeps == "both" else (keeps,) if keeps != "none" else ():
            used[panel, end] += 1
    assert max(used.values(), default=1) == 1


@given(st.lists(st.integers(4, 20).map(float), max_size=6), st.sampled_from([0.0, 1.0]))
def test_the_bound_is_never_above_the_best_cutting(lengths, kerf):
    """Every way to share up to six pieces among as many panels is tried."""
    best = len(lengths)
    for way in product(range(len(lengths)), repeat=len(lengths)):
        loads = Counter[int]()
        for length, panel in zip(lengths, way, strict=True):
            loads[panel] += length + kerf
        if all(load <= 20.0 + kerf + 1e-9 for load in loads.values()):
            best = min(best, len(loads))
    assert fewest(lengths, 20.0, kerf) <= best <= cut_from_panels(pieces_of(lengths), 20.0, kerf).needed


@given(LENGTHS, st.integers(1, 48).map(float))
def test_one_more_piece_never_lowers_the_bound(lengths, more):
    assert fewest([*lengths, more], 48.0, 0.125) >= fewest(lengths, 48.0, 0.125)


def test_panels_are_numbered_in_the_order_of_laying():
    # 42 and 17-1/2 do not go into 48; 29-3/16 and 17-1/2 do, saw cut and all
    found = cut_from_panels(pieces_of([42.0, 17.5, 17.5, 42.0, 29.1875, 29.1875]), 48.0, 0.125)
    assert (found.panels, found.needed, found.least) == ((1, 2, 3, 4, 2, 3), 4, 4)


def test_four_pieces_of_a_quarter_need_no_saw_cut():
    """The kerf trap of the references: four 24 in pieces from 96 in only with a knife."""
    assert cut_from_panels(pieces_of([24.0] * 4), 96.0, 0.0).needed == 1
    assert cut_from_panels(pieces_of([24.0] * 4), 96.0, 0.125).needed == 2


def test_two_halves_with_the_same_end_take_two_panels():
    orders = [Piece(20.0, "left"), Piece(20.0, "left")]
    assert cut_from_panels(orders, 48.0, 0.125).needed == 2
    assert cut_from_panels([Piece(20.0, "left"), Piece(20.0, "right")], 48.0, 0.125).needed == 1


def test_the_bound_counts_long_pieces_one_by_one():
    # three pieces over half a panel, and shorter ones that fit beside none of them
    assert fewest([30.0, 30.0, 30.0, 20.0, 20.0], 48.0, 0.0) == 4
    assert fewest([], 48.0, 0.0) == 0


def test_the_bound_sees_that_no_three_pieces_over_a_third_share_a_panel():
    # 1200 mm: 1040 and 1176.5 stand alone, 448 and 428 go two by two: 10 + 14 + 18 / 2
    lengths = [1040.0] * 10 + [1176.5] * 14 + [448.0] * 10 + [428.0] * 8
    found = cut_from_panels(pieces_of(lengths), 1200.0, 3.175)
    assert (found.needed, found.least) == (33, 33)


def test_what_cannot_be_cut_is_refused():
    for pieces, length, kerf in (([49.0], 48.0, 0.0), ([0.0], 48.0, 0.0), ([1.0], 0.0, 0.0), ([1.0], 48.0, -1.0)):
        with pytest.raises(NotPossible):
            cut_from_panels(pieces_of(pieces), length, kerf)


def test_many_pieces_are_cut_in_good_time():
    lengths = [float(1 + (index * 7919) % 48) for index in range(20_000)]
    start = time.process_time()
    assert cut_from_panels(pieces_of(lengths), 48.0, 0.125).needed > 9000
    assert time.process_time() - start < 4
