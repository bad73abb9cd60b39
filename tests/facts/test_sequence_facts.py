"""What the steps of a plan promise, when they are done, and what is said where a time or a part is left out."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from plumbrule import shipped
from plumbrule.facts.order import order
from plumbrule.facts.sequence import sequence_rows
from plumbrule.facts.supports import supports
from plumbrule.facts.timeline import timeline
from plumbrule.plan.house import Hours
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.read import plan_from_file, plan_from_text

PLANS = shipped.folder("plans")

PAINTED = """\
plan: 1
title: One wall
walls: {north: {width: 3 m}, south: {width: 3 m}}
panels:
  cladding:
    walls: [north]
    panel: {length: 600 mm, height: 200 mm, thickness: 9 mm, edges: square}
    courses: {level_line: 150 mm, starters: {north: [400 mm]}}
steps:
  wash: {task: wash wall, works_on: [north, south], takes: 2 h, then_wait: 24 h}
  prime: {task: prime wall, works_on: [north], after: [wash], takes: 1 h, then_wait: 2 days}
  lay: {task: lay panels, works_on: [cladding], after: [prime], takes: 9 h}
  roll: {task: roll panels, works_on: [cladding], at_once_after: [lay], takes: 1 h, then_wait: 72 h}
  look: {task: hand over, after: [roll], takes: 30 min}
"""


def plan(text: str = PAINTED) -> Plan:
    return plan_from_text(text.encode(), "plan.yaml")


def rows(made: Plan, kind: str, hours: Hours | None = None):
    return {row.label: row for row in sequence_rows(made, supports(made), hours)[kind]}


def test_the_order_by_hand() -> None:
    steps = order(plan())
    assert steps.before("wash", "roll")
    assert not steps.before("roll", "wash")
    assert not steps.before("lay", "lay")
    assert steps.waited("wash", "prime") == 24
    # the day after washing, an hour of priming, two days, nine hours of laying; rolled at once
    assert steps.waited("wash", "roll") == 24 + 1 + 48 + 9
    assert steps.waited("lay", "roll") == 0
    # nine hours of laying are done, an hour of rolling and its wait are not yet: from lay's hands 1 + 72
    assert steps.waited("lay", "look") == 73
    assert steps.waited("roll", "prime") == 0
    assert steps.written
    assert steps.pointer("lay") == "/steps/lay"


def test_what_is_done_to_a_part() -> None:
    steps = order(plan())
    assert steps.doing("wash wall", "south") == ("wash",)
    assert steps.doing("prime wall", "south") == ()
    # panels are laid on the walls of their field
    assert steps.doing("lay panels", "north") == ("lay",)
    assert steps.doing("lay panels", "south") == ()
    # what does not say what it works on counts for every part
    assert steps.doing("hand over", "south") == ("look",)
    assert not order(plan("plan: 1\ntitle: None\n")).written


def test_the_timeline_by_hand() -> None:
    """Day 1 is a Monday, hands from 8:00 to 16:00. Washed by 10:00, dry on Tuesday at 10:00, primed by 11:00, ready on
    Thursday at 11:00: five hours of laying on Thursday, four on Friday; rolled 12:00-13:00; 72 h on it is Monday."""
    placed = {one.name: (one.begins, one.done) for one in timeline(plan()).steps}
    assert placed == {
        "wash": ((1, "8:00"), (1, "10:00")), "prime": ((2, "10:00"), (2, "11:00")),
        "lay": ((4, "11:00"), (5, "12:00")), "roll": ((5, "12:00"), (5, "13:00")),
        "look": ((8, "13:00"), (8, "13:30")),
    }  # fmt: skip
    assert all(one.on_longest_chain for one in timeline(plan()).steps)


def test_the_working_hours_of_a_house_move_it() -> None:
    """Tuesday to Thursday, ten hours: day 1 is a Tuesday. Ready to lay on day 4 at 9:00, a Friday: so on day 8."""
    hours = Hours(starts="6:00", ends="16:00", days=("tuesday", "wednesday", "thursday"))
    placed = {one.name: one.begins for one in timeline(plan(), hours).steps}
    assert placed["prime"] == (2, "8:00")
    assert placed["lay"] == (8, "6:00")
    assert timeline(plan(), hours).assumed == ""
    assert "8:00 to 16:00, Monday to Friday" in timeline(plan()).assumed


def test_the_row_of_the_job() -> None:
    job = rows(plan(), "job")["the job"]
    assert job.values["hands"] == 13.5
    # from Monday 8:00 to the next Monday 13:30
    assert job.values["lasts"] == 7 * 24 + 5.5
    assert job.values["days"] == 8
    assert job.worked["lasts"].formula == "h + w + n"
    assert "/steps" in job.assumed


def test_a_time_left_out_is_named_where_it_is_wanted() -> None:
    made = plan(PAINTED.replace("takes: 1 h, then_wait: 2 days", "then_wait: 2 days"))
    steps = rows(made, "step")
    assert steps["wash (wash wall)"].values["first_day"] == 1
    for later in ("prime (prime wall)", "lay (lay panels)", "look (hand over)"):
        assert steps[later].missing["finish"] == ("/steps/prime/takes",)
    assert rows(made, "job")["the job"].missing["lasts"] == ("/steps/prime/takes",)


def test_without_steps_that_is_said_twice_and_not_a_hundred_times() -> None:
    made = plan("plan: 1\ntitle: None\nwalls: {north: {width: 3 m}}\n")
    found = sequence_rows(made, supports(made))
    assert [(kind, len(of)) for kind, of in found.items()] == [("job", 1), ("task", 1)]
    assert found["task"][0].missing["written"] == ("/steps",)


def test_a_step_that_works_on_nothing_named_is_not_inspected_and_not_passed() -> None:
    text = (PLANS / "display-shelf.yaml").read_text(encoding="utf-8")
    made = plan(text.replace("deburr steel, works_on: [ledge-back], ", "deburr steel, "))
    row = rows(made, "order")["coat (coat steel) comes after deburr steel"]
    assert row.missing["kept"] == ("/steps/deburr/works_on",)
    row = rows(made, "task")["deburr steel at ledge-back"]
    assert row.missing["written"] == ("/steps/deburr/works_on",)


def test_what_was_measured_and_found_needs_no_step_any_more() -> None:
    made = plan_from_file(PLANS / "display-shelf.yaml")
    needed = {label: row.values["needed"] for label, row in rows(made, "task").items()}
    assert not needed["measure room at long"]
    assert not needed["find studs at long"]
    text = (PLANS / "display-shelf.yaml").read_text(encoding="utf-8")
    unmeasured = plan(text.replace('measured: "', 'measured_by: "').replace("measured_by: carpenter, ", ""))
    assert rows(unmeasured, "task")["measure room at long"].values["needed"]


NAMES = tuple("abcdef")


@st.composite
def orders(draw: st.DrawFn) -> str:
    lines = []
    for number, name in enumerate(NAMES):
        others = draw(st.lists(st.sampled_from(NAMES[:number]), unique=True, max_size=3)) if number else []
        split = draw(st.integers(0, len(others)))
        takes = draw(st.sampled_from(["", ", takes: 1 h", ", takes: 5 h"]))
        wait = draw(st.sampled_from(["", ", then_wait: 7 h", ", then_wait: 20 h"]))
        after, at_once = ", ".join(others[:split]), ", ".join(others[split:])
        lines.append(f"  {name}: {{task: wash wall, after: [{after}], at_once_after: [{at_once}]{takes}{wait}}}")
    draw(st.randoms(use_true_random=False)).shuffle(lines)
    return "plan: 1\ntitle: Any\nsteps:\n" + "\n".join(lines) + "\n"


@given(orders())
def test_the_order_against_every_way_there_is(text: str) -> None:
    steps = order(plan(text))

    def ways(last: str) -> list[tuple[str, float]]:
        """Every step before `last`, and the hours sure between, once for each way there is."""
        step = steps.step(last)
        direct = [(one, steps.step(one).then_wait) for one in step.after] + [(one, 0.0) for one in step.at_once_after]
        found = list(direct)
        for one, wait in direct:
            found += [(other, hours + (steps.step(one).takes or 0.0) + wait) for other, hours in ways(one)]
        return found

    for last in NAMES:
        by_trying: dict[str, float] = {}
        for name, hours in ways(last):
            by_trying[name] = max(by_trying.get(name, 0.0), hours)
        assert {name for name in NAMES if steps.before(name, last)} == set(by_trying)
        assert {name: steps.waited(name, last) for name in NAMES} == {name: by_trying.get(name, 0.0) for name in NAMES}
