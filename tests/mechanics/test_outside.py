"""What is outside the rulebook says so in one sentence, and never with a number."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest
from workings import A36, LAG_14, NO_10, TABLES, through_leg

from plumbrule.mechanics import bearing_wood, blocking, classify, factors, head, screw_length, withdrawal
from plumbrule.mechanics.outside import OUTSIDE_WORDS, REASONS, outside, screw_kind_word, support_word
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan import words

RAISES: dict[str, Callable[[], object]] = {
    "screw size": lambda: TABLES.fastener("wood screw", 2.845),
    "other screw": lambda: TABLES.fastener("sheet-metal screw", 4.826),
    "wide gap": lambda: through_leg(LAG_14, 32.0),
    "light wood": lambda: bearing_wood.wood_bearing(0.30, 6.35, 0),
    "heavy wood": lambda: withdrawal.withdrawal_per_length("wood screw", 0.74, 4.826),
    "short bite": lambda: screw_length.require_penetration("wood screw", 4.826, 28.0, 9.652),
    "across the grain": lambda: factors.loaded_edge(6.35, 19.05, 90),
    "steel grade": lambda: bearing_wood.steel_bearing_of(TABLES.steel("6061-T6")),
    "small head": lambda: head.pull_over(3.175, 7.5, A36, eccentric=True),
    "countersunk head in wood": lambda: head.pull_through(0.42, 9.0, 19.0, "flat"),
}


@pytest.mark.parametrize("word", RAISES)
def test_the_case_is_refused_with_its_own_sentence(word: str) -> None:
    with pytest.raises(OutsideRulebook) as refused:
        RAISES[word]()
    assert refused.value.reason == REASONS[word] == outside(word).reason


def test_reasons_are_one_sentence_for_the_person_on_site() -> None:
    for word, reason in REASONS.items():
        assert reason.endswith(".") and reason.count(". ") == 0, word
        assert 40 < len(reason) < 260, word
        assert not re.search(r"\d+ ?(lbf|lb|N|psi|kN)\b", reason), f"{word}: no strength may stand in it"
    assert len(set(REASONS.values())) == len(REASONS)


def test_the_words_are_a_closed_list_that_starts_inside() -> None:
    assert OUTSIDE_WORDS[0] == "inside"
    assert set(OUTSIDE_WORDS) == {"inside", *REASONS}
    with pytest.raises(KeyError):
        outside("inside")


def test_only_wood_and_lag_screws_are_inside() -> None:
    inside = {kind for kind in words.SCREW_KINDS if screw_kind_word(kind) == "inside"}
    assert inside == {"wood screw", "lag screw"}
    assert screw_kind_word("drywall screw") == "drywall screw"
    assert screw_kind_word("a kind of next year") != "inside"


def test_only_wood_studs_are_inside() -> None:
    assert {kind for kind in words.FRAMING_KINDS if support_word(kind) == "inside"} == {"wood studs"}
    assert support_word("straw bales") != "inside"


def test_the_first_word_wins() -> None:
    assert classify.first("inside", "short bite", "wide gap") == "short bite"
    assert classify.first() == classify.first("inside") == "inside"


def test_each_question_has_two_answers() -> None:
    """Each limit met exactly is inside; a hair past it is outside."""
    hair = 0.02
    assert classify.wood_word(0.31) == "inside" and classify.wood_word(0.309) == "light wood"
    assert classify.wood_word(0.73) == "inside" and classify.wood_word(0.731) == "heavy wood"
    assert classify.gap_word(31.75, 60.0) == "inside" and classify.gap_word(31.75 + hair, 60.0) == "wide gap"
    assert classify.gap_word(25.0, 25.0) == "inside" and classify.gap_word(25.0 + hair, 25.0) == "wide gap"
    six = 6 * NO_10.diameter
    assert classify.bite_word("wood screw", NO_10.diameter, six, NO_10.tip) == "inside"
    assert classify.bite_word("wood screw", NO_10.diameter, six - hair, NO_10.tip) == "short bite"
    four = 4 * LAG_14.diameter + LAG_14.tip
    assert classify.bite_word("lag screw", LAG_14.diameter, four, LAG_14.tip) == "inside"
    assert classify.bite_word("lag screw", LAG_14.diameter, four - hair, LAG_14.tip) == "short bite"
    assert classify.cover_word(0.0) == "inside" and classify.cover_word(-hair) == "off the stud"
    assert classify.across_grain_word(6.35, 25.4, 90) == "inside"
    assert classify.across_grain_word(6.35, 25.4 - hair, 90) == "across the grain"
    assert classify.across_grain_word(6.2, 5.0, 90) == "inside"
    assert classify.size_word(TABLES, "wood screw", 4.826) == "inside"
    assert classify.size_word(TABLES, "wood screw", 3.0) == "screw size"
    assert classify.size_word(TABLES, "toggle", 4.826) == "other screw"
    assert classify.end_grain_word(into_end_grain=True, loaded_in_withdrawal=True) == "end grain"
    assert classify.end_grain_word(into_end_grain=True, loaded_in_withdrawal=False) == "inside"
    assert classify.drop_word(dropped=True) == "drop" and classify.drop_word(dropped=False) == "inside"


def test_a_block_on_one_screw_counts_as_absent() -> None:
    with pytest.raises(OutsideRulebook, match="absent"):
        blocking.end_screw_force(100.0, 0.0, 0.0, 1, 50.0)


def test_screws_too_close_or_too_many_in_a_row_get_no_factor() -> None:
    with pytest.raises(OutsideRulebook, match="three diameters"):
        factors.geometry(6.35, 19.0)
    with pytest.raises(OutsideRulebook, match="row"):
        factors.group(6.35, 3)
    assert factors.group(4.8, 5).value == 1.0
