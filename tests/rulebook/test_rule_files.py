"""A team writes a rule: what is wrong with it is said at its line, all at once, with a caret under the expression."""

from __future__ import annotations

import textwrap

import pytest

from plumbrule.reading.fault import Unreadable
from plumbrule.rulebook.read import read_rule, read_rules
from plumbrule.rulebook.rule import Source

SOURCES = {"trade": Source("trade", "Rules of the trade", "no publisher", "ask")}
RULE = """\
rule: a-house-rule
trade: steel
title: Holes keep away from the end
level: correction
looks_at: hole
when: leg == "wall"
require:
  measure: end_distance
  at_least: factor * diameter + rim
settings:
  factor: {value: 2, at_least: 1.5, at_most: 4, says: how many diameters of steel are left}
  rim: {value: 1/16 in, at_least: 0 in, at_most: 1/4 in, says: what the file takes off a sawn end}
says: "{row} leaves {measure} of steel; {limit} is needed."
why: >
  The steel past the hole is all that keeps the screw from pulling out through the end of the leg.
  A short end opens like a hook, and nobody sees it behind the board.
sources: [{id: trade, clause: our workshop, basis: common practice}]
caution: {signal: CAUTION, text: A seat that drops at one end throws whoever sits there.}
defer: The engineer of the house decides.
remedies: [{change: end_distance, go: larger}]
examples:
  breaks: [{plan: alcove-seat, at: /angles/seat-back}]
  holds: [{plan: alcove-seat, at: /angles/seat-back}]
since: 0.1.0
"""


def read(tmp_path, *changes):
    text = RULE
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    path = tmp_path / "a-house-rule.yaml"
    path.write_text(text)
    return read_rule(path, SOURCES)


def faults(tmp_path, *changes):
    with pytest.raises(Unreadable) as caught:
        read(tmp_path, *changes)
    return caught.value.faults


def test_a_rule_is_read_with_its_settings_in_si(tmp_path):
    rule = read(tmp_path)
    assert (rule.id, rule.trade, rule.level, rule.unit) == ("a-house-rule", "steel", "correction", "mm")
    assert rule.values() == {"factor": 2.0, "rim": pytest.approx(1.5875)}
    assert rule.bounds.at_least is not None
    assert rule.bounds.at_least.work({"diameter": 5.0, **rule.values()}) == pytest.approx(11.5875)
    assert rule.reads() == {"leg", "end_distance", "diameter"}


@pytest.mark.parametrize(
    ("change", "line", "said"),
    [
        (("end_distance\n  at_least", "end_distnce\n  at_least"), 8, "end_distance"),
        (('leg == "wall"', 'leg == "wal"'), 6, "wall"),
        (("factor * diameter + rim", "tear_out_strength"), 9, "force"),
        (("factor * diameter + rim", "factor * diameter + 3"), 9, "length"),
        (("measure: end_distance", "measure: head_style"), 8, "number"),
        (("looks_at: hole", "looks_at: hoel"), 5, "hole"),
        (("level: correction", "level: grave"), 4, "stop-work"),
        (("{measure} of steel", "{mesure} of steel"), 13, "measure"),
        (("id: trade", "id: tade"), 17, "trade"),
        (("change: end_distance", "change: end_dist"), 20, "end_distance"),
        (("value: 1/16 in", "value: 1/16"), 12, "1/16"),
        (("at_most: 1/4 in", "at_most: 250 lbf"), 12, "same kind"),
        (("value: 2, at_least: 1.5", "value: 1, at_least: 1.5"), 11, "below the smallest"),
        (("trade: steel", "trade: stell"), 2, "steel"),
        (("rule: a-house-rule", "rule: another-name"), 1, "another-name.yaml"),
        (("factor * diameter + rim", "factor * * diameter"), 9, "^"),
        (("  at_least: factor * diameter + rim\n", ""), 8, "no limit"),
        (("factor: {value", "diameter: {value"), 11, "diameter"),
    ],
)
def test_each_mistake_is_told_at_its_line(tmp_path, change, line, said):
    found = faults(tmp_path, change)
    assert any(fault.place.line + 1 == line and said in str(fault) for fault in found), "\n".join(map(str, found))


def test_all_mistakes_are_told_at_once(tmp_path):
    found = faults(
        tmp_path, ('leg == "wall"', 'leg == "wal"'), ("id: trade", "id: tade"), ("{measure} of", "{mesure} of")
    )
    assert [fault.place.line + 1 for fault in found] == [6, 13, 17]


def test_a_caret_stands_under_the_word_that_is_wrong(tmp_path):
    (fault,) = faults(tmp_path, ("factor * diameter + rim", "factor * diametre + rim"))
    lines = str(fault).splitlines()
    assert lines[-2].strip() == "factor * diametre + rim"
    assert lines[-1].index("^") == lines[-2].index("diametre")
    assert lines[-1].strip() == "^" * len("diametre")


def test_a_quantity_is_not_judged_by_that(tmp_path):
    (fault,) = faults(
        tmp_path,
        ("  measure: end_distance\n  at_least: factor * diameter + rim", "  that: end_distance > 2 * diameter"),
    )
    assert "margin" in str(fault)
    assert "measure" in str(fault)


def test_measure_and_that_together_are_refused(tmp_path):
    (fault,) = faults(tmp_path, ("require:\n", "require:\n  that: washer\n"))
    assert "either" in str(fault)


def test_a_folder_tells_the_faults_of_all_its_files(tmp_path):
    for name in ("one", "two"):
        (tmp_path / f"{name}.yaml").write_text(
            RULE.replace("a-house-rule", name).replace('leg == "wall"', 'leg == "wal"')
        )
    with pytest.raises(Unreadable) as caught:
        read_rules(tmp_path, SOURCES)
    assert len(caught.value.faults) == 2


def test_a_folder_that_is_not_there_is_said(tmp_path):
    with pytest.raises(Unreadable, match="no such rule folder"):
        read_rules(tmp_path / "nowhere", SOURCES)


def test_a_rule_file_cannot_run_code(tmp_path):
    hostile = textwrap.dedent("""__import__("os").system("touch hacked")""")
    found = faults(tmp_path, ("factor * diameter + rim", hostile.replace('"', "'")))
    assert found
    assert not (tmp_path / "hacked").exists()
