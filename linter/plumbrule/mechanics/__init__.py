"""Published formulas. Numbers in, a worked value out; nothing here knows a plan or a rule.

Arguments are SI (mm, N, MPa, kg, degrees, °C); specific gravity has no unit. Every function returns a `Worked`
(or a small frozen class of them), or raises `OutsideRulebook` (the published formulas stop here: one sentence, no
number) or `NotPossible` (a dimension that cannot be). `Given` is `float | Worked`: pass the earlier `Worked` on and
it becomes a step of the later one. `given.si(worked)` is its value in SI.

Fasteners are `Fastener` rows and steels `Steel` rows of `tables.load()`; a size without a row raises OutsideRulebook.

tables        load() -> Tables: .framing(name) .board(name) .gravity(name) .fastener(kind, diameter)
              .wood_screw(gauge) .steel(name) .dressed(stud) .angle(leg, leg, thickness) .clearance(diameter)
              .washer(size) .flat_head(diameter); compile_tables() makes rules/tables/compiled.json
outside       OUTSIDE_WORDS ("inside" first), REASONS, outside(word) -> OutsideRulebook, screw_kind_word(kind),
              support_word(framing_kind), classify(...) -> word
tolerance     play(hole, diameter)  offset_at_face(off_centre, *, found, drilled, play, drift=0.0)
              offset_at_face_rss(...)  lean(penetration, angle=3.0)  offset_at_tip(face, lean)
              cover_to_axis(stud_width, offset)  cover_at_tip(stud_width, offset, diameter)
screw_length  penetration(length, steel, layers)  tip_length(fastener)  bearing_length(penetration, tip)
              full_penetration(kind, penetration, tip)  least_penetration(kind, diameter)
              thread_by_rule(kind, diameter, length)  thread_in_wood(kind, penetration, thread, tip)
              require_penetration(kind, diameter, penetration, tip) -> Worked, or raises OutsideRulebook
lining        bearing_gap(lining_behind, layers, packer=None)  Packer(...)
bearing_wood  wood_bearing(gravity, diameter, grain_angle)  steel_bearing(ultimate, formed)
              steel_bearing_of(steel)  bending_yield(diameter, kind)
lateral       side_strength(*, diameter, root_diameter, bending_yield, main_bearing, side_bearing, main_length,
              side_length, gap, grain_angle) -> SideStrength(worked, mode, modes, reductions)
              reduction(diameter, root_diameter, grain_angle) -> Reduction
withdrawal    withdrawal_per_length(kind, gravity, diameter)  withdrawal(kind, gravity, diameter, thread_in_wood)
              root_tension(root_diameter, ultimate=...)  pull_capacity(withdrawal, root_tension)
factors       load_duration(case)  wet_service(...)  warm_service(...)  group(...)  geometry(...)
              end_grain(...)  adjusted(reference, *factors)
combined      combined(*, side_force, pull, side_capacity, pull_capacity) -> Combined
head          ring(bearing_width, hole)  ring_worst(bearing_width, diameter, hole)
              pull_over(thickness, bearing_width, ultimate, *, eccentric)  pull_through(...)
pilot         thread_pilot(fastener, gravity, loading) / shank_pilot(...) -> PilotRange(least, most) of Worked
edge          placement(...) -> Placement(edge, end, in_row, between_rows, advisory)
blocking      end_shares(force, position, length)  end_pulls(...)  end_screw_share(...)  block_end_use(...)
section       sharp_angle(leg_x, leg_y, thickness) -> AngleSection  angle_section(...)  (published row where one is)
hole          edge_clear, bearing_strength, tear_out_strength, screw_bearing_strength, hole_strength, net_area, ...
countersink   sink_depth, land, bearing_thickness, angle_mismatch   clearance   close/normal/loose holes
"""
