"""One call of every public function of mechanics, at several places of its range: what the rework test works again."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields, is_dataclass
from typing import Any

from board_workings import BOARD_CALLS
from finishing_workings import FINISHING_CALLS
from hazard_workings import HAZARD_CALLS
from joint_workings import JOINT_CALLS
from load_workings import LOAD_CALLS
from panel_workings import PANEL_CALLS
from quantity_workings import QUANTITY_CALLS
from room_workings import ROOM_CALLS

from plumbrule.mechanics import (
    bearing_wood,
    blocking,
    clearance,
    combined,
    corner,
    countersink,
    edge,
    factors,
    head,
    hole,
    lateral,
    lining,
    one_screw,
    pilot,
    reduction,
    screw_length,
    section,
    tables,
    tolerance,
    withdrawal,
)
from plumbrule.mechanics.worked import Worked

TABLES = tables.load()
A36, UNMARKED = TABLES.steel("A36"), TABLES.steel("unmarked")
NO_8, NO_10, NO_14 = (TABLES.wood_screw(gauge) for gauge in (8, 10, 14))
LAG_14, LAG_516, LAG_38, LAG_12 = (TABLES.fastener("lag screw", 25.4 * size) for size in (0.25, 0.3125, 0.375, 0.5))
SCREWS = (NO_8, NO_10, NO_14, LAG_14, LAG_516, LAG_38, LAG_12)
PACKER = lining.Packer(12.7, covers_stud=True, fixed_to_stud=True, bearing=28.0)


def worked_values(result: Any) -> Iterator[Worked]:
    """Every `Worked` in a result, whatever small class holds it."""
    if isinstance(result, Worked):
        yield result
    elif isinstance(result, dict):
        yield from worked_values(list(result.values()))
    elif isinstance(result, list | tuple):
        for value in result:
            yield from worked_values(value)
    elif is_dataclass(result):
        for field in fields(result):
            yield from worked_values(getattr(result, field.name))


def through_leg(screw: Any, gap: float, angle: float = 0.0, steel: Any = A36, bite: float = 70.0) -> Any:
    return one_screw.screw_side_strength(
        screw, gravity=0.42, grain_angle=angle, loaded_edge_distance=120.0, penetration=bite, gap=gap,
        side_thickness=3.175, side_bearing=bearing_wood.steel_bearing_of(steel),
    )  # fmt: skip


def _chain() -> Worked:
    bite = screw_length.penetration(76.2, 3.175, 12.7)
    thread = screw_length.thread_by_rule("lag screw", 6.35, 76.2)
    pulled = one_screw.screw_withdrawal(LAG_14, gravity=0.42, penetration=bite, thread=thread)
    dry = factors.wet_service("damp", "withdrawal", 6.35)
    return withdrawal.pull_capacity(
        factors.adjusted(pulled, factors.load_duration("people"), dry), withdrawal.root_tension(4.3942)
    )


def _angle(upright: float, level: float, thickness: float) -> section.AngleSection:
    inches = 25.4
    row = TABLES.angle(upright * inches, level * inches, thickness * inches)
    return section.angle_section(upright * inches, level * inches, thickness * inches, 6.35, row)


CALLS: dict[str, Callable[[], Any]] = {
    "play": lambda: tolerance.play(7.9375, 6.35),
    "offset_at_face": lambda: tolerance.offset_at_face(-2.0, found=3.0, drilled=1.6, play=0.8, drift=12.7),
    "lean": lambda: tolerance.lean(60.0),
    "offset_at_tip": lambda: tolerance.offset_at_tip(
        tolerance.offset_at_face(0.0, found=3.0, drilled=1.6, play=0.8), tolerance.lean(60.0)
    ),
    "offset_rss": lambda: tolerance.offset_rss(1.0, found=3.0, drilled=1.6, play=0.8, lean=3.1),
    "cover_to_axis": lambda: tolerance.cover_to_axis(38.1, 25.0),
    "cover_at_tip": lambda: tolerance.cover_at_tip(38.1, 9.0, 6.35),
    "penetration": lambda: screw_length.penetration(50.8, 3.175, 60.0),
    "tip_length": lambda: [screw_length.tip_length(screw) for screw in SCREWS],
    "bearing_length": lambda: screw_length.bearing_length(60.0, 4.0),
    "full_penetration": lambda: [screw_length.full_penetration(k, 60.0, 4.0) for k in ("lag screw", "wood screw")],
    "least_penetration": lambda: [screw_length.least_penetration(k, 6.35) for k in ("lag screw", "wood screw")],
    "require_penetration": lambda: screw_length.require_penetration("lag screw", 6.35, 60.0, 4.0),
    "thread_by_rule": lambda: [
        screw_length.thread_by_rule(kind, 6.35, length)
        for kind in ("lag screw", "wood screw")
        for length in (10.0, 38.1, 76.2, 400.0)
    ],
    "thread_in_wood": lambda: [
        screw_length.thread_in_wood(kind, bite, 40.0, 4.0)
        for kind in ("lag screw", "wood screw")
        for bite in (-3.0, 2.0, 30.0, 60.0)
    ],
    "lining_gap": lambda: lining.lining_gap(12.7),
    "packed_gap": lambda: [lining.packed_gap(layers, PACKER) for layers in (12.7, 15.875)],
    "main_bearing": lambda: lining.main_bearing(bearing_wood.wood_bearing(0.42, 6.35, 0), PACKER),
    "require_gap": lambda: lining.require_gap(12.7, 60.0),
    "wood_bearing": lambda: [bearing_wood.wood_bearing(0.42, d, a) for d in (4.8, 6.35, 9.525) for a in (0, 37, 90)],
    "bearing_small": lambda: bearing_wood.bearing_small(0.36, 4.8),
    "bearing_parallel": lambda: bearing_wood.bearing_parallel(0.55),
    "bearing_perpendicular": lambda: bearing_wood.bearing_perpendicular(0.55, 7.9375),
    "bearing_at_angle": lambda: bearing_wood.bearing_at_angle(32.0, 24.0, 30.0),
    "steel_bearing": lambda: [bearing_wood.steel_bearing(400.0, f) for f in ("hot rolled", "cold formed")],
    "steel_bearing_of": lambda: [bearing_wood.steel_bearing_of(s) for s in (A36, UNMARKED)],
    "bending_yield": lambda: [bearing_wood.bending_yield(screw) for screw in SCREWS],
    "thin_factor": lambda: [reduction.thin_factor(d) for d in (3.0, 4.318, 4.4, 5.7)],
    "grain_factor": lambda: [reduction.grain_factor(a) for a in (0, 45, 90)],
    "reduction": lambda: [reduction.reduction(s.diameter, s.root_diameter, a) for s in SCREWS for a in (0, 90)],
    "side_strength": lambda: lateral.side_strength(
        diameter=4.826,
        root_diameter=3.8608,
        bending_yield=551.6,
        main_bearing=23.1,
        side_bearing=23.1,
        main_length=40.0,
        side_length=19.05,
        gap=3.0,
        grain_angle=0,
    ),
    "screw_side_strength": lambda: [
        through_leg(screw, gap, angle) for screw in SCREWS for gap in (0.0, 12.7, 31.75) for angle in (0, 30, 90)
    ],
    "withdrawal_per_length": lambda: [withdrawal.withdrawal_per_length(s.kind, 0.42, s.diameter) for s in SCREWS],
    "nail_withdrawal_per_length": lambda: withdrawal.nail_withdrawal_per_length(0.5, 3.33),
    "withdrawal": lambda: withdrawal.withdrawal("wood screw", 0.42, 4.826, 40.0),
    "root_tension": lambda: withdrawal.root_tension(4.3942),
    "pull_capacity": _chain,
    "screw_withdrawal": _chain,
    "load_duration": lambda: [factors.load_duration(c) for c in ("permanent", "people", "impact")],  # type: ignore[arg-type]
    "wet_service": lambda: factors.wet_service("fixed wet, dry later", "lateral", 6.35),
    "warm_service": lambda: [factors.warm_service(t, "dry") for t in (20.0, 45.0, 60.0)],
    "group": lambda: factors.group(6.35, 2),
    "geometry": lambda: [factors.geometry(d, s) for d, s in ((4.8, 5.0), (6.35, 20.0), (6.35, 60.0))],
    "loaded_edge": lambda: factors.loaded_edge(6.35, 40.0, 90),
    "end_grain": lambda: factors.end_grain("lag screw", "withdrawal"),
    "toe_screw": lambda: factors.toe_screw("lateral"),
    "adjusted": lambda: factors.adjusted(withdrawal.root_tension(4.0), factors.load_duration("permanent")),
    "combined": lambda: [
        combined.combined(side_force=v, pull=t, side_capacity=400.0, pull_capacity=900.0)
        for v, t in ((100.0, 300.0), (0.0, 300.0), (100.0, 0.0))
    ],
    "ring": lambda: head.ring(11.1125, 7.9375),
    "ring_worst": lambda: head.ring_worst(11.1125, 6.35, 7.9375),
    "pull_over": lambda: [head.pull_over(3.175, d, A36, eccentric=e) for d in (9.0, 16.0) for e in (True, False)],
    "pull_through": lambda: [head.pull_through(0.42, 9.2, t, "pan") for t in (10.0, 40.0)],
    "thread_pilot": lambda: [pilot.thread_pilot(s, g) for s in SCREWS for g in (0.36, 0.55, 0.67)],
    "shank_pilot": lambda: [pilot.shank_pilot(s, g) for s in SCREWS for g in (0.36, 0.67)],
    "placement": lambda: [
        edge.placement(d, load, side=side, prebored=bored)
        for d in (4.8, 6.35)
        for load in edge._THICK_MULTIPLES
        for side in ("steel", "wood")
        for bored in (True, False)
    ],  # type: ignore[arg-type]
    "end_shares": lambda: blocking.end_shares(1112.0, 100.0, 368.3),
    "twist": lambda: blocking.twist(-30000.0, 800.0, -12.0),
    "end_screw_force": lambda: [blocking.end_screw_force(800.0, 400.0, 30000.0, n, 50.8) for n in (2, 3)],
    "end_screw_strength": lambda: [
        blocking.end_screw_strength(
            s, length=88.9, stud_thickness=38.1, end_gap=gap, stud_gravity=0.42, block_gravity=0.42, slanting=slant
        )
        for s in (NO_10, LAG_14)
        for gap in (0.0, 3.0)
        for slant in (True, False)
    ],
    "sharp_angle": lambda: [section.sharp_angle(b, d, 4.0, 4.0) for b, d in ((50, 50), (76, 51), (51, 76), (90, 20))],
    "angle_section": lambda: [_angle(*size) for size in ((2, 2, 0.125), (3, 2, 0.25), (2, 3, 0.25), (1, 1, 0.125))],
    "mass": lambda: section.mass(_angle(2, 2, 0.125), 1500.0),
    "clear_distance": lambda: hole.clear_distance(12.7, 7.0),
    "clear_between": lambda: hole.clear_between(25.4, 7.0),
    "bearing_strength": lambda: hole.bearing_strength(6.35, 3.175, A36),
    "tear_out_strength": lambda: hole.tear_out_strength(9.0, 3.175, A36),
    "sheet_strength": lambda: hole.sheet_strength(6.35, 3.175, A36),
    "hole_strength": lambda: [hole.hole_strength(6.35, 3.175, clear, A36) for clear in (3.0, 30.0)],
    "net_area": lambda: hole.net_area(316.8, 7.0, 3.175, 2),
    "net_strip_modulus": lambda: hole.net_strip_modulus(60.0, 7.0, 3.175, 1),
    "heel_room": lambda: hole.heel_room(31.75, 9.525),
    "worst_distance": lambda: hole.worst_distance(9.0, 1.6),
    "cone_height": lambda: countersink.cone_height(8.43, 4.17, 82),
    "sink_depth": lambda: [
        countersink.sink_depth(8.43, 4.17, 82, height, cut)
        for height in (None, 2.0, 2.54)
        for cut in (None, countersink.cut_depth(9.5, 4.5, 82), 1.0)
    ],
    "cut_depth": lambda: countersink.cut_depth(9.5, 4.5, 82),
    "land": lambda: countersink.land(3.175, 3.4),
    "bearing_thickness": lambda: countersink.bearing_thickness(3.175, 2.54),
    "depth_share": lambda: countersink.depth_share(3.175, 2.54),
    "angle_mismatch": lambda: countersink.angle_mismatch(90, 82),
    "to_inside_mitre": lambda: corner.to_inside_mitre(30.0, 25.0, 88.0),
    "to_outside_mitre": lambda: corner.to_outside_mitre(30.0, 25.0, 50.8, 92.0),
    "mitre_runs_out": lambda: corner.mitre_runs_out(50.8, 92.0),
    "clear_of": lambda: [corner.clear_of(50.8, 6.0, 0.0, 50.8, angle) for angle in (80.0, 90.0, 135.0)],
    "run_into": lambda: corner.run_into(50.8, 20.0),
    "clearance_hole": lambda: clearance.clearance_hole(TABLES.clearance(6.35), "close"),  # type: ignore[arg-type]
    "wood_screw_rule_hole": lambda: clearance.wood_screw_rule_hole(8),
    "gauge_diameter": lambda: clearance.gauge_diameter(10),
    "hole_after_coat": lambda: clearance.hole_after_coat(7.14, 0.1),
    **BOARD_CALLS,
    **LOAD_CALLS,
    **ROOM_CALLS,
    **HAZARD_CALLS,
    **PANEL_CALLS,
    **JOINT_CALLS,
    **FINISHING_CALLS,
    **QUANTITY_CALLS,
}
