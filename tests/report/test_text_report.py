"""The punch list: its layout, its width, its colour, and that nothing bad ever reads like something good."""

from __future__ import annotations

import re

import hand_made as made
import pytest
from pytest_regressions.file_regression import FileRegressionFixture

from plumbrule.inspection.types import Inspection, Tally
from plumbrule.mechanics.worked import Number, Worked
from plumbrule.reading.fault import Fault, Place
from plumbrule.report import text
from plumbrule.report.outcome import Outcome, inspected, unreadable

ESCAPE = re.compile(r"\x1b\[[0-9;]*m")


def outcome(run: made.Run) -> Outcome:
    return inspected(run.examined, run.terms, text.plan(run.examined, run.terms))


def printed(run: made.Run) -> str:
    return "".join(text.whole([outcome(run)], run.terms, run.rulebook))


def fault(path: str = "broken.yaml") -> Fault:
    place = Place(6, 12, 90, 6, 14, 92)
    return Fault(path, place, "/angles/kiln-side/length", "48 has no unit.", "Write 48 in or 48 mm.")


@pytest.mark.parametrize("width", [60, 80, 100])
def test_one_of_everything(width: int, file_regression: FileRegressionFixture) -> None:
    file_regression.check(printed(made.run(made.everything(), width=width)), encoding="utf-8")


def test_metric(file_regression: FileRegressionFixture) -> None:
    run = made.run(made.inspection(made.finding(text="hole 1 of kiln-side has 8.7 mm.")), system="metric")
    file_regression.check(printed(run), encoding="utf-8")


def test_several_plans(file_regression: FileRegressionFixture) -> None:
    bad = made.run(made.inspection(made.finding()), alone=False)
    good = made.run(made.inspection(), path="shelves/good.yaml", alone=False)
    half = made.run(made.inspection(unseen=(made.not_inspected(),)), path="shelves/half.yaml", alone=False)
    blind = unreadable("broken.yaml", [fault()], text.unreadable("broken.yaml", [fault()], bad.terms))
    empty = made.run(Inspection((), (), Tally(does_not_apply=9)), path="shelves/empty.yaml", alone=False)
    outcomes = [outcome(bad), outcome(good), outcome(half), outcome(empty), blind]
    file_regression.check("".join(text.whole(outcomes, bad.terms, bad.rulebook)), encoding="utf-8")


def test_unreadable_plan(file_regression: FileRegressionFixture) -> None:
    run = made.run(made.inspection())
    part = text.unreadable("broken.yaml", [fault(), fault()], run.terms)
    outcomes = [unreadable("broken.yaml", [fault(), fault()], part)]
    file_regression.check("".join(text.whole(outcomes, run.terms, run.rulebook)), encoding="utf-8")


@pytest.mark.parametrize("width", [1, 60, 61, 72, 83, 99, 100, 500])
def test_no_line_is_wider_than_asked_for(width: int) -> None:
    lines = printed(made.run(made.everything(), width=width, path="a" * 130 + ".yaml")).splitlines()
    assert max(len(line) for line in lines) <= max(60, min(100, width))


def test_colour_only_where_asked_for() -> None:
    plain = printed(made.run(made.everything()))
    coloured = printed(made.run(made.everything(), colour=True))
    assert "\x1b" not in plain
    assert "\x1b[31;1mFAILS at: stop-work\x1b[0m" in coloured
    assert ESCAPE.sub("", coloured) == plain


def test_control_characters_of_a_plan_are_not_printed() -> None:
    evil = made.finding(
        on=made.row("hole\x1b[2J\u202eone"), text="hole \x1b]0;pwned\x07 has \x9b31m it", pointer="/angles/kiln\x1b[31m"
    )
    shown = printed(made.run(made.inspection(evil), path="shelf\x1b[2J.yaml"))
    assert not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e]", shown)


def test_a_fail_by_a_hair_reads_as_a_fail() -> None:
    """1.004 against at most 1: to two decimals both are 1.00."""
    rule = made.rule(
        "screw-both-ways", trade="framing", looks_at="stud", measure="specific_gravity", at_most="1", unit=""
    )
    finding = made.finding(
        rule, made.row("stud 1", kind="stud", values={"specific_gravity": 1.004}), measure=1.004, limit=1.0,
        margin=-0.004, unit="", bound="at most", text="stud 1 is used to 1.004 of 1.",
    )  # fmt: skip
    shown = printed(made.run(made.inspection(finding)))
    words = " ".join(shown.split())
    assert re.search(r"over by 0\.004: 1\.004 against at most 1(\.0+)?, 1\.004 times what is allowed", words)
    assert "FAILS at: stop-work" in shown
    assert "exit 1" in shown


def test_a_fail_by_less_than_any_fraction_reads_as_a_fail() -> None:
    """12.7 mm less a thousandth is half an inch to every fraction a tape has."""
    finding = made.finding(measure=12.699, limit=12.7, margin=-0.001)
    shown = " ".join(printed(made.run(made.inspection(finding))).split())
    against = re.search(r"short by (\S+) in: (\S+) in against at least (\S+) in, (\S+) times", shown)
    assert against is not None
    assert float(against[1]) > 0
    assert float(against[2]) < float(against[3])
    assert float(against[4]) < 1


def test_nothing_judged_is_no_pass() -> None:
    shown = printed(made.run(Inspection((), (), Tally(does_not_apply=9))))
    assert "NOTHING WAS JUDGED" in shown
    assert "PASSES" not in shown
    assert "nothing was judged, so nothing is known" in " ".join(shown.split())


def test_a_pass_says_what_was_not_inspected() -> None:
    shown = printed(made.run(made.inspection(unseen=(made.not_inspected(),))))
    assert "PASSES at: correction, as far as it was inspected: 1 check could not be made" in shown
    assert "NOT INSPECTED   1 check of 1 rule" in shown
    assert "measure these 2 things and run again" in shown
    assert "exit 0: no findings at or above correction; 1 check not made" in shown


def test_trades_without_rules_are_named() -> None:
    shown = " ".join(printed(made.run(made.inspection())).split())
    assert "not looked at by this rulebook: boards, loads, surface, panels, joints, electrical, finishing," in shown


def test_a_failed_rule_stops_the_work_whatever_level_it_has() -> None:
    shown = printed(made.run(made.inspection(made.failed()), stop_at="stop-work"))
    assert "FAILS at: stop-work" in shown
    assert "1  STOP-WORK   Countersink too deep" in shown
    assert "could not be worked out" in shown


def test_an_expired_departure_fails_at_correction_but_not_at_stop_work() -> None:
    noted = made.inspection(made.allowed(), about_departures=(made.note(),))
    assert "exit 1: 1 finding at or above correction" in printed(made.run(noted))
    assert "exit 0: no findings at or above stop-work" in printed(made.run(noted, stop_at="stop-work"))


def test_what_a_house_changed_is_named() -> None:
    book = made.rulebook(house="house.yaml", changes=("hole-near-end is a correction here, not stop-work",))
    shown = printed(made.run(made.inspection(), book=book))
    assert "house file house.yaml" in shown
    assert "hole-near-end is a correction here, not stop-work" in shown


def test_a_long_sum_shows_its_end_and_says_where_its_beginning_is() -> None:
    last = made.END
    for number in range(20):
        numbers = (Number(last.symbol, last.value, "mm"), Number("d", 1.0, "mm"))
        formula, value = f"{last.symbol} + d", last.value + 1
        last = Worked(f"e_{number}", "one more", formula, numbers, value, "mm", "counting", steps=(last,))
    on = made.row(values={"diameter": 7.9375, "end_distance": last.value}, worked={"end_distance": last})
    shown = printed(made.run(made.inspection(made.finding(on=on))))
    assert "(the whole of it, 6 more lines: plumbrule workings drying-shelf.yaml --only hole)" in shown
    assert "e_19 = " in shown
    assert "e_5 = " in shown
    assert "e_4 = " not in shown


def test_the_plan_itself_may_wait_for_the_tape() -> None:
    run = made.run(made.inspection(), to_measure=("/angles/kiln-side/length",))
    shown = printed(run)
    assert "measure this 1 thing and run again" in shown
    assert "no rule of this rulebook; the plan says: measure on site" in " ".join(shown.split())
