"""The JSON Schemas of plan and house files: `python -m plumbrule.plan.publish` writes them, `--check` compares."""

from __future__ import annotations

import sys
from collections.abc import Sequence

from pydantic import BaseModel

from plumbrule import shipped
from plumbrule.plan.house import House
from plumbrule.plan.plan_file import PlanFile
from plumbrule.reading.schema import text

MODELS: dict[str, type[BaseModel]] = {"plan": PlanFile, "house": House}


def schemas() -> dict[str, str]:
    """File name to the text that belongs in it."""
    return {f"{name}.schema.json": text(model, name) for name, model in MODELS.items()}


def stale() -> list[str]:
    """The published files that differ from the models, or are not there."""
    folder = shipped.folder("schema")
    return [
        name
        for name, made in schemas().items()
        if not (folder / name).is_file() or (folder / name).read_text(encoding="utf-8") != made
    ]


def main(arguments: Sequence[str]) -> int:
    """Exit code 0: written, or fresh; 1: `--check` found a stale file."""
    if "--check" in arguments:
        for name in stale():
            print(f"schema/{name} is not what the models say. Run: python -m plumbrule.plan.publish", file=sys.stderr)
        return 1 if stale() else 0
    for name, made in schemas().items():
        (shipped.folder("schema") / name).write_text(made, encoding="utf-8", newline="\n")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
