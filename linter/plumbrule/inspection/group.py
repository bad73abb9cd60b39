"""Like findings of one part become one, and findings stand in one order whatever the order of rules and rows."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.types import Finding
from plumbrule.rulebook.rule import LEVELS

_VERDICTS = ("failed", "breaks", "allowed", "not inspected", "holds")


def group(findings: Iterable[Finding]) -> list[Finding]:
    """Joins findings of the same rule, verdict, part, missing fields and numbers; the others go to `also_at`.

    Numbers count as the same when nine figures agree, so that 25.4 and 25.400000000000002 are not two findings. Where
    a part is tried with several loads, at several places, the numbers are left out of account: the worst is told, and
    the others stand with it.
    """
    heads: dict[tuple[object, ...], list[Finding]] = {}
    for finding in findings:
        numbers = (None, None) if under_loads(finding) else (_figure(finding.measure), _figure(finding.limit))
        key = (
            finding.rule.id, finding.verdict, finding.level, finding.row.part, finding.missing, finding.reason,
            *numbers, finding.departure and finding.departure.name,
        )  # fmt: skip
        heads.setdefault(key, []).append(finding)
    return [_joined(alike) for alike in heads.values()]


def under_loads(finding: Finding) -> bool:
    """Whether the row is one of several loads on the same part."""
    return "case" in CATALOGUE[finding.row.kind].by_name


def _joined(alike: Sequence[Finding]) -> Finding:
    first, *others = alike
    if not others:
        return first
    if under_loads(first):
        first, *others = sorted(alike, key=_share)
    return replace(first, also_at=tuple(finding.row for finding in others))


def _share(finding: Finding) -> float:
    """The margin as a share of the limit, so that loads of different size can be ordered; the worst is the least."""
    if finding.margin is None or finding.limit is None:
        return 0.0
    return finding.margin / abs(finding.limit) if finding.limit else finding.margin


def in_order(findings: Sequence[Finding]) -> list[Finding]:
    """Worst first; then by part as the plan names them, by rule, by place."""
    return sorted(
        findings,
        key=lambda finding: (
            LEVELS.index(finding.level),
            _VERDICTS.index(finding.verdict),
            finding.row.part,
            finding.rule.id,
            finding.row.pointer,
            finding.row.label,
        ),
    )


def _figure(value: float | None) -> str:
    return "" if value is None else f"{value:.9g}"
