"""Every name in a plan must stand for something of the right kind; every either-or key is given one way."""

from __future__ import annotations

import pytest
from plan_variants import PLANS, changed, document_of, faults_of, plan_of, text_of, with_key, with_value
from pydantic import BaseModel

from plumbrule.plan.plan_file import PlanFile
from plumbrule.reading import shape
from plumbrule.reading.pointer import get
from plumbrule.reading.take import _steps

# Places that name another part, one for each key that does.
REFERENCES = {
    "alcove-seat": (
        "/walls/left/blocking/seat-block-left/each_end/screw",
        "/corners/left-back/from",
        "/corners/left-back/to",
        "/corners/back-pier/panels_run_through",
        "/holes/lag-pair/screw",
        "/angles/seat-back/wall",
        "/angles/seat-back/section",
        "/angles/seat-left/wall_holes/pattern",
        "/angles/seat-left/wall_holes/into",
        "/angles/seat-left/seat_holes/pattern",
        "/boards/seat/wall",
        "/boards/seat/bears_on/1",
        "/panels/cladding/walls/0",
        "/panels/cladding/sealed_with",
        "/trims/pier-edge/along",
        "/trims/shoe/walls/1",
        "/steps/studs/works_on/2",
        "/steps/studs/after/0",
        "/steps/roll/at_once_after/0",
    ),
    "storeroom-brackets": (
        "/angles/rail/wall_holes/screw",
        "/brackets/cut/wall",
        "/brackets/cut/section",
        "/brackets/cut/wall_holes/pattern",
        "/brackets/cut/seat_holes/pattern",
        "/cleats/ledge/wall",
        "/cleats/ledge/wall_holes/into",
        "/cleats/ledge/seat_holes/pattern",
        "/steps/try/works_on/2",
    ),
}

PURCHASED = {
    "alcove-seat": (
        "/purchase/panels/cladding",
        "/purchase/steel/seat-steel",
        "/purchase/screws/wall-lag",
        "/purchase/boards/seat",
        "/purchase/washers/seat-screw",
        "/purchase/timber/4x10",
        "/purchase/trims/shoe",
        "/purchase/sealants/perimeter",
        "/purchase/backers/perimeter",
        "/purchase/finishes/seat",
        "/purchase/primers/wall",
        "/purchase/paints/left",
        "/purchase/fillers/end-check",
        "/purchase/cleaners/mild detergent",
        "/purchase/abrasives/grit-80",
        "/purchase/electrical/kettle",
        "/purchase/protection/dust sheet",
        "/panels/cladding/courses/starters/back",
    ),
    "storeroom-brackets": ("/purchase/adhesives/construction adhesive",),
}


@pytest.mark.parametrize(("name", "pointer"), [(name, at) for name, ats in REFERENCES.items() for at in ats])
def test_a_name_that_stands_for_nothing_is_a_fault_where_it_is_used(name: str, pointer: str) -> None:
    document = document_of(name)
    text = with_value(document, pointer, "nowhere-at-all")
    faults = [fault for fault in faults_of(text) if fault.pointer == pointer]
    assert len(faults) == 1, [str(fault) for fault in faults_of(text)]
    assert text[faults[0].place.start : faults[0].place.end] == "nowhere-at-all"
    assert "nowhere-at-all" in faults[0].found


@pytest.mark.parametrize(("name", "pointer"), [(name, at) for name, ats in PURCHASED.items() for at in ats])
def test_a_line_that_is_for_nothing_is_a_fault_at_its_key(name: str, pointer: str) -> None:
    document = document_of(name)
    text = with_key(document, pointer, "nowhere-at-all")
    faults = faults_of(text)
    assert [text[fault.place.start : fault.place.end] for fault in faults] == ["nowhere-at-all"]


def test_every_key_that_holds_a_name_is_in_the_lists_above() -> None:
    """Found by the models: a field typed Name, so that a new reference cannot be forgotten."""
    listed = {shaped(name, pointer) for name, ats in {**REFERENCES}.items() for pointer in ats}
    found = set()
    for name in PLANS:
        document = document_of(name)
        for pointer, spot in document.spots.items():
            if spot.key is None and not pointer.rpartition("/")[2].isdigit():
                continue
            if shape.notation(shape.trail(PlanFile, _steps(document, pointer)).wanted) == "name":
                found.add(shaped(name, pointer))
    assert found - listed == set()
    assert len(found) > 20


def shaped(name: str, pointer: str) -> tuple[str, str]:
    """The model that a place belongs to, and its key."""
    document = document_of(name)
    steps = [step for step in _steps(document, pointer) if isinstance(step, str)]
    inside: list[type[BaseModel]] = []
    while steps and not inside:
        inside = list(shape.trail(PlanFile, steps).inside)
        key = steps.pop()
    return inside[0].__name__, key


@pytest.mark.parametrize("name", PLANS)
def test_the_plans_themselves_are_clean(name: str) -> None:
    assert [str(fault) for fault in faults_of(text_of(name))] == []


def test_a_name_of_two_parts_must_say_which() -> None:
    text = changed("storeroom-brackets", ("  rail:\n", "  shelf:\n"), ("ledge, rail]", "ledge, shelf]"),
                   ("at: /angles/rail", "at: /angles/shelf"))  # fmt: skip
    assert [fault.found for fault in faults_of(text)] == ["shelf could be /angles/shelf or /boards/shelf."] * 2


# What is replaced, and the one sentence that must be among what is then said.
EITHER = [
    ("alcove-seat", "size: No. 14, length: 3 in", "length: 3 in", "Neither size nor diameter is given."),
    ("alcove-seat", "{pattern: lag-pair, at: studs}", "{pattern: lag-pair}", "Neither at nor from_left is given."),
    ("alcove-seat", "at: studs}", "at: studs, from_left: [3 in]}", "Both at and from_left are given."),
    (
        "alcove-seat",
        "from_left: [1-1/4 in, 7-1/8 in, 13 in], into",
        "at: studs, into",
        "A hole at a stud goes into the stud.",
    ),
    ("alcove-seat", "{from: pier, turn", "{turn", "Neither from nor to is given."),
    ("alcove-seat", "from: 29-7/8 in, to: ceiling", "to: ceiling", "beside_stud needs from."),
    ("alcove-seat", "{beside_stud: 30-3/4 in, from: 29-7/8 in, to: ceiling}", "{}", "It is not said where this runs."),
    (
        "alcove-seat",
        "from: 29-7/8 in, to",
        "height: 2 ft, from: 29-7/8 in, to",
        "This runs both beside a stud and at a height.",
    ),
    ("storeroom-brackets", ", stagger: 1/3", "", "Neither starters nor stagger is given."),
    (
        "storeroom-brackets",
        "stagger: 1/3",
        "stagger: 1/3, starters: {long: [1 m]}",
        "Both starters and stagger are given.",
    ),
    ("storeroom-brackets", "size: 2x4, left", "size: 2x4, width: 38 mm, left", "Both size and width are given."),
    ("storeroom-brackets", "size: 2x4, left", "left", "Neither size nor thickness is given."),
    ("storeroom-brackets", "width: 60 mm, thickness: 25 mm, left", "width: 60 mm, left", "width needs thickness."),
    (
        "storeroom-brackets",
        "section: bar, width: 60 mm, braced",
        "width: 60 mm, braced",
        "Neither section nor upright is given.",
    ),
    ("storeroom-brackets", "section: bar, width", "section: bar, arm: 50 mm, width", "Both section and arm are given."),
    ("storeroom-brackets", "upright: 200 mm, arm", "arm", "arm needs upright."),
    (
        "storeroom-brackets",
        "at: studs, bears_at: 1.6 m",
        "bears_at: 1.6 m",
        "Neither at nor from_left is given.",
    ),
    (
        "storeroom-brackets",
        "wall_holes: {pattern: up}, seat_holes: {pattern: under}}",
        "wall_holes: {pattern: up, at: studs}, seat_holes: {pattern: under}}",
        "The holes of a bracket go where the bracket goes.",
    ),
]


@pytest.mark.parametrize(("name", "old", "new", "found"), EITHER)
def test_one_way_only(name: str, old: str, new: str, found: str) -> None:
    assert [fault.found for fault in faults_of(changed(name, (old, new)))] == [found]


def test_a_tool_of_ones_own_may_be_named() -> None:
    plan = plan_of(changed("alcove-seat", ("on_hand: [safety glasses", "on_hand: [track saw, safety glasses")))
    assert plan.model.on_hand[0] == "track saw"


def test_a_departure_from_one_hole_of_a_pattern_is_found() -> None:
    """Holes at studs are not written one by one: only their part must be in the plan."""
    text = changed("storeroom-brackets", ("at: /angles/rail/wall_holes", "at: /angles/rail/wall_holes/at/2"))
    assert faults_of(text) == ()
    assert get(document_of("storeroom-brackets").value, "/angles/rail/wall_holes/at") == "studs"
