"""What each `calculation` word about the order of the work means: the collected tasks in, a worked value out."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path
from typing import Any

from plumbrule.mechanics.calendar import ROUND_THE_CLOCK
from plumbrule.mechanics.precedence import Task, lasts, longest_chain, times
from plumbrule.mechanics.worked import Worked
from plumbrule.reading.places import read

PATH = Path(__file__).parent / "sequence.yaml"


@cache
def collected() -> dict[str, Any]:
    found: dict[str, Any] = read(PATH.read_bytes(), PATH.name).value
    return found


def tasks() -> dict[str, Task]:
    return {
        name: Task(float(hands), float(wait), tuple(after))
        for name, (hands, wait, after) in collected()["tasks"].items()
    }


def chain() -> tuple[str, ...]:
    return longest_chain(times(tasks(), ROUND_THE_CLOCK))


def _lasts(_inputs: Mapping[str, Any]) -> Worked:
    return lasts(tasks(), times(tasks(), ROUND_THE_CLOCK))


def _hands(_inputs: Mapping[str, Any]) -> float:
    return sum(task.hands for task in tasks().values())


SEQUENCE_CALCULATIONS: dict[str, Callable[[Mapping[str, Any]], Worked | float]] = {
    "collected order lasts": _lasts,
    "collected order's hands": _hands,
}
