"""Where a box stands in its wall, and whose figures its country knows."""

from __future__ import annotations

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.on_wall import Area
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.fixtures import Box
from plumbrule.plan.plan_file import Plan

_CODES = {"US": "NEC", "CA": "CEC"}


def box_code(desk: Desk, plan: Plan) -> str:
    """The wiring code whose figures for boxes are known. Raises OutsideRulebook for other countries."""
    region = desk.word(Input(plan.model.site.region if plan.model.site else None, "/site/region"))
    if region not in _CODES:
        raise OutsideRulebook(f"No rules for region {region}: what its wiring code asks of boxes is not inspected.")
    return _CODES[region]


def box_area(desk: Desk, box: Box, here: str) -> Area:
    """The box as it stands in the wall. Raises Missing."""
    centre, up, width, height = (
        Input(getattr(box, key), f"{here}/{key}") for key in ("centre", "up", "width", "height")
    )
    desk.need_all(centre, up, width, height)
    half, tall = desk.length(width) / 2, desk.length(height) / 2
    x, y = desk.length(centre), desk.length(up)
    return Area(x - half, x + half, y - tall, y + tall)
