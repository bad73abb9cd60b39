"""Every row of the load path: board, places on the wall, seat screws, legs, angles and blocks, under every load."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import BOARD_LOAD
from plumbrule.facts import load_back_alone, load_three_sides
from plumbrule.facts.desk import Desk, Missing, Once
from plumbrule.facts.load_block import block_rows
from plumbrule.facts.load_board import BoardRow
from plumbrule.facts.load_brackets import Brackets
from plumbrule.facts.load_chosen import Chosen
from plumbrule.facts.load_cleat import cleat_rows
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load
from plumbrule.facts.load_path import Path, paths
from plumbrule.facts.load_places import Rows
from plumbrule.facts.load_push import pushed_places
from plumbrule.facts.load_push_board import push_rows
from plumbrule.facts.load_seat_screws import hold_down_rows
from plumbrule.facts.load_stations import Demands, StationRow
from plumbrule.facts.load_steel import beam_rows, leg_rows
from plumbrule.facts.supports import Support
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.plan.plan_file import Plan

KINDS = ("board_load", "station_load", "hold_down", "leg_load", "beam_load", "block_load", "push_load", "cleat_load")


def load_rows(
    plan: Plan, supports: Sequence[Support], screws: Sequence[Row], holes: Sequence[Row], chosen: Chosen
) -> Mapping[str, tuple[Row, ...]]:
    """All rows by kind. `screws` and `holes` are finished rows, one a drilling, in the order of the supports; `chosen`
    are the loads to try."""
    drillings = [one for support in supports for one in support.drillings]
    rows: Rows = {id(one): pair for one, pair in zip(drillings, zip(screws, holes, strict=True), strict=True)}
    found: dict[str, list[Row]] = {kind: [] for kind in KINDS}
    for path in paths(plan, supports):
        for row in _of_board(plan, path, rows, chosen):
            found[row.kind].append(row)
    return {kind: tuple(some) for kind, some in found.items()}


def _of_board(plan: Plan, path: Path, rows: Rows, chosen: Chosen) -> Iterator[Row]:
    ground = Ground(plan, path, rows, chosen)
    brackets = Brackets(ground) if path.carried == "brackets" else None
    loads = ground.kinds.all()

    def start(desk: Desk, load: Load) -> None:
        _start(desk, ground, load)

    others = [] if path.carried == "not covered" else list(_on_supports(ground, brackets, rows, loads, start))
    for load in loads:
        yield BoardRow(ground, brackets, load, others).write(lambda desk, load=load: start(desk, load))  # type: ignore[misc]
    yield from others


def _on_supports(
    ground: Ground, brackets: Brackets | None, rows: Rows, loads: Sequence[Load], start: Callable[[Desk, Load], None]
) -> Iterator[Row]:
    """Everything under a board that is covered."""
    path = ground.path
    demands = {
        (id(support), load): _demands(ground, brackets, support, load) for support in path.supports for load in loads
    }
    for support in path.supports:
        for index in _numbers(ground, support):
            for load in loads:
                row = StationRow(ground, support, index, load, demands[id(support), load])
                yield row.write(lambda desk, load=load: start(desk, load))  # type: ignore[misc]
    pushed = list(pushed_places(ground, brackets)) if ground.kinds.pushes() else []
    for support, load, work in pushed:
        demands[id(support), load] = work
        for index in _numbers(ground, support):
            yield StationRow(ground, support, index, load, work).write(lambda desk, load=load: start(desk, load))  # type: ignore[misc]
    yield from push_rows(ground, rows, start)
    yield from hold_down_rows(ground, brackets, rows, loads, start)
    yield from leg_rows(ground, brackets, loads, start)
    yield from beam_rows(ground, loads, start)
    yield from cleat_rows(ground, loads, start)
    yield from block_rows(ground, demands, start)


def _start(desk: Desk, ground: Ground, load: Load) -> None:
    """What every row of a load says: how the board is carried, by whom it is used, and what the load rests on."""
    path = ground.path
    if path.wanting:
        desk.get("carried", lambda: _missing(path))
    else:
        desk.set("carried", path.carried, f"{path.pointer}/bears_on")
    desk.copy("carries_people", ground.kinds.people)
    desk.set("case", load.case, path.pointer)
    desk.set("standing", load.standing, path.pointer)


def _missing(path: Path) -> str:
    raise Missing(path.wanting)


def _numbers(ground: Ground, support: Support) -> Sequence[int | None]:
    desk = Desk(BOARD_LOAD, "", "", "")
    try:
        return range(len(ground.places_on(desk, support)))
    except (Missing, OutsideRulebook, NotPossible):
        return (None,)


def _demands(ground: Ground, brackets: Brackets | None, support: Support, load: Load) -> Demands:
    def work(desk: Desk) -> Sequence[Demand]:
        path = ground.path
        path.require("three sides", "cleats", "back angle alone", "brackets")
        if support.kind == "bracket" and brackets is not None:
            return brackets.demands(desk, support, load)
        if path.carried == "back angle alone":
            return load_back_alone.demands(desk, ground, load)
        if support is path.back:
            return load_three_sides.on_back(desk, ground, load)
        return load_three_sides.on_return(desk, ground, support, load)

    once: Once[Sequence[Demand]] = Once(BOARD_LOAD, work)
    return once.take
