"""Solve the boards of `boards.csv` by plate theory and freeze what was found: `python tests/plate/solve_boards.py`.

Every board twice: on firm line hinges along its back and both ends, and on angles that give (`supported_board`).
One person is 250 lbf on 4 in.; a full seat is 10 lbf/in; the board weighs nothing. Inches and pounds throughout.
Elastic ratios of the woods are from memory of the Wood Handbook, Table 5-1; they are inputs here, not results.
"""

from __future__ import annotations

import sys
from dataclasses import asdict, dataclass
from pathlib import Path

import numpy as np
from frozen import figures, read_rows, write_rows
from plate_elements import Array, Plate, hinged_on_three_sides, orthotropic, solve_held
from supported_board import Answer, SupportedBoard, Supports

DATA = Path(__file__).with_name("boards.csv")
PERSON, FULL, PATCH, APART, NEAR_WALL, CORNER = 250.0, 10.0, 4.0, 24.0, 0.75, 6.0

# E along the grain in psi, E_T/E_L, G_LT/E_L, nu_LT.
WOODS = {
    "white ash": (1.74e6, 0.080, 0.077, 0.440),
    "western redcedar": (1.11e6, 0.055, 0.086, 0.296),
    "douglas-fir": (1.95e6, 0.050, 0.078, 0.449),
    "red oak": (1.82e6, 0.082, 0.081, 0.448),
}
SPANS = (36.0, 48.0, 60.0, 72.0, 84.0, 97.0)
SECTIONS = ((10.0, 1.25), (12.0, 1.5), (15.0, 1.75), (20.0, 1.75))
# Stiffness of one screw position, lbf/in and in·lbf: soft screws, screws through lining, paired screws on packers.
STIFFNESS = ((1500.0, 13000.0), (4170.0, 24000.0), (54300.0, 60000.0))


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
    """hinged_: on firm hinges. The rest: on angles that give. _p one person, _pp two, _q a full seat; V in lbf, M in
    in·lbf, m in in·lbf/in, drops in in. `hinged_back_q` is the peak line load on the back."""

    hinged_drop_p: float = 0.0
    hinged_front_m_p: float = 0.0
    hinged_m_p: float = 0.0
    hinged_drop_q: float = 0.0
    hinged_m_q: float = 0.0
    hinged_back_q: float = 0.0
    hinged_corner_p: float = 0.0
    hinged_corner_pp: float = 0.0
    m_p: float = 0.0
    m_pp: float = 0.0
    m_q: float = 0.0
    drop_p: float = 0.0
    drop_q: float = 0.0
    back_v_p: float = 0.0
    back_end_v_p: float = 0.0
    back_m_p: float = 0.0
    back_v_pp: float = 0.0
    back_m_pp: float = 0.0
    back_v_q: float = 0.0
    back_m_q: float = 0.0
    return_v_p: float = 0.0
    return_m_p: float = 0.0
    return_m_mid_p: float = 0.0
    return_v_pp: float = 0.0
    return_m_pp: float = 0.0
    return_v_q: float = 0.0
    return_m_q: float = 0.0
    corner_p: float = 0.0
    corner_pp: float = 0.0
    corner_q: float = 0.0
    across_p: float = 0.0
    across_pp: float = 0.0
    across_q: float = 0.0


def cases() -> list[Case]:
    found = []
    for wood in WOODS:
        for span in SPANS:
            for depth, thickness in SECTIONS:
                side, turn = STIFFNESS[len(found) % len(STIFFNESS)]
                found.append(Case(wood, span, depth, thickness, side, turn))
    return found


def stations(length: float) -> list[float]:
    """Screw positions of the back angle, 16 in. apart about its middle, the angle as long as the board."""
    count = int((length - 4) // 16) + 1
    return [length / 2 + 16 * (i - (count - 1) / 2) for i in range(count)]


def return_stations(depth: float) -> list[float]:
    return [2.0, depth - 0.75] if depth < 12 else [2.0, depth / 2 + 0.625, depth - 0.75]


def plate_of(case: Case, columns: int | None = None, rows: int | None = None) -> Plate:
    modulus, across, shear, poisson = WOODS[case.wood]
    columns = columns or 2 * round(case.length / 4)
    rows = rows or max(8, round(case.depth / 1.25))
    law = orthotropic(modulus, across, shear, poisson, case.thickness)
    return Plate(case.length, case.depth, columns, rows, law)


def hinged(case: Case, plate: Plate, found: Found) -> None:
    held = hinged_on_three_sides(plate)
    middle, front = plate.columns // 2, plate.rows

    def solve(load: Array) -> tuple[Array, Array]:
        return solve_held(plate, load, held)

    moved, forces = solve(plate.person(PERSON, case.length / 2, case.depth, PATCH))
    found.hinged_drop_p = float(moved[plate.w(middle, front)])
    found.hinged_front_m_p = plate.front_moment(moved, case.length / 2, 2.0)
    found.hinged_m_p = float(plate.moments(moved)[0])
    corner = _corner(plate, forces)
    for at in (case.length / 3, case.length / 5):
        moved, forces = solve(plate.person(PERSON, at, case.depth, PATCH))
        found.hinged_m_p = max(found.hinged_m_p, float(plate.moments(moved)[0]))
        corner = max(corner, _corner(plate, forces))
    found.hinged_corner_p = corner
    if case.length >= 48:
        _, forces = solve(_two(case, plate, case.length / 2))
        found.hinged_corner_pp = _corner(plate, forces)
    moved, forces = solve(plate.even_load(FULL / case.depth))
    found.hinged_drop_q = float(moved[plate.w(middle, front)])
    found.hinged_m_q = float(plate.moments(moved)[0])
    along = [forces[plate.w(i, 0)] / plate.element.a for i in range(2, plate.columns - 1)]
    found.hinged_back_q = float(max(along))


def _corner(plate: Plate, forces: Array) -> float:
    """The pull on the hinges within 6 in. of a back corner, along the back."""
    within = [i for i in range(plate.columns + 1) if i * plate.element.a <= CORNER]
    return max(0.0, -float(sum(forces[plate.w(i, 0)] for i in within)))


def _two(case: Case, plate: Plate, middle: float) -> Array:
    both = (middle - APART / 2, middle + APART / 2)
    return plate.person(PERSON, both[0], case.depth, PATCH) + plate.person(PERSON, both[1], case.depth, PATCH)


def on_angles(case: Case, plate: Plate, found: Found) -> None:
    back = stations(case.length)
    board = SupportedBoard(plate, Supports(back, return_stations(case.depth), case.side, case.turn))
    middle = plate.w(plate.columns // 2, plate.rows)
    for at in (case.length / 2, case.length / 5, 2.0, *_beside(back)):
        answer = board.solve(plate.person(PERSON, at, case.depth, PATCH))
        _person(case, plate, answer, found, midspan=at == case.length / 2, corner=at == 2.0)
        if at == case.length / 2:
            found.drop_p = float(answer.moved[middle])
    for at in (back[0], back[-2], (back[-2] + back[-3]) / 2 if len(back) > 2 else case.length / 2):
        _person(case, plate, board.solve(plate.person(PERSON, at, NEAR_WALL, PATCH)), found)
    if case.length >= 48:
        for at in (case.length / 2, 2.0 + APART / 2):
            _two_people(case, plate, board.solve(_two(case, plate, at)), found)
    answer = board.solve(plate.even_load(FULL / case.depth))
    found.drop_q = float(answer.moved[middle])
    found.m_q = float(plate.moments(answer.moved)[0])
    found.back_v_q, found.back_m_q = max(answer.back), max(answer.back_couples)
    found.return_v_q, found.return_m_q = _largest(answer.sides), _largest(answer.side_couples)
    found.corner_q = answer.corner_pull(case.length, CORNER)
    found.across_q = plate.across_mean(answer.moved, PATCH)


def _beside(back: list[float]) -> list[float]:
    """Front places in line with the second position and between it and the next."""
    return [back[1]] if len(back) < 3 else [back[1], (back[1] + back[2]) / 2]


def _person(case: Case, plate: Plate, answer: Answer, found: Found, *, midspan: bool = False, corner: bool = False
            ) -> None:  # fmt: skip
    inside = answer.back[1:-1] or answer.back
    found.back_v_p = max(found.back_v_p, *inside)
    found.back_end_v_p = max(found.back_end_v_p, answer.back[0], answer.back[-1])
    found.back_m_p = max(found.back_m_p, *answer.back_couples)
    found.m_p = max(found.m_p, float(plate.moments(answer.moved)[0]))
    found.across_p = max(found.across_p, plate.across_mean(answer.moved, PATCH))
    found.corner_p = max(found.corner_p, answer.corner_pull(case.length, CORNER))
    if corner:
        found.return_v_p, found.return_m_p = _largest(answer.sides), _largest(answer.side_couples)
    if midspan:
        found.return_m_mid_p = _largest(answer.side_couples)


def _two_people(case: Case, plate: Plate, answer: Answer, found: Found) -> None:
    found.back_v_pp = max(found.back_v_pp, *(answer.back[1:-1] or answer.back))
    found.back_m_pp = max(found.back_m_pp, *answer.back_couples)
    found.return_v_pp = max(found.return_v_pp, _largest(answer.sides))
    found.return_m_pp = max(found.return_m_pp, _largest(answer.side_couples))
    found.m_pp = max(found.m_pp, float(plate.moments(answer.moved)[0]))
    found.corner_pp = max(found.corner_pp, answer.corner_pull(case.length, CORNER))
    found.across_pp = max(found.across_pp, plate.across_mean(answer.moved, PATCH))


def _largest(of_both: list[list[float]]) -> float:
    return max(max(one) for one in of_both)


def solve(case: Case, columns: int | None = None, rows: int | None = None) -> Found:
    plate, found = plate_of(case, columns, rows), Found()
    hinged(case, plate, found)
    on_angles(case, plate, found)
    return found


def rows() -> list[dict[str, str]]:
    return read_rows(DATA)


def case_of(row: dict[str, str]) -> Case:
    numbers = [float(row[name]) for name in ("length", "depth", "thickness", "side", "turn")]
    return Case(row["wood"], *numbers)


def main() -> None:
    np.seterr(all="raise", under="ignore")
    found = []
    for number, case in enumerate(cases(), 1):
        solved = figures(asdict(solve(case)))
        found.append({name: str(value) for name, value in asdict(case).items()} | solved)
        print(f"{number:3d} of {len(cases())}: {case}", file=sys.stderr, flush=True)
    write_rows(DATA, found)


if __name__ == "__main__":
    main()
