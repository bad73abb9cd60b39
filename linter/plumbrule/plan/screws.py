"""Screws, as sold."""

from __future__ import annotations

from typing import Annotated, ClassVar

from pydantic import Discriminator, Tag

from plumbrule.plan import words
from plumbrule.plan.part import Part, is_mapping
from plumbrule.reading.quantities import Angle, Length, ScrewSize


class ScrewHead(Part):
    """The head: decides pulling through, sinking and standing proud."""

    style: words.Head
    """shape of the head"""
    angle: Angle | None = None
    """included angle of a flat, oval, bugle or trim head"""
    diameter: Length | None = None
    """width of the head; across the flats for a hex head"""
    height: Length | None = None
    """how far the head stands up"""


class Washer(Part):
    """A washer under the head."""

    outside: Length
    """outside diameter"""
    inside: Length
    """diameter of its hole"""
    thickness: Length
    """thickness"""


class PilotHole(Part):
    """Pilot hole in the wood."""

    thread: Length
    """drill for the threaded part"""
    shank: Length | None = None
    """drill for the smooth part"""


class Screw(Part):
    """One kind of screw."""

    HINTS: ClassVar[dict[str, str]] = {"type": "Write kind."}

    kind: words.ScrewKind
    """decides which published formula applies, or that none does"""
    size: ScrewSize | None = None
    """number of a wood screw: No. 10"""
    diameter: Length | None = None
    """diameter of a lag screw, bolt or anchor"""
    length: Length
    """length as sold: under the head; flat heads over all"""
    thread: Length | None = None
    """length of the thread, tip included"""
    tip: Length | None = None
    """length of the tapered tip"""
    head: ScrewHead | None = None
    """the head"""
    washer: Washer | None = None
    """washer under the head"""
    pilot: (
        Annotated[Annotated[words.NoPilot, Tag("word")] | Annotated[PilotHole, Tag("mapping")], Discriminator(is_mapping)]
        | None
    ) = None
    """pilot hole, or none"""
    coating: words.ScrewCoating | None = None
    """coating or metal of the screw"""
