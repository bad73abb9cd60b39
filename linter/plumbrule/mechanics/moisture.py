"""The moisture that wood comes to in the air of a room, and between which two values a room moves it over a year."""

from __future__ import annotations

from typing import Literal, NamedTuple

from plumbrule.mechanics.given import Given, finite, number, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked
from plumbrule.reading.units import from_si, to_si

Scale = Literal["°F", "°C"]

_SOURCE = "Wood Handbook, FPL-GTR-282, eq. 4-5 (FPL-RN-0268)"
_DOUBT_SOURCE = "FPL-GTR-229: the data behind the table are in doubt by 1 % and more"
# Per cent of moisture to either side of the equation: the doubt of the data it was fitted to.
DOUBT = 1.0
# The printed table: 30 to 270 °F and 5 to 95 % humidity.
_COLDEST, _HOTTEST = to_si(30, "°F"), to_si(270, "°F")
_DRIEST, _DAMPEST = 5.0, 95.0
_TIE = 1e-9

# (constant, per degree, per degree squared) of W, K, K_1 and K_2.
_CONSTANTS: dict[str, dict[str, tuple[float, float, float]]] = {
    "°F": {"W": (330, 0.452, 0.00415), "K": (0.791, 0.000463, -0.000000844),
           "K_1": (6.34, 0.000775, -0.0000935), "K_2": (1.09, 0.0284, -0.0000904)},
    "°C": {"W": (349, 1.29, 0.0135), "K": (0.805, 0.000736, -0.00000273),
           "K_1": (6.27, -0.00938, -0.000303), "K_2": (1.91, 0.0407, -0.000293)},
}  # fmt: skip
_WORDS = {"W": "molar weight of the wood", "K": "first constant", "K_1": "second constant", "K_2": "third constant"}
_FORMULA = (
    "1800 / W * (K * h / (1 - K * h) + (K_1 * K * h + 2 * K_1 * K_2 * K^2 * h^2)"
    " / (1 + K_1 * K * h + K_1 * K_2 * K^2 * h^2))"
)


class MoistureBand(NamedTuple):
    """Moisture of wood over the year in one room, %. A board is best fitted between `fit_least` and `fit_most`."""

    dry: Worked
    damp: Worked
    fit_least: Worked
    fit_most: Worked


def equilibrium_moisture(temperature: Given, humidity: Given, scale: Scale = "°F") -> Worked:
    """The moisture in % that wood comes to in air of `temperature` °C and `humidity` %.

    `scale` says which of the two published sets of constants is used and printed; they differ by 0.02 %. Valid from
    -1 to 132 °C and 5 to 95 %; OutsideRulebook beyond. The last half per cent means nothing.
    """
    celsius, percent = finite("the temperature", temperature), finite("the humidity", humidity)
    if scale not in _CONSTANTS:
        raise NotPossible(f"{scale} is not one of {', '.join(_CONSTANTS)}")
    if not 0 <= percent <= 100:
        raise NotPossible(f"a humidity of {percent:g} % cannot be")
    if not (_COLDEST - _TIE <= celsius <= _HOTTEST + _TIE and _DRIEST - _TIE <= percent <= _DAMPEST + _TIE):
        raise OutsideRulebook(
            "The moisture of wood is published for air between 30 and 270 °F and between 5 and 95 % humidity: measure "
            "the board itself with a moisture meter."
        )
    parts = {name: _part(name, temperature, scale) for name in _CONSTANTS[scale]}
    w, k, k_1, k_2 = (part.value for part in parts.values())
    x = k * percent / 100
    value = 1800 / w * (x / (1 - x) + (k_1 * x + 2 * k_1 * k_2 * x**2) / (1 + k_1 * x + k_1 * k_2 * x**2))
    share = Worked(
        "h", "humidity as a part of one", "RH / 100", (number("RH", humidity, "%"),), percent / 100, "", "definition",
        steps=steps(humidity),
    )  # fmt: skip
    return Worked(
        "M", "moisture that wood comes to in this air", _FORMULA,
        (*(Number(name, part.value, "") for name, part in parts.items()), Number("h", share.value, "")), value, "%",
        _SOURCE, caution="Trust no more than half a per cent of it.", published_units=True,
        steps=(*parts.values(), share),
    )  # fmt: skip


def moisture_band(coldest: Given, warmest: Given, driest: Given, dampest: Given, scale: Scale = "°F") -> MoistureBand:
    """Between which moistures a room moves its wood: dry in the warmest and driest air less the data's doubt of 1 %,
    damp in the coldest and dampest air plus 1 %. Fit a board where both ends are 1 % away. °C and %.

    Raises NotPossible when coldest is warmer than warmest or driest damper than dampest, OutsideRulebook as
    `equilibrium_moisture`.
    """
    if si(coldest) > si(warmest) + _TIE:
        raise NotPossible("coldest is warmer than warmest")
    if si(driest) > si(dampest) + _TIE:
        raise NotPossible("driest is damper than dampest")
    low = equilibrium_moisture(warmest, driest, scale)
    high = equilibrium_moisture(coldest, dampest, scale)
    dry = _shifted("M_dry", "moisture of the wood at its driest", low, "-")
    damp = _shifted("M_damp", "moisture of the wood at its dampest", high, "+")
    return MoistureBand(
        dry, damp, _shifted("M_least", "least moisture to fit a board at", dry, "+"),
        _shifted("M_most", "most moisture to fit a board at", damp, "-"),
    )  # fmt: skip


def largest_change(dry: Given, damp: Given, fitted: Given) -> Worked:
    """By how much at most the moisture of a board moves over the year, %, from that at which it is `fitted` to the
    `dry` or the `damp` end. Raises NotPossible when dry is above damp."""
    low, high, start = finite("the dry end", dry), finite("the damp end", damp), finite("the moisture", fitted)
    if low > high + _TIE:
        raise NotPossible("the dry end of the band is above the damp end")
    return Worked(
        "dM", "largest change of moisture over the year", "max(abs(M_damp - M_i), abs(M_dry - M_i))",
        (number("M_damp", damp, "%"), number("M_dry", dry, "%"), number("M_i", fitted, "%")),
        max(abs(high - start), abs(low - start)), "%", "difference", steps=steps(dry, damp, fitted),
    )  # fmt: skip


def _part(name: str, temperature: Given, scale: Scale) -> Worked:
    constant, slope, square = _CONSTANTS[scale][name]
    degrees = from_si(si(temperature), scale)
    terms = f"{constant} {_signed(slope)} * T {_signed(square)} * T^2"
    return Worked(
        name, f"{_WORDS[name]} of the moisture equation", terms, (number("T", temperature, scale),),
        constant + slope * degrees + square * degrees**2, "", _SOURCE, published_units=True, steps=steps(temperature),
    )  # fmt: skip


def _signed(value: float) -> str:
    text = f"{abs(value):.9f}".rstrip("0")
    return f"- {text}" if value < 0 else f"+ {text}"


def _shifted(symbol: str, words: str, base: Worked, sign: Literal["+", "-"]) -> Worked:
    value = base.value + DOUBT if sign == "+" else max(base.value - DOUBT, 0.0)
    return Worked(
        symbol, words, f"{base.symbol} + u" if sign == "+" else f"max({base.symbol} - u, 0)",
        (Number(base.symbol, base.value, "%"), Number("u", DOUBT, "%")), value, "%", _DOUBT_SOURCE, steps=(base,),
    )  # fmt: skip
