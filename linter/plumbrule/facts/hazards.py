"""Rows of what can hurt someone, and of what is written down and worn against it."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def hazards_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind."""
    return {}
