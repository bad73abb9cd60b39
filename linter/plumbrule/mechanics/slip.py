"""How far a screw slips under a side force: a bar on an elastic bed, bridging whatever lining lies between.

The bed is set so that with no gap the slip is that of the timber code for steel on wood; over a lining the bar stands
free, and the thin leg does not hold its head straight. Derived here.
"""

from __future__ import annotations

from math import pi

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

STEEL_MODULUS = to_si(29e6, "psi")
_BED = "bar on an elastic bed, derived here"


def joint_slip(gravity: Given, diameter: Given) -> Worked:
    """Slip modulus k_0 of a screw from steel into wood, N/mm: 2 rho^1.5 D/23, rho = 1000 G kg/m³, `diameter` in mm."""
    value = 2 * (1000 * positive("the gravity", gravity)) ** 1.5 * positive("the diameter", diameter) / 23
    return Worked(
        "k_0", "stiffness of a screw from steel into wood, no gap", "2 * (1000 * G)^1.5 * D / 23",
        (number("G", gravity, ""), number("D", diameter, "mm")), value, "N/mm",
        "EN 1995-1-1 Table 7.1 and 7.1(3), doubled for steel on wood, from memory",
        published_units=True, steps=steps(gravity, diameter),
    )  # fmt: skip


def slip_stiffness(gravity: Given, diameter: Given, root_diameter: Given, gap: Given) -> Worked:
    """Stiffness k_s in N/mm of one screw from steel into wood over a `gap` in mm of lining.

    `diameter` nominal and `root_diameter` in mm, `gravity` of the stud. Elastic and short-time. Stiffer screws share
    a person less, so sharing doubles it to be safe; softer screws drop more, so a drop takes it as it is.
    """
    joint = joint_slip(gravity, diameter)
    root, bridge = positive("the root diameter", root_diameter), not_negative("the gap", gap)
    second = pi * root**4 / 64
    e = STEEL_MODULUS
    modulus = number("E", e, "MPa")
    moment = Worked(
        "I_d", "second moment of the screw's root", "pi * D_r^4 / 64", (number("D_r", root_diameter, "mm"),), second,
        "mm⁴", "geometry", steps=steps(root_diameter),
    )  # fmt: skip
    k_0 = joint.value
    stiff = (2 * k_0 / (4 * e * second) ** 0.25) ** (4 / 3)
    bed = Worked(
        "K", "bed of the screw in the wood", "(2 * k_0 / (4 * E * I_d)^(1 / 4))^(4 / 3)",
        (number("k_0", joint, "N/mm"), modulus, number("I_d", moment, "mm⁴")), stiff, "MPa", _BED,
        steps=(joint, moment),
    )  # fmt: skip
    reach = (4 * e * second / stiff) ** 0.25
    length = Worked(
        "l_d", "length over which the screw bends in its bed", "(4 * E * I_d / K)^(1 / 4)",
        (modulus, number("I_d", moment, "mm⁴"), number("K", bed, "MPa")), reach, "mm", _BED, steps=(moment, bed),
    )  # fmt: skip
    value = 1 / (
        2 / (stiff * reach)
        + 4 * bridge / (stiff * reach**2)
        + 4 * bridge**2 / (stiff * reach**3)
        + bridge**3 / (3 * e * second)
    )
    return Worked(
        "k_s", "stiffness of one screw sideways",
        "1 / (2 / (K * l_d) + 4 * g / (K * l_d^2) + 4 * g^2 / (K * l_d^3) + g^3 / (3 * E * I_d))",
        (number("K", bed, "MPa"), number("l_d", length, "mm"), number("g", gap, "mm"), modulus,
         number("I_d", moment, "mm⁴")),
        value, "N/mm", _BED, caution="The slip modulus of the timber code is from memory.",
        steps=(bed, length, moment, *steps(gap)),
    )  # fmt: skip


def pull_stiffness(diameter: Given, thread: Given) -> Worked:
    """Stiffness k_w in N/mm of one screw pulled along its axis: 25 D p_t, `diameter` and `thread` in wood in mm."""
    value = 25 * positive("the diameter", diameter) * positive("the thread in the wood", thread)
    return Worked(
        "k_w", "stiffness of one screw in withdrawal", "25 * D * p_t",
        (number("D", diameter, "mm"), number("p_t", thread, "mm")), value, "N/mm",
        "European technical approvals of wood screws, from memory", published_units=True,
        steps=steps(diameter, thread),
    )  # fmt: skip
