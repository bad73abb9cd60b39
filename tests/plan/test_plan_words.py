"""The words of a plan: complete, closed, without a comma, and each of them accepted where it belongs."""

from __future__ import annotations

import re
from typing import get_args

import pytest
from plan_variants import PLANS, changed, document_of, faults_of, model_around

from plumbrule import shipped
from plumbrule.plan import answers, words
from plumbrule.plan.plan_file import PlanFile
from plumbrule.reading import shape
from plumbrule.reading.model import WordHints
from plumbrule.reading.places import read_file
from plumbrule.reading.pointer import last

LISTS = {name: value for name, value in vars(words).items() if isinstance(value, tuple)}


@pytest.mark.parametrize("name", sorted(LISTS))
def test_no_word_is_listed_twice_and_none_breaks_out_of_braces(name: str) -> None:
    listed = [str(word) for word in LISTS[name]]
    assert len(set(listed)) == len(listed) > 0
    assert not [word for word in listed if re.search(r"[,:#{}\[\]\"']", word)]


def test_no_word_is_read_as_something_else() -> None:
    """`on off yes no` are text in YAML 1.2 and truths in 1.1; `no` for deburring is the one that both the format and
    its readers know as text."""
    everything = {str(word) for listed in LISTS.values() for word in listed}
    assert everything & {"on", "off", "yes", "true", "false", "null", "y", "n"} == set()


def test_there_are_54_tasks() -> None:
    assert len(words.TASKS) == 54


# Wood without published strength, which a plan may name and which is then not inspected.
WITHOUT_FIGURES = {"plywood", "MDF", "particleboard"}


@pytest.mark.parametrize(
    ("listed", "table", "without"),
    [(words.FRAMING_SPECIES, "framing", set()), (words.BOARD_SPECIES, "boards", WITHOUT_FIGURES),
     (words.STEELS, "steels", set())],
)  # fmt: skip
def test_every_material_has_a_row_in_the_tables(listed: tuple[str, ...], table: str, without: set[str]) -> None:
    """A word that may be written and has no row would fail late, or pass in silence."""
    rows = read_file(shipped.folder("rules") / "tables" / f"{table}.yaml").value["rows"]
    assert {row["name"] for row in rows} - {"unknown"} >= set(listed) - without - {"unknown"}


@pytest.mark.parametrize("hints", [hints for hints in vars(answers).values() if hasattr(hints, "__metadata__")])
def test_an_answer_is_asked_only_for_words_that_are_not_known(hints: object) -> None:
    allowed = set(get_args(get_args(hints)[0]))
    (asked,) = [mark for mark in hints.__metadata__ if isinstance(mark, WordHints)]  # type: ignore[attr-defined]
    assert allowed and not set(asked.hints) & allowed
    assert all(answer.endswith((".", "?")) for answer in asked.hints.values())


@pytest.mark.parametrize(
    ("old", "new"),
    [
        *(("species: spruce-pine-fir", f"species: {word}") for word in words.FRAMING_SPECIES),
        *(("steel: A36", f"steel: {word}") for word in words.STEELS),
        *(("species: white ash", f"species: {word}") for word in words.BOARD_SPECIES),
        *(("kind: waterborne polyurethane", f"kind: {word}") for word in words.FINISHES if word != "none"),
        ("kind: waterborne polyurethane, coats: {top: 3, bottom: 3, edges: 3}", "kind: none"),
        *(("class: 25", f"class: {word}") for word in words.MOVEMENT_CLASSES),
        *(("kind: lag screw", f"kind: {word}") for word in words.SCREW_KINDS),
        *(("cover: standard", f"cover: {word}") for word in words.COVERS),
    ],
)
def test_every_word_can_be_written(old: str, new: str) -> None:
    assert [str(fault) for fault in faults_of(changed("alcove-seat", (old, new)))] == []


def test_every_key_of_the_format_is_used_by_one_of_the_plans() -> None:
    """So that what is proven for every key of every plan is proven for every key."""
    used: set[tuple[str, str]] = set()
    for name in PLANS:
        document = document_of(name)
        for pointer in document.spots:
            if pointer and (model := model_around(document, pointer)):
                used.add((model.__name__, last(pointer)))
    known: set[tuple[str, str]] = set()
    waiting, seen = [PlanFile], set()
    while waiting:
        model = waiting.pop()
        if model in seen:
            continue
        seen.add(model)
        for name, info in model.model_fields.items():
            known.add((model.__name__, info.alias or name))
            waiting += models_below(info.annotation)
    assert len(seen) > 50
    assert known - used == set()


def models_below(annotation: object) -> list[type]:
    found = list(shape.models(annotation))
    for inner in get_args(annotation):
        found += models_below(inner)
    return found
