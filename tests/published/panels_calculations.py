"""What each `calculation` word about setting out panels means: printed inputs in, a length or a count out."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Any

from plumbrule.facts.layout import WallLayout, layouts
from plumbrule.facts.supports import supports
from plumbrule.mechanics.course import Laying, Run, firsts_of_stagger, slots
from plumbrule.mechanics.panel_stock import Piece, cut_from_panels
from plumbrule.plan.read import read_plan
from plumbrule.reading.units import to_si
from plumbrule.teaching.prove import base_plan

Inputs = Mapping[str, Any]


def inches(value: float) -> float:
    return to_si(value, "in")


def _run(width: float) -> Run:
    return Run(0.0, width, ((0.0, 0.0), (width, 0.0)), ((0.0, 2400.0), (width, 2400.0)))


@cache
def _laid(name: str) -> tuple[WallLayout, ...]:
    plan = read_plan(base_plan(name))
    return layouts(plan, supports(plan))


def balanced_end(i: Inputs) -> float:
    """A joint on the centre line, since that many whole pieces and the sliver would leave half the sliver otherwise."""
    piece = inches(i["piece_in"])
    run = _run(piece * i["whole"] + inches(i["sliver_in"]))
    left, right = slots(run, Laying(piece, 100.0, 90.0, (piece,), "centre"), 1)[0]
    return right - left


def wider_joints(i: Inputs) -> float:
    piece, joint = 400.0, inches(i["wider_in"])
    run = _run(piece * (i["joints"] + 1) + 1000.0)
    return slots(run, Laying(piece, 100.0, 90.0, (piece,), joint=joint), 1)[i["joints"]][0] - piece * i["joints"]


def shift(i: Inputs) -> float:
    first, second, *_ = firsts_of_stagger(inches(i["piece_in"]), i["share"])
    return first - second


def last_piece(i: Inputs) -> float:
    piece = inches(i["piece_in"])
    laying = Laying(piece, 100.0, 90.0, firsts_of_stagger(piece, i["share"]))
    left, right = slots(_run(inches(i["run_in"])), laying, i["course"])[-1]
    return right - left


def panels_for(i: Inputs) -> float:
    pieces = [Piece(inches(length)) for length in i["pieces_in"]]
    return float(cut_from_panels(pieces, inches(i["panel_in"]), inches(i["kerf_in"])).needed)


def sealed(i: Inputs) -> float:
    return sum(one.edges[edge] for one in _laid(i["plan"]) for edge in ("ceiling", "inside corner", "opening"))


PANEL_CALCULATIONS = {
    "balanced end piece": balanced_end,
    "gain of wider joints": wider_joints,
    "shift of a course": shift,
    "last piece": last_piece,
    "panels for pieces": panels_for,
    "panels of a plan": lambda i: float(sum(one.panels_needed for one in _laid(i["plan"]))),
    "courses of a plan": lambda i: float(max(len(one.courses) for one in _laid(i["plan"]))),
    "sealed joint of a plan": sealed,
}
