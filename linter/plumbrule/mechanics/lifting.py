"""How heavy a board, a bar of steel or a carton is, and how much of it one person may put where.

The lifting equation is for two hands, a firm floor, a few lifts an hour and no twisting; it knows nothing of stairs, of
a bad back or of gloves. What it gives for two people is each one's half, which is how the trade uses it.
"""

from __future__ import annotations

from plumbrule.mechanics.given import Given, finite, not_negative, number, positive, steps
from plumbrule.mechanics.worked import NotPossible, Worked
from plumbrule.reading.units import from_si, to_si

_WOOD = "USDA Wood Handbook: 62.4 lb/ft³ of water, 12 % of moisture in the wood"
_STEEL = "490 lb/ft³ of steel, AISC Manual, from memory"
_EQUATION = "NIOSH revised lifting equation, 1991"
_FROM_MEMORY = "NIOSH Publication 94-110, from memory"
# Weight that nearly everybody can lift under the best conditions.
LOAD_CONSTANT = to_si(51, "lb")
# Beyond these the equation recommends no weight at all (Publication 94-110, from memory).
FARTHEST, HIGHEST, LONGEST_TRAVEL = to_si(25, "in"), to_si(70, "in"), to_si(70, "in")


def board_mass(gravity: Given, length: Given, depth: Given, thickness: Given) -> Worked:
    """Mass in lb of a board at 12 % moisture: 62.4 x 1.12 G pcf. Sizes in mm."""
    value = 62.4 * 1.12 * positive("the gravity", gravity) * _cubic_inches(length, depth, thickness) / 1728
    return Worked(
        "m_b", "mass of the board", "62.4 * 1.12 * G_12 * L * b * t / 1728",
        (number("G_12", gravity, ""), number("L", length, "in"), number("b", depth, "in"),
         number("t", thickness, "in")),
        value, "lb", _WOOD, published_units=True, steps=steps(gravity, length, depth, thickness),
    )  # fmt: skip


def block_mass(density: Given, length: Given, depth: Given, thickness: Given, count: float = 1.0) -> Worked:
    """Mass in lb of `count` equal sheets or panels of `density` lb/ft³ (a bare number) and sizes in mm."""
    each = positive("the density", density) * _cubic_inches(length, depth, thickness) / 1728
    return Worked(
        "m", "mass of what is carried", "n * rho * L * b * t / 1728",
        (number("n", positive("the count", count), ""), number("rho", density, ""), number("L", length, "in"),
         number("b", depth, "in"), number("t", thickness, "in")),
        count * each, "lb", "density times volume; rho in lb/ft³", published_units=True,
        steps=steps(density, length, depth, thickness),
    )  # fmt: skip


def angle_mass(wall_leg: Given, seat_leg: Given, thickness: Given, length: Given) -> Worked:
    """Mass in lb of an angle of outside legs and thickness in mm: the fillet is left out."""
    legs = (
        positive("the wall leg", wall_leg) + positive("the seat leg", seat_leg) - positive("the thickness", thickness)
    )
    if legs <= 0:
        raise NotPossible("the steel is thicker than its legs are wide")
    value = 490 * _cubic_inches(legs, thickness, length) / 1728
    return Worked(
        "m_s", "mass of the steel", "490 * (b_w + b_s - t) * t * L / 1728",
        (number("b_w", wall_leg, "in"), number("b_s", seat_leg, "in"), number("t", thickness, "in"),
         number("L", length, "in")),
        value, "lb", _STEEL, published_units=True, steps=steps(wall_leg, seat_leg, thickness, length),
    )  # fmt: skip


def each_lifts(mass: Given, people: int) -> Worked:
    """What each of `people` lifts of `mass` kg."""
    if people < 1:
        raise NotPossible("nobody lifts it")
    return Worked(
        "m_1", "what each person lifts", "m / n", (number("m", mass, "lb"), number("n", float(people), "")),
        from_si(not_negative("the mass", mass), "lb") / people, "lb", "shared evenly", steps=steps(mass),
    )  # fmt: skip


def reach_to_hands(depth: Given) -> Worked:
    """H: from the ankles to the hands that hold a board by its middle, 8 in and half its depth in mm."""
    return Worked(
        "H", "from the ankles to the hands", "8 + b / 2", (number("b", depth, "in"),),
        8 + from_si(positive("the depth", depth), "in") / 2, "in", _FROM_MEMORY, published_units=True,
        steps=steps(depth),
    )  # fmt: skip


def recommended_weight(reach: Given, height: Given, travel: Given) -> Worked:
    """RWL in lb of one person: 51 x HM x VM x DM.

    `reach` H from the ankles to the hands, `height` V of the hands over the floor where they let go, `travel` D up or
    down; mm. HM = 10/H (1 nearer than 10 in), VM = 1 - 0.0075 |V - 30|, DM = 0.82 + 1.8/D (1 under 10 in). Beyond
    25 in of reach, 70 in of height or of travel the equation recommends no weight: 0. Twisting, frequent lifting and a
    poor grip take more off, and are not in it.
    """
    h, v = positive("the reach", reach), not_negative("the height", height)
    d = not_negative("the travel", travel)
    if h > FARTHEST * (1 + 1e-9) or v > HIGHEST * (1 + 1e-9) or d > LONGEST_TRAVEL * (1 + 1e-9):
        return Worked(
            "RWL", "the equation recommends no weight so far out or so high up", "0", (), 0.0, "lb", _FROM_MEMORY,
            published_units=True, steps=steps(reach, height, travel),
        )  # fmt: skip
    inches = from_si(h, "in")
    out = Worked("HM", "for the reach", "10 / max(H, 10)", (number("H", reach, "in"),), 10 / max(inches, 10), "",
                 _EQUATION, published_units=True, steps=steps(reach))  # fmt: skip
    up = Worked(
        "VM", "for the height", "1 - 0.0075 * abs(V - 30)", (number("V", height, "in"),),
        1 - 0.0075 * abs(from_si(v, "in") - 30), "", _EQUATION, published_units=True, steps=steps(height),
    )  # fmt: skip
    far = Worked(
        "DM", "for the way up", "0.82 + 1.8 / max(D, 10)", (number("D", travel, "in"),),
        0.82 + 1.8 / max(from_si(d, "in"), 10), "", _FROM_MEMORY, published_units=True, steps=steps(travel),
    )  # fmt: skip
    return Worked(
        "RWL", "weight recommended for one person", "LC * HM * VM * DM",
        (number("LC", LOAD_CONSTANT, "lb"), number("HM", out, ""), number("VM", up, ""), number("DM", far, "")),
        51 * out.value * up.value * far.value, "lb", _EQUATION,
        caution="Twisting, a poor grip or many lifts take more off.", published_units=True, steps=(out, up, far),
    )  # fmt: skip


def wall_area(width: Given, left: Given, right: Given) -> Worked:
    """Area in ft² of the face of a wall, openings not taken off: `width` and its ceiling heights at both ends in mm."""
    value = from_si(positive("the width", width), "ft") * (
        from_si(positive("the height", left), "ft") + from_si(positive("the height", right), "ft")
    ) / 2  # fmt: skip
    return Worked(
        "A", "face of the wall, openings not taken off", "B * (h_l + h_r) / 2",
        (number("B", width, "ft"), number("h_l", left, "ft"), number("h_r", right, "ft")), value, "ft²", "geometry",
        steps=steps(width, left, right),
    )  # fmt: skip


def _cubic_inches(*sizes: Given) -> float:
    value = 1.0
    for size in sizes:
        value *= from_si(positive("a size", finite("a size", size)), "in")
    return value
