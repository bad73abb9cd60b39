"""A screw that is pulled and pushed sideways at once."""

from __future__ import annotations

from math import atan2, degrees, hypot
from typing import NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import NotPossible, Worked

_CLAUSE = "AWC NDS 2018, 12.4.1 eq. 12.4-1, lag and wood screws"


class Combined(NamedTuple):
    """What both together use of the screw, and what each would alone. A use of 1 is the limit; never round it down.

    angle: of the resultant to the wood's surface, degrees. capacity: the allowable resultant at that angle, N.
    """

    angle: Worked
    resultant: Worked
    capacity: Worked
    use: Worked
    side_use: Worked
    pull_use: Worked


def combined(*, side_force: Given, pull: Given, side_capacity: Given, pull_capacity: Given) -> Combined:
    """The use of one lag or wood screw under a side force V and a pull T, N, with adjusted capacities Z' and W'p, N.

    A pull below zero is a push and raises NotPossible (count it as 0 knowingly); so do a capacity that is not
    positive and no load at all. Nails follow another equation.
    """
    v, t = not_negative("the side force", side_force), not_negative("the pull", pull)
    z, w = positive("the side capacity", side_capacity), positive("the pull capacity", pull_capacity)
    if v == 0 and t == 0:
        raise NotPossible("no load comes to the screw, so it has no direction")
    numbers = {
        "V": number("V", side_force, "N"),
        "T": number("T", pull, "N"),
        "Z": number("Z", side_capacity, "N"),
        "W_p": number("W_p", pull_capacity, "N"),
    }
    given = steps(side_force, pull, side_capacity, pull_capacity)
    resultant = Worked(
        "R", "resultant on the screw", "sqrt(V^2 + T^2)", (numbers["V"], numbers["T"]), hypot(v, t), "N", _CLAUSE,
        steps=given,
    )  # fmt: skip
    angle = Worked(
        "a", "angle of the resultant to the wood's surface", "atan(T / V)" if v else "90",
        (numbers["V"], numbers["T"]) if v else (), degrees(atan2(t, v)), "°", _CLAUSE, steps=given,
    )  # fmt: skip
    sine, cosine = t / resultant.value, v / resultant.value
    capacity = Worked(
        "Z_a", "allowable resultant at that angle", "W_p * Z / (W_p * cos(a)^2 + Z * sin(a)^2)",
        (numbers["W_p"], numbers["Z"], number("a", angle, "°")), w * z / (w * cosine**2 + z * sine**2), "N", _CLAUSE,
        steps=(angle, *given),
    )  # fmt: skip
    return Combined(
        angle,
        resultant,
        capacity,
        _use("U", "use of the screw, both together", "R / Z_a", resultant, capacity, "R", "Z_a"),
        _use("U_V", "use by the side force alone", "V / Z", side_force, side_capacity, "V", "Z"),
        _use("U_T", "use by the pull alone", "T / W_p", pull, pull_capacity, "T", "W_p"),
    )


def _use(symbol: str, words: str, formula: str, load: Given, capacity: Given, top: str, bottom: str) -> Worked:
    numbers = (number(top, load, "N"), number(bottom, capacity, "N"))
    return Worked(
        symbol, words, formula, numbers, numbers[0].value / numbers[1].value, "", _CLAUSE, steps=steps(load, capacity)
    )
