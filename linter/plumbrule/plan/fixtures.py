"""What is already on a wall: openings, electrical boxes, and things that may not be covered."""

from typing import Annotated, ClassVar

from pydantic import Discriminator, Field, Tag

from plumbrule.plan import answers, words
from plumbrule.plan.part import Part, is_mapping
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Length, SignedLength, Size


class Opening(Part):
    """A window, door or hatch: the outside of its trim, where a panel stops."""

    left: Length
    """left edge, from the left end of the wall"""
    width: Size
    """width over the trim"""
    bottom: Length
    """lower edge above the datum"""
    top: Length
    """upper edge above the datum"""
    edge: words.OpeningEdge | None = None
    """what a panel meets there"""


class CoverPlate(Part):
    """A cover plate, measured."""

    width: Size
    """width of the plate"""
    height: Size
    """height of the plate"""


class Box(Part):
    """An electrical box."""

    HINTS: ClassVar[dict[str, str]] = {
        "left": "Boxes are measured to the centre: write centre.",
        "bottom": "Boxes are measured to the centre: write up.",
    }

    centre: Length | None = None
    """centre of the box opening, from the left end of the wall"""
    up: Length | None = None
    """centre of the box opening above the datum"""
    gangs: Annotated[int, Field(ge=1, le=6)] | None = None
    """how many devices side by side"""
    width: Size | None = None
    """outside width of the box, measured"""
    height: Size | None = None
    """outside height of the box, measured"""
    holds: answers.BoxHolds | None = None
    """what is in it"""
    set_back: SignedLength | None = None
    """how far the rim lies behind the face of the lining today; negative if it stands proud"""
    extender: Length = 0.0
    """how far a listed extender brings the rim forward"""
    cover: (
        Annotated[
            Annotated[words.Cover, Tag("word")] | Annotated[CoverPlate, Tag("mapping")], Discriminator(is_mapping)
        ]
        | None
    ) = None
    """size of the cover plate by name, or measured, {width, height}"""
    cables_leave: Listed[words.CableDirection] = ("not known",)
    """which way cables leave the box inside the wall"""


class FittingPart(Part):
    """A heater, alarm, valve or the like that may not be covered, boxed in or heated."""

    kind: words.Fitting
    """what it is"""
    left: Length
    """left edge, from the left end of the wall"""
    width: Size
    """width"""
    bottom: Length
    """lower edge above the datum"""
    top: Length
    """upper edge above the datum"""
    keep_clear: Length | None = None
    """distance its maker asks to be kept free"""
