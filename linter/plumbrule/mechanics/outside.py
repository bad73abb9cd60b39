"""Which cases the published screw formulas do not cover, and the one sentence that says so on site.

A case that is outside gets no number at all: not a small one, not a cautious one. The word is what a rule may look
at, the sentence is what a person reads.
"""

from __future__ import annotations

from plumbrule.mechanics.worked import OutsideRulebook

INSIDE = "inside"

REASONS: dict[str, str] = {
    "steel studs": (
        "The studs are steel: the strength of a screw in thin steel depends on the stud's gauge and the screw's own "
        "listing, so ask the maker of the stud or an engineer."
    ),
    "masonry": (
        "The wall is masonry or concrete: its anchors are rated by their own test reports, so choose one with a "
        "report for this wall and this load."
    ),
    "anchor": (
        "Anchors and toggles that hold in lining or masonry have no wood-screw strength: nothing that people lean on "
        "may hang on them, and their makers' reports govern elsewhere."
    ),
    "drywall screw": (
        "A drywall screw is hardened to hold lining and snaps without warning: it has no published strength for "
        "hanging anything, so use a wood screw or a lag screw."
    ),
    "adhesive": (
        "Adhesive has no published strength between steel and a finished wall: count nothing for it and let screws "
        "carry the whole load."
    ),
    "structural screw": (
        "A structural screw is rated by its own evaluation report, not by the general formulas: take the strengths, "
        "pilot and distances from that report."
    ),
    "other screw": (
        "The published formulas cover lag screws and wood screws of standard sizes only: this kind of screw has no "
        "strength that can be worked out here."
    ),
    "screw size": (
        "This size is not in the published tables of lag and wood screws, so its root diameter and strength are not "
        "known: choose a listed size."
    ),
    "wide gap": (
        "The lining is too thick for the screw: past 1-1/4 in, or more than the screw's bite, the steel stands off "
        "the wood on a bending stalk that no published formula covers; cut the lining away or pack it solid."
    ),
    "light wood": (
        "The wood is lighter than any in the published tables (specific gravity under 0.31), so no screw strength "
        "is known for it."
    ),
    "heavy wood": (
        "The wood is heavier than any in the published tables (specific gravity over 0.73), so no screw strength "
        "is known for it."
    ),
    "end grain": (
        "The screw runs along the grain into the end of a board: a wood screw counts for nothing there in "
        "withdrawal, so fix the seat from below into side grain."
    ),
    "short bite": (
        "The screw enters the wood less than the published least depth, below which it counts for nothing: take a "
        "longer screw."
    ),
    "off the stud": (
        "With every tolerance against it the screw can miss the stud, so it counts for nothing: find the stud more "
        "closely, or move the hole."
    ),
    "across the grain": (
        "A screw of 1/4 in or more, loaded across the grain, needs four diameters of wood to the loaded edge, and a "
        "stud has only 3/4 in beside it: use thinner screws, or blocking."
    ),
    "drop": (
        "A load that is dropped from a height has no published static equivalent here: only weights put down gently, "
        "or sat down on, are worked out."
    ),
    "steel grade": (
        "There is no published bearing strength for screws in this metal: the formulas used here are for carbon "
        "steel, so ask for the rating of the bracket itself."
    ),
    "small head": (
        "The head and washer are smaller than 5/16 in, where the pull-over formula stops: put a washer under the head."
    ),
    "countersunk head in wood": (
        "No published formula covers a countersunk head being drawn through wood: use a round head or a washer."
    ),
    "flat head in a plain hole": (
        "A flat head is meant for a countersink: in a plain hole it bears on a thin rim that no formula covers; "
        "countersink the hole or use a pan, round or hex head."
    ),
}

OUTSIDE_WORDS: tuple[str, ...] = (INSIDE, *REASONS)

_KINDS: dict[str, str] = {
    "wood screw": INSIDE,
    "lag screw": INSIDE,
    "structural screw": "structural screw",
    "drywall screw": "drywall screw",
    "masonry anchor": "anchor",
    "hollow-wall anchor": "anchor",
    "toggle": "anchor",
}
_SUPPORTS: dict[str, str] = {
    "wood studs": INSIDE,
    "steel studs": "steel studs",
    "masonry": "masonry",
    "concrete": "masonry",
}


def outside(word: str) -> OutsideRulebook:
    """The exception to raise for a word of `OUTSIDE_WORDS` other than `inside`. Raises KeyError for any other word."""
    return OutsideRulebook(REASONS[word])


def screw_kind_word(kind: str) -> str:
    """The word for a kind of screw. A kind that nobody has listed is `other screw`, never `inside`."""
    return _KINDS.get(kind, "other screw")


def support_word(framing_kind: str) -> str:
    """The word for what stands behind the lining. Anything but wood studs is outside."""
    return _SUPPORTS.get(framing_kind, "masonry")
