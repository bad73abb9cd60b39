"""What a proof load puts on a board, and what that board is declared to carry."""

from __future__ import annotations

from collections.abc import Iterator

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import Order
from plumbrule.plan.boards import Board
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.quantities import Load

PROOF = "proof load"


def proof_load(desk: Desk, plan: Plan, steps: Order, name: str) -> None:
    """Fills in the load of a step that proves boards, and the greatest that one of these is declared for."""
    step, here = steps.step(name), steps.pointer(name)
    desk.copy("proof_load", Input(step.load, f"{here}/load"))

    def declared() -> float:
        if step.works_on is None:
            raise Missing([f"{here}/works_on"])
        desk.need(Input(True, f"{here}/works_on"))
        found: list[float] = []
        wanting: list[str] = []
        for board_name, board in _proved(plan, step.works_on):
            try:
                found.append(_declared(desk, f"/boards/{board_name}", board))
            except Missing as missing:
                wanting.extend(missing.pointers)
        if wanting or not found:
            raise Missing(wanting or [f"{here}/works_on"])
        return max(found)

    desk.get("declared_load", declared)


def _proved(plan: Plan, works_on: tuple[str, ...] | list[str]) -> Iterator[tuple[str, Board]]:
    """The boards that are named, and those on the steel and cleats that are named."""
    for name, board in (plan.model.boards or {}).items():
        if name in works_on or not set(board.bears_on).isdisjoint(works_on):
            yield name, board


def _declared(desk: Desk, here: str, board: Board) -> float:
    """The person on a seat; of a shelf what stands on all of it, or in one place where that is more, N."""
    load = board.load
    point = Input(load.point if load else None, f"{here}/load/point")
    even = Input(load.uniform if load else None, f"{here}/load/uniform")
    if board.carries in ("seating", "standing") or even.value is None:
        return desk.length(point)
    value = desk.need(even)
    assert isinstance(value, Load)
    whole = float(value) * desk.length(Input(board.length, f"{here}/length"))
    if value.over_area:
        whole *= desk.length(Input(board.depth, f"{here}/depth"))
    return whole if point.value is None else max(whole, desk.length(point))
