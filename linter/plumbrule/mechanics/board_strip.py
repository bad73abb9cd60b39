"""The board held along three sides, bounded: bending of its front strip, shear, bending across the grain, and the
pull on the seat screws at the back corners."""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.board_twist import require_small_drop
from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Worked

StripCase = Literal["S1", "S3", "S5"]
PersonAcross = Literal["S1", "S3", "S5", "S2"]
_BOUND = "bound on plate solutions, derived here"
_TIMES: dict[StripCase, float] = {"S1": 1.0, "S3": 1.15, "S5": 2.0}


def front_strip(length: Given, depth: Given, *, lengthwise_check: bool, crack_to_front: Given | None = None) -> Worked:
    """Width c in mm of the front strip that carries a person along the grain: min(b/2, L/10).

    With a lengthwise check in it min(0.4 b, L/13). `crack_to_front`: where a crack goes through, the distance from it
    to the front edge in mm: the strip is no wider.
    """
    l, b = positive("the length", length), positive("the depth", depth)  # noqa: E741
    of_depth, of_length = ("0.4 * b", "L / 13") if lengthwise_check else ("b / 2", "L / 10")
    limits = [0.4 * b if lengthwise_check else b / 2, l / 13 if lengthwise_check else l / 10]
    formula, numbers = f"min({of_depth}, {of_length})", [number("b", depth, "mm"), number("L", length, "mm")]
    if crack_to_front is not None:
        limits.append(positive("the wood in front of the crack", crack_to_front))
        formula = f"min({of_depth}, {of_length}, c_f)"
        numbers.append(number("c_f", crack_to_front, "mm"))
    given = steps(length, depth, *(() if crack_to_front is None else (crack_to_front,)))
    return Worked(
        "c", "width of the front strip that carries a person", formula, tuple(numbers), min(limits), "mm", _BOUND,
        steps=given,
    )  # fmt: skip


def person_bending(case: StripCase, person: Given, length: Given, strip: Given, thickness: Given) -> Worked:
    """Bending stress f_b in MPa along the grain of a person on the front edge, (P L/4) 6/(c t²); S3 1.15 times that.

    `person` in N, `length` between the returns, `strip` c and `thickness` in mm.
    """
    p, l = not_negative("the person", person), positive("the length", length)  # noqa: E741
    c, t, times = positive("the strip", strip), positive("the thickness", thickness), _TIMES[case]
    return Worked(
        "f_P", "bending of the front strip", f"{times} * P * L / 4 * 6 / (c * t^2)",
        (number("P", person, "N"), number("L", length, "mm"), number("c", strip, "mm"), number("t", thickness, "mm")),
        times * p * l / 4 * 6 / (c * t**2), "MPa", _BOUND, steps=steps(person, length, strip, thickness),
    )  # fmt: skip


def spread_bending(line_load: Given, length: Given, depth: Given, thickness: Given) -> Worked:
    """Bending stress f_b in MPa of a spread load, whole width and no help from the back: (w + q b) L²/8 x 6/(b t²).

    A board under two and a half times as long as deep bends most along its front: up to 1.2 - 0.08 L/b as much.
    `line_load` w + q b in N/mm (`back_angle.spread_load`), sizes in mm.
    """
    w, l = not_negative("the line load", line_load), positive("the length", length)  # noqa: E741
    b, t = positive("the depth", depth), positive("the thickness", thickness)
    return Worked(
        "f_q", "bending under the spread load", "max(1, 1.2 - 0.08 * L / b) * w_b * L^2 / 8 * 6 / (b * t^2)",
        (number("w_b", line_load, "N/mm"), number("L", length, "mm"), number("b", depth, "mm"),
         number("t", thickness, "mm")),
        max(1.0, 1.2 - 0.08 * l / b) * w * l**2 / 8 * 6 / (b * t**2), "MPa", _BOUND,
        steps=steps(line_load, length, depth, thickness),
    )  # fmt: skip


def person_shear(person: Given, strip: Given, thickness: Given) -> Worked:
    """Shear stress f_v in MPa of a person beside a return, 1.5 P/(c t). N and mm."""
    p, c, t = not_negative("the person", person), positive("the strip", strip), positive("the thickness", thickness)
    return Worked(
        "f_v", "shear of the front strip", "1.5 * P / (c * t)",
        (number("P", person, "N"), number("c", strip, "mm"), number("t", thickness, "mm")), 1.5 * p / (c * t), "MPa",
        "mechanics of materials, on the strip", steps=steps(person, strip, thickness),
    )  # fmt: skip


def across_moment(case: PersonAcross, load: Given, length: Given) -> Worked:
    """Bending across the grain per width, N·mm/mm = N: 0.12 P (S1), 0.2 P (S3), 0.24 P (S5), 0.03 w L (S2).

    `load` P in N, or for S2 w in N/mm with `length` L in mm.
    """
    amount = not_negative("the load", load)
    if case == "S2":
        return Worked(
            "m_y", "bending across the grain per width", "0.03 * w * L",
            (number("w", load, "N/mm"), number("L", length, "mm")), 0.03 * amount * positive("the length", length),
            "N", _BOUND, steps=steps(load, length),
        )  # fmt: skip
    share = {"S1": 0.12, "S3": 0.2, "S5": 0.24}[case]
    return Worked(
        "m_y", "bending across the grain per width", f"{share} * P", (number("P", load, "N"),), share * amount, "N",
        _BOUND, steps=steps(load),
    )  # fmt: skip


def across_stress(moment: Given, thickness: Given) -> Worked:
    """Tension across the grain in MPa from bending per width `moment` in N: 6 m_y/t². `thickness` in mm."""
    value = 6 * not_negative("the moment", moment) / positive("the thickness", thickness) ** 2
    return Worked(
        "f_t", "tension across the grain", "6 * m_y / t^2",
        (number("m_y", moment, "N"), number("t", thickness, "mm")), value, "MPa", "mechanics of materials",
        steps=steps(moment, thickness),
    )  # fmt: skip


def corner_hold_down(
    case: PersonAcross, *, person: Given, line_load: Given, weight: Given, length: Given, front_drop: Given
) -> Worked:
    """Pull in N on the seat screws of a back corner, those within 6 in. of the end; no relief from the weight.

    0.5 P (S1), as much for each of two people (S3: P) and for a person dropping (S5: P), 0.12 (w L + W) (S2).
    `person` in N, `line_load` in N/mm, `weight` of the board in N, `length` in mm. `front_drop` of one person, or of
    the full seat for S2, in mm: OutsideRulebook past 1/2 in. The wall screw at the end is pushed up by as much.
    """
    require_small_drop(front_drop)
    if case == "S2":
        w, l = not_negative("the line load", line_load), positive("the length", length)  # noqa: E741
        return Worked(
            "H_c", "pull that holds a back corner down", "0.12 * (w * L + W)",
            (number("w", line_load, "N/mm"), number("L", length, "mm"), number("W", weight, "N")),
            0.12 * (w * l + not_negative("the weight", weight)), "N", _BOUND, steps=steps(line_load, length, weight),
        )  # fmt: skip
    if case not in ("S1", "S3", "S5"):
        raise NotPossible(f"{case} has no corner hold-down of its own")
    share = 0.5 if case == "S1" else 1.0
    return Worked(
        "H_c", "pull that holds a back corner down", f"{share} * P", (number("P", person, "N"),),
        share * si(person), "N", _BOUND, steps=steps(person),
    )  # fmt: skip
