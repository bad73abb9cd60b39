"""Angle sections: against every published row, and against an integration that knows no formula."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.mechanics import section, tables
from plumbrule.mechanics.given import si
from plumbrule.mechanics.table_rows import AngleRow
from plumbrule.mechanics.worked import NotPossible

TABLES = tables.load()
ROWS = TABLES.names("angles")
INCH = 25.4


def _row(name: str) -> AngleRow:
    def size(text: str) -> float:
        return float(sum(Fraction(part) for part in text.split("-"))) * INCH

    legs = [size(part) for part in name[1:].split("x")]
    row = TABLES.angle(*legs)
    assert row is not None and row.name == name
    return row


@pytest.mark.parametrize("name", ROWS)
def test_sharp_corners_agree_with_the_published_angles(name: str) -> None:
    """AISC Shapes Database. 3 %: fillet and toes are left out, and the rows have three digits."""
    row = _row(name)
    sharp = section.sharp_angle(row.long_leg, row.short_leg, row.thickness, 0.0)
    for mine, printed in (
        (sharp.area, row.area),
        (sharp.second_moment, row.second_moment_x),
        (sharp.modulus_tip, row.modulus_x),
        (sharp.centroid_up, row.centroid_y),
        (sharp.second_moment_sideways, row.second_moment_y),
        (sharp.centroid_out, row.centroid_x),
        (sharp.least_radius, row.least_radius),
        (sharp.plastic_modulus, row.plastic_modulus_x),
    ):
        assert mine.value == pytest.approx(printed, rel=0.035), mine.words
    # Torsion grows with the fillet, which the model leaves out: it must come out low, never high.
    assert row.torsion_constant is not None
    assert 0.75 * row.torsion_constant < sharp.torsion.value < row.torsion_constant


@pytest.mark.parametrize("name", ROWS)
def test_a_published_angle_keeps_its_figures_whichever_way_it_lies(name: str) -> None:
    row = _row(name)
    stands = section.angle_section(row.long_leg, row.short_leg, row.thickness, 6.35, row)
    lies = section.angle_section(row.short_leg, row.long_leg, row.thickness, 6.35, row)
    assert stands.row == lies.row == name
    assert (stands.second_moment.value, lies.second_moment.value) == (row.second_moment_x, row.second_moment_y)
    assert (stands.modulus_tip.value, lies.modulus_tip.value) == (row.modulus_x, row.modulus_y)
    assert stands.to_toe.value == row.to_toe
    sharp = section.sharp_angle(row.long_leg, row.short_leg, row.thickness, 6.35)
    assert stands.product.value == pytest.approx(sharp.product.value, rel=0.05)


def test_equal_angle_without_sideways_hold() -> None:
    """I_eff = (I_x I_y - I_xy²)/I_y of L2x2x1/8 is 0.64 I (ANSI/AISC 360-22 F10.2 commentary; worked by hand)."""
    row = _row("L2x2x1/8")
    angle = section.angle_section(row.long_leg, row.short_leg, row.thickness, 6.35, row)
    i_x, i_y, i_xy = angle.second_moment.value, angle.second_moment_sideways.value, angle.product.value
    assert (i_x * i_y - i_xy**2) / i_y / i_x == pytest.approx(0.64, abs=0.01)
    assert i_xy == pytest.approx(i_x - angle.area.value * angle.least_radius.value**2)


sizes = st.tuples(st.floats(15, 120), st.floats(15, 120), st.floats(2, 12))


@settings(max_examples=40, deadline=None)
@given(sizes)
def test_the_formulas_are_exact_for_two_rectangles(size: tuple[float, float, float]) -> None:
    """Summed over thin strips, each exact in itself: an oracle that shares no formula with the module."""
    d, b, t = size
    found = section.sharp_angle(d, b, t, 0.0)
    count = 4000
    strips = []
    for bottom, top, left, right in ((0.0, t, 0.0, b), (t, d, 0.0, t)):
        step = (top - bottom) / count
        strips += [(bottom + (n + 0.5) * step, step, left, right) for n in range(count)]
    area = sum(h * (r - x) for _, h, x, r in strips)
    up = sum(y * h * (r - x) for y, h, x, r in strips) / area
    out = sum((x + r) / 2 * h * (r - x) for _, h, x, r in strips) / area
    i_x = sum((y - up) ** 2 * h * (r - x) + (r - x) * h**3 / 12 for y, h, x, r in strips)
    i_y = sum(((x + r) / 2 - out) ** 2 * h * (r - x) + h * (r - x) ** 3 / 12 for _, h, x, r in strips)
    i_xy = sum((y - up) * ((x + r) / 2 - out) * h * (r - x) for y, h, x, r in strips)
    halves = 0.0
    middle = 0.0
    for y, h, x, r in sorted(strips):
        halves += h * (r - x)
        if halves >= area / 2:
            middle = y
            break
    plastic = sum(abs(y - middle) * h * (r - x) for y, h, x, r in strips)
    assert found.area.value == pytest.approx(area)
    assert (found.centroid_up.value, found.centroid_out.value) == pytest.approx((up, out))
    assert found.second_moment.value == pytest.approx(i_x, rel=1e-5)
    assert found.second_moment_sideways.value == pytest.approx(i_y, rel=1e-5)
    assert abs(found.product.value) == pytest.approx(abs(i_xy), rel=1e-5)
    assert found.plastic_modulus.value == pytest.approx(plastic, rel=1e-3)


def test_no_angle() -> None:
    for size in ((50, 50, 50), (50, 4, 5), (-50, 50, 5), (50, 50, 0)):
        with pytest.raises(NotPossible):
            section.sharp_angle(*size, 3.0)
    with pytest.raises(NotPossible, match="L2x2x1/8"):
        section.angle_section(60, 60, 3.175, 3.0, _row("L2x2x1/8"))


def test_mass_of_a_published_angle() -> None:
    """L2x2x1/4 is published at 3.19 lb/ft (AISC Shapes Database)."""
    row = _row("L2x2x1/4")
    angle = section.angle_section(row.long_leg, row.short_leg, row.thickness, 6.35, row)
    foot = si(section.mass(angle, 12 * INCH)) / 0.45359237
    assert foot == pytest.approx(3.19, rel=0.01)
    assert row.mass_per_length * 12 * INCH / 0.45359237 == pytest.approx(3.19)


def test_bar_sizes_have_a_weight_only() -> None:
    row = TABLES.angle(1.5 * INCH, 1.5 * INCH, INCH / 8)
    assert row is not None and row.area is None
    angle = section.angle_section(1.5 * INCH, 1.5 * INCH, INCH / 8, 3.0, row)
    assert angle.row == ""
    assert angle.to_toe.value == pytest.approx(INCH / 8 + 3.0)
