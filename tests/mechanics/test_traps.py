"""Shortcuts that look right and are unsafe. Each test states the shortcut's figure and fails for it."""

from __future__ import annotations

import inspect

import pytest
from workings import A36, LAG_14, LAG_38, NO_10, TABLES, UNMARKED, through_leg

from plumbrule.mechanics import bearing_wood, factors, head, lateral, one_screw, reduction, screw_length, withdrawal
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.reading.units import from_si, to_si


def pounds(value: float) -> float:
    return from_si(value, "lbf")


# Printed table values, or equations without a gap, for a screw through lining.


def test_lining_halves_a_screw_and_a_fatter_one_is_no_remedy() -> None:
    touching, through = (through_leg(LAG_14, gap).worked.value for gap in (0.0, 12.7))
    assert 2.0 <= touching / through <= 2.25  # worked by hand: 174 and 79 lbf
    assert pounds(through_leg(LAG_38, 12.7).worked.value) < 0.6 * pounds(touching)  # 103 against 174 lbf


# Blocking taken for a stud.


def test_a_weight_on_blocking_runs_across_the_grain() -> None:
    along, across = (through_leg(LAG_14, 0.0, angle).worked.value for angle in (0.0, 90.0))
    assert pounds(along) == pytest.approx(174, abs=0.5)  # worked by hand, NDS 12.3.3 and 12.3.1B
    assert pounds(across) == pytest.approx(122, abs=0.6)
    assert across < 0.71 * along


def test_a_stud_has_no_loaded_edge_for_a_thick_screw() -> None:
    """4 D of a 1/4 lag is 1 in.; a 1-1/2 in. stud has 3/4 in. beside its centre (NDS Table 12.5.1C)."""
    edge = 38.1 / 2
    with pytest.raises(OutsideRulebook, match="across the grain"):
        factors.loaded_edge(LAG_14.diameter, edge, 90)
    with pytest.raises(OutsideRulebook, match="across the grain"):
        one_screw.screw_side_strength(
            LAG_14, gravity=0.42, grain_angle=90, loaded_edge_distance=edge, penetration=60, gap=0,
            side_thickness=3.175, side_bearing=600,
        )  # fmt: skip
    assert factors.loaded_edge(LAG_14.diameter, edge, 0).value == 1.0
    assert factors.loaded_edge(NO_10.diameter, edge, 90).value == 1.0
    assert factors.loaded_edge(LAG_14.diameter, 25.4, 90).value == 1.0


# Lag tip, thread in the lining and unmeasured thread counted as grip.


def test_the_tip_of_a_lag_screw_holds_nothing() -> None:
    """1/4 x 3 over 1/8 steel and 1/2 lining: 2-3/8 in. of bite, 2 in. of thread, 5/32 of tip (NDS 12.2.1.2)."""
    bite = screw_length.penetration(76.2, 3.175, 12.7)
    tip = screw_length.tip_length(LAG_14)
    thread = screw_length.thread_by_rule("lag screw", LAG_14.diameter, 76.2)
    held = screw_length.thread_in_wood("lag screw", bite, thread, tip)
    assert from_si(held.value, "in") == pytest.approx(1.8438, abs=1e-4)
    assert held.value < si(thread) and held.value < bite.value - tip.value


def test_thread_in_the_lining_is_no_thread_in_wood() -> None:
    """A screw threaded over its whole length holds by its bite, not by its thread."""
    assert screw_length.thread_in_wood("wood screw", 30.0, 63.5, 9.6).value == 30.0
    assert screw_length.thread_in_wood("lag screw", 30.0, 63.5, 4.0).value == 26.0


def test_thread_that_was_not_measured_is_the_least_by_rule() -> None:
    assert from_si(si(screw_length.thread_by_rule("lag screw", 6.35, 76.2)), "in") == pytest.approx(2.0)  # Table L2
    assert from_si(si(screw_length.thread_by_rule("lag screw", 6.35, 101.6)), "in") == pytest.approx(2.5)
    assert from_si(si(screw_length.thread_by_rule("wood screw", 4.826, 63.5)), "in") == pytest.approx(5 / 3)


def test_half_the_tip_does_not_bear() -> None:
    assert screw_length.bearing_length(60.0, 4.0).value == 58.0


# Root diameter in withdrawal, nominal diameter in the yield modes.


def test_withdrawal_goes_by_the_nominal_diameter() -> None:
    """NDS Table 12.2A prints 173 lbf/in. for a 1/4 lag in G 0.42; by its root it would be 131."""
    found = withdrawal.withdrawal_per_length("lag screw", 0.42, LAG_14.diameter).value
    assert found == pytest.approx(173, abs=0.5)
    by_root = 1800 * 0.42**1.5 * from_si(LAG_14.root_diameter, "in") ** 0.75
    assert by_root < 0.77 * found


def test_the_yield_modes_go_by_the_root_diameter() -> None:
    def plain(size: float) -> float:
        return lateral.side_strength(
            diameter=NO_10.diameter, root_diameter=size, bending_yield=NO_10.bending_yield,
            main_bearing=bearing_wood.wood_bearing(0.50, NO_10.diameter, 0),
            side_bearing=bearing_wood.wood_bearing(0.50, NO_10.diameter, 0), main_length=9 * NO_10.diameter,
            side_length=12.7, gap=0.0, grain_angle=0,
        ).worked.value  # fmt: skip

    assert pounds(plain(NO_10.root_diameter)) == pytest.approx(90, abs=1)  # NDS Table 12L
    assert plain(NO_10.diameter) > 1.15 * plain(NO_10.root_diameter)


def test_thin_factor_goes_by_the_root_and_does_not_jump() -> None:
    assert reduction.thin_factor(NO_10.root_diameter).value == 2.2  # 10 x 0.190 + 0.5 would be 2.4
    assert reduction.thin_factor(LAG_14.root_diameter).value == pytest.approx(2.23)  # 10 x 0.250 + 0.5 would be 3.0
    before, after = (reduction.thin_factor(to_si(size, "in")).value for size in (0.17, 0.1701))
    assert after - before == pytest.approx(0.001)  # 10 D - 0.5 would drop from 2.2 to 1.2


def test_no_table_reduction_on_top_of_the_bearing_length() -> None:
    """At 5 D of bite the equations already know it: past the mode that governs, a deeper screw gains nothing."""
    shallow = through_leg(LAG_14, 12.7, bite=6 * LAG_14.diameter + LAG_14.tip)
    deep = through_leg(LAG_14, 12.7, bite=8 * LAG_14.diameter + LAG_14.tip)
    assert shallow.mode == deep.mode == "III_s"
    assert shallow.worked.value == pytest.approx(deep.worked.value)


def test_a_short_bite_is_not_interpolated() -> None:
    for screw, times in ((LAG_14, 4), (NO_10, 6)):
        enough = times * screw.diameter + (screw.tip if screw.kind == "lag screw" else 0)
        assert through_leg(screw, 0.0, bite=enough).worked.value > 0
        with pytest.raises(OutsideRulebook, match="least depth"):
            through_leg(screw, 0.0, bite=enough - 0.1)


# Pull-through of a flat head; the strength of A36 for steel that nobody marked.


@pytest.mark.parametrize("style", ["flat", "oval", "bugle", "trim"])
def test_pull_through_does_not_cover_a_countersunk_head(style: str) -> None:
    with pytest.raises(OutsideRulebook):
        head.pull_through(0.42, 9.0, 19.0, style)
    assert head.pull_through(0.42, 9.0, 19.0, "round").value > 0


def test_unmarked_steel_is_not_a36() -> None:
    named, unmarked = (si(bearing_wood.steel_bearing_of(steel)) for steel in (A36, UNMARKED))
    assert from_si(named, "psi") == pytest.approx(87000)  # NDS Table 12K note 2
    assert from_si(unmarked, "psi") == pytest.approx(61850)
    assert through_leg(LAG_14, 12.7, steel=UNMARKED).worked.value < through_leg(LAG_14, 12.7).worked.value
    weakest = min(TABLES.steel(name).yield_stress for name in TABLES.names("steels") if name[0] in "AS")
    assert UNMARKED.yield_stress == weakest


@pytest.mark.parametrize("name", ["6061-T6", "6063-T5", "304 stainless"])
def test_other_metals_get_no_steel_strength(name: str) -> None:
    with pytest.raises(OutsideRulebook):
        bearing_wood.steel_bearing_of(TABLES.steel(name))
    with pytest.raises(OutsideRulebook):
        head.pull_over(3.175, 12.0, TABLES.steel(name), eccentric=False)


# What is not known must not be readable as nothing.


def test_gap_shim_lining_and_play_have_no_default() -> None:
    """A caller who does not know a gap, a layer or a play cannot leave it out."""
    functions = (
        (lateral.side_strength, {"gap"}),
        (one_screw.screw_side_strength, {"gap", "loaded_edge_distance", "grain_angle"}),
        (screw_length.penetration, {"layers", "steel"}),
        (screw_length.thread_in_wood, {"thread", "tip"}),
    )
    for function, names in functions:
        parameters = inspect.signature(function).parameters
        for name in names:
            assert parameters[name].default is inspect.Parameter.empty, f"{function.__name__}: {name}"


def test_nothing_takes_none() -> None:
    with pytest.raises(TypeError):
        screw_length.penetration(76.2, 3.175, None)  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        through_leg(LAG_14, None)  # type: ignore[arg-type]


def test_only_a_pitch_that_was_not_found_may_default() -> None:
    """The one error that may be left out is the drift of studs that were found one by one."""
    from plumbrule.mechanics import tolerance

    defaults = {
        name
        for name, parameter in inspect.signature(tolerance.offset_at_face).parameters.items()
        if parameter.default is not inspect.Parameter.empty
    }
    assert defaults == {"drift"}
