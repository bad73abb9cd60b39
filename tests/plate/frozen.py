"""The frozen figures of plate solutions: one row a case, written by the script that solves them, read by the tests."""

from __future__ import annotations

import csv
from collections.abc import Sequence
from pathlib import Path


def read_rows(path: Path) -> list[dict[str, str]]:
    """The rows as text, by the name of the column."""
    with path.open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def write_rows(path: Path, found: Sequence[dict[str, str]]) -> None:
    """Writes rows that all have the columns of the first."""
    with path.open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, fieldnames=list(found[0]), lineterminator="\n")
        writer.writeheader()
        writer.writerows(found)


def figures(solved: dict[str, float]) -> dict[str, str]:
    """Figures to five digits: more would freeze the rounding of one machine."""
    return {name: f"{value:.5g}" for name, value in solved.items()}
