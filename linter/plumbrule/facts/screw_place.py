"""Where a screw stands in its wood: off the stud's centre, from ends and edges, from its neighbours."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from math import hypot
from typing import NamedTuple

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.fastening import Fastening, given
from plumbrule.facts.wood import block_of, require_wood_framing, stud_width
from plumbrule.mechanics import tolerance
from plumbrule.mechanics.given import si
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.worked import Worked
from plumbrule.plan import resolve

SIXTEENTH = "nothing is written: holes are taken to be within 1/16 in of their marks"


class Nearest(NamedTuple):
    """What is known of the other screws in the same piece of wood."""

    others: int
    distance: float | None
    along_grain: bool
    pointers: tuple[str, ...]
    wanted: tuple[str, ...]


def work_place_in_stud(desk: Desk, fastening: Fastening) -> None:
    """Off-centre distances and the wood left beside a screw that is meant for a stud. Needs `bite`, `diameter`."""
    wall, name = fastening.support.wall, fastening.support.wall_name
    width = stud_width(wall.framing if wall else None, f"/walls/{name}/framing")

    def wooden() -> None:
        require_wood_framing(desk, name, wall)

    def off_centre() -> float:
        desk.need(Input(True, fastening.drilling.pointer))
        wooden()
        stud = _stud(fastening)
        desk.need_all(fastening.drilling.on_wall, *(Input(stud.centre, pointer) for pointer in stud.pointers))
        return abs(desk.length(fastening.drilling.on_wall) - (stud.centre or 0.0))

    def at_face() -> Worked:
        wooden()
        stud = _stud(fastening)
        framing = wall.framing if wall else None
        within = Input(framing.found_within if framing else None, f"/walls/{name}/framing/found_within")
        drilled = given(fastening.drilling.holes.drilled_within, SIXTEENTH)
        desk.need_all(within, drilled, given(fastening.drilling.holes.diameter))
        (off,) = desk.numbers("off_centre")
        return tolerance.offset_at_face(
            off, found=desk.length(within), drilled=desk.length(drilled), play=_play(desk, fastening),
            drift=_drift(desk, fastening, stud),
        )  # fmt: skip

    def beside() -> Worked:
        (offset,) = desk.numbers("off_centre_worst")
        return tolerance.cover_to_axis(desk.length(width), desk.line("off_centre_worst") or offset)

    def beside_tip() -> Worked:
        desk.need_all(width)
        offset, bite, diameter = desk.numbers("off_centre_worst", "bite", "diameter")
        if bite <= 0:
            raise outside("short bite")
        at_tip = tolerance.offset_at_tip(desk.line("off_centre_worst") or offset, tolerance.lean(bite))
        return tolerance.cover_at_tip(desk.length(width), at_tip, diameter)

    desk.get("off_centre", off_centre)
    desk.get("off_centre_worst", at_face)
    desk.get("wood_beside", beside)
    desk.get("wood_beside_tip", beside_tip)


def work_place_in_block(desk: Desk, fastening: Fastening) -> None:
    """Distances from the ends and edges of a block, drilling at its worst. A weight presses downward."""
    found = block_of(fastening.support, fastening.drilling)
    assert found is not None
    name, block = found
    here = f"/walls/{fastening.support.wall_name}/blocking/{name}"
    left, length = Input(block.left, f"{here}/left"), Input(block.length, f"{here}/length")
    bottom = Input(block.bottom, f"{here}/bottom")
    size = resolve.block_size(block)
    tall = Input(size[0] if size else None, f"{here}/size", also=(f"{here}/laid",))
    across, up = fastening.drilling.on_wall, fastening.height

    def error() -> float:
        drilled = given(fastening.drilling.holes.drilled_within, SIXTEENTH)
        return desk.length(drilled) + si(_play(desk, fastening))

    def to_end() -> float:
        desk.need_all(across, left, length)
        along = desk.length(across) - desk.length(left)
        return min(along, desk.length(length) - along) - error()

    def to_bottom() -> float:
        desk.need_all(up, bottom)
        return desk.length(up) - desk.length(bottom) - error()

    def to_edge() -> float:
        desk.need_all(up, bottom, tall)
        above = desk.length(up) - desk.length(bottom)
        return min(above, desk.length(tall) - above) - error()

    desk.get("end_distance", to_end)
    desk.get("edge_distance", to_edge)
    desk.get("loaded_edge_distance", to_bottom)


def work_neighbours(desk: Desk, fastening: Fastening, others: Mapping[int, Nearest]) -> None:
    """The nearest other screw in the same piece of wood. `others` is what `neighbours` found, by identity."""
    near = others[id(fastening)]

    def known() -> Nearest:
        if fastening.in_wall:
            require_wood_framing(desk, fastening.support.wall_name, fastening.support.wall)
        if near.wanted:
            raise Missing(near.wanted)
        desk.need_all(*(Input(True, pointer) for pointer in near.pointers))
        return near

    desk.get("neighbours", lambda: float(known().others))
    if near.others or near.wanted:
        desk.get("row_pitch", lambda: known().distance or 0.0)
        desk.get("pitch_along_grain", lambda: known().along_grain)


def neighbours(fastenings: Sequence[Fastening]) -> dict[int, Nearest]:
    """For each screw the nearest other one in the same stud, block or board, keyed by `id`.

    Where the place of one is not known, it might be the nearest to any other on that wall, so that their distances
    wait for it too.
    """
    groups: dict[tuple[str, ...], list[Fastening]] = {}
    for one in fastenings:
        groups.setdefault(_piece(one), []).append(one)
    found: dict[int, Nearest] = {}
    for key, group in groups.items():
        lost = [one for one in group if _at(one) is None]
        if key[0] == "stud":
            lost += [one for one in groups.get(("stud", key[1], ""), ()) if one not in group]
        wanted = tuple(dict.fromkeys(pointer for one in lost for pointer in _wanting(one)))
        placed = sorted((at, index) for index, one in enumerate(group) if (at := _at(one)) is not None)
        for order, (at, index) in enumerate(placed):
            found[id(group[index])] = _nearest(group, placed, order, at, wanted)
        for one in lost:
            found.setdefault(id(one), Nearest(0, None, False, (), wanted))
    return found


def _nearest(
    group: Sequence[Fastening], placed: Sequence[tuple[tuple[float, float], int]], order: int,
    at: tuple[float, float], wanted: tuple[str, ...],
) -> Nearest:  # fmt: skip
    best: tuple[float, float, float, int] | None = None
    for step in (-1, 1):
        place = order + step
        while 0 <= place < len(placed):
            (x, y), index = placed[place]
            across, up = abs(x - at[0]), abs(y - at[1])
            if best is not None and across > best[0]:
                break
            if best is None or hypot(across, up) < best[0]:
                best = (hypot(across, up), across, up, index)
            place += step
    if best is None:
        return Nearest(len(placed) - 1, None, False, (), wanted)
    distance, across, up, index = best
    me, other = group[placed[order][1]], group[index]
    pointers = tuple(dict.fromkeys(source.pointer for one in (me, other) for source in _place(one)))
    return Nearest(len(placed) - 1, distance, _along(me, across, up), pointers, wanted)


def _along(one: Fastening, across: float, up: float) -> bool:
    """Whether the line to the neighbour runs along the grain: upright in a stud, level in a block, and along the wall
    at the board's back in a board."""
    if one.wood.into == "stud":
        return up >= across
    turned = one.wood.into == "board" and any(board.wall != one.support.wall_name for _, board in one.support.boards)
    return up >= across if turned else across >= up


def _piece(one: Fastening) -> tuple[str, ...]:
    wall = one.support.wall_name
    if one.wood.into == "board":
        return ("board", wall, one.support.label)
    if one.wood.into == "block":
        return ("block", wall, one.drilling.holes.into.value or "")
    return ("stud", wall, str(one.drilling.stud.number) if one.drilling.stud else "")


def _place(one: Fastening) -> tuple[Input, Input]:
    return (one.drilling.on_wall, one.height) if one.in_wall else (one.drilling.x, one.drilling.y)


def _at(one: Fastening) -> tuple[float, float] | None:
    across, up = _place(one)
    if not isinstance(across.value, int | float) or not isinstance(up.value, int | float):
        return None
    return float(across.value), float(up.value)


def _wanting(one: Fastening) -> tuple[str, ...]:
    open_ones = [source for source in _place(one) if source.value is None]
    return tuple(pointer for source in open_ones for pointer in (source.pointer, *source.also))


def _stud(fastening: Fastening) -> resolve.Stud:
    """The stud a screw is meant for. Raises Missing where nobody knows the studs, or where the hole is."""
    drilling = fastening.drilling
    if drilling.stud is None:
        raise Missing(drilling.studs_wanted or (drilling.on_wall.pointer, *drilling.on_wall.also))
    return drilling.stud


def _play(desk: Desk, fastening: Fastening) -> Worked:
    """Sideways play of the screw in its hole or slot. A hole that its screw does not enter has none: that it is too
    small is another matter."""
    holes = fastening.drilling.holes
    wide = desk.length(given(holes.diameter))
    if holes.slot.value is not None:
        wide = max(wide, desk.length(given(holes.slot)))
    diameter = desk.number("diameter")
    return tolerance.play(max(wide, diameter), diameter)


def _drift(desk: Desk, fastening: Fastening, stud: resolve.Stud) -> float:
    """How much further a stud may be off that nobody found itself, only reckoned from the first by the spacing."""
    wall = fastening.support.wall
    framing = wall.framing if wall else None
    listed = framing is not None and framing.centres is not None
    desk.need(Input(True, f"/walls/{fastening.support.wall_name}/framing/{'centres' if listed else 'spacing'}"))
    return 0.0 if listed or stud.number == 1 else tolerance.PITCH_DRIFT
