"""The loads that boards are tried with: the benchmarks, or what a house asks beyond them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, NamedTuple

from plumbrule.mechanics import loads

if TYPE_CHECKING:
    from plumbrule.plan.house import Loads


class Chosen(NamedTuple):
    """One person and somebody who leans, N; a full seat, N/mm; what is stored by use, N/mm, where a house says."""

    person: float = loads.PERSON
    seat: float = loads.SEAT_LINE_LOAD
    lean: float = loads.LEAN
    storage: Mapping[str, float] = {}


def chosen(given: Loads | None) -> Chosen:
    """The benchmarks, raised where the house raises them. What is below one counts as the benchmark itself."""
    if given is None:
        return Chosen()
    storage: dict[str, float] = {
        use: max(float(line), loads.STORAGE_LINE_LOAD)
        for use, line in (given.storage or {}).items()
        if line is not None
    }
    return Chosen(
        max(given.person or 0.0, loads.PERSON), max(given.seat or 0.0, loads.SEAT_LINE_LOAD),
        max(given.lean or 0.0, loads.LEAN), storage,
    )  # fmt: skip
