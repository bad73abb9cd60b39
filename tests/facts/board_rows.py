"""Rows of boards and cracks of a shipped plan with a patch."""

from __future__ import annotations

from typing import Any

from steel_rows import plan_of

from plumbrule.catalogue.fact import Row
from plumbrule.facts.board import board_rows
from plumbrule.facts.crack import crack_rows
from plumbrule.facts.screw import screw_rows
from plumbrule.facts.supports import supports


def board_of(name: str, board: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    """The row of one board."""
    plan = plan_of(name, changes, gone)
    return next(row for row in board_rows(plan, supports(plan)) if row.label == f"board {board}")


def crack_of(name: str, crack: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    """The row of one crack."""
    plan = plan_of(name, changes, gone)
    carried = supports(plan)
    boards = dict(zip(plan.model.boards or {}, board_rows(plan, carried), strict=True))
    return next(row for row in crack_rows(plan, carried, boards) if row.pointer.endswith(f"/{crack}"))


def screw_of(name: str, label: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    """The row of one screw, by its whole label."""
    plan = plan_of(name, changes, gone)
    return next(row for row in screw_rows(plan, supports(plan)) if row.label == label)
