"""The table files as data: read from YAML, or from the compiled twin when that is made from the very same bytes."""

from __future__ import annotations

from collections.abc import Mapping
from hashlib import sha256
from pathlib import Path
from typing import Any

from plumbrule.shipped import folder

NAMES = (
    "abrasives", "angles", "boards", "fasteners", "finishes", "framing", "holes", "lumber", "panels", "steels", "tasks",
)  # fmt: skip
COMPILED = "compiled.json"

TableData = Mapping[str, Any]


def table_folder() -> Path:
    """Where the tables lie. Raises FileNotFoundError when the installation is broken."""
    return folder("rules") / "tables"


def digests(where: Path) -> dict[str, str]:
    """The sha256 of every table file, by name. Raises FileNotFoundError when one is missing."""
    return {name: sha256((where / f"{name}.yaml").read_bytes()).hexdigest() for name in NAMES}


def read_compiled(where: Path) -> dict[str, TableData] | None:
    """The compiled tables, or None when there are none or they were made from other files than those beside them."""
    import json

    try:
        found = json.loads((where / COMPILED).read_text(encoding="utf-8"))
    except (FileNotFoundError, ValueError):
        return None
    if not isinstance(found, dict) or found.get("made_from") != digests(where):
        return None
    tables: dict[str, TableData] = found["tables"]
    return tables


def read_sources(where: Path) -> dict[str, TableData]:
    """The tables from their YAML. Raises Unreadable when a file cannot be read."""
    from plumbrule.reading.places import read

    tables: dict[str, TableData] = {}
    for name in NAMES:
        path = where / f"{name}.yaml"
        tables[name] = read(path.read_bytes(), path.name).value
    return tables


def compile_tables(where: Path | None = None) -> str:
    """The text of the compiled twin: the tables and the sha256 of the files they were made from. Same files, same
    bytes."""
    import json

    place = where or table_folder()
    content = {"made_from": digests(place), "tables": read_sources(place)}
    return json.dumps(content, ensure_ascii=False, sort_keys=True, separators=(",", ":")) + "\n"


def write_compiled(where: Path | None = None) -> Path:
    """Writes the compiled twin beside its sources, and says where."""
    place = where or table_folder()
    target = place / COMPILED
    target.write_text(compile_tables(place), encoding="utf-8")
    return target
