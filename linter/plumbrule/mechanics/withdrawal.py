"""What it takes to pull a screw out of side grain, and what the screw itself takes."""

from __future__ import annotations

from math import pi

from plumbrule.mechanics.bearing_wood import require_gravity
from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import from_si, to_si

_LAG = "AWC NDS 2018, 12.2.1.1 eq. 12.2-1"
_SCREW = "AWC NDS 2018, 12.2.2.1 eq. 12.2-2"
_NAIL = "AWC NDS 2018, 12.2.3.1 eq. 12.2-3"
# Tensile stress of an unmarked lag or wood screw, from memory: low-carbon steel of 60 ksi.
SCREW_ULTIMATE = to_si(60.0, "ksi")
# No. 6 to No. 24 and 1/4 to 1-1/4 in. are the printed ranges.
_SCREW_RANGE = (to_si(0.138, "in"), to_si(0.372, "in"))
_LAG_RANGE = (to_si(0.25, "in"), to_si(1.25, "in"))
_SAME = 0.01


def withdrawal_per_length(kind: str, gravity: Given, diameter: Given) -> Worked:
    """Reference withdrawal W in lbf per inch of thread in side grain, by **nominal** diameter.

    Lag screw 1800 G^1.5 D^0.75 (1/4 to 1-1/4 in.), wood screw 2850 G^2 D (No. 6 to No. 24), G 0.31 to 0.73.
    `diameter` in mm. Raises OutsideRulebook for other kinds, sizes and woods.
    """
    density = require_gravity(gravity)
    inches = from_si(positive("the screw's diameter", diameter), "in")
    if kind == "lag screw":
        _in_range(diameter, _LAG_RANGE)
        return _per_length("1800 * G^1.5 * D^0.75", 1800 * density**1.5 * inches**0.75, gravity, diameter, _LAG)
    if kind == "wood screw":
        _in_range(diameter, _SCREW_RANGE)
        return _per_length("2850 * G^2 * D", 2850 * density**2 * inches, gravity, diameter, _SCREW)
    raise outside("other screw")


def nail_withdrawal_per_length(gravity: Given, diameter: Given) -> Worked:
    """Reference withdrawal W in lbf per inch of a plain nail in side grain, 1380 G^2.5 D; `diameter` in mm."""
    density = require_gravity(gravity)
    inches = from_si(positive("the nail's diameter", diameter), "in")
    return _per_length("1380 * G^2.5 * D", 1380 * density**2.5 * inches, gravity, diameter, _NAIL)


def withdrawal(kind: str, gravity: Given, diameter: Given, thread_in_wood: Given) -> Worked:
    """Reference withdrawal W p_t in N of one screw, before any factor. `diameter`, `thread_in_wood` in mm; thread in
    lining, steel or tip is no thread in wood. Ranges and errors as `withdrawal_per_length`."""
    per_length = withdrawal_per_length(kind, gravity, diameter)
    thread = not_negative("the thread in the wood", thread_in_wood)
    return Worked(
        "W_p", "pull that draws the screw out of the wood", "W * p_t",
        (number("W", per_length, "N/mm"), number("p_t", thread_in_wood, "mm")), si(per_length) * thread, "N",
        "AWC NDS 2018, 12.2.1.2 and 12.2.2.2", steps=(per_length, *steps(thread_in_wood)),
    )  # fmt: skip


def root_tension(root_diameter: Given, ultimate: Given = SCREW_ULTIMATE) -> Worked:
    """Allowable tension 0.375 Fu A_root in N of the screw's own root (0.75 Fu over 2.00). `root_diameter` in mm,
    `ultimate` in MPa; 60 ksi, from memory, for an unmarked screw."""
    diameter = positive("the root diameter", root_diameter)
    value = 0.375 * positive("the tensile stress", ultimate) * pi * diameter**2 / 4
    return Worked(
        "T_r", "pull the screw's own root may carry", "0.375 * F_u * pi * D_r^2 / 4",
        (number("F_u", ultimate, "MPa"), number("D_r", root_diameter, "mm")), value, "N",
        "ANSI/AISC 360-22 J3.7 form; NDS 2018 12.2.1.4 asks for the check and gives no strength",
        caution="60 ksi for an unmarked screw is from memory.", steps=steps(root_diameter, ultimate),
    )  # fmt: skip


def pull_capacity(withdrawal: Given, root_tension: Given) -> Worked:
    """The pull in N that one screw may carry: the lower of withdrawal (its factors in) and root tension."""
    value = min(not_negative("the withdrawal", withdrawal), not_negative("the root tension", root_tension))
    return Worked(
        "T_a", "pull one screw may carry", "min(W_p, T_r)",
        (number("W_p", withdrawal, "N"), number("T_r", root_tension, "N")), value, "N",
        "AWC NDS 2018, 12.2.1.4 and 12.2.2.5", steps=steps(withdrawal, root_tension),
    )  # fmt: skip


def _per_length(formula: str, value: float, gravity: Given, diameter: Given, source: str) -> Worked:
    return Worked(
        "W", "withdrawal per length of thread", formula, (number("G", gravity, ""), number("D", diameter, "in")),
        value, "lbf/in", source, published_units=True, steps=steps(gravity, diameter),
    )  # fmt: skip


def _in_range(diameter: Given, limits: tuple[float, float]) -> None:
    if not limits[0] - _SAME <= si(diameter) <= limits[1] + _SAME:
        raise outside("screw size")
