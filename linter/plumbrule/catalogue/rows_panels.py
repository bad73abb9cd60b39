"""Rows of panels: each field, each panelled wall with its ends and cut-outs, each course, each piece."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

CUT_KINDS = ("opening", "box", "steel")
ENDS_MEET = ("inside corner", "outside corner", *plan_words.WALL_ENDS)

PANEL_FIELD = RowType(
    "panel_field",
    "All panels of one kind, over all their walls.",
    (
        word("core", plan_words.PANEL_CORES, "what the panels are made of"),
        word("edges", plan_words.PANEL_EDGES, "shape of their edges"),
        truth("gap_in_joints", "room is left between panels"),
        number("joint_gap", "mm", "how much"),
        count("pieces", "pieces that are laid"),
        count("panels_needed", "whole panels that they are cut from, what is left of one used where it fits"),
        count("panels_least", "fewest panels that could do, however they are cut"),
        number("waste", "%", "part of these panels that is not on the wall"),
    ),
)

PANEL_WALL = RowType(
    "panel_wall",
    "One panelled wall.",
    (
        number("run", "mm", "width of wall that is panelled, from end to end"),
        number("panel_length", "mm", "length of a panel"),
        number("panel_height", "mm", "height of a panel"),
        truth("scribed", "the first course is cut to the floor"),
        number("level_line", "mm", "upper edge of the first course above the datum"),
        number("floor_fall", "mm", "how much lower the floor is at its lowest than at its highest under the panels"),
        number("ceiling_fall", "mm", "how much lower the ceiling is at its lowest than at its highest over the panels"),
        number("first_course_least", "mm", "height of the first course where the floor is highest"),
        number("first_course_most", "mm", "height that the first course would need where the floor is lowest"),
        number("floor_gap_most", "mm", "widest gap between the floor and the lower edge of the panels"),
        truth("has_floor_trim", "a trim runs along the floor"),
        number("floor_cover", "mm", "height over the floor that this trim hides"),
        number("wall_area", "mm²", "area of the wall, floor to ceiling"),
        number("panel_area", "mm²", "area of all pieces on it"),
        number("gap_area", "mm²", "area of the gaps left at its edges"),
        number("cut_out_area", "mm²", "area of openings, boxes and steel with the room round them"),
        number("joint_area", "mm²", "area of the gaps left between panels"),
        number("uncovered", "mm²", "area that nothing covers although it should be panelled"),
        number("uncovered_seen", "mm²", "what of this no trim along the floor hides"),
        count("courses", "courses from floor to ceiling"),
        count("pieces", "pieces on it"),
    ),
)

PANEL_END = RowType(
    "panel_end",
    "One end of the panels on a wall.",
    (
        word("meets", ENDS_MEET, "what the panels run into there"),
        truth("panelled_beyond", "the wall round the corner is panelled too"),
        truth("has_trim", "a trim runs along this corner"),
        truth("trim_over_edge", "one of these trims hides the edge of the panels"),
        number("trim_covers", "mm", "how much of the panels the trim hides"),
        number("row_step", "mm", "difference in height between the courses here and those round the corner"),
    ),
)

CUT_OUT = RowType(
    "cut_out",
    "One thing that panels are cut round: a window or door, an electrical box, an angle, bracket or cleat.",
    (
        word("kind", CUT_KINDS, "what comes through the panels"),
        number("clearance", "mm", "room between it and the panels, each side"),
        truth("in_panels", "panels lie beside it, so that strips are left"),
        number("strip_above", "mm", "height of panel left above it, to the next joint or edge, where that is least"),
        number("strip_below", "mm", "the same below it"),
        number("strip_beside", "mm", "width of panel left beside it, the narrower side"),
        number("strip", "mm", "the narrowest of these"),
        truth("carries_people", "people sit, stand or step on what it carries"),
        truth("fixed_first", "the steps say that it is fixed before panels are laid on its wall"),
        truth("under_a_board", "a board lies on it"),
        number("shows_above", "mm", "how far its cut-out stands up past the board on it"),
    ),
)

COURSE = RowType(
    "course",
    "One course of panels on a wall.",
    (
        count("number", "number of the course from the floor"),
        truth("first", "it is the lowest"),
        truth("top", "it is the highest"),
        truth("cut_to_floor", "its lower edge follows the floor"),
        truth("cut_to_ceiling", "its upper edge follows the ceiling"),
        number("height_left", "mm", "height at the left end of the panels"),
        number("height_right", "mm", "height at the right end"),
        number("height_least", "mm", "height where it is lowest"),
        number("panel_height", "mm", "height of a whole panel"),
        count("height_share", "its least height as a part of a panel's"),
        count("pieces", "pieces in it"),
        count("joints", "joints between its pieces"),
        truth("over_joints", "both it and the course below have joints"),
        number(
            "stagger", "mm", "from one of its joints to the nearest joint in the course below, the shortest such way"
        ),
        count("stagger_share", "the same as a part of a panel's length"),
    ),
)

PIECE = RowType(
    "piece",
    "One piece of panel.",
    (
        count("course", "number of its course from the floor"),
        count("number", "its number in the course, from the left"),
        number("length", "mm", "length along the course"),
        number("smallest_width", "mm", "width where it is narrowest, necks beside cut-outs and at the joints included"),
        number("area", "mm²", "area with everything cut out"),
        truth("whole", "it is an uncut panel"),
        truth("from_offcut", "it is cut from what is left of a panel that another piece came from"),
        count("panel", "number of that panel, counted in the order of laying"),
        truth("notched", "something is cut out of it"),
        truth("end_piece", "it lies at an end or an opening, and does not fill the space there alone"),
        number("end_length", "mm", "length of such a piece"),
        count("end_share", "the same as a part of a panel's length"),
        number("mass", "kg", "what it weighs"),
        truth("glued_in_lines", "adhesive lies in strips, beads or dabs, not over the whole back"),
        truth("has_glue", "adhesive is sure to lie on it, wherever it is cut from its panel"),
        number("glued_area", "mm²", "area of its back that adhesive is sure to hold"),
        count("glue_lines", "strips, beads or dabs along its length that are sure to lie on it whole"),
        number("glue_stress", "MPa", "its weight over the glued area"),
    ),
)

ROWS: tuple[RowType, ...] = (PANEL_FIELD, PANEL_WALL, PANEL_END, CUT_OUT, COURSE, PIECE)
