"""Rows of what is there before anyone builds: the site and its walls."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word, words
from plumbrule.plan import words as plan_words

SITE = RowType(
    "site",
    "The house or room as a whole.",
    (
        word("use", plan_words.USES, "what the room is used for"),
        count("year_built", "year the building was put up"),
        words("people", plan_words.PEOPLE, "who uses the room"),
        number("warmest", "°C", "warmest the room gets over a year"),
        number("coldest", "°C", "coldest the room gets over a year"),
        number("dampest", "%", "highest relative humidity over a year"),
        number("driest", "%", "lowest relative humidity over a year"),
    ),
)

WALL = RowType(
    "wall",
    "One wall, as it stands before the work.",
    (
        number("width", "mm", "face to face of the lining"),
        word("framing_kind", plan_words.FRAMING_KINDS, "what the wall is framed with"),
        word("separation", plan_words.SEPARATIONS, "what the wall keeps apart: fire, sound, another dwelling"),
        number("lining_thickness", "mm", "all lining layers together, from the studs outward"),
        count("lining_layers", "number of lining layers"),
        truth("holds_steel", "an angle, bracket or cleat is fixed to this wall"),
        truth("carries_people", "what is fixed to this wall carries people"),
        truth("lining_cut", "the lining is cut away or replaced behind something that is fixed to this wall"),
        truth("proof_loaded", "everything on this wall that carries people is proved with a load before use"),
        count("ways_found", "in how many different ways the studs were found"),
        words("found_by", plan_words.STUD_FINDERS, "how the studs were found"),
        number("found_within", "mm", "how far a stud's true centre may be from its mark"),
        truth("stud_centres_listed", "each stud was found by itself, not reckoned from the first by the spacing"),
        truth("searched", "someone looked for cables and pipes in this wall, or opened it"),
        truth("species_known", "the framing species was read from a stamp"),
    ),
)
