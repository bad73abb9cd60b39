"""Two boards on a back angle alone, worked by hand: a light shelf that holds its goods, a seat that must not be built.

Every figure was worked before any of our functions was written; each is met to its last printed digit.
"""

from __future__ import annotations

import pytest
from test_example_alcove_seat import printed
from worked_examples import (
    A36,
    ANGLE,
    ASH,
    CEDAR,
    LAG,
    LEG,
    NO_8,
    NO_10,
    PERSON,
    STEEL,
    TOE,
    K,
    cap,
    in_inch_pounds,
    in_inches,
    in_pounds,
    in_psi,
    inches,
    pounds,
    seat_screw,
    wall_screw,
)

from plumbrule.mechanics import across_grain, back_angle, front_drop, hold_down, leg, loads, slip, wall_leg
from plumbrule.mechanics.combined import combined
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.hold_down import BoardLoad
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.reading.units import to_si

ROW = inches(1.25)
Z = wall_leg.lever("up", ROW, LEG)


def share_of_spread(stations: list[float], length: float) -> Worked:
    """The largest share of a position of an even load on firm supports."""
    return back_angle.spread_reactions(1 / inches(length), [inches(x) for x in stations], inches(length)).greatest


# The shelf: western redcedar 48 x 8 x 1-1/4, No. 10 x 2-1/2 with a 1/2 in. head, storage 10 lb/ft.

SHELF_FRONT = STEEL + inches(1 / 16) + inches(8)
SHELF_WEIGHT = loads.board_weight(CEDAR.gravity, inches(48), inches(8), inches(1.25))
GOODS = BoardLoad("Q", pounds(40), STEEL + inches(1 / 16) + inches(8) * loads.STORAGE_PLACE, False)
SHELF = BoardLoad("W", SHELF_WEIGHT, STEEL + inches(1 / 16) + inches(4), False)
LEANING = BoardLoad("P", loads.lean_load(inches(50)), SHELF_FRONT, True)
SHELF_SCREW = wall_screw(NO_10, 2.5, 0.5, 0.5)
SHELF_CAP = cap(1.25, 0.5, 0.25)
SHARE = share_of_spread([8, 24, 40], 48)


def held_shelf(*more: BoardLoad) -> hold_down.HoldDown:
    return hold_down.hold_down([SHELF, GOODS, *more], toe=TOE, seat_row=ROW, screws=9)


def test_shelf_loads_and_places() -> None:
    assert in_inches(SHELF_FRONT) == printed("8.19")
    assert in_inches(SHELF_FRONT - si(TOE)) == printed("6.24")
    assert in_pounds(SHELF_WEIGHT) == printed("6.2")
    assert in_pounds(si(SHELF_WEIGHT) + si(GOODS.force)) == printed("46.2")


def test_shelf_screws() -> None:
    assert in_inches(SHELF_SCREW.bite) == printed("1.875")
    assert in_inches(SHELF_SCREW.thread) == printed("1.667")
    assert in_pounds(SHELF_SCREW.side) == printed("63.7")
    assert in_pounds(SHELF_SCREW.pull) == printed("159")
    assert in_pounds(seat_screw(CEDAR.gravity)[1]) == printed("39.9")
    assert in_pounds(SHELF_CAP) == printed("301")


def test_shelf_is_held_down() -> None:
    held = held_shelf()
    assert in_inch_pounds(hold_down.wall_moment([SHELF, GOODS], [1.0, 1.0])) == printed("247")
    assert (in_pounds(held.pull), in_pounds(held.contact)) == (printed("224"), printed("270"))
    assert in_pounds(held.pull) / 9 == printed("24.9")
    allowed = 0.9 * in_pounds(seat_screw(CEDAR.gravity)[1])
    assert (in_pounds(held.per_screw), allowed) == (printed("29.9"), printed("35.9"))
    assert in_pounds(held.per_screw) / allowed == printed("0.83")


def test_shelf_leg() -> None:
    bending = leg.leg_moment([SHELF, GOODS], K, inches(48), inches(48))
    lasting = leg.leg_capacity("lasting load", STEEL, A36.yield_stress)
    assert (in_pounds(bending), in_pounds(lasting)) == (printed("4.8"), printed("56.1"))
    assert si(bending) / si(lasting) == printed("0.09")
    others = [in_pounds(leg.leg_capacity(limit, STEEL, A36.yield_stress)) for limit in ("strength", "no lasting set")]
    assert others == [printed("84.2"), pytest.approx(93.8, abs=0.06)]  # 93.75, printed rounded up


def test_shelf_wall_screws() -> None:
    assert SHARE.value == printed("0.354")
    couple = hold_down.wall_moment([SHELF, GOODS], [SHARE.value, SHARE.value])
    pulled = wall_leg.pull(couple, Z)
    side = SHARE.value * (si(SHELF_WEIGHT) + si(GOODS.force))
    use = combined(
        side_force=side, pull=pulled, side_capacity=0.9 * si(SHELF_SCREW.side), pull_capacity=0.9 * si(SHELF_SCREW.pull)
    )
    assert (in_pounds(pulled), in_pounds(side)) == (printed("82"), printed("16.4"))
    assert (use.side_use.value, use.pull_use.value, use.use.value) == (
        printed("0.29"),
        printed("0.57"),
        printed("0.62"),
    )
    assert si(pulled) / si(SHELF_CAP) == printed("0.27")


def test_shelf_across_the_grain() -> None:
    moment = hold_down.across_at_toe([SHELF, GOODS], TOE, inches(48), inches(48))
    assert in_psi(6 * si(moment) / inches(1.25) ** 2) == printed("12.5")
    held = in_psi(6 * si(across_grain.cantilever_across_moment(GOODS.force, si(GOODS.out) - si(TOE), inches(48)))
                  / inches(1.25) ** 2)  # fmt: skip
    assert held < 12.5


def drop(
    held: hold_down.HoldDown, loaded: list[BoardLoad], *, front: float, leg_length: Given, positions: int,
    screw: object, head: float, species: float, seats: int,
) -> front_drop.FrontDrop:  # fmt: skip
    around = wall_leg.screw_lever("up", gauge=ROW, leg=LEG, to_toe=ANGLE.to_toe, head=inches(head), pitch=inches(16))
    fastener, thread = (NO_10, SHELF_SCREW.thread) if screw == "No. 10" else (LAG, wall_screw(LAG, 3, 0.5, 0.5).thread)
    turning = front_drop.position_rotation(
        pull_stiffness=slip.pull_stiffness(fastener.diameter, thread), lever=Z, leg_width=around.width,
        thickness=STEEL,
    )  # fmt: skip
    return front_drop.front_drop(
        wall_moment=hold_down.wall_moment(loaded, [1.0] * len(loaded)), front=front, rotation=turning,
        positions=positions, beyond=front - si(TOE), pull=held.pull, contact=held.contact, toe=TOE, seat_row=ROW,
        to_toe=K, thickness=STEEL, leg_length=leg_length,
        seat_pull_stiffness=slip.pull_stiffness(NO_8.diameter, seat_screw(species)[0]), seat_screws=seats,
    )  # fmt: skip


def test_shelf_drop() -> None:
    found = drop(
        held_shelf(), [SHELF, GOODS], front=SHELF_FRONT, leg_length=inches(48), positions=3, screw="No. 10",
        head=0.5, species=CEDAR.gravity, seats=9,
    )  # fmt: skip
    assert in_inches(found.drop) == printed("0.088")
    assert 2 * in_inches(found.drop) == printed("0.18")
    assert 2 * in_inches(SHELF_FRONT) / 144 == printed("0.114")


@pytest.mark.parametrize(
    ("at_end", "width", "eta", "top", "side_by_side"),
    [(False, 16.475, "0.67", "339", "2.3"), (True, 10.2375, "0.78", "383", "2.6")],
)
def test_leaning_on_the_shelf(at_end: bool, width: float, eta: str, top: str, side_by_side: str) -> None:
    held = held_shelf(LEANING)
    assert in_pounds(held.pull) == printed("669")
    assert in_pounds(held.per_screw) == printed("104")
    assert in_pounds(held.per_screw) / in_pounds(seat_screw(CEDAR.gravity)[1]) == printed("2.6")
    spread = hold_down.effective_width(SHELF_FRONT - si(TOE), inches(48), at_end=at_end, along_wall=True)
    assert in_inches(spread) == pytest.approx(width)
    share = wall_leg.station_share(3, inches(16), spread)
    assert share.value == printed(eta)
    couple = hold_down.wall_moment([SHELF, GOODS, LEANING], [SHARE.value, SHARE.value, share])
    pulled = wall_leg.pull(couple, Z)
    assert in_pounds(pulled) == printed(top)
    # The whole of the person hangs on one position: it is not shared sideways.
    side = SHARE.value * (si(SHELF_WEIGHT) + si(GOODS.force)) + si(LEANING.force)
    use = combined(side_force=side, pull=pulled, side_capacity=SHELF_SCREW.side, pull_capacity=SHELF_SCREW.pull)
    assert use.use.value == printed(side_by_side)
    assert use.pull_use.value == printed({"339": "2.1", "383": "2.4"}[top])


# The seat: white ash 60 x 15 x 1-3/4, 1/4 x 3 lags, six No. 8 seat screws.

SEAT_FRONT = STEEL + inches(1 / 16) + inches(15)
SEAT_WEIGHT = loads.board_weight(ASH.gravity, inches(60), inches(15), inches(1.75))
SEAT = BoardLoad("W", SEAT_WEIGHT, STEEL + inches(1 / 16) + inches(7.5), False)
SITTER = BoardLoad("P", PERSON, SEAT_FRONT, True)
SEAT_SCREW = wall_screw(LAG, 3, 0.5, 0.5)
A = SEAT_FRONT - si(TOE)


def held_seat() -> hold_down.HoldDown:
    return hold_down.hold_down([SITTER, SEAT], toe=TOE, seat_row=ROW, screws=6)


def seat_width(at_end: bool) -> Worked:
    return hold_down.effective_width(A, inches(60), at_end=at_end, along_wall=True)


def seat_couple() -> Worked:
    share = wall_leg.station_share(4, inches(16), seat_width(False))
    assert share.value == printed("0.50")
    return hold_down.wall_moment([SITTER, SEAT], [share, share_of_spread([6, 22, 38, 54], 60).value])


def test_seat_is_torn_off_its_screws() -> None:
    held = held_seat()
    assert (in_pounds(SEAT_WEIGHT), in_inches(A)) == (printed("38.2"), printed("13.24"))
    assert (in_pounds(held.pull), in_pounds(held.contact)) == (printed("5041"), printed("5329"))
    assert in_pounds(held.per_screw) == printed("1245")
    assert in_pounds(held.per_screw) / in_pounds(seat_screw(ASH.gravity)[1]) == printed("8.9")


def test_seat_leg() -> None:
    widths = [seat_width(False), seat_width(True)]
    assert [in_inches(w) for w in widths] == [printed("30.5"), printed("17.2")]
    bending = [in_pounds(leg.leg_moment([SITTER, SEAT], K, width, inches(60))) for width in widths]
    assert bending == [printed("126"), printed("219")]
    allowed = in_pounds(leg.leg_capacity("strength", STEEL, A36.yield_stress))
    assert [m / allowed for m in bending] == [printed("1.5"), printed("2.6")]


def test_seat_wall_screws() -> None:
    couple = seat_couple()
    assert in_inch_pounds(couple) == printed("1978")
    pulled = wall_leg.pull(couple, Z)
    assert in_pounds(pulled) == printed("1862")
    side = si(PERSON) + share_of_spread([6, 22, 38, 54], 60).value * si(SEAT_WEIGHT)
    assert in_pounds(side) == printed("260")
    use = combined(side_force=side, pull=pulled, side_capacity=SEAT_SCREW.side, pull_capacity=SEAT_SCREW.pull)
    assert (use.pull_use.value, use.side_use.value, use.use.value) == (printed("5.8"), printed("3.3"), printed("6.2"))
    assert si(pulled) / si(cap(1.25, 0.625, 0.3125)) == pytest.approx(6.0, abs=0.051)  # 5.95


def test_seat_with_the_wall_leg_down() -> None:
    lever = wall_leg.lever("down", ROW, LEG)
    assert in_inches(lever) == printed("0.56")
    pulled = wall_leg.pull(seat_couple(), lever)
    assert in_pounds(pulled) == printed("3516")
    assert si(pulled) / si(SEAT_SCREW.pull) == printed("11")


def test_seat_lining_gives_way_before_that() -> None:
    """Beyond the example: with these pulls half an inch of gypsum leaves no lever at all."""
    width = wall_leg.screw_lever("up", gauge=ROW, leg=LEG, to_toe=ANGLE.to_toe, head=inches(0.625), pitch=inches(16))
    with pytest.raises(OutsideRulebook, match="crushes"):
        wall_leg.on_lining(seat_couple(), "up", ROW, LEG, width.width)


def test_seat_twists_its_angle() -> None:
    torque = leg.torque_between(0.5, PERSON, SEAT_FRONT)
    allowed = leg.torque_capacity(A36.yield_stress, ANGLE.torsion, STEEL)
    assert (in_inch_pounds(torque), in_inch_pounds(allowed)) == (printed("949"), printed("303"))
    assert si(torque) / si(allowed) == printed("3.1")


def test_seat_across_the_grain() -> None:
    stresses = [
        in_psi(6 * si(hold_down.across_at_toe([SITTER], TOE, seat_width(end), inches(60))) / inches(1.75) ** 2)
        for end in (False, True)
    ]
    assert stresses == [printed("213"), printed("376")]


def test_seat_drop() -> None:
    found = drop(
        held_seat(), [SITTER, SEAT], front=SEAT_FRONT, leg_length=seat_width(False), positions=4, screw="lag",
        head=0.625, species=ASH.gravity, seats=6,
    )  # fmt: skip
    assert in_inches(found.drop) == printed("3.4")


# Figures that stand in the text beside the examples.


def test_overhang_of_a_person_on_six_screws() -> None:
    found = hold_down.greatest_overhang(PERSON, seat_screw(ASH.gravity)[1], toe=TOE, seat_row=ROW, screws=6)
    assert in_inches(found) == printed("1.6")


def test_an_even_load_lies_without_screws_up_to_one_to_one() -> None:
    """4 in. on a 2 in. leg, less the rounded toe: twice 1.95 in."""
    depth = 2 * si(TOE)
    assert in_inches(depth) == pytest.approx(3.9)
    at_limit = hold_down.beyond_toe([BoardLoad("W", 100.0, depth / 2, False)], TOE)
    assert at_limit.value == pytest.approx(0, abs=1e-9)
    assert hold_down.beyond_toe([BoardLoad("W", 100.0, depth / 2 + 1, False)], TOE).value > 0


def test_pull_of_a_person_at_the_front_is_many_times_the_person() -> None:
    """The lever back to the seat screws is 0.70 in.: 18.9 times the person."""
    held = hold_down.hold_down([SITTER], toe=TOE, seat_row=ROW, screws=6)
    assert in_inches(si(TOE) - ROW) == pytest.approx(0.70)
    assert held.pull.value / si(PERSON) == printed("18.9")


def test_seat_leg_under_the_edge_of_a_board_on_three_sides() -> None:
    assert in_pounds(leg.leg_under_edge(PERSON, TOE, K)) == printed("55")


def test_slip_of_screws() -> None:
    """lb/in through nothing and through half an inch of lining."""
    from worked_examples import SPF, TABLES

    rows = {
        TABLES.wood_screw(10): (20600, 2800), TABLES.wood_screw(14): (26300, 5200), LAG: (27100, 4170),
        TABLES.fastener("lag screw", inches(0.3125)): (33900, 7740),
    }  # fmt: skip
    for screw, (touching, through) in rows.items():
        for gap, expected in ((0.0, touching), (0.5, through)):
            found = slip.slip_stiffness(SPF, screw.diameter, screw.root_diameter, inches(gap)).value
            assert found / to_si(1, "lbf/in") == pytest.approx(expected, rel=0.003)
