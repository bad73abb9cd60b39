"""Rows of wood in the wall and of the screws driven into it."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.mechanics.outside import OUTSIDE_WORDS
from plumbrule.plan import words as plan_words

STUD = RowType(
    "stud",
    "One stud as it was found.",
    (
        number("centre", "mm", "centre of the stud from the left end of the wall"),
        number("width", "mm", "width of the stud, seen from the room"),
        number("depth", "mm", "depth of the stud, from its face into the wall"),
        word("species", plan_words.FRAMING_SPECIES, "framing species"),
        count("specific_gravity", "oven-dry specific gravity of the species group"),
        truth("used", "a screw of this plan is meant for this stud"),
        truth("has_one_before", "there is a stud on its left"),
        number("spacing_before", "mm", "distance to the stud on its left"),
    ),
)

BLOCK = RowType(
    "block",
    "A piece of solid wood let in between two studs.",
    (
        number("length", "mm", "length of the block along the wall"),
        number("height", "mm", "height of the block"),
        number("depth", "mm", "depth of the block, from its face into the wall"),
        word("species", plan_words.FRAMING_SPECIES, "framing species"),
        count("specific_gravity", "oven-dry specific gravity of the species group"),
        truth("used", "a screw of this plan is driven into this block"),
        truth("carries_people", "a person's weight comes to this block"),
        count("end_screw_count", "screws at each end"),
        word("end_screw_kind", plan_words.SCREW_KINDS, "kind of the end screws"),
        number("end_screw_diameter", "mm", "nominal diameter of the end screws"),
        number("end_screw_bite", "mm", "how far an end screw enters the block's end grain, past the stud"),
        number(
            "end_screw_full_bite", "mm", "the same as it counts against the least bite: a lag screw without its tip"
        ),
        number(
            "end_fit",
            "mm",
            "gap between an end of the block and the stud beside it, at the worse end; below zero it overlaps",
        ),
        number("end_gap_known_to", "mm", "how well the two studs beside it are located"),
    ),
)

SCREW = RowType(
    "screw",
    "One screw as driven: through steel or a cleat into a stud or block, or up into a board.",
    (
        word("support", ("angle", "bracket", "cleat"), "what it fixes"),
        word("leg", ("wall", "seat"), "which leg it goes through"),
        word("into", ("stud", "block", "board"), "what it is driven into"),
        truth("carries_people", "a person's weight comes to this screw"),
        word("kind", plan_words.SCREW_KINDS, "kind of screw"),
        word("outside", OUTSIDE_WORDS, "why the published screw formulas do not cover it, or `inside`"),
        number("diameter", "mm", "nominal diameter"),
        number("length", "mm", "length as sold: under the head, over all for a flat head"),
        number("layers", "mm", "lining, packing and washer between the head's seat and the wood, steel not counted"),
        number("gap", "mm", "what lies between steel and wood without holding the screw: lining left in place"),
        number("steel", "mm", "thickness of the leg or cleat the screw passes"),
        number("bite", "mm", "how far the screw enters the wood, its tip included"),
        number("tip", "mm", "length of the tapered tip"),
        number("full_bite", "mm", "bite that counts against the least bite: without the tip for a lag screw"),
        number("thread_in_wood", "mm", "length of full thread in the wood"),
        number("wood_depth", "mm", "depth of wood there is to enter"),
        count("specific_gravity", "specific gravity of the wood it is driven into"),
        truth(
            "along_grain", "a weight on it runs along the grain of the wood it is in: it does in a stud, not in a block"
        ),
        number("height", "mm", "height of the screw above the datum"),
        number("off_centre", "mm", "distance of the hole from the stud's centre, as drawn"),
        number("off_centre_worst", "mm", "the same at the stud face with every tolerance against it"),
        number("wood_beside", "mm", "wood from the screw's axis to the nearer face of the stud, at its worst"),
        number("wood_beside_tip", "mm", "wood left beside the screw at its tip, leaning and off the mark at its worst"),
        number("end_distance", "mm", "from the screw to the end of the piece of wood, along the grain"),
        number("edge_distance", "mm", "from the screw to the nearer edge of the piece of wood, across the grain"),
        number("loaded_edge_distance", "mm", "from the screw to the edge that a weight presses it towards"),
        number(
            "from_fixed_row",
            "mm",
            "of a hold-down screw: how far it lies in front of the row that holds the board, across its grain",
        ),
        truth("holds_the_board", "it stands in that row, from which the board moves"),
        number("play_given", "mm", "how far its hole or slot lets the board move either way, drilling at its worst"),
        number("play_needed", "mm", "how far the board moves past it over the year"),
        count("neighbours", "other screws in the same piece of wood"),
        number("row_pitch", "mm", "distance to the nearest other screw in the same piece of wood"),
        truth("pitch_along_grain", "that nearest screw lies along the grain"),
        truth("pilot_drilled", "a pilot hole is written down"),
        number("pilot_thread", "mm", "pilot hole for the threaded part"),
        number("pilot_thread_least", "mm", "smallest pilot that is published for this screw and wood"),
        number("pilot_thread_most", "mm", "largest pilot that is published for this screw and wood"),
        truth("pilot_required", "the published rules ask for a pilot hole for this screw in this wood"),
        number("pilot_shank", "mm", "hole for the smooth part"),
        number("pilot_shank_least", "mm", "smallest hole that is published for the smooth part"),
        number("pilot_shank_most", "mm", "largest hole that is published for the smooth part"),
        number("shank_in_wood", "mm", "length of the smooth part that lies in the wood"),
        number("depth_in_wall", "mm", "how deep the tip lies behind the stud face or the back of the lining"),
        truth("searched", "someone looked for cables and pipes in this wall, or opened it"),
        count("known_runs", "cables and pipes whose way in this wall is known"),
        number("service_distance", "mm", "from the screw's axis to the nearest known cable or pipe"),
        truth("beside_a_wall", "a wall or cabinet stands at an end of the wall, where the driver may meet it"),
        number(
            "driver_room",
            "mm",
            "from the screw's axis to the wall, leg or lining that the body of the driver would meet",
        ),
        number("socket_room", "mm", "from the screw's axis to the other leg, past which only socket or bit must go"),
        number("head_radius", "mm", "half the width of the head"),
        number("side_strength", "N", "what the screw can carry sideways, before factors"),
        number("withdrawal", "N", "what it takes to pull the screw out of the wood, before factors"),
        number("root_strength", "N", "tension the root of the screw itself can carry"),
        number("pull_over", "N", "pull at which the steel gives way under the head"),
    ),
)
