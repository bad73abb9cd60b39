"""How much of what is spread, poured, glued or worn out a piece of work takes, and what it weighs.

Figures of coverage and wear are those of typical data sheets and of the trade; the thriftless end of each range is
taken, and what stands on the tin or the pack governs.
"""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

# The least area that a volume covers in one coat (ft² a gallon; the range in brackets), basis from memory.
#   films on bare wood 300 (300 to 400; on sealed wood 400 to 500) · wiped oils 300 (300 to 600)
#   hard-wax oil 1000 (1000 to 1300) · paint or primer on a wall 300 (300 to 400)
_COVERAGE = {"hard-wax oil": 1000.0}
_COVERAGE_ELSE = 300.0
COVERAGE_SOURCE = "typical data sheets, coverage of one coat, thriftless end (from memory)"
# A 5 in disc on hardwood lasts 5 to 10 ft² up to grit 100 and 10 to 20 ft² above; scuffing paint it lasts about four
# times as long as coarse.
_DISC = {"coarse": 5.0, "fine": 10.0, "wall": 20.0}
_FINE = 120
DISC_SOURCE = "rules of the trade, area that one disc lasts, thriftless end (from memory)"
# What sticks to the cup and the stick, and runs deeper than the crack was measured.
EPOXY_MORE = 1.2


def surface(length: Given, depth: Given, thickness: Given) -> Worked:
    """All faces, edges and ends of a board, mm². Lengths in mm, above zero."""
    a, b, t = positive("the length", length), positive("the depth", depth), positive("the thickness", thickness)
    return Worked(
        "A", "all faces, edges and ends of the board", "2 * (L * b + L * t + b * t)",
        (number("L", length, "mm"), number("b", depth, "mm"), number("t", thickness, "mm")),
        2 * (a * b + a * t + b * t), "mm²", "geometry", steps=steps(length, depth, thickness),
    )  # fmt: skip


def coated(length: Given, depth: Given, thickness: Given, top: int, bottom: int, edges: int) -> Worked:
    """The area of all coats of a board's finish, each side as often as it is coated, mm². Lengths in mm."""
    a, b, t = positive("the length", length), positive("the depth", depth), positive("the thickness", thickness)
    if min(top, bottom, edges) < 0:
        raise NotPossible("a side cannot have fewer than no coats")
    return Worked(
        "A_c", "area of all coats together", "(n_t + n_b) * L * b + n_e * 2 * (L + b) * t",
        (Number("n_t", float(top), ""), Number("n_b", float(bottom), ""), Number("n_e", float(edges), ""),
         number("L", length, "mm"), number("b", depth, "mm"), number("t", thickness, "mm")),
        (top + bottom) * a * b + edges * 2 * (a + b) * t, "mm²", "geometry", steps=steps(length, depth, thickness),
    )  # fmt: skip


def coats_volume(area: Given, finish: str) -> Worked:
    """The volume of coats of altogether `area` mm² of a finish of this name, or of `paint` or `primer`, mm³ in SI."""
    not_negative("the area", area)
    covered, rate = number("A_c", area, "ft²"), _COVERAGE.get(finish, _COVERAGE_ELSE)
    return Worked(
        "V", f"volume of all coats, at so many ft² a gallon: {finish}", "A_c / r", (covered, Number("r", rate, "")),
        covered.value / rate, "gal", COVERAGE_SOURCE, caution="The tin governs.", published_units=True,
        steps=steps(area),
    )  # fmt: skip


def fill_volume(length: Given, width: Given, depth: Given) -> Worked:
    """The epoxy that a crack takes, mm³: its box and a fifth more. Lengths in mm, above zero."""
    box = positive("the length", length) * positive("the width", width) * positive("the depth", depth)
    return Worked(
        "V_e", "epoxy for the crack", "m * L * w * d",
        (Number("m", EPOXY_MORE, ""), number("L", length, "mm"), number("w", width, "mm"), number("d", depth, "mm")),
        EPOXY_MORE * box, "mm³", "rules of the trade: 15 to 20 % more than the crack holds (from memory)",
        steps=steps(length, width, depth),
    )  # fmt: skip


def glue_volume(area: Given, thickness: Given, width: Given | None = None, spacing: Given | None = None) -> Worked:
    """The adhesive behind `area` mm² of panel, pressed `thickness` mm thin, mm³: over the whole back, or in strips or
    beads `width` mm wide every `spacing` mm."""
    back, thick = not_negative("the area", area), positive("the thickness", thickness)
    numbers = [number("A", area, "mm²"), number("t", thickness, "mm")]
    if width is None or spacing is None:
        return Worked("V_a", "adhesive behind the panels", "A * t", tuple(numbers), back * thick, "mm³", "geometry",
                      steps=steps(area, thickness))  # fmt: skip
    share = positive("the width", width) / positive("the spacing", spacing)
    if share > 1:
        raise NotPossible("strips cannot lie closer than they are wide")
    numbers += [number("w", width, "mm"), number("s", spacing, "mm")]
    return Worked(
        "V_a", "adhesive behind the panels", "A * t * w / s", tuple(numbers), back * thick * share, "mm³", "geometry",
        steps=steps(area, thickness, width, spacing),
    )  # fmt: skip


def dabs_volume(area: Given, thickness: Given, width: Given, spacing: Given) -> Worked:
    """The adhesive in dabs `width` mm across, pressed `thickness` mm thin, one in every square of `spacing` mm, mm³."""
    across, apart = positive("the width", width), positive("the spacing", spacing)
    if across > apart:
        raise NotPossible("dabs cannot lie closer than they are wide")
    return Worked(
        "V_a", "adhesive behind the panels", "A * t * w^2 / s^2",
        (number("A", area, "mm²"), number("t", thickness, "mm"), number("w", width, "mm"), number("s", spacing, "mm")),
        not_negative("the area", area) * positive("the thickness", thickness) * across**2 / apart**2, "mm³",
        "geometry, a square dab for a round one", steps=steps(area, thickness, width, spacing),
    )  # fmt: skip


def discs(grit: int, boards: Given, walls: Given) -> Worked:
    """How many 5 in discs a grit wears out on `boards` mm² of wood and `walls` mm² of painted wall. A sheet lasts about
    as long as a disc."""
    if grit <= 0:
        raise NotPossible("a grit is a number above zero")
    not_negative("the area of boards", boards)
    not_negative("the area of walls", walls)
    wood, scuffed = number("A_b", boards, "ft²"), number("A_w", walls, "ft²")
    lasts, lasts_long = _DISC["fine" if grit >= _FINE else "coarse"], _DISC["wall"]
    return Worked(
        "n", "discs or sheets of this grit", "A_b / a_b + A_w / a_w",
        (wood, Number("a_b", lasts, "ft²"), scuffed, Number("a_w", lasts_long, "ft²")),
        wood.value / lasts + scuffed.value / lasts_long, "", DISC_SOURCE, published_units=True,
        steps=steps(boards, walls),
    )  # fmt: skip


def strips(area: Given, spacing: Given) -> Worked:
    """The length of tape in strips every `spacing` mm behind `area` mm² of panel, mm."""
    back, apart = not_negative("the area", area), positive("the spacing", spacing)
    return Worked(
        "L_t", "tape in strips", "A / s", (number("A", area, "mm²"), number("s", spacing, "mm")), back / apart, "mm",
        "geometry", steps=steps(area, spacing),
    )  # fmt: skip


def legs(wall_leg: Given, seat_leg: Given, length: Given) -> Worked:
    """All faces of an angle, mm²: twice both legs along its length; cut ends left out. Lengths in mm, above zero."""
    a, b = positive("the wall leg", wall_leg), positive("the seat leg", seat_leg)
    return Worked(
        "A", "faces of the steel", "2 * (b_w + b_s) * L",
        (number("b_w", wall_leg, "mm"), number("b_s", seat_leg, "mm"), number("L", length, "mm")),
        2 * (a + b) * positive("the length", length), "mm²", "geometry", steps=steps(wall_leg, seat_leg, length),
    )  # fmt: skip


def coats_area(area: Given, coats: float) -> Worked:
    """The area of `coats` coats on `area` mm², mm²."""
    if coats < 1:
        raise NotPossible("what is painted gets at least one coat")
    return Worked(
        "A_c", "area of all coats together", "n * A", (Number("n", coats, ""), number("A", area, "mm²")),
        coats * not_negative("the area", area), "mm²", "product", steps=steps(area),
    )  # fmt: skip


def total(symbol: str, words: str, unit: str, parts: Sequence[Given]) -> Worked:
    """A sum of like things, in SI `unit`, with every part as a number of its own."""
    return Worked(
        symbol, words, " + ".join(f"{symbol}_{place}" for place in range(1, len(parts) + 1)) or "0",
        tuple(number(f"{symbol}_{place}", part, unit) for place, part in enumerate(parts, 1)),
        sum(si(part) for part in parts), unit, "sum", steps=steps(*parts),
    )  # fmt: skip
