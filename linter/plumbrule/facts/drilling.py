"""The holes of an angle, bracket or cleat, one by one: where each is, what it is drilled like, which stud is meant."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal, NamedTuple

from plumbrule.facts.desk import Input
from plumbrule.plan import resolve
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.supports import Bracket, Cleat, HoleGroup, SteelAngle

Leg = Literal["wall", "seat"]

_ROWS: dict[Leg, str] = {"wall": "WVUTZ", "seat": "SRQPN"}


class Drilling(NamedTuple):
    """One hole of a support. `x` is from the left end of the support, `y` from its heel (a cleat: from its upper
    edge), `on_wall` from the left end of the wall. `stud` is the stud it is set out at or, where its place is given,
    the nearest one; None where it goes into a block or board, or no studs are known (`studs_wanted`)."""

    leg: Leg
    holes: resolve.Holes
    label: str
    pointer: str
    x: Input
    y: Input
    on_wall: Input
    stud: resolve.Stud | None
    studs_wanted: tuple[str, ...] = ()


def along(plan: Plan, part: SteelAngle | Cleat, leg: Leg, group: HoleGroup, pointer: str) -> Iterator[Drilling]:
    """Every hole of one leg, from left to right, row by row. Where nobody knows how many there are, one of unknown
    place stands for them, so that no rule passes it by in silence."""
    stations = resolve.stations(plan, part, group, pointer)
    if stations is None:
        stations = (resolve.Station(None, None, None, resolve.stations_wanted(plan, part, pointer)),)
    yield from _each(plan, part.wall, leg, group, pointer, stations)


def in_bracket(
    plan: Plan, bracket: Bracket, place: resolve.Station, leg: Leg, group: HoleGroup, pointer: str, number: int
) -> Iterator[Drilling]:
    """Every hole of one leg of the bracket at `place`, the `number`th from the left. A bracket that does not say where
    its holes are has them on its centre line."""
    middle = None if bracket.width is None else bracket.width / 2
    width = f"{pointer.rsplit('/', 1)[0]}/width"
    marks: Sequence[tuple[float | None, tuple[str, ...]]] = [(middle, (width,))]
    if group.from_left is not None:
        marks = [(mark, (f"{pointer}/from_left/{index}",)) for index, mark in enumerate(group.from_left)]
    stations = tuple(
        resolve.Station(
            mark,
            None if mark is None or middle is None or place.on_wall is None else place.on_wall - middle + mark,
            place.stud,
            (*where, *((width,) if where != (width,) else ()), *place.pointers),
        )
        for mark, where in marks
    )
    yield from _each(plan, bracket.wall, leg, group, pointer, stations, f" (bracket {number})")


def wanting(plan: Plan, pointers: Sequence[str]) -> tuple[str, ...]:
    """Those of `pointers` that the plan does not fill in; all of them where it fills in each."""
    open_ones = tuple(pointer for pointer in pointers if not plan.is_written(pointer) or pointer in plan.to_measure)
    return open_ones or tuple(pointers)


def studs_wanted(plan: Plan, wall: str) -> tuple[str, ...]:
    """What to fill in before anyone can say where the studs of a wall are."""
    found = resolve.studs(plan, wall)
    unmeasured = [pointer for stud in found or () if stud.centre is None for pointer in stud.pointers]
    return wanting(plan, unmeasured or resolve.studs_wanted(plan, wall))


def placed(plan: Plan, value: float | None, pointers: Sequence[str]) -> Input:
    """A reckoned place with what it was reckoned from or, where it is not known, with what is wanting."""
    first, *others = (pointers if value is not None else wanting(plan, pointers)) or ("/walls",)
    return Input(value, first, also=tuple(others))


def _each(
    plan: Plan, wall: str, leg: Leg, group: HoleGroup, pointer: str, stations: Sequence[resolve.Station],
    suffix: str = "",
) -> Iterator[Drilling]:  # fmt: skip
    holes = resolve.holes(plan, group, pointer)
    wants_stud = leg == "wall" and group.into is None
    found = resolve.studs(plan, wall) if wants_stud else None
    known = bool(found) and all(stud.centre is not None for stud in found or ())
    wanted = studs_wanted(plan, wall) if wants_stud and not known else ()
    heels = holes.from_heel.value or (None,)
    for row, heel in enumerate(heels):
        place = f"{holes.from_heel.pointer}/{row}" if holes.from_heel.value else holes.from_heel.pointer
        letter = _ROWS[leg][min(row, len(_ROWS[leg]) - 1)]
        for number, station in enumerate(stations, 1):
            where = station.pointers[0] if station.pointers else pointer
            yield Drilling(
                leg=leg, holes=holes, label=f"{letter}{number}{suffix}",
                pointer=where if where.startswith(f"{pointer}/") else pointer,
                x=placed(plan, station.from_left, _of_mark(station, pointer)),
                y=Input(heel, place), on_wall=placed(plan, station.on_wall, station.pointers),
                stud=_meant(station, found) if wants_stud else None, studs_wanted=wanted,
            )  # fmt: skip


def _of_mark(station: resolve.Station, pointer: str) -> tuple[str, ...]:
    """What a hole's place on its own part hangs on: its mark, where it has one, else where the part begins and the
    stud, in that order, since a part can be moved and a stud cannot."""
    own = pointer.rsplit("/", 1)[0]
    first = station.pointers[0] if station.pointers else pointer
    if first.startswith(f"{pointer}/") or first == f"{own}/width":
        return (first,)
    return tuple(sorted(station.pointers, key=lambda one: not one.startswith(f"{own}/")))


def _meant(station: resolve.Station, found: tuple[resolve.Stud, ...] | None) -> resolve.Stud | None:
    """The stud a hole is set out at, or the one nearest to where it is drawn."""
    if station.stud is not None or not found or station.on_wall is None:
        return station.stud
    if any(stud.centre is None for stud in found):
        return None
    here = station.on_wall
    return min(found, key=lambda stud: abs((stud.centre or 0.0) - here))
