"""The factors that turn a reference value of wood into one for this load, this place and this screw.

They belong to wood and to screws in wood only. Steel takes none of them.
"""

from __future__ import annotations

from typing import Literal

from plumbrule.mechanics.bearing_wood import counts_as_small
from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

Duration = Literal["permanent", "stored goods", "people", "proof load", "impact"]
Service = Literal["dry", "damp", "fixed wet, dry later"]
Pull = Literal["lateral", "withdrawal"]

# Kept below the table on purpose: people count as a load of ten years, and the impact row of 2.0 is barred for
# connections, where 1.6 is the ceiling.
_DURATIONS: dict[str, float] = {
    "permanent": 0.9, "stored goods": 0.9, "people": 1.0, "proof load": 1.6, "impact": 1.6,
}  # fmt: skip
_TIE = 1e-9


def load_duration(case: Duration) -> Worked:
    """C_D: 0.9 for a permanent load and stored goods, 1.0 for people, at most 1.6 for a proof load or impact.

    Raises NotPossible for any other word.
    """
    return _listed("C_D", "load duration", _DURATIONS, case, "AWC NDS 2018, Table 2.3.2 note 2 and 11.3.2")


def wet_service(service: Service, pull: Pull, diameter: Given) -> Worked:
    """C_M of a lag or wood screw: 1.0 where the wood stays at or under 19 %; damp room 0.7; fixed into wet wood that
    dries later 0.4 sideways (0.7 under 1/4 in.), 1.0 in withdrawal. `diameter` nominal, mm."""
    values = {"dry": 1.0, "damp": 0.7, "fixed wet, dry later": 1.0}
    if pull == "lateral":
        values["fixed wet, dry later"] = 0.7 if counts_as_small(diameter) else 0.4
    elif pull != "withdrawal":
        raise NotPossible(f"{pull} is neither lateral nor withdrawal")
    return _listed("C_M", f"moisture, {pull}", values, service, "AWC NDS 2018, Table 11.3.3")


def warm_service(temperature: Given, service: Service) -> Worked:
    """C_t by sustained `temperature` in °C: 1.0 to 37.8 °C (100 °F), then 0.8 dry or 0.7 damp to 51.7 °C (125 °F),
    then 0.7 or 0.5 to 65.6 °C (150 °F). Raises NotPossible above, where nothing is published."""
    celsius = si(temperature)
    dry = service == "dry"
    for limit, value in ((100, 1.0), (125, 0.8 if dry else 0.7), (150, 0.7 if dry else 0.5)):
        if celsius <= (limit - 32) / 1.8 + _TIE:
            return Worked(
                "C_t", f"warmth, {service}", "C_t", (Number("C_t", value, ""),), value, "",
                "AWC NDS 2018, Table 11.3.4", steps=steps(temperature),
            )  # fmt: skip
    raise NotPossible(f"no strength is published for wood kept at {celsius:g} °C")


def group(diameter: Given, in_row: int) -> Worked:
    """C_g: 1.0 under 1/4 in. From 1/4 in. up 1.0 for one screw, or two in a row along the load with steel beside
    them, where the formula gives at least 0.99. Raises OutsideRulebook for more in a row."""
    if in_row < 1:
        raise NotPossible("a row has at least one screw")
    if not counts_as_small(diameter) and in_row > 2:
        raise OutsideRulebook(
            "Three or more thick screws in one row share their load unevenly: the group factor needs the stiffness of "
            "both members and is not worked out here."
        )
    return Worked(
        "C_g", "group action", "C_g", (Number("C_g", 1.0, ""),), 1.0, "", "AWC NDS 2018, 11.3.6", steps=steps(diameter)
    )


def geometry(diameter: Given, spacing: Given) -> Worked:
    """C_delta of a screw by its pitch in the row, along the load, both mm.

    1.0 under 1/4 in.; otherwise spacing/(4 D), at most 1.0. Raises OutsideRulebook below the floor of 3 D. For a
    single screw pass a spacing of 4 D or more.
    """
    size, pitch = positive("the screw's diameter", diameter), not_negative("the spacing", spacing)
    if counts_as_small(diameter):
        return Worked(
            "C_delta", "geometry, thin screws", "C_delta", (Number("C_delta", 1.0, ""),), 1.0, "",
            "AWC NDS 2018, 12.5.1.1", steps=steps(diameter),
        )  # fmt: skip
    if pitch < 3 * size * (1 - _TIE):
        raise OutsideRulebook(
            "The screws stand closer than three diameters, where no strength is published: space them further apart."
        )
    return Worked(
        "C_delta", "geometry, by the pitch in the row", "min(s / (4 * D), 1)",
        (number("s", spacing, "mm"), number("D", diameter, "mm")), min(pitch / (4 * size), 1.0), "",
        "AWC NDS 2018, 12.5.1.2 and Table 12.5.1B", steps=steps(diameter, spacing),
    )  # fmt: skip


def loaded_edge(diameter: Given, edge: Given, grain_angle: float) -> Worked:
    """C_delta of a load across the grain: 1.0 under 1/4 in. or along the grain; from 1/4 in. up the loaded edge must
    be 4 D away, with no reduced value for less.

    `edge` from the screw's axis to the edge that the load points at, mm; `grain_angle` degrees. A stud on edge has
    at most 3/4 in., so every 1/4 lag loaded across it raises OutsideRulebook.
    """
    size, distance = positive("the screw's diameter", diameter), not_negative("the loaded edge", edge)
    if not counts_as_small(diameter) and grain_angle > 0 and distance < 4 * size * (1 - _TIE):
        raise outside("across the grain")
    return Worked(
        "C_delta", "geometry, loaded edge", "C_delta", (Number("C_delta", 1.0, ""),), 1.0, "",
        "AWC NDS 2018, Table 12.5.1C", steps=steps(diameter, edge),
    )  # fmt: skip


def end_grain(kind: str, pull: Pull) -> Worked:
    """C_eg of a screw driven into end grain: sideways 0.67; in withdrawal 0.75 for a lag screw and 0 for a wood
    screw, which holds nothing there."""
    if kind not in ("lag screw", "wood screw"):
        raise outside("other screw")
    values = {"lateral": 0.67, "withdrawal": 0.75 if kind == "lag screw" else 0.0}
    return _listed("C_eg", f"end grain, {kind}", values, pull, "AWC NDS 2018, 12.5.2, 12.2.1.3 and 12.2.2.3")


def toe_screw(pull: Pull) -> Worked:
    """C_tn of a screw driven at a slant: 0.83 sideways, 0.67 in withdrawal."""
    return _listed("C_tn", "slanting screw", {"lateral": 0.83, "withdrawal": 0.67}, pull, "AWC NDS 2018, 12.5.4")


def adjusted(reference: Worked, *factors: Worked) -> Worked:
    """A reference value times its factors, in the reference's unit. Two factors of one name raise NotPossible."""
    symbols = [factor.symbol for factor in factors]
    if len(set(symbols)) != len(symbols):
        raise NotPossible("a factor is given twice")
    value = reference.value
    for factor in factors:
        value *= not_negative(factor.symbol, factor)
    return Worked(
        f"{reference.symbol}_a", f"{reference.words}, with its factors", " * ".join((reference.symbol, *symbols)),
        (Number(reference.symbol, reference.value, reference.unit),
         *(Number(factor.symbol, factor.value, "") for factor in factors)),
        value, reference.unit, "AWC NDS 2018, Table 11.3.1", steps=(reference, *factors),
    )  # fmt: skip


def _listed(symbol: str, words: str, values: dict[str, float], key: str, source: str) -> Worked:
    if key not in values:
        raise NotPossible(f"{key} is not one of {', '.join(values)}")
    return Worked(symbol, f"{words}: {key}", symbol, (Number(symbol, values[key], ""),), values[key], "", source)
