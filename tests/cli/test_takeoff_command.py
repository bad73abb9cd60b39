"""`plumbrule takeoff` from its words to its exit codes."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest
from command import run
from jsonschema import Draft202012Validator

from plumbrule import shipped
from plumbrule.cli.arguments import PAGES, TABLES
from plumbrule.report import takeoff, takeoff_csv

ALCOVE = shipped.folder("plans") / "alcove-seat.yaml"
SHORT = shipped.folder("plans") / "faulty" / "four-pieces-from-one-bar.yaml"


def test_three_pages() -> None:
    ran = run("takeoff", ALCOVE)
    assert (ran.code, ran.err) == (0, "")
    places = [ran.out.index(head) for head in ("1  TO THE MERCHANT", "2  TO THE SAW", "3  TO THE DRILL")]
    assert places == sorted(places)


@pytest.mark.parametrize("page", PAGES)
def test_one_page(page: str) -> None:
    ran = run("takeoff", ALCOVE, "--page", page)
    assert ran.code == 0
    assert ran.out.count("TO THE ") == 1


def test_words_of_the_command_are_those_of_the_report() -> None:
    assert PAGES == takeoff.PAGES
    assert TABLES == takeoff_csv.TABLES


def test_json_to_its_schema() -> None:
    ran = run("takeoff", "--format", "json", ALCOVE)
    schema = json.loads((shipped.folder("schema") / "takeoff.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(json.loads(ran.out))
    assert ran.code == 0


def test_one_table_alone_and_all_of_them() -> None:
    alone = run("takeoff", "--format", "csv", "--table", "drilling", ALCOVE)
    assert alone.code == 0
    assert len(list(csv.DictReader(io.StringIO(alone.out, newline="")))) == 31  # 15 holes, and 8 in either return
    assert run("takeoff", "--format", "csv", ALCOVE).out.startswith("needs\r\n")


def test_a_plan_that_fails_is_taken_off_all_the_same_and_says_so() -> None:
    ran = run("takeoff", SHORT)
    assert (ran.code, "FAILS: 1 correction" in ran.out) == (0, True)
    assert "SHORT 1" in ran.out


def test_standard_input() -> None:
    assert "TO THE SAW" in run("takeoff", "-", stdin=ALCOVE.read_bytes()).out


def test_into_a_file(tmp_path: Path) -> None:
    target = tmp_path / "order.csv"
    ran = run("takeoff", "--format", "csv", "--table", "needs", "--out", target, ALCOVE)
    assert (ran.code, ran.out) == (0, "")
    assert target.read_bytes().startswith(b"group,name,needed")
    assert b"\r\n" in target.read_bytes()
    assert b"\r\r\n" not in target.read_bytes()


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ((), "no plan was named"),
        (("--format", "xml", ALCOVE), "is not one of text, json, csv"),
        (("--table", "needs", ALCOVE), "--table chooses one of the tables of --format csv"),
        (("--page", "saw", "--format", "json", ALCOVE), "--page chooses one of the pages of --format text"),
        (("--page", "sawmill", ALCOVE), "is not one of merchant, saw, drill"),
        (("--out", "/nowhere/at/all.txt", ALCOVE), "there is no folder"),
    ],
)
def test_asked_wrongly(words, says) -> None:
    ran = run("takeoff", *words)
    assert (ran.code, ran.out) == (2, "")
    assert says in ran.err


def test_a_plan_that_cannot_be_read(tmp_path: Path) -> None:
    ran = run("takeoff", tmp_path / "none.yaml")
    assert (ran.code, ran.out, "There is no such file." in ran.err) == (2, "", True)
    bad = tmp_path / "bad.yaml"
    bad.write_text(
        ALCOVE.read_text(encoding="utf-8").replace("seat-steel: {stick: 8 ft", "seat-stel: {stick: 8 ft"),
        encoding="utf-8",
    )
    ran = run("takeoff", bad)
    assert (ran.code, ran.out) == (2, "")
    assert "seat-stel" in ran.err


def test_help_names_what_it_does() -> None:
    assert "takeoff" in run("--help").out
    assert "--table" in run("takeoff", "--help").out
