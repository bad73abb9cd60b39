"""Two pieces that would have to lie in one place on a wall."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plumbrule.plan.complaints import Complaints
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.resolve import bracket_places, lumber

# What touches does not overlap; and a plan may round to a sixteenth.
_SLACK = 1.6
# Pieces are compared band by band of a wall, so that many of them are not all held against each other, mm.
_BAND = 400.0


class _Piece(NamedTuple):
    name: str
    pointer: str
    wall: str
    left: float
    right: float
    low: float
    high: float


def check_overlaps(plan: Plan, complaints: Complaints) -> None:
    """Complains of angles, brackets and cleats on one wall that overlap both along it and in height."""
    bands: dict[tuple[str, int], list[_Piece]] = {}
    for piece in _pieces(plan):
        for band in range(int(piece.low // _BAND), int(piece.high // _BAND) + 1):
            bands.setdefault((piece.wall, band), []).append(piece)
    said: set[tuple[str, str]] = set()
    for pieces in bands.values():
        # From left to right, so that a piece is held against those it reaches and no further.
        pieces.sort(key=lambda piece: piece.left)
        for index, one in enumerate(pieces):
            for other in pieces[index + 1 :]:
                if other.left > one.right - _SLACK:
                    break
                if one.name != other.name and min(one.high, other.high) - max(one.low, other.low) > _SLACK:
                    said.add((min(one.pointer, other.pointer), max(one.pointer, other.pointer)))
    for first, second in sorted(said):
        names = [pointer.split("/")[2] for pointer in (first, second)]
        complaints.add(second, f"{names[1]} lies where {names[0]} is on the wall.", "Measure both again.")


def _pieces(plan: Plan) -> Iterator[_Piece]:
    model = plan.model
    for name, angle in (model.angles or {}).items():
        section = (model.sections or {}).get(angle.section)
        if section is None or None in (angle.left, angle.length, angle.bears_at, section.legs.wall, section.thickness):
            continue
        low = angle.bears_at - (section.legs.wall if angle.wall_leg == "down" else section.thickness)  # type: ignore[operator]
        yield _Piece(name, f"/angles/{name}/left", angle.wall, angle.left, angle.left + angle.length, low,  # type: ignore[operator,arg-type]
                     low + section.legs.wall)  # type: ignore[operator]  # fmt: skip
    for name, cleat in (model.cleats or {}).items():
        size = lumber(cleat.size)
        high = size.wide if size else cleat.width
        if None in (cleat.left, cleat.length, cleat.bears_at, high):
            continue
        yield _Piece(name, f"/cleats/{name}/left", cleat.wall, cleat.left, cleat.left + cleat.length,  # type: ignore[operator,arg-type]
                     cleat.bears_at - high, cleat.bears_at)  # type: ignore[operator,arg-type]  # fmt: skip
    for name, bracket in (model.brackets or {}).items():
        if None in (bracket.upright, bracket.width, bracket.bears_at):
            continue
        for place in bracket_places(plan, name, bracket) or ():
            if place.on_wall is not None:
                half = bracket.width / 2  # type: ignore[operator]
                yield _Piece(name, f"/brackets/{name}/bears_at", bracket.wall, place.on_wall - half,
                             place.on_wall + half, bracket.bears_at - bracket.upright, bracket.bears_at)  # type: ignore[operator,arg-type]  # fmt: skip
