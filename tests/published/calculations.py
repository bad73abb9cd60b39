"""What each `calculation` word of the data files means: printed inputs in, a worked value or an SI number out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from plumbrule.mechanics import (
    bearing_wood,
    clearance,
    combined,
    countersink,
    head,
    hole,
    lateral,
    one_screw,
    reduction,
    screw_length,
    section,
    tables,
    tolerance,
    withdrawal,
)
from plumbrule.mechanics.table_rows import Fastener, Steel
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

Inputs = Mapping[str, Any]
Found = Worked | float

TABLES = tables.load()
POUND_FOOT_DENSITY = to_si(490, "lb/ft³")


def inches(value: float) -> float:
    return to_si(value, "in")


def _screw(given: Inputs) -> Fastener:
    if "gauge" in given:
        return TABLES.wood_screw(given["gauge"])
    return TABLES.fastener(given.get("kind", "lag screw"), inches(given["D_in"]))


def _full_depth(screw: Fastener) -> float:
    """The bite at which the printed tables give their full value: 8 D and the tip, or 10 D with it."""
    return 8 * screw.diameter + screw.tip if screw.kind == "lag screw" else 10 * screw.diameter


def _steel_plate(given: Inputs) -> Worked:
    screw = _screw(given)
    return one_screw.screw_side_strength(
        screw,
        gravity=given["G"],
        grain_angle=given.get("grain_angle", 0),
        loaded_edge_distance=inches(4),
        penetration=_full_depth(screw),
        gap=0.0,
        side_thickness=inches(given["plate_in"]),
        side_bearing=to_si(61850, "psi"),
    ).worked


def _wood_side(given: Inputs) -> Worked:
    screw, angle = _screw(given), given.get("grain_angle", 0)
    return one_screw.screw_side_strength(
        screw,
        gravity=given["G"],
        grain_angle=angle,
        loaded_edge_distance=inches(4),
        penetration=_full_depth(screw),
        gap=0.0,
        side_thickness=inches(given["side_in"]),
        side_bearing=bearing_wood.wood_bearing(given["G"], screw.diameter, angle),
    ).worked


def _smooth(given: Inputs, main: float, bearing: Found, angle: float, bending_yield: float) -> Worked:
    diameter = inches(given["D_in"])
    return lateral.side_strength(
        diameter=diameter,
        root_diameter=diameter,
        bending_yield=bending_yield,
        main_bearing=bearing,
        side_bearing=bearing,
        main_length=main,
        side_length=inches(given["side_in"]),
        gap=0.0,
        grain_angle=angle,
    ).worked


def _nail(given: Inputs) -> Worked:
    diameter = inches(given["D_in"])
    bearing = bearing_wood.wood_bearing(given["G"], diameter, 0)
    return _smooth(given, 9 * diameter, bearing, 0, TABLES.bending_yield(diameter))


def _nail_unrounded(given: Inputs) -> Worked:
    bearing = to_si(16600 * given["G"] ** 1.84, "psi")
    return _smooth(given, inches(given["main_in"]), bearing, 0, to_si(90000, "psi"))


def _bolt(given: Inputs) -> Worked:
    bearing = bearing_wood.wood_bearing(given["G"], inches(given["D_in"]), given["grain_angle"])
    return _smooth(given, inches(given["main_in"]), bearing, given["grain_angle"], to_si(45000, "psi"))


def _dowel_mode(given: Inputs) -> Worked:
    """One mode of a half-inch bolt, F_yb 45,000, members of 1-1/2 in. and 4,800 psi, a gap between them."""
    return lateral.side_strength(
        diameter=inches(0.5),
        root_diameter=inches(0.5),
        bending_yield=to_si(45000, "psi"),
        main_bearing=to_si(4800, "psi"),
        side_bearing=to_si(4800, "psi"),
        main_length=inches(1.5),
        side_length=inches(1.5),
        gap=inches(given["gap_in"]),
        grain_angle=0,
    ).modes[given["mode"]]


def _angle_leg(given: Inputs) -> lateral.SideStrength:
    """A screw through a leg and lining into a stud. Without a length it bites ten diameters (a lag: eight and tip)."""
    screw = _screw(given)
    steel = bearing_wood.steel_bearing_of(TABLES.steel(given["steel"]))
    leg, gap = inches(given["leg_in"]), inches(given["gap_in"])
    if "length_in" in given:
        bite: Found = screw_length.penetration(inches(given["length_in"]), leg, inches(given["layers_in"]))
    else:
        bite = _full_depth(screw)
    return one_screw.screw_side_strength(
        screw,
        gravity=given["G"],
        grain_angle=given.get("grain_angle", 0),
        loaded_edge_distance=inches(4),
        penetration=bite,
        gap=gap,
        side_thickness=leg,
        side_bearing=steel,
    )


def _leg_step(given: Inputs) -> Worked:
    """A line of that calculation, by its symbol."""
    lines = {line.symbol: line for line in _angle_leg(given).worked.lines()}
    return lines[given["symbol"]]


def _withdrawal_of_screw(given: Inputs) -> Worked:
    screw = _screw(given)
    length = inches(given["length_in"])
    bite = screw_length.penetration(length, inches(given.get("leg_in", 0)), inches(given["layers_in"]))
    thread = screw_length.thread_by_rule(screw.kind, screw.diameter, length)
    if given.get("part") == "thread":
        return screw_length.thread_in_wood(screw.kind, bite, thread, screw_length.tip_length(screw))
    return one_screw.screw_withdrawal(screw, gravity=given["G"], penetration=bite, thread=thread)


def _combined(given: Inputs) -> Worked:
    found = combined.combined(
        side_force=to_si(given["V_lbf"], "lbf"),
        pull=to_si(given["T_lbf"], "lbf"),
        side_capacity=to_si(given["Z_lbf"], "lbf"),
        pull_capacity=to_si(given["W_lbf"], "lbf"),
    )
    return {"both": found.use, "side": found.side_use, "pull": found.pull_use}[given["use"]]


def _tolerance(given: Inputs) -> Worked:
    found, drilled, play = (inches(given[key]) for key in ("found_in", "drilled_in", "play_in"))
    run = tolerance.lean(inches(given["bite_in"]))
    face = tolerance.offset_at_face(0.0, found=found, drilled=drilled, play=play)
    tip = tolerance.offset_at_tip(face, run)
    width = inches(1.5)
    return {
        "face": face,
        "tip": tip,
        "cover at the face": tolerance.cover_to_axis(width, face),
        "cover at the tip": tolerance.cover_to_axis(width, tip),
        "independent": tolerance.offset_rss(0.0, found=found, drilled=drilled, play=play, lean=run),
    }[given["part"]]


def _sharp_angle(given: Inputs) -> Found:
    found = section.sharp_angle(*(inches(given[key]) for key in ("upright_in", "level_in", "thickness_in")), 0.0)
    value: Worked = getattr(found, given["property"])
    return value


def _foot_of_angle(given: Inputs) -> Worked:
    found = section.sharp_angle(*(inches(given[key]) for key in ("upright_in", "level_in", "thickness_in")), 0.0)
    return section.mass(found, to_si(1, "ft"), POUND_FOOT_DENSITY)


def _clearance(diameter: float, fit: str) -> Worked:
    row = TABLES.clearance(diameter)
    assert row is not None
    return clearance.clearance_hole(row, fit)  # type: ignore[arg-type]


def _steel_of(given: Inputs) -> Steel:
    if "steel" in given:
        return TABLES.steel(given["steel"])
    ultimate = to_si(given["F_u_ksi"], "ksi")
    return Steel("as printed", ultimate, ultimate, "carbon steel", "hot rolled", "the example", "published")


def _nominal(worked: Worked, given: Inputs) -> float:
    """Without our factor of 2.00, times the example's own."""
    return worked.value * 2 * float(given["times"])


def _bearing_nominal(given: Inputs) -> float:
    size = inches(given["D_in"]), inches(given["thickness_in"])
    return _nominal(hole.bearing_strength(*size, _steel_of(given)), given)


def _tear_between(given: Inputs) -> float:
    clear = hole.clear_between(inches(given["pitch_in"]), inches(given["hole_in"]))
    return _nominal(hole.tear_out_strength(clear, inches(given["thickness_in"]), _steel_of(given)), given)


def _tear_at_edge(given: Inputs) -> float:
    clear = hole.clear_distance(inches(given["edge_in"]), inches(given["hole_in"]))
    return _nominal(hole.tear_out_strength(clear, inches(given["thickness_in"]), _steel_of(given)), given)


def _hole_strength(given: Inputs) -> Worked:
    found = hole.hole_strength(
        inches(given["D_in"]), inches(given["thickness_in"]), inches(given["clear_in"]), _steel_of(given)
    )
    return {"crushing": found.crushing, "tear-out": found.tear_out, "sheet": found.sheet}[given["part"]]


def _pull_over(given: Inputs) -> Worked:
    return head.pull_over(
        inches(given["thickness_in"]), inches(given["head_in"]), _steel_of(given), eccentric=given["eccentric"]
    )


def _pull_over_coefficient(given: Inputs) -> float:
    sheet, wide, steel = inches(given["thickness_in"]), inches(given["head_in"]), TABLES.steel("A36")
    return head.pull_over(sheet, wide, steel, eccentric=False).value / (sheet * wide * steel.ultimate)


def _pull_through_coefficient(given: Inputs) -> float:
    """W_H / (pi D_H² G²) at a side member past 2.5 heads, in psi of the formula."""
    from math import pi

    wide = given["head_in"]
    found = head.pull_through(0.5, inches(wide), inches(given["side_in"]), "round")
    return to_si(found.value / (pi * wide**2 * 0.5**2), "psi")


def _land(given: Inputs) -> Worked:
    flat = TABLES.flat_head(inches(given["D_in"]))
    assert flat is not None
    depth = countersink.sink_depth(flat.head_most, flat.diameter, flat.angle, flat.height)
    return countersink.land(inches(given["thickness_in"]), depth)


def _lost_to_countersink(given: Inputs) -> float:
    thickness = given["thickness_mm"]
    return float(thickness - countersink.bearing_thickness(thickness, given["depth_mm"]).value)


def _bolt_edge(given: Inputs) -> float:
    row = TABLES.bolt_edge(inches(given["D_in"]))
    assert row is not None
    return row.edge


def _head_of(given: Inputs) -> float:
    wide = TABLES.wood_screw(given["gauge"]).head
    flat = TABLES.flat_head(TABLES.wood_screw(given["gauge"]).diameter)
    assert wide is not None and flat is not None
    return wide


CALCULATIONS: dict[str, Callable[[Inputs], Found]] = {
    "withdrawal per length": lambda g: withdrawal.withdrawal_per_length(g["kind"], g["G"], inches(g["D_in"])),
    "nail withdrawal per length": lambda g: withdrawal.nail_withdrawal_per_length(g["G"], inches(g["D_in"])),
    "nail withdrawal": lambda g: (
        to_si(withdrawal.nail_withdrawal_per_length(g["G"], inches(g["D_in"])).value, "lbf/in") * inches(g["thread_in"])
    ),
    "withdrawal of a screw": _withdrawal_of_screw,
    "lag screw, steel plate": _steel_plate,
    "wood screw, steel plate": _steel_plate,
    "wood screw, wood side": _wood_side,
    "lag screw, wood side": _wood_side,
    "nail, wood side": _nail,
    "nail, unrounded bearing": _nail_unrounded,
    "bolt, wood side": _bolt,
    "dowel mode with a gap": _dowel_mode,
    "screw through a leg": lambda g: _angle_leg(g).worked,
    "line of a screw through a leg": _leg_step,
    "bearing strength of wood": lambda g: bearing_wood.wood_bearing(g["G"], inches(g["D_in"]), g["grain_angle"]),
    "bearing strength of steel": lambda g: bearing_wood.steel_bearing_of(TABLES.steel(g["steel"])),
    "thin factor": lambda g: reduction.thin_factor(inches(g["D_r_in"])),
    "root tension": lambda g: withdrawal.root_tension(_screw(g).root_diameter),
    "use of a screw": _combined,
    "stud offset": _tolerance,
    "sharp angle": _sharp_angle,
    "weight of a foot of angle": _foot_of_angle,
    "clearance hole": lambda g: _clearance(inches(g["D_in"]), g["fit"]),
    "metric clearance hole": lambda g: _clearance(g["D_mm"], g["fit"]),
    "bolt edge distance": _bolt_edge,
    "wood screw rule hole": lambda g: clearance.wood_screw_rule_hole(g["gauge"]),
    "gauge diameter": lambda g: clearance.gauge_diameter(g["gauge"]),
    "cone height": lambda g: countersink.cone_height(inches(g["head_in"]), inches(g["D_in"]), g["angle"]),
    "land under a countersink": _land,
    "thickness lost to a countersink": _lost_to_countersink,
    "clear distance": lambda g: hole.clear_distance(inches(g["edge_in"]), inches(g["hole_in"])),
    "bearing at a hole, nominal": _bearing_nominal,
    "tear-out between holes, nominal": _tear_between,
    "tear-out at an edge, nominal": _tear_at_edge,
    "strength of a hole": _hole_strength,
    "ring": lambda g: head.ring_worst(inches(g["head_in"]), inches(g["D_in"]), inches(g["hole_in"])),
    "pull-over": _pull_over,
    "pull-over by thickness, head and stress": _pull_over_coefficient,
    "pull-through by head and gravity": _pull_through_coefficient,
    "head of a wood screw": _head_of,
}
