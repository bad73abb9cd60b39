"""People past twice the leg on a back angle alone: only where every part is shown to hold one, and one who drops."""

from __future__ import annotations

from datetime import date

import pytest

from plumbrule import shipped
from plumbrule.inspection.examine import examine
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.rulebook.load import load

FLOATING = shipped.folder("plans") / "faulty" / "floating-seat-on-a-back-angle.yaml"
RULE = "person-on-a-back-angle-alone"


def replace(path, value):
    return {"op": "replace", "path": path, "value": value}


# A shallow perch, 8 in to its front edge, on half-inch steel with a 6 in wall leg on the studs themselves.
STOUT = (
    replace("/sections/steel", {"legs": {"wall": "6 in", "seat": "4 in"}, "thickness": "1/2 in", "steel": "A36",
                                "inside_radius": "1/2 in", "coating": "powder coat"}),
    replace("/holes/wall/from_heel", ["4 in", "5-1/2 in"]), replace("/holes/wall/diameter", "13/32 in"),
    replace("/angles/seat-steel/lining_behind", "cut away"),
    replace("/screws/wall-lag/diameter", "3/8 in"), replace("/screws/wall-lag/length", "4 in"),
    replace("/screws/wall-lag/pilot", {"thread": "1/4 in", "shank": "3/8 in"}),
    replace("/screws/wall-lag/head", {"style": "hex", "diameter": "7/8 in"}),
    replace("/boards/float-seat/depth", "7-7/16 in"), replace("/screws/seat-screw/length", "1-3/4 in"),
    replace("/angles/seat-steel/seat_holes/from_left",
            ["3 in", "6 in", "14 in", "22 in", "30 in", "38 in", "46 in", "54 in", "57 in"]),
)  # fmt: skip


def verdict(*more):
    found = examine(patched(read_file(FLOATING), [*STOUT, *more]), load(), date(2026, 1, 1))
    row = next(one for one in found.rows["board_load"] if one.label == "float-seat under one person")
    assert row.values["front"] > 2 * row.values["toe"]
    broken = [one for one in found.inspection.findings if one.rule.id == RULE and one.verdict == "breaks"]
    return row.values.get("every_part_holds"), bool(broken)


def test_a_stout_perch_passes():
    assert verdict() == (True, False)


@pytest.mark.parametrize(
    "weaker",
    [
        replace("/screws/seat-screw/length", "1 in"),
        replace("/angles/seat-steel/seat_holes/from_left", ["30 in"]),
        replace("/screws/wall-lag/length", "2-1/2 in"),
        replace("/sections/steel/thickness", "1/8 in"),
        replace("/holes/wall/from_heel", ["5-1/2 in"]),
        replace("/boards/float-seat/load/point", "600 lbf"),
    ],
    ids=lambda one: one["path"],
)
def test_one_weak_part_stops_the_work(weaker):
    assert verdict(weaker) == (False, True)
