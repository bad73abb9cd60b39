"""Panels that move and beads of sealant: which way things must go, what is refused, and what no table covers."""

from __future__ import annotations

import math
from collections.abc import Callable

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.language import rework
from plumbrule.mechanics import panel_movement, sealant
from plumbrule.mechanics.given import si
from plumbrule.mechanics.tables import load
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.plan import words

FEW = settings(max_examples=60, deadline=None)
sizes = st.floats(10.0, 10_000.0)
strains = st.floats(0.0, 0.01)
gaps = st.floats(0.5, 30.0)
more = st.floats(0.01, 100.0)
counts = st.integers(0, 20).map(float)
TABLES = load()


def not_above(smaller: float, larger: float) -> bool:
    return smaller <= larger + 1e-9 * max(abs(smaller), abs(larger), 1.0)


@FEW
@given(sizes, more, strains, counts, gaps)
def test_a_longer_run_never_moves_less(run: float, extra: float, strain: float, joints: float, joint: float) -> None:
    shorter, longer = (si(panel_movement.edge_movement(one, 5.0, strain, joints, joint)) for one in (run, run + extra))
    assert not_above(shorter, longer)


@FEW
@given(sizes, strains, counts, gaps, more)
def test_wider_joints_never_push_the_edge_further(run: float, strain: float, joints: float, joint: float, extra: float):
    tight, open_ = (si(panel_movement.edge_movement(run, 5.0, strain, joints, one)) for one in (joint, joint + extra))
    assert not_above(open_, tight)
    # However much the joints take, the piece at the edge moves by its own half.
    assert not_above(strain * 5.0 / 2, open_)


@FEW
@given(st.floats(1e-6, 3e-4), st.floats(-20.0, 40.0), st.floats(0.0, 40.0), st.floats(0.0, 10.0))
def test_a_wider_band_of_temperatures_never_moves_less(alpha: float, cold: float, span: float, extra: float) -> None:
    narrow, wide = (si(panel_movement.thermal_strain(alpha, cold + one, cold)) for one in (span, span + extra))
    assert not_above(narrow, wide)


@FEW
@given(st.floats(0.0, 10.0), st.sampled_from([7.5, 12.5, 25.0, 35.0, 50.0]), st.sampled_from([7.5, 12.5, 25.0, 50.0]))
def test_a_better_sealant_never_needs_a_wider_joint(moves: float, one: float, other: float) -> None:
    poor, good = sorted((one, other))
    assert not_above(si(sealant.joint_width(moves, good)), si(sealant.joint_width(moves, poor)))


@FEW
@given(gaps, more)
def test_the_joint_that_a_class_needs_is_the_one_in_which_its_share_is_moved(moves: float, _: float) -> None:
    width = sealant.joint_width(moves, 25.0)
    assert si(sealant.movement_share(moves, width)) == pytest.approx(25.0)


@FEW
@given(gaps, more)
def test_a_wider_joint_is_never_shallower_and_never_past_half_an_inch(width: float, extra: float) -> None:
    narrow, wide = (si(sealant.usual_depth(one)) for one in (width, width + extra))
    assert 6.35 <= narrow <= wide <= 12.7


@FEW
@given(st.floats(0.0, 5000.0), gaps, gaps, more)
def test_a_fillet_takes_half_of_a_square_bead_and_more_length_takes_more(long: float, a: float, b: float, extra: float):
    assert si(sealant.fillet_volume(long, a, b)) == pytest.approx(si(sealant.bead_volume(long, a, b)) / 2)
    assert not_above(si(sealant.bead_volume(long, a, b)), si(sealant.bead_volume(long + extra, a, b)))


REFUSED: dict[str, Callable[[], object]] = {
    "coldest warmer than warmest": lambda: panel_movement.thermal_strain(1e-4, 10.0, 20.0),
    "no expansion": lambda: panel_movement.thermal_strain(0.0, 20.0, 10.0),
    "a temperature that is no number": lambda: panel_movement.thermal_strain(1e-4, math.nan, 10.0),
    "driest damper than dampest": lambda: panel_movement.humidity_strain(1e-5, 30.0, 50.0, "sheet"),
    "a growth between one humidity": lambda: panel_movement.humidity_swelling(0.33, 50.0, 50.0, "sheet"),
    "dry end above the damp end": lambda: panel_movement.wood_strain(0.003, 7.0, 9.0, "wood"),
    "a panel longer than its run": lambda: panel_movement.edge_movement(100.0, 200.0, 0.001),
    "no run": lambda: panel_movement.edge_movement(0.0, 0.0, 0.001),
    "a part below nothing": lambda: panel_movement.growth(100.0, -0.001),
    "a sealant that promises nothing": lambda: sealant.joint_width(1.0, 0.0),
    "a movement below nothing": lambda: sealant.joint_width(-1.0, 25.0),
    "a closed joint": lambda: sealant.movement_share(1.0, 0.0),
    "a backer that fills the joint": lambda: sealant.bead_depth(9.0, 1.5, 10.5),
    "a bead without depth": lambda: sealant.bead_volume(1000.0, 6.0, 0.0),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_cannot_be_is_refused(case: str) -> None:
    with pytest.raises(NotPossible):
        REFUSED[case]()


@pytest.mark.parametrize(("damp", "dry"), [(16.0, 8.0), (12.0, 4.0)])
def test_wood_past_the_range_of_its_coefficient_gets_no_number(damp: float, dry: float) -> None:
    with pytest.raises(OutsideRulebook, match="6 to 14 %"):
        panel_movement.wood_strain(0.003, damp, dry, "wood")


def test_every_core_of_the_plan_has_a_row_and_the_figures_fit_what_it_drinks() -> None:
    assert TABLES.names("panels") == words.PANEL_CORES
    for name in words.PANEL_CORES:
        core = TABLES.panel_core(name)
        assert core.expansion is None or 1e-6 < core.expansion < 3e-4
        assert (core.drinks == "air") == (core.swelling is not None or core.grown is not None)


def test_foamed_plastics_grow_more_than_metal_and_metal_more_than_gypsum() -> None:
    grows = {name: TABLES.panel_core(name).expansion for name in ("foamed PVC", "aluminium composite", "gypsum")}
    assert grows["foamed PVC"] > grows["aluminium composite"] > grows["gypsum"]


@pytest.mark.parametrize(
    "line",
    [
        panel_movement.strain(panel_movement.thermal_strain(3e-5, 25.0, 15.0), 0.001),
        panel_movement.edge_movement(4000.0, 1200.0, 0.002, 3.0, 1.5),
        panel_movement.humidity_swelling(0.33, 90.0, 50.0, "standard"),
        sealant.joint_width(1.2, 25.0, 0.5),
        sealant.usual_depth(19.0),
        sealant.bead_depth(9.5, 1.6, 4.8),
        sealant.fillet_volume(1000.0, 6.0, 5.0),
        sealant.sloping_length(3000.0, 2400.0, 2380.0),
    ],
    ids=lambda line: line.symbol,
)
def test_a_line_works_out_again_from_its_own_numbers(line) -> None:
    assert rework(line.formula, {one.symbol: one.value for one in line.numbers}) == pytest.approx(line.value)
