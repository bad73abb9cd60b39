"""What is said of a mistake, to the letter: place, what was found, what to write instead."""

from __future__ import annotations

import pytest
from plan_variants import HERE, changed, faults_of

from plumbrule.plan.read import read_plan
from plumbrule.reading.fault import Unreadable
from plumbrule.reading.places import read, read_file


def said(name: str, *changes: tuple[str, str]) -> list[str]:
    """Pointer and sentences of every fault, without the place, which has tests of its own."""
    return [f"{fault.pointer}: {fault.found} {fault.write}" for fault in faults_of(changed(name, *changes))]


CASES = read_file(HERE / "messages.yaml").value


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["write"][:40])
def test_one_mistake_is_one_sentence(case: dict[str, str]) -> None:
    assert said("alcove-seat", (case["for"], case["write"])) == [case["says"]]


def test_the_version_is_said_alone() -> None:
    """Another version has other keys: its other faults would only mislead."""
    assert said("alcove-seat", ("plan: 1", "plan: 2"), ("depth: 17 in", "depth: 17")) == [
        "/plan: This is version 2 of the plan format. This reader knows version 1."
    ]


def test_true_is_not_version_one() -> None:
    (sentence,) = said("alcove-seat", ("plan: 1", "plan: true"))
    assert sentence.startswith("/plan: ") and sentence.endswith(" Write 1.")


def test_a_bare_number_sign_is_explained() -> None:
    assert said("alcove-seat", ("size: No. 10", "size: #10")) == [
        ": size is empty. A bare # starts a comment: write No. 10."
    ]


def test_a_length_is_printed_in_the_plans_own_manner() -> None:
    longer = ("length: 350 mm, bears_at", "length: 400 mm, bears_at")
    assert said("storeroom-brackets", longer, ("300 mm], into", "390 mm], into")) == [
        "/cleats/ledge/wall_holes/from_left/1: Block pad ends at 430 mm, hole at 440 mm: it misses the block. Move the "
        "hole, or measure the block again."
    ]


def test_every_mistake_is_said_at_once_and_in_order() -> None:
    text = changed("alcove-seat", ("depth: 17 in", "depth: 17"), ("width: 4 ft", "width: 48"), ("A36", "A37"))
    faults = faults_of(text)
    wrong = {"/walls/left/width": "48", "/sections/seat-steel/steel": "A37", "/boards/seat/depth": "17"}
    assert {fault.pointer: text[fault.place.start : fault.place.end] for fault in faults} == wrong
    assert [fault.pointer for fault in faults] == list(wrong)


def test_place_of_a_cross_fault_is_that_of_the_value() -> None:
    text = changed("alcove-seat", ("from_left: [5-3/4 in", "from_left: [96 in"))
    (fault,) = faults_of(text)
    assert text[fault.place.start : fault.place.end] == "96 in"


def test_something_that_is_no_mapping_is_refused() -> None:
    for text in ("[]", "three", "3", "plan"):
        with pytest.raises(Unreadable) as error:
            read_plan(read(text.encode(), "plan.yaml"))
        assert len(error.value.faults) == 1
