"""Every crack of a board: how deep it goes, what it is filled with, how near the hold-down screws come to it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_boards import CRACK
from plumbrule.facts.board_place import Placed, front_edge, screw_spot
from plumbrule.facts.board_screws import HoldDown, hold_downs, placed_boards
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.row_field import of_row
from plumbrule.facts.supports import Support
from plumbrule.mechanics import crack as mechanics
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.boards import Crack
from plumbrule.plan.plan_file import Plan


def crack_rows(plan: Plan, supports: Sequence[Support], boards: Mapping[str, Row]) -> tuple[Row, ...]:
    """One row a crack. `boards` are the rows of the boards by name."""
    placed = placed_boards(plan, supports)
    return tuple(
        _row(one, hold_downs(one, placed), boards[name], f"{one.here}/cracks/{crack_name}", crack_name, crack)
        for name, one in placed.items()
        for crack_name, crack in one.board.cracks.items()
    )


def _row(placed: Placed, screws: Sequence[HoldDown], board: Row, here: str, name: str, crack: Crack) -> Row:
    desk = Desk(CRACK, here, placed.here, f"crack {name} of board {placed.name}")
    desk.get("carries_people", lambda: of_row(desk, board, "carries_people"))
    for key in ("length", "depth", "width", "from_front"):
        desk.copy(key, Input(getattr(crack, key), f"{here}/{key}"))
    said = "" if placed.plan.is_written(f"{here}/fill") else "nothing is written: an open crack is taken"
    desk.copy("fill", Input(crack.fill, f"{here}/fill", said))
    desk.copy("thickness", placed.of("thickness"))
    desk.get("depth_share", lambda: desk.number("depth") / desk.number("thickness"))
    desk.get("parts_the_board", lambda: mechanics.cuts_through(desk.number("depth"), desk.number("thickness")))
    desk.set("board_has_screws", bool(screws), f"{placed.here}/bears_on")
    if screws:
        desk.get("screw_distance", lambda: _nearest(desk, placed, screws, crack, here))
    return desk.row()


def _nearest(desk: Desk, placed: Placed, screws: Sequence[HoldDown], crack: Crack, here: str) -> Worked:
    begins = Input(crack.from_left, f"{here}/from_left")
    desk.need_all(begins, Input(crack.length, f"{here}/length"), Input(crack.from_front, f"{here}/from_front"))
    start, run = desk.length(begins), desk.number("length")
    behind = desk.number("from_front")
    front = front_edge(desk, placed)
    found = []
    for screw in screws:
        spot = screw_spot(desk, placed, *screw)
        found.append(mechanics.screw_to_crack(spot.to_left, front - spot.across, start, start + run, behind))
    return min(found, key=si)
