"""The shipped tables as facts use them: read once."""

from __future__ import annotations

from functools import cache

from plumbrule.mechanics.tables import Tables, load


@cache
def tables() -> Tables:
    """The tables of species, screws, steels and holes. Raises FileNotFoundError when the installation is broken."""
    return load()
