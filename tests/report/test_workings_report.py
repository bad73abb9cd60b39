"""The workings: every field says what it is, what it means, and where it came from."""

from __future__ import annotations

import json
from typing import Any

import hand_made as made
import pytest
from jsonschema import Draft202012Validator
from pytest_regressions.file_regression import FileRegressionFixture

from plumbrule import shipped
from plumbrule.catalogue.fact import RowType, number, word
from plumbrule.report import workings
from plumbrule.report.workings import UnknownKind, defaults, kinds_asked, origin, text
from plumbrule.report.workings_data import data

HOLE = made.row(
    values={"diameter": 7.9375, "end_distance": 8.73125, "leg": "wall", "countersunk": False, "sink_angle": 82.0},
    worked={"end_distance": made.END},
    inputs={
        "diameter": ("/holes/wall/diameter",),
        "end_distance": ("/angles/kiln-side/wall_holes/from_left/0", "/angles/kiln-side/drilled_within"),
    },
    missing={"steel": ("/angles/kiln-side/section",)},
    outside={"bearing_strength": "No published bearing value covers this steel."},
    failed={"land": "the cone is deeper than the steel"},
    assumed={"/angles/kiln-side/drilled_within": "1/32 in, as for a hand-held drill"},
)
TEMPERATURE = (number("warmest", "°C", "warmest it gets"),)
SITE = made.row(
    "the site",
    kind="site",
    values={"use": "workshop", "people": ("adults",), "warmest": 30.0},
    pointer="/site",
    part="/site",
)


def run(system: str = "inch") -> Any:
    return made.run(made.inspection(), rows={"hole": (HOLE,), "site": (SITE,)}, system=system).examined


@pytest.fixture
def small_catalogue(monkeypatch: pytest.MonkeyPatch) -> None:
    """Two kinds of row in words of this test, so that its pages stand still when the catalogue's words are bettered."""
    types = {
        "site": RowType("site", "The room.", (word("use", ("workshop",), "what it is used for"), *TEMPERATURE)),
        "hole": RowType("hole", "One hole.", tuple(
            number(name, unit, f"the {name.replace('_', ' ')} of the hole")
            for name, unit in (
                ("diameter", "mm"), ("end_distance", "mm"), ("sink_angle", "°"), ("steel", "mm"),
                ("bearing_strength", "N"), ("land", "mm"),
            )
        )),
    }  # fmt: skip
    monkeypatch.setattr(workings, "CATALOGUE", types)


@pytest.mark.usefixtures("small_catalogue")
@pytest.mark.parametrize("system", ["inch", "metric"])
def test_layout(system: str, file_regression: FileRegressionFixture) -> None:
    file_regression.check(text(run(system), ("site", "hole")), encoding="utf-8")


def test_defaults(file_regression: FileRegressionFixture) -> None:
    file_regression.check(defaults(run(), ("site", "hole")), encoding="utf-8")


@pytest.mark.parametrize("width", [60, 100])
def test_width(width: int) -> None:
    for page in (text(run(), ("site", "hole"), width), defaults(run(), ("hole",), width)):
        assert max(len(line) for line in page.splitlines()) <= width


def test_json_is_what_its_schema_says() -> None:
    schema = json.loads((shipped.folder("schema") / "workings.schema.json").read_text(encoding="utf-8"))
    value = json.loads(data(run(), ("site", "hole")))
    Draft202012Validator(schema).validate(value)
    (hole,) = value["rows"]["hole"]
    assert hole["fields"]["end_distance"] == 8.73125
    assert value["units"]["hole"]["end_distance"] == "mm"
    assert hole["worked"]["end_distance"][0]["formula"] == "x - d"
    assert hole["missing"] == {"steel": ["/angles/kiln-side/section"]}
    assert json.loads(data(run(), ("site", "hole"), pretty=True)) == value


def test_json_of_what_was_assumed() -> None:
    value = json.loads(data(run(), ("site", "hole"), only_assumed=True))
    assert value["rows"]["site"] == []
    assert list(value["rows"]["hole"][0]["fields"]) == ["end_distance"]


def test_kinds_singular_and_plural_in_one_order() -> None:
    assert kinds_asked(["Holes", "site", "hole"]) == ("site", "hole")
    assert "screw" in kinds_asked([])


def test_an_unknown_kind_gets_its_nearest_spelling() -> None:
    with pytest.raises(UnknownKind, match=r"There is no kind of row called scrwe\. Did you mean screw\?"):
        kinds_asked(["scrwe"])
    with pytest.raises(UnknownKind, match="Known are: site, wall"):
        kinds_asked(["xyzzy"])


def test_what_is_measured_is_told_from_what_follows() -> None:
    """The plan writes 5/16 in for the drill; the play of the screw only follows from it."""
    hole = made.row(
        values={"diameter": 7.9375, "play": 1.5875, "leg": "wall", "slotted": False},
        inputs={
            "diameter": ("/holes/wall/diameter",), "play": ("/holes/wall/diameter",),
            "leg": ("/angles/kiln-side/wall_holes/pattern",), "slotted": ("/holes/wall/screw",),
        },
    )  # fmt: skip
    document = made.document()
    assert origin(hole, "diameter", document).startswith(
        "measured as 5/16 in at /holes/wall/diameter (drying-shelf.yaml:"
    )
    assert origin(hole, "play", document) == "follows from /holes/wall/diameter"
    assert origin(hole, "leg", document).startswith("written at /angles/kiln-side/wall_holes/pattern")
    assert origin(hole, "slotted", document) == "follows from /holes/wall/screw"
