"""Pydantic types for everything a plan writes in trade notation; each gives SI and has its own name in the schema."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date
from typing import Annotated, Any

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

from plumbrule.reading import labels
from plumbrule.reading.labels import GritSize
from plumbrule.reading.notation import KINDS, MEASURE_ON_SITE, Kind, Measure, NotAQuantity, measure, parse, pattern

__all__ = [
    "MEASURE_ON_SITE",
    "Angle",
    "Area",
    "AreaLoad",
    "Date",
    "Density",
    "Expansion",
    "Force",
    "Grit",
    "GritSize",
    "Length",
    "LineLoad",
    "LineOrAreaLoad",
    "Load",
    "Mass",
    "Measure",
    "Name",
    "NotAQuantity",
    "NotationOf",
    "Percent",
    "ScrewSize",
    "SignedLength",
    "Size",
    "Stress",
    "Temperature",
    "Time",
    "Volume",
    "definitions",
    "measure",
    "parse",
]  # fmt: skip

# Marks a schema fragment that `reading.schema` moves to `$defs`, so that a pattern is written once and has a name.
NAMED = "x-plumbrule-name"


def refused(mistake: NotAQuantity) -> PydanticCustomError:
    """The mistake as pydantic carries it to `take`."""
    return PydanticCustomError("written", "{found} {write}", {"found": mistake.found, "write": mistake.write})


class Load(float):
    """A load in N/mm along a line or, when `over_area`, in MPa over an area."""

    __slots__ = ("over_area",)
    over_area: bool

    def __new__(cls, value: float, *, over_area: bool) -> Load:
        made = super().__new__(cls, value)
        made.over_area = over_area
        return made

    def __reduce__(self) -> tuple[Any, ...]:
        return (_load, (float(self), self.over_area))


def _load(value: float, over_area: bool) -> Load:
    return Load(value, over_area=over_area)


class NotationOf:
    """Annotation that reads one notation. Compared by identity, since pydantic wants metadata hashable."""

    __slots__ = ("name", "read")

    def __init__(self, name: str, read: Callable[[Any], Any]) -> None:
        self.name = name
        self.read = read

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_plain_validator_function(self.read)

    def __get_pydantic_json_schema__(self, schema: CoreSchema, handler: GetJsonSchemaHandler) -> dict[str, Any]:
        return {NAMED: self.name}


def _no_text(kind: Kind, value: Any) -> NotAQuantity:
    from plumbrule.reading.mistaken import bare

    return bare(kind, value)


def _quantity(kind: str) -> NotationOf:
    waits = KINDS[kind].may_wait

    def read(value: Any) -> float | None:
        try:
            if isinstance(value, str):
                return None if waits and value == MEASURE_ON_SITE else parse(kind, value)
            raise _no_text(KINDS[kind], value)
        except NotAQuantity as mistake:
            raise refused(mistake) from None

    return NotationOf(kind, read)


def _label(name: str, read: Callable[[Any], Any]) -> NotationOf:
    def checked(value: Any) -> Any:
        try:
            return read(value)
        except NotAQuantity as mistake:
            raise refused(mistake) from None

    return NotationOf(name, checked)


def _line_or_area_load(value: Any) -> Load:
    if isinstance(value, str):
        try:
            return Load(parse("area load", value), over_area=True)
        except NotAQuantity as over_area:
            try:
                return Load(parse("line load", value), over_area=False)
            except NotAQuantity as along:
                # The mistake of the kind whose unit was meant.
                raise (over_area if re.search("[a-z]\\^?[2²]|[Pp]a$|psf", value) else along) from None
    raise _no_text(KINDS["area load"], value)


# A quantity is None where the plan says `measure on site`; one type for the checker, whatever the field.
Length = Annotated[float | None, _quantity("length")]
Size = Annotated[float | None, _quantity("size")]
SignedLength = Annotated[float | None, _quantity("signed length")]
Area = Annotated[float | None, _quantity("area")]
Volume = Annotated[float | None, _quantity("volume")]
Mass = Annotated[float | None, _quantity("mass")]
Force = Annotated[float | None, _quantity("force")]
LineLoad = Annotated[float | None, _quantity("line load")]
AreaLoad = Annotated[float | None, _quantity("area load")]
LineOrAreaLoad = Annotated[Load | None, _label("line or area load", _line_or_area_load)]
Stress = Annotated[float | None, _quantity("stress")]
Density = Annotated[float | None, _quantity("density")]
Temperature = Annotated[float | None, _quantity("temperature")]
Percent = Annotated[float | None, _quantity("percent")]
Angle = Annotated[float | None, _quantity("angle")]
Time = Annotated[float | None, _quantity("time")]
Expansion = Annotated[float | None, _quantity("expansion")]
ScrewSize = Annotated[int, _label("screw size", labels.screw_size)]
Grit = Annotated[GritSize, _label("grit", labels.grit)]
Date = Annotated[date, _label("date", lambda value: date.fromisoformat(labels.day(value)))]
Name = Annotated[str, _label("name", labels.name)]


def definitions() -> dict[str, dict[str, Any]]:
    """The JSON Schema of each notation by its name in `$defs`."""
    made: dict[str, dict[str, Any]] = {
        kind.name: {
            "description": f"{kind.says[0].upper()}{kind.says[1:]}, like {' or '.join(kind.examples)}"
            + (f"; at most {kind.limit}" if kind.name != "angle" else "")
            + (f"; in a template also: {MEASURE_ON_SITE}" if kind.may_wait else ""),
            "type": "string",
            "pattern": pattern(kind.name),
        }
        for kind in KINDS.values()
    }
    made["line or area load"] = {
        "description": "A load along a length or over an area, like 20 lbf/ft or 100 lbf/ft2",
        "type": "string",
        "pattern": f"^(?:{pattern('line load')[1:-1]}|{pattern('area load')[1:-1]})$",
    }
    made["screw size"] = {
        "description": "The number of a screw, like No. 10; a bare # would start a comment",
        "type": "string",
        "pattern": labels.SCREW_SIZE,
    }
    made["grit"] = {
        "description": "A grit of the United States scale as a whole number, or of ISO 6344 like P150",
        "anyOf": [
            {"type": "integer", "minimum": 12, "maximum": 5000},
            {"type": "string", "pattern": labels.GRIT},
        ],
    }
    made["date"] = {"description": 'A day in quotes, like "2026-03-02"', "type": "string", "pattern": labels.DATE}
    made["name"] = {
        "description": "A letter, then letters, digits and hyphens",
        "type": "string",
        "pattern": labels.NAME,
    }
    return made


_LABEL_EXAMPLES = {
    "line or area load": "20 lbf/ft or 100 lbf/ft2",
    "screw size": "No. 10",
    "grit": "150 or P150",
    "date": '"2026-03-02"',
    "name": "a name like seat-1",
}


def examples(name: str) -> str:
    """How a notation is written, for a sentence that begins with `Write`."""
    return " or ".join(KINDS[name].examples[:2]) if name in KINDS else _LABEL_EXAMPLES[name]
