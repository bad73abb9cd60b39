"""A board and the upright leg beside it: which of its edges lies there, with what gap and easing."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from plumbrule.facts.corner import corner_at
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.supports import Support, boards_on
from plumbrule.plan.boards import Board, Edge
from plumbrule.plan.plan_file import Plan


class Side(NamedTuple):
    """The edge of a board that lies beside a wall, how it is eased, and the gap left there."""

    name: str
    board: Board
    edge: Edge
    edge_at: str
    gap: Input


def side_at(plan: Plan, support: Support, name: str, board: Board) -> Side:
    """The edge of the board that lies at the support's wall: its back, or the end at the corner between the two walls.

    Raises Missing where no corner of the plan says how the walls meet.
    """
    here = f"/boards/{name}"
    gaps = board.gaps
    if board.wall == support.wall_name:
        return Side(name, board, board.edges.back, f"{here}/edges/back", Input(gaps and gaps.back, f"{here}/gaps/back"))
    for end in ("left", "right"):
        met = corner_at(plan, board.wall, "left" if end == "left" else "right")
        if met is not None and met.beyond == support.wall_name:
            left = Input(gaps and gaps.left, f"{here}/gaps/left")
            right = Input(gaps and gaps.right, f"{here}/gaps/right")
            return Side(name, board, board.edges.ends, f"{here}/edges/ends", left if end == "left" else right)
    raise Missing(["/corners"])


def sides(desk: Desk, plan: Plan, support: Support) -> list[Side]:
    """The edges of all boards on the support that lie at its wall. Raises Missing."""
    if not support.boards:
        desk.need(boards_on(support))
    return [side_at(plan, support, name, board) for name, board in support.boards]


def faces_board(desk: Desk, support: Support, above_seat: float, radius: Callable[[], float]) -> bool:
    """Whether a head of this `radius`, its centre `above_seat` mm over the seat leg, lies beside a board's edge."""
    desk.need(boards_on(support))
    thick = [Input(board.thickness, f"/boards/{name}/thickness") for name, board in support.boards]
    desk.need_all(*thick)
    highest = max(desk.length(one) for one in thick)
    # A hole within the board's thickness is beside it whatever its head; only above it does the head decide.
    return above_seat < highest or above_seat - radius() < highest


def gap_at_leg(desk: Desk, plan: Plan, support: Support) -> float:
    """The narrowest gap between the wall leg and a board beside it, mm. Raises Missing."""
    gaps = [side.gap for side in sides(desk, plan, support)]
    desk.need_all(*gaps)
    return min(desk.length(gap) for gap in gaps)


def relief(desk: Desk, side: Side) -> float:
    """How much room the edge's easing and the gap leave in the heel, mm. A full round is half the board.

    A sharp edge has its gap alone. Raises Missing.
    """
    edge = side.edge
    desk.need(Input(edge.ease, f"{side.edge_at}/ease"))
    if edge.ease == "sharp":
        return desk.length(side.gap)
    half = None if edge.ease != "bullnose" or side.board.thickness is None else side.board.thickness / 2
    size = Input(edge.size if edge.size is not None else half, f"{side.edge_at}/size")
    desk.need_all(size, side.gap)
    return desk.length(side.gap) + desk.length(size)
