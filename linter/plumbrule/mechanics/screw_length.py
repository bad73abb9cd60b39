"""What a screw's length buys: how much of it is in the wood, how much of that bears, how much of that is thread."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import NotPossible, Worked

_INCH = 25.4
_LENGTHS = "AWC NDS 2018, 12.3.5.3"
_L2 = "AWC NDS 2018, Appendix L Table L2 note 2"
_L3 = "AWC NDS 2018, Appendix L Table L3 notes 2 and 3"
_WITHDRAWAL = "AWC NDS 2018, 12.2.1.2 and 12.2.2.2"
# A length in millimetres that came from inches is the minimum when it differs from it by rounding alone.
_TIE = 1e-9


def penetration(length: Given, steel: Given, layers: Given) -> Worked:
    """Penetration p in mm, tip included: length under the head less the steel and all that lies between steel and
    wood. `layers` holds every lining layer, packer, shim, washer and unevenness; 0 only where there is nothing.

    Zero or less means the screw does not reach the wood; the number is given, for a rule to judge.
    """
    value = (
        positive("the screw's length", length)
        - not_negative("the steel", steel)
        - not_negative("the layers between", layers)
    )
    return Worked(
        "p", "bite into the wood, tip included", "L_s - t_a - g_l",
        (number("L_s", length, "mm"), number("t_a", steel, "mm"), number("g_l", layers, "mm")), value, "mm",
        "geometry", steps=steps(length, steel, layers),
    )  # fmt: skip


def tip_length(fastener: Fastener) -> Worked:
    """Length E of the tapered tip in mm: tabulated for a lag screw, 2 D for a wood screw (NDS 12.3.5.3b)."""
    if fastener.kind == "wood screw":
        return Worked(
            "E", "tapered tip", "2 * D", (number("D", fastener.diameter, "mm"),), 2 * fastener.diameter, "mm", _LENGTHS
        )
    return Worked("E", "tapered tip", "E", (number("E", fastener.tip, "mm"),), fastener.tip, "mm", fastener.source)


def bearing_length(penetration: Given, tip: Given) -> Worked:
    """Bearing length l_m in mm that the yield equations may count: p - E/2.

    Raises NotPossible when the tip alone is longer than twice the bite, so that nothing bears.
    """
    value = positive("the penetration", penetration) - positive("the tip", tip) / 2
    if value <= 0:
        raise NotPossible("the bite is all tip: nothing of the screw bears on the wood")
    return Worked(
        "l_m", "length that bears on the wood", "p - E / 2",
        (number("p", penetration, "mm"), number("E", tip, "mm")), value, "mm", _LENGTHS,
        steps=steps(penetration, tip),
    )  # fmt: skip


def full_penetration(kind: str, penetration: Given, tip: Given) -> Worked:
    """The bite in mm that counts against the least one: without its tip for a lag screw (NDS 12.1.4.6), with it for
    a wood screw (12.1.5.6)."""
    bite, point = si(penetration), positive("the tip", tip)
    if kind == "lag screw":
        return Worked(
            "p_4", "bite without the tip", "p - E", (number("p", penetration, "mm"), number("E", tip, "mm")),
            bite - point, "mm", "AWC NDS 2018, 12.1.4.6", steps=steps(penetration, tip),
        )  # fmt: skip
    _known(kind)
    return Worked(
        "p_6", "bite with the tip", "p", (number("p", penetration, "mm"),), bite, "mm", "AWC NDS 2018, 12.1.5.6",
        steps=steps(penetration),
    )  # fmt: skip


def least_penetration(kind: str, diameter: Given) -> Worked:
    """Least bite in mm: 4 D without the tip for a lag screw, 6 D with it for a wood screw."""
    _known(kind)
    size = positive("the screw's diameter", diameter)
    times, clause = (4, "12.1.4.6") if kind == "lag screw" else (6, "12.1.5.6")
    return Worked(
        "p_least", "least bite", f"{times} * D", (number("D", diameter, "mm"),), times * size, "mm",
        f"AWC NDS 2018, {clause}", steps=steps(diameter),
    )  # fmt: skip


def require_penetration(kind: str, diameter: Given, penetration: Given, tip: Given) -> Worked:
    """The bite that counts, mm. Raises OutsideRulebook when it is below the least: then nothing is interpolated, the
    screw counts for nothing in any direction."""
    counted = full_penetration(kind, penetration, tip)
    least = least_penetration(kind, diameter)
    if counted.value < least.value * (1 - _TIE):
        raise outside("short bite")
    return counted


def thread_by_rule(kind: str, diameter: Given, length: Given) -> Worked:
    """Threaded length T_h in mm when it was not measured, tip included.

    Lag screw: min(6, L/2 + 0.5) in., never more than the screw. Wood screw: max(4 D, 2 L/3), never more than the
    screw. A screw is often threaded further; a measured length wins.
    """
    _known(kind)
    size, whole = positive("the screw's diameter", diameter), positive("the screw's length", length)
    if kind == "lag screw":
        inches = whole / _INCH
        return Worked(
            "T_h", "threaded length by rule", "min(6, L_s / 2 + 0.5, L_s)", (number("L_s", length, "in"),),
            min(6.0, inches / 2 + 0.5, inches), "in", _L2, published_units=True, steps=steps(length),
        )  # fmt: skip
    return Worked(
        "T_h", "threaded length by rule", "min(max(4 * D, 2 * L_s / 3), L_s)",
        (number("D", diameter, "mm"), number("L_s", length, "mm")), min(max(4 * size, 2 * whole / 3), whole), "mm",
        _L3, steps=steps(diameter, length),
    )  # fmt: skip


def thread_in_wood(kind: str, penetration: Given, thread: Given, tip: Given) -> Worked:
    """Full thread in the wood p_t in mm, never below 0: min(T_h, p) less the tip for a lag screw, min(T_h, p) for a
    wood screw. Thread that lies in lining or steel is not counted."""
    _known(kind)
    held = min(positive("the threaded length", thread), si(penetration))
    point = positive("the tip", tip)
    if kind == "lag screw":
        return Worked(
            "p_t", "full thread in the wood", "max(min(T_h, p) - E, 0)",
            (number("T_h", thread, "mm"), number("p", penetration, "mm"), number("E", tip, "mm")),
            max(held - point, 0.0), "mm", _WITHDRAWAL, steps=steps(thread, penetration, tip),
        )  # fmt: skip
    return Worked(
        "p_t", "thread in the wood", "max(min(T_h, p), 0)",
        (number("T_h", thread, "mm"), number("p", penetration, "mm")), max(held, 0.0), "mm", _WITHDRAWAL,
        steps=steps(thread, penetration),
    )  # fmt: skip


def _known(kind: str) -> None:
    if kind not in ("lag screw", "wood screw"):
        raise outside("other screw")
