"""What a screw is driven into: a stud, a block let in between studs, or the board above it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal, NamedTuple

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.drilling import Drilling
from plumbrule.facts.reference import tables
from plumbrule.facts.room import framing_kind
from plumbrule.facts.supports import Support
from plumbrule.mechanics.outside import INSIDE, outside, support_word
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan import resolve
from plumbrule.plan.boards import Board
from plumbrule.plan.framing import Block, Framing
from plumbrule.plan.walls import Wall

Into = Literal["stud", "block", "board"]

# Sheets are no clear wood: their makers' figures would be needed.
SHEETS = ("plywood", "MDF", "particleboard")


class Wood(NamedTuple):
    """One piece of wood, or the weaker of several boards. `species` lists every one that counts."""

    into: Into
    depth: Input
    species: tuple[Input, ...]


def wood_of(support: Support, drilling: Drilling) -> Wood:
    """What the screw of a hole goes into."""
    if drilling.leg == "seat":
        return _of_boards(support.boards)
    block = block_of(support, drilling)
    if block is not None:
        name, piece = block
        here = f"/walls/{support.wall_name}/blocking/{name}"
        size = resolve.block_size(piece)
        return Wood("block", Input(size[1] if size else None, f"{here}/size", also=(f"{here}/laid",)),
                    (Input(piece.species, f"{here}/species"),))  # fmt: skip
    framing = support.wall.framing if support.wall else None
    here = f"/walls/{support.wall_name}/framing"
    return Wood("stud", stud_depth(framing, here), (Input(framing.species if framing else None, f"{here}/species"),))


def block_of(support: Support, drilling: Drilling) -> tuple[str, Block] | None:
    """The block that a wall hole names with `into`, by its name."""
    name = drilling.holes.into.value
    if drilling.leg != "wall" or name is None or support.wall is None:
        return None
    return name, (support.wall.blocking or {})[name]


def stud_width(framing: Framing | None, here: str) -> Input:
    """The narrow side of the studs. `here` is the pointer of the framing."""
    size = resolve.stud_size(framing) if framing else None
    return Input(size.narrow if size else None, f"{here}/stud")


def stud_depth(framing: Framing | None, here: str) -> Input:
    """The wide side of the studs."""
    size = resolve.stud_size(framing) if framing else None
    return Input(size.wide if size else None, f"{here}/stud")


def framing_gravity(desk: Desk, species: Input) -> float:
    """Specific gravity of a framing species, for the screw formulas."""
    return tables().framing(desk.word(species)).gravity


def gravity(desk: Desk, wood: Wood) -> float:
    """Specific gravity of the wood, of the lightest where there are several. Raises OutsideRulebook for sheets."""
    desk.need_all(*wood.species)
    if wood.into != "board":
        return framing_gravity(desk, wood.species[0])
    names = [desk.word(species) for species in wood.species]
    for name in names:
        if name in SHEETS:
            raise OutsideRulebook(
                f"A board of {name} has no published screw strength here: go by its maker's figures, or use solid wood."
            )
    return min(tables().board(name).gravity for name in names)


def cleat_gravity(desk: Desk, species: Input) -> float:
    """Specific gravity of a cleat, which is cut from framing lumber or from a board. Where a name is both, the
    lighter reading is taken."""
    name = desk.word(species)
    if name in SHEETS:
        raise OutsideRulebook(f"A cleat of {name} has no published screw strength here: use solid wood.")
    found = [tables().framing(name).gravity] if name in tables().names("framing") else []
    if name in tables().names("boards"):
        found.append(tables().board(name).gravity)
    return min(found)


def require_wood_framing(desk: Desk, wall_name: str, wall: Wall | None) -> None:
    """Raises OutsideRulebook where the wall is not framed with wood, Missing where nobody says what it is."""
    if wall is None:
        return
    word = support_word(desk.word(framing_kind(wall_name, wall)))
    if word != INSIDE:
        raise outside(word)


def _of_boards(boards: Sequence[tuple[str, Board]]) -> Wood:
    if not boards:
        return Wood("board", Input(None, "/boards"), (Input(None, "/boards"),))
    thin = [(board.thickness, f"/boards/{name}/thickness") for name, board in boards]
    unknown = [pointer for thickness, pointer in thin if thickness is None]
    if unknown:
        depth = Input(None, unknown[0], also=tuple(unknown[1:]))
    else:
        least, pointer = min((thickness or 0.0, pointer) for thickness, pointer in thin)
        depth = Input(least, pointer)
    return Wood("board", depth, tuple(Input(board.species, f"/boards/{name}/species") for name, board in boards))
