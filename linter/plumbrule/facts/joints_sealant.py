"""Sealants: what each fills and how much that takes, when it goes in, and whether it is painted afterwards."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_joints import SEALANT
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.joints_bead import backer_of, depth, empty, hidden, runs_along, sealant_in
from plumbrule.facts.joints_edges import Edge, edges, gap_at_floor, length
from plumbrule.facts.order import order
from plumbrule.facts.supports import Support
from plumbrule.mechanics import sealant as mechanics
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked
from plumbrule.plan.panels import SealantPart
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.sealing import sealants_for

# Along a trim nobody writes a gap: a fillet with legs of 1/4 in is more than most hands lay there.
_FILLET = 6.35


class SealantNeed(NamedTuple):
    """What one sealant takes: its volume in mm³ filled flush, and the length of backer behind it in mm.

    Both are None where something is `missing` (plan pointers) or not possible (`reason`). `backer_length` is 0 where
    there is none. `assumed` says, by pointer, what was taken where the plan is silent.
    """

    volume: Worked | None
    backer_length: Worked | None
    missing: tuple[str, ...] = ()
    reason: str = ""
    assumed: tuple[tuple[str, str], ...] = ()


def sealant_volumes(plan: Plan, carried: Sequence[Support]) -> Mapping[str, SealantNeed]:
    """By the name of each sealant, what all its joints take. Worked once for a plan."""
    found: Mapping[str, SealantNeed] | None = plan.reckoned.get("/sealants volumes")
    if found is None:
        found = plan.reckoned["/sealants volumes"] = {
            name: _need(plan, name, sealant) for name, sealant in (plan.model.sealants or {}).items()
        }
    return found


def sealant_rows(plan: Plan, carried: Sequence[Support]) -> tuple[Row, ...]:
    """One row for each sealant."""
    needs = sealant_volumes(plan, carried)
    return tuple(_sealant(plan, name, part, needs[name]) for name, part in (plan.model.sealants or {}).items())


def _sealant(plan: Plan, name: str, sealant: SealantPart, need: SealantNeed) -> Row:
    here = f"/sealants/{name}"
    desk = Desk(SEALANT, here, here, f"sealant {name}")
    # A bead along a trim is one more joint, at the same edge of the panels.
    filled = [*(edge for edge in edges(plan) if sealant_in(edge) == name), *_trim_runs(plan, name)]
    desk.copy("kind", Input(sealant.kind, f"{here}/kind"))

    def joints() -> float:
        desk.need(Input(sealant.joints, f"{here}/joints"))
        return float(len(filled))

    desk.get("joints", joints)
    _times(desk, plan, name, filled)
    said = "" if plan.is_written(f"{here}/paintable") else "nothing is written: it takes no paint"
    desk.get("paintable", lambda: bool(desk.need(Input(sealant.paintable, f"{here}/paintable", said))))
    desk.get("volume", lambda: _of_need(desk, need, need.volume, here))
    desk.get("backer_length", lambda: _of_need(desk, need, need.backer_length, here))
    return desk.row()


def _times(desk: Desk, plan: Plan, name: str, filled: Sequence[Edge]) -> None:
    """When it goes in after the panels, and when paint comes after it."""
    of = order(plan)
    parts = dict.fromkeys([name, *(edge.field_name for edge in filled), *(edge.wall_name for edge in filled)])
    seals = dict.fromkeys(step for part in parts for step in of.doing("seal joints", part))
    presses = dict.fromkeys(
        step for task in ("lay panels", "roll panels") for edge in filled for part in (edge.field_name, edge.wall_name)
        for step in of.doing(task, part)
    )  # fmt: skip

    def need_steps() -> None:
        # Where there are steps, a finding stands at the one it is about.
        if not of.written:
            desk.need(Input(None, "/steps"))

    def applied() -> bool:
        need_steps()
        for seal in seals:
            desk.need(Input(True, f"{of.pointer(seal)}/works_on"))
        # Each joint by itself: a step that seals one wall leaves the others open.
        return bool(seals) and all(
            any(of.doing("seal joints", part) for part in (name, edge.field_name, edge.wall_name)) for edge in filled
        )

    def settled() -> float:
        need_steps()
        if not presses:
            raise Missing(["/steps"])
        for seal in seals:
            desk.need(Input(True, f"{of.pointer(seal)}/after"))
        for press in presses:
            desk.need(Input(True, f"{of.pointer(press)}/then_wait"))
        return min(of.waited(press, seal) for press in presses for seal in seals)

    desk.get("applied", applied)
    if seals and filled:
        desk.get("settled", settled)
    brushes = dict.fromkeys(
        step for part in dict.fromkeys([name, *(edge.wall_name for edge in filled)])
        for step in of.doing("paint wall", part)
    )  # fmt: skip
    after = [(seal, brush) for seal in seals for brush in brushes if not of.before(brush, seal)]

    def painted() -> bool:
        need_steps()
        for brush in brushes:
            desk.need(Input(True, f"{of.pointer(brush)}/works_on"))
        return bool(after) or (bool(brushes) and not seals)

    def cured() -> float:
        for seal, brush in after:
            desk.need(Input(True, f"{of.pointer(seal)}/then_wait"))
            desk.need(Input(True, f"{of.pointer(brush)}/after"))
        return min(of.waited(seal, brush) for seal, brush in after)

    desk.get("painted", painted)
    if after:
        desk.get("cured", cured)


def _of_need(desk: Desk, need: SealantNeed, line: Worked | None, here: str) -> Worked:
    desk.need(Input(True, f"{here}/joints"))
    for pointer, said in need.assumed:
        desk.need(Input(True, pointer, said))
    if need.missing:
        raise Missing(need.missing)
    if line is None:
        raise NotPossible(need.reason)
    return line


def _need(plan: Plan, name: str, sealant: SealantPart) -> SealantNeed:
    here = f"/sealants/{name}"
    if sealant.joints is None:
        return SealantNeed(None, None, (f"{here}/joints",))
    desk = empty()
    beads: list[Worked] = []
    backed: list[Given] = []
    wanting: list[str] = []
    reasons: list[str] = []
    for edge in edges(plan):
        try:
            if edge.kind is None:
                raise Missing(["/corners" if edge.end else f"{edge.wall_at}/openings"])
            if sealant_in(edge) != name or hidden(desk, edge):
                continue
            if _closed(desk, edge):
                # No sealant goes into it, and the rules of joints say so.
                continue
            bead, long = _bead(desk, edge, name)
        except Missing as missing:
            wanting.extend(missing.pointers)
        except (NotPossible, OutsideRulebook) as error:
            reasons.append(str(error))
        else:
            beads.append(bead)
            if backer_of(edge, name).value != "none":
                backed.append(long)
    assumed: tuple[tuple[str, str], ...] = ()
    if "trims" in sealant.joints:
        runs = _trim_runs(plan, name)
        for edge in runs:
            try:
                beads.append(mechanics.fillet_volume(length(desk, edge), _FILLET, _FILLET))
            except Missing as missing:
                wanting.extend(missing.pointers)
        if runs:
            said = "along trims a fillet with legs of 1/4 in is taken: nothing in a plan says how large it is"
            assumed = ((f"{here}/joints", said),)
    if wanting or reasons:
        return SealantNeed(None, None, tuple(dict.fromkeys(wanting)), "; ".join(dict.fromkeys(reasons)), assumed)
    return SealantNeed(
        _sum("V", "sealant in all its joints", beads, "mm³"),
        _sum("L", "length of backer", backed, "mm"),
        assumed=assumed,
    )


def _closed(desk: Desk, edge: Edge) -> bool:
    """Whether the panels are to touch what they run up to. Raises Missing."""
    assert edge.gap is not None
    return (gap_at_floor(desk, edge)[1] if edge.kind == "floor" else desk.length(edge.gap)) <= 0


def _bead(desk: Desk, edge: Edge, name: str) -> tuple[Worked, Given]:
    """Sealant in one joint where it is widest, and the length of the joint."""
    assert edge.gap is not None
    long = length(desk, edge)
    wide = gap_at_floor(desk, edge)[1] if edge.kind == "floor" else desk.length(edge.gap)
    return mechanics.bead_volume(long, wide, depth(desk, edge, name)), long


def _trim_runs(plan: Plan, name: str) -> list[Edge]:
    """The edges along which a trim runs that this sealant is to close."""
    trims = (plan.model.trims or {}).values()
    return [
        edge for edge in edges(plan)
        if edge.kind is not None and name in sealants_for(plan.model, edge.field_name, "trims")
        and any(runs_along(edge, trim) for trim in trims)
    ]  # fmt: skip


def _sum(symbol: str, words: str, parts: Sequence[Given], unit: str) -> Worked:
    """Everything together. Like-named lines are told apart by a number."""
    terms = [Number(f"{symbol}_{place}", si(part), unit) for place, part in enumerate(parts, 1)]
    return Worked(
        symbol, words, " + ".join(term.symbol for term in terms) or "0", tuple(terms),
        sum(term.value for term in terms), unit, "sum", steps=tuple(one for one in parts if isinstance(one, Worked)),
    )  # fmt: skip
