"""Every line of every calculation, worked again from its own text and numbers, gives the value that was compared."""

from __future__ import annotations

import importlib
import inspect
import pkgutil
from typing import Literal, get_origin, get_type_hints

import pytest
from workings import CALLS, worked_values

import plumbrule.mechanics
from plumbrule.language import rework
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import UNITS

# Modules whose functions return rows, words or numbers, not calculations; the lines of `beam_loads` stand as steps
# under `continuous_beam`.
_PLAIN = {
    "board_wood",
    "given",
    "outside",
    "classify",
    "table_files",
    "table_rows",
    "tables",
    "worked",
    "beam_loads",
    "task_table",
    "spring_beam",
    "slabs",
    "course",
    "course_edges",
    "panel_stock",
    "calendar",
    "cutting_bound",
    "cutting_stock",
}
# Beside the calculations of their modules: names in an order, times of steps, and a row of a table.
_NO_LINES = {"in_turn", "times", "longest_chain", "last_grit"}


def public_calculations() -> set[str]:
    found = set()
    for module in pkgutil.iter_modules(plumbrule.mechanics.__path__):
        if module.name in _PLAIN:
            continue
        part = importlib.import_module(f"plumbrule.mechanics.{module.name}")
        for name, function in inspect.getmembers(part, inspect.isfunction):
            answers = get_type_hints(function).get("return")
            plain = answers in (bool, float, str) or get_origin(answers) is Literal
            if function.__module__ == part.__name__ and not name.startswith("_") and not plain:
                found.add(name)
    return found - _NO_LINES


def test_every_public_calculation_is_worked_again() -> None:
    assert public_calculations() == set(CALLS)


@pytest.mark.parametrize("name", CALLS)
def test_lines_work_again(name: str) -> None:
    results = list(worked_values(CALLS[name]()))
    assert results
    for result in results:
        for line in result.lines():
            again = rework(line.formula, {number.symbol: number.value for number in line.numbers})
            assert again == pytest.approx(line.value, rel=1e-9, abs=1e-12), f"{line.symbol} = {line.formula}"


@pytest.mark.parametrize("name", CALLS)
def test_lines_can_be_read(name: str) -> None:
    for result in worked_values(CALLS[name]()):
        for line in result.lines():
            assert line.unit in UNITS, line
            assert line.words and line.source, line
            assert all(number.unit in UNITS for number in line.numbers), line
            assert len({number.symbol for number in line.numbers}) == len(line.numbers), line


@pytest.mark.parametrize("name", CALLS)
def test_a_step_and_the_number_taken_from_it_agree(name: str) -> None:
    """A number whose symbol is a step's must be that step's value: a chain that copies a stale figure shows here."""
    for result in worked_values(CALLS[name]()):
        for line in result.lines():
            by_symbol: dict[str, list[Worked]] = {}
            for step in line.steps:
                by_symbol.setdefault(step.symbol, []).append(step)
            for number in line.numbers:
                for step in by_symbol.get(number.symbol, []):
                    unit = UNITS[number.unit]
                    assert unit.offset + unit.factor * number.value == pytest.approx(si(step), rel=1e-9), line


@pytest.mark.parametrize("name", CALLS)
def test_homogeneous_formulas_hold_in_inches_and_pounds(name: str) -> None:
    """Any line that is not marked as empirical may be printed in trade units: it must then give the same quantity."""
    trade = {"mm": "in", "N": "lbf", "MPa": "psi", "N/mm": "lbf/in", "N·mm": "in·lbf", "mm/N": "in/lbf", "kg": "lb",
             "mm²": "in²", "mm³": "in³", "mm⁴": "in⁴", "kg/mm³": "lb/in³"}  # fmt: skip
    for result in worked_values(CALLS[name]()):
        for line in result.lines():
            if line.published_units:
                continue
            numbers = {}
            for number in line.numbers:
                unit = UNITS[trade.get(number.unit, number.unit)]
                numbers[number.symbol] = number.value * UNITS[number.unit].factor / unit.factor
            unit = UNITS[trade.get(line.unit, line.unit)]
            again = rework(line.formula, numbers) * unit.factor / UNITS[line.unit].factor
            assert again == pytest.approx(line.value, rel=1e-9, abs=1e-9), f"{line.symbol} = {line.formula}"
