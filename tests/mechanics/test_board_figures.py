"""Single figures that boards are reckoned with, each against the place it is printed or the habit it comes from."""

from __future__ import annotations

import pytest
from board_workings import ASH, REDCEDAR, TEAK

from plumbrule.mechanics import (
    allowable,
    board_bearing,
    lumber_factors,
    moisture,
    movement,
    restraint,
    shrinkage,
    stiffness,
)
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.reading.units import from_si

INCH = 25.4


@pytest.mark.parametrize(
    ("stress", "factor"), [("bending", 0.85), ("shear", 0.97), ("bearing", 0.67), ("tension across", 0.67)]
)
def test_wet_service_of_boards(stress: str, factor: float) -> None:
    """AWC NDS Supplement, adjustments to Table 4A, from memory; tension across is taken as bearing, common practice."""
    assert lumber_factors.lumber_wet_service("damp", stress).value == factor  # type: ignore[arg-type]
    assert lumber_factors.lumber_wet_service("dry", stress).value == 1  # type: ignore[arg-type]


@pytest.mark.parametrize(("board", "printed"), [(ASH, 1.74), (REDCEDAR, 1.11), (TEAK, 1.55)])
def test_the_modulus_is_the_printed_average(board: object, printed: float) -> None:
    """Wood Handbook, Tables 5-3b and 5-5b, million psi; 0.9 of it in wet service by the NDS Supplement, from memory."""
    dry = stiffness.board_modulus(board)  # type: ignore[arg-type]
    assert from_si(dry.value, "psi") == pytest.approx(printed * 1e6)
    assert stiffness.board_modulus(board, "damp").value == pytest.approx(0.9 * dry.value)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("board", "share"), [(ASH, 0.080), (REDCEDAR, 0.055), (TEAK, 0.089)], ids=["ash", "redcedar", "not listed"]
)
def test_stiffness_across_the_grain(board: object, share: float) -> None:
    """Wood Handbook, Table 5-1, from memory: redwood's 0.089 is the highest of the table."""
    along = board.elastic_modulus  # type: ignore[attr-defined]
    assert restraint.across_stiffness(board).value == pytest.approx(share * along)  # type: ignore[arg-type]


def test_screws_in_slabs() -> None:
    """Common practice: seven diameters from an end, four from an edge, a quarter inch under the face."""
    assert restraint.slab_end_distance(4.0).value == 28
    assert restraint.slab_edge_distance(4.0).value == 16
    assert from_si(restraint.deepest_bite(1.75 * INCH).value, "in") == pytest.approx(1.5)


def test_bearing_on_the_tip_of_a_leg() -> None:
    """Common practice: half an inch of the leg over the person's 4 in and the board's thickness, 2.875 in²."""
    area = board_bearing.tip_bearing_area(4 * INCH, 1.75 * INCH)
    assert from_si(area.value, "in²") == pytest.approx(2.875)
    pressed = board_bearing.board_bearing_stress(250 * 4.4482216152605, area)
    assert from_si(pressed.value, "psi") == pytest.approx(250 / 2.875)
    assert pressed.value < allowable.bearing_allowable(ASH).value


PRINTED = {
    "°F": {"W": (330, 0.452, 0.00415), "K": (0.791, 0.000463, -0.000000844), "K_1": (6.34, 0.000775, -0.0000935),
           "K_2": (1.09, 0.0284, -0.0000904)},
    "°C": {"W": (349, 1.29, 0.0135), "K": (0.805, 0.000736, -0.00000273), "K_1": (6.27, -0.00938, -0.000303),
           "K_2": (1.91, 0.0407, -0.000293)},
}  # fmt: skip


@pytest.mark.parametrize("scale", PRINTED)
@pytest.mark.parametrize("degrees", [31.0, 70.0, 120.0])
def test_the_constants_of_the_moisture_equation(scale: str, degrees: float) -> None:
    """Wood Handbook, FPL-GTR-282, eq. 4-5 with its two sets of constants."""
    celsius = degrees if scale == "°C" else (degrees - 32) / 1.8
    steps = {step.symbol: step.value for step in moisture.equilibrium_moisture(celsius, 50.0, scale).steps}  # type: ignore[arg-type]
    for name, (constant, slope, square) in PRINTED[scale].items():
        assert steps[name] == pytest.approx(constant + slope * degrees + square * degrees**2, rel=1e-12)


@pytest.mark.parametrize("humidity", [5.0, 95.0])
@pytest.mark.parametrize("degrees", [30.0, 270.0])
def test_the_corners_of_the_moisture_table_are_inside(degrees: float, humidity: float) -> None:
    """Wood Handbook, Table 4-2: 30 to 270 °F, 5 to 95 %."""
    assert moisture.equilibrium_moisture((degrees - 32) / 1.8, humidity).value > 0
    beyond = {30.0: 29.9, 270.0: 270.1}[degrees]
    with pytest.raises(OutsideRulebook):
        moisture.equilibrium_moisture((beyond - 32) / 1.8, humidity)
    with pytest.raises(OutsideRulebook):
        moisture.equilibrium_moisture((degrees - 32) / 1.8, {5.0: 4.9, 95.0: 95.1}[humidity])


@pytest.mark.parametrize(("edge", "beyond"), [(8.0, 7.9), (19.0, 19.1)])
def test_the_range_of_lumber_shrinkage(edge: float, beyond: float) -> None:
    """FPL-RP-489: 8 to 19 %; its line gives 4.311 and 1.946 % there over the width."""
    found = shrinkage.lumber_shrinkage(edge, "width").value
    assert found == pytest.approx({8.0: 4.311, 19.0: 1.946}[edge], abs=0.0006)
    with pytest.raises(OutsideRulebook):
        shrinkage.lumber_shrinkage(beyond, "width")


@pytest.mark.parametrize(("edge", "beyond"), [(5.0, 4.9), (15.0, 15.1)])
def test_the_range_of_the_coefficients(edge: float, beyond: float) -> None:
    """Wood Handbook ch. 13: 6 to 14 %, and 1 % further for the doubt of the data."""
    assert movement.movement(100.0, 0.003, edge, edge).value == 0
    for moistures in ((beyond, edge), (edge, beyond)):
        with pytest.raises(OutsideRulebook):
            movement.movement(100.0, 0.003, *moistures)


def test_a_board_fitted_wet_moves_by_the_larger_of_both_formulas() -> None:
    """Ash from 18 to 6 %: 0.00274 x 12 = 3.29 % by the coefficient; 12/(3000/7.8 - 30 + 18) = 3.22 % by eq. 13-3."""
    found = movement.board_movement(ASH, "flat", 100.0, 6.0, 18.0).value
    assert found == pytest.approx(-3.288, abs=0.0006)
    # Redcedar from 40 to 6 % only shrinks from its 22 % on: 16/(100 x 22/5.0) = 3.64 % against 0.00234 x 16 = 3.74 %.
    assert movement.board_movement(REDCEDAR, "flat", 100.0, 6.0, 40.0).value == pytest.approx(-3.744, abs=0.0006)


def test_the_sag_that_the_eye_sees() -> None:
    """Common practice: 1/32 in. a foot, so 3/32 in. over 36 in."""
    assert from_si(stiffness.visible_sag(36 * INCH).value, "in") == pytest.approx(3 / 32)


def test_at_saturation_wood_has_just_not_shrunk() -> None:
    """Wood Handbook ch. 4, eq. 4-7, from memory: nothing at 30 %, all at oven-dry."""
    assert shrinkage.partial_shrinkage(7.8, 30.0).value == 0
    assert shrinkage.partial_shrinkage(7.8, 0.0).value == pytest.approx(7.8)
