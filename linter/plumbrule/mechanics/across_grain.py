"""Bending across the grain of a board held at its back, where it would split along a line. No standard allows tension
across the grain to be relied on."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import Worked


def cantilever_across_moment(load: Given, arm: Given, effective_length: Given) -> Worked:
    """Moment per width in N across the grain of a board held at its back, under `load` N standing `arm` mm in front
    of the leg's tip and spread over `effective_length` mm of it."""
    force, lever = not_negative("the load", load), not_negative("the arm", arm)
    value = force * lever / positive("the effective length", effective_length)
    return Worked(
        "m_y", "moment per width across the grain", "P * a / L_e",
        (number("P", load, "N"), number("a", arm, "mm"), number("L_e", effective_length, "mm")), value, "N",
        "statics; the standards give no strength for it", steps=steps(load, arm, effective_length),
    )  # fmt: skip
