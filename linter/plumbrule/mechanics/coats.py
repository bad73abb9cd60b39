"""Finishes by kind: the last grit under them, and the clock from coat to coat, to handling and to a full cure; and the
depth of a poured fill."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Literal, NamedTuple

from plumbrule.mechanics.given import Given, not_negative, number, steps
from plumbrule.mechanics.grit import grain
from plumbrule.mechanics.tables import Tables
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked

Clock = Literal["recoat", "handle", "cure"]

_CLOCKS: dict[Clock, tuple[str, str]] = {
    "recoat": ("t_recoat", "least time from coat to coat"),
    "handle": ("t_handle", "least time from the last coat until it is handled"),
    "cure": ("t_cure", "time from the last coat until it bears a lasting load"),
}


class LastGrit(NamedTuple):
    """Which last grit suits a finish: median sizes in micrometres and the grits' names. `finest` is None where none
    is too fine."""

    coarsest: float
    coarsest_name: str
    finest: float | None


def is_film(tables: Tables, kind: str) -> bool:
    """Whether a finish stays on the wood as a film. Raises OutsideRulebook for a kind that has no row."""
    return bool(_row(tables, kind)["film"])


def clock(tables: Tables, kind: str, what: Clock) -> Worked:
    """A time of a finish, in h: `recoat`, `handle` or `cure`. Its source says when the figure was only remembered.

    The tin governs where it says something longer. Raises OutsideRulebook for a kind that has no row.
    """
    row = _row(tables, kind)
    symbol, words = _CLOCKS[what]
    hours = float(row[what])
    return Worked(
        symbol, f"{words}: {kind}", symbol, (Number(symbol, hours, "h"),), hours, "h", _source(tables, row, what),
        caution="The tin governs where it asks for longer.",
    )  # fmt: skip


def last_grit(tables: Tables, kind: str) -> LastGrit:
    """The last grit that suits a finish. Raises OutsideRulebook for a kind that has no row."""
    row = _row(tables, kind)
    finest = row.get("finest")
    return LastGrit(
        _grain(tables, row["coarsest"]), row["coarsest"], None if finest is None else _grain(tables, finest)
    )


def pour_depth(depth: Given, pours: int) -> Worked:
    """How deep each pour of a fill comes to be, mm, where a crack `depth` mm deep is filled in so many equal `pours`.

    Raises NotPossible for a negative depth or less than one pour.
    """
    deep = not_negative("the depth of the crack", depth)
    if pours < 1:
        raise NotPossible("a fill takes at least one pour")
    return Worked(
        "d_p", "depth of one pour", "d / n", (number("d", depth, "mm"), Number("n", float(pours), "")), deep / pours,
        "mm", "division", steps=steps(depth),
    )  # fmt: skip


def _row(tables: Tables, kind: str) -> Mapping[str, Any]:
    for row in tables.data["finishes"]["rows"]:
        if row["name"] == kind:
            found: Mapping[str, Any] = row
            return found
    raise OutsideRulebook(f"No times are known for {kind}: go by what its tin says.")


def _source(tables: Tables, row: Mapping[str, Any], column: str) -> str:
    if row["basis"] == "from memory" or column in row.get("from_memory", ()):
        return "typical, from memory"
    source = tables.data["finishes"]["sources"][row["source"]]
    return f"{source['title']}, {source['clause']}"


def _grain(tables: Tables, name: str) -> float:
    return grain(tables, int(name.removeprefix("P")), name.startswith("P"))
