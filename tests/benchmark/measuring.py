"""Running a program to its end, and what that took: by the wall clock, and in processor time of it and its children."""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

# Scripts of the environment that runs the benchmark: plumbrule, and the schema checker it is measured against.
SCRIPTS = Path(sys.executable).parent


class Took(NamedTuple):
    """Seconds, and peak memory in kB of the largest process."""

    wall: float
    cpu: float
    memory: int


class Failed(Exception):
    """A program that was to be measured did not do what it should: its time would mean nothing."""


@dataclass(frozen=True, slots=True)
class Program:
    """A command line, the exit codes that mean it did its work, and a check of what it wrote."""

    words: Sequence[str]
    codes: frozenset[int] = frozenset({0})
    check: Callable[[str], None] = lambda _: None


def environment(cache: Path) -> dict[str, str]:
    """The same for both sides: compiled modules are kept in a folder of our own, whatever the caller's settings."""
    kept = {name: value for name, value in os.environ.items() if not name.startswith("PYTHON")}
    return {**kept, "PYTHONPYCACHEPREFIX": str(cache), "NO_COLOR": "1"}


def run(program: Program, environment: Mapping[str, str]) -> Took:
    """Raises Failed when the program ends with a code it should not, or its output does not pass its check."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    started = time.perf_counter()
    done = subprocess.run(program.words, env=environment, capture_output=True, text=True, check=False)
    wall = time.perf_counter() - started
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    if done.returncode not in program.codes:
        raise Failed(f"{' '.join(program.words)}\nended with {done.returncode}: {done.stdout}{done.stderr}")
    program.check(done.stdout)
    cpu = (after.ru_utime - before.ru_utime) + (after.ru_stime - before.ru_stime)
    return Took(wall, cpu, after.ru_maxrss)


class Pairs(NamedTuple):
    """Ours and theirs, run by turns, so that whatever slows the machine slows both."""

    ours: list[Took]
    theirs: list[Took]

    def ratios(self, of: str) -> list[float]:
        """Ours over theirs, pair by pair, in `wall` or `cpu`."""
        return [getattr(a, of) / getattr(b, of) for a, b in zip(self.ours, self.theirs, strict=True)]


def by_turns(ours: Program, theirs: Program, times: int, environment: Mapping[str, str]) -> Pairs:
    """One run of each to warm the caches, then `times` pairs, first the one and then the other in front."""
    for program in (ours, theirs):
        run(program, environment)
    pairs = Pairs([], [])
    for number in range(times):
        sides = [(pairs.ours, ours), (pairs.theirs, theirs)]
        for kept, program in sides if number % 2 == 0 else reversed(sides):
            kept.append(run(program, environment))
    return pairs


def spread(values: Sequence[float]) -> tuple[float, float, float]:
    """Least, median, greatest."""
    return min(values), statistics.median(values), max(values)
