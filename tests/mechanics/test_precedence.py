"""When steps can be done: graphs worked on paper, a week of working hours by the clock, and every chain there is."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plumbrule.mechanics.calendar import ROUND_THE_CLOCK, WorkingHours, day_and_clock
from plumbrule.mechanics.precedence import Task, in_turn, lasts, longest_chain, times
from plumbrule.mechanics.worked import NotPossible

# Day 1 is a Monday: 8:00 to 16:00, Monday to Friday.
OFFICE = WorkingHours(8.0, 16.0, (0, 1, 2, 3, 4))


def at(day: int, hour: float) -> float:
    return (day - 1) * 24 + hour


# Worked by hand, forward and backward. Two ways from the saw to the seat:
#   saw 2, drill 3, coat 1 + 24 of wait, hang 2  = 8 of hands, 24 of wait: 32, the longest
#   settle 1 + 20 of wait, sand 4                = 25: free for 5
#   seat after both: 30 + 2 = 32;  sand may begin at 26 (it can at 21), settle at 5
SHELF = {
    "saw": Task(2),
    "drill": Task(3, after=("saw",)),
    "coat": Task(1, 24, after=("drill",)),
    "settle": Task(1, 20),
    "sand": Task(4, after=("settle",)),
    "seat": Task(2, after=("coat", "sand")),
}
# Two coats of 1 h, 6 h between, then 10 h of wait; the rags follow the hands: 8 h and not 18 h after the beginning.
VARNISH = {
    "varnish": Task(2, 10, coats=2, between=6),
    "rags": Task(0.5, at_once_after=("varnish",)),
    "set": Task(1, after=("varnish", "rags")),
}


def test_a_graph_worked_by_hand() -> None:
    found = times(SHELF, ROUND_THE_CLOCK)
    by_hand = {
        "saw": (0, 2, 2, 0), "drill": (2, 5, 5, 2), "coat": (5, 6, 30, 5), "settle": (0, 1, 21, 5),
        "sand": (21, 25, 25, 26), "seat": (30, 32, 32, 30),
    }  # fmt: skip
    assert {name: one[:4] for name, one in found.items()} == by_hand
    assert longest_chain(found) == ("saw", "drill", "coat", "seat")
    line = lasts(SHELF, found)
    assert [number.value for number in line.numbers] == [8, 24, 0]
    assert line.value == 32


def test_coats_come_again_and_hands_are_followed_without_the_cure() -> None:
    found = times(VARNISH, ROUND_THE_CLOCK)
    assert found["varnish"][:3] == (0, 8, 18)
    assert found["rags"][:2] == (8, 8.5)
    assert found["set"][:2] == (18, 19)
    # 2 + 1 h of hands; 6 h between the coats and 10 h of cure
    assert [number.value for number in lasts(VARNISH, found).numbers] == [3, 16, 0]


def test_the_same_graph_over_working_hours() -> None:
    """saw 8-10, drill 10-13, coat 13-14 on Monday; its wait runs through the night to 14:00 on Tuesday."""
    found = times(SHELF, OFFICE)
    assert found["coat"][:3] == (at(1, 13), at(1, 14), at(2, 14))
    # settle 8-9, its 20 h run to 5:00: the hands wait for 8:00
    assert found["sand"][:2] == (at(2, 8), at(2, 12))
    assert found["seat"][:2] == (at(2, 14), at(2, 16))
    # the latest: sand 10-14 on Tuesday, so the 20 h of wait begin by 14:00 on Monday, and settle is 13-14
    assert (found["sand"].latest, found["settle"].latest) == (at(2, 10), at(1, 13))


@pytest.mark.parametrize(
    ("ready", "hands", "start", "finish"),
    [
        (at(1, 8), 8, at(1, 8), at(1, 16)),  # a whole day
        (at(1, 8), 8.5, at(1, 8), at(2, 8.5)),  # half an hour of it on Tuesday
        (at(1, 16), 1, at(2, 8), at(2, 9)),  # the day is over
        (at(1, 3), 1, at(1, 8), at(1, 9)),  # nobody is there yet
        (at(5, 15), 2, at(5, 15), at(8, 9)),  # Friday afternoon to Monday morning
        (at(6, 10), 2, at(8, 8), at(8, 10)),  # Saturday
        (at(1, 8), 40, at(1, 8), at(5, 16)),  # a week
        (at(1, 8), 400, at(1, 8), at(68, 16)),  # ten weeks: the last Friday is day 9 * 7 + 5
        (at(2, 20), 0, at(2, 20), at(2, 20)),  # nothing to do takes no day
    ],
)  # fmt: skip
def test_hands_by_the_clock(ready: float, hands: float, start: float, finish: float) -> None:
    assert OFFICE.run(ready, hands) == pytest.approx((start, finish))


@pytest.mark.parametrize(
    ("by", "hands", "start", "finish"),
    [
        (at(1, 16), 8, at(1, 8), at(1, 16)),
        (at(2, 8.5), 1, at(1, 15.5), at(2, 8.5)),
        (at(8, 8), 2, at(5, 14), at(5, 16)),  # by Monday at eight is by Friday evening
        (at(7, 12), 1, at(5, 15), at(5, 16)),
        (at(12, 16), 80, at(1, 8), at(12, 16)),
    ],
)
def test_hands_back_from_an_end(by: float, hands: float, start: float, finish: float) -> None:
    assert OFFICE.run_back(by, hands) == pytest.approx((start, finish))


@pytest.mark.parametrize(
    ("hours", "told"), [((8, 8, (0,)), "ends before"), ((9, 25, (0,)), "ends before"), ((8, 16, ()), "no working day")]
)
def test_hours_without_work_are_refused(hours: tuple[float, float, tuple[int, ...]], told: str) -> None:
    with pytest.raises(NotPossible, match=told):
        WorkingHours(*hours)


def test_day_and_clock_to_the_minute() -> None:
    assert day_and_clock(at(3, 10.25)) == (3, "10:15")
    assert day_and_clock(at(3, 7) + 59.9 / 60) == (3, "8:00")
    assert day_and_clock(23.9999) == (2, "0:00")


def test_steps_that_wait_for_each_other_are_refused() -> None:
    with pytest.raises(NotPossible, match="wait for each other"):
        in_turn({"a": ["b"], "b": ["a"]})


# Whole hours, so that sums are exact. Each step may wait for those before it.
NAMES = tuple("abcdefg")


@st.composite
def graphs(draw: st.DrawFn) -> dict[str, Task]:
    made = {}
    for number, name in enumerate(NAMES):
        others = draw(st.lists(st.sampled_from(NAMES[:number]), unique=True, max_size=3)) if number else []
        split = draw(st.integers(0, len(others)))
        hands, wait = draw(st.integers(0, 9)), draw(st.integers(0, 40))
        made[name] = Task(float(hands), float(wait), tuple(others[:split]), tuple(others[split:]))
    return made


def every_chain(tasks: dict[str, Task], last: str) -> list[tuple[str, ...]]:
    """Every way back from a step, by trying all: slow, and plainly right."""
    task = tasks[last]
    ways = [(*way, last) for other in (*task.after, *task.at_once_after) for way in every_chain(tasks, other)]
    return [(last,), *ways]


def length(tasks: dict[str, Task], way: tuple[str, ...]) -> float:
    """From the beginning of the first to the beginning of the last."""
    return sum(tasks[one].hands + (tasks[one].wait if one in tasks[later].after else 0) for one, later in pairwise(way))


@given(graphs())
def test_the_earliest_beginning_is_the_longest_of_all_chains(tasks: dict[str, Task]) -> None:
    found = times(tasks, ROUND_THE_CLOCK)
    for name in tasks:
        assert found[name].start == max(length(tasks, way) for way in every_chain(tasks, name))
    chain = longest_chain(found)
    end = max(one.ready for one in found.values())
    assert length(tasks, chain) + tasks[chain[-1]].hands + tasks[chain[-1]].wait == end
    assert lasts(tasks, found).value == end


@given(graphs())
def test_a_step_that_begins_at_its_latest_holds_nothing_up(tasks: dict[str, Task]) -> None:
    found = times(tasks, ROUND_THE_CLOCK)
    end = max(one.ready for one in found.values())
    for name, one in found.items():
        assert one.latest >= one.start
        later = {
            **tasks,
            "not before": Task(one.latest),
            name: tasks[name]._replace(at_once_after=(*tasks[name].at_once_after, "not before")),
        }
        assert max(one.ready for one in times(later, ROUND_THE_CLOCK).values()) == pytest.approx(max(end, one.latest))


@given(graphs(), st.sampled_from(NAMES))
def test_more_hands_or_a_longer_wait_never_end_it_sooner(tasks: dict[str, Task], name: str) -> None:
    for changed in (tasks[name]._replace(hands=tasks[name].hands + 3), tasks[name]._replace(wait=tasks[name].wait + 5)):
        for hours in (ROUND_THE_CLOCK, OFFICE):
            before, after = times(tasks, hours), times({**tasks, name: changed}, hours)
            assert all(after[one].start >= before[one].start for one in tasks)


@given(st.floats(0, 400), st.floats(0.01, 200))
def test_working_hours_hold_exactly_the_hands(ready: float, hands: float) -> None:
    """Counted minute by minute, nothing of a span lies at night or on a free day but what lies between."""
    start, finish = OFFICE.run(ready, hands)
    assert start >= ready - 1e-6
    worked = sum(max(min(finish, day * 24 + 16) - max(start, day * 24 + 8), 0.0) for day in range(120) if day % 7 < 5)
    assert worked == pytest.approx(hands, abs=1e-5)
    back = OFFICE.run_back(finish, hands)
    assert back.finish == pytest.approx(finish)
    assert back.start == pytest.approx(start, abs=1e-5)
