"""Panels, and the trims and sealants that close their edges."""

from typing import Annotated, Any, ClassVar

from pydantic import Field, PlainValidator, WithJsonSchema

from plumbrule.plan import answers, words
from plumbrule.plan.part import AtLeastOne, Named, Part, Text
from plumbrule.reading.model import Listed, mistake
from plumbrule.reading.quantities import Density, Expansion, Length, Name, Size


def _movement_class(value: Any) -> float | str:
    if isinstance(value, str | int | float) and not isinstance(value, bool) and value in words.MOVEMENT_CLASSES:
        return value
    shown = "true" if value is True else "false" if value is False else value
    found = f"`{shown}` is not a class." if isinstance(value, str | int | float) else "A class is needed here."
    raise mistake(found, "Write 7.5, 12.5, 25, 35, 50 or none stated.")


# A `Literal` may not hold the number 7.5.
MovementClass = Annotated[
    float | str, PlainValidator(_movement_class), WithJsonSchema({"enum": list(words.MOVEMENT_CLASSES)})
]


class Panel(Part):
    """One panel as it comes out of the carton."""

    length: Size
    """laid length; a tongue is not counted"""
    height: Size
    """laid height; a tongue is not counted"""
    thickness: Size
    """thickness without adhesive"""
    edges: words.PanelEdges
    """shape of the edges"""
    core: answers.PanelCore | None = None
    """what it is made of"""
    density: Density | None = None
    """density of the core"""
    expansion: Expansion | None = None
    """how much it grows with warmth; the worst of its core is taken if left out"""
    flame_spread: float | None = Field(None, ge=0, le=10_000)
    """flame spread index from the data sheet"""
    smoke_developed: float | None = Field(None, ge=0, le=10_000)
    """smoke developed index from the data sheet"""
    room_test: words.RoomTest | None = None
    """fire test of a whole lined room that the data sheet says it passed; none if there is none"""
    per_carton: AtLeastOne | None = None
    """panels in one carton"""


class PanelAdhesive(Part):
    """What holds the panels on."""

    kind: answers.Adhesive
    """kind of adhesive"""
    covers: words.AdhesiveCovers | None = None
    """how much of the back it covers"""
    thickness: Length | None = None
    """thickness of the adhesive once the panel is pressed on"""
    width: Size | None = None
    """width of a strip, bead or dab"""
    spacing: Size | None = None
    """distance from strip to strip, bead to bead or dab to dab"""


class Courses(Part):
    """How the courses are laid out."""

    level_line: Length
    """top of the first course above the datum"""
    scribed: words.Scribed = "first course"
    """which course is cut to the floor"""
    from_: words.LaidFrom = Field("left", alias="from")
    """where laying begins"""
    starters: Named[Listed[Size]] | None = None
    """for each wall the first piece of each course, bottom up, repeated; from the centre, its reach to the right"""
    stagger: words.Stagger | None = None
    """shift from course to course as a fraction of a panel"""


class PanelGaps(Part):
    """Room left at the edges of the field."""

    ceiling: Length | None = None
    """under the ceiling"""
    inside_corner: Length | None = None
    """in an inside corner"""
    opening: Length | None = None
    """round an opening"""
    floor: Length | None = None
    """over the floor"""
    joints: Length = 0.0
    """between panels"""


class CutOuts(Part):
    """Room left round things that come through the panels."""

    box: Length | None = None
    """each side of an electrical box"""
    angle: Length | None = None
    """each side of a steel angle"""


class PanelField(Part):
    """Panels laid over one or more walls."""

    walls: Listed[Name]
    """walls in the order they are laid"""
    panel: Panel
    """the panel"""
    adhesive: PanelAdhesive | None = None
    """what holds it"""
    courses: Courses
    """how the courses are laid out"""
    gaps: PanelGaps = PanelGaps.model_construct()
    """room left at the edges"""
    cut_outs: CutOuts = CutOuts.model_construct()
    """room left round boxes and steel"""
    sealed_with: Name | None = None
    """name of the sealant"""


class TrimPart(Part):
    """A moulding or profile along an edge."""

    kind: words.Trim
    """shape of the trim"""
    along: Name
    """floor, ceiling, openings, or the name of a corner"""
    walls: Listed[Name] | None = None
    """walls it runs along"""
    takes: Length | None = None
    """length that the panels lose to it"""
    covers: Length | None = None
    """how much of the panel edge it hides"""
    material: Text | None = None
    """what it is made of"""


class BackerPart(Part):
    """What the sealant is laid against."""

    kind: words.Backer
    """kind of backer"""
    thickness: Size | None = None
    """thickness, or diameter of a rod"""


class SealantPart(Part):
    """One sealant and the joints it fills."""

    HINTS: ClassVar[dict[str, str]] = {"movement": "Write class: the movement each way in percent, as on the tube."}

    kind: answers.Sealant | None = None
    """kind of sealant"""
    class_: MovementClass | None = Field(None, alias="class")
    """movement each way in percent: 7.5, 12.5, 25, 35, 50, or none stated"""
    joints: Listed[words.Joint] | None = None
    """joints it fills"""
    backer: BackerPart | None = None
    """what it is laid against"""
    paintable: bool = False
    """true if the tube says it takes paint"""
    foam_safe: bool = False
    """true if the tube says it does not attack foamed plastic"""
