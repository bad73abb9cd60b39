"""The sheet itself and the place: who measured, where the room is, what its air does over a year, who uses it."""

from plumbrule.plan import words
from plumbrule.plan.part import AtLeastOne, Part, Text
from plumbrule.reading.model import Listed
from plumbrule.reading.quantities import Date, Percent, Temperature


class Record(Part):
    """Which sheet is on the wall, and how far to trust it."""

    revision: AtLeastOne | None = None
    """number of this sheet; raise it when a measure changes"""
    measured: Date | None = None
    """day the room was measured, in quotes"""
    measured_by: Text | None = None
    """trade of whoever measured: carpenter, joiner, electrician"""
    status: words.Status | None = None
    """how far this plan has come; only a template may say `measure on site`"""


class Temperatures(Part):
    """Room temperature over a year."""

    coldest: Temperature | None = None
    """coldest the room gets"""
    warmest: Temperature | None = None
    """warmest the room gets"""


class Humidities(Part):
    """Relative humidity of the room over a year."""

    driest: Percent | None = None
    """driest the room gets, usually in the heating season"""
    dampest: Percent | None = None
    """dampest the room gets"""


class Site(Part):
    """The house or room as a whole."""

    region: Text | None = None
    """country by its two letters: US, CA, GB, AU, NZ, DE, FR"""
    use: words.Use | None = None
    """what the room is used for"""
    year_built: AtLeastOne | None = None
    """year the building was put up: decides whether old paint and textures are suspect"""
    temperature: Temperatures | None = None
    """room temperature over a year"""
    humidity: Humidities | None = None
    """relative humidity over a year"""
    people: Listed[words.People] | None = None
    """who will sit, reach and climb here"""
