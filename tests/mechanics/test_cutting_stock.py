"""Cutting stock: no piece is lost, no stick is overcut, and what is called the fewest is the fewest."""

from __future__ import annotations

import time
from collections import Counter
from functools import cache
from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.mechanics.cutting_stock import Piece, cut, fewest, sticks_of
from plumbrule.mechanics.worked import NotPossible

INCH = 25.4
lengths = st.lists(st.integers(1, 96), min_size=1, max_size=30)
kerfs = st.sampled_from([0.0, 0.035 * INCH, INCH / 16, INCH / 8])
FEW = settings(max_examples=150, deadline=None)


def pieces_of(inches: list[int]) -> list[Piece]:
    return [Piece(f"piece {place}", length * INCH) for place, length in enumerate(inches)]


@cache
def tried_out(stock: int, pieces: tuple[int, ...]) -> int:
    """The fewest sticks by trying every way: the longest piece with every set of the others that fits beside it."""
    if not pieces:
        return 0
    first, others = pieces[0], pieces[1:]
    best = len(pieces)
    for many in range(len(others) + 1):
        for chosen in combinations(range(len(others)), many):
            if first + sum(others[place] for place in chosen) <= stock:
                rest = tuple(length for place, length in enumerate(others) if place not in chosen)
                best = min(best, 1 + tried_out(stock, rest))
    return best


@FEW
@given(lengths, kerfs)
def test_no_piece_is_lost_and_no_stick_is_overcut(inches, kerf):
    pieces = pieces_of(inches)
    made = cut(pieces, 96 * INCH, kerf)
    assert Counter(piece for stick in made.sticks for piece in stick.pieces) == Counter(pieces)
    for stick in made.sticks:
        used = sum(piece.length for piece in stick.pieces) + kerf * (len(stick.pieces) - 1)
        assert used <= 96 * INCH + 1e-6
        assert stick.left == pytest.approx(max(96 * INCH - used - kerf, 0), abs=1e-5)
        assert [piece.length for piece in stick.pieces] == sorted((p.length for p in stick.pieces), reverse=True)
    assert made.at_least <= len(made.sticks)


@settings(max_examples=120, deadline=None)
@given(st.lists(st.integers(1, 24), min_size=1, max_size=8), st.integers(24, 40))
def test_the_fewest_is_the_fewest(inches, stock):
    found = fewest(
        stock, sorted(set(inches), reverse=True), [inches.count(n) for n in sorted(set(inches), reverse=True)]
    )
    assert found.sticks == found.at_least == tried_out(stock, tuple(sorted(inches, reverse=True)))


@FEW
@given(lengths)
def test_a_wider_saw_cut_never_needs_fewer_sticks(inches):
    made = [cut(pieces_of(inches), 96 * INCH, kerf) for kerf in (0.0, INCH / 16, INCH / 8)]
    if all(one.proven for one in made):
        assert sorted(made, key=lambda one: len(one.sticks)) == made
    assert all(less.at_least <= len(more.sticks) for less, more in pairwise(made))


@FEW
@given(lengths, st.integers(1, 48))
def test_a_longer_stick_or_one_piece_less_never_needs_more(inches, longer):
    pieces = pieces_of(inches)
    made = cut(pieces, 96 * INCH, INCH / 8)
    assert cut(pieces, (96 + longer) * INCH, INCH / 8).at_least <= len(made.sticks)
    assert cut(pieces[1:], 96 * INCH, INCH / 8).at_least <= len(made.sticks)


@FEW
@given(lengths)
def test_hasty_and_thorough_never_contradict_each_other(inches):
    pieces = pieces_of(inches)
    hasty, thorough = (cut(pieces, 96 * INCH, INCH / 8, slow) for slow in (False, True))
    assert hasty.at_least <= thorough.at_least <= len(thorough.sticks) <= len(hasty.sticks)


def test_the_order_of_the_pieces_changes_nothing():
    inches = [41, 55, 7, 7, 30, 62, 13, 20, 41]
    there, back = (cut(pieces_of(one), 96 * INCH, INCH / 8) for one in (inches, inches[::-1]))
    assert [[p.length for p in stick.pieces] for stick in there.sticks] == [
        [p.length for p in stick.pieces] for stick in back.sticks
    ]


def test_pieces_and_cuts_may_fill_a_stick_to_its_end():
    """Two pieces of 16-1/2 and one cut between them are 33-1/8: the last cut needs nothing."""
    (stick,) = cut(pieces_of([16, 17]), 33.125 * INCH, INCH / 8).sticks
    assert stick.left == 0
    assert len(cut(pieces_of([16, 17]), 33.124 * INCH, INCH / 8).sticks) == 2
    (whole,) = cut(pieces_of([33]), 33 * INCH, INCH / 8).sticks
    assert whole.left == 0


@pytest.mark.parametrize(
    ("pieces", "stick", "kerf", "says"),
    [
        ([Piece("seat-back", 1511.3)], 1219.2, 3.175, "seat-back is longer than the stick"),
        ([Piece("nothing", 0.0)], 1219.2, 3.175, "a length of more than nothing"),
        ([Piece("back to front", -5.0)], 1219.2, 3.175, "a length of more than nothing"),
        ([Piece("endless", float("inf"))], 1219.2, 3.175, "longer than the stick"),
        ([Piece("no number", float("nan"))], 1219.2, 3.175, "."),
        ([Piece("bar", 100.0)], 0.0, 3.175, "a stick has a length"),
        ([Piece("bar", 100.0)], float("inf"), 3.175, "a stick has a length"),
        ([Piece("bar", 100.0)], 1219.2, -1.0, "a saw cut is nothing or more"),
        ([Piece("bar", 1.0)] * 100_001, 1219.2, 0.0, "100,001 pieces are more"),
    ],
)
def test_what_cannot_be_cut(pieces, stick, kerf, says):
    with pytest.raises(NotPossible, match=says):
        cut(pieces, stick, kerf)


def test_nothing_is_cut_from_nothing():
    made = cut([], 96 * INCH, INCH / 8)
    assert (made.sticks, made.at_least, made.proven) == ((), 0, True)


def test_a_hard_case_ends_and_says_how_far_it_got():
    """Pieces of many lengths, three to a stick with nothing to spare: the search gives up, and does not lie."""
    pieces = []
    for number in range(60):
        first, second = 495 - 2 * number % 97, 251 + 7 * number % 103
        pieces += [Piece("a", first), Piece("b", second), Piece("c", 1000.0 - first - second)]
    started = time.perf_counter()
    made = cut(pieces, 1000.0, 0.0)
    assert time.perf_counter() - started < 60
    assert 60 <= len(made.sticks) <= 80
    assert made.at_least <= 60


def test_a_thousand_lengths_are_cut_without_a_search():
    pieces = [Piece("bar", 100.0 + place / 7) for place in range(2_000)]
    started = time.perf_counter()
    made = cut(pieces, 6000.0, 3.0)
    assert time.perf_counter() - started < 60
    assert sticks_of(()) == 0
    assert len(made.sticks) <= 1.3 * made.at_least
