"""Rows of the steps and of what they wait for."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
