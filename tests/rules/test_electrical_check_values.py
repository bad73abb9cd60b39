"""Every verdict that was collected for boxes, screws near cables and fittings, come to by the rules themselves."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import Any

import pytest

from plumbrule import shipped
from plumbrule.facts.facts import work_out
from plumbrule.inspection.judge import judge
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read_file
from plumbrule.rulebook.files import rule_files
from plumbrule.rulebook.read import read_rules, read_sources
from plumbrule.rulebook.rule import Rule

PUBLISHED = Path(__file__).parent.parent / "published"
VERDICTS: list[dict[str, Any]] = read_file(PUBLISHED / "electrical.yaml").value["verdicts"]
COLLECTED: dict[str, Any] = read_file(PUBLISHED / "collected.yaml").value["electrical"]


@cache
def rules() -> dict[str, Rule]:
    folder = shipped.folder("rules")
    assert rule_files(folder)
    return {rule.id: rule for rule in read_rules(folder, read_sources(folder))}


@pytest.mark.parametrize("case", VERDICTS, ids=lambda case: case["id"])
def test_the_rules_say_what_the_source_says(case: dict[str, Any]) -> None:
    plan = read_plan(patched(read_file(shipped.folder("plans") / f"{case['plan']}.yaml"), case["patch"]))
    rows = work_out(plan).rows
    for name in case["rules"]:
        rule = rules()[name]
        found = [
            judge(rule, row, rule.values())
            for row in rows[rule.looks_at]
            if row.pointer == case["at"] or row.pointer.startswith(case["at"] + "/")
        ]
        verdicts = {one.verdict for one in found}
        assert found, name
        if case["verdict"] == "ok":
            assert verdicts <= {"holds", None}, name
        elif case["verdict"] == "refer":
            assert verdicts == {"not inspected"}, name
        else:
            assert "breaks" in verdicts and "failed" not in verdicts, name
            assert case["verdict"] == "caution" or rule.level == "stop-work", name


def test_every_collected_verdict_is_come_to_or_says_why_not() -> None:
    run = [case["id"] for case in VERDICTS]
    idle = [one for group in COLLECTED["not_run"] for one in group["ids"]]
    assert all(len(group["because"]) >= 30 for group in COLLECTED["not_run"])
    assert sorted(run + idle) == sorted(COLLECTED["all"])
    assert len(set(COLLECTED["all"])) == len(COLLECTED["all"])
