"""A board in its room: whether it fits between its walls, what it lies on, how high it is, how far it reaches out."""

from __future__ import annotations

from typing import TypeVar

from plumbrule.facts.board_place import (
    Placed,
    back_edge,
    finish,
    front_edge,
    left_end,
    opening,
    recess,
    require_ends_known,
    round_the_corner,
    walled_ends,
)
from plumbrule.facts.desk import Desk, Input, Missing, least
from plumbrule.facts.supports import STEP_HEIGHT, Support, leg_size
from plumbrule.mechanics.fitting import room_past, tilting_width
from plumbrule.mechanics.slabs import height
from plumbrule.mechanics.worked import Worked

T = TypeVar("T")


def work_ends(desk: Desk, placed: Placed) -> None:
    """The ends of the board and the walls they lie against."""
    ends = walled_ends(placed)

    def known(value: float) -> float:
        require_ends_known(placed)
        desk.need(Input(True, f"{placed.here}/wall"))
        return value

    desk.get("walled_ends", lambda: known(float(len(ends))))
    gaps = [placed.gap(end) for end in ends]

    if ends:
        desk.get("end_gap_least", lambda: min(least(desk, gaps, lambda at, gap: at.length(gap))))
        desk.get("end_gap_most", lambda: -min(least(desk, gaps, lambda at, gap: -at.length(gap))))
    both = len(ends) == 2
    desk.get("placed_by_gaps", lambda: bool(known(both)))
    if both:
        desk.get("opening", lambda: opening(desk, placed))
        desk.get("diagonal", lambda: tilting_width(*desk.numbers("length", "thickness")))
    desk.get("spare", lambda: _spare(desk, placed, gaps))


def work_bearing(desk: Desk, placed: Placed) -> None:
    """What the board lies on at its ends and along its back."""
    own = [one for one in placed.supports if one.wall_name == placed.board.wall]
    returns = [one for one in placed.supports if one.wall_name != placed.board.wall]
    desk.set("has_return", bool(returns), f"{placed.here}/bears_on")
    desk.get("supports_apart", lambda: _apart(desk, placed))
    if returns:
        desk.get("return_bearing", lambda: min(least(desk, returns, lambda at, one: _on_return(at, placed, one))))
    # A bracket carries the board with its arm, which has rules of its own.
    ledges = [one for one in own if one.kind != "bracket"]
    desk.set("back_ledges", float(len(ledges)), f"{placed.here}/bears_on")
    if ledges:
        desk.get("back_bearing", lambda: min(least(desk, ledges, lambda at, one: _on_back(at, placed, one))))


def work_height(desk: Desk, placed: Placed, others: tuple[Placed, ...]) -> None:
    """How high the board is over the floor, and over a seat under it."""
    desk.get("top", lambda: _bears_at(desk, placed) + desk.number("thickness"))
    desk.get("at_seat_height", lambda: desk.number("top") < STEP_HEIGHT)
    desk.get("height_most", lambda: desk.number("top") + max(_drops(desk, placed)))
    desk.get("height_least", lambda: desk.number("top") + min(_drops(desk, placed)))
    desk.get("underside_least", lambda: desk.number("height_least") - desk.number("thickness"))
    desk.get("underside_most", lambda: desk.number("height_most") - desk.number("thickness"))
    desk.get("above_a_seat", lambda: bool(_seats_under(desk, placed, others)))
    if not (desk.known("above_a_seat") and not desk.true("above_a_seat")):

        def room() -> float:
            bears = _bears_at(desk, placed)
            return min(bears - _top(desk, seat) for seat in _seats_under(desk, placed, others))

        desk.get("room_over_seat", room)


def work_reach(desk: Desk, placed: Placed) -> None:
    """How far the board stands out into the room, and what that leaves of a way in front of it."""
    plan, wall = placed.plan, placed.board.wall
    part = (plan.model.walls or {}).get(wall)
    passage = part.passage if part else None
    here = f"/walls/{wall}/passage"

    def reach() -> float:
        desk.need(placed.of("depth"))
        return front_edge(desk, placed) - finish(desk, plan, wall)

    desk.get("reach", reach)
    desk.copy("walked_past", Input(passage and passage.walked_past, f"{here}/walked_past"))
    clear = Input(passage and passage.clear_width, f"{here}/clear_width")

    def way_left() -> float:
        desk.need(clear)
        return desk.length(clear) - front_edge(desk, placed)

    desk.get("way_left", way_left)


def carries_people(desk: Desk, placed: Placed) -> bool:
    """Whether people sit, stand or step on the board: it is meant for that, or low enough that they will."""
    carries = placed.of("carries")
    if carries.value in ("seating", "standing"):
        return bool(desk.word(carries))
    if desk.number("top") < STEP_HEIGHT:
        return True
    desk.need(carries)
    return False


def _bears_at(desk: Desk, placed: Placed) -> float:
    """Height of the highest thing the board lies on, mm above the datum."""
    heights = [one.bears_at for one in placed.supports]
    if not heights:
        raise Missing([f"{placed.here}/bears_on"])
    desk.need_all(*heights)
    return max(desk.length(height) for height in heights)


def _apart(desk: Desk, placed: Placed) -> float:
    highest = _bears_at(desk, placed)
    return highest - min(desk.length(one.bears_at) for one in placed.supports)


def _top(desk: Desk, placed: Placed) -> float:
    return _bears_at(desk, placed) + desk.length(placed.of("thickness"))


def _spare(desk: Desk, placed: Placed, gaps: list[Input]) -> Worked | float:
    """What is left of the wall past the board. An end that stands free may reach to the end of its wall."""
    length = desk.number("length")
    if gaps:
        desk.need_all(*gaps)
        return room_past(opening(desk, placed), length, sum(desk.length(gap) for gap in gaps))
    part = (placed.plan.model.walls or {}).get(placed.board.wall)
    width = Input(part.width if part else None, f"/walls/{placed.board.wall}/width")
    desk.need(width)
    begins = left_end(desk, placed)
    return min(begins, desk.length(width) - begins - length)


def _on_return(desk: Desk, placed: Placed, support: Support) -> float:
    """What the end of the board lies on of a return, mm: the leg as far as it stands out of the lining, less what lies
    between the lining and the board."""
    end, _ = round_the_corner(placed, support)
    size, gap = leg_size(support, "seat"), placed.gap(end)
    desk.need_all(gap, size)
    face = finish(desk, placed.plan, support.wall_name)
    if support.wall_leg == "up":
        face = max(face, desk.length(support.thickness) - recess(desk, support))
    return desk.length(size) - recess(desk, support) - face - desk.length(gap)


def _on_back(desk: Desk, placed: Placed, support: Support) -> float:
    size = leg_size(support, "seat")
    desk.need_all(placed.gap("back"), size)
    return desk.length(size) - recess(desk, support) - back_edge(desk, placed)


def _drops(desk: Desk, placed: Placed) -> tuple[float, ...]:
    """How far the floor lies below the datum under both ends of the board, mm, and wherever it bends between them."""
    wall = (placed.plan.model.walls or {}).get(placed.board.wall)
    here = f"/walls/{placed.board.wall}"
    drop = wall.floor_drop if wall else None
    left = Input(drop.left if drop else None, f"{here}/floor_drop/left")
    right = Input(drop.right if drop else None, f"{here}/floor_drop/right")
    bends: list[Input] = []
    for index, point in enumerate(drop.points if drop else ()):
        at = f"{here}/floor_drop/points/{index}"
        bends += (Input(point.at, f"{at}/at"), Input(point.drop, f"{at}/drop"))
    desk.need_all(left, right, Input(wall.width if wall else None, f"{here}/width"), *bends)
    low, high = desk.length(left), desk.length(right)
    if low == high and not bends:
        return low, high
    width = desk.length(Input(wall.width if wall else None, f"{here}/width"))
    begins = left_end(desk, placed)
    ends = begins + desk.number("length")
    known = [desk.length(one) for one in bends]
    line = ((0.0, low), *zip(known[::2], known[1::2], strict=True), (width, high))
    between = [drop for x, drop in line[1:-1] if begins < x < ends]
    return (height(line, begins), height(line, ends), *between)


def _seats_under(desk: Desk, placed: Placed, others: tuple[Placed, ...]) -> list[Placed]:
    """Boards of the same wall that people sit on, under this one and overlapping it along the wall."""
    found = []
    bears = None
    for other in others:
        if other.name == placed.name or other.board.wall != placed.board.wall:
            continue
        if bears is None:
            bears = _bears_at(desk, placed)
        top = _top(desk, other)
        if top > bears or not (other.board.carries == "seating" or top < STEP_HEIGHT):
            continue
        mine, theirs = left_end(desk, placed), left_end(desk, other)
        ends = mine + desk.length(placed.of("length")), theirs + desk.length(other.of("length"))
        if min(ends) > max(mine, theirs):
            found.append(other)
    return found
