"""The holes drilled in the wood before a screw goes in, beside those that are published for it."""

from __future__ import annotations

from functools import lru_cache

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import Fastening, published
from plumbrule.mechanics import pilot
from plumbrule.mechanics.given import si
from plumbrule.mechanics.pilot import PilotRange
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.plan.screws import PilotHole


def work_pilot(desk: Desk, fastening: Fastening) -> None:
    """What is drilled and what is published. Needs `kind`, `diameter` and `specific_gravity`."""
    written = fastening.screw.pilot
    here = f"{fastening.here}/pilot"
    hole = written if isinstance(written, PilotHole) else None
    desk.copy("pilot_drilled", Input(None if written is None else hole is not None, here))
    desk.get("pilot_required", lambda: _thread(desk, fastening).required)
    desk.get("pilot_thread_least", lambda: si(_thread(desk, fastening).least))
    desk.get("pilot_thread_most", lambda: si(_thread(desk, fastening).most))
    desk.get("pilot_shank_least", lambda: si(_shank(desk).least))
    desk.get("pilot_shank_most", lambda: si(_shank(desk).most))
    if written is None or hole is not None:
        desk.copy("pilot_thread", Input(hole.thread if hole else None, f"{here}/thread"))
        desk.copy("pilot_shank", Input(hole.shank if hole else None, f"{here}/shank"))


def _thread(desk: Desk, fastening: Fastening) -> PilotRange:
    """A wall screw carries sideways; a seat screw is there to be pulled."""
    row = published(desk)
    (gravity,) = desk.numbers("specific_gravity")
    return _thread_range(row, gravity, fastening.in_wall)


def _shank(desk: Desk) -> PilotRange:
    row = published(desk)
    (gravity,) = desk.numbers("specific_gravity")
    return _shank_range(row, gravity)


@lru_cache(maxsize=256)
def _thread_range(row: Fastener, gravity: float, sideways: bool) -> PilotRange:
    return pilot.thread_pilot(row, gravity, sideways=sideways)


@lru_cache(maxsize=256)
def _shank_range(row: Fastener, gravity: float) -> PilotRange:
    return pilot.shank_pilot(row, gravity)
