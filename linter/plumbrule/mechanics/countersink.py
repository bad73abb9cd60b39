"""A countersunk head in a thin leg: how deep its cone goes, and what straight wall is left under it.

A countersunk head centres itself, so it leaves a board no room to move: where one must slide, use another head.
"""

from __future__ import annotations

from math import radians, tan

from plumbrule.mechanics.given import Given, number, positive, si, steps
from plumbrule.mechanics.worked import NotPossible, Worked

_CONE = "geometry of the cone; the taller of cone and tabulated head height"


def cone_height(head: Given, diameter: Given, angle: float) -> Worked:
    """Height (A - D)/(2 tan(theta/2)) in mm of a cone from `head` A to `diameter` D, mm, included `angle` degrees
    between 20 and 160. Raises NotPossible when the head is no wider than the screw."""
    wide, narrow = positive("the head", head), positive("the screw", diameter)
    if wide <= narrow:
        raise NotPossible("a countersink must be wider than the screw")
    if not 20 <= angle <= 160:
        raise NotPossible(f"a countersink of {angle:g} degrees is not one")
    return Worked(
        "H_g", "height of the cone", "(A - D) / (2 * tan(th / 2))",
        (number("A", head, "mm"), number("D", diameter, "mm"), number("th", angle, "°")),
        (wide - narrow) / (2 * tan(radians(angle) / 2)), "mm", _CONE, steps=steps(head, diameter),
    )  # fmt: skip


def cut_depth(sink: Given, hole: Given, angle: float) -> Worked:
    """Depth (S - d_h)/(2 tan(theta_s/2)) in mm of the sink as it is cut: from its `sink` diameter at the face down to
    the `hole`, mm, with a cutter of included `angle` degrees. Raises NotPossible as `cone_height` does."""
    cone = cone_height(sink, hole, angle)
    return Worked(
        "H_k", "depth of the countersink as it is cut", "(S - d_h) / (2 * tan(th_s / 2))",
        (number("S", sink, "mm"), number("d_h", hole, "mm"), number("th_s", angle, "°")), cone.value, "mm",
        "geometry of the cone", steps=steps(sink, hole),
    )  # fmt: skip


def sink_depth(
    head: Given, diameter: Given, angle: float, table_height: Given | None = None, cut: Given | None = None
) -> Worked:
    """Depth H_c in mm of the countersink: the cone from `head` to `diameter` of the screw, at the head's `angle`; the
    tabulated `table_height` where a table has the head and prints more; the depth that is really `cut` when that is
    deeper still.

    The printed height runs 2 to 4 % over the cone, since it is measured to the thread's body.
    """
    cone = cone_height(head, diameter, angle)
    others = {"H": table_height, "H_k": cut}
    given = {symbol: positive("the depth", depth) for symbol, depth in others.items() if depth is not None}
    numbers = [number(symbol, depth, "mm") for symbol, depth in others.items() if depth is not None]
    formula = "H_g"
    for symbol in given:
        formula = f"max({formula}, {symbol})"
    return Worked(
        "H_c", "depth of the countersink", formula, (number("H_g", cone, "mm"), *numbers),
        max(cone.value, *given.values()) if given else cone.value, "mm", _CONE,
        steps=(cone, *steps(*(depth for depth in others.values() if depth is not None))),
    )  # fmt: skip


def land(thickness: Given, depth: Given) -> Worked:
    """Straight wall t - H_c in mm left under the cone. Zero or less: the sink comes out at the back as a knife edge."""
    value = positive("the steel", thickness) - positive("the sink's depth", depth)
    return Worked(
        "land", "straight wall left under the countersink", "t_a - H_c",
        (number("t_a", thickness, "mm"), number("H_c", depth, "mm")), value, "mm", "geometry",
        steps=steps(thickness, depth),
    )  # fmt: skip


def bearing_thickness(thickness: Given, depth: Given) -> Worked:
    """Thickness that bears on the screw's side, t - H_c/2, mm. Raises NotPossible when nothing is left."""
    value = positive("the steel", thickness) - positive("the sink's depth", depth) / 2
    if value <= 0:
        raise NotPossible("the countersink takes all of the steel")
    return Worked(
        "t_b", "thickness of steel that bears beside a countersink", "t_a - H_c / 2",
        (number("t_a", thickness, "mm"), number("H_c", depth, "mm")), value, "mm",
        "EN 1993-1-8 Table 3.4, rule from memory", steps=steps(thickness, depth),
    )  # fmt: skip


def depth_share(thickness: Given, depth: Given) -> Worked:
    """How much of the thickness the countersink takes, H_c/t."""
    value = si(depth) / positive("the steel", thickness)
    return Worked(
        "n_c", "share of the thickness that the countersink takes", "H_c / t_a",
        (number("H_c", depth, "mm"), number("t_a", thickness, "mm")), value, "", "geometry",
        steps=steps(thickness, depth),
    )  # fmt: skip


def angle_mismatch(sink_angle: Given, head_angle: Given) -> Worked:
    """Countersink angle less head angle, degrees: above zero the head bears on its rim only, below zero at the
    bottom of its cone."""
    value = positive("the sink's angle", sink_angle) - positive("the head's angle", head_angle)
    return Worked(
        "d_th", "countersink angle less head angle", "th_s - th_h",
        (number("th_s", sink_angle, "°"), number("th_h", head_angle, "°")), value, "°", "geometry",
        steps=steps(sink_angle, head_angle),
    )  # fmt: skip
