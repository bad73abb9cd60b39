"""What an adhesive layer has to bridge and to carry: the hollow behind a stiff panel, and the panel's weight."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import NotPossible, Worked

_GRAVITY = 9.80665
_TIE = 1e-9


def gap_under_panel(gap: Given, straightedge: Given, panel_length: Given) -> Worked:
    """The hollow in mm behind a stiff panel `panel_length` mm long, on a wall that shows `gap` mm under a straightedge
    of `straightedge` mm.

    A panel no longer than the straightedge may lie over the whole hollow. A longer one sees more: a wall that curves
    evenly shows four times the gap over twice the length. Raises NotPossible for a negative gap or no length.
    """
    hollow, edge = not_negative("the gap", gap), positive("the straightedge", straightedge)
    panel = positive("the panel's length", panel_length)
    return Worked(
        "g_p", "hollow behind one panel", "g * max(1, L / S)^2",
        (number("g", gap, "mm"), number("L", panel_length, "mm"), number("S", straightedge, "mm")),
        hollow * max(1.0, panel / edge) ** 2, "mm", "an evenly curved wall; derived here",
        steps=steps(gap, straightedge, panel_length),
    )  # fmt: skip


def bonded_area(face: Given, width: Given | None = None, spacing: Given | None = None) -> Worked:
    """Adhesive in mm² on the back of a panel of `face` mm²: all of it, or strips `width` mm wide every `spacing` mm.

    Raises NotPossible for a strip wider than the strips are apart.
    """
    back = positive("the back of the panel", face)
    if width is None or spacing is None:
        return Worked(
            "A", "adhesive on the back of a panel", "A_f", (number("A_f", face, "mm²"),), back, "mm²", "definition",
            steps=steps(face),
        )  # fmt: skip
    strip, apart = positive("the width of a strip", width), positive("the distance from strip to strip", spacing)
    if strip > apart * (1 + _TIE):
        raise NotPossible(f"strips of {strip:g} mm cannot stand {apart:g} mm apart")
    return Worked(
        "A", "adhesive on the back of a panel", "A_f * b / s",
        (number("A_f", face, "mm²"), number("b", width, "mm"), number("s", spacing, "mm")), back * strip / apart,
        "mm²", "strips over the whole back", steps=steps(face, width, spacing),
    )  # fmt: skip


def bond_shear(mass: Given, area: Given) -> Worked:
    """What a panel of `mass` kg hanging down a wall asks of `area` mm² of adhesive, MPa. Raises NotPossible where there
    is no adhesive or a negative mass."""
    hung, stuck = not_negative("the mass", mass), positive("the adhesive", area)
    return Worked(
        "v", "pull of the panel's weight along its adhesive", "m * 9.80665 / A",
        (number("m", mass, "kg"), number("A", area, "mm²")), hung * _GRAVITY / stuck, "MPa", "statics",
        published_units=True, steps=steps(mass, area),
    )  # fmt: skip
