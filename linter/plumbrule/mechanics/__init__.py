"""Published formulas. Numbers in, a worked value out; nothing here knows a plan or a rule.

Arguments are SI (mm, N, MPa, kg, degrees, °C); specific gravity has no unit. Every function returns a `Worked`, or a
small frozen class of them, or raises `OutsideRulebook` (the published formulas stop here: one sentence, no number) or
`NotPossible` (a dimension that cannot be). `Given` is `float | Worked`: pass an earlier `Worked` on and it becomes a
step of the later one; `given.si(worked)` is its value in SI. An empirical formula is worked in the units it is
printed in, so mind `Worked.unit`.

tables        load() -> Tables with .framing .board .fastener .wood_screw .steel .dressed .angle .clearance .washer
              .flat_head .bolt_edge .bending_yield; rows in table_rows; compile_tables, write_compiled
outside       OUTSIDE_WORDS, REASONS, outside(word), screw_kind_word, support_word
classify      first(*words), size_word, wood_word, gap_word, bite_word, cover_word, across_grain_word, end_grain_word
tolerance     play, offset_at_face, lean, offset_at_tip, offset_rss, cover_to_axis, cover_at_tip
screw_length  penetration, tip_length, bearing_length, full_penetration, least_penetration, require_penetration,
              thread_by_rule, thread_in_wood
lining        lining_gap, packed_gap(layers, Packer), main_bearing, require_gap
bearing_wood  wood_bearing, bearing_at_angle, steel_bearing, steel_bearing_of, bending_yield, counts_as_small
lateral       side_strength(...) -> SideStrength(worked, mode, modes, in_words); reduction: R_d, K_D, K_theta
withdrawal    withdrawal_per_length, withdrawal, nail_withdrawal_per_length, root_tension, pull_capacity
one_screw     screw_side_strength, screw_withdrawal: a table row in, everything checked on the way
factors       load_duration, wet_service, warm_service, group, geometry, loaded_edge, end_grain, toe_screw, adjusted
combined      combined(side_force, pull, side_capacity, pull_capacity) -> Combined
head          ring, ring_worst, pull_over, washer_counts, pull_through
pilot         thread_pilot, shank_pilot -> PilotRange(least, most, required)
edge          placement(diameter, load, side, prebored) -> Placement
blocking      end_shares, twist, end_screw_force, end_screw_strength
section       angle_section, sharp_angle -> AngleSection; mass
hole          clear_distance, clear_between, bearing_strength, tear_out_strength, sheet_strength, hole_strength,
              bears_at_once, net_area, net_strip_modulus, heel_room, worst_distance
countersink   cone_height, cut_depth, sink_depth, land, bearing_thickness, depth_share, angle_mismatch
corner        to_inside_mitre, to_outside_mitre, mitre_runs_out, clear_of, run_into
clearance     clearance_hole, wood_screw_rule_hole, gauge_diameter, hole_after_coat
"""
