"""The README says what is so: its commands, its example, its plan, its list of trades."""

from __future__ import annotations

import re
import shlex
from datetime import date

from readme import PROMPT, README, blocks, renewed

from plumbrule.inspection.examine import examine
from plumbrule.inspection.types import Verdict
from plumbrule.reading.places import read
from plumbrule.rulebook.load import load


def test_it_opens_with_one_paragraph_that_states_the_job():
    title, job, heading, *_ = README.read_text("utf-8").split("\n\n")
    assert title == "# plumbrule"
    assert heading.startswith("## ")
    for word in ("plan", "seat", "shelf", "why", "how much", "authority"):
        assert word in job


def test_there_are_two_commands_and_ci_runs_both(checkout):
    install, test = (command.strip() for command in blocks("sh"))
    assert install.endswith(".venv/bin/plumbrule inspect plans/alcove-seat.yaml")
    assert test == ".venv/bin/pip install -e '.[test]' && .venv/bin/pytest -q"
    assert all("\n" not in command for command in (install, test))
    ci = (checkout / ".ci" / "run").read_text("utf-8")
    assert "sed -n '/^```sh$/{n;p;q}' README.md" in ci
    invocation = test.rpartition("&&")[2].strip().removeprefix(".venv/bin/")
    assert ci.splitlines()[-1] == f"$bin/{invocation}"
    (extra,) = [word for word in shlex.split(test) if word.startswith(".[")]
    assert f"environment .venv-ci -e '{extra}'" in ci


def test_the_punch_list_in_it_is_what_is_printed_today():
    text = README.read_text("utf-8")
    assert sum(block.startswith(PROMPT) for block in blocks("text")) == 1
    assert renewed(text) == text, "run: python tests/packaging/readme.py"


def test_the_plan_to_copy_passes_with_nothing_left_out():
    (plan,) = blocks("yaml")
    examined = examine(read(plan.encode(), "shelf.yaml"), load(), date(2026, 6, 1))
    assert [one.rule.id for one in examined.inspection.findings if one.level != "advisory"] == []
    assert not examined.inspection.not_inspected
    assert examined.inspection.tally.holds > 100
    assert len(plan.splitlines()) <= 50


def test_every_verdict_is_explained():
    text = README.read_text("utf-8")
    for verdict in Verdict.__args__:
        assert f"\n| {verdict} | " in text


def test_the_trades_it_claims_are_those_of_the_rulebook():
    (claimed,) = re.findall(r"In the rulebook now: ([a-z,\s]+)\.", README.read_text("utf-8"))
    assert re.split(r",\s+", claimed) == list(load().trades())


def test_what_it_links_to_is_there(checkout):
    text = README.read_text("utf-8")
    for name in re.findall(r"\]\(([^)]+)\)", text) + re.findall(r"`((?:plans|schema)/[^` ]*)`", text):
        assert (checkout / name).exists(), name
