"""A dimension that cannot be is refused by name, and never worked into a number."""

from __future__ import annotations

import importlib
import inspect
import math
import pkgutil
from collections.abc import Callable

import pytest
from workings import A36, LAG_14, TABLES

import plumbrule.mechanics
from plumbrule.mechanics import (
    bearing_wood,
    blocking,
    clearance,
    combined,
    countersink,
    edge,
    factors,
    head,
    hole,
    lateral,
    lining,
    reduction,
    screw_length,
    tolerance,
    withdrawal,
)
from plumbrule.mechanics.worked import NotPossible

GOOD = {
    "diameter": 6.35, "root_diameter": 4.39, "bending_yield": 480.0, "main_bearing": 32.0, "side_bearing": 600.0,
    "main_length": 58.0, "side_length": 3.2, "gap": 12.7, "grain_angle": 0.0,
}  # fmt: skip

REFUSED: dict[str, Callable[[], object]] = {
    "screw thicker than hole": lambda: tolerance.play(6.0, 6.35),
    "screw thicker than hole, ring": lambda: head.ring_worst(11.0, 6.35, 6.0),
    "negative error": lambda: tolerance.offset_at_face(0.0, found=-1.0, drilled=0.0, play=0.0),
    "not a number": lambda: tolerance.offset_at_face(math.nan, found=0.0, drilled=0.0, play=0.0),
    "endless": lambda: screw_length.penetration(math.inf, 3.0, 0.0),
    "lean of a bore": lambda: tolerance.lean(50.0, 45.0),
    "lean through the air": lambda: tolerance.lean(-3.0),
    "drift squared away": lambda: tolerance.offset_rss(0.0, found=1.0, drilled=1.0, play=0.0, drift=12.7),
    "no stud": lambda: tolerance.cover_to_axis(0.0, 1.0),
    "negative lining": lambda: screw_length.penetration(60.0, 3.0, -1.0),
    "all tip": lambda: screw_length.bearing_length(2.0, 5.0),
    "angle past square": lambda: bearing_wood.wood_bearing(0.42, 6.35, 91.0),
    "gravity of nothing": lambda: bearing_wood.wood_bearing(0.0, 6.35, 0.0),
    "thick screw as thin": lambda: bearing_wood.bearing_small(0.42, 6.35),
    "steel of no forming": lambda: bearing_wood.steel_bearing(400.0, "unknown"),
    "thin factor of a thick root": lambda: reduction.thin_factor(6.35),
    "root wider than screw": lambda: reduction.reduction(4.8, 5.0, 0.0),
    "negative gap": lambda: lining.require_gap(-1.0, 60.0),
    "packer thicker than lining": lambda: lining.packed_gap(
        12.7, lining.Packer(15.0, covers_stud=True, fixed_to_stud=True, bearing=20.0)
    ),
    "negative thread": lambda: withdrawal.withdrawal("lag screw", 0.42, 6.35, -1.0),
    "duration nobody listed": lambda: factors.load_duration("a party"),  # type: ignore[arg-type]
    "service nobody listed": lambda: factors.wet_service("soaked", "lateral", 6.0),  # type: ignore[arg-type]
    "sauna": lambda: factors.warm_service(90.0, "dry"),
    "factor twice": lambda: factors.adjusted(
        withdrawal.root_tension(4.4), factors.load_duration("people"), factors.load_duration("permanent")
    ),
    "empty row": lambda: factors.group(6.35, 0),
    "push as pull": lambda: combined.combined(side_force=1.0, pull=-1.0, side_capacity=1.0, pull_capacity=1.0),
    "no load": lambda: combined.combined(side_force=0.0, pull=0.0, side_capacity=1.0, pull_capacity=1.0),
    "no capacity": lambda: combined.combined(side_force=1.0, pull=0.0, side_capacity=0.0, pull_capacity=1.0),
    "head over 1/2 in": lambda: head.pull_through(0.42, 13.0, 19.0, "round"),
    "case of no table": lambda: edge.placement(6.0, "sideways", side="steel", prebored=True),  # type: ignore[arg-type]
    "place off the block": lambda: blocking.end_shares(100.0, 400.0, 368.0),
    "hole out of the edge": lambda: hole.clear_distance(3.0, 7.0),
    "holes run together": lambda: hole.clear_between(6.0, 7.0),
    "nothing left of the section": lambda: hole.net_area(20.0, 7.0, 3.0, 1),
    "nothing left of the strip": lambda: hole.net_strip_modulus(14.0, 7.0, 3.0, 2),
    "negative holes": lambda: hole.net_area(300.0, 7.0, 3.0, -1),
    "sink no wider than the screw": lambda: countersink.cone_height(4.0, 4.0, 82),
    "flat countersink": lambda: countersink.cone_height(8.0, 4.0, 180),
    "sink through the steel": lambda: countersink.bearing_thickness(3.0, 6.0),
    "fit nobody listed": lambda: clearance.clearance_hole(TABLES.clearance(6.35), "snug"),  # type: ignore[arg-type]
    "number 40 screw": lambda: clearance.gauge_diameter(40),
    "coat closes the hole": lambda: clearance.hole_after_coat(3.0, 1.5),
    "no steel": lambda: hole.bearing_strength(6.35, 0.0, A36),
    "no screw": lambda: screw_length.least_penetration("lag screw", -LAG_14.diameter),
    **{
        f"side strength, {name} {bad}": (lambda name=name, bad=bad: lateral.side_strength(**{**GOOD, name: bad}))
        for name in GOOD
        for bad in (-1.0, math.nan)
        if not (name == "grain_angle" and bad != bad)
    },
}


@pytest.mark.parametrize("case", REFUSED)
def test_refused(case: str) -> None:
    with pytest.raises(NotPossible) as refused:
        REFUSED[case]()
    assert len(str(refused.value)) > 15


def test_what_is_good_is_not_refused() -> None:
    assert lateral.side_strength(**GOOD).worked.value > 0


def test_every_public_function_says_what_it_is() -> None:
    """One sentence at least, and the unit where it takes a size."""
    for module in pkgutil.iter_modules(plumbrule.mechanics.__path__):
        part = importlib.import_module(f"plumbrule.mechanics.{module.name}")
        assert part.__doc__, module.name
        for name, function in inspect.getmembers(part, inspect.isfunction):
            if function.__module__ == part.__name__ and not name.startswith("_"):
                assert function.__doc__ and len(function.__doc__) > 40, f"{module.name}.{name}"
