"""The table of what tasks, tins and woods do: every word of a plan has its row, and its own words are closed lists."""

from __future__ import annotations

from typing import get_args

import pytest

from plumbrule.catalogue import rows_hazards
from plumbrule.mechanics import tables, task_table
from plumbrule.mechanics.worked import NotPossible
from plumbrule.plan import words

TABLE = task_table.task_table(tables.load())


def test_every_word_of_a_plan_has_its_row() -> None:
    assert set(TABLE.tasks) == set(words.TASKS)
    assert {name for part, name in TABLE.tins if part == "products"} == set(words.PRODUCTS)
    assert {name for part, name in TABLE.tins if part == "finishes"} == set(words.FINISHES)
    assert {name for part, name in TABLE.tins if part == "adhesives"} == set(words.ADHESIVES)
    assert {name for part, name in TABLE.tins if part == "coats"} == set(words.STEEL_COATINGS)
    assert set(TABLE.woods) <= set(words.BOARD_SPECIES)
    assert set(TABLE.sheets) == {"plywood", "MDF", "particleboard"}


def test_its_words_are_those_of_the_rows() -> None:
    for row in TABLE.tasks.values():
        assert row.dust in get_args(task_table.Dust) and row.disturbs in get_args(task_table.Disturbs)
        assert row.reaches in get_args(task_table.Reaches) and row.lifts in get_args(task_table.Lifts)
        assert row.noise == 0 or 80 <= row.noise <= 110
    assert {tin.vapour for tin in TABLE.tins.values()} <= set(task_table.VAPOURS)
    assert set(TABLE.woods.values()) <= set(task_table.RISKS)
    assert get_args(task_table.Dust) == rows_hazards.DUSTS
    assert get_args(task_table.Disturbs) == rows_hazards.DISTURBS
    assert task_table.VAPOURS == rows_hazards.VAPOURS and task_table.RISKS == rows_hazards.RISKS


def test_the_finishes_whose_rags_heat_themselves_are_those_of_the_plan_format() -> None:
    """Drying oils and what is made of them; `paint` may be an oil paint, the worse case."""
    listed = {"oil varnish", "wiping varnish", "oil polyurethane", "linseed oil", "tung oil", "oil-varnish blend",
              "hard-wax oil"}  # fmt: skip
    assert {name for (part, name), tin in TABLE.tins.items() if part == "finishes" and tin.self_heating} == listed | {
        "paint"
    }


def test_a_word_that_is_not_there_is_refused() -> None:
    with pytest.raises(NotPossible, match="juggle"):
        TABLE.task("juggle")
    with pytest.raises(NotPossible, match="soup"):
        TABLE.tin("products", "soup")
    assert TABLE.wood("white ash") == "none"
