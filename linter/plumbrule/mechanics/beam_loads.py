"""What lies on a beam, at a point or along a length, and what each load does to one stretch of it by itself."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from plumbrule.mechanics.given import Given, finite, number, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_TIE = 1e-9
_STATICS = "statics of one span"
_CLAPEYRON = "load term of the three-moment equation, divided by the span"


class PointLoad(NamedTuple):
    """A force in N, down, at `at` mm along the beam."""

    at: float
    force: Given


class LineLoad(NamedTuple):
    """An even load in N/mm, down, from `start` to `end` mm along the beam."""

    start: float
    end: float
    intensity: Given


class Piece(NamedTuple):
    """A load, or the part of one, on a stretch of `length` mm; places from one end of it. A point has one place."""

    start: float
    end: float
    length: float
    amount: Given
    point: bool

    def mirrored(self) -> Piece:
        """The same, measured from the other end."""
        return Piece(self.length - self.end, self.length - self.start, self.length, self.amount, self.point)


def check_loads(length: float, points: Sequence[PointLoad], lines: Sequence[LineLoad]) -> None:
    """Raises NotPossible for a load that is not finite, lies off the beam or ends before it starts."""
    for point in points:
        finite("the load", point.force)
        if not 0 <= point.at <= length:
            raise NotPossible(f"a load at {point.at:g} mm is off a beam of {length:g} mm")
    for line in lines:
        finite("the load", line.intensity)
        if not 0 <= line.start < line.end <= length + _TIE:
            raise NotPossible(f"a load from {line.start:g} to {line.end:g} mm is off a beam of {length:g} mm")


def pieces_between(
    left: float, right: float, points: Sequence[PointLoad], lines: Sequence[LineLoad], *, last: bool = False
) -> list[Piece]:
    """The loads between two places of a beam. A point on the right place counts only in the `last` stretch."""
    length = right - left
    found = [
        Piece(load.at - left, load.at - left, length, load.force, True)
        for load in points
        if left <= load.at < right or (last and load.at >= right)
    ]
    for line in lines:
        start, end = max(line.start, left), min(line.end, right)
        if end - start > _TIE:
            found.append(Piece(start - left, end - left, length, line.intensity, False))
    return found


def far_reaction(symbol: str, words: str, pieces: Sequence[Piece]) -> Worked:
    """What the pieces put on the end they are not measured from, N."""

    def value(p: Piece) -> float:
        if p.point:
            return si(p.amount) * p.start / p.length
        return si(p.amount) * (p.end**2 - p.start**2) / (2 * p.length)

    return _sum(symbol, words, "N", pieces, ("P * a / l", "w * (e^2 - s^2) / (2 * l)"), value, _STATICS)


def far_load_term(symbol: str, words: str, pieces: Sequence[Piece]) -> Worked:
    """The three-moment load term over the span, N·mm, for the support they are not measured from."""

    def value(p: Piece) -> float:
        if p.point:
            return si(p.amount) * p.start * (p.length**2 - p.start**2) / p.length**2
        squares, fourths = p.end**2 - p.start**2, p.end**4 - p.start**4
        return si(p.amount) * (squares / 2 - fourths / (4 * p.length**2))

    formulas = ("P * a * (l^2 - a^2) / l^2", "w * ((e^2 - s^2) / 2 - (e^4 - s^4) / (4 * l^2))")
    return _sum(symbol, words, "N·mm", pieces, formulas, value, _CLAPEYRON)


def overhang_load(symbol: str, words: str, pieces: Sequence[Piece]) -> Worked:
    """Everything that lies on an overhang of the beam, N, wherever on it it lies."""
    return _sum(
        symbol, words, "N", pieces, ("P", "w * (e - s)"),
        lambda p: si(p.amount) * (1.0 if p.point else p.end - p.start), _STATICS,
    )  # fmt: skip


def overhang_moment(symbol: str, words: str, pieces: Sequence[Piece]) -> Worked:
    """Moment in N·mm where an overhang begins, its pieces measured from there: negative, the top is stretched."""

    def value(p: Piece) -> float:
        return -si(p.amount) * (p.start if p.point else (p.end**2 - p.start**2) / 2)

    return _sum(symbol, words, "N·mm", pieces, ("-P * a", "-w * (e^2 - s^2) / 2"), value, _STATICS)


def moment_alone(symbol: str, words: str, pieces: Sequence[Piece], at: float) -> Worked:
    """Moment in N·mm at `at` mm from the end the pieces are measured from, of the span by itself."""

    def value(p: Piece) -> float:
        amount, l = si(p.amount), p.length  # noqa: E741
        if p.point:
            return amount * (l - p.start) / l * at - amount * max(at - p.start, 0.0)
        left = ((l - p.start) ** 2 - (l - p.end) ** 2) / (2 * l)
        return amount * (left * at - (max(at - p.start, 0.0) ** 2 - max(at - p.end, 0.0) ** 2) / 2)

    formulas = (
        "P * (l - a) / l * x - P * max(x - a, 0)",
        "w * (((l - s)^2 - (l - e)^2) / (2 * l) * x - (max(x - s, 0)^2 - max(x - e, 0)^2) / 2)",
    )
    return _sum(symbol, words, "N·mm", pieces, formulas, value, _STATICS, Number("x", at, "mm"))


def _sum(
    symbol: str, words: str, unit: str, pieces: Sequence[Piece], formulas: tuple[str, str],
    value: Callable[[Piece], float], source: str, *more: Number,
) -> Worked:  # fmt: skip
    """A line for each piece, by its kind, and their sum; one piece is its own sum, none is 0."""
    alone = len(pieces) == 1
    terms = [
        Worked(
            symbol if alone else f"{symbol}_{index}", words, formulas[0 if p.point else 1],
            (*_numbers(p, formulas[0 if p.point else 1]), *more), value(p), unit, source, steps=steps(p.amount),
        )
        for index, p in enumerate(pieces, 1)
    ]  # fmt: skip
    if alone:
        return terms[0]
    return add(symbol, words, terms, source) if terms else Worked(symbol, words, "0", (), 0.0, unit, source)


def _numbers(piece: Piece, formula: str) -> tuple[Number, ...]:
    lengths = {"a": piece.start} if piece.point else {"s": piece.start, "e": piece.end}
    if "l" in formula:
        lengths["l"] = piece.length
    amount = number("P", piece.amount, "N") if piece.point else number("w", piece.amount, "N/mm")
    return (amount, *(Number(name, size, "mm") for name, size in lengths.items() if name in formula))


def add(symbol: str, words: str, terms: Sequence[Worked], source: str) -> Worked:
    """The sum of lines of one unit, in SI. Over twenty are added twenty at a time, so that a line stays readable."""
    if not terms:
        raise NotPossible("there is nothing to add")
    whole = list(terms)
    while len(whole) > _AT_ONCE:
        whole = [
            _plain_sum(f"{symbol}_part_{start // _AT_ONCE + 1}", words, whole[start : start + _AT_ONCE], source)
            for start in range(0, len(whole), _AT_ONCE)
        ]
    return _plain_sum(symbol, words, whole, source)


_AT_ONCE = 20


def _plain_sum(symbol: str, words: str, terms: Sequence[Worked], source: str) -> Worked:
    unit = _SI_OF[terms[0].unit] if terms[0].unit in _SI_OF else terms[0].unit
    names = _apart([term.symbol for term in terms])
    return Worked(
        symbol, words, " + ".join(names),
        tuple(number(name, term, unit) for name, term in zip(names, terms, strict=True)),
        sum(si(term) for term in terms), unit, source, steps=tuple(terms),
    )  # fmt: skip


def _apart(symbols: Sequence[str]) -> list[str]:
    """The symbols of terms, numbered where two share one: a symbol of a line stands for one number."""
    return [f"{symbol}_{place}" if symbols.count(symbol) > 1 else symbol for place, symbol in enumerate(symbols, 1)]


_SI_OF = {"lbf": "N", "in·lbf": "N·mm", "lbf/in": "N/mm"}
