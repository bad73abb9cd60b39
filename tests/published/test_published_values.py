"""Every printed value in the data files beside this one, worked by our functions."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from board_calculations import BOARD_CALCULATIONS
from calculations import CALCULATIONS
from electrical_calculations import ELECTRICAL_CALCULATIONS
from finishing_calculations import FINISHING_CALCULATIONS
from hazard_calculations import HAZARD_CALCULATIONS
from joint_calculations import JOINT_CALCULATIONS
from load_calculations import LOAD_CALCULATIONS
from panels_calculations import PANEL_CALCULATIONS
from sequence_calculations import SEQUENCE_CALCULATIONS
from sequence_calculations import chain as sequence_chain
from takeoff_calculations import TAKEOFF_CALCULATIONS

from plumbrule.mechanics.given import si
from plumbrule.reading.places import read
from plumbrule.reading.units import UNITS, from_si

HERE = Path(__file__).parent
FILES = (
    "wood",
    "steel",
    "gap",
    "by_hand",
    "boards",
    "shelves",
    "boards_by_hand",
    "statics",
    "beams",
    "finishing",
    "electrical",
    "sequence",
    "panels_joints",
    "panels",
    "hazards",
    "takeoff",
    "takeoff_by_hand",
)
WORKS = {
    **CALCULATIONS,
    **BOARD_CALCULATIONS,
    **LOAD_CALCULATIONS,
    **SEQUENCE_CALCULATIONS,
    **FINISHING_CALCULATIONS,
    **ELECTRICAL_CALCULATIONS,
    **JOINT_CALCULATIONS,
    **PANEL_CALCULATIONS,
    **HAZARD_CALCULATIONS,
    **TAKEOFF_CALCULATIONS,
}
BASES = {"published", "worked by hand", "from memory", "common practice"}


def _data(name: str) -> dict[str, Any]:
    path = HERE / f"{name}.yaml"
    value: dict[str, Any] = read(path.read_bytes(), path.name).value
    return value


DATA = {name: _data(name) for name in FILES}
CHECKS = [(name, check) for name in FILES for check in DATA[name]["checks"]]
IDS = [str(check["id"]) for _, check in CHECKS]


@pytest.mark.parametrize(("file", "check"), CHECKS, ids=IDS)
def test_printed_value(file: str, check: dict[str, Any]) -> None:
    found = from_si(si(WORKS[check["calculation"]](check["inputs"])), check["unit"])
    assert found == pytest.approx(check["expected"], abs=check["tolerance"], rel=0), DATA[file]["sources"][
        check["source"]
    ]


def test_every_value_says_where_it_is_from() -> None:
    for file, check in CHECKS:
        assert check["basis"] in BASES, check["id"]
        assert check["unit"] in UNITS, check["id"]
        assert check["because"] and check["tolerance"] > 0, check["id"]
        # Coarse tables are printed to 10 lbf: half of that is 6 % of the smallest cell, and no check is looser.
        printed = check["because"].startswith("printed to")
        assert printed or check["tolerance"] <= 0.0625 * abs(check["expected"]), check["id"]
        assert DATA[file]["sources"][check["source"]], check["id"]


def test_no_value_stands_twice() -> None:
    assert len(set(IDS)) == len(IDS)


@pytest.mark.parametrize("trade", ["wood", "steel", "sequence", "panels"])
def test_every_collected_value_is_run_or_says_why_not(trade: str) -> None:
    collected = _data("collected")[trade]
    run = {str(check["id"]).partition("/")[0] for file, check in CHECKS if DATA[file].get("collected", file) == trade}
    # A file may hold other values beside those that were collected.
    run &= set(collected["all"])
    idle = [identity for group in collected["not_run"] for identity in group["ids"]]
    assert all(len(group["because"]) > 30 for group in collected["not_run"])
    assert len(set(idle)) == len(idle)
    assert not run & set(idle)
    assert run | set(idle) == set(collected["all"])
    assert len(set(collected["all"])) == len(collected["all"])


def test_the_tables_that_are_claimed_are_covered() -> None:
    """83 cells of the two tables for steel side plates: the gap equations at no gap must give every one."""
    cells = [c for c in DATA["wood"]["checks"] if c["source"] in ("nds-12K", "nds-12M")]
    assert len(cells) == 83


def test_the_longest_chain_of_the_collected_order_is_the_printed_one() -> None:
    assert list(sequence_chain()) == DATA["sequence"]["longest_chain"]
