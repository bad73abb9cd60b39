"""A line of a calculation as printed: it can be worked again from its own text, and is, before it is shown.

A line reads `SYMBOL = FORMULA WITH NUMBERS = VALUE UNIT`, or `SYMBOL = VALUE UNIT` where there is nothing to work out.
Taking the units off its numbers leaves a formula of the rule language, and working that gives VALUE to every figure
shown: within one line all units fit together.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from functools import cache
from typing import NamedTuple

from plumbrule.language import BadExpression, CannotWork, Node, parse, rework, show
from plumbrule.mechanics.worked import Number, Worked
from plumbrule.reading.units import UNITS
from plumbrule.report.figures import converted, fitting_unit, significant, with_unit

FIGURES = (6, 8, 10, 12, 15, 17)
DIGITS = (6, 7, 8)
DIFFERS = "this line does not work out again: do not rely on it, and report it"


class Line(NamedTuple):
    """`put` is the formula with the numbers put in, `value` the result as printed, `formula` the formula in symbols.

    `agrees` is false where the printed numbers do not give the printed result: a mistake of the program, to be said.
    """

    symbol: str
    put: str
    value: str
    words: str
    source: str
    formula: str
    agrees: bool = True

    def sum(self) -> str:
        """The line itself. Its parts are separated by ` = `."""
        return (
            f"{self.symbol} = {self.value}" if self.put == self.value else f"{self.symbol} = {self.put} = {self.value}"
        )


def line(worked: Worked, system: str) -> Line:
    """One worked line in the units of `system` (`inch` or `metric`); a formula that is only true in the units it was
    published in, in those."""
    node = parse(worked.formula, formula=True)
    symbol = worked.symbol.replace(" ", "_")
    for units in _unit_choices(worked, system):
        made = _made(node, worked.numbers, units, worked.value, worked.unit)
        if made:
            return Line(symbol, *made, worked.words, worked.source, worked.formula)
    numbers = {number.symbol: with_unit(significant(number.value, 12), number.unit) for number in worked.numbers}
    value = with_unit(significant(worked.value, 6), worked.unit)
    return Line(symbol, show(node, numbers), value, worked.words, worked.source, worked.formula, agrees=False)


def rework_text(put: str) -> float:
    """The value of a printed formula, from its text alone. Raises BadExpression or CannotWork."""
    return rework(_units_of_numbers().sub(r"\1", put), {})


@cache
def _units_of_numbers() -> re.Pattern[str]:
    symbols = sorted((re.escape(symbol) for symbol in UNITS if symbol), key=len, reverse=True)
    return re.compile(rf"([0-9]) ?(?:{'|'.join(symbols)})(?![\w/·²³⁴])")


def gives(put: str, shown: str, digits: int) -> bool:
    """Whether the printed formula comes to the printed value, to so many figures."""
    try:
        return significant(rework_text(put), digits) == shown
    except (BadExpression, CannotWork):
        return False


def _unit_choices(worked: Worked, system: str) -> Iterator[Mapping[str, str]]:
    """By symbol, the result under the empty name: units that fit `system`, then the units the line was worked in."""
    given = {"": worked.unit, **{number.symbol: number.unit for number in worked.numbers}}
    if not worked.published_units:
        fitting = {name: fitting_unit(unit, system) for name, unit in given.items()}
        known = {name: unit for name, unit in fitting.items() if unit is not None}
        if len(known) == len(given):
            yield known
    yield given


def _made(
    node: Node, numbers: tuple[Number, ...], units: Mapping[str, str], value: float, unit: str
) -> tuple[str, str] | None:
    """Formula with numbers, and result, with as many figures as it takes for the one to give the other."""
    result = converted(value, unit, units[""])
    for figures in FIGURES:
        put = show(node, {
            number.symbol: with_unit(
                significant(converted(number.value, number.unit, units[number.symbol]), figures), units[number.symbol]
            )
            for number in numbers
        })  # fmt: skip
        for digits in DIGITS:
            shown = significant(result, digits)
            if gives(put, shown, digits):
                return put, with_unit(shown, units[""])
    return None
