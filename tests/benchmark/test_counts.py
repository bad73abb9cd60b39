"""What costs time, counted instead of timed: the same on a busy machine as on an idle one."""

from __future__ import annotations

import pytest
from counting import counts_of, loaded_by
from limits import ABSENT_FROM_INSPECT, ABSENT_FROM_VERSION, MOST_MODULES
from measuring import Failed, Program, environment, run
from variants import base_plans, varied, with_parts, write_variants

from plumbrule import shipped
from plumbrule.plan.read import read_plan
from plumbrule.reading.places import read, read_file
from plumbrule.rulebook.load import load

PLANS = shipped.folder("plans")
ALCOVE = PLANS / "alcove-seat.yaml"
# A plan with twice the parts may cost this much more than twice as much again.
GROWTH = 1.3


@pytest.fixture(scope="module")
def inspecting():
    return loaded_by("inspect", str(ALCOVE))


def few_enough(loaded, what):
    ours, others = MOST_MODULES[what]
    return loaded.ours() <= ours and loaded.others() <= others


def test_version_loads_next_to_nothing():
    loaded = loaded_by("--version")
    assert loaded.code == 0
    assert not ABSENT_FROM_VERSION.intersection(loaded.modules)
    assert few_enough(loaded, "--version")
    assert not loaded.opened


def test_an_inspection_loads_only_what_it_uses(inspecting):
    assert inspecting.code == 0
    assert not ABSENT_FROM_INSPECT.intersection(inspecting.modules)
    assert few_enough(inspecting, "inspect")


def test_an_inspection_opens_the_plan_and_each_file_of_the_rulebook_once(inspecting):
    """Nothing of any other installed package: what else is installed must not change a verdict, nor cost time."""
    rules = shipped.folder("rules")
    belong = {str(ALCOVE), *(str(path) for path in rules.rglob("*") if path.is_file())}
    assert set(inspecting.opened) <= belong
    assert sorted(inspecting.opened) == sorted(set(inspecting.opened))
    assert str(rules / "compiled.json") in inspecting.opened


def test_a_schema_is_opened_by_no_command_that_inspects(inspecting):
    assert not [name for name in inspecting.opened if "schema" in name]


@pytest.mark.parametrize("path", base_plans(), ids=lambda path: path.stem)
def test_an_expression_is_worked_no_more_often_than_a_rule_has_expressions(path):
    rulebook = load()
    counts = counts_of(path.read_bytes(), rulebook)
    assert counts.judgements <= counts.evaluations <= 4 * counts.judgements


@pytest.mark.parametrize("name", ["display-shelf", "bracket-shelf"])
def test_more_parts_cost_no_more_than_their_share(name):
    """Evaluations, and all calls of functions from the text of the plan to its verdict: the step from two to four
    times the parts against the step from one to two."""
    once, twice, four_times = (counts_of(with_parts(name, times)) for times in (1, 2, 4))
    # Some rules look at the job as a whole, once however many parts it has.
    assert twice.judgements > once.judgements * 1.3
    for few, more, many in zip(once, twice, four_times, strict=True):
        assert many - more <= GROWTH * 2 * (more - few)


def test_the_variants_are_readable_differ_and_come_out_the_same_each_time(tmp_path):
    for name in ("first", "second"):
        (tmp_path / name).mkdir()
    paths = write_variants(tmp_path / "first", 40, base_plans())
    texts = [path.read_bytes() for path in paths]
    assert texts == [path.read_bytes() for path in write_variants(tmp_path / "second", 40, base_plans())]
    assert len(set(texts)) == len(texts)
    for path in paths:
        read_plan(read_file(path))


def test_a_variant_moves_measures_and_nothing_else():
    class First:
        @staticmethod
        def choice(choices):
            return choices[0]

    text = "  temperature: {coldest: 62 °F, warmest: 80 °F}\n  left: 3/4 in   # coldest day\n  found_within: 1/8 in, x"
    assert varied(text, First()) == (
        "  temperature: {coldest: 58 °F, warmest: 76 °F}\n  left: 3/4 in   # coldest day\n  found_within: 1/16 in, x"
    )


def test_a_multiplied_plan_holds_all_its_parts():
    plan = read_plan(read(with_parts("display-shelf", 4), "plan.yaml"))
    assert sorted(plan.model.angles) == ["ledge-back", "ledge-back-1", "ledge-back-2", "ledge-back-3"]
    assert len(plan.model.boards) == 4


def test_a_program_that_fails_is_not_timed(tmp_path):
    import sys

    with pytest.raises(Failed, match="ended with 3"):
        run(Program([sys.executable, "-c", "raise SystemExit(3)"]), environment(tmp_path))
    took = run(Program([sys.executable, "-c", "sum(range(10**6))"]), environment(tmp_path))
    assert 0 < took.cpu < 60
    assert took.wall > 0
