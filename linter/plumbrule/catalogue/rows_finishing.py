"""Rows of sanding, filling and finishing boards."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

GRIT_STEP = RowType(
    "grit_step",
    "One change of paper while a board is sanded; of a board whose grits nobody wrote down, the one that is wanting.",
    (
        count("from_grit", "grit before the change, as it is written"),
        count("to_grit", "grit after the change, as it is written"),
        count("from_grain", "median size of the grains before, in micrometres"),
        count("to_grain", "median size of the grains after, in micrometres"),
        count("ratio", "grains before over grains after: below one the sanding gets coarser"),
    ),
)

FINISH = RowType(
    "finish",
    "The finish of one board, and the sanding under it.",
    (
        word("kind", plan_words.FINISHES, "what the board is finished with"),
        truth("film", "the finish stays on the wood as a film"),
        truth("carries_people", "people sit, stand or step on the board"),
        count("last_grit", "the last grit under the finish, as it is written"),
        count("last_grain", "median size of its grains in micrometres"),
        count("coarsest_grain", "largest grains that leave no scratch to be seen under this finish, micrometres"),
        truth("may_be_too_fine", "there is a grit too fine for this finish to take hold of"),
        count("finest_grain", "smallest grains after which this finish still takes hold, micrometres"),
        truth("dust_taken_away", "the dust of sanding is drawn off, vacuumed or bound with water"),
        number("sharpest_edge", "mm", "radius or chamfer of the edge that is eased least"),
        # Coats
        count("coats_top", "coats on the upper face"),
        count("coats_bottom", "coats on the lower face"),
        count("coats_edges", "coats on edges and ends"),
        count("coats_most", "most coats on any side"),
        # Waits
        number("between_coats", "h", "shortest wait from coat to coat"),
        number("recoat_needed", "h", "least time from coat to coat for this finish"),
        truth("set_after_finish", "the board is set in place after it is finished, not finished where it hangs"),
        number("set_after", "h", "shortest time from the last coat until the board is carried and set"),
        number("handle_needed", "h", "least time from the last coat until such a finish is handled"),
        number("loaded_after", "h", "shortest time from the last coat until the board is loaded for good"),
        number("cure_needed", "h", "time until such a finish bears a lasting load"),
    ),
)

FILL = RowType(
    "fill",
    "One crack that is filled with epoxy.",
    (
        number("depth", "mm", "depth of the crack"),
        count("pours", "pours that this crack is sure to get: a step may be for another crack of the board"),
        number("pour", "mm", "depth of one pour"),
        number("worked_after", "h", "shortest time from the last pour until the fill is planed or sanded"),
        number("loaded_after", "h", "shortest time from the last pour until the board is loaded for good"),
        truth("worked", "the board is planed, sanded or eased after it is filled"),
        truth("finish_soaks_in", "the finish of the board goes into the wood"),
    ),
)

ROWS: tuple[RowType, ...] = (GRIT_STEP, FINISH, FILL)
