"""Every board: where it lies, what it is for, what wood it is, how it is cut, and what holds it down."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_boards import BOARD
from plumbrule.facts.board_moisture import work_moisture
from plumbrule.facts.board_place import Placed, require_ends_known, walled_ends
from plumbrule.facts.board_room import carries_people, work_bearing, work_ends, work_height, work_reach
from plumbrule.facts.board_screws import HoldDown, corner_hold, hold_downs, pitches, placed_boards
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.order import order
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.mechanics.board_wood import SHEETS
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.steps import Step
from plumbrule.reading.quantities import Load


def board_rows(plan: Plan, supports: Sequence[Support]) -> tuple[Row, ...]:
    """One row a board."""
    boards = placed_boards(plan, supports)
    return tuple(_row(placed, boards) for placed in boards.values())


def _row(placed: Placed, boards: dict[str, Placed]) -> Row:
    desk = Desk(BOARD, placed.here, placed.here, f"board {placed.name}")
    screws = hold_downs(placed, boards)
    for key in ("species", "length", "depth", "thickness", "carries"):
        desk.copy(key, placed.of(key))
    desk.get("strength_published", lambda: _strength_published(desk.text("species")))
    desk.set("grade_known", placed.board.grade is not None, f"{placed.here}/grade")
    site = placed.plan.model.site
    desk.get("public_room", lambda: desk.word(Input(site.use if site else None, "/site/use")) == "public room")
    work_bearing(desk, placed)
    work_height(desk, placed, tuple(boards.values()))
    desk.get("carries_people", lambda: carries_people(desk, placed))
    work_reach(desk, placed)
    desk.get("front_ease", lambda: _front_ease(desk, placed))
    _declared(desk, placed)
    work_moisture(desk, placed, screws)
    work_ends(desk, placed)
    _cutting(desk, placed)
    _screws(desk, placed, screws)
    desk.set("cracks", float(len(placed.board.cracks)), f"{placed.here}/cracks")
    return desk.row()


def _strength_published(species: str) -> bool:
    """Whether bending, shear and bearing averages and a stiffness are published for it."""
    if species in SHEETS:
        return False
    row = tables().board(species)
    return None not in (row.rupture, row.elastic_modulus, row.shear, row.compression_across)


def _front_ease(desk: Desk, placed: Placed) -> float:
    """What is taken off the front edge, mm: its radius or chamfer; half the board for a full round."""
    here = f"{placed.here}/edges/front"
    edge = placed.board.edges.front
    said = "" if placed.plan.is_written(f"{here}/ease") else "nothing is written: a sharp edge is taken"
    ease = desk.word(Input(edge.ease, f"{here}/ease", said))
    if ease == "sharp":
        return 0.0
    if ease == "bullnose" and edge.size is None:
        return desk.number("thickness") / 2
    return desk.length(Input(edge.size, f"{here}/size"))


def _declared(desk: Desk, placed: Placed) -> None:
    load = placed.board.load
    desk.copy("declared_person", Input(load.point if load else None, f"{placed.here}/load/point"))
    even = Input(load.uniform if load else None, f"{placed.here}/load/uniform")

    def line() -> float:
        value = desk.need(even)
        assert isinstance(value, Load)
        return float(value) * desk.number("depth") if value.over_area else float(value)

    desk.get("declared_line", line)


def _cutting(desk: Desk, placed: Placed) -> None:
    """Whether an end that meets a panelled wall is cut when the panels are there to measure to."""
    walls = [met.beyond for met in walled_ends(placed).values() if met.beyond is not None]
    fields = {name for name, field in (placed.plan.model.panels or {}).items() if set(walls) & set(field.walls)}

    def meets() -> bool:
        require_ends_known(placed)
        for name in sorted(fields):
            desk.need(Input(True, f"/panels/{name}/walls"))
        return bool(fields)

    desk.get("meets_panels", meets)
    if not fields:
        return
    desk.copy("cut_long_by", placed.of("cut_long_by"))
    steps = placed.plan.model.steps

    def after_panels() -> bool:
        if steps is None:
            raise Missing(["/steps"])
        cuts, unsaid = _doing("cut board to length", {placed.name}, steps)
        lays, unsaid_lays = _doing("lay panels", fields | set(walls), steps)
        if (not cuts and unsaid) or (not lays and unsaid_lays):
            raise Missing([*(() if cuts else unsaid), *(() if lays else unsaid_lays)])
        for cut in cuts:
            desk.need(Input(True, f"/steps/{cut}/after"))
        known = order(placed.plan)
        return bool(cuts) and bool(lays) and all(known.before(lay, cut) for cut in cuts for lay in lays)

    desk.get("cut_after_panels", after_panels)


def _doing(task: str, parts: set[str], steps: Mapping[str, Step]) -> tuple[list[str], list[str]]:
    """The steps that do a task to any of these parts, and the pointers of those that do not say what they work on."""
    same = {name: step for name, step in steps.items() if step.task == task}
    unsaid = [f"/steps/{name}/works_on" for name, step in same.items() if step.works_on is None]
    return [name for name, step in same.items() if parts & set(step.works_on or ())], unsaid


def _screws(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> None:
    desk.get("screws", lambda: _count(desk, placed, screws))
    desk.get("pitches", lambda: float(len(pitches(desk, placed, screws))))
    if not (desk.known("pitches") and desk.number("pitches") == 0):
        desk.get("screw_pitch", lambda: max(pitches(desk, placed, screws)))
        desk.get("screw_pitch_shortest", lambda: min(pitches(desk, placed, screws)))
    if screws:
        desk.get("corner_hold", lambda: corner_hold(desk, placed, screws))


def _count(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> float:
    """How many there are. One whose place nobody knows may stand for any number. Raises Missing."""
    for screw in screws:
        desk.need_all(screw.drilling.on_wall)
    if not placed.supports:
        raise Missing([f"{placed.here}/bears_on"])
    for support in placed.supports:
        desk.need(Input(True, f"{support.pointer}/seat_holes"))
    return float(len(screws))
