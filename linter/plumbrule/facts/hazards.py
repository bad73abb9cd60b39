"""Rows of what can hurt someone, and of what is written down and worn against it."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_hazards import BOARD_CLIMB, PANEL_FIRE, WORK
from plumbrule.facts.board_place import front_edge, walled_ends
from plumbrule.facts.board_screws import placed_boards
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.hazard_parts import Parts, children
from plumbrule.facts.hazard_steps import hazard_step_rows
from plumbrule.facts.hazard_walls import old_wall_rows
from plumbrule.facts.protection import protection_rows
from plumbrule.facts.supports import STEP_HEIGHT, Support
from plumbrule.plan.boards import Board
from plumbrule.plan.fixtures import Opening
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan

_FOAMS = ("foamed PVC", "polystyrene foam", "polyethylene foam")
# Density is kept in kg/mm³; a rule judges kilograms in a cubic metre.
_CUBIC_METRE = 1e9


def hazards_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind."""
    parts = Parts(plan, carried)
    return {
        "work": (_work(plan),),
        "old_wall": old_wall_rows(parts),
        "hazard_step": hazard_step_rows(parts),
        "panel_fire": tuple(_fire(plan, name, field) for name, field in (plan.model.panels or {}).items()),
        "board_climb": tuple(_climb(parts, name, board) for name, board in (plan.model.boards or {}).items()),
        "protection": protection_rows(plan),
    }


def _work(plan: Plan) -> Row:
    desk = Desk(WORK, "/steps", "/steps", "the work")
    steps = plan.model.steps
    desk.copy("steps", Input(None if steps is None else float(len(steps)), "/steps"))
    return desk.row()


def _fire(plan: Plan, name: str, field: PanelField) -> Row:
    here = f"/panels/{name}"
    at = f"{here}/panel"
    desk = Desk(PANEL_FIRE, here, here, f"panels {name}")
    panel = field.panel
    desk.copy("core", Input(panel.core, f"{at}/core"))
    desk.get("foam_plastic", lambda: desk.text("core") in _FOAMS)
    desk.set("flame_spread_known", panel.flame_spread is not None, f"{at}/flame_spread")
    desk.copy("flame_spread", Input(panel.flame_spread, f"{at}/flame_spread"))
    desk.copy("smoke_developed", Input(panel.smoke_developed, f"{at}/smoke_developed"))
    desk.copy("room_test", Input(panel.room_test, f"{at}/room_test"))
    desk.get("kilograms", lambda: desk.length(Input(panel.density, f"{at}/density")) * _CUBIC_METRE)
    site = plan.model.site
    desk.get("public_room", lambda: desk.word(Input(site.use if site else None, "/site/use")) == "public room")
    return desk.row()


def _climb(parts: Parts, name: str, board: Board) -> Row:
    here = f"/boards/{name}"
    desk = Desk(BOARD_CLIMB, here, here, f"board {name}")
    desk.get("children", lambda: children(desk, parts.plan))

    def top() -> float:
        under = [support.bears_at for support in parts.under(name)]
        thick = Input(board.thickness, f"{here}/thickness")
        desk.need_all(*(under or [Input(None, f"{here}/bears_on")]), thick)
        return max(desk.length(one) for one in under) + desk.length(thick)

    def sills() -> list[float]:
        """Openings at the board, at its back and round its corners, that go on above it: from its top to their lower
        edge, mm; below zero where they begin under it."""
        found = [
            _sill(desk, place, opening, top())
            for place, opening in _openings(desk, parts, board.wall)
            if _above(desk, place, opening, top())
            and _beside(desk, parts, name, board, opening.left or 0.0, opening.width or 0.0)
        ]
        placed = placed_boards(parts.plan, parts.supports)[name]
        for end, met in walled_ends(placed).items():
            if met.beyond is None:
                continue
            openings = [one for one in _openings(desk, parts, met.beyond) if _above(desk, *one, top())]
            if openings:
                front = front_edge(desk, placed)
                width = desk.length(Input(parts.walls[met.beyond].width, f"/walls/{met.beyond}/width"))
                begins, ends = (0.0, front) if end == "right" else (width - front, width)
                for place, opening in openings:
                    left, wide = opening.left or 0.0, opening.width or 0.0
                    if left < ends and left + wide > begins:
                        found.append(_sill(desk, place, opening, top()))
        return found

    desk.get("low", lambda: top() < STEP_HEIGHT)
    desk.get("under_a_window", lambda: bool(sills()))
    if desk.known("under_a_window") and desk.true("under_a_window"):
        desk.get("sill_over_board", lambda: min(sills()))
    return desk.row()


def _openings(desk: Desk, parts: Parts, wall_name: str) -> list[tuple[str, Opening]]:
    """The openings of a wall with their pointers. Raises Missing."""
    wall, at = parts.walls.get(wall_name), f"/walls/{wall_name}/openings"
    openings = wall.openings if wall else None
    desk.need(Input(openings, at))
    found = [(f"{at}/{name}", one) for name, one in (openings or {}).items()]
    for place, one in found:
        desk.need_all(*(Input(getattr(one, key), f"{place}/{key}") for key in ("left", "width", "bottom", "top")))
    return found


def _above(desk: Desk, place: str, opening: Opening, top: float) -> bool:
    return desk.length(Input(opening.top, f"{place}/top")) > top


def _sill(desk: Desk, place: str, opening: Opening, top: float) -> float:
    return desk.length(Input(opening.bottom, f"{place}/bottom")) - top


def _beside(desk: Desk, parts: Parts, name: str, board: Board, left: float, width: float) -> bool:
    """Whether the opening stands over the board. A board without a left end fills its wall."""
    if not parts.plan.is_written(f"/boards/{name}/left"):
        return True
    begins = desk.length(Input(board.left, f"/boards/{name}/left"))
    ends = begins + desk.length(Input(board.length, f"/boards/{name}/length"))
    return left < ends and left + width > begins
