"""Which files of a folder are rules."""

from __future__ import annotations

from pathlib import Path

BIBLIOGRAPHY = "sources.yaml"
TABLES = "tables"


def rule_files(folder: Path) -> list[Path]:
    """Every rule file below a rule folder, in one order. Tables, the bibliography, links and dot files are left out."""
    found = []
    for path in folder.rglob("*.yaml"):
        inner = path.relative_to(folder).parts
        if (
            path.name == BIBLIOGRAPHY
            or inner[0] == TABLES
            or path.is_symlink()
            or any(part[0] == "." for part in inner)
        ):
            continue
        found.append(path)
    return sorted(found)
