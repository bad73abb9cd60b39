"""`plumbrule workings`, `rulebook` and `lesson` from their words to their exit codes."""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest
from command import run, thumb_rules
from jsonschema import Draft202012Validator

from plumbrule import shipped

SHELF = shipped.folder("plans") / "display-shelf.yaml"


def test_workings_of_one_kind_of_row() -> None:
    ran = run("workings", "--only", "angles", SHELF)
    assert ran.code == 0
    assert "ANGLE   1 row" in ran.out
    assert "length = 70 in" in ran.out
    assert "HOLE" not in ran.out


def test_workings_as_json() -> None:
    ran = run("workings", "--format", "json", SHELF)
    schema = json.loads((shipped.folder("schema") / "workings.schema.json").read_text(encoding="utf-8"))
    value = json.loads(ran.out)
    Draft202012Validator(schema).validate(value)
    assert len(value["rows"]["hole"]) >= 6  # five studs and six seat screws on the ledge


def test_workings_asked_wrongly(tmp_path: Path) -> None:
    ran = run("workings", "--only", "hoels", SHELF)
    assert (ran.code, "Did you mean hole?" in ran.err) == (2, True)
    assert run("workings").code == 2
    ran = run("workings", tmp_path / "none.yaml")
    assert (ran.code, ran.out, "There is no such file." in ran.err) == (2, "", True)


def test_defaults_are_only_what_was_assumed() -> None:
    ran = run("workings", "--defaults", SHELF)
    assert ran.code == 0
    assert "assumed" in ran.out


def test_rulebook_lists_a_teams_rule(tmp_path: Path) -> None:
    rules = thumb_rules(tmp_path / "rules")
    ran = run("rulebook", "--rules", rules)
    assert ran.code == 0
    assert "angle-longer-than-a-thumb" in ran.out
    assert "of each angle: length at most 10 * mm" in ran.out
    value = json.loads(run("rulebook", "--rules", rules, "--format", "json").out)
    rule = next(rule for rule in value["rules"] if rule["id"] == "angle-longer-than-a-thumb")
    assert rule["sources"][0]["basis"] == "common practice"


def test_rulebook_check_finds_an_example_that_comes_out_wrong(tmp_path: Path) -> None:
    """The example that is said to hold is the plan as it stands, whose angle is 70 in long."""
    rules = thumb_rules(tmp_path / "rules")
    ran = run("rulebook", "--check", rules)
    assert ran.code == 1
    assert "/examples/holds/0: it does not hold" in ran.err
    assert "angle-longer-than-a-thumb.yaml:" in ran.err
    assert "1 example came out as written" in ran.out


def test_rulebook_check_of_an_example_that_changes_what_is_not_there(tmp_path: Path) -> None:
    rules = thumb_rules(tmp_path / "rules")
    (file,) = rules.rglob("angle-*.yaml")
    patch = "patch: [{op: replace, path: /angles/nowhere/length, value: 5 mm}], at: /angles/ledge-back"
    file.write_text(file.read_text().replace("at: /angles/ledge-back", patch, 1))
    ran = run("rulebook", "--check", rules)
    assert ran.code == 1
    assert "The plan has no /angles/nowhere. Use add instead of replace, or check the pointer.\n" in ran.err


def test_rulebook_check_of_a_rule_that_cannot_be_read(tmp_path: Path) -> None:
    rules = thumb_rules(tmp_path / "rules")
    path = rules / "steel" / "angle-longer-than-a-thumb.yaml"
    path.write_text(path.read_text().replace("measure: length,", "measure: lenght,"))
    ran = run("rulebook", "--check", rules)
    assert ran.code == 2
    assert "lenght" in ran.err


def test_compiling_makes_the_compiled_form_fresh(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    rules = tmp_path / "rules"
    shutil.copytree(shipped.folder("rules"), rules)
    shutil.copytree(shipped.folder("schema"), tmp_path / "schema")
    monkeypatch.setattr(shipped, "folder", tmp_path.joinpath)
    with (rules / "sources.yaml").open("a", encoding="utf-8") as file:
        file.write("# one more line\n")
    stale = run("rulebook", "--verify")
    assert (stale.code, "compiled.json: out of date" in stale.err) == (1, True)
    assert run("rulebook", "--compile").code == 0
    assert run("rulebook", "--verify") == (0, "compiled: no files out of date\n", "")


def test_lesson(tmp_path: Path) -> None:
    ran = run("lesson", "--rules", thumb_rules(tmp_path / "rules"), "angle-longer-than-a-thumb")
    assert ran.code == 0
    assert "No shelf hangs on an angle as short as a thumb" in " ".join(ran.out.split())


def test_lesson_asked_wrongly(tmp_path: Path) -> None:
    rules = thumb_rules(tmp_path / "rules")
    ran = run("lesson", "--rules", rules, "angle-longer-than-thumb")
    assert (ran.code, "Did you mean angle-longer-than-a-thumb?" in ran.err) == (2, True)
    assert run("lesson").code == 2
