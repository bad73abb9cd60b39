"""The house file as data: what a team changes about the rulebook, what things cost it, when it works."""

from typing import Annotated, ClassVar, Literal

from pydantic import ConfigDict, Field

from plumbrule.plan.part import Part, Text
from plumbrule.plan.words import Carries, Weekday
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Force, LineLoad, Name

Level = Literal["stop-work", "correction", "advisory"]
LEVELS: tuple[str, ...] = ("stop-work", "correction", "advisory")

SettingName = Annotated[str, Field(pattern="^[a-z][a-z0-9_]{0,39}$")]
Clock = Annotated[str, Field(pattern="^(?:[01]?[0-9]|2[0-3]):[0-5][0-9]$")]
Price = Annotated[float, Field(ge=0, le=1e9)]


class Prices(Part):
    """What things cost, so that cures can be ranked. The groups are those of a purchase list."""

    currency: Text | None = None
    """what a price is counted in"""
    panels: dict[Text, Price] | None = None
    """one panel"""
    steel: dict[Text, Price] | None = None
    """one bar"""
    screws: dict[Text, Price] | None = None
    """one screw"""
    washers: dict[Text, Price] | None = None
    """one washer"""
    boards: dict[Text, Price] | None = None
    """one board"""
    timber: dict[Text, Price] | None = None
    """one stick"""
    trims: dict[Text, Price] | None = None
    """one stick"""
    sealants: dict[Text, Price] | None = None
    """one cartridge"""
    finishes: dict[Text, Price] | None = None
    """one litre"""
    abrasives: dict[Text, Price] | None = None
    """one sheet or disc"""
    electrical: dict[Text, Price] | None = None
    """one fitting"""
    protection: dict[Text, Price] | None = None
    """one piece"""
    hour: Price | None = None
    """one hour of work"""


class Hours(Part):
    """When work is done. Waits run on through nights and weekends; work does not."""

    starts: Clock | None = None
    """when the working day begins, in quotes: "7:30" """
    ends: Clock | None = None
    """when the working day ends, in quotes: "16:00" """
    days: Listed[Weekday] | None = None
    """working days of the week"""


class Loads(Part):
    """The loads that boards are tried with, where a house asks more than the benchmarks. Never less."""

    person: Force | None = None
    """one person, 250 lbf to 450 lbf"""
    seat: LineLoad | None = None
    """a full seat along its length, 120 lbf/ft to 300 lbf/ft"""
    storage: dict[Carries, LineLoad] | None = None
    """what is stored, by what the board carries, 25 lbf/ft to 150 lbf/ft"""
    lean: Force | None = None
    """somebody who leans on a shelf, 50 lbf to 250 lbf"""


class House(Part):
    """What a team makes of the rulebook. Every report names the house file that was in force."""

    model_config = ConfigDict(title="House file")
    HINTS: ClassVar[dict[str, str]] = {
        "ignore": "A rule is not switched off: give it a level, or allow a departure in the plan.",
        "disable": "A rule is not switched off: give it a level, or allow a departure in the plan.",
        "severity": "Write levels.",
    }

    settings: dict[Name, dict[SettingName, float | str]] | None = None
    """rule -> setting -> value, with its unit where it has one, within the range that the rule allows"""
    levels: dict[Name, Level] | None = None
    """rule -> stop-work, correction or advisory"""
    trial: Listed[Name] | None = None
    """rules that are tried out: they advise and never fail a plan"""
    rules: Listed[Text] | None = None
    """folders with rules of your own, from the place of this file"""
    packs: Listed[Text] | None = None
    """names of installed rule packs"""
    prices: Prices | None = None
    """what things cost"""
    hours: Hours | None = None
    """when work is done"""
    loads: Loads | None = None
    """what boards are tried with"""
