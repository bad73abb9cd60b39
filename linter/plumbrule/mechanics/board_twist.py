"""What a board held along its back and both ends does: it twists, each slice across it turning about the back line.

With w = y theta(x) the board is a bar with a warping stiffness; the wood's stiffness across the grain drops out.
Against plate solutions on firm hinges the drop of a board four times as long as deep or longer is right within 4 %; of
a shorter one up to a quarter low under a person, where it is small. Steel that gives adds to it.
"""

from __future__ import annotations

from math import cosh, sqrt, tanh
from typing import NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook, Worked
from plumbrule.reading.units import to_si

_BAR = "twisted board, warping torsion, derived here"
# G/E of boards sawn flat, from memory of the Wood Handbook, Table 5-1; unknown woods take a low one, which drops more.
SHEAR_RATIO: dict[str, float] = {"white ash": 0.077, "western redcedar": 0.086}
SHEAR_RATIO_UNKNOWN = 0.06
_LARGEST_DROP = to_si(0.5, "in")


class BoardTwist(NamedTuple):
    """A board of depth b and thickness t over the length L between its returns.

    torsion: G J, in N·mm² kept as its two parts. span: kappa = lambda L/2, how many warping lengths half of it is.
    """

    shear_modulus: Worked
    torsion_constant: Worked
    half_span: Worked
    length: Given
    depth: Given
    thickness: Given

    def _given(self) -> tuple[Worked, ...]:
        return (*steps(self.length, self.depth, self.thickness),)

    def _tanh(self) -> Worked:
        kap = self.half_span
        return Worked(
            "T_k", "hyperbolic tangent of the half span", "(1 - exp(-2 * kap)) / (1 + exp(-2 * kap))",
            (number("kap", kap, ""),), tanh(kap.value), "", "mathematics", steps=(kap,),
        )  # fmt: skip

    def drop_of_point(self, force: Given) -> Worked:
        """Front-edge drop in mm at midspan under a force P in N there, supports firm:
        P b² (kap - tanh kap)/(2 G J lam), lam = 2 kap/L."""
        shape = self._tanh()
        kap, p = self.half_span.value, not_negative("the force", force)
        b, l = positive("b", self.depth), positive("L", self.length)  # noqa: E741
        gj = self.shear_modulus.value * self.torsion_constant.value
        value = p * b**2 * (kap - shape.value) * l / (4 * gj * kap)
        return Worked(
            "w_P", "front drop at midspan under a person there, returns firm",
            "P * b^2 * (kap - T_k) * L / (4 * G * J * kap)",
            (number("P", force, "N"), number("b", self.depth, "mm"), number("kap", self.half_span, ""),
             number("T_k", shape, ""), number("L", self.length, "mm"), number("G", self.shear_modulus, "MPa"),
             number("J", self.torsion_constant, "mm⁴")),
            value, "mm", _BAR, steps=(*steps(force), self.shear_modulus, self.torsion_constant, self.half_span, shape),
        )  # fmt: skip

    def moment_of_point(self, force: Given) -> Worked:
        """Bending m_x at the front edge per width, N·mm/mm = N, under a force P in N at midspan of it:
        3 P L/(4 b) tanh(kap)/kap. An estimate; the strength check takes the bound of `board_strip`."""
        shape = self._tanh()
        kap, p = self.half_span.value, not_negative("the force", force)
        value = 3 * p * positive("L", self.length) / (4 * positive("b", self.depth)) * shape.value / kap
        return Worked(
            "m_x", "bending of the front edge per width, under a person at midspan",
            "3 * P * L / (4 * b) * T_k / kap",
            (number("P", force, "N"), number("L", self.length, "mm"), number("b", self.depth, "mm"),
             number("T_k", shape, ""), number("kap", self.half_span, "")),
            value, "N", _BAR, steps=(*steps(force), shape, self.half_span),
        )  # fmt: skip

    def drop_of_spread(self, line_load: Given) -> Worked:
        """Front-edge drop in mm at midspan under an even load over length and depth, w = q b in N/mm:
        q b³/(2 G J) [L²/8 - (1 - 1/cosh kap)/lam²]."""
        kap, w = self.half_span.value, not_negative("the line load", line_load)
        b, l = positive("b", self.depth), positive("L", self.length)  # noqa: E741
        gj = self.shear_modulus.value * self.torsion_constant.value
        shape = Worked(
            "C_k", "one over the hyperbolic cosine of the half span", "2 / (exp(kap) + exp(-kap))",
            (number("kap", self.half_span, ""),), 1 / cosh(kap), "", "mathematics", steps=(self.half_span,),
        )  # fmt: skip
        value = w * b**2 / (2 * gj) * (l**2 / 8 - (1 - shape.value) * l**2 / (4 * kap**2))
        return Worked(
            "w_q", "front drop at midspan under an even load, returns firm",
            "w_b * b^2 / (2 * G * J) * (L^2 / 8 - (1 - C_k) * L^2 / (4 * kap^2))",
            (number("w_b", line_load, "N/mm"), number("b", self.depth, "mm"), number("G", self.shear_modulus, "MPa"),
             number("J", self.torsion_constant, "mm⁴"), number("L", self.length, "mm"), number("C_k", shape, ""),
             number("kap", self.half_span, "")),
            value, "mm", _BAR,
            steps=(*steps(line_load), self.shear_modulus, self.torsion_constant, self.half_span, shape),
        )  # fmt: skip


def board_twist(*, length: Given, depth: Given, thickness: Given, modulus: Given, shear_ratio: Given) -> BoardTwist:
    """The twisting board: `length` between the returns, `depth`, `thickness` in mm, grain along the length.

    `modulus` E along the grain in MPa, `shear_ratio` G/E (`SHEAR_RATIO`, else `SHEAR_RATIO_UNKNOWN`; times
    `crack.twist_share` for a board with a shallow crack; one that is cracked through does not twist as one).
    """
    e, ratio = positive("the modulus", modulus), positive("G/E", shear_ratio)
    l, b, t = positive("L", length), positive("the depth", depth), positive("t", thickness)  # noqa: E741
    if ratio >= 0.5:
        raise NotPossible(f"no wood has a shear modulus of {ratio:g} of its elastic modulus")
    shear = Worked(
        "G", "shear modulus", "r_G * E", (number("r_G", shear_ratio, ""), number("E", modulus, "MPa")), ratio * e,
        "MPa", "Wood Handbook, Table 5-1, from memory", caution="The ratio G/E is from memory.",
        steps=steps(shear_ratio, modulus),
    )  # fmt: skip
    twist = Worked(
        "J", "torsion constant of a thin board", "b * t^3 / 3",
        (number("b", depth, "mm"), number("t", thickness, "mm")),
        b * t**3 / 3, "mm⁴", "mechanics of materials", steps=steps(depth, thickness),
    )  # fmt: skip
    half = Worked(
        "kap", "half the span in lengths over which warping dies out", "sqrt(12 * r_G) * L / (2 * b)",
        (number("r_G", shear_ratio, ""), number("L", length, "mm"), number("b", depth, "mm")),
        sqrt(12 * ratio) * l / (2 * b), "", _BAR, steps=steps(shear_ratio, length, depth),
    )  # fmt: skip
    return BoardTwist(shear, twist, half, length, depth, thickness)


def require_small_drop(front_drop: Given) -> float:
    """The drop in mm. Raises OutsideRulebook past 1/2 in., where the bounds for couples and corners no longer hold."""
    drop = not_negative("the front drop", front_drop)
    if drop > _LARGEST_DROP * (1 + 1e-9):
        raise OutsideRulebook(
            "The front edge would drop more than 1/2 in, so the board turns on its steel further than the bounds for "
            "the screws allow: make the board thicker or the span shorter first."
        )
    return drop
