"""Walls, read from left to right by someone standing in the room, and the corners where they meet."""

from typing import Annotated, ClassVar, Literal

from pydantic import Field

from plumbrule.plan import words
from plumbrule.plan.fixtures import Box, FittingPart, Opening
from plumbrule.plan.framing import Block, Framing, Layer, Services
from plumbrule.plan.part import Named, Part, instead
from plumbrule.plan.surface import Surface
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Angle, Length, Name, Size


class BothEnds(Part):
    """One measure at each end of a wall."""

    left: Length
    """at the left end"""
    right: Length
    """at the right end"""


class CeilingPoint(Part):
    """A measure of the ceiling between the ends of a wall."""

    at: Length
    """from the left end of the wall"""
    height: Length
    """ceiling height above the datum there"""


class FloorPoint(Part):
    """A measure of the floor between the ends of a wall."""

    at: Length
    """from the left end of the wall"""
    drop: Length
    """how far the floor lies below the datum there"""


class Ceiling(BothEnds):
    """Ceiling heights above the datum. Between two measures the ceiling is taken as straight."""

    points: Listed[CeilingPoint] = ()
    """measures between the ends, where the ceiling bends"""


class FloorDrop(BothEnds):
    """How far the floor lies below the datum. Between two measures the floor is taken as straight."""

    points: Listed[FloorPoint] = ()
    """measures between the ends, where the floor bends"""


def _one_height(text: str) -> tuple[str, str]:
    return f"{text} is one height.", f"Give both ends: ceilings fall too. Write {{left: {text}, right: {text}}}."


def _one_drop(text: str) -> tuple[str, str]:
    return f"{text} is one drop.", "Give both ends: write {left: 0 in, right: 1/2 in}."


class WallEnds(Part):
    """What a wall runs into where it has no corner."""

    left: words.WallEnd | None = None
    """at the left end"""
    right: words.WallEnd | None = None
    """at the right end"""


class Passage(Part):
    """Whether people pass by this wall."""

    walked_past: bool | None = None
    """true where people walk along the wall"""
    clear_width: Length | None = None
    """width of the way in front of it"""


class Wall(Part):
    """One wall as it stands."""

    HINTS: ClassVar[dict[str, str]] = {
        "height": "Give the ceiling at both ends: write ceiling: {left: 8 ft, right: 8 ft}.",
        "length": "Walls are measured from corner to corner: write width.",
        "studs": "Studs are written under framing.",
    }

    width: Size
    """face to face of the lining as it stands, not stud to stud"""
    ceiling: Annotated[Ceiling, instead(_one_height)] | None = None
    """ceiling height above the datum, at each end"""
    floor_drop: Annotated[FloorDrop, instead(_one_drop)] | None = None
    """how far the floor lies below the datum, at each end"""
    ends: WallEnds | None = None
    """what stands at an end that is in no corner"""
    passage: Passage | None = None
    """whether people pass by"""
    separation: words.Separation | None = None
    """what the wall keeps apart"""
    lining: Listed[Layer] | None = None
    """layers from the studs outward"""
    framing: Framing | None = None
    """studs"""
    blocking: Named[Block] | None = None
    """solid wood let in between studs"""
    services: Services | None = None
    """cables and pipes"""
    surface: Surface | None = None
    """the face of the wall"""
    openings: Named[Opening] | None = None
    """windows, doors, hatches; {} says looked, none there"""
    boxes: Named[Box] | None = None
    """electrical boxes; {} says looked, none there"""
    fittings: Named[FittingPart] | None = None
    """things that may not be covered, boxed in or heated; {} says looked, none there"""


class Corner(Part):
    """The right end of `from` meets the left end of `to`. A wall that is not in the plan is left out."""

    from_: Name | None = Field(None, alias="from")
    """wall whose right end is here"""
    to: Name | None = None
    """wall whose left end is here"""
    turn: Literal["inside", "outside"]
    """inside: the walls make a nook; outside: they make a pier"""
    angle: Angle = 90.0
    """angle between the two faces"""
    panels_run_through: Name | None = None
    """wall whose panels reach the bare corner; the others butt against their face"""
