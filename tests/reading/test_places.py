"""Every value is where the document says it is, whatever the line ends, marks and alphabets of the file."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.reading.fault import Unreadable
from plumbrule.reading.places import Document, _Builder, pure_events, read
from plumbrule.reading.scalars import resolve

SHELF = """\
# A shelf of the village library.
plan: 1
title: Reading nook, “low” shelf   # said so on site
walls:
  window:
    width: 8 ft
    ceiling: {left: 7 ft 11 in, right: 7'-10 3/4"}
    lining: [{material: gypsum board, thickness: ½ in}]
    framing:
      centres:
        - 3/4 in
        - 16-3/4 in       # probed

        - 32-3/4 in
# a remark between parts

boards:
  shelf:
    note: |
      two lines
      of text

    species: 'white ash'
    moisture: 8 %
"""


def walk(pointer: str, value: object) -> list[tuple[str, object]]:
    found: list[tuple[str, object]] = [(pointer, value)]
    if isinstance(value, dict):
        for key, inner in value.items():
            found += walk(f"{pointer}/{str(key).replace('~', '~0').replace('/', '~1')}", inner)
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            found += walk(f"{pointer}/{index}", inner)
    return found


def lines_of(text: str) -> list[str]:
    return text.replace("\r\n", "\n").replace("\r", "\n").split("\n")


def assert_reads_back(document: Document) -> int:
    """The slice of every value, read on its own, is that value; line and column lead to the same place."""
    lines = lines_of(document.text)
    count = 0
    for pointer, value in walk("", document.value):
        place = document.spots[pointer].value
        slice_ = document.text[place.start : place.end]
        assert document.written(pointer) == slice_
        first = lines_of(slice_)[0]
        assert lines[place.line][place.column :].startswith(first)
        if value is None:
            continue
        assert slice_ == slice_.strip(), "the end is pulled back over blanks"
        # A block of text keeps the end of its last line, which is outside the slice.
        indented = " " * place.column + slice_ + "\n"
        assert read(indented.encode(), "slice").value == value
        count += 1
    return count


@pytest.mark.parametrize("newline", ["\n", "\r\n", "\r"], ids=["LF", "CRLF", "CR"])
@pytest.mark.parametrize("mark", ["", "\ufeff"], ids=["no mark", "mark"])
def test_every_value_reads_back_from_its_place(newline: str, mark: str) -> None:
    document = read((mark + SHELF.replace("\n", newline)).encode(), "shelf.yaml")
    assert assert_reads_back(document) == 23
    place = document.place("/walls/window/framing/centres/1")
    assert (place.line, place.column) == (11, 10)
    assert document.written("/walls/window/ceiling/right") == "7'-10 3/4\""
    assert document.written("/boards/shelf/species") == "'white ash'"


def test_columns_count_letters_not_bytes() -> None:
    document = read('title: "½ ″ é 木 🪵"  \nnote: {a: ½ in, b: 3 in}\n'.encode(), "p")
    place = document.place("/note/b")
    assert (place.line, place.column) == (1, 19)
    assert document.place("/title").end_column == 18


def test_a_block_ends_with_its_last_value_not_at_the_next_key() -> None:
    document = read(SHELF.encode(), "p")
    assert document.written("/walls/window/framing/centres").endswith("32-3/4 in")
    assert document.written("/walls").endswith("32-3/4 in")
    assert document.written("/boards/shelf/note") == "|\n      two lines\n      of text"


def test_keys_have_places_and_what_is_absent_falls_back_to_its_parent() -> None:
    document = read(b"walls:\n  back:\n    width: 3 in\n", "p")
    assert document.key_place("/walls/back/width")[:2] == (2, 4)
    assert document.place("/walls/back/lining/0") == document.place("/walls/back")
    assert document.key_place("/walls/back/lining/0") == document.place("/walls/back")
    assert document.written("/walls/back/lining") == ""
    assert document.spots["/walls"].key is not None
    assert document.spots[""].key is None


def test_a_name_with_a_slash_or_a_tilde_has_an_escaped_pointer() -> None:
    document = read(b"a/b: {m~n: 1}\n", "p")
    assert set(document.spots) == {"", "/a~1b", "/a~1b/m~0n"}


@pytest.mark.parametrize(
    ("text", "value"),
    [
        # YAML 1.2.2 section 10.3.2, the core schema's examples and what YAML 1.1 made of the rest.
        ("true", True), ("False", False), ("null", None), ("~", None), ("", None),
        ("0", 0), ("-19", -19), ("0o7", 7), ("0x3A", 58), ("0.", 0.0), ("-0.0", 0.0), (".5", 0.5), ("+12e03", 12000.0),
        ("-2E+05", -200000.0), ("1e3", 1000.0),
        ("yes", "yes"), ("no", "no"), ("on", "on"), ("off", "off"), ("1:30", "1:30"), ("010", "010"),
        ("1_000", "1_000"), ("2001-01-01", "2001-01-01"), ("1234567890123456789", "1234567890123456789"),
        ("3/4 in", "3/4 in"), ("4x6", "4x6"), ("-", "-"), ("e3", "e3"), ("truely", "truely"),
    ],
)  # fmt: skip
def test_plain_scalars_are_those_of_yaml_1_2(text: str, value: object) -> None:
    found = resolve(text)
    assert found == value
    assert type(found) is type(value) or isinstance(value, str)


def test_a_quoted_scalar_is_always_text() -> None:
    assert read(b'a: "1"\nb: \'true\'\nc: ""\n', "p").value == {"a": "1", "b": "true", "c": ""}


@pytest.mark.parametrize("text", [".inf", "-.inf", ".nan", "1e999", "-1e400"])
def test_no_number_is_infinite_or_undefined(text: str) -> None:
    with pytest.raises(Unreadable, match="not a number that can be measured"):
        read(f"a: {text}\n".encode(), "p")


def test_empty_values_are_listed() -> None:
    document = read(b"a:\nb: {c: , d: 1}\ne: [1, ~]\nf: null\n", "p")
    assert document.empty == ("/a", "/b/c", "/e/1", "/f")


AWKWARD = [
    SHELF,
    "a:\n  - 1\n  - \nb:\nc: |\n  hi\n\n# x\nd: >-\n  x\n\ne: {a: , b: [ ] }\nf: 'x ''y'\ng: plain\n  more\n",
    "? a\n: b\n",
    "- 1\n- - 2\n  - 3\n-\n",
    "a: [b: 1, c: {d: 2} ]\ne: [f: 3 ]\n",
    "---\na: 1\n...\n",
    "{a, b: }\n",
]


@pytest.mark.parametrize("text", AWKWARD)
@pytest.mark.parametrize("newline", ["\n", "\r\n"])
def test_both_parsers_give_the_same_values_and_places(text: str, newline: str) -> None:
    source = text.replace("\n", newline)
    fast = read(source.encode(), "p")
    slow = _Builder("p", source.encode(), source).document(pure_events)
    assert slow.value == fast.value
    assert slow.empty == fast.empty
    assert dict(slow.spots) == dict(fast.spots)


def test_both_parsers_refuse_alike() -> None:
    for text in (
        "a: &x 1\n",
        "a: *x\n",
        "a: !!int 3\n",
        "a: 1\na: 2\n",
        "<<: {a: 1}\n",
        "a: {b: #10, c: 1}\n",
        "a: b: c\n",
    ):
        with pytest.raises(Unreadable) as fast:
            read(text.encode(), "p")
        with pytest.raises(Unreadable) as slow:
            _Builder("p", text.encode(), text).document(pure_events)
        assert slow.value.faults == fast.value.faults


WORDS = st.sampled_from(
    [
        "a",
        "3/4 in",
        "white ash",
        "7'-10 3/4\"",
        "8 %",
        "true",
        "12",
        "1.5",
        "x: y",
        "# no",
        "½ in",
        "",
        "it's",
        "🪵",
        "-",
    ]
)
TREES = st.recursive(
    WORDS | st.integers(-99, 99) | st.booleans(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.sampled_from("abcdefg"), inner, max_size=4),
    max_leaves=20,
)


@settings(max_examples=150, deadline=None)
@given(st.dictionaries(st.sampled_from("abcdefg"), TREES, min_size=1, max_size=4), st.booleans(), st.integers(1, 4))
def test_whatever_is_written_reads_back_from_its_place(value: dict[str, object], flow: bool, indent: int) -> None:
    """Written by the YAML library, in either style, and found again value by value."""
    from io import StringIO

    from ruamel.yaml import YAML

    writer = YAML(typ="safe", pure=True)
    writer.default_flow_style = flow
    writer.map_indent = writer.sequence_indent = max(2, indent)
    writer.allow_unicode = True
    writer.width = 10_000
    stream = StringIO()
    writer.dump(value, stream)
    document = read(stream.getvalue().encode(), "p")
    assert document.value == value
    for pointer, inner in walk("", value):
        if not isinstance(inner, (dict, list)):
            assert read(f"x: {document.written(pointer)}\n".encode(), "p").value == {"x": inner}
