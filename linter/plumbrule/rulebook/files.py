"""Which files of a folder are rules."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

BIBLIOGRAPHY = "sources.yaml"
TABLES = "tables"


def rule_files(folder: Path) -> list[Path]:
    """Every rule file below a rule folder, in one order. Tables, the bibliography, links and dot files are left out."""
    return [folder / name for name in rule_names(folder)]


def rule_names(folder: Path) -> list[str]:
    """The same as paths within the folder, with slashes. Plain text, since every inspection asks for all of them."""
    return sorted(_below(str(folder), ""), key=lambda name: name.split("/"))


def _below(place: str, within: str) -> Iterator[str]:
    with os.scandir(place) as entries:
        for entry in entries:
            name = entry.name
            if name[0] == "." or entry.is_symlink():
                continue
            if entry.is_dir():
                if within or name != TABLES:
                    yield from _below(entry.path, f"{within}{name}/")
            elif name.endswith(".yaml") and name != BIBLIOGRAPHY:
                yield within + name
