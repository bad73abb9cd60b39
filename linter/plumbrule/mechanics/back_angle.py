"""The back angle under a board that is held along three sides: how much comes to one screw position of it.

A board held along its back and both ends twists: a person at its front edge is carried by the returns, and the back
corners are pulled up. So the back angle is not given half the board but bounds that a plate solution never passes: the
full depth of every spread load, and for a person the largest share of a beam on screws that slip.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from plumbrule.mechanics.beam_loads import LineLoad
from plumbrule.mechanics.board_twist import require_small_drop
from plumbrule.mechanics.continuous import ContinuousBeam, continuous_beam
from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import Worked

PersonCase = Literal["S1", "S3", "S5"]

_BOUND = "bound from beam and plate theory, derived here"
# Forces of one person; couples in P b_l. Two people 24 in. apart put at most half as much again on one position.
_SIDE_TIMES: dict[PersonCase, float] = {"S1": 1.0, "S3": 1.5, "S5": 2.0}
_COUPLE_TIMES: dict[PersonCase, float] = {"S1": 0.5, "S3": 0.75, "S5": 1.0}
# One over the slope of the board from which its turning adds to the couple, from plate solutions.
_PERSON_SLOPE, _SPREAD_SLOPE = 45, 36
_LIFTED_ENDS = 1.05


def spread_load(line_load: Given, weight: Given, length: Given) -> Worked:
    """Load per length on the back angle, w + W/L in N/mm: the **full** depth, since the back corners lift.

    `line_load` w in N/mm (0 for weight alone), `weight` W of the board and what stays on it in N, `length` in mm.
    """
    w, whole = not_negative("the line load", line_load), not_negative("the weight", weight)
    value = w + whole / positive("the board's length", length)
    return Worked(
        "w_b", "load along the back angle, the full depth", "w + W / L",
        (number("w", line_load, "N/mm"), number("W", weight, "N"), number("L", length, "mm")), value, "N/mm", _BOUND,
        steps=steps(line_load, weight, length),
    )  # fmt: skip


def spread_reactions(line_load: Given, stations: Sequence[float], length: Given) -> ContinuousBeam:
    """The side force on every screw position under a spread load: a beam over firm supports, with its overhangs.

    `stations` in mm from the left end of the angle, `length` of the angle in mm.
    """
    whole = positive("the angle's length", length)
    return continuous_beam(whole, stations, lines=[LineLoad(0.0, whole, line_load)])


def greatest_spread_force(beam: ContinuousBeam, front_drop: Given) -> Worked:
    """The side force in N to design every position for: the largest reaction, those inside with a twentieth more.

    Firm supports do not know that the board's corners lift: what the ends are spared comes to the positions inside.
    `front_drop` w_q under that load in mm: OutsideRulebook past 1/2 in.
    """
    require_small_drop(front_drop)
    ends, inside = max(beam.reactions[0].value, beam.reactions[-1].value), beam.greatest_inside
    outer = beam.reactions[0] if beam.reactions[0].value == ends else beam.reactions[-1]
    return Worked(
        "V_q", "side force of the spread load on the worst position", f"max(R_e, {_LIFTED_ENDS} * R_i)",
        (number("R_e", outer, "N"), number("R_i", inside, "N")), max(ends, _LIFTED_ENDS * inside.value), "N", _BOUND,
        steps=(outer, inside),
    )  # fmt: skip


def person_force(case: PersonCase, person: Given, shared: Given | None) -> Worked:
    """Side force V in N of a person on one position: the share found, or all of P where nothing is shared (None).

    S3 is one and a half times that and S5 twice; unshared, two people 24 in. apart still put at most 1.5 P on it.
    """
    times, given = _SIDE_TIMES[case], person if shared is None else shared
    symbol = "P" if shared is None else "V_sh"
    return Worked(
        "V_P", "side force on one position" + (", not shared" if shared is None else ", shared"),
        f"{times} * {symbol}", (number(symbol, given, "N"),), times * positive("the force", given), "N", _BOUND,
        steps=steps(given),
    )  # fmt: skip


def person_couple(case: PersonCase, person: Given, leg: Given, front_drop: Given, depth: Given) -> Worked:
    """Couple M in N·mm of a person on one position: P b_l/2, S3 0.75 P b_l, S5 P b_l, more where the board turns far.

    `leg` b_l and `depth` b in mm; `front_drop` w_P of one person in mm (`board_twist`). A board that turns by more than
    1 in 45 presses the toe of the leg down as it turns: M grows with the slope from there. Raises OutsideRulebook past
    a drop of 1/2 in.
    """
    times, slope = _COUPLE_TIMES[case], _slope("w_P", front_drop, depth)
    value = times * positive("the person", person) * positive("the leg", leg) * max(1.0, _PERSON_SLOPE * slope.value)
    return Worked(
        "M_P", "couple on one position", f"{times} * P * b_l * max(1, {_PERSON_SLOPE} * th_b)",
        (number("P", person, "N"), number("b_l", leg, "mm"), number("th_b", slope, "")), value, "N·mm", _BOUND,
        steps=(*steps(person, leg), slope),
    )  # fmt: skip


def spread_couple(side_force: Given, leg: Given, front_drop: Given, depth: Given) -> Worked:
    """Couple M = V b_l in N·mm of a spread load: the board bears on the tip of the leg while its seat screws hold.

    `front_drop` w_q under that load and `depth` in mm; M grows with a slope of more than 1 in 36. Raises
    OutsideRulebook past a drop of 1/2 in.
    """
    slope = _slope("w_q", front_drop, depth)
    value = not_negative("the side force", side_force) * positive("the leg", leg)
    return Worked(
        "M_q", "couple of the spread load on one position", f"V_q * b_l * max(1, {_SPREAD_SLOPE} * th_b)",
        (number("V_q", side_force, "N"), number("b_l", leg, "mm"), number("th_b", slope, "")),
        value * max(1.0, _SPREAD_SLOPE * slope.value), "N·mm", _BOUND, steps=(*steps(side_force, leg), slope),
    )  # fmt: skip


def _slope(symbol: str, front_drop: Given, depth: Given) -> Worked:
    drop = require_small_drop(front_drop)
    return Worked(
        "th_b", "slope of the board across its depth", f"{symbol} / b",
        (number(symbol, front_drop, "mm"), number("b", depth, "mm")), drop / positive("the depth", depth), "",
        "geometry", steps=steps(front_drop, depth),
    )  # fmt: skip
