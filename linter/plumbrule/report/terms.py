"""On what terms a report is made: the rulebook in force, the level that fails, and how it is to be written."""

from __future__ import annotations

from dataclasses import dataclass

from plumbrule.rulebook.rule import TRADES, Level
from plumbrule.rulebook.rulebook import Rulebook


@dataclass(frozen=True, slots=True)
class Terms:
    """The same for every plan of one run. Plain values only, so that a worker process can be given it.

    `changes` says in words what the house changed of the rules.

    `width` is in columns; `colour`, `pretty` and `timing` are as asked for; `alone` is true where one plan was named.
    """

    version: str
    digest: str
    house: str
    trades: tuple[str, ...]
    rules: int
    changes: tuple[str, ...] = ()
    stop_at: Level = "correction"
    width: int = 100
    colour: bool = False
    pretty: bool = False
    timing: bool = False
    alone: bool = True

    @property
    def not_looked_at(self) -> tuple[str, ...]:
        """The trades that this rulebook has no rule for: nothing of them was judged."""
        return tuple(trade for trade in TRADES if trade not in self.trades)

    def rulebook_line(self) -> str:
        """`rulebook 0.1.0 (1f2e…), no house file`."""
        house = f"house file {self.house}" if self.house else "no house file"
        return f"rulebook {self.version} ({self.digest[:8]}), {house}"


def terms_of(
    rulebook: Rulebook,
    stop_at: Level = "correction",
    *,
    width: int = 100,
    colour: bool = False,
    pretty: bool = False,
    timing: bool = False,
    alone: bool = True,
) -> Terms:
    """The terms of a run with this rulebook."""
    return Terms(
        rulebook.version, rulebook.digest, rulebook.house, rulebook.trades(), len(rulebook.rules), rulebook.changes,
        stop_at, width, colour, pretty, timing, alone,
    )  # fmt: skip
