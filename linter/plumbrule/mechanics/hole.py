"""A hole in a steel leg: what crushes it, what tears it out, what it takes from the section.

Strengths are allowable values with the safety factor in. No load-duration factor belongs to them.
"""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.table_rows import Steel
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_J3 = "ANSI/AISC 360-22 J3.11a, factor 2.00; its bolt table starts at 1/2 in"
_AISI = "AISI S100 screw provisions, tilting left out, factor 3.0"
_NET = "ANSI/AISC 360-22 B4.3b: hole plus 1/16 in"
_DAMAGE = 1.5875
_TIE = 1e-9


class HoleStrength(NamedTuple):
    """The least of crushing, tearing out and the sheet-screw form, N, and which it is."""

    worked: Worked
    governs: str
    crushing: Worked
    tear_out: Worked
    sheet: Worked


def clear_distance(to_edge: Given, hole: Given) -> Worked:
    """Clear steel l_c in mm from the rim of the hole to the edge or end the load points at, distance less d_h/2.

    Raises NotPossible when the hole breaks out of the edge.
    """
    value = positive("the distance to the edge", to_edge) - positive("the hole", hole) / 2
    if value <= 0:
        raise NotPossible("the hole runs out of the steel")
    return Worked(
        "l_c", "clear steel from the hole's rim along the load", "a - d_h / 2",
        (number("a", to_edge, "mm"), number("d_h", hole, "mm")), value, "mm", "geometry", steps=steps(to_edge, hole),
    )  # fmt: skip


def clear_between(pitch: Given, hole: Given) -> Worked:
    """Clear steel in mm between two holes of one size at `pitch` mm, pitch less d_h."""
    value = positive("the pitch", pitch) - positive("the hole", hole)
    if value <= 0:
        raise NotPossible("the two holes run into each other")
    return Worked(
        "l_c", "clear steel between two holes", "s - d_h", (number("s", pitch, "mm"), number("d_h", hole, "mm")),
        value, "mm", "geometry", steps=steps(pitch, hole),
    )  # fmt: skip


def bearing_strength(diameter: Given, thickness: Given, steel: Steel) -> Worked:
    """Load in N that may bear on one side of the hole, 2.4 d t Fu / 2.00. `diameter` of the screw (not the hole) and
    `thickness` in mm. Raises OutsideRulebook for metals other than carbon steel."""
    ultimate = _carbon(steel)
    value = 2.4 * positive("the screw", diameter) * positive("the steel", thickness) * ultimate / 2
    return Worked(
        "R_b", "load at which the steel crushes at the hole, safety in", "2.4 * d * t_a * F_u / 2",
        _numbers(diameter, thickness, ultimate), value, "N", _J3, steps=steps(diameter, thickness),
    )  # fmt: skip


def tear_out_strength(clear: Given, thickness: Given, steel: Steel) -> Worked:
    """Load in N at which the steel before the screw may not yet tear out, 1.2 l_c t Fu / 2.00, mm."""
    ultimate = _carbon(steel)
    value = 1.2 * positive("the clear steel", clear) * positive("the steel", thickness) * ultimate / 2
    return Worked(
        "R_t", "load at which the hole tears out, safety in", "1.2 * l_c * t_a * F_u / 2",
        (number("l_c", clear, "mm"), number("t_a", thickness, "mm"), number("F_u", ultimate, "MPa")), value, "N", _J3,
        steps=steps(clear, thickness),
    )  # fmt: skip


def sheet_strength(diameter: Given, thickness: Given, steel: Steel) -> Worked:
    """The sheet-screw form 2.7 t d Fu / 3.0 in N, mm."""
    ultimate = _carbon(steel)
    value = 2.7 * positive("the steel", thickness) * positive("the screw", diameter) * ultimate / 3
    return Worked(
        "R_s", "load a screw may put on sheet steel, safety in", "2.7 * t_a * d * F_u / 3",
        _numbers(diameter, thickness, ultimate), value, "N", _AISI, steps=steps(diameter, thickness),
    )  # fmt: skip


def hole_strength(diameter: Given, thickness: Given, clear: Given, steel: Steel) -> HoleStrength:
    """The least of the three, N. Hot-rolled steel of any thickness and cold-bent strip alike: the lower code wins."""
    modes = {
        "crushing": bearing_strength(diameter, thickness, steel),
        "tear-out": tear_out_strength(clear, thickness, steel),
        "sheet": sheet_strength(diameter, thickness, steel),
    }
    governs = min(modes, key=lambda name: modes[name].value)
    worked = Worked(
        "R_a", "load one hole may carry", "min(R_b, R_t, R_s)",
        tuple(Number(mode.symbol, mode.value, "N") for mode in modes.values()), modes[governs].value, "N",
        f"{_J3}; {_AISI}", steps=tuple(modes.values()),
    )  # fmt: skip
    return HoleStrength(worked, governs, modes["crushing"], modes["tear-out"], modes["sheet"])


def bears_at_once(hole: Given, diameter: Given) -> bool:
    """Whether a hole is at most 1/16 in. over its screw, so that it bears without slipping first and may share."""
    return si(hole) - si(diameter) <= _DAMAGE * (1 + _TIE)


def net_area(gross: Given, hole: Given, thickness: Given, count: int) -> Worked:
    """Net area in mm² for tension across `count` holes: gross less count (d_h + 1/16 in.) t."""
    if count < 0:
        raise NotPossible("a section cannot lose fewer than no holes")
    value = positive("the area", gross) - count * (positive("the hole", hole) + _DAMAGE) * positive("t", thickness)
    if value <= 0:
        raise NotPossible("the holes leave nothing of the section")
    return Worked(
        "A_n", "area left beside the holes", "A - n * (d_h + d_e) * t_a",
        (number("A", gross, "mm²"), Number("n", float(count), ""), number("d_h", hole, "mm"),
         number("d_e", _DAMAGE, "mm"), number("t_a", thickness, "mm")),
        value, "mm²", _NET, steps=steps(gross, hole, thickness),
    )  # fmt: skip


def net_strip_modulus(width: Given, hole: Given, thickness: Given, count: int) -> Worked:
    """Elastic section modulus in mm³ of a strip of a leg bent along the line of its holes, (L - n d_h) t²/6."""
    left = positive("the width", width) - count * not_negative("the hole", hole)
    if left <= 0:
        raise NotPossible("the holes leave nothing of the strip")
    return Worked(
        "S_n", "section modulus of the leg beside its holes", "(L - n * d_h) * t_a^2 / 6",
        (number("L", width, "mm"), Number("n", float(count), ""), number("d_h", hole, "mm"),
         number("t_a", thickness, "mm")),
        left * positive("the steel", thickness) ** 2 / 6, "mm³", "bending of a rectangle, holes taken out",
        steps=steps(width, hole, thickness),
    )  # fmt: skip


def heel_room(from_heel: Given, to_toe: Given) -> Worked:
    """Flat steel in mm from the hole's centre to where the fillet begins, g - k. Negative: it is drilled into the
    fillet. A head or washer lies flat when half its width is no more."""
    value = positive("the distance from the heel", from_heel) - positive("k", to_toe)
    return Worked(
        "h_r", "flat steel between the hole's centre and the fillet", "g - k",
        (number("g", from_heel, "mm"), number("k", to_toe, "mm")), value, "mm", "geometry",
        steps=steps(from_heel, to_toe),
    )  # fmt: skip


def worst_distance(drawn: Given, drilled: Given) -> Worked:
    """A distance from edge, end or neighbour with the drilling at its worst, mm. May come out negative."""
    value = finite("the distance", drawn) - not_negative("the drilling error", drilled)
    return Worked(
        "a", "distance, drilling at its worst", "a_0 - d_d",
        (number("a_0", drawn, "mm"), number("d_d", drilled, "mm")), value, "mm", "geometry",
        steps=steps(drawn, drilled),
    )  # fmt: skip


def _carbon(steel: Steel) -> float:
    if steel.metal != "carbon steel":
        raise outside("steel grade")
    return positive("the tensile stress", steel.ultimate)


def _numbers(diameter: Given, thickness: Given, ultimate: float) -> tuple[Number, Number, Number]:
    return number("d", diameter, "mm"), number("t_a", thickness, "mm"), number("F_u", ultimate, "MPa")
