"""Rows of electrical boxes and of fittings that may not be covered or heated."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
