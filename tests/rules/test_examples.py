"""Every rule of the rulebook, run on its own examples: breaking, holding, on the limit, and with a fact left out."""

from __future__ import annotations

from functools import cache

import pytest

from plumbrule import shipped
from plumbrule.reading.places import read_file
from plumbrule.reading.take import take
from plumbrule.rulebook.compiled import compile_rules, load_compiled
from plumbrule.rulebook.file import RuleFile
from plumbrule.rulebook.files import rule_files
from plumbrule.rulebook.read import build, read_rules, read_sources
from plumbrule.rulebook.rule import Rule, Source
from plumbrule.teaching.prove import prove

RULES = shipped.folder("rules")
FILES = rule_files(RULES)


@cache
def sources() -> dict[str, Source]:
    return read_sources(RULES)


@cache
def rules() -> tuple[Rule, ...]:
    return tuple(read_rules(RULES, sources()))


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_example_comes_out_as_it_says(path):
    document = read_file(path)
    file = take(RuleFile, document)
    outcomes = list(prove(build(document, file, path, sources()), file, document))
    assert outcomes
    wrong = [
        f"{path.name}:{outcome.place.line + 1}: {outcome.kind} {outcome.number}: {outcome.says}"
        for outcome in outcomes
        if not outcome.proved
    ]
    assert not wrong, "\n".join(wrong)


def test_a_rule_that_measures_has_an_outside_number_behind_it():
    """An expected value that is only this program's own output proves nothing: some example must carry a figure that
    was worked by hand or taken from a source."""
    lacking = []
    for path in FILES:
        file = take(RuleFile, read_file(path))
        if file.require.measure is None:
            continue
        examples = [*file.examples.breaks, *file.examples.holds, *file.examples.limit]
        if not any(example.measure is not None and example.by is not None for example in examples):
            lacking.append(path.name)
    assert not lacking


def test_the_compiled_rules_are_fresh_and_the_same():
    found = load_compiled(RULES)
    assert found is not None, "run: plumbrule rulebook --compile"
    compiled, compiled_sources, _ = found
    read = list(rules())
    assert compiled_sources == sources()
    assert [rule.id for rule in compiled] == [rule.id for rule in read]
    assert compile_rules(RULES, compiled, compiled_sources) == compile_rules(RULES, read, sources())


def test_every_publication_of_the_bibliography_is_cited():
    cited = {citation.source.id for rule in rules() for citation in rule.sources}
    assert sources().keys() - cited == set()


@pytest.mark.parametrize("rule", rules(), ids=lambda rule: rule.id)
def test_a_rule_says_why_and_who_decides_in_words_of_its_own(rule):
    assert len(rule.why.split()) >= 15
    assert rule.why != rule.says
    assert rule.caution.text != rule.why
    assert not any(
        word in (rule.says + rule.why + rule.caution.text).lower() for word in ("complies", "compliant", "approved by")
    )
