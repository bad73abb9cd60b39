"""Dropping, renaming or retyping any key of any plan gives faults at the right line and column, and no traceback."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from plan_variants import (
    PLANS,
    document_of,
    faults_in,
    faults_of,
    keys_of,
    line_and_column,
    model_around,
    plan_of,
    sections_of,
    with_key,
    with_value,
    without,
)

from plumbrule.plan.plan_file import PlanFile
from plumbrule.reading import shape
from plumbrule.reading.fault import Fault
from plumbrule.reading.places import Document, read
from plumbrule.reading.pointer import get, last, parent
from plumbrule.reading.take import _steps

LENGTHS = ("length", "size", "signed length")


def stands_at(fault: Fault, text: str, offset: int) -> bool:
    return (fault.place.line, fault.place.column) == line_and_column(text, offset)


@pytest.mark.parametrize("name", PLANS)
def test_a_renamed_key_is_named_where_it_stands(name: str) -> None:
    for document, pointer in every_key(name):
        if model_around(document, pointer) is None:
            continue
        text = with_key(document, pointer, f"{last(pointer)}zz")
        place = document.spots[pointer].key
        assert place is not None
        faults = faults_of(text)
        assert len(faults) == 1, (pointer, [str(fault) for fault in faults])
        assert stands_at(faults[0], text, place.start), (pointer, str(faults[0]))
        assert faults[0].pointer == f"{pointer}zz"
        assert f"`{last(pointer)}zz` is not a key of" in faults[0].found


@pytest.mark.parametrize("name", PLANS)
def test_what_pointed_at_a_renamed_part_is_named_where_it_is_written(name: str) -> None:
    document = document_of(name)
    for pointer in keys_of(document):
        if model_around(document, pointer) is not None:
            continue
        old = last(pointer)
        text = with_key(document, pointer, f"{old}zz")
        for fault in faults_of(text):
            # A part that is gone may also leave measures behind that no longer close; those name themselves.
            assert stands_at(fault, text, fault.place.start)
            assert fault.found and fault.write, (pointer, str(fault))
            if f"called {old}." in fault.found:
                assert text[fault.place.start : fault.place.end] == old


@pytest.mark.parametrize("name", PLANS)
def test_a_value_of_the_wrong_type_is_named_where_it_stands(name: str) -> None:
    for document, pointer in every_key(name):
        text = with_value(document, pointer, "[[]]")
        start = document.spots[pointer].value.start
        faults = [fault for fault in faults_of(text) if fault.pointer in (pointer, f"{pointer}/0")]
        assert len(faults) == 1, (pointer, [str(fault) for fault in faults_of(text)])
        inside = faults[0].pointer != pointer
        assert stands_at(faults[0], text, start + inside), (pointer, str(faults[0]))
        assert faults[0].found and faults[0].write


@pytest.mark.parametrize("name", PLANS)
def test_a_key_that_must_be_there_is_missed_where_it_belongs(name: str) -> None:
    for document, pointer in every_key(name):
        if not is_required(document, pointer) or is_alone(document, pointer):
            continue
        above, key = parent(pointer), last(pointer)
        left = dropped(document, pointer)
        missed = [fault for fault in faults_in(left) if fault.found == f"`{key}` is missing."]
        assert len(missed) == 1, pointer
        assert missed[0].pointer == above
        spot = document.spots[above]
        # Said at the name of the part that lacks it; of the whole plan, at its first line.
        offset = missed[0].place.start if spot.key is None else spot.key.start
        assert stands_at(missed[0], left.text, offset), (pointer, str(missed[0]))
        assert missed[0].write.startswith(f"Write {key}: ")


@pytest.mark.parametrize("name", PLANS)
def test_a_key_that_may_be_left_out_is_not_missed(name: str) -> None:
    """By the reader, that is: what it fed is then *not inspected*. What pointed at it, or went with it, is named."""
    document = document_of(name)
    for pointer in keys_of(document):
        if is_required(document, pointer) or is_alone(document, pointer):
            continue
        for fault in faults_in(dropped(document, pointer)):
            assert fault.found and fault.write, pointer
            assert "is missing" not in fault.found, (pointer, str(fault))


def every_key(name: str) -> Iterator[tuple[Document, str]]:
    """Each key of a plan once, in a document that has its section."""
    whole = set(keys_of(document_of(name)))
    seen: set[str] = set()
    for document in sections_of(name):
        for pointer in keys_of(document):
            if pointer not in seen:
                assert document.spots[pointer].value.line == document_of(name).spots[pointer].value.line
                yield document, pointer
            seen.add(pointer)
    assert seen == whole


def is_required(document: Document, pointer: str) -> bool:
    model = model_around(document, pointer)
    key = last(pointer)
    return model is not None and any(
        info.is_required() for name, info in model.model_fields.items() if (info.alias or name) == key
    )


def is_alone(document: Document, pointer: str) -> bool:
    """An only key on a line of its own: without it its part is empty, which is another fault."""
    above = parent(pointer)
    in_braces = document.text[document.spots[above].value.start] == "{"
    return not in_braces and len(get(document.value, above)) == 1


def dropped(document: Document, pointer: str) -> Document:
    """The plan without a key; nothing else has changed."""
    made = read(without(document, pointer).encode(), "plan.yaml")
    expected = dict(get(document.value, parent(pointer)))
    del expected[last(pointer)]
    assert get(made.value, parent(pointer)) == expected, pointer
    return made


@pytest.mark.parametrize("name", PLANS)
def test_any_length_of_a_template_may_wait(name: str) -> None:
    """Whatever is still to be measured, the rest is read and nothing is compared with it."""
    document = document_of(name)
    waiting = 0
    for pointer in document.spots:
        if not pointer or shape.notation(shape.trail(PlanFile, _steps(document, pointer)).wanted) not in LENGTHS:
            continue
        text = with_value(document, pointer, "measure on site").replace("status: for building", "status: template")
        plan = plan_of(text)
        assert pointer in plan.to_measure
        waiting += 1
    assert waiting > 15
