"""The one way round the bar to people on a back angle alone: every part of it holds a person, and one who drops."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.facts.desk import Desk, Missing
from plumbrule.facts.row_field import number_of, of_row
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook

_CASES = ("one person", "dropping onto the seat")
_TIE = 1e-9
# What is used, and what there is of it; None where the use is a share already.
_PAIRS: dict[str, tuple[tuple[str, str | None], ...]] = {
    "hold_down": (("pull", "strength"),),
    "leg_load": (("moment", "strength"),),
    "station_load": (("both_use", None), ("leg_pull", "leg_strength")),
    "beam_load": (("moment", "strength"),),
}


def every_part_holds(desk: Desk, rows: Sequence[Row]) -> bool:
    """Whether hold-down, leg, screws, wall leg and angle are all within their strength under either load. What is
    outside the rulebook is not shown to hold. Raises Missing, unless a part is known to fail."""
    wanting: list[str] = []
    for row in rows:
        if row.values.get("case") not in _CASES:
            continue
        try:
            for used, strength in _pairs(desk, row):
                top = si(number_of(desk, row, used))
                if top > (1.0 if strength is None else si(number_of(desk, row, strength))) * (1 + _TIE):
                    return False
        except Missing as missing:
            wanting += missing.pointers
        except (OutsideRulebook, NotPossible):
            return False
    if wanting:
        raise Missing(wanting)
    return True


def _pairs(desk: Desk, row: Row) -> Sequence[tuple[str, str | None]]:
    pairs = _PAIRS.get(row.kind, ())
    # A seat screw beside every place lets the board take the twist of the steel.
    if row.kind == "leg_load" and not of_row(desk, row, "seat_screw_at_each"):
        return (*pairs, ("torque", "torque_strength"))
    return pairs
