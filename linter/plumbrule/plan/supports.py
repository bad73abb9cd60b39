"""What carries boards: steel shapes, drilling patterns, and the angles, brackets and cleats made from them."""

from typing import Annotated, ClassVar, Literal

from plumbrule.plan import answers, words
from plumbrule.plan.part import Part, instead
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Angle as Degrees
from plumbrule.reading.quantities import Length, Name, Size

SIXTEENTH = 1.5875


class Legs(Part):
    """Outside sizes of the two legs."""

    wall: Size
    """leg against the wall"""
    seat: Size
    """leg under the board"""


class SteelSection(Part):
    """One steel shape, used by any number of angles."""

    legs: Legs
    """outside sizes of the two legs"""
    thickness: Size
    """thickness of both legs"""
    inside_radius: Length | None = None
    """fillet of a rolled angle, or the inside bend of a folded one"""
    steel: answers.Steel | None = None
    """grade on the mill mark; `unmarked` counts as the weakest"""
    coating: words.SteelCoating = "bare"
    """what keeps the steel from rusting and staining"""


class Countersink(Part):
    """The cone cut for a flat head."""

    angle: Degrees
    """included angle"""
    diameter: Size
    """diameter at the face"""


def _one_distance(text: str) -> tuple[str, str]:
    return "from_heel is a list: one entry for each screw at a place.", f"Write [{text}]."


FromHeel = Annotated[Listed[Size], instead(_one_distance)]


class HolePattern(Part):
    """One drilling pattern, used wherever it is named."""

    screw: Name
    """name of the screw"""
    diameter: Size
    """diameter of the drill"""
    from_heel: FromHeel
    """distances from the heel; two entries are two screws at each place, one above the other"""
    slot: Size | None = None
    """length of the slot over all, where the board must be free to move"""
    slot_runs: words.SlotDirection | None = None
    """which way the slot runs"""
    countersink: Countersink | None = None
    """cone for a flat head"""
    drilled_within: Length = SIXTEENTH
    """how far a hole may be from its mark"""
    deburr: words.Deburr = "no"
    """which faces are deburred"""


class HoleGroup(Part):
    """Where a pattern is drilled. A key of the pattern that is written here wins over it."""

    pattern: Name
    """name of the drilling pattern"""
    at: Literal["studs"] | None = None
    """a hole at every stud within reach"""
    from_left: Listed[Length] | None = None
    """distances from the left end of the part"""
    into: Name | None = None
    """block that the screws go into"""
    screw: Name | None = None
    """instead of the pattern's"""
    diameter: Size | None = None
    """instead of the pattern's"""
    from_heel: FromHeel | None = None
    """instead of the pattern's"""
    slot: Size | None = None
    """instead of the pattern's"""
    slot_runs: words.SlotDirection | None = None
    """instead of the pattern's"""
    countersink: Countersink | None = None
    """instead of the pattern's"""
    drilled_within: Length | None = None
    """instead of the pattern's"""
    deburr: words.Deburr | None = None
    """instead of the pattern's"""


class AngleEnds(Part):
    """How the two ends of an angle are cut."""

    left: words.AngleEnd = "square"
    """left end"""
    right: words.AngleEnd = "square"
    """right end"""


class SteelAngle(Part):
    """One length of steel angle on a wall."""

    HINTS: ClassVar[dict[str, str]] = {
        "top": "top of which leg? Write bears_at.",
        "height": "height of which leg? Write bears_at.",
        "holes": "holes in which leg? Write wall_holes or seat_holes.",
    }

    wall: Name
    """name of the wall"""
    section: Name
    """name of the steel shape"""
    wall_leg: words.WallLeg
    """up: the wall leg stands behind the board; down: it hangs under it"""
    bears_at: Length
    """height of the upper face of the seat leg above the datum, whichever way the wall leg goes"""
    left: Length
    """left end, from the left end of the wall"""
    length: Size
    """length of the angle"""
    ends: AngleEnds = AngleEnds.model_construct()
    """how the ends are cut"""
    lining_behind: words.LiningBehind = "left in place"
    """what is done with the lining behind the wall leg: decides the side strength of every screw"""
    wall_holes: HoleGroup
    """holes in the wall leg"""
    seat_holes: HoleGroup
    """holes in the seat leg"""


class Bracket(Part):
    """One bracket a place: a piece of a steel shape, or a bracket as bought."""

    HINTS = SteelAngle.HINTS

    wall: Name
    """name of the wall"""
    section: Name | None = None
    """name of the steel shape it is cut from"""
    upright: Size | None = None
    """length of the upright of a bought bracket, on the wall"""
    arm: Size | None = None
    """length of the arm of a bought bracket, under the board"""
    width: Size
    """width along the wall"""
    thickness: Size | None = None
    """thickness of a bought bracket"""
    steel: answers.Steel | None = None
    """grade of a bought bracket"""
    inside_radius: Length | None = None
    """radius inside the bend of a bought bracket"""
    coating: words.SteelCoating | None = None
    """what keeps a bought bracket from rusting and staining"""
    braced: bool = False
    """true where a brace runs from arm to upright"""
    at: Literal["studs"] | None = None
    """a bracket at every stud under its boards"""
    from_left: Listed[Length] | None = None
    """centre lines of the brackets, from the left end of the wall"""
    bears_at: Length
    """height of the upper face of the arm above the datum"""
    lining_behind: words.LiningBehind = "left in place"
    """what is done with the lining behind the upright"""
    wall_holes: HoleGroup
    """holes in the upright"""
    seat_holes: HoleGroup
    """holes in the arm"""


class Cleat(Part):
    """A wood ledger on a wall."""

    HINTS = SteelAngle.HINTS

    wall: Name
    """name of the wall"""
    species: answers.WoodSpecies
    """framing or board species"""
    grade: words.FramingGrade | None = None
    """a framing grade with a framing species, a board grade with a board species"""
    size: words.LumberSize | None = None
    """size by name: 2x4; or measured, width and thickness"""
    width: Size | None = None
    """height on the wall, measured"""
    thickness: Size | None = None
    """thickness out of the wall, measured"""
    left: Length
    """left end, from the left end of the wall"""
    length: Size
    """length of the cleat"""
    bears_at: Length
    """height of its upper edge above the datum"""
    lining_behind: words.LiningBehind = "left in place"
    """what is done with the lining behind it"""
    wall_holes: HoleGroup
    """screws into the wall"""
    seat_holes: HoleGroup | None = None
    """screws up into the board"""
