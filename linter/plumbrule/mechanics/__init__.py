"""Published formulas. Numbers in, a worked value out; nothing here knows a plan or a rule.

Arguments are SI (mm, N, MPa, kg, degrees, °C); specific gravity has no unit. Every function returns a `Worked`, or a
small record of them, or raises `OutsideRulebook` (the published formulas stop here: one sentence, no number) or
`NotPossible` (a dimension that cannot be). `Given` is `float | Worked`: pass an earlier `Worked` on and it becomes a
step of the later one; `given.si(worked)` is its value in SI. An empirical formula is worked in the units it is
printed in, so mind `Worked.unit`.

tables        load() -> Tables with .framing .board .fastener .wood_screw .steel .dressed .angle .clearance .washer
              .flat_head .bolt_edge .bending_yield .panel_core; rows in table_rows; files, digests and compiled twin in
              table_files; what tasks do to people in task_table
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
fitting       finished_opening, room_past, tilting_width
clearance     clearance_hole, wood_screw_rule_hole, gauge_diameter, hole_after_coat

The load path, from who sits on the board to the screws:

load_cases    CASES, COMBINATIONS, NO_CODE_LOAD, standing, combination_words, combination_duration
loads         board_weight, steel_weight, weight_of, person_load, seat_line_load, seat_area_load, storage_line_load,
              lean_load, below_benchmark, put_on_suddenly, dropped
push          push_share, push_couple, push_pulls, bracket_push, drawn_off, side_of_push
beam_loads    PointLoad, LineLoad, add;  continuous: continuous_beam(...) -> ContinuousBeam (firm supports, worked)
spring_beam   bend, spring_forces, walked: numbers only;  slip: slip_stiffness, joint_slip, pull_stiffness
board_twist   board_twist(...) -> BoardTwist.drop_of_point, .moment_of_point, .drop_of_spread; require_small_drop
board_strip   front_strip, person_bending, spread_bending, person_shear, across_moment, across_stress, corner_hold_down
back_angle    spread_load, spread_reactions, greatest_spread_force, spread_couple, person_force, person_couple
sharing       sharing_word, stiffness_second_moment, position_stiffness, shared_person -> SharedPerson
returns       return_load, return_forces, return_front_force, return_couple, return_drop
hold_down     BoardLoad, toe, hold_down -> HoldDown, wall_moment, toe_of_fillet_moment, beyond_toe, greatest_overhang,
              effective_width, across_at_toe, per_width
leg           leg_moment, leg_capacity, leg_shear_capacity, leg_under_edge, torque_between, torque_capacity,
              radius_clash
wall_leg      station_share, lever, pull, pulls_of_rows, on_lining -> OnLining, screw_lever, wall_leg_capacity
front_drop    position_rotation, front_drop -> FrontDrop
angle_beam    held_capacity, free_stretch, pressed_tip_capacity, overhang_reaction, idle_screw_load
cleat         lumber_stress, cleat_modulus, cleat_moment_capacity, cleat_shear_capacity, person_on_beam
bracket       bracket_screws, arm_moment, unbraced_drop, brace, nearer_bracket, require_reach, uneven_bending,
              across_on_arms, drop_beyond, held_by_seat_screws
group         screw_group, in_plane, vertical_line, out_of_plane: the elastic method

The board: what its wood stands, how it bends, and how it moves in the air of the room:

board_wood      solid_board, published, require_thickness: of which boards the averages speak
allowable       strength_ratio, seasoning, exclusion, size_factor, {bending,shear,bearing,tension_across}_allowable
lumber_factors  lumber_wet_service, adjusted_stress
simple_span     rectangle_modulus, even_bending_stress, midspan_bending_stress, rectangle_shear_stress, even_sag, …
across_grain    cantilever_across_moment;  board_bearing: bearing_area, board_bearing_stress, bearing_left
stiffness       board_modulus, creep_factor, long_term_drop, seat_drop_limit, shelf_sag_limit, visible_sag, feel
crack           cuts_through, twist_share, cut_front_drop, fill_credit, screw_to_crack
moisture        equilibrium_moisture, moisture_band -> MoistureBand, largest_change
movement        movement_coefficient, board_movement, along_grain_movement, steel_growth
shrinkage       partial_shrinkage, lumber_shrinkage, movement_by_shrinkage
restraint       across_stiffness, restraint_stress, splitting_strength, deepest_bite, slab_{end,edge}_distance
slack           slack_needed, play_needed, slack_given, slot_needed, back_gap_needed, front_gap_needed, end_gap_left

Panels, their edges and their adhesive, boxes behind them, the room:

slabs           Slab, Rect, height, outline, area, parts, smallest_width: shapes on a wall
course          bands, joints, lay -> Laying, stagger;  course_edges: edges, cover -> Cover, strips -> Strips
panel_stock     cut_from_panels -> Cutting;  panel_glue: sure_lines, glued_area, weight
panel_movement  thermal_strain, humidity_strain, humidity_swelling, wood_strain, strain, growth, edge_movement
sealant         joint_width, movement_share, usual_depth, bead_depth, bead_volume, fillet_volume, sloping_length
bonding         gap_under_panel, bonded_area, bond_shear
box             rim_behind, plate_width, plate_height, cover_lap, device_screw
room            turned_too_far, closing_gap, gap_change, niche_narrows

Work, and what it takes:

grit            grain, step;  coats: is_film, clock, last_grit -> LastGrit, pour_depth
calendar        WorkingHours, Span, day_and_clock;  precedence: Task, Times, in_turn, times, longest_chain, lasts
lifting         board_mass, block_mass, angle_mass, each_lifts, reach_to_hands, recommended_weight, wall_area
quantities      surface, coated, coats_area, coats_volume, fill_volume, glue_volume, dabs_volume, strips, discs, legs
cutting_stock   cut -> CutList, fewest -> Cutting;  cutting_bound: linear_bound, rounded
"""
