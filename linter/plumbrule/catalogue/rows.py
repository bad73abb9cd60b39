"""The catalogue: every row type a rule may look at, by its word."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from types import MappingProxyType

from plumbrule.catalogue import (
    rows_electrical,
    rows_finishing,
    rows_hazards,
    rows_joints,
    rows_panels,
    rows_purchase,
    rows_room,
    rows_sequence,
    rows_surface,
)
from plumbrule.catalogue.fact import RowType
from plumbrule.catalogue.rows_boards import BOARD, CRACK
from plumbrule.catalogue.rows_framing import BLOCK, SCREW, STUD
from plumbrule.catalogue.rows_loads import (
    BEAM_LOAD,
    BLOCK_LOAD,
    BOARD_LOAD,
    CLEAT_LOAD,
    HOLD_DOWN,
    LEG_LOAD,
    PUSH_LOAD,
    STATION_LOAD,
)
from plumbrule.catalogue.rows_site import SITE, WALL
from plumbrule.catalogue.rows_steel import ANGLE, BRACKET, CLEAT, HOLE

_ROW_TYPES = (
    *(SITE, WALL, STUD, BLOCK, SCREW, HOLE, ANGLE, BRACKET, CLEAT, BOARD, CRACK),
    *(BOARD_LOAD, STATION_LOAD, HOLD_DOWN, LEG_LOAD, BEAM_LOAD, BLOCK_LOAD, PUSH_LOAD, CLEAT_LOAD),
    *rows_room.ROWS,
    *rows_panels.ROWS,
    *rows_joints.ROWS,
    *rows_electrical.ROWS,
    *rows_surface.ROWS,
    *rows_finishing.ROWS,
    *rows_sequence.ROWS,
    *rows_hazards.ROWS,
    *rows_purchase.ROWS,
)

CATALOGUE: Mapping[str, RowType] = MappingProxyType({row.kind: row for row in _ROW_TYPES})
if len(CATALOGUE) != len(_ROW_TYPES):
    raise ValueError("two row types have one name: the rules of one would look at the rows of the other")


def digest() -> str:
    """Changes whenever a field, its type or its unit changes: a compiled rulebook made before is then not used."""
    text = "\n".join(
        f"{kind}.{fact.name} {fact.type!r} {fact.unit}" for kind, row in CATALOGUE.items() for fact in row.facts
    )
    return hashlib.sha256(text.encode()).hexdigest()
