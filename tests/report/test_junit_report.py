"""JUnit XML: counts, what is a failure, an error, skipped, and what passes."""

from __future__ import annotations

from typing import Any
from xml.etree import ElementTree

import hand_made as made

from plumbrule.reading.fault import NOWHERE, Fault
from plumbrule.report import junit
from plumbrule.report.outcome import inspected, unreadable


def suites(run: made.Run) -> Any:
    outcomes = [inspected(run.examined, run.terms, junit.plan(run.examined, run.terms))]
    return ElementTree.fromstring("".join(junit.whole(outcomes, run.terms, run.rulebook)))


def test_one_of_everything() -> None:
    (suite,) = suites(made.run(made.everything()))
    told = {case.get("name"): [child.tag for child in case] for case in suite}
    assert told == {
        "hole-land at /angles/kiln-side": ["error"],
        "hole-near-end at /angles/kiln-side": ["failure", "system-out"],
        "hole-near-end at /angles/other": [],
        "rough-edge at /angles/kiln-side": ["system-out"],
        "screw-beside-stud at /angles/kiln-side": ["skipped", "system-out"],
        "screw-pulls-out at /angles/kiln-side": ["skipped", "system-out"],
        "departure old-hole": ["failure"],
    }
    counts = {key: suite.get(key) for key in ("tests", "failures", "errors", "skipped")}
    assert counts == {"tests": "7", "failures": "2", "errors": "1", "skipped": "2"}


def test_what_was_skipped_says_what_to_measure() -> None:
    (suite,) = suites(made.run(made.inspection(unseen=(made.not_inspected(),))))
    message = suite.find("testcase/skipped").get("message")
    wanted = "/angles/kiln-side/wall_holes/drilled_within, /walls/north/framing"
    assert message == f"not inspected; measure: {wanted}"


def test_below_the_level_that_fails_a_case_passes_and_says_so() -> None:
    (suite,) = suites(made.run(made.everything(), stop_at="advisory"))
    assert suite.find("testcase[@name='rough-edge at /angles/kiln-side']/failure") is not None
    (suite,) = suites(made.run(made.inspection(made.allowed())))
    assert suite.get("failures") == "0"
    assert "Allowed by engineer until 2027-03-01" in suite.find("testcase/system-out").text


def test_a_failed_rule_is_an_error_even_where_only_stop_work_fails() -> None:
    (suite,) = suites(made.run(made.inspection(made.failed()), stop_at="stop-work"))
    assert suite.get("errors") == "1"


def test_an_unreadable_plan_is_an_error() -> None:
    run = made.run(made.inspection())
    faults = [Fault("broken.yaml", NOWHERE, "", "There is no such file.", "Check the name.")]
    outcomes = [unreadable("broken.yaml", faults, junit.unreadable("broken.yaml", faults, run.terms))]
    (suite,) = ElementTree.fromstring("".join(junit.whole(outcomes, run.terms, run.rulebook)))
    assert suite.get("errors") == "1"
    assert "broken.yaml:1:1" in suite.find("testcase/error").text


def test_what_xml_forbids_is_left_out() -> None:
    evil = made.finding(on=made.row("hole\x00\x0b\ufffe\ud800 <&>"), text="<![CDATA[ \x1b ]]> \x08 & ]]>")
    (suite,) = suites(made.run(made.inspection(evil), path="a\x01<b>.yaml"))
    assert suite.get("name") == "a<b>.yaml"
    assert suite.find("testcase/failure").get("message") == "<![CDATA[ ]]> & ]]>"
