"""Every bound of the board on three sides against the frozen plate solutions of `boards.csv`: never below them."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from plate_elements import Plate, hinged_on_three_sides, orthotropic, solve_held
from solve_boards import APART, FULL, PATCH, PERSON, WOODS, Case, case_of, return_stations, rows, stations
from supported_board import GAP, LEG, SECOND

from plumbrule.mechanics import back_angle, board_strip, board_twist, returns, sharing
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.reading.units import from_si, to_si

ROWS = [(case_of(row), {name: float(value) for name, value in row.items() if name != "wood"}) for row in rows()]
P, Q = to_si(PERSON, "lbf"), to_si(FULL, "lbf/in")
SIXTEENTH = to_si(1 / 16, "in")


def inches(value: float) -> float:
    return to_si(value, "in")


def pounds(given: Worked | float) -> float:
    return from_si(si(given), "lbf")


class Bounds:
    """What the package says of one board, in inches and pounds."""

    def __init__(self, case: Case) -> None:
        self.case = case
        modulus, _, shear, _ = WOODS[case.wood]
        self.length, self.depth, self.thickness = (inches(x) for x in (case.length, case.depth, case.thickness))
        self.modulus = to_si(modulus, "psi")
        self.twist = board_twist.board_twist(
            length=self.length, depth=self.depth, thickness=self.thickness, modulus=self.modulus, shear_ratio=shear
        )
        self.drop_p, self.drop_q = self.twist.drop_of_point(P), self.twist.drop_of_spread(Q)
        self.stations = [inches(x) for x in stations(case.length)]
        self.side = to_si(case.side, "lbf/in")

    @property
    def turns_little(self) -> bool:
        """Whether the bounds for couples and corners apply under one person."""
        return from_si(self.drop_p.value, "in") <= 0.5

    @property
    def turns_little_full(self) -> bool:
        return from_si(self.drop_q.value, "in") <= 0.5

    def strip_moment(self, *, check: bool = False) -> float:
        """Moment per width that the front strip is checked for, in·lbf/in."""
        strip = board_strip.front_strip(self.length, self.depth, lengthwise_check=check)
        return self.person_moment("S1", strip)

    def person_moment(self, kind: board_strip.StripCase, strip: Worked) -> float:
        stress = board_strip.person_bending(kind, P, self.length, strip, self.thickness)
        return pounds(stress.value * self.thickness**2 / 6)

    def full_moment(self) -> float:
        stress = board_strip.spread_bending(Q, self.length, self.depth, self.thickness)
        return pounds(stress.value * self.thickness**2 / 6)

    def full_force(self) -> Worked:
        return back_angle.greatest_spread_force(back_angle.spread_reactions(Q, self.stations, self.length), self.drop_q)

    def shared(self) -> sharing.SharedPerson | None:
        word = sharing.sharing_word(
            positions=len(self.stations), spliced=False, hole_over=SIXTEENTH, mode="III_s", returns=2
        )
        if word != "shared":
            return None
        second = sharing.stiffness_second_moment(to_si(SECOND, "in⁴"), self.modulus, self.depth, self.thickness)
        return sharing.shared_person(
            P, length=self.length, stations=self.stations, second_moment=second,
            stiffness=sharing.position_stiffness(self.side, 1),
        )  # fmt: skip

    def back_force(self, kind: back_angle.PersonCase, *, end: bool = False) -> float:
        found = self.shared()
        if end:
            return pounds(found.end) if found else PERSON
        return pounds(back_angle.person_force(kind, P, found.inside if found else None))

    def back_couple(self, kind: back_angle.PersonCase) -> float:
        couple = back_angle.person_couple(kind, P, inches(LEG), self.drop_p, self.depth)
        return from_si(couple.value, "in·lbf")

    def full_couple(self) -> float:
        couple = back_angle.spread_couple(self.full_force(), inches(LEG), self.drop_q, self.depth)
        return from_si(couple.value, "in·lbf")

    def return_front(self, kind: returns.ReturnCase) -> tuple[float, float]:
        """Side force and couple of a return's front position."""
        load = returns.return_load(kind, person=P, line_load=Q, weight=0.0, length=self.length)
        places = [inches(y + GAP) for y in return_stations(self.case.depth)]
        force = returns.return_front_force(
            load, inches(self.case.depth + GAP), places, second_moment=to_si(SECOND, "in⁴"),
            screw_stiffness=self.side, screws=1,
        )  # fmt: skip
        couple = returns.return_couple(kind, force, inches(LEG))
        return pounds(force), from_si(couple.value, "in·lbf")

    def corner(self, kind: board_strip.PersonAcross) -> float:
        drop = self.drop_q if kind == "S2" else self.drop_p
        return pounds(
            board_strip.corner_hold_down(kind, person=P, line_load=Q, weight=0.0, length=self.length, front_drop=drop)
        )

    def across(self, kind: board_strip.PersonAcross) -> float:
        return pounds(board_strip.across_moment(kind, Q if kind == "S2" else P, self.length))


def ratios(bound: Bounds, found: dict[str, float]) -> Iterator[tuple[str, float, float]]:
    """Name, our bound and the plate's figure of everything that must be safe on a board."""
    strip = bound.strip_moment()
    yield "bending, one person, firm hinges", strip, found["hinged_m_p"]
    yield "bending, one person", strip, found["m_p"]
    yield "bending, full seat, firm hinges", bound.full_moment(), found["hinged_m_q"]
    yield "bending, full seat", bound.full_moment(), found["m_q"]
    yield "line load on the back, full seat, firm hinges", FULL, found["hinged_back_q"]
    yield "back side force inside, one person", bound.back_force("S1"), found["back_v_p"]
    yield "back side force at an end, one person", bound.back_force("S1", end=True), found["back_end_v_p"]
    corner_force, corner_couple = bound.return_front("S1 corner")
    full_force, full_couple = bound.return_front("S2")
    yield "return side force, one person", corner_force, found["return_v_p"]
    yield "return couple, one person at the corner", corner_couple, found["return_m_p"]
    yield "return couple, one person at midspan", bound.return_front("S1 midspan")[1], found["return_m_mid_p"]
    yield "return side force, full seat", full_force, found["return_v_q"]
    yield "return couple, full seat", full_couple, found["return_m_q"]
    yield "across the grain, one person", bound.across("S1"), found["across_p"]
    yield "across the grain, full seat", bound.across("S2"), found["across_q"]
    if bound.turns_little:
        yield "back couple, one person", bound.back_couple("S1"), found["back_m_p"]
        yield "corner pull, one person", bound.corner("S1"), found["corner_p"]
    if bound.turns_little_full:
        yield "back side force, full seat", pounds(bound.full_force()), found["back_v_q"]
        yield "back couple, full seat", bound.full_couple(), found["back_m_q"]
        yield "corner pull, full seat", bound.corner("S2"), found["corner_q"]
    if bound.case.length >= 2 * APART:
        two_force, two_couple = bound.return_front("S3")
        strip_line = board_strip.front_strip(bound.length, bound.depth, lengthwise_check=False)
        yield "bending, two people", bound.person_moment("S3", strip_line), found["m_pp"]
        yield "back side force, two people", bound.back_force("S3"), found["back_v_pp"]
        yield "return side force, two people", two_force, found["return_v_pp"]
        yield "return couple, two people", two_couple, found["return_m_pp"]
        yield "across the grain, two people", bound.across("S3"), found["across_pp"]
        if bound.turns_little:
            yield "back couple, two people", bound.back_couple("S3"), found["back_m_pp"]
            yield "corner pull, two people", bound.corner("S3"), found["corner_pp"]


RATIOS = [(case, *each) for case, found in ROWS for each in ratios(Bounds(case), found)]
NAMES = sorted({name for _, name, _, _ in RATIOS})


def test_there_are_boards_enough() -> None:
    assert len(ROWS) >= 80
    assert len({case.wood for case, _ in ROWS}) >= 3
    shapes = {(case.length, case.depth, case.thickness) for case, _ in ROWS}
    assert len(shapes) >= 20
    assert min(case.length / case.depth for case, _ in ROWS) < 2
    assert max(case.length / case.depth for case, _ in ROWS) > 9


@pytest.mark.parametrize("name", NAMES)
def test_no_plate_passes_the_bound(name: str) -> None:
    worst = min(((bound / plate, case) for case, each, bound, plate in RATIOS if each == name and plate > 0),
                key=lambda pair: pair[0])  # fmt: skip
    assert worst[0] >= 1.0, f"{name}: {worst[0]:.3f} on {worst[1]}"


@pytest.mark.parametrize("index", range(0, len(ROWS), 7))
def test_a_check_along_the_board_is_covered(index: int) -> None:
    """Half the shear modulus stands for a check along the grain: solved here on firm hinges, every seventh board."""
    case, _ = ROWS[index]
    modulus, across, shear, poisson = WOODS[case.wood]
    law = orthotropic(modulus, across, shear / 2, poisson, case.thickness)
    plate = Plate(case.length, case.depth, 2 * round(case.length / 6), max(8, round(case.depth / 2)), law)
    moved, _ = solve_held(plate, plate.person(PERSON, case.length / 2, case.depth, PATCH), hinged_on_three_sides(plate))
    assert Bounds(case).strip_moment(check=True) >= float(plate.moments(moved)[0])


@pytest.mark.parametrize("name", NAMES)
def test_the_bound_is_not_idle(name: str) -> None:
    """A bound that no board comes within half of would say nothing: each is near somewhere on the grid."""
    nearest = min(bound / plate for _, each, bound, plate in RATIOS if each == name and plate > 0)
    assert nearest < 2.0, f"{name}: {nearest:.2f}"


def test_bounds_stop_where_the_board_turns_too_far() -> None:
    turning = [Bounds(case) for case, _ in ROWS if not Bounds(case).turns_little]
    assert turning
    for bound in turning:
        with pytest.raises(OutsideRulebook):
            bound.back_couple("S1")
        with pytest.raises(OutsideRulebook):
            bound.corner("S1")
    full = [Bounds(case) for case, _ in ROWS if not Bounds(case).turns_little_full]
    for bound in full:
        with pytest.raises(OutsideRulebook):
            bound.full_force()


# The front drop is an estimate, not a bound: how near it is.


@pytest.mark.parametrize(("case", "found"), ROWS)
def test_front_drop_on_firm_hinges(case: Case, found: dict[str, float]) -> None:
    """Within 4 % from four depths of length up; a shorter board drops up to 30 % more than the formula, but then under
    1/8 in. for a person of 250 lbf on the thinnest."""
    bound = Bounds(case)
    person, full = (from_si(d.value, "in") for d in (bound.drop_p, bound.drop_q))
    if case.length >= 4 * case.depth:
        assert person == pytest.approx(found["hinged_drop_p"], rel=0.04)
        assert full == pytest.approx(found["hinged_drop_q"], rel=0.04)
    else:
        assert 0.76 * found["hinged_drop_p"] < person < 1.0 * found["hinged_drop_p"]
        assert full >= 0.99 * found["hinged_drop_q"]


@pytest.mark.parametrize(("case", "found"), ROWS)
def test_front_bending_on_firm_hinges(case: Case, found: dict[str, float]) -> None:
    """Mean over the front 2 in.; the formula is for long boards, the strength check takes the strip instead."""
    if case.length >= 5 * case.depth:
        assert pounds(Bounds(case).twist.moment_of_point(P)) == pytest.approx(found["hinged_front_m_p"], rel=0.10)
