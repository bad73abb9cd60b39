"""Rows of the room as a whole: its corners, how far its measures agree, and what must go in between its walls."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

CORNER = RowType(
    "corner",
    "Where two walls meet.",
    (
        word("turn", plan_words.TURNS, "inside: the walls make a nook; outside: they make a pier"),
        number("angle", "°", "angle between the two faces"),
        truth("angle_measured", "the plan says the angle"),
        truth("fits_something", "a board, mitred steel or panels of both walls meet here"),
        truth("two_walls", "both walls are in the plan"),
        number("floor_difference", "mm", "difference between the floor as measured on one wall and on the other"),
        number("ceiling_difference", "mm", "difference between the ceiling as measured on one wall and on the other"),
    ),
)

ROOM = RowType(
    "room",
    "A room whose walls come round to where they began.",
    (
        count("walls", "walls of it"),
        number("turned_too_far", "°", "what its corners together turn more or less than once round"),
        number("closing_gap", "mm", "from the end of the last wall to the beginning of the first, by the measures"),
    ),
)

NICHE = RowType(
    "niche",
    "A wall between two others that come forward from it, and the boards across it.",
    (
        truth("board_between", "a board lies against both side walls"),
        number("narrows", "mm", "how much narrower it is at the front of the deepest board; below zero it widens"),
    ),
)

BOARD_END = RowType(
    "board_end",
    "One end of a board that lies against a wall.",
    (
        number("gap", "mm", "gap left there, off the finished face"),
        number("gap_change", "mm", "how much that gap grows or shrinks from the back to the front of the board"),
        truth("side_wall_in_plan", "the wall that it lies against is in the plan"),
        number("side_wall_past", "mm", "how far that wall goes on past the front of the board"),
    ),
)

STEEL_END = RowType(
    "steel_end",
    "One end of an angle or cleat at an inside corner whose other wall gets panels.",
    (
        number("clear", "mm", "from that end to the finished face of the other wall; below zero it would go into it"),
        truth("panels_first", "the panels of the other wall are up before it is fixed"),
    ),
)

ROWS: tuple[RowType, ...] = (CORNER, ROOM, NICHE, BOARD_END, STEEL_END)
