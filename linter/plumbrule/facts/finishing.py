"""Rows of sanding, filling and finishing boards."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_finishing import FILL, FINISH, GRIT_STEP
from plumbrule.facts.board_place import Placed
from plumbrule.facts.board_screws import placed_boards
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.finishing_steps import Clock
from plumbrule.facts.order import order
from plumbrule.facts.reference import tables
from plumbrule.facts.step_times import StepsOf
from plumbrule.facts.supports import Support, people_on
from plumbrule.mechanics import coats, grit
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.boards import Crack
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.quantities import GritSize

_SIDES = ("top", "bottom", "edges")


def finishing_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Every change of grit, the finish of every board, and every crack that is filled with epoxy."""
    placed = placed_boards(plan, carried) if plan.model.boards else {}
    return {
        "grit_step": tuple(row for one in placed.values() for row in _grit_steps(one)),
        "finish": tuple(_finish(one) for one in placed.values()),
        "fill": tuple(
            _fill(one, name, crack)
            for one in placed.values()
            for name, crack in one.board.cracks.items()
            if crack.fill == "epoxy"
        ),
    }


def _grit_steps(placed: Placed) -> Iterator[Row]:
    here = f"{placed.here}/sanding"
    grits = placed.board.sanding
    if grits is None:
        desk = Desk(GRIT_STEP, here, placed.here, f"sanding of board {placed.name}")
        for field in ("from_grit", "to_grit", "from_grain", "to_grain", "ratio"):
            desk.copy(field, Input(None, here))
        yield desk.row()
        return
    for place, (first, second) in enumerate(pairwise(grits), 1):
        yield _change(placed, place, first, second)


def _change(placed: Placed, place: int, first: GritSize, second: GritSize) -> Row:
    before, at = f"{placed.here}/sanding/{place - 1}", f"{placed.here}/sanding/{place}"
    desk = Desk(GRIT_STEP, at, placed.here, f"sanding of board {placed.name} from {first} to {second}")
    desk.set("from_grit", float(first.number), before)
    desk.set("to_grit", float(second.number), at)
    desk.get("from_grain", lambda: _grain(desk, first, before))
    desk.get("to_grain", lambda: _grain(desk, second, at))

    def ratio() -> Worked:
        # The finer one first: a finding stands where the jump ends.
        fine, coarse = desk.numbers("to_grain", "from_grain")
        return grit.step(coarse, fine)

    desk.get("ratio", ratio)
    return desk.row()


def _grain(desk: Desk, size: GritSize, pointer: str) -> float:
    desk.need(Input(str(size), pointer))
    return grit.grain(tables(), size.number, size.iso)


def _clock(placed: Placed, desk: Desk) -> Clock:
    return Clock(desk, StepsOf(order(placed.plan), desk, (placed.name,)))


def _finish(placed: Placed) -> Row:
    here, board = placed.here, placed.board
    at = f"{here}/finish"
    desk = Desk(FINISH, at, here, f"finish of board {placed.name}")
    finish = board.finish
    kind = Input(finish.kind if finish else None, f"{at}/kind" if finish else at)
    desk.copy("kind", kind)
    desk.get("carries_people", lambda: _carries_people(desk, placed))
    if kind.value == "none":
        return desk.row()
    desk.get("film", lambda: coats.is_film(tables(), desk.text("kind")))
    _last_grit(desk, placed)
    clock = _clock(placed, desk)
    desk.get("dust_taken_away", clock.dust_taken_away)
    desk.get("sharpest_edge", lambda: min(_ease(desk, placed, edge) for edge in ("front", "back", "ends")))
    for side in _SIDES:
        pointer = f"{at}/coats/{side}"
        said = "" if placed.plan.is_written(pointer) else "nothing is written: no coat is taken"
        number = None if finish is None else float(getattr(finish.coats, side))
        desk.copy(f"coats_{side}", Input(number, pointer if finish else at, said))
    desk.get("coats_most", lambda: max(desk.numbers(*(f"coats_{side}" for side in _SIDES))))
    if not desk.known("coats_most"):
        desk.get("between_coats", lambda: desk.number("coats_most"))
    elif (most := desk.number("coats_most")) > 1:
        # Known already, so that a finding stands at the wait and not at the number of coats.
        desk.get("between_coats", lambda: clock.between_coats(most))
    for field, what in (("recoat_needed", "recoat"), ("handle_needed", "handle"), ("cure_needed", "cure")):
        desk.get(field, lambda what=what: coats.clock(tables(), desk.text("kind"), what))  # type: ignore[misc]
    desk.get("set_after_finish", clock.set_after_finish)
    if not desk.known("set_after_finish") or desk.true("set_after_finish"):
        desk.get("set_after", clock.set_after)
    desk.get("loaded_after", lambda: clock.loaded_after("finish board"))
    return desk.row()


def _carries_people(desk: Desk, placed: Placed) -> bool:
    """Whether people sit, stand or step on the board: it is meant for that, or low enough that they will."""
    if placed.board.carries in ("seating", "standing"):
        return bool(desk.word(placed.of("carries")))
    if not placed.supports:
        raise Missing([f"{placed.here}/bears_on"])
    here = ((placed.name, placed.board),)
    found = [people_on(placed.plan, here, one.pointer, _bears_at(one)) for one in placed.supports]
    for one in found:
        if one.value:
            return bool(desk.need(one))
    desk.need_all(*found)
    return False


def _bears_at(support: Support) -> float | None:
    """Height of what the board lies on, where it is known."""
    value = support.bears_at.value
    return float(value) if isinstance(value, int | float) else None


def _last_grit(desk: Desk, placed: Placed) -> None:
    grits = placed.board.sanding
    last = grits[-1] if grits else None
    pointer = f"{placed.here}/sanding" + (f"/{len(grits) - 1}" if grits else "")
    desk.copy("last_grit", Input(None if last is None else float(last.number), pointer))

    def grain() -> float:
        desk.number("last_grit")
        assert last is not None
        return _grain(desk, last, pointer)

    desk.get("last_grain", grain)
    desk.get("coarsest_grain", lambda: coats.last_grit(tables(), desk.text("kind")).coarsest)
    desk.get("may_be_too_fine", lambda: coats.last_grit(tables(), desk.text("kind")).finest is not None)
    if not desk.known("may_be_too_fine") or desk.true("may_be_too_fine"):
        desk.get("finest_grain", lambda: coats.last_grit(tables(), desk.text("kind")).finest or 0.0)


def _ease(desk: Desk, placed: Placed, edge: str) -> float:
    """What is taken off an edge, mm: its radius or chamfer; half the board for a full round without a size."""
    here = f"{placed.here}/edges/{edge}"
    made = getattr(placed.board.edges, edge)
    said = "" if placed.plan.is_written(f"{here}/ease") else "nothing is written: a sharp edge is taken"
    ease = desk.word(Input(made.ease, f"{here}/ease", said))
    if ease == "sharp":
        return 0.0
    if ease == "bullnose" and made.size is None:
        return desk.length(placed.of("thickness")) / 2
    return desk.length(Input(made.size, f"{here}/size"))


def _fill(placed: Placed, name: str, crack: Crack) -> Row:
    at = f"{placed.here}/cracks/{name}"
    desk = Desk(FILL, at, placed.here, f"fill of crack {name} in board {placed.name}")
    clock = _clock(placed, desk)
    desk.copy("depth", Input(crack.depth, f"{at}/depth"))
    filled = sum(one.fill != "none" for one in placed.board.cracks.values())
    desk.get("pours", lambda: float(clock.pours(filled)))

    def pour() -> Worked:
        depth, pours = desk.numbers("depth", "pours")
        return coats.pour_depth(depth, int(pours))

    desk.get("pour", pour)
    desk.get("worked", clock.worked)
    if not desk.known("worked") or desk.true("worked"):
        desk.get("worked_after", clock.worked_after)
    desk.get("loaded_after", lambda: clock.loaded_after("fill cracks"))
    finish = placed.board.finish
    kind = Input(finish.kind if finish else None, f"{placed.here}/finish" + ("/kind" if finish else ""))
    desk.get("finish_soaks_in", lambda: _soaks_in(desk.word(kind)))
    return desk.row()


def _soaks_in(kind: str) -> bool:
    return kind != "none" and not coats.is_film(tables(), kind)
