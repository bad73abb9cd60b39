"""The take-off as text: page 1 to the merchant, page 2 to the saw, page 3 to the drill."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.facts.takeoff import Takeoff
from plumbrule.reading.shown import digits
from plumbrule.report.clean import one_line
from plumbrule.report.figures import many
from plumbrule.report.outcome import levels_of, verdict_of
from plumbrule.report.paper import Paper
from plumbrule.report.takeoff_buying import buying_page
from plumbrule.report.takeoff_cutting import cutting_page
from plumbrule.report.takeoff_drilling import drilling_page
from plumbrule.rulebook.rule import LEVELS

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.rulebook.rulebook import Rulebook

PAGES = ("merchant", "saw", "drill")
# The rules whose settings say what is bought on top, and the words for it.
_SPARES = {
    "no-spare-screw": ("spare", "fewest", "of screws and washers", "screws"),
    "no-spare-panel": ("waste", "fewest", "of panels", "panels"),
}


def text(
    takeoff: Takeoff, examined: Examined, rulebook: Rulebook, pages: tuple[str, ...] = PAGES, width: int = 100,
    colour: bool = False,
) -> str:  # fmt: skip
    """The pages asked for. A plan that fails says so above them, so that nobody buys for it unawares."""
    paper = Paper(width, colour)
    model = examined.plan.model
    record = f"revision {model.record.revision}" if model.record and model.record.revision is not None else ""
    paper.apart(f"plumbrule takeoff {one_line(examined.path)}", record, "bold")
    paper.line(one_line(model.title), hang=3)
    paper.line(verdict(examined), *(("red", "bold") if fails(examined) else ()), hang=3)
    for page in pages:
        paper.blank()
        paper.rule()
        if page == "merchant":
            buying_page(paper, takeoff, examined, spares(rulebook, takeoff))
        elif page == "saw":
            cutting_page(paper, takeoff, examined)
        else:
            drilling_page(paper, takeoff, examined)
    return paper.text()


def fails(examined: Examined) -> bool:
    """Whether anything at correction or above is wrong with the plan, or nothing of it was judged."""
    return verdict_of(examined.inspection, "correction") == "fail"


def verdict(examined: Examined) -> str:
    """What the inspection found, in a sentence or two."""
    unseen = len(examined.inspection.not_inspected)
    open_ones = f" Not inspected: {many(unseen, 'thing')}." if unseen else ""
    if not fails(examined):
        return f"Inspected: nothing to put right at or above correction.{open_ones}"
    levels = zip(LEVELS, levels_of(examined.inspection), strict=True)
    told = ", ".join(f"{count} {level}" for level, count in levels if count and level != "advisory")
    see = f"Put the plan right before you buy, cut or drill. See: plumbrule inspect {one_line(examined.path)}"
    return f"FAILS: {told or 'nothing of it was judged'}. {see}{f' ({open_ones.strip()})' if open_ones else ''}"


def spares(rulebook: Rulebook, takeoff: Takeoff) -> tuple[str, ...]:
    """What the rules in force ask for on top of the count, with the names of the rules."""
    said = []
    groups = {row.values["group"] for row in takeoff.needs}
    for name, (share, fewest, what, group) in _SPARES.items():
        rule = rulebook.rule(name)
        if rule is not None and group in groups:
            more, least = rule.settings[share].written, digits(rule.settings[fewest].value)
            said.append(f"{what} the rulebook asks for {more} over the count, {least} at least ({name})")
    return tuple(said)
