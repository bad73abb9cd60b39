"""A hold-down screw in its board: how near it comes to the board's edges, and what room it leaves the board to move."""

from __future__ import annotations

from plumbrule.catalogue.fact import Row
from plumbrule.facts.board_moisture import sawn_of, species_of
from plumbrule.facts.board_place import Placed, back_edge, front_edge, screw_spot
from plumbrule.facts.board_screws import ROW, opening_across
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import Fastening, given
from plumbrule.facts.row_field import number_of, numbers_of
from plumbrule.facts.supports import boards_on
from plumbrule.mechanics import slack
from plumbrule.mechanics.given import si
from plumbrule.mechanics.moisture import DOUBT
from plumbrule.mechanics.movement import board_movement
from plumbrule.mechanics.worked import Worked

# Where the coefficients of movement are published, taken as far as the doubt of the band goes.
_FROM, _TO = 6.0 - DOUBT, 14.0 + DOUBT


def work_in_board(desk: Desk, fastening: Fastening, placed: Placed, board: Row) -> None:
    """What hangs on the board that the screw goes into; `board` is its finished row. Needs `diameter`."""
    drilling = fastening.drilling
    own = fastening.support.wall_name == placed.board.wall
    # What a person would move is named first: the mark along the steel, or how far from its heel the row is drilled.
    along, out = (drilling.on_wall, drilling.y) if own else (drilling.y, drilling.on_wall)

    def to_end() -> float:
        desk.need(along)
        spot = screw_spot(desk, placed, fastening.support, drilling)
        return min(spot.to_left, spot.to_right)

    def to_edge() -> float:
        desk.need(out)
        across = screw_spot(desk, placed, fastening.support, drilling).across
        return min(across - back_edge(desk, placed), front_edge(desk, placed) - across)

    desk.get("end_distance", to_end)
    desk.get("edge_distance", to_edge)

    def from_fixed() -> float:
        across = screw_spot(desk, placed, fastening.support, drilling).across
        return across - si(number_of(desk, board, "fixed_row"))

    desk.get("from_fixed_row", from_fixed)
    desk.get("holds_the_board", lambda: abs(desk.number("from_fixed_row")) <= ROW)
    desk.get("play_given", lambda: _play_given(desk, fastening))
    desk.get("play_needed", lambda: _play_needed(desk, placed, board))


def work_without_board(desk: Desk, fastening: Fastening) -> None:
    """A hold-down screw under which no board is written: every measure waits for what would say which board it is."""
    for field in ("end_distance", "edge_distance", "from_fixed_row", "holds_the_board", "play_given", "play_needed"):
        desk.get(field, lambda: bool(desk.need(boards_on(fastening.support))))


def _play_given(desk: Desk, fastening: Fastening) -> Worked:
    holes = fastening.drilling.holes
    drilled = given(holes.drilled_within, "nothing is written: 1/16 in is taken")
    wide = opening_across(desk, fastening.drilling)
    diameter = desk.number("diameter")
    desk.need(Input(True, holes.countersink.pointer))
    # A hole that its screw does not enter has no play; that it is too small is another matter.
    return slack.slack_given(
        max(wide, diameter), diameter, desk.length(drilled), countersunk=holes.countersink.value is not None
    )


def _play_needed(desk: Desk, placed: Placed, board: Row) -> Worked:
    distance = abs(desk.number("from_fixed_row"))
    swell, dry, damp, fitted = numbers_of(desk, board, "movement_per_cent", "dry_end", "damp_end", "moisture")
    ends = (si(dry), si(damp), si(fitted))
    if distance == 0 or (min(ends) >= _FROM and max(ends) <= _TO):
        return slack.slack_needed(distance, swell, dry, damp, fitted)
    species, sawn = species_of(desk, placed), sawn_of(desk, placed)
    swelling = board_movement(species, sawn, distance, damp, fitted)
    return slack.play_needed(swelling, board_movement(species, sawn, distance, dry, fitted))
