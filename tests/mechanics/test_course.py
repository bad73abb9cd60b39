"""Courses over random walls: pieces cover the wall once and nothing else, mirrored walls mirror, and shapely agrees."""

from __future__ import annotations

import inspect
import time

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import box
from shapely.ops import unary_union
from test_slabs import oracle, polygon

from plumbrule.mechanics.course import (
    Laying,
    Run,
    bands,
    firsts_of_stagger,
    joints,
    lay,
    level_bottom,
    slots,
    stagger,
)
from plumbrule.mechanics.course_edges import cover, edges, floor_gap_most, seen_uncovered, strips, whole
from plumbrule.mechanics.slabs import Rect, area
from plumbrule.mechanics.worked import NotPossible

INCH = 25.4
WIDTH = 4000.0


def replace(one, **new):
    """A run or a way of laying with some of it changed."""
    return type(one)(**{name: new.get(name, getattr(one, name)) for name in inspect.signature(type(one)).parameters})


def sixteenths(low: float, high: float):
    return st.integers(int(low * 16), int(high * 16)).map(lambda n: n / 16)


@st.composite
def falling(draw, low: float, high: float):
    """A line from end to end with up to three bends."""
    between = sorted(draw(st.sets(st.integers(1, 15), max_size=3)))
    places = [0.0, *(WIDTH * n / 16 for n in between), WIDTH]
    return tuple((x, draw(sixteenths(low, high))) for x in places)


@st.composite
def runs(draw):
    cuts = []
    for _ in range(draw(st.integers(0, 4))):
        x, y = draw(sixteenths(-100, 3900)), draw(sixteenths(-50, 2300))
        cuts.append(Rect(x, y, x + draw(sixteenths(5, 900)), y + draw(sixteenths(5, 700))))
    left, right = draw(sixteenths(0, 60)), WIDTH - draw(sixteenths(0, 60))
    return Run(left, right, draw(falling(-40, 0)), draw(falling(2300, 2400)), tuple(cuts))


@st.composite
def layings(draw):
    length, tall = draw(sixteenths(300, 2500)), draw(sixteenths(120, 700))
    firsts = draw(st.lists(st.floats(0.05, 1.0), min_size=1, max_size=3))
    line = draw(sixteenths(60, tall - 45))
    return Laying(
        length, tall, line, tuple(round(share * length * 16) / 16 for share in firsts),
        draw(st.sampled_from(["left", "right", "centre"])), draw(st.sampled_from([0.0, 0.0, 2.0])),
    )  # fmt: skip


def slabs_of(pieces):
    return [slab for piece in pieces for slab in piece.slabs]


@given(runs(), layings())
def test_pieces_gaps_cut_outs_and_joints_make_up_the_wall(run, laying):
    """To 0.01 square inch, which is 6.45 mm²; doubles do far better."""
    bare = tuple((x, y - 6) for x, y in run.floor)
    under = tuple((x, y + 6) for x, y in run.ceiling)
    areas = cover(run, laying, slabs_of(lay(run, laying)), WIDTH, bare, under)
    assert areas.uncovered == pytest.approx(0, abs=1e-3)
    assert areas.pieces + areas.gaps + areas.cut_outs + areas.joints == pytest.approx(areas.wall, abs=1e-3)


@given(runs(), layings())
def test_pieces_never_overlap_and_never_leave_the_wall(run, laying):
    shapes = [polygon(slab) for slab in slabs_of(lay(run, laying))]
    union = unary_union(shapes)
    assert union.area == pytest.approx(sum(shape.area for shape in shapes), abs=1e-3)
    rect = Rect(run.left, -1e5, run.right, 1e5)
    assert union.difference(oracle(rect, run.floor, run.ceiling, run.cuts)).area == pytest.approx(0, abs=1e-2)


@given(runs(), layings())
def test_each_piece_is_what_the_oracle_cuts(run, laying):
    tall = {band.number: band for band in bands(run, laying)}
    for piece in lay(run, laying)[:12]:
        band = tall[piece.course]
        rect = Rect(piece.slot[0], band.bottom, piece.slot[1], band.top)
        whole_slot = oracle(rect, run.floor, run.ceiling, run.cuts)
        mine = unary_union([polygon(slab) for slab in piece.slabs])
        assert piece.area == pytest.approx(mine.area, abs=1e-5)
        assert mine.difference(whole_slot).area == pytest.approx(0, abs=1e-4)
        assert piece.whole == (piece.area >= laying.length * laying.height * (1 - 1e-9))


@given(runs(), layings())
def test_a_mirrored_wall_gives_the_mirrored_layout(run, laying):
    def line(points):
        return tuple((WIDTH - x, y) for x, y in reversed(points))

    mirrored = Run(
        WIDTH - run.right, WIDTH - run.left, line(run.floor), line(run.ceiling),
        tuple(Rect(WIDTH - cut.x1, cut.y0, WIDTH - cut.x0, cut.y1) for cut in run.cuts),
    )  # fmt: skip
    if laying.begin == "centre":
        # What reaches to the right of the centre line reaches to the left of it.
        pitch = laying.length + laying.joint
        firsts = tuple((laying.length - first) % pitch or pitch for first in laying.firsts)
        if any(not 0 < first <= laying.length for first in firsts):
            return
        turned = laying._replace(firsts=firsts)
    else:
        turned = laying._replace(begin="right" if laying.begin == "left" else "left")
    mine = sorted((p.course, round(p.left, 4), round(p.right, 4), round(p.area, 2)) for p in lay(run, laying))
    theirs = sorted(
        (p.course, round(WIDTH - p.right, 4), round(WIDTH - p.left, 4), round(p.area, 2)) for p in lay(mirrored, turned)
    )
    assert [one[0] for one in mine] == [one[0] for one in theirs]
    assert [x for one in mine for x in one[1:]] == pytest.approx([x for one in theirs for x in one[1:]], abs=0.02)


@given(runs(), layings(), st.integers(2, 4))
def test_a_finer_panel_never_leaves_a_hole(run, laying, parts):
    length = laying.length / parts
    fine = laying._replace(length=length, firsts=tuple(first % length or length for first in laying.firsts))
    target = area(whole(run))
    joint = cover(run, fine, slabs_of(lay(run, fine)), WIDTH, run.floor, run.ceiling)
    assert joint.pieces + joint.joints == pytest.approx(target, abs=1e-3)


@given(runs(), layings(), sixteenths(1, 30))
def test_a_wider_gap_never_covers_more(run, laying, more):
    narrow = Run(run.left + more, run.right, tuple((x, y + more) for x, y in run.floor), run.ceiling, run.cuts)
    assert area(whole(narrow)) <= area(whole(run)) + 1e-6


@given(runs(), layings(), sixteenths(50, 300))
def test_a_line_too_high_leaves_a_wedge_of_the_right_size(run, laying, up):
    high = laying._replace(level_line=laying.height + up)
    pieces = slabs_of(lay(run, high))
    left = cover(run, high, pieces, WIDTH, run.floor, run.ceiling).uncovered
    rect = Rect(run.left, -1e5, run.right, high.level_line - high.height)
    assert left == pytest.approx(oracle(rect, run.floor, run.ceiling, run.cuts).area, abs=1e-2)
    hidden = seen_uncovered(run, high, run.floor, 20.0)
    raised = tuple((x, y + 20.0) for x, y in run.floor)
    assert hidden == pytest.approx(oracle(rect, raised, run.ceiling, run.cuts).area, abs=1e-2)
    assert hidden <= left + 1e-6


FLAT = Run(0.0, 3000.0, ((0.0, 0.0), (3000.0, 0.0)), ((0.0, 2400.0), (3000.0, 2400.0)))


def test_stagger_fractions_give_the_first_pieces_of_the_format():
    """48 in panels; the ends that they leave on 169-1/2 and 59-1/2 in are worked by hand in the plan format."""
    assert firsts_of_stagger(48, 1 / 2) == pytest.approx((48, 24))
    assert firsts_of_stagger(48, 1 / 3) == pytest.approx((48, 32, 16))
    assert firsts_of_stagger(48, 1 / 4) == pytest.approx((48, 36, 24, 12))
    run = FLAT._replace(right=169.5 * INCH)
    laying = Laying(48 * INCH, 8 * INCH, 7 * INCH, firsts_of_stagger(48 * INCH, 1 / 2))
    assert (slots(run, laying, 2)[-1][1] - slots(run, laying, 2)[-1][0]) / INCH == pytest.approx(1.5)
    thirds = laying._replace(firsts=firsts_of_stagger(48 * INCH, 1 / 3))
    assert (slots(run, thirds, 3)[-1][1] - slots(run, thirds, 3)[-1][0]) / INCH == pytest.approx(9.5)
    short = FLAT._replace(right=59.5 * INCH)
    assert (slots(short, thirds, 1)[-1][1] - slots(short, thirds, 1)[-1][0]) / INCH == pytest.approx(11.5)


def test_from_the_centre_both_ends_are_alike():
    run = FLAT._replace(right=100.0)
    assert slots(run, Laying(40, 10, 9, (20.0,), "centre"), 1) == ((0, 30), (30, 70), (70, 100))
    assert slots(run, Laying(40, 10, 9, (40.0,), "centre"), 1) == ((0, 10), (10, 50), (50, 90), (90, 100))


def test_from_the_right_the_first_piece_is_at_the_right():
    run = FLAT._replace(right=100.0)
    assert slots(run, Laying(40, 10, 9, (15.0,), "right"), 1) == ((0, 5), (5, 45), (45, 85), (85, 100))


def test_a_first_piece_longer_than_the_wall_is_cut_to_it():
    run = FLAT._replace(right=29.0)
    assert slots(run, Laying(48, 7, 6, (48.0,)), 1) == ((0.0, 29.0),)


def test_joints_are_where_two_panels_meet_and_not_at_an_opening():
    run = FLAT._replace(right=1000.0, cuts=(Rect(350, -10, 650, 3000),))
    pieces = lay(run, Laying(500, 300, 290, (500.0, 200.0)))
    found = joints(pieces)
    assert found[1] == () and found[2] == pytest.approx((200.0, 700.0))
    assert stagger(found[1], found[2]) is None
    assert stagger((500.0, 1000.0), (200.0, 700.0)) == 200.0


def test_a_first_course_that_is_not_scribed_keeps_a_level_edge():
    run = FLAT._replace(floor=((0.0, 0.0), (1500.0, 8.0), (3000.0, -20.0)))
    laying = Laying(1000, 200, 190, (1000.0,), bottom=level_bottom(run))
    first = [piece for piece in lay(run, laying) if piece.course == 1]
    assert {slab.low0 for piece in first for slab in piece.slabs} == {8.0}
    assert floor_gap_most(run, laying, run.floor) == pytest.approx(28.0)


def test_edges_of_a_plain_wall_with_a_window():
    run = FLAT._replace(cuts=(Rect(1000, 900, 1800, 2000),))
    found = edges(run, run.cuts, "inside corner", "outside corner")
    assert found == pytest.approx(
        {"ceiling": 3000, "floor": 3000, "opening": 2 * (800 + 1100), "inside corner": 2400, "outside corner": 2400}
    )


def test_the_edge_of_a_door_ends_at_the_floor():
    run = FLAT._replace(floor=((0.0, -10.0), (3000.0, -10.0)), cuts=(Rect(1000, -1e5, 1800, 2000),))
    found = edges(run, run.cuts, "inside corner", "inside corner")
    assert found["opening"] == pytest.approx(800 + 2 * 2010)
    assert found["floor"] == pytest.approx(2200)


def test_strips_beside_a_cut_out():
    run = FLAT._replace(right=1000.0, cuts=(Rect(420, 230, 480, 330),))
    pieces = [piece.slabs for piece in lay(run, Laying(500, 200, 190, (500.0,)))]
    found = strips(pieces, run.cuts[0])
    # courses at 190 and 390, joint at 500
    assert found == pytest.approx((60.0, 40.0, 420.0, 20.0))
    assert strips(pieces, Rect(2000, 0, 2100, 100)) == (None, None, None, None)


@pytest.mark.parametrize(
    "laying",
    [
        Laying(0, 200, 190, (100.0,)), Laying(500, 0, 190, (100.0,)), Laying(500, 200, 190, ()),
        Laying(500, 200, 190, (501.0,)), Laying(500, 200, 190, (0.0,)), Laying(500, 200, 190, (100.0,), joint=-1.0),
        Laying(500, 0.01, 0.009, (100.0,)), Laying(0.01, 200, 190, (0.01,)), Laying(2.0, 2.0, 1.0, (1.0,)),
    ],
)  # fmt: skip
def test_what_cannot_be_laid_is_refused_in_good_time(laying):
    start = time.process_time()
    with pytest.raises(NotPossible):
        lay(FLAT, laying)
    assert time.process_time() - start < 4


def test_a_wall_without_room_is_refused():
    with pytest.raises(NotPossible):
        lay(FLAT._replace(left=3000.0), Laying(500, 200, 190, (100.0,)))
    for share in (0, 1, -0.5):
        with pytest.raises(NotPossible):
            firsts_of_stagger(48, share)


def test_the_oracle_would_notice_a_wrong_piece():
    run = FLAT._replace(cuts=(Rect(100, 100, 200, 150),))
    (first, *_) = lay(run, Laying(500, 200, 190, (500.0,)))
    assert unary_union([polygon(slab) for slab in first.slabs]).symmetric_difference(box(0, 0, 500, 190)).area > 1
