"""Notation that could not be read: what was probably meant, said in one sentence."""

from __future__ import annotations

import re
from typing import Any

from plumbrule.reading.notation import (
    KINDS,
    LONGEST,
    MEASURE_ON_SITE,
    NUMBER,
    Kind,
    NotAQuantity,
    magnitude,
    parse,
    readable,
)

# What people write -> the spelling of the unit. Looked up in lower case.
_ALIASES = {
    "inch": "in", "inches": "in", "ins": "in", "in.": "in", "”": '"', "“": '"', "''": '"', "’’": '"',
    "foot": "ft", "feet": "ft", "ft.": "ft", "’": "'", "‘": "'",
    "millimetre": "mm", "millimetres": "mm", "millimeter": "mm", "millimeters": "mm", "mms": "mm",
    "centimetre": "cm", "centimetres": "cm", "centimeter": "cm", "centimeters": "cm",
    "metre": "m", "metres": "m", "meter": "m", "meters": "m",
    "sq ft": "ft2", "sqft": "ft2", "sq. ft": "ft2", "sf": "ft2", "sq in": "in2", "sq m": "m2", "sqm": "m2",
    "pint": "pt", "pints": "pt", "quart": "qt", "quarts": "qt", "gallon": "gal", "gallons": "gal", "litre": "l",
    "litres": "l", "liter": "l", "liters": "l", "ltr": "l", "floz": "fl oz", "fl. oz": "fl oz", "fl.oz": "fl oz",
    "lbs": "lb", "lbs.": "lb", "lb.": "lb", "pound": "lb", "pounds": "lb", "#": "lb", "kgs": "kg", "kilo": "kg",
    "kilos": "kg", "lbfs": "lbf", "lb-f": "lbf", "newton": "N", "newtons": "N", "n": "N", "kn": "kN",
    "plf": "lbf/ft", "pli": "lbf/in", "psf": "lbf/ft2", "lbf/sq ft": "lbf/ft2", "kpa": "kPa", "mpa": "MPa",
    "pcf": "lb/ft3", "lb/cu ft": "lb/ft3", "kg/m^3": "kg/m3", "lb/ft^3": "lb/ft3", "lbf/ft^2": "lbf/ft2",
    "ft^2": "ft2", "m^2": "m2", "in^2": "in2", "mm^2": "mm2",
    "º": "°", "degree": "°", "degrees": "°", "degs": "°", "ºf": "°F", "ºc": "°C", "° f": "°F", "° c": "°C",
    "deg f": "°F", "deg c": "°C", "f": "°F", "c": "°C", "fahrenheit": "°F", "celsius": "°C",
    "percent": "%", "per cent": "%", "pct": "%", "hr": "h", "hrs": "h", "hour": "h", "hours": "h", "mins": "min",
    "min.": "min", "minute": "min", "minutes": "min", "d": "days", "yr": "years", "yrs": "years",
    "/°c": "per °C", "/ °c": "per °C", "/c": "per °C", "1/°c": "per °C", "/k": "per °C", "per k": "per °C",
    "/°f": "per °F", "/f": "per °F",
}  # fmt: skip

# What phones, word processors and other countries' habits put in place of what we read.
_LOOKALIKES = str.maketrans({
    "\u00a0": " ", "\u202f": " ", "\u2009": " ", "–": "-", "—": "-", "−": "-", "‐": "-", "‑": "-", "⁄": "/", "∕": "/",
    "”": '"', "“": '"', "’": "'", "‘": "'", "º": "°", "˚": "°",
})  # fmt: skip

# (kind wanted, unit written) -> found, write. `{n}` is the number, `{v}` the same amount in the unit that follows.
_CROSSED: dict[tuple[str, str], tuple[str, str, float]] = {
    ("force", "lb"): ("A load is a force.", "Write {n} lbf.", 1.0),
    ("force", "kg"): ("A load is a force.", "Write {v} N.", 9.80665),
    ("line load", "lb/ft"): ("A load is a force.", "Write {n} lbf/ft.", 1.0),
    ("line load", "lb/in"): ("A load is a force.", "Write {n} lbf/in.", 1.0),
    ("line load", "kg/m"): ("A load is a force.", "Write {v} N/m.", 9.80665),
    ("area load", "lb/ft2"): ("A load is a force.", "Write {n} lbf/ft2.", 1.0),
    ("area load", "lb/ft²"): ("A load is a force.", "Write {n} lbf/ft2.", 1.0),
    ("area load", "kg/m2"): ("A load is a force.", "Write {v} kPa.", 0.00980665),
    ("area load", "kg/m²"): ("A load is a force.", "Write {v} kPa.", 0.00980665),
    ("mass", "lbf"): ("A weight to carry or to buy is a mass.", "Write {n} lb.", 1.0),
    ("mass", "oz"): ("oz is not a unit here.", "Write {v} lb.", 1 / 16),
    ("mass", "t"): ("t is not a unit here.", "Write {v} kg.", 1000.0),
    ("volume", "oz"): ("oz is a weight.", "For a liquid write {n} fl oz.", 1.0),
    ("volume", "cl"): ("cl is not a unit here.", "Write {v} ml.", 10.0),
    ("density", "g/cm3"): ("g/cm3 is not a unit here.", "Write {v} kg/m3.", 1000.0),
    ("density", "lbf/ft3"): ("A density is a mass a volume.", "Write {n} lb/ft3.", 1.0),
    ("time", "weeks"): ("weeks are not a unit here.", "Write {v} days.", 7.0),
    ("time", "week"): ("weeks are not a unit here.", "Write {v} days.", 7.0),
    ("time", "months"): ("Months differ in length.", "Write {v} days.", 30.0),
    ("time", "month"): ("Months differ in length.", "Write {v} days.", 30.0),
    ("time", "s"): ("s is not a unit here.", "Write {v} min.", 1 / 60),
    ("length", "yd"): ("yd is not a unit here.", "Write {v} ft.", 3.0),
}

_AMOUNT = re.compile(f"(-?)({NUMBER}) {{0,2}}([^0-9].{{0,19}})")


def bare(kind: Kind, value: Any) -> NotAQuantity:
    """The mistake for a value that is no text at all: a number, true or false, a list, a mapping, nothing."""
    if value is None:
        return NotAQuantity("The value is empty.", f"Write it like {_examples(kind)}.")
    if isinstance(value, bool):
        return NotAQuantity(
            f"`{'true' if value else 'false'}` is not {kind.says}.", f"Write it like {_examples(kind)}."
        )
    if isinstance(value, (int, float)):
        return _without_unit(kind, f"{value:.10g}")
    if isinstance(value, list):
        return NotAQuantity(f"A list stands where {kind.says} is needed.", f"Write one, like {_examples(kind)}.")
    return NotAQuantity(f"A group of keys stands where {kind.says} is needed.", f"Write it like {_examples(kind)}.")


def explain(kind: Kind, text: str) -> NotAQuantity:
    """The mistake in `text`, which `parse` has refused. Tries, in this order: a missing unit, a unit of the wrong
    kind, what the text becomes when look-alike characters, commas and unit names are put right."""
    text = text.strip()
    if not text:
        return bare(kind, None)
    if len(text) > LONGEST:
        return NotAQuantity(f"{text[:40]}… is too long for {kind.says}.", f"Write it like {_examples(kind)}.")
    if text == MEASURE_ON_SITE:
        return NotAQuantity(
            f"Only a length may wait until it is measured; here {kind.says} is needed.",
            f"Write it like {_examples(kind)}, or leave the key out.",
        )
    if re.fullmatch(f"-?{kind.number}", text):
        return _without_unit(kind, text)
    if crossed := _crossed(kind, text):
        return crossed
    if meant := _put_right(kind, text):
        found = f"{text} has a comma." if "," in text else f"{text} is not written so here."
        return NotAQuantity(found, f"Write {meant}.")
    if not kind.signed and text[0] in "-−–" and readable(kind.name, text[1:]):
        return NotAQuantity(f"{text} is below zero.", f"Write {text[1:]}, or 0 {next(iter(kind.units))} for nothing.")
    if other := _other_kind(kind, text):
        return NotAQuantity(f"{text} is {other.says}; {kind.says} is needed.", f"Write it like {_examples(kind)}.")
    if re.search("/0+(?![0-9])", text):
        return NotAQuantity(f"{text} divides by zero.", f"Write it like {_examples(kind)}.")
    return NotAQuantity(f"{text} is not {kind.says}.", f"Write it like {_examples(kind)}.")


def _examples(kind: Kind) -> str:
    return " or ".join(kind.examples[:2])


def _without_unit(kind: Kind, number: str) -> NotAQuantity:
    if number.startswith("-") and not kind.signed:
        return NotAQuantity(f"{number} has no unit and is below zero.", f"Write it like {_examples(kind)}.")
    meant = number
    write = kind.bare
    if kind.name == "percent" and "/" not in number and float(_plain(number)) <= 1:
        meant = f"{100 * float(_plain(number)):g}"
    if "/" in number and kind.dimension == KINDS["length"].dimension:
        write = "Write {n} in."
    write = write.replace("{n}", meant)
    # A number that could not be meant in any of our units is no ground for a suggestion.
    suggested = write.removeprefix("Write ").removesuffix(".").split(" or ")
    if not any(_believable(kind, one) for one in suggested):
        write = f"Write it like {_examples(kind)}."
    return NotAQuantity(f"{number} has no unit.", write)


def _believable(kind: Kind, text: str) -> bool:
    if not readable(kind.name, text):
        return False
    try:
        parse(kind.name, text)
    except NotAQuantity:
        return False
    return True


def _plain(number: str) -> str:
    try:
        return f"{magnitude(number.lstrip('-')):.10g}"
    except NotAQuantity:
        return "0"


def _crossed(kind: Kind, text: str) -> NotAQuantity | None:
    found = _AMOUNT.fullmatch(text)
    if not found:
        return None
    sign, number, unit = found.groups()
    spelled = _ALIASES.get(unit.lower(), unit)
    wanted = "length" if kind.dimension == KINDS["length"].dimension else kind.name
    row = _CROSSED.get((wanted, spelled)) or _CROSSED.get((wanted, unit))
    if not row or sign:
        return None
    says, write, factor = row
    value = float(_plain(number)) * factor
    return NotAQuantity(says, write.replace("{n}", number).replace("{v}", f"{value:.4g}"))


def _put_right(kind: Kind, text: str) -> str | None:
    """The text as it should have been, if only its dress is wrong."""
    tried = " ".join(text.translate(_LOOKALIKES).split())
    tried = re.sub("(?<=[0-9]),(?=[0-9]{1,2}(?![0-9]))", ".", tried)
    tried = re.sub("(?<=[0-9]),(?=[0-9]{3})", "", tried)
    tried = re.sub("(?<![0-9])[.](?=[0-9])", "0.", tried)
    tried = re.sub(" ?([-/']) ?(?=[0-9])", r"\1", tried)
    if kind.number == NUMBER:
        tried = re.sub("(?<=[0-9]) and (?=[0-9]+/)", "-", tried)
    for candidate in (tried, _respelled(kind, tried)):
        if candidate and candidate != text and readable(kind.name, candidate):
            return candidate
    return None


def _respelled(kind: Kind, text: str) -> str | None:
    found = re.fullmatch(f"(-?{kind.number}) {{0,2}}([^0-9 ].{{0,15}})", text)
    if not found:
        return None
    unit = _ALIASES.get(found[2].lower())
    if unit is None:
        unit = next((known for known in kind.units if known.lower() == found[2].lower()), None)
    return f"{found[1].strip()}{'' if unit == '°' else ' '}{unit}" if unit in kind.units else None


def _other_kind(kind: Kind, text: str) -> Kind | None:
    others = (row for row in KINDS.values() if row.dimension != kind.dimension or row.name == "percent")
    return next((row for row in others if row is not kind and readable(row.name, text)), None)
