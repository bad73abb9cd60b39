"""One call of every public calculation about panels that move and about sealant, at several places of its range."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import panel_movement as moves
from plumbrule.mechanics import sealant

JOINT_CALLS: dict[str, Callable[[], Any]] = {
    "thermal_strain": lambda: [moves.thermal_strain(1.5e-4, warm, 15.0) for warm in (15.0, 25.0, 40.0)],
    "humidity_swelling": lambda: moves.humidity_swelling(0.33, 90.0, 50.0, "a standard"),
    "humidity_strain": lambda: [
        moves.humidity_strain(7.2e-6, 60.0, 40.0, "a glossary"),
        moves.humidity_strain(moves.humidity_swelling(0.33, 90.0, 50.0, "a standard"), 60.0, 40.0, "a standard"),
    ],
    "wood_strain": lambda: moves.wood_strain(0.00369, 9.8, 6.5, "a handbook"),
    "strain": lambda: moves.strain(moves.thermal_strain(5.8e-5, 25.0, 15.0), 0.00165),
    "growth": lambda: [moves.growth(4318.0, part) for part in (0.0, 6.7e-4)],
    "edge_movement": lambda: [
        moves.edge_movement(4318.0, 1219.2, 6.7e-4, joints, joint)
        for joints, joint in ((0.0, 0.0), (3.0, 0.2), (3.0, 2.0))
    ],
    "joint_width": lambda: [sealant.joint_width(1.44, 25.0, late) for late in (0.0, 3.175)],
    "movement_share": lambda: [sealant.movement_share(1.44, wide) for wide in (3.0, 6.35)],
    "usual_depth": lambda: [sealant.usual_depth(wide) for wide in (6.35, 16.0, 40.0)],
    "bead_depth": lambda: sealant.bead_depth(9.525, 1.5875, 4.7625),
    "bead_volume": lambda: [sealant.bead_volume(long, 6.35, 6.5) for long in (0.0, 13_875.0)],
    "fillet_volume": lambda: sealant.fillet_volume(4318.0, 6.35, 6.35),
    "sloping_length": lambda: [sealant.sloping_length(1524.0, 2425.7, high) for high in (2425.7, 2420.0)],
}
