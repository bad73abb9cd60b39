"""Rows of the room as a whole: its corners and openings, and how far its measures agree."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def room_fit_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind."""
    return {}
