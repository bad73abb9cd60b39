"""A board on a back angle alone: it tips over the toe of the seat leg, and the seat screws behind hold it down.

Places y are from the outer heel line, out of the wall. The toe is where a board that tips bears; the lever from there
back to the seat screws is short, so a person at the front edge pulls on them many times over.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, not_negative, number, positive, si, steps
from plumbrule.mechanics.loads import PATCH
from plumbrule.mechanics.worked import NotPossible, Number, Worked
from plumbrule.reading.units import to_si

_BALANCE = "balance of the board on its toe, derived here"
# The toe of a leg is rounded over about 1/20 in.
TOE_ROUND = to_si(0.05, "in")
# Screws near the load take more than the mean: plate solutions stay under 1.44 for a person.
_UNEVEN_POINT, _UNEVEN_SPREAD = 1.5, 1.2


class BoardLoad(NamedTuple):
    """A load on the board: `force` in N at `out` mm from the heel line. `point`: a person; else spread lengthwise."""

    name: str
    force: Given
    out: Given
    point: bool


def toe(leg: Given) -> Worked:
    """y_t in mm where a tipping board bears: the leg less 0.05 in. of its rounded edge."""
    value = positive("the leg", leg) - TOE_ROUND
    return Worked(
        "y_t", "from the heel to the line the board tips over", "b_l - r_t",
        (number("b_l", leg, "mm"), Number("r_t", TOE_ROUND, "mm")), value, "mm", "geometry of a rolled toe",
        steps=steps(leg),
    )  # fmt: skip


class HoldDown(NamedTuple):
    """What holds a tipping board: pull on all seat screws and contact at the toe, N, and the pull on the worst screw.

    pull_point and pull_spread are the parts of `pull` from people and from spread loads, before unevenness.
    """

    pull: Worked
    contact: Worked
    pull_point: Worked
    pull_spread: Worked
    per_screw: Worked


def hold_down(loads: Sequence[BoardLoad], *, toe: Given, seat_row: Given, screws: int) -> HoldDown:
    """H = sum P (y - y_t)/(y_t - y_s), C = H + sum P, in N, and 1.5 H/n (people) + 1.2 H/n (spread) on one screw.

    `toe` y_t and `seat_row` y_s of the seat screws in mm, `screws` n in the row. A load inside the toe relieves the
    others in H but never in `per_screw`. Raises NotPossible for no load, no screw or a row that is not inside the toe.
    """
    y_t, y_s = positive("the toe", toe), not_negative("the seat row", seat_row)
    if y_s >= y_t:
        raise NotPossible("the seat screws are not behind the toe of the leg, so they cannot hold the board down")
    if screws < 1:
        raise NotPossible("no seat screw holds the board down")
    _check(loads)
    people, spread = _tipping("point", loads, toe, seat_row), _tipping("spread", loads, toe, seat_row)
    total = max(0.0, people.value + spread.value)
    pull = Worked(
        "H", "pull on all seat screws", "max(0, H_P + H_q)",
        (number("H_P", people, "N"), number("H_q", spread, "N")), total, "N", _BALANCE, steps=(people, spread),
    )  # fmt: skip
    weight = add("P_all", "all loads", [_as_worked(load) for load in loads], _BALANCE)
    contact = Worked(
        "C", "contact at the toe", "H + P_all", (number("H", pull, "N"), number("P_all", weight, "N")),
        total + si(weight), "N", _BALANCE, steps=(pull, weight),
    )  # fmt: skip
    worst = _UNEVEN_POINT * max(people.value, 0.0) / screws + _UNEVEN_SPREAD * max(spread.value, 0.0) / screws
    each = Worked(
        "H_s", "pull on the worst seat screw",
        f"{_UNEVEN_POINT} * max(H_P, 0) / n + {_UNEVEN_SPREAD} * max(H_q, 0) / n",
        (number("H_P", people, "N"), number("H_q", spread, "N"), Number("n", float(screws), "")), worst, "N",
        "bound on plate solutions, derived here", steps=(people, spread),
    )  # fmt: skip
    return HoldDown(pull, contact, people, spread, each)


def _tipping(kind: str, loads: Sequence[BoardLoad], toe: Given, seat_row: Given) -> Worked:
    chosen = [load for load in loads if load.point == (kind == "point")]
    symbol, words = ("H_P", "from people") if kind == "point" else ("H_q", "from spread loads")
    if not chosen:
        return Worked(symbol, f"pull on the seat screws {words}: none", "0", (), 0.0, "N", _BALANCE)
    arms = " + ".join(f"{load.name} * (y_{load.name} - y_t)" for load in chosen)
    lever = si(toe) - si(seat_row)
    value = sum(si(load.force) * (si(load.out) - si(toe)) for load in chosen) / lever
    return Worked(
        symbol, f"pull on the seat screws {words}", f"({arms}) / (y_t - y_s)",
        (*_numbers(chosen), number("y_t", toe, "mm"), number("y_s", seat_row, "mm")), value, "N", _BALANCE,
        steps=steps(*(part for load in chosen for part in (load.force, load.out)), toe, seat_row),
    )  # fmt: skip


def wall_moment(loads: Sequence[BoardLoad], shares: Sequence[Given]) -> Worked:
    """M_s = sum share P y in N·mm about the wall at one screw position. One share of 1 a load gives the whole moment.

    Lever arms are taken to the outer heel line, which is further than the wall's face and so safe.
    """
    return _moments("M_s", "moment of the loads about the wall", loads, None, shares)


def toe_of_fillet_moment(loads: Sequence[BoardLoad], to_toe: Given) -> Worked:
    """M_h = sum P (y - k) in N·mm of the whole board at the toe of the fillet, `to_toe` k in mm from the heel."""
    return _moments("M_h", "moment of the loads at the toe of the fillet", loads, to_toe, [1.0] * len(loads))


def _moments(
    symbol: str, words: str, loads: Sequence[BoardLoad], offset: Given | None, shares: Sequence[Given]
) -> Worked:
    _check(loads)
    if len(shares) != len(loads):
        raise NotPossible("every load needs one share")
    back = 0.0 if offset is None else not_negative("the toe of the fillet", offset)
    arm = "y_{0}" if offset is None else "(y_{0} - k)"
    whole = all(not isinstance(share, Worked) and share == 1 for share in shares)
    factor = "" if whole else "eta_{0} * "
    formula = " + ".join((factor + "{0} * " + arm).format(load.name) for load in loads)
    value = sum(si(share) * si(load.force) * (si(load.out) - back) for share, load in zip(shares, loads, strict=True))
    numbers = list(_numbers(loads))
    if not whole:
        numbers += [number(f"eta_{load.name}", share, "") for share, load in zip(shares, loads, strict=True)]
    if offset is not None:
        numbers.append(number("k", offset, "mm"))
    given = [part for load in loads for part in (load.force, load.out)]
    return Worked(
        symbol, words, formula, tuple(numbers), value, "N·mm", "statics",
        steps=steps(*given, *shares, *([] if offset is None else [offset])),
    )  # fmt: skip


def beyond_toe(loads: Sequence[BoardLoad], toe: Given) -> Worked:
    """How far beyond the toe the resultant of all loads lies, mm; at 0 or below the board lies there without screws.

    An evenly loaded board lies so up to twice y_t of depth, 4 in. on a 2 in. leg: one to one, and no fixed ratio of
    overhang to bearing is honest beyond that.
    """
    _check(loads)
    weight = sum(positive("the load", load.force) for load in loads)
    place = sum(si(load.force) * si(load.out) for load in loads) / weight
    top = " + ".join(f"{load.name} * y_{load.name}" for load in loads)
    bottom = " + ".join(load.name for load in loads)
    return Worked(
        "o_R", "how far the loads' middle lies beyond the toe", f"({top}) / ({bottom}) - y_t",
        (*_numbers(loads), number("y_t", toe, "mm")), place - positive("the toe", toe), "mm", _BALANCE,
        steps=steps(*(part for load in loads for part in (load.force, load.out)), toe),
    )  # fmt: skip


def greatest_overhang(person: Given, pull_capacity: Given, *, toe: Given, seat_row: Given, screws: int) -> Worked:
    """How far beyond the toe one person may sit for the seat screws alone, o = n W'p (y_t - y_s)/(1.5 P), mm.

    `pull_capacity` W'p of one seat screw in N, factors in. It says nothing of the leg or the wall screws.
    """
    if screws < 1:
        raise NotPossible("no seat screw holds the board down")
    lever = positive("the toe", toe) - not_negative("the seat row", seat_row)
    if lever <= 0:
        raise NotPossible("the seat screws are not behind the toe of the leg, so they cannot hold the board down")
    value = screws * not_negative("W'p", pull_capacity) * lever / (_UNEVEN_POINT * positive("the person", person))
    return Worked(
        "o_P", "overhang beyond the toe that the seat screws allow a person",
        f"n * W_p * (y_t - y_s) / ({_UNEVEN_POINT} * P)",
        (Number("n", float(screws), ""), number("W_p", pull_capacity, "N"), number("y_t", toe, "mm"),
         number("y_s", seat_row, "mm"), number("P", person, "N")),
        value, "mm", _BALANCE, steps=steps(person, pull_capacity, toe, seat_row),
    )  # fmt: skip


def effective_width(beyond: Given, length: Given, *, at_end: bool, along_wall: bool, patch: Given = PATCH) -> Worked:
    """Length L_e in mm of leg, and of board, that a person mobilises, a = `beyond` mm past the toe.

    Grain along the wall: min(L, l_p + 2 a) inside, min(L, l_p + a) at an end. Grain out of the wall spreads half as
    far: l_p + 0.75 a and l_p + 0.4 a. `patch` l_p is the width of the sitter.
    """
    a, l, patch_width = not_negative("the overhang", beyond), positive("the length", length), positive("l_p", patch)  # noqa: E741
    times = (1.0 if at_end else 2.0) if along_wall else (0.4 if at_end else 0.75)
    place = "at an end" if at_end else "inside"
    return Worked(
        "L_e", f"length of leg that a person mobilises, {place}", f"min(L, l_p + {times} * a)",
        (number("L", length, "mm"), number("l_p", patch, "mm"), number("a", beyond, "mm")),
        min(l, patch_width + times * a), "mm", "bound on plate solutions, derived here",
        steps=steps(beyond, length, patch),
    )  # fmt: skip


def across_at_toe(loads: Sequence[BoardLoad], toe: Given, width: Given, length: Given) -> Worked:
    """Bending of the board over the toe per width, N·mm/mm = N: people over L_e, spread loads over the length L."""
    return per_width("m_y", "bending of the board over the toe per width", loads, toe, "y_t", width, length)


def per_width(
    symbol: str, words: str, loads: Sequence[BoardLoad], arm_from: Given, name: str, width: Given, length: Given
) -> Worked:
    """sum P (y - y_0)/L_e of people plus sum P (y - y_0)/L of spread loads, N. `name` is the symbol of y_0."""
    origin = not_negative("the section", arm_from)
    over, whole = positive("the effective width", width), positive("the length", length)
    _check(loads)
    formula = " + ".join(f"{p.name} * (y_{p.name} - {name}) / {'L_e' if p.point else 'L'}" for p in loads)
    value = sum(si(p.force) * (si(p.out) - origin) / (over if p.point else whole) for p in loads)
    numbers = [*_numbers(loads), number(name, arm_from, "mm")]
    if any(p.point for p in loads):
        numbers.append(number("L_e", width, "mm"))
    if not all(p.point for p in loads):
        numbers.append(number("L", length, "mm"))
    return Worked(
        symbol, words, formula, tuple(numbers), value, "N", "statics on the effective width",
        steps=steps(*(part for load in loads for part in (load.force, load.out)), arm_from, width, length),
    )  # fmt: skip


def _check(loads: Sequence[BoardLoad]) -> None:
    if not loads or len({load.name for load in loads}) != len(loads):
        raise NotPossible("there is no load, or two of one name")
    for load in loads:
        not_negative(f"the load {load.name}", load.force)
        not_negative(f"the place of {load.name}", load.out)


def _numbers(loads: Sequence[BoardLoad]) -> tuple[Number, ...]:
    return tuple(
        part
        for load in loads
        for part in (number(load.name, load.force, "N"), number(f"y_{load.name}", load.out, "mm"))
    )


def _as_worked(load: BoardLoad) -> Worked:
    return Worked(
        load.name, "a load on the board", f"{load.name}_0", (number(f"{load.name}_0", load.force, "N"),),
        si(load.force), "N", "given", steps=steps(load.force),
    )  # fmt: skip
