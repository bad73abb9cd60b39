"""Settings: quantities with a unit and a range, and what a house makes of them."""

from __future__ import annotations

from plumbrule.language import Number
from plumbrule.reading.notation import NotAQuantity, measure
from plumbrule.reading.units import si_unit
from plumbrule.rulebook.file import SettingFile
from plumbrule.rulebook.rule import Setting


def quantity(written: float | str) -> tuple[float, str, Number]:
    """A number or a quantity as written: its value in SI, the SI unit it is kept in, and its type.

    Raises NotAQuantity with the sentences to print.
    """
    if not isinstance(written, str):
        return float(written), "", Number()
    found = measure(written)
    return found.value, "%" if found.kind == "percent" else si_unit(found.dimension), Number(found.dimension)


def setting(name: str, file: SettingFile) -> Setting:
    """A setting as the rule file gives it.

    Raises NotAQuantity for a range of another dimension than the value's, or one that leaves the value out.
    """
    value, unit, kind = quantity(file.value)
    ends: list[float | None] = []
    for end in (file.at_least, file.at_most):
        if end is None:
            ends.append(None)
            continue
        number, _, other = quantity(end)
        if other != kind:
            raise NotAQuantity(
                f"{end} is not the same kind of quantity as {file.value}.", "Use one unit for all three."
            )
        ends.append(number)
    made = Setting(name, kind, unit, value, ends[0], ends[1], file.says, str(file.value))
    beyond = outside(made, value)
    if beyond:
        raise NotAQuantity(f"{file.value} is {beyond}.", "Widen the range, or change the value.")
    return made


def outside(of: Setting, value: float) -> str:
    """How `value` lies outside the range of a setting, or an empty text."""
    if of.least is not None and value < of.least:
        return "below the smallest value allowed"
    if of.most is not None and value > of.most:
        return "above the largest value allowed"
    return ""
