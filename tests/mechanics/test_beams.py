"""Beams over firm and soft supports, against a computer algebra system and against each other."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from plumbrule.mechanics.beam_loads import LineLoad, PointLoad
from plumbrule.mechanics.continuous import ContinuousBeam, continuous_beam
from plumbrule.mechanics.given import si
from plumbrule.mechanics.sharing import shared_person
from plumbrule.mechanics.spring_beam import bend, spring_forces, walked
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook

FEW = settings(max_examples=40, deadline=None)
spans = st.lists(st.integers(1, 9), min_size=1, max_size=5)
overhangs = st.tuples(st.integers(0, 4), st.integers(0, 4))


@st.composite
def beams(draw: st.DrawFn) -> ContinuousBeam:
    lengths = draw(spans)
    left, right = draw(overhangs)
    supports = [float(left)]
    for length in lengths:
        supports.append(supports[-1] + length)
    whole = supports[-1] + right
    places = st.floats(0, 1).map(lambda part: part * whole)
    points = draw(st.lists(st.tuples(places, st.floats(0.1, 50)), max_size=3))
    ends = draw(st.lists(st.tuples(places, places, st.floats(0.1, 5)), max_size=2))
    lines = [LineLoad(min(a, b), max(a, b), w) for a, b, w in ends if abs(a - b) > 1e-3]
    return continuous_beam(whole, supports, points=[PointLoad(x, p) for x, p in points], lines=lines)


# Computer algebra: exact fractions by another method (integrating the singularity functions).


def by_algebra(
    supports: list[Fraction], length: Fraction, points: list[tuple[Fraction, int]],
    lines: list[tuple[Fraction, Fraction, int]],
) -> list[float]:  # fmt: skip
    sympy = pytest.importorskip("sympy")
    from sympy.physics.continuum_mechanics.beam import Beam

    def exact(value: Fraction) -> object:
        return sympy.Rational(value.numerator, value.denominator)

    beam = Beam(exact(length), sympy.Symbol("E", positive=True), sympy.Symbol("I", positive=True))
    reactions = [beam.apply_support(exact(x), "roller") for x in supports]
    for place, force in points:
        beam.apply_load(-force, exact(place), -1)
    for start, end, load in lines:
        beam.apply_load(-load, exact(start), 0, end=exact(end))
    beam.solve_for_reaction_loads(*reactions)
    return [float(beam.reaction_loads[reaction]) for reaction in reactions]


CASES: list[tuple[list[int], int, list[tuple[Fraction, int]], list[tuple[Fraction, Fraction, int]]]] = [
    ([0, 3], 3, [(Fraction(1), 7)], []),
    ([1, 4, 6], 8, [(Fraction(0), 5), (Fraction(5), 9), (Fraction(8), 2)], []),
    ([0, 2, 7, 9, 14], 14, [(Fraction(7, 2), 11)], [(Fraction(0), Fraction(14), 3)]),
    ([2, 5, 9, 10], 13, [(Fraction(9), 4)], [(Fraction(1), Fraction(6), 2), (Fraction(8), Fraction(13), 5)]),
    ([1, 2, 3, 4, 5, 6], 7, [(Fraction(13, 3), 10)], [(Fraction(1, 2), Fraction(11, 2), 1)]),
    ([3, 11], 12, [(Fraction(12), 6), (Fraction(1), 2)], [(Fraction(0), Fraction(12), 1)]),
]


@pytest.mark.parametrize(("supports", "length", "points", "lines"), CASES)
def test_reactions_agree_with_computer_algebra(
    supports: list[int], length: int, points: list[tuple[Fraction, int]], lines: list[tuple[Fraction, Fraction, int]]
) -> None:
    found = continuous_beam(
        float(length), [float(x) for x in supports], points=[PointLoad(float(x), float(p)) for x, p in points],
        lines=[LineLoad(float(a), float(b), float(w)) for a, b, w in lines],
    )  # fmt: skip
    exact = by_algebra([Fraction(x) for x in supports], Fraction(length), points, lines)
    assert [r.value for r in found.reactions] == pytest.approx(exact, rel=1e-9, abs=1e-9)


@settings(max_examples=12, deadline=None)
@given(st.lists(st.integers(1, 6), min_size=1, max_size=4), overhangs, st.integers(1, 20), st.integers(1, 8), st.data())
def test_random_beams_agree_with_computer_algebra(
    lengths: list[int], ends: tuple[int, int], force: int, load: int, data: st.DataObject
) -> None:
    supports = [ends[0]]
    for length in lengths:
        supports.append(supports[-1] + length)
    whole = supports[-1] + ends[1]
    place = Fraction(data.draw(st.integers(0, 6 * whole)), 6)
    start = Fraction(data.draw(st.integers(0, 2 * whole - 1)), 2)
    end = Fraction(data.draw(st.integers(int(2 * start) + 1, 2 * whole)), 2)
    test_reactions_agree_with_computer_algebra(supports, whole, [(place, force)], [(start, end, load)])


# Statics and symmetry.


@FEW
@given(beams())
def test_reactions_balance_the_loads(beam: ContinuousBeam) -> None:
    load = sum(si(p.force) for p in beam.points) + sum(si(w.intensity) * (w.end - w.start) for w in beam.lines)
    about_end = sum(si(p.force) * p.at for p in beam.points) + sum(
        si(w.intensity) * (w.end - w.start) * (w.end + w.start) / 2 for w in beam.lines
    )
    assert sum(r.value for r in beam.reactions) == pytest.approx(load, abs=1e-7)
    turning = sum(r.value * x for r, x in zip(beam.reactions, beam.supports, strict=True))
    assert turning == pytest.approx(about_end, abs=1e-6)


@FEW
@given(beams())
def test_a_mirrored_beam_has_mirrored_reactions(beam: ContinuousBeam) -> None:
    other = continuous_beam(
        beam.length, [beam.length - x for x in reversed(beam.supports)],
        points=[PointLoad(beam.length - p.at, p.force) for p in beam.points],
        lines=[LineLoad(max(0.0, beam.length - w.end), beam.length - w.start, w.intensity) for w in beam.lines],
    )  # fmt: skip
    mine = [r.value for r in beam.reactions]
    assert [r.value for r in reversed(other.reactions)] == pytest.approx(mine, abs=1e-7)
    moments = [m.value for m in beam.support_moments]
    assert [m.value for m in reversed(other.support_moments)] == pytest.approx(moments, abs=1e-7)


@FEW
@given(beams(), st.floats(0, 1))
def test_moment_agrees_with_the_forces_on_one_side(beam: ContinuousBeam, part: float) -> None:
    at = part * beam.length
    left = sum(r.value * (at - x) for r, x in zip(beam.reactions, beam.supports, strict=True) if x < at)
    left -= sum(si(p.force) * (at - p.at) for p in beam.points if p.at < at)
    for w in beam.lines:
        covered = max(0.0, min(at, w.end) - w.start)
        left -= si(w.intensity) * covered * (at - w.start - covered / 2) if covered else 0.0
    assert beam.moment(at).value == pytest.approx(left, abs=1e-6)


@FEW
@given(beams())
def test_no_place_has_a_larger_moment_than_the_largest(beam: ContinuousBeam) -> None:
    largest = abs(beam.greatest_moment().value)
    for step in range(41):
        assert abs(beam.moment(beam.length * step / 40).value) <= largest + 1e-7


# Springs.


@FEW
@given(spans, overhangs, st.floats(0, 1))
def test_stiff_springs_are_firm_supports(lengths: list[int], ends: tuple[int, int], part: float) -> None:
    supports = [float(ends[0])]
    for length in lengths:
        supports.append(supports[-1] + length)
    whole = supports[-1] + ends[1]
    springs = [(x, 1e7) for x in supports]
    soft = spring_forces(bend(whole, springs, 1.0, [(part * whole, 1.0)]), springs)
    firm = continuous_beam(whole, supports, points=[PointLoad(part * whole, 1.0)])
    assert list(soft) == pytest.approx([r.value for r in firm.reactions], abs=2e-4)


def test_soft_springs_share_evenly() -> None:
    """A rigid bar on equal springs: by hand P/n + P e x/sum x²."""
    springs = [(float(x), 1e-6) for x in (0, 10, 20, 30)]
    forces = spring_forces(bend(30.0, springs, 1e6, [(20.0, 1.0)]), springs)
    by_hand = [1 / 4 + 5 * (x - 15) / 500 for x in (0, 10, 20, 30)]
    assert list(forces) == pytest.approx(by_hand, abs=1e-6)


def test_endless_beam_on_a_bed() -> None:
    """Hetényi: a load on an endless beam on an even bed sinks P beta/(2 k); springs close together come near it."""
    count, pitch, bed, rigidity = 101, 10.0, 5.0, 1e7
    springs = [(pitch * i, bed * pitch) for i in range(count)]
    middle = pitch * (count // 2)
    drop = bend(pitch * (count - 1), springs, rigidity, [(middle, 100.0)]).drop_at(middle)
    beta = (bed / (4 * rigidity)) ** 0.25
    assert drop == pytest.approx(100.0 * beta / (2 * bed), rel=0.005)


@FEW
@given(st.integers(2, 7), st.floats(0.05, 20), st.floats(0, 1), st.floats(0.01, 1))
def test_the_walking_load_finds_the_worst_place(count: int, stiffness: float, start: float, share: float) -> None:
    springs = [(10.0 * i + 3, stiffness) for i in range(count)]
    whole = 10.0 * (count - 1) + 8
    a = start * whole * 0.9
    b = a + share * (whole - a)
    best = walked(whole, springs, 100.0, a, b)
    for step in range(31):
        at = a + (b - a) * step / 30
        forces = spring_forces(bend(whole, springs, 100.0, [(at, 1.0)]), springs)
        assert all(force <= top[1] + 1e-4 for force, top in zip(forces, best, strict=True))


@FEW
@given(st.lists(st.integers(200, 900), min_size=3, max_size=6), st.floats(100, 1e5))
def test_a_mirrored_angle_shares_alike(lengths: list[int], stiffness: float) -> None:
    places = [120.0]
    for length in lengths:
        places.append(places[-1] + length)
    whole = places[-1] + 250.0
    turned = [whole - x for x in reversed(places)]
    both = [
        shared_person(1112.0, length=whole, stations=at, second_moment=1.4e5, stiffness=stiffness).inside.value
        for at in (places, turned)
    ]
    assert both[0] == pytest.approx(both[1], rel=1e-7)


def test_stations_are_checked() -> None:
    for supports in ([], [5.0, 5.0], [3.0, 1.0], [-1.0, 4.0], [1.0, 11.0]):
        with pytest.raises(NotPossible):
            continuous_beam(10.0, supports)
    with pytest.raises(OutsideRulebook, match="two positions"):
        continuous_beam(10.0, [4.0])
    with pytest.raises(OutsideRulebook):
        bend(10.0, [(4.0, 1.0)], 1.0, [])
    for load in (PointLoad(11.0, 1.0), PointLoad(-1.0, 1.0), PointLoad(1.0, float("nan"))):
        with pytest.raises(NotPossible):
            continuous_beam(10.0, [1.0, 9.0], points=[load])
    for line in (LineLoad(4.0, 4.0, 1.0), LineLoad(5.0, 12.0, 1.0)):
        with pytest.raises(NotPossible):
            continuous_beam(10.0, [1.0, 9.0], lines=[line])
    with pytest.raises(OutsideRulebook, match="four"):
        shared_person(1000.0, length=900.0, stations=[100.0, 400.0, 800.0], second_moment=1e5, stiffness=1e3)


@FEW
@given(beams(), st.floats(1.01, 4))
def test_more_load_never_helps_a_support(beam: ContinuousBeam, factor: float) -> None:
    assume(beam.points or beam.lines)
    heavier = continuous_beam(
        beam.length, beam.supports, points=[PointLoad(p.at, factor * si(p.force)) for p in beam.points],
        lines=[LineLoad(w.start, w.end, factor * si(w.intensity)) for w in beam.lines],
    )  # fmt: skip
    assert heavier.greatest.value >= beam.greatest.value
    assert abs(heavier.greatest_moment().value) >= abs(beam.greatest_moment().value) - 1e-9
