"""A return under a board held along three sides: its screws as a line that is loaded off its middle, at the front."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Literal

from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.loads import BETWEEN_PEOPLE
from plumbrule.mechanics.slip import STEEL_MODULUS
from plumbrule.mechanics.spring_beam import bend, spring_forces
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

ReturnCase = Literal["D", "S1 corner", "S1 midspan", "S2", "S3", "S5 corner"]
_BOUND = "statics of a board hinged along the back, derived here"
_LINE = "elastic line of screws, statics"
_SPRINGS = "beam elements on springs, direct stiffness, derived here"
ABSENT = (
    "A return on a single screw position can turn about it, so it holds nothing up: it counts as absent until it has "
    "two positions or more in studs or blocking."
)
# Which couples are those of a person right over the return's front.
_CORNER = ("S1 corner", "S3", "S5 corner")


def return_load(case: ReturnCase, *, person: Given, line_load: Given, weight: Given, length: Given) -> Worked:
    """Load R in N that a return carries, at the **front edge** of the board, from one case alone.

    Corner P, midspan P/2, two people P + P (L - 24 in.)/L, a full seat w L/4, weight W/4; a person dropping 2 P.
    `person` in N, `line_load` in N/mm, `weight` in N, `length` in mm.
    """
    p, w = not_negative("the person", person), not_negative("the line load", line_load)
    whole, l = not_negative("the weight", weight), positive("the length", length)  # noqa: E741
    named = {
        "P": number("P", person, "N"), "w": number("w", line_load, "N/mm"), "W": number("W", weight, "N"),
        "L": number("L", length, "mm"), "c": Number("c", BETWEEN_PEOPLE, "mm"),
    }  # fmt: skip
    formulas: dict[ReturnCase, tuple[str, float, str]] = {
        "D": ("W / 4", whole / 4, "W"),
        "S1 corner": ("P", p, "P"),
        "S1 midspan": ("P / 2", p / 2, "P"),
        "S2": ("w * L / 4", w * l / 4, "wL"),
        "S3": ("P + P * (L - c) / L", p + p * (l - BETWEEN_PEOPLE) / l, "PLc"),
        "S5 corner": ("2 * P", 2 * p, "P"),
    }
    if case not in formulas:
        raise NotPossible(f"{case} is not a load of a return")
    if case == "S3" and l < BETWEEN_PEOPLE:
        raise NotPossible("two people do not fit on this board")
    formula, value, used = formulas[case]
    return Worked(
        "R_" + case.replace(" ", "_"), f"load on the return at the front edge, {case}", formula,
        tuple(named[name] for name in used), value, "N", _BOUND,
        steps=steps(*(given for name, given in zip("PwWL", (person, line_load, weight, length), strict=True)
                      if name in used)),
    )  # fmt: skip


def return_forces(load: Given, front: Given, stations: Sequence[float]) -> tuple[Worked, ...]:
    """Side force V_j in N on each screw position of a return, front and rear signs kept: a negative one is pushed up.

    `load` R at the board's front edge, `front` y_f and `stations` y_j in mm out from the wall, rising.
    V_j = R/n + R (y_f - y_m)(y_j - y_m)/sum (y - y_m)². Raises OutsideRulebook for one position: a mechanism.
    """
    force, edge = not_negative("the load", load), positive("the front edge", front)
    if not stations or any(a >= b for a, b in pairwise(stations)) or stations[0] < 0:
        raise NotPossible("the positions of the return are not in rising order from the wall")
    if len(stations) == 1:
        raise OutsideRulebook(ABSENT)
    count = len(stations)
    middle = sum(stations) / count
    squares = sum((y - middle) ** 2 for y in stations)
    places = [Number(f"y_{i}", y, "mm") for i, y in enumerate(stations, 1)]
    mean = Worked(
        "y_m", "middle of the positions", f"({' + '.join(p.symbol for p in places)}) / {count}", tuple(places), middle,
        "mm", _LINE,
    )  # fmt: skip
    square = Worked(
        "Q", "sum of the squared distances from it", " + ".join(f"({p.symbol} - y_m)^2" for p in places),
        (*places, number("y_m", mean, "mm")), squares, "mm²", _LINE, steps=(mean,),
    )  # fmt: skip
    return tuple(
        Worked(
            f"V_{i}", f"side force on position {i} of the return, from the wall",
            f"R / n + R * (y_f - y_m) * (y_{i} - y_m) / Q",
            (number("R", load, "N"), Number("n", float(count), ""), number("y_f", front, "mm"),
             number("y_m", mean, "mm"), Number(f"y_{i}", y, "mm"), number("Q", square, "mm²")),
            force / count + force * (edge - middle) * (y - middle) / squares, "N", _LINE,
            steps=(*steps(load, front), mean, square),
        )
        for i, y in enumerate(stations, 1)
    )  # fmt: skip


def return_front_force(
    load: Given, front: Given, stations: Sequence[float], *, second_moment: Given, screw_stiffness: Given, screws: int
) -> Worked:
    """Side force in N to design the front position of a return for: that of the line of screws, or of an angle that
    bends over them, whichever is larger. On stiff screws the bending angle leaves more on the front one.

    `second_moment` of the angle in mm⁴, `screw_stiffness` k_s of one of `screws` at a position in N/mm; the rest as
    `return_forces`.
    """
    line = return_forces(load, front, stations)[-1]
    if screws < 1:
        raise NotPossible("a position has at least one screw")
    edge, force = si(front), si(load)
    if edge < stations[-1]:
        raise NotPossible("a position of the return lies beyond the front of the board")
    springs = [(place, screws * positive("the slip stiffness", screw_stiffness)) for place in stations]
    rigidity = STEEL_MODULUS * positive("the second moment", second_moment)
    carried = spring_forces(bend(edge, springs, rigidity, [(edge, force)]), springs)
    others = [
        Worked(f"B_{i}", f"force on position {i}, the angle bending", f"r_{i} * R",
               (Number(f"r_{i}", part / force if force else 0.0, ""), number("R", load, "N")), part, "N", _SPRINGS,
               steps=steps(load, second_moment, screw_stiffness))
        for i, part in enumerate(carried[:-1], 1)
    ]  # fmt: skip
    rest = add("B_o", "what the other positions carry, the angle bending", others, _SPRINGS)
    bent = Worked(
        "V_b", "side force on the front position, the angle bending", "R - B_o",
        (number("R", load, "N"), number("B_o", rest, "N")), force - rest.value, "N",
        "vertical balance of a beam on springs", steps=(*steps(load), rest),
    )  # fmt: skip
    return Worked(
        "V_f", "side force on the front position of the return", f"max({line.symbol}, V_b)",
        (number(line.symbol, line, "N"), number("V_b", bent, "N")), max(line.value, bent.value), "N", _BOUND,
        steps=(line, bent),
    )  # fmt: skip


def return_couple(case: ReturnCase, side_force: Given, leg: Given) -> Worked:
    """Couple M in N·mm at a position of a return: V b_l/2 with a person at its front corner, 0.65 V b_l under a spread
    load, 0.9 V b_l with a person at midspan.

    `side_force` V of the position in N (its size counts), `leg` b_l in mm.
    """
    share = 0.5 if case in _CORNER else 0.9 if case == "S1 midspan" else 0.65
    value = share * abs(finite("the side force", side_force)) * positive("the leg", leg)
    return Worked(
        "M_r", "couple at a position of the return", f"{share} * abs(V) * b_l",
        (number("V", side_force, "N"), number("b_l", leg, "mm")), value, "N·mm",
        "bound on plate solutions, derived here", steps=steps(side_force, leg),
    )  # fmt: skip


def return_drop(load: Given, front: Given, stations: Sequence[float], screw_stiffness: Given, screws: int) -> Worked:
    """How far the front edge goes down with the return's front screws, V_n/(n_s k_s) in mm.

    `screw_stiffness` k_s in N/mm of one screw, `screws` in one position; the undoubled figure, so the drop is not
    made small.
    """
    if screws < 1:
        raise NotPossible("a position has at least one screw")
    last = return_forces(load, front, stations)[-1]
    value = last.value / (screws * positive("the slip stiffness", screw_stiffness))
    return Worked(
        "d_r", "drop of the board's end with the return's front screws", f"{last.symbol} / (n_s * k_s)",
        (number(last.symbol, last, "N"), Number("n_s", float(screws), ""), number("k_s", screw_stiffness, "N/mm")),
        value, "mm", "statics", steps=(last, *steps(screw_stiffness)),
    )  # fmt: skip
