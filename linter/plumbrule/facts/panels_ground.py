"""Where panels may lie on a wall: ends, floor and ceiling with gaps and trims taken off, and what they go round."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Literal, NamedTuple

from plumbrule.facts.corner import ENDS, End, corner_at
from plumbrule.facts.panels_cuts import Cut, Wanted, cuts, face
from plumbrule.facts.supports import Support
from plumbrule.mechanics.course import Run
from plumbrule.mechanics.slabs import Line
from plumbrule.plan.panels import PanelField, TrimPart
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall

# Profiles that hold the edge of a panel: what lies between wall and edge takes room. All others are laid over it.
HOLDS_THE_EDGE = ("J", "H", "outside corner", "inside corner", "end cap")

Meets = Literal["inside corner", "outside corner", "door casing", "window casing", "cabinet", "open"]


class RunEnd(NamedTuple):
    """One end of the panels on a wall: what it runs into, at which corner, which panelled wall is beyond it, the trims
    along it, and how far it stays off the end of the wall, mm."""

    side: End
    meets: Meets
    corner: str | None
    beyond: str | None
    trims: tuple[str, ...]
    off: float


class Ground(NamedTuple):
    """What is known of the ground for the panels of one wall. `wanted` are the pointers that keep it from being laid
    out; then there is no `run`. `floor` and `ceiling` are the bare lines."""

    wanted: tuple[str, ...]
    run: Run | None = None
    width: float = 0.0
    floor: Line = ()
    ceiling: Line = ()
    cuts: tuple[Cut, ...] = ()
    ends: tuple[RunEnd, ...] = ()


def ground(plan: Plan, carried: Sequence[Support], field_name: str, field: PanelField, wall_name: str) -> Ground:
    """The ground of one wall of a field. Requires that the wall exists."""
    wall = (plan.model.walls or {})[wall_name]
    wanted = Wanted()
    here, at = f"/walls/{wall_name}", f"/panels/{field_name}"
    width = wanted.take(wall.width, f"{here}/width")
    floor = _floor(wanted, wall, here, width)
    ceiling = _ceiling(wanted, wall, here, width)
    up = wanted.take(field.gaps.floor, f"{at}/gaps/floor") + _takes(wanted, plan, "floor", wall_name)
    down = wanted.take(field.gaps.ceiling, f"{at}/gaps/ceiling") + _takes(wanted, plan, "ceiling", wall_name)
    ends = [_end(wanted, plan, field_name, field, wall_name, wall, side) for side in ENDS]
    beside = wanted.take(field.gaps.opening, f"{at}/gaps/opening") if wall.openings else 0.0
    beside += _takes(wanted, plan, "openings", wall_name) if wall.openings else 0.0
    walls_beyond = {side: _beyond(plan, wall_name, side) for side in ENDS}
    found = cuts(wanted, carried, field_name, field, wall_name, wall, beside, walls_beyond)
    if wanted.pointers:
        return Ground(tuple(dict.fromkeys(wanted.pointers)))
    left, right = ends
    assert left is not None and right is not None
    run = Run(
        left.off, width - right.off, tuple((x, y + up) for x, y in floor), tuple((x, y - down) for x, y in ceiling),
        tuple(cut.rect for cut in found),
    )  # fmt: skip
    return Ground((), run, width, floor, ceiling, tuple(found), (left, right))


def trims_along(plan: Plan, along: str, wall_name: str) -> Iterable[tuple[str, TrimPart]]:
    """The trims that run along the floor, the ceiling, the openings or a corner of a wall."""
    for name, trim in (plan.model.trims or {}).items():
        if trim.along == along and (trim.walls is None or wall_name in trim.walls):
            yield name, trim


def _floor(wanted: Wanted, wall: Wall, here: str, width: float) -> Line:
    drop = wall.floor_drop
    if drop is None:
        wanted.take(None, f"{here}/floor_drop")
        return ()
    left = wanted.take(drop.left, f"{here}/floor_drop/left")
    right = wanted.take(drop.right, f"{here}/floor_drop/right")
    at = f"{here}/floor_drop/points"
    between = [
        (wanted.take(point.at, f"{at}/{index}/at"), -wanted.take(point.drop, f"{at}/{index}/drop"))
        for index, point in enumerate(drop.points)
    ]
    return ((0.0, -left), *between, (width, -right))


def _ceiling(wanted: Wanted, wall: Wall, here: str, width: float) -> Line:
    line = wall.ceiling
    if line is None:
        wanted.take(None, f"{here}/ceiling")
        return ()
    left = wanted.take(line.left, f"{here}/ceiling/left")
    right = wanted.take(line.right, f"{here}/ceiling/right")
    at = f"{here}/ceiling/points"
    between = [
        (wanted.take(point.at, f"{at}/{index}/at"), wanted.take(point.height, f"{at}/{index}/height"))
        for index, point in enumerate(line.points)
    ]
    return ((0.0, left), *between, (width, right))


def _takes(wanted: Wanted, plan: Plan, along: str, wall_name: str) -> float:
    """Room that the trims there take, mm. One that is laid over the edge takes none unless it says so."""
    taken = 0.0
    for name, trim in trims_along(plan, along, wall_name):
        if trim.takes is not None or trim.kind in HOLDS_THE_EDGE:
            taken = max(taken, wanted.take(trim.takes, f"/trims/{name}/takes"))
    return taken


def _end(
    wanted: Wanted, plan: Plan, field_name: str, field: PanelField, wall_name: str, wall: Wall, side: End
) -> RunEnd | None:
    """One end of the run. None where something is wanting."""
    before = len(wanted.pointers)
    gaps = f"/panels/{field_name}/gaps"
    for name, corner in (plan.model.corners or {}).items():
        mine, other = (corner.to, corner.from_) if side == "left" else (corner.from_, corner.to)
        if mine != wall_name:
            continue
        panelled = other if other is not None and _is_panelled(plan, other) else None
        trims = tuple(trim for trim, _ in trims_along(plan, name, wall_name))
        taken = _takes(wanted, plan, name, wall_name)
        if corner.turn == "outside":
            off = taken
        else:
            off = taken + wanted.take(field.gaps.inside_corner, f"{gaps}/inside_corner")
            through = corner.panels_run_through
            if panelled is not None and through is None:
                wanted.take(None, f"/corners/{name}/panels_run_through")
            theirs = _face_of(wanted, plan, panelled) if panelled is not None and through == panelled else 0.0
            angle = wanted.take(corner.angle, f"/corners/{name}/angle")
            off += _to_the_face(theirs, face(wanted, field_name, field) if angle < 90 - 1e-9 else 0.0, angle)
        if len(wanted.pointers) > before:
            return None
        meets: Meets = "outside corner" if corner.turn == "outside" else "inside corner"
        return RunEnd(side, meets, name, panelled, trims, off)
    stands = getattr(wall.ends, side) if wall.ends is not None else None
    if stands is None:
        wanted.take(None, f"/walls/{wall_name}/ends/{side}")
        return None
    off = 0.0 if stands == "open" else wanted.take(field.gaps.opening, f"{gaps}/opening")
    return None if len(wanted.pointers) > before else RunEnd(side, stands, None, None, (), off)


def _to_the_face(theirs: float, own: float, angle: float) -> float:
    """From a corner to where panels `own` thick meet a face `theirs` before the other wall, along this wall."""
    if not 0 < angle < 180:
        return theirs
    turn = math.radians(angle)
    return (theirs + max(0.0, own * math.cos(turn))) / math.sin(turn)


def _face_of(wanted: Wanted, plan: Plan, wall_name: str) -> float:
    field_name, field = next(one for one in (plan.model.panels or {}).items() if wall_name in one[1].walls)
    return face(wanted, field_name, field)


def _beyond(plan: Plan, wall_name: str, side: End) -> str | None:
    """The wall round an inside corner, where the plan has it."""
    met = corner_at(plan, wall_name, side)
    return met.beyond if met is not None and met.corner.turn == "inside" else None


def _is_panelled(plan: Plan, wall_name: str) -> bool:
    return any(wall_name in field.walls for field in (plan.model.panels or {}).values())
