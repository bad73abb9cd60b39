"""What each `calculation` word about boards and moisture means: printed inputs in, a worked value out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from plumbrule.mechanics import (
    across_grain,
    allowable,
    board_bearing,
    moisture,
    movement,
    restraint,
    shrinkage,
    simple_span,
    slack,
    stiffness,
    tables,
)
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

Inputs = Mapping[str, Any]
Found = Worked | float

TABLES = tables.load()


def inches(value: float) -> float:
    return to_si(value, "in")


def _span_where(stressed: Callable[[float], float], limit: Callable[[float], float]) -> float:
    """The span in mm at which what grows with it reaches its limit, by halving."""
    short, long = 1.0, 1e5
    for _ in range(80):
        middle = (short + long) / 2
        short, long = (middle, long) if stressed(middle) < limit(middle) else (short, middle)
    return short


def _joist(given: Inputs) -> float:
    """A 2x8 joist of spruce on two walls: the span at which the named thing reaches its limit."""
    wide, deep = inches(given["b_in"]), inches(given["d_in"])
    load, part = to_si(given["w_plf"], "lbf/ft"), given["part"]
    section = simple_span.rectangle_second_moment(wide, deep)
    if part == "sag":
        modulus = to_si(given["E_psi"], "psi")
        return _span_where(
            lambda span: simple_span.even_sag(load, span, modulus, section).value, lambda span: span / given["share"]
        )
    limit = to_si(given["limit_psi"], "psi")
    if part == "bending":
        resisting = simple_span.rectangle_modulus(wide, deep)
        return _span_where(lambda span: simple_span.even_bending_stress(load, span, resisting).value, lambda _: limit)
    if part == "shear":
        return _span_where(
            lambda span: simple_span.rectangle_shear_stress(load * span / 2, wide, deep).value, lambda _: limit
        )
    rest = board_bearing.bearing_area(inches(given["bearing_in"]), wide)
    return _span_where(lambda span: board_bearing.board_bearing_stress(load * span / 2, rest).value, lambda _: limit)


def _longest_shelf(given: Inputs) -> float:
    """The span in mm at which a shelf of a foot's depth sags by its limit under an even load, without creep."""
    depth, thickness = inches(12), inches(given["t_in"])
    load, modulus = to_si(given["q_psf"], "lbf/ft²") * depth, to_si(given["E_psi"], "psi")
    section = simple_span.rectangle_second_moment(depth, thickness)
    return _span_where(
        lambda span: simple_span.even_sag(load, span, modulus, section).value,
        lambda span: stiffness.shelf_sag_limit(span).value,
    )


def _allowable(given: Inputs) -> Worked:
    board, season = TABLES.board(given["species"]), given.get("K_s")
    stress = given["stress"]
    if stress == "bending":
        return allowable.bending_allowable(board, inches(given["t_in"]), given["quality"], season)
    makes = {"shear": allowable.shear_allowable, "bearing": allowable.bearing_allowable,
             "tension across": allowable.tension_across_allowable}  # fmt: skip
    return makes[stress](board, season)


def _band(given: Inputs) -> Worked:
    low, high = (to_si(given[key], "°F") for key in ("coldest_F", "warmest_F"))
    band = moisture.moisture_band(low, high, given["driest"], given["dampest"])
    found: Worked = getattr(band, given["part"])
    return found


def _coefficient(given: Inputs) -> Worked:
    return movement.movement_coefficient(TABLES.board(given["species"]))


def _missing_slack(given: Inputs) -> Worked:
    need = slack.slack_needed(
        inches(given["y_in"] - given["fixed_in"]), _coefficient(given), given["dry"], given["damp"], given["M_i"]
    )
    have = slack.slack_given(
        inches(given["hole_in"]), inches(given["D_in"]), inches(given["drilled_in"]), countersunk=given["countersunk"]
    )
    return {"needed": need, "given": have, "missing": slack.shortfall(need, have)}[given["part"]]


def _restrained(given: Inputs) -> Worked:
    board = TABLES.board(given["species"])
    return restraint.restraint_stress(
        restraint.across_stiffness(board), movement.movement_coefficient(board), given["change"]
    )


def _per_per_cent(given: Inputs) -> float:
    """C by the shrinkage formula about 10 %: what 1 % of moisture adds to a width of 1 mm."""
    return shrinkage.movement_by_shrinkage(1.0, given["S_T"], 11.0, 10.0, given["FSP"]).value


BOARD_CALCULATIONS: dict[str, Callable[[Inputs], Found]] = {
    "moisture of wood": lambda g: moisture.equilibrium_moisture(to_si(g["T_F"], "°F"), g["RH_pct"]),
    "moisture of wood, Celsius": lambda g: moisture.equilibrium_moisture(g["T_C"], g["RH_pct"], "°C"),
    "moisture band": _band,
    "shrinkage of lumber": lambda g: shrinkage.lumber_shrinkage(g["M"], g["face"]),
    "partial shrinkage": lambda g: shrinkage.partial_shrinkage(g["S_0"], g["M"]),
    "movement of a width": lambda g: movement.movement(g["D_mm"], g["C"], g["M"], g["M_i"]),
    "movement of a board": lambda g: movement.board_movement(
        TABLES.board(g["species"]), "flat", inches(g["D_in"]), g["M"], g["M_i"]
    ),
    "movement along the grain": lambda g: movement.along_grain_movement(inches(g["L_in"]), g["M"], g["M_i"]),
    "growth of steel": lambda g: movement.steel_growth(
        inches(g["L_in"]), to_si(g["warmest_F"], "°F"), to_si(g["coldest_F"], "°F")
    ),
    "coefficient by shrinkage": _per_per_cent,
    "coefficient of movement": _coefficient,
    "slack at a screw": _missing_slack,
    "stress of a held board": _restrained,
    "splitting strength": lambda g: restraint.splitting_strength(TABLES.board(g["species"])),
    "joist span": _joist,
    "longest shelf": _longest_shelf,
    "modulus of a rectangle": lambda g: simple_span.rectangle_modulus(inches(g["b_in"]), inches(g["d_in"])),
    "second moment of a rectangle": lambda g: simple_span.rectangle_second_moment(inches(g["b_in"]), inches(g["d_in"])),
    "moment of a rectangle": lambda g: (
        to_si(g["F_psi"], "psi") * simple_span.rectangle_modulus(inches(g["b_in"]), inches(g["d_in"])).value
    ),
    "allowable stress of a board": _allowable,
    "seasoning of a board": lambda g: allowable.seasoning(TABLES.board(g["species"]), g["stress"]),
    "strength ratio share": lambda g: (
        allowable.strength_ratio("unknown").value / allowable.strength_ratio("sound front").value
    ),
    "seat drop limit": lambda g: stiffness.seat_drop_limit(inches(g["L_in"])),
    "full seat drop limit": lambda g: stiffness.full_seat_drop_limit(inches(g["L_in"])),
    "cantilever sag limit": lambda g: stiffness.shelf_sag_limit(stiffness.cantilever_span(inches(g["front_in"]))),
    "drop after years": lambda g: stiffness.long_term_drop(
        inches(g["lasting_in"]), inches(g["passing_in"]), stiffness.creep_factor("dry", stamped_dry=False)
    ),
    "feel": lambda g: stiffness.feel(inches(g["drop_in"])),
    "feel per root inch": lambda g: stiffness.feel(inches(1)).value,
    "feel per root millimetre": lambda g: stiffness.feel(1).value,
    "moment across the grain": lambda g: across_grain.cantilever_across_moment(
        to_si(g["P_lbf"], "lbf"), inches(g["a_in"]), inches(g["L_e_in"])
    ),
}
