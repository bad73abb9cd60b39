"""The face of a wall from end to end, under a ceiling that may bend in between."""

from __future__ import annotations

from itertools import pairwise

from plumbrule.facts.desk import Desk, Input
from plumbrule.mechanics import quantities
from plumbrule.mechanics.lifting import wall_area
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.walls import Wall


def face_sources(wall: Wall, here: str) -> tuple[Input, ...]:
    """What the face is reckoned from: the width, the ceiling at both ends, place and height of each bend."""
    ceiling, at = wall.ceiling, f"{here}/ceiling"
    ends = (Input(getattr(ceiling, end, None), f"{at}/{end}") for end in ("left", "right"))
    bends = (
        source
        for index, one in enumerate(ceiling.points if ceiling else ())
        for source in (
            Input(one.at, f"{at}/points/{index}/at"),
            Input(one.height, f"{at}/points/{index}/height"),
        )
    )
    return (Input(wall.width, f"{here}/width"), *ends, *bends)


def face(desk: Desk, wall: Wall, here: str) -> Worked:
    """Area of the face in ft², openings not taken off. Raises Missing."""
    sources = face_sources(wall, here)
    desk.need_all(*sources)
    width, left, right, *bends = (desk.length(one) for one in sources)
    if not bends:
        return wall_area(width, left, right)
    line = ((0.0, left), *zip(bends[::2], bends[1::2], strict=True), (width, right))
    parts = [wall_area(x1 - x0, y0, y1) for (x0, y0), (x1, y1) in pairwise(line)]
    return quantities.total("A_w", "face of the wall, from bend to bend of its ceiling", "mm²", parts)
