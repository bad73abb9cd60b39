"""A field of a finished row, as an input of another row: its value, or why it has none."""

from __future__ import annotations

from plumbrule.catalogue.fact import Row, Value
from plumbrule.facts.desk import Absent, Desk, Missing
from plumbrule.mechanics.given import Given
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook


def of_row(desk: Desk, row: Row, field: str) -> Value:
    """The value of a field, its inputs noted on the desk. Raises what kept the other row from having it."""
    desk.read_row(row, field)
    if field in row.values:
        return row.values[field]
    if field in row.missing:
        raise Missing(row.missing[field])
    if field in row.outside:
        raise OutsideRulebook(row.outside[field])
    if field in row.failed:
        raise NotPossible(row.failed[field])
    raise Absent(f"{row.label} has no {field}")


def number_of(desk: Desk, row: Row, field: str) -> Given:
    """The same as a number, with the line it was worked by where there is one."""
    value = of_row(desk, row, field)
    assert isinstance(value, int | float) and not isinstance(value, bool), field
    return row.worked.get(field) or float(value)


def numbers_of(desk: Desk, row: Row, *fields: str) -> tuple[Given, ...]:
    """Several fields, so that everything missing among them is named together."""
    wanting = [pointer for field in fields for pointer in row.missing.get(field, ())]
    if wanting:
        raise Missing(wanting)
    return tuple(number_of(desk, row, field) for field in fields)
