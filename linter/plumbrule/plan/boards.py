"""Boards: the seat or shelf itself, its edges, cracks and finish."""

from typing import ClassVar

from pydantic import Field

from plumbrule.plan import answers, words
from plumbrule.plan.part import Count, Named, Part
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Force, Grit, Length, LineOrAreaLoad, Name, Percent, Size


class BoardGaps(Part):
    """Room left round a board, off the finished face or the steel."""

    left: Length | None = None
    """at the left end"""
    right: Length | None = None
    """at the right end"""
    back: Length | None = None
    """behind the back edge"""
    front: Length | None = None
    """before the front edge, only where a nosing, post or wall captures it"""


class Load(Part):
    """What the board must carry. Both are tried at the worst place."""

    point: Force | None = None
    """one load at the worst place: a person, a pot"""
    uniform: LineOrAreaLoad | None = None
    """spread evenly: per foot of board, or per square foot"""


class Edge(Part):
    """How an edge is eased."""

    ease: words.Ease = "sharp"
    """shape of the edge"""
    size: Size | None = None
    """radius, or width of the chamfer"""


class Edges(Part):
    """The edges of a board."""

    front: Edge = Edge.model_construct()
    """front edge"""
    back: Edge = Edge.model_construct()
    """back edge"""
    ends: Edge = Edge.model_construct()
    """both ends"""


class Crack(Part):
    """A crack or check."""

    from_left: Length | None = None
    """where it begins, from the left end of the board"""
    from_front: Length | None = None
    """how far it lies behind the front edge, at its nearer point"""
    length: Size | None = None
    """length along the grain"""
    depth: Size | None = None
    """depth into the board"""
    width: Size | None = None
    """width at the face"""
    fill: words.CrackFill = "none"
    """what it is filled with"""


class Coats(Part):
    """Coats of finish on each side."""

    top: Count = 0
    """upper face"""
    bottom: Count = 0
    """lower face"""
    edges: Count = 0
    """all edges and ends"""


class BoardFinish(Part):
    """What the board is finished with."""

    kind: answers.Finish | None = None
    """the finish"""
    coats: Coats = Coats.model_construct()
    """coats on each side"""


class Board(Part):
    """A seat or shelf."""

    HINTS: ClassVar[dict[str, str]] = {
        "on": "Write bears_on.",
        "width": "Write depth: from the wall to the front edge.",
    }

    species: answers.BoardSpecies
    """species of the wood"""
    grade: words.BoardGrade | None = None
    """grade of the wood"""
    sawn: words.Sawn = "flat"
    """how it was sawn: flat-sawn wood moves about twice as much"""
    wall: Name
    """wall behind its back edge"""
    bears_on: Listed[Name]
    """angles, brackets and cleats it lies on"""
    left: Length | None = None
    """left end from the left end of the wall, only where no end is against a wall"""
    length: Size
    """finished length along the wall"""
    depth: Size
    """finished depth from back to front"""
    thickness: Size
    """finished thickness"""
    gaps: BoardGaps | None = None
    """room left round it"""
    carries: words.Carries | None = None
    """what it is for"""
    load: Load | None = None
    """what it must carry"""
    moisture: Percent | None = None
    """moisture content when it is worked"""
    edges: Edges = Edges.model_construct()
    """its edges"""
    cracks: Named[Crack] = Field(default_factory=dict)
    """its cracks"""
    sanding: Listed[Grit] | None = None
    """grits in the order they are used, coarse to fine"""
    finish: BoardFinish | None = None
    """its finish"""
    cut_long_by: Length | None = None
    """how much longer it is kept until the panels are up"""
