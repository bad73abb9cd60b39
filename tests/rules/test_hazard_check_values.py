"""Every verdict that was collected on hazards and from building codes, come to by the rules themselves."""

from __future__ import annotations

from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from plumbrule import shipped
from plumbrule.facts.facts import work_out
from plumbrule.inspection.departures import barred
from plumbrule.inspection.examine import examine
from plumbrule.inspection.judge import judge
from plumbrule.plan.read import read_plan
from plumbrule.reading.fault import Unreadable
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.rulebook.load import load
from plumbrule.rulebook.read import read_rules, read_sources
from plumbrule.rulebook.rule import Rule

PLANS = shipped.folder("plans")
PUBLISHED = Path(__file__).parent.parent / "published"
VERDICTS: dict[str, list[dict[str, Any]]] = {
    name: read_file(PUBLISHED / f"{name}.yaml").value["verdicts"] for name in ("hazards", "building")
}
CASES = [case for cases in VERDICTS.values() for case in cases]
# The words with which a rule leaves the matter to somebody else.
OTHERS = ("office", "firm", "doctor", "laboratory", "licensed", "engineer", "authority")
BASES = {"published", "from memory", "common practice"}
TODAY = date(2026, 6, 1)


@cache
def rules() -> dict[str, Rule]:
    folder = shipped.folder("rules")
    return {rule.id: rule for rule in read_rules(folder, read_sources(folder))}


def verdicts(case: dict[str, Any], name: str) -> set[str | None]:
    """What a rule says of every row at the place of a case."""
    rule = rules()[name]
    plan = read_plan(patched(read_file(PLANS / f"{case['plan']}.yaml"), case["patch"]))
    rows = [row for row in work_out(plan).rows[rule.looks_at] if case["at"] in (row.pointer, row.part)]
    assert rows, name
    return {judge(rule, row, rule.values()).verdict for row in rows}


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["id"])
def test_the_rules_say_what_the_source_says(case: dict[str, Any]) -> None:
    for name in case["rules"]:
        found, rule = verdicts(case, name), rules()[name]
        if case["verdict"] == "ok":
            assert found <= {"holds", None}, (name, found)
            continue
        assert found == {"breaks"}, (name, found)
        if case["verdict"] == "refer":
            assert any(other in rule.defer for other in OTHERS), name
            assert rule.level in ("stop-work", "correction"), name
        else:
            level = {"caution": "correction", "stop": "stop-work"}[case["verdict"]]
            assert rule.level == case.get("level", level), name
    for name in case.get("holds", ()):
        assert verdicts(case, name) <= {"holds", None}, name


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["id"])
def test_every_verdict_says_where_it_is_from(case: dict[str, Any]) -> None:
    assert case["basis"] in BASES and case["clause"] and len(case["condition"]) > 10
    assert ("level" in case) == ("because" in case)
    assert len(case.get("because", "x" * 30)) >= 30


@pytest.mark.parametrize("trade", VERDICTS)
def test_every_collected_verdict_is_come_to_or_says_why_not(trade: str) -> None:
    collected: dict[str, Any] = read_file(PUBLISHED / "collected.yaml").value[trade]
    run = [case["id"] for case in VERDICTS[trade]]
    idle = [one for group in collected["not_run"] for one in group["ids"]]
    assert all(len(group["because"]) >= 30 for group in collected["not_run"])
    assert sorted(run + idle) == sorted(collected["all"])
    assert len(set(collected["all"])) == len(collected["all"])


HAZARDS = [name for name, rule in rules().items() if rule.trade == "hazards"]


@pytest.mark.parametrize("name", HAZARDS)
def test_what_hurts_is_never_only_advice_and_never_departed_from(name: str) -> None:
    """Signal words as ANSI Z535 defines them: DANGER will and WARNING may kill or maim, CAUTION may hurt a little;
    NOTICE is about property, and nothing here is."""
    rule = rules()[name]
    assert rule.level in ("stop-work", "correction") and not rule.on_trial
    assert rule.caution.signal in ("DANGER", "WARNING", "CAUTION")
    assert rule.level != "stop-work" or rule.caution.signal in ("DANGER", "WARNING")
    assert barred(rule.trade, rule.level) == "Hazards cannot be departed from."


def test_no_cure_is_to_write_another_result_of_a_test() -> None:
    """What a laboratory or a data sheet says is not for a plan to change until it fits."""
    said = {"lead", "asbestos", "flame_spread", "smoke_developed", "kilograms", "year_built", "wood_risk", "vapour"}
    assert not {hint.change for name in HAZARDS for hint in rules()[name].remedies} & said


def test_a_departure_from_a_hazard_is_refused() -> None:
    departure = {"rule": "oily-rags-left", "at": "/steps/finish", "reason": "the bin is emptied every night",
                 "allowed_by": "joiner", "until": "2027-01-01"}  # fmt: skip
    base = read_file(PLANS / "bracket-shelf.yaml")
    plan = patched(base, [{"op": "remove", "path": "/steps/rags/controls"},
                          {"op": "add", "path": "/departures/rags", "value": departure}])  # fmt: skip
    with pytest.raises(Unreadable, match="Hazards cannot be departed from"):
        examine(plan, load(), TODAY)


def test_a_plan_without_steps_is_not_inspected_once() -> None:
    """Old walls, foam and windows are judged all the same; that nobody says what is done is said by one rule."""
    plan = patched(read_file(PLANS / "alcove-seat.yaml"), [{"op": "remove", "path": "/steps"}])
    unseen = [one for one in examine(plan, load(), TODAY).inspection.not_inspected if one.rule.trade == "hazards"]
    assert [one.rule.id for one in unseen] == ["work-without-steps"]
    assert unseen[0].missing == ("/steps",)


@pytest.mark.parametrize("path", sorted(PLANS.glob("*.yaml")), ids=lambda path: path.stem)
def test_nobody_is_hurt_in_a_clean_plan(path: Path) -> None:
    inspection = examine(read_file(path), load(), TODAY).inspection
    about = [one.rule.id for one in (*inspection.findings, *inspection.not_inspected)
             if one.rule.trade == "hazards" or one.rule.id == "control-not-bought"]  # fmt: skip
    assert not about
