"""`plumbrule lesson`: why a rule exists, worked on its own failing example."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.cli import stream
from plumbrule.reading.fault import Unreadable
from plumbrule.reading.spelling import nearest
from plumbrule.report.clean import one_line
from plumbrule.rulebook.load import load

if TYPE_CHECKING:
    from plumbrule.cli.arguments import Asked


def run(asked: Asked) -> int:
    """0, or 2 when there is no such rule or its file cannot be read."""
    if asked.rule is None:
        raise stream.Refused("lesson: no rule was named. Findings print its name; so does: plumbrule rulebook")
    try:
        rulebook = load(asked.house, asked.rules)
        rule = rulebook.rule(asked.rule)
        if rule is None:
            near = nearest(asked.rule, [known.id for known in rulebook.rules])
            hint = f"Did you mean {near}?" if near else "See: plumbrule rulebook"
            raise stream.Refused(f'lesson: there is no rule "{one_line(asked.rule)}". {hint}')
        from plumbrule.teaching.lesson import NoLesson, lesson

        try:
            text = lesson(rule, asked.rules, stream.columns(), stream.in_colour())
        except NoLesson as error:
            raise stream.Refused(f"lesson: {error}") from None
    except Unreadable as error:
        for fault in error.faults:
            stream.complain(str(fault))
        return 2
    stream.put([text])
    return 0
