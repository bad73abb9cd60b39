"""The drilling schedule: each angle, bracket and cleat with its rows of holes, every mark from its left end."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from plumbrule.facts.drilling import Drilling, Leg
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.screws import PilotHole


class HoleRow(NamedTuple):
    """One row of holes: how far it lies from the heel (of a cleat: from its upper edge), what it is drilled with, and
    its marks from the left end of the part, from left to right; mm, None where it is not known."""

    leg: Leg
    letter: str
    from_heel: float | None
    bit: float | None
    slot: float | None
    slot_runs: str
    sink_angle: float | None
    sink_diameter: float | None
    screw: str
    pilot_thread: float | None
    pilot_shank: float | None
    marks: tuple[float | None, ...]


class DrillSheet(NamedTuple):
    """One part to be drilled; of brackets alike one sheet, with a place on the wall for each.

    `hand` says on which side of its board a return stands: two returns are no mirror image of each other to a drill.
    `on_wall` are the places of the wall marks along the wall. `missing` are the pointers that marks wait for.
    """

    kind: str
    name: str
    pointer: str
    wall: str
    section: str
    wall_leg: str
    wall_leg_size: float | None
    seat_leg_size: float | None
    thickness: float | None
    metal: str
    length: float | None
    ends: tuple[str, str]
    hand: str
    lining_behind: str
    starts: tuple[float | None, ...]
    rows: tuple[HoleRow, ...]
    on_wall: tuple[float | None, ...]
    missing: tuple[str, ...]

    @property
    def holes(self) -> int:
        """Holes of one such part."""
        return sum(len(row.marks) for row in self.rows)

    def to_right_end(self, leg: Leg) -> float | None:
        """From the last mark of a leg to the right end of the part; None where either is not known."""
        marks = [mark for row in self.rows if row.leg == leg for mark in row.marks]
        known = [mark for mark in marks if mark is not None]
        if self.length is None or not marks or len(known) < len(marks):
            return None
        return self.length - max(known)


def drill_sheets(plan: Plan, carried: Sequence[Support]) -> tuple[DrillSheet, ...]:
    """A sheet for each angle and cleat, and one for all brackets of a name."""
    alike: dict[tuple[str, str], list[Support]] = {}
    for support in carried:
        alike.setdefault((support.kind, support.name), []).append(support)
    return tuple(_sheet(plan, same) for same in alike.values())


def _sheet(plan: Plan, alike: Sequence[Support]) -> DrillSheet:
    one = alike[0]
    rows = tuple(_rows(plan, one.drillings))
    walls = [[hole.on_wall.value for hole in support.drillings if hole.leg == "wall"] for support in alike]
    missing = dict.fromkeys(
        pointer
        for support in alike
        for source in (support.left, support.length, *(hole.x for hole in support.drillings),
                       *(hole.y for hole in support.drillings))
        if source.value is None
        for pointer in (source.pointer, *source.also)
    )  # fmt: skip
    return DrillSheet(
        one.kind, one.name, one.pointer, one.wall_name, _section(plan, one), one.wall_leg,
        _number(one.wall_leg_size.value), _number(one.seat_leg_size.value), _number(one.thickness.value),
        _metal(plan, one), _number(one.length.value), one.ends, _hand(plan, one), str(one.lining_behind.value or ""),
        tuple(_number(support.left.value) for support in alike), rows,
        tuple(_in_order(_number(value) for values in walls for value in values)), tuple(missing),
    )  # fmt: skip


def _rows(plan: Plan, drillings: Sequence[Drilling]) -> Iterator[HoleRow]:
    found: dict[tuple[str, str], list[Drilling]] = {}
    for hole in drillings:
        found.setdefault((hole.leg, hole.label[:1]), []).append(hole)
    for (_, letter), holes in found.items():
        of = holes[0].holes
        screw = (plan.model.screws or {}).get(of.screw.value or "")
        pilot = screw.pilot if screw and isinstance(screw.pilot, PilotHole) else None
        sink = of.countersink.value
        yield HoleRow(
            holes[0].leg, letter, _number(holes[0].y.value), of.diameter.value, of.slot.value, of.slot_runs.value or "",
            sink.angle if sink else None, sink.diameter if sink else None, of.screw.value or "",
            pilot.thread if pilot else None, pilot.shank if pilot else None,
            tuple(_in_order(_number(hole.x.value) for hole in holes)),
        )  # fmt: skip


def _in_order(values: Iterator[float | None]) -> list[float | None]:
    """Each once, from left to right; what is not known last."""
    return sorted(dict.fromkeys(values), key=lambda value: float("inf") if value is None else value)


def _section(plan: Plan, support: Support) -> str:
    parts = plan.model.angles if support.kind == "angle" else plan.model.brackets if support.kind == "bracket" else None
    return getattr((parts or {}).get(support.name), "section", None) or ""


def _metal(plan: Plan, support: Support) -> str:
    if support.kind == "cleat":
        return (plan.model.cleats or {})[support.name].species
    return str(support.steel.value or "")


def _hand(plan: Plan, support: Support) -> str:
    """`left return` or `right return` of the board it carries round a corner, seen by someone who faces the board's
    wall; empty for a part along the board's own wall."""
    for name, board in support.boards:
        if board.wall == support.wall_name:
            continue
        for corner in (plan.model.corners or {}).values():
            if (corner.from_, corner.to) == (support.wall_name, board.wall):
                return f"left return of {name}"
            if (corner.from_, corner.to) == (board.wall, support.wall_name):
                return f"right return of {name}"
    return ""


def _number(value: object) -> float | None:
    return float(value) if isinstance(value, int | float) else None
