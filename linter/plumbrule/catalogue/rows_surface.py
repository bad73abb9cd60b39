"""Rows of wall surfaces that something is stuck to or painted on."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word, words
from plumbrule.plan import words as plan_words

SURFACE = RowType(
    "surface",
    "The face of one wall that panels are stuck to, or that is primed or painted.",
    (
        # The face as it is today
        word("coating", plan_words.COATINGS, "what the wall is covered with today"),
        words("state", plan_words.WALL_STATES, "what is wrong with the face; sound if nothing is"),
        word("texture", plan_words.TEXTURES, "how rough the face is"),
        # What comes onto it
        truth("bonded", "panels are stuck to it"),
        word("adhesive", plan_words.ADHESIVES, "what the panels are stuck with"),
        word("core", plan_words.PANEL_CORES, "what the panels are made of"),
        number("adhesive_thickness", "mm", "thickness of the adhesive once the panel is pressed on"),
        # Flatness
        number("gap", "mm", "widest gap under the straightedge"),
        number("straightedge", "mm", "length of that straightedge"),
        number("gap_under_panel", "mm", "hollow that one panel may come to lie over"),
        # Weight
        number("panel_mass", "kg", "mass of a whole panel"),
        number("adhesive_area", "mm²", "adhesive on the back of a whole panel"),
        number("bond_shear", "MPa", "what the weight of a panel asks of its adhesive, for good"),
        # Air
        number("coldest", "°C", "how cold the room gets"),
        number("dampest", "%", "how damp the air of the room gets"),
        # What is done before: each of it is done when its step stands before the covering, whatever happens
        truth("stripped", "wallpaper or vinyl is stripped off before"),
        truth("scraped", "what is loose is scraped off before"),
        truth("skimmed", "the wall is skimmed before"),
        truth("washed", "the wall is washed before"),
        word("washed_with", plan_words.PRODUCTS, "what it is washed with, the strongest of several"),
        truth("rinsed", "every wash is followed by a rinse"),
        number("dries", "h", "shortest time from the last water to sanding, priming, painting or laying"),
        truth("abraded", "the face is abraded before"),
        truth("deglossed", "the gloss is taken off with a deglosser before"),
        truth("sanded", "a step abrades the wall that is not sure to come after the covering"),
        count("abrade_grit", "the last grit it is abraded with, as it is written"),
        count("abrade_grain", "median size of its grains in micrometres"),
        truth("washed_before_sanding", "a wash stands before every sanding"),
        truth("cleaned_after_sanding", "after every sanding the dust is taken off before anything comes onto the wall"),
        truth("wiped", "the wall is wiped after its last sanding and before the covering"),
        word("wiped_with", plan_words.PRODUCTS, "what the last wipe is done with"),
        number("wipe_waits", "h", "time from the wipe to laying"),
        truth("bare_spots", "board, plaster or filler lies bare somewhere once the wall is made ready"),
        truth("primed", "it is primed after whatever lays it bare and before the covering"),
        truth("has_primer", "a step primes the wall that is not sure to come after laying"),
        number("prime_waits", "h", "shortest time from priming to laying"),
        truth("paint_under", "there is paint under the adhesive"),
        number("paint_age", "h", "age of that paint when panels are laid"),
        truth("bond_tried", "an offcut is tried on this face, or on one of the same field with like coating and state"),
        number("bond_tried_for", "h", "how long the tried offcut is left on"),
        # The panels themselves
        truth("panels_settled", "the panels are left in the room to settle before they are laid"),
        number("panels_settle", "h", "how long they are left there"),
        truth("rolled", "the panels are rolled after laying"),
        truth("rolled_at_once", "they are rolled at once, without waiting for anything"),
    ),
)

ROWS: tuple[RowType, ...] = (SURFACE,)
