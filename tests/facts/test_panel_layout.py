"""Panels of the shipped plans, piece by piece as they were set out on paper, and what keeps a wall from being laid."""

from __future__ import annotations

import time
from typing import Any

import pytest
from steel_rows import plan_of

from plumbrule.facts.layout import WallLayout, layouts, panel_over
from plumbrule.facts.panels import panels_rows
from plumbrule.facts.supports import supports
from plumbrule.plan.read import plan_from_text

INCH = 25.4


def laid(name: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()) -> dict[str, WallLayout]:
    plan = plan_of(name, changes, gone)
    return {one.wall_name: one for one in layouts(plan, supports(plan))}


def rows_of(name: str, changes: dict[str, Any] | None = None, gone: tuple[str, ...] = ()):
    plan = plan_of(name, changes, gone)
    return panels_rows(plan, supports(plan))


def lengths(layout: WallLayout, course: int) -> list[float]:
    return [(piece.right - piece.left) / INCH for piece in layout.pieces if piece.course == course]


def of(layout: WallLayout, course: int, index: int):
    return next(piece for piece in layout.pieces if (piece.course, piece.index) == (course, index))


# The alcove as its cut list was worked by hand: 14 courses, 28 panels, joints 24-1/2 in apart. The paper has 29-1/4 in
# on the pier: 30 less 3/8 panel, 1/4 gap and 1/8 trim. The tape behind the panels of the back takes another 1/16.
PIER = 30 - 3 / 8 - 1 / 16 - 1 / 4 - 1 / 8


@pytest.mark.parametrize("course", range(1, 15))
def test_the_alcove_piece_by_piece(course):
    walls = laid("alcove-seat")
    wanted = [42, 17.5] if course % 2 else [17.5, 42]
    assert lengths(walls["back"], course) == pytest.approx(wanted)
    assert lengths(walls["pier"], course) == pytest.approx([PIER])


def test_the_alcove_in_figures():
    back, pier = laid("alcove-seat").values()
    assert (len(back.courses), len(pier.courses)) == (14, 14)
    assert (len(back.pieces), len(pier.pieces)) == (28, 14)
    # 42 in takes a panel; 17-1/2 and the piece on the pier come from one: 14 + 14
    assert (back.panels_needed, pier.panels_needed, back.least_needed) == (28, 0, 28)
    assert all(piece.from_offcut for piece in pier.pieces)
    assert back.face_thickness == pytest.approx(7 / 16 * INCH)
    for course in range(2, 15):
        (one,), (other,) = back.joints[course - 1], back.joints[course]
        assert abs(one - other) / INCH == pytest.approx(24.5)


def test_the_heights_of_the_alcove():
    """6-1/4 to 7 in over both walls, twelve of 7 in, then 4-1/4 to 4 in; at the ends of the runs a little within."""
    back, pier = laid("alcove-seat").values()
    first, top = back.courses[0], back.courses[-1]
    assert (first.top_left - first.bottom_left) / INCH == pytest.approx(6.25 + 5 / 8 * 0.25 / 60)
    assert (first.top_right - first.bottom_right) / INCH == pytest.approx(6.25 + 5 / 8 * 59.75 / 60)
    last = pier.courses[0]
    assert (last.top_right - last.bottom_right) / INCH == pytest.approx(7 - 1 / 8 * (30 - 29.875) / 30)
    assert (top.top_left - top.bottom_left) / INCH == pytest.approx(4.25 - 1 / 4 * 0.25 / 60)
    assert (top.top_right - top.bottom_right) / INCH == pytest.approx(4.25 - 1 / 4 * 59.75 / 60)
    assert {round((c.top_left - c.bottom_left) / INCH, 9) for c in back.courses[1:-1]} == {7.0}


def test_the_strips_at_the_steel_of_the_alcove():
    """5-5/8 in under the angle and 4-5/8 in over it on the back, 16-3/8 in of notch on the pier."""
    back, pier = laid("alcove-seat").values()
    for index in (1, 2):
        assert of(back, 2, index).smallest_width / INCH == pytest.approx(5.625)
        assert of(back, 3, index).smallest_width / INCH == pytest.approx(4.625)
    notch = max(slab.x1 for slab in of(pier, 3, 1).slabs if slab.low0 > 13.6 * INCH)
    assert notch / INCH == pytest.approx(16.375)
    assert of(pier, 2, 1).smallest_width / INCH == pytest.approx(6.125)


def test_areas_of_the_alcove_by_hand():
    back, pier = laid("alcove-seat").values()

    def tall(x: float) -> float:
        return 6.25 + 5 / 8 * x / 60

    assert of(back, 1, 1).area / INCH**2 == pytest.approx(42 * (tall(0.25) + tall(42.25)) / 2)
    assert of(back, 2, 1).area / INCH**2 == pytest.approx(17.5 * 5.625)
    # course 4, from 20-1/2 to 27-1/2: the kettle's box is cut out from 26-1/16 up, 2-3/8 in wide
    assert of(back, 4, 2).area / INCH**2 == pytest.approx(42 * 7 - 2.375 * (27.5 - 26.0625))
    # course 3 on the pier, from 13-1/2: cut out up to 15-7/8 over 11/16 .. 16-3/8
    assert of(pier, 3, 1).area / INCH**2 == pytest.approx(PIER * 7 - (16.375 - 0.6875) * 2.375)


# The window wall as it was set out on paper: 13 courses, 47 panels. The window takes 64-3/4 .. 105-1/4 with its gaps:
# courses 6 to 10 are parted; 5 and 11 pass under the sill and over the head, notched.
WINDOW_WALL = {
    odd: [48, 48, 48, 25.5] for odd in (1, 3, 5, 11, 13)
} | {even: [25.5, 48, 48, 48] for even in (2, 4, 12)} | {
    7: [48, 16.5, 39, 25.5], 9: [48, 16.5, 39, 25.5],
    6: [25.5, 39, 16.5, 48], 8: [25.5, 39, 16.5, 48], 10: [25.5, 39, 16.5, 48],
}  # fmt: skip


@pytest.mark.parametrize("course", sorted(WINDOW_WALL))
def test_the_window_wall_piece_by_piece(course):
    assert lengths(laid("panel-wall")["north"], course) == pytest.approx(WINDOW_WALL[course])


def test_the_window_wall_in_figures():
    (north,) = laid("panel-wall").values()
    assert (len(north.courses), north.panels_needed, north.least_needed) == (13, 47, 47)
    # 52 pieces; 16-1/2 comes out of what 25-1/2 leaves of 48, five times
    assert sum(piece.from_offcut for piece in north.pieces) == 5
    assert of(north, 5, 2).smallest_width / INCH == pytest.approx(35.75 - 31.75)
    assert of(north, 11, 3).smallest_width / INCH == pytest.approx(87.75 - 82.25)


def test_the_joint_of_the_window_wall():
    """546 in on paper, from whole inches: 170 + 102 + 102 + 2 x (40 + 46). Exact, along the edges of the panels: the
    run of 169-1/2, corners from gap to gap, and 40-1/2 x 46-1/2 round the casing."""
    edges = laid("panel-wall")["north"].edges
    left, right = 101.75 - 0.25, 101.5 + 0.25
    assert edges["ceiling"] / INCH == pytest.approx(169.5, abs=0.001)
    assert edges["opening"] / INCH == pytest.approx(2 * (40.5 + 46.5))
    assert edges["inside corner"] / INCH == pytest.approx(left + right, abs=0.001)
    sealed = edges["ceiling"] + edges["opening"] + edges["inside corner"]
    assert sealed / INCH == pytest.approx(546, abs=1)


def test_every_wall_adds_up():
    for name in ("alcove-seat", "panel-wall"):
        for row in rows_of(name)["panel_wall"]:
            v = row.values
            parts = v["panel_area"] + v["gap_area"] + v["cut_out_area"] + v["joint_area"] + v["uncovered"]
            assert parts == pytest.approx(v["wall_area"], abs=0.01 * INCH**2)
            assert v["uncovered"] == 0


def test_the_wall_that_runs_through_goes_to_the_bare_corner():
    other = laid("alcove-seat", {"/corners/back-pier/panels_run_through": "pier"})
    assert max(piece.right for piece in other["back"].pieces) / INCH == pytest.approx(60 - 7 / 16 - 1 / 4)
    assert min(piece.left for piece in other["pier"].pieces) / INCH == pytest.approx(1 / 4)


def test_in_a_sharp_corner_the_face_comes_nearer():
    """At 60° panels 7/16 thick on both walls: (7/16 + 7/16 cos 60°) / sin 60° from the corner, and the gap."""
    sharp = laid("alcove-seat", {"/corners/back-pier/angle": "60°"})
    wanted = 7 / 16 * 1.5 / (3**0.5 / 2) + 1 / 4
    assert min(piece.left for piece in sharp["pier"].pieces) / INCH == pytest.approx(wanted)
    assert max(piece.right for piece in sharp["back"].pieces) / INCH == pytest.approx(
        60 - 1 / 4 - 7 / 16 * 0.5 / (3**0.5 / 2)
    )


def test_a_trim_takes_its_room_only_where_it_holds_the_edge():
    wide = laid("alcove-seat", {"/trims/pier-edge/takes": "1/2 in"})["pier"]
    assert max(piece.right for piece in wide.pieces) / INCH == pytest.approx(29.5)
    over = laid("alcove-seat", {"/trims/pier-edge/kind": "L"}, ("/trims/pier-edge/takes",))["pier"]
    assert max(piece.right for piece in over.pieces) / INCH == pytest.approx(30)
    assert laid("alcove-seat", None, ("/trims/pier-edge/takes",))["pier"].missing == ("/trims/pier-edge/takes",)


def test_rows_go_on_round_the_corner_with_what_is_left_of_the_last_panel():
    """48 - 17-1/2 and 48 - 42 in, less a saw cut of 1/8 in."""
    pier = laid("alcove-seat", None, ("/panels/cladding/courses/starters/pier",))["pier"]
    assert lengths(pier, 1) == pytest.approx([PIER])
    assert lengths(pier, 2) == pytest.approx([5.875, PIER - 5.875])


def test_rows_go_on_from_the_right_too():
    changes = {"/panels/cladding/walls": ["pier", "back"], "/panels/cladding/courses/from": "right",
               "/panels/cladding/courses/starters": {"pier": ["20 in"]}}  # fmt: skip
    back = laid("alcove-seat", changes)["back"]
    left = PIER - 20
    assert lengths(back, 1)[-1] == pytest.approx(48 - left - 0.125)


def test_rows_that_cannot_go_on_are_asked_for():
    lone = laid("panel-wall", {"/panels/cladding/courses/starters": {}})["north"]
    assert lone.missing == ("/panels/cladding/courses/starters/north",) and lone.pieces == ()


def test_a_door_goes_down_to_the_floor():
    door = {"/walls/north/openings/window/bottom": "0 in"}
    north = laid("panel-wall", door)["north"]
    assert lengths(north, 1) == pytest.approx([48, 16.5, 39, 25.5])
    assert all(not (piece.left < 80 * INCH < piece.right) for piece in north.pieces if piece.course < 11)


def test_an_end_at_a_casing_keeps_the_gap_of_an_opening_and_an_open_end_none():
    for stands, off in (("door casing", 1 / 4), ("open", 0)):
        north = laid("panel-wall", {"/walls/north/ends": {"left": stands}}, ("/corners/north-west",))["north"]
        assert min(piece.left for piece in north.pieces) / INCH == pytest.approx(off)
    bare = laid("panel-wall", None, ("/corners/north-west",))["north"]
    assert bare.missing == ("/walls/north/ends/left",)


def test_the_end_of_steel_round_the_corner_is_cut_out():
    """seat-left ends 1/4 in from the back wall, within 7/16 in of panel. Mitred, its seat leg has come to that."""
    up = {"/angles/seat-back/bears_at": "40 in"}
    back = laid("alcove-seat", up)["back"]
    notch = [slab for slab in of(back, 3, 1).slabs if slab.x0 == back.ground.run.left]
    assert {(round(s.low0 / INCH, 4), round(s.high0 / INCH, 4)) for s in notch} == {(13.5, 15.375), (15.875, 20.5)}
    assert notch[0].x1 / INCH == pytest.approx(7 / 16 + 1 / 8)
    square = laid("alcove-seat", {**up, "/angles/seat-left/ends/right": "square"})["back"]
    # 2-1/2 in of leg, of which half an inch stands in the lining that is cut away
    notch = [slab for slab in of(square, 3, 1).slabs if slab.x0 == square.ground.run.left]
    assert notch[0].x1 / INCH == pytest.approx(2 + 1 / 8)


def test_panels_that_lock_keep_an_end_for_every_joint():
    free = laid("alcove-seat", {"/panels/cladding/courses/starters/back": ["24 in"]})
    locked = laid("alcove-seat", {"/panels/cladding/courses/starters/back": ["24 in"],
                                  "/panels/cladding/panel/edges": "tongue and groove"})  # fmt: skip
    assert sum(w.panels_needed for w in locked.values()) >= sum(w.panels_needed for w in free.values())


def test_a_panel_lies_over_what_it_lies_over():
    (north,) = laid("panel-wall").values()
    assert panel_over(north, 10 * INCH, 12 * INCH, 50 * INCH, 52 * INCH)
    assert not panel_over(north, 70 * INCH, 100 * INCH, 40 * INCH, 80 * INCH)  # the window
    assert panel_over(north, 60 * INCH, 100 * INCH, 40 * INCH, 80 * INCH)
    assert not panel_over(north, 18.5 * INCH, 20 * INCH, 14 * INCH, 16 * INCH)  # a box
    assert not panel_over(north, 10 * INCH, 12 * INCH, 101.9 * INCH, 110 * INCH)  # the gap under the ceiling


NEEDED = [
    "/walls/north/ceiling", "/walls/north/floor_drop", "/walls/north/openings", "/panels/cladding/gaps/ceiling",
    "/panels/cladding/gaps/inside_corner", "/panels/cladding/gaps/opening", "/panels/cladding/gaps/floor",
    "/panels/cladding/cut_outs/box", "/walls/north/boxes/blind-switch/width", "/walls/north/boxes/blind-switch/up",
    "/walls/north/boxes/blind-switch/centre",
]  # fmt: skip


@pytest.mark.parametrize("pointer", NEEDED)
def test_what_is_wanting_is_named_and_no_row_is_left_out(pointer):
    rows = rows_of("panel-wall", None, (pointer,))
    for kind, field in (("panel_field", "panels_needed"), ("panel_wall", "uncovered"), ("panel_end", "meets"),
                        ("cut_out", "in_panels"), ("course", "height_least"), ("piece", "smallest_width")):  # fmt: skip
        assert rows[kind], kind
        assert all(row.missing[field] == (pointer,) for row in rows[kind]), kind


def test_wanting_at_the_steel_names_the_steel():
    rows = rows_of("alcove-seat", None, ("/panels/cladding/cut_outs/angle",))["cut_out"]
    steel = [row for row in rows if row.pointer == "/angles/seat-back"]
    assert [row.missing["clearance"] for row in steel] == [("/panels/cladding/cut_outs/angle",)]


def test_a_plan_without_panels_has_no_rows_of_panels():
    assert all(rows == () for rows in rows_of("display-shelf").values())


def test_a_floor_with_bends_is_followed():
    """A hollow in the middle makes the first course tallest there, and shorter at both ends."""
    hollow = {
        "/walls/north/floor_drop": {"left": "0 in", "right": "0 in", "points": [{"at": "85 in", "drop": "1/2 in"}]}
    }
    north = laid("panel-wall", hollow)["north"]
    second = of(north, 1, 2)  # 48-1/4 .. 96-1/4 in
    assert [slab.x1 / INCH for slab in second.slabs] == pytest.approx([85, 96.25])
    assert (second.slabs[0].high1 - second.slabs[0].low1) / INCH == pytest.approx(7.75 + 0.5 - 0.25)
    ends = north.courses[0]
    assert (ends.top_left - ends.bottom_left) / INCH == pytest.approx(7.5 + 0.5 * 0.25 / 85)


def test_a_ceiling_with_bends_is_followed():
    beam = {
        "/walls/north/ceiling": {"left": "102 in", "right": "102 in", "points": [{"at": "85 in", "height": "97 in"}]}
    }
    course = next(row for row in rows_of("panel-wall", beam)["course"] if row.label == "course 13 on north")
    assert course.values["height_least"] / INCH == pytest.approx(97 - 0.25 - 95.75)


def test_what_leaves_no_room_fails_loudly():
    rows = rows_of("panel-wall", {"/panels/cladding/gaps/inside_corner": "8 ft"})
    assert rows["panel_wall"][0].failed["uncovered"].startswith("wall north: the width of the wall left for panels")


def test_a_wall_full_of_brackets_and_small_panels_is_laid_in_good_time():
    """2,400 brackets in one row and 4,600 panels: seconds where each were held against each."""
    centres = ", ".join(f"{50 + 4 * n} mm" for n in range(2400))
    text = f"""plan: 1
title: Many
walls:
  w: {{width: 10 m, ceiling: {{left: 2.4 m, right: 2.4 m}}, floor_drop: {{left: 0 mm, right: 0 mm}},
      ends: {{left: open, right: open}}, openings: {{}}, boxes: {{}}}}
screws: {{c: {{kind: lag screw, diameter: 8 mm, length: 80 mm}}}}
holes: {{h: {{screw: c, diameter: 9 mm, from_heel: [30 mm]}}}}
brackets:
  k: {{wall: w, upright: 100 mm, arm: 100 mm, thickness: 5 mm, width: 3 mm, from_left: [{centres}], bears_at: 1 m,
      wall_holes: {{pattern: h, from_left: [1 mm]}}, seat_holes: {{pattern: h, from_left: [1 mm]}}}}
panels:
  p: {{walls: [w], panel: {{length: 100 mm, height: 50 mm, thickness: 9 mm, edges: square}},
      courses: {{level_line: 50 mm, starters: {{w: [100 mm, 50 mm]}}}},
      gaps: {{ceiling: 0 mm, floor: 0 mm, inside_corner: 0 mm}}, cut_outs: {{box: 1 mm, angle: 1 mm}}}}
"""
    plan = plan_from_text(text.encode(), "many.yaml")
    start = time.process_time()
    rows = panels_rows(plan, supports(plan))
    assert time.process_time() - start < 12
    assert (len(rows["cut_out"]), rows["panel_wall"][0].values["uncovered"]) == (2400, 0)
