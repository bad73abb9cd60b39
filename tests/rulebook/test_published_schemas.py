"""What is made from other files is what it would be made to now, and holds what people write."""

from __future__ import annotations

import json

import pytest
from jsonschema import Draft202012Validator

from plumbrule import shipped
from plumbrule.cli import main
from plumbrule.reading.places import read_file
from plumbrule.rulebook.files import BIBLIOGRAPHY, rule_files
from plumbrule.rulebook.publish import schemas

SCHEMA = shipped.folder("schema")
RULES = shipped.folder("rules")


@pytest.mark.parametrize("name", sorted(schemas()))
def test_a_published_schema_is_what_the_models_say(name):
    assert (SCHEMA / name).read_text(encoding="utf-8") == schemas()[name], "run: plumbrule rulebook --compile"


def test_everything_that_is_made_is_fresh(capsys):
    assert main(["rulebook", "--verify"]) == 0, capsys.readouterr().err


@pytest.mark.parametrize("path", rule_files(RULES), ids=lambda path: path.stem)
def test_every_rule_file_meets_the_published_schema(path):
    validator = Draft202012Validator(json.loads((SCHEMA / "rule.schema.json").read_text(encoding="utf-8")))
    assert [error.message for error in validator.iter_errors(read_file(path).value)] == []


def test_the_bibliography_meets_the_published_schema():
    validator = Draft202012Validator(json.loads((SCHEMA / "sources.schema.json").read_text(encoding="utf-8")))
    assert [error.message for error in validator.iter_errors(read_file(RULES / BIBLIOGRAPHY).value)] == []
