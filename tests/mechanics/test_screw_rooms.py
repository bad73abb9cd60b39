"""Where a screw may stand and what hole it wants: pilots, edges, blocks, packers, clearances, factors."""

from __future__ import annotations

from math import hypot

import pytest
from workings import LAG_14, LAG_38, NO_10, NO_14, TABLES

from plumbrule.mechanics import (
    bearing_wood,
    blocking,
    clearance,
    corner,
    countersink,
    edge,
    factors,
    head,
    hole,
    lateral,
    lining,
    pilot,
    screw_length,
)
from plumbrule.mechanics.given import si
from plumbrule.reading.units import from_si, to_si


@pytest.mark.parametrize(
    ("gravity", "low", "high"), [(0.36, 40, 70), (0.50, 40, 70), (0.55, 60, 75), (0.60, 60, 75), (0.67, 65, 85)]
)
def test_lag_lead_holes(gravity: float, low: float, high: float) -> None:
    """AWC NDS 2018, 12.1.4.2: 40 to 70, 60 to 75, 65 to 85 % of D (pairing with G from memory)."""
    found = pilot.thread_pilot(LAG_14, gravity)
    assert found.least.value == pytest.approx(LAG_14.diameter * low / 100)
    assert found.most.value == pytest.approx(LAG_14.diameter * high / 100)
    assert found.required
    shank = pilot.shank_pilot(LAG_14, gravity)
    assert shank.least.value == shank.most.value == LAG_14.diameter


def test_a_lag_that_is_only_pulled_out_of_light_wood_needs_no_hole() -> None:
    """AWC NDS 2018, 12.1.4.3: up to 3/8 in. and G 0.50."""
    assert not pilot.thread_pilot(LAG_38, 0.42, sideways=False).required
    assert pilot.thread_pilot(LAG_38, 0.55, sideways=False).required
    assert pilot.thread_pilot(TABLES.fastener("lag screw", 12.7), 0.42, sideways=False).required


@pytest.mark.parametrize(
    ("gravity", "thread", "shank"), [(0.42, "9/64", "11/64"), (0.60, "9/64", "11/64"), (0.67, "5/32", "3/16")]
)
def test_wood_screw_lead_holes(gravity: float, thread: str, shank: str) -> None:
    """AWC NDS 2018, 12.1.5.3 (from memory) for No. 10: the drill to the nearest 1/64 in."""
    from fractions import Fraction

    found = pilot.thread_pilot(NO_10, gravity)
    assert round(from_si(found.most.value, "in") * 64) == Fraction(thread) * 64
    low = pilot.shank_pilot(NO_10, gravity).least
    assert round(from_si(low.value, "in") * 64) == Fraction(shank) * 64


def test_softwood_hole_of_the_handbook() -> None:
    """Wood Handbook ch. 8, eq. 8-10: about 70 % of the root in softwood, 90 % in hardwood."""
    assert pilot.thread_pilot(NO_10, 0.42).least.value == pytest.approx(0.70 * NO_10.root_diameter)
    assert pilot.thread_pilot(NO_10, 0.67).least.value == pytest.approx(0.90 * NO_10.root_diameter)
    assert not pilot.thread_pilot(NO_10, 0.42, sideways=False).required


@pytest.mark.parametrize(
    ("load", "edge_of", "loaded", "end", "floor"),
    [
        ("along the grain, away from the end", 1.5, 1.5, 4, 2),
        ("along the grain, towards the end", 1.5, 1.5, 7, 3.5),
        ("across the grain", 1.5, 4, 4, 2),
    ],
)
def test_distances_of_thick_screws(load: str, edge_of: float, loaded: float, end: float, floor: float) -> None:
    """AWC NDS 2018, Tables 12.5.1A to 12.5.1C, softwood."""
    found = edge.placement(LAG_14.diameter, load, side="steel", prebored=True)  # type: ignore[arg-type]
    multiples = [w.value / LAG_14.diameter for w in (found.edge, found.loaded_edge, found.end, found.end_floor)]
    assert multiples == pytest.approx([edge_of, loaded, end, floor])
    assert (found.in_row.value, found.in_row_floor.value) == pytest.approx((25.4, 19.05))
    assert not found.advisory


@pytest.mark.parametrize(
    ("side", "bored", "end", "row"), [("steel", False, 10, 10), ("steel", True, 5, 5), ("wood", False, 15, 15),
                                      ("wood", True, 10, 10)],
)  # fmt: skip
def test_distances_of_thin_screws_are_advice(side: str, bored: bool, end: float, row: float) -> None:
    """AWC NDS 2018 Commentary, Table C12.1.5.7."""
    load = "along the grain, towards the end"
    found = edge.placement(NO_10.diameter, load, side=side, prebored=bored)  # type: ignore[arg-type]
    assert [w.value / NO_10.diameter for w in (found.edge, found.end, found.in_row)] == pytest.approx([2.5, end, row])
    assert found.advisory


def test_a_screw_on_the_centre_line_of_a_stud() -> None:
    """3/4 in. is 3.9 D of a No. 10 and 3.1 D of a No. 14; 2.5 D of a No. 10 is lost 0.275 in. off (arithmetic)."""
    half = 19.05
    assert half / NO_10.diameter == pytest.approx(3.9, abs=0.06)
    assert half / NO_14.diameter == pytest.approx(3.1, abs=0.05)
    least = edge.placement(NO_10.diameter, "across the grain", side="steel", prebored=True).edge.value
    assert from_si(half - least, "in") == pytest.approx(0.275, abs=1e-6)


def test_a_block_shares_by_the_lever_rule() -> None:
    """Worked by hand: 250 lbf at 3-5/8 in. of a 14-1/2 in. block."""
    found = blocking.end_shares(to_si(250, "lbf"), to_si(3.625, "in"), to_si(14.5, "in"))
    assert from_si(found.left.value, "lbf") == pytest.approx(187.5)
    assert from_si(found.right.value, "lbf") == pytest.approx(62.5)


def test_end_screws_take_pull_and_twist_in_shear() -> None:
    """Statics: two screws get half the force and M/pitch; three get a third and M/(2 pitch) at the outer ones."""
    two = blocking.end_screw_force(800.0, 400.0, 30000.0, 2, 50.0)
    assert two.value == pytest.approx(hypot(400, 200 + 30000 / 50))
    three = blocking.end_screw_force(900.0, 300.0, 30000.0, 3, 50.0)
    assert three.value == pytest.approx(hypot(300, 100 + 30000 / 100))
    assert blocking.twist(30000.0, 800.0, 12.0).value == 30000 + 9600


def test_end_grain_takes_a_third_off_the_side_strength() -> None:
    """AWC NDS 2018, 12.5.2.2: 0.67; 12.5.4: 0.83 for a slanting screw. The reference is that of two woods in contact
    across the grain, proven on Table 12L."""
    size = {"length": 88.9, "stud_thickness": 38.1, "stud_gravity": 0.42, "block_gravity": 0.42}
    plain = blocking.end_screw_strength(NO_14, end_gap=0.0, **size)
    slant = blocking.end_screw_strength(NO_14, end_gap=0.0, slanting=True, **size)
    loose = blocking.end_screw_strength(NO_14, end_gap=6.0, **size)
    bite = screw_length.penetration(88.9, 38.1, 0.0)
    wood = bearing_wood.wood_bearing(0.42, NO_14.diameter, 90)
    reference = lateral.side_strength(
        diameter=NO_14.diameter, root_diameter=NO_14.root_diameter, bending_yield=NO_14.bending_yield,
        main_bearing=wood, side_bearing=wood, main_length=screw_length.bearing_length(bite, NO_14.tip),
        side_length=38.1, gap=0.0, grain_angle=90,
    )  # fmt: skip
    assert plain.worked.value == pytest.approx(0.67 * reference.worked.value)
    assert slant.worked.value == pytest.approx(0.83 * plain.worked.value)
    assert loose.worked.value < 0.8 * plain.worked.value


def test_a_fixed_packer_bears_with_the_weaker_wood() -> None:
    packer = lining.Packer(12.7, covers_stud=True, fixed_to_stud=True, bearing=20.0)
    assert lining.packed_gap(12.7, packer).value == 0
    assert lining.packed_gap(15.875, packer).value == pytest.approx(3.175)
    assert lining.main_bearing(32.4, packer).value == 20.0
    assert lining.main_bearing(15.0, packer).value == 15.0


@pytest.mark.parametrize(
    ("factor", "value"),
    [
        (factors.load_duration("permanent"), 0.9),
        (factors.load_duration("people"), 1.0),
        (factors.load_duration("impact"), 1.6),
        (factors.wet_service("dry", "lateral", 6.35), 1.0),
        (factors.wet_service("damp", "lateral", 6.35), 0.7),
        (factors.wet_service("fixed wet, dry later", "lateral", 6.35), 0.4),
        (factors.wet_service("fixed wet, dry later", "lateral", 6.2), 0.7),
        (factors.wet_service("fixed wet, dry later", "withdrawal", 6.35), 1.0),
        (factors.warm_service(37.7, "dry"), 1.0),
        (factors.warm_service(45.0, "dry"), 0.8),
        (factors.warm_service(45.0, "damp"), 0.7),
        (factors.warm_service(60.0, "dry"), 0.7),
        (factors.warm_service(60.0, "damp"), 0.5),
        (factors.end_grain("wood screw", "withdrawal"), 0.0),
        (factors.end_grain("lag screw", "withdrawal"), 0.75),
        (factors.end_grain("wood screw", "lateral"), 0.67),
        (factors.toe_screw("lateral"), 0.83),
        (factors.toe_screw("withdrawal"), 0.67),
        (factors.geometry(6.35, 19.05), 0.75),
        (factors.geometry(6.35, 25.4), 1.0),
        (factors.geometry(6.35, 90.0), 1.0),
        (factors.geometry(4.8, 10.0), 1.0),
    ],
    ids=lambda item: getattr(item, "words", item),
)
def test_factors_as_printed(factor: object, value: float) -> None:
    """AWC NDS 2018, Tables 2.3.2, 11.3.3, 11.3.4, clauses 12.2, 12.5."""
    assert si(factor) == pytest.approx(value)  # type: ignore[arg-type]


def test_ring_and_washer() -> None:
    """A 5/8 washer 0.065 in. thick counts in tension; the thin No. 10 one of 0.049 does not (0.05 is asked for)."""
    assert head.washer_counts(15.875, to_si(0.065, "in"))
    assert not head.washer_counts(12.7, to_si(0.049, "in"))
    assert not head.washer_counts(7.0, to_si(0.065, "in"))


def test_holes_that_must_slip_first() -> None:
    """ANSI/AISC 360-22 J3.3: a hole more than 1/16 in. over carries no shear until it slips."""
    assert hole.bears_at_once(6.35 + 1.5875, 6.35)
    assert not hole.bears_at_once(8.0, 6.35)


def test_net_sections() -> None:
    """ANSI/AISC 360-22 B4.3b takes 1/16 in. more than the hole; bending takes the hole. Worked by hand."""
    assert hole.net_area(300.0, 7.1375, 3.175, 1).value == pytest.approx(300.0 - 8.725 * 3.175)
    assert hole.net_strip_modulus(60.0, 7.0, 3.0, 2).value == pytest.approx((60 - 14) * 9 / 6)


def test_countersink_through_the_leg_is_below_zero() -> None:
    """No. 12 in 1/8 in. steel: the head is 0.132 in. high (ASME B18.6.3), so the sink comes out at the back."""
    flat = TABLES.flat_head(to_si(0.216, "in"))
    assert flat is not None
    depth = countersink.sink_depth(flat.head_most, flat.diameter, 82, flat.height)
    assert from_si(depth.value, "in") == pytest.approx(0.132)
    assert countersink.land(3.175, depth).value < 0
    assert countersink.angle_mismatch(90, 82).value == 8
    assert countersink.depth_share(3.175, depth).value > 1


def test_clearance_after_powder_coat() -> None:
    """Three to eight thousandths a face (common practice): a close 1/4 hole is tight after 0.008."""
    row = TABLES.clearance(6.35)
    assert row is not None
    left = clearance.hole_after_coat(row.close, to_si(0.008, "in"))
    assert left.value == pytest.approx(to_si(0.250, "in"))


def test_a_mitre_at_a_square_corner() -> None:
    """Plane geometry: at 90 degrees the cut runs at 45, so a hole as far from the end as from the heel lies on it."""
    assert corner.to_inside_mitre(30.0, 30.0, 90).value == pytest.approx(0, abs=1e-9)
    assert corner.to_inside_mitre(50.0, 30.0, 90).value == pytest.approx(20 / 2**0.5)
    assert corner.to_outside_mitre(20.8, 30.0, 50.8, 90).value == pytest.approx(0, abs=1e-9)
    assert corner.mitre_runs_out(50.8, 90).value == pytest.approx(50.8)
    for hole_y in (10.0, 25.0, 40.0):
        assert corner.to_inside_mitre(20.0, hole_y, 90).value < corner.to_inside_mitre(20.0, hole_y - 5, 90).value


def test_two_angles_at_a_square_corner_must_differ_by_the_leg() -> None:
    clear = corner.clear_of(50.8, 6.0, 0.0, 50.8, 90)
    assert clear.value == pytest.approx(50.8)
    assert corner.run_into(clear, 0.0).value == pytest.approx(50.8)
    assert corner.run_into(clear, 60.0).value < 0
    assert corner.clear_of(50.8, 6.0, 0.0, 50.8, 80).value > clear.value
