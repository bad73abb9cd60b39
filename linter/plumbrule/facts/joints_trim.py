"""Trims along the edges of panels: what they hide, and whether those that hold the panels are there before them."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_joints import TRIM
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.joints_bead import runs_along
from plumbrule.facts.joints_edges import Edge
from plumbrule.facts.order import order
from plumbrule.facts.row_field import number_of
from plumbrule.mechanics.given import Given, number, si, steps
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.panels import TrimPart
from plumbrule.plan.plan_file import Plan

# The panel goes into these; the others are laid over its edge.
CAPTURING = ("J", "H")


def trim_rows(plan: Plan, placed: Sequence[tuple[Edge, Row]]) -> tuple[Row, ...]:
    """One row for each trim. `placed` are the edges of the panels with their rows."""
    return tuple(_trim(plan, name, trim, placed) for name, trim in (plan.model.trims or {}).items())


def _trim(plan: Plan, name: str, trim: TrimPart, placed: Sequence[tuple[Edge, Row]]) -> Row:
    here = f"/trims/{name}"
    desk = Desk(TRIM, here, here, f"trim {name}")
    mine = [(edge, row) for edge, row in placed if edge.kind is not None and runs_along(edge, trim)]
    desk.set("kind", trim.kind, f"{here}/kind")
    corner = (plan.model.corners or {}).get(trim.along)
    desk.set("along", f"{corner.turn} corner" if corner else trim.along, f"{here}/along")
    desk.set("closes", float(len(mine)), f"{here}/along")
    desk.copy("covers", Input(trim.covers, f"{here}/covers"))
    if mine:
        desk.get("to_hide", lambda: _to_hide(desk, mine))
    desk.set("captures", trim.kind in CAPTURING, f"{here}/kind")
    if mine:
        desk.get("set_before_panels", lambda: _set_first(desk, plan, name, mine))
    return desk.row()


def _to_hide(desk: Desk, mine: Sequence[tuple[Edge, Row]]) -> Worked:
    """The most of all its edges: the gap where it is widest, and what the panels shrink back. A corner has no gap."""
    wanting = [
        pointer for _, row in mine for field in ("gap_widest", "movement") for pointer in row.missing.get(field, ())
    ]
    if wanting:
        raise Missing(wanting)
    found = []
    for edge, row in mine:
        gap: Given = number_of(desk, row, "gap_widest") if edge.gap is not None else 0.0
        found.append(_hidden(gap, number_of(desk, row, "movement")))
    return max(found, key=si)


def _hidden(gap: Given, movement: Given) -> Worked:
    return Worked(
        "h", "what the trim has to hide", "W + m", (number("W", gap, "mm"), number("m", movement, "mm")),
        si(gap) + si(movement), "mm", "geometry of the joint", steps=steps(gap, movement),
    )  # fmt: skip


def _set_first(desk: Desk, plan: Plan, name: str, mine: Sequence[tuple[Edge, Row]]) -> bool:
    """Whether every laying of its panels waits for a step that fits it."""
    steps_of = order(plan)
    if not steps_of.written:
        desk.need(Input(None, "/steps"))
    fitting = [
        step for task in ("fit corner trim", "fit base trim", "lay panels")
        for step in steps_of.doing(task) if name in (steps_of.step(step).works_on or ())
    ]  # fmt: skip
    laying = dict.fromkeys(
        step for edge, _ in mine for part in (edge.field_name, edge.wall_name)
        for step in steps_of.doing("lay panels", part)
    )  # fmt: skip
    for step in fitting:
        desk.need(Input(True, f"{steps_of.pointer(step)}/after"))
    for step in laying:
        desk.need(Input(True, f"{steps_of.pointer(step)}/after"))
    if not laying:
        raise Missing(["/steps"])
    return all(any(one == lay or steps_of.before(one, lay) for one in fitting) for lay in laying)
