"""What one piece of panel weighs, and how much adhesive is sure to lie on it wherever it is cut from its panel."""

from __future__ import annotations

import math
from typing import Literal

from plumbrule.mechanics.given import Given, number, si
from plumbrule.mechanics.worked import NotPossible, Worked

Covers = Literal["whole back", "strips", "beads", "dabs"]

_TIE = 1e-9


def sure_lines(length: float, width: float, spacing: float) -> float:
    """How many strips, beads or dabs `width` mm wide and `spacing` mm from centre to centre are sure to lie whole on a
    piece of this length, wherever on the panel it is cut. At least nothing; raises NotPossible for a size not above
    zero."""
    if not (length > 0 and width > 0 and spacing > 0):
        raise NotPossible("a length, width or spacing of adhesive is not above zero")
    return max(0.0, float(math.floor((length - width) / spacing + _TIE)))


def glued_area(area: float, length: float, covers: Covers, width: float = 0.0, spacing: float = 0.0) -> float:
    """Area in mm² of the back of a piece that adhesive is sure to hold. Strips and beads run across the length of the
    panel; dabs lie as far apart across it as along it, in one row at least."""
    if covers == "whole back":
        return area
    lines = sure_lines(length, width, spacing)
    tall = area / length
    if covers == "dabs":
        return lines * max(1.0, sure_lines(tall, width, spacing)) * width * width if tall >= width else 0.0
    return lines * width * tall


def weight(area: Given, thickness: Given, density: Given) -> Worked:
    """What a piece of panel weighs, kg, from its area in mm², thickness in mm and density in kg/mm³, without its
    adhesive."""
    value = si(area) * si(thickness) * si(density)
    return Worked(
        "m", "weight of the piece", "A * t * rho",
        (number("A", area, "mm²"), number("t", thickness, "mm"), number("rho", density, "kg/mm³")),
        value, "kg", "volume times density",
    )  # fmt: skip
