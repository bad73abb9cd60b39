"""Sealant in a joint: how wide the joint must be for its movement, how deep the bead lies, and how much it takes."""

from __future__ import annotations

from math import hypot

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Number, Worked

_WIDTH = "joint width from movement, W = 100 / X * M + t"
_DEPTH = "half the width, from 1/4 to 1/2 in: textbook of architectural detailing"
_GEOMETRY = "geometry of the joint"
_INCH = 25.4


def joint_width(movement: Given, capability: Given, tolerance: Given = 0.0) -> Worked:
    """Least width in mm of a joint that opens or closes by `movement` mm, filled with a sealant that takes `capability`
    % of its width each way; `tolerance` mm is what the joint may come out narrower than drawn.

    W = 100 / X * M + t. Valid for any class above zero: a sealant that promises nothing has no width. Raises
    NotPossible there. Source: course notes on building technology, and the same in the waterproofing handbook (four
    times the movement at 25 %).
    """
    moves, error = not_negative("the movement", movement), not_negative("the tolerance", tolerance)
    takes = positive("the class of the sealant", capability)
    return Worked(
        "W", "least width of the joint for this sealant", "100 / X * M + t",
        (number("X", capability, "%"), number("M", movement, "mm"), number("t", tolerance, "mm")),
        100 / takes * moves + error, "mm", _WIDTH, steps=steps(movement, capability, tolerance),
    )  # fmt: skip


def movement_share(movement: Given, width: Given) -> Worked:
    """The part of its width in % by which a joint opens or closes. mm. Raises NotPossible for a closed joint."""
    moves, wide = not_negative("the movement", movement), positive("the gap", width)
    return Worked(
        "X_M", "movement as a part of the joint", "100 * M / W",
        (number("M", movement, "mm"), number("W", width, "mm")), 100 * moves / wide, "%", _WIDTH,
        steps=steps(movement, width),
    )  # fmt: skip


def usual_depth(width: Given) -> Worked:
    """Depth in mm of the bead that suits a joint of `width` mm: half as deep as wide, never under 1/4 nor over 1/2 in.

    Other publications let a joint up to 1/2 in wide be as deep as it is wide.
    """
    wide = positive("the width", width)
    least, most = _INCH / 4, _INCH / 2
    return Worked(
        "d_u", "usual depth of the bead", "min(max(W / 2, d_0), d_1)",
        (number("W", width, "mm"), Number("d_0", least, "mm"), Number("d_1", most, "mm")),
        min(max(wide / 2, least), most), "mm", _DEPTH, steps=steps(width),
    )  # fmt: skip


def bead_depth(panel: Given, adhesive: Given, backer: Given) -> Worked:
    """How deep the bead is in mm: from the face of the panels back to the backer, which lies on the lining. mm.

    A rod that is pushed in less far makes a shallower bead. Raises NotPossible where the backer fills the joint.
    """
    cavity = positive("the panel", panel) + not_negative("the adhesive", adhesive)
    behind = not_negative("the backer", backer)
    if behind >= cavity:
        raise NotPossible("the backer is as thick as the panel and its adhesive, so that no room is left for sealant")
    return Worked(
        "d", "depth of the bead, face of the panel to backer", "t_p + t_a - t_b",
        (number("t_p", panel, "mm"), number("t_a", adhesive, "mm"), number("t_b", backer, "mm")),
        cavity - behind, "mm", _GEOMETRY, steps=steps(panel, adhesive, backer),
    )  # fmt: skip


def bead_volume(length: Given, width: Given, depth: Given) -> Worked:
    """Sealant in a joint that is filled flush, mm³: L W d, all mm. Tooling takes some out again."""
    value = not_negative("the length", length) * positive("the width", width) * positive("the depth", depth)
    return Worked(
        "V", "sealant in the joint", "L * W * d",
        (number("L", length, "mm"), number("W", width, "mm"), number("d", depth, "mm")), value, "mm³", _GEOMETRY,
        steps=steps(length, width, depth),
    )  # fmt: skip


def fillet_volume(length: Given, leg: Given, other_leg: Given) -> Worked:
    """Sealant in a triangular fillet with legs `leg` and `other_leg`, mm³: L a b / 2, all mm."""
    a, b = positive("the leg", leg), positive("the other leg", other_leg)
    return Worked(
        "V", "sealant in the fillet", "L * a * b / 2",
        (number("L", length, "mm"), number("a", leg, "mm"), number("b", other_leg, "mm")),
        not_negative("the length", length) * a * b / 2, "mm³", _GEOMETRY, steps=steps(length, leg, other_leg),
    )  # fmt: skip


def sloping_length(run: Given, one_end: Given, other_end: Given) -> Worked:
    """Length in mm of a joint that runs `run` mm along a wall and is `one_end` and `other_end` high, mm."""
    along, first, last = positive("the run", run), si(one_end), si(other_end)
    return Worked(
        "L", "length of the joint", "sqrt(w^2 + (h_1 - h_2)^2)",
        (number("w", run, "mm"), number("h_1", one_end, "mm"), number("h_2", other_end, "mm")),
        hypot(along, first - last), "mm", _GEOMETRY, steps=steps(run, one_end, other_end),
    )  # fmt: skip
