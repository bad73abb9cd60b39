"""How often the interpreter looks for garbage: seldom, since a run makes much that lives to its end and few circles."""

from __future__ import annotations

import gc

# Objects left over before the youngest are looked at, and how often the older ones are: once in some fifty plans.
_RARELY = (500_000, 20, 100)


def collect_rarely() -> None:
    """For the processes of a run. What is no longer referred to is freed at once, as always; only circles wait."""
    gc.set_threshold(*_RARELY)
