"""Measures that cannot both be true are faults; measures that are merely bad are left to the rules."""

from __future__ import annotations

import time

import pytest
from plan_variants import HERE, changed, faults_of

from plumbrule.reading.places import read_file

CONTRARY = read_file(HERE / "contrary.yaml").value
JUDGED = read_file(HERE / "judged.yaml").value


@pytest.mark.parametrize("case", CONTRARY, ids=lambda case: case["found"][:50])
def test_what_cannot_be_is_a_fault(case: dict[str, str]) -> None:
    faults = faults_of(changed(case["plan"], (case["for"], case["write"])))
    assert (case["at"], case["found"]) in [(fault.pointer, fault.found) for fault in faults]


@pytest.mark.parametrize("case", JUDGED, ids=lambda case: case["says"])
def test_what_is_only_bad_is_read(case: dict[str, str]) -> None:
    faults = faults_of(changed(case["plan"], (case["for"], case["write"])))
    assert [str(fault) for fault in faults] == []


def test_studs_nobody_looked_for_are_no_fault() -> None:
    """Not known is for the report to say: *not inspected*."""
    text = changed("alcove-seat", ("centres: [2-1/4 in, 14-3/4 in, 30-3/4 in, 46-3/4 in, 57-3/4 in],\n", ""))
    assert faults_of(text) == ()


def test_two_readings_of_one_floor_may_differ_by_a_sixteenth() -> None:
    """A tape is read to the nearest sixteenth; common practice."""
    near = ("floor_drop: {left: 5/8 in, right: 3/4 in}", "floor_drop: {left: 11/16 in, right: 3/4 in}")
    assert faults_of(changed("alcove-seat", near)) == ()


def test_a_hole_exactly_at_the_end_is_a_matter_for_the_rules() -> None:
    assert faults_of(changed("alcove-seat", ("41-3/4 in, 53-3/4 in]", "41-3/4 in, 59-1/2 in]"))) == ()


def test_a_pattern_that_cannot_be_is_said_once_however_often_it_is_used() -> None:
    text = changed(
        "alcove-seat", ("length: 3-1/2 in, thread: 2-1/4 in, tip: 3/16 in", "length: 1/4 in, thread: 1/4 in")
    )
    assert [fault.pointer for fault in faults_of(text)] == ["/holes/lag-pair/screw"]


def test_a_plan_of_many_parts_is_checked_in_good_time() -> None:
    """4,000 steps that each wait for the one before are a slip, and that is said within a second or two."""
    steps = "\n".join(f"  s{n}: {{task: wash wall, after: [{f's{n - 1}' if n else ''}]}}" for n in range(4000))
    start = time.process_time()
    faults = faults_of(f"plan: 1\ntitle: Many\nsteps:\n{steps}\n")
    assert [fault.found for fault in faults] == ["4,000 steps are a slip."]
    assert time.process_time() - start < 4


def test_a_plan_full_of_mistakes_is_refused_in_good_time() -> None:
    """4,000 names that stand for nothing: a hundred faults are enough, and each costs a search for the nearest."""
    steps = "\n".join(f"  s{n}: {{task: wash wall, after: [nowhere-{n}]}}" for n in range(4000))
    start = time.process_time()
    assert len(faults_of(f"plan: 1\ntitle: Many\nsteps:\n{steps}\n")) == 100
    assert time.process_time() - start < 4


def test_many_angles_over_many_studs_are_read_in_good_time() -> None:
    angle = "{wall: w, section: s, wall_leg: up, bears_at: HIGH mm, left: 1 m, length: 2 m, wall_holes: {pattern: h, at: studs}, seat_holes: {pattern: h, at: studs}}"  # noqa: E501
    angles = "\n".join(f"  a{n}: {angle.replace('HIGH', str(100 + 38 * n))}" for n in range(2500))
    text = (
        "plan: 1\ntitle: Many\nwalls: {w: {width: 100 m, framing: {first: 1 m, spacing: 40 mm, stud: {width: 38 mm, depth: 89 mm}}}}\n"  # noqa: E501
        "screws: {c: {kind: lag screw, diameter: 8 mm, length: 80 mm}}\n"
        "sections: {s: {legs: {wall: 38 mm, seat: 38 mm}, thickness: 6 mm}}\n"
        f"holes: {{h: {{screw: c, diameter: 9 mm, from_heel: [30 mm]}}}}\nangles:\n{angles}\n"
    )
    start = time.process_time()
    assert faults_of(text) == ()
    assert time.process_time() - start < 8


def test_a_thousand_studs_are_a_slip() -> None:
    many = ", ".join(f"{n} mm" for n in range(1001))
    text = changed("alcove-seat", ("2-1/4 in, 14-3/4 in, 30-3/4 in, 46-3/4 in, 57-3/4 in", many))
    assert "1,001 studs in one wall are a slip." in [fault.found for fault in faults_of(text)]


def test_more_openings_than_a_wall_can_have_are_refused_in_good_time() -> None:
    window = "left: 1 in, width: 2 in, bottom: 40 in, top: 50 in"
    openings = ", ".join(f"o{n}: {{{window}}}" for n in range(3000))
    start = time.process_time()
    faults = faults_of(f"plan: 1\ntitle: Many\nwalls: {{w: {{width: 10 ft, openings: {{{openings}}}}}}}\n")
    assert [fault.found for fault in faults] == ["3,000 openings in one wall are a slip."]
    assert time.process_time() - start < 4
