"""Where the panels of a wall end: at the ceiling, the floor, a corner, an opening, or something nobody names."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from plumbrule.facts.corner import ENDS, End, Met, corner_at
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.mechanics import sealant as mechanics
from plumbrule.mechanics.slabs import Line, height
from plumbrule.mechanics.worked import Number, Worked
from plumbrule.plan.fixtures import Opening
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import CeilingPoint, FloorPoint, Wall


class Edge(NamedTuple):
    """One edge of the panels of one wall. `kind` is None at an end of which the plan does not say what is there.

    `listed_as` is what a sealant calls it, `gap` the room left there; both None at an outside corner, where there is
    a trim or nothing. `end` is that of the wall, for an edge that stands upright at one.
    """

    plan: Plan
    field_name: str
    field: PanelField
    wall_name: str
    wall: Wall
    kind: str | None
    label: str
    listed_as: str | None = None
    gap: Input | None = None
    end: End | None = None
    met: Met | None = None
    opening_name: str | None = None
    opening: Opening | None = None

    @property
    def at(self) -> str:
        """Pointer of the panel field."""
        return f"/panels/{self.field_name}"

    @property
    def wall_at(self) -> str:
        """Pointer of the wall."""
        return f"/walls/{self.wall_name}"


def edges(plan: Plan) -> tuple[Edge, ...]:
    """Every edge of every panelled wall, in the order of laying. Worked once for a plan."""
    found: tuple[Edge, ...] | None = plan.reckoned.get("/panels edges")
    if found is None:
        found = plan.reckoned["/panels edges"] = tuple(_edges(plan))
    return found


def _edges(plan: Plan) -> Iterator[Edge]:
    for field_name, field in (plan.model.panels or {}).items():
        for wall_name in field.walls:
            wall = (plan.model.walls or {}).get(wall_name)
            if wall is not None:
                yield from _of_wall(plan, field_name, field, wall_name, wall)


def _of_wall(plan: Plan, field_name: str, field: PanelField, wall_name: str, wall: Wall) -> Iterator[Edge]:
    at, gaps = f"/panels/{field_name}/gaps", field.gaps
    what = (plan, field_name, field, wall_name, wall)
    yield Edge(*what, "ceiling", f"joint under the ceiling of wall {wall_name}", "ceiling",
               Input(gaps.ceiling, f"{at}/ceiling"))  # fmt: skip
    yield Edge(*what, "floor", f"joint over the floor of wall {wall_name}", "floor", Input(gaps.floor, f"{at}/floor"))
    opening = Input(gaps.opening, f"{at}/opening")
    for end in ENDS:
        met = corner_at(plan, wall_name, end)
        stands = getattr(wall.ends, end) if wall.ends is not None else None
        if met is not None and met.corner.turn == "inside":
            yield Edge(*what, "inside corner", f"joint in the {end} corner of wall {wall_name}", "inside corners",
                       Input(gaps.inside_corner, f"{at}/inside_corner"), end, met)  # fmt: skip
        elif met is not None:
            yield Edge(*what, "outside corner", f"edge at the {end} corner of wall {wall_name}", end=end, met=met)
        elif stands is None:
            yield Edge(*what, None, f"{end} end of wall {wall_name}", end=end)
        elif stands != "open":
            yield Edge(*what, "opening", f"joint at the {stands} {end} of wall {wall_name}", "openings", opening, end)
    if wall.openings is None:
        yield Edge(*what, None, f"openings of wall {wall_name}")
    for name, part in (wall.openings or {}).items():
        yield Edge(*what, "opening", f"joint round {name} of wall {wall_name}", "openings", opening,
                   opening_name=name, opening=part)  # fmt: skip


def unknown_at(edge: Edge) -> str:
    """The pointer to fill in for an edge of which nobody says what is there."""
    return "/corners" if edge.end is not None else f"{edge.wall_at}/openings"


def width(edge: Edge) -> Input:
    """Width of the wall."""
    return Input(edge.wall.width, f"{edge.wall_at}/width")


def ceilings(edge: Edge) -> tuple[Input, ...]:
    """Height of the ceiling over the datum at the left and right end of the wall, then at each of its bends."""
    ceiling, at = edge.wall.ceiling, f"{edge.wall_at}/ceiling"
    ends = Input(ceiling and ceiling.left, f"{at}/left"), Input(ceiling and ceiling.right, f"{at}/right")
    bends = (one.height for one in (ceiling.points if ceiling else ()))
    return (*ends, *(Input(one, f"{at}/points/{index}/height") for index, one in enumerate(bends)))


def drops(edge: Edge) -> tuple[Input, ...]:
    """How far the floor lies below the datum at the left and right end of the wall, then at each of its bends."""
    drop, at = edge.wall.floor_drop, f"{edge.wall_at}/floor_drop"
    ends = Input(drop and drop.left, f"{at}/left"), Input(drop and drop.right, f"{at}/right")
    bends = (one.drop for one in (drop.points if drop else ()))
    return (*ends, *(Input(one, f"{at}/points/{index}/drop") for index, one in enumerate(bends)))


def heights(desk: Desk, edge: Edge) -> tuple[float, float]:
    """From the floor to the ceiling at the left and right end of the wall, mm. Raises Missing."""
    inputs = (*ceilings(edge)[:2], *drops(edge)[:2])
    desk.need_all(*inputs)
    high_left, high_right, low_left, low_right = (desk.length(one) for one in inputs)
    return high_left + low_left, high_right + low_right


def tallest(desk: Desk, edge: Edge) -> float:
    """From the floor to the ceiling where that is most, mm: at an end of the wall or at a bend. Raises Missing."""
    desk.need_all(*ceilings(edge), *drops(edge), *_places(edge))
    if not _places(edge):
        return max(heights(desk, edge))
    ceiling, floor = _line(desk, edge, "ceiling"), _line(desk, edge, "floor")
    return max(height(ceiling, x) + height(floor, x) for x, _ in (*ceiling, *floor))


def _bends(edge: Edge, kind: str) -> tuple[Input, ...]:
    """Where along the wall its ceiling or its floor bends."""
    key, line = ("ceiling", edge.wall.ceiling) if kind == "ceiling" else ("floor_drop", edge.wall.floor_drop)
    points: Sequence[CeilingPoint | FloorPoint] = line.points if line else ()
    return tuple(Input(one.at, f"{edge.wall_at}/{key}/points/{index}/at") for index, one in enumerate(points))


def _places(edge: Edge) -> tuple[Input, ...]:
    """The bends of both, and the width that they are told from; nothing where both are straight."""
    found = (*_bends(edge, "ceiling"), *_bends(edge, "floor"))
    return (width(edge), *found) if found else ()


def _line(desk: Desk, edge: Edge, kind: str) -> Line:
    """Ceiling heights, or drops of the floor, from the left end of the wall to the right one. Raises Missing."""
    measures, bends = ceilings(edge) if kind == "ceiling" else drops(edge), _bends(edge, kind)
    desk.need_all(width(edge), *measures, *bends)
    left, right, *between = (desk.length(one) for one in measures)
    places = [desk.length(one) for one in bends]
    return ((0.0, left), *zip(places, between, strict=True), (desk.length(width(edge)), right))


def length(desk: Desk, edge: Edge) -> Worked | float:
    """Length of the joint, mm, along the wall as it stands: the gaps at its ends are in it. Raises Missing."""
    if edge.kind in ("ceiling", "floor"):
        line = _line(desk, edge, edge.kind)
        parts = [mechanics.sloping_length(x1 - x0, y0, y1) for (x0, y0), (x1, y1) in pairwise(line)]
        return parts[0] if len(parts) == 1 else sum(one.value for one in parts)
    if edge.opening is not None:
        return _round_opening(desk, edge, edge.opening)
    left, right = heights(desk, edge)
    return left if edge.end == "left" else right


def gap_at_floor(desk: Desk, edge: Edge) -> tuple[float, float]:
    """The narrowest and the widest gap over the floor, mm. Raises Missing.

    Panels that are not scribed keep their lower edge level while the floor falls away. A scribed course keeps its gap
    as far down as a panel reaches from the level line. Both are least and most at an end of the wall or at a bend.
    """
    courses, panel = edge.field.courses, edge.field.panel
    line = Input(courses.level_line, f"{edge.at}/courses/level_line")
    tall = Input(panel.height, f"{edge.at}/panel/height")
    scribed = courses.scribed == "first course"
    inputs = (line, tall, *drops(edge))
    assert edge.gap is not None
    desk.need_all(*((edge.gap, *inputs) if scribed else inputs))
    bottom = desk.length(line) - desk.length(tall)
    reached = [bottom + desk.length(drop) for drop in drops(edge)]
    if scribed:
        gap = desk.length(edge.gap)
        reached = [max(gap, one) for one in reached]
    else:
        desk.need(Input(courses.scribed, f"{edge.at}/courses/scribed"))
    return min(reached), max(reached)


def _round_opening(desk: Desk, edge: Edge, opening: Opening) -> Worked:
    """Sides and head, and the sill where the opening does not stand on the floor."""
    at = f"{edge.wall_at}/openings/{edge.opening_name}"
    wide, low = Input(opening.width, f"{at}/width"), Input(opening.bottom, f"{at}/bottom")
    high = Input(opening.top, f"{at}/top")
    desk.need_all(wide, low, high)
    across, bottom, top = (desk.length(one) for one in (wide, low, high))
    # Above the datum, which is the high point of the floor: a panel may lie under the sill.
    sides = 2 if bottom > 0 else 1
    return Worked(
        "L", "length of the joint round the opening", "2 * (h_1 - h_0) + n * w",
        (Number("h_1", top, "mm"), Number("h_0", bottom, "mm"), Number("n", sides, ""), Number("w", across, "mm")),
        2 * (top - bottom) + sides * across, "mm", "geometry of the opening",
    )  # fmt: skip


def need_kind(edge: Edge) -> str:
    """What the panels come up to. Raises Missing where nobody says."""
    if edge.kind is None:
        raise Missing([unknown_at(edge)])
    return edge.kind
