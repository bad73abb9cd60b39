"""Rows of the gaps at the edges of panels, and of the sealant and trim that close them."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word
from plumbrule.plan import words as plan_words

JOINT_KINDS = ("ceiling", "floor", "inside corner", "outside corner", "opening")
ALONG = ("floor", "ceiling", "openings", "inside corner", "outside corner")

JOINT = RowType(
    "joint",
    "One edge of the panels of one wall, and the gap left there: at the ceiling, at the floor, in a corner, round an "
    "opening or against a casing.",
    (
        word("kind", JOINT_KINDS, "what the panels come up to there"),
        word("core", plan_words.PANEL_CORES, "what the panels are made of"),
        number("length", "mm", "length of the joint"),
        number("gap", "mm", "gap left there, where it is narrowest"),
        number("gap_widest", "mm", "the same, where it is widest"),
        # Movement
        number("run", "mm", "length of the run of panels that ends there"),
        count("strain", "part of its length that a panel grows over the year, by warmth and damp together"),
        number("movement", "mm", "how far the edge of the panels moves over the year"),
        # What closes it
        truth("hidden", "the panels round the corner cover it"),
        truth("trimmed", "a trim runs along it"),
        truth("sealed", "a sealant lists it"),
        word("sealant", plan_words.SEALANTS, "kind of the sealant in it"),
        truth("latex", "it is an acrylic latex, siliconised or not"),
        truth("class_stated", "a class of movement is stated for the sealant"),
        number("sealant_class", "%", "movement each way that the sealant takes, as a part of the joint"),
        number("movement_share", "%", "movement of the edge as a part of the gap"),
        number("gap_needed", "mm", "least width of joint in which this sealant takes the movement"),
        truth("foam_core", "the panels are of foamed plastic"),
        truth("foam_safe", "the tube says that the sealant does not attack foamed plastic"),
        # The bead
        word("backer", plan_words.BACKERS, "what the sealant is laid against"),
        truth("rod", "the backer is a rod, which is pressed into the joint"),
        number("backer_size", "mm", "thickness of the backer, or diameter of the rod"),
        number("depth", "mm", "depth of the bead, from the face of the panels to the backer"),
        number("usual_depth", "mm", "depth that suits a joint of this width"),
    ),
)

SEALANT = RowType(
    "sealant",
    "One sealant.",
    (
        word("kind", plan_words.SEALANTS, "kind of sealant"),
        count("joints", "edges of panels that it fills"),
        truth("applied", "a step seals with it"),
        number("settled", "h", "time that is sure to pass from pressing the panels on to sealing them, the shortest"),
        truth("paintable", "the tube says that it takes paint"),
        truth("painted", "a step may paint the walls it is on after it is in"),
        number("cured", "h", "time that is sure to pass from sealing to that paint, the shortest"),
        number("volume", "mm³", "sealant in all its joints, filled flush"),
        number("backer_length", "mm", "length of backer behind it"),
    ),
)

TRIM = RowType(
    "trim",
    "One trim along edges of panels.",
    (
        word("kind", plan_words.TRIMS, "shape of the trim"),
        word("along", ALONG, "what it runs along"),
        count("closes", "edges of panels that it runs along"),
        number("covers", "mm", "how much of the panel edge it hides"),
        number("to_hide", "mm", "gap behind it where that is widest, and what the panels shrink back besides"),
        truth("captures", "the edge of the panels is held inside it, so that it must be there first"),
        truth("set_before_panels", "a step fits it that is done before the panels are laid"),
    ),
)

ROWS: tuple[RowType, ...] = (JOINT, SEALANT, TRIM)
