"""How far a screw must stay from the edges and ends of the wood, and from its neighbours.

From 1/4 in. up the standard gives distances that decide the strength: a full one, and a floor below which nothing is
rated. Under 1/4 in. it only demands that the wood does not split, and its commentary advises multiples of D.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

from plumbrule.mechanics.bearing_wood import counts_as_small
from plumbrule.mechanics.given import Given, number, positive, steps
from plumbrule.mechanics.worked import NotPossible, Worked

Load = Literal["along the grain, away from the end", "along the grain, towards the end", "across the grain", "pull"]

_THICK = "AWC NDS 2018, Tables 12.5.1A to 12.5.1E"
_THIN = "AWC NDS 2018, Commentary Table C12.1.5.7 (advice against splitting)"
# Outermost fasteners across the grain of sawn lumber, 12.5.1.3.
MOST_ACROSS_GRAIN = 127.0

# (edge, loaded edge, end full, end floor, in row full, in row floor, between rows), multiples of D. Softwood.
_THICK_MULTIPLES: dict[str, tuple[float, float, float, float, float, float, float]] = {
    "along the grain, away from the end": (1.5, 1.5, 4, 2, 4, 3, 1.5),
    "along the grain, towards the end": (1.5, 1.5, 7, 3.5, 4, 3, 1.5),
    "across the grain": (1.5, 4, 4, 2, 4, 3, 5),
    "pull": (1.5, 1.5, 4, 4, 4, 4, 1.5),
}
# (edge, end pulled, end pushed, along the grain in a row, across the grain in a row, rows in line)
_THIN_MULTIPLES: dict[tuple[str, bool], tuple[float, float, float, float, float, float]] = {
    ("steel", False): (2.5, 10, 5, 10, 5, 3),
    ("steel", True): (2.5, 5, 3, 5, 2.5, 2.5),
    ("wood", False): (2.5, 15, 10, 15, 10, 5),
    ("wood", True): (2.5, 10, 5, 10, 5, 3),
}


class Placement(NamedTuple):
    """Distances in mm from the screw's axis. A `floor` is where the rated range ends; a `full` one earns C_delta 1.

    advisory: the figures guard against splitting and carry no strength (screws under 1/4 in.).
    """

    edge: Worked
    loaded_edge: Worked
    end: Worked
    end_floor: Worked
    in_row: Worked
    in_row_floor: Worked
    between_rows: Worked
    advisory: bool


def placement(diameter: Given, load: Load, *, side: Literal["steel", "wood"], prebored: bool) -> Placement:
    """The distances for a screw of nominal `diameter` mm under a `load` of that direction, softwood.

    "away from the end" pushes the screw from the end of its piece, "towards the end" pulls it out that way; "pull"
    is withdrawal only. `side` is what it fastens; `prebored` matters under 1/4 in. only. Between rows across the
    grain the figure for a long bearing length, 5 D, is taken. Raises NotPossible for any other word.
    """
    positive("the screw's diameter", diameter)
    if load not in _THICK_MULTIPLES or side not in ("steel", "wood"):
        raise NotPossible(f"{load} on {side} is not a case of the tables")
    if not counts_as_small(diameter):
        return _placement(_THICK_MULTIPLES[load], diameter, _THICK, advisory=False)
    edge, pulled, pushed, along, across, rows = _THIN_MULTIPLES[(side, prebored)]
    end = pulled if load == "along the grain, towards the end" else pushed
    in_row = across if load == "across the grain" else along
    return _placement((edge, edge, end, end, in_row, in_row, rows), diameter, _THIN, advisory=True)


def _placement(
    multiples: tuple[float, float, float, float, float, float, float], diameter: Given, source: str, *, advisory: bool
) -> Placement:
    edge, loaded_edge, end, end_floor, in_row, in_row_floor, rows = (
        _distance(times, diameter, source) for times in multiples
    )
    return Placement(edge, loaded_edge, end, end_floor, in_row, in_row_floor, rows, advisory)


def _distance(times: float, diameter: Given, source: str) -> Worked:
    symbol = number("D", diameter, "mm")
    return Worked(
        "a", f"{times:g} diameters", f"{times} * D", (symbol,), times * symbol.value, "mm", source,
        steps=steps(diameter),
    )  # fmt: skip
