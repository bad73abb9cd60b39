"""Rows of what can hurt someone, and of what is written down and worn against it."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
