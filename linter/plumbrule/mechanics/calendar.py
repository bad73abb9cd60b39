"""Working hours: hands work by day on working days, waits run on through nights and weekends."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import NamedTuple

from plumbrule.mechanics.worked import NotPossible

DAY = 24.0
WEEK = 7
# Hours that were added up come out this near to the end of a working day when they mean that end.
SLACK = 1e-7


class Span(NamedTuple):
    """From the first touch of the hands to the last, in hours from the midnight before the first day."""

    start: float
    finish: float


@dataclass(frozen=True, slots=True)
class WorkingHours:
    """When hands work.

    `starts` and `ends` are hours after midnight, 0 to 24. `days` are the working days counted from the first day of the
    job, which is 0, up to 6; they come again every week. Raises NotPossible where no time to work is left.
    """

    starts: float
    ends: float
    days: tuple[int, ...]

    def __post_init__(self) -> None:
        if not 0.0 <= self.starts < self.ends <= DAY:
            raise NotPossible("ends: the working day ends before it begins")
        if not self.days or any(day not in range(WEEK) for day in self.days):
            raise NotPossible("days: there is no working day in the week")

    def run(self, ready: float, hands: float) -> Span:
        """The earliest span of `hands` hours of work from `ready` on, nights and free days left out.

        `ready` is in hours from the midnight before the first day, `hands` in hours, 0 or more. What takes no time at
        all is done at any hour.
        """
        _hours(hands)
        if hands <= SLACK:
            return Span(ready, ready)
        start = self._open_from(ready)
        at, left = self._skip_weeks(start, hands)
        at = self._open_from(at)
        while (room := self._closes(at) - at) < left - SLACK:
            left -= room
            at = self._open_from(at + room)
        return Span(start, at + left)

    def run_back(self, by: float, hands: float) -> Span:
        """The latest span of `hands` hours of work that is over at `by`: the mirror of `run`."""
        _hours(hands)
        if hands <= SLACK:
            return Span(by, by)
        finish = self._open_until(by)
        back, left = self._skip_weeks(-finish, hands)
        at = self._open_until(-back)
        while (room := at - self._opens(at)) < left - SLACK:
            left -= room
            at = self._open_until(at - room)
        return Span(at - left, finish)

    def _skip_weeks(self, at: float, hands: float) -> tuple[float, float]:
        """Whole weeks of work at once, the last one left for the days one by one."""
        weekly = len(set(self.days)) * (self.ends - self.starts)
        weeks = max(math.ceil(hands / weekly) - 2, 0)
        return at + weeks * WEEK * DAY, hands - weeks * weekly

    def _open_from(self, at: float) -> float:
        """The first moment from `at` on at which there is still time to work."""
        day = math.floor((at + SLACK) / DAY)
        if at - day * DAY >= self.ends - SLACK:
            day += 1
        while day % WEEK not in self.days:
            day += 1
        return max(at, day * DAY + self.starts)

    def _open_until(self, at: float) -> float:
        """The last moment up to `at` before which there was still time to work."""
        day = math.floor((at - SLACK) / DAY)
        if at - day * DAY <= self.starts + SLACK:
            day -= 1
        while day % WEEK not in self.days:
            day -= 1
        return min(at, day * DAY + self.ends)

    def _closes(self, at: float) -> float:
        return math.floor((at + SLACK) / DAY) * DAY + self.ends

    def _opens(self, at: float) -> float:
        return math.floor((at - SLACK) / DAY) * DAY + self.starts


# Hands and waits alike run on: for checking a graph against one worked on paper.
ROUND_THE_CLOCK = WorkingHours(0.0, DAY, tuple(range(WEEK)))


def day_and_clock(at: float) -> tuple[int, str]:
    """The day, counted from 1, and the time on the clock to the minute: `(3, "10:15")`."""
    minutes = math.floor(at * 60 + 0.5)
    day, minute = divmod(minutes, int(DAY) * 60)
    return day + 1, f"{minute // 60}:{minute % 60:02d}"


def _hours(hands: float) -> None:
    if not (hands >= 0 and math.isfinite(hands)):
        raise NotPossible("hands: hours of work that are below nothing")
