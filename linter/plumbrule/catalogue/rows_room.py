"""Rows of the room as a whole: its corners and openings, and how far its measures agree."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
