"""Places along a support that hold it: which wall screws are meant for wood, the runs between them, the overhangs."""

from __future__ import annotations

from itertools import pairwise

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.room import framing_kind
from plumbrule.facts.supports import Support
from plumbrule.mechanics.outside import INSIDE, outside, support_word
from plumbrule.plan import resolve
from plumbrule.plan.plan_file import Plan

# What holds in lining or masonry does not hold in wood.
NOT_FOR_WOOD = ("masonry anchor", "hollow-wall anchor", "toggle")

_SAME_PLACE = 1e-6


class Stations:
    """The stations of one support: places along it with at least one wall screw that is meant for wood."""

    def __init__(self, plan: Plan, support: Support) -> None:
        self._plan, self._support = plan, support
        self._found: list[tuple[float, int]] | None = None

    def work(self, desk: Desk, runs: bool = True) -> None:
        """Fills in how many there are and what they hold with and, with `runs`, how far they stand apart."""
        desk.get("screws_in_wall", lambda: float(sum(self.reaches(desk, hole) for hole in self._wall_holes())))
        desk.get("screws_per_station", lambda: float(min((screws for _, screws in self.places(desk)), default=0)))
        if not runs:
            return
        desk.get("stations", lambda: float(len(self.places(desk))))
        if desk.known("stations") and desk.number("stations") < 1:
            return
        desk.get("overhang", lambda: self._overhang(desk)[0])
        if desk.known("stations") and desk.number("stations") < 2:
            return
        desk.get("longest_run", lambda: max(self._runs(desk)))
        desk.get("shortest_run", lambda: min(self._runs(desk)))
        desk.get("run_before_overhang", lambda: self._overhang(desk)[1])

    def _wall_holes(self) -> list[Drilling]:
        return [drilling for drilling in self._support.drillings if drilling.leg == "wall"]

    def places(self, desk: Desk) -> list[tuple[float, int]]:
        """Distance from the left end and screws of each station, from left to right. Raises Missing."""
        if self._found is None:
            holes = [hole for hole in self._wall_holes() if self.reaches(desk, hole)]
            desk.need_all(*(hole.x for hole in holes))
            self._found = []
            for place in sorted(desk.length(hole.x) for hole in holes):
                if self._found and place - self._found[-1][0] < _SAME_PLACE:
                    self._found[-1] = (self._found[-1][0], self._found[-1][1] + 1)
                else:
                    self._found.append((place, 1))
        return self._found

    def _runs(self, desk: Desk) -> list[float]:
        desk.number("stations")
        return [right - left for (left, _), (right, _) in pairwise(self.places(desk))]

    def _overhang(self, desk: Desk) -> tuple[float, float]:
        """The worse overhang, and the run beside it (none beside a single station)."""
        desk.number("stations")
        places = [place for place, _ in self.places(desk)]
        left, right = places[0], desk.length(self._support.length) - places[-1]
        runs = self._runs(desk)
        if not runs:
            return max(left, right), 0.0
        return max((left, runs[0]), (right, runs[-1]), key=lambda end: end[0] / end[1])

    def reaches(self, desk: Desk, drilling: Drilling) -> bool:
        """Whether a wall screw is meant for wood: into a block, at a stud, or drawn no further from a stud's centre
        than its half width. Raises Missing, and OutsideRulebook where there are no wood studs."""
        support, plan = self._support, self._plan
        screw = (plan.model.screws or {})[drilling.holes.screw.value or ""]
        if screw.kind in NOT_FOR_WOOD:
            return False
        if drilling.holes.into.value is not None:
            return True
        if support.wall is not None:
            word = support_word(desk.word(framing_kind(support.wall_name, support.wall)))
            if word != INSIDE:
                raise outside(word)
        if resolve.studs(plan, support.wall_name) == ():
            return False
        if drilling.stud is None or drilling.stud.centre is None or drilling.on_wall.value is None:
            wanting = drilling.studs_wanted
            if drilling.on_wall.value is None:
                wanting = (*wanting, drilling.on_wall.pointer, *drilling.on_wall.also)
            raise Missing(wanting)
        off = abs(desk.length(drilling.on_wall) - drilling.stud.centre)
        if off < _SAME_PLACE:
            return True
        framing = support.wall.framing if support.wall else None
        size = resolve.stud_size(framing) if framing else None
        at = f"/walls/{support.wall_name}/framing/stud"
        return off <= desk.length(Input(size.narrow if size else None, at)) / 2
