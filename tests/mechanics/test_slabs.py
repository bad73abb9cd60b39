"""Shapes in slabs against shapely, which knows nothing of slabs, and against shapes whose width anybody can see."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import MultiPolygon, Polygon, box
from shapely.ops import unary_union

from plumbrule.mechanics.slabs import Rect, Slab, area, height, outline, parts, smallest_width

RECT = Rect(0.0, 0.0, 1200.0, 180.0)
# Whole sixteenths of a millimetre: edges that should meet do meet, and none comes within a rounding of another.
SIXTEENTHS = st.integers(-1600, 20800).map(lambda n: n / 16)
HEIGHTS = st.integers(-1600, 4480).map(lambda n: n / 16)


@st.composite
def lines(draw, lowest: int, highest: int):
    # No steeper than 10 in 1: the oracle loses its way where a line is all but plumb.
    xs = sorted(draw(st.sets(st.integers(-5, 52), min_size=1, max_size=5)))
    return tuple((x * 25.0, draw(st.integers(lowest, highest)) / 16) for x in xs)


@st.composite
def rects(draw):
    x0, y0 = draw(SIXTEENTHS), draw(HEIGHTS)
    return Rect(x0, y0, x0 + draw(st.integers(1, 8000)) / 16, y0 + draw(st.integers(1, 2400)) / 16)


def polygon(slab: Slab) -> Polygon:
    return Polygon([(slab.x0, slab.low0), (slab.x1, slab.low1), (slab.x1, slab.high1), (slab.x0, slab.high0)])


def above(line, far: float = 1e4) -> Polygon:
    left, right = -far, far
    return Polygon([(left, height(line, left)), *line, (right, height(line, right)), (right, far), (left, far)])


def below(line, far: float = 1e4) -> Polygon:
    left, right = -far, far
    return Polygon(
        [(left, -far), (right, -far), (right, height(line, right)), *reversed(line), (left, height(line, left))]
    )


def oracle(rect: Rect, floor, ceiling, cuts):
    shape = box(*rect)
    if floor:
        shape = shape.intersection(above(floor))
    if ceiling:
        shape = shape.intersection(below(ceiling))
    return shape.difference(unary_union([box(*cut) for cut in cuts])) if cuts else shape


@given(lines(-800, 2400), lines(800, 3200), st.lists(rects(), max_size=4))
def test_area_is_that_of_the_oracle(floor, ceiling, cuts):
    assert area(outline(RECT, floor, ceiling, cuts)) == pytest.approx(oracle(RECT, floor, ceiling, cuts).area, abs=1e-5)


@given(lines(-800, 2400), lines(800, 3200), st.lists(rects(), max_size=4))
def test_slabs_are_the_shape_and_do_not_overlap(floor, ceiling, cuts):
    slabs = [polygon(slab) for slab in outline(RECT, floor, ceiling, cuts)]
    shape = oracle(RECT, floor, ceiling, cuts)
    union = unary_union(slabs)
    assert union.area == pytest.approx(sum(slab.area for slab in slabs), abs=1e-5)
    assert union.symmetric_difference(shape).area == pytest.approx(0, abs=1e-4)


@given(st.lists(rects(), max_size=5))
def test_parts_are_the_polygons_of_the_oracle(cuts):
    shape = oracle(RECT, (), (), cuts)
    pieces = [] if shape.is_empty else list(shape.geoms) if isinstance(shape, MultiPolygon) else [shape]
    found = parts(outline(RECT, (), (), cuts))
    assert sorted(area(part) for part in found) == pytest.approx(sorted(piece.area for piece in pieces), abs=1e-5)


@given(st.lists(rects(), max_size=4))
def test_what_is_eroded_by_half_the_smallest_width_is_still_there(cuts):
    """A square that is a little smaller than the smallest width fits everywhere: taken off all round and put on again,
    every part comes back, but for notches in its corners, which no square sees."""
    for part in parts(outline(RECT, (), (), cuts)):
        width = smallest_width(part)
        shape = unary_union([polygon(slab) for slab in part])
        assert shape.area <= (shape.bounds[2] - shape.bounds[0]) * (shape.bounds[3] - shape.bounds[1]) + 1e-6
        assert not shape.buffer(-width * 0.49 / 2, join_style="mitre").is_empty
        assert width <= min(shape.bounds[2] - shape.bounds[0], shape.bounds[3] - shape.bounds[1]) + 1e-6


@given(st.lists(rects(), max_size=3), rects())
def test_one_more_cut_never_adds_area(cuts, more):
    assert area(outline(RECT, (), (), [*cuts, more])) <= area(outline(RECT, (), (), cuts)) + 1e-6


SEEN = {
    # what is cut out of 1200 x 180, and the narrowest place that is left
    "nothing": ([], 180.0),
    "a notch from below": ([Rect(500, -10, 700, 130)], 50.0),
    "a window through the middle": ([Rect(400, 60, 800, 100)], 60.0),
    "a notch that leaves a post at the end": ([Rect(20, -10, 700, 150)], 20.0),
    "a box beside the joint": ([Rect(1110, 40, 1185, 140)], 15.0),
    "two boxes close together": ([Rect(300, 40, 380, 140), Rect(388, 40, 470, 140)], 8.0),
    "an angle across the whole of it": ([Rect(-10, 90, 1210, 200)], 90.0),
}


@pytest.mark.parametrize("name", SEEN)
def test_smallest_width_is_what_one_sees(name):
    cuts, width = SEEN[name]
    (part,) = parts(outline(RECT, (), (), cuts))
    assert smallest_width(part) == pytest.approx(width)


def test_a_wedge_is_as_thin_as_its_thin_end():
    (piece,) = outline(RECT, ((0.0, 0.0), (1200.0, 178.0)), ())
    assert smallest_width((piece,)) == pytest.approx(2.0)


def test_a_sloping_floor_is_no_neck_by_itself():
    """The sharp corner that every slope makes with the end of a piece has no width, and says nothing."""
    piece = outline(RECT, ((0.0, 0.0), (1200.0, 12.0)), (), [Rect(500, 100, 560, 200)])
    assert smallest_width(piece) == pytest.approx(100 - 12 * 560 / 1200)


def test_two_parts_that_touch_in_a_corner_are_two():
    assert len(parts(outline(RECT, (), (), [Rect(-1, -1, 600, 90), Rect(600, 90, 1300, 200)]))) == 2


def test_nothing_is_left_of_nothing():
    assert outline(Rect(0, 0, 0, 10), (), ()) == ()
    assert outline(RECT, ((0.0, 500.0),), ()) == ()
    assert parts(()) == ()
