"""Trade notation to SI: `97-1/2 in`, `5'-3 1/2"`, `250 lbf`, `68 °F` as a plan, a house file or a rule writes them."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import NamedTuple

from plumbrule.reading.units import UNITS, Dimension, to_si

MEASURE_ON_SITE = "measure on site"

# Every repeat is bounded and no two alternatives can match the same text for long, so matching is linear. The same
# strings go into the published JSON Schema: only what ECMA-262 and Python read alike, and no needless escapes.
_FRACTIONS = {"½": (1, 2), "¼": (1, 4), "¾": (3, 4), "⅛": (1, 8), "⅜": (3, 8), "⅝": (5, 8), "⅞": (7, 8)}
_GLYPH = "[½¼¾⅛⅜⅝⅞]"
_RATIO = "[1-9][0-9]{0,3}/[1-9][0-9]{0,3}"
NUMBER = f"(?:[0-9]{{1,6}}(?:[ -]{_RATIO}|[ -]?{_GLYPH}|[.][0-9]{{1,6}})?|{_RATIO}|{_GLYPH})"
_SCIENTIFIC = "[0-9]{1,6}(?:[.][0-9]{1,6})?(?:e-?[0-9]{1,2})?"
LONGEST = 60


class NotAQuantity(ValueError):
    """Text that is not the quantity wanted. `found` and `write` are whole sentences; `notation` is false when the
    writing is right and only the value cannot be (a length of 300 m)."""

    def __init__(self, found: str, write: str, *, notation: bool = True) -> None:
        super().__init__(f"{found} {write}")
        self.found = found
        self.write = write
        self.notation = notation


class Kind(NamedTuple):
    """One kind of quantity: how it is spelled, between which SI values it is believed, and how to say so.

    `units` maps a spelling to its symbol in the unit table; `bare` completes "48 has no unit." with `{n}` for the
    number; `limit` is what `highest` is called in a sentence.
    """

    name: str
    says: str
    units: dict[str, str]
    examples: tuple[str, ...]
    bare: str
    highest: float
    limit: str
    lowest: float = 0.0
    signed: bool = False
    number: str = NUMBER
    positive: bool = False
    may_wait: bool = False

    @property
    def dimension(self) -> Dimension:
        return UNITS[next(iter(self.units.values()))].dimension


_LENGTHS = {"in": "in", '"': "in", "″": "in", "ft": "ft", "'": "ft", "′": "ft", "mm": "mm", "cm": "cm", "m": "m"}
_LINE_LOADS = {"lbf/ft": "lbf/ft", "lbf/in": "lbf/in", "kN/m": "kN/m", "N/m": "N/m", "N/mm": "N/mm"}
_AREA_LOADS = {"lbf/ft2": "lbf/ft²", "lbf/ft²": "lbf/ft²", "kPa": "kPa", "kN/m2": "kPa", "kN/m²": "kPa"}
_LENGTH = Kind(
    "length", "a length", _LENGTHS, ("3/4 in", "4 ft 2 in", "405 mm"), "Write {n} in or {n} mm.", 100_000.0, "100 m",
    may_wait=True,
)  # fmt: skip

_KINDS = (
    _LENGTH,
    _LENGTH._replace(name="size", says="a length above zero", positive=True),
    _LENGTH._replace(name="signed length", lowest=-100_000.0, signed=True),
    Kind(
        "area", "an area",
        {"ft2": "ft²", "ft²": "ft²", "in2": "in²", "in²": "in²", "m2": "m²", "m²": "m²", "mm2": "mm²", "mm²": "mm²"},
        ("6 ft2", "0.5 m2"), "Write {n} ft2 or {n} m2.", 1e10, "10,000 m2",
    ),
    Kind(
        "volume", "a volume",
        {"fl oz": "fl oz", "pt": "pt", "qt": "qt", "gal": "gal", "ml": "ml", "l": "l"},
        ("1 qt", "10.1 fl oz", "300 ml"), "Write {n} qt or {n} l.", 1e9, "1,000 l",
    ),
    Kind("mass", "a weight", {"lb": "lb", "kg": "kg", "g": "g"}, ("1 lb", "2 kg"), "Write {n} lb or {n} kg.", 1e4,
         "10,000 kg"),
    Kind("force", "a force", {"lbf": "lbf", "kN": "kN", "N": "N"}, ("250 lbf", "1.1 kN"), "Write {n} lbf or {n} N.",
         1e6, "1,000 kN"),
    Kind("line load", "a load along a length", _LINE_LOADS, ("20 lbf/ft", "0.3 kN/m"), "Write {n} lbf/ft or {n} kN/m.",
         1e3, "1,000 kN/m"),
    Kind("area load", "a load over an area", _AREA_LOADS, ("100 lbf/ft2", "5 kPa"), "Write {n} lbf/ft2 or {n} kPa.",
         1.0, "1,000 kPa"),
    Kind("stress", "a stress",
         {"psi": "psi", "ksi": "ksi", "MPa": "MPa", "kPa": "kPa", "N/mm2": "MPa", "N/mm²": "MPa"},
         ("36 ksi", "250 MPa"), "Write {n} psi or {n} MPa.", 1e6, "1,000,000 MPa"),
    Kind("density", "a density",
         {"lb/ft3": "lb/ft³", "lb/ft³": "lb/ft³", "lb/in3": "lb/in³", "lb/in³": "lb/in³", "kg/m3": "kg/m³",
          "kg/m³": "kg/m³"},
         ("35 lb/ft3", "560 kg/m3"), "Write {n} lb/ft3 or {n} kg/m3.", 25_000e-9, "25,000 kg/m3"),
    Kind("temperature", "a temperature", {"°F": "°F", "F": "°F", "°C": "°C", "C": "°C"}, ("68 °F", "20 °C"),
         "Write {n} °F or {n} °C.", 1000.0, "1,000 °C", lowest=-273.15, signed=True),
    Kind("percent", "a percentage", {"%": "%"}, ("30 %",), "Write {n} %.", 200.0, "200 %"),
    Kind("angle", "an angle", {"°": "°", "deg": "°"}, ("82°",), "Write {n}°.", 360.0, "360°"),
    Kind("time", "a length of time",
         {"min": "min", "h": "h", "days": "days", "day": "days", "years": "years", "year": "years"},
         ("40 min", "1 h", "14 days"), "Write {n} h or {n} days.", 200 * 8766.0, "200 years"),
    Kind("expansion", "an expansion", {"per °C": "per °C", "per C": "per °C", "per °F": "per °F", "per F": "per °F"},
         ("1.2e-4 per °C",), "Write {n} per °C.", 1e-2, "0.01 per °C", number=_SCIENTIFIC),
)  # fmt: skip

KINDS: dict[str, Kind] = {kind.name: kind for kind in _KINDS}


def _spellings(units: dict[str, str]) -> str:
    """The units of a kind as alternatives, longest first so that `mm` is not read as `m`."""
    return "|".join(sorted(units, key=lambda spelling: (-len(spelling), spelling)))


def pattern(kind: str) -> str:
    """The notation of a kind as a JSON Schema pattern (ECMA-262), anchored. It says what may be written; limits of
    value (`highest`, a fraction above one after a whole number) are left to `parse`."""
    row = KINDS[kind]
    forms = [f"{row.number} ?(?:{_spellings(row.units)})"]
    if "ft" in row.units:
        forms.append(f"[0-9]{{1,4}} ?(?:ft|['′])[ -]?{NUMBER} ?(?:in|[\"″])")
    sign = "-?" if row.signed else ""
    some = "(?=[^1-9½¼¾⅛⅜⅝⅞]*[1-9½¼¾⅛⅜⅝⅞])" if row.positive else ""
    body = f"{some}{sign}(?:{'|'.join(forms)})"
    return f"^(?:{MEASURE_ON_SITE}|{body})$" if row.may_wait else f"^{body}$"


@cache
def _plain(kind: str) -> re.Pattern[str]:
    row = KINDS[kind]
    sign = "-?" if row.signed else ""
    return re.compile(f"({sign})({row.number}) ?({_spellings(row.units)})")


@cache
def _feet_and_inches() -> re.Pattern[str]:
    return re.compile(f"(-?)([0-9]{{1,4}}) ?(?:ft|['′])[ -]?({NUMBER}) ?(?:in|[\"″])")


def magnitude(text: str) -> float:
    """The number in `97-1/2`, `97 1/2`, `97½`, `1/2`, `40.5` or `1.2e-4`.

    Raises NotAQuantity when the fraction after a whole number is one or more: `1-5/4` is a slip of the pen.
    """
    if "e" in text:
        return float(text)
    for glyph, (above, below) in _FRACTIONS.items():
        text = text.replace(glyph, f" {above}/{below}")
    parts = text.replace("-", " ").split()
    total = 0.0
    for part in parts:
        above_text, slash, below_text = part.partition("/")
        if not slash:
            total += float(part)
            continue
        if len(parts) > 1 and int(above_text) >= int(below_text):
            raise NotAQuantity(
                f"{part} after a whole number is not less than one.",
                "Write the whole number and what is left over, like 2-1/4 in.",
                notation=False,
            )
        total += int(above_text) / int(below_text)
    return total


@lru_cache(maxsize=8192)
def parse(kind: str, text: str) -> float:
    """`text` in SI (mm, N, MPa, kg, h, °C, degrees, percent). `kind` is a key of KINDS.

    Raises NotAQuantity, which says what stands there and what to write instead.
    """
    row = KINDS[kind]
    if len(text) <= LONGEST:
        if found := _plain(kind).fullmatch(text):
            sign, number, unit = found.groups()
            value = magnitude(number)
            return _believed(row, text, to_si(-value if sign else value, row.units[unit]))
        if "ft" in row.units and (found := _feet_and_inches().fullmatch(text)) and (row.signed or not found[1]):
            inches = magnitude(found[3])
            if inches >= 12:
                over, left = divmod(inches, 12)
                feet = int(found[2]) + int(over)
                raise NotAQuantity(
                    f"The inches in {text} are a foot or more.", f"Write {feet} ft {left:g} in.", notation=False
                )
            value = to_si(12 * int(found[2]) + inches, "in")
            return _believed(row, text, -value if found[1] else value)
    from plumbrule.reading.mistaken import explain

    raise explain(row, text)


def readable(kind: str, text: str) -> bool:
    """Whether `text` is written in the notation of `kind`; its value may still be refused."""
    row = KINDS[kind]
    if len(text) > LONGEST:
        return False
    if _plain(kind).fullmatch(text):
        return True
    inches = _feet_and_inches().fullmatch(text) if "ft" in row.units else None
    return inches is not None and (row.signed or not inches[1])


def _believed(row: Kind, text: str, value: float) -> float:
    """The value, if it can be meant."""
    if row.positive and value == 0:
        raise NotAQuantity(f"{text} is nothing.", "Write its real size.")
    if value > row.highest * (1 + 1e-9):
        raise NotAQuantity(f"{text} is more than {row.limit}: that is a slip.", "Check the unit.", notation=False)
    if value < row.lowest * (1 + 1e-9 if row.lowest < 0 else 1):
        least = "absolute zero, -273.15 °C" if row.name == "temperature" else f"-{row.limit}"
        raise NotAQuantity(f"{text} is below {least}: that is a slip.", "Check the unit.", notation=False)
    return value


class Measure(NamedTuple):
    """A quantity of a kind that is not known beforehand: SI value, its dimension, and the kind it was read as."""

    value: float
    dimension: Dimension
    kind: str


# Stress before area load, since `kPa` is both and they have the same dimension.
_ANY = tuple(name for name in KINDS if name not in ("length", "size"))


@lru_cache(maxsize=2048)
def measure(text: str) -> Measure:
    """Any quantity with its unit: a setting of a rule, the expected measure of an example. A plain number without a
    unit is not one. Raises NotAQuantity."""
    for name in _ANY:
        if readable(name, text):
            return Measure(parse(name, text), KINDS[name].dimension, name.removeprefix("signed "))
    raise NotAQuantity(
        f"{text[:LONGEST]} is not a quantity with a unit." if text else "The value is empty.",
        "Write a number and its unit, like 3/4 in, 250 lbf or 14 days.",
    )
