"""How fast plumbrule is, measured against `check-jsonschema` on the same files in the same run.

    python tests/benchmark/compare.py            the whole, a few minutes; exit 1 when a budget is exceeded
    python tests/benchmark/compare.py --smoke    that every pair runs and every count holds; times are not judged

The other side only checks the shape of a plan; ours reads it, works it out and judges it. Programs run by turns, and
each ratio is of two runs side by side, so that whatever else the machine is doing falls on both.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
import tempfile
from collections.abc import Iterator, Sequence
from functools import partial
from pathlib import Path
from typing import NamedTuple

from counting import counts_of, loaded_by
from limits import ABSENT_FROM_INSPECT, ABSENT_FROM_VERSION, MOST_MODULES
from measuring import SCRIPTS, Failed, Program, by_turns, environment, run, spread
from variants import base_plans, whole_jobs, write_variants

from plumbrule import shipped

PLAN = shipped.folder("plans") / "alcove-seat.yaml"
SCHEMA = shipped.folder("schema") / "plan.schema.json"
PLANS = 200
JOBS = 2


class Measured(NamedTuple):
    """One line of the table."""

    what: str
    unit: str
    values: list[float]
    budget: float | None = None
    goal: float | None = None


def ours(*words: object) -> Program:
    """Findings are as good a result as none; a plan that cannot be read is not."""
    return Program([str(SCRIPTS / "plumbrule"), *map(str, words)], frozenset({0, 1}))


def theirs(*plans: Path) -> Program:
    command = [str(SCRIPTS / "check-jsonschema"), "--schemafile", str(SCHEMA), *map(str, plans)]
    return Program(command, check=said_to_be_valid)


def said_to_be_valid(output: str) -> None:
    if "ok -- validation done" not in output:
        raise Failed(f"check-jsonschema says: {output}")


def version(times: int, cache: Path) -> Iterator[Measured]:
    """`--version`, from a cold start."""
    program = ours("--version")
    run(program, environment(cache))
    took = [run(program, environment(cache)) for _ in range(times)]
    yield Measured("plumbrule --version, wall", "ms", [one.wall * 1e3 for one in took], budget=60)
    yield Measured("plumbrule --version, processor", "ms", [one.cpu * 1e3 for one in took])


def one_plan(times: int, cache: Path) -> Iterator[Measured]:
    """One plan of a whole job, some 280 lines, each run a new process."""
    pairs = by_turns(ours("inspect", PLAN), theirs(PLAN), times, environment(cache))
    lines = len(PLAN.read_text(encoding="utf-8").splitlines())
    what = f"one plan, {lines} lines"
    yield Measured(f"{what}: ours, wall", "ms", [took.wall * 1e3 for took in pairs.ours])
    yield Measured(f"{what}: schema check, wall", "ms", [took.wall * 1e3 for took in pairs.theirs])
    yield Measured(f"{what}: ratio, wall", "x", pairs.ratios("wall"), budget=1.3, goal=1.0)
    yield Measured(f"{what}: ratio, processor", "x", pairs.ratios("cpu"), budget=1.3, goal=1.0)


def many_plans(
    kind: str, bases: Sequence[Path], times: int, count: int, cache: Path, folder: Path
) -> Iterator[Measured]:
    """Many plans, two processes of ours against the one that the other program has."""
    plans = folder / kind.replace(" ", "-")
    plans.mkdir()
    written = write_variants(plans, count, bases)
    report = folder / "report.json"
    inspect = ours("inspect", plans, "--format", "json", "--jobs", JOBS, "--out", report)
    inspect = Program(inspect.words, inspect.codes, partial(all_were_read, report, count))
    pairs = by_turns(inspect, theirs(*written), times, environment(cache))
    what = f"{count} {kind}, {JOBS} processes"
    yield Measured(f"{what}: ours, wall", "s", [took.wall for took in pairs.ours])
    yield Measured(f"{what}: schema check, wall", "s", [took.wall for took in pairs.theirs])
    yield Measured(f"{what}: ratio, wall", "x", pairs.ratios("wall"), budget=0.6, goal=0.5)
    yield Measured(f"{what}: ratio, processor", "x", pairs.ratios("cpu"))


def all_were_read(report: Path, count: int, _said: str) -> None:
    verdicts = [plan["verdict"] for plan in json.loads(report.read_bytes())["plans"]]
    if len(verdicts) != count or "unreadable" in verdicts:
        raise Failed(f"{len(verdicts)} of {count} plans in the report, {verdicts.count('unreadable')} unreadable")


def counts() -> Iterator[Measured]:
    """What is the same on every machine."""
    at_version, at_inspect = loaded_by("--version"), loaded_by("inspect", str(PLAN))
    for loaded, absent in ((at_version, ABSENT_FROM_VERSION), (at_inspect, ABSENT_FROM_INSPECT)):
        if found := absent.intersection(loaded.modules):
            raise Failed(f"loaded, and should not be: {', '.join(sorted(found))}")
    for what, loaded in (("--version", at_version), ("inspect", at_inspect)):
        ours_at_most, others_at_most = MOST_MODULES[what]
        yield Measured(f"modules loaded by {what}: ours", "", [loaded.ours()], budget=ours_at_most)
        yield Measured(f"modules loaded by {what}: of libraries", "", [loaded.others()], budget=others_at_most)
    yield Measured("files opened by inspect", "", [len(at_inspect.opened)])
    for path in base_plans():
        found = counts_of(path.read_bytes())
        yield Measured(f"{path.stem}: evaluations", "", [found.evaluations])
        yield Measured(f"{path.stem}: judgements", "", [found.judgements])
        yield Measured(f"{path.stem}: calls of functions", "", [found.calls])


def shown(measured: Measured, judged: bool = True) -> str:
    """One line: least, median, greatest, and what is said of it."""
    least, median, most = spread(measured.values)
    digits = 0 if measured.unit in ("", "ms") else 2
    numbers = "".join(f"{value:>10,.{digits}f}" for value in (least, median, most))
    return f"{measured.what:44}{numbers} {measured.unit:3}{said_of(measured) if judged else ''}".rstrip()


def said_of(measured: Measured) -> str:
    if measured.budget is None:
        return ""
    if over(measured):
        return f"OVER BUDGET: {measured.budget:g}"
    if measured.goal is not None and spread(measured.values)[1] > measured.goal:
        return f"PASS, at most {measured.budget:g}; the goal is {measured.goal:g}"
    return f"PASS, at most {measured.budget:g}"


def over(measured: Measured) -> bool:
    return measured.budget is not None and spread(measured.values)[1] > measured.budget


def main() -> int:
    parser = argparse.ArgumentParser(description="Measures plumbrule against a schema check of the same plans.")
    parser.add_argument("--smoke", action="store_true", help="few runs; only counts are judged")
    parser.add_argument("--times", type=int, default=15, help="pairs of runs of one plan (default: 15)")
    asked = parser.parse_args()
    times = 2 if asked.smoke else asked.times
    few, many = (1, 20) if asked.smoke else (max(3, times // 3), PLANS)
    print(f"Python {sys.version.split()[0]}, {os.cpu_count()} processors, {times} pairs; least, median, greatest")
    failed = False
    with tempfile.TemporaryDirectory() as name:
        folder, cache = Path(name), Path(name, "cache")
        timed = [
            version(times, cache),
            one_plan(times, cache),
            many_plans("plans", base_plans(), few, many, cache, folder),
            many_plans("whole jobs", whole_jobs(), few, many, cache, folder),
        ]
        for judged, group in [(True, counts()), *((not asked.smoke, lines) for lines in timed)]:
            for measured in group:
                print(shown(measured, judged), flush=True)
                failed |= judged and over(measured)
    return 1 if failed else 0


if __name__ == "__main__":
    try:
        sys.exit(main())
    except Failed as failure:
        sys.exit(f"benchmark: {failure}")
