"""How far the front edge of a board on a back angle alone goes down: an estimate, rounded up by half as much again."""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.slip import STEEL_MODULUS
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_PLATE = "elastic strips of leg on elastic screws, derived here"
_MARGIN = 1.5
# 1 - nu² of steel, nu 0.3: a wide strip of leg cannot narrow as it bends.
_WIDE = 0.91


class FrontDrop(NamedTuple):
    """The drop of the front edge in mm, instant and elastic, and its three parts before the factor of 1.5."""

    drop: Worked
    from_wall_screws: Worked
    from_leg: Worked
    from_seat_screws: Worked


def position_rotation(*, pull_stiffness: Given, lever: Given, leg_width: Given, thickness: Given) -> Worked:
    """Rotational stiffness k_phi in N·mm of one wall-screw position: 1/(1/(k_w z²) + z/(3 E I_w)).

    `pull_stiffness` k_w in N/mm of all its screws, `lever` z, `leg_width` b_e and `thickness` in mm.
    """
    k, z = positive("the pull stiffness", pull_stiffness), positive("the lever", lever)
    b, t = positive("the width of leg", leg_width), positive("the steel", thickness)
    second = b * t**3 / (12 * _WIDE)
    strip = Worked(
        "I_w", "second moment of the leg that bends for one screw", f"b_e * t_a^3 / (12 * {_WIDE})",
        (number("b_e", leg_width, "mm"), number("t_a", thickness, "mm")), second, "mm⁴", _PLATE,
        steps=steps(leg_width, thickness),
    )  # fmt: skip
    return Worked(
        "k_phi", "stiffness of one screw position against turning, per radian",
        "1 / (1 / (k_w * z^2) + z / (3 * E_s * I_w))",
        (number("k_w", pull_stiffness, "N/mm"), number("z", lever, "mm"), number("E_s", STEEL_MODULUS, "MPa"),
         number("I_w", strip, "mm⁴")),
        1 / (1 / (k * z**2) + z / (3 * STEEL_MODULUS * second)), "N·mm", _PLATE,
        steps=(*steps(pull_stiffness, lever), strip),
    )  # fmt: skip


def front_drop(
    *,
    wall_moment: Given,
    front: Given,
    rotation: Given,
    positions: int,
    beyond: Given,
    pull: Given,
    contact: Given,
    toe: Given,
    seat_row: Given,
    to_toe: Given,
    thickness: Given,
    leg_length: Given,
    seat_pull_stiffness: Given,
    seat_screws: int,
) -> FrontDrop:
    """The front drop in mm from the turning wall screws, the bending seat leg and the giving seat screws.

    wall_moment: M_w of all loads about the wall, N·mm. front: y_f. rotation: k_phi of one of `positions`, N·mm.
    beyond: a of the front past the toe. pull, contact: H and C of `hold_down`, N. toe, seat_row, to_toe: y_t, y_s, k.
    leg_length: L_e of the leg for people, L for spread loads. seat_pull_stiffness: k_ws of one of `seat_screws`,
    N/mm. Lengths in mm. Elastic: it means nothing once the leg yields. Creep is not in it.
    """
    if positions < 1 or seat_screws < 1:
        raise NotPossible("there are no screws")
    lever = positive("y_t", toe) - not_negative("y_s", seat_row)
    if lever <= 0:
        raise NotPossible("the seat screws are not behind the toe of the leg, so they cannot hold the board down")
    a, h = not_negative("the overhang", beyond), not_negative("H", pull)
    turning = _turning(wall_moment, front, rotation, positions)
    bending = _bending(beyond, pull, contact, toe, seat_row, to_toe, thickness, leg_length)
    value = a * h / (seat_screws * positive("k_ws", seat_pull_stiffness) * lever)
    giving = Worked(
        "d_3", "front drop from the seat screws", "a * H / (n_s * k_ws * (y_t - y_s))",
        (number("a", beyond, "mm"), number("H", pull, "N"), Number("n_s", float(seat_screws), ""),
         number("k_ws", seat_pull_stiffness, "N/mm"), number("y_t", toe, "mm"), number("y_s", seat_row, "mm")),
        value, "mm", _PLATE, steps=steps(beyond, pull, seat_pull_stiffness, toe, seat_row),
    )  # fmt: skip
    drop = Worked(
        "d_f", "front drop, with half as much again", f"{_MARGIN} * (d_1 + d_2 + d_3)",
        (number("d_1", turning, "mm"), number("d_2", bending, "mm"), number("d_3", giving, "mm")),
        _MARGIN * (turning.value + bending.value + value), "mm",
        "plate solutions are 1.2 to 1.5 times the plain sum, derived here", steps=(turning, bending, giving),
        caution="The pull stiffness of screws is from memory.",
    )  # fmt: skip
    return FrontDrop(drop, turning, bending, giving)


def _turning(wall_moment: Given, front: Given, rotation: Given, positions: int) -> Worked:
    moment, out = not_negative("M_w", wall_moment), positive("y_f", front)
    return Worked(
        "d_1", "front drop from the wall screws and the leg round them", "M_w * y_f / (n_w * k_phi)",
        (number("M_w", wall_moment, "N·mm"), number("y_f", front, "mm"), Number("n_w", float(positions), ""),
         number("k_phi", rotation, "N·mm")),
        moment * out / (positions * positive("k_phi", rotation)), "mm", _PLATE,
        steps=steps(wall_moment, front, rotation),
    )  # fmt: skip


def _bending(
    beyond: Given, pull: Given, contact: Given, toe: Given, seat_row: Given, to_toe: Given, thickness: Given,
    leg_length: Given,
) -> Worked:  # fmt: skip
    y_t, y_s, k, h, c = si(toe), si(seat_row), positive("k", to_toe), si(pull), positive("C", contact)
    tip, row = y_t - k, max(y_s - k, 0.0)
    if tip <= 0:
        raise NotPossible("the leg has no flat beyond its fillet")
    stiff = STEEL_MODULUS * positive("the steel", thickness) ** 3 / (12 * _WIDE) * positive("the leg", leg_length)
    at_tip = (c * tip**3 / 3 - h * row**2 * (3 * tip - row) / 6) / stiff
    at_row = (c * row**2 * (3 * tip - row) / 6 - h * row**3 / 3) / stiff
    arms = Worked(
        "e_g", "from the fillet to the seat screws", "max(y_s - k, 0)",
        (number("y_s", seat_row, "mm"), number("k", to_toe, "mm")), row, "mm", "geometry",
        steps=steps(seat_row, to_toe),
    )  # fmt: skip
    reach = Worked(
        "e_t", "from the fillet to the toe", "y_t - k", (number("y_t", toe, "mm"), number("k", to_toe, "mm")), tip,
        "mm", "geometry", steps=steps(toe, to_toe),
    )  # fmt: skip
    bar = (
        number("E_s", STEEL_MODULUS, "MPa"), number("t_a", thickness, "mm"), number("L_e", leg_length, "mm"),
        number("C", contact, "N"), number("H", pull, "N"), number("e_t", reach, "mm"), number("e_g", arms, "mm"),
    )  # fmt: skip
    given = (*steps(contact, pull, thickness, leg_length), reach, arms)
    divide = f"(E_s * t_a^3 / (12 * {_WIDE}) * L_e)"
    v_t = Worked(
        "v_t", "the toe goes down", f"(C * e_t^3 / 3 - H * e_g^2 * (3 * e_t - e_g) / 6) / {divide}", bar, at_tip, "mm",
        _PLATE, steps=given,
    )  # fmt: skip
    v_g = Worked(
        "v_g", "the leg goes down at the seat screws",
        f"(C * e_g^2 * (3 * e_t - e_g) / 6 - H * e_g^3 / 3) / {divide}", bar, at_row, "mm", _PLATE, steps=given,
    )  # fmt: skip
    return Worked(
        "d_2", "front drop from the seat leg", "a * (v_t - v_g) / (y_t - y_s)",
        (number("a", beyond, "mm"), number("v_t", v_t, "mm"), number("v_g", v_g, "mm"), number("y_t", toe, "mm"),
         number("y_s", seat_row, "mm")),
        si(beyond) * (at_tip - at_row) / (y_t - y_s), "mm", _PLATE, steps=(*steps(beyond), v_t, v_g),
    )  # fmt: skip
