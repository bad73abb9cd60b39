"""What load duration and moisture make of the stress that a board may carry. Bearing and tension across the grain
take no duration; the modulus takes none either."""

from __future__ import annotations

from plumbrule.mechanics.allowable import Stress
from plumbrule.mechanics.factors import Duration, Service, load_duration
from plumbrule.mechanics.worked import NotPossible, Number, Worked

# NDS Supplement, adjustments to Table 4A, from memory. The relief for low bending stresses is not taken.
_WET: dict[str, float] = {"bending": 0.85, "shear": 0.97, "bearing": 0.67, "tension across": 0.67}
WET_STIFFNESS = 0.9
_SERVICES = ("dry", "damp", "fixed wet, dry later")
_NO_DURATION = ("bearing", "tension across")


def lumber_wet_service(service: Service, stress: Stress) -> Worked:
    """C_M of a board: 1.0 where it stays at or under 19 %; above, and while a wet board dries, 0.85 in bending, 0.97
    in shear, 0.67 in bearing. Across the grain in tension nothing is published, and 0.67 is taken. Raises NotPossible
    for any other word."""
    if service not in _SERVICES or stress not in _WET:
        raise NotPossible(f"{stress} in {service} service is not a case of the tables")
    value = 1.0 if service == "dry" else _WET[stress]
    return Worked(
        "C_M", f"moisture, {stress}: {service}", "C_M", (Number("C_M", value, ""),), value, "",
        "AWC NDS Supplement, adjustments to Table 4A, from memory",
    )  # fmt: skip


def adjusted_stress(reference: Worked, stress: Stress, duration: Duration, service: Service) -> Worked:
    """A stress a board may carry, MPa, under this load and in this room: with C_D for bending and shear, and C_M.

    C_D never goes past 1.6. Raises NotPossible for words that are no case.
    """
    wet = lumber_wet_service(service, stress)
    timed = load_duration(duration)
    factors = (wet,) if stress in _NO_DURATION else (timed, wet)
    value = reference.value
    for factor in factors:
        value *= factor.value
    return Worked(
        f"{reference.symbol}_a", f"{reference.words}, with its factors",
        " * ".join((reference.symbol, *(factor.symbol for factor in factors))),
        tuple(Number(part.symbol, part.value, part.unit) for part in (reference, *factors)), value, reference.unit,
        "AWC NDS 2018, Table 4.3.1, from memory", caution=reference.caution, steps=(reference, *factors),
    )  # fmt: skip
