"""A board or joist lying free on two supports: section, bending, shear and sag. A third edge counts for nothing."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import Worked

_STATICS = "statics of a beam on two supports"
_SECTION = "geometry of a rectangle"


def rectangle_modulus(width: Given, thickness: Given) -> Worked:
    """Section modulus b t²/6 in mm³, `thickness` the way the load points. mm."""
    b, t = positive("the width", width), positive("the thickness", thickness)
    return Worked(
        "S", "section modulus", "b * t^2 / 6", (number("b", width, "mm"), number("t", thickness, "mm")), b * t**2 / 6,
        "mm³", _SECTION, steps=steps(width, thickness),
    )  # fmt: skip


def rectangle_second_moment(width: Given, thickness: Given) -> Worked:
    """Second moment b t³/12 in mm⁴, `thickness` the way the load points. mm."""
    b, t = positive("the width", width), positive("the thickness", thickness)
    return Worked(
        "I", "second moment of the board", "b * t^3 / 12", (number("b", width, "mm"), number("t", thickness, "mm")),
        b * t**3 / 12, "mm⁴", _SECTION, steps=steps(width, thickness),
    )  # fmt: skip


def even_bending_stress(line_load: Given, span: Given, modulus: Given) -> Worked:
    """f_b in MPa at midspan, w L²/8 over S. `line_load` N/mm, `span` mm, `modulus` mm³."""
    w, length = not_negative("the load", line_load), positive("the span", span)
    value = w * length**2 / 8 / positive("the section modulus", modulus)
    return Worked(
        "f_b", "bending stress under an even load", "w * L^2 / 8 / S",
        (number("w", line_load, "N/mm"), number("L", span, "mm"), number("S", modulus, "mm³")), value, "MPa", _STATICS,
        steps=steps(line_load, span, modulus),
    )  # fmt: skip


def midspan_bending_stress(force: Given, span: Given, modulus: Given) -> Worked:
    """f_b in MPa under a load at midspan, P L/4 over S. `force` N, `span` mm, `modulus` mm³."""
    p, length = not_negative("the load", force), positive("the span", span)
    value = p * length / 4 / positive("the section modulus", modulus)
    return Worked(
        "f_b", "bending stress under a load at midspan", "P * L / 4 / S",
        (number("P", force, "N"), number("L", span, "mm"), number("S", modulus, "mm³")), value, "MPa", _STATICS,
        steps=steps(force, span, modulus),
    )  # fmt: skip


def rectangle_shear_stress(force: Given, width: Given, thickness: Given) -> Worked:
    """f_v in MPa along the grain, 1.5 V/(b t). `force` is the shear at the support, N; mm."""
    v = not_negative("the shear", force)
    value = 1.5 * v / (positive("the width", width) * positive("the thickness", thickness))
    return Worked(
        "f_v", "shear stress along the grain", "1.5 * V / (b * t)",
        (number("V", force, "N"), number("b", width, "mm"), number("t", thickness, "mm")), value, "MPa",
        "AWC NDS 2018, 3.4.2 eq. 3.4-2", steps=steps(force, width, thickness),
    )  # fmt: skip


def even_sag(line_load: Given, span: Given, stiffness: Given, second_moment: Given) -> Worked:
    """Instant sag in mm under an even load, 5 w L⁴/(384 E I). N/mm, mm, MPa, mm⁴."""
    w, length = not_negative("the load", line_load), positive("the span", span)
    rigid = positive("the modulus", stiffness) * positive("the second moment", second_moment)
    return Worked(
        "d", "sag under an even load", "5 * w * L^4 / (384 * E * I)",
        (number("w", line_load, "N/mm"), number("L", span, "mm"), number("E", stiffness, "MPa"),
         number("I", second_moment, "mm⁴")),
        5 * w * length**4 / (384 * rigid), "mm", _STATICS, steps=steps(line_load, span, stiffness, second_moment),
    )  # fmt: skip


def midspan_sag(force: Given, span: Given, stiffness: Given, second_moment: Given) -> Worked:
    """Instant sag in mm under a load at midspan, P L³/(48 E I). N, mm, MPa, mm⁴."""
    p, length = not_negative("the load", force), positive("the span", span)
    rigid = positive("the modulus", stiffness) * positive("the second moment", second_moment)
    return Worked(
        "d", "sag under a load at midspan", "P * L^3 / (48 * E * I)",
        (number("P", force, "N"), number("L", span, "mm"), number("E", stiffness, "MPa"),
         number("I", second_moment, "mm⁴")),
        p * length**3 / (48 * rigid), "mm", _STATICS, steps=steps(force, span, stiffness, second_moment),
    )  # fmt: skip
