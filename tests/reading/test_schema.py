"""The published schema and the models say the same of a file; the schema is stable and valid."""

from __future__ import annotations

import json
from typing import Annotated, ClassVar, Literal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jsonschema import Draft202012Validator
from pydantic import Field

from plumbrule.reading.fault import Unreadable
from plumbrule.reading.model import Listed, Written
from plumbrule.reading.places import Document, read
from plumbrule.reading.quantities import (
    Date,
    Force,
    Grit,
    Length,
    LineOrAreaLoad,
    Name,
    ScrewSize,
    SignedLength,
    Size,
    Time,
)
from plumbrule.reading.schema import schema, text
from plumbrule.reading.take import take


class Measured(Written):
    """A size that was measured."""

    width: Size
    """the narrow side"""
    depth: Length


class Shelf(Written):
    """A shelf."""

    HINTS: ClassVar[dict[str, str]] = {}

    plan: Literal[1]
    title: Annotated[str, Field(min_length=1, max_length=20)]
    """one line for the job sheet"""
    stud: Literal["2x4", "2x6"] | Measured | None = None
    back: SignedLength | None = None
    parts: dict[Name, Measured] | None = None
    screw: ScrewSize | None = None
    grits: Listed[Grit] = ()
    load: LineOrAreaLoad | None = None
    point: Force | None = None
    measured: Date | None = None
    wait: Time = 0.0
    ease: Literal["sharp", "round"] = "sharp"
    count: Annotated[int, Field(ge=1, le=6)] | None = None
    braced: bool = False
    from_: Length | None = Field(None, alias="from")


SCHEMA = schema(Shelf, "shelf")
VALIDATOR = Draft202012Validator(SCHEMA)


def test_it_is_valid_against_its_metaschema_and_the_same_each_time() -> None:
    Draft202012Validator.check_schema(SCHEMA)
    assert SCHEMA["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert text(Shelf, "shelf") == text(Shelf, "shelf")
    assert json.loads(text(Shelf, "shelf")) == SCHEMA
    assert list(SCHEMA["properties"]) == [field.alias or name for name, field in Shelf.model_fields.items()]


def test_every_notation_has_one_name_and_keys_keep_their_meaning() -> None:
    flat = json.dumps(SCHEMA)
    for name in ("length", "size", "signed-length", "screw-size", "grit", "date", "name", "line-or-area-load"):
        assert name in SCHEMA["$defs"]
    assert flat.count(json.dumps("[½¼¾⅛⅜⅝⅞]")[1:-1]) < 60, "a pattern is written once, not once a key"
    assert SCHEMA["properties"]["from"] == {"$ref": "#/$defs/length"}
    assert SCHEMA["properties"]["title"]["description"] == "one line for the job sheet"
    assert SCHEMA["$defs"]["Measured"]["properties"]["width"] == {
        "description": "the narrow side",
        "$ref": "#/$defs/size",
    }
    assert SCHEMA["$defs"]["Measured"]["additionalProperties"] is False
    assert SCHEMA["properties"]["parts"]["propertyNames"] == {"$ref": "#/$defs/name"}
    assert SCHEMA["properties"]["ease"]["default"] == "sharp"
    assert "default" not in SCHEMA["properties"]["wait"], "0.0 hours is not how a time is written"
    assert "x-plumbrule" not in flat


def agrees(value: object) -> bool:
    """Whether both accept the value; fails if they differ."""
    try:
        take(Shelf, Document("p", b"", "", value, read(b"a: 1\n", "p").spots))
        taken, why = True, ""
    except Unreadable as refused:
        taken, why = False, str(refused)
    errors = [error.message for error in VALIDATOR.iter_errors(value)]
    assert taken is (not errors), (value, why, errors)
    return taken


LENGTHS = st.sampled_from(["3 in", "5'-3 1/2\"", "97½ in", "measure on site", "40.5 cm", "0 in"])
GOOD = st.fixed_dictionaries(
    {"plan": st.just(1), "title": st.sampled_from(["Shelf", "A"])},
    optional={
        "stud": st.sampled_from(["2x4", "2x6", {"width": "3 in", "depth": "0 in"}]),
        "back": st.sampled_from(["-1/8 in", "3 mm"]),
        "parts": st.dictionaries(
            st.sampled_from(["a", "seat-1", "B2"]),
            st.fixed_dictionaries({"width": st.just("1/2 in"), "depth": LENGTHS}),
            max_size=2,
        ),
        "screw": st.sampled_from(["No. 10", "#8", "No. 4"]),
        "grits": st.lists(st.sampled_from([80, 120, "P150"]), max_size=3),
        "load": st.sampled_from(["20 lbf/ft", "5 kPa", "100 lbf/ft²"]),
        "point": st.sampled_from(["250 lbf", "1.1 kN"]),
        "measured": st.just("2026-03-02"),
        "wait": st.sampled_from(["40 min", "14 days"]),
        "ease": st.sampled_from(["sharp", "round"]),
        "count": st.integers(1, 6),
        "braced": st.booleans(),
        "from": LENGTHS,
    },
)  # fmt: skip
# (No line end after a value: Python's `$` lets it through, ECMA-262's does not; test_quantities holds the patterns to
# the latter.)
BROKEN = st.sampled_from(
    [None, True, False, 0, 7, -1, 48, 1.5, "", "48", "x", "-3 in", "3 in", " 3 in", "0 in", "No. 3", "P9", 5,
     "250 lb", "2x5", "2026-13-01", "seat 1", [], ["a"], {}, {"width": "3 in"}, {"zzz": 1}, [None], "measure on site",
     {"a b": {"width": "3 in", "depth": "3 in"}}, "x" * 21, 5001, "sharp", 10, 12]
)  # fmt: skip


@settings(max_examples=200, deadline=None)
@given(GOOD)
def test_good_files_are_good_to_both(value: dict[str, object]) -> None:
    assert agrees(value)


@settings(max_examples=800, deadline=None)
@given(
    GOOD, st.sampled_from([*SCHEMA["properties"], "titel", "parts/a", "stud/width", "grits/0"]), BROKEN, st.booleans()
)
def test_broken_files_are_broken_to_both(value: dict[str, object], at: str, put: object, drop: bool) -> None:
    value = json.loads(json.dumps(value))
    key, _, inner = at.partition("/")
    inside = value.get(key)
    if inner and isinstance(inside, dict):
        inside[inner] = put
    elif inner and isinstance(inside, list) and inside:
        inside[0] = put
    elif drop:
        value.pop(key, None)
    else:
        value[key] = put
    # An explicit nothing is refused by `take` through the document's list of empty values, which is not made here.
    if "null" not in json.dumps(value):
        agrees(value)


def test_nothing_is_refused_by_both() -> None:
    with pytest.raises(Unreadable, match="`back` is empty"):
        take(Shelf, read(b"plan: 1\ntitle: a\nback:\n", "p"))
    assert list(VALIDATOR.iter_errors({"plan": 1, "title": "a", "back": None}))
