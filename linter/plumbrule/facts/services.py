"""Cables and pipes in the wall: what was looked for, what is known, how near to it a screw comes."""

from __future__ import annotations

from collections.abc import Mapping
from math import hypot, inf

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import Fastening
from plumbrule.facts.room import searched
from plumbrule.facts.wood import stud_width
from plumbrule.plan.framing import Run


def work_services(desk: Desk, fastening: Fastening) -> None:
    """Whether the wall was searched, and the way from a wall screw's axis to the nearest known cable or pipe."""
    wall, name = fastening.support.wall, fastening.support.wall_name
    if wall is None:
        return
    here = f"/walls/{name}/services"
    desk.get("searched", lambda: bool(desk.need(searched(name, wall))))
    runs: dict[str, Run] = {}
    for kind in ("cables", "pipes"):
        named: Mapping[str, Run] = (getattr(wall.services, kind) if wall.services else None) or {}
        runs.update({f"{here}/{kind}/{run}": one for run, one in named.items()})

    def known() -> float:
        desk.need_all(*(Input(getattr(wall.services, kind, None), f"{here}/{kind}") for kind in ("cables", "pipes")))
        return float(len(runs))

    desk.get("known_runs", known)
    if runs:
        desk.get("service_distance", lambda: min(_to_run(desk, fastening, at, run) for at, run in runs.items()))


def _to_run(desk: Desk, fastening: Fastening, here: str, run: Run) -> float:
    """Distance in mm. A run beside a stud is fixed to one of its sides, nobody says which: from anywhere in the width
    of the stud the way to it counts as nothing."""
    wall, name = fastening.support.wall, fastening.support.wall_name
    desk.need_all(Input(True, fastening.drilling.pointer), fastening.drilling.on_wall, fastening.height)
    across, up = desk.length(fastening.drilling.on_wall), desk.length(fastening.height)
    if run.height is not None or run.left is not None or run.right is not None:
        level, left, right = (Input(getattr(run, key), f"{here}/{key}") for key in ("height", "left", "right"))
        desk.need_all(level, left, right)
        return hypot(_beyond(across, desk.length(left), desk.length(right)), up - desk.length(level))
    width = stud_width(wall.framing if wall else None, f"/walls/{name}/framing")
    beside, low, high = (
        Input(getattr(run, key), f"{here}/{word}")
        for key, word in (("beside_stud", "beside_stud"), ("from_", "from"), ("to", "to"))
    )
    desk.need_all(width, beside, low, high)
    sideways = max(abs(across - desk.length(beside)) - desk.length(width) / 2, 0.0)
    bottom = -inf if low.value == "floor" else desk.length(low)
    top = inf if high.value == "ceiling" else desk.length(high)
    return hypot(sideways, _beyond(up, bottom, top))


def _beyond(value: float, low: float, high: float) -> float:
    """How far `value` lies outside the stretch from `low` to `high`."""
    return max(low - value, value - high, 0.0)
