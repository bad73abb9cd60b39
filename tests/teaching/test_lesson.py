"""Every rule can be taught: what it demands, the fault worked, the cure worked, source, caution, who decides."""

from __future__ import annotations

from functools import cache

import pytest

from plumbrule.cli import main
from plumbrule.report.worked_line import rework_text
from plumbrule.rulebook.load import load
from plumbrule.teaching.lesson import NoLesson, lesson


@cache
def rulebook():
    return load()


@pytest.mark.parametrize("rule", rulebook().rules, ids=lambda rule: rule.id)
def test_each_rule_has_its_lesson(rule):
    text = lesson(rule)
    told = " ".join(text.split())
    assert " ".join(rule.why.split()) in told
    assert rule.caution.signal in text
    assert " ".join(rule.defer.split()) in told
    fault, _, cure = text.partition("\nPut right\n")
    assert "The fault, worked" in fault
    assert "this holds" in cure
    assert "nothing: this example" not in text
    assert all(len(line) <= 100 for line in text.splitlines())


def test_the_lesson_shows_the_two_numbers_apart_and_then_the_right_way_round():
    fault, _, cure = lesson(rulebook().rule("hole-near-steel-edge")).partition("\nPut right\n")
    assert "short by" in fault
    assert "to spare" in cure


def test_a_sum_in_a_lesson_can_be_worked_again():
    text = lesson(rulebook().rule("screw-near-stud-edge"), width=100)
    line = next(line for line in text.splitlines() if line.strip().startswith("limit = "))
    _, put, value = line.split("   at least")[0].strip().split(" = ")
    assert rework_text(put) == pytest.approx(float(value.split()[0]), rel=1e-6)


def test_a_rule_of_a_team_is_taught_from_the_teams_folder(tmp_path, capsys):
    folder = tmp_path / "ours" / "steel"
    folder.mkdir(parents=True)
    (folder / "drill-no-wider-than-the-jig.yaml").write_text(TEAM_RULE)
    assert main(["lesson", "drill-no-wider-than-the-jig", "--rules", str(tmp_path / "ours")]) == 0
    assert "the jig" in capsys.readouterr().out


def test_a_rule_whose_file_is_gone_is_said(tmp_path):
    with pytest.raises(NoLesson, match="no example to teach from"):
        lesson(rulebook().rules[0]._replace(path="gone.yaml"))


TEAM_RULE = """\
rule: drill-no-wider-than-the-jig
title: Hole wider than the jig can guide
level: advisory
looks_at: hole
require: {measure: diameter, at_most: 8 * mm}
says: "Hole {row} is {measure} wide; the jig guides up to {limit}."
why: >
  The jig in our workshop guides bits of up to eight millimetres. A wider hole is drilled by hand, and a bit that is
  not guided wanders off its mark.
sources: [{id: trade, clause: our workshop, basis: common practice}]
caution: {signal: CAUTION, text: A bit that catches in steel turns the piece; clamp it.}
defer: The foreman decides.
examples:
  breaks: [{plan: alcove-seat, at: /angles/seat-back/wall_holes}]
  holds: [{plan: display-shelf, at: /angles/ledge-back/seat_holes}]
since: 0.1.0
"""
