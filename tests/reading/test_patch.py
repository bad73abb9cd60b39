"""Patches: RFC 6902 as the library applies it, refused in sentences, with places that stay true."""

from __future__ import annotations

from copy import deepcopy
from typing import Any

import pytest

from plumbrule.reading import pointer as pointers
from plumbrule.reading.patch import PatchRefused, apply, patched
from plumbrule.reading.places import read

PLAN = """\
angles:
  seat-back: {left: 1/4 in, holes: [2 in, 14 in]}
boards:
  seat:
    length: 59-3/8 in
    species: white ash
"""


def test_what_was_not_changed_keeps_its_place() -> None:
    before = read(PLAN.encode(), "base.yaml")
    after = patched(
        before,
        [
            {"op": "replace", "path": "/boards/seat/length", "value": "60 in"},
            {"op": "add", "path": "/boards/seat/depth", "value": "17 in"},
            {"op": "remove", "path": "/angles/seat-back/holes/0"},
        ],
    )
    assert after.value["boards"]["seat"] == {"length": "60 in", "species": "white ash", "depth": "17 in"}
    assert after.value["angles"]["seat-back"]["holes"] == ["14 in"]
    assert before.value["boards"]["seat"]["length"] == "59-3/8 in"
    assert after.place("/boards/seat/species") == before.place("/boards/seat/species")
    assert after.place("/angles/seat-back/left") == before.place("/angles/seat-back/left")
    for changed in ("/boards/seat/length", "/boards/seat/depth"):
        assert changed not in after.spots
        assert after.written(changed) == ""
        assert after.place(changed) == before.place("/boards/seat")
    assert "/angles/seat-back/holes/0" not in after.spots
    for at in after.spots:
        value = pointers.get(after.value, at)
        assert isinstance(value, (dict, list)) or value == pointers.get(before.value, at)


def test_a_value_that_is_emptied_is_listed() -> None:
    after = patched(read(PLAN.encode(), "p"), [{"op": "replace", "path": "/boards/seat/length", "value": None}])
    assert after.empty == ("/boards/seat/length",)


def test_patches_are_those_of_rfc_6902() -> None:
    """RFC 6902 appendix A: A.1 to A.7, A.10, A.14, A.16."""
    cases: list[tuple[Any, list[dict[str, Any]], Any]] = [
        ({"foo": "bar"}, [{"op": "add", "path": "/baz", "value": "qux"}], {"baz": "qux", "foo": "bar"}),
        ({"foo": ["bar", "baz"]}, [{"op": "add", "path": "/foo/1", "value": "qux"}], {"foo": ["bar", "qux", "baz"]}),
        ({"baz": "qux", "foo": "bar"}, [{"op": "remove", "path": "/baz"}], {"foo": "bar"}),
        ({"foo": ["bar", "qux", "baz"]}, [{"op": "remove", "path": "/foo/1"}], {"foo": ["bar", "baz"]}),
        ({"baz": "qux"}, [{"op": "replace", "path": "/baz", "value": "boo"}], {"baz": "boo"}),
        ({"foo": {"bar": "baz", "waldo": "fred"}, "qux": {"corge": "grault"}},
         [{"op": "move", "from": "/foo/waldo", "path": "/qux/thud"}],
         {"foo": {"bar": "baz"}, "qux": {"corge": "grault", "thud": "fred"}}),
        ({"foo": ["all", "grass", "cows", "eat"]}, [{"op": "move", "from": "/foo/1", "path": "/foo/3"}],
         {"foo": ["all", "cows", "eat", "grass"]}),
        ({"foo": "bar"}, [{"op": "add", "path": "/child", "value": {"grandchild": {}}}],
         {"foo": "bar", "child": {"grandchild": {}}}),
        ({"/": 9, "~1": 10}, [{"op": "test", "path": "/~01", "value": 10}], {"/": 9, "~1": 10}),
        ({"foo": ["bar"]}, [{"op": "add", "path": "/foo/-", "value": ["abc", "def"]}],
         {"foo": ["bar", ["abc", "def"]]}),
    ]  # fmt: skip
    for before, patch, after in cases:
        kept = deepcopy(before)
        assert apply(before, patch) == after
        assert before == kept


@pytest.mark.parametrize(
    ("operation", "said"),
    [
        ({"op": "replace", "path": "/boards/saet/length", "value": 1},
         "The plan has no /boards/saet. Did you mean /boards/seat?"),
        ({"op": "replace", "path": "/boards/seat/depth", "value": 1},
         "The plan has no /boards/seat/depth. Use add instead of replace, or check the pointer."),
        ({"op": "remove", "path": "/angles/seat-back/holes/7"},
         "The plan has no /angles/seat-back/holes/7. /angles/seat-back/holes has 2 items, counted from 0."),
        ({"op": "add", "path": "/angles/seat-back/holes/7", "value": 1},
         "There is no place 7 in /angles/seat-back/holes. Write /2 or /- to add at its end."),
        ({"op": "add", "path": "/boards/zzz/depth", "value": 1}, "The plan has no /boards/zzz. Add it first."),
        ({"op": "add", "path": "/boards/seat/length/x", "value": 1},
         "/boards/seat/length has no keys to add to. Check the pointer."),
        ({"op": "test", "path": "/boards/seat/length", "value": "60 in"},
         "/boards/seat/length is 59-3/8 in, not 60 in. Test for what the plan has."),
        ({"op": "move", "path": "/a", "from": "/b"},
         "The plan has no /b. Use add instead of replace, or check the pointer."),
        ({"op": "put", "path": "/a", "value": 1},
         "`put` is not an op. Write one of add, replace, test, remove, move, copy."),
        ({"path": "/a", "value": 1}, "The change has no `op`. Write one of add, replace, test, remove, move, copy."),
        ({"op": "add", "path": "/a"}, "The change to add has no `value`. Write value."),
        ({"op": "remove"}, "The change to remove has no `path`. Write path."),
        ({"op": "remove", "path": "boards"},
         "boards is not a pointer: one starts with /. Write a pointer like /boards/seat/length."),
        ("remove /a", "A change is a group of keys. Write {op: replace, path: /…, value: …}."),
    ],
)  # fmt: skip
def test_what_is_said_of_a_patch_that_does_not_fit(operation: Any, said: str) -> None:
    good = {"op": "test", "path": "/boards/seat/species", "value": "white ash"}
    with pytest.raises(PatchRefused) as refused:
        apply(read(PLAN.encode(), "p").value, [good, operation])
    assert str(refused.value) == said
    assert refused.value.index == 1


def test_the_fault_is_where_the_patch_is_written() -> None:
    rule = read(b"breaks:\n  - patch:\n      - {op: remove, path: /nothing}\n", "rule.yaml")
    with pytest.raises(PatchRefused) as refused:
        apply(read(PLAN.encode(), "p").value, rule.value["breaks"][0]["patch"])
    fault = refused.value.fault(rule, "/breaks/0/patch")
    assert str(fault).startswith("rule.yaml:3:9  /breaks/0/patch/0: The plan has no /nothing.")


def test_pointers_of_rfc_6901() -> None:
    """RFC 6901 section 5, whole."""
    document = {
        "foo": ["bar", "baz"],
        "": 0,
        "a/b": 1,
        "c%d": 2,
        "e^f": 3,
        "g|h": 4,
        "i\\j": 5,
        'k"l': 6,
        " ": 7,
        "m~n": 8,
    }
    expected = {
        "": document, "/foo": ["bar", "baz"], "/foo/0": "bar", "/": 0, "/a~1b": 1, "/c%d": 2, "/e^f": 3, "/g|h": 4,
        "/i\\j": 5, '/k"l': 6, "/ ": 7, "/m~0n": 8,
    }  # fmt: skip
    for pointer, value in expected.items():
        assert pointers.get(document, pointer) == value
        assert pointers.build(pointers.split(pointer)) == pointer
    for wrong in ("foo", "/a~2b", "/~"):
        with pytest.raises(ValueError, match="not a pointer"):
            pointers.split(wrong)
    for absent in ("/nope", "/foo/2", "/foo/01", "/foo/-", "/foo/0/x", "/foo/²"):
        with pytest.raises(LookupError):
            pointers.get(document, absent)
    assert pointers.parent("/a/b") == "/a"
    assert pointers.parent("") == ""
    assert pointers.last("/a/b~1c") == "b/c"
    assert pointers.within("/a/b", "/a")
    assert not pointers.within("/ab", "/a")
