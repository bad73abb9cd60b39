"""Measures of panels, and of what they are laid round, that cannot both be true."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from plumbrule.plan.complaints import INCH, Complaints, length
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import CeilingPoint, FloorPoint, Wall

SLACK = 1e-6
# Two tape readings of one edge may differ by this much.
TAPE = INCH / 16
MOST_PIECES = 5000
MOST_OPENINGS = 100


class _Place(NamedTuple):
    left: float
    right: float
    bottom: float
    top: float
    name: str


class Panels:
    """One look at the panel fields, and at the floor, ceiling, openings and boxes of every wall."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._model = plan.model
        self._complain = complaints.add
        self._written = complaints.written
        self._pieces = 0

    def check(self) -> None:
        """Complains of openings in one another or in the ceiling, of a wall panelled twice, of endless panels."""
        for name, wall in (self._model.walls or {}).items():
            at = f"/walls/{name}"
            for key, line in (("ceiling", wall.ceiling), ("floor_drop", wall.floor_drop)):
                if line is not None:
                    self._bends(line.points, f"{at}/{key}/points", wall, f"{at}/width")
            self._openings(wall, at)
            self._under_the_ceiling(wall, at)
        whose: dict[str, str] = {}
        for name, field in (self._model.panels or {}).items():
            at = f"/panels/{name}"
            self._walls(field, name, at, whose)
            self._courses(field, at)
            for index, wall_name in enumerate(field.walls):
                wall_of = (self._model.walls or {}).get(wall_name)
                if wall_of is not None and not self._too_many(field, wall_of, f"{at}/walls/{index}", wall_name, at):
                    self._level_line(field, wall_of, wall_name, at)

    def _bends(self, points: Sequence[CeilingPoint | FloorPoint], at: str, wall: Wall, width: str) -> None:
        for index, point in enumerate(points):
            here = f"{at}/{index}/at"
            if point.at is None:
                continue
            if point.at <= SLACK:
                self._complain(here, f"{self._written(here)} is the left end of the wall.", "Write it as left.")
            elif wall.width is not None and point.at >= wall.width - SLACK:
                self._complain(here, f"{self._written(here)} is not between the ends of the wall "
                               f"({self._written(width)}).",
                               "Measure it again from the left end of the wall.")  # fmt: skip
        for index, (one, other) in enumerate(pairwise(points), 1):
            if one.at is not None and other.at is not None and other.at <= one.at + SLACK:
                here, before = f"{at}/{index}/at", f"{at}/{index - 1}/at"
                self._complain(here, f"{self._written(here)} does not come after {self._written(before)}.",
                               "List the points from left to right, each once.")  # fmt: skip

    def _openings(self, wall: Wall, at: str) -> None:
        if len(wall.openings or {}) > MOST_OPENINGS:
            self._complain(f"{at}/openings", f"{len(wall.openings or {}):,} openings in one wall are a slip.",
                           "List the openings that are there.", key=True)  # fmt: skip
            return
        known = sorted(_Place(one.left, one.left + one.width, one.bottom, one.top, name)
                       for name, one in (wall.openings or {}).items()
                       if one.left is not None and one.width is not None and one.bottom is not None
                       and one.top is not None)  # fmt: skip
        for index, one in enumerate(known):
            for other in known[index + 1 :]:
                if other.left >= one.right - TAPE:
                    break
                if min(one.top, other.top) - max(one.bottom, other.bottom) > TAPE:
                    here = f"{at}/openings/{other.name}"
                    self._complain(here, f"{other.name} lies over {one.name}: both take the wall from "
                                   f"{length(other.left, self._written(f'{here}/left'))}.",
                                   "Measure both again, or write them as one opening.", key=True)  # fmt: skip

    def _under_the_ceiling(self, wall: Wall, at: str) -> None:
        highest = _highest(wall)
        if highest is None:
            return
        for name, one in (wall.openings or {}).items():
            if one.top is not None and one.top > highest + TAPE:
                here = f"{at}/openings/{name}/top"
                self._complain(here, f"{name} reaches {self._written(here)} up, the ceiling is at "
                               f"{length(highest, self._written(here))}.",
                               "Measure both again from the datum.")  # fmt: skip
        for name, box in (wall.boxes or {}).items():
            if box.up is not None and box.up > highest + TAPE:
                here = f"{at}/boxes/{name}/up"
                self._complain(here, f"{name} is {self._written(here)} up, the ceiling is at "
                               f"{length(highest, self._written(here))}.",
                               "Measure both again from the datum.")  # fmt: skip

    def _walls(self, field: PanelField, name: str, at: str, whose: dict[str, str]) -> None:
        if not field.walls:
            self._complain(f"{at}/walls", f"{name} is laid on no wall.", "Write the walls in the order of laying.",
                           key=True)  # fmt: skip
        for index, wall in enumerate(field.walls):
            here = f"{at}/walls/{index}"
            if wall in whose:
                says = "is listed twice" if whose[wall] == name else f"is panelled already, by {whose[wall]}"
                self._complain(here, f"Wall {wall} {says}.", "Take it out of one of them: panels lie once on a wall.")
            whose[wall] = name

    def _courses(self, field: PanelField, at: str) -> None:
        for wall, firsts in (field.courses.starters or {}).items():
            if not firsts:
                self._complain(f"{at}/courses/starters/{wall}", f"No first piece is given for {wall}.",
                               "Write the first piece of each course, bottom up: [48 in, 24 in].",
                               key=True)  # fmt: skip
        if field.courses.level_line is not None and field.courses.level_line <= SLACK:
            self._complain(f"{at}/courses/level_line", "The first course has no height: its top is on the floor.",
                           "Write the height of its upper edge above the datum.")  # fmt: skip

    def _level_line(self, field: PanelField, wall: Wall, name: str, at: str) -> None:
        line, highest, here = field.courses.level_line, _highest(wall), f"{at}/courses/level_line"
        if line is not None and highest is not None and line > highest + SLACK:
            self._complain(here, f"level_line {self._written(here)} is above the ceiling of {name} "
                           f"({length(highest, self._written(here))}).",
                           "Write the height of the upper edge of the first course.")  # fmt: skip

    def _too_many(self, field: PanelField, wall: Wall, here: str, name: str, at: str) -> bool:
        """Whether so many pieces would be laid that one of the measures must be a slip."""
        panel, highest = field.panel, _highest(wall)
        if panel.length is None or panel.height is None or wall.width is None or highest is None:
            return False
        pieces = math.ceil(wall.width / panel.length) * math.ceil(highest / panel.height)
        if self._pieces <= MOST_PIECES < self._pieces + pieces:
            size = f"{self._written(f'{at}/panel/length')} by {self._written(f'{at}/panel/height')}"
            self._complain(here, f"With panels of {size} on wall {name} this plan has about "
                           f"{self._pieces + pieces:,} pieces; more than {MOST_PIECES:,} are a slip.",
                           "Measure the panel and the wall again.")  # fmt: skip
        self._pieces += pieces
        return self._pieces > MOST_PIECES


def _highest(wall: Wall) -> float | None:
    """The highest measure of the ceiling; None where none is known yet."""
    if wall.ceiling is None:
        return None
    measures = [wall.ceiling.left, wall.ceiling.right, *(point.height for point in wall.ceiling.points)]
    return max((one for one in measures if one is not None), default=None)
