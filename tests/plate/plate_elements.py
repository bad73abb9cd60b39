"""Thin orthotropic plates by finite elements: the rectangle of four nodes and twelve freedoms, in numpy.

Independent of everything in the package. Freedoms of a node: w (down), dw/dx, dw/dy. The deflection of an element is
the incomplete quartic 1 x y x² xy y² x³ x²y xy² y³ x³y xy³; it is not conforming, converges from below in stiffness,
and passes the patch test on rectangles. x runs along the wall and along the grain, y out of it.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
_GAUSS = ((-(0.6**0.5), 5 / 9), (0.0, 8 / 9), (0.6**0.5, 5 / 9))
_POWERS = ((0, 0), (1, 0), (0, 1), (2, 0), (1, 1), (0, 2), (3, 0), (2, 1), (1, 2), (0, 3), (3, 1), (1, 3))


@dataclass(frozen=True)
class Stiffness:
    """Bending stiffness per width: D_x along, D_y across, D_1 = nu_yx D_x between them, D_k of twist (G t³/12)."""

    along: float
    across: float
    coupling: float
    twist: float


def orthotropic(modulus: float, across_ratio: float, shear_ratio: float, poisson: float, thickness: float) -> Stiffness:
    """From E along the grain, E_T/E_L, G_LT/E_L, nu_LT and the thickness."""
    minor = poisson * across_ratio
    part = thickness**3 / (12 * (1 - poisson * minor))
    return Stiffness(
        modulus * part, modulus * across_ratio * part, minor * modulus * part,
        shear_ratio * modulus * thickness**3 / 12,
    )  # fmt: skip


def isotropic(modulus: float, poisson: float, thickness: float) -> Stiffness:
    d = modulus * thickness**3 / (12 * (1 - poisson**2))
    return Stiffness(d, d, poisson * d, (1 - poisson) * d / 2)


def _monomials(x: float, y: float, dx: int, dy: int) -> Array:
    def one(power: int, value: float, order: int) -> float:
        factor = 1.0
        for step in range(order):
            factor *= power - step
        return factor * value ** (power - order) if power >= order else 0.0

    return np.array([one(i, x, dx) * one(j, y, dy) for i, j in _POWERS])


@dataclass
class Element:
    """One rectangle a by b: its stiffness, its shape, and the moments at a place in it."""

    a: float
    b: float
    stiffness: Stiffness
    shape: Array = field(init=False)
    matrix: Array = field(init=False)

    def __post_init__(self) -> None:
        corners = ((0.0, 0.0), (self.a, 0.0), (self.a, self.b), (0.0, self.b))
        rows = [_monomials(x, y, *d) for x, y in corners for d in ((0, 0), (1, 0), (0, 1))]
        self.shape = np.linalg.inv(np.array(rows))
        total = np.zeros((12, 12))
        d = self._law()
        for gx, wx in _GAUSS:
            for gy, wy in _GAUSS:
                curve = self.curvature((gx + 1) / 2 * self.a, (gy + 1) / 2 * self.b)
                total += wx * wy * self.a * self.b / 4 * curve.T @ d @ curve
        self.matrix = total

    def _law(self) -> Array:
        s = self.stiffness
        return np.array([[s.along, s.coupling, 0], [s.coupling, s.across, 0], [0, 0, s.twist]])

    def curvature(self, x: float, y: float) -> Array:
        rows = [_monomials(x, y, 2, 0), _monomials(x, y, 0, 2), 2 * _monomials(x, y, 1, 1)]
        return np.array(rows) @ self.shape

    def moments(self, x: float, y: float, moved: Array) -> Array:
        """m_x, m_y, m_xy at (x, y) of the element; positive where the plate sags."""
        found: Array = -self._law() @ self.curvature(x, y) @ moved
        return found

    def even_load(self) -> Array:
        """Nodal forces of a load of 1 per area."""
        total = np.zeros(12)
        for gx, wx in _GAUSS:
            for gy, wy in _GAUSS:
                place = _monomials((gx + 1) / 2 * self.a, (gy + 1) / 2 * self.b, 0, 0)
                total += wx * wy * self.a * self.b / 4 * place @ self.shape
        return total


class Plate:
    """A rectangle of `length` by `depth` in `columns` by `rows` elements."""

    def __init__(self, length: float, depth: float, columns: int, rows: int, stiffness: Stiffness) -> None:
        self.length, self.depth, self.columns, self.rows = length, depth, columns, rows
        self.element = Element(length / columns, depth / rows, stiffness)
        self.size = 3 * (columns + 1) * (rows + 1)
        self.matrix = np.zeros((self.size, self.size))
        for i in range(columns):
            for j in range(rows):
                index = self.freedoms_of(i, j)
                self.matrix[np.ix_(index, index)] += self.element.matrix

    def node(self, i: int, j: int) -> int:
        return j * (self.columns + 1) + i

    def w(self, i: int, j: int) -> int:
        return 3 * self.node(i, j)

    def freedoms_of(self, i: int, j: int) -> list[int]:
        corners = ((i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1))
        return [3 * self.node(*corner) + k for corner in corners for k in range(3)]

    def even_load(self, pressure: float) -> Array:
        load = np.zeros(self.size)
        part = pressure * self.element.even_load()
        for i in range(self.columns):
            for j in range(self.rows):
                load[self.freedoms_of(i, j)] += part
        return load

    def person(self, force: float, middle: float, out: float, patch: float) -> Array:
        """A force spread over `patch` along x at `out` from the back, moved inwards where it would pass an end."""
        load = np.zeros(self.size)
        start = min(max(middle - patch / 2, 0.0), self.length - patch)
        j = min(int(out / self.element.b), self.rows - 1)
        for i in range(self.columns):
            left = i * self.element.a
            low, high = max(start, left), min(start + patch, left + self.element.a)
            if high <= low:
                continue
            index = self.freedoms_of(i, j)
            for gauss, weight in _GAUSS:
                at = low + (gauss + 1) / 2 * (high - low) - left
                shape = _monomials(at, out - j * self.element.b, 0, 0) @ self.element.shape
                load[index] += force / patch * weight * (high - low) / 2 * shape
        return load

    def reading(self, x: float, y: float) -> Array:
        """The row that reads w at a place from the freedoms."""
        i, j = min(int(x / self.element.a), self.columns - 1), min(int(y / self.element.b), self.rows - 1)
        row = np.zeros(self.size)
        place = _monomials(x - i * self.element.a, y - j * self.element.b, 0, 0)
        row[self.freedoms_of(i, j)] = place @ self.element.shape
        return row

    def moments(self, moved: Array, pick: Callable[[int, int], bool] = lambda i, j: True) -> Array:
        """Largest m_x, m_y (sizes) over the corners and middles of the picked elements."""
        best = np.zeros(2)
        places = [(x * self.element.a, y * self.element.b) for x in (0, 0.5, 1) for y in (0, 0.5, 1)]
        for i in range(self.columns):
            for j in range(self.rows):
                if pick(i, j):
                    part = moved[self.freedoms_of(i, j)]
                    for x, y in places:
                        best = np.maximum(best, np.abs(self.element.moments(x, y, part)[:2]))
        return best

    def across_mean(self, moved: Array, width: float) -> float:
        """The largest bending across the grain, as a mean over about `width` along it: under a point it has no peak
        that a finer mesh would not raise."""
        found = np.zeros((self.columns, self.rows))
        for i in range(self.columns):
            for j in range(self.rows):
                middle = (self.element.a / 2, self.element.b / 2, moved[self.freedoms_of(i, j)])
                found[i, j] = self.element.moments(*middle)[1]
        span = max(1, round(width / self.element.a))
        means = [abs(found[i : i + span].mean(axis=0)).max() for i in range(self.columns - span + 1)]
        return float(max(means))

    def front_moment(self, moved: Array, at: float, width: float) -> float:
        """m_x at `at` along the wall, the mean over the front `width`."""
        i = min(int(at / self.element.a), self.columns - 1)
        x = at - i * self.element.a
        count = 16
        values = []
        for step in range(count):
            y = self.depth - width * (step + 0.5) / count
            j = min(int(y / self.element.b), self.rows - 1)
            part = moved[self.freedoms_of(i, j)]
            values.append(float(self.element.moments(x, y - j * self.element.b, part)[0]))
        return float(np.mean(values))


def solve_held(plate: Plate, load: Array, held: list[int]) -> tuple[Array, Array]:
    """Deflections with the `held` freedoms at zero, and the forces that hold them."""
    free = np.setdiff1d(np.arange(plate.size), np.array(held))
    moved = np.zeros(plate.size)
    moved[free] = np.linalg.solve(plate.matrix[np.ix_(free, free)], load[free])
    forces: Array = load - plate.matrix @ moved
    return moved, forces


def hinged_on_three_sides(plate: Plate) -> list[int]:
    """w = 0, and no slope along the line, on the back and both ends: firm line hinges."""
    held: list[int] = []
    for i in range(plate.columns + 1):
        held += [plate.w(i, 0), plate.w(i, 0) + 1]
    for j in range(1, plate.rows + 1):
        for i in (0, plate.columns):
            held += [plate.w(i, j), plate.w(i, j) + 2]
    held += [plate.w(i, 0) + 2 for i in (0, plate.columns)]
    return held
