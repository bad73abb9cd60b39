"""Boards: what cannot be is refused by name, and what no table covers gets a sentence and no number."""

from __future__ import annotations

import math
import re
from collections.abc import Callable

import pytest
from board_workings import ASH, TABLES, TEAK

from plumbrule.mechanics import (
    across_grain,
    allowable,
    board_bearing,
    board_wood,
    crack,
    lumber_factors,
    moisture,
    movement,
    restraint,
    shrinkage,
    simple_span,
    slack,
    stiffness,
)
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.plan import words

REFUSED: dict[str, Callable[[], object]] = {
    "a wood nobody knows": lambda: board_wood.solid_board(TABLES, "bog oak"),
    "no thickness": lambda: allowable.bending_allowable(ASH, 0.0, "unknown"),
    "thickness that is no number": lambda: allowable.size_factor(math.nan),
    "quality nobody listed": lambda: allowable.bending_allowable(ASH, 40.0, "lovely"),  # type: ignore[arg-type]
    "stress nobody listed": lambda: allowable.seasoning(ASH, "torsion"),  # type: ignore[arg-type]
    "bearing has no exclusion": lambda: allowable.exclusion(ASH, "bearing"),
    "seasoned past one": lambda: allowable.shear_allowable(ASH, 1.2),
    "seasoned to nothing": lambda: allowable.shear_allowable(ASH, 0.0),
    "room nobody listed": lambda: lumber_factors.lumber_wet_service("steam", "shear"),  # type: ignore[arg-type]
    "modulus in a room nobody listed": lambda: stiffness.board_modulus(ASH, "steam"),  # type: ignore[arg-type]
    "creep in a room nobody listed": lambda: stiffness.creep_factor("steam", stamped_dry=True),  # type: ignore[arg-type]
    "creep that heals": lambda: stiffness.long_term_drop(1.0, 1.0, 0.5),
    "drop upwards": lambda: stiffness.long_term_drop(-1.0, 1.0, 2.0),
    "no span": lambda: stiffness.seat_drop_limit(0.0),
    "no drop to feel": lambda: stiffness.feel(0.0),
    "board in the gap": lambda: board_bearing.bearing_left(25.0, 20.0, 5.0),
    "nothing to bear on": lambda: board_bearing.board_bearing_stress(100.0, 0.0),
    "crack deeper than the board": lambda: crack.cuts_through(45.0, 44.0),
    "parted board that twists": lambda: crack.twist_share(30.0, 44.0),
    "crack along the front edge": lambda: crack.cut_front_drop(1112.0, 900.0, 12000.0, 900.0, 0.0, 44.0),
    "crack the wrong way round": lambda: crack.screw_to_crack(0.0, 0.0, 50.0, 40.0, 0.0),
    "fill nobody listed": lambda: crack.fill_credit("chewing gum"),  # type: ignore[arg-type]
    "load on no length": lambda: across_grain.cantilever_across_moment(100.0, 100.0, 0.0),
    "screw through a thin board": lambda: restraint.deepest_bite(6.35),
    "change of less than nothing": lambda: restraint.restraint_stress(900.0, 0.003, -1.0),
    "humidity past full": lambda: moisture.equilibrium_moisture(20.0, 101.0),
    "scale nobody listed": lambda: moisture.equilibrium_moisture(20.0, 50.0, "K"),  # type: ignore[arg-type]
    "coldest warmer than warmest": lambda: moisture.moisture_band(25.0, 20.0, 30.0, 50.0),
    "driest damper than dampest": lambda: moisture.moisture_band(20.0, 25.0, 60.0, 50.0),
    "sawn nobody listed": lambda: movement.movement_coefficient(ASH, "rift"),  # type: ignore[arg-type]
    "no width": lambda: movement.movement(0.0, 0.003, 9.0, 8.0),
    "moisture that is no number": lambda: movement.movement(100.0, 0.003, math.nan, 8.0),
    "steel that cools by warming": lambda: movement.steel_growth(1000.0, 10.0, 20.0),
    "shrunk before it began": lambda: shrinkage.partial_shrinkage(7.8, 31.0),
    "face nobody listed": lambda: shrinkage.lumber_shrinkage(12.0, "length"),  # type: ignore[arg-type]
    "screw wider than its slot": lambda: slack.slack_given(4.0, 4.2, 0.0, countersunk=False),
    "drilled better than nothing": lambda: slack.slack_given(6.0, 4.2, -1.0, countersunk=False),
    "dry above damp": lambda: slack.slack_needed(10.0, 0.003, 12.0, 6.0, 8.0),
    "fixed behind the board": lambda: slack.back_gap_needed(2.0, 5.0, 0.003, 11.0, 9.0),
    "a load that lifts": lambda: simple_span.midspan_sag(-1.0, 1000.0, 10000.0, 1e5),
    "no section": lambda: simple_span.rectangle_modulus(0.0, 20.0),
}

OUTSIDE: dict[str, tuple[Callable[[], object], str]] = {
    "plywood": (lambda: board_wood.solid_board(TABLES, "plywood"), "plywood"),
    "MDF": (lambda: board_wood.solid_board(TABLES, "MDF"), "MDF"),
    "particleboard": (lambda: board_wood.solid_board(TABLES, "particleboard"), "particleboard"),
    "shear of eastern redcedar": (lambda: allowable.shear_allowable(TABLES.board("eastern redcedar")), "redcedar"),
    "bearing of teak": (lambda: allowable.bearing_allowable(TEAK), "teak"),
    "across of hard maple": (lambda: allowable.tension_across_allowable(TABLES.board("hard maple")), "hard maple"),
    "splitting of teak": (lambda: restraint.splitting_strength(TEAK), "teak"),
    "movement of tamarack": (lambda: movement.movement_coefficient(TABLES.board("tamarack")), "tamarack"),
    "movement of grand fir": (
        lambda: movement.board_movement(TABLES.board("grand fir"), "flat", 100.0, 9.0, 8.0), "grand fir"
    ),
    "air drier than the table": (lambda: moisture.equilibrium_moisture(20.0, 4.0), "5 and 95"),
    "air damper than the table": (lambda: moisture.equilibrium_moisture(20.0, 96.0), "5 and 95"),
    "air colder than the table": (lambda: moisture.equilibrium_moisture(-5.0, 50.0), "30 and 270"),
    "wetter than the coefficients": (lambda: movement.movement(100.0, 0.003, 16.0, 9.0), "6 to 14"),
    "fitted drier than the coefficients": (lambda: movement.movement(100.0, 0.003, 9.0, 4.0), "6 to 14"),
    "lumber wetter than its formula": (lambda: shrinkage.lumber_shrinkage(25.0, "width"), "8 to 19"),
}  # fmt: skip


@pytest.mark.parametrize("case", REFUSED)
def test_refused(case: str) -> None:
    with pytest.raises(NotPossible) as refused:
        REFUSED[case]()
    assert len(str(refused.value)) > 15


@pytest.mark.parametrize("case", OUTSIDE)
def test_outside(case: str) -> None:
    call, named = OUTSIDE[case]
    with pytest.raises(OutsideRulebook) as refused:
        call()
    reason = refused.value.reason
    assert named in reason
    assert reason.endswith(".") and reason.count(". ") == 0 and 40 < len(reason) < 260
    assert not re.search(r"\d+ ?(lbf|lb|N|psi|kN|MPa)\b", reason), "no strength may stand in it"


def test_the_sheets_are_the_species_without_a_row() -> None:
    assert set(board_wood.SHEETS) == set(words.BOARD_SPECIES) - set(TABLES.names("boards"))
    for name in TABLES.names("boards"):
        assert board_wood.solid_board(TABLES, name) == TABLES.board(name)


def test_what_is_good_is_not_refused() -> None:
    assert allowable.bending_allowable(TEAK, 40.0, "unknown").value > 0
    assert moisture.equilibrium_moisture(20.0, 5.0).value > 0
    assert moisture.equilibrium_moisture((30 - 32) / 1.8, 95.0).value < 25
    assert movement.movement(100.0, 0.003, 5.0, 15.0).value == pytest.approx(-3)
