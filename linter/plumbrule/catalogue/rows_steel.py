"""Rows of what is drilled and hung: holes, angles, brackets, cleats."""

from __future__ import annotations

from plumbrule.catalogue.fact import Fact, RowType, count, number, truth, word, words
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

_STEEL: tuple[Fact, ...] = (
    number("thickness", "mm", "thickness of the steel"),
    word("steel_grade", plan_words.STEELS, "grade of the steel"),
    number("yield_stress", "MPa", "yield stress that is counted on"),
    word("coating", plan_words.STEEL_COATINGS, "coating of the steel"),
    words("woods", plan_words.BOARD_SPECIES, "species of the boards that lie on it"),
    number("dampest", "%", "highest relative humidity of the room over a year"),
    truth("damp_wall", "the wall it is fixed to is damp or mouldy"),
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
        word("coating", plan_words.STEEL_COATINGS, "coating of the steel, which also coats the hole"),
        truth("slotted", "the hole is a slot"),
        number("slot", "mm", "length of the slot over all"),
        word("slot_runs", plan_words.SLOT_DIRECTIONS, "which way the slot runs"),
        number("steel", "mm", "thickness of the leg; of a cleat, what the screw passes"),
        number(
            "edge_distance",
            "mm",
            "from the hole's centre, of a slot from the centre of its nearer end, to the toe "
            "edge of the leg (of a cleat to its nearer edge), drilling at its worst",
        ),
        number("end_distance", "mm", "the same to the nearer end as it is cut, drilling at its worst"),
        word("end_cut", plan_words.ANGLE_ENDS, "how that nearer end is cut"),
        count("neighbours", "other holes in the same leg"),
        number("pitch", "mm", "centre to centre to the nearest of them, of slots between their nearer ends"),
        number(
            "heel_room",
            "mm",
            "from the hole's centre to where the fillet begins or, where the head lies on the "
            "outer face, to the back of the angle; drilling at its worst",
        ),
        number(
            "head_radius", "mm", "half the width of what lies on the leg: head or washer, a hexagon over its corners"
        ),
        word("head_style", plan_words.HEADS, "style of the screw's head"),
        number("head_diameter", "mm", "diameter of the head, of a hexagon over its flats"),
        truth("washer", "a washer lies under the head"),
        number("washer_thickness", "mm", "thickness of the washer"),
        number("bearing_width", "mm", "diameter of the head, or of the washer, that bears on the steel"),
        number("ring", "mm", "overlap of head or washer round the hole, screw centred"),
        number("ring_worst", "mm", "the same with the screw hard against one side of its hole"),
        truth("countersunk", "the hole is countersunk"),
        number("sink_angle", "°", "included angle of the countersink"),
        number("head_angle", "°", "included angle of the head"),
        number("sink_diameter", "mm", "diameter of the countersink at the face"),
        number("sink_depth", "mm", "depth of the cone, as the head fills it or as it is cut, the deeper"),
        number("land", "mm", "straight wall of the hole left under the cone"),
        number("head_stand", "mm", "how far head and washer stand proud of the leg"),
        truth("faces_board", "the head lies between the wall leg and the edge of a board beside it"),
        number("board_gap", "mm", "gap between the wall leg and that edge, the narrowest"),
        word("deburr", plan_words.DEBURR, "which faces are deburred"),
        number("bearing_strength", "N", "load at which the steel crushes at the hole, safety factor in"),
        number("tear_out_strength", "N", "load at which the hole tears out towards the nearer edge or end, safety in"),
        number("hole_strength", "N", "load that one hole may carry, however it would fail, safety factor in"),
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
        *_STEEL,
        word("wall_leg", ("up", "down"), "which way the wall leg points"),
        truth("is_return", "it carries the end of a board whose back lies on another angle"),
        count("stations", "places along the angle with a wall screw that can reach wood"),
        number("longest_run", "mm", "longest stretch between two neighbouring stations"),
        number("shortest_run", "mm", "shortest stretch between two neighbouring stations"),
        number(
            "overhang",
            "mm",
            "stretch past the last station, at the end where it is the larger part of the run beside it",
        ),
        number("run_before_overhang", "mm", "stretch between the two stations next to that overhang"),
        truth("shares_corner", "something else is fixed to the wall round an inside corner"),
        number("corner_overlap", "mm", "length in which it runs into that, as both are cut"),
        number(
            "past_wall_end", "mm", "how far it runs past an end of its wall, the worse one; below zero, short of it"
        ),
        truth("between_walls", "a wall stands at either end of its wall"),
        number("play", "mm", "what the wall between them is longer than it"),
        truth("board_meets_fillet", "a board lies with an edge in the inside of the heel"),
        number("fillet", "mm", "radius inside the heel"),
        number("edge_relief", "mm", "room that the gap beside a board and the easing of that edge leave together"),
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
        *_STEEL,
        truth("braced", "a brace runs from arm to upright"),
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
        number("shortest_run", "mm", "shortest stretch between two neighbouring stations"),
        number(
            "overhang",
            "mm",
            "stretch past the last station, at the end where it is the larger part of the run beside it",
        ),
        number("run_before_overhang", "mm", "stretch between the two stations next to that overhang"),
    ),
)
