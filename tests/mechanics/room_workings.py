"""One call of every public function about boxes and about the room, at several places of its range."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import box, room

ROOM_CALLS: dict[str, Callable[[], Any]] = {
    "rim_behind": lambda: [box.rim_behind(back, 11.1125, depth) for back in (-3.2, 0.0, 3.2) for depth in (0.0, 12.7)],
    "plate_width": lambda: [
        *(box.plate_width("standard", gangs) for gangs in (1, 2, 3, 4)),
        box.plate_width("midsize", 1),
    ],
    "plate_height": lambda: [box.plate_height(name, 1) for name in ("standard", "midsize")],
    "cover_lap": lambda: [
        box.cover_lap(plate, 57.15, 1.5875) for plate in (60.0, 69.85, box.plate_width("standard", 1))
    ],
    "device_screw": lambda: [box.device_screw(15.875, behind) for behind in (-1.6, 0.0, 3.2)],
    "turned_too_far": lambda: [room.turned_too_far(turns) for turns in ([90, 90, 90, 88], [120, 120, 120])],
    "closing_gap": lambda: [
        room.closing_gap([3000, 2000, last, 2000], [90, 90, 90, 90]) for last in (3000.0, 3012.7, 2950.0)
    ],
    "gap_change": lambda: [room.gap_change(431.8, corner) for corner in (45.0, 89.0, 90.0, 91.5)],
    "niche_narrows": lambda: [room.niche_narrows(446.1, left, 91.0) for left in (88.0, 89.0, 90.0)],
}
