"""Plans to measure with: many that differ a little, and one that holds its parts once, twice and four times."""

from __future__ import annotations

import copy
import json
import random
import re
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from plumbrule import shipped
from plumbrule.reading.places import read_file

SEED = 20260302
# What can move without the plan contradicting itself, by key and unit.
CHOICES = {
    ("found_within", "in"): ("1/16", "1/8", "3/16", "1/4"),
    ("found_within", "mm"): ("1", "2", "3", "5"),
    ("drilled_within", "in"): ("1/64", "1/32", "3/64", "1/16"),
    ("drilled_within", "mm"): ("0.5", "1", "1.5"),
    ("coldest", "°F"): ("58", "60", "62", "64", "66"),
    ("coldest", "°C"): ("14", "15", "16", "17", "18"),
    ("warmest", "°F"): ("76", "78", "80", "82", "84"),
    ("warmest", "°C"): ("24", "25", "26", "27", "28"),
    ("driest", "%"): ("25", "28", "30", "32", "35", "38"),
    ("dampest", "%"): ("45", "48", "50", "55", "58", "62"),
    ("moisture", "%"): ("7", "8", "9", "10"),
}
_VALUE = re.compile(r"\b([a-z_]+): ([0-9][0-9 /.-]*) ?(in|mm|°F|°C|%)(?=[,}\s])")
# How far below the one before a further shelf of the same kind hangs.
BELOW = {"in": 11, "mm": 300}


def base_plans() -> list[Path]:
    """The plans that are shipped as good ones."""
    return sorted(shipped.folder("plans").glob("*.yaml"))


def whole_jobs() -> list[Path]:
    """Those of them that hold a whole job: steel, board, panels, boxes, steps and purchases."""
    return [shipped.folder("plans") / f"{name}.yaml" for name in ("alcove-seat", "boathouse-niche")]


def varied(text: str, dice: random.Random) -> str:
    """The same plan with other tolerances, climates and moistures."""

    def other(found: re.Match[str]) -> str:
        key, _, unit = found.groups()
        choices = CHOICES.get((key, unit))
        return f"{key}: {dice.choice(choices)} {unit}" if choices else found[0]

    return _VALUE.sub(other, text)


def write_variants(folder: Path, count: int, plans: Sequence[Path]) -> list[Path]:
    """`count` plans in `folder`, variants of `plans` by turns. The same on every machine."""
    dice = random.Random(SEED)
    texts = [path.read_text(encoding="utf-8") for path in plans]
    made = []
    for number in range(count):
        path = folder / f"plan-{number:03}.yaml"
        path.write_text(varied(texts[number % len(texts)], dice), encoding="utf-8")
        made.append(path)
    return made


def with_parts(name: str, times: int) -> bytes:
    """The base plan `name` with each of its shelves, and what carries it, `times` times, one below the other."""
    plan: Any = read_file(shipped.folder("plans") / f"{name}.yaml").value
    more = copy.deepcopy(plan)
    for number in range(1, times):
        for kind in ("angles", "brackets", "cleats"):
            for part, entry in plan.get(kind, {}).items():
                more[kind][f"{part}-{number}"] = {**entry, "bears_at": lower(entry["bears_at"], number)}
        for part, entry in plan.get("boards", {}).items():
            bears_on = [f"{support}-{number}" for support in entry["bears_on"]]
            more["boards"][f"{part}-{number}"] = {**entry, "bears_on": bears_on}
    return json.dumps(more, ensure_ascii=False).encode()


def lower(height: str, number: int) -> str:
    """A height in whole inches and a fraction, or in millimetres, `number` shelves further down."""
    whole, rest = re.fullmatch(r"([0-9]+)(.*)", height).groups()  # type: ignore[union-attr]
    return f"{int(whole) - number * BELOW[rest.split()[-1]]}{rest}"
