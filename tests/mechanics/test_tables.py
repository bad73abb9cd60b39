"""The shipped tables: complete, sourced, and the same compiled as in their files."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from plumbrule.mechanics import tables
from plumbrule.mechanics.table_files import COMPILED, NAMES, compile_tables, read_compiled, read_sources, table_folder
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook
from plumbrule.plan import words
from plumbrule.reading.units import UNITS, from_si

TABLES = tables.load()
BASES = {"published", "common practice", "from memory"}


def test_compiled_tables_are_fresh() -> None:
    """After a change in a table: python -c "from plumbrule.mechanics import tables; tables.write_compiled()"."""
    where = table_folder()
    assert (where / COMPILED).read_text(encoding="utf-8") == compile_tables(where)
    assert read_compiled(where) == read_sources(where)


def test_a_table_that_was_edited_is_read_from_its_file(tmp_path: Path) -> None:
    for path in table_folder().iterdir():
        (tmp_path / path.name).write_bytes(path.read_bytes())
    assert read_compiled(tmp_path) is not None
    with (tmp_path / "steels.yaml").open("a", encoding="utf-8") as file:
        file.write("# a remark\n")
    assert read_compiled(tmp_path) is None
    (tmp_path / COMPILED).write_text("[1, 2", encoding="utf-8")
    assert read_compiled(tmp_path) is None
    assert read_sources(tmp_path) == read_sources(table_folder())


def test_every_row_says_where_it_is_from() -> None:
    for name, data in read_sources(table_folder()).items():
        parts = {key: rows for key, rows in data.items() if key not in ("units", "sources")}
        assert parts and all(rows for rows in parts.values())
        assert all(source["title"] and source["clause"] for source in data["sources"].values())
        assert set(map(str, data["units"].values())) <= set(UNITS) | {"lb/ft"}, name
        for part, rows in parts.items():
            for row in rows:
                assert row["source"] in data["sources"], (name, part, row)
                assert row["basis"] in BASES, (name, part, row)
                assert set(row.get("from_memory", [])) < set(row), (name, part, row)


def test_no_row_stands_twice() -> None:
    for name, data in read_sources(table_folder()).items():
        for part, rows in data.items():
            if part in ("units", "sources"):
                continue
            names = [str(row.get("name", row.get("size", row.get("gauge", row.get("bolt"))))) for row in rows]
            if part == "flat_heads":
                names = [f"{row['size']} {row['angle']}" for row in rows]
            if part != "bending_yield":
                assert len(set(names)) == len(names), (name, part)


def test_every_word_of_a_plan_has_its_row() -> None:
    assert set(TABLES.names("framing")) == set(words.FRAMING_SPECIES)
    assert set(TABLES.names("steels")) == set(words.STEELS)
    assert set(words.STUD_SIZES) <= set(TABLES.names("lumber"))
    without = {"plywood", "MDF", "particleboard"}
    assert set(TABLES.names("boards")) == set(words.BOARD_SPECIES) - without
    for name in without:
        with pytest.raises(NotPossible, match=name):
            TABLES.board(name)
    for name in words.FRAMING_SPECIES:
        assert 0.31 <= TABLES.framing(name).gravity <= 0.73
    for name in TABLES.names("boards"):
        assert 0.25 < TABLES.board(name).gravity < 0.8


def test_unknown_framing_is_never_heavier_than_what_is_sold_as_studs() -> None:
    studs = ("spruce-pine-fir", "spruce-pine-fir south", "hem-fir", "western woods", "northern species",
             "eastern softwoods", "western cedars", "western cedars north", "redwood")  # fmt: skip
    assert TABLES.framing("unknown").gravity <= min(TABLES.framing(name).gravity for name in studs)
    assert TABLES.framing("unknown").basis == "common practice"


@pytest.mark.parametrize(
    ("name", "gravity"),
    [("spruce-pine-fir", 0.42), ("douglas fir-larch", 0.50), ("southern pine", 0.55), ("white oak", 0.73)],
)
def test_specific_gravity_of_common_groups(name: str, gravity: float) -> None:
    """AWC NDS 2018, Table 12.3.3A."""
    assert TABLES.framing(name).gravity == gravity


@pytest.mark.parametrize("gauge", [6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24])
def test_wood_screw_diameters_follow_their_number(gauge: int) -> None:
    """ASME B18.6.1: 0.060 + 0.013 n in. An independent check of every row's diameter."""
    screw = TABLES.wood_screw(gauge)
    assert from_si(screw.diameter, "in") == pytest.approx(0.060 + 0.013 * gauge, abs=0.0006)
    assert 0.74 * screw.diameter < screw.root_diameter < 0.83 * screw.diameter
    assert screw.tip == 2 * screw.diameter
    assert TABLES.fastener("wood screw", screw.diameter) == screw


@pytest.mark.parametrize(
    ("inches", "root", "tip", "bending"),
    [(0.25, 0.173, 5 / 32, 70000), (0.3125, 0.227, 3 / 16, 60000), (0.375, 0.265, 7 / 32, 45000)],
)
def test_lag_screws(inches: float, root: float, tip: float, bending: float) -> None:
    """AWC NDS 2018, Appendix L Table L2 and Appendix I Table I1."""
    screw = TABLES.fastener("lag screw", 25.4 * inches)
    assert from_si(screw.root_diameter, "in") == pytest.approx(root)
    assert from_si(screw.tip, "in") == pytest.approx(tip, abs=0.0001)
    assert from_si(screw.bending_yield, "psi") == pytest.approx(bending)


@pytest.mark.parametrize(
    ("gauge", "bending"), [(6, 100000), (7, 90000), (8, 90000), (9, 90000), (10, 80000), (12, 80000), (14, 70000)]
)
def test_bending_yield_of_wood_screws(gauge: int, bending: float) -> None:
    """AWC NDS 2018, Appendix I Table I1; No. 9 stands exactly on a band's edge."""
    assert from_si(TABLES.wood_screw(gauge).bending_yield, "psi") == pytest.approx(bending)


@pytest.mark.parametrize(
    ("kind", "diameter"),
    [("wood screw", 2.8), ("wood screw", 6.0), ("lag screw", 5.0), ("lag screw", 7.0), ("deck screw", 4.826),
     ("drywall screw", 3.5), ("structural screw", 8.0)],
)  # fmt: skip
def test_a_size_without_a_row_gets_no_root_diameter(kind: str, diameter: float) -> None:
    with pytest.raises(OutsideRulebook):
        TABLES.fastener(kind, diameter)
    with pytest.raises(OutsideRulebook):
        TABLES.wood_screw(4)


def test_angles_are_found_whichever_leg_comes_first() -> None:
    long_first, short_first = TABLES.angle(76.2, 50.8, 6.35), TABLES.angle(50.8, 76.2, 6.35)
    assert long_first == short_first and long_first is not None and long_first.name == "L3x2x1/4"
    assert TABLES.angle(50.0, 50.0, 5.0) is None


def test_what_has_no_row_is_none_or_refused() -> None:
    assert TABLES.clearance(5.4864) is None  # ASME B18.2.8 has no No. 12
    assert TABLES.flat_head(6.0) is None
    assert TABLES.bolt_edge(6.35) is None  # AISC Table J3.4 starts at 1/2 in.
    with pytest.raises(NotPossible, match="oregon pine"):
        TABLES.framing("oregon pine")
    assert TABLES.washer("1/4 N").outside == pytest.approx(15.875)


def test_normal_runs_do_not_read_yaml() -> None:
    import subprocess
    import sys

    code = "import sys; from plumbrule.mechanics import tables; tables.load(); print('ruamel' in ' '.join(sys.modules))"
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert found.stdout.strip() == "False"
    assert set(json.loads((table_folder() / COMPILED).read_text())["tables"]) == set(NAMES)
