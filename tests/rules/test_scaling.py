"""Units are a way of writing: scale every length, mass and time of every row, and no verdict may change.

A rule that compares a bare number with a length, or a formula that forgot an inch, is caught here whatever the plan.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from functools import cache

import pytest

from plumbrule import shipped
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.inspection.examine import examine
from plumbrule.inspection.judge import judge
from plumbrule.language import Number, expression
from plumbrule.language.nodes import UnitName, walk
from plumbrule.reading.places import read_file
from plumbrule.reading.units import CONSTANTS, Dimension
from plumbrule.rulebook.load import load

PLANS = sorted([*shipped.folder("plans").glob("*.yaml"), *shipped.folder("plans").glob("faulty/*.yaml")])
SCALES = [(2.0, 1.0, 1.0), (1.0, 3.0, 1.0), (1.0, 1.0, 5.0), (0.1, 7.0, 0.3)]


def factor(dimension: Dimension, scale: tuple[float, float, float]) -> float:
    length, mass, time = scale
    return length**dimension.length * mass**dimension.mass * time**dimension.time


def scaled_expression(old, names, scale):
    """The expression as it reads when each unit it names is worth so much more."""
    if old is None:
        return None
    text = old.source
    for node in sorted((node for node in walk(old.node) if isinstance(node, UnitName)), key=lambda node: -node.start):
        worth = factor(CONSTANTS[node.name].dimension, scale)
        text = f"{text[: node.start]}({text[node.start : node.end]} * {worth!r}){text[node.end :]}"
    return expression(text, names)


@cache
def rulebook():
    return load()


@pytest.mark.parametrize("scale", SCALES, ids=str)
def test_no_verdict_changes_with_the_units(scale):
    rules = []
    for rule in rulebook().rules:
        names = {**CATALOGUE[rule.looks_at].types(), **{name: setting.type for name, setting in rule.settings.items()}}
        new = {
            "when": scaled_expression(rule.when, names, scale),
            "that": scaled_expression(rule.that, names, scale),
            "measure": scaled_expression(rule.measure, names, scale),
        }
        bounds = rule.bounds._replace(
            at_least=scaled_expression(rule.bounds.at_least, names, scale),
            at_most=scaled_expression(rule.bounds.at_most, names, scale),
        )
        settings = {
            name: setting.value * factor(setting.type.dimension, scale)
            for name, setting in rule.settings.items()
            if isinstance(setting.type, Number)
        }
        rules.append((rule, rule._replace(**new, bounds=bounds), settings))
    judged = 0
    for path in PLANS:
        rows = examine(read_file(path), rulebook(), date(2026, 1, 1)).rows
        for rule, scaled_rule, settings in rules:
            facts = CATALOGUE[rule.looks_at].by_name
            for row in rows.get(rule.looks_at, ()):
                values = {
                    name: value * factor(facts[name].type.dimension, scale)
                    if isinstance(facts[name].type, Number) and not isinstance(value, bool)
                    else value
                    for name, value in row.values.items()
                }
                before = judge(rule, row, rule.values())
                after = judge(scaled_rule, replace(row, values=values), settings)
                # A margin within rounding of the limit may fall to either side of it when the numbers change size.
                if before.margin is not None and before.limit is not None and 0 < abs(before.margin) < 1e-6:
                    continue
                assert after.verdict == before.verdict, f"{path.name}: {rule.id} on {row.label} at {scale}"
                judged += 1
    assert judged > 500
