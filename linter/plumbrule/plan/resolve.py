"""What a plan means where it says a thing once and uses it often: studs, dressed sizes, drilling patterns, places."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, NamedTuple, TypeVar

from plumbrule.plan.framing import Block, Framing, Section
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.supports import Bracket, Cleat, Countersink, HoleGroup, HolePattern, SteelAngle

T = TypeVar("T")

INCH = 25.4
# Nominal inches to dressed inches, dry: American Softwood Lumber Standard PS 20, as the wood design values use them.
DRESSED = {1: 0.75, 2: 1.5, 3: 2.5, 4: 3.5, 6: 5.5, 8: 7.25, 10: 9.25, 12: 11.25}
# A hole whose reckoned place misses the end of its part by less than this is at the end, not past it.
SLACK = 1e-6


class Given(NamedTuple, Generic[T]):
    """A value and the pointer it was written at or, where the plan is silent, should be written at.

    `assumed` is true where the value is a default.
    """

    value: T | None
    pointer: str
    assumed: bool = False


class Lumber(NamedTuple):
    """Narrow and wide side in mm."""

    narrow: float
    wide: float


class Stud(NamedTuple):
    """One stud: its centre in mm from the left end of the wall, its number from the left, and the pointers of what was
    written to place it."""

    centre: float | None
    number: int
    pointers: tuple[str, ...]


class Station(NamedTuple):
    """One place along a part where its pattern is drilled.

    `from_left` is in mm from the left end of the part, `on_wall` from the left end of the wall; None where it is not
    known. `stud` is the stud it was set out at, for `at: studs`. `pointers` are what was written to place it.
    """

    from_left: float | None
    on_wall: float | None
    stud: Stud | None
    pointers: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Holes:
    """A hole group with its pattern filled in: each value with the pointer it was written at."""

    pointer: str
    pattern: str
    screw: Given[str]
    diameter: Given[float]
    from_heel: Given[tuple[float | None, ...]]
    slot: Given[float]
    slot_runs: Given[str]
    countersink: Given[Countersink]
    drilled_within: Given[float]
    deburr: Given[str]
    into: Given[str]


def lumber(size: str | Section | None) -> Lumber | None:
    """Dressed size of `2x4` or of a measured piece, in mm. None where it is not known."""
    if size is None:
        return None
    if isinstance(size, Section):
        return None if size.width is None or size.depth is None else Lumber(size.width, size.depth)
    narrow, wide = size.split("x")
    return Lumber(DRESSED[int(narrow)] * INCH, DRESSED[int(wide)] * INCH)


def stud_size(framing: Framing) -> Lumber | None:
    """Width (narrow side, seen from the room) and depth of a stud in mm."""
    return lumber(framing.stud)


def block_size(block: Block) -> tuple[float, float] | None:
    """Height on the wall and depth into it, in mm: laid flat, the wide side faces the room."""
    size = lumber(block.size)
    if size is None:
        return None
    return (size.wide, size.narrow) if block.laid == "flat" else (size.narrow, size.wide)


def framing_kind(framing: Framing | None, pointer: str) -> Given[str]:
    """What the wall `pointer` is framed with: as written, or wood studs where a stud size is given."""
    at = f"{pointer}/framing/kind"
    if framing is None or (framing.kind is None and framing.stud is None):
        return Given(None, at)
    return Given(framing.kind, at) if framing.kind is not None else Given("wood studs", at, assumed=True)


def studs(plan: Plan, wall: str) -> tuple[Stud, ...] | None:
    """The studs of a wall from left to right, found one by one or reckoned from the first. None: not known."""
    if wall not in plan.reckoned:
        plan.reckoned[wall] = _studs(plan, wall)
    found: tuple[Stud, ...] | None = plan.reckoned[wall]
    return found


def _studs(plan: Plan, wall: str) -> tuple[Stud, ...] | None:
    part = (plan.model.walls or {}).get(wall)
    if part is None or part.framing is None:
        return None
    at = f"/walls/{wall}/framing"
    framing = part.framing
    if framing.centres is not None:
        found = [(centre, f"{at}/centres/{index}") for index, centre in enumerate(framing.centres)]
        found.sort(key=lambda one: float("inf") if one[0] is None else one[0])
        return tuple(Stud(centre, number, (pointer,)) for number, (centre, pointer) in enumerate(found, 1))
    first, spacing, width = framing.first, framing.spacing, part.width
    if first is None or spacing is None or width is None:
        return None
    count = int((width - first) / spacing + SLACK) + 1 if width >= first else 0
    pointers = (f"{at}/first", f"{at}/spacing")
    return tuple(Stud(first + index * spacing, index + 1, pointers) for index in range(count))


def studs_wanted(plan: Plan, wall: str) -> tuple[str, ...]:
    """The pointers to fill in where `studs` knows none."""
    part = (plan.model.walls or {}).get(wall)
    at = f"/walls/{wall}/framing"
    if part is None or part.framing is None or (part.framing.first is None and part.framing.spacing is None):
        return (f"{at}/centres",)
    wanted = [f"{at}/{key}" for key in ("first", "spacing") if getattr(part.framing, key) is None]
    return (*wanted, *((f"/walls/{wall}/width",) if part.width is None else ()))


def holes(plan: Plan, group: HoleGroup, pointer: str) -> Holes:
    """The hole group at `pointer`, its pattern filled in. Requires that the pattern exists."""
    pattern = (plan.model.holes or {})[group.pattern]

    def given(key: str) -> Given[T]:
        own, shared = f"{pointer}/{key}", f"/holes/{group.pattern}/{key}"
        if plan.is_written(own):
            return Given(getattr(group, key), own)
        return Given(getattr(pattern, key), shared, assumed=_is_default(pattern, key))

    return Holes(
        pointer, group.pattern, given("screw"), given("diameter"), given("from_heel"), given("slot"),
        given("slot_runs"), given("countersink"), given("drilled_within"), given("deburr"),
        Given(group.into, f"{pointer}/into"),
    )  # fmt: skip


def _is_default(pattern: HolePattern, key: str) -> bool:
    return key not in pattern.model_fields_set and getattr(pattern, key) is not None


def stations(plan: Plan, part: SteelAngle | Cleat, group: HoleGroup, pointer: str) -> tuple[Station, ...] | None:
    """The places of a hole group along an angle or cleat, from left to right. None: not known, since no studs were
    found or the part's own measures are wanting (`stations_wanted` names them).

    `pointer` is the group's. For `at: studs` these are the studs whose centres lie within the part.
    """
    left, length = part.left, part.length
    if group.from_left is not None:
        marks = enumerate(group.from_left)
        return tuple(
            Station(mark, _sum(left, mark), None, (f"{pointer}/from_left/{index}", f"{pointer.rsplit('/', 1)[0]}/left"))
            for index, mark in marks
        )
    found = studs(plan, part.wall)
    if found is None or left is None or length is None or any(stud.centre is None for stud in found):
        return None
    reach = left + length
    return tuple(
        Station(stud.centre - left, stud.centre, stud, (*stud.pointers, f"{pointer.rsplit('/', 1)[0]}/left"))
        for stud in found
        if stud.centre is not None and left - SLACK <= stud.centre <= reach + SLACK
    )


def stations_wanted(plan: Plan, part: SteelAngle | Cleat, pointer: str) -> tuple[str, ...]:
    """The pointers to fill in where `stations` knows none. `pointer` is the group's."""
    own = pointer.rsplit("/", 1)[0]
    wanted = [f"{own}/{key}" for key in ("left", "length") if getattr(part, key) is None]
    found = studs(plan, part.wall)
    if found is None:
        wanted.extend(studs_wanted(plan, part.wall))
    else:
        wanted.extend(pointer for stud in found if stud.centre is None for pointer in stud.pointers)
    return tuple(wanted)


def bracket_places(plan: Plan, name: str, bracket: Bracket) -> tuple[Station, ...] | None:
    """Centre lines of brackets along their wall; `from_left` of each is half its width, where its holes are.

    `at: studs` puts one at every stud that a board lying on these brackets covers or, where no board says how far it
    goes, at every stud of the wall. None: not known, also where a board on them is still to be measured.
    """
    middle = None if bracket.width is None else bracket.width / 2
    at = f"/brackets/{name}"
    if bracket.from_left is not None:
        marks = enumerate(bracket.from_left)
        return tuple(Station(middle, centre, None, (f"{at}/from_left/{index}",)) for index, centre in marks)
    found = studs(plan, bracket.wall)
    if found is None or any(stud.centre is None for stud in found):
        return None
    reaches: list[tuple[float, float]] = []
    for board_name, board in (plan.model.boards or {}).items():
        if name not in board.bears_on:
            continue
        if not plan.is_written(f"/boards/{board_name}/left"):
            # Its ends are against walls, so it passes every stud there is.
            reaches.append((0.0, float("inf")))
        elif board.left is None or board.length is None:
            return None
        else:
            reaches.append((board.left, board.left + board.length))
    return tuple(
        Station(middle, stud.centre, stud, stud.pointers)
        for stud in found
        if stud.centre is not None
        and (not reaches or any(left - SLACK <= stud.centre <= right + SLACK for left, right in reaches))
    )


def bracket_places_wanted(plan: Plan, name: str, bracket: Bracket) -> tuple[str, ...]:
    """The pointers to fill in where `bracket_places` knows none."""
    found = studs(plan, bracket.wall)
    if found is None:
        return studs_wanted(plan, bracket.wall)
    wanted = [pointer for stud in found if stud.centre is None for pointer in stud.pointers]
    for board_name, board in (plan.model.boards or {}).items():
        if name in board.bears_on:
            wanted += [f"/boards/{board_name}/{key}" for key in ("left", "length") if getattr(board, key) is None]
    return tuple(wanted)


def _sum(left: float | None, mark: float | None) -> float | None:
    return None if left is None or mark is None else left + mark
