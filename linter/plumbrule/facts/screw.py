"""One row for every screw as driven: through steel or a cleat into a stud or block, or up into a board."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_framing import SCREW
from plumbrule.facts.board import board_rows
from plumbrule.facts.board_place import Placed
from plumbrule.facts.board_screws import board_of, placed_boards
from plumbrule.facts.desk import Desk
from plumbrule.facts.driver import work_driver
from plumbrule.facts.fastening import Fastening, diameter, fastenings
from plumbrule.facts.screw_board import work_in_board, work_without_board
from plumbrule.facts.screw_lengths import work_lengths
from plumbrule.facts.screw_pilot import work_pilot
from plumbrule.facts.screw_place import Nearest, neighbours, work_neighbours, work_place_in_block, work_place_in_stud
from plumbrule.facts.screw_strength import work_outside, work_strength
from plumbrule.facts.services import work_services
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import gravity
from plumbrule.plan.plan_file import Plan


def screw_rows(plan: Plan, supports: Sequence[Support], boards: Mapping[str, Row] | None = None) -> tuple[Row, ...]:
    """Every screw of the plan, support by support. `boards` are the rows of the boards by name; worked out here where
    they are not given."""
    if boards is None:
        boards = dict(zip(plan.model.boards or {}, board_rows(plan, supports), strict=True))
    placed = placed_boards(plan, supports)
    driven = [fastening for support in supports for fastening in fastenings(plan, support)]
    near = neighbours(driven)
    return tuple(_row(plan, fastening, near, placed, boards) for fastening in driven)


def _row(
    plan: Plan, fastening: Fastening, near: Mapping[int, Nearest], placed: dict[str, Placed], boards: Mapping[str, Row]
) -> Row:
    support, drilling, screw = fastening.support, fastening.drilling, fastening.screw
    desk = Desk(SCREW, drilling.pointer, support.pointer, f"screw {drilling.label} of {support.name}")
    desk.set("support", support.kind, support.pointer)
    desk.set("leg", drilling.leg, drilling.holes.pointer)
    desk.set(
        "into", fastening.wood.into, drilling.holes.into.pointer if drilling.holes.into.value else drilling.pointer
    )
    desk.copy("carries_people", support.carries_people)
    desk.copy("kind", fastening.of_screw("kind"))
    desk.copy("diameter", diameter(screw, fastening.here))
    work_lengths(desk, fastening)
    desk.get("specific_gravity", lambda: gravity(desk, fastening.wood))
    if fastening.in_wall:
        desk.set("along_grain", fastening.wood.into == "stud", drilling.holes.pointer)
        desk.copy("height", fastening.height)
        if fastening.wood.into == "stud":
            work_place_in_stud(desk, fastening)
        else:
            work_place_in_block(desk, fastening)
        work_services(desk, fastening)
    elif support.boards:
        board = board_of(support, drilling, placed)
        work_in_board(desk, fastening, board, boards[board.name])
    else:
        work_without_board(desk, fastening)
    work_neighbours(desk, fastening, near)
    work_pilot(desk, fastening)
    work_driver(desk, fastening, plan)
    work_outside(desk, fastening)
    cleat = (plan.model.cleats or {})[support.name] if support.kind == "cleat" else None
    work_strength(desk, fastening, cleat)
    return desk.row()
