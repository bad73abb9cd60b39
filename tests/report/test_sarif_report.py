"""SARIF: valid by the OASIS schema, and what the specification's text adds to it."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import hand_made as made
import pytest
from jsonschema import Draft4Validator

from plumbrule.reading.fault import Fault, Place
from plumbrule.report import sarif
from plumbrule.report.outcome import inspected, unreadable

SCHEMA = json.loads((Path(__file__).parent.parent / "data" / "sarif-schema-2.1.0.json").read_text(encoding="utf-8"))


def log(*runs: made.Run, faults: list[Fault] | None = None) -> Any:
    outcomes = [inspected(run.examined, run.terms, sarif.plan(run.examined, run.terms)) for run in runs]
    if faults:
        outcomes.append(unreadable(faults[0].path, faults, sarif.unreadable(faults[0].path, faults, runs[0].terms)))
    value = json.loads("".join(sarif.whole(outcomes, runs[0].terms, runs[0].rulebook)))
    Draft4Validator(SCHEMA).validate(value)
    return value["runs"][0]


def test_one_of_everything_is_valid() -> None:
    run = log(made.run(made.everything()))
    assert run["columnKind"] == "unicodeCodePoints"
    kinds = [(result["ruleId"], result["kind"], result["level"]) for result in run["results"]]
    assert kinds == [
        ("hole-land", "fail", "error"), ("hole-near-end", "fail", "error"), ("rough-edge", "fail", "note"),
        ("hole-near-end", "fail", "error"), ("screw-beside-stud", "open", "none"), ("screw-pulls-out", "open", "none"),
        ("departure", "fail", "warning"),
    ]  # fmt: skip


def test_nothing_found_is_valid_too() -> None:
    assert log(made.run(made.inspection()))["results"] == []


def test_only_what_fails_has_a_level() -> None:
    """SARIF 2.1.0 section 3.27.10: when kind is not fail, level shall be none."""
    for result in log(made.run(made.everything()))["results"]:
        assert (result["kind"] == "fail") == (result["level"] != "none")


def test_a_departure_is_a_suppression_with_its_reason() -> None:
    run = log(made.run(made.inspection(made.allowed())))
    (suppression,) = run["results"][0]["suppressions"]
    assert suppression["kind"] == "inSource"
    assert suppression["justification"] == "The hole was there before. Allowed by engineer until 2027-03-01."


def test_every_result_names_a_rule_that_is_described() -> None:
    rules = {each.rule.id: each.rule for each in made.everything().findings}
    run = log(made.run(made.everything(), book=made.rulebook(*rules.values())))
    described = {rule["id"] for rule in run["tool"]["driver"]["rules"]}
    assert {result["ruleId"] for result in run["results"] if result["kind"] == "fail"} <= described
    assert all(rule["help"]["text"] for rule in run["tool"]["driver"]["rules"])


def test_places_are_code_points_from_one() -> None:
    region = log(made.run(made.inspection(made.finding())))["results"][0]["locations"][0]["physicalLocation"]["region"]
    line = made.PLAN.splitlines()[region["startLine"] - 1]
    assert region["startLine"] == region["endLine"]
    assert line[region["startColumn"] - 1 : region["endColumn"] - 1] == "3/8 in"


def test_fingerprints_tell_holes_at_one_pointer_apart() -> None:
    one, other = made.finding(), made.finding(on=made.row("hole 2 of kiln-side"), measure=9.0, margin=-2.9)
    prints = [
        result["partialFingerprints"]["plumbrule/v1"]
        for result in log(made.run(made.inspection(one, other)))["results"]
    ]  # fmt: skip
    assert len(set(prints)) == 2


def test_braces_and_brackets_are_text() -> None:
    """Sections 3.11.5 and 3.11.6: braces are placeholders, brackets links."""
    finding = made.finding(text="hole {0} [see](http://example.invalid) has \\ 1")
    message = log(made.run(made.inspection(finding)))["results"][0]["message"]["text"]
    assert message.startswith("hole {{0}} \\[see\\](http://example.invalid) has \\\\ 1")


@pytest.mark.parametrize(
    ("path", "uri"),
    [
        ("plans/a b.yaml", "plans/a%20b.yaml"),
        ("plans/50% #1?.yaml", "plans/50%25%20%231%3F.yaml"),
        ("plans/töpfer.yaml", "plans/t%C3%B6pfer.yaml"),
        ("c:d.yaml", "c%3Ad.yaml"),
        ("./plans/x.yaml", "plans/x.yaml"),
    ],
)
def test_addresses_are_relative_and_percent_encoded(path: str, uri: str) -> None:
    run = log(made.run(made.inspection(made.finding()), path=path))
    found = run["results"][0]["locations"][0]["physicalLocation"]["artifactLocation"]["uri"]
    assert found == uri
    assert re.fullmatch(r"(?:[A-Za-z0-9._~/-]|%[0-9A-F]{2})+", found)


def test_a_plan_here_is_named_from_here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert sarif.address(str(tmp_path / "shelf.yaml")) == "shelf.yaml"
    assert sarif.address("/elsewhere/a b.yaml") == "file:///elsewhere/a%20b.yaml"


def test_an_unreadable_plan_is_a_notification_and_no_success() -> None:
    fault = Fault("broken.yaml", Place(6, 12, 90, 6, 14, 92), "/angles", "48 has no unit.", "Write 48 in.")
    run = log(made.run(made.inspection()), faults=[fault])
    invocation = run["invocations"][0]
    assert not invocation["executionSuccessful"]
    assert invocation["exitCode"] == 2
    (note,) = invocation["toolConfigurationNotifications"]
    assert note["level"] == "error"
    assert note["locations"][0]["physicalLocation"]["region"]["startLine"] == 7


def test_the_schema_finds_a_fault() -> None:
    run = made.run(made.inspection(made.finding()))
    outcomes = [inspected(run.examined, run.terms, sarif.plan(run.examined, run.terms))]
    value = json.loads("".join(sarif.whole(outcomes, run.terms, run.rulebook)))
    value["runs"][0]["results"][0]["level"] = "stop-work"
    assert not Draft4Validator(SCHEMA).is_valid(value)
