"""What an expression may be about: numbers with a dimension, words from a list, truths, and lists of these."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeAlias

from plumbrule.language.faults import listed
from plumbrule.reading import units
from plumbrule.reading.units import Dimension


@dataclass(frozen=True, slots=True)
class Number:
    """A number in SI. A count, a ratio and a percentage have the dimension `units.NUMBER`."""

    dimension: Dimension = units.NUMBER


@dataclass(frozen=True, slots=True)
class Word:
    """One of `allowed`; with none given, any word (a label that the plan's author chose)."""

    allowed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Truth:
    """True or false."""


@dataclass(frozen=True, slots=True)
class ListOf:
    """A list whose items are all of one kind, and not lists."""

    item: Number | Word | Truth


Type: TypeAlias = Number | Word | Truth | ListOf

_DIMENSIONS: dict[Dimension, str] = {
    units.NUMBER: "a plain number",
    units.LENGTH: "a length",
    units.AREA: "an area",
    units.VOLUME: "a volume",
    units.SECOND_MOMENT: "a second moment of area",
    units.MASS: "a mass",
    units.TIME: "a time",
    units.FORCE: "a force",
    units.MOMENT: "a moment",
    units.LINE_LOAD: "a force along a length",
    units.STRESS: "a pressure or stress",
    units.DENSITY: "a density",
    units.TEMPERATURE: "a temperature",
    units.EXPANSION: "an expansion per degree",
    units.ANGLE: "an angle",
}
_POWERS = {2: "²", 3: "³", 4: "⁴"}


def describe(kind: Type) -> str:
    """The kind in a reader's words: `a length`, `one of "wall" or "seat"`, `a list of forces`."""
    if isinstance(kind, Number):
        return describe_dimension(kind.dimension)
    if isinstance(kind, Word):
        if not kind.allowed:
            return "a word"
        return (
            f"the word {listed(kind.allowed)}" if len(kind.allowed) == 1 else f"one of {listed(kind.allowed, most=6)}"
        )
    if isinstance(kind, Truth):
        return "true or false"
    return f"a list, each item {describe(kind.item)}"


def describe_dimension(dimension: Dimension) -> str:
    """`a length`, `a force`; for what has no name, its powers: `length² × mass / time`."""
    if dimension in _DIMENSIONS:
        return _DIMENSIONS[dimension]
    powers = dimension._asdict().items()
    above = [name + _power(power) for name, power in powers if power > 0]
    below = [name + _power(-power) for name, power in powers if power < 0]
    shown = " × ".join(above) or "1"
    if below:
        shown += " / " + (below[0] if len(below) == 1 else f"({' × '.join(below)})")
    return f"a quantity of {shown}"


def _power(power: int) -> str:
    return "" if power == 1 else _POWERS.get(power, f"^{power}")
