"""Solve the boards of `back_alone.csv` by plate theory and freeze them: `python tests/plate/solve_back_alone.py`.

A board on one angle along its back and nothing else: the angle a beam that turns on its screws, its leg a bed of
springs at the heel and at the toe that only push, its seat screws springs that only pull (`supported_board`). One
person is 250 lbf on 4 in of the front edge, walked from one end to the middle. Inches and pounds throughout.
"""

from __future__ import annotations

from dataclasses import asdict, dataclass
from pathlib import Path

import numpy as np
from frozen import figures, read_rows, write_rows
from plate_elements import Array, Plate, orthotropic
from solve_boards import PATCH, PERSON, WOODS
from supported_board import FILLET, GAP, SEAT_ROW, TOE, TOE_BED, Answer, SupportedBoard, Supports, _Angle

DATA = Path(__file__).with_name("back_alone.csv")
# Length, depth, thickness; stiffness of a place sideways and against turning; pitch of the seat screws.
SECTIONS = ((6.0, 1.25), (8.0, 1.25), (12.0, 1.5), (15.0, 1.75))
LENGTHS = (36.0, 48.0, 60.0)
STIFFNESS = ((4170.0, 24000.0), (27000.0, 60000.0))


@dataclass(frozen=True)
class Case:
    wood: str
    length: float
    depth: float
    thickness: float
    side: float
    turn: float


@dataclass
class Found:
    """A person at the worst place: the largest couple of a place as a share of his whole moment about the heel, inside
    and at an end; the largest pull of a seat screw; the bending of the leg at its fillet, per width, and across the
    grain of the board at the toe, each the mean over the worst 12 in; the drop under him."""

    share: float = 0.0
    share_end: float = 0.0
    seat_pull: float = 0.0
    leg_m: float = 0.0
    leg_m_end: float = 0.0
    across: float = 0.0
    across_end: float = 0.0
    drop: float = 0.0


class BackAlone(SupportedBoard):
    """Plate and one angle. The angles at the ends are left out before anything is put together."""

    def __init__(self, plate: Plate, supports: Supports) -> None:
        self.plate, self.supports = plate, supports
        along = np.linspace(0, plate.length, plate.columns + 1)
        self.angles = [_Angle(plate.size, along, supports.back)]
        self.size = plate.size + 3 * len(along)
        rows, kinds, stiff = self._links()
        self._condense(rows)
        self.kinds, self.stiff = kinds, stiff
        self.base = self._base()

    def leg_bending(self, moved: Array, seat: list[tuple[float, float]]) -> Array:
        """Bending of the leg at its fillet, in·lbf/in, node by node along it: what the toe presses, less what the seat
        screws hold back, each smeared over its own stretch."""
        along = self.angles[0].at
        step = along[1] - along[0]
        toe = [
            max(0.0, float(self._pressed(self.plate, 0, self.angles[0], float(at), TOE) @ moved)) * TOE_BED
            for at in along
        ]
        pulls = np.zeros(len(along))
        pitch = seat[1][0] - seat[0][0]
        for at, pull in seat:
            near = np.abs(along - at) <= pitch / 2
            pulls[near] += pull / (near.sum() * step)
        found: Array = np.array(toe) * (TOE - FILLET) - pulls * (SEAT_ROW - FILLET)
        return found


def cases() -> list[Case]:
    found = []
    for wood in WOODS:
        for length in LENGTHS:
            for depth, thickness in SECTIONS:
                found.append(Case(wood, length, depth, thickness, *STIFFNESS[len(found) % 2]))
    return found


def stations(length: float) -> list[float]:
    count = int((length - 4) // 16) + 1
    return [length / 2 + 16 * (i - (count - 1) / 2) for i in range(count)]


def solve(case: Case, columns: int | None = None, rows: int | None = None) -> Found:
    modulus, across, shear, poisson = WOODS[case.wood]
    law = orthotropic(modulus, across, shear, poisson, case.thickness)
    plate = Plate(case.length, case.depth, columns or round(case.length), rows or max(8, round(case.depth)), law)
    back = stations(case.length)
    board = BackAlone(plate, Supports(back, [], case.side, case.turn, seat_pitch=8.0))
    found = Found()
    front = case.depth + GAP
    places = (case.length / 2, back[len(back) // 2], (back[0] + back[1]) / 2, back[0], 2.0)
    for at in places:
        answer = board.solve(plate.person(PERSON, at, case.depth, PATCH))
        _person(case, board, plate, answer, found, at, front)
    return found


def _person(case: Case, board: BackAlone, plate: Plate, answer: Answer, found: Found, at: float, front: float) -> None:
    moment = PERSON * front
    end = at < 4
    ends = max(answer.back_couples[0], answer.back_couples[-1]) / moment
    inside = max(answer.back_couples[1:-1], default=0.0) / moment
    found.share_end = max(found.share_end, ends)
    found.share = max(found.share, inside)
    found.seat_pull = max(found.seat_pull, *(pull for _, pull in answer.seat))
    # What bends at once is plastic over a hand's breadth and more: the mean over 12 in, or what there is of it.
    span = max(1, round(12.0 / plate.element.a))
    leg = board.leg_bending(answer.moved, answer.seat)
    means = np.convolve(leg, np.ones(span) / span, mode="valid")
    across = plate.across_mean(answer.moved, 12.0)
    drop = float(answer.moved[plate.w(min(round(at / plate.element.a), plate.columns), plate.rows)])
    if end:
        found.leg_m_end = max(found.leg_m_end, float(means.max()))
        found.across_end = max(found.across_end, across)
    else:
        found.leg_m = max(found.leg_m, float(means.max()))
        found.across = max(found.across, across)
    if at == case.length / 2:
        found.drop = drop


def rows() -> list[dict[str, str]]:
    return read_rows(DATA)


def case_of(row: dict[str, str]) -> Case:
    return Case(row["wood"], *(float(row[name]) for name in ("length", "depth", "thickness", "side", "turn")))


def main() -> None:
    found = []
    for case in cases():
        solved = figures(asdict(solve(case)))
        found.append({name: str(value) for name, value in asdict(case).items()} | solved)
    write_rows(DATA, found)


if __name__ == "__main__":
    main()
