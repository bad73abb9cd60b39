"""Every mistake in a file becomes one fault, at the right line and column, in words for the trade."""

from __future__ import annotations

import re
from typing import Annotated, ClassVar, Literal

import pytest
from pydantic import Discriminator, Field, Tag, model_validator

from plumbrule.reading.fault import Unreadable
from plumbrule.reading.model import Listed, WordHints, Written, mistake
from plumbrule.reading.patch import patched
from plumbrule.reading.places import read
from plumbrule.reading.quantities import Date, Grit, Length, LineOrAreaLoad, Name, ScrewSize
from plumbrule.reading.take import take

Species = Literal[
    "red oak", "white oak", "hard maple", "soft maple", "white ash", "black walnut", "teak", "beech", "red pine",
    "sugar pine", "white fir", "redwood", "basswood",
]  # fmt: skip
Task = Literal["sand board", "abrade wall", "wash wall"]


class Lumber(Written):
    width: Length
    depth: Length


class Box(Written):
    HINTS: ClassVar[dict[str, str]] = {"left": "Boxes are measured to the centre: write centre."}

    centre: Length
    up: Length | None = None
    holds: Literal["switch", "receptacle"] | None = None


class Screw(Written):
    size: ScrewSize | None = None
    diameter: Length | None = None
    length: Length

    @model_validator(mode="after")
    def _one_way(self) -> Screw:
        if self.size is not None and self.diameter is not None:
            raise mistake("size and diameter are both given.", "Give No. or diameter.", at="/diameter")
        return self


class Layer(Written):
    material: Literal["gypsum board", "plywood"]
    thickness: Length


class Wall(Written):
    width: Length | None = None
    stud: Literal["2x4", "2x6"] | Lumber | None = None
    block: (
        Annotated[
            Annotated[Literal["4x4", "4x6"], Tag("word")] | Annotated[Lumber, Tag("mapping")],
            Discriminator(lambda value: "mapping" if isinstance(value, dict) else "word"),
        ]
        | None
    ) = None
    lining: Listed[Layer] = ()
    boxes: dict[Name, Box] | None = None
    to: Length | Literal["ceiling"] | None = None


class Plan(Written):
    plan: Literal[1]
    title: Annotated[str, Field(min_length=1, max_length=40)]
    walls: dict[Name, Wall] | None = None
    screws: dict[Name, Screw] | None = None
    species: Annotated[Species, WordHints({"oak": "red oak or white oak?"})] | None = None
    task: Task | None = None
    grits: Listed[Grit] | None = None
    load: LineOrAreaLoad | None = None
    measured: Date | None = None
    count: Annotated[int, Field(ge=1, le=6)] | None = None
    factor: float | None = None
    braced: bool = False
    from_: Length | None = Field(None, alias="from")


def said(text: str) -> list[str]:
    with pytest.raises(Unreadable) as refused:
        take(Plan, read(text.encode(), "p.yaml"))
    return [str(fault) for fault in refused.value.faults]


def said_of(line: str) -> list[str]:
    """The faults of one line below a good head of two."""
    return [each.removeprefix("p.yaml:") for each in said(f"plan: 1\ntitle: Pottery shelf\n{line}\n")]


def test_a_good_plan_is_taken() -> None:
    text = """\
plan: 1
title: Pottery shelf
walls:
  back: {width: 5 ft, stud: {width: 1-1/2 in, depth: measure on site}, block: 4x6, to: ceiling,
         lining: [{material: plywood, thickness: 1/2 in}], boxes: {lamp: {centre: 3 in}}}
screws: {lag: {diameter: 5/16 in, length: 3 in}}
species: white ash
grits: [80, P120]
load: 100 lbf/ft2
measured: "2026-03-02"
from: 2 in
factor: 2
"""
    plan = take(Plan, read(text.encode(), "p.yaml"))
    assert plan.walls is not None
    assert isinstance(plan.walls["back"].stud, Lumber)
    assert plan.walls["back"].stud.depth is None
    assert (plan.from_, plan.factor, plan.braced) == (50.8, 2.0, False)


@pytest.mark.parametrize(
    ("line", "faults"),
    [
        # a name: at the key
        ("walls: {back: {lining: [{material: plywood, thicknes: 1/2 in}]}}",
         ["3:45  /walls/back/lining/0/thicknes: `thicknes` is not a key of /walls/back/lining/0. "
          "Did you mean `thickness`?"]),
        ("walls: {back: {boxes: {lamp: {left: 3 in}}}}",
         ["3:31  /walls/back/boxes/lamp/left: `left` is not a key of /walls/back/boxes/lamp. "
          "Boxes are measured to the centre: write centre."]),
        ("colour: red",
         ["3:1  /colour: `colour` is not a key of this file. Delete it, or look the key up in the list of keys."]),
        ("walls: {back: {boxes: {lamp: {centre: 3 in, zzz: 1}}}}",
         ["3:45  /walls/back/boxes/lamp/zzz: `zzz` is not a key of /walls/back/boxes/lamp. "
          "Its keys are centre, up, holds."]),
        ("walls: {the back: {}}", ["3:9  /walls/the back: Names have no spaces. Write the-back."]),
        ("walls: {back: {block: ''}}",
         ["3:23  /walls/back/block: Empty text is no word for `block`. Write 4x4, 4x6 or {width: …, depth: …}."]),
        ("walls: {back: {lining: [{material: plywood, thickness 1/2 in}]}}",
         ["3:45  /walls/back/lining/0/thickness 1~12 in: `thickness 1/2 in` is not a key of /walls/back/lining/0. "
          "Put a colon after the key: thickness: 1/2 in."]),
        ("colour:",
         ["3:1  /colour: `colour` is not a key of this file. Delete it, or look the key up in the list of keys."]),
        ("form: 3 in", ["3:1  /form: `form` is not a key of this file. Did you mean `from`?"]),
        # a value: at the value
        ("from: 48", ["3:7  /from: 48 has no unit. Write 48 in or 48 mm."]),
        ("species: oak", ["3:10  /species: `oak` is not enough to go by. red oak or white oak?"]),
        ("species: red oka", ["3:10  /species: `red oka` is not a species. Did you mean red oak?"]),
        ("species: xyz",
         ["3:10  /species: `xyz` is not a species. It is none of the 13 words that are known here, "
          "such as red oak, white oak, hard maple, soft maple, white ash."]),
        ("task: sand wall",
         ["3:7  /task: `sand wall` is not a task. Did you mean abrade wall? "
          "Write sand board, abrade wall or wash wall."]),
        ("grits: [80, 150 grit]",
         ["3:13  /grits/1: 150 grit is not a grit as it is written here. Write 150 or P150."]),
        ("load: 100 lb/ft2", ["3:7  /load: A load is a force. Write 100 lbf/ft2."]),
        ("measured: 2026-03-02",
         ['3:11  /measured: 2026-03-02 stands without quotes. Put the date in quotes: "2026-03-02".']),
        ("count: 7", ["3:8  /count: `7` is too large. Write 6 or less."]),
        ("count: 2.5", ["3:8  /count: `2.5` is not a whole number. Write a whole number like 2."]),
        ("count: 3 screws",
         ["3:8  /count: `3 screws` is not a whole number. Write a whole number without a unit or quotes, like 3."]),
        ("count: true", ["3:8  /count: `true` is not a whole number. Write a whole number."]),
        ("factor: true", ["3:9  /factor: `true` is not a number. Write a number."]),
        ("braced: yes", ["3:9  /braced: `yes` is not true or false. Write true."]),
        ("braced: 0", ["3:9  /braced: `0` is not true or false. Write false."]),
        # something missing: at what it is missing from
        ("walls: {back: {boxes: {lamp: {}}}}",
         ["3:24  /walls/back/boxes/lamp: `centre` is missing. Write centre: 3/4 in or 4 ft 2 in."]),
        ("walls: {back: {lining: [{thickness: 1/2 in}]}}",
         ["3:25  /walls/back/lining/0: `material` is missing. Write material: one of gypsum board, plywood."]),
        # a wrong container
        ("grits: 80", ["3:8  /grits: `80` stands here. A list is needed here, one item a line or [a, b]."]),
        ("walls: [back]",
         ["3:8  /walls: A list stands here. Keys are needed here, one `key: value` a line or {key: value}; "
          "{} says that there are none."]),
        ("walls: {back: 5 ft}",
         ["3:15  /walls/back: `5 ft` stands here. Keys are needed here, one `key: value` a line or {key: value}: "
          "{width: …, stud: …, block: …}."]),
        ("species: [red oak]",
         ["3:10  /species: A list stands where a word is needed. "
          "Write a word, such as red oak, white oak, hard maple, soft maple, white ash."]),
        # several ways to write it: one fault
        ("walls: {back: {stud: 2x5}}",
         ["3:22  /walls/back/stud: `2x5` is not a stud. Did you mean 2x6? Write 2x4, 2x6 or {width: …, depth: …}."]),
        ("walls: {back: {stud: {width: 2 in, dept: 3 in}}}",
         ["3:36  /walls/back/stud/dept: `dept` is not a key of /walls/back/stud. Did you mean `depth`?"]),
        ("walls: {back: {stud: [2, 4]}}",
         ["3:22  /walls/back/stud: A list does not fit here. Write 2x4, 2x6 or {width: …, depth: …}."]),
        ("walls: {back: {block: {width: 48, depth: 3 in}}}",
         ["3:31  /walls/back/block/width: 48 has no unit. Write 48 in or 48 mm."]),
        ("walls: {back: {block: 4x5}}",
         ["3:23  /walls/back/block: `4x5` is no word for `block`. Did you mean 4x6? "
          "Write 4x4, 4x6 or {width: …, depth: …}."]),
        ("walls: {back: {to: cieling}}", ["3:20  /walls/back/to: `cieling` is no word for `to`. Write ceiling."]),
        ("walls: {back: {to: 48}}",
         ["3:20  /walls/back/to: 48 has no unit. Write 48 in or 48 mm. Or write ceiling."]),
        # either, or
        ("screws: {lag: {size: No. 10, diameter: 5/16 in, length: 3 in}}",
         ["3:40  /screws/lag/diameter: size and diameter are both given. Give No. or diameter."]),
        # nothing after the colon
        ("from:", ["3:1  /from: `from` is empty. Write 3/4 in or 4 ft 2 in, or leave it out."]),
        ("walls:",
         ["3:1  /walls: `walls` is empty. Write {} if you looked and there is none; "
          "leave the key out if you did not look."]),
        ("braced: ~", ["3:1  /braced: `braced` is empty. Write true or false, or leave it out."]),
        ("grits: [80, ]", None),
        ("grits: [80, null]", ["3:13  /grits/1: This item is empty. Write 150 or P150, or leave it out."]),
    ],
)  # fmt: skip
def test_one_mistake_is_one_fault(line: str, faults: list[str] | None) -> None:
    if faults is None:
        take(Plan, read(f"plan: 1\ntitle: a\n{line}\n".encode(), "p"))
    else:
        assert said_of(line) == faults


def test_version_and_title() -> None:
    assert said("plan: 2\ntitle: a\n") == ["p.yaml:1:7  /plan: `plan` is `2`. This reader knows version 1."]
    # To a closed list of words and numbers, true equals 1.
    assert said("plan: true\ntitle: a\n") == ["p.yaml:1:7  /plan: `true` stands where a number is needed. Write 1."]
    assert said("plan: 1\ntitle: 12.50\n") == [
        'p.yaml:2:8  /title: 12.50 is read as a number, and text is needed. Put it in quotes: "12.50".'
    ]
    assert said("plan: 1\n") == ["p.yaml:1:1: `title` is missing. Write title: a line of text."]
    assert said("- plan: 1\n")[0].startswith("p.yaml:1:1: A list stands here. Keys are needed here")


def test_a_truth_that_a_patch_puts_for_a_number_is_found_too() -> None:
    changed = patched(read(b"plan: 1\ntitle: a\n", "p"), [{"op": "replace", "path": "/plan", "value": True}])
    with pytest.raises(Unreadable, match="stands where a number is needed"):
        take(Plan, changed)


def test_text_that_looks_like_a_date_is_text_where_text_is_wanted() -> None:
    assert take(Plan, read(b"plan: 1\ntitle: 2026-03-02\n", "p")).title == "2026-03-02"


def test_all_mistakes_come_at_once_in_the_order_of_the_file() -> None:
    found = said(
        "plan: 1\ntitel: Shelf\nwalls:\n  back:\n    width: 48\n    stud: 2x5\n  1st: {}\nfrom: 1/2\nspecies: oak\n"
    )
    assert [each.split(":")[1] for each in found] == ["2", "5", "6", "7", "8", "9"]
    assert not any("missing" in each for each in found), "the misspelt key is not reported as missing too"


GOOD = """\
plan: 1
title: Pottery shelf
walls:
  back:
    width: 5 ft
    stud: {width: 1-1/2 in, depth: 3-1/2 in}
    block: 4x6
    lining:
      - {material: plywood, thickness: 1/2 in}
    boxes: {lamp: {centre: 3 in, up: 40 in, holds: switch}}
    to: ceiling
screws:
  lag: {diameter: 5/16 in, length: 3 in}
species: white ash
task: wash wall
grits: [80, P120]
load: 20 lbf/ft
measured: "2026-03-02"
count: 3
factor: 1.5
braced: true
from: 3 in
"""
JARGON = re.compile(
    r"\b(dict|tuple|str|int|float|bool|NoneType|Literal|pydantic|validat\w+|input|instance|Input|type=|[A-Z]\w*[a-z][A-Z]\w*|"
    r"Lumber|Box|Screw|Layer|Wall|Plan|function-\w+|None|True|False)\b"
)


def pointers(text: str) -> list[str]:
    return [pointer for pointer in read(text.encode(), "p").spots if pointer]


@pytest.mark.parametrize("pointer", pointers(GOOD))
@pytest.mark.parametrize("put", ["48", "nonsense", "[1, 2]", "{zzz: 1}", "true", "-1", "''", "1e300", "~"])
def test_a_wrong_value_anywhere_is_one_fault_on_its_line_without_jargon(pointer: str, put: str) -> None:
    document = read(GOOD.encode(), "p")
    place = document.place(pointer)
    changed = GOOD[: place.start] + put + GOOD[place.end :]
    try:
        take(Plan, read(changed.encode(), "p"))
    except Unreadable as refused:
        same_line = [fault for fault in refused.faults if fault.place.line in (place.line, place.line - 1)]
        assert same_line, str(refused)
        for fault in refused.faults:
            assert not JARGON.search(f"{fault.found} {fault.write}"), str(fault)
            assert fault.found.endswith((".", "?")), str(fault)
            assert fault.write.endswith((".", "?")), str(fault)
            assert fault.found[0].isupper() or fault.found[0] in "`-012" or fault.found.startswith(put)
        # Two only where a group of keys lost all of its keys, or gained one it does not have.
        at_once = [fault for fault in refused.faults if fault.pointer == pointer]
        assert len(at_once) <= (3 if put.startswith("{") else 1), str(refused)
    else:
        assert (pointer, put) in ACCEPTED


ACCEPTED = {
    ("/title", "nonsense"), ("/factor", "48"), ("/factor", "-1"), ("/factor", "1e300"),
    ("/grits/0", "48"), ("/grits/1", "48"), ("/braced", "true"),
}  # fmt: skip


@pytest.mark.parametrize("pointer", [p for p in pointers(GOOD) if not p.rpartition("/")[2].isdigit()])
def test_a_misspelt_key_anywhere_is_one_fault_at_the_key(pointer: str) -> None:
    document = read(GOOD.encode(), "p")
    key = document.key_place(pointer)
    parent = pointer.rpartition("/")[0]
    if parent in ("/walls", "/screws", "/walls/back/boxes"):
        return  # any name will do
    changed = GOOD[: key.end] + "x" + GOOD[key.end :]
    with pytest.raises(Unreadable) as refused:
        take(Plan, read(changed.encode(), "p"))
    assert [(fault.place.line, fault.place.column) for fault in refused.value.faults] == [(key.line, key.column)]
    assert f"Did you mean `{pointer.rpartition('/')[2]}`?" in str(refused.value)


def test_a_model_without_hints_or_a_plain_model_will_do() -> None:
    from pydantic import BaseModel

    class Loose(BaseModel):
        a: int

    assert take(Loose, read(b"a: 1\nb: 2\n", "p")).a == 1
    with pytest.raises(Unreadable, match="`a` is missing"):
        take(Loose, read(b"b: 2\n", "p"))


def test_a_hundred_faults_are_enough() -> None:
    lines = "".join(f"k{index}: 1\n" for index in range(500))
    assert len(said(f"plan: 1\ntitle: a\n{lines}")) == 100


def test_a_key_that_is_called_like_an_alternative_does_not_lead_astray() -> None:
    found = said_of("walls: {back: {block: {mapping: 1, width: 2 in, depth: 3 in}}}")
    assert found == [
        "3:24  /walls/back/block/mapping: `mapping` is not a key of /walls/back/block. Its keys are width, depth."
    ]
