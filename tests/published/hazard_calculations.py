"""What each `calculation` word about lifting means: printed inputs in, a worked value out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from plumbrule.mechanics import lifting
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

Inputs = Mapping[str, Any]


def _inches(given: Inputs, *names: str) -> tuple[float, ...]:
    return tuple(to_si(given[f"{name}_in"], "in") for name in names)


HAZARD_CALCULATIONS: dict[str, Callable[[Inputs], Worked]] = {
    "recommended weight": lambda given: lifting.recommended_weight(*_inches(given, "H", "V", "D")),
    "mass of a board": lambda given: lifting.board_mass(given["G"], *_inches(given, "L", "b", "t")),
    "mass of an angle": lambda given: lifting.angle_mass(*_inches(given, "b_w", "b_s", "t", "L")),
    "mass of a carton": lambda given: lifting.block_mass(
        given["rho_pcf"], *_inches(given, "L", "b", "t"), count=given["n"]
    ),
}
