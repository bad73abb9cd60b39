"""The shipped plans, good and faulty, each examined once for all the tests that ask."""

from __future__ import annotations

from datetime import date
from functools import cache

from plumbrule import shipped
from plumbrule.inspection.examine import Examined, examine
from plumbrule.reading.places import read_file
from plumbrule.rulebook.load import load
from plumbrule.rulebook.rulebook import Rulebook

PLANS = shipped.folder("plans")
GOOD = sorted(path.stem for path in PLANS.glob("*.yaml"))


@cache
def rulebook() -> Rulebook:
    """The rulebook in force."""
    return load()


@cache
def examined(name: str) -> Examined:
    """A plan by its name below the folder of plans, as in `faulty/thin-board-under-people`."""
    return examine(read_file(PLANS / f"{name}.yaml"), rulebook(), date(2026, 6, 1))
