"""What one load puts on one place of a support, however the board is carried."""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.worked import Worked


class Demand(NamedTuple):
    """Weight on the place (N; below zero it is pushed up), the part of it that is the steel's own, the couple that tips
    the steel off the wall there (N·mm), and the weight where no other place helps with a person. `pulls`: where the
    pull on each row of screws is known without a couple, N, the row nearest the heel first. `drawn`: what draws the
    place off the wall as a whole, N, with a push where this place feels it most."""

    side: Worked
    steel: float
    couple: Worked
    sharing: str
    alone: Worked
    pulls: tuple[Worked, ...] = ()
    drawn: float = 0.0
