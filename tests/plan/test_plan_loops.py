"""Steps that wait for each other are a fault that says the loop, one a knot, at the wait that begins it."""

from __future__ import annotations

import time
from itertools import permutations

from hypothesis import given
from hypothesis import strategies as st
from plan_variants import changed, faults_of

from plumbrule.plan.contrary_steps import knots, shortest_loop


def plan(**waits: list[str]) -> str:
    steps = "\n".join(f"  {name}: {{task: wash wall, after: [{', '.join(after)}]}}" for name, after in waits.items())
    return f"plan: 1\ntitle: Loops\nsteps:\n{steps}\n"


def said(text: str) -> list[tuple[str, str]]:
    return [(fault.pointer, fault.found) for fault in faults_of(text)]


def test_two_steps_that_wait_for_each_other() -> None:
    text = changed("alcove-seat", ("works_on: [shoe], after: [roll]", "works_on: [shoe], after: [roll, seal]"))
    (fault,) = faults_of(text)
    assert (fault.pointer, fault.found) == ("/steps/shoe/after/1", "shoe waits for seal, seal waits for shoe.")
    assert fault.write == "Take out the one of these waits that is not so."
    assert text[fault.place.start :].startswith("seal]")


def test_a_step_that_waits_for_itself() -> None:
    assert said(plan(wash=["wash"])) == [("/steps/wash/after/0", "wash waits for itself.")]


def test_a_loop_through_at_once_after() -> None:
    text = "plan: 1\ntitle: Loops\nsteps:\n  lay: {task: lay panels, after: [roll]}\n" \
           "  roll: {task: roll panels, at_once_after: [lay]}\n"  # fmt: skip
    assert said(text) == [("/steps/lay/after/0", "lay waits for roll, roll waits for lay.")]


def test_the_shortest_loop_of_a_knot_is_told_once() -> None:
    # a waits for b and e; the way back is b, c, d, a (four steps) or e, a (two)
    text = plan(a=["b", "e"], b=["c"], c=["d"], d=["a"], e=["a"])
    assert said(text) == [("/steps/a/after/1", "a waits for e, e waits for a.")]


def test_two_knots_are_two_faults_and_the_steps_between_them_none() -> None:
    text = plan(a=["b"], b=["a"], between=["a"], c=["d", "between"], d=["c"], last=["c"])
    assert said(text) == [
        ("/steps/a/after/0", "a waits for b, b waits for a."),
        ("/steps/c/after/0", "c waits for d, d waits for c."),
    ]


def test_a_long_loop_is_not_told_step_by_step() -> None:
    text = plan(**{f"s{n}": [f"s{(n + 1) % 12}"] for n in range(12)})
    ((pointer, found),) = said(text)
    assert pointer == "/steps/s0/after/0"
    assert found.startswith("s0 waits for s1, s1 waits for s2, ")
    assert found.endswith("s6 waits for s7, and so on over 4 more steps, s11 waits for s0.")


def test_a_loop_of_thousands_of_steps_is_found_in_good_time() -> None:
    text = plan(**{f"s{n}": [f"s{(n + 1) % 4000}"] for n in range(4000)})
    start = time.process_time()
    assert [found[:14] for _, found in said(text)] == ["4,000 steps ar", "s0 waits for s"]
    assert time.process_time() - start < 4


NAMES = "abcde"
GRAPHS = st.fixed_dictionaries({name: st.lists(st.sampled_from(NAMES), unique=True) for name in NAMES})


def every_loop(waits: dict[str, list[str]]) -> list[tuple[str, ...]]:
    """Every loop without a repeated step, by trying all orders of all steps: slow, and plainly right."""
    return [
        way
        for count in range(2, len(NAMES) + 1)
        for way in permutations(NAMES, count)
        if all(other in waits[name] for name, other in zip(way, (*way[1:], way[0]), strict=True))
    ]


@given(GRAPHS)
def test_knots_and_loops_against_every_loop_there_is(graph: dict[str, list[str]]) -> None:
    waits = {name: [other for other in others if other != name] for name, others in graph.items()}
    loops = every_loop(waits)
    found = knots(waits)
    assert sorted(name for knot in found for name in knot) == sorted({name for loop in loops for name in loop})
    for knot in found:
        loop = tuple(shortest_loop(waits, knot))
        assert loop in loops
        assert len(loop) == min(len(one) for one in loops if one[0] == knot[0])
        assert set(loop) <= set(knot)
