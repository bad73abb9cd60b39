"""`plumbrule takeoff`: what goes to the merchant, to the saw and to the drill."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.cli import stream
from plumbrule.cli.plans import one
from plumbrule.cli.today import today
from plumbrule.cli.work import examined_plan
from plumbrule.facts.takeoff import take_off
from plumbrule.reading.fault import Unreadable
from plumbrule.rulebook.load import load

if TYPE_CHECKING:
    from plumbrule.cli.arguments import Asked


def run(asked: Asked) -> int:
    """0, or 2 when the plan cannot be read. What is wrong with the plan stands above the pages and changes nothing: to
    judge is the business of `inspect`."""
    if asked.table is not None and asked.format != "csv":
        raise stream.Refused("takeoff: --table chooses one of the tables of --format csv.")
    if asked.page is not None and asked.format != "text":
        raise stream.Refused("takeoff: --page chooses one of the pages of --format text.")
    target = stream.checked_target(asked.out) if asked.out is not None else None
    plan = one(asked.plan, "takeoff")
    try:
        rulebook = load(asked.house, tuple(asked.rules))
        examined = examined_plan(plan, rulebook, today(None))
    except Unreadable as error:
        for fault in error.faults:
            stream.complain(str(fault))
        return 2
    takeoff = take_off(examined.plan)
    if asked.format == "json":
        from plumbrule.report.takeoff_data import data

        told = data(takeoff, examined, pretty=asked.pretty or (target is None and stream.to_a_terminal()))
    elif asked.format == "csv":
        from plumbrule.report.takeoff_csv import TABLES, tables

        told = tables(takeoff, examined, TABLES if asked.table is None else (asked.table,))
    else:
        from plumbrule.report.takeoff import PAGES, text

        pages = PAGES if asked.page is None else (asked.page,)
        wide, colour = (stream.columns(), stream.in_colour()) if target is None else (100, False)
        told = text(takeoff, examined, rulebook, pages, wide, colour)
    if target is not None:
        stream.replace(target, [told])
    else:
        stream.put([told], exact=asked.format != "text")
    return 0
