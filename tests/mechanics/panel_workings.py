"""One call of every public calculation about pieces of panel, at several places of its range."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import panel_glue

PANEL_CALLS: dict[str, Callable[[], Any]] = {
    "weight": lambda: [panel_glue.weight(area, 9.525, 5.606e-7) for area in (1000.0, 65_000.0, 247_741.0)],
}
