"""`plumbrule workings`: what was worked out of a plan, and how."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.cli import stream
from plumbrule.cli.plans import one
from plumbrule.cli.today import today
from plumbrule.cli.work import examined_plan
from plumbrule.reading.fault import Unreadable
from plumbrule.report.workings import UnknownKind, defaults, kinds_asked, text
from plumbrule.rulebook.load import load

if TYPE_CHECKING:
    from plumbrule.cli.arguments import Asked


def run(asked: Asked) -> int:
    """0, or 2 when the plan cannot be read."""
    try:
        kinds = kinds_asked([word.strip() for word in asked.only.split(",")] if asked.only is not None else [])
    except UnknownKind as error:
        raise stream.Refused(f"workings: --only: {error}") from None
    plan = one(asked.plan, "workings")
    try:
        examined = examined_plan(plan, load(asked.house), today(None))
    except Unreadable as error:
        for fault in error.faults:
            stream.complain(str(fault))
        return 2
    if asked.format == "json":
        from plumbrule.report.workings_data import data

        pretty = asked.pretty or stream.to_a_terminal()
        stream.put([data(examined, kinds, only_assumed=asked.defaults, pretty=pretty)], exact=True)
        return 0
    write = defaults if asked.defaults else text
    stream.put([write(examined, kinds, stream.columns(), stream.in_colour())])
    return 0
