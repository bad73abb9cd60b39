"""Rows of what is drilled and hung: holes, angles, brackets, cleats."""

from __future__ import annotations

from plumbrule.catalogue.fact import Fact, RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

_SUPPORT: tuple[Fact, ...] = (
    truth("carries_people", "a board on it carries people"),
    truth("public_room", "the room is a public one"),
    word("lining_behind", plan_words.LINING_BEHIND, "what is done with the lining behind it"),
    word("separation", plan_words.SEPARATIONS, "what the wall behind keeps apart"),
    truth("proof_loaded", "a proof load before use is among the steps"),
    count("screws_in_wall", "wall screws that are meant to hold it"),
    count("screws_per_station", "fewest wall screws at one stud or place"),
)

HOLE = RowType(
    "hole",
    "One hole in an angle, a bracket or a cleat.",
    (
        word("support", ("angle", "bracket", "cleat"), "what it is drilled in"),
        word("leg", ("wall", "seat"), "which leg it is drilled in"),
        truth("carries_people", "a board on this part carries people"),
        number("diameter", "mm", "diameter of the drill"),
        number("screw_diameter", "mm", "nominal diameter of the screw"),
        number("play", "mm", "hole diameter less screw diameter"),
        number("coat", "mm", "thickness that paint or powder takes off the hole, both sides together"),
        truth("slotted", "the hole is a slot"),
        number("slot", "mm", "length of the slot"),
        word("slot_runs", plan_words.SLOT_DIRECTIONS, "which way the slot runs"),
        number("steel", "mm", "thickness of the leg"),
        number("edge_distance", "mm", "from the centre of the hole to the toe edge of the leg, drilling at its worst"),
        number("end_distance", "mm", "from the centre of the hole to the nearer end, drilling at its worst"),
        word("end_cut", plan_words.ANGLE_ENDS, "how that nearer end is cut"),
        number("pitch", "mm", "to the nearest other hole in the same leg"),
        number("heel_room", "mm", "from the centre of the hole to where the fillet begins"),
        number("head_radius", "mm", "radius of the head or washer that lies on the steel"),
        word("head_style", plan_words.HEADS, "style of the screw's head"),
        truth("washer", "a washer lies under the head"),
        number("washer_thickness", "mm", "thickness of the washer"),
        number("washer_outside", "mm", "outside diameter of the washer"),
        number("bearing_width", "mm", "diameter of the head, or of the washer, that bears on the steel"),
        number("ring", "mm", "overlap of head or washer round the hole, screw centred"),
        number("ring_worst", "mm", "the same with the screw hard against one side of its hole"),
        truth("countersunk", "the hole is countersunk"),
        number("sink_angle", "°", "included angle of the countersink"),
        number("head_angle", "°", "included angle of the head"),
        number("sink_diameter", "mm", "diameter of the countersink at the face"),
        number("head_diameter", "mm", "diameter of the head"),
        number("sink_depth", "mm", "depth of the cone that the head fills"),
        number("land", "mm", "straight wall of the hole left under the cone"),
        number("head_stand", "mm", "how far head and washer stand proud of the leg"),
        number("board_gap", "mm", "gap between the leg and the back edge of the board"),
        truth("faces_board", "the head lies between the leg and the back edge of a board"),
        word("deburr", plan_words.DEBURR, "which faces are deburred"),
        number("bearing_strength", "N", "load at which the steel crushes at the hole, safety factor in"),
        number("tear_out_strength", "N", "load at which the hole tears out of the steel, safety factor in"),
    ),
)

ANGLE = RowType(
    "angle",
    "One length of steel angle on a wall.",
    (
        *_SUPPORT,
        number("length", "mm", "length of the angle"),
        number("wall_leg_size", "mm", "outside size of the wall leg"),
        number("seat_leg_size", "mm", "outside size of the seat leg"),
        number("thickness", "mm", "thickness of the steel"),
        word("wall_leg", ("up", "down"), "which way the wall leg points"),
        word("steel_grade", plan_words.STEELS, "grade of the steel"),
        number("yield_stress", "MPa", "yield stress that is counted on"),
        word("coating", plan_words.STEEL_COATINGS, "coating of the steel"),
        truth("tannin_wood", "a board of a tannin-rich species lies on it"),
        truth("damp", "the room or the wood gets damp enough to rust bare steel"),
        truth("is_return", "it carries the end of a board whose back lies on another angle"),
        count("stations", "places along the angle with a wall screw that can reach wood"),
        number("longest_run", "mm", "longest stretch between two neighbouring stations"),
        number("shortest_run", "mm", "shortest stretch between two neighbouring stations"),
        number("overhang", "mm", "longest stretch past the last station"),
        number("run_before_overhang", "mm", "stretch between the two stations next to that overhang"),
        number("corner_overlap", "mm", "length in which it runs into another angle at an inside corner"),
        truth("corner_cut", "one of the two angles that meet there is mitred or coped for it"),
        number("past_wall_end", "mm", "how far it runs past the end of its wall"),
        number("fillet", "mm", "radius inside the heel"),
        number("edge_relief", "mm", "back-edge radius of the board and its gap together, against the fillet"),
        truth("board_meets_fillet", "a board lies with its back edge in the inside of the heel"),
        number("section_area", "mm²", "cross-section of the angle"),
        number("second_moment", "mm⁴", "second moment of area for bending up and down"),
        number("mass", "kg", "mass of the whole length"),
    ),
)

BRACKET = RowType(
    "bracket",
    "One bracket at one place.",
    (
        *_SUPPORT,
        number("arm", "mm", "length of the arm"),
        number("upright", "mm", "length of the upright"),
        number("width", "mm", "width of the bracket along the wall"),
        number("thickness", "mm", "thickness of the steel"),
        truth("braced", "a brace runs from arm to upright"),
        word("steel_grade", plan_words.STEELS, "grade of the steel"),
        number("board_depth", "mm", "depth of the deepest board on it"),
    ),
)

CLEAT = RowType(
    "cleat",
    "A wooden ledger on a wall.",
    (
        *_SUPPORT,
        number("length", "mm", "length of the cleat"),
        number("width", "mm", "height of the cleat on the wall"),
        number("thickness", "mm", "thickness of the cleat, out of the wall"),
        word("species", plan_words.BOARD_SPECIES + plan_words.FRAMING_SPECIES, "species of the cleat"),
        count("stations", "places along the cleat with a wall screw that can reach wood"),
        number("longest_run", "mm", "longest stretch between two neighbouring stations"),
        number("overhang", "mm", "longest stretch past the last station"),
        number("run_before_overhang", "mm", "stretch between the two stations next to that overhang"),
    ),
)
