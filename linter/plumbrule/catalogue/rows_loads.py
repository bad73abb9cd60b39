"""Rows of the load path: what each load does to a board, to a place that holds it, to its steel and to its screws."""

from __future__ import annotations

from plumbrule.catalogue.fact import Fact, RowType, count, number, truth, word

CARRIED = ("three sides", "back angle alone", "brackets", "cleats", "not covered")
CASES = (
    "own weight", "one person", "full seat", "two people", "dropping onto the seat", "storage", "a load at one place",
    "books", "leaning", "one person as declared", "full seat as declared",
    "a push off the wall", "a push along the wall",
)  # fmt: skip
NOT_COVERED = (
    "covered", "nothing is said to carry it", "angles, brackets and cleats are mixed", "its back lies on two pieces",
    "one end is not held", "its back is not held", "it lies on one bracket", "it lies on one cleat at its back",
    "a return is screwed at one place",
)  # fmt: skip
STOPPED = ("both ends", "left end", "right end", "no end")
STANDINGS = ("lasting", "benchmark", "declared", "advisory")
SHARINGS = (
    "shared", "few positions", "spliced", "loose holes", "screws too soft", "returns missing", "not of this kind",
)  # fmt: skip

_CASE: tuple[Fact, ...] = (
    word("carried", CARRIED, "how the board is carried"),
    truth("carries_people", "people sit, stand or step on it"),
    word("case", CASES, "the load it is tried with"),
    word("standing", STANDINGS, "what the load rests on: what lies there, a benchmark, the plan, or advice"),
)

BOARD_LOAD = RowType(
    "board_load",
    "One board under one load.",
    (
        *_CASE,
        number("point", "N", "the one force of this load, a person's weight say"),
        number("declared_point", "N", "what the plan declares for one place"),
        number("line_load", "N/mm", "what is spread along the board, its own weight not counted"),
        number("declared_line_load", "N/mm", "what the plan declares to be spread along the board"),
        number("weight", "N", "weight of the board"),
        word("not_covered", NOT_COVERED, "why no bound or formula covers how it is carried; `covered` where one does"),
        number("front", "mm", "from the heel of the steel at the wall to the front edge"),
        number("toe", "mm", "from that heel to where a tipping board bears"),
        number("beyond_toe", "mm", "how far the middle of all loads lies beyond that toe; below zero, inside it"),
        truth("every_part_holds", "on a back angle alone, each part is shown to hold a person and one who drops"),
        number("bending_stress", "MPa", "bending along the grain"),
        number("bending_strength", "MPa", "bending stress the board may carry under this load"),
        number("shear_stress", "MPa", "shear along the grain"),
        number("shear_strength", "MPa", "shear stress the board may carry under this load"),
        number("across_stress", "MPa", "tension across the grain"),
        number("across_mark", "MPa", "tension across the grain that is not to be passed"),
        number("bearing_stress", "MPa", "pressure where the board bears on the steel"),
        number("bearing_strength", "MPa", "pressure the board may carry there"),
        number("drop", "mm", "how far the front edge goes down under this load, after years where it stays"),
        number("drop_limit", "mm", "how far it may go down"),
        count("swings", "how often a second the board swings under a person"),
    ),
)

STATION_LOAD = RowType(
    "station_load",
    "One place where steel or a cleat is screwed to the wall, under one load.",
    (
        *_CASE,
        word("support", ("angle", "bracket", "cleat"), "what is screwed there"),
        truth("is_return", "it carries an end of the board"),
        count("screws", "wall screws at this place"),
        word("sharing", SHARINGS, "whether a person is shared between places, or why not"),
        number("side_force", "N", "weight on this place"),
        number("steel_force", "N", "of that, the weight of the steel"),
        number("couple", "N·mm", "couple that tips the steel off the wall here"),
        number("screw_side_force", "N", "weight on the worst screw here"),
        number("screw_pull", "N", "pull on the worst screw here"),
        number("side_strength", "N", "what that screw may carry sideways, factors in"),
        number("pull_strength", "N", "what that screw may carry in a straight pull, factors in"),
        count("both_use", "use of the screw by weight and pull together; 1 is all there is"),
        count("both_use_unshared", "the same where no other place helps"),
        truth("head_sunk", "the worst screw's head lies in a countersink, whose own rules hold for it"),
        number("leg_pull", "N", "pull on the screw round which the wall leg is nearest to bending for good"),
        number("leg_strength", "N", "pull that the wall leg round that screw may take"),
        number("head_strength", "N", "pull that the steel under the head may take"),
        number("hole_strength", "N", "weight that the hole may take"),
    ),
)

HOLD_DOWN = RowType(
    "hold_down",
    "The seat screws that hold a board down, at a back corner, along a back angle or on a bracket, under one load.",
    (
        *_CASE,
        word("place", ("left corner", "right corner", "along the back", "on a bracket"), "which of them"),
        count("screws", "seat screws that hold there"),
        number("pull", "N", "pull on them, or on the worst one of a row"),
        number("strength", "N", "pull they may take, factors in"),
    ),
)

LEG_LOAD = RowType(
    "leg_load",
    "A seat leg, or the arm of a bracket, bent by one load.",
    (
        *_CASE,
        word("place", ("at the wall", "inside", "at an end"), "where the load stands"),
        number("moment", "N", "bending at the bend, per width"),
        number("strength", "N", "bending it may take, per width"),
        number("springs_back", "N", "bending up to which it springs back"),
        number("lasting_strength", "N", "bending it may take for good"),
        number("torque", "N·mm", "twist of the steel between two places"),
        number("torque_strength", "N·mm", "twist the steel may take"),
        truth("seat_screw_at_each", "a seat screw stands within 2 in of every place that is screwed to the wall"),
    ),
)

BEAM_LOAD = RowType(
    "beam_load",
    "An angle as a beam between its places on the wall, under one load.",
    (
        *_CASE,
        number("moment", "N·mm", "largest bending"),
        number("strength", "N·mm", "bending it may take"),
    ),
)

CLEAT_LOAD = RowType(
    "cleat_load",
    "A wooden cleat as a beam over its screws, under one load.",
    (
        *_CASE,
        number("moment", "N·mm", "largest bending"),
        number("moment_strength", "N·mm", "bending it may take"),
        number("shear", "N", "largest shear along its grain"),
        number("shear_strength", "N", "shear it may take"),
        number("pressure", "MPa", "pressure of the board on its upper edge"),
        number("pressure_strength", "MPa", "pressure its edge may take"),
    ),
)

PUSH_LOAD = RowType(
    "push_load",
    "One board that is pushed sideways, off its wall or along it, and what keeps it on its supports.",
    (
        *_CASE,
        number("push", "N", "the push"),
        word("stopped_by", STOPPED, "which ends lie within 1/8 in of a wall, so that a push along ends there"),
        count("screws", "screws up into the board that hold it that way; a slot that runs that way holds nothing"),
        number("screw_force", "N", "force on the worst of them"),
        number("screw_strength", "N", "what it may carry sideways, factors in"),
    ),
)

BLOCK_LOAD = RowType(
    "block_load",
    "The screws at the ends of a block under one load on the board.",
    (
        *_CASE,
        number("force", "N", "force on the worst end screw"),
        number("strength", "N", "force it may take, factors in"),
    ),
)
