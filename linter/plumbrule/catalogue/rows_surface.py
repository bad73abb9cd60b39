"""Rows of wall surfaces that something is stuck to or painted on."""

from __future__ import annotations

from plumbrule.catalogue.fact import RowType

ROWS: tuple[RowType, ...] = ()
