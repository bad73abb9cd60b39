"""Rows of panels: each panelled wall, each course, each piece."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
