"""The working hours of a house: they reach the rulebook, and a day in which nobody could work is refused."""

from __future__ import annotations

import pytest

from plumbrule.reading.fault import Unreadable
from plumbrule.rulebook.load import load


def write(tmp_path, text):
    path = tmp_path / "house.yaml"
    path.write_text(text)
    return path


def refused(tmp_path, text):
    with pytest.raises(Unreadable) as caught:
        load(write(tmp_path, text))
    return [str(fault) for fault in caught.value.faults]


def test_working_hours_reach_the_rulebook(tmp_path):
    assert load().hours is None
    hours = load(write(tmp_path, 'hours: {starts: "7:00", days: [monday, saturday]}\n')).hours
    assert (hours.starts, hours.ends, tuple(hours.days)) == ("7:00", None, ("monday", "saturday"))


@pytest.mark.parametrize(
    ("hours", "at", "found"),
    [
        ('{starts: "9:00", ends: "8:30"}', "/hours/ends", "A day from 9:00 to 8:30 ends before it begins."),
        ('{starts: "17:00"}', "/hours/starts", "A day from 17:00 to 16:00 ends before it begins."),
        ("{days: []}", "/hours/days", "There is no working day in this week."),
    ],
)
def test_hours_in_which_nobody_could_work_are_refused(tmp_path, hours, at, found):
    (told,) = refused(tmp_path, f"hours: {hours}\n")
    assert f"{at}: {found} " in told
