"""Allowed departures: what they cover, when they end, and when they are worth nothing."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from plumbrule.catalogue.fact import Row
from plumbrule.inspection.departures import Allowances, barred
from plumbrule.inspection.types import Departure, Finding
from plumbrule.rulebook.rule import Bounds, Caution, Rule

TODAY = date(2026, 6, 1)
RULE = Rule(
    "hole-near-steel-edge", "steel", "A title", "stop-work", "hole", None, None, "", Bounds(None, None), None, {},
    "says", "why", (), Caution("NOTICE", "care"), "someone", (), "0.1.0", False, "mm", "x.yaml",
)  # fmt: skip
ROW = Row("hole", "/angles/back/wall_holes", "/angles/back", "back W1", {}, {}, {}, {}, {}, {}, {})
FINDING = Finding(RULE, "breaks", "stop-work", ROW, "/holes/pair/diameter", "text", 5.0, 6.0, -1.0, "mm", "at least")
DEPARTURE = Departure(
    "kept", RULE.id, "/angles/back", "old steel", "engineer", date(2026, 12, 31), -1.0, "/departures/kept"
)


def test_a_departure_covers_the_part_it_names_and_is_not_noted():
    allowances = Allowances([DEPARTURE], TODAY)
    finding = allowances.apply(FINDING)
    assert (finding.verdict, finding.departure) == ("allowed", DEPARTURE)
    assert allowances.notes() == ()


@pytest.mark.parametrize(
    ("departure", "finding", "note"),
    [
        (replace(DEPARTURE, at="/angles/left"), FINDING, "unused"),
        (replace(DEPARTURE, at="/angles/ba"), FINDING, "unused"),
        (replace(DEPARTURE, rule="another-rule"), FINDING, "unused"),
        (replace(DEPARTURE, until=date(2026, 5, 31)), FINDING, "expired"),
        (DEPARTURE, replace(FINDING, margin=-1.01), "void"),
    ],
)
def test_what_a_departure_does_not_cover_still_breaks_and_the_departure_is_noted(departure, finding, note):
    allowances = Allowances([departure], TODAY)
    assert allowances.apply(finding).verdict == "breaks"
    assert [found.kind for found in allowances.notes()] == [note]


def test_a_departure_holds_on_its_last_day_and_while_the_margin_is_no_worse():
    assert Allowances([replace(DEPARTURE, until=date(2026, 6, 1))], TODAY).apply(FINDING).verdict == "allowed"
    assert Allowances([DEPARTURE], TODAY).apply(replace(FINDING, margin=-0.5)).verdict == "allowed"


@pytest.mark.parametrize("verdict", ["failed", "not inspected", "holds"])
def test_only_what_breaks_can_be_allowed(verdict):
    assert Allowances([DEPARTURE], TODAY).apply(replace(FINDING, verdict=verdict)).verdict == verdict


def test_what_people_hang_on_and_hazards_cannot_be_departed_from():
    assert barred("hazards", "advisory")
    assert barred("framing", "stop-work")
    assert barred("loads", "stop-work")
    assert barred("electrical", "stop-work")
    assert not barred("framing", "correction")
    assert not barred("steel", "stop-work")
    framing = RULE._replace(trade="framing")
    allowances = Allowances([DEPARTURE], TODAY)
    assert allowances.apply(replace(FINDING, rule=framing)).verdict == "breaks"
