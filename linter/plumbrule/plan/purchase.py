"""The purchase list, by group."""

from plumbrule.plan import answers, words
from plumbrule.plan.part import Count, Part, Text
from plumbrule.reading.quantities import Mass, Size, Volume

BuyingName = Text


class Purchase(Part):
    """One line of the purchase list."""

    count: Count | None = None
    """how many"""
    stick: Size | None = None
    """length of one bar or moulding as sold"""
    length: Size | None = None
    """length of a board, screw or roll"""
    depth: Size | None = None
    """depth of a board or extender"""
    thickness: Size | None = None
    """thickness of a board"""
    cartons: Count | None = None
    """cartons"""
    cartridge: Volume | None = None
    """what one cartridge holds"""
    volume: Volume | None = None
    """volume altogether"""
    mass: Mass | None = None
    """mass altogether"""
    species: answers.WoodSpecies | None = None
    """species of wood"""
    fitting: words.BoxFitting | None = None
    """which box fitting"""


Bought = dict[BuyingName, Purchase]


class PurchaseList(Part):
    """What is to be bought. A name is the part it is for, a lumber size, grit-NNN or a product."""

    panels: Bought | None = None
    """panels, by panel field"""
    steel: Bought | None = None
    """steel bars, by section"""
    screws: Bought | None = None
    """screws, by name"""
    washers: Bought | None = None
    """washers, by the screw they are for"""
    boards: Bought | None = None
    """boards, by name"""
    timber: Bought | None = None
    """framing lumber, by size"""
    trims: Bought | None = None
    """trims, by name"""
    sealants: Bought | None = None
    """sealants, by name"""
    backers: Bought | None = None
    """backers, by the sealant they are for"""
    finishes: Bought | None = None
    """finishes, by board"""
    primers: Bought | None = None
    """primers, by wall, or `wall` and `steel`"""
    paints: Bought | None = None
    """paints, by wall, or `wall` and `steel`"""
    fillers: Bought | None = None
    """fillers, by crack or by product"""
    cleaners: Bought | None = None
    """cleaners, by product"""
    adhesives: Bought | None = None
    """adhesives, by panel field"""
    abrasives: Bought | None = None
    """abrasives, as grit-NNN"""
    electrical: Bought | None = None
    """box fittings, by box or by kind"""
    protection: Bought | None = None
    """protection and sheets"""
