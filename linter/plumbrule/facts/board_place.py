"""Where a board lies in the finished room: its ends, its back and front edge, and each screw that goes up into it.

Across the wall everything is measured from the face of the lining as it stands, along it from the left end of the wall.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from plumbrule.catalogue.rows_boards import BOARD
from plumbrule.facts.corner import ENDS, End, Met, corner_at
from plumbrule.facts.desk import Desk, Input, Missing, kept
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.screw_lengths import lining_thickness
from plumbrule.facts.supports import Support
from plumbrule.mechanics.fitting import finished_opening
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.plan.boards import Board
from plumbrule.plan.plan_file import Plan

# An end that is this far from the wall stands free: nobody leaves such a gap on purpose.
FREE = 50.8
# An end that follows a corner more out of square than this is scribed on site (1/16 in over 15 in).
_OUT_OF_SQUARE = 0.25


class Placed(NamedTuple):
    """A board with its name, and what it lies on."""

    plan: Plan
    name: str
    board: Board
    supports: tuple[Support, ...]

    @property
    def here(self) -> str:
        """The board's pointer."""
        return f"/boards/{self.name}"

    def of(self, key: str) -> Input:
        """A value that stands directly under the board."""
        return Input(getattr(self.board, key), f"{self.here}/{key}")

    def gap(self, key: str) -> Input:
        """The gap left at one edge."""
        gaps = self.board.gaps
        return Input(getattr(gaps, key) if gaps else None, f"{self.here}/gaps/{key}")


class _Same:
    """A part as a key: equal to itself only."""

    __slots__ = ("part",)

    def __init__(self, part: object) -> None:
        self.part = part

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.part is self.part

    def __hash__(self) -> int:
        return id(self.part)


class ScrewSpot(NamedTuple):
    """Where a screw meets its board, mm: from either end of it, and from the lining of its wall."""

    to_left: float
    to_right: float
    across: float


def walled_ends(placed: Placed) -> Mapping[End, Met]:
    """The ends that lie against a wall, with the corner there. `left` is written only where none does."""
    key = ("walled ends", placed.name)
    if key not in placed.plan.reckoned:
        placed.plan.reckoned[key] = _walled_ends(placed)
    found: Mapping[End, Met] = placed.plan.reckoned[key]
    return found


def _walled_ends(placed: Placed) -> Mapping[End, Met]:
    if placed.plan.is_written(f"{placed.here}/left"):
        return {}
    found: dict[End, Met] = {}
    for end in ENDS:
        met = corner_at(placed.plan, placed.board.wall, end)
        gap = placed.gap(end).value
        if met is None or met.corner.turn != "inside" or (isinstance(gap, int | float) and gap > FREE):
            continue
        found[end] = met
    return found


def require_ends_known(placed: Placed) -> None:
    """Raises Missing where a gap is left at an end, as one leaves it off a wall, and nothing says what stands there."""
    wall = (placed.plan.model.walls or {}).get(placed.board.wall)
    if placed.plan.is_written(f"{placed.here}/left"):
        return
    for end in ENDS:
        gap = placed.gap(end).value
        stands = getattr(wall.ends, end) if wall is not None and wall.ends is not None else None
        off_a_wall = isinstance(gap, int | float) and gap <= FREE
        if off_a_wall and stands is None and corner_at(placed.plan, placed.board.wall, end) is None:
            raise Missing(["/corners"])


def finish(desk: Desk, plan: Plan, wall: str) -> float:
    """What panels and their adhesive add to the face of a wall, mm; nothing where it gets none. Raises Missing."""
    thickest = 0.0
    for name, field in (plan.model.panels or {}).items():
        if wall not in field.walls:
            continue
        here = f"/panels/{name}"
        parts = [Input(field.panel.thickness, f"{here}/panel/thickness")]
        if field.adhesive is None:
            parts.append(Input(None, f"{here}/adhesive"))
        elif field.adhesive.kind != "none" or field.adhesive.thickness is not None:
            parts.append(Input(field.adhesive.thickness, f"{here}/adhesive/thickness"))
        desk.need_all(*parts)
        thickest = max(thickest, sum(desk.length(part) for part in parts))
    return thickest


def recess(desk: Desk, support: Support) -> float:
    """How far the back of a support lies behind the face of the lining, mm: the lining, where it is cut away."""
    return lining_thickness(desk, support) if desk.word(support.lining_behind) == "cut away" else 0.0


def opening(desk: Desk, placed: Placed) -> Worked:
    """Clear width in mm between the finished faces that the ends of the board lie against, or from such a face to the
    far end of the wall. Raises Missing; OutsideRulebook in a corner that is not square."""
    width = _wall_width(placed.plan, placed.board.wall)
    ends = walled_ends(placed)
    desk.need_all(width, *(met.angle for met in ends.values()))
    left, right = (_face(desk, placed, ends[end]) if end in ends else 0.0 for end in ENDS)
    return finished_opening(desk.length(width), left, right)


def left_end(desk: Desk, placed: Placed) -> float:
    """From the left end of the wall's lining to the left end of the board, mm. Raises Missing."""
    return kept(placed.plan, ("left end", placed.name), BOARD, desk, lambda own: _left_end(own, placed))


def _left_end(desk: Desk, placed: Placed) -> float:
    if placed.plan.is_written(f"{placed.here}/left"):
        return desk.length(placed.of("left"))
    ends = walled_ends(placed)
    if "left" in ends:
        return _to_end(desk, placed, ends["left"], "left")
    if "right" in ends:
        width, length = _wall_width(placed.plan, placed.board.wall), placed.of("length")
        desk.need_all(width, length)
        return desk.length(width) - _to_end(desk, placed, ends["right"], "right") - desk.length(length)
    raise Missing([f"{placed.here}/left"])


def back_edge(desk: Desk, placed: Placed) -> float:
    """From the lining to the back edge, mm: the gap off the finished face or, where a leg stands up behind the board,
    off that leg. Raises Missing."""
    return _behind(desk, placed, placed.board.wall) + desk.length(placed.gap("back"))


def front_edge(desk: Desk, placed: Placed) -> float:
    """From the lining to the front edge, mm. Raises Missing."""
    return back_edge(desk, placed) + desk.length(placed.of("depth"))


def screw_spot(desk: Desk, placed: Placed, support: Support, drilling: Drilling) -> ScrewSpot:
    """Where the screw of a seat hole meets the board. Raises Missing; OutsideRulebook in a corner out of square."""
    # Drillings are told apart by their being: the key keeps this one alive as long as what was worked for it.
    key = ("screw spot", placed.name, _Same(drilling))
    return kept(placed.plan, key, BOARD, desk, lambda own: _screw_spot(own, placed, support, drilling))


def _screw_spot(desk: Desk, placed: Placed, support: Support, drilling: Drilling) -> ScrewSpot:
    if support.wall_name == placed.board.wall:
        desk.need_all(drilling.on_wall, drilling.y)
        length = desk.length(placed.of("length"))
        to_left = desk.length(drilling.on_wall) - left_end(desk, placed)
        return ScrewSpot(to_left, length - to_left, desk.length(drilling.y) - recess(desk, support))
    end, met = round_the_corner(placed, support)
    width = _wall_width(placed.plan, support.wall_name)
    desk.need_all(drilling.on_wall, drilling.y, met.angle, *((width,) if end == "left" else ()))
    along = desk.length(drilling.on_wall)
    across = desk.length(width) - along if end == "left" else along
    _require_square(desk, met)
    out = desk.length(drilling.y) - recess(desk, support)
    length = desk.length(placed.of("length"))
    if end in walled_ends(placed):
        to_end = out - _to_end(desk, placed, met, end)
    else:
        own = _wall_width(placed.plan, placed.board.wall)
        begins = left_end(desk, placed)
        to_end = out - begins if end == "left" else begins + length - (desk.length(own) - out)
    return ScrewSpot(to_end, length - to_end, across) if end == "left" else ScrewSpot(length - to_end, to_end, across)


def round_the_corner(placed: Placed, support: Support) -> tuple[End, Met]:
    """At which end of the board's wall the wall of a return meets it. Raises Missing where no corner says so."""
    for end in ENDS:
        met = corner_at(placed.plan, placed.board.wall, end)
        if met is not None and met.beyond == support.wall_name:
            return end, met
    raise Missing(["/corners"])


def _to_end(desk: Desk, placed: Placed, met: Met, end: End) -> float:
    """From the lining of the wall at one end to that end of the board, mm."""
    gap = placed.gap(end)
    desk.need_all(gap, met.angle)
    return _face(desk, placed, met) + desk.length(gap)


def _face(desk: Desk, placed: Placed, met: Met) -> float:
    """From the lining of the wall at one end to what that end faces, mm."""
    _require_square(desk, met)
    return 0.0 if met.beyond is None else _behind(desk, placed, met.beyond)


def _behind(desk: Desk, placed: Placed, wall: str) -> float:
    """How far the finished face, or a leg that stands up beside the board, lies before the lining of a wall, mm."""
    faces = [finish(desk, placed.plan, wall)]
    for support in placed.supports:
        if support.wall_leg == "up" and support.wall_name == wall:
            faces.append(desk.length(support.thickness) - recess(desk, support))
    return max(faces)


def _require_square(desk: Desk, met: Met) -> None:
    if abs(desk.length(met.angle) - 90.0) > _OUT_OF_SQUARE:
        raise OutsideRulebook(
            "In a corner that is not square the end of a board is scribed on site: measure it there with a template."
        )


def _wall_width(plan: Plan, wall: str) -> Input:
    part = (plan.model.walls or {}).get(wall)
    return Input(part.width if part else None, f"/walls/{wall}/width")
