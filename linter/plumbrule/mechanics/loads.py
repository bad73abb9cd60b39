"""How heavy each load is: weights of boards and steel, people, goods, a push and a person who drops onto the seat."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, not_negative, number, positive, steps
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.units import from_si, to_si

PERSON = to_si(250, "lbf")
SEAT_LINE_LOAD = to_si(120, "lbf/ft")
STORAGE_LINE_LOAD = to_si(25, "lbf/ft")
LEAN = to_si(50, "lbf")
PATCH = to_si(4, "in")
BETWEEN_PEOPLE = to_si(24, "in")
# Two people fit from here on; below 24 in a shelf is stepped on; above 60 in nobody leans on it.
TWO_FIT_FROM = to_si(48, "in")
STEP_BELOW = to_si(24, "in")
LEAN_BELOW = to_si(60, "in")
# Two thirds of the depth: books stand against the front as well as the back.
STORAGE_PLACE = 2 / 3
_DENSITY = "USDA Wood Handbook: 62.4 lb/ft³ of water, 12 % of moisture in the wood"
_SUDDEN = "energy balance of a load put on an elastic support"


def board_weight(gravity: Given, length: Given, depth: Given, thickness: Given) -> Worked:
    """Weight W of a board in lbf: 62.4 x 1.12 G pcf. `gravity` G at 12 % moisture, sizes in mm."""
    value = 62.4 * 1.12 * positive("the gravity", gravity) / 1728
    for name, size in (("the length", length), ("the depth", depth), ("the thickness", thickness)):
        value *= from_si(positive(name, size), "in")
    return Worked(
        "W_b", "weight of the board", "62.4 * 1.12 * G_12 * L * b * t / 1728",
        (number("G_12", gravity, ""), number("L", length, "in"), number("b", depth, "in"),
         number("t", thickness, "in")),
        value, "lbf", _DENSITY, published_units=True, steps=steps(gravity, length, depth, thickness),
    )  # fmt: skip


def steel_weight(area: Given, length: Given) -> Worked:
    """Weight W of `length` mm of steel of section `area` mm², in lbf: 490 lb/ft³."""
    value = 490 * from_si(positive("the area", area), "in²") * from_si(positive("the length", length), "in") / 1728
    return Worked(
        "W_s", "weight of the steel", "490 * A * L / 1728", (number("A", area, "in²"), number("L", length, "in")),
        value, "lbf", "490 lb/ft³ of steel, AISC Manual, from memory", published_units=True,
        steps=steps(area, length),
    )  # fmt: skip


def weight_of(mass: Given) -> Worked:
    """Weight in lbf of `mass` kg of finish, tile or anything else that stays: a pound weighs a pound."""
    value = from_si(not_negative("the mass", mass), "lb")
    return Worked(
        "W_m", "weight of what else stays on it", "m", (number("m", mass, "lb"),), value, "lbf", "statics",
        published_units=True, steps=steps(mass),
    )  # fmt: skip


def person_load(force: Given = PERSON) -> Worked:
    """P in N of one person, 250 lbf unless declared. Below 250 the benchmark is to be reported as well."""
    return _chosen("P", "one person", force, "N", "ADA Standards 2010, 903.6, as a benchmark")


def below_benchmark(force: Given) -> bool:
    """Whether a declared person, N, is lighter than the 250 lbf benchmark, so that both must be reported."""
    return positive("the person", force) < PERSON * (1 - 1e-9)


def seat_line_load(intensity: Given = SEAT_LINE_LOAD) -> Worked:
    """w in N/mm of a full seat, 120 lb/ft unless declared; it lies over the whole depth."""
    return _chosen(
        "w", "a full seat, per length", intensity, "N/mm", "120 lb/ft, ICC 300 for bleachers, as a benchmark"
    )


def seat_area_load(pressure: Given, depth: Given) -> Worked:
    """w in N/mm of a declared `pressure` in MPa (100 psf is 0.0048) over a `depth` in mm."""
    value = positive("the pressure", pressure) * positive("the depth", depth)
    return Worked(
        "w", "a full seat, per length", "p * b", (number("p", pressure, "MPa"), number("b", depth, "mm")), value,
        "N/mm", "100 psf of projected seat, ICC 300 for bleachers, as a benchmark", steps=steps(pressure, depth),
    )  # fmt: skip


def storage_line_load(intensity: Given = STORAGE_LINE_LOAD) -> Worked:
    """w in N/mm of stored goods, 25 lb/ft of books unless declared; centred at two thirds of the depth."""
    return _chosen("w", "stored goods, per length", intensity, "N/mm", "library weighing programme, 25 lb/ft of books")


def lean_load(top_height: Given, person: Given = PERSON, lean: Given = LEAN) -> Worked:
    """Force in N at the front edge of a shelf by the height of its top over the floor, mm.

    50 lbf (`lean`, N) under 60 in.; 250 lbf (`person`, N) under 24 in., where it is a step; 0 from 60 in. up.
    """
    height = positive("the height", top_height)
    if height < STEP_BELOW * (1 - 1e-9):
        return _chosen("P", "a person who steps on the shelf", person, "N", "a top under 24 in is a step")
    if height < LEAN_BELOW * (1 - 1e-9):
        return _chosen("P", "a person who leans on the shelf", lean, "N", "ASCE 7 in-fill load of 50 lbf, by analogy")
    return Worked("P", "nobody leans on a shelf this high", "0", (), 0.0, "N", "tops at 60 in and above")


def put_on_suddenly(force: Given) -> Worked:
    """Force in N of a load put on all at once from no height: twice its weight, for any elastic support."""
    return Worked(
        "P_i", "a person who drops onto the seat", "2 * P", (number("P", force, "N"),),
        2 * positive("the force", force), "N", _SUDDEN, steps=steps(force),
    )  # fmt: skip


def dropped(force: Given, height: Given, give: Given) -> Worked:
    """Force in N of a load on a support that gives `give` mm under its weight, dropped from no height: 2 P.

    Raises OutsideRulebook for any real height: the energy that a stiff support must take has no bound here.
    """
    if not_negative("the height of fall", height) > 0:
        raise outside("drop")
    positive("the give", give)
    return put_on_suddenly(force)


def _chosen(symbol: str, words: str, given: Given, unit: str, source: str) -> Worked:
    value = positive(words, given)
    return Worked(symbol, words, symbol + "_0", (number(symbol + "_0", given, unit),), value, unit, source,
                  steps=steps(given))  # fmt: skip
