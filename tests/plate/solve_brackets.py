"""Solve the boards of `brackets.csv` by plate theory and freeze them: `python tests/plate/solve_brackets.py`.

A board on three or four brackets, its left end free or also on an angle of the wall there, firm or giving. An arm is a
cantilever that turns at its bend as far as the upright below lets it; the board presses on it along its whole length,
and one seat screw a bracket, 3 in from the wall, only pulls. The end angle is a line of springs that only push, with
three screws that only pull. One person is 250 lbf on 4 in of the front edge, walked from end to end; a full seat is
10 lbf/in; the board weighs nothing. Inches and pounds throughout.
"""

from __future__ import annotations

import sys
from dataclasses import asdict, dataclass
from pathlib import Path

import numpy as np
from frozen import figures, read_rows, write_rows
from plate_elements import Array, Plate, orthotropic
from solve_boards import FULL, PATCH, PERSON, WOODS
from supported_board import SEAT_SCREW, STEEL, SupportedBoard

DATA = Path(__file__).with_name("brackets.csv")
GAP, SEAT_ROW, WIDTH, FREE_UPRIGHT, END_LINE = 0.125, 3.0, 2.5, 2.0, 1.0
BED = 100_000.0
# Per inch of the angle at the end: firm steel in a stud, and screws through lining.
ENDS = {"none": 0.0, "firm": 20_000.0, "giving": 600.0}
# What presses four screws of an upright sideways against their wood.
SIDE = 4 * 26_000.0

# Length, depth, thickness, arm, its thickness, and the brackets from the left end.
BOARDS = (
    ("white ash", 53.75, 14.0, 1.75, 14.0, 1.0, (4.125, 20.125, 36.125, 52.125)),
    ("white ash", 40.0, 14.0, 1.75, 14.0, 0.75, (4.0, 20.0, 36.0)),
    ("white ash", 60.0, 18.0, 2.0, 18.0, 1.0, (6.0, 30.0, 54.0)),
    ("western redcedar", 52.0, 12.0, 1.5, 12.0, 0.75, (2.0, 26.0, 50.0)),
    ("western redcedar", 64.0, 14.0, 1.75, 14.0, 1.0, (8.0, 24.0, 40.0, 56.0)),
    ("western redcedar", 36.0, 10.0, 1.25, 10.0, 0.5, (2.0, 18.0, 34.0)),
    ("douglas-fir", 64.0, 16.0, 1.75, 16.0, 1.0, (4.0, 20.0, 44.0, 60.0)),
    ("douglas-fir", 72.0, 12.0, 1.5, 12.0, 0.75, (4.0, 28.0, 44.0, 68.0)),
    ("douglas-fir", 48.0, 20.0, 1.75, 20.0, 1.0, (8.0, 24.0, 40.0)),
    ("red oak", 76.0, 14.0, 1.75, 14.0, 1.0, (2.0, 26.0, 50.0, 74.0)),
    ("red oak", 36.0, 16.0, 1.5, 16.0, 1.0, (2.0, 18.0, 34.0)),
    ("red oak", 68.0, 14.0, 1.25, 12.0, 1.0, (10.0, 26.0, 42.0, 58.0)),
    ("white ash", 34.5, 14.0, 1.75, 14.0, 1.0, (1.25, 17.25, 33.25)),
    ("red oak", 50.5, 12.0, 1.5, 12.0, 0.5, (1.25, 17.25, 33.25, 49.25)),
    ("western redcedar", 60.0, 16.0, 1.5, 11.0, 1.0, (4.0, 22.0, 40.0, 56.0)),
)  # fmt: skip


@dataclass(frozen=True)
class Case:
    wood: str
    length: float
    depth: float
    thickness: float
    arm: float
    steel: float
    brackets: tuple[float, ...]
    end: str

    @property
    def back(self) -> float:
        """From the wall to the back edge of the board: the upright, and a gap in front of it."""
        return self.steel + GAP


@dataclass
class Found:
    """The worst over all brackets and places: force and moment about the wall of one bracket, the pull of its seat
    screw and how far its own force lifts (all of it, net); the bending of the board along and across the grain; the
    drop of the front edge under the person, between brackets or at an end. _p one person, _q a full seat."""

    force_p: float = 0.0
    moment_p: float = 0.0
    pull_p: float = 0.0
    lift_p: float = 0.0
    m_p: float = 0.0
    across_p: float = 0.0
    drop_p: float = 0.0
    force_q: float = 0.0
    moment_q: float = 0.0
    m_q: float = 0.0
    across_q: float = 0.0
    drop_q: float = 0.0


@dataclass
class _Arm:
    x: float
    first: int
    at: Array


@dataclass
class _Link:
    row: Array
    kind: str
    stiff: float
    bracket: int
    out: float


class OnBrackets(SupportedBoard):
    """Plate and arms. Freedoms: the plate's, then v and v' at every node of each arm, the bend first."""

    def __init__(self, plate: Plate, case: Case) -> None:
        self.plate, self.case = plate, case
        outs = [case.back + j * plate.element.b for j in range(plate.rows + 1)]
        inside = [y for y in outs if y < case.arm - 0.25 * plate.element.b]
        nodes = np.array([0.0, *inside, min(case.arm, case.depth + case.back)])
        self.arms = []
        size = plate.size
        for x in case.brackets:
            self.arms.append(_Arm(x, size, nodes))
            size += 2 * len(nodes)
        self.size = size
        self.links = list(self._bracket_links())
        if ENDS[case.end]:
            self.links += self._end_links(outs)
        self.kinds = [link.kind for link in self.links]
        self.stiff = np.array([link.stiff for link in self.links])
        self._condense(np.array([link.row for link in self.links]))
        self.base = self._base()

    def _gap(self, arm: _Arm | None, x: float, out: float) -> Array:
        row = np.zeros(self.size)
        row[: self.plate.size] = self.plate.reading(x, min(max(out - self.case.back, 0.0), self.plate.depth))
        if arm is not None:
            node = min(int(np.searchsorted(arm.at, out, side="right")) - 1, len(arm.at) - 2)
            length = arm.at[node + 1] - arm.at[node]
            z = (out - arm.at[node]) / length
            first = arm.first + 2 * node
            row[first : first + 4] -= [
                1 - 3 * z**2 + 2 * z**3, (z - 2 * z**2 + z**3) * length, 3 * z**2 - 2 * z**3, (z**3 - z**2) * length,
            ]  # fmt: skip
        return row

    def _bracket_links(self) -> list[_Link]:
        found = []
        for index, arm in enumerate(self.arms):
            lines = arm.at[1:]
            for k, out in enumerate(lines):
                before = out - lines[k - 1] if k else 0.0
                after = lines[k + 1] - out if k + 1 < len(lines) else 0.0
                found.append(_Link(self._gap(arm, arm.x, out), "push", BED * (before + after) / 2, index, float(out)))
            found.append(_Link(self._gap(arm, arm.x, SEAT_ROW), "seat", SEAT_SCREW, index, SEAT_ROW))
        return found

    def _end_links(self, outs: list[float]) -> list[_Link]:
        bed, step = ENDS[self.case.end], self.plate.element.b
        widths = [step / (2 if out in (outs[0], outs[-1]) else 1) for out in outs]
        found = [
            _Link(self._gap(None, END_LINE, out), "push", bed * width, -1, out)
            for out, width in zip(outs, widths, strict=True)
        ]
        places = [part * self.case.depth for part in (0.25, 0.5, 0.75)]
        return found + [_Link(self._gap(None, END_LINE, out), "seat", SEAT_SCREW, -1, out) for out in places]

    def _base(self) -> Array:
        count, extra = len(self.touched), self.size - self.plate.size
        base = np.zeros((count + extra, count + extra))
        base[:count, :count] = self.reduced
        steel = np.zeros((extra, extra))
        rigidity = STEEL * WIDTH * self.case.steel**3 / 12
        for arm in self.arms:
            first = arm.first - self.plate.size
            steel[first, first] += SIDE
            steel[first + 1, first + 1] += rigidity / FREE_UPRIGHT
            for node in range(len(arm.at) - 1):
                l = arm.at[node + 1] - arm.at[node]  # noqa: E741
                here = slice(first + 2 * node, first + 2 * node + 4)
                steel[here, here] += rigidity / l**3 * np.array(
                    [[12, 6 * l, -12, 6 * l], [6 * l, 4 * l * l, -6 * l, 2 * l * l],
                     [-12, -6 * l, 12, -6 * l], [6 * l, 2 * l * l, -6 * l, 4 * l * l]])  # fmt: skip
        base[count:, count:] = steel
        return base

    def _answer(  # type: ignore[override]
        self, found: Array, pressed: Array, active: Array, alone: Array
    ) -> Pressed:
        count = len(self.touched)
        moved = np.zeros(self.size)
        moved[self.touched] = found[:count]
        moved[self.plate.size :] = found[count:]
        moved[self.inner] = alone - self.follow @ (self.across @ found[:count])
        forces = np.where(active, self.stiff * pressed, 0.0)
        of = np.array([link.bracket for link in self.links])
        outs = np.array([link.out for link in self.links])
        seats = np.array([link.kind == "seat" for link in self.links])
        each = range(len(self.arms))
        return Pressed(
            [float(forces[of == i].sum()) for i in each], [float((forces * outs)[of == i].sum()) for i in each],
            [float(-forces[(of == i) & seats].sum()) for i in each], float(forces[of == -1].sum()), moved,
        )  # fmt: skip


@dataclass(frozen=True)
class Pressed:
    """Force, moment about the wall and seat screw pull of each bracket, the force on the end angle, the deflections."""

    forces: list[float]
    moments: list[float]
    pulls: list[float]
    end: float
    moved: Array


def cases() -> list[Case]:
    return [Case(*board, end) for board in BOARDS for end in ENDS]


def places(case: Case) -> list[float]:
    """Both ends, over every bracket, and at quarters between them."""
    found = [2.0, case.length - 2.0, *case.brackets]
    for a, b in zip(case.brackets, case.brackets[1:], strict=False):
        found += [a + part * (b - a) for part in (0.25, 0.5, 0.75)]
    return sorted({min(max(x, 2.0), case.length - 2.0) for x in found})


def plate_of(case: Case, fine: float = 1.0) -> Plate:
    modulus, across, shear, poisson = WOODS[case.wood]
    law = orthotropic(modulus, across, shear, poisson, case.thickness)
    return Plate(case.length, case.depth, round(fine * case.length / 1.5), max(8, round(fine * case.depth / 1.5)), law)


def solve(case: Case, fine: float = 1.0) -> Found:
    plate, found = plate_of(case, fine), Found()
    board = OnBrackets(plate, case)
    for at in places(case):
        answer = board.solve(plate.person(PERSON, at, case.depth, PATCH))
        assert isinstance(answer, Pressed)
        assert abs(sum(answer.forces) + answer.end - PERSON) < 1e-4 * PERSON
        found.force_p = max(found.force_p, *answer.forces)
        found.moment_p = max(found.moment_p, *answer.moments)
        found.pull_p = max(found.pull_p, *answer.pulls)
        found.lift_p = max(found.lift_p, *(-force for force in answer.forces))
        found.m_p = max(found.m_p, float(plate.moments(answer.moved)[0]))
        found.across_p = max(found.across_p, plate.across_mean(answer.moved, PATCH))
        found.drop_p = max(found.drop_p, float(plate.reading(at, case.depth) @ answer.moved[: plate.size]))
    answer = board.solve(plate.even_load(FULL / case.depth))
    assert isinstance(answer, Pressed)
    front = [plate.w(i, plate.rows) for i in range(plate.columns + 1)]
    found.force_q, found.moment_q = max(answer.forces), max(answer.moments)
    found.m_q = float(plate.moments(answer.moved)[0])
    found.across_q = plate.across_mean(answer.moved, PATCH)
    found.drop_q = float(answer.moved[front].max())
    return found


def rows() -> list[dict[str, str]]:
    return read_rows(DATA)


def case_of(row: dict[str, str]) -> Case:
    sizes = [float(row[name]) for name in ("length", "depth", "thickness", "arm", "steel")]
    return Case(row["wood"], *sizes, tuple(float(x) for x in row["brackets"].split()), row["end"])


def main() -> None:
    found = []
    for case in cases():
        solved = figures(asdict(solve(case)))
        said = asdict(case) | {"brackets": " ".join(f"{x:g}" for x in case.brackets)}
        found.append({name: str(value) for name, value in said.items()} | solved)
        print(found[-1], file=sys.stderr, flush=True)
    write_rows(DATA, found)


if __name__ == "__main__":
    main()
