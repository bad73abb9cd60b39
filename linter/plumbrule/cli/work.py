"""Plans inspected one after the other, or in several processes; either way the same outcomes in the same order."""

from __future__ import annotations

import os
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from plumbrule.cli.patience import collect_rarely
from plumbrule.cli.plans import Named
from plumbrule.inspection.examine import Examined, examine
from plumbrule.reading.fault import NOWHERE, Fault, Unreadable
from plumbrule.reading.places import read, read_file
from plumbrule.report.formats import format_of
from plumbrule.report.outcome import Outcome, inspected, unreadable
from plumbrule.report.terms import Terms
from plumbrule.rulebook.load import load
from plumbrule.rulebook.rulebook import Rulebook

if TYPE_CHECKING:
    from concurrent.futures import Future, ProcessPoolExecutor

FEW = 20
T = TypeVar("T")
TRACEBACK = "PLUMBRULE_TRACEBACK"


@dataclass(frozen=True, slots=True)
class Work:
    """What to make of each plan, and from which files the rulebook was loaded: a process loads its own."""

    format: str
    terms: Terms
    today: date
    house: Path | None
    rules: tuple[Path, ...]


def default_jobs(plans: int) -> int:
    """One process for a few plans, since starting more costs what they save; else one for each processor."""
    if plans < FEW:
        return 1
    usable = getattr(os, "sched_getaffinity", None)
    return len(usable(0)) if usable is not None else os.cpu_count() or 1


def inspect_all(plans: Sequence[Named], work: Work, rulebook: Rulebook, jobs: int) -> list[Outcome]:
    """The outcomes in the order of `plans`."""
    jobs = min(jobs, len(plans))
    if jobs <= 1:
        return [inspect_one(plan, work, rulebook) for plan in plans]
    return _in_processes(plans, work, jobs)


def inspect_one(plan: Named, work: Work, rulebook: Rulebook) -> Outcome:
    """One plan. Never raises for what is wrong with it, so that the other plans are still inspected."""
    report = format_of(work.format)
    try:
        examined = examined_plan(plan, rulebook, work.today, work.terms.timing)
        part = _told(plan, lambda: report.plan(examined, work.terms))
        return inspected(examined, work.terms, part)
    except Unreadable as error:
        return unreadable(plan.path, error.faults, report.unreadable(plan.path, error.faults, work.terms))


def examined_plan(plan: Named, rulebook: Rulebook, today: date, timing: bool = False) -> Examined:
    """One plan, read, worked out and inspected. Raises Unreadable, also for a mistake of the program."""

    def work() -> Examined:
        document = read_file(plan.path) if plan.source is None else read(plan.source, plan.path)
        return examine(document, rulebook, today, timing)

    return _told(plan, work)


def _told(plan: Named, work: Callable[[], T]) -> T:
    """A mistake of the program is said like a fault of the plan, so that nothing reads as a pass and no other plan
    suffers from it. Who mends the program sets PLUMBRULE_TRACEBACK to see where it is."""
    try:
        return work()
    except Unreadable:
        raise
    except Exception as error:
        if os.environ.get(TRACEBACK):
            raise
        what = f"plumbrule itself failed on this plan ({type(error).__name__}: {error})."
        fault = Fault(plan.path, NOWHERE, "", what, "Nothing was judged. Report this, with the plan.")
        raise Unreadable([fault]) from error


def _in_processes(plans: Sequence[Named], work: Work, jobs: int) -> list[Outcome]:
    from concurrent.futures.process import BrokenProcessPool

    size = max(1, len(plans) // (4 * jobs))
    chunks = [list(plans[start : start + size]) for start in range(0, len(plans), size)]
    done: list[list[Outcome] | None] = [None] * len(chunks)
    with _pool(work, jobs) as pool:
        futures: list[Future[list[Outcome]]] = [pool.submit(_inspect_chunk, chunk) for chunk in chunks]
        for number, future in enumerate(futures):
            try:
                done[number] = future.result()
            except BrokenProcessPool:
                continue
    return [
        outcome
        for chunk, outcomes in zip(chunks, done, strict=True)
        for outcome in (outcomes if outcomes is not None else _one_by_one(chunk, work))
    ]


def _one_by_one(plans: Sequence[Named], work: Work) -> list[Outcome]:
    """Plans whose process died, each in a process of its own, to find the one that killed it."""
    from concurrent.futures.process import BrokenProcessPool

    outcomes = []
    for plan in plans:
        with _pool(work, 1) as pool:
            try:
                outcomes += pool.submit(_inspect_chunk, [plan]).result()
            except BrokenProcessPool:
                what = "The process that inspected this plan died."
                fault = Fault(
                    plan.path, NOWHERE, "", what, "Nothing was judged. Inspect it by itself, and report this."
                )
                report = format_of(work.format)
                outcomes.append(unreadable(plan.path, [fault], report.unreadable(plan.path, [fault], work.terms)))
    return outcomes


def _pool(work: Work, jobs: int) -> ProcessPoolExecutor:
    from concurrent.futures import ProcessPoolExecutor
    from multiprocessing import get_context

    # Started afresh, not forked: the same on every system, and no half-copied state.
    return ProcessPoolExecutor(jobs, get_context("spawn"), _start, (work,))


class _Desk:
    """What a worker process was started with. One object a process, set once before any plan."""

    work: Work
    rulebook: Rulebook


def _start(work: Work) -> None:
    collect_rarely()
    _Desk.work = work
    _Desk.rulebook = load(work.house, work.rules)


def _inspect_chunk(plans: Sequence[Named]) -> list[Outcome]:
    return [inspect_one(plan, _Desk.work, _Desk.rulebook) for plan in plans]
