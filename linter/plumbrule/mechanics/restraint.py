"""Why a board that cannot move splits, and how screws sit in a slab."""

from __future__ import annotations

from plumbrule.mechanics.board_wood import published, require_thickness
from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.table_rows import Board
from plumbrule.mechanics.worked import NotPossible, Number, Worked

# Tangential modulus over the modulus along the grain, from memory of Wood Handbook Table 5-1; the highest printed
# for any species stands in for one that is not listed, since a stiffer board pulls harder.
_ACROSS: dict[str, float] = {"white ash": 0.080, "western redcedar": 0.055}
_STIFFEST = 0.089
_HOUSE = "common practice for slabs"
_UNDER_FACE = 6.35


def across_stiffness(board: Board) -> Worked:
    """E_T in MPa across the grain: 0.080 E white ash, 0.055 E western redcedar, 0.089 E otherwise. Raises
    OutsideRulebook where the species has no published stiffness."""
    along = published(board, board.elastic_modulus, "stiffness")
    share = _ACROSS.get(board.name, _STIFFEST)
    return Worked(
        "E_T", "modulus of elasticity across the grain", "k_T * E",
        (Number("k_T", share, ""), Number("E", along, "MPa")), share * along, "MPa",
        "Wood Handbook, Table 5-1, from memory",
    )  # fmt: skip


def restraint_stress(stiffness: Given, coefficient: Given, change: Given) -> Worked:
    """Stress in MPa across the grain when a change of moisture of `change` % is kept from moving the board: E_T C dM.

    To be compared with the board's mean strength across the grain: above it the board splits. Elastic, so wood that
    creeps bears a slow change better than this says.
    """
    modulus, swell = positive("the stiffness", stiffness), positive("the coefficient of movement", coefficient)
    value = modulus * swell * not_negative("the change of moisture", change)
    return Worked(
        "f_r", "stress of a board kept from moving", "E_T * C * dM",
        (number("E_T", stiffness, "MPa"), number("C", coefficient, ""), number("dM", change, "%")), value, "MPa",
        "elasticity; derived here", steps=steps(stiffness, coefficient, change),
    )  # fmt: skip


def splitting_strength(board: Board) -> Worked:
    """Mean strength across the grain in tension at 12 %, MPa: an average of clear wood, at which half the boards have
    split. Raises OutsideRulebook where none is published."""
    value = published(board, board.tension_across, "strength across the grain in tension")
    return Worked(
        "t_p", "mean tension across the grain that clear wood bears", "t_p", (Number("t_p", value, "MPa"),), value,
        "MPa", board.source, caution="An average, no design value.",
    )  # fmt: skip


def deepest_bite(thickness: Given) -> Worked:
    """How far a screw may run into a board from below, mm: to 1/4 in. under the top. Raises NotPossible for a board
    that is no thicker than that."""
    board = require_thickness(thickness)
    if board <= _UNDER_FACE:
        raise NotPossible(f"a board of {board:g} mm leaves no wood for a screw under its face")
    return Worked(
        "p_max", "deepest bite under the face", "t - d_f",
        (number("t", thickness, "mm"), Number("d_f", _UNDER_FACE, "mm")), board - _UNDER_FACE, "mm", _HOUSE,
        steps=steps(thickness),
    )  # fmt: skip


def slab_end_distance(diameter: Given) -> Worked:
    """Least distance of a screw from the end of a slab, 7 D, mm; with a pilot always."""
    return _diameters(diameter, 7, "least distance from the end of the slab")


def slab_edge_distance(diameter: Given) -> Worked:
    """Least distance of a screw from the edge of a slab, 4 D, mm; with a pilot always."""
    return _diameters(diameter, 4, "least distance from the edge of the slab")


def _diameters(diameter: Given, times: int, words: str) -> Worked:
    positive("the screw's diameter", diameter)
    return Worked(
        "a", words, f"{times} * D", (number("D", diameter, "mm"),), times * si(diameter), "mm", _HOUSE,
        steps=steps(diameter),
    )  # fmt: skip
