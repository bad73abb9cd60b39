"""Limits of seats and shelves against measured people: the limits are settings of rules, the bodies are printed.

Body measures: 2012 Anthropometric Survey of US Army Personnel, NATICK/TR-15/007, and a university table of British
adults. Benches: 2010 ADA Standards, section 903.
"""

from __future__ import annotations

import pytest

from plumbrule import shipped
from plumbrule.reading.units import to_si
from plumbrule.rulebook.read import read_rule, read_sources

RULES = shipped.folder("rules")
# mm
SHORT_WOMAN_POPLITEAL, TALL_MAN_POPLITEAL, SHOE = 350, 490, 45
SHORT_WOMAN_THIGH = 441
TALL_MAN_SITTING = 977


def setting(rule: str, name: str) -> float:
    return read_rule(RULES / "loads" / f"{rule}.yaml", read_sources(RULES)).values()[name]


def test_a_seat_is_no_higher_and_no_lower_than_the_benches_of_the_standard_and_the_house() -> None:
    assert setting("seat-too-high", "most") == pytest.approx(to_si(19, "in"))
    assert setting("seat-too-low", "least") <= to_si(17, "in")
    # 17 in is 36.8 mm over a short woman's knee in her shoes, so a lower seat must be let through
    assert to_si(17, "in") - SHORT_WOMAN_POPLITEAL - SHOE == pytest.approx(36.8, abs=0.1)
    assert setting("seat-too-high", "most") <= TALL_MAN_POPLITEAL + SHOE


def test_a_seat_at_home_is_hardly_deeper_than_a_short_thigh_and_a_public_one_may_be() -> None:
    # 20 in is 67 mm too deep for her to lean on the wall
    assert to_si(20, "in") - SHORT_WOMAN_THIGH == pytest.approx(67, abs=0.1)
    assert setting("seat-too-deep", "most") - SHORT_WOMAN_THIGH < 20
    assert setting("seat-too-shallow", "public_least") <= to_si(20, "in")


def test_a_shelf_leaves_room_for_a_tall_man_to_sit_up() -> None:
    assert setting("shelf-over-heads", "least") > TALL_MAN_SITTING
    # over a seat of 18 in that is 56.46 in from the floor at least
    assert to_si(18, "in") + setting("shelf-over-heads", "least") >= to_si(56.46, "in")


def test_one_person_is_reckoned_with_what_the_standard_asks_of_a_bench() -> None:
    assert setting("declared-person-too-light", "person") == pytest.approx(1112, abs=0.5)
