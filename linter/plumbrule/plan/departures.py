"""Departures: rules knowingly not kept at one place, and who answers for it."""

from typing import Annotated, Any, ClassVar

from pydantic import PlainValidator, WithJsonSchema

from plumbrule.plan.part import Part, Text
from plumbrule.reading.model import mistake
from plumbrule.reading.notation import NotAQuantity, measure
from plumbrule.reading.quantities import Date


def _margin(value: Any) -> float:
    """SI value of a plain number or of a quantity with its unit. A margin below zero is a limit that is missed."""
    if isinstance(value, int | float) and not isinstance(value, bool):
        return float(value)
    if not isinstance(value, str):
        raise mistake("A margin is needed here.", "Write it as the punch list prints it, like -1/16 in.")
    below = value.startswith("-")
    try:
        found = measure(value.removeprefix("-")).value
    except NotAQuantity as error:
        raise mistake(error.found, "Write it as the punch list prints it, like -1/16 in.") from None
    return -found if below else found


Margin = Annotated[
    float,
    PlainValidator(_margin),
    WithJsonSchema({"anyOf": [{"type": "number"}, {"type": "string", "minLength": 2, "maxLength": 60}]}),
]


class Departure(Part):
    """A rule that is knowingly not kept at one place, and who answers for it."""

    HINTS: ClassVar[dict[str, str]] = {"because": "Write reason.", "by": "Write allowed_by.", "where": "Write at."}

    rule: Text
    """name of the rule"""
    at: Text
    """pointer to the part: /angles/seat-back"""
    reason: Text
    """why it is allowed here"""
    allowed_by: Text
    """trade of whoever allowed it: engineer, building official"""
    until: Date
    """day the permission ends, in quotes"""
    margin: Margin | None = None
    """margin when it was allowed, as the punch list prints it; the permission is void once it gets worse"""
