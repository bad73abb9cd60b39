"""Rows of wall faces, changes of grit, finishes and fills of a shipped plan with a patch."""

from __future__ import annotations

from typing import Any

from steel_rows import plan_of

from plumbrule.catalogue.fact import Row
from plumbrule.facts.finishing import finishing_rows
from plumbrule.facts.supports import supports
from plumbrule.facts.surface import surface_rows


def faces_of(name: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> dict[str, Row]:
    """Rows of wall faces by label."""
    plan = plan_of(name, changes, gone)
    return {row.label: row for row in surface_rows(plan, supports(plan))["surface"]}


def face_of(name: str, wall: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    """The row of one wall's face."""
    return faces_of(name, changes, gone)[f"surface of wall {wall}"]


def finishing_of(
    name: str, kind: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()
) -> tuple[Row, ...]:
    """The rows of one kind: grit_step, finish or fill."""
    plan = plan_of(name, changes, gone)
    return finishing_rows(plan, supports(plan))[kind]
