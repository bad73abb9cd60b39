"""`plumbrule inspect`: the punch list of one plan or many."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from plumbrule.cli import stream
from plumbrule.cli.plans import named
from plumbrule.cli.today import today
from plumbrule.cli.work import Work, default_jobs, inspect_all
from plumbrule.reading.fault import Unreadable
from plumbrule.report.formats import format_of
from plumbrule.report.outcome import Outcome, exit_code
from plumbrule.report.paper import WIDEST
from plumbrule.report.terms import terms_of
from plumbrule.rulebook.load import load

if TYPE_CHECKING:
    from plumbrule.cli.arguments import Asked


def run(asked: Asked) -> int:
    """0 passes, 1 findings at or above the level asked for, 2 a plan or the rulebook could not be read."""
    target = stream.checked_target(asked.out) if asked.out is not None else None
    plans = named(asked.plans, but_not=asked.house)
    try:
        rulebook = load(asked.house, asked.rules)
    except Unreadable as error:
        for fault in error.faults:
            stream.complain(str(fault))
        return 2
    to_file = target is not None
    terms = terms_of(
        rulebook,
        asked.stop_at,
        width=WIDEST if to_file else stream.columns(),
        colour=not to_file and stream.in_colour(),
        pretty=asked.pretty or (not to_file and stream.to_a_terminal()),
        timing=asked.timing,
        alone=len(plans) == 1,
    )
    work = Work(asked.format, terms, today(asked.today), asked.house, tuple(asked.rules))
    jobs = asked.jobs if asked.jobs is not None else default_jobs(len(plans))
    outcomes = inspect_all(plans, work, rulebook, jobs)
    pieces = format_of(asked.format).whole(outcomes, terms, rulebook)
    if target is not None:
        stream.replace(target, pieces)
    else:
        stream.put(pieces, exact=asked.format != "text")
    if to_file or asked.format != "text":
        _complain(outcomes)
    return exit_code(outcomes)


def _complain(outcomes: Sequence[Outcome]) -> None:
    """Says on standard error why a plan could not be read, where the report itself goes to a file or a machine."""
    for outcome in outcomes:
        for fault in outcome.faults:
            stream.complain(fault)
