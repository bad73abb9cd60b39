"""A board and the air of its room: what moisture it settles at, how far it moves, what room it has for that."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from plumbrule.facts.board_place import Placed, back_edge
from plumbrule.facts.board_screws import HoldDown, Rows, rows
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.reference import tables
from plumbrule.mechanics import restraint, slack
from plumbrule.mechanics.board_wood import solid_board
from plumbrule.mechanics.given import Given
from plumbrule.mechanics.moisture import MoistureBand, largest_change, moisture_band
from plumbrule.mechanics.movement import Sawn, movement_coefficient
from plumbrule.mechanics.table_rows import Board as Species
from plumbrule.mechanics.worked import OutsideRulebook, Worked


def work_moisture(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> None:
    """Everything about moisture and movement across the grain."""
    desk.copy("moisture", placed.of("moisture"))
    desk.get("dry_end", lambda: _band(desk, placed).dry)
    desk.get("damp_end", lambda: _band(desk, placed).damp)
    desk.get("fit_least", lambda: _band(desk, placed).fit_least)
    desk.get("fit_most", lambda: _band(desk, placed).fit_most)
    _settling(desk, placed)
    desk.get("movement_per_cent", lambda: _coefficient(desk, placed))
    if screws:
        desk.get("fixed_row", lambda: _rows(desk, placed, screws).fixed)
        desk.get("rows_without_slots", lambda: float(len(_rows(desk, placed, screws).holding)))
    else:
        desk.set("rows_without_slots", 0.0, placed.here)
    desk.get("restraint_stress", lambda: _restraint(desk, placed))
    desk.get("splitting_strength", lambda: restraint.splitting_strength(species_of(desk, placed)))
    desk.copy("back_gap", placed.gap("back"))
    desk.get("back_gap_needed", lambda: _back_gap_needed(desk, placed, bool(screws)))
    captured = placed.plan.is_written(f"{placed.here}/gaps/front")
    desk.set("front_captured", captured, f"{placed.here}/gaps")
    if captured:
        desk.copy("front_gap", placed.gap("front"))
        desk.get("front_gap_needed", lambda: _front_gap_needed(desk, placed))


def given(desk: Desk, field: str) -> Given:
    """An earlier field with the line it was worked by."""
    value = desk.number(field)
    return desk.line(field) or value


def species_of(desk: Desk, placed: Placed) -> Species:
    """The row of the board's species. Raises OutsideRulebook for plywood and other sheets."""
    return solid_board(tables(), desk.word(placed.of("species")))


def sawn_of(desk: Desk, placed: Placed) -> Sawn:
    """How the board was sawn; flat where nothing is written, since that moves more."""
    pointer = f"{placed.here}/sawn"
    said = "" if placed.plan.is_written(pointer) else "nothing is written: flat-sawn is taken, which moves more"
    desk.need(Input(placed.board.sawn, pointer, said))
    return placed.board.sawn


def _band(desk: Desk, placed: Placed) -> MoistureBand:
    site = placed.plan.model.site
    warmth, damp = (site.temperature, site.humidity) if site else (None, None)
    inputs = (
        Input(warmth and warmth.coldest, "/site/temperature/coldest"),
        Input(warmth and warmth.warmest, "/site/temperature/warmest"),
        Input(damp and damp.driest, "/site/humidity/driest"),
        Input(damp and damp.dampest, "/site/humidity/dampest"),
    )
    desk.need_all(*inputs)
    return _moisture_band(*(desk.length(one) for one in inputs))


@lru_cache(maxsize=256)
def _moisture_band(coldest: float, warmest: float, driest: float, dampest: float) -> MoistureBand:
    return moisture_band(coldest, warmest, driest, dampest)


def _coefficient(desk: Desk, placed: Placed) -> Worked:
    return movement_coefficient(species_of(desk, placed), sawn_of(desk, placed))


def _rows(desk: Desk, placed: Placed, screws: Sequence[HoldDown]) -> Rows:
    found = rows(desk, placed, screws)
    assert found is not None
    return found


def _restraint(desk: Desk, placed: Placed) -> Worked:
    fitted, _, _ = desk.numbers("moisture", "dry_end", "damp_end")
    stiffness = restraint.across_stiffness(species_of(desk, placed))
    change = largest_change(given(desk, "dry_end"), given(desk, "damp_end"), fitted)
    return restraint.restraint_stress(stiffness, given(desk, "movement_per_cent"), change)


def _back_gap_needed(desk: Desk, placed: Placed, screwed: bool) -> Worked:
    """A board that no screw holds may be pushed forward as it likes, and then swells to the wall with all its depth."""
    if not screwed:
        return _front_gap_needed(desk, placed)
    back = back_edge(desk, placed)
    fixed, _, fitted, damp = desk.numbers("fixed_row", "movement_per_cent", "moisture", "damp_end")
    if fixed < back:
        raise OutsideRulebook("The screws that hold this board lie behind it: put right where they are drilled first.")
    return slack.back_gap_needed(fixed, back, given(desk, "movement_per_cent"), damp, fitted)


def _front_gap_needed(desk: Desk, placed: Placed) -> Worked:
    depth = desk.length(placed.of("depth"))
    _, fitted, damp = desk.numbers("movement_per_cent", "moisture", "damp_end")
    return slack.front_gap_needed(depth, given(desk, "movement_per_cent"), damp, fitted)


def _settling(desk: Desk, placed: Placed) -> None:
    """How long the board is left in its room. Time in a workshop is no time in the room."""
    steps = placed.plan.model.steps
    found: list[Input] = []
    unsaid: list[str] = []
    for name, step in (steps or {}).items():
        if step.task != "acclimatise" or step.where != "in the room":
            continue
        if step.works_on is None:
            unsaid.append(f"/steps/{name}/works_on")
        elif placed.name in step.works_on:
            found.append(Input(step.then_wait, f"/steps/{name}/then_wait"))

    def acclimatised() -> bool:
        desk.need(Input(steps, "/steps"))
        if not found and unsaid:
            raise Missing(unsaid)
        for one in found:
            desk.need(Input(True, one.pointer))
        return bool(found)

    desk.get("acclimatised", acclimatised)
    if found:
        desk.get("settles", lambda: max(desk.length(one) for one in found))
