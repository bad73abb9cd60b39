"""One call of every public calculation about how much is bought, at several places of its range."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import quantities

QUANTITY_CALLS: dict[str, Callable[[], Any]] = {
    "surface": lambda: quantities.surface(1510.0, 446.0, 50.8),
    "coated": lambda: [quantities.coated(1510.0, 446.0, 50.8, *coats) for coats in ((3, 3, 3), (2, 0, 1), (0, 0, 0))],
    "coats_area": lambda: [quantities.coats_area(3.7e6, coats) for coats in (1, 2)],
    "coats_volume": lambda: [
        quantities.coats_volume(quantities.coats_area(3.7e6, 2), name) for name in ("hard-wax oil", "paint")
    ],
    "fill_volume": lambda: quantities.fill_volume(250.0, 3.0, 25.0),
    "glue_volume": lambda: [
        quantities.glue_volume(3.4e6, 1.6), quantities.glue_volume(3.4e6, 3.0, 6.0, 50.0),
        quantities.glue_volume(0.0, 3.0, 50.0, 50.0),
    ],
    "dabs_volume": lambda: quantities.dabs_volume(3.4e6, 6.0, 50.0, 300.0),
    "discs": lambda: [quantities.discs(grit, 1.4e6, walls) for grit in (80, 120) for walls in (0.0, 5.8e6)],
    "strips": lambda: quantities.strips(3.4e6, 100.0),
    "legs": lambda: quantities.legs(88.9, 63.5, 1511.3),
    "total": lambda: [
        quantities.total("V", "all of it", "mm³", parts)
        for parts in ([], [2.0e5], [quantities.glue_volume(3.4e6, 1.6), 4.0e5])
    ],
}  # fmt: skip
