"""The rulebook in force: the shipped rules, a team's own, and what the house changed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, NamedTuple

from plumbrule.rulebook.rule import Rule, Source

if TYPE_CHECKING:
    from plumbrule.plan.house import Hours, Loads


class Rulebook(NamedTuple):
    """`digest` names the very rules and settings that were used; `house` is the path of the house file, or empty, and
    `changes` says in words what that file changed, so that no report hides whose decision a softer rule was.
    `hours` are the working hours of the house, and `loads` what it has boards tried with, where it gives any."""

    rules: tuple[Rule, ...]
    sources: Mapping[str, Source]
    digest: str
    version: str
    house: str = ""
    changes: tuple[str, ...] = ()
    hours: Hours | None = None
    loads: Loads | None = None

    def rule(self, name: str) -> Rule | None:
        """The rule of that name, or None."""
        return next((rule for rule in self.rules if rule.id == name), None)

    def trades(self) -> tuple[str, ...]:
        """The trades that have at least one rule, in the order of the rules."""
        return tuple(dict.fromkeys(rule.trade for rule in self.rules))
