"""The hold-down screws of a board: which they are, what rows they stand in, which row holds it, what others allow."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import hypot
from typing import NamedTuple

from plumbrule.catalogue.rows_boards import BOARD
from plumbrule.facts.board_place import Placed, ScrewSpot, back_edge, screw_spot
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.fastening import given
from plumbrule.facts.supports import Support
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.plan_file import Plan

# Screws whose places across the grain differ by less than this stand in one row: the board moves a hundredth of it.
ROW = 6.35


class HoldDown(NamedTuple):
    """One screw that goes up into a board."""

    support: Support
    drilling: Drilling


def placed_boards(plan: Plan, supports: Sequence[Support]) -> dict[str, Placed]:
    """Every board of the plan with what it lies on."""
    return {
        name: Placed(plan, name, board, tuple(one for one in supports if one.name in board.bears_on))
        for name, board in (plan.model.boards or {}).items()
    }


def hold_downs(placed: Placed, boards: dict[str, Placed]) -> list[HoldDown]:
    """The screws that go up into this board, support by support."""
    return [
        HoldDown(support, drilling)
        for support in placed.supports
        for drilling in support.drillings
        if drilling.leg == "seat" and board_of(support, drilling, boards).name == placed.name
    ]


def board_of(support: Support, drilling: Drilling, boards: dict[str, Placed]) -> Placed:
    """The board that a seat screw goes into: the one it lies furthest within. Where that cannot be told, the first."""
    on_it = [boards[name] for name, _ in support.boards]
    if len(on_it) == 1:
        return on_it[0]

    def within(placed: Placed) -> float:
        try:
            spot = screw_spot(Desk(BOARD, "", "", ""), placed, support, drilling)
        except (Missing, OutsideRulebook):
            return float("-inf")
        return min(spot.to_left, spot.to_right)

    return max(on_it, key=within)


def slides(desk: Desk, drilling: Drilling) -> bool:
    """Whether the board may move across its grain past this screw: a slot that runs across, and no cone for the head
    to centre itself in. Raises Missing."""
    holes = drilling.holes
    if holes.countersink.value is not None or not is_slotted(drilling):
        return False
    return desk.word(Input(holes.slot_runs.value, holes.slot_runs.pointer)) == "across the grain"


def is_slotted(drilling: Drilling) -> bool:
    """Whether a slot is drilled, whether or not its length is known yet."""
    return drilling.holes.slot.value is not None or drilling.holes.slot_runs.value is not None


def opening_across(desk: Desk, drilling: Drilling) -> float:
    """Length in mm of slot or hole across the grain of the board. Raises Missing."""
    holes = drilling.holes
    if is_slotted(drilling) and desk.word(Input(holes.slot_runs.value, holes.slot_runs.pointer)) == "across the grain":
        return desk.length(given(holes.slot))
    return desk.length(given(holes.diameter))


class Rows(NamedTuple):
    """Places across the grain of the rows that hold the board, and of the one that it moves from, mm."""

    holding: tuple[float, ...]
    fixed: float


def rows(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> Rows | None:
    """Which rows hold the board; None where no screw goes into it. The row of most screws without slots is the one it
    moves from, of several the one nearest the wall; where all are slotted, the row nearest the wall. Raises Missing."""
    if not screws:
        return None
    spots = []
    # Round holes first, the last of them first: what holds the board a second time stands on a return or in the outer
    # row, and a finding belongs there.
    backwards = screws[::-1]
    for screw in sorted(backwards, key=lambda one: is_slotted(one.drilling)):
        moves = slides(desk, screw.drilling)
        desk.need(given(screw.drilling.holes.diameter))
        spots.append((screw_spot(desk, placed, *screw).across, moves))
    still = _grouped([across for across, moves in spots if not moves])
    if not still:
        return Rows((), min(across for across, _ in spots))
    most = max(still, key=lambda row: (len(row), -row[0]))
    return Rows(tuple(row[0] for row in still), most[0])


def pitches(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> list[float]:
    """The stretches in mm between neighbouring screws along the board's own wall, from left to right."""
    own = [screw for screw in screws if screw.support.wall_name == placed.board.wall]
    along = [row[0] for row in _grouped([_on_wall(desk, screw.drilling) for screw in own])]
    return [right - left for left, right in pairwise(along)]


def corner_hold(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> float:
    """From the worse back corner of the board to the screw nearest to it, mm. Raises Missing."""
    back = back_edge(desk, placed)
    spots = [screw_spot(desk, placed, *screw) for screw in screws]
    return max(min(_away(spot, end, back) for spot in spots) for end in ("left", "right"))


def _away(spot: ScrewSpot, end: str, back: float) -> float:
    return hypot(spot.to_left if end == "left" else spot.to_right, spot.across - back)


def _on_wall(desk: Desk, drilling: Drilling) -> float:
    return desk.length(drilling.on_wall)


def _grouped(places: Sequence[float]) -> list[list[float]]:
    """Places in rows: a new one begins where the next lies further than a row is wide."""
    found: list[list[float]] = []
    for place in sorted(places):
        if found and place - found[-1][0] <= ROW:
            found[-1].append(place)
        else:
            found.append([place])
    return found
