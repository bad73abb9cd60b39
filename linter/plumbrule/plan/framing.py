"""What stands inside a wall: lining layers, studs, blocks let in between them, cables and pipes."""

from typing import Annotated, ClassVar, Literal

from pydantic import Discriminator, Field, Tag

from plumbrule.plan import answers, words
from plumbrule.plan.part import AtLeastOne, Named, Part, is_mapping
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Length, Name, Size


class Layer(Part):
    """One layer of a wall's lining."""

    material: answers.Lining
    """what the layer is made of"""
    thickness: Size
    """thickness of the layer"""


class Section(Part):
    """A measured piece of lumber."""

    width: Size
    """the narrow side: what a screw can miss"""
    depth: Size
    """the wide side"""


LumberSize = Annotated[
    Annotated[words.LumberSize, Tag("word")] | Annotated[Section, Tag("mapping")], Discriminator(is_mapping)
]
StudSize = Annotated[
    Annotated[words.StudSize, Tag("word")] | Annotated[Section, Tag("mapping")], Discriminator(is_mapping)
]


class Framing(Part):
    """The studs, as they were found."""

    stud: StudSize | None = None
    """size by name (2x4) or measured, {width, depth}; dressed sizes are used, not the name"""
    species: answers.FramingSpecies | None = None
    """species group read from the stamp; `unknown` counts as the weakest"""
    centres: Listed[Length] | None = None
    """centre line of every stud found, from the left end of the wall"""
    first: Length | None = None
    """centre line of the first stud from the left, together with `spacing`"""
    spacing: Size | None = None
    """distance from stud to stud, instead of a list of `centres`"""
    found_within: Length | None = None
    """how far a true centre may be from its mark"""
    found_by: Listed[words.StudFinder] = ()
    """how the studs were found; two ways, or the wood was seen"""
    kind: words.FramingKind | None = None
    """what the wall is framed with; wood studs if `stud` is given"""


class BlockEnd(Part):
    """How each end of a block is fixed."""

    screw: Name
    """name of the screw"""
    count: AtLeastOne
    """screws at each end"""


class Block(Part):
    """Solid wood let in between two studs."""

    left: Length
    """left end of the block, from the left end of the wall"""
    length: Size
    """length of the block along the wall"""
    bottom: Length
    """lower edge, above the datum"""
    size: LumberSize
    """size by name (4x6) or measured, {width, depth}"""
    laid: words.Laid
    """flat: the wide side faces the room; on edge: the narrow side does"""
    species: answers.FramingSpecies | None = None
    """species group read from the stamp"""
    each_end: BlockEnd | None = None
    """screws that hold each end"""


class Run(Part):
    """A cable or pipe whose way is known: up along a stud, or level at a height."""

    beside_stud: Length | None = None
    """centre line of the stud it runs along"""
    from_: Annotated[Length | Literal["floor"], Field(union_mode="left_to_right")] | None = Field(None, alias="from")
    """where the run begins: a height, or floor"""
    to: Annotated[Length | Literal["ceiling"], Field(union_mode="left_to_right")] | None = None
    """where the run ends: a height, or ceiling"""
    height: Length | None = None
    """height of a level run"""
    left: Length | None = None
    """left end of a level run"""
    right: Length | None = None
    """right end of a level run"""


class Services(Part):
    """What was looked for inside the wall, and what was found."""

    HINTS: ClassVar[dict[str, str]] = {"found_by": "Studs are found_by; for cables and pipes write looked_with."}

    looked_with: Listed[words.ServiceFinder] | None = None
    """how cables and pipes were looked for"""
    cables: Named[Run] | None = None
    """known cables; {} says looked, none there"""
    pipes: Named[Run] | None = None
    """known pipes; {} says looked, none there"""
