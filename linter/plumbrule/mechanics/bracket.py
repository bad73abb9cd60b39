"""A single bracket: upright on the wall, arm under the board, with or without a brace between them."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import atan2, cos, degrees, sin
from typing import Literal, NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.loads import PATCH
from plumbrule.mechanics.slip import STEEL_MODULUS
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

_ROWS = "screws turning about a tenth of the upright from its lower end, common practice"
_FRAME = "statics of a braced bracket"
_REACH = 1.3
_PLATES = "bound on plate solutions of boards on brackets that give, derived here"
# Across the grain a person's share of his weight per width, and how many stand over one place of an arm's tip.
_ACROSS = {"S1": (0.132, 1.1), "S3": (0.22, 1.1), "S5": (0.264, 2.2)}
ONE_SCREW = "A bracket on one screw turns about it in the plane of the wall, so it carries no people and no board."


class BracketScrews(NamedTuple):
    """Pull on each screw, from the lowest up, and the side force on every one, N."""

    pulls: tuple[Worked, ...]
    side_force: Worked

    @property
    def greatest_pull(self) -> Worked:
        """The pull on the top screw."""
        return max(self.pulls, key=lambda line: line.value)


def bracket_screws(load: Given, out: Given, upright: Given, heights: Sequence[float]) -> BracketScrews:
    """T_i = P e z_i/sum z² with z_i = d_i - 0.1 h_v, and V = P/n, N. A screw below that line pulls nothing.

    `load` P in N at `out` e from the wall (for a person the tip of the arm), `upright` h_v and the screws' `heights`
    d_i above its lower end in mm, rising. Raises OutsideRulebook for one screw.
    """
    p, e, tall = not_negative("the load", load), positive("the distance out", out), positive("the upright", upright)
    if not heights or any(a >= b for a, b in pairwise(heights)):
        raise NotPossible("the screws are not in rising order")
    if heights[0] < 0 or heights[-1] > tall:
        raise NotPossible("a screw is not on the upright")
    if len(heights) == 1:
        raise OutsideRulebook(ONE_SCREW)
    arms = [
        Worked(f"z_{i}", f"screw {i} above the line the bracket turns about", f"max(d_{i} - 0.1 * h_v, 0)",
               (Number(f"d_{i}", height, "mm"), number("h_v", upright, "mm")), max(height - 0.1 * tall, 0.0), "mm",
               _ROWS, steps=steps(upright))
        for i, height in enumerate(heights, 1)
    ]  # fmt: skip
    squares = sum(arm.value**2 for arm in arms)
    if squares == 0:
        raise NotPossible("every screw is at the lower end, where it cannot hold the bracket back")
    below = " + ".join(f"{arm.symbol}^2" for arm in arms)
    sizes = tuple(number(arm.symbol, arm, "mm") for arm in arms)
    pulls = tuple(
        Worked(f"T_{i}", f"pull on screw {i} from below", f"P * e * z_{i} / ({below})",
               (number("P", load, "N"), number("e", out, "mm"), *sizes), p * e * arm.value / squares, "N", _ROWS,
               steps=(*steps(load, out), *arms))
        for i, arm in enumerate(arms, 1)
    )  # fmt: skip
    side = Worked(
        "V", "side force on every screw", "P / n", (number("P", load, "N"), Number("n", float(len(arms)), "")),
        p / len(arms), "N", "statics", steps=steps(load),
    )  # fmt: skip
    return BracketScrews(pulls, side)


def arm_moment(load: Given, out: Given, to_toe: Given, width: Given) -> Worked:
    """Bending of an unbraced flat arm per width, P (e - k)/b_a, N·mm/mm = N. Its limit is `leg.leg_capacity`.

    `out` e from the heel, `to_toe` k of the bend, `width` b_a of the arm in mm.
    """
    p, arm = not_negative("the load", load), positive("e", out) - not_negative("k", to_toe)
    if arm <= 0:
        raise NotPossible("the load is not beyond the bend")
    return Worked(
        "m", "bending of the arm per width", "P * (e - k) / b_a",
        (number("P", load, "N"), number("e", out, "mm"), number("k", to_toe, "mm"), number("b_a", width, "mm")),
        p * arm / positive("the arm's width", width), "N", "statics", steps=steps(load, out, to_toe, width),
    )  # fmt: skip


def unbraced_drop(load: Given, arm: Given, free_upright: Given, width: Given, thickness: Given) -> Worked:
    """Tip drop in mm of an unbraced bracket, P l³/(3 E I) + P l² h_c/(E I), I = b_a t³/12 in both legs.

    `arm` l, `free_upright` h_c from the heel to where the upright is held, `width`, `thickness` in mm.
    """
    p, l, h = not_negative("the load", load), positive("the arm", arm), not_negative("h_c", free_upright)  # noqa: E741
    second = positive("the width", width) * positive("the thickness", thickness) ** 3 / 12
    bar = Worked(
        "I_a", "second moment of the arm", "b_a * t_a^3 / 12",
        (number("b_a", width, "mm"), number("t_a", thickness, "mm")), second, "mm⁴", "geometry",
        steps=steps(width, thickness),
    )  # fmt: skip
    rigidity = STEEL_MODULUS * second
    return Worked(
        "d_a", "drop of the arm's tip", "P * l^3 / (3 * E_s * I_a) + P * l^2 * h_c / (E_s * I_a)",
        (number("P", load, "N"), number("l", arm, "mm"), number("E_s", STEEL_MODULUS, "MPa"),
         number("I_a", bar, "mm⁴"), number("h_c", free_upright, "mm")),
        p * l**3 / (3 * rigidity) + p * l**2 * h / rigidity, "mm", "elastic frame of two legs",
        steps=(*steps(load, arm, free_upright), bar),
    )  # fmt: skip


class Brace(NamedTuple):
    """A brace from the upright to the arm: pull of the top on the wall, thrust along the brace, push of its foot on
    the wall, N; slope in degrees; and the bending of the arm beyond the brace, N·mm."""

    top_pull: Worked
    thrust: Worked
    foot_push: Worked
    slope: Worked
    arm_moment: Worked


def brace(load: Given, out: Given, height: Given, along: Given) -> Brace:
    """T = P e/h_b, N = P e/(x_b sin th), th = atan(h_b/x_b), and P (e - x_b) in the arm beyond.

    The brace runs from `height` h_b below the arm on the wall to `along` x_b out on the arm, pinned at both; the load
    P in N at `out` e, mm. Its foot bears on the wall and so must stand on a stud, not on lining between studs.
    """
    p, e = not_negative("the load", load), positive("the distance out", out)
    h, x = positive("the brace's height", height), positive("the brace's reach", along)
    angle = degrees(atan2(h, x))
    slope = Worked(
        "th", "slope of the brace", "atan(h_b / x_b)", (number("h_b", height, "mm"), number("x_b", along, "mm")),
        angle, "°", "geometry", steps=steps(height, along),
    )  # fmt: skip
    sine, cosine = sin(atan2(h, x)), cos(atan2(h, x))
    top = Worked(
        "T_top", "pull of the arm's end on the wall", "P * e / h_b",
        (number("P", load, "N"), number("e", out, "mm"), number("h_b", height, "mm")), p * e / h, "N", _FRAME,
        steps=steps(load, out, height),
    )  # fmt: skip
    thrust = Worked(
        "N_b", "thrust along the brace", "P * e / (x_b * sin(th))",
        (number("P", load, "N"), number("e", out, "mm"), number("x_b", along, "mm"), number("th", slope, "°")),
        p * e / (x * sine), "N", _FRAME, steps=(*steps(load, out), slope),
    )  # fmt: skip
    foot = Worked(
        "B_b", "push of the brace's foot on the wall", "N_b * cos(th)",
        (number("N_b", thrust, "N"), number("th", slope, "°")), thrust.value * cosine, "N", _FRAME,
        steps=(thrust, slope),
    )  # fmt: skip
    bending = Worked(
        "M_b", "bending of the arm beyond the brace", "P * max(e - x_b, 0)",
        (number("P", load, "N"), number("e", out, "mm"), number("x_b", along, "mm")), p * max(e - x, 0.0), "N·mm",
        _FRAME, steps=steps(load, out, along),
    )  # fmt: skip
    return Brace(top, thrust, foot, slope, bending)


def nearer_bracket(load: Given, beyond: Given, spacing: Given) -> Worked:
    """Force P (1 + c/S) in N on the nearer of two brackets `spacing` S apart, a load c beyond it on the board, mm."""
    p, c, s = not_negative("the load", load), not_negative("c", beyond), positive("the spacing", spacing)
    return Worked(
        "R_b", "force on the nearer bracket", "P * (1 + c / S)",
        (number("P", load, "N"), number("c", beyond, "mm"), number("S", spacing, "mm")), p * (1 + c / s), "N",
        "lever rule", steps=steps(load, beyond, spacing),
    )  # fmt: skip


def require_reach(front: Given, arm: Given) -> Worked:
    """How far the board reaches to `front` y_f beyond the tip of the `arm` l_a, mm. Raises OutsideRulebook beyond three
    tenths of the arm: the bounds are from plate solutions of boards that reach no farther."""
    reach, tip = positive("y_f", front), positive("the arm", arm)
    if reach > _REACH * tip * (1 + 1e-9):
        raise OutsideRulebook(
            "The board reaches so far beyond the arms of its brackets that no bound covers it: take longer arms, to "
            "within three tenths of their length of its front edge."
        )
    return Worked(
        "a_b", "the board beyond its arms", "max(y_f - l_a, 0)",
        (number("y_f", front, "mm"), number("l_a", arm, "mm")), max(reach - tip, 0.0), "mm", "geometry",
        steps=steps(front, arm),
    )  # fmt: skip


def uneven_bending(stress: Given) -> Worked:
    """Bending stress in MPa along the grain of a spread load on brackets, 1.75 f_q: an arm that gives more than the
    next hands its part on. `stress` f_q is that on firm supports, over the longest run; beside an end that is held,
    where the bracket next to it gives, over the run from that end to the second bracket."""
    return Worked(
        "f_u", "bending under the spread load, brackets that give unevenly", "1.75 * f_q",
        (number("f_q", stress, "MPa"),), 1.75 * not_negative("the bending", stress), "MPa", _PLATES,
        steps=steps(stress),
    )  # fmt: skip


def across_on_arms(case: Literal["S1", "S3", "S5"], person: Given, front: Given, arm: Given) -> Worked:
    """Bending across the grain per width in N of a board on brackets under a `person` P at its front edge.

    0.132 P between the arms (two people 0.22 P, one who drops 0.264 P); where the board reaches `front` y_f beyond the
    tip of the `arm` l_a, mm, at least 1.1 P a/(l_p + a) with a = y_f - l_a and the hand's breadth l_p (twice for one
    who drops)."""
    p, over = not_negative("the person", person), max(0.0, positive("y_f", front) - positive("the arm", arm))
    share, times = _ACROSS[case]
    patch = number("l_p", PATCH, "mm")
    beyond = "max(y_f - l_a, 0)"
    return Worked(
        "m_y", "bending across the grain per width, on arms",
        f"max({share}, {times} * {beyond} / (l_p + {beyond})) * P",
        (number("P", person, "N"), number("y_f", front, "mm"), number("l_a", arm, "mm"), patch),
        max(share, times * over / (patch.value + over)) * p, "N", _PLATES, steps=steps(person, front, arm),
    )  # fmt: skip


def drop_beyond(tip: Given, front: Given, arm: Given) -> Worked:
    """Drop in mm of the front edge where the board reaches beyond its arms: the tip's, d_a max(1, y_f/l_a)^2.5, since
    the slope of the arm goes on and the board bends over its tip. `tip` d_a, `front` y_f and `arm` l_a in mm."""
    ratio = max(1.0, positive("y_f", front) / positive("the arm", arm))
    return Worked(
        "d_b", "drop of the front edge on its arm", "d_a * max(1, y_f / l_a)^2.5",
        (number("d_a", tip, "mm"), number("y_f", front, "mm"), number("l_a", arm, "mm")),
        not_negative("the drop", tip) * ratio**2.5, "mm", _PLATES, steps=steps(tip, front, arm),
    )  # fmt: skip


def held_by_seat_screws(part: Given, person: Given) -> Worked:
    """Pull in N on the seat screws of one bracket, 1.5 u P: the `part` u by which a `person` P lifts the board off it
    from the worst place of the board, and half as much again for the board's own turning on arms that give."""
    return Worked(
        "H_b", "pull that holds the board down on the bracket", "1.5 * u * P",
        (number("u", part, ""), number("P", person, "N")),
        1.5 * not_negative("the part", part) * not_negative("the person", person), "N", _PLATES,
        steps=steps(part, person),
    )  # fmt: skip
