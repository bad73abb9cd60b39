"""How far the edges of panels move over the year: the run that ends there, its core, and the air of the room."""

from __future__ import annotations

from functools import cache
from math import ceil

from plumbrule.catalogue.rows_joints import JOINT
from plumbrule.facts.desk import Desk, Input, Missing, Once
from plumbrule.facts.joints_edges import Edge, need_kind, tallest, width
from plumbrule.facts.reference import tables
from plumbrule.mechanics import panel_movement as mechanics
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.moisture import moisture_band
from plumbrule.mechanics.table_rows import PanelCore
from plumbrule.mechanics.worked import Number, OutsideRulebook, Worked

# Along the grain wood grows by at most 0.2 % from oven-dry to green, over 30 % of moisture.
_ALONG = 0.002 / 30


class Movements:
    """The movement of every edge of a plan. What two edges have in common is worked once."""

    def __init__(self) -> None:
        self._strains: dict[tuple[str, bool], Once[Worked]] = {}

    def work(self, desk: Desk, edge: Edge) -> None:
        """Run, strain and movement of one edge."""
        worst: Once[tuple[float, Worked, Worked]] = Once(JOINT, lambda at: self._worst(at, edge))
        desk.get("run", lambda: worst.take(desk)[0])
        desk.get("strain", lambda: worst.take(desk)[1])
        desk.get("movement", lambda: worst.take(desk)[2])

    def _worst(self, desk: Desk, edge: Edge) -> tuple[float, Worked, Worked]:
        """Panels run up to a ceiling with their height and to a corner with their length. Round an opening the courses
        that pass above and under it carry the pieces beside it along, so the whole wall counts, either way."""
        kind, panel = need_kind(edge), edge.field.panel
        ways = {"ceiling": (True,), "floor": (True,), "opening": (True, False)}.get(kind, (False,))
        if edge.end is not None:
            ways = (False,)
        joint = Input(edge.field.gaps.joints, f"{edge.at}/gaps/joints")
        inputs = [width(edge)] if False in ways else []
        for upright in ways:
            key = "height" if upright else "length"
            inputs.append(Input(getattr(panel, key), f"{edge.at}/panel/{key}"))
        wanting: list[str] = []
        if True in ways:
            try:
                tallest(desk, edge)
            except Missing as missing:
                wanting.extend(missing.pointers)
        found: list[tuple[float, Worked, Worked]] = []
        strains: dict[bool, Worked] = {}
        for upright in ways:
            try:
                strains[upright] = self._strain(desk, edge, upright)
            except Missing as missing:
                wanting.extend(missing.pointers)
        try:
            desk.need_all(*inputs, joint)
        except Missing as missing:
            wanting.extend(missing.pointers)
        if wanting:
            raise Missing(wanting)
        for upright, strain in strains.items():
            run = tallest(desk, edge) if upright else desk.length(width(edge))
            piece = min(panel.height if upright else panel.length, run)  # type: ignore[type-var]
            joints = max(ceil(run / piece - 1e-9) - 1, 0)  # type: ignore[operator]
            moves = mechanics.edge_movement(run, piece, strain, float(joints), desk.length(joint))  # type: ignore[arg-type]
            found.append((run, strain, moves))
        return max(found, key=lambda one: si(one[2]))

    def _strain(self, desk: Desk, edge: Edge, upright: bool) -> Worked:
        key = (edge.field_name, upright)
        if key not in self._strains:
            self._strains[key] = Once(JOINT, lambda at: _strain(at, edge, upright))
        return self._strains[key].take(desk)


def _strain(desk: Desk, edge: Edge, upright: bool) -> Worked:
    """What one part of a length grows by. Boards of solid wood lie along the wall, so upright is across their grain."""
    site = edge.plan.model.site
    warmth = site.temperature if site else None
    coldest = Input(warmth and warmth.coldest, "/site/temperature/coldest")
    warmest = Input(warmth and warmth.warmest, "/site/temperature/warmest")
    named = Input(edge.field.panel.core, f"{edge.at}/panel/core")
    core = tables().panel_core(edge.field.panel.core) if edge.field.panel.core else None
    expansion = _expansion(edge, core)
    inputs = [named, coldest, warmest, *((expansion,) if core else ())]
    damp = site.humidity if site else None
    driest = Input(damp and damp.driest, "/site/humidity/driest")
    dampest = Input(damp and damp.dampest, "/site/humidity/dampest")
    if core is not None and core.drinks in ("air", "grain"):
        inputs += [driest, dampest]
    desk.need_all(*inputs)
    assert core is not None
    cold, warm = desk.length(coldest), desk.length(warmest)
    by_warmth = mechanics.thermal_strain(_grows(edge, core), warm, cold)
    if core.drinks == "nothing":
        return by_warmth
    if core.drinks == "unknown":
        raise OutsideRulebook(
            f"Nothing is published here on how {core.name} grows in damp air: leave the gaps that its data sheet "
            "asks for."
        )
    dry, wet = desk.length(driest), desk.length(dampest)
    if core.drinks == "air":
        by_damp = mechanics.humidity_strain(_swelling(core), wet, dry, core.moisture_source)
    else:
        band = moisture_band(cold, warm, dry, wet)
        by_damp = mechanics.wood_strain(_worst_wood() if upright else _along_grain(), band.damp, band.dry,
                                        "Wood Handbook ch. 13, eq. 13-2, from memory")  # fmt: skip
    return mechanics.strain(by_warmth, by_damp)


def _expansion(edge: Edge, core: PanelCore | None) -> Input:
    pointer, written = f"{edge.at}/panel/expansion", edge.field.panel.expansion
    if written is not None or core is None or core.expansion is None:
        return Input(written, pointer)
    worth = f"{core.expansion:.2e}".replace("e-0", "e-")
    if core.basis == "published":
        said = f"nothing is written: {worth} per °C is taken, the most that is published for {core.name}"
    else:  # the figure of something that moves more, for want of one
        said = f"nothing is written: {worth} per °C is taken for {core.name}, the figure of another: {core.source}"
    return Input(core.expansion, pointer, said)


def _grows(edge: Edge, core: PanelCore) -> Given:
    """The expansion as the plan has it, or with its source where the table gives it."""
    if edge.field.panel.expansion is not None:
        return edge.field.panel.expansion
    return _printed(core.name)


@cache
def _printed(name: str) -> Worked:
    core = tables().panel_core(name)
    assert core.expansion is not None
    source = core.source if core.basis == "published" else f"{core.source}, from memory"
    return Worked("alpha", f"part of its length that {name} grows by with each degree", "alpha",
                  (Number("alpha", core.expansion, "per °C"),), core.expansion, "per °C", source)  # fmt: skip


def _swelling(core: PanelCore) -> Given:
    if core.grown is not None:
        grows, low, high = core.grown
        return mechanics.humidity_swelling(grows, high, low, core.moisture_source)
    assert core.swelling is not None
    return core.swelling


@cache
def _worst_wood() -> Worked:
    """The plan does not name the species of its panels, so the one that moves most stands for it."""
    found = [(board.swell_tangential or 0.0, board.name) for board in map(tables().board, tables().names("boards"))]
    most, name = max(found)
    return Worked("C", f"movement per % of moisture across the grain, {name}: the most of any species", "C",
                  (Number("C", most, ""),), most, "", "Wood Handbook, from memory")  # fmt: skip


@cache
def _along_grain() -> Worked:
    return Worked("C", "movement per % of moisture along the grain", "s_L / 30", (Number("s_L", 0.002, ""),),
                  _ALONG, "", "Wood Handbook ch. 4, from memory")  # fmt: skip
