"""Rows of what the job needs, beside what is bought."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan.words import BOX_FITTINGS

GROUPS: tuple[str, ...] = (
    "panels", "steel", "screws", "washers", "boards", "timber", "trims", "sealants", "backers", "finishes", "primers",
    "paints", "fillers", "cleaners", "adhesives", "abrasives", "electrical", "protection",
)  # fmt: skip
# How a thing is counted: by the piece, by the stick it is cut from, by the run, by what it covers, or not at all.
AMOUNTS: tuple[str, ...] = ("pieces", "sticks", "length", "volume", "wear", "not reckoned")

NEED = RowType(
    "need",
    "One thing that the job needs, beside what is bought of it.",
    (
        word("group", GROUPS, "group of the purchase list that it belongs to"),
        word("amount", AMOUNTS, "how it is counted"),
        truth("listed", "a line of the purchase list is for it"),
        truth("guards", "it guards people: whether it is there is judged with the hazard it is for"),
        truth("on_hand", "it is already owned"),
        # By the piece or the stick
        count("needed_count", "pieces, sticks or discs that the job takes, without any spare"),
        count("bought_count", "how many are bought"),
        count("pieces", "pieces that are cut from sticks"),
        number("longest_piece", "mm", "longest of them, over all, mitres included"),
        number("stick", "mm", "length of one stick as bought"),
        truth("fits_stick", "the longest piece can be cut from such a stick"),
        truth("may_be_joined", "a run longer than a stick may be made up of two, as mouldings are"),
        # By length and by volume
        number("needed_length", "mm", "length that the job takes, without waste"),
        number("bought_length", "mm", "length that is bought"),
        number("spread_area", "mm²", "area of all coats, or of what is glued, sanded or painted"),
        number("needed_volume", "mm³", "volume that the job takes, without waste"),
        number("bought_volume", "mm³", "volume that is bought"),
        count("goes_round", "how many times over what is bought would do the job"),
        # Its size
        truth("size_said", "the purchase list says a size of its own"),
        number("planned_size", "mm", "size by the plan: length of a screw or a panel, depth of a box extender"),
        number("bought_size", "mm", "size on the purchase list"),
        truth("thickness_said", "the purchase list says a thickness that the plan has as well"),
        number("planned_thickness", "mm", "thickness by the plan: of steel, a panel, a washer or a backer"),
        truth("extends", "it is to bring the rim of a box forward"),
        word("fitting", BOX_FITTINGS, "which box fitting is bought"),
        truth("same_species", "the wood bought is of the species that the plan reckons with"),
        # Boards
        number("finished_length", "mm", "length of the board when it is done"),
        number("rough_length", "mm", "the same, and what is kept to be cut off when the panels are up"),
        number("finished_depth", "mm", "depth of the board when it is done"),
        number("finished_thickness", "mm", "thickness of the board when it is done"),
        truth("flattened", "a step takes wood off its faces"),
        number("bought_depth", "mm", "depth of the board as bought"),
        number("bought_thickness", "mm", "thickness of it as bought"),
        # Handling
        number("mass", "kg", "mass of all of it as it is built in"),
    ),
)

ROWS: tuple[RowType, ...] = (NEED,)
