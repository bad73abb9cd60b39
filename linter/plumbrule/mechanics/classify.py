"""Which word of `OUTSIDE_WORDS` a screw gets: each question alone, and the first that puts it outside.

Nothing here guesses: whoever does not know a figure does not ask its question.
"""

from __future__ import annotations

from plumbrule.mechanics.bearing_wood import require_gravity
from plumbrule.mechanics.factors import loaded_edge
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.lining import require_gap
from plumbrule.mechanics.outside import INSIDE, REASONS, screw_kind_word, support_word
from plumbrule.mechanics.screw_length import require_penetration
from plumbrule.mechanics.tables import Tables
from plumbrule.mechanics.worked import OutsideRulebook

__all__ = [
    "across_grain_word", "bite_word", "cover_word", "drop_word", "end_grain_word", "first", "gap_word",
    "screw_kind_word", "size_word", "support_word", "wood_word",
]  # fmt: skip

_BY_REASON = {reason: word for word, reason in REASONS.items()}


def first(*words: str) -> str:
    """The first word that is not `inside`; `inside` when all are."""
    return next((word for word in words if word != INSIDE), INSIDE)


def size_word(tables: Tables, kind: str, diameter: float) -> str:
    """Whether a size of a kind is in the tables: `inside`, `other screw` or `screw size`. `diameter` in mm."""
    try:
        tables.fastener(kind, diameter)
    except OutsideRulebook as outside:
        return _BY_REASON[outside.reason]
    return INSIDE


def wood_word(gravity: Given) -> str:
    """`light wood` under G 0.31, `heavy wood` over 0.73."""
    try:
        require_gravity(gravity)
    except OutsideRulebook as outside:
        return _BY_REASON[outside.reason]
    return INSIDE


def gap_word(gap: Given, penetration: Given) -> str:
    """`wide gap` when the lining left between is over 1-1/4 in. or more than the bite, mm."""
    try:
        require_gap(gap, penetration)
    except OutsideRulebook as outside:
        return _BY_REASON[outside.reason]
    return INSIDE


def bite_word(kind: str, diameter: Given, penetration: Given, tip: Given) -> str:
    """`short bite` when it is under 4 D without tip (lag screw) or 6 D with it (wood screw), mm."""
    try:
        require_penetration(kind, diameter, penetration, tip)
    except OutsideRulebook as outside:
        return _BY_REASON[outside.reason]
    return INSIDE


def cover_word(cover_to_axis: Given) -> str:
    """`off the stud` when the worst cover to the axis is below zero, mm, at the face or at the tip."""
    return "off the stud" if si(cover_to_axis) < 0 else INSIDE


def across_grain_word(diameter: Given, edge: Given, grain_angle: float) -> str:
    """`across the grain` for 1/4 in. and up, loaded across the grain with less than 4 D to the loaded edge, mm."""
    try:
        loaded_edge(diameter, edge, grain_angle)
    except OutsideRulebook as outside:
        return _BY_REASON[outside.reason]
    return INSIDE


def end_grain_word(*, into_end_grain: bool, loaded_in_withdrawal: bool) -> str:
    """`end grain` for a screw that a seat hangs on and that is driven along the grain."""
    return "end grain" if into_end_grain and loaded_in_withdrawal else INSIDE


def drop_word(*, dropped: bool) -> str:
    """`drop` for a load that falls from a height."""
    return "drop" if dropped else INSIDE
