"""The take-off as it is printed: three pages, JSON by its schema, tables that come back as they went out."""

from __future__ import annotations

import csv
import io
import json
import re
from dataclasses import replace
from datetime import date
from functools import cache
from typing import Any

import pytest
from jsonschema import Draft202012Validator
from pytest_regressions.file_regression import FileRegressionFixture

from plumbrule import shipped
from plumbrule.facts.takeoff import take_off
from plumbrule.facts.takeoff_panels import CutCourse, CutPiece
from plumbrule.inspection.examine import Examined, examine
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.report.takeoff import PAGES, text
from plumbrule.report.takeoff_csv import TABLES, tables
from plumbrule.report.takeoff_cutting import course_line
from plumbrule.report.takeoff_data import data
from plumbrule.report.takeoff_figures import by_the_run, mark
from plumbrule.rulebook.file import ExampleFile
from plumbrule.rulebook.load import load

PLANS = shipped.folder("plans")
EVERY = sorted([*PLANS.glob("*.yaml"), *PLANS.glob("faulty/*.yaml")])
VERDICT = re.compile(r"^(Inspected|FAILS): .*\n(   .*\n)*", re.MULTILINE)  # changes with every rule


@cache
def rulebook():
    return load()


def taken(name: str, *changes: dict[str, Any]) -> tuple[Any, Examined]:
    document = read_file(PLANS / f"{name}.yaml")
    if changes:
        file = ExampleFile.model_validate({"plan": name, "at": "/purchase", "patch": list(changes)})
        document = patched(document, file.patch)
    examined = examine(document, rulebook(), date(2026, 6, 1))
    return take_off(examined.plan), examined


def written(name: str, *changes: dict[str, Any], pages: tuple[str, ...] = PAGES, width: int = 100) -> str:
    takeoff, examined = taken(name, *changes)
    # The head of a page is laid out by the length of its path, which differs from place to place.
    return text(takeoff, replace(examined, path=f"plans/{name}.yaml"), rulebook(), pages, width)


@pytest.mark.parametrize("name", ["alcove-seat", "bracket-shelf", "panel-wall"])
def test_layout(name: str, file_regression: FileRegressionFixture) -> None:
    file_regression.check(VERDICT.sub("", written(name)), encoding="utf-8")


@pytest.mark.parametrize("path", EVERY, ids=lambda path: path.stem)
def test_every_plan_is_taken_off_within_the_width(path) -> None:
    examined = examine(read_file(path), rulebook(), date(2026, 6, 1))
    takeoff = take_off(examined.plan)
    for width in (60, 80, 100):
        page = text(takeoff, examined, rulebook(), PAGES, width)
        assert max(len(line) for line in page.splitlines()) <= width
        assert "None" not in page
    schema = json.loads((shipped.folder("schema") / "takeoff.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(json.loads(data(takeoff, examined)))
    for row in csv.reader(io.StringIO(tables(takeoff, examined), newline="")):
        assert not any(cell.startswith(("=", "+", "@")) for cell in row)


def test_the_schema_is_one() -> None:
    schema = json.loads((shipped.folder("schema") / "takeoff.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator.check_schema(schema)


def test_json_says_what_the_pages_say() -> None:
    takeoff, examined = taken("alcove-seat")
    value = json.loads(data(takeoff, examined))
    assert json.loads(data(takeoff, examined, pretty=True)) == value
    lag = next(one for one in value["needs"] if (one["group"], one["name"]) == ("screws", "wall-lag"))
    assert (lag["needed"], lag["bought"], lag["unit"], lag["state"]) == (22, 25, "pieces", "enough")
    tube = next(one for one in value["needs"] if one["group"] == "sealants")
    assert tube["bought"] == pytest.approx(2 * 10.1 * 29.5735295625)
    strip = next(one for one in value["needs"] if one["group"] == "backers")
    assert strip["bought"] == pytest.approx(30 * 304.8)
    steel = next(one for one in value["sticks"] if one["name"] == "seat-steel")
    assert (steel["at_least"], len(steel["cuts"])) == (1, 1)
    assert steel["cuts"][0]["left"] == pytest.approx(20.25 * 25.4)
    back = next(one for one in value["drilling"] if one["name"] == "seat-back")
    assert back["rows"][0]["marks"] == pytest.approx([50.8, 368.3, 774.7, 1181.1, 1460.5])
    assert back["to_right_end"] == {"wall": pytest.approx(50.8), "seat": pytest.approx(5.75 * 25.4)}


def rows_of(name: str, table: str, *changes: dict[str, Any]) -> list[dict[str, str]]:
    told = tables(*taken(name, *changes), (table,))
    assert told.count("\r\n") == told.count("\n")
    return list(csv.DictReader(io.StringIO(told, newline="")))


def test_tables_come_back_as_they_went_out() -> None:
    screws = {row["name"]: row for row in rows_of("alcove-seat", "needs") if row["group"] == "screws"}
    assert (screws["wall-lag"]["needed"], screws["wall-lag"]["bought"], screws["wall-lag"]["over"]) == ("22", "25", "3")
    cuts = [row for row in rows_of("alcove-seat", "sticks") if row["name"] == "seat-steel"]
    assert [(row["piece"], row["length (in)"], row["left over (in)"]) for row in cuts] == [
        ("seat-back", "59.5", "20.25"), ("seat-left", "16", "20.25"),
    ]  # fmt: skip
    assert len(rows_of("alcove-seat", "panels")) == 42
    holes = rows_of("bracket-shelf", "drilling")
    assert {row["from left end (mm)"] for row in holes} == {"30"}
    assert {row["slot (mm)"] for row in holes} == {"", "10"}


def test_all_tables_stand_under_their_names() -> None:
    told = list(csv.reader(io.StringIO(tables(*taken("alcove-seat")), newline="")))
    assert [row[0] for row in told if len(row) == 1] == list(TABLES)
    assert told.count([]) == len(TABLES) - 1


def test_no_cell_becomes_a_formula() -> None:
    from plumbrule.report.takeoff_csv import _safe

    for hostile in ("=1+1", "+49", "-cmd", "@SUM(A1)", "\t=1"):
        assert not _safe(hostile).startswith(("=", "+", "-", "@", "\t"))
    assert _safe(-0.25) == "-0.25"
    assert _safe("seat, left") == "seat, left"


def test_what_is_short_missing_or_not_listed_is_loud() -> None:
    page = written(
        "alcove-seat", {"op": "replace", "path": "/purchase/screws/wall-lag/count", "value": 20},
        {"op": "remove", "path": "/purchase/washers/seat-screw"},
        {"op": "add", "path": "/purchase/abrasives/grit-320", "value": {"count": 5}}, pages=("merchant",),
    )  # fmt: skip
    assert re.search(r"wall-lag +22 +20 +SHORT 2 ", page)
    assert re.search(r"seat-screw +9 +- +NOT LISTED", page)
    assert "needed by nothing in this plan: abrasives grit-320" in page
    assert "FAILS: " in page
    assert "Put the plan right before you buy" in page


def test_a_piece_longer_than_its_stick_is_said_on_both_pages() -> None:
    page = written("alcove-seat", {"op": "replace", "path": "/purchase/steel/seat-steel/stick", "value": "4 ft"})
    assert "none is as long as the longest piece, 59-1/2" in " ".join(page.split())
    assert "no stick of the length bought gives the longest piece" in page


def test_what_is_to_be_measured_is_named_and_never_guessed() -> None:
    page = written(
        "alcove-seat", {"op": "replace", "path": "/record/status", "value": "template"},
        {"op": "replace", "path": "/angles/seat-back/length", "value": "measure on site"},
    )  # fmt: skip
    assert "measure /angles/seat-back/length" in page
    back = page[page.index("ANGLE   seat-back") if "ANGLE   seat-back" in page else page.index("ANGLE seat-back") :]
    assert "length ?" in back.splitlines()[0]


@pytest.mark.parametrize(
    ("mm", "system", "shown"),
    [
        (368.3, "inch", "14-1/2"), (25.4 * 35 / 64, "inch", "35/64"), (25.4 / 3, "inch", "0.333333"),
        (0.0, "inch", "0"),
        (1181.0, "metric", "1181"), (14.25, "metric", "14.25"), (3.175, "metric", "3.175"), (None, "metric", "?"),
    ],
)  # fmt: skip
def test_a_mark_is_the_number_itself(mm, system, shown) -> None:
    assert mark(mm, system) == shown


def test_what_is_sold_by_the_run_is_told_in_feet_or_metres() -> None:
    assert by_the_run([280.376 * 25.4, 9144.0, 79.624 * 25.4], "inch") == ["23.36 ft", "30 ft", "6.635 ft"]
    assert by_the_run([12633.0, 14000.0, 1367.0], "metric") == ["12.63 m", "14 m", "1.367 m"]
    # less than a millimetre short must not look like enough
    assert by_the_run([14000.1, 14000.0], "metric") == []


def test_a_course_that_follows_the_ceiling_stays_clear_of_its_pieces() -> None:
    course = CutCourse("back", 14, (2328.0, 2328.0), (2412.98, 2408.02), False, ())
    piece = CutPiece("back", 14, 1, 446.0, 1, False, False, 2328.0, 2412.98, False)
    told = course_line(course._replace(pieces=(piece,)), 14, "metric", 180.0)
    assert told == "14  + 2412.98 to 2408.02  446"


def test_a_top_course_that_is_cut_level_says_how_tall_it_is() -> None:
    course = CutCourse("right", 14, (2328.0, 2328.0), (2408.0, 2408.0), False, ())
    piece = CutPiece("right", 14, 1, 1174.5, 33, False, False, 2328.0, 2408.0, False)
    cut = course._replace(pieces=(piece,))
    assert course_line(cut, 14, "metric", 180.0).split() == ["14", "+", "2408", "1174.5", "x", "80"]
    assert course_line(cut, 14, "metric", 80.0).split() == ["14", "2408", "1174.5"]
