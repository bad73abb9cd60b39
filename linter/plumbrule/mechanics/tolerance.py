"""How far off its stud a screw can end up, and how much wood is then left beside it.

Errors are added, not averaged: a stud is found, a hole marked, a screw laid against one side of its hole and a pilot
leant by one pair of hands on one day, and the same mistake tends to repeat. All lengths in mm, all errors >= 0.
"""

from __future__ import annotations

from math import radians, tan

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Worked

_STATICS = "geometry: errors added at their worst"

# A stud that was reckoned from its neighbours instead of found may be out by this much more (house figure).
PITCH_DRIFT = 12.7
# How far from square a hand-held drill leans (house figure), degrees.
LEAN = 3.0


def play(hole: Given, diameter: Given) -> Worked:
    """Sideways play (d_h - D)/2 in mm of a screw of `diameter` in a hole, both mm.

    Raises NotPossible when the screw does not go into the hole: then nothing that follows has a meaning.
    """
    hole_size, screw_size = positive("the hole", hole), positive("the screw's diameter", diameter)
    if hole_size < screw_size:
        raise NotPossible(f"a screw of {screw_size:g} mm does not go through a hole of {hole_size:g} mm")
    return Worked(
        "d_p", "play of the screw in its hole, to one side", "(d_h - D) / 2",
        (number("d_h", hole, "mm"), number("D", diameter, "mm")), (hole_size - screw_size) / 2, "mm", _STATICS,
        steps=steps(hole, diameter),
    )  # fmt: skip


def offset_at_face(off_centre: Given, *, found: Given, drilled: Given, play: Given, drift: Given = 0.0) -> Worked:
    """Worst distance in mm between screw and stud centre at the stud's face.

    `off_centre` is how far the hole is drawn off the mark (either side); `found` how far the true centre may be from
    the mark; `drilled` the error of marking and drilling; `play` the screw's play in its hole; `drift` 0 for a stud
    that was found itself, `PITCH_DRIFT` for one reckoned from its neighbours. Raises NotPossible for a negative error.
    """
    drawn = abs(finite("the distance off the mark", off_centre))
    errors = {"d_f": found, "d_d": drilled, "d_p": play, "d_s": drift}
    total = drawn + sum(not_negative(f"the error {name}", error) for name, error in errors.items())
    return Worked(
        "e", "worst distance from the stud's centre at its face", "e_0 + d_f + d_d + d_p + d_s",
        (number("e_0", drawn, "mm"), *(number(name, error, "mm") for name, error in errors.items())),
        total, "mm", _STATICS, steps=steps(off_centre, found, drilled, play, drift),
    )  # fmt: skip


def lean(penetration: Given, angle: float = LEAN) -> Worked:
    """Sideways run p tan(angle) in mm of a pilot that leans by `angle` degrees (0 to 45) over `penetration` mm.

    A negative penetration (the screw does not reach the wood) raises NotPossible.
    """
    if not 0 <= angle < 45:
        raise NotPossible(f"a drill does not lean by {angle:g} degrees")
    depth = not_negative("the penetration", penetration)
    return Worked(
        "d_l", "lean of the pilot over its depth", "p * tan(a)",
        (number("p", penetration, "mm"), number("a", angle, "°")), depth * tan(radians(angle)), "mm",
        "geometry; three degrees for a drill held by hand is a house figure", steps=steps(penetration),
    )  # fmt: skip


def offset_at_tip(face: Given, lean: Given) -> Worked:
    """Worst distance in mm from the stud's centre at the screw's tip: that at the face and the lean together."""
    value = not_negative("the offset at the face", face) + not_negative("the lean", lean)
    return Worked(
        "e_tip", "worst distance from the stud's centre at the tip", "e + d_l",
        (number("e", face, "mm"), number("d_l", lean, "mm")), value, "mm", _STATICS, steps=steps(face, lean),
    )  # fmt: skip


def offset_rss(
    off_centre: Given, *, found: Given, drilled: Given, play: Given, lean: Given = 0.0, drift: Given = 0.0
) -> Worked:
    """The same with independent errors, e_0 + sqrt(sum d^2), mm. Only by a house's own choice, never for a rule
    that stops work.

    Raises NotPossible when `drift` is not 0: a pitch that drifts pushes every stud the same way, so it is not
    independent and may not be squared away.
    """
    if si(drift) != 0:
        raise NotPossible("errors of studs that were not found one by one are not independent: add them instead")
    drawn = abs(finite("the distance off the mark", off_centre))
    errors = {"d_f": found, "d_d": drilled, "d_p": play, "d_l": lean}
    squares = sum(not_negative(f"the error {name}", error) ** 2 for name, error in errors.items())
    return Worked(
        "e", "likely distance from the stud's centre", "e_0 + sqrt(d_f^2 + d_d^2 + d_p^2 + d_l^2)",
        (number("e_0", drawn, "mm"), *(number(name, error, "mm") for name, error in errors.items())),
        drawn + squares**0.5, "mm", "root of the sum of squares, independent errors",
        caution="Independent errors are assumed; the worst case is larger.",
        steps=steps(off_centre, found, drilled, play, lean),
    )  # fmt: skip


def cover_to_axis(stud_width: Given, offset: Given) -> Worked:
    """Wood in mm from the stud's nearer side to the screw's axis, w/2 - e. Below zero the screw misses the stud."""
    value = positive("the stud's width", stud_width) / 2 - not_negative("the offset", offset)
    return Worked(
        "c", "wood beside the screw's axis", "w / 2 - e",
        (number("w", stud_width, "mm"), number("e", offset, "mm")), value, "mm", "geometry",
        steps=steps(stud_width, offset),
    )  # fmt: skip


def cover_at_tip(stud_width: Given, offset: Given, diameter: Given) -> Worked:
    """Wood in mm left beside the screw's flank at its tip, w/2 - e_tip - D/2. Below zero the tip shows."""
    value = (
        positive("the stud's width", stud_width) / 2
        - not_negative("the offset at the tip", offset)
        - positive("the screw's diameter", diameter) / 2
    )
    return Worked(
        "c_tip", "wood left beside the screw at its tip", "w / 2 - e_tip - D / 2",
        (number("w", stud_width, "mm"), number("e_tip", offset, "mm"), number("D", diameter, "mm")), value, "mm",
        "geometry", steps=steps(stud_width, offset, diameter),
    )  # fmt: skip
