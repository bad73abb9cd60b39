"""Rows of a shipped plan with a patch, for the tests of what is in the wall and what is driven into it."""

from __future__ import annotations

from typing import Any

from steel_rows import plan_of

from plumbrule.catalogue.fact import Row
from plumbrule.facts.frame import block_rows, stud_rows
from plumbrule.facts.room import wall_row
from plumbrule.facts.screw import screw_rows
from plumbrule.facts.supports import supports

Changes = dict[str, Any]


def screw_of(name: str, label: str, changes: Changes | None = None, gone: tuple[str, ...] = ()) -> Row:
    """One screw, by its label such as `W1 of seat-back`."""
    plan = plan_of(name, changes, gone)
    return next(row for row in screw_rows(plan, supports(plan)) if row.label == f"screw {label}")


def studs_of(name: str, wall: str, changes: Changes | None = None, gone: tuple[str, ...] = ()) -> list[Row]:
    """The stud rows of a wall."""
    plan = plan_of(name, changes, gone)
    return [row for row in stud_rows(plan, supports(plan)) if row.part == f"/walls/{wall}"]


def block_of(name: str, block: str, changes: Changes | None = None, gone: tuple[str, ...] = ()) -> Row:
    """One block, by its name."""
    plan = plan_of(name, changes, gone)
    return next(row for row in block_rows(plan, supports(plan)) if row.label == f"block {block}")


def wall_of(name: str, wall: str, changes: Changes | None = None, gone: tuple[str, ...] = ()) -> Row:
    """One wall, by its name."""
    plan = plan_of(name, changes, gone)
    return wall_row(wall, (plan.model.walls or {})[wall], supports(plan), plan.model.steps)
