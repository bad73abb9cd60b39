"""The bounds of a board on brackets, with and without an angle at one end, never below the plate solutions of
`brackets.csv`.

A board of the corner seat's plan is given the sizes of each solved one and worked out as any plan is; its own weight,
which the plates do not have, is taken off again. Two people at once were not solved.
"""

from __future__ import annotations

from functools import cache

import pytest
from solve_brackets import Case, case_of, rows, solve

from plumbrule import shipped
from plumbrule.facts.facts import work_out
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.reading.units import from_si, to_si

ROWS = [
    (case_of(row), {name: float(row[name]) for name in row if name.endswith(("_p", "_q"))}) for row in rows()
]  # fmt: skip
FROM_LEFT = 0.125
LOADS = {"p": "one person", "q": "full seat"}
# Field of the plan's rows: kind of row, its part, unit. `lift` and `pull` share one bound.
BOUNDS = {
    "force": ("station_load", "side_force", "/brackets/", "lbf"),
    "moment": ("station_load", "couple", "/brackets/", "in·lbf"),
    "m": ("board_load", "bending_stress", "/boards/", "lbf"),
    "across": ("board_load", "across_stress", "/boards/", "lbf"),
    "drop": ("board_load", "drop", "/boards/", "in"),
}
NAMES = [f"{name}_{load}" for name in BOUNDS for load in LOADS] + ["pull_p", "lift_p"]
REACH = 1.3


def far(case: Case) -> bool:
    """Whether the board reaches so far beyond its arms that the package gives no bound."""
    return case.depth + case.back > REACH * case.arm


@cache
def worked(case: Case):
    def put(path, value):
        return {"op": "replace", "path": path, "value": value}

    places = [f"{FROM_LEFT + x!r} in" for x in case.brackets]
    species = "coast douglas-fir" if case.wood == "douglas-fir" else case.wood
    patch = [
        put("/walls/back/framing/centres", ["3/4 in", *places, "118-1/4 in"]),
        put("/brackets/seat-bracket/from_left", places), put("/brackets/seat-bracket/arm", f"{case.arm} in"),
        put("/brackets/seat-bracket/thickness", f"{case.steel} in"), put("/boards/seat/species", species),
        put("/boards/seat/length", f"{case.length} in"), put("/boards/seat/depth", f"{case.depth} in"),
        put("/boards/seat/thickness", f"{case.thickness} in"),
        put("/boards/seat/bears_on", ["seat-bracket", *(() if case.end == "none" else ("seat-end",))]),
    ]  # fmt: skip
    return work_out(read_plan(patched(read_file(shipped.folder("plans") / "corner-seat.yaml"), patch))).rows


def figures(case: Case, kind: str, field: str, part: str, load: str) -> list[float]:
    found = [one for one in worked(case)[kind] if one.values.get("case") == load and one.part.startswith(part)]
    assert found
    return [one.values[field] for one in found]


def bound(case: Case, name: str) -> float:
    what, load = name.rsplit("_", 1)
    if what in ("pull", "lift"):
        return from_si(max(figures(case, "hold_down", "pull", "/brackets/", LOADS[load])), "lbf")
    kind, field, part, unit = BOUNDS[what]
    with_it, without = (figures(case, kind, field, part, said) for said in (LOADS[load], "own weight"))
    value = max(a - b for a, b in zip(with_it, without, strict=True))
    if unit == "lbf" and kind == "board_load":
        value *= to_si(case.thickness, "in") ** 2 / 6
    return from_si(value, unit)


def test_there_are_boards_enough() -> None:
    assert len({(case.wood, case.length) for case, _ in ROWS}) >= 12
    assert {len(case.brackets) for case, _ in ROWS} == {3, 4}
    assert {case.end for case, _ in ROWS} == {"none", "firm", "giving"}
    assert len({case.wood for case, _ in ROWS}) == 4


def ratios(name: str) -> list[tuple[float, Case]]:
    return sorted(
        ((bound(case, name) / found[name], case) for case, found in ROWS if found[name] > 0 and not far(case)),
        key=lambda pair: pair[0],
    )


@pytest.mark.parametrize("name", NAMES)
def test_no_plate_passes_the_bound(name: str) -> None:
    worst, case = ratios(name)[0]
    assert worst >= 1.0, f"{name}: {worst:.3f} on {case}"


@pytest.mark.parametrize("name", [name for name in NAMES if name != "lift_p"])
def test_the_bound_is_not_idle(name: str) -> None:
    """Near what it bounds on some board: within half of it."""
    assert ratios(name)[0][0] < 2.0


def test_an_end_that_holds_is_no_help_that_brackets_are_given() -> None:
    """Without the end every bracket force is bounded by the same figure as with it, or by a smaller one."""
    for case, _ in ROWS:
        if case.end != "none" and not far(case):
            bare = Case(**{**case.__dict__, "end": "none"})
            for name in ("force_p", "moment_p", "force_q", "moment_q", "pull_p"):
                assert bound(case, name) >= bound(bare, name) * (1 - 1e-9)


def test_a_board_that_reaches_far_beyond_its_arms_has_no_bound() -> None:
    """16 in of board on 11 in arms: by the bounds of the others its full seat would bend it by a half more than they
    say, and its front edge would go down by a third more."""
    beyond = [case for case, _ in ROWS if far(case)]
    assert beyond
    for case in beyond:
        for one in worked(case)["board_load"]:
            assert {"bending_stress", "across_stress", "drop"} <= set(one.outside)
            assert "longer arms" in one.outside["bending_stress"]


def test_the_frozen_figures_come_out_again() -> None:
    """The smallest board, its end on an angle that gives."""
    case, frozen = min((row for row in ROWS if row[0].end == "giving"), key=lambda row: row[0].length)
    again = solve(case)
    for name, value in frozen.items():
        assert getattr(again, name) == pytest.approx(value, rel=1e-3, abs=1e-6)


def test_a_finer_net_says_the_same() -> None:
    """A plate of half as many elements again each way: the forces to a hundredth, the bending to a twelfth."""
    case, frozen = min((row for row in ROWS if row[0].end == "firm"), key=lambda row: row[0].length)
    finer = solve(case, 1.5)
    for name, near in (("force_p", 0.01), ("moment_p", 0.01), ("drop_p", 0.02), ("pull_p", 0.05), ("m_p", 0.08)):
        assert getattr(finer, name) == pytest.approx(frozen[name], rel=near), name
