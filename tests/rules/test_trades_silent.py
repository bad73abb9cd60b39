"""Mistakes that a careful carpenter or safety officer objects to, and that once passed without a word."""

from __future__ import annotations

from datetime import date
from functools import cache

import pytest

from plumbrule.inspection.examine import Examined, examine
from plumbrule.reading.patch import patched
from plumbrule.rulebook.load import load
from plumbrule.teaching.prove import base_plan

ALCOVE, READING, SHELF, LEDGE = "alcove-seat", "panel-wall", "bracket-shelf", "display-shelf"


def put(path: str, value: object) -> dict[str, object]:
    return {"op": "add", "path": path, "value": value}


def drop(path: str) -> dict[str, object]:
    return {"op": "remove", "path": path}


def after(step: str, *earlier: str) -> dict[str, object]:
    return put(f"/steps/{step}/after", list(earlier))


def again(task: str, works_on: list[str] | None, *earlier: str, **more: object) -> dict[str, object]:
    """A step of its own, with what such a step wears and does where that is not the point."""
    on = {} if works_on is None else {"works_on": works_on}
    return {"task": task, **on, "after": list(earlier), "takes": "1 h", "wears": ["dust respirator", "safety glasses"],
            "controls": ["ventilation", "HEPA vacuum", "children kept out", "step platform"], **more}  # fmt: skip


# name, plan, patch, rule, verdict
SILENT = [
    # The wall's face
    ("gloss broken over the primer only", ALCOVE,
     [after("prime", "rinse"), after("abrade", "prime"), after("line", "dust"), after("try", "dust"),
      after("pilots", "line", "coat", "dust"), after("edge", "line", "dust")], "gloss-not-abraded", "breaks"),
    ("washed over the primer", ALCOVE,
     [after("prime", "patch"), after("wash", "prime"), after("pilots", "line", "coat"), after("try", "line"),
      after("edge", "line", "dust")], "wall-not-washed", "breaks"),
    ("holes drilled above the wiped face", ALCOVE,
     [after("wipe", "edge", "try", "dry-lay"), after("pilots", "line", "prime", "coat", "wipe"),
      after("lay", "wipe", "hang")], "not-wiped-before-laying", "breaks"),
    ("bond tried before the primer", ALCOVE, [after("try", "dust"), after("prime", "try")], "bond-not-tried", "breaks"),
    ("primed under the name of the panels, laid an hour later", READING,
     [put("/steps/prime", again("prime wall", ["cladding"], "dust", then_wait="1 h")),
      after("wipe", "try", "dry-lay", "prime"), put("/steps/try/after", ["prime"]),
      put("/steps/try/then_wait", "1 h")], "primer-too-fresh", "breaks"),
    ("painted, and nobody says which wall", SHELF,
     [put("/walls/bench/surface/coating", "gloss paint"), put("/steps/paint", again("paint wall", None, "measure"))],
     "gloss-not-abraded", "not inspected"),
    ("dusted, and nobody says which wall", ALCOVE, [drop("/steps/dust/works_on")],
     "dust-left-after-sanding", "not inspected"),
    ("loose paper painted over", ALCOVE, [put("/walls/left/surface/state", ["loose paper"])],
     "paper-left-on-the-wall", "breaks"),
    ("chalk painted over", ALCOVE,
     [put("/walls/left/surface/state", ["chalking"]), put("/steps/prime/works_on", ["back", "pier"])],
     "powdery-wall", "breaks"),
    ("stain painted over", ALCOVE,
     [put("/walls/left/surface/state", ["stained"]), put("/steps/prime/works_on", ["back", "pier"])],
     "stains-not-blocked", "breaks"),
    ("fresh plaster shut in", ALCOVE, [put("/walls/pier/surface/state", ["fresh plaster"])],
     "fresh-plaster-covered", "breaks"),
    ("wiped ten days before", ALCOVE, [put("/steps/wipe/then_wait", "10 days")], "wiped-too-long-before", "breaks"),
    # The finish
    ("screwed down wet, and no step sets it", LEDGE,
     [drop("/steps/set"), after("screw", "finish", "hang"), put("/steps/finish/then_wait", "1 h"),
      put("/steps/screw/then_wait", "40 days")], "set-before-dry", "breaks"),
    ("sanded again after the last coat", LEDGE,
     [put("/steps/sand2", again("sand board", ["ledge"], "finish", where="workshop")), after("set", "hang", "sand2")],
     "board-out-of-turn", "breaks"),
    ("filled again after sanding", ALCOVE,
     [put("/steps/fill2", again("fill cracks", ["seat"], "sand", where="workshop", then_wait="2 days")),
      after("finish", "fill2")], "board-out-of-turn", "breaks"),
    # Order, waits and what is missing
    ("patched again after the paint", ALCOVE,
     [put("/steps/patch2", again("patch wall", ["left"], "paint", then_wait="24 h")),
      after("set", "finish", "hang", "seal", "patch2")], "wall-out-of-turn", "breaks"),
    ("corner trim on the bare wall", ALCOVE, [after("edge", "line")], "wall-out-of-turn", "breaks"),
    ("painted onto wet primer", ALCOVE, [put("/steps/prime/then_wait", "0 h"), after("paint", "prime")],
     "wall-coat-not-dry", "breaks"),
    ("hole for the block left open", ALCOVE, [put("/steps/patch/works_on", ["back", "pier"])],
     "step-missing", "breaks"),
    ("power never put back", ALCOVE, [drop("/steps/power"), after("hand-over", "prove-load", "plates-on")],
     "step-missing", "breaks"),
    ("laid on one of two walls", ALCOVE, [put("/steps/lay/works_on", ["back"])], "step-missing", "breaks"),
    ("primed and left", ALCOVE, [drop("/steps/paint"), after("set", "finish", "hang", "seal")],
     "primed-never-painted", "breaks"),
    ("edges eased on paper only", ALCOVE, [drop("/steps/ease"), after("sand", "cut-board")],
     "edges-nobody-eases", "breaks"),
    ("proved with a bucket", ALCOVE, [put("/steps/prove-load/load", "10 lbf")], "proof-load-too-light", "breaks"),
    ("proved with nobody knows what", ALCOVE, [drop("/steps/prove-load/load")], "proof-load-too-light",
     "not inspected"),
    ("seat handed over by itself before its proof", ALCOVE,
     [put("/steps/early", {"task": "hand over", "works_on": ["seat"], "after": ["screw"]})],
     "handed-over-unproved", "breaks"),
    ("handed over twice, nobody says what", ALCOVE, [put("/steps/early", {"task": "hand over", "after": ["screw"]})],
     "handed-over-unproved", "not inspected"),
    ("planed while the glue of a wood patch is wet", ALCOVE,
     [put("/boards/seat/cracks/end-check/fill", "wood patch"), drop("/steps/fill/then_wait")],
     "wood-patch-not-dry", "breaks"),
    # What hurts
    ("nobody is said to use the room", ALCOVE, [put("/site/people", [])], "children-near-the-work", "not inspected"),
    ("painted trim pried off a bare old wall", READING,
     [put("/site/year_built", 1955), put("/walls/north/surface/coating", "none"), drop("/walls/north/surface/tests"),
      drop("/walls/north/surface/coated_ago")], "old-paint-not-tested", "breaks"),
    ("old plaster drilled", LEDGE, [put("/site/year_built", 1972)], "old-lining-drilled-untested", "breaks"),
    ("old paint ground on the word of a swab", READING, [put("/walls/north/surface/tests/lead/method", "swab")],
     "lead-swab-trusted", "breaks"),
    ("rags of oil enamel left", ALCOVE,
     [put("/steps/coat/controls", ["ventilation", "ignition sources out", "children kept out"])],
     "oily-rags-left", "breaks"),
    ("wall painted outdoors", ALCOVE,
     [put("/steps/prime/where", "outdoors"), put("/steps/prime/controls", ["step platform"])],
     "no-fresh-air", "breaks"),
]  # fmt: skip

RIGHT = [
    ("laid and rolled wall by wall", ALCOVE,
     [put("/steps/lay/works_on", ["back"]),
      put("/steps/lay2", again("lay panels", ["pier"], "wipe", people=2, takes="4 h")),
      put("/steps/roll/at_once_after", ["lay", "lay2"]), put("/steps/roll/works_on", ["back", "pier"])]),
    ("finished in two goes, sanded between them", ALCOVE,
     [put("/steps/finish/then_wait", "24 h"),
      put("/steps/sand2", again("sand board", ["seat"], "finish", where="workshop", people=2,
                                wears=["dust respirator", "safety glasses", "ear protection"])),
      put("/steps/finish2", again("finish board", ["seat"], "sand2", where="workshop", people=2, between_coats="6 h",
                                  then_wait="21 days", wears=["chemical gloves"])),
      after("set", "finish2", "hang", "seal", "paint")]),
    ("circuits handed over first", ALCOVE,
     [put("/steps/hand-over/works_on", ["seat", "cladding", "back", "left", "pier"]),
      put("/steps/lit", {"task": "hand over", "works_on": ["kettle", "lights"], "after": ["power"], "takes": "10 min"}),
      after("hand-over", "prove-load", "power")]),
    ("finished where it hangs", SHELF,
     [after("finish", "screw"), put("/steps/finish/where", "in the room"), after("set", "hang", "sand"),
      after("screw", "set"), after("prove-load", "finish")]),
    ("left bare on purpose", SHELF,
     [put("/boards/shelf/finish", {"kind": "none"}), drop("/steps/finish"), drop("/steps/rags"),
      after("set", "sand", "hang"), after("hand-over", "prove-load")]),
    ("proved on its steel", ALCOVE, [put("/steps/prove-load/works_on", ["seat-back", "seat-left", "seat-pier"])]),
]  # fmt: skip


@cache
def clean(plan: str) -> frozenset[tuple[str, str]]:
    return frozenset(told(examine(base_plan(plan), load(), date(2026, 6, 1))))


def told(examined: Examined) -> set[tuple[str, str]]:
    inspection = examined.inspection
    return {(one.rule.id, one.verdict) for one in (*inspection.findings, *inspection.not_inspected)}


@pytest.mark.parametrize(
    ("plan", "patch", "rule", "verdict"), [row[1:] for row in SILENT], ids=[row[0] for row in SILENT]
)
def test_the_mistake_is_told(plan, patch, rule, verdict):
    assert (rule, verdict) not in clean(plan)
    assert (rule, verdict) in told(examine(patched(base_plan(plan), patch), load(), date(2026, 6, 1)))


@pytest.mark.parametrize(("plan", "patch"), [row[1:] for row in RIGHT], ids=[row[0] for row in RIGHT])
def test_the_same_work_written_otherwise_is_left_alone(plan, patch):
    examined = examine(patched(base_plan(plan), patch), load(), date(2026, 6, 1))
    loud = {(one.rule.id, one.verdict) for one in examined.inspection.findings if one.level != "advisory"}
    unseen = {(one.rule.id, one.verdict) for one in examined.inspection.not_inspected if one.level != "advisory"}
    assert (loud | unseen) - clean(plan) == set()
