"""A cleat sheared beside its screws: hand sums by the clause, which edge is which, and what is refused.

The clause was worked from memory, so the sums here are of its two equations and not of printed examples.
"""

from __future__ import annotations

from math import inf, nan

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plumbrule.mechanics.cleat import cleat_shear_capacity
from plumbrule.mechanics.worked import NotPossible
from plumbrule.reading.units import from_si, to_si


def pounds(stress: float, thickness: float, height: float, row: float, end: float, hole: float = 0.25) -> float:
    """In inches and pounds, as the clause is printed."""
    found = cleat_shear_capacity(to_si(stress, "psi"), *(to_si(x, "in") for x in (thickness, height, row, end, hole)))
    return from_si(found.value, "lbf")


def test_near_its_end_by_hand():
    """1-1/2 x 3-1/2, 135 psi, screw 2 in below the upper edge, 2 in from the end:
    2/3 x 135 x 1.5 x 2 = 270, x (2/3.5)^2 = 0.32653: 88.16 lb."""
    assert pounds(135, 1.5, 3.5, 2.0, 2.0) == pytest.approx(88.163, rel=1e-4)


def test_far_from_its_end_by_hand():
    """5 x 3.5 = 17.5 in from the end and farther nothing is taken off but the wood below the screw: 270 lb."""
    assert pounds(135, 1.5, 3.5, 2.0, 20.0) == pytest.approx(270, rel=1e-9)
    assert pounds(135, 1.5, 3.5, 2.0, 17.5) == pytest.approx(270, rel=1e-9)
    assert pounds(135, 1.5, 3.5, 2.0, 17.49) == pytest.approx(88.163, rel=1e-4)


def test_the_upper_edge_is_the_loaded_one():
    """A screw an inch below the upper edge of a two-by-four against one an inch above the lower: 1 and 2.5 in of wood
    to hang on, (1/2.5)^3."""
    high, low = pounds(135, 1.5, 3.5, 1.0, 2.0), pounds(135, 1.5, 3.5, 2.5, 2.0)
    assert high == pytest.approx(0.064 * low, rel=1e-9)


def test_the_middle_of_a_piece_is_an_eighth_of_the_whole():
    whole = 2 / 3 * 135 * 1.5 * 3.5
    assert pounds(135, 1.5, 3.5, 1.75, 2.0) == pytest.approx(whole / 8, rel=1e-9)


SIZES = st.tuples(
    st.floats(0.3, 2.0),
    st.floats(15, 90),
    st.floats(60, 250),
    st.floats(0.15, 0.9),
    st.floats(0, 1500),
    st.floats(3, 8),
)


@given(SIZES, st.floats(1.0, 1.3))
def test_directions(sizes, more):
    f, t, h, part, end, hole = sizes
    y = part * h

    def worth(**change: float) -> float:
        named = {"stress": f, "thickness": t, "height": h, "row": y, "to_end": end, "hole": hole} | change
        return cleat_shear_capacity(**named).value

    base = worth()
    assert worth(stress=f * more) >= base and worth(thickness=t * more) >= base and worth(to_end=end * more) >= base
    # Nearer the loaded, the upper edge never helps, nor does wood added below the screws.
    if y / more > hole / 2:
        assert worth(row=y / more) <= base
    assert worth(height=h * more) <= base
    # Never more than the whole section carries, and without its last part.
    assert base <= 2 * f * t * h / 3 * (y / h) * (1 + 1e-12)


@pytest.mark.parametrize(
    ("change", "words"),
    [({"row": 88.0}, "breaks out"), ({"row": 3.0}, "breaks out"), ({"row": 120.0}, "breaks out"),
     ({"row": 0.0}, "row"), ({"to_end": -1.0}, "end"), ({"height": nan}, "height"), ({"stress": inf}, "stress"),
     ({"thickness": 0.0}, "thickness"), ({"hole": -1.0}, "hole")],
)  # fmt: skip
def test_what_cannot_be(change, words):
    named = {"stress": 0.84, "thickness": 38.0, "height": 89.0, "row": 60.0, "to_end": 43.0, "hole": 6.5} | change
    with pytest.raises(NotPossible, match=words):
        cleat_shear_capacity(**named)


def test_it_says_where_it_stands():
    near = cleat_shear_capacity(0.84, 38.0, 89.0, 60.0, 43.0, 6.5)
    far = cleat_shear_capacity(0.84, 38.0, 89.0, 60.0, 600.0, 6.5)
    assert "near its end" in near.words and "far from its end" in far.words
    assert all("from memory" in line.source and "3.4.3.3" in line.source for line in (near, far))
