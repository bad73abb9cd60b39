"""Which way the rows of whole plans go: more load, a longer span, a thinner board, fewer screws and a wider pitch never
help, and a plan seen in a mirror has the same rows the other way round."""

from __future__ import annotations

from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule import shipped
from plumbrule.facts.board import board_rows
from plumbrule.facts.hole import hole_rows
from plumbrule.facts.load_chosen import chosen
from plumbrule.facts.load_rows import load_rows
from plumbrule.facts.screw import screw_rows
from plumbrule.facts.supports import supports
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file

PLANS = shipped.folder("plans")
FEW = settings(max_examples=5, deadline=None)
TIE = 1e-9
# What is used of what there is, by kind of row.
USES = {
    "station_load": (("both_use", None), ("side_force", None), ("screw_pull", "pull_strength"),
                     ("leg_pull", "leg_strength")),
    "board_load": (("bending_stress", "bending_strength"), ("shear_stress", "shear_strength"), ("drop", None)),
    "hold_down": (("pull", "strength"),),
    "leg_load": (("moment", "strength"),),
    "beam_load": (("moment", "strength"),),
    "cleat_load": (("moment", "moment_strength"), ("shear", "shear_strength")),
    "push_load": (("screw_force", "screw_strength"),),
    "block_load": (("force", "strength"),),
}  # fmt: skip


@cache
def document(name):
    return read_file(PLANS / f"{name}.yaml")


def load_path(changed):
    """The rows of the load path alone, since other trades would only take their time."""
    plan = read_plan(changed)
    carried = supports(plan)
    boards = dict(zip(plan.model.boards, board_rows(plan, carried), strict=True))
    return load_rows(plan, carried, screw_rows(plan, carried, boards), hole_rows(plan, carried), chosen(None))


def uses(name, *patch, kinds=tuple(USES)):
    """Every use by row and what is used."""
    rows = load_path(patched(document(name), list(patch)))
    found = {}
    for kind in kinds:
        for row in rows[kind]:
            for used, strength in USES[kind]:
                if used in row.values and (strength is None or strength in row.values):
                    value = abs(row.values[used]) / (1.0 if strength is None else row.values[strength] or 1e-9)
                    found[row.label, used] = value
    return found


def replace(path, value):
    return {"op": "replace", "path": path, "value": value}


def none_falls(before, after):
    both = before.keys() & after.keys()
    assert both
    fallen = {key: (before[key], after[key]) for key in both if after[key] < before[key] * (1 - TIE) - 1e-12}
    assert not fallen


# Where the plans' loads lie: the pointer, a figure above every benchmark, its unit.
LOADS = [
    ("alcove-seat", "seat", 1200, 1.9), ("corner-seat", "seat", 1200, 1.9), ("display-shelf", "ledge", 60, 0.4),
    ("bracket-shelf", "shelf", 75, 0.4), ("cleat-shelf", "shelf", 250, 0.6),
]  # fmt: skip


@pytest.mark.parametrize(("plan", "board", "point", "line"), LOADS)
@FEW
@given(more=st.floats(1.0, 1.6), heavier=st.floats(1.0, 1.6))
def test_more_load_never_helps(plan, board, point, line, more, heavier):
    def loads(p, w):
        return (
            replace(f"/boards/{board}/load/point", f"{p:.3f} N"),
            replace(f"/boards/{board}/load/uniform", f"{w * 1000:.3f} N/m"),
        )

    none_falls(uses(plan, *loads(point, line)), uses(plan, *loads(point * more, line * heavier)))


@pytest.mark.parametrize(("plan", "board", "thick"), [("alcove-seat", "seat", 44.0), ("bracket-shelf", "shelf", 38.0)])
@FEW
@given(less=st.floats(0.75, 1.0))
def test_a_thinner_board_bends_and_sags_no_less(plan, board, thick, less):
    """Its own weight falls with it: what people and goods do to the board is looked at, not the weight by itself."""
    at = f"/boards/{board}/thickness"
    kinds = ("board_load",)
    before = uses(plan, replace(at, f"{thick:.3f} mm"), kinds=kinds)
    after = uses(plan, replace(at, f"{thick * less:.3f} mm"), kinds=kinds)
    # A shelf on brackets sags by its brackets, and those are spared what the board weighs less.
    fields = ("bending_stress",) if plan == "bracket-shelf" else ("bending_stress", "drop")

    def counted(found):
        return {key: value for key, value in found.items() if "own weight" not in key[0] and key[1] in fields}

    none_falls(counted(before), counted(after))


@pytest.mark.parametrize("gone", range(5))
def test_a_seat_screw_less_never_helps(gone):
    on = [5.75, 17.75, 29.75, 41.75, 53.75]
    path = "/angles/seat-back/seat_holes/from_left"
    fewer = [f"{x} in" for index, x in enumerate(on) if index != gone]
    kinds = ("hold_down", "push_load")
    none_falls(uses("alcove-seat", kinds=kinds), uses("alcove-seat", replace(path, fewer), kinds=kinds))


@pytest.mark.parametrize("gone", [0, 1, 3])
def test_a_bracket_less_never_helps(gone):
    """Without the third the overhang at the left has a longer lever behind it, which helps that end by a hair."""
    on = [4.25, 20.25, 36.25, 52.25]
    fewer = [f"{x} in" for index, x in enumerate(on) if index != gone]

    def worst(places):
        found = uses("corner-seat", replace("/brackets/seat-bracket/from_left", places), kinds=("station_load",))
        people = {key: value for key, value in found.items() if "bracket" in key[0] and key[1] == "both_use"}
        return max(value for key, value in people.items() if "under one person" in key[0])

    assert worst(fewer) >= worst([f"{x} in" for x in on]) * (1 - TIE)


PITCHED = ("station_load", "board_load", "leg_load")


def brackets(pitch, over):
    """Three brackets under one board, named by their place from the left."""
    return (
        {"op": "remove", "path": "/brackets/shelf-bracket/at"},
        {"op": "add", "path": "/brackets/shelf-bracket/from_left",
         "value": [f"{600 + i * pitch:.3f} mm" for i in range(3)]},
        {"op": "replace", "path": "/boards/shelf/left", "value": f"{600 - over:.3f} mm"},
        {"op": "replace", "path": "/boards/shelf/length", "value": f"{2 * pitch + 2 * over:.3f} mm"},
        {"op": "replace", "path": "/walls/bench/framing/centres",
         "value": [f"{600 + i * pitch:.3f} mm" for i in range(3)]},
    )  # fmt: skip


@FEW
@given(pitch=st.floats(300, 450), wider=st.floats(1.0, 1.5), over=st.floats(40, 120))
def test_a_wider_pitch_never_helps(pitch, wider, over):
    """The overhang grows with the pitch, so that it stays the same part of it. Shear is left out: the front strip that
    carries a person is a tenth of the span, so a longer span counts a wider one."""

    def counted(pitch, over):
        found = uses("bracket-shelf", *brackets(pitch, over), kinds=PITCHED)
        return {key: value for key, value in found.items() if key[1] != "shear_stress"}

    none_falls(counted(pitch, over), counted(pitch * wider, over * wider))


@FEW
@given(over=st.floats(40, 120), longer=st.floats(1.0, 2.0))
def test_a_longer_overhang_never_helps_the_bracket_beside_it(over, longer):
    def outer(found):
        return {
            key: value for key, value in found.items() if "shelf-bracket 1" in key[0] or "shelf-bracket 3" in key[0]
        }

    before = outer(uses("bracket-shelf", *brackets(400, over), kinds=("station_load",)))
    none_falls(before, outer(uses("bracket-shelf", *brackets(400, over * longer), kinds=("station_load",))))


@FEW
@given(left=st.floats(40, 160), right=st.floats(40, 160), inner=st.floats(250, 500), outer=st.floats(250, 500))
def test_a_plan_in_a_mirror_has_the_same_rows(left, right, inner, outer):
    def rows(a, b, first, second):
        places = [700.0, 700 + first, 700 + first + second]
        patch = (
            {"op": "remove", "path": "/brackets/shelf-bracket/at"},
            {"op": "add", "path": "/brackets/shelf-bracket/from_left", "value": [f"{x:.4f} mm" for x in places]},
            replace("/walls/bench/framing/centres", [f"{x:.4f} mm" for x in places]),
            replace("/boards/shelf/left", f"{700 - a:.4f} mm"),
            replace("/boards/shelf/length", f"{a + b + first + second:.4f} mm"),
        )
        found = uses("bracket-shelf", *patch, kinds=("station_load", "board_load", "hold_down", "leg_load"))
        swap = {"bracket 1": "bracket 3", "bracket 3": "bracket 1"}
        return found, {
            (next((key[0].replace(old, new) for old, new in swap.items() if old in key[0]), key[0]), key[1]): value
            for key, value in found.items()
        }

    straight, _ = rows(left, right, inner, outer)
    _, mirrored = rows(right, left, outer, inner)
    assert straight.keys() == mirrored.keys()
    for key, value in straight.items():
        assert mirrored[key] == pytest.approx(value, rel=1e-4, abs=1e-6), key
