"""The screw of a hole as facts want it: its diameter, its head, the washer under it."""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import diameter
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.resolve import Holes

# Heads that are meant to be let in, so that they sit in a cone.
LET_IN = ("flat", "oval", "bugle", "trim")
# A hexagon is this much wider over its corners than over its flats.
_CORNERS = 2 / 3**0.5


class ScrewHead(NamedTuple):
    """Every measure of a head and its washer as an Input, since it may be wanting."""

    diameter: Input
    style: Input
    head_diameter: Input
    head_angle: Input
    head_height: Input
    washer: bool
    washer_outside: Input
    washer_thickness: Input


def head_of(plan: Plan, holes: Holes) -> ScrewHead:
    """The head of the screw that goes into a group of holes. Requires that the screw exists."""
    name = holes.screw.value
    here = f"/screws/{name}"
    screw = (plan.model.screws or {})[name or ""]
    head, washer = screw.head, screw.washer
    # Without a head there is one thing to fill in: the head, not each of its keys.
    at = f"{here}/head/{{}}" if head is not None else f"{here}/head"
    return ScrewHead(
        diameter=diameter(screw, here),
        style=Input(head and head.style, at.format("style")),
        head_diameter=Input(head and head.diameter, at.format("diameter")),
        head_angle=Input(head and head.angle, at.format("angle")),
        head_height=Input(head and head.height, at.format("height")),
        washer=washer is not None,
        washer_outside=Input(washer and washer.outside, f"{here}/washer/outside"),
        washer_thickness=Input(washer and washer.thickness, f"{here}/washer/thickness"),
    )


def lies_with(desk: Desk, head: ScrewHead) -> float:
    """Radius in mm of what lies on the steel: the washer, or the head; a hexagon over its corners."""
    if head.washer:
        return desk.length(head.washer_outside) / 2
    desk.need_all(head.head_diameter, head.style)
    wide = desk.length(head.head_diameter)
    return wide / 2 * (_CORNERS if desk.word(head.style) == "hex" else 1.0)


def bears_with(desk: Desk, head: ScrewHead) -> float:
    """Diameter in mm that holds on the steel: of the washer, or of the head; a hexagon over its flats."""
    return desk.length(head.washer_outside if head.washer else head.head_diameter)
