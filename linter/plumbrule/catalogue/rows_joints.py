"""Rows of the gaps at the edges of panels, and of the sealant and trim that close them."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
