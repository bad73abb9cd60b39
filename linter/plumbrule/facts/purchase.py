"""Rows of what the job needs, beside what is bought."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def purchase_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind."""
    return {}
