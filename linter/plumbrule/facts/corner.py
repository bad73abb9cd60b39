"""Where walls meet: which corner a piece ends at, what a mitre or a cope takes from it, what it runs into."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Literal, NamedTuple

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.supports import Support
from plumbrule.mechanics import corner as mechanics
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Corner

End = Literal["left", "right"]
ENDS: tuple[End, ...] = ("left", "right")

_TOUCH = 1e-6


class Met(NamedTuple):
    """A corner at one end of a wall: the wall round it is `beyond`; None where that is not in the plan."""

    corner: Corner
    angle: Input
    beyond: str | None


class Plate(NamedTuple):
    """One flat part of a support: which leg, where it begins and ends across its wall, and its heights."""

    leg: Literal["wall", "seat"]
    back: float
    depth: float
    bottom: float
    top: float


def corner_at(plan: Plan, wall: str, end: End) -> Met | None:
    """The corner at the left or right end of a wall, where the plan has one."""
    key = ("corner at", wall, end)
    if key not in plan.reckoned:
        plan.reckoned[key] = _corner_at(plan, wall, end)
    found: Met | None = plan.reckoned[key]
    return found


def _corner_at(plan: Plan, wall: str, end: End) -> Met | None:
    for name, corner in (plan.model.corners or {}).items():
        here, beyond = (corner.to, corner.from_) if end == "left" else (corner.from_, corner.to)
        if here == wall:
            at = f"/corners/{name}/angle"
            said = "" if plan.is_written(at) else "nothing is written: a square corner is taken"
            return Met(corner, Input(corner.angle, at, said), beyond)
    return None


def round_corner(plan: Plan, support: Support, supports: Iterable[Support], end: End) -> tuple[Support, ...]:
    """What else is fixed to the wall round the inside corner at one end of the support's wall."""
    met = corner_at(plan, support.wall_name, end)
    if met is None or met.corner.turn != "inside" or met.beyond is None:
        return ()
    return tuple(other for other in supports if other.wall_name == met.beyond)


def runs_into(
    desk: Desk,
    plan: Plan,
    support: Support,
    supports: Sequence[Support],
    ends: Iterable[End] = ENDS,
    cut: bool = True,
) -> Worked | None:
    """The longest stretch in which the support runs into another round an inside corner, mm; None where it clears
    all. Mitres and copes count as they are drawn, or not at all with `cut` false. Raises Missing."""
    found: list[Worked] = []
    for end in ends:
        for other in round_corner(plan, support, supports, end):
            if not _far_above_or_below(support, other):
                found.extend(_overlaps(desk, plan, support, other, end, cut))
    return max(found, key=si, default=None)


def past_wall_end(desk: Desk, plan: Plan, support: Support, end: End) -> float:
    """How far the support runs past one end of its wall, mm; below zero, how far it ends before it. A leg mitred
    round an outside corner may run out as far as its mitre does. Raises Missing."""
    beyond = -_from_corner(desk, support, end)
    met = corner_at(plan, support.wall_name, end)
    if _end_cut(support, end) == "mitred" and met is not None and met.corner.turn == "outside":
        desk.need_all(support.seat_leg_size, met.angle)
        beyond -= si(mechanics.mitre_runs_out(desk.length(support.seat_leg_size), desk.length(met.angle)))
    return beyond


def to_end(
    desk: Desk, plan: Plan, support: Support, supports: Sequence[Support], end: End, in_seat_leg: bool,
    from_end: float, from_heel: float,
) -> Worked | float:  # fmt: skip
    """From a hole's centre to the end of the steel on that side, mm. A mitre or a cope is cut out of the seat leg;
    the wall leg stays square. Raises Missing."""
    cut = _end_cut(support, end)
    if not in_seat_leg or cut in ("square", "capped"):
        return from_end
    if cut == "mitred":
        met = corner_at(plan, support.wall_name, end)
        if met is None:
            raise Missing(["/corners"])
        angle = desk.length(met.angle)
        if met.corner.turn == "outside":
            return mechanics.to_outside_mitre(from_end, from_heel, desk.length(support.seat_leg_size), angle)
        return mechanics.to_inside_mitre(from_end, from_heel, angle)
    if not round_corner(plan, support, supports, end):
        # What it is coped to is not in the plan, so nobody can say how much is cut away.
        raise Missing(["/corners" if corner_at(plan, support.wall_name, end) is None else "/angles"])
    taken = runs_into(desk, plan, support, supports, (end,), cut=False)
    return from_end if taken is None else from_end - si(taken)


def _end_cut(support: Support, end: End) -> str:
    return support.ends[ENDS.index(end)]


def _from_corner(desk: Desk, support: Support, end: End) -> float:
    """From that end of the wall to that end of the support, mm."""
    if end == "left":
        return desk.length(support.left)
    width = Input(support.wall.width if support.wall else None, f"/walls/{support.wall_name}/width")
    desk.need_all(support.left, support.length, width)
    return desk.length(width) - desk.length(support.left) - desk.length(support.length)


def _overlaps(desk: Desk, plan: Plan, support: Support, other: Support, end: End, cut: bool) -> Iterator[Worked]:
    met = corner_at(plan, support.wall_name, end)
    assert met is not None
    # How it is cut is noted first: that is what a person would change.
    desk.need(Input(_end_cut(support, end), f"{support.pointer}/ends/{end}"))
    theirs: End = "right" if end == "left" else "left"
    cuts = (_end_cut(support, end), _end_cut(other, theirs)) if cut else ("square", "square")
    if "coped" in cuts:
        return
    both_mitred = cuts == ("mitred", "mitred")
    angle = desk.length(met.angle)
    own_end, their_end = _from_corner(desk, support, end), _from_corner(desk, other, theirs)
    for own in _plates(desk, support):
        for their in _plates(desk, other):
            if both_mitred and "seat" in (own.leg, their.leg):
                continue
            if min(own.top, their.top) - max(own.bottom, their.bottom) <= _TOUCH:
                continue
            clear = mechanics.clear_of(their.depth, their_end, own.back, own.depth, angle)
            they_clear = mechanics.clear_of(own.depth, own_end, their.back, their.depth, angle)
            if si(clear) - own_end > _TOUCH and si(they_clear) - their_end > _TOUCH:
                yield mechanics.run_into(clear, own_end)


def _far_above_or_below(support: Support, other: Support) -> bool:
    """Whether two pieces are known to lie so far apart in height that nothing else about them matters."""
    reach = 0.0
    heights = []
    for piece in (support, other):
        for size in (piece.wall_leg_size, piece.thickness, piece.bears_at):
            if not isinstance(size.value, int | float):
                return False
            reach += 0.0 if size is piece.bears_at else float(size.value)
        heights.append(float(str(piece.bears_at.value)))
    return abs(heights[0] - heights[1]) > reach


def _plates(desk: Desk, support: Support) -> tuple[Plate, ...]:
    sizes = (support.bears_at, support.wall_leg_size, support.seat_leg_size, support.thickness)
    desk.need_all(*sizes)
    bears, wall_leg, seat_leg, thickness = (desk.length(size) for size in sizes)
    back = -_recess(desk, support)
    if support.kind == "cleat":
        return (Plate("wall", back, back + thickness, bears - wall_leg, bears),)
    low = bears - wall_leg if support.wall_leg == "down" else bears - thickness
    return (
        Plate("wall", back, back + thickness, low, low + wall_leg),
        Plate("seat", back, back + seat_leg, bears - thickness, bears),
    )


def _recess(desk: Desk, support: Support) -> float:
    """How far the back of the wall leg lies behind the finished face: the lining, where it is cut away."""
    if desk.word(support.lining_behind) != "cut away":
        return 0.0
    layers = support.wall.lining if support.wall else None
    here = f"/walls/{support.wall_name}/lining"
    desk.need(Input(layers, here))
    thick = [Input(layer.thickness, f"{here}/{place}/thickness") for place, layer in enumerate(layers or ())]
    desk.need_all(*thick)
    return sum(desk.length(layer) for layer in thick)
