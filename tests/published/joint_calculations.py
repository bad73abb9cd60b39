"""What each `calculation` word about joints, panels that move, and sealants means: printed inputs in, a worked value
out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from plumbrule.mechanics import box, leg, moisture, movement, panel_movement, sealant, tables
from plumbrule.mechanics.given import si
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import to_si

Inputs = Mapping[str, Any]
Found = Worked | float

TABLES = tables.load()


def inches(value: float) -> float:
    return to_si(value, "in")


def _strain(given: Inputs) -> Worked:
    """From freezing up by so many degrees: only the difference counts."""
    if "alpha_F" in given:
        return panel_movement.thermal_strain(to_si(given["alpha_F"], "per °F"), given["dT_F"] / 1.8, 0.0)
    return panel_movement.thermal_strain(given["alpha_C"], given["dT_C"], 0.0)


def _growth(given: Inputs) -> Worked:
    length = given["L_mm"] if "L_mm" in given else inches(given["L_in"])
    return panel_movement.growth(length, given["part"] if "part" in given else _strain(given))


def _movement(given: Inputs) -> float:
    """Growth by warmth, where there is any, and what else is printed in inches or as a part of the length."""
    found = si(_growth(given)) if "dT_F" in given else 0.0
    found += sum(inches(one) for one in given.get("others_in", ()))
    return found + (si(panel_movement.growth(inches(given["L_in"]), given["k"])) if "k" in given else 0.0)


def _width(given: Inputs) -> Worked:
    return sealant.joint_width(_movement(given), given["X"], inches(given.get("t_in", 0.0)))


def _widest(given: Inputs) -> float:
    """What a joint opens to when it moves by as much as its sealant needs that width for, found by halving."""
    wide = inches(given["w_in"])
    least, most = 0.0, wide
    for _ in range(60):
        middle = (least + most) / 2
        least, most = (middle, most) if si(sealant.joint_width(middle, given["X"])) < wide else (least, middle)
    return wide + least


def _sheet(given: Inputs) -> Worked:
    """A sheet that grows by the most its standard allows, over the range of the test."""
    swelling = panel_movement.humidity_swelling(given["growth"], given["RH_b"], given["RH_a"], "the standard")
    part = panel_movement.humidity_strain(swelling, given["RH_b"], given["RH_a"], "the standard")
    return panel_movement.growth(inches(given["L_in"]), part)


def _wood(given: Inputs) -> Worked:
    coefficient = movement.movement_coefficient(TABLES.board(given["species"]), given["sawn"])
    width = given["W_mm"] if "W_mm" in given else inches(given["W_in"])
    return movement.movement(width, coefficient, given["M"], given["M_i"])


def _bead(given: Inputs) -> float:
    """Length of bead from one cartridge: its volume over that of a millimetre of bead."""
    volume = to_si(given["oz"], "fl oz") if "oz" in given else to_si(given["ml"], "ml")
    wide, deep = (given["w_mm"], given["d_mm"]) if "w_mm" in given else (inches(given["w_in"]), inches(given["d_in"]))
    return volume / si(sealant.bead_volume(1.0, wide, deep))


def _fillet(given: Inputs) -> float:
    side = inches(given["a_in"])
    return to_si(given["oz"], "fl oz") / si(sealant.fillet_volume(1.0, side, side))


def _inner_radius(given: Inputs) -> float:
    """From the toe of the fillet to the face of the leg, as the table of angles has it."""
    row = TABLES.angle(inches(given["long_in"]), inches(given["short_in"]), inches(given["t_in"]))
    assert row is not None and row.to_toe is not None
    return row.to_toe - row.thickness


JOINT_CALCULATIONS: dict[str, Callable[[Inputs], Found]] = {
    "growth by warmth": _growth,
    "movement of a joint": _movement,
    "width of a joint": _width,
    "usual depth of a bead": lambda g: sealant.usual_depth(inches(g["w_in"])),
    "widest opening of a joint": _widest,
    "expansion per degree": lambda g: to_si(g["alpha_F"], "per °F"),
    "most that a sheet grows": _sheet,
    "movement of a wide board": _wood,
    "moisture in the air of a room": lambda g: moisture.equilibrium_moisture(to_si(g["T_F"], "°F"), g["RH"]),
    "fluid ounce": lambda g: to_si(g["oz"], "fl oz"),
    "bead from a cartridge": _bead,
    "fillet from a cartridge": _fillet,
    "inner radius of an angle": _inner_radius,
    "board off the fillet": lambda g: (
        -si(leg.radius_clash(inches(g["ease_in"]), inches(g["gap_in"]), inches(g["R_in"])))
    ),
    "depth of a bead": lambda g: sealant.bead_depth(
        inches(g["panel_in"]), inches(g["tape_in"]), inches(g["backer_in"])
    ),
    "movement at the end of a run": lambda g: panel_movement.edge_movement(
        inches(g["L_in"]), inches(g["l_in"]), _strain(g), g.get("joints", 0.0), inches(g.get("joint_in", 0.0))
    ),
    "movement as a part of the joint": lambda g: sealant.movement_share(inches(g["m_in"]), inches(g["w_in"])),
    # What an extender must bring forward: a rim that was flush lies behind by the whole panel.
    "rim behind a panel": lambda g: box.rim_behind(-inches(g["proud_in"]), inches(g["panel_in"]), 0.0),
    "a force in newtons": lambda g: to_si(g["lbf"], "lbf"),
    "a pressure": lambda g: to_si(g["psi"], "psi"),
}
