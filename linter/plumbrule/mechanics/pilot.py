"""The lead holes that are published for lag and wood screws, as a smallest and a largest drill."""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.bearing_wood import require_gravity
from plumbrule.mechanics.given import Given, number, steps
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import Worked

_LAG = "AWC NDS 2018, 12.1.4.2; which range goes with which wood is from memory"
_SIDEWAYS = "AWC NDS 2018, 12.1.5.3, from memory"
_PULLED = (
    "AWC NDS 2018, 12.1.5.2, from memory; Wood Handbook ch. 8: about 70 % of the root in softwood, 90 % in hardwood"
)
_LIGHT, _DENSE = 0.5, 0.6
_THREE_EIGHTHS = 9.525
_TIE = 1e-9


class PilotRange(NamedTuple):
    """The smallest and the largest published lead hole, mm, and whether the standard asks for one at all.

    Drills come in steps of 1/64 in.; whoever judges allows one step, since the rules say "about".
    """

    least: Worked
    most: Worked
    required: bool


def thread_pilot(fastener: Fastener, gravity: Given, *, sideways: bool = True) -> PilotRange:
    """Lead hole for the threaded part, by specific gravity 0.31 to 0.73; `sideways` when the screw carries side load.

    Lag screw: 40 to 70 % of D up to G 0.50, 60 to 75 % up to 0.60, 65 to 85 % above. Wood screw: from the hole for
    withdrawal (70 % of the root, 90 % above G 0.60) to that for side load (7/8 of the root, all of it above 0.60).
    Not required for a wood screw, nor for a lag screw up to 3/8 in. that is only pulled, in wood up to G 0.50.
    Raises OutsideRulebook for lighter or heavier wood.
    """
    density = require_gravity(gravity)
    light, dense = density <= _LIGHT + _TIE, density > _DENSE + _TIE
    if fastener.kind == "lag screw":
        low, high = (0.40, 0.70) if light else (0.65, 0.85) if dense else (0.60, 0.75)
        required = sideways or not light or fastener.diameter > _THREE_EIGHTHS + _TIE
        return PilotRange(
            _hole("least lead hole for the thread", low, "D", fastener.diameter, _LAG, gravity),
            _hole("largest lead hole for the thread", high, "D", fastener.diameter, _LAG, gravity),
            required,
        )
    low, high = (0.90, 1.0) if dense else (0.70, 0.875)
    return PilotRange(
        _hole("least lead hole for the thread", low, "D_r", fastener.root_diameter, _PULLED, gravity),
        _hole("largest lead hole for the thread", high, "D_r", fastener.root_diameter, _SIDEWAYS, gravity),
        sideways or not light,
    )


def shank_pilot(fastener: Fastener, gravity: Given) -> PilotRange:
    """Lead hole for the smooth part. Lag screw: the shank's own diameter. Wood screw: 7/8 of it to all of it, and
    all of it above G 0.60. Required for a lag screw and in dense wood."""
    dense = require_gravity(gravity) > _DENSE + _TIE
    lag = fastener.kind == "lag screw"
    source = _LAG if lag else _SIDEWAYS
    low = 1.0 if lag or dense else 0.875
    return PilotRange(
        _hole("least lead hole for the smooth part", low, "D", fastener.diameter, source, gravity),
        _hole("largest lead hole for the smooth part", 1.0, "D", fastener.diameter, source, gravity),
        lag or dense,
    )


def _hole(words: str, share: float, symbol: str, diameter: float, source: str, gravity: Given) -> Worked:
    return Worked(
        "d_pilot", words, f"{share} * {symbol}", (number(symbol, diameter, "mm"),), share * diameter, "mm", source,
        steps=steps(gravity),
    )  # fmt: skip
