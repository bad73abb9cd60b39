"""The sentence of a finding: the rule's own, with the numbers that were compared put in."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from plumbrule.catalogue.fact import Row, RowType
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.reading import shown
from plumbrule.reading.shown import System
from plumbrule.rulebook.rule import Rule

if TYPE_CHECKING:
    from plumbrule.inspection.judge import Judgement

_HOLDER = re.compile(r"\{([a-z_]+)\}")


def say(rule: Rule, row: Row, judgement: Judgement, system: System) -> str:
    """One sentence. `system` is how the plan's author measures, `inch` or `metric`."""
    if judgement.verdict == "failed":
        return f"{row.label}: this could not be worked out, so it must not be built on. {_capital(judgement.reason)}"
    if judgement.verdict == "not inspected":
        if judgement.reason:
            return f"{row.label}: the published figures do not cover this. {_capital(judgement.reason)}"
        return f"{row.label}: not inspected, because the plan leaves out what it needs."
    put = {"row": row.label}
    if judgement.measure is not None and judgement.limit is not None:
        put["measure"], put["limit"] = shown.pair(judgement.measure, judgement.limit, rule.unit, system)
    kind = CATALOGUE[row.kind]
    said = _HOLDER.sub(lambda found: put.get(found[1]) or _field(row, kind, found[1], system), rule.says)
    return said[:1].upper() + said[1:]


def _field(row: Row, kind: RowType, name: str, system: System) -> str:
    value = row.values.get(name)
    if value is None:
        return f"(unknown {name.replace('_', ' ')})"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, int | float):
        return shown.quantity(value, kind.by_name[name].unit, system)
    if isinstance(value, tuple):
        return ", ".join(str(item) for item in value) or "none"
    return value


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "!", "?")) else ".")
