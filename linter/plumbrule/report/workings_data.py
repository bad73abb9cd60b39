"""The workings as JSON, as schema/workings.schema.json publishes them: fields in SI under the names that rules use."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from plumbrule import __version__
from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.report.clean import clean
from plumbrule.report.data import dumps, indented, worked_entry
from plumbrule.report.places import where

if TYPE_CHECKING:
    from plumbrule.inspection.examine import Examined
    from plumbrule.reading.places import Document

Entry = dict[str, Any]


def data(examined: Examined, kinds: Sequence[str], *, only_assumed: bool = False, pretty: bool = False) -> str:
    """Rows of these kinds as JSON text; with `only_assumed`, only rows that rest on a worse case, and only the fields
    that do."""
    rows = {
        kind: [
            row_entry(row, examined.document, only_assumed)
            for row in examined.rows.get(kind, ())
            if row.assumed or not only_assumed
        ]
        for kind in kinds
    }
    units = {kind: {fact.name: fact.unit for fact in CATALOGUE[kind].facts} for kind in kinds}
    text = dumps(
        {
            "plumbrule": __version__,
            "path": clean(examined.path),
            "system": examined.system,
            "units": units,
            "rows": rows,
        }
    )
    return (indented(text) if pretty else text) + "\n"


def row_entry(row: Row, document: Document, only_assumed: bool = False) -> Entry:
    """One row. `fields` are the values; a field that is not there stands in `missing`, `outside` or `failed`, or does
    not belong to this row."""
    place = where(document, row.pointer)

    def wanted(name: str) -> bool:
        return not only_assumed or any(pointer in row.assumed for pointer in row.inputs.get(name, ()))

    return {
        "pointer": clean(row.pointer), "part": clean(row.part), "label": clean(row.label),
        "line": place.line, "column": place.column,
        "fields": {
            name: list(value) if isinstance(value, tuple) else value
            for name, value in row.values.items()
            if wanted(name)
        },
        "worked": {
            name: [worked_entry(step) for step in worked.lines()]
            for name, worked in row.worked.items()
            if wanted(name)
        },
        "inputs": {name: [clean(p) for p in pointers] for name, pointers in row.inputs.items() if wanted(name)},
        "missing": {name: [clean(p) for p in pointers] for name, pointers in row.missing.items() if wanted(name)},
        "outside": {name: clean(reason) for name, reason in row.outside.items() if wanted(name)},
        "failed": {name: clean(reason) for name, reason in row.failed.items() if wanted(name)},
        "assumed": {clean(pointer): clean(says) for pointer, says in row.assumed.items()},
    }  # fmt: skip
