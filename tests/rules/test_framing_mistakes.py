"""Plans with one classic mistake each: the finding of that mistake, at its line, and hardly any other."""

from __future__ import annotations

import pytest
from shipped_plans import examined

MISTAKES = [
    ("holes-set-out-from-the-wrong-end", "screw-misses-the-wood", "/angles/score-steel/wall_holes/from_left/0"),
    ("studs-reckoned-from-the-first", "studs-reckoned-not-found", "/walls/long/framing/centres"),
    ("screw-lost-in-plaster-and-lath", "screw-too-short-to-count", "/screws/wall-screw/length"),
    ("lag-screws-into-steel-studs", "wall-outside-the-rulebook", "/walls/mirror/framing/kind"),
    ("screw-through-the-lamp-feed", "screw-meets-cable-or-pipe", "/angles/lamp-steel/wall_holes"),
    ("nobody-looked-for-pipes", "deep-screw-unsearched", "/walls/sink/services/looked_with"),
    ("garage-lining-cut-open", "lining-cut-in-fire-wall", "/angles/glove-steel/lining_behind"),
    ("pilots-as-wide-as-the-screw", "pilot-too-large", "/screws/wall-screw/pilot/thread"),
    ("toggles-under-a-bench", "no-screw-for-people", "/screws/cleat-screw/kind"),
    ("side-cleat-on-the-corner-stud", "cleat-on-one-stud", "/cleats/left"),
    ("cleat-splits-at-its-end", "cleat-screw-near-its-end", "/cleats/left/left"),
    ("bench-never-proved", "no-proof-load", "/steps"),
]


LOADED = ("station_load", "block_load")


def broken(name):
    found = examined(name).inspection.findings
    return [finding for finding in found if finding.verdict == "breaks" and finding.level != "advisory"]


@pytest.mark.parametrize(("name", "rule", "pointer"), MISTAKES)
def test_the_mistake_is_found_where_it_was_made(name, rule, pointer):
    assert (rule, pointer) in [(finding.rule.id, finding.pointer) for finding in broken(f"faulty/{name}")]


@pytest.mark.parametrize(("name", "rule", "pointer"), MISTAKES)
def test_little_else_is_wrong_in_the_framing(name, rule, pointer):
    # How strong these plans are under their loads is not what they show.
    found = [finding for finding in broken(f"faulty/{name}") if finding.rule.looks_at not in LOADED]
    rules = {finding.rule.id for finding in found if finding.rule.trade == "framing"}
    assert len(rules - {rule}) <= 1


@pytest.mark.parametrize("name", ["alcove-seat", "display-shelf", "cleat-shelf"])
def test_nothing_in_the_framing_of_a_clean_plan_is_wrong_or_left_uninspected(name):
    inspection = examined(name).inspection
    assert not [finding.rule.id for finding in broken(name) if finding.rule.trade == "framing"]
    assert not [finding.rule.id for finding in inspection.not_inspected if finding.rule.trade == "framing"]
    assert not [finding for finding in inspection.findings if finding.verdict == "failed"]
