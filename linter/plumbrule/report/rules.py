"""The rulebook in force, listed: rules with level, settings and their range, sources, basis, since when, on trial."""

from __future__ import annotations

from typing import Any

from plumbrule import __version__
from plumbrule.report.block import cited
from plumbrule.report.clean import clean, one_line
from plumbrule.report.data import citation_entry, dumps, indented
from plumbrule.report.figures import many, quantity
from plumbrule.report.paper import Paper
from plumbrule.report.places import house_changes
from plumbrule.report.terms import Terms
from plumbrule.rulebook.rule import TRADES, Rule, Setting
from plumbrule.rulebook.rulebook import Rulebook

_INCH_UNITS = (" in", " ft", " lbf", " lbf/ft", " psi", " °F")


def text(rulebook: Rulebook, terms: Terms) -> str:
    """Every rule, by trade in the order of the work."""
    paper = Paper(terms.width, terms.colour)
    paper.apart(f"plumbrule rulebook: {many(len(rulebook.rules), 'rule')}", terms.rulebook_line(), "bold")
    house_changes(paper, terms)
    for trade in TRADES:
        rules = [rule for rule in rulebook.rules if rule.trade == trade]
        if not rules:
            continue
        paper.blank()
        paper.line(f"{trade}: {len(rules)}", "bold")
        paper.rule()
        for rule in rules:
            _rule(paper, rule)
    if terms.not_looked_at:
        paper.blank()
        paper.line(f"no rules yet: {', '.join(terms.not_looked_at)}", "yellow", hang=3)
    return paper.text()


def data(rulebook: Rulebook, terms: Terms) -> str:
    """The same as JSON text."""
    made = dumps({
        "plumbrule": __version__,
        "version": rulebook.version, "digest": rulebook.digest, "house": clean(rulebook.house) or None,
        "changes": [clean(change) for change in rulebook.changes],
        "not_looked_at": list(terms.not_looked_at),
        "rules": [_entry(rule) for rule in rulebook.rules],
    })  # fmt: skip
    return (indented(made) if terms.pretty else made) + "\n"


def demand(rule: Rule) -> str:
    """What the rule demands, as it is written: `edge_distance at least factor * diameter`."""
    if rule.that is not None:
        return one_line(rule.that.source)
    bounds = [
        f"{word} {one_line(expression.source)}"
        for word, expression in (("at least", rule.bounds.at_least), ("at most", rule.bounds.at_most))
        if expression is not None
    ]
    return f"{one_line(rule.measure.source) if rule.measure else ''} {' and '.join(bounds)}".strip()


def setting_line(setting: Setting) -> str:
    """`factor 1.5 (a house may set 1.25 or more): edge distance as a multiple of the hole diameter`."""
    system = "inch" if setting.written.endswith(_INCH_UNITS) else "metric"
    least = "" if setting.least is None else quantity(setting.least, setting.unit, system)
    most = "" if setting.most is None else quantity(setting.most, setting.unit, system)
    if least and most:
        room = f"a house may set {least} to {most}"
    elif least or most:
        room = f"a house may set {least} or more" if least else f"a house may set {most} or less"
    else:
        room = "a house may set any value"
    return one_line(f"{setting.name} {setting.written} ({room}): {setting.says}")


def _rule(paper: Paper, rule: Rule) -> None:
    trial = "   on trial" if rule.on_trial else ""
    paper.apart(rule.id, f"{rule.level}{trial}   since {rule.since}", "bold")
    paper.line(one_line(rule.title), indent=3, hang=3)
    applies = f", when {one_line(rule.when.source)}" if rule.when is not None else ""
    paper.labelled("demands", f"of each {rule.looks_at}{applies}: {demand(rule)}")
    for setting in rule.settings.values():
        paper.labelled("setting", setting_line(setting))
    for citation in rule.sources:
        paper.labelled("source", cited(citation))


def _entry(rule: Rule) -> dict[str, Any]:
    return {
        "id": rule.id, "trade": rule.trade, "title": clean(rule.title), "level": rule.level, "on_trial": rule.on_trial,
        "looks_at": rule.looks_at, "when": rule.when.source if rule.when else None, "demands": demand(rule),
        "unit": rule.unit, "since": rule.since, "why": clean(rule.why),
        "settings": [
            {"name": setting.name, "value": setting.value, "unit": setting.unit, "at_least": setting.least,
             "at_most": setting.most, "written": clean(setting.written), "says": clean(setting.says)}
            for setting in rule.settings.values()
        ],
        "sources": [citation_entry(citation) for citation in rule.sources],
        "caution": {"signal": rule.caution.signal, "text": clean(rule.caution.text)}, "defer": clean(rule.defer),
    }  # fmt: skip
