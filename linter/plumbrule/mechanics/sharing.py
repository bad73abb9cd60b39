"""Whether the screws of a back angle share one person between them, and how much then comes to one position.

The angle with a third of the board is a beam on screws that slip; the person walks along it. Sharing asks for steel in
one piece, tight holes and screws that bend: one loose screw idles until the next has taken a person.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NamedTuple

from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.slip import STEEL_MODULUS
from plumbrule.mechanics.spring_beam import bend, spring_forces, walked
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked
from plumbrule.reading.units import to_si

Sharing = Literal["shared", "few positions", "spliced", "loose holes", "screws too soft", "returns missing"]
SHARING_WORDS: tuple[Sharing, ...] = (
    "shared", "few positions", "spliced", "loose holes", "screws too soft", "returns missing",
)  # fmt: skip

_BOUND = "bound from beam and plate theory, derived here"
_STIFFNESS = "beam elements on springs, direct stiffness, derived here"
_LEAST_SHARING, _LOOSE = 4, to_si(1 / 16, "in")
_BENDS = ("III_m", "III_s", "IV")
_END_SHARE = 1.3
_TIE = 1e-9


def sharing_word(*, positions: int, spliced: bool, hole_over: Given, mode: str, returns: int) -> Sharing:
    """Whether screws may share one person, or the first reason why not: then one position carries all of P.

    hole_over: hole less screw diameter, mm; over 1/16 in. one screw can idle. mode: how the screw yields
    (`SideStrength.mode`); only one that bends gives way gently. returns: those that count, 0 to 2.
    """
    if positions < _LEAST_SHARING:
        return "few positions"
    if spliced:
        return "spliced"
    if not_negative("the play", hole_over) > _LOOSE * (1 + _TIE):
        return "loose holes"
    if mode not in _BENDS:
        return "screws too soft"
    return "shared" if returns == 2 else "returns missing"


class SharedPerson(NamedTuple):
    """The side force of one person on a screw position of the back angle, N, without the board's own weight.

    inside: on any position but the two ends. end: on an end position. closed_form: the same from the textbook formula
    for an endless beam, as a check of the order of size. places: where the person stands for `inside`, mm.
    """

    inside: Worked
    end: Worked
    closed_form: Worked
    place: float


def stiffness_second_moment(steel_second_moment: Given, board_modulus: Given, depth: Given, thickness: Given) -> Worked:
    """Second moment I_e in mm⁴ of steel as stiff as the angle and a third of the board, I + E b t³/(36 E_s).

    `steel_second_moment` in mm⁴, `board_modulus` along the grain in MPa, `depth` and `thickness` in mm.
    """
    modulus, b, t = positive("E", board_modulus), positive("the depth", depth), positive("the thickness", thickness)
    value = positive("I", steel_second_moment) + modulus * b * t**3 / (36 * STEEL_MODULUS)
    return Worked(
        "I_e", "second moment of the angle with a third of the board, as steel",
        "I_x + E_b * b * t^3 / (36 * E_s)",
        (number("I_x", steel_second_moment, "mm⁴"), number("E_b", board_modulus, "MPa"), number("b", depth, "mm"),
         number("t", thickness, "mm"), number("E_s", STEEL_MODULUS, "MPa")),
        value, "mm⁴", _BOUND, steps=steps(steel_second_moment, board_modulus, depth, thickness),
    )  # fmt: skip


def position_stiffness(screw_stiffness: Given, screws: int) -> Worked:
    """Spring k in N/mm of one position of `screws` screws: twice their slip stiffness, so that sharing stays safe."""
    if screws < 1:
        raise NotPossible("a position has at least one screw")
    return Worked(
        "k_p", "stiffness of one screw position, doubled to be safe", "2 * n_s * k_s",
        (number("n_s", float(screws), ""), number("k_s", screw_stiffness, "N/mm")),
        2 * screws * positive("the slip stiffness", screw_stiffness), "N/mm", _BOUND, steps=steps(screw_stiffness),
    )  # fmt: skip


def shared_person(
    person: Given, *, length: Given, stations: Sequence[float], second_moment: Given, stiffness: Given
) -> SharedPerson:
    """The largest force on one screw position while one person walks from the second to the last but one.

    `person` P in N, `length` and `stations` of the angle in mm, `second_moment` I_e in mm⁴ (`stiffness_second_moment`),
    `stiffness` k in N/mm (`position_stiffness`). Only where `sharing_word` is `shared`: raises OutsideRulebook for
    fewer than four positions.
    """
    if len(stations) < _LEAST_SHARING:
        raise OutsideRulebook("Fewer than four screw positions do not share a person: each must carry all of it.")
    load, whole = positive("the person", person), positive("the angle's length", length)
    rigidity = STEEL_MODULUS * positive("the second moment", second_moment)
    springs = [(place, positive("the stiffness", stiffness)) for place in stations]
    found = walked(whole, springs, rigidity, stations[1], stations[-2])
    worst = max(range(1, len(stations) - 1), key=lambda index: found[index][1])
    place = found[worst][0]
    carried = [load * force for force in spring_forces(bend(whole, springs, rigidity, [(place, 1.0)]), springs)]
    lines = [
        Worked(f"R_{i + 1}", f"force on position {i + 1}", f"r_{i + 1} * P",
               (Number(f"r_{i + 1}", force / load, ""), number("P", person, "N")), force, "N", _STIFFNESS,
               steps=steps(person))
        for i, force in enumerate(carried)
    ]  # fmt: skip
    others = add(
        "R_o", "what all other positions carry", [lines[i] for i in range(len(lines)) if i != worst], _STIFFNESS
    )
    closed = _endless(person, stations, second_moment, stiffness)
    balance = _balance(person, stations, lines, place)
    inside = Worked(
        "V_sh", f"most that one person puts on one position inside, position {worst + 1}", "P - R_o",
        (number("P", person, "N"), number("R_o", others, "N")), load - si(others), "N",
        "vertical balance of a beam on springs", steps=(*steps(second_moment, stiffness), others, balance, closed),
    )  # fmt: skip
    end = Worked(
        "V_end", "most that one person puts on an end position", f"min(P, {_END_SHARE} * V_sh)",
        (number("P", person, "N"), number("V_sh", inside, "N")), min(load, _END_SHARE * inside.value), "N", _BOUND,
        steps=(inside,),
    )  # fmt: skip
    return SharedPerson(inside, end, closed, place)


def _endless(person: Given, stations: Sequence[float], second_moment: Given, stiffness: Given) -> Worked:
    pitch = (stations[-1] - stations[0]) / (len(stations) - 1)
    reach = (4 * pitch * STEEL_MODULUS * si(second_moment) / si(stiffness)) ** 0.25
    length = Worked(
        "l_e", "length over which the angle spreads a load", "(4 * s * E_s * I_e / k_p)^(1 / 4)",
        (Number("s", pitch, "mm"), number("E_s", STEEL_MODULUS, "MPa"), number("I_e", second_moment, "mm⁴"),
         number("k_p", stiffness, "N/mm")),
        reach, "mm", "endless beam on an even bed", steps=steps(second_moment, stiffness),
    )  # fmt: skip
    return Worked(
        "V_cf", "check: the same on an endless beam", "P * s / (2 * l_e)",
        (number("P", person, "N"), Number("s", pitch, "mm"), number("l_e", length, "mm")),
        si(person) * pitch / (2 * reach), "N", "endless beam on an even bed", steps=(length,),
    )  # fmt: skip


def _balance(person: Given, stations: Sequence[float], lines: Sequence[Worked], place: float) -> Worked:
    """Where the reactions' resultant lies: it must be where the person stands."""
    arms = [
        Worked(f"m_{i + 1}", f"moment of position {i + 1} about the end", f"R_{i + 1} * x_{i + 1}",
               (number(f"R_{i + 1}", line, "N"), Number(f"x_{i + 1}", at, "mm")), line.value * at, "N·mm",
               "statics", steps=(line,))
        for i, (line, at) in enumerate(zip(lines, stations, strict=True))
    ]  # fmt: skip
    whole = add("m_o", "moment of all positions about the end", arms, "statics")
    return Worked(
        "x_P", f"check: where the person stands, {place:.0f} mm from the end, from the forces found", "m_o / P",
        (number("m_o", whole, "N·mm"), number("P", person, "N")), si(whole) / si(person), "mm",
        "moment balance of a beam on springs", steps=(whole,),
    )  # fmt: skip
