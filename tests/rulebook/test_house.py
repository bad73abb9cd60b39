"""What a house may make of the rules, and what it may not."""

from __future__ import annotations

import sys

import pytest

from plumbrule.reading.fault import Unreadable
from plumbrule.rulebook.load import load

EDGE = "hole-near-steel-edge"


def write(tmp_path, text):
    path = tmp_path / "house.yaml"
    path.write_text(text)
    return path


def refused(tmp_path, text):
    with pytest.raises(Unreadable) as caught:
        load(write(tmp_path, text))
    return [str(fault) for fault in caught.value.faults]


def test_without_a_house_the_rules_are_as_shipped():
    rulebook = load()
    assert rulebook.house == ""
    assert rulebook.rule(EDGE).values()["plain_factor"] == 1.5
    assert load().digest == rulebook.digest


def test_a_house_changes_settings_levels_and_trials_and_is_named(tmp_path):
    path = write(
        tmp_path,
        f"settings:\n  {EDGE}: {{plain_factor: 2}}\nlevels:\n  burrs-left: advisory\ntrial: [holes-too-close]\n",
    )
    rulebook = load(path)
    assert rulebook.rule(EDGE).values()["plain_factor"] == 2
    assert rulebook.rule("burrs-left").level == "advisory"
    assert (rulebook.rule("holes-too-close").level, rulebook.rule("holes-too-close").on_trial) == ("advisory", True)
    assert rulebook.house == str(path)
    assert rulebook.digest != load().digest


def test_every_mistake_of_a_house_is_told_at_its_line(tmp_path):
    said = refused(
        tmp_path,
        f"settings:\n  {EDGE}: {{plain_factor: 0.5, plain_fctor: 2}}\n  hole-near-steel-egde: {{plain_factor: 2}}\n"
        f"levels:\n  burs-left: advisory\ntrial: [no-such-rule]\n",
    )
    text = "\n".join(said)
    assert len(said) == 5, text
    assert "house.yaml:2:" in said[0]
    assert "below the smallest" in said[0]
    assert "Did you mean plain_factor?" in text
    assert f"Did you mean {EDGE}?" in text
    assert "Did you mean burrs-left?" in text
    assert "No rule no-such-rule" in text


def test_a_house_raises_loads_and_says_so(tmp_path):
    rulebook = load(write(tmp_path, "loads: {person: 300 lbf, storage: {books: 40 lbf/ft}}\n"))
    assert rulebook.changes == (
        "loads: one person 250 lbf made 300 lbf",
        "loads: storage of books 25 lbf/ft made 40 lbf/ft",
    )
    assert rulebook.loads.person == pytest.approx(1334.4665)
    assert rulebook.digest != load().digest


def test_no_house_tries_a_board_with_less_than_the_benchmark(tmp_path):
    said = refused(
        tmp_path,
        "loads:\n  person: 180 lbf\n  seat: 100 lbf/ft\n  storage: {books: 20 lbf/ft}\n  lean: 5000 lbf\n",
    )
    assert [line.split("  ")[0].rsplit(":", 2)[1] for line in said] == ["2", "3", "4", "5"]
    assert "180 lbf is below what a board may be tried with" in said[0]
    assert "Write 250 lbf to 450 lbf" in said[0]
    assert "above" in said[3]


def test_a_setting_keeps_its_kind_of_quantity(tmp_path):
    (said,) = refused(tmp_path, f"settings:\n  {EDGE}: {{plain_factor: 1/4 in}}\n")
    assert "not the kind of quantity" in said


def test_a_stop_work_rule_of_framing_may_not_be_softened_in_silence(tmp_path):
    """A house may change a level; the report then names the house file, so the reader sees whose decision it was."""
    rulebook = load(write(tmp_path, "levels: {screw-misses-the-wood: advisory}\n"))
    assert rulebook.house


def test_a_house_adds_its_own_folders_seen_from_the_house_file(tmp_path):
    (tmp_path / "ours" / "steel").mkdir(parents=True)
    (tmp_path / "ours" / "sources.yaml").write_text(
        "sources: {shop: {title: Our own workshop rules, published_by: us, where: on the wall}}\n"
    )
    (tmp_path / "ours" / "steel" / "our-rule.yaml").write_text(OUR_RULE)
    rulebook = load(write(tmp_path, "rules: [ours]\n"))
    rule = rulebook.rule("our-rule")
    assert rule is not None
    assert rule.sources[0].source.title == "Our own workshop rules"


def test_two_rules_of_one_name_are_refused(tmp_path):
    (tmp_path / "ours" / "steel").mkdir(parents=True)
    (tmp_path / "ours" / "steel" / f"{EDGE}.yaml").write_text(
        OUR_RULE.replace("our-rule", EDGE).replace("shop", "trade")
    )
    with pytest.raises(Unreadable, match="two places"):
        load(None, [tmp_path / "ours"])


@pytest.fixture
def pack(tmp_path, monkeypatch):
    """A distribution as an installer leaves it: a package whose code says so when it is run, and its list of files."""
    site = tmp_path / "site"
    (site / "ourpack" / "rules" / "steel").mkdir(parents=True)
    (site / "ourpack" / "__init__.py").write_text("raise SystemExit('the code of a pack was run')\n")
    (site / "ourpack" / "rules" / "steel" / "our-rule.yaml").write_text(OUR_RULE.replace("shop", "trade"))
    info = site / "ourpack-1.0.dist-info"
    info.mkdir()
    (info / "METADATA").write_text("Metadata-Version: 2.1\nName: ourpack\nVersion: 1.0\n")
    (info / "entry_points.txt").write_text("[plumbrule.rulebooks]\nours = ourpack.rules\nstray = os\n")
    (info / "RECORD").write_text("ourpack/__init__.py,,\nourpack/rules/steel/our-rule.yaml,,\n")
    monkeypatch.syspath_prepend(str(site))
    return site


def test_a_pack_is_found_by_its_name_and_none_of_its_code_is_run(tmp_path, pack):
    rulebook = load(write(tmp_path, "packs: [ours]\n"))
    assert rulebook.rule("our-rule") is not None
    assert "ourpack" not in sys.modules


def test_an_installed_pack_that_the_house_does_not_name_changes_nothing(pack):
    assert load().rule("our-rule") is None


def test_a_pack_that_points_outside_of_itself_and_one_that_is_not_there_are_refused(tmp_path, pack):
    said = refused(tmp_path, "packs: [stray, our]\n")
    assert "a folder that is not its own" in said[0]
    assert "Did you mean ours?" in said[1]


OUR_RULE = """\
rule: our-rule
title: Our holes are drilled where our jig drills them
level: advisory
looks_at: hole
when: leg == "wall"
require: {measure: diameter, at_most: 13 * mm}
says: "{row} is {measure} wide; our jig drills up to {limit}."
why: >
  Our jig takes bits of up to thirteen millimetres. A larger hole is drilled by hand, wanders off its mark, and
  the screw then sits against one side of it.
sources: [{id: shop, clause: sheet 4, basis: common practice}]
caution: {signal: CAUTION, text: A bit that catches in steel turns the piece; clamp it.}
defer: The workshop decides.
examples:
  breaks: [{plan: alcove-seat, at: /angles/seat-back}]
  holds: [{plan: alcove-seat, at: /angles/seat-back}]
since: 0.1.0
"""
