"""How stiff a board is, how it creeps, how far it may sag, and how it feels under a person."""

from __future__ import annotations

from math import pi, sqrt

from plumbrule.mechanics.board_wood import published
from plumbrule.mechanics.factors import Service
from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.lumber_factors import WET_STIFFNESS
from plumbrule.mechanics.table_rows import Board
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_GRAVITY = 9806.65
_MOST_SEAT_DROP = 9.525


def board_modulus(board: Board, service: Service = "dry") -> Worked:
    """E in MPa along the grain: the average of clear wood at 12 %, 0.9 of it where the wood stays wet.

    The 10 % that the handbook allows for the shear in its own test is not taken. Single boards scatter by 22 %, so no
    drop means more than two figures. Raises OutsideRulebook where none is published, NotPossible for another service.
    """
    if service not in ("dry", "damp", "fixed wet, dry later"):
        raise NotPossible(f"{service} is no service")
    average = published(board, board.elastic_modulus, "stiffness")
    factor = 1.0 if service == "dry" else WET_STIFFNESS
    return Worked(
        "E", f"modulus of elasticity along the grain, {service}", "E_12 * C_M",
        (Number("E_12", average, "MPa"), Number("C_M", factor, "")), average * factor, "MPa",
        f"{board.source}; AWC NDS Supplement for wet service, from memory",
        caution="Boards of one species scatter by 22 % about this average: trust two figures of a drop, no more.",
    )  # fmt: skip


def shear_free_modulus(modulus: Given) -> Worked:
    """E corrected for the shear of the handbook's own test, 1.10 E, MPa. For comparison only: the drops here take the
    printed value."""
    value = 1.10 * positive("the modulus", modulus)
    return Worked(
        "E_0", "modulus without the shear of the test", "1.10 * E", (number("E", modulus, "MPa"),), value, "MPa",
        "Wood Handbook, FPL-GTR-282, Table 5-3b footnote c", steps=steps(modulus),
    )  # fmt: skip


def creep_factor(service: Service, *, stamped_dry: bool) -> Worked:
    """K_cr on what lies on a board for good, the instant drop included: 2.0 for an ungraded slab, for wood fixed wet
    and in a damp room; 1.5 only for lumber stamped as dry, in dry service. Raises NotPossible for another service."""
    if service not in ("dry", "damp", "fixed wet, dry later"):
        raise NotPossible(f"{service} is no service")
    value = 1.5 if stamped_dry and service == "dry" else 2.0
    return Worked(
        "K_cr", "creep under a lasting load", "K_cr", (Number("K_cr", value, ""),), value, "", "AWC NDS 2018, 3.5.2",
        caution="Measured creep scatters from nothing to twice the instant drop.",
    )  # fmt: skip


def long_term_drop(lasting: Given, passing: Given, creep: Given) -> Worked:
    """The drop in mm after years: K_cr times the instant drop of what stays (weight, goods), and once that of what
    comes and goes. Raises NotPossible for a creep factor under 1."""
    stays, goes = not_negative("the lasting drop", lasting), not_negative("the passing drop", passing)
    factor = positive("the creep factor", creep)
    if factor < 1:
        raise NotPossible(f"the creep factor is {factor:g}; it includes the instant drop, so it is at least 1")
    return Worked(
        "d_T", "drop after years", "K_cr * d_LT + d_ST",
        (number("K_cr", creep, ""), number("d_LT", lasting, "mm"), number("d_ST", passing, "mm")),
        factor * stays + goes, "mm", "AWC NDS 2018, 3.5.2 eq. 3.5-1", steps=steps(creep, lasting, passing),
    )  # fmt: skip


def seat_drop_limit(span: Given) -> Worked:
    """Most drop of a seat's front edge under a person, supports included: L/240, at most 3/8 in. `span` mm."""
    length = positive("the span", span)
    return Worked(
        "d_lim", "most drop of a seat's front edge under a person", "min(L / 240, d_most)",
        (number("L", span, "mm"), Number("d_most", _MOST_SEAT_DROP, "mm")), min(length / 240, _MOST_SEAT_DROP), "mm",
        "L/240 as for other structural members, IRC Table R301.7; 3/8 in is common practice", steps=steps(span),
    )  # fmt: skip


def full_seat_drop_limit(span: Given) -> Worked:
    """Most drop under a full seat, L/240. `span` mm."""
    return _share(span, 240, "most drop under a full seat", "as for other structural members, IRC Table R301.7")


def shelf_sag_limit(span: Given) -> Worked:
    """Most sag of a loaded shelf after years, L/144. `span` mm; of a shelf held at its back alone twice its depth."""
    return _share(span, 144, "most sag of a loaded shelf", "Architectural Woodwork Standards, shelf deflection")


def visible_sag(span: Given) -> Worked:
    """The sag that the eye begins to see, 1/32 in. a foot, L/384. `span` mm."""
    return _share(span, 384, "sag that the eye sees", "1/32 in per running foot, common practice")


def cantilever_span(front: Given) -> Worked:
    """The L of a sag limit for a board held at its back alone: twice the way from the wall to the front, mm."""
    value = 2 * positive("the way to the front edge", front)
    return Worked(
        "L", "span that counts for a board held at its back", "2 * y_f", (number("y_f", front, "mm"),), value, "mm",
        "IRC Table R301.7, note on cantilevers", steps=steps(front),
    )  # fmt: skip


def feel(drop: Given) -> Worked:
    """How often a second (Hz) the board swings under a person, sqrt(g/d)/(2 pi), by the drop `drop` mm under them.

    Under 5 it feels soft. Worked for a weight on a spring, so the board's own weight would lower it a little further.
    """
    value = sqrt(_GRAVITY / positive("the drop", drop)) / (2 * pi)
    return Worked(
        "f", "swings a second under the sitter", "sqrt(9806.65 / d) / (2 * pi)", (number("d", drop, "mm"),), value, "",
        "a weight on a spring; derived here", published_units=True, steps=steps(drop),
    )  # fmt: skip


def _share(span: Given, part: int, words: str, source: str) -> Worked:
    value = positive("the span", span) / part
    return Worked("d_lim", words, f"L / {part}", (number("L", span, "mm"),), value, "mm", source, steps=steps(span))
