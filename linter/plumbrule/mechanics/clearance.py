"""Holes that a screw is meant to pass through, by the published fits and by the wood screw rule."""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.table_rows import Clearance
from plumbrule.mechanics.worked import NotPossible, Number, Worked

Fit = Literal["close", "normal", "loose"]


def clearance_hole(row: Clearance, fit: Fit) -> Worked:
    """The drill for a fit in mm. The metric standard calls the same three fine, medium and coarse."""
    if fit not in ("close", "normal", "loose"):
        raise NotPossible(f"{fit} is not a fit: close, normal or loose")
    value = {"close": row.close, "normal": row.normal, "loose": row.loose}[fit]
    return Worked(
        "d_c", f"{fit} clearance hole for {row.size}", "d_c", (number("d_c", value, "mm"),), value, "mm", row.source
    )


def wood_screw_rule_hole(gauge: int) -> Worked:
    """Shank clearance hole of a wood screw, (n + 3)/64 in., for its number 0 to 24. It is tighter than a close fit."""
    _gauge(gauge)
    value = (gauge + 3) / 64
    return Worked(
        "d_c", f"shank hole for No. {gauge}", "(n + 3) / 64", (Number("n", float(gauge), ""),), value, "in",
        "cabinet-making practice: number plus three, in sixty-fourths of an inch", published_units=True,
    )  # fmt: skip


def gauge_diameter(gauge: int) -> Worked:
    """Nominal diameter of a screw number 0 to 24, 0.060 + 0.013 n in."""
    _gauge(gauge)
    return Worked(
        "D", f"diameter of No. {gauge}", "0.060 + 0.013 * n", (Number("n", float(gauge), ""),), 0.060 + 0.013 * gauge,
        "in", "ASME B18.6.1 series, from memory", published_units=True,
    )  # fmt: skip


def hole_after_coat(hole: Given, coat: Given) -> Worked:
    """What a coat leaves of a hole, d_h - 2 c, mm; `coat` is the film on one face. Raises NotPossible when it closes
    the hole."""
    value = positive("the hole", hole) - 2 * not_negative("the coat", coat)
    if value <= 0:
        raise NotPossible("the coat closes the hole")
    return Worked(
        "d_h", "hole after its coat", "d_0 - 2 * c", (number("d_0", hole, "mm"), number("c", coat, "mm")), value, "mm",
        "geometry", steps=steps(hole, coat),
    )  # fmt: skip


def _gauge(gauge: int) -> None:
    if not 0 <= gauge <= 24:
        raise NotPossible(f"screw numbers run from 0 to 24, not {gauge}")
