"""The published schemas are those of the models, are schemas, and say the same as the models on thousands of plans."""

from __future__ import annotations

import json
import random
from collections import Counter
from collections.abc import Iterator
from functools import cache, partial
from typing import Any

import pytest
from jsonschema import Draft202012Validator
from plan_variants import PLANS, document_of, edited

from plumbrule import shipped
from plumbrule.plan import words
from plumbrule.plan.plan_file import PlanFile
from plumbrule.reading.fault import Unreadable
from plumbrule.reading.places import read
from plumbrule.reading.pointer import split
from plumbrule.reading.take import take
from plumbrule.rulebook.publish import schemas

CASES_A_PLAN = 4000

# What the models refuse and a pattern cannot: a value beyond belief, a fraction or a date that does not exist.
BEYOND_A_SCHEMA = (
    "that is a slip", "is not less than one", "are a foot or more", "There is no day", "is not a quantity with a unit",
)  # fmt: skip

VALUES: tuple[Any, ...] = (
    None, True, False, 0, 1, 3, -1, 2.5, 1e9, "", "zz", "none", "3 in", "2026-03-02", [], {}, ["zz"], [[]], [3],
    {"zz": 1}, {"width": "3 in"}, {"width": "3 in", "depth": "4 in"}, {"left": "1 in", "right": "1 in"},
)  # fmt: skip

# Good and bad notation side by side; the length of a line is limited elsewhere.
NOTATION: tuple[str, ...] = (
    "48", "48 in", "48in", "48  in", " 48 in", "48 in ", "1/2", "1/2 in", "0/2 in", "1/0 in", "97-1/2 in", "97 1/2 in",
    "97 -1/2 in", "97½ in", "½ in", "½", "4 ft 2 in", "4ft2in", "4' 2\"", "5'-3 1/2\"", "4 ft 13 in", "16\"", "16″",
    "405 mm", "40.5 cm", "1.2 m", "12,5 mm", "1e3 mm", "-1/8 in", "-3 mm", "+3 mm", "0 in", "0 mm", "0.0 mm",
    "2-5/4 in",     "measure on site",
    "Measure on site", "6 ft2", "1 qt", "10.1 fl oz", "1 oz", "1 lb", "2 kg", "250 lbf", "250 lb",
    "1.1 kN", "20 lbf/ft", "100 lbf/ft2", "5 kPa", "35 lb/ft3", "68 °F", "68 F", "20 °C", "-5 °C", "30 %", "30%",
    "300 %", "0.3", "82°", "82 deg", "82", "400°", "40 min",
    "1 h", "1 day", "14 days", "4 years", "900 years", "2", "No. 10",
    "#10", "No 10", "No. 3", "No. 30", "P150", "P9", "150 grit", "1.2e-4 per °C", "3e-5 per F", "1.2 per m", "٣ in",
    "99999999 in", "900000 m", "2026-02-30", "2026-13-02", "20260302", "in", "ten in",
)  # fmt: skip

WORDS: tuple[str, ...] = tuple(
    dict.fromkeys(word for name, listed in sorted(vars(words).items()) if name.isupper() for word in map(str, listed))
)


@cache
def validator(name: str) -> Draft202012Validator:
    return Draft202012Validator(json.loads((shipped.folder("schema") / f"{name}.schema.json").read_text("utf-8")))


def model_says(value: Any) -> str:
    """Nothing if the model takes the plan, else what it says."""
    try:
        take(PlanFile, read(json.dumps(value, ensure_ascii=False).encode(), "plan.yaml"))
    except Unreadable as error:
        return "\n".join(fault.found for fault in error.faults)
    return ""


def small_plans(name: str) -> list[dict[str, Any]]:
    """One plan for each part of a plan, so that a schema validator need not work through the others each time."""
    whole = document_of(name).value
    head = {"plan": 1, "title": whole["title"]}
    found: list[dict[str, Any]] = []
    for section, parts in whole.items():
        if section in head:
            continue
        if isinstance(parts, dict) and section not in ("record", "site"):
            found += [{**head, section: {part: inner}} for part, inner in parts.items()]
        else:
            found.append({**head, section: parts})
    return found


def put(value: Any, container: Any, key: Any) -> None:
    container[key] = value


def places(value: Any, pointer: str = "") -> Iterator[str]:
    """Every place of a value but the root."""
    items = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, inner in items:
        yield f"{pointer}/{key}"
        yield from places(inner, f"{pointer}/{key}")


WAYS = ("drop", "rename", "retype", "notation", "notation", "word", "misspell", "add", "twice")


class Breaker:
    """Changes one place of a plan, as a hurried hand would."""

    def __init__(self, seed: int) -> None:
        self.random = random.Random(seed)

    def change(self, plan: dict[str, Any]) -> tuple[str, Any]:
        """What was done, and the plan afterwards."""
        pointer = self.random.choice([*places(plan)])
        how = self.random.choice(
            ("drop", "rename", "retype", "notation", "notation", "word", "misspell", "add", "twice")
        )
        return f"{how} {pointer}", edited(plan, split(pointer), getattr(self, how))

    def drop(self, container: Any, key: Any) -> None:
        del container[key]

    def rename(self, container: Any, key: Any) -> None:
        if isinstance(container, dict):
            new = self.random.choice((f"{key}s", f"{key}-2", f"the {key}", key.upper(), "on", "left", "width"))
            container[new] = container.pop(key)

    def retype(self, container: Any, key: Any) -> None:
        container[key] = self.random.choice(VALUES)

    def notation(self, container: Any, key: Any) -> None:
        container[key] = self.random.choice(NOTATION)

    def word(self, container: Any, key: Any) -> None:
        container[key] = self.random.choice(WORDS)

    def misspell(self, container: Any, key: Any) -> None:
        text = container[key]
        if isinstance(text, str) and len(text) > 1:
            at = self.random.randrange(len(text) - 1)
            container[key] = text[:at] + text[at + 1] + text[at] + text[at + 2 :]

    def add(self, container: Any, key: Any) -> None:
        if isinstance(container, dict):
            container[self.random.choice(("zz", "note", "at", "from", "length"))] = self.random.choice(
                ("3 in", 3, "zz")
            )
        else:
            container.append(self.random.choice(VALUES))

    def twice(self, container: Any, key: Any) -> None:
        container[key] = [container[key], container[key]]


@pytest.mark.parametrize("name", PLANS)
def test_models_and_schema_agree_on_every_plan(name: str) -> None:
    plan = document_of(name).value
    assert model_says(plan) == ""
    assert [error.message for error in validator("plan").iter_errors(plan)] == []


@pytest.mark.parametrize("name", PLANS)
def test_models_and_schema_agree_on_broken_plans(name: str) -> None:
    breaker, parts, count = Breaker(PLANS.index(name)), small_plans(name), Counter[str]()
    for _ in range(CASES_A_PLAN):
        what, broken = breaker.change(breaker.random.choice(parts))
        says, valid = model_says(broken), validator("plan").is_valid(broken)
        count["refused" if says else "taken"] += 1
        if not says:
            assert valid, (what, broken, [error.message for error in validator("plan").iter_errors(broken)])
        elif valid:
            count["beyond"] += 1
            unexplained = [line for line in says.split("\n") if not any(reason in line for reason in BEYOND_A_SCHEMA)]
            assert not unexplained, (what, broken, unexplained)
    assert count["refused"] > CASES_A_PLAN / 3 and count["taken"] > CASES_A_PLAN / 20, count


@pytest.mark.parametrize("notation", NOTATION)
def test_models_and_schema_agree_on_notation(notation: str) -> None:
    """Each kind of quantity once, so that no notation is met by chance only."""
    whole = document_of("storeroom-brackets").value
    for pointer in (
        "/walls/long/width", "/walls/long/floor_drop/left", "/walls/long/boxes/lamp-switch/set_back",
        "/boards/shelf/load/point", "/boards/shelf/load/uniform", "/boards/shelf/moisture", "/boards/shelf/sanding/0",
        "/screws/short-screw/size", "/screws/short-screw/head/angle", "/panels/boards/panel/density",
        "/panels/boards/panel/expansion", "/site/temperature/coldest", "/steps/find/takes", "/record/measured",
        "/purchase/finishes/shelf/volume", "/purchase/cleaners/mild detergent/mass", "/departures/thin-edge/margin",
    ):  # fmt: skip
        section, part, *_ = split(pointer)
        inner = whole[section]
        alone = inner if section in ("record", "site") else {part: inner[part]}
        plan = edited({"plan": 1, "title": "x", section: alone}, split(pointer), partial(put, notation))
        says, valid = model_says(plan), validator("plan").is_valid(plan)
        assert valid or says, (pointer, notation, says)
        if valid and says:
            assert any(reason in says for reason in BEYOND_A_SCHEMA), (pointer, notation, says)


@pytest.mark.parametrize("name", ["plan", "house", "rule", "sources"])
def test_schemas_are_schemas(name: str) -> None:
    made = json.loads(schemas()[f"{name}.schema.json"])
    Draft202012Validator.check_schema(made)
    assert made["$schema"] == "https://json-schema.org/draft/2020-12/schema"


@pytest.mark.parametrize("name", ["plan", "house", "rule", "sources"])
def test_every_key_says_what_it_means(name: str) -> None:
    """Schema and editor show the sentence; a key without one helps nobody."""
    made = json.loads(schemas()[f"{name}.schema.json"])
    groups = {"": made, **made["$defs"]}
    silent = [
        f"{group}.{key}"
        for group, inner in groups.items()
        for key, about in inner.get("properties", {}).items()
        if not about.get("description")
    ]
    assert silent == []
