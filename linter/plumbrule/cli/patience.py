"""How often the interpreter looks for garbage: seldom, since a run makes much that lives to its end and few circles."""

from __future__ import annotations

import gc

# Objects made before the youngest are looked over, and how often the older ones are: about once in a few plans.
_RARELY = (100_000, 20, 100)


def collect_rarely() -> None:
    """For the processes of a run. What is no longer referred to is freed at once, as always; only circles wait."""
    gc.set_threshold(*_RARELY)
