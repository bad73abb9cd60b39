"""Measures of electrical boxes that cannot be true: two in one place, one in a window, one over the ceiling."""

from __future__ import annotations

from itertools import combinations
from typing import NamedTuple

from plumbrule.plan.complaints import Complaints, length
from plumbrule.plan.fixtures import Box, CoverPlate
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall

SLACK = 1e-6
# A hundred boxes in one wall are a slip, and comparing each with each would take for ever.
MOST_BOXES = 100


class _Sides(NamedTuple):
    left: float
    right: float
    bottom: float
    top: float


class Boxes:
    """One look at the boxes of every wall."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._model = plan.model
        self._complain = complaints.add
        self._written = complaints.written

    def check(self) -> None:
        """Complains of boxes that stand in one another, in an opening, over the ceiling or under the floor, and of a
        cover plate that is smaller than its box."""
        for wall_name, wall in (self._model.walls or {}).items():
            at = f"/walls/{wall_name}"
            if len(wall.boxes or {}) > MOST_BOXES:
                self._complain(f"{at}/boxes", f"{len(wall.boxes or {}):,} boxes in one wall are a slip.",
                               "List the boxes that are there.", key=True)  # fmt: skip
                continue
            placed: dict[str, _Sides] = {}
            for name, box in (wall.boxes or {}).items():
                here = f"{at}/boxes/{name}"
                self._cover(box, here)
                sides = _sides(box)
                if sides is None:
                    continue
                placed[name] = sides
                self._height(wall, at, name, sides)
                self._openings(wall, at, name, sides)
            for (first, one), (second, other) in combinations(placed.items(), 2):
                if _overlap(one, other):
                    self._complain(f"{at}/boxes/{second}/centre", f"Box {second} stands in box {first}.",
                                   "Measure both to their centres again, or write one box with more gangs.",
                                   )  # fmt: skip

    def _cover(self, box: Box, here: str) -> None:
        if not isinstance(box.cover, CoverPlate):
            return
        for key in ("width", "height"):
            plate, size = getattr(box.cover, key), getattr(box, key)
            if plate is not None and size is not None and plate < size - SLACK:
                self._complain(f"{here}/cover/{key}", f"A plate {self._written(f'{here}/cover/{key}')} in {key} "
                               f"does not cover a box of {self._written(f'{here}/{key}')}.",
                               "Measure the plate over all, and the outside of the box.")  # fmt: skip

    def _height(self, wall: Wall, at: str, name: str, sides: _Sides) -> None:
        here = f"{at}/boxes/{name}/up"
        like = self._written(here)
        ceiling = wall.ceiling
        if ceiling is not None and ceiling.left is not None and ceiling.right is not None:
            heights = [ceiling.left, ceiling.right, *(point.height for point in ceiling.points)]
            known = [height for height in heights if height is not None]
            if len(known) == len(heights) and sides.top > max(known) + SLACK:
                self._complain(here, f"{name} reaches {length(sides.top, like)}, the ceiling is at "
                               f"{length(max(known), like)}.", "Measure its centre again, from the datum.")  # fmt: skip
        floor = wall.floor_drop
        if floor is not None and floor.left is not None and floor.right is not None:
            drops = [floor.left, floor.right, *(point.drop for point in floor.points)]
            deep = [drop for drop in drops if drop is not None]
            if len(deep) == len(drops) and sides.bottom < -max(deep) - SLACK:
                self._complain(here, f"{name} would begin {length(-max(deep) - sides.bottom, like)} under the floor.",
                               "Measure its centre again, from the datum.")  # fmt: skip

    def _openings(self, wall: Wall, at: str, name: str, sides: _Sides) -> None:
        for opening_name, opening in (wall.openings or {}).items():
            left, width, bottom, top = opening.left, opening.width, opening.bottom, opening.top
            if left is None or width is None or bottom is None or top is None:
                continue
            if _overlap(sides, _Sides(left, left + width, bottom, top)):
                self._complain(f"{at}/boxes/{name}/centre", f"{name} would stand in {opening_name}.",
                               "Measure both again from the left end of the wall.")  # fmt: skip


def _sides(box: Box) -> _Sides | None:
    if box.centre is None or box.up is None or box.width is None or box.height is None:
        return None
    half, tall = box.width / 2, box.height / 2
    return _Sides(box.centre - half, box.centre + half, box.up - tall, box.up + tall)


def _overlap(one: _Sides, other: _Sides) -> bool:
    across = min(one.right, other.right) - max(one.left, other.left)
    return across > SLACK and min(one.top, other.top) - max(one.bottom, other.bottom) > SLACK
