"""Every printed line of a calculation is worked again from its own text and must give what is printed.

The reader here is written apart from the one that prints. A line is what stands beside `sum`; what is indented further
belongs to it, unless it begins with a middle dot. `SYMBOL = FORMULA = VALUE UNIT` may be followed by three blanks and
words; where nothing is to be worked out there is no FORMULA. A number is followed by its unit; taken off, a formula of
the rule language is left.
"""

from __future__ import annotations

import importlib.util
import re
import sys
from functools import cache
from pathlib import Path
from typing import Any

import hand_made as made
import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from plumbrule.language import rework
from plumbrule.mechanics.worked import Number, Worked
from plumbrule.reading.shown import digits
from plumbrule.reading.units import UNITS, from_si, to_si
from plumbrule.report import text
from plumbrule.report.block import sum_row
from plumbrule.report.sums import essential
from plumbrule.report.worked_line import DIFFERS, line

UNIT = "|".join(re.escape(unit) for unit in sorted(UNITS, key=len, reverse=True) if unit)
LINE = re.compile(
    rf"(?P<symbol>\S+) = (?:(?P<formula>.+) = )?(?P<value>-?[0-9.]+(?:e-?[0-9]+)?)(?: ?(?P<unit>{UNIT}))?"
)
NUMBER_WITH_UNIT = re.compile(rf"(?<=[0-9]) ?(?:{UNIT})(?=[\s)^,]|$)")


def lines_of(report: str) -> list[str]:
    """The printed lines of every `sum` of a report, each on one line again, words left out."""
    found: list[str] = []
    inside = False
    for row in report.splitlines():
        label, rest = row[3:12].strip(), row[12:]
        if label:
            inside = label == "sum"
        if not inside or not row.startswith("   ") or not rest.strip():
            inside = inside and bool(rest.strip())
            continue
        if rest.startswith(("    · ", "      ")):
            continue
        if rest.startswith("    "):
            found[-1] += " " + rest.strip()
        else:
            found.append(rest)
    return [entry.split("   ")[0].strip() for entry in found if " = " in entry]


def again(entry: str) -> tuple[str, str]:
    """The value as printed, and as it comes out of the printed formula."""
    match = LINE.fullmatch(entry)
    assert match is not None, entry
    if match["formula"] is None:
        return match["value"], match["value"]
    plain = NUMBER_WITH_UNIT.sub("", match["formula"])
    figures = len(match["value"].lstrip("-0.").replace(".", ""))
    worked = rework(plain, {})
    shown = next((digits(worked, count) for count in (6, 7, 8) if digits(worked, count) == match["value"]), "")
    return match["value"], shown or digits(worked, max(6, figures))


def beam(width: float, height: float) -> Worked:
    """Second moment and section modulus of a rectangle, b h³/12 and b h²/6 (any table of sections)."""
    numbers = (Number("b", width, "in"), Number("h", height, "in"))
    second = Worked("I", "second moment", "b × h^3 / 12", numbers, width * height**3 / 12, "in⁴", "statics")
    return Worked(
        "S", "section modulus", "b × h^2 / 6", numbers, width * height**2 / 6, "in³", "statics", steps=(second,)
    )


def dowel(q_s: float, q_m: float, gap: float, moment: float) -> Worked:
    """Mode IV of AWC TR12 Table 1-1: P = [-B + sqrt(B² - 4AC)] / 2A with A = 1/2q_s + 1/2q_m, B = gap, C = -2M."""
    a, b, c = 1 / (2 * q_s) + 1 / (2 * q_m), gap, -2 * moment
    return Worked(
        "P", "mode IV, two hinges",
        "(-g + sqrt(g^2 + 8 × M × (1/(2 × q_s) + 1/(2 × q_m)))) / (2 × (1/(2 × q_s) + 1/(2 × q_m)))",
        (Number("g", gap, "in"), Number("M", moment, "in·lbf"),
         Number("q_s", q_s, "lbf/in"), Number("q_m", q_m, "lbf/in")),
        (-b + (b * b - 4 * a * c) ** 0.5) / (2 * a), "lbf", "AWC TR12, Table 1-1",
    )  # fmt: skip


def withdrawal(gravity: float, diameter: float) -> Worked:
    """W = 1800 G^1.5 D^0.75 lbf/in, D in inches (NDS 2018 equation 12.2-1): true in the published units only."""
    return Worked(
        "W", "withdrawal of a lag screw", "1800 × G^1.5 × D^0.75",
        (Number("G", gravity, ""), Number("D", diameter, "in")),
        1800 * gravity**1.5 * diameter**0.75, "lbf/in", "NDS 2018, 12.2-1", published_units=True,
    )  # fmt: skip


@pytest.mark.parametrize("system", ["inch", "metric"])
@pytest.mark.parametrize("width", [60, 100])
def test_what_a_report_prints_works_out_again(system: str, width: int) -> None:
    on = made.row(
        values={"diameter": 7.9375, "end_distance": 8.73125, "leg": "wall"},
        worked={"end_distance": made.END, "diameter": dowel(19749, 1067, 0.5, 117), "leg": beam(1.5, 3.5)},
    )
    run = made.run(made.inspection(made.finding(on=on)), system=system, width=width)
    printed = lines_of(text.plan(run.examined, run.terms))
    assert [entry.split(" = ")[0] for entry in printed] == ["P", "e", "limit"]
    for entry in printed:
        shown, worked = again(entry)
        assert worked == shown, entry


def test_the_dowel_equation_of_the_screen_comes_out() -> None:
    """M = 60,000 psi × 0.227³/6 and q_m = 4,700 psi × 0.227 with half an inch of lining: 348 lbf for mode IV, worked by
    hand from TR12 Table 1-1."""
    shown = line(dowel(87000 * 0.227, 4700 * 0.227, 0.5, 60000 * 0.227**3 / 6), "inch")
    assert shown.agrees
    assert shown.value.startswith("348.")


@cache
def mechanics() -> Any:
    """The calls of every public function of mechanics that its own tests make."""
    path = Path(__file__).parent.parent / "mechanics" / "workings.py"
    spec = importlib.util.spec_from_file_location("workings_of_mechanics", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.path.append(str(path.parent))  # it imports its neighbours, also where only the reports are tested
    spec.loader.exec_module(module)
    return module


def every_calculation() -> dict[str, Worked]:
    """Each line that mechanics writes in these calls, once by its text."""
    return {
        f"{step.symbol} {step.formula} {step.numbers}": step
        for call in mechanics().CALLS.values()
        for worked in mechanics().worked_values(call())
        for step in worked.lines()
    }


@pytest.mark.parametrize("system", ["inch", "metric"])
def test_every_calculation_there_is_works_out_again(system: str) -> None:
    calculations = every_calculation()
    assert len(calculations) > 200
    for worked in calculations.values():
        shown = line(worked, system)
        assert shown.agrees, shown
        printed, reworked = again(shown.sum())
        assert reworked == printed, shown


def test_only_what_governs_is_followed() -> None:
    """A quarter-inch lag through half an inch of lining: mode III_s governs at 79.3 lbf, worked by hand from TR12 Table
    1-1; the other five modes are not part of the sum."""
    side = mechanics().through_leg(mechanics().LAG_14, 12.7).worked
    assert from_si(to_si(side.value, side.unit), "lbf") == pytest.approx(79.3, abs=0.05)
    symbols = [step.symbol for step in essential(side)]
    assert symbols[-2:] == ["Z_III_s", "Z"]
    assert sum(symbol.startswith("Z_") for symbol in symbols) == 1
    assert len(symbols) <= 16


@pytest.mark.parametrize("system", ["inch", "metric"])
@settings(max_examples=150)
@given(
    q_s=some.floats(500, 60_000), q_m=some.floats(200, 5_000), gap=some.floats(0, 1.25), moment=some.floats(20, 900),
    width=some.floats(0.1, 20), height=some.floats(0.05, 12), gravity=some.floats(0.31, 0.73),
)  # fmt: skip
def test_any_line_works_out_again(
    system: str, q_s: float, q_m: float, gap: float, moment: float, width: float, height: float, gravity: float
) -> None:
    for worked in (dowel(q_s, q_m, gap, moment), *beam(width, height).lines(), withdrawal(gravity, width / 20)):
        shown = line(worked, system)
        assert shown.agrees, shown
        printed, reworked = again(shown.sum())
        assert reworked == printed, shown


def test_a_published_formula_keeps_its_units() -> None:
    """1/4 in lag in spruce-pine-fir, G 0.42: 173 lbf/in (NDS 2018 Table 12.2A)."""
    shown = line(withdrawal(0.42, 0.25), "metric")
    assert shown.put == "1800 × 0.42^1.5 × (0.25 in)^0.75"
    assert round(float(shown.value.split()[0])) == 173


def test_a_line_that_does_not_work_out_says_so() -> None:
    wrong = Worked("x", "a mistake", "a + b", (Number("a", 1.0, "mm"), Number("b", 2.0, "mm")), 4.0, "mm", "nobody")
    shown = line(wrong, "inch")
    assert not shown.agrees
    assert DIFFERS in " ".join(" ".join(sum_row(shown, 100)).split())


def test_a_rule_that_multiplies_by_a_unit_prints_a_quantity() -> None:
    rule = made.rule(measure="end_distance", at_least="1.5 * diameter + 1 / 16 * inch")
    finding = made.finding(rule, limit=13.49375, margin=8.73125 - 13.49375)
    run = made.run(made.inspection(finding))
    limit = lines_of(text.plan(run.examined, run.terms))[-1]
    assert limit == "limit = 1.5 × 0.3125 in + 0.0625 in = 0.53125 in"
    assert again(limit) == ("0.53125", "0.53125")
