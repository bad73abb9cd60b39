"""What each `calculation` word about beams, screw groups and loads means: printed inputs in, a worked value out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from itertools import pairwise
from typing import Any

from plumbrule.mechanics import continuous, group, leg, loads, spring_beam
from plumbrule.mechanics.beam_loads import LineLoad, PointLoad
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import from_si, to_si

Inputs = Mapping[str, Any]
Found = Worked | float


def _beam(given: Inputs, load: str = "even") -> continuous.ContinuousBeam:
    """Spans of 1 mm; 1 N/mm on the loaded ones, or 1 N in the middle of each."""
    spans = given["spans"]
    loaded = given.get("loaded", list(range(1, spans + 1)))
    if load == "first middle":
        loaded = [1]
    return continuous.continuous_beam(
        float(spans), [float(x) for x in range(spans + 1)],
        points=[] if load == "even" else [PointLoad(span - 0.5, 1.0) for span in loaded],
        lines=[LineLoad(span - 1.0, float(span), 1.0) for span in loaded] if load == "even" else [],
    )  # fmt: skip


def _reaction(load: str) -> Callable[[Inputs], Found]:
    return lambda given: _beam(given, load).reactions[given["support"]]


def _hogging(load: str) -> Callable[[Inputs], Found]:
    """Tables print moments over supports as sizes."""
    return lambda given: -_beam(given, load).support_moments[given["support"]].value


def _drop(given: Inputs) -> float:
    """w L⁴/(E I) times the printed figure, from a beam on very stiff springs with E I = 1, the even load
    cut into 25 equal parts a span, which changes the drop by less than the last printed digit."""
    spans = given["spans"]
    loaded = given.get("loaded", list(range(1, spans + 1)))
    forces = []
    for span in loaded:
        middles = [(a + b) / 2 for a, b in pairwise(span - 1 + i / 25 for i in range(26))]
        forces += [(x, 1 / 25) for x in middles]
    springs = [(float(x), 1e7) for x in range(spans + 1)]
    return spring_beam.bend(float(spans), springs, 1.0, forces).drop_at(given["at"])


def _group(given: Inputs) -> group.ScrewGroup:
    return group.screw_group([(float(x), float(y)) for x, y in zip(given["x_mm"], given["y_mm"], strict=True)])


def _worst(given: Inputs) -> float:
    thousand = {
        name: 1e3 * given[f"{name}_kN{'mm' if name == 'couple' else ''}"] for name in ("across", "up", "couple")
    }
    return max(force.value for force in group.in_plane(_group(given), **thousand))


def _tipping(given: Inputs) -> float:
    pulls = group.out_of_plane(1e3 * given["couple_kNmm"], [float(d) for d in given["distances_mm"]], pivot=False)
    return max(pull.value for pull in pulls)


def _coefficient(given: Inputs) -> float:
    """How many screws' worth a line carries: the load over the force on its end screw."""
    return 1.0 / group.vertical_line(1.0, float(given["out_mm"]), given["count"], float(given["pitch_mm"])).value


def _leg_shear(given: Inputs) -> float:
    """In kips, without our factor of 1.50."""
    capacity = leg.leg_shear_capacity(
        to_si(given["t_in"], "in"), to_si(given["F_y_ksi"], "ksi"), to_si(given["L_in"], "in")
    )
    return from_si(capacity.value, "lbf") * leg.SHEARING / 1000


def _stack(given: Inputs) -> float:
    return given["shelves"] * si(loads.storage_line_load()) / to_si(given["depth_in"], "in")  # type: ignore[no-any-return]


LOAD_CALCULATIONS: dict[str, Callable[[Inputs], Found]] = {
    "beam reaction": _reaction("even"),
    "beam reaction, load in every middle": _reaction("middles"),
    "beam reaction, load in the first middle": _reaction("first middle"),
    "beam moment over a support": _hogging("even"),
    "beam moment over a support, load in every middle": _hogging("middles"),
    "beam moment over a support, signed": lambda g: _beam(g).support_moments[g["support"]],
    "beam moment in a span": lambda g: _beam(g).greatest_sagging(g["span"] - 1),
    "beam drop in the first span": _drop,
    "screw group, squared distances": lambda g: _group(g).polar,
    "screw group, worst screw": _worst,
    "pull on a tipping plate": _tipping,
    "line coefficient": _coefficient,
    "leg shear, nominal": _leg_shear,
    "one person": lambda g: loads.person_load(),
    "pressure of a stack": _stack,
    "conversion": lambda g: to_si(g["value"], g["unit"]),
}
