"""Which boards the published averages of clear wood speak of, and what is said of those they do not."""

from __future__ import annotations

from plumbrule.mechanics.given import Given, finite
from plumbrule.mechanics.table_rows import Board
from plumbrule.mechanics.tables import Tables
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook

# Sheets are glued from pieces: their makers' figures would be needed.
SHEETS = ("plywood", "MDF", "particleboard")


def solid_board(tables: Tables, species: str) -> Board:
    """The row of a solid board. Raises OutsideRulebook for plywood, MDF and particleboard, which have no published
    averages here, NotPossible for a name that no table knows."""
    if species in SHEETS:
        raise OutsideRulebook(
            f"A board of {species} has no published strength, stiffness or movement here: go by its maker's figures, "
            "or use solid wood."
        )
    return tables.board(species)


def published(board: Board, value: float | None, what: str) -> float:
    """`value` of the row. Raises OutsideRulebook, naming `what`, where the handbook prints none for this species."""
    if value is None:
        raise OutsideRulebook(
            f"No {what} is published for {board.name}: choose a species that has one, or ask for a tested value."
        )
    return value


def require_thickness(thickness: Given) -> float:
    """The thickness of a board, mm. Raises NotPossible unless it is a measure above zero."""
    value = finite("the board's thickness", thickness)
    if value <= 0:
        raise NotPossible(f"the board's thickness is {value:g}; it must be more than zero")
    return value
