"""A push at the top of a board, away from the wall or along it: what it does to each place that holds its steel.

A rigid board turns on its places as a plate on even springs, so the place at the pushed end takes more than its share.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import hypot

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.wall_leg import WallLeg, lever
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

_RIGID = "a rigid board on even places, statics"
_LEG = "statics of a leg that bears at heel or toe, derived here"
_UP, _DOWN = 0.85, 0.75
ONE_PLACE = "Steel that is held at one place turns about it when it is pushed: hold it at two places or more."


def push_share(places: Sequence[float], index: int, ends: tuple[float, float]) -> Worked:
    """Share of a push that place `index` takes with the push at the worse of the two `ends`, mm along the places.

    1/n + e d/Q: e from the middle of the places to that end, d from it to the place, Q the sum of all d². It is never
    less than an even share, and one when two places carry a push at either of them. Raises OutsideRulebook for one.
    """
    middle, square = _middle(places)
    away = places[index] - middle
    end = max(ends[1] - middle, 0.0) if away >= 0 else max(middle - ends[0], 0.0)
    return Worked(
        "eta", "share of a push at the end of the board on this place", "1 / n + e * d / Q",
        (Number("n", float(len(places)), ""), Number("e", end, "mm"), Number("d", abs(away), "mm"),
         Number("Q", square, "mm²")),
        1 / len(places) + end * abs(away) / square, "", _RIGID,
    )  # fmt: skip


def push_couple(force: Given, height: Given, wall_leg: WallLeg, gauges: Sequence[float], leg: Given) -> Worked:
    """Couple in N·mm about the edge that bears, from a push of `force` N away from the wall.

    It acts `height` mm above the heel: leg up, steel and board; leg down, the board alone. `gauges` of the screw rows
    from the heel, rising, and the `leg` in mm. Divided by the levers of `wall_leg` it gives the pull on each row, all
    rows together never less than the push itself. Leg up, one row: T = H max(1, (h - 0.15 g)/(0.85 g),
    (b_l - h)/(b_l - g)), about the heel above the screws and about the tip below them. Derived here.
    """
    push, h, b = not_negative("the push", force), not_negative("the height", height), positive("the leg", leg)
    if not gauges or any(a >= c for a, c in pairwise(gauges)):
        raise NotPossible("the rows are not in rising order from the heel")
    if gauges[-1] >= b:
        raise NotPossible("the screws sit beyond the leg")
    given = [number("H", force, "N"), number("h", height, "mm"), number("b_l", leg, "mm")]
    words, under = "couple of a push about the edge that bears", steps(force, height, leg)
    if wall_leg == "down":
        if len(gauges) > 1:
            # Each row has a bearing edge of its own; the whole leg is the longest way of them all.
            return Worked("M_H", words, "H * (h + b_l)", tuple(given), push * (h + b), "N·mm", _LEG, steps=under)
        g = gauges[0]
        return Worked(
            "M_H", words, f"H * (h + g + {_DOWN} * (b_l - g))", (*given, Number("g", g, "mm")),
            push * (h + g + _DOWN * (b - g)), "N·mm", _LEG, steps=under,
        )  # fmt: skip
    if len(gauges) == 1:
        g = gauges[0]
        most = max(1.0, (h - (1 - _UP) * g) / (_UP * g), (b - h) / (b - g))
        return Worked(
            "M_H", words, f"{_UP} * g * H * max(1, (h - 0.15 * g) / ({_UP} * g), (b_l - h) / (b_l - g))",
            (*given, Number("g", g, "mm")), _UP * g * push * most, "N·mm", _LEG, steps=under,
        )  # fmt: skip
    up = [si(lever("up", g, leg)) for g in gauges]
    tip = [_DOWN * (b - g) for g in gauges]
    square, of_tip = sum(z * z for z in up), sum(z * z for z in tip)
    about_tip = max(max(b - h, 0.0) * e * square / (of_tip * z) for e, z in zip(tip, up, strict=True))
    alone = square / max(up)
    return Worked(
        "M_H", words, "H * max(h, a_t, a_1)",
        (given[0], given[1], Number("a_t", about_tip, "mm"), Number("a_1", alone, "mm")),
        push * max(h, about_tip, alone), "N·mm", _LEG, steps=under,
    )  # fmt: skip


def push_pulls(force: Given, height: Given, gauges: Sequence[float], leg: Given) -> tuple[Worked, ...]:
    """Pull in N on each of several screw rows of a wall leg that stands **up**, from a push away from the wall.

    T_i = H max(1, h z_i/sum z², (b_l - h) e_i/sum e²): about the heel with z_i = 0.85 g_i, about the tip with
    e_i = 0.75 (b_l - g_i), and where the push passes between the rows no row takes more than all of it. Arguments and
    errors as `push_couple`.
    """
    push, h, b = not_negative("the push", force), not_negative("the height", height), positive("the leg", leg)
    if len(gauges) < 2 or any(a >= c for a, c in pairwise(gauges)):
        raise NotPossible("the rows are not in rising order from the heel")
    if gauges[-1] >= b:
        raise NotPossible("the screws sit beyond the leg")
    up, tip = [_UP * g for g in gauges], [_DOWN * (b - g) for g in gauges]
    square, of_tip = sum(z * z for z in up), sum(e * e for e in tip)
    return tuple(
        Worked(
            f"T_{i}", f"pull on row {i} from the heel by a push off the wall",
            "H * max(1, h * z / Q_z, (b_l - h) * e / Q_e)",
            (number("H", force, "N"), number("h", height, "mm"), number("b_l", leg, "mm"), Number("z", z, "mm"),
             Number("Q_z", square, "mm²"), Number("e", e, "mm"), Number("Q_e", of_tip, "mm²")),
            push * max(1.0, h * z / square, (b - h) * e / of_tip), "N", _LEG, steps=steps(force, height, leg),
        )
        for i, (z, e) in enumerate(zip(up, tip, strict=True), 1)
    )  # fmt: skip


def bracket_push(
    force: Given, height: Given, upright: Given, heights: Sequence[float], lasting: Given
) -> tuple[Worked, ...]:
    """Pull in N on each screw of a bracket from its lowest up, T_i = (M_D + H (0.9 h_v + h)) z_i/sum z².

    A push of `force` N acts `height` mm above the top of the `upright` h_v; the screws stand `heights` d_i above its
    lower end, z_i = d_i - 0.1 h_v, as under a load on the arm. `lasting` is the couple in N·mm of what lies there.
    """
    push, above, tall = not_negative("the push", force), not_negative("the height", height), positive("h_v", upright)
    if not heights or heights[0] < 0 or heights[-1] > tall:
        raise NotPossible("a screw is not on the upright")
    arms = [max(d - 0.1 * tall, 0.0) for d in heights]
    square = sum(z * z for z in arms)
    if square == 0:
        raise NotPossible("every screw is at the lower end, where it cannot hold the bracket back")
    return tuple(
        Worked(
            f"T_{i}", f"pull on screw {i} from below, with the push", "(M_D + H * (0.9 * h_v + h)) * z / Q",
            (number("M_D", lasting, "N·mm"), number("H", force, "N"), number("h_v", upright, "mm"),
             number("h", height, "mm"), Number("z", z, "mm"), Number("Q", square, "mm²")),
            (not_negative("M_D", lasting) + push * (0.9 * tall + above)) * z / square, "N",
            "screws turning about a tenth of the upright from its lower end, common practice",
            steps=steps(force, height, upright, lasting),
        )
        for i, z in enumerate(arms, 1)
    )  # fmt: skip


def drawn_off(force: Given, out: Given, places: Sequence[float], index: int) -> Worked:
    """Force in N that draws one place off the wall when the board is pushed along it `out` mm before the wall.

    H y d/Q: the push turns the board level, and the places at one end hold it back.
    """
    middle, square = _middle(places)
    away = abs(places[index] - middle)
    value = not_negative("the push", force) * not_negative("the distance out", out) * away / square
    return Worked(
        "N_H", "a push along the wall draws this place off it", "H * y_f * d / Q",
        (number("H", force, "N"), number("y_f", out, "mm"), Number("d", away, "mm"), Number("Q", square, "mm²")),
        value, "N", _RIGID, steps=steps(force, out),
    )  # fmt: skip


def side_of_push(force: Given, weight: Given, above: Given, places: Sequence[float], index: int) -> Worked:
    """Side force in N on one place from a push along the wall, H/n **across** the studs' grain, and its weight.

    The push acts `above` mm over the screws, so it presses the places at one end down: H a d/Q. Only screws that are
    alike in both directions (under 1/4 in) may be held to one strength for it.
    """
    middle, square = _middle(places)
    push, down, a = not_negative("the push", force), finite("the weight", weight), not_negative("the height", above)
    away = abs(places[index] - middle)
    return Worked(
        "V", "weight and a push along the wall on this place", "sqrt((H / n)^2 + (abs(V_D) + H * a * d / Q)^2)",
        (number("H", force, "N"), Number("n", float(len(places)), ""), number("V_D", weight, "N"),
         number("a", above, "mm"), Number("d", away, "mm"), Number("Q", square, "mm²")),
        hypot(push / len(places), abs(down) + push * a * away / square), "N", _RIGID,
        steps=steps(force, weight, above),
    )  # fmt: skip


def _middle(places: Sequence[float]) -> tuple[float, float]:
    if len(places) < 2:
        raise OutsideRulebook(ONE_PLACE)
    middle = sum(places) / len(places)
    square = sum((place - middle) ** 2 for place in places)
    if square == 0:
        raise NotPossible("all places are at one spot")
    return middle, square
