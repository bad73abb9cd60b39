"""Compiled expressions: written as JSON, read back the same."""

from __future__ import annotations

import json

import pytest
from expression_maker import DIMENSIONS, NAMES, Maker
from hypothesis import assume, given
from hypothesis import strategies as st

from plumbrule.language import (
    CannotWork,
    ListOf,
    Number,
    Truth,
    Value,
    Word,
    Work,
    expression,
    expression_from_data,
    expression_to_data,
    from_data,
    parse,
    to_data,
    type_from_data,
    type_to_data,
)
from plumbrule.reading.units import Dimension


@given(st.integers(0, 10**9), st.booleans())
def test_a_tree_comes_back_from_json(seed: int, truth: bool) -> None:
    maker = Maker(seed)
    text = (maker.truth(3) if truth else maker.number(maker.random.choice(DIMENSIONS), 3)).ours
    assume(len(text) <= 400)
    node = parse(text)
    assert from_data(json.loads(json.dumps(to_data(node)))) == node


def answer(work: Work, values: dict[str, Value]) -> Value:
    try:
        return work(values)
    except CannotWork as fault:
        return str(fault)


def test_a_compiled_expression_works_the_same() -> None:
    maker = Maker(seed=17)
    for _ in range(500):
        text = maker.truth().ours
        if len(text) > 400:
            continue
        made = expression(text, NAMES)
        again = expression_from_data(json.loads(json.dumps(expression_to_data(made))))
        assert (again.source, again.node, again.reads, again.type) == (made.source, made.node, made.reads, made.type)
        values = maker.values(missing=0.1)
        assert answer(again.work, values) == answer(made.work, values)


scalars = (
    st.tuples(*[st.integers(-4, 4)] * 5).map(lambda powers: Number(Dimension(*powers)))
    | st.lists(st.text(), max_size=4).map(lambda words: Word(tuple(words)))
    | st.just(Truth())
)


@given(scalars | scalars.map(ListOf))
def test_a_kind_comes_back_from_json(kind: Number | Word | Truth | ListOf) -> None:
    assert type_from_data(json.loads(json.dumps(type_to_data(kind)))) == kind


@pytest.mark.parametrize(
    "data", [[], ["z"], ["n"], ["n", "a"], ["b", "+", ["n", "a", 0, 1]], None, 3, ["l", 3, 0, 1], [[]]]
)
def test_other_data_is_refused(data: object) -> None:
    with pytest.raises(ValueError, match="not a compiled expression"):
        from_data(data)  # type: ignore[arg-type]
    with pytest.raises(ValueError, match="not a compiled"):
        expression_from_data(["a", data, ["truth"]])


@pytest.mark.parametrize("data", [[], ["number"], ["number", 1], ["list", ["list", ["truth"]]], ["truth", 1], ["z"]])
def test_another_kind_is_refused(data: list[object]) -> None:
    with pytest.raises(ValueError, match="not a compiled kind"):
        type_from_data(data)
