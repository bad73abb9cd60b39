"""Screws, as sold."""

from typing import Annotated, ClassVar

from pydantic import Discriminator, Tag

from plumbrule.plan import answers, words
from plumbrule.plan.part import Part, is_mapping
from plumbrule.reading.quantities import Angle, ScrewSize, Size


class ScrewHead(Part):
    """The head: decides pulling through, sinking and standing proud."""

    style: answers.Head
    """shape of the head"""
    angle: Angle | None = None
    """included angle of a flat, oval, bugle or trim head"""
    diameter: Size | None = None
    """width of the head; across the flats for a hex head"""
    height: Size | None = None
    """how far the head stands up"""


class Washer(Part):
    """A washer under the head."""

    outside: Size
    """outside diameter"""
    inside: Size
    """diameter of its hole"""
    thickness: Size
    """thickness"""


class PilotHole(Part):
    """Pilot hole in the wood."""

    thread: Size
    """drill for the threaded part"""
    shank: Size | None = None
    """drill for the smooth part"""


class Screw(Part):
    """One kind of screw."""

    HINTS: ClassVar[dict[str, str]] = {"type": "Write kind."}

    kind: answers.ScrewKind
    """decides which published formula applies, or that none does"""
    size: ScrewSize | None = None
    """number of a wood screw: No. 10"""
    diameter: Size | None = None
    """diameter of a lag screw, bolt or anchor"""
    length: Size
    """length as sold: under the head; flat heads over all"""
    thread: Size | None = None
    """length of the thread, tip included"""
    tip: Size | None = None
    """length of the tapered tip"""
    head: ScrewHead | None = None
    """the head"""
    washer: Washer | None = None
    """washer under the head"""
    pilot: (
        Annotated[
            Annotated[words.NoPilot, Tag("word")] | Annotated[PilotHole, Tag("mapping")], Discriminator(is_mapping)
        ]
        | None
    ) = None
    """pilot hole, or none"""
    coating: words.ScrewCoating | None = None
    """coating or metal of the screw"""
