"""A group of equal screws under a force off its middle, by the elastic method: safe against the exact one."""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot
from typing import NamedTuple

from plumbrule.mechanics.given import Given, finite, number, positive, steps
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

_ELASTIC = "elastic method for a screw group"


class ScrewGroup(NamedTuple):
    """Places (x, y) of the screws in mm, their middle in mm and the sum of squared distances from it in mm²."""

    places: tuple[tuple[float, float], ...]
    middle_x: Worked
    middle_y: Worked
    polar: Worked


def screw_group(places: Sequence[tuple[float, float]]) -> ScrewGroup:
    """The group, for two screws or more at different places. Raises OutsideRulebook for one: it can turn."""
    if len(set(places)) != len(places) or not places:
        raise NotPossible("the screws are not at different places")
    if len(places) == 1:
        raise OutsideRulebook("One screw holds no couple: whatever hangs on it can turn about it.")
    numbers = [[Number(f"{axis}_{i}", place[a], "mm") for i, place in enumerate(places, 1)] for a, axis in
               enumerate("xy")]  # fmt: skip
    middles = [
        Worked(f"{axis}_m", f"middle of the group, {axis}",
               f"({' + '.join(n.symbol for n in numbers[a])}) / {len(places)}", tuple(numbers[a]),
               sum(place[a] for place in places) / len(places), "mm", _ELASTIC)
        for a, axis in enumerate("xy")
    ]  # fmt: skip
    squares = [
        Worked(f"I_{axis}", f"squared distances from the middle, {axis}",
               " + ".join(f"({n.symbol} - {axis}_m)^2" for n in numbers[a]),
               (*numbers[a], number(f"{axis}_m", middles[a], "mm")),
               sum((place[a] - middles[a].value) ** 2 for place in places), "mm²", _ELASTIC, steps=(middles[a],))
        for a, axis in enumerate("xy")
    ]  # fmt: skip
    polar = Worked(
        "I_p", "squared distances from the middle, both ways", "I_x + I_y",
        tuple(number(s.symbol, s, "mm²") for s in squares), squares[0].value + squares[1].value, "mm²", _ELASTIC,
        steps=tuple(squares),
    )  # fmt: skip
    return ScrewGroup(tuple(places), middles[0], middles[1], polar)


def in_plane(group: ScrewGroup, *, across: Given, up: Given, couple: Given) -> tuple[Worked, ...]:
    """Force in N on each screw from forces `across` and `up` in N at the group's middle and a `couple` in N·mm.

    v_x = V_x/n + M (y - y_m)/I_p, v_y = V_y/n - M (x - x_m)/I_p; the couple turns right over.
    """
    v_x, v_y, moment = finite("V_x", across), finite("V_y", up), finite("the couple", couple)
    count, polar = len(group.places), group.polar.value
    found = []
    for i, (x, y) in enumerate(group.places, 1):
        part_x = v_x / count + moment * (y - group.middle_y.value) / polar
        part_y = v_y / count - moment * (x - group.middle_x.value) / polar
        found.append(
            Worked(
                f"v_{i}", f"force on screw {i}",
                "sqrt((V_x / n + M * (y - y_m) / I_p)^2 + (V_y / n - M * (x - x_m) / I_p)^2)",
                (number("V_x", across, "N"), number("V_y", up, "N"), number("M", couple, "N·mm"),
                 Number("n", float(count), ""), Number("x", x, "mm"), Number("y", y, "mm"),
                 number("x_m", group.middle_x, "mm"), number("y_m", group.middle_y, "mm"),
                 number("I_p", group.polar, "mm²")),
                hypot(part_x, part_y), "N", _ELASTIC,
                steps=(*steps(across, up, couple), group.middle_x, group.middle_y, group.polar),
            )
        )  # fmt: skip
    return tuple(found)


def vertical_line(load: Given, out: Given, count: int, pitch: Given) -> Worked:
    """Force in N on the end screw of a line of `count` at `pitch` mm, the load P in N standing `out` e mm beside it."""
    if count < 2:
        raise OutsideRulebook("One screw holds no couple: whatever hangs on it can turn about it.")
    p, e, s = finite("the load", load), finite("e", out), positive("the pitch", pitch)
    value = hypot(p / count, 6 * p * e / (s * count * (count + 1)))
    return Worked(
        "v", "force on the end screw of the line", "sqrt((P / n)^2 + (6 * P * e / (s * n * (n + 1)))^2)",
        (number("P", load, "N"), Number("n", float(count), ""), number("e", out, "mm"), number("s", pitch, "mm")),
        value, "N", _ELASTIC, steps=steps(load, out, pitch),
    )  # fmt: skip


def out_of_plane(couple: Given, distances: Sequence[float], *, pivot: bool) -> tuple[Worked, ...]:
    """Pull in N on each screw from a couple in N·mm that tips the plate off the wall, T_i = M d_i/sum d².

    `distances` in mm from the bearing edge (`pivot`), or from the middle of the group otherwise, where those below it
    come out negative and push.
    """
    moment, squares = finite("the couple", couple), sum(d**2 for d in distances)
    if squares == 0 or (pivot and min(distances) < 0):
        raise NotPossible("the screws are not on one side of the edge the plate bears on")
    names = [Number(f"d_{i}", d, "mm") for i, d in enumerate(distances, 1)]
    below = " + ".join(f"{n.symbol}^2" for n in names)
    return tuple(
        Worked(
            f"T_{i}", f"pull on screw {i}", f"M * d_{i} / ({below})", (number("M", couple, "N·mm"), *names),
            moment * d / squares, "N", _ELASTIC + (", about the edge" if pivot else ", about the middle"),
            steps=steps(couple),
        )
        for i, d in enumerate(distances, 1)
    )  # fmt: skip
