"""Twenty-one shortcuts that a naive calculation takes, by number, and the tests that fail one that takes it.

The list is what the load path was designed against. A test that is renamed or lost fails here.
"""

from __future__ import annotations

import ast
from pathlib import Path

import pytest
from workings import LAG_14

from plumbrule.mechanics import tolerance
from plumbrule.reading.units import from_si, to_si

TESTS = Path(__file__).parents[1]
SCREW, BOARD, LOAD = (f"mechanics/test_{name}.py" for name in ("traps", "board_traps", "load_traps"))

TRAPS: dict[int, tuple[str, dict[str, tuple[str, ...]]]] = {
    1: ("printed side strengths for a screw through lining; a fatter screw as remedy", {
        SCREW: ("test_lining_halves_a_screw_and_a_fatter_one_is_no_remedy",)}),
    2: ("the back angle given half of a spread load", {
        LOAD: ("test_the_back_takes_the_full_depth_of_a_spread_load",)}),
    3: ("no hold-down at the back corners", {
        LOAD: ("test_the_back_corners_are_pulled_up", "test_weight_relieves_no_corner",
               "test_two_people_pull_a_corner_up_twice")}),
    4: ("half the depth as front strip of a short board", {
        LOAD: ("test_a_short_board_has_a_narrow_front_strip",)}),
    5: ("a return on one screw, or loaded at mid depth", {
        LOAD: ("test_a_return_on_one_screw_counts_as_absent", "test_a_return_is_loaded_at_the_front_edge")}),
    6: ("the reaction of the back angle at the middle of its leg", {
        LOAD: ("test_a_spread_load_bears_on_the_tip_of_the_leg",)}),
    7: ("the lever of a rigid leg; leg up and leg down alike", {
        LOAD: ("test_the_lever_is_not_that_of_a_rigid_leg", "test_leg_down_is_not_leg_up")}),
    8: ("overhang to bearing as a ratio", {LOAD: ("test_three_to_one_is_not_safe",)}),
    9: ("a person spread over the pitch or the length, the end forgotten", {
        LOAD: ("test_a_person_does_not_spread_over_the_pitch_or_the_length",
               "test_the_end_of_a_shelf_is_its_weak_place")}),
    10: ("a person shared between loose screws; even shares; end screws that are pushed up forgotten", {
        LOAD: ("test_screws_share_a_person_only_when_all_of_it_is_so", "test_even_supports_do_not_take_even_shares",
               "test_one_loose_screw_idles", "test_a_return_is_loaded_at_the_front_edge")}),
    11: ("short load duration on people; duration on steel; a fall as a static load", {
        LOAD: ("test_people_sit_at_ten_years_and_steel_has_no_duration", "test_a_fall_has_no_number"),
        BOARD: ("test_people_are_no_short_load_and_bearing_takes_no_duration",)}),
    12: ("averages of clear wood as design stresses; epoxy; a full width across a crack", {
        BOARD: ("test_an_average_is_no_design_stress_nor_is_its_half", "test_a_filled_crack_is_a_crack",
                "test_a_crack_past_half_the_board_parts_it")}),
    13: ("blocking taken for a stud; four diameters to the edge of a stud", {
        SCREW: ("test_a_weight_on_blocking_runs_across_the_grain",
                "test_a_stud_has_no_loaded_edge_for_a_thick_screw")}),
    14: ("tip, thread in the lining and unmeasured thread as grip", {
        SCREW: ("test_the_tip_of_a_lag_screw_holds_nothing", "test_thread_in_the_lining_is_no_thread_in_wood",
                "test_thread_that_was_not_measured_is_the_least_by_rule")}),
    15: ("studs reckoned from the first; the lean of a drill forgotten", {
        "facts/test_screw_facts.py": (
            "test_a_stud_that_was_only_reckoned_may_have_drifted_half_an_inch_and_the_first_may_not",),
        "mechanics/test_every_trap.py": ("test_a_pilot_leans_an_eighth_of_an_inch_at_the_tip_of_a_lag",
                                         "test_a_reckoned_stud_is_half_an_inch_off")}),
    16: ("clearance holes and countersunk heads that slide; movement from the middle of the board", {
        BOARD: ("test_a_clearance_hole_is_no_slot", "test_a_countersunk_head_centres_itself_in_any_slot",
                "test_a_board_moves_from_the_row_that_is_fixed")}),
    17: ("root diameter in withdrawal, nominal in the yield modes; a table's reduction on top", {
        SCREW: ("test_withdrawal_goes_by_the_nominal_diameter", "test_the_yield_modes_go_by_the_root_diameter",
                "test_thin_factor_goes_by_the_root_and_does_not_jump",
                "test_no_table_reduction_on_top_of_the_bearing_length")}),
    18: ("tables of plates alike in both directions on a plank", {
        BOARD: ("test_a_plank_is_no_isotropic_plate",), LOAD: ("test_a_plank_is_not_a_plate_of_even_stiffness",)}),
    19: ("pull-through of a flat head; the strength of A36 for unmarked steel", {
        SCREW: ("test_pull_through_does_not_cover_a_countersunk_head", "test_unmarked_steel_is_not_a36")}),
    20: ("what is missing read as nothing", {
        SCREW: ("test_gap_shim_lining_and_play_have_no_default", "test_nothing_takes_none"),
        LOAD: ("test_nothing_of_the_load_path_may_be_left_out", "test_nothing_of_the_load_path_takes_none"),
        "facts/test_load_facts.py": ("test_an_input_left_out_is_named_and_gives_no_number",)}),
    21: ("a use of 1.004 rounded to 1.00 and passed", {
        "rules/test_load_mistakes.py": ("test_a_use_of_one_and_four_thousandths_breaks_and_reads_so",),
        "report/test_text_report.py": ("test_a_fail_by_a_hair_reads_as_a_fail",)}),
}  # fmt: skip


def functions(path: str) -> set[str]:
    tree = ast.parse((TESTS / path).read_text(encoding="utf-8"))
    return {node.name for node in tree.body if isinstance(node, ast.FunctionDef)}


def test_there_are_twenty_one() -> None:
    assert sorted(TRAPS) == list(range(1, 22))


@pytest.mark.parametrize("number", TRAPS, ids=lambda number: f"{number} {TRAPS[number][0][:40]}")
def test_every_trap_has_its_tests(number: int) -> None:
    for path, names in TRAPS[number][1].items():
        assert set(names) <= functions(path), (number, path, set(names) - functions(path))


def test_a_pilot_leans_an_eighth_of_an_inch_at_the_tip_of_a_lag() -> None:
    """2-3/8 in of bite at 3 degrees: 0.124 in. A hole that is right at the face may still leave the stud at its tip."""
    face = tolerance.offset_at_face(0.0, found=3.175, drilled=1.5875, play=(7.9375 - LAG_14.diameter) / 2)
    tip = tolerance.offset_at_tip(face, tolerance.lean(to_si(2.375, "in")))
    assert from_si(face.value, "in") == pytest.approx(0.219, abs=0.0006)
    assert from_si(tip.value, "in") == pytest.approx(0.343, abs=0.0006)
    assert from_si(tip.value - face.value, "in") == pytest.approx(0.124, abs=0.001)


def test_a_reckoned_stud_is_half_an_inch_off() -> None:
    """A 1/4 lag beside the centre of a 1-1/2 in stud has 0.031 in left of what it needs then: no screw passes."""
    given = {"found": 3.175, "drilled": 1.5875, "play": 0.79375}
    found, reckoned = (tolerance.offset_at_face(0.0, **given, drift=drift).value for drift in (0.0, to_si(0.5, "in")))
    assert reckoned - found == pytest.approx(12.7)
    assert 38.1 / 2 - reckoned < 1.5 * LAG_14.diameter <= 38.1 / 2 - found
