"""A straight beam over any number of firm supports, uneven spans and overhangs: reactions and moments, worked.

Moments are positive where the beam sags. The supports neither sink nor let go: a negative reaction pulls down.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from plumbrule.mechanics.beam_loads import (
    LineLoad,
    Piece,
    PointLoad,
    check_loads,
    far_load_term,
    far_reaction,
    moment_alone,
    overhang_load,
    overhang_moment,
    pieces_between,
)
from plumbrule.mechanics.given import Given, positive, si
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

_THREE = "three-moment equation for one stiffness throughout"
_STATICS = "statics of the two stretches beside it"
ONE_SUPPORT = (
    "A length of steel on a single screw position can turn about it: it needs two positions before it carries anything."
)


class ContinuousBeam(NamedTuple):
    """Reactions (N, up) and moments over the supports (N·mm, sagging positive), in the order of `supports` (mm)."""

    length: float
    supports: tuple[float, ...]
    points: tuple[PointLoad, ...]
    lines: tuple[LineLoad, ...]
    reactions: tuple[Worked, ...]
    support_moments: tuple[Worked, ...]

    @property
    def greatest(self) -> Worked:
        """The largest reaction."""
        return max(self.reactions, key=lambda line: line.value)

    @property
    def greatest_inside(self) -> Worked:
        """The largest reaction but for the two ends; with two supports, the largest."""
        return max(self.reactions[1:-1] or self.reactions, key=lambda line: line.value)

    def moment(self, at: float) -> Worked:
        """The moment in N·mm at `at` mm along the beam. Raises NotPossible off the beam."""
        if not 0 <= at <= self.length:
            raise NotPossible(f"{at:g} mm is not on the beam")
        first, last = self.supports[0], self.supports[-1]
        if at <= first or at >= last:
            left, right = (0.0, at) if at <= first else (at, self.length)
            beyond = pieces_between(left, right, self.points, self.lines, last=at >= last)
            return overhang_moment(
                "M_x", "moment in the overhang", [p.mirrored() for p in beyond] if at <= first else beyond
            )
        span = max(index for index, support in enumerate(self.supports[:-1]) if support < at)
        left, right = self.supports[span], self.supports[span + 1]
        length, place = right - left, at - left
        alone = moment_alone(
            "M_0", "moment of the span by itself", pieces_between(left, right, self.points, self.lines), place
        )
        before, after = self.support_moments[span : span + 2]
        numbers = (
            Number(before.symbol, before.value, "N·mm"), Number(after.symbol, after.value, "N·mm"),
            Number("x", place, "mm"), Number("l", length, "mm"), Number("M_0", alone.value, "N·mm"),
        )  # fmt: skip
        value = before.value + (after.value - before.value) * place / length + alone.value
        return Worked(
            "M_x", "moment in the span", f"{before.symbol} + ({after.symbol} - {before.symbol}) * x / l + M_0",
            numbers, value, "N·mm", "statics of the span between its support moments", steps=(before, after, alone),
        )  # fmt: skip

    def greatest_moment(self) -> Worked:
        """The moment of the largest size anywhere, N·mm, with its sign."""
        return max((self.moment(at) for at in self._turning_places()), key=lambda line: abs(line.value))

    def greatest_sagging(self, span: int) -> Worked:
        """The largest moment inside the span `span` (from 0), N·mm."""
        left, right = self.supports[span : span + 2]
        inside = [at for at in self._turning_places() if left < at < right]
        return max((self.moment(at) for at in (*inside, (left + right) / 2)), key=lambda line: line.value)

    def _turning_places(self) -> list[float]:
        """Supports, loads, ends of loads, and where the shear passes through zero under an even load."""
        breaks = {0.0, self.length, *self.supports, *(p.at for p in self.points)}
        breaks |= {min(end, self.length) for line in self.lines for end in (line.start, line.end)}
        ordered = sorted(breaks)
        found = list(ordered)
        for left, right in pairwise(ordered):
            load = sum(si(w.intensity) for w in self.lines if w.start <= left and w.end >= right - 1e-9)
            shear = self._shear_after(left)
            if load and 0 < shear / load < right - left:
                found.append(left + shear / load)
        return found

    def _shear_after(self, at: float) -> float:
        up = sum(r.value for r, x in zip(self.reactions, self.supports, strict=True) if x <= at)
        down = sum(si(p.force) for p in self.points if p.at <= at)
        return up - down - sum(si(w.intensity) * max(0.0, min(at, w.end) - w.start) for w in self.lines)


def continuous_beam(
    length: Given,
    supports: Sequence[float],
    *,
    points: Sequence[PointLoad] = (),
    lines: Sequence[LineLoad] = (),
) -> ContinuousBeam:
    """The beam solved by the three-moment equation: exact for an even stiffness, whatever it is.

    `length` and `supports` (rising, on the beam) in mm. Raises OutsideRulebook for a single support, NotPossible for
    none, for supports that do not rise and for loads off the beam.
    """
    whole = positive("the length", length)
    _check_supports(whole, supports)
    check_loads(whole, points, lines)
    spans = list(pairwise(supports))
    inside = [pieces_between(left, right, points, lines) for left, right in spans]
    before = [piece.mirrored() for piece in pieces_between(0.0, supports[0], points, lines)]
    after = pieces_between(supports[-1], whole, points, lines, last=True)
    moments = _support_moments(spans, inside, before, after)
    reactions = _reactions(spans, inside, before, after, moments)
    return ContinuousBeam(whole, tuple(supports), tuple(points), tuple(lines), reactions, moments)


def _check_supports(length: float, supports: Sequence[float]) -> None:
    if not supports:
        raise NotPossible("the beam has no support")
    if any(left >= right for left, right in pairwise(supports)):
        raise NotPossible("the supports are not in rising order")
    if supports[0] < 0 or supports[-1] > length:
        raise NotPossible("a support is off the beam")
    if len(supports) == 1:
        raise OutsideRulebook(ONE_SUPPORT)


def _support_moments(
    spans: list[tuple[float, float]], inside: list[list[Piece]], before: list[Piece], after: list[Piece]
) -> tuple[Worked, ...]:
    count = len(spans) + 1
    first = overhang_moment("M_1", "moment over the first support, from the overhang", before)
    last = overhang_moment(f"M_{count}", "moment over the last support, from the overhang", after)
    terms = []
    for index in range(1, count - 1):
        left = far_load_term(f"k_{index}_r", f"loads of span {index}", inside[index - 1])
        right = far_load_term(f"k_{index + 1}_l", f"loads of span {index + 1}", [p.mirrored() for p in inside[index]])
        terms.append((left, right))
    lengths = [right - left for left, right in spans]
    values = _solve(lengths, [(left.value, right.value) for left, right in terms], first.value, last.value)
    found = [first]
    for index, (left, right) in enumerate(terms, 1):
        found.append(_moment_line(index, lengths, values, left, right))
    return (*found, last)


def _solve(lengths: list[float], terms: list[tuple[float, float]], first: float, last: float) -> list[float]:
    """All support moments: the equations touch three neighbours only, so they are swept once down and once up."""
    values = [first, *([0.0] * len(terms)), last]
    sweep: list[tuple[float, float]] = []
    for index, (left, right) in enumerate(terms):
        l_1, l_2 = lengths[index], lengths[index + 1]
        known = -(l_1 * left + l_2 * right)
        if index == 0:
            diagonal, known = 2 * (l_1 + l_2), known - l_1 * first
        else:
            above, above_known = sweep[-1]
            diagonal, known = 2 * (l_1 + l_2) - l_1 * above, known - l_1 * above_known
        sweep.append((l_2 / diagonal, known / diagonal))
    for index in range(len(terms), 0, -1):
        ratio, known = sweep[index - 1]
        values[index] = known - ratio * values[index + 1]
    return values


def _moment_line(index: int, lengths: list[float], values: list[float], left: Worked, right: Worked) -> Worked:
    names = [f"M_{index + shift}" for shift in (0, 1, 2)]
    l_1, l_2 = f"l_{index}", f"l_{index + 1}"
    return Worked(
        names[1], f"moment over support {index + 1}; its neighbours solved with it",
        f"-({l_1} * {names[0]} + {l_2} * {names[2]} + {l_1} * {left.symbol} + {l_2} * {right.symbol})"
        f" / (2 * ({l_1} + {l_2}))",
        (Number(l_1, lengths[index - 1], "mm"), Number(l_2, lengths[index], "mm"),
         Number(names[0], values[index - 1], "N·mm"), Number(names[2], values[index + 1], "N·mm"),
         Number(left.symbol, left.value, "N·mm"), Number(right.symbol, right.value, "N·mm")),
        values[index], "N·mm", _THREE, steps=(left, right),
    )  # fmt: skip


def _reactions(
    spans: list[tuple[float, float]],
    inside: list[list[Piece]],
    before: list[Piece],
    after: list[Piece],
    moments: tuple[Worked, ...],
) -> tuple[Worked, ...]:
    found = []
    for index, moment in enumerate(moments):
        name = f"S_{index + 1}"
        parts: list[Worked] = []
        formula: list[str] = []
        lengths: list[Number] = []
        beside = []
        if index > 0:
            parts.append(far_reaction(f"{name}_l", "from the span on its left, by itself", inside[index - 1]))
            beside.append((index - 1, index))
        elif before:
            parts.append(overhang_load(f"{name}_l", "on the overhang", before))
        if index < len(spans):
            mirrored = [p.mirrored() for p in inside[index]]
            parts.append(far_reaction(f"{name}_r", "from the span on its right, by itself", mirrored))
            beside.append((index + 1, index + 1))
        elif after:
            parts.append(overhang_load(f"{name}_r", "on the overhang", after))
        value = sum(part.value for part in parts)
        for other, span in beside:
            left, right = spans[span - 1]
            lengths.append(Number(f"l_{span}", right - left, "mm"))
            formula.append(f"(M_{other + 1} - {moment.symbol}) / l_{span}")
            value += (moments[other].value - moment.value) / (right - left)
        used = (*(moments[other] for other, _ in beside), moment)
        found.append(
            Worked(
                f"R_{index + 1}", f"reaction of support {index + 1}",
                " + ".join((*(part.symbol for part in parts), *formula)),
                (*(Number(part.symbol, part.value, "N") for part in parts),
                 *(Number(line.symbol, line.value, "N·mm") for line in used), *lengths),
                value, "N", _STATICS, steps=(*parts, *used),
            )
        )  # fmt: skip
    return tuple(found)
