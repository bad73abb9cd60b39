"""Rows of sanding, filling and finishing boards."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
