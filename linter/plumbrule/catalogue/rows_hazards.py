"""Rows of what can hurt someone, and of what is written down and worn against it."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word, words
from plumbrule.plan import words as plan_words

REGIONS = ("US", "CA", "elsewhere")
DISTURBS = ("nothing", "pried", "drilled", "ground", "stripped", "cut")
TESTED = ("not tested", "found", "not found")
DUSTS = ("none", "wood", "gypsum", "paint", "masonry", "settled")
RISKS = ("none", "allergy", "asthma", "cancer")
VAPOURS = ("none", "mild", "flammable", "strong", "two-part")
RAGS = ("none", "left", "no way written", "safe")
PROTECTION_WORDS = tuple(dict.fromkeys(plan_words.ON_HAND))

WORK = RowType(
    "work",
    "The work as a whole.",
    (count("steps", "how many steps are written"),),
)

OLD_WALL = RowType(
    "old_wall",
    "One wall, by what may be in its paint, texture and lining.",
    (
        word("region", REGIONS, "whose law and years count: the United States, Canada, or elsewhere"),
        truth("year_known", "the plan says when the building was put up"),
        count("year_built", "year the building was put up"),
        truth("touched", "something is done to its face"),
        words("disturbed", DISTURBS, "what is done to its face, in the steps and by what is fixed to it"),
        truth("painted", "it has a coat on it, or had one before it was papered"),
        truth("textured", "its face is not smooth"),
        truth("papered", "paper or vinyl is on it"),
        truth("lining_suspect", "its lining, or the compound in its joints, is of a kind that was made with asbestos"),
        word("lead", TESTED, "what the test of the paint for lead said"),
        truth("lead_by_swab", "the test of the paint for lead was a swab, not a laboratory's"),
        word("asbestos", TESTED, "what the test for asbestos said"),
        number("paint_disturbed", "mm²", "how much of its face is ground, stripped or cut away"),
        truth("lead_safe", "every step that disturbs its face is done by lead-safe work"),
        truth("children", "children use the room"),
    ),
)

HAZARD_STEP = RowType(
    "hazard_step",
    "One step that can hurt someone, and what is worn and done against it.",
    (
        word("task", plan_words.TASKS, "what is done"),
        word("where", plan_words.WHERES, "where it is done"),
        words("wears", plan_words.WEARS, "protection worn"),
        words("controls", plan_words.CONTROLS, "what else is done against harm"),
        count("people", "how many people do it"),
        truth("children", "children use the room"),
        truth("keep_out", "nobody else may be near it"),
        word("dust", DUSTS, "dust it raises"),
        word("wood_risk", RISKS, "what the dust of the wood is known for, beyond what any wood dust does"),
        truth("eyes", "something may fly into the eyes"),
        count("noise", "usual level at the ear, dBA; 0 where it is not loud"),
        truth("turning", "a drill, saw or cutter turns beside the hands"),
        truth("sparks", "it throws sparks"),
        truth("laser", "a laser may be used"),
        truth("alkali", "an alkaline cleaner is used, or rinsed off"),
        truth("epoxy", "epoxy is mixed or spread"),
        word("vapour", VAPOURS, "what comes off the tin: mild, flammable, strong, or two-part with isocyanates"),
        word("rags", RAGS, "what becomes of rags that heat themselves; `none` where there are none"),
        number("mass_lifted", "kg", "heaviest thing that is lifted, carried or held up"),
        number("each_lifts", "kg", "what each of those who do it lifts of that"),
        number("lift_limit", "kg", "weight recommended for one person who lays the board where it goes"),
        number("lift_height", "mm", "how high the thing is lifted over the datum"),
        number("lift_length", "mm", "length of the longest board that is lifted"),
        number("reach_height", "mm", "how high the work goes over the floor under it"),
    ),
)

PANEL_FIRE = RowType(
    "panel_fire",
    "One panel field, by how it burns.",
    (
        truth("foam_plastic", "its core is foamed plastic"),
        word("core", plan_words.PANEL_CORES, "what it is made of"),
        truth("flame_spread_known", "the plan gives a flame spread index"),
        count("flame_spread", "flame spread index from the data sheet"),
        count("smoke_developed", "smoke developed index from the data sheet"),
        word("room_test", plan_words.ROOM_TESTS, "fire test of a whole lined room that its data sheet says it passed"),
        count("kilograms", "kilograms in a cubic metre of it"),
        truth("public_room", "the room is a public one"),
    ),
)

BOARD_CLIMB = RowType(
    "board_climb",
    "One board, by who may climb on it.",
    (
        truth("children", "children use the room"),
        truth("under_a_window", "an opening of its wall, or of a wall round its corners, goes on above it"),
        number(
            "sill_over_board",
            "mm",
            "from the top of the board to the lowest opening at it; below zero that begins under it",
        ),
        truth("low", "its top is low enough to be stepped on"),
    ),
)

PROTECTION = RowType(
    "protection",
    "One thing that must be owned so that the steps can be done as they are written.",
    (
        word("thing", PROTECTION_WORDS, "what it is"),
        count("needed_by", "steps that need it"),
        truth("on_hand", "it is already there"),
        count("bought", "how many are on the purchase list"),
    ),
)

ROWS: tuple[RowType, ...] = (WORK, OLD_WALL, HAZARD_STEP, PANEL_FIRE, BOARD_CLIMB, PROTECTION)
