"""Printed numbers: as a trade reads them, in their true order, and never a fail that reads like a pass."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.reading.notation import parse
from plumbrule.reading.shown import System, digits, equal, figure, length, pair, printed_unit, quantity, together
from plumbrule.reading.units import UNITS, to_si

INCH = 25.4
LBF = 0.45359237 * 9.80665


@pytest.mark.parametrize(
    ("inches", "shown"),
    [
        (59.5, "59-1/2 in"), (0.75, "3/4 in"), (2, "2 in"), (0, "0 in"), (-0.125, "-1/8 in"), (-1.5, "-1-1/2 in"),
        (11 / 32, "11/32 in"), (5 / 64, "5/64 in"), (59 + 5 / 64, "59-5/64 in"), (0.999, "0.999 in"), (1.46, "1.46 in"),
        (0.58194, "0.582 in"),
        (0.012, "0.012 in"), (96, "96 in"),
    ],
)  # fmt: skip
def test_lengths_in_inches(inches: float, shown: str) -> None:
    assert length(inches * INCH, "inch") == shown


@pytest.mark.parametrize(
    ("mm", "shown"), [(405, "405 mm"), (12.7, "12.7 mm"), (19.05, "19.1 mm"), (0.02, "0.02 mm"), (-3.2, "-3.2 mm")]
)
def test_lengths_in_millimetres(mm: float, shown: str) -> None:
    # 19.05 is a hair above its double: 19.0500000000000007.
    assert length(mm, "metric") == shown


@pytest.mark.parametrize(
    ("value", "unit", "inch", "metric"),
    [
        (250 * LBF, "N", "250 lbf", "1112 N"),
        (to_si(36, "ksi"), "MPa", "36000 psi", "248 MPa"),
        (to_si(36, "ksi"), "ksi", "36 ksi", "248 MPa"),
        (to_si(100, "lbf/ft²"), "lbf/ft²", "100 lbf/ft²", "4.79 kPa"),
        (to_si(20, "lbf/ft"), "N/mm", "20 lbf/ft", "0.292 N/mm"),
        (8.0, "%", "8 %", "8 %"),
        (82.0, "°", "82°", "82°"),
        (20.0, "°C", "68 °F", "20 °C"),
        (0.5, "h", "30 min", "30 min"), (24.0, "h", "1 day", "1 day"), (336.0, "h", "14 days", "14 days"),
        (36.0, "h", "36 h", "36 h"), (4 * 8766.0, "h", "4 years", "4 years"),
        (0.94, "", "0.94", "0.94"), (3.0, "", "3", "3"),
        (10.0, "kg", "22 lb", "10 kg"),
        (float("nan"), "N", "no number", "no number"), (float("inf"), "mm", "no number", "no number"),
    ],
)  # fmt: skip
def test_one_quantity(value: float, unit: str, inch: str, metric: str) -> None:
    assert quantity(value, unit, "inch") == inch
    assert quantity(value, unit, "metric") == metric


@pytest.mark.parametrize(
    ("measure", "limit", "unit", "system", "shown"),
    [
        (1.004, 1.0, "", "inch", ("1.004", "1.00")),
        (0.94, 1.0, "", "inch", ("0.94", "1.00")),
        (126 * LBF, 125.7 * LBF, "N", "inch", ("126 lbf", "125.7 lbf")),
        (250 * LBF, 249.6 * LBF, "N", "inch", ("250 lbf", "249.6 lbf")),
        (250 * LBF, 126 * LBF, "N", "inch", ("250 lbf", "126 lbf")),
        # 1.49 is no sixty-fourth: decimals for both.
        (1.49 * INCH, 1.5 * INCH, "mm", "inch", ("1.49 in", "1.5 in")),
        (59.375 * INCH, 59.5 * INCH, "mm", "inch", ("59-3/8 in", "59-1/2 in")),
        (19.01, 19.05, "mm", "metric", ("19 mm", "19.1 mm")),
        (19.06, 19.05, "mm", "metric", ("19.06 mm", "19.05 mm")),
        # Equal within the tolerance: 2 in less 1-1/4 in is 19.049999999999997 mm.
        (50.8 - 31.75, 19.05, "mm", "inch", ("3/4 in", "3/4 in")),
        (50.8 - 31.75, 19.05, "mm", "metric", ("19.1 mm", "19.1 mm")),
        (71.99, 72.0, "h", "inch", ("71.99 h", "72 h")),
        (72.0, 168.0, "h", "inch", ("3 days", "7 days")),
        # A surface is told in feet, the section of a piece of steel in inches; both numbers in the same.
        (864 * INCH**2, 720 * INCH**2, "mm²", "inch", ("6 ft²", "5 ft²")),
        (143 * INCH**2, 720 * INCH**2, "mm²", "inch", ("143 in²", "720 in²")),
        (5e5, 2e5, "mm²", "metric", ("0.5 m²", "0.2 m²")),
    ],
)  # fmt: skip
def test_a_measure_and_its_limit(
    measure: float, limit: float, unit: str, system: System, shown: tuple[str, str]
) -> None:
    assert pair(measure, limit, unit, system) == shown


def number(text: str) -> Fraction:
    """What a reader takes a printed number for."""
    found = re.match(r"(-?)(?:([0-9]+)-)?([0-9]+)/([0-9]+)", text)
    if found:
        value = Fraction(int(found[3]), int(found[4])) + int(found[2] or 0)
        return -value if found[1] else value
    plain = re.match(r"-?[0-9]+(?:[.][0-9]+)?(?:e-?[0-9]+)?", text)
    assert plain, text
    return Fraction(plain[0])


PRINTED = (
    "",
    "%",
    "mm",
    "N",
    "MPa",
    "N/mm",
    "mm²",
    "mm³",
    "mm⁴",
    "N·mm",
    "kg",
    "kg/mm³",
    "h",
    "°C",
    "per °C",
    "°",
    "kPa",
    "ft²",
)
# Sizes that occur, from the tolerance up; the second value lies at any distance from the first.
SIZES = st.floats(1e-3, 1e6) | st.integers(0, 4096).map(lambda count: count * INCH / 64)
STEPS = st.sampled_from([0.0, 1e-15, 1e-13, 1e-8, 1e-7, 1e-6, 1e-4, 1e-3, 1e-2, 0.3, 2.0])


@settings(max_examples=1000, deadline=None)
@given(
    SIZES, STEPS, st.sampled_from([-1, 1]), st.sampled_from(PRINTED), st.sampled_from(["inch", "metric"]), st.booleans()
)
def test_shown_numbers_order_like_the_real_ones(
    size: float, step: float, way: int, unit: str, system: System, swap: bool
) -> None:
    scale = UNITS[unit].factor if unit in ("kg/mm³", "kPa") else 1e-6 if unit == "per °C" else 1.0
    first, second = size * scale, size * scale * (1 + way * step)
    if swap:
        first, second = second, first
    shown = pair(first, second, unit, system)
    units = {re.sub(r"^-?[0-9./e-]+ ?", "", text).removesuffix("s") for text in shown}
    assert len(units) == 1, shown
    low, high = number(shown[0]), number(shown[1])
    if step <= 1e-13:
        assert shown[0] == shown[1]
    # The tolerance of a judgement (of SI values, relative to 1 for what is smaller than 1): what is judged unequal
    # prints in its order; what is judged equal may print as equal or in its order, never the other way round.
    judged_equal = abs(first - second) <= 1e-9 * max(abs(first), abs(second), 1.0)
    in_order = (low < high, low > high) == (first < second, first > second)
    assert in_order or (judged_equal and low == high), shown


@given(SIZES, st.sampled_from(["inch", "metric"]))
def test_a_shown_length_reads_back_to_what_it_says(size: float, system: System) -> None:
    """To half of the last digit shown: 1/32 in, or 0.05 mm."""
    if size < 50_000:
        assert parse("length", length(size, system)) == pytest.approx(
            size, abs=INCH / 32 if system == "inch" else 0.051
        )


@given(st.floats(-1e12, 1e12), st.sampled_from(["in", "lbf", "psi", "", "°"]))
def test_figures_of_worked_lines_keep_six_digits(value: float, unit: str) -> None:
    text = figure(value, unit)
    assert float(number(text)) == pytest.approx(value, rel=5.1e-6, abs=1e-300)


@pytest.mark.parametrize(
    ("value", "text"),
    [(19748.93, "19748.9"), (0.227, "0.227"), (1.2e-4, "0.00012"), (1234567.8, "1234568"), (-1.2e-6, "-1.2e-6"),
     (0, "0"), (-0.0, "0"), (1e20, "1e20"), (2.5e17, "2.5e17")],
)  # fmt: skip
def test_digits(value: float, text: str) -> None:
    assert digits(value) == text


def test_several_values_and_their_units() -> None:
    assert together((INCH, 1.51 * INCH, 1.52 * INCH), "mm", "inch") == ("1 in", "1.51 in", "1.52 in")
    assert together((float("nan"), INCH), "mm", "inch") == ("no number", "1 in")
    assert printed_unit("kPa", "inch") == "lbf/ft²"
    with pytest.raises(KeyError):
        printed_unit("furlong", "inch")
    assert equal(1.0, 1.0 + 1e-10)
    assert not equal(1.0, 1.0 + 1e-8)
