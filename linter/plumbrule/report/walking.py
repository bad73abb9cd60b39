"""The order in which a room is measured by somebody who walks through it once, and what each measure is in plain words.

From the site to the walls, left to right round their corners; at each wall what stands at the floor and at the ceiling,
what is in it and what is on it; then the parts, and last the steps and what is bought.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from plumbrule.reading.pointer import split

if TYPE_CHECKING:
    from plumbrule.plan.plan_file import PlanFile
    from plumbrule.plan.walls import Corner

_SECTIONS = (
    "plan", "title", "record", "site", "walls", "corners", "screws", "sections", "holes", "angles", "brackets",
    "cleats", "boards", "panels", "trims", "sealants", "steps", "on_hand", "purchase", "departures",
)  # fmt: skip
# At one wall: the datum and the shell, then what is in it, then what is on it.
_AT_A_WALL = (
    "width", "floor_drop", "ceiling", "ends", "passage", "separation", "lining", "framing", "blocking", "services",
    "boxes", "openings", "fittings", "surface",
)  # fmt: skip
_ENDS = ("left", "right", "points")
_WALLS = _SECTIONS.index("walls")
_HEIGHTS = ("ceiling", "floor_drop", "up", "bottom", "top", "bears_at", "level_line", "height", "from", "to")

DATUM = (
    "first the datum: one level line through the high point of the floor, snapped on every wall. All heights are "
    "measured from it."
)
_OF_THE_PATTERN = "instead of the pattern's"
Rank = tuple[float, ...]


def walked(model: PlanFile, pointers: Iterable[str]) -> list[str]:
    """The pointers, each once, in the order of the walk. What is equal in it keeps its order."""
    walls = {name: place for place, name in enumerate(walls_in_order(model))}
    corners = model.corners or {}
    return sorted(dict.fromkeys(pointers), key=lambda pointer: _rank(pointer, walls, corners))


def walls_in_order(model: PlanFile) -> list[str]:
    """The walls from left to right as one walks round the corners; each run begins where no corner is at its left."""
    names = list(model.walls or {})
    after = {one.from_: one.to for one in (model.corners or {}).values() if one.from_ and one.to}
    reached = set(after.values())
    found: dict[str, None] = {}
    for start in [*(name for name in names if name not in reached), *names]:
        wall: str | None = start
        while wall is not None and wall in (model.walls or {}) and wall not in found:
            found[wall] = None
            wall = after.get(wall)
    return list(found)


def wants_the_datum(pointers: Iterable[str]) -> bool:
    """Whether a height is among them: then the level line comes before everything."""
    return any(set(_HEIGHTS) & set(split(pointer)) for pointer in pointers if pointer.startswith("/walls/"))


def meaning(pointer: str) -> str:
    """What the key means, in the words of the format; nothing where it cannot be told."""
    # Read from the source of the models, and only where there is something to measure.
    from pydantic import BaseModel

    from plumbrule.plan.plan_file import PlanFile
    from plumbrule.reading.described import descriptions
    from plumbrule.reading.shape import trail

    def of_key(tokens: list[str | int]) -> str:
        try:
            inside = trail(PlanFile, tokens).inside
        except (LookupError, TypeError, ValueError):
            return ""
        if not tokens or not inside or not issubclass(inside[0], BaseModel):
            return ""
        return descriptions(inside[0]).get(str(tokens[-1]), "")

    tokens: list[str | int] = [int(token) if token.isdigit() else token for token in split(pointer)]
    while tokens and isinstance(tokens[-1], int):
        tokens.pop()
    own = of_key(tokens)
    if own == _OF_THE_PATTERN:
        return of_key(["holes", "pattern", tokens[-1]])
    if tokens[-1:] in (["left"], ["right"]) and tokens[-2:-1] in (["ceiling"], ["floor_drop"]):
        # "at the left end" says little by itself.
        return f"{of_key(tokens[:-1]).removesuffix(', at each end')}, {own}"
    return own


def _rank(pointer: str, walls: Mapping[str, int], corners: Mapping[str, Corner]) -> Rank:
    section, *rest = split(pointer) or [""]
    place = _SECTIONS.index(section) if section in _SECTIONS else len(_SECTIONS)
    if section == "walls" and rest:
        key = rest[1] if len(rest) > 1 else ""
        side = next((_ENDS.index(end) for end in rest[2:] if end in _ENDS), len(_ENDS))
        within = _AT_A_WALL.index(key) if key in _AT_A_WALL else len(_AT_A_WALL)
        # Within framing, boxes and the like the order of the file is as good as any.
        return (_WALLS, walls.get(rest[0], len(walls)), within, side if within < _AT_A_WALL.index("ends") else 0)
    if section == "corners" and rest and rest[0] in corners:
        corner = corners[rest[0]]
        # A corner is measured on the way: after the wall before it, or before the one after it.
        before, after = corner.from_ or "", corner.to or ""
        at = walls[before] + 0.5 if before in walls else walls.get(after, 0) - 0.5
        return (_WALLS, at)
    return (place,)
