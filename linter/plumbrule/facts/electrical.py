"""Rows of electrical boxes and of fittings that may not be covered or heated."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def electrical_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind."""
    return {}
