"""The whole plan as one model: every section of plan version 1."""

from dataclasses import dataclass, field
from typing import Any, ClassVar, Literal

from pydantic import ConfigDict, Field

from plumbrule.plan.boards import Board
from plumbrule.plan.departures import Departure
from plumbrule.plan.panels import PanelField, SealantPart, TrimPart
from plumbrule.plan.part import Named, Part, Text
from plumbrule.plan.purchase import PurchaseList
from plumbrule.plan.screws import Screw
from plumbrule.plan.site import Record, Site
from plumbrule.plan.steps import Step
from plumbrule.plan.supports import Bracket, Cleat, HolePattern, SteelAngle, SteelSection
from plumbrule.plan.walls import Corner, Wall
from plumbrule.reading.model import Listed
from plumbrule.reading.places import Document
from plumbrule.reading.pointer import get


class PlanFile(Part):
    """The plan of a wall-hung seat or shelf, or of a panelled wall, before anything is bought."""

    model_config = ConfigDict(defer_build=False, title="Plan of a wall-hung seat, shelf or panelled wall, version 1")
    HINTS: ClassVar[dict[str, str]] = {
        "variances": "Write departures.",
        "waivers": "Write departures.",
        "version": "Write plan: 1.",
    }

    plan: Literal[1]
    """version of this format"""
    title: Text
    """one line for the job sheet"""
    record: Record | None = None
    """which sheet this is"""
    site: Site | None = None
    """the house or room as a whole"""
    walls: Named[Wall] | None = None
    """walls, by name"""
    corners: Named[Corner] | None = None
    """where walls meet, by name"""
    screws: Named[Screw] | None = None
    """screws, by name"""
    sections: Named[SteelSection] | None = None
    """steel shapes, by name"""
    holes: Named[HolePattern] | None = None
    """drilling patterns, by name"""
    angles: Named[SteelAngle] | None = None
    """steel angles, by name"""
    brackets: Named[Bracket] | None = None
    """brackets, by name"""
    cleats: Named[Cleat] | None = None
    """wood ledgers, by name"""
    boards: Named[Board] | None = None
    """seats and shelves, by name"""
    panels: Named[PanelField] | None = None
    """panel fields, by name"""
    trims: Named[TrimPart] | None = None
    """mouldings and profiles, by name"""
    sealants: Named[SealantPart] | None = None
    """sealants, by name"""
    steps: Named[Step] | None = None
    """steps, by name"""
    on_hand: Listed[Text] = ()
    """tools and protection already owned"""
    purchase: PurchaseList | None = None
    """what is to be bought"""
    departures: Named[Departure] = Field(default_factory=dict)
    """rules knowingly not kept, by name"""


@dataclass(frozen=True, slots=True)
class Plan:
    """A plan as it was read: its model, the document it came from, and what is still to be measured.

    `to_measure` holds the pointers of all values that say `measure on site`; the model has None there.
    """

    document: Document
    model: PlanFile
    to_measure: tuple[str, ...] = ()
    # Places on a wall are asked for by every part that hangs on it; `resolve` works them out once.
    reckoned: dict[Any, Any] = field(default_factory=dict, repr=False, compare=False)

    def is_written(self, pointer: str) -> bool:
        """Whether the file has a value there. Where it has none, the model holds None or the default."""
        try:
            get(self.document.value, pointer)
        except LookupError:
            return False
        return True

    def as_written(self, pointer: str) -> str:
        """The text of a value in the file, quotes included; nothing if it is not written."""
        return self.document.written(pointer)
