"""The formats an inspection can be reported in: one module each, loaded when it is asked for."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Protocol, cast

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.fault import Fault
    from plumbrule.report.outcome import Outcome
    from plumbrule.report.terms import Terms
    from plumbrule.rulebook.rulebook import Rulebook

_MODULES = {"text": "text", "json": "data", "sarif": "sarif", "junit": "junit"}
FORMATS = tuple(_MODULES)


class Format(Protocol):
    """What each of these modules offers. A plan's part is made where the plan was inspected, in a worker process too;
    the whole is put together from the parts, in the order of the plans."""

    def plan(self, examined: Examined, terms: Terms) -> str:
        """The part of a plan that was inspected."""

    def unreadable(self, path: str, faults: Sequence[Fault], terms: Terms) -> str:
        """The part of a plan that could not be read."""

    def whole(self, outcomes: Sequence[Outcome], terms: Terms, rulebook: Rulebook) -> Iterable[str]:
        """The report, piece by piece."""


def format_of(name: str) -> Format:
    """The module of a format. Raises KeyError for a name that is not in FORMATS."""
    from importlib import import_module

    return cast(Format, import_module(f"plumbrule.report.{_MODULES[name]}"))
