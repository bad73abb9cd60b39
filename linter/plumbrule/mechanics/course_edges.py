"""Where laid panels end: length of joint by what they meet, what stays uncovered, strips beside what is cut out."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from plumbrule.mechanics.course import Laying, Run, bands, lay, slots
from plumbrule.mechanics.slabs import TIE, Rect, Slab, area, chords, height, outline

_FAR = 1e6


class Cover(NamedTuple):
    """Areas of one wall in mm². `wall` is that from end to end and floor to ceiling; `pieces`, `gaps`, `cut_outs`,
    `joints` and `uncovered` make it up, each worked by itself but the last, which is what none of them takes."""

    wall: float
    pieces: float
    gaps: float
    cut_outs: float
    joints: float
    uncovered: float


class Strips(NamedTuple):
    """What is left of the panels beside a cut-out where they are narrowest, mm: above, below, left and right of it.
    None where no panel lies there."""

    above: float | None
    below: float | None
    left: float | None
    right: float | None


def whole(run: Run, cuts: Iterable[Rect] | None = None) -> tuple[Slab, ...]:
    """All that panels may cover of a wall, as one shape."""
    rect = Rect(run.left, -_FAR, run.right, _FAR)
    return outline(rect, run.floor, run.ceiling, run.cuts if cuts is None else cuts)


def edges(run: Run, openings: Sequence[Rect], left_end: str, right_end: str) -> Mapping[str, float]:
    """Length of the edges of the panels in mm: `ceiling`, `floor`, `opening`, and the two ends under their words. Edges
    along boxes and steel are not counted."""
    found = {"ceiling": 0.0, "floor": 0.0, "opening": 0.0}
    found.setdefault(left_end, 0.0)
    found.setdefault(right_end, 0.0)
    shape = whole(run)
    for slab in shape:
        wide = slab.x1 - slab.x0
        if (
            abs(slab.high0 - height(run.ceiling, slab.x0)) < TIE
            and abs(slab.high1 - height(run.ceiling, slab.x1)) < TIE
        ):
            found["ceiling"] += math.hypot(wide, slab.high1 - slab.high0)
        if abs(slab.low0 - height(run.floor, slab.x0)) < TIE and abs(slab.low1 - height(run.floor, slab.x1)) < TIE:
            found["floor"] += math.hypot(wide, slab.low1 - slab.low0)
        if slab.x0 == run.left:
            found[left_end] += slab.high0 - slab.low0
        if slab.x1 == run.right:
            found[right_end] += slab.high1 - slab.low1
        for cut in openings:
            if cut.x0 - TIE <= slab.x0 and slab.x1 <= cut.x1 + TIE:
                found["opening"] += wide * ((slab.low0 == cut.y1) + (slab.high0 == cut.y0))
            if abs(slab.x1 - cut.x0) < TIE:
                found["opening"] += max(0.0, min(slab.high1, cut.y1) - max(slab.low1, cut.y0))
            if abs(slab.x0 - cut.x1) < TIE:
                found["opening"] += max(0.0, min(slab.high0, cut.y1) - max(slab.low0, cut.y0))
    return found


def cover(run: Run, laying: Laying, pieces: Iterable[Slab], width: float, floor: Sequence[tuple[float, float]],
          ceiling: Sequence[tuple[float, float]]) -> Cover:  # fmt: skip
    """The areas that make up a wall `width` mm wide between its bare floor and ceiling. Pieces, gaps, cut-outs and
    joints are each summed on their own, so that what is left over shows what nobody covered."""
    wall = area(outline(Rect(0.0, -_FAR, width, _FAR), tuple(floor), tuple(ceiling)))
    room = area(whole(run, ()))
    target = area(whole(run))
    joints = 0.0
    if laying.joint > 0:
        for band in bands(run, laying):
            joints += area(outline(Rect(run.left, band.top, run.right, band.top + laying.joint), run.floor, run.ceiling,
                                   run.cuts))  # fmt: skip
            # A strip at an end that is no wider than a joint is the joint of a panel that does not show.
            places = slots(run, laying, band.number)
            for left, right in (
                (places[0][0] - laying.joint, places[0][0]),
                *((x, x + laying.joint) for _, x in places),
            ):
                across = Rect(max(left, run.left), band.bottom, min(right, run.right), band.top)
                joints += area(outline(across, run.floor, run.ceiling, run.cuts))
    covered = area(pieces)
    return Cover(wall, covered, wall - room, room - target, joints, target - covered - joints)


def seen_uncovered(run: Run, laying: Laying, bare_floor: Sequence[tuple[float, float]], hidden: float) -> float:
    """The area in mm² that stays uncovered higher than `hidden` mm over the bare floor, which a trim hides."""
    raised = tuple((x, max(y, height(tuple(bare_floor), x) + hidden)) for x, y in run.floor)
    above = Run(run.left, run.right, raised, run.ceiling, run.cuts)
    pieces = [slab for piece in lay(above, laying) for slab in piece.slabs]
    return cover(above, laying, pieces, run.right, raised, run.ceiling).uncovered


def floor_gap_most(run: Run, laying: Laying, bare_floor: Sequence[tuple[float, float]]) -> float:
    """The widest gap between the bare floor and the lower edge of the first course, mm, openings left out."""
    band = bands(run, laying)[0]
    floor = tuple(bare_floor)
    found = 0.0
    for slab in outline(Rect(run.left, band.bottom, run.right, band.top), run.floor, run.ceiling, run.cuts):
        for x, low in ((slab.x0, slab.low0), (slab.x1, slab.low1)):
            if any(abs(low - cut.y1) < TIE and cut.x0 - TIE <= x <= cut.x1 + TIE for cut in run.cuts):
                continue
            found = max(found, low - height(floor, x))
    return found


def strips(pieces: Iterable[Sequence[Slab]], cut: Rect) -> Strips:
    """How wide the panels are between a cut-out and the next edge of the same piece."""
    above = below = left = right = math.inf
    for piece in pieces:
        for slab in piece:
            if slab.x0 < cut.x1 - TIE and cut.x0 + TIE < slab.x1:
                tall = min(slab.high0 - slab.low0, slab.high1 - slab.low1)
                if abs(slab.low0 - cut.y1) < TIE and abs(slab.low1 - cut.y1) < TIE:
                    above = min(above, tall)
                if abs(slab.high0 - cut.y0) < TIE and abs(slab.high1 - cut.y0) < TIE:
                    below = min(below, tall)
        for chord in chords(piece):
            if chord.y0 < cut.y1 - TIE and cut.y0 + TIE < chord.y1:
                if abs(chord.x1 - cut.x0) < TIE:
                    left = min(left, chord.x1 - chord.x0)
                if abs(chord.x0 - cut.x1) < TIE:
                    right = min(right, chord.x1 - chord.x0)
    return Strips(*(None if one == math.inf else one for one in (above, below, left, right)))
