"""The house file: what a team may change, and that a slip in it is named like one in a plan."""

from __future__ import annotations

import pytest

from plumbrule.plan.house import House
from plumbrule.reading.fault import Unreadable
from plumbrule.reading.places import read
from plumbrule.reading.take import take

WORKSHOP = """\
settings:
  hole-near-steel-edge: {factor: 2, least: 1/8 in}
levels: {hole-not-deburred: advisory}
trial: [new-rule]
rules: [our-rules, ../shared-rules]
packs: [school-rules]
prices:
  currency: EUR
  hour: 38.5
  panels: {cladding: 14}
  steel: {seat-steel: 31.2}
  screws: {wall-lag: 0.9}
  washers: {wall-lag: 0.1}
  boards: {seat: 210}
  timber: {4x6: 18}
  trims: {shoe: 9}
  sealants: {perimeter: 11}
  finishes: {seat: 42}
  abrasives: {grit-120: 0.7}
  electrical: {box extender: 4}
  protection: {dust respirator: 6}
hours: {starts: "7:30", ends: "16:00", days: [monday, tuesday, wednesday, thursday, friday]}
loads: {person: 300 lbf, seat: 150 lbf/ft, storage: {books: 40 lbf/ft}, lean: 75 lbf}
"""


def house(text: str) -> House:
    return take(House, read(text.encode(), "house.yaml"))


def said(text: str) -> list[str]:
    with pytest.raises(Unreadable) as error:
        house(text)
    return [str(fault) for fault in error.value.faults]


def test_every_key_is_read() -> None:
    read_house = house(WORKSHOP)
    assert read_house.settings == {"hole-near-steel-edge": {"factor": 2, "least": "1/8 in"}}
    assert read_house.levels == {"hole-not-deburred": "advisory"}
    assert read_house.rules == ("our-rules", "../shared-rules") and read_house.packs == ("school-rules",)
    assert read_house.trial == ("new-rule",)
    assert read_house.prices is not None and read_house.prices.screws == {"wall-lag": 0.9}
    assert read_house.hours is not None and read_house.hours.starts == "7:30"
    assert {key for key in House.model_fields if getattr(read_house, key) is None} == set()


def test_a_house_file_may_say_one_thing_only() -> None:
    assert house("levels: {hole-not-deburred: advisory}").settings is None


@pytest.mark.parametrize(
    ("old", "new", "starts"),
    [
        ("advisory", "warning", "house.yaml:3:29  /levels/hole-not-deburred: `warning` is"),
        (
            "settings:",
            "setings:",
            "house.yaml:1:1  /setings: `setings` is not a key of this file. Did you mean `settings`?",
        ),
        (
            "trial:",
            "ignore:",
            "house.yaml:4:1  /ignore: `ignore` is not a key of this file. A rule is not switched off:",
        ),
        ("trial: [new-rule]", "trial: new-rule", "house.yaml:4:8  /trial: `new-rule` stands here."),
        ("hour: 38.5", "hour: -1", "house.yaml:9:9  /prices/hour: "),
        ('"7:30"', '"25:30"', "house.yaml:22:17  /hours/starts: "),
        ("monday", "mo", "house.yaml:22:47  /hours/days/0: `mo` is"),
        ("books: 40", "boks: 40", "house.yaml:23:54  /loads/storage/boks: "),
    ],
)
def test_a_slip_is_named(old: str, new: str, starts: str) -> None:
    (sentence,) = said(WORKSHOP.replace(old, new, 1))
    assert sentence.startswith(starts)
