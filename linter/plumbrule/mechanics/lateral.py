"""How much a screw carries sideways: the six ways a dowel joint yields, with a gap between the members.

The lining between steel and stud bears nothing: it holds the two apart, and the screw bends like a stalk between
them. At no gap these equations are the six yield limit equations of the wood standard. Steel or wood may be the side
member; only its line load and its thickness differ.
"""

from __future__ import annotations

from typing import NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.reduction import MODES, Reduction, reduction
from plumbrule.mechanics.worked import Worked

_TR12 = "AWC Technical Report 12, Table 1-1, general dowel equations"
_ROOT = "AWC NDS 2018, 12.3.7: the root diameter bears and bends where threads are"
_LOWEST = "AWC NDS 2018, Table 12.3.1A: the lowest of the six modes"
WIDEST_GAP = 31.75
_TIE = 1e-9

_IN_WORDS = {
    "I_m": "the wood crushes along the whole screw",
    "I_s": "the side member crushes along the whole screw",
    "II": "the screw stays straight and tips in both members",
    "III_m": "the screw bends in the side member and tips in the wood",
    "III_s": "the screw bends in the wood and tips in the side member",
    "IV": "the screw bends in both members",
}


class SideStrength(NamedTuple):
    """The reference side strength Z (N, no factors yet), the mode that gives it, and the Z of every mode.

    `worked` has as steps the line loads, the screw's moment, the reduction terms and all six modes.
    """

    worked: Worked
    mode: str
    modes: dict[str, Worked]

    @property
    def in_words(self) -> str:
        """What yields first."""
        return _IN_WORDS[self.mode]


def side_strength(
    *,
    diameter: Given,
    root_diameter: Given,
    bending_yield: Given,
    main_bearing: Given,
    side_bearing: Given,
    main_length: Given,
    side_length: Given,
    gap: Given,
    grain_angle: float,
) -> SideStrength:
    """Reference lateral value Z in N of one screw in single shear.

    diameter, root_diameter: nominal and root, mm (give the same twice for a smooth bolt or nail).
    bending_yield: F_yb, MPa.  main_bearing, side_bearing: F_em and F_es, MPa.
    main_length: l_m in the wood, mm, tip taken off by `bearing_length`.  side_length: leg or side member, mm.
    gap: everything that lies between the members without holding the screw, mm; 0 only where they touch.
    grain_angle: the largest angle between load and grain in any member, 0 to 90 degrees.

    Raises OutsideRulebook for a gap over 1-1/4 in., NotPossible for a length or strength that is not positive.
    Whether the gap exceeds the bite is for `lining.require_gap`, the least bite for `require_penetration`.
    """
    if not_negative("the gap", gap) > WIDEST_GAP * (1 + _TIE):
        raise outside("wide gap")
    q_m = _line_load("q_m", "F_em", main_bearing, root_diameter, "the wood")
    q_s = _line_load("q_s", "F_es", side_bearing, root_diameter, "the side member")
    moment = _moment(bending_yield, root_diameter)
    terms = reduction(diameter, root_diameter, grain_angle)
    yields = _yield_loads(q_m, q_s, moment, main_length, side_length, gap)
    modes = {mode: _reference(mode, yields[mode], terms) for mode in MODES}
    governing = min(MODES, key=lambda mode: modes[mode].value)
    symbols = ", ".join(f"Z_{mode}" for mode in MODES)
    worked = Worked(
        "Z", f"side strength of one screw: {_IN_WORDS[governing]}", f"min({symbols})",
        tuple(number(f"Z_{mode}", modes[mode], "N") for mode in MODES), modes[governing].value, "N", _LOWEST,
        steps=tuple(modes.values()),
    )  # fmt: skip
    return SideStrength(worked, governing, modes)


def _line_load(symbol: str, strength: str, bearing: Given, root_diameter: Given, where: str) -> Worked:
    value = positive(f"the bearing strength of {where}", bearing) * positive("the root diameter", root_diameter)
    return Worked(
        symbol, f"bearing of the screw per length in {where}", f"{strength} * D_r",
        (number(strength, bearing, "MPa"), number("D_r", root_diameter, "mm")), value, "N/mm", _ROOT,
        steps=steps(bearing, root_diameter),
    )  # fmt: skip


def _moment(bending_yield: Given, root_diameter: Given) -> Worked:
    value = positive("the bending yield strength", bending_yield) * si(root_diameter) ** 3 / 6
    return Worked(
        "M_y", "moment at which the screw bends for good", "F_yb * D_r^3 / 6",
        (number("F_yb", bending_yield, "MPa"), number("D_r", root_diameter, "mm")), value, "N·mm", _ROOT,
        steps=steps(bending_yield, root_diameter),
    )  # fmt: skip


def _yield_loads(
    q_m: Worked, q_s: Worked, moment: Worked, main_length: Given, side_length: Given, gap: Given
) -> dict[str, Worked]:
    positive("the bearing length in the wood", main_length)
    positive("the thickness of the side member", side_length)
    symbols = {
        "q_m": number("q_m", q_m, "N/mm"),
        "q_s": number("q_s", q_s, "N/mm"),
        "M_y": number("M_y", moment, "N·mm"),
        "L_m": number("L_m", main_length, "mm"),
        "L_s": number("L_s", side_length, "mm"),
        "g": number("g", gap, "mm"),
    }
    base = (*steps(main_length, side_length, gap), q_m, q_s, moment)
    m, s, bend = q_m.value, q_s.value, moment.value
    l_m, l_s, g = si(main_length), si(side_length), si(gap)

    def line(mode: str, part: str, formula: str, value: float, unit: str, *used: str) -> Worked:
        return Worked(
            f"{part}_{mode}", f"{part} of mode {mode}", formula, tuple(symbols[name] for name in used), value, unit,
            _TR12, steps=base,
        )  # fmt: skip

    def bent(mode: str, a: Worked, b: Worked, c: Worked) -> Worked:
        value = (-b.value + (b.value**2 - 4 * a.value * c.value) ** 0.5) / (2 * a.value)
        return Worked(
            f"P_{mode}", f"yield load when {_IN_WORDS[mode]}", "(-B + sqrt(B^2 - 4 * A * C)) / (2 * A)",
            (number("A", a, "mm/N"), number("B", b, "mm"), number("C", c, "N·mm")), value, "N", _TR12, steps=(a, b, c),
        )  # fmt: skip

    tip_m, tip_s, bend_m, bend_s = "1 / (4 * q_m)", "1 / (4 * q_s)", "1 / (2 * q_m)", "1 / (2 * q_s)"
    a = {
        "II": line("II", "A", f"{tip_s} + {tip_m}", 1 / (4 * s) + 1 / (4 * m), "mm/N", "q_s", "q_m"),
        "III_m": line("III_m", "A", f"{bend_s} + {tip_m}", 1 / (2 * s) + 1 / (4 * m), "mm/N", "q_s", "q_m"),
        "III_s": line("III_s", "A", f"{tip_s} + {bend_m}", 1 / (4 * s) + 1 / (2 * m), "mm/N", "q_s", "q_m"),
        "IV": line("IV", "A", f"{bend_s} + {bend_m}", 1 / (2 * s) + 1 / (2 * m), "mm/N", "q_s", "q_m"),
    }
    b = {
        "II": line("II", "B", "L_s / 2 + g + L_m / 2", l_s / 2 + g + l_m / 2, "mm", "L_s", "g", "L_m"),
        "III_m": line("III_m", "B", "g + L_m / 2", g + l_m / 2, "mm", "g", "L_m"),
        "III_s": line("III_s", "B", "L_s / 2 + g", l_s / 2 + g, "mm", "L_s", "g"),
        "IV": line("IV", "B", "g", g, "mm", "g"),
    }
    from_m, from_s = m * l_m**2 / 4, s * l_s**2 / 4
    in_m, in_s = "q_m * L_m^2 / 4", "q_s * L_s^2 / 4"
    c = {
        "II": line("II", "C", f"-{in_s} - {in_m}", -from_s - from_m, "N·mm", "q_s", "L_s", "q_m", "L_m"),
        "III_m": line("III_m", "C", f"-M_y - {in_m}", -bend - from_m, "N·mm", "M_y", "q_m", "L_m"),
        "III_s": line("III_s", "C", f"-{in_s} - M_y", -from_s - bend, "N·mm", "q_s", "L_s", "M_y"),
        "IV": line("IV", "C", "-2 * M_y", -2 * bend, "N·mm", "M_y"),
    }
    crushed = {
        "I_m": line("I_m", "P", "q_m * L_m", m * l_m, "N", "q_m", "L_m"),
        "I_s": line("I_s", "P", "q_s * L_s", s * l_s, "N", "q_s", "L_s"),
    }
    return crushed | {mode: bent(mode, a[mode], b[mode], c[mode]) for mode in a}


def _reference(mode: str, load: Worked, terms: Reduction) -> Worked:
    term = terms.by_mode[mode]
    return Worked(
        f"Z_{mode}", f"side strength when {_IN_WORDS[mode]}", f"P_{mode} / R_d",
        (number(f"P_{mode}", load, "N"), number("R_d", term, "")), load.value / term.value, "N", _TR12,
        steps=(load, term),
    )  # fmt: skip
