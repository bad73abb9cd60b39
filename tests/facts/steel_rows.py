"""Rows of a shipped plan with a patch, for the tests of what hangs on the wall."""

from __future__ import annotations

from typing import Any

from plumbrule.catalogue.fact import Row
from plumbrule.facts.hole import hole_rows
from plumbrule.facts.steel import support_rows
from plumbrule.facts.supports import Support, supports
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.read import read_plan
from plumbrule.reading.patch import patched
from plumbrule.reading.units import to_si
from plumbrule.teaching.prove import base_plan

TEMPLATE = {"/record/status": "template"}
ON_SITE = "measure on site"


def plan_of(name: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Plan:
    """The base plan with values put in place (`changes`, added where they are new) and keys taken out (`gone`)."""
    document = base_plan(name)
    patch = [{"op": "add", "path": path, "value": value} for path, value in (changes or {}).items()]
    patch += [{"op": "remove", "path": path} for path in gone]
    # `add` replaces the value of a key that is there, but pushes the items of a list aside.
    for operation in patch:
        if operation["op"] == "add" and operation["path"] in document.spots:
            operation["op"] = "replace"
    return read_plan(patched(document, patch))


def supports_of(name: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> dict[str, Support]:
    """Supports by label."""
    return {support.label: support for support in supports(plan_of(name, changes, gone))}


def hole_of(name: str, part: str, label: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    """One hole of a part, by its label."""
    plan = plan_of(name, changes, gone)
    return next(
        row for row in hole_rows(plan, supports(plan)) if row.label == label and row.part.rpartition("/")[2] == part
    )


def part_of(name: str, label: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> Row:
    """The row of one angle, bracket or cleat."""
    plan = plan_of(name, changes, gone)
    return next(row for row in support_rows(plan, supports(plan)) if row.label == label)


def inches(value: float) -> float:
    """Inches in mm."""
    return to_si(value, "in")
