"""How far each trim runs: along floor and ceiling from wall end to wall end, up a corner, round an opening."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plumbrule.facts.desk import Input
from plumbrule.plan.panels import TrimPart
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall


class Run(NamedTuple):
    """One run of trim. `joined` says that it may be made up of more than one length."""

    name: str
    pointer: str
    length: Input
    note: str
    joined: bool


def trim_runs(plan: Plan, name: str, trim: TrimPart) -> tuple[list[Run], tuple[str, ...]]:
    """The runs of one trim, and the pointers that keep some of them from being known."""
    walls = plan.model.walls or {}
    wanting: list[str] = []
    if trim.along not in ("floor", "ceiling", "openings"):
        return [_up_corner(plan, trim.along)], ()
    if trim.walls is None:
        return [], (f"/trims/{name}/walls",)
    runs: list[Run] = []
    for wall_name in trim.walls:
        wall = walls.get(wall_name)
        if wall is None:
            continue
        here = f"/walls/{wall_name}"
        if trim.along == "ceiling":
            runs.append(Run(wall_name, here, Input(wall.width, f"{here}/width"), "", True))
        elif wall.openings is None:
            wanting.append(f"{here}/openings")
        elif trim.along == "floor":
            runs += _along_floor(wall_name, wall, here)
        else:
            runs += _round_openings(wall, here)
    return runs, tuple(wanting)


def _along_floor(name: str, wall: Wall, here: str) -> Iterator[Run]:
    """The stretches between doors: whatever opening begins at the floor breaks the run."""
    doors = [(key, one) for key, one in (wall.openings or {}).items() if one.bottom is None or one.bottom <= 0]
    unknown = [f"{here}/openings/{key}/{side}" for key, one in doors for side in ("bottom", "left", "width")
               if getattr(one, side) is None]  # fmt: skip
    width = Input(wall.width, f"{here}/width")
    if unknown or wall.width is None or not doors:
        wanted = Input(None, unknown[0], also=tuple(unknown[1:])) if unknown else width
        yield Run(name, here, wanted, "", True)
        return
    reach = 0.0
    stretches = []
    for left, right in sorted(((one.left or 0.0), (one.left or 0.0) + (one.width or 0.0)) for _, one in doors):
        stretches.append((reach, left))
        reach = max(reach, right)
    stretches.append((reach, wall.width))
    also = tuple(f"{here}/openings/{key}/{side}" for key, _ in doors for side in ("left", "width"))
    for number, (left, right) in enumerate((left, right) for left, right in stretches if right - left > 1e-6):
        yield Run(f"{name} {number + 1}", here, Input(right - left, width.pointer, also=also), "between doors", True)


def _round_openings(wall: Wall, here: str) -> Iterator[Run]:
    for key, one in (wall.openings or {}).items():
        at = f"{here}/openings/{key}"
        width = Input(one.width, f"{at}/width")
        tall = None if one.top is None or one.bottom is None else one.top - one.bottom
        height = Input(tall, f"{at}/top", also=(f"{at}/bottom",))
        yield Run(f"{key} head", at, width, "", False)
        yield Run(f"{key} left", at, height, "", False)
        yield Run(f"{key} right", at, height, "", False)
        if one.bottom is None or one.bottom > 0:
            yield Run(f"{key} sill", at, width, "", False)


def _up_corner(plan: Plan, name: str) -> Run:
    """From the floor to the ceiling at a corner, the taller of the walls that meet there."""
    corner = (plan.model.corners or {}).get(name)
    heights: list[float] = []
    wanting: list[str] = []
    read: list[str] = []
    for wall_name, end in ((corner.from_, "right"), (corner.to, "left")) if corner else ():
        wall = (plan.model.walls or {}).get(wall_name or "")
        if wall is None:
            continue
        parts = []
        for key in ("ceiling", "floor_drop"):
            pointer = f"/walls/{wall_name}/{key}/{end}"
            value = getattr(getattr(wall, key), end, None)
            read.append(pointer)
            if value is None:
                wanting.append(pointer)
            else:
                parts.append(value)
        if len(parts) == 2:
            heights.append(sum(parts))
    first, *others = wanting or read or [f"/corners/{name}"]
    tall = max(heights) if heights and not wanting else None
    return Run(name, f"/corners/{name}", Input(tall, first, also=tuple(others)), "floor to ceiling", False)
