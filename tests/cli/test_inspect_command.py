"""`plumbrule inspect` from its words to its exit code, on shipped plans and a rule that every angle breaks."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import pytest
from command import run, thumb_rules
from jsonschema import Draft4Validator, Draft202012Validator

from plumbrule import shipped

PLANS = shipped.folder("plans")
SHELF = PLANS / "display-shelf.yaml"
SARIF = json.loads((Path(__file__).parent.parent / "data" / "sarif-schema-2.1.0.json").read_text(encoding="utf-8"))
TODAY = ("--today", "2026-06-01")


@pytest.fixture
def rules(tmp_path: Path) -> Path:
    return thumb_rules(tmp_path / "rules")


def report(*words: object) -> tuple[int, Any]:
    ran = run("inspect", "--format", "json", *TODAY, *words)
    value = json.loads(ran.out)
    schema = json.loads((shipped.folder("schema") / "report.schema.json").read_text(encoding="utf-8"))
    Draft202012Validator(schema).validate(value)
    assert value["exit"] == ran.code
    return ran.code, value


def test_a_rule_that_breaks_fails(rules: Path) -> None:
    code, value = report("--rules", rules, SHELF)
    assert code == 1
    (plan,) = value["plans"]
    finding = next(found for found in plan["findings"] if found["rule"] == "angle-longer-than-a-thumb")
    assert finding["measure"]["value"] == pytest.approx(70 * 25.4)  # as the plan gives it
    assert finding["pointer"] == "/angles/ledge-back/length"
    line = SHELF.read_text(encoding="utf-8").splitlines()[finding["line"] - 1]
    assert line[finding["column"] - 1 :].startswith("70 in")


def test_text_names_the_place_the_numbers_and_the_exit(rules: Path) -> None:
    ran = run("inspect", "--rules", rules, *TODAY, SHELF)
    assert ran.code == 1
    assert "FAILS at: stop-work" in ran.out
    assert "70 in" in ran.out
    assert re.search(r"display-shelf\.yaml:\d+:\d+/angles/ledge-back/length", "".join(ran.out.split()))
    assert ran.out.rstrip().splitlines()[-1].startswith("exit 1:") or "exit 1:" in ran.out
    assert "\x1b" not in ran.out


def test_an_advisory_fails_only_when_asked_to(tmp_path: Path) -> None:
    rules = thumb_rules(tmp_path / "advice", level="advisory")
    quiet, _ = report("--rules", rules, "--stop-at", "correction", SHELF)
    _, value = report("--rules", rules, SHELF)
    assert value["plans"][0]["levels"]["advisory"] >= 1
    assert report("--rules", rules, "--stop-at", "advisory", SHELF)[0] == 1
    assert quiet == (1 if value["plans"][0]["levels"]["correction"] + value["plans"][0]["levels"]["stop-work"] else 0)


def test_sarif_and_junit(rules: Path) -> None:
    ran = run("inspect", "--format", "sarif", "--rules", rules, *TODAY, PLANS)
    Draft4Validator(SARIF).validate(json.loads(ran.out))
    ran = run("inspect", "--format", "junit", "--rules", rules, *TODAY, SHELF)
    suite = ElementTree.fromstring(ran.out).find("testsuite")
    assert suite is not None
    assert int(suite.get("failures", "0")) >= 1


def test_standard_input() -> None:
    ran = run("inspect", *TODAY, "-", stdin=SHELF.read_bytes())
    same = run("inspect", *TODAY, SHELF)
    assert ran.code == same.code
    assert "standard input:" in ran.out or "standard input" in ran.out


def test_one_bad_plan_does_not_hide_the_others(tmp_path: Path) -> None:
    broken = tmp_path / "broken.yaml"
    broken.write_text("plan: 1\ntitle: [\n")
    code, value = report(broken, SHELF, tmp_path / "none.yaml")
    assert code == 2
    verdicts = [plan["verdict"] for plan in value["plans"]]
    assert verdicts[0] == verdicts[2] == "unreadable"
    assert verdicts[1] in ("pass", "fail")
    ran = run("inspect", "--format", "json", broken)
    assert ran.err.startswith(f"{broken}:")


def test_text_says_why_a_plan_is_unreadable(tmp_path: Path) -> None:
    ran = run("inspect", tmp_path / "none.yaml")
    assert ran.code == 2
    assert "UNREADABLE" in ran.out
    assert "There is no such file." in " ".join(ran.out.split())
    assert "exit 2" in ran.out


def test_house_faults_name_their_place(tmp_path: Path) -> None:
    house = tmp_path / "house.yaml"
    house.write_text("levels: {no-such-rule: advisory}\n")
    ran = run("inspect", "--house", house, SHELF)
    assert ran.code == 2
    assert ran.out == ""
    assert ran.err.startswith(f"{house}:1:")


def test_out_writes_the_same_report(tmp_path: Path, rules: Path) -> None:
    target = tmp_path / "report.json"
    ran = run("inspect", "--format", "json", "--rules", rules, *TODAY, "--out", target, SHELF)
    assert ran.out == ""
    assert target.read_text(encoding="utf-8") == run("inspect", "--format", "json", "--rules", rules, *TODAY, SHELF).out
    ran = run("inspect", "--out", tmp_path / "none" / "report.txt", SHELF)
    assert (ran.code, "there is no folder" in ran.err) == (2, True)


@pytest.mark.parametrize("kind", ["text", "json", "sarif", "junit"])
def test_several_processes_give_the_same_bytes(tmp_path: Path, rules: Path, kind: str) -> None:
    plans = tmp_path / "plans"
    plans.mkdir()
    for number in range(5):
        (plans / f"shelf-{number}.yaml").write_bytes(SHELF.read_bytes())
    (plans / "broken.yaml").write_text("- not a plan\n")
    words = ("inspect", "--format", kind, "--rules", rules, *TODAY)
    one, two = run(*words, "--jobs", "1", plans), run(*words, "--jobs", "2", plans)
    assert one == two
    assert one.code == 2


def test_the_day_comes_from_the_environment(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "1780272000")  # 2026-06-01
    assert run("inspect", SHELF) == run("inspect", *TODAY, SHELF)
    monkeypatch.setenv("SOURCE_DATE_EPOCH", "soon")
    ran = run("inspect", SHELF)
    assert (ran.code, ran.out) == (2, "")
    assert "SOURCE_DATE_EPOCH is not a whole number of seconds" in ran.err


def test_timing_is_shown_only_when_asked_for() -> None:
    assert "milliseconds" not in run("inspect", "--format", "json", SHELF).out
    assert "milliseconds" in json.loads(run("inspect", "--format", "json", "--timing", SHELF).out)["plans"][0]


def test_a_reader_that_goes_away_is_no_traceback() -> None:
    with subprocess.Popen(
        [sys.executable, "-m", "plumbrule", "inspect", str(SHELF)], stdout=subprocess.PIPE, stderr=subprocess.PIPE
    ) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        said = process.stderr.read()
    assert said == b""


def test_a_terminal_without_these_letters_gets_question_marks(rules: Path) -> None:
    environment = {**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"}
    words = [sys.executable, "-m", "plumbrule", "inspect", "--rules", str(rules), str(SHELF)]
    done = subprocess.run(words, capture_output=True, env=environment, check=False)
    assert done.returncode == 1
    assert b"Traceback" not in done.stderr
    done = subprocess.run([*words, "--format", "json"], capture_output=True, env=environment, check=False)
    json.loads(done.stdout.decode("utf-8"))


def test_a_mistake_of_the_program_is_no_pass(monkeypatch: pytest.MonkeyPatch) -> None:
    import plumbrule.cli.work as work

    def fail(*_: object) -> None:
        raise RuntimeError("of no use")

    monkeypatch.setattr(work, "examine", fail)
    ran = run("inspect", SHELF)
    assert ran.code == 2
    assert "plumbrule itself failed on this plan (RuntimeError: of no use)" in " ".join(ran.out.split())


def test_a_worker_that_dies_names_its_plan(tmp_path: Path) -> None:
    """A plan that kills its process: the others are inspected, the run is no pass."""
    code = """
import os, sys
import plumbrule.cli.work as work
real = work.examine
def deadly(document, *rest):
    if "deadly" in document.path:
        os._exit(9)
    return real(document, *rest)
work.examine = deadly
if __name__ == "__main__":
    from plumbrule.cli import main
    sys.exit(main(["inspect", "--format", "json", "--jobs", "2", *sys.argv[1:]]))
"""
    script = tmp_path / "script.py"
    script.write_text(code)
    plans = [tmp_path / f"{name}.yaml" for name in ("a", "deadly", "b")]
    for plan in plans:
        plan.write_bytes(SHELF.read_bytes())
    done = subprocess.run([sys.executable, script, *plans], capture_output=True, text=True, check=False)
    assert done.returncode == 2, done.stderr
    found = {Path(plan["path"]).name: plan["verdict"] for plan in json.loads(done.stdout)["plans"]}
    assert found["deadly.yaml"] == "unreadable"
    assert found["a.yaml"] == found["b.yaml"] != "unreadable"
    assert "The process that inspected this plan died." in done.stderr
