"""Every fixed vocabulary of a plan, once: the type a model uses, and the tuple a list or a rule catalogue uses."""

from __future__ import annotations

from typing import Literal, get_args

Status = Literal["template", "draft", "for building", "built"]
Use = Literal["dwelling", "public room", "workshop"]
People = Literal["adults", "children", "frail people"]
STATUSES: tuple[str, ...] = get_args(Status)
USES: tuple[str, ...] = get_args(Use)
PEOPLE: tuple[str, ...] = get_args(People)

# Walls

WallEnd = Literal["door casing", "window casing", "cabinet", "open"]
Separation = Literal["none", "sound", "garage", "fire", "other dwelling"]
Lining = Literal[
    "gypsum board", "plaster on wood lath", "plaster on metal lath", "gypsum plaster on brick", "plywood",
    "fibreboard", "solid boards", "cement board", "tile",
]  # fmt: skip
StudSize = Literal["2x3", "2x4", "2x6", "2x8", "3x4", "4x4", "4x6"]
# Lumber that blocks and cleats are cut from; the studs are among it.
LumberSize = Literal[
    "1x2", "1x3", "1x4", "1x6", "1x8", "2x2", "2x3", "2x4", "2x6", "2x8", "2x10", "2x12", "3x4", "3x6", "4x4", "4x6",
    "4x8", "4x10", "6x6",
]  # fmt: skip
FramingKind = Literal["wood studs", "steel studs", "masonry", "concrete"]
# The group names of the wood design values, lower case and without brackets; `unknown` is the weakest of them.
FramingSpecies = Literal[
    "spruce-pine-fir", "spruce-pine-fir south", "hem-fir", "hem-fir north", "douglas fir-larch",
    "douglas fir-larch north", "douglas fir-south", "southern pine", "mixed southern pine", "western cedars",
    "western cedars north", "redwood", "eastern softwoods", "western woods", "northern species", "eastern hemlock",
    "western hemlock", "balsam fir", "ponderosa pine", "red pine", "northern pine", "eastern white pine",
    "western white pine", "eastern spruce", "sitka spruce", "coast sitka spruce", "engelmann spruce-lodgepole pine",
    "alaska cedar", "northern white cedar", "aspen", "yellow poplar", "white oak", "red oak", "northern red oak",
    "mixed oak", "red maple", "mixed maple", "beech-birch-hickory", "unknown",
]  # fmt: skip
FramingGrade = Literal["clear", "select", "knotty", "construction", "No. 1", "No. 2", "Stud"]
StudFinder = Literal["magnet", "probe hole", "detector", "wall opened", "nail line", "box opened"]
ServiceFinder = Literal["cable scanner", "pipe scanner", "box opened", "wall opened", "drawings"]
Laid = Literal["flat", "on edge"]
Coating = Literal[
    "none", "flat paint", "eggshell paint", "satin paint", "semi-gloss paint", "gloss paint", "scrubbable paint",
    "limewash", "distemper", "varnish", "wallpaper", "vinyl wall covering", "skim plaster",
]  # fmt: skip
WallState = Literal[
    "sound", "greasy", "dusty", "chalking", "damp", "mouldy", "stained", "flaking", "loose paper", "hairline cracks",
    "bare board", "fresh plaster", "nicotine", "waxed",
]  # fmt: skip
Texture = Literal["smooth", "light orange peel", "heavy texture", "sand finish", "popcorn"]
TestResult = Literal["found", "not found"]
TestMethod = Literal["laboratory", "swab"]
OpeningEdge = Literal["casing", "return", "bare", "tile", "counter"]
BoxHolds = Literal["receptacle", "switch", "dimmer", "luminaire", "data", "blank", "thermostat"]
Cover = Literal["standard", "midsize", "oversize"]
CableDirection = Literal["up", "down", "left", "right", "not known"]
Fitting = Literal[
    "radiator", "baseboard heater", "wall heater", "stove", "stovepipe", "cooktop", "luminaire", "smoke alarm",
    "carbon monoxide alarm", "sprinkler", "thermostat", "grille", "panelboard", "shut-off valve", "access hatch",
    "handrail",
]  # fmt: skip
Turn = Literal["inside", "outside"]
WALL_ENDS: tuple[str, ...] = get_args(WallEnd)
SEPARATIONS: tuple[str, ...] = get_args(Separation)
LININGS: tuple[str, ...] = get_args(Lining)
STUD_SIZES: tuple[str, ...] = get_args(StudSize)
LUMBER_SIZES: tuple[str, ...] = get_args(LumberSize)
FRAMING_KINDS: tuple[str, ...] = get_args(FramingKind)
FRAMING_SPECIES: tuple[str, ...] = get_args(FramingSpecies)
FRAMING_GRADES: tuple[str, ...] = get_args(FramingGrade)
STUD_FINDERS: tuple[str, ...] = get_args(StudFinder)
SERVICE_FINDERS: tuple[str, ...] = get_args(ServiceFinder)
LAID: tuple[str, ...] = get_args(Laid)
COATINGS: tuple[str, ...] = get_args(Coating)
WALL_STATES: tuple[str, ...] = get_args(WallState)
TEXTURES: tuple[str, ...] = get_args(Texture)
TEST_RESULTS: tuple[str, ...] = get_args(TestResult)
TEST_METHODS: tuple[str, ...] = get_args(TestMethod)
OPENING_EDGES: tuple[str, ...] = get_args(OpeningEdge)
BOX_HOLDS: tuple[str, ...] = get_args(BoxHolds)
COVERS: tuple[str, ...] = get_args(Cover)
CABLE_DIRECTIONS: tuple[str, ...] = get_args(CableDirection)
FITTINGS: tuple[str, ...] = get_args(Fitting)
TURNS: tuple[str, ...] = get_args(Turn)

# Screws, steel and wood supports

ScrewKind = Literal[
    "wood screw", "lag screw", "structural screw", "deck screw", "drywall screw", "sheet-metal screw",
    "machine screw", "hanger bolt", "masonry anchor", "hollow-wall anchor", "toggle",
]  # fmt: skip
Head = Literal["flat", "oval", "pan", "round", "truss", "hex", "washer", "bugle", "trim"]
ScrewCoating = Literal["bare", "zinc", "black oxide", "galvanised", "stainless steel", "brass", "polymer"]
Steel = Literal[
    "A36", "A529-50", "A572-50", "A1011-SS33", "A1011-SS40", "A1011-SS50", "A1011-CS", "S235", "S275", "S355",
    "304 stainless", "6061-T6", "6063-T5", "unmarked",
]  # fmt: skip
SteelCoating = Literal["bare", "primer", "primer and enamel", "powder coat", "galvanised", "oil and wax"]
SlotDirection = Literal["across the grain", "along the grain"]
Deburr = Literal["both faces", "one face", "no"]
WallLeg = Literal["up", "down"]
AngleEnd = Literal["square", "mitred", "coped", "capped"]
LiningBehind = Literal["left in place", "cut away", "packed solid"]
NoPilot = Literal["none"]
SCREW_KINDS: tuple[str, ...] = get_args(ScrewKind)
HEADS: tuple[str, ...] = get_args(Head)
SCREW_COATINGS: tuple[str, ...] = get_args(ScrewCoating)
STEELS: tuple[str, ...] = get_args(Steel)
STEEL_COATINGS: tuple[str, ...] = get_args(SteelCoating)
SLOT_DIRECTIONS: tuple[str, ...] = get_args(SlotDirection)
DEBURR: tuple[str, ...] = get_args(Deburr)
WALL_LEGS: tuple[str, ...] = get_args(WallLeg)
ANGLE_ENDS: tuple[str, ...] = get_args(AngleEnd)
LINING_BEHIND: tuple[str, ...] = get_args(LiningBehind)

# Boards. No commas: a comma ends a value inside braces.

BoardSpecies = Literal[
    "western redcedar", "eastern redcedar", "northern white-cedar", "alaska cedar", "port-orford-cedar",
    "incense-cedar", "coast douglas-fir", "interior south douglas-fir", "western larch", "western hemlock",
    "eastern hemlock", "white fir", "balsam fir", "grand fir", "eastern white pine", "jack pine", "loblolly pine",
    "lodgepole pine", "longleaf pine", "ponderosa pine", "red pine", "shortleaf pine", "slash pine", "sugar pine",
    "western white pine", "old-growth redwood", "young-growth redwood", "black spruce", "engelmann spruce",
    "red spruce", "sitka spruce", "white spruce", "baldcypress", "tamarack", "red alder", "white ash", "black ash",
    "quaking aspen", "basswood", "beech", "yellow birch", "paper birch", "sweet birch", "black cherry",
    "american elm", "hard maple", "soft maple", "silver maple", "red oak", "white oak", "sweetgum", "black walnut",
    "yellow-poplar", "true mahogany", "african mahogany", "teak", "plywood", "MDF", "particleboard",
]  # fmt: skip
BoardGrade = Literal["clear", "select", "knotty", "construction"]
Sawn = Literal["flat", "quarter"]
Carries = Literal["seating", "standing", "books", "display", "storage", "nothing"]
Ease = Literal["sharp", "round", "chamfer", "bullnose"]
CrackFill = Literal["none", "epoxy", "wood patch", "butterfly key"]
Finish = Literal[
    "oil varnish", "wiping varnish", "oil polyurethane", "waterborne polyurethane", "two-part polyurethane",
    "lacquer", "shellac", "paint", "clear epoxy", "linseed oil", "tung oil", "oil-varnish blend", "hard-wax oil",
    "wax", "mineral oil", "none",
]  # fmt: skip
BOARD_SPECIES: tuple[str, ...] = get_args(BoardSpecies)
BOARD_GRADES: tuple[str, ...] = get_args(BoardGrade)
SAWN: tuple[str, ...] = get_args(Sawn)
CARRIES: tuple[str, ...] = get_args(Carries)
EASES: tuple[str, ...] = get_args(Ease)
CRACK_FILLS: tuple[str, ...] = get_args(CrackFill)
FINISHES: tuple[str, ...] = get_args(Finish)
# A cleat may be cut from framing lumber or from a board.
WoodSpecies = Literal[FramingSpecies, BoardSpecies]
WOOD_SPECIES: tuple[str, ...] = tuple(dict.fromkeys(FRAMING_SPECIES + BOARD_SPECIES))

# Panels, trims, sealants

PanelCore = Literal[
    "foamed PVC", "solid PVC", "polystyrene foam", "polyethylene foam", "PET felt", "MDF", "plywood", "solid wood",
    "cork", "gypsum", "mineral", "aluminium composite",
]  # fmt: skip
# Published tests of a whole room lined with the panels, burnt in full size.
RoomTest = Literal["none", "NFPA 286", "UL 1715", "UL 1040", "ISO 9705"]
PanelEdges = Literal["square", "shiplap", "tongue and groove", "bevelled", "micro-bevel"]
Adhesive = Literal[
    "acrylic foam tape", "rubber tape", "construction adhesive", "contact adhesive", "mastic",
    "water-based panel adhesive", "none",
]  # fmt: skip
AdhesiveCovers = Literal["whole back", "strips", "beads", "dabs"]
Scribed = Literal["first course", "none"]
LaidFrom = Literal["left", "right", "centre"]
Stagger = Literal["1/2", "1/3", "1/4"]
Trim = Literal[
    "J", "L", "H", "outside corner", "inside corner", "end cap", "quarter round", "cove", "base moulding",
    "base shoe", "scribe moulding", "crown moulding", "casing",
]  # fmt: skip
Sealant = Literal[
    "acrylic latex", "siliconised acrylic latex", "silicone", "polyurethane", "hybrid polymer", "butyl", "none",
]  # fmt: skip
Joint = Literal["ceiling", "inside corners", "openings", "floor", "trims"]
Backer = Literal["closed-cell rod", "open-cell rod", "closed-cell strip", "bond-breaker tape", "none"]
PANEL_CORES: tuple[str, ...] = get_args(PanelCore)
ROOM_TESTS: tuple[str, ...] = get_args(RoomTest)
PANEL_EDGES: tuple[str, ...] = get_args(PanelEdges)
ADHESIVES: tuple[str, ...] = get_args(Adhesive)
ADHESIVE_COVERS: tuple[str, ...] = get_args(AdhesiveCovers)
SCRIBED: tuple[str, ...] = get_args(Scribed)
LAID_FROM: tuple[str, ...] = get_args(LaidFrom)
STAGGERS: tuple[str, ...] = get_args(Stagger)
TRIMS: tuple[str, ...] = get_args(Trim)
TRIM_RUNS: tuple[str, ...] = ("floor", "ceiling", "openings")
SEALANTS: tuple[str, ...] = get_args(Sealant)
# Movement each way in percent, as sealants are classed; a tube without a figure says `none stated`.
MOVEMENT_CLASSES: tuple[float | str, ...] = (7.5, 12.5, 25, 35, 50, "none stated")
JOINTS: tuple[str, ...] = get_args(Joint)
BACKERS: tuple[str, ...] = get_args(Backer)

# Steps, protection, purchase

Task = Literal[
    "measure room", "find studs", "search for services", "test paint for lead", "test texture for asbestos",
    "record open wall", "snap level line", "test bond", "acclimatise", "protect room", "isolate circuit",
    "prove dead", "remove cover plates", "remove base trim", "cut away lining", "fit blocking",
    "strip wall covering", "scrape wall", "patch wall", "skim wall", "wash wall", "rinse wall", "abrade wall",
    "dust off wall", "prime wall", "wipe wall", "paint wall", "cut steel", "drill steel", "deburr steel",
    "coat steel", "drill pilot holes", "fix steel", "fix cleats", "fit corner trim", "dry lay panels", "lay panels",
    "roll panels", "fit box extenders", "fit base trim", "seal joints", "flatten board", "fill cracks",
    "ease edges", "sand board", "cut board to length", "finish board", "make rags safe", "set board",
    "screw board down", "proof load", "refit cover plates", "restore circuit", "hand over",
]  # fmt: skip
Wear = Literal[
    "safety glasses", "splash goggles", "face shield", "ear protection", "dust respirator", "vapour respirator",
    "chemical gloves", "work gloves", "cut-resistant gloves", "long sleeves", "knee pads",
]  # fmt: skip
Control = Literal[
    "dust extraction", "HEPA vacuum", "wet sanding", "room sealed off", "children kept out", "area kept clear",
    "ventilation", "ignition sources out", "sparks kept from burnables", "fire watch", "extinguisher at hand",
    "guard on", "work clamped", "bit stop", "breaker locked and tagged", "second person", "cleat or prop first",
    "ladder footed", "step platform", "laser below eye height", "eye wash at hand",
    "rags in water in a metal can", "rags laid flat outdoors", "lead-safe work",
]  # fmt: skip
Tester = Literal["two-pole contact tester", "multimeter", "non-contact pen", "plug-in tester"]
TesterProved = Literal["before and after", "before", "no"]
Where = Literal["in the room", "workshop", "outdoors"]
Product = Literal[
    "mild detergent", "alkaline cleaner", "trisodium phosphate", "degreaser", "alcohol and water",
    "mineral spirits", "deglosser", "water", "epoxy", "joint compound", "dust sheet",
]  # fmt: skip
BoxFitting = Literal["box extender", "extension ring", "device screw", "spacer", "blank cover"]
TASKS: tuple[str, ...] = get_args(Task)
Weekday = Literal["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]
WEEKDAYS: tuple[str, ...] = get_args(Weekday)
# Working hours of a house that gives none: common practice on small sites.
USUAL_START, USUAL_END = "8:00", "16:00"
USUAL_DAYS: tuple[str, ...] = WEEKDAYS[:5]
WEARS: tuple[str, ...] = get_args(Wear)
CONTROLS: tuple[str, ...] = get_args(Control)
TESTERS: tuple[str, ...] = get_args(Tester)
TESTER_PROVED: tuple[str, ...] = get_args(TesterProved)
WHERES: tuple[str, ...] = get_args(Where)
PRODUCTS: tuple[str, ...] = get_args(Product)
BOX_FITTINGS: tuple[str, ...] = get_args(BoxFitting)
# Tools named so often that a misspelling is worth catching; any other tool may be named too.
TOOLS: tuple[str, ...] = (
    "HEPA vacuum", "dust extraction", "extinguisher", "breaker lock", "bit stop", "hand roller", "step platform",
    "ladder", "eye wash", "metal can with lid", "laser level", "cable scanner", "pipe scanner", "dust sheet",
    "respirator filters",
)  # fmt: skip
ON_HAND: tuple[str, ...] = WEARS + TESTERS + TOOLS
