"""Dropping, renaming or retyping any key of any plan gives faults at the right line and column, and no traceback."""

from __future__ import annotations

import pytest
from plan_variants import (
    PLANS,
    document_of,
    faults_in,
    faults_of,
    keys_of,
    line_and_column,
    model_around,
    with_key,
    with_value,
    without,
)

from plumbrule.reading.fault import Fault
from plumbrule.reading.places import read
from plumbrule.reading.pointer import get, last, parent


def stands_at(fault: Fault, text: str, offset: int) -> bool:
    return (fault.place.line, fault.place.column) == line_and_column(text, offset)


@pytest.mark.parametrize("name", PLANS)
def test_a_renamed_key_is_named_where_it_stands(name: str) -> None:
    document = document_of(name)
    for pointer in keys_of(document):
        text = with_key(document, pointer, f"{last(pointer)}zz")
        place = document.spots[pointer].key
        assert place is not None
        faults = faults_of(text)
        if model_around(document, pointer) is None:
            # A name may be any name; what referred to it now points at nothing, each at its own place.
            for fault in faults:
                assert text[fault.place.start : fault.place.end].strip("\"'") != "", fault
            continue
        assert len(faults) == 1, (pointer, [str(fault) for fault in faults])
        assert stands_at(faults[0], text, place.start), (pointer, str(faults[0]))
        assert faults[0].pointer == f"{pointer}zz"
        assert f"`{last(pointer)}zz` is not a key of" in faults[0].found


@pytest.mark.parametrize("name", PLANS)
def test_a_value_of_the_wrong_type_is_named_where_it_stands(name: str) -> None:
    document = document_of(name)
    for pointer in keys_of(document):
        text = with_value(document, pointer, "[[]]")
        start = document.spots[pointer].value.start
        faults = [fault for fault in faults_of(text) if fault.pointer in (pointer, f"{pointer}/0")]
        assert len(faults) == 1, (pointer, [str(fault) for fault in faults_of(text)])
        inside = faults[0].pointer != pointer
        assert stands_at(faults[0], text, start + inside), (pointer, str(faults[0]))
        assert faults[0].found and faults[0].write


@pytest.mark.parametrize("name", PLANS)
def test_a_dropped_key_is_missed_where_it_belongs(name: str) -> None:
    document = document_of(name)
    for pointer in keys_of(document):
        above, key = parent(pointer), last(pointer)
        text = without(document, pointer)
        if len(get(document.value, above)) == 1 and not text[document.spots[above].value.start :].startswith("{"):
            continue  # An only key on a line of its own leaves an empty part: another fault, tested elsewhere.
        expected = dict(get(document.value, above))
        del expected[key]
        left = read(text.encode(), "plan.yaml")
        assert get(left.value, above) == expected, f"{pointer} was not dropped cleanly"
        model = model_around(document, pointer)
        faults = faults_in(left)
        required = model is not None and any(
            info.is_required() for field, info in model.model_fields.items() if (info.alias or field) == key
        )
        if not required:
            for fault in faults:
                assert fault.found and fault.write and fault.place.start <= len(text)
            continue
        missed = [fault for fault in faults if fault.found == f"`{key}` is missing."]
        assert len(missed) == 1, (pointer, [str(fault) for fault in faults])
        assert missed[0].pointer == above
        spot = document.spots[above]
        # Said at the name of the part that lacks it, or at the first line of a plan that lacks it.
        offset = spot.value.start if spot.key is None else spot.key.start
        assert stands_at(missed[0], text, offset if pointer != "/plan" else missed[0].place.start), pointer
        assert missed[0].write.startswith(f"Write {key}: ")
