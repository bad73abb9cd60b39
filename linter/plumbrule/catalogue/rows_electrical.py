"""Rows of electrical boxes, of fittings that may not be covered or heated, and of the bands where cables run."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType, count, number, truth, word, words
from plumbrule.plan import words as plan_words

# The wiring codes whose figures the rules know. NEC: United States, CEC: Canada, BS 7671: United Kingdom.
CODES = ("NEC", "CEC", "BS 7671")
BOX_CODES = ("NEC", "CEC")

BOX = RowType(
    "box",
    "One electrical box in a wall that gets panels, steel or a board.",
    (
        word("code", BOX_CODES, "wiring code of the country, where its figures for boxes are known"),
        word("holds", plan_words.BOX_HOLDS, "what is in it"),
        count("gangs", "devices side by side"),
        truth("public_room", "the room is a public one"),
        truth("panelled", "panels are laid round it"),
        # The rim
        truth("face_burns", "the finished face round it can burn: panel, or the outermost layer of the lining"),
        number("set_back", "mm", "rim behind the face of the lining today; below zero it stands proud"),
        number("extender", "mm", "how far a listed extender brings the rim forward"),
        number("rim_behind", "mm", "rim behind the finished face; below zero it stands proud"),
        number("rim_proud", "mm", "rim before the finished face; below zero it lies behind it"),
        truth("extended", "the plan has an extender for it"),
        truth("extender_fitted", "a step fits the extender"),
        truth("extended_last", "the extender goes in when the panels are up"),
        number("device_screw", "mm", "length of the device screws that are bought"),
        number("device_screw_needed", "mm", "shortest screw that still holds a device through the extender"),
        # The cut-out and its cover
        truth("cut_out", "the panel is cut out round it"),
        number("gap", "mm", "room left on each side between the box and the edge of the cut-out"),
        number("plate_width", "mm", "width of the cover plate"),
        number("plate_height", "mm", "height of the cover plate"),
        number("cover_lap", "mm", "what the plate laps over the panel, at the narrower sides"),
        number(
            "plate_free", "mm",
            "from its plate to the nearest trim, opening, ceiling, wall end or other plate; below zero they overlap",
        ),
        truth("cover_off", "a step takes the cover plate off before the panels are laid"),
        truth("cover_back", "a step puts the cover plate back after the last hand was in the box"),
        truth("restored", "a step restores the circuit"),
        truth("cover_before_power", "the circuit is restored only when the cover is back"),
        # Dead before it is open
        truth("opened", "its cover comes off, or the wall round it is cut open or panelled"),
        truth("isolated", "the circuit is isolated before any hand is in the box"),
        truth("locked", "each isolation locks and tags the breaker"),
        truth("proved_dead", "it is proved dead after it was isolated and before any hand is in it"),
        number("since_proof", "h", "time that is sure to lie between the last proof and a hand in it"),
        words("testers", plan_words.TESTERS, "what it is proved dead with"),
        word("tester_proved", plan_words.TESTER_PROVED, "whether that tester was tried on a live source"),
        # What is near it
        number("height", "mm", "centre of the box over the floor where the floor lies lowest"),
        truth("parts_near", "steel, a cleat or a board is put on its wall"),
        number("clear_of_parts", "mm", "to the nearest steel, cleat or board on its wall; below zero it is behind it"),
        number("plate_clear_of_parts", "mm", "the same from its cover plate"),
        truth("over_a_board", "a board stands out under it"),
        number("reach_over", "mm", "how far one reaches over that board to it"),
        truth("under_a_seat", "a board at seat height stands out over it"),
        number("reach_under", "mm", "how far one reaches in under that board to it"),
        truth("beside_a_board", "a board stands out straight above or below it"),
        number("plug_room", "mm", "from its plate up or down to that board"),
        # Cables
        truth("screws_near", "screws of a support go into its wall"),
        truth("ways_known", "it is known which way cables leave it"),
        number("screw_off_way", "mm", "from the nearest screw in the wall to the way its cables take"),
    ),
)  # fmt: skip

FITTING = RowType(
    "fitting",
    "One heater, alarm, valve or the like on a wall that gets panels or boards.",
    (
        word("kind", plan_words.FITTINGS, "what it is"),
        truth("heats", "it gets hot"),
        truth("label_read", "the distance that its maker asks for is known"),
        number("keep_clear", "mm", "distance that its maker asks to be kept free"),
        truth("panel_over_it", "a panel lies over it"),
        truth("burnable_near", "something that burns is put on its wall: a board, or a panel with a core that burns"),
        number("burnable_distance", "mm", "from it to the nearest of these; nothing where they touch or overlap"),
        truth("foam_near", "panels with a core of foamed plastic are put on its wall"),
        number("foam_distance", "mm", "from it to the nearest of these"),
        truth("board_near", "a board or steel is put on its wall"),
        number("clear_of_parts", "mm", "to the nearest steel, cleat or board on its wall; below zero it is behind it"),
        # Working space of a panelboard
        word("code", BOX_CODES, "wiring code of the country, where its figures are known"),
        truth("board_before_it", "a board stands out of its wall below head height"),
        number("beside_its_centre", "mm", "from the centre line of a panelboard sideways to that board"),
        number("clear_in_front", "mm", "width of the way in front of its wall"),
    ),
)  # fmt: skip

CABLE_ZONE = RowType(
    "cable_zone",
    "The screws of one angle, bracket or cleat in a wall, and the bands in which the wiring code lets cables run.",
    (
        word("code", CODES, "wiring code of the country, where the rulebook knows one"),
        number("below_ceiling", "mm", "from the ceiling down to the highest of its wall screws"),
        truth("near_a_corner", "its wall runs into an inside corner"),
        number("from_corner", "mm", "from an inside corner to the nearest of its wall screws"),
    ),
)

FIXTURES = RowType(
    "fixtures",
    "What was looked for on one wall that gets panels, steel or a board.",
    (
        truth("boxes_listed", "its boxes are listed, also those that were opened to look for cables"),
        truth("fittings_listed", "its fittings are listed, also the lamps that its boxes hold"),
    ),
)

ROWS: tuple[RowType, ...] = (FIXTURES, BOX, FITTING, CABLE_ZONE)
