"""Bands of a wall in which a wiring code lets cables run unseen, and the screws that go into them."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_electrical import CABLE_ZONE
from plumbrule.facts.corner import ENDS, corner_at
from plumbrule.facts.desk import Desk, Input, least
from plumbrule.facts.fastening import Fastening, fastenings
from plumbrule.facts.supports import Support
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall

_CODES = {"US": "NEC", "CA": "CEC", "GB": "BS 7671"}


def zone_rows(plan: Plan, carried: Sequence[Support]) -> tuple[Row, ...]:
    """One row for each angle, bracket and cleat that is screwed to a wall; none where the code has no such bands."""
    region = plan.model.site.region if plan.model.site else None
    if _CODES.get(region or "", "BS 7671") != "BS 7671":
        # These codes know of no such bands.
        return ()
    found = []
    for support in carried:
        driven = [one for one in fastenings(plan, support) if one.in_wall]
        if driven:
            found.append(_row(plan, support, driven))
    return tuple(found)


def _row(plan: Plan, support: Support, driven: Sequence[Fastening]) -> Row:
    desk = Desk(CABLE_ZONE, f"{support.pointer}/wall_holes", support.pointer, f"the wall screws of {support.label}")
    desk.get("code", lambda: _code(desk, plan))
    if not (desk.known("code") and desk.text("code") != "BS 7671"):
        desk.get("below_ceiling", lambda: _below_ceiling(desk, support, driven))
        inside = [
            end for end in ENDS if (met := corner_at(plan, support.wall_name, end)) and met.corner.turn == "inside"
        ]
        desk.set("near_a_corner", bool(inside), f"/walls/{support.wall_name}")
        if inside:
            desk.get("from_corner", lambda: least(desk, driven, lambda at, one: _from_corner(at, one, inside))[0])
    return desk.row()


def _code(desk: Desk, plan: Plan) -> str:
    region = desk.word(Input(plan.model.site.region if plan.model.site else None, "/site/region"))
    if region not in _CODES:
        raise OutsideRulebook(f"No rules for region {region}: where its wiring code lets cables run is not inspected.")
    return _CODES[region]


def _below_ceiling(desk: Desk, support: Support, driven: Sequence[Fastening]) -> float:
    """The ceiling is taken where it is lowest."""
    ceiling = support.wall.ceiling if support.wall else None
    at = f"/walls/{support.wall_name}/ceiling"
    ends = [Input(getattr(ceiling, end) if ceiling else None, f"{at}/{end}") for end in ENDS]
    for index, point in enumerate(ceiling.points if ceiling else ()):
        ends.append(Input(point.height, f"{at}/points/{index}/height"))
    desk.need_all(*ends)
    lowest = min(desk.length(end) for end in ends)
    return least(desk, driven, lambda on, one: lowest - on.length(one.height))[0]


def _from_corner(desk: Desk, screw: Fastening, ends: Sequence[str]) -> float:
    wall: Wall | None = screw.support.wall
    width = Input(wall.width if wall else None, f"/walls/{screw.support.wall_name}/width")
    desk.need_all(Input(True, screw.drilling.pointer), screw.drilling.on_wall, width)
    x = desk.length(screw.drilling.on_wall)
    return min(x if end == "left" else desk.length(width) - x for end in ends)
