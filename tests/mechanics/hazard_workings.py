"""One call of every public function about lifting, at several places of its range."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import lifting

HAZARD_CALLS: dict[str, Callable[[], Any]] = {
    "board_mass": lambda: lifting.board_mass(0.6, 1500.0, 430.0, 44.0),
    "block_mass": lambda: [lifting.block_mass(35.0, 1219.2, 177.8, 9.525, count) for count in (1.0, 4.0)],
    "angle_mass": lambda: lifting.angle_mass(88.9, 63.5, 6.35, 1500.0),
    "each_lifts": lambda: [
        lifting.each_lifts(mass, 2) for mass in (20.0, lifting.angle_mass(88.9, 63.5, 6.35, 1500.0))
    ],
    "reach_to_hands": lambda: lifting.reach_to_hands(430.0),
    "recommended_weight": lambda: [
        lifting.recommended_weight(reach, height, travel)
        for reach, height, travel in (
            (200.0, 762.0, 100.0),
            (lifting.reach_to_hands(430.0), 400.0, 400.0),
            (400.0, 1700.0, 1700.0),
            (700.0, 762.0, 100.0),
            (300.0, 1800.0, 100.0),
        )
    ],
    "wall_area": lambda: lifting.wall_area(4318.0, 2590.8, 2584.45),
}
