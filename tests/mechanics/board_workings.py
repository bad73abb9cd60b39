"""One call of every public function about boards and moisture, at several places of its range."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from plumbrule.mechanics import (
    across_grain,
    allowable,
    board_bearing,
    crack,
    fitting,
    lumber_factors,
    moisture,
    movement,
    restraint,
    shrinkage,
    simple_span,
    slack,
    stiffness,
    tables,
)

TABLES = tables.load()
ASH, REDCEDAR, PINE, TEAK = (
    TABLES.board(name) for name in ("white ash", "western redcedar", "eastern white pine", "teak")
)
UNSEASONED = ASH._replace(rupture_green=None, shear_green=None, compression_across_green=None)
ROOM = {"coldest": 50 / 3, "warmest": 230 / 9, "driest": 30.0, "dampest": 55.0}
STRESSES = ("bending", "shear", "bearing", "tension across")
SERVICES = ("dry", "damp", "fixed wet, dry later")

BOARD_CALLS: dict[str, Callable[[], Any]] = {
    "strength_ratio": lambda: [allowable.strength_ratio(q) for q in ("unknown", "sound front")],  # type: ignore[arg-type]
    "seasoning": lambda: [
        allowable.seasoning(board, stress)  # type: ignore[arg-type]
        for board in (ASH, REDCEDAR, UNSEASONED)
        for stress in STRESSES
    ],
    "exclusion": lambda: [allowable.exclusion(ASH, s) for s in STRESSES if s != "bearing"],  # type: ignore[arg-type]
    "safety_divisor": lambda: [allowable.safety_divisor(board) for board in (ASH, REDCEDAR)],
    "size_factor": lambda: [allowable.size_factor(t) for t in (20.0, 50.8, 89.0)],
    "bending_allowable": lambda: [
        allowable.bending_allowable(board, t, quality, season)  # type: ignore[arg-type]
        for board in (ASH, TEAK)
        for t in (38.1, 76.2)
        for quality in ("unknown", "sound front")
        for season in (None, 0.67, allowable.seasoning(board, "bending"))
    ],
    "shear_allowable": lambda: [allowable.shear_allowable(board) for board in (ASH, TEAK)],
    "bearing_allowable": lambda: [allowable.bearing_allowable(ASH, season) for season in (None, 0.5)],
    "tension_across_allowable": lambda: [allowable.tension_across_allowable(board) for board in (ASH, PINE)],
    "lumber_wet_service": lambda: [
        lumber_factors.lumber_wet_service(service, stress)  # type: ignore[arg-type]
        for service in SERVICES
        for stress in STRESSES
    ],
    "adjusted_stress": lambda: [
        lumber_factors.adjusted_stress(make(ASH), stress, "permanent", service)  # type: ignore[arg-type, operator]
        for make, stress in (
            (allowable.shear_allowable, "shear"),
            (allowable.bearing_allowable, "bearing"),
            (allowable.tension_across_allowable, "tension across"),
        )
        for service in SERVICES
    ],
    "board_modulus": lambda: [stiffness.board_modulus(ASH, service) for service in SERVICES],  # type: ignore[arg-type]
    "shear_free_modulus": lambda: stiffness.shear_free_modulus(stiffness.board_modulus(ASH)),
    "creep_factor": lambda: [stiffness.creep_factor("dry", stamped_dry=stamp) for stamp in (True, False)],
    "long_term_drop": lambda: stiffness.long_term_drop(2.2, 1.0, stiffness.creep_factor("damp", stamped_dry=True)),
    "seat_drop_limit": lambda: [stiffness.seat_drop_limit(span) for span in (900.0, 2463.8)],
    "full_seat_drop_limit": lambda: stiffness.full_seat_drop_limit(2463.8),
    "shelf_sag_limit": lambda: stiffness.shelf_sag_limit(stiffness.cantilever_span(208.0)),
    "visible_sag": lambda: stiffness.visible_sag(900.0),
    "cantilever_span": lambda: stiffness.cantilever_span(208.0),
    "feel": lambda: [stiffness.feel(drop) for drop in (1.0, 9.9, 30.0)],
    "tip_bearing_area": lambda: board_bearing.tip_bearing_area(101.6, 44.45),
    "bearing_area": lambda: board_bearing.bearing_area(38.1, 381.0),
    "board_bearing_stress": lambda: board_bearing.board_bearing_stress(
        1112.0, board_bearing.tip_bearing_area(0.0, 44.45)
    ),
    "bearing_left": lambda: board_bearing.bearing_left(50.8, 3.2, 1.6),
    "twist_share": lambda: [crack.twist_share(depth, 44.0) for depth in (0.0, 10.0, 22.0)],
    "cut_front_drop": lambda: crack.cut_front_drop(1112.0, 2463.8, stiffness.board_modulus(ASH), 924.0, 150.0, 44.45),
    "fill_credit": lambda: [crack.fill_credit(fill) for fill in crack._FILLS],  # type: ignore[arg-type]
    "screw_to_crack": lambda: [crack.screw_to_crack(x, 60.0, 100.0, 400.0, 90.0) for x in (20.0, 250.0, 460.0)],
    "cantilever_across_moment": lambda: across_grain.cantilever_across_moment(1112.0, 336.3, 774.7),
    "across_stiffness": lambda: [restraint.across_stiffness(board) for board in (ASH, REDCEDAR, TEAK)],
    "restraint_stress": lambda: restraint.restraint_stress(
        restraint.across_stiffness(ASH), movement.movement_coefficient(ASH), 3.9
    ),
    "splitting_strength": lambda: restraint.splitting_strength(ASH),
    "deepest_bite": lambda: restraint.deepest_bite(44.45),
    "slab_end_distance": lambda: restraint.slab_end_distance(4.1656),
    "slab_edge_distance": lambda: restraint.slab_edge_distance(4.1656),
    "equilibrium_moisture": lambda: [
        moisture.equilibrium_moisture(temperature, humidity, scale)  # type: ignore[arg-type]
        for temperature in (-1.0, 21.1, 60.0)
        for humidity in (5.0, 50.0, 95.0)
        for scale in ("°F", "°C")
    ],
    "moisture_band": lambda: [
        moisture.moisture_band(**ROOM),
        moisture.moisture_band(20.0, 20.0, 40.0, 40.0, "°C"),
        moisture.moisture_band(20.0, 60.0, 5.0, 40.0),
    ],
    "partial_shrinkage": lambda: shrinkage.partial_shrinkage(7.8, 12.0),
    "lumber_shrinkage": lambda: [shrinkage.lumber_shrinkage(15.0, face) for face in ("width", "thickness")],  # type: ignore[arg-type]
    "movement_by_shrinkage": lambda: [
        shrinkage.movement_by_shrinkage(381.0, 7.8, end, start) for end, start in ((5.0, 20.0), (35.0, 9.0), (9.0, 9.0))
    ],
    "movement_coefficient": lambda: [
        movement.movement_coefficient(board, sawn)  # type: ignore[arg-type]
        for board in (ASH, REDCEDAR)
        for sawn in ("flat", "quarter")
    ],
    "movement": lambda: movement.movement(
        381.0, movement.movement_coefficient(ASH), moisture.moisture_band(**ROOM).dry, 9.0
    ),
    "board_movement": lambda: [
        movement.board_movement(board, "flat", 381.0, end, start)
        for board in (ASH, REDCEDAR, TEAK)
        for end, start in ((11.2, 9.0), (5.1, 18.0), (17.0, 8.0), (40.0, 35.0))
    ],
    "along_grain_movement": lambda: movement.along_grain_movement(2463.8, 11.2, 9.0),
    "steel_growth": lambda: movement.steel_growth(2476.5, 230 / 9, 50 / 3),
    "finished_opening": lambda: fitting.finished_opening(1524.0, 0.0, 11.1125),
    "room_past": lambda: fitting.room_past(fitting.finished_opening(1524.0, 0.0, 11.1125), 1506.5375, 6.35),
    "tilting_width": lambda: fitting.tilting_width(1506.5375, 44.45),
    "largest_change": lambda: moisture.largest_change(5.1, 11.2, 9.0),
    "play_needed": lambda: slack.play_needed(
        movement.board_movement(ASH, "flat", 298.45, 16.0, 9.0), movement.board_movement(ASH, "flat", 298.45, 5.1, 9.0)
    ),
    "slack_needed": lambda: slack.slack_needed(-298.45, movement.movement_coefficient(ASH), 5.1, 11.2, 9.0),
    "slack_given": lambda: [slack.slack_given(6.35, 4.1656, 1.5875, countersunk=sunk) for sunk in (True, False)],
    "slot_needed": lambda: slack.slot_needed(3.2, 4.1656, 1.5875),
    "back_gap_needed": lambda: [slack.back_gap_needed(31.75, 4.8, 0.00274, 11.2, at) for at in (9.0, 13.0)],
    "front_gap_needed": lambda: slack.front_gap_needed(381.0, 0.00274, 11.2, 9.0),
    "end_gap_left": lambda: slack.end_gap_left(2470.0, 2463.8, movement.along_grain_movement(2463.8, 11.2, 9.0), 0.25),
    "shortfall": lambda: slack.shortfall(
        slack.slack_needed(298.45, 0.00274, 5.1, 11.2, 9.0), slack.slack_given(25.4, 4.1656, 1.6, countersunk=False)
    ),
    "rectangle_modulus": lambda: simple_span.rectangle_modulus(38.1, 184.15),
    "rectangle_second_moment": lambda: simple_span.rectangle_second_moment(38.1, 184.15),
    "even_bending_stress": lambda: simple_span.even_bending_stress(
        0.78, 4500.0, simple_span.rectangle_modulus(38.1, 184.15)
    ),
    "midspan_bending_stress": lambda: simple_span.midspan_bending_stress(1112.0, 900.0, 60000.0),
    "rectangle_shear_stress": lambda: simple_span.rectangle_shear_stress(1112.0, 38.1, 184.15),
    "even_sag": lambda: simple_span.even_sag(
        0.5, 1000.0, stiffness.board_modulus(ASH), simple_span.rectangle_second_moment(300.0, 19.0)
    ),
    "midspan_sag": lambda: simple_span.midspan_sag(1112.0, 1000.0, 12000.0, 171475.0),
}
