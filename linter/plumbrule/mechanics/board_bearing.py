"""Where a board presses on steel or wood: over how much of it, and how hard."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_STATICS = "statics"
# How much of the leg bears when it turns under the board: common practice.
_TIP_WIDTH = 12.7


def tip_bearing_area(patch: Given, thickness: Given) -> Worked:
    """What of a turning leg's tip bears under a person, mm²: 1/2 in. across the leg, and along it the length `patch`
    the person takes up plus the board's `thickness` (half of it to each side). mm."""
    length = not_negative("the loaded length", patch) + positive("the board's thickness", thickness)
    return Worked(
        "A_b", "bearing of the board on the leg's tip", "b_t * (l_p + t)",
        (Number("b_t", _TIP_WIDTH, "mm"), number("l_p", patch, "mm"), number("t", thickness, "mm")),
        _TIP_WIDTH * length, "mm²", "1/2 in of the leg bears under rotation, common practice",
        steps=steps(patch, thickness),
    )  # fmt: skip


def bearing_area(length: Given, width: Given) -> Worked:
    """The area on which a board rests flat, mm²."""
    value = positive("the bearing's length", length) * positive("the bearing's width", width)
    return Worked(
        "A_b", "bearing area", "l_b * w_b", (number("l_b", length, "mm"), number("w_b", width, "mm")), value, "mm²",
        "geometry", steps=steps(length, width),
    )  # fmt: skip


def board_bearing_stress(force: Given, area: Given) -> Worked:
    """f_c in MPa across the grain under `force` N on `area` mm². Compared with F_c_p without any increase for a short
    bearing."""
    value = not_negative("the force", force) / positive("the bearing area", area)
    return Worked(
        "f_c", "pressure of the board on its bearing", "C / A_b",
        (number("C", force, "N"), number("A_b", area, "mm²")), value, "MPa", _STATICS, steps=steps(force, area),
    )  # fmt: skip


def bearing_left(seat: Given, gap: Given, cut_error: Given) -> Worked:
    """What of a return's leg the board still lies on at its worst, mm: the leg, less the gap at that end of the board,
    less what the board may be cut or laid too short. Raises NotPossible when nothing is left: the board falls in."""
    leg = positive("the leg", seat)
    value = leg - not_negative("the gap at the end", gap) - not_negative("the error of length", cut_error)
    if value <= 0:
        raise NotPossible(f"a gap of {si(gap):g} mm leaves nothing of a leg of {leg:g} mm under the board")
    return Worked(
        "l_b", "bearing left at the end of the board", "b_l - s_e - d_L",
        (number("b_l", seat, "mm"), number("s_e", gap, "mm"), number("d_L", cut_error, "mm")), value, "mm", "geometry",
        steps=steps(seat, gap, cut_error),
    )  # fmt: skip
