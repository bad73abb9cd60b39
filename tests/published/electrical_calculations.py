"""What each `calculation` word about boxes and plates means: printed inputs in, a worked value out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from plumbrule.mechanics import box
from plumbrule.mechanics.worked import Worked

Inputs = Mapping[str, Any]
INCH = 25.4


def _mm(given: Inputs, *names: str) -> list[float]:
    return [given[f"{name}_in"] * INCH for name in names]


ELECTRICAL_CALCULATIONS: dict[str, Callable[[Inputs], Worked]] = {
    "width of a named plate": lambda given: box.plate_width(given["name"], given["gangs"]),
    "height of a named plate": lambda given: box.plate_height(given["name"], given["gangs"]),
    "rim behind the face": lambda given: box.rim_behind(*_mm(given, "s", "f", "e")),
    "lap of a plate": lambda given: box.cover_lap(*_mm(given, "P", "b", "c")),
    "device screw": lambda given: box.device_screw(*_mm(given, "e", "B")),
}
