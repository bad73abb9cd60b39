"""What each `calculation` word about abrasives, adhesive and fills means: printed inputs in, a worked value out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from plumbrule.mechanics import bonding, coats, grit, tables
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

Inputs = Mapping[str, Any]
Found = Worked | float

TABLES = tables.load()


def inches(value: float) -> float:
    return to_si(value, "in")


def _grain(given: Inputs) -> float:
    return grit.grain(TABLES, given["number"], given["iso"])


def _step(given: Inputs) -> Worked:
    return grit.step(grit.grain(TABLES, given["from"], iso=True), grit.grain(TABLES, given["to"], iso=True))


def _tape(given: Inputs) -> float:
    """The area in mm² over which a weight comes to pull with the lasting shear of the tape."""
    return bonding.bond_shear(to_si(given["m_lb"], "lb"), 1.0).value / to_si(given["psi"], "psi")


def _hollow(given: Inputs) -> Worked:
    return bonding.gap_under_panel(inches(given["gap_in"]), inches(given["edge_in"]), inches(given["panel_in"]))


def _shear(given: Inputs) -> Worked:
    return bonding.bond_shear(to_si(given["m_lb"], "lb"), to_si(given["area_in2"], "in²"))


def _strips(given: Inputs) -> Worked:
    face = to_si(given["face_in2"], "in²")
    return bonding.bonded_area(face, inches(given["width_in"]), inches(given["spacing_in"]))


def _pour(given: Inputs) -> Worked:
    return coats.pour_depth(inches(given["depth_in"]), given["pours"])


FINISHING_CALCULATIONS: Mapping[str, Callable[[Inputs], Found]] = {
    "grain": _grain,
    "grit step": _step,
    "tape for a weight": _tape,
    "hollow behind a panel": _hollow,
    "shear of a bond": _shear,
    "area of strips": _strips,
    "depth of a pour": _pour,
}
