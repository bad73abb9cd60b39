"""The rows of the shipped tables as typed values in SI, each with where it is from and on what footing."""

from __future__ import annotations

from typing import Literal, NamedTuple

Basis = Literal["published", "common practice", "from memory"]
FastenerKind = Literal["wood screw", "lag screw"]
Forming = Literal["hot rolled", "cold formed", "extruded", "unknown"]


class Framing(NamedTuple):
    """A species group of framing lumber. `gravity` is oven-dry, for the fastener formulas only. Moduli and stresses
    (MPa, No. 2, before any factor) are None where the table has none: they are then not known, not zero."""

    name: str
    gravity: float
    elastic_modulus: float | None
    bending: float | None
    shear: float | None
    bearing_across: float | None
    source: str
    basis: Basis


class Board(NamedTuple):
    """A board species: averages of clear wood at 12 % moisture (MPa), which are no design values. None: not known.

    `rupture_green`, `shear_green` and `compression_across_green` are those of unseasoned wood. `swell_*` is the change
    of a width per % of moisture, `shrink_*` the whole shrinkage from green to oven-dry in %, `saturation` the moisture
    in % at which it begins. `from_memory` names the columns of the row that rest on memory only.
    """

    name: str
    kind: Literal["softwood", "hardwood"]
    gravity: float
    rupture: float | None
    elastic_modulus: float | None
    compression_along: float | None
    compression_across: float | None
    shear: float | None
    tension_across: float | None
    rupture_green: float | None
    shear_green: float | None
    compression_across_green: float | None
    group: str | None
    shrink_radial: float | None
    shrink_tangential: float | None
    saturation: float
    swell_radial: float | None
    swell_tangential: float | None
    from_memory: tuple[str, ...]
    source: str
    basis: Basis


class Fastener(NamedTuple):
    """A lag or wood screw of a published size. Lengths in mm, `bending_yield` in MPa.

    `tip` is the tapered part: tabulated for a lag screw, two diameters for a wood screw. `head` is the across-flats
    width of a hex lag or the round head diameter of the wood screw table; None where no figure is published.
    """

    kind: FastenerKind
    size: str
    diameter: float
    root_diameter: float
    tip: float
    bending_yield: float
    head: float | None
    head_height: float | None
    source: str
    basis: Basis


class Steel(NamedTuple):
    """A metal: least yield and tensile stress, MPa. Only `carbon steel` has published screw and hole strengths here."""

    name: str
    yield_stress: float
    ultimate: float
    metal: Literal["carbon steel", "stainless steel", "aluminium"]
    formed: Forming
    source: str
    basis: Basis


class Dressed(NamedTuple):
    """Dry dressed lumber: thickness and width, mm."""

    name: str
    thickness: float
    width: float
    source: str
    basis: Basis


class AngleRow(NamedTuple):
    """A published hot-rolled angle, mm based. x runs along the short leg; `to_toe` is from the back of a leg to the
    toe of its fillet. Properties beyond size and weight are None for bar sizes, which are published by weight only."""

    name: str
    long_leg: float
    short_leg: float
    thickness: float
    mass_per_length: float
    area: float | None
    second_moment_x: float | None
    modulus_x: float | None
    centroid_y: float | None
    second_moment_y: float | None
    modulus_y: float | None
    centroid_x: float | None
    least_radius: float | None
    plastic_modulus_x: float | None
    torsion_constant: float | None
    to_toe: float | None
    source: str
    basis: Basis


class Clearance(NamedTuple):
    """Clearance holes for one size, mm."""

    size: str
    diameter: float
    close: float
    normal: float
    loose: float
    source: str
    basis: Basis


class Washer(NamedTuple):
    """A plain washer, mm: basic size, with the thickest and thinnest that the standard lets through."""

    size: str
    inside: float
    outside: float
    thickness: float
    thickest: float
    thinnest: float
    source: str
    basis: Basis


class FlatHead(NamedTuple):
    """A countersunk head: diameters over the sharp edge, height, mm; included angle in degrees."""

    size: str
    diameter: float
    head_most: float
    head_least: float | None
    height: float
    angle: float
    source: str
    basis: Basis


class BoltEdge(NamedTuple):
    """Least edge distance for a bolt, centre of a standard hole, mm."""

    size: str
    diameter: float
    edge: float
    source: str
    basis: Basis


class PanelCore(NamedTuple):
    """What a panel is made of. `expansion` per °C, `swelling` the part of a length that 1 % of humidity adds; both None
    where nothing is published. `grown` is a growth in % between two humidities in %, for a core that is published so.
    `drinks`: nothing, air (figures over humidity), grain (by the moisture of the wood), unknown."""

    name: str
    expansion: float | None
    drinks: Literal["nothing", "air", "grain", "unknown"]
    swelling: float | None
    grown: tuple[float, float, float] | None
    source: str
    moisture_source: str
    basis: Basis
