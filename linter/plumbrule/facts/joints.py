"""Rows of the gaps at the edges of panels, and of the sealant and trim that close them."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_joints import JOINT
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.joints_bead import work_bead, work_closing
from plumbrule.facts.joints_edges import Edge, edges, gap_at_floor, length, unknown_at
from plumbrule.facts.joints_movement import Movements
from plumbrule.facts.joints_sealant import SealantNeed, sealant_rows, sealant_volumes
from plumbrule.facts.joints_trim import trim_rows
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan

__all__ = ["SealantNeed", "joints_rows", "sealant_volumes"]


def joints_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows of joints, sealants and trims. A plan without panels has none."""
    if not plan.model.panels:
        return {}
    movements = Movements()
    placed = [(edge, _joint(edge, movements)) for edge in edges(plan)]
    return {
        "joint": tuple(row for _, row in placed),
        "sealant": sealant_rows(plan, carried),
        "trim": trim_rows(plan, placed),
    }


def _joint(edge: Edge, movements: Movements) -> Row:
    desk = Desk(JOINT, edge.at, edge.at, edge.label)
    if edge.kind is None:
        return _unknown(desk, edge)
    desk.set("kind", edge.kind, f"{edge.at}/walls")
    core = Input(edge.field.panel.core, f"{edge.at}/panel/core")
    desk.copy("core", core)
    desk.get("foam_core", lambda: desk.word(core).endswith(("foam", "foamed PVC")))
    desk.get("length", lambda: length(desk, edge))
    if edge.gap is not None:
        gap = edge.gap
        at_floor = edge.kind == "floor"
        desk.get("gap", lambda: gap_at_floor(desk, edge)[0] if at_floor else desk.length(gap))
        desk.get("gap_widest", lambda: gap_at_floor(desk, edge)[1] if at_floor else desk.length(gap))
    movements.work(desk, edge)
    work_closing(desk, edge)
    if edge.listed_as is not None:
        work_bead(desk, edge)
    return desk.row()


def _unknown(desk: Desk, edge: Edge) -> Row:
    """An end of which nobody says what is there. Leaving it out would pass it in silence."""

    def nobody_says() -> float:
        desk.need(Input(None, unknown_at(edge)))
        raise Missing([unknown_at(edge)])

    for fact in JOINT.facts:
        desk.get(fact.name, nobody_says)
    return desk.row()
