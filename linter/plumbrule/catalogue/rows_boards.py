"""Rows of the boards that people sit on and put things on, and of the cracks in them."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

BOARD = RowType(
    "board",
    "One seat or shelf.",
    (
        word("species", plan_words.BOARD_SPECIES, "species of the wood"),
        truth("strength_published", "averages of strength and stiffness are published for this species"),
        truth("grade_known", "the plan says what grade the board is"),
        word("carries", plan_words.CARRIES, "what it is for"),
        truth("carries_people", "people sit, stand or step on it, whatever it is called"),
        truth("public_room", "the room is a public one"),
        number("length", "mm", "finished length along the wall"),
        number("depth", "mm", "finished depth from back to front"),
        number("thickness", "mm", "finished thickness"),
        # What it lies on
        truth("has_return", "it also lies on something that is fixed to a wall round a corner"),
        number("supports_apart", "mm", "difference in height between the highest and the lowest thing it lies on"),
        number("return_bearing", "mm", "what an end lies on of a return, gap and lining taken off; the shorter one"),
        count("back_ledges", "angles and cleats along its back that it lies on"),
        number("back_bearing", "mm", "what the back edge lies on of the leg or cleat behind it, the shortest"),
        # Its height and its reach
        number("top", "mm", "height of the upper face above the datum, the high point of the floor"),
        truth("at_seat_height", "its top is low enough to be sat or stepped on"),
        number("height_most", "mm", "height of the upper face over the floor where the floor lies lowest under it"),
        number("height_least", "mm", "the same where the floor lies highest"),
        number(
            "underside_least", "mm", "height of the lower face over the floor where the floor lies highest under it"
        ),
        number("underside_most", "mm", "the same where the floor lies lowest"),
        number("reach", "mm", "how far the front edge stands out of the finished face of its wall"),
        truth("walked_past", "people walk along the wall in front of it"),
        number("way_left", "mm", "width of the way that is left in front of it"),
        truth("above_a_seat", "it hangs over a board that people sit on"),
        number("room_over_seat", "mm", "from the top of the seat under it to its own lower face"),
        number("front_ease", "mm", "radius or chamfer of the front edge, nothing where it is sharp"),
        # What it is said to carry
        number("declared_person", "N", "load at the worst place that the plan asks for"),
        number("declared_line", "N/mm", "even load along the board that the plan asks for"),
        # Moisture
        number("moisture", "%", "moisture at which the board is worked and fitted"),
        number("dry_end", "%", "moisture of wood in this room at its driest"),
        number("damp_end", "%", "moisture of wood in this room at its dampest"),
        number("fit_least", "%", "least moisture at which a board for this room is best fitted"),
        number("fit_most", "%", "most moisture at which a board for this room is best fitted"),
        truth("acclimatised", "the board is left to settle in the room before it is worked"),
        number("settles", "h", "how long it is left there"),
        # Movement across the grain
        count("movement_per_cent", "part of its depth that 1 % of moisture adds"),
        number("fixed_row", "mm", "the row of screws that holds it, from the lining of its wall: it moves from there"),
        count("rows_without_slots", "rows of screws, one behind the other, whose holes let the board move nowhere"),
        number("restraint_stress", "MPa", "stress across the grain when two rows hold it and it cannot move"),
        number(
            "splitting_strength", "MPa", "average stress across the grain at which clear wood of this species splits"
        ),
        number("back_gap", "mm", "gap left behind the back edge"),
        number("back_gap_needed", "mm", "what the board swells towards the wall"),
        truth("front_captured", "a nosing, post or wall stands before the front edge"),
        number("front_gap", "mm", "gap left before a captured front edge"),
        number("front_gap_needed", "mm", "what the whole depth swells"),
        # Its ends
        count("walled_ends", "ends that lie against a wall"),
        number("end_gap_least", "mm", "gap at an end that lies against a wall, the narrower one"),
        number("end_gap_most", "mm", "the same, the wider one"),
        truth("placed_by_gaps", "both ends lie against walls, so that gaps and length must add up to the opening"),
        number("opening", "mm", "clear width between the finished walls at its ends"),
        number("diagonal", "mm", "from corner to corner of its long edge: what it takes to be tilted in"),
        number(
            "spare", "mm", "what is left of the finished wall past the board and its gaps; below zero it is too long"
        ),
        truth("meets_panels", "an end lies against a wall that gets panels"),
        number("cut_long_by", "mm", "how much longer it is kept until the panels are up"),
        truth("cut_after_panels", "it is cut to length in a step that waits for the panels on those walls"),
        # Its screws
        count("screws", "hold-down screws that go up into it"),
        count("pitches", "stretches between neighbouring hold-down screws along its back"),
        number("screw_pitch", "mm", "longest stretch between two neighbouring hold-down screws along its back support"),
        number("screw_pitch_shortest", "mm", "shortest such stretch"),
        number(
            "corner_hold", "mm", "from a back corner to the hold-down screw that is nearest to it, the worse corner"
        ),
        count("cracks", "cracks that are written down"),
    ),
)

CRACK = RowType(
    "crack",
    "One crack or check in a board.",
    (
        truth("carries_people", "people sit, stand or step on the board"),
        number("length", "mm", "length along the grain"),
        number("depth", "mm", "depth into the board"),
        number("width", "mm", "width at the face"),
        word("fill", plan_words.CRACK_FILLS, "what it is filled with"),
        number("thickness", "mm", "thickness of the board"),
        count("depth_share", "part of the thickness that it goes through"),
        truth("parts_the_board", "it counts as through: for the load there are two boards"),
        number("from_front", "mm", "how far it lies behind the front edge"),
        truth("board_has_screws", "screws go up into the board"),
        number("screw_distance", "mm", "from the crack to the nearest hold-down screw"),
    ),
)
