"""The nearest word, and what is offered."""

from __future__ import annotations

import pytest

from plumbrule.reading.spelling import nearest, offer

KEYS = ["thickness", "material", "found_within", "floor_drop", "width"]


@pytest.mark.parametrize(
    ("word", "meant"),
    [
        ("thicknes", "thickness"), ("Width", "width"), ("found-within", "found_within"), ("floordrop", "floor_drop"),
        ("zzz", None), ("", None), ("x" * 5000, None),
    ],
)  # fmt: skip
def test_nearest(word: str, meant: str | None) -> None:
    assert nearest(word, KEYS) == meant


def test_a_part_of_a_name_will_do() -> None:
    assert nearest("oak", ["red oak", "beech"]) == "red oak"


def test_twelve_words_are_listed_thirteen_are_not() -> None:
    twelve = [f"word-{letter}" for letter in "abcdefghijkl"]
    assert offer("zz", twelve).startswith("Write word-a, word-b")
    assert offer("zz", twelve).endswith("word-k or word-l.")
    assert "13 words" in offer("zz", [*twelve, "word-m"])
    assert offer("zz", ["only"]) == "Write only."
    assert offer("thicknes", KEYS).startswith("Did you mean `thickness`? Write thickness, material")
