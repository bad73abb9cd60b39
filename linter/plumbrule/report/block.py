"""One finding, complete: what is wrong, where, by how much, why, the sum, on whose authority, and who decides."""

from __future__ import annotations

from itertools import pairwise

from plumbrule.inspection.group import under_loads
from plumbrule.inspection.types import Finding
from plumbrule.reading.places import Document
from plumbrule.report.clean import one_line
from plumbrule.report.figures import compared, many, quantity, ratio
from plumbrule.report.paper import JOIN, Paper, wrap
from plumbrule.report.places import short_labels, spot
from plumbrule.report.sums import Sum, lines_of_finding
from plumbrule.report.worked_line import DIFFERS, Line
from plumbrule.rulebook.rule import Citation, RemedyHint

TONES: dict[str, tuple[str, ...]] = {
    "stop-work": ("red", "bold"),
    "correction": ("yellow", "bold"),
    "advisory": ("bold",),
}
_SIGNALS = {"DANGER": ("red", "bold"), "WARNING": ("red", "bold"), "CAUTION": ("yellow", "bold"), "NOTICE": ("bold",)}
_MOST_LINES = 16


def block(
    paper: Paper, number: int, finding: Finding, document: Document, system: str, told: int | None = None
) -> None:
    """Writes the block of one finding. `told` is the number of an earlier one of the same rule: what holds for both is
    not said twice."""
    rule = finding.rule
    failed = finding.verdict == "failed"
    trial = "   (on trial)" if rule.on_trial else ""
    head = f"{number}  {finding.level.upper()}   {one_line(rule.title)}{trial}"
    paper.apart(head, f"{rule.id}  [{rule.trade}]", *TONES[finding.level])
    paper.labelled("where", f"{spot(document, finding.pointer)}   {one_line(finding.pointer) or '/'}")
    paper.labelled("found", one_line(finding.text))
    if failed:
        paper.labelled("judged", "This rule could not be worked out. It counts as stop-work until it can be.")
    paper.labelled("margin", margin(finding, system))
    if finding.also_at:
        less = " or less" if under_loads(finding) else ""
        paper.labelled("also at", f"{short_labels(finding.also_at)} (the same{less})")
    if told is None:
        paper.labelled("why", one_line(rule.why))
    paper.rows("sum", sum_rows(lines_of_finding(finding, system), paper.room(), finding.row.kind, document.path))
    if told is not None:
        paper.labelled(rule.caution.signal, one_line(rule.caution.text), *_SIGNALS[rule.caution.signal])
        paper.labelled("as in", f"{told}: why, source, who decides and what is worth trying")
        return
    paper.labelled("source", "; ".join(cited(citation) for citation in rule.sources))
    paper.labelled(rule.caution.signal, one_line(rule.caution.text), *_SIGNALS[rule.caution.signal])
    paper.labelled("who", one_line(rule.defer))
    if not failed and rule.remedies:
        hints = ", or ".join(hint(remedy) for remedy in rule.remedies)
        on = hangs_on(finding)
        paper.labelled("cure", f"worth trying: {hints} (not yet tried here){f'; it hangs on {on}' if on else ''}")
    paper.labelled("lesson", f"plumbrule lesson {rule.id}")


def margin(finding: Finding, system: str) -> str:
    """By how much a measure misses or clears its limit, and the share of the one in the other."""
    if finding.measure is None or finding.limit is None or finding.margin is None:
        return ""
    at_least = finding.bound == "at least"
    by = quantity(abs(finding.margin), finding.unit, system, 3)
    if finding.margin < 0:
        said = f"short by {by}" if at_least else f"over by {by}"
    elif finding.margin == 0:
        return "none: it stands on the limit"
    else:
        said = f"{by} to spare"
    measure, limit = compared(finding.measure, finding.limit, finding.unit, system)
    against = f"{measure} against {'at least' if at_least else 'at most'} {limit}"
    if finding.limit > 0 and finding.measure >= 0 and finding.unit != "°C":
        against += f", {ratio(finding.measure, finding.limit)} times what is {'needed' if at_least else 'allowed'}"
    return f"{said}: {against}"


def cited(citation: Citation) -> str:
    """`Title, clause (basis)`."""
    return one_line(f"{citation.source.title}, {citation.clause} ({citation.basis})")


def hint(remedy: RemedyHint) -> str:
    """`make diameter smaller`, `make wall leg: up`."""
    field = remedy.change.replace("_", " ")
    if remedy.go in ("smaller", "larger"):
        return f"make {field} {remedy.go}"
    return one_line(f"make {field}: {remedy.go}")


# What is built or found is not for a cure to move.
_CHANGEABLE = ("screws", "sections", "holes", "angles", "brackets", "cleats", "boards")


def hangs_on(finding: Finding) -> str:
    """The keys of the plan that a figure which nobody writes down comes from, part by part: `wall-lag (diameter,
    length), seat-steel (thickness)`. Empty where the field to change is itself a key."""
    parts: dict[str, dict[str, None]] = {}
    for remedy in finding.rule.remedies:
        pointers = finding.row.inputs.get(remedy.change, ())
        if len(pointers) < 2:
            continue
        for pointer in pointers:
            _, section, *rest = pointer.split("/")
            if section in _CHANGEABLE and len(rest) > 1:
                key = next(word for word in reversed(rest) if not word.isdigit())
                parts.setdefault(rest[0], {})[key.replace("_", " ")] = None
    return ", ".join(f"{one_line(part)} ({', '.join(keys)})" for part, keys in parts.items())


def sum_rows(whole: Sum, width: int, kind: str, path: str) -> list[str]:
    """The calculation, one line after the other; the ones nearest the result when there are many."""
    lines = whole.lines[-_MOST_LINES:]
    left_out = whole.left_out + len(whole.lines) - len(lines)
    rows = [row for line in lines for row in sum_row(line, width)]
    if left_out:
        rest = f"plumbrule workings {one_line(path)} --only {kind}"
        rows += wrap(f"(the whole of it, {many(left_out, 'more line')}: {rest})", width)
    return rows


def sum_row(line: Line, width: int, notes: str = "") -> list[str]:
    """`SYMBOL = FORMULA = VALUE   words`. A long line goes on further in; what does not fit beside it follows after a
    middle dot."""
    text = one_line(line.sum())
    words = one_line("; ".join(part for part in (line.words, notes, "" if line.agrees else DIFFERS) if part))
    if words and len(text) + 3 + len(words) <= width:
        return [f"{text}   {words}"]
    bound = _bound(line)
    rows = [f"{'' if not number else '    '}{row}" for number, row in enumerate(wrap(bound, width - 4, 4))]
    if words:
        rows += [f"    {'· ' if not number else '  '}{row}" for number, row in enumerate(wrap(words, width - 6))]
    return rows


def _bound(line: Line) -> str:
    """The line with its numbers bound to their units, so that it is broken between terms only."""
    words = one_line(line.sum()).split(" ")
    bound = words[0]
    for before, word in pairwise(words):
        number = before.lstrip("(-−")[:1].isdigit()
        bound += (JOIN if (number and word[:1].isalpha()) or before == "=" else " ") + word
    return bound
