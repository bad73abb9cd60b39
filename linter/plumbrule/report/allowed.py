"""Allowed departures: what the plan departs from, who allowed it, until when, and what is wrong with that."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.report.block import margin
from plumbrule.report.clean import one_line
from plumbrule.report.paper import Paper
from plumbrule.report.places import labels, spot

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined


def departures(paper: Paper, examined: Examined) -> None:
    """Writes the departures of a plan, apart from what breaks. Nothing where it makes none."""
    inspection = examined.inspection
    allowed = [finding for finding in inspection.findings if finding.verdict == "allowed"]
    if not allowed and not inspection.about_departures:
        return
    paper.blank()
    paper.line("ALLOWED DEPARTURES", "bold")
    for finding in allowed:
        departure, rule = finding.departure, finding.rule
        if departure is None:
            continue
        paper.apart(f"-  {one_line(departure.name)}: {one_line(rule.title)}", f"{rule.id}  [{rule.trade}]", "bold")
        paper.labelled("where", f"{spot(examined.document, finding.pointer)}   {one_line(finding.pointer)}")
        paper.labelled("found", one_line(finding.text))
        paper.labelled("margin", margin(finding, examined.system))
        if finding.also_at:
            paper.labelled("also at", f"{labels(finding.also_at)} (the same)")
        paper.labelled("because", one_line(departure.reason))
        paper.labelled("by", f"{one_line(departure.allowed_by)}, until {departure.until}")
    for note in inspection.about_departures:
        paper.apart("-  CORRECTION", f"departure {note.kind}", "yellow", "bold")
        paper.labelled(
            "where", f"{spot(examined.document, note.departure.pointer)}   {one_line(note.departure.pointer)}"
        )
        paper.labelled("found", one_line(note.text))
