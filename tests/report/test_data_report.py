"""The JSON report: it is what the published schema says, and its numbers are the ones that were compared."""

from __future__ import annotations

import json
from typing import Any

import hand_made as made
import pytest
from jsonschema import Draft202012Validator

from plumbrule import shipped
from plumbrule.reading.fault import NOWHERE, Fault
from plumbrule.report import data
from plumbrule.report.outcome import inspected, unreadable
from plumbrule.rulebook.rule import LEVELS, SIGNALS, TRADES


def schema(name: str = "report") -> Any:
    return json.loads((shipped.folder("schema") / f"{name}.schema.json").read_text(encoding="utf-8"))


def report(*runs: made.Run, pretty: bool = False) -> str:
    outcomes = [inspected(run.examined, run.terms, data.plan(run.examined, run.terms)) for run in runs]
    return "".join(data.whole(outcomes, runs[0].terms, runs[0].rulebook))


def checked(text: str) -> Any:
    value = json.loads(text)
    Draft202012Validator(schema()).validate(value)
    return value


def test_the_schemas_are_schemas() -> None:
    for name in ("report", "workings"):
        Draft202012Validator.check_schema(schema(name))


def test_the_schema_knows_every_word() -> None:
    defs = schema()["$defs"]
    assert defs["level"]["enum"] == list(LEVELS)
    assert defs["caution"]["properties"]["signal"]["enum"] == list(SIGNALS)
    assert defs["finding"]["properties"]["trade"]["enum"] == list(TRADES)


def test_one_of_everything() -> None:
    value = checked(report(made.run(made.everything(), timing=True)))
    (plan,) = value["plans"]
    assert plan["verdict"] == "fail"
    assert plan["levels"] == {"stop-work": 2, "correction": 1, "advisory": 1}
    assert plan["tally"] == {
        "holds": 41, "breaks": 3, "not_inspected": 2, "allowed": 1, "failed": 1, "does_not_apply": 12,
    }  # fmt: skip
    assert [finding["verdict"] for finding in plan["findings"]] == ["failed", "breaks", "breaks", "allowed"]
    assert [thing["pointer"] for thing in plan["to_measure"]] == [
        "/walls/north/framing", "/angles/kiln-side/wall_holes/drilled_within",
    ]  # fmt: skip
    assert plan["about_departures"][0]["kind"] == "expired"
    assert value["exit"] == 1


def test_numbers_are_the_ones_compared_and_places_count_from_one() -> None:
    (finding,) = checked(report(made.run(made.inspection(made.finding()))))["plans"][0]["findings"]
    assert finding["measure"] == {"value": 8.73125, "unit": "mm", "shown": "11/32 in"}
    assert finding["limit"] == {"value": 11.90625, "unit": "mm", "shown": "15/32 in"}
    assert finding["margin"] == -3.175
    lines = made.PLAN.splitlines()
    assert lines[finding["line"] - 1][finding["column"] - 1 :].startswith("3/8 in")
    assert finding["worked"][0]["numbers"][0] == {"symbol": "x", "value": 9.525, "unit": "mm"}


def test_an_unreadable_plan_beside_a_good_one() -> None:
    run = made.run(made.inspection(), alone=False)
    fault = Fault("broken.yaml", NOWHERE, "", "There is no such file.", "Check the name.")
    good = inspected(run.examined, run.terms, data.plan(run.examined, run.terms))
    bad = unreadable("broken.yaml", [fault], data.unreadable("broken.yaml", [fault], run.terms))
    value = checked("".join(data.whole([good, bad], run.terms, run.rulebook)))
    assert [plan["verdict"] for plan in value["plans"]] == ["pass", "unreadable"]
    assert value["exit"] == 2


def test_pretty_is_the_same_report() -> None:
    plain, pretty = report(made.run(made.everything())), report(made.run(made.everything(), pretty=True))
    assert json.loads(plain) == json.loads(pretty)
    assert plain.count("\n") == 1
    assert pretty.count("\n") > 100


def test_a_figure_that_is_not_finite_is_refused() -> None:
    with pytest.raises(ValueError, match="JSON"):
        report(made.run(made.inspection(made.finding(margin=float("nan")))))


@pytest.mark.parametrize("key", ["verdict", "tally", "findings", "not_inspected"])
def test_the_schema_misses_what_is_left_out(key: str) -> None:
    value = json.loads(report(made.run(made.everything())))
    del value["plans"][0][key]
    assert not Draft202012Validator(schema()).is_valid(value)
