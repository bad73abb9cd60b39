"""The shipped plans: the good ones have nothing to put right, the faulty ones are found out, in a punch list that is
kept here as it reads. Which rule finds which mistake, and where, is tested by trade beside the rules."""

from __future__ import annotations

import re
from datetime import date
from functools import cache

import pytest

from plumbrule import shipped
from plumbrule.cli import main
from plumbrule.inspection.examine import examine
from plumbrule.reading.places import read_file
from plumbrule.rulebook.load import load

PLANS = shipped.folder("plans")
FAULTY = sorted(PLANS.glob("faulty/*.yaml"))
GOOD = sorted(PLANS.glob("*.yaml"))
RULEBOOK = re.compile(r"rulebook [0-9.]+ \([0-9a-f]+\)")  # changes with every rule


@cache
def rulebook():
    return load()


def inspection(path):
    return examine(read_file(path), rulebook(), date(2026, 1, 1)).inspection


@pytest.mark.parametrize("path", FAULTY, ids=lambda path: path.stem)
def test_a_faulty_plan_says_its_mistake_first_and_is_found_out(path):
    assert path.read_text(encoding="utf-8").startswith("# ")
    assert inspection(path).findings


@pytest.mark.parametrize("path", FAULTY, ids=lambda path: path.stem)
def test_the_punch_list_of_a_faulty_plan(path, file_regression, monkeypatch, capsys):
    monkeypatch.chdir(PLANS.parent)
    monkeypatch.setenv("COLUMNS", "100")
    main(["inspect", str(path.relative_to(PLANS.parent)), "--today", "2026-01-01"])
    text = capsys.readouterr().out
    file_regression.check(RULEBOOK.sub("rulebook", text), basename=path.stem)


@pytest.mark.parametrize("path", GOOD, ids=lambda path: path.stem)
def test_a_base_plan_has_nothing_to_put_right(path):
    found = inspection(path)
    assert [(finding.rule.id, finding.row.label) for finding in found.findings if finding.level != "advisory"] == []
    assert [finding.rule.id for finding in found.not_inspected] == []
    assert found.tally.failed == 0
    assert found.tally.holds > 0


def test_there_are_inch_and_metric_plans_among_good_and_faulty():
    for paths in (GOOD, FAULTY):
        systems = {examine(read_file(path), rulebook(), date(2026, 1, 1)).system for path in paths}
        assert systems == {"inch", "metric"}
