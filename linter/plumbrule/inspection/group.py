"""Like findings of one part become one, and findings stand in one order whatever the order of rules and rows."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from plumbrule.inspection.types import Finding
from plumbrule.rulebook.rule import LEVELS

_VERDICTS = ("failed", "breaks", "allowed", "not inspected", "holds")


def group(findings: Iterable[Finding]) -> list[Finding]:
    """Joins findings of the same rule, verdict, part, missing fields and numbers; the others go to `also_at`.

    Numbers count as the same when nine figures agree, so that 25.4 and 25.400000000000002 are not two findings.
    """
    heads: dict[tuple[object, ...], list[Finding]] = {}
    for finding in findings:
        key = (
            finding.rule.id, finding.verdict, finding.level, finding.row.part, finding.missing, finding.reason,
            _figure(finding.measure), _figure(finding.limit), finding.departure and finding.departure.name,
        )  # fmt: skip
        heads.setdefault(key, []).append(finding)
    return [
        replace(first, also_at=tuple(finding.row for finding in others)) if others else first
        for first, *others in heads.values()
    ]


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
