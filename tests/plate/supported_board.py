"""A board lying on a back angle and two returns that give: beams on screws, legs that bend, contact that can open.

Inches and pounds. Freedoms: the plate's, then v, v', phi (down, slope, turning about its own axis, toe down positive)
at every node along each of the three angles. The board touches an angle along two lines, near its heel and at its toe;
both only push. Seat screws only pull. The open and closed contacts are found by trying until none is wrong.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from plate_elements import Array, Plate

STEEL = 29e6
LEG, STEEL_THICK, FILLET, TOE, SEAT_ROW, GAP = 2.0, 0.125, 0.375, 1.95, 1.25, 0.1875
# L2x2x1/8: second moment and torsion constant, with the shear modulus of steel.
SECOND, TORSION = 0.189, 0.00293 * 11.2e6
HEEL_BED = 20_000.0
TOE_BED = 3 * STEEL * STEEL_THICK**3 / (12 * 0.91) / (TOE - FILLET) ** 3
SEAT_SCREW = 11_000.0


@dataclass(frozen=True)
class Supports:
    """Screw positions from the left end (back) and from the wall (returns), and how stiff each is."""

    back: list[float]
    returns: list[float]
    side: float
    turn: float
    seat_pitch: float = 12.0


@dataclass(frozen=True)
class Answer:
    """Forces and couples of the screw positions, the pull of each seat screw of the back (place, pull), the drops."""

    back: list[float]
    back_couples: list[float]
    sides: list[list[float]]
    side_couples: list[list[float]]
    seat: list[tuple[float, float]]
    moved: Array

    def corner_pull(self, length: float, within: float) -> float:
        left = sum(pull for at, pull in self.seat if at <= within)
        right = sum(pull for at, pull in self.seat if at >= length - within)
        return max(left, right)


@dataclass
class _Angle:
    first: int
    at: Array
    springs: list[float]


class SupportedBoard:
    """Plate and angles in one set of equations, the plate condensed to where it is touched."""

    def __init__(self, plate: Plate, supports: Supports) -> None:
        self.plate, self.supports = plate, supports
        across = np.linspace(0, plate.length, plate.columns + 1)
        out = np.linspace(0, plate.depth, plate.rows + 1)
        size = plate.size
        self.angles: list[_Angle] = []
        for at, springs in ((across, supports.back), (out, supports.returns), (out, supports.returns)):
            self.angles.append(_Angle(size, at, springs))
            size += 3 * len(at)
        self.size = size
        rows, kinds, stiff = self._links()
        self._condense(rows)
        self.kinds, self.stiff = kinds, stiff
        self.base = self._base()

    def _beam_reading(self, angle: _Angle, at: float) -> tuple[Array, Array]:
        """Rows that read v and phi of an angle at a place."""
        node = min(int(np.searchsorted(angle.at, at, side="right")) - 1, len(angle.at) - 2)
        length = angle.at[node + 1] - angle.at[node]
        x = (at - angle.at[node]) / length
        v, phi = np.zeros(self.size), np.zeros(self.size)
        first = angle.first + 3 * node
        v[[first, first + 1, first + 3, first + 4]] = [
            1 - 3 * x**2 + 2 * x**3, (x - 2 * x**2 + x**3) * length, 3 * x**2 - 2 * x**3, (x**3 - x**2) * length,
        ]  # fmt: skip
        phi[[first + 2, first + 5]] = [1 - x, x]
        return v, phi

    def _links(self) -> tuple[Array, list[str], Array]:
        """Every contact and seat screw as the row that reads how far the board is pressed into it."""
        rows, kinds, stiff = [], [], []
        plate = self.plate
        for index, angle in enumerate(self.angles):
            whole = angle.at[-1]
            step = whole / (len(angle.at) - 1)
            for at in angle.at:
                width = step / (2 if at in (0.0, whole) else 1)
                for from_heel, bed in ((FILLET, HEEL_BED), (TOE, TOE_BED)):
                    rows.append(self._pressed(plate, index, angle, float(at), from_heel))
                    kinds.append("push")
                    stiff.append(bed * width)
            for at in self._seat_places(whole, index):
                rows.append(self._pressed(plate, index, angle, at, SEAT_ROW))
                kinds.append("seat" if index == 0 else "return seat")
                stiff.append(SEAT_SCREW)
        return np.array(rows), kinds, np.array(stiff)

    def _seat_places(self, whole: float, index: int) -> list[float]:
        if index:
            return [0.35 * whole, 0.8 * whole]
        count = max(2, int(np.ceil((whole - 6) / self.supports.seat_pitch)) + 1)
        return [float(x) for x in np.linspace(3, whole - 3, count)]

    def _pressed(self, plate: Plate, index: int, angle: _Angle, at: float, from_heel: float) -> Array:
        inside = max(from_heel - GAP, 0.0)
        place = ((at, inside), (inside, at), (plate.length - inside, at))[index]
        row = np.zeros(self.size)
        row[: plate.size] = plate.reading(*place)
        v, phi = self._beam_reading(angle, at)
        return row - v - from_heel * phi

    def _condense(self, rows: Array) -> None:
        touched = np.flatnonzero(np.any(rows[:, : self.plate.size] != 0, axis=0))
        inner = np.setdiff1d(np.arange(self.plate.size), touched)
        k = self.plate.matrix
        self.touched, self.inner = touched, inner
        self.follow = np.linalg.inv(k[np.ix_(inner, inner)])
        self.across = k[np.ix_(inner, touched)]
        self.reduced = k[np.ix_(touched, touched)] - self.across.T @ (self.follow @ self.across)
        keep = np.concatenate([touched, np.arange(self.plate.size, self.size)])
        self.rows = rows[:, keep]

    def _base(self) -> Array:
        count = len(self.touched)
        extra = self.size - self.plate.size
        base = np.zeros((count + extra, count + extra))
        base[:count, :count] = self.reduced
        steel = np.zeros((self.size, self.size))
        for angle in self.angles:
            for node in range(len(angle.at) - 1):
                self._add_beam(steel, angle, node)
            for at in angle.springs:
                v, phi = self._beam_reading(angle, at)
                steel += self.supports.side * np.outer(v, v) + self.supports.turn * np.outer(phi, phi)
        base[count:, count:] = steel[self.plate.size :, self.plate.size :]
        return base

    @staticmethod
    def _add_beam(matrix: Array, angle: _Angle, node: int) -> None:
        l = angle.at[node + 1] - angle.at[node]  # noqa: E741
        first = angle.first + 3 * node
        bent = [first, first + 1, first + 3, first + 4]
        shape = np.array([[12, 6 * l, -12, 6 * l], [6 * l, 4 * l * l, -6 * l, 2 * l * l],
                          [-12, -6 * l, 12, -6 * l], [6 * l, 2 * l * l, -6 * l, 4 * l * l]])  # fmt: skip
        matrix[np.ix_(bent, bent)] += STEEL * SECOND / l**3 * shape
        turned = [first + 2, first + 5]
        matrix[np.ix_(turned, turned)] += TORSION / l * np.array([[1, -1], [-1, 1]])

    def solve(self, load: Array) -> Answer:
        """The board under a load on the plate's freedoms. Raises RuntimeError when contact finds no rest."""
        alone = self.follow @ load[self.inner]
        forces = np.zeros(len(self.base))
        forces[: len(self.touched)] = load[self.touched] - self.across.T @ alone
        signs = np.array([1.0 if kind == "push" else -1.0 for kind in self.kinds])
        active = signs > 0
        seen = set()
        for _ in range(60):
            rows = self.rows[active]
            found = np.linalg.solve(self.base + (rows.T * self.stiff[active]) @ rows, forces)
            pressed = self.rows @ found
            wanted = signs * pressed > 0
            if np.array_equal(wanted, active):
                return self._answer(found, pressed, active, alone)
            key = wanted.tobytes()
            if key in seen:
                # Two contacts that chase each other: change the worse half of the wrong ones only.
                wrong = np.flatnonzero(wanted != active)
                worst = wrong[np.argsort(-np.abs(pressed[wrong]))][: max(1, len(wrong) // 2)]
                active = active.copy()
                active[worst] = wanted[worst]
                continue
            seen.add(key)
            active = wanted
        raise RuntimeError("the contacts came to no rest")

    def _answer(self, found: Array, pressed: Array, active: Array, alone: Array) -> Answer:
        count = len(self.touched)
        moved = np.zeros(self.size)
        moved[self.touched] = found[:count]
        moved[self.plate.size :] = found[count:]
        moved[self.inner] = alone - self.follow @ (self.across @ found[:count])
        sides, couples = [], []
        for angle in self.angles:
            readings = [self._beam_reading(angle, at) for at in angle.springs]
            sides.append([float(self.supports.side * (v @ moved)) for v, _ in readings])
            couples.append([float(self.supports.turn * (phi @ moved)) for _, phi in readings])
        places = self._seat_places(self.plate.length, 0)
        pulls = [float(-self.stiff[i] * pressed[i]) if active[i] else 0.0
                 for i, kind in enumerate(self.kinds) if kind == "seat"]  # fmt: skip
        return Answer(sides[0], couples[0], sides[1:], couples[1:], list(zip(places, pulls, strict=True)), moved)
