"""Angles, brackets and cleats as a whole. Where nothing else is said, figures were worked by hand from the plan."""

from __future__ import annotations

from math import cos, radians, sin

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from steel_rows import ON_SITE, TEMPLATE, inches, part_of

from plumbrule.mechanics.corner import clear_of
from plumbrule.mechanics.given import si
from plumbrule.reading.units import to_si

NO_MITRE = {"/angles/seat-back/ends/left": "square"}


def near(inch: float, slack: float = 1e-9) -> object:
    return pytest.approx(inches(inch), abs=inches(slack))


# How it is held


def test_stations_and_runs_of_the_alcove():
    row = part_of("alcove-seat", "seat-back")
    assert row.values["stations"] == 5
    assert row.values["screws_in_wall"] == 10
    assert row.values["screws_per_station"] == 2
    assert row.values["longest_run"] == near(16)
    assert row.values["shortest_run"] == near(11)
    # 2 in past the first run of 12-1/2 in, 2 in past the last of 11 in: the latter is the larger part
    assert row.values["overhang"] == near(2)
    assert row.values["run_before_overhang"] == near(11)


def test_a_screw_between_the_studs_holds_nothing():
    marks = ["3 in", "19 in", "27 in", "35 in"]
    changes = {"/angles/ledge-back/wall_holes": {"pattern": "sunk", "from_left": marks}}
    row = part_of("display-shelf", "ledge-back", changes)
    assert row.values["stations"] == 3
    assert row.values["longest_run"] == near(16)
    assert row.values["overhang"] == near(70 - 35)


@pytest.mark.parametrize(("mark", "stations"), [("3-3/4 in", 1), ("3-13/16 in", 0)])
def test_a_screw_is_meant_for_a_stud_while_its_axis_is_drawn_on_it(mark, stations):
    # the stud at 41 in is 1-1/2 in wide, the angle begins at 38 in
    changes = {"/angles/ledge-back/wall_holes": {"pattern": "sunk", "from_left": [mark]}}
    assert part_of("display-shelf", "ledge-back", changes).values["stations"] == stations


def test_one_station_has_an_overhang_but_no_run():
    changes = {"/angles/ledge-back/wall_holes": {"pattern": "sunk", "from_left": ["19 in"]}}
    row = part_of("display-shelf", "ledge-back", changes)
    assert row.values["overhang"] == near(51)
    assert "longest_run" not in row.values and "longest_run" not in row.missing


@pytest.mark.parametrize("kind", ["hollow-wall anchor", "toggle", "masonry anchor"])
def test_an_anchor_is_not_meant_for_wood(kind):
    row = part_of("display-shelf", "ledge-back", {"/screws/wall-screw/kind": kind})
    assert row.values["stations"] == 0
    assert row.values["screws_per_station"] == 0


def test_no_studs_found_on_a_wall_that_was_looked_at_means_no_stations():
    row = part_of("bracket-shelf", "shelf-bracket 1", {"/brackets/shelf-bracket/from_left": ["600 mm"],
                                                     "/walls/bench/framing/centres": []},
                  ("/brackets/shelf-bracket/at",))  # fmt: skip
    assert row.values["screws_in_wall"] == 0


def test_steel_studs_are_outside_the_rulebook_and_no_number_is_given():
    row = part_of("display-shelf", "ledge-back", {"/walls/long/framing/kind": "steel studs"})
    assert "stations" not in row.values and "stations" in row.outside
    assert "longest_run" not in row.values and "longest_run" in row.outside


def test_where_the_studs_are_not_known_nothing_is_counted():
    row = part_of("alcove-seat", "seat-back", gone=("/walls/back/framing",))
    for field in ("stations", "screws_in_wall", "longest_run", "overhang"):
        assert field not in row.values
        assert row.missing[field]


@pytest.mark.parametrize(
    ("changes", "gone", "loaded"),
    [
        ({}, (), True),
        ({"/steps/prove-load/works_on": ["seat-back"]}, (), True),
        ({"/steps/prove-load/task": "hand over"}, (), False),
        ({"/steps/prove-load/works_on": ["seat-left"]}, (), False),
    ],
)
def test_a_proof_load_counts_on_the_steel_or_on_a_board_that_lies_on_it(changes, gone, loaded):
    assert part_of("alcove-seat", "seat-back", changes, gone).values["proof_loaded"] is loaded


def test_a_proof_load_of_nothing_in_particular_and_no_steps_at_all_are_not_known():
    row = part_of("alcove-seat", "seat-back", gone=("/steps/prove-load/works_on",))
    assert row.missing["proof_loaded"] == ("/steps/prove-load/works_on",)
    assert part_of("alcove-seat", "seat-back", gone=("/steps",)).missing["proof_loaded"] == ("/steps",)


# Corners


def test_the_alcoves_mitred_angles_clear_each_other():
    for name in ("seat-back", "seat-left", "seat-pier"):
        row = part_of("alcove-seat", name)
        assert row.values["shares_corner"] is True
        assert row.values["corner_overlap"] == 0


@pytest.mark.parametrize(
    ("changes", "name", "overlap"),
    [
        # seat leg 2-1/2 in, lining 1/2 in cut away: it stands 2 in out; this end is 1/4 in from the finished face
        (NO_MITRE, "seat-back", 1.75),
        (NO_MITRE, "seat-left", 1.75),
        # lining left behind the other angle: it stands 2-1/2 in out
        ({**NO_MITRE, "/angles/seat-left/lining_behind": "left in place"}, "seat-back", 2.25),
        # a cope of either clears both
        ({"/angles/seat-back/ends/left": "coped"}, "seat-back", 0.0),
        ({"/angles/seat-left/ends/right": "coped"}, "seat-back", 0.0),
        # one above the other: nothing meets. Wall legs hang 3-1/2 in down
        ({**NO_MITRE, "/angles/seat-left/bears_at": "19-1/4 in"}, "seat-back", 0.0),
        # a little lower and the other's wall leg hangs beside this seat leg, but 1/4 in of it lies behind the face
        ({**NO_MITRE, "/angles/seat-left/bears_at": "19 in"}, "seat-back", 0.0),
        # with both linings left the wall legs, 1/4 in thick, begin at the corner
        (
            {f"/angles/{name}/lining_behind": "left in place" for name in ("seat-back", "seat-left")}
            | {"/angles/seat-back/left": "0 in", "/angles/seat-left/left": "32 in"},
            "seat-back",
            0.25,
        ),
    ],
)
def test_what_runs_into_what_round_a_square_corner(changes, name, overlap):
    assert part_of("alcove-seat", name, changes).values["corner_overlap"] == near(overlap)


@pytest.mark.parametrize(
    ("changes", "gone", "missing"),
    [
        ({**TEMPLATE, "/angles/seat-left/left": ON_SITE}, (), "/angles/seat-left/left"),
        ({**TEMPLATE, "/angles/seat-left/bears_at": ON_SITE}, (), "/angles/seat-left/bears_at"),
        ({**TEMPLATE, "/walls/left/width": ON_SITE}, (), "/walls/left/width"),
        ({}, ("/walls/left/lining",), "/walls/left/lining"),
    ],
)
def test_a_corner_is_not_judged_while_a_measure_of_either_piece_is_wanting(changes, gone, missing):
    row = part_of("alcove-seat", "seat-back", changes, gone)
    assert "corner_overlap" not in row.values
    assert missing in row.missing["corner_overlap"]


def test_an_angle_that_is_taken_as_square_is_said():
    row = part_of("alcove-seat", "seat-back", gone=("/corners/left-back/angle",))
    assert "/corners/left-back/angle" in row.assumed


@settings(max_examples=200)
@given(
    angle=st.integers(min_value=45, max_value=135),
    own=st.integers(min_value=5, max_value=60),
    depth=st.integers(min_value=20, max_value=80),
    other_depth=st.integers(min_value=20, max_value=80),
    other_end=st.integers(min_value=0, max_value=60),
    back=st.integers(min_value=-15, max_value=0),
)
def test_where_a_piece_must_end_is_where_the_two_outlines_part(angle, own, depth, other_depth, other_end, back):
    """Against the outlines themselves, cut one by the other: apart at that place, in each other's way before it."""
    clear = si(clear_of(other_depth, other_end, back, depth, angle))
    they_clear = si(clear_of(depth, own, back, other_depth, angle))
    if own < clear - 1e-3 and other_end < they_clear - 1e-3:
        assert _common(angle, own, back, depth, other_end, back, other_depth) > 0
    if own > clear + 1e-3 or other_end > they_clear + 1e-3:
        assert _common(angle, own, back, depth, other_end, back, other_depth) == pytest.approx(0, abs=1e-6)


def _common(
    angle: float, own: float, back: float, depth: float, other: float, other_back: float, other_depth: float
) -> float:
    """Area that two pieces have in common, each 400 mm long, seen from above; one wall lies along x."""
    turn = radians(angle)
    along, out = (cos(turn), sin(turn)), (sin(turn), -cos(turn))
    piece = [(own, back), (own + 400, back), (own + 400, depth), (own, depth)]
    corners = [(other, other_back), (other + 400, other_back), (other + 400, other_depth), (other, other_depth)]
    second = [(s * along[0] + n * out[0], s * along[1] + n * out[1]) for s, n in corners]
    if _area(second) < 0:
        second.reverse()
    for start, end in zip(second, second[1:] + second[:1], strict=True):
        piece = _cut(piece, start, end)
    return abs(_area(piece))


def _cut(
    outline: list[tuple[float, float]], start: tuple[float, float], end: tuple[float, float]
) -> list[tuple[float, float]]:
    def side(point: tuple[float, float]) -> float:
        return (end[0] - start[0]) * (point[1] - start[1]) - (end[1] - start[1]) * (point[0] - start[0])

    kept = []
    for one, two in zip(outline, outline[1:] + outline[:1], strict=True):
        a, b = side(one), side(two)
        if a >= 0:
            kept.append(one)
        if (a >= 0) != (b >= 0):
            share = a / (a - b)
            kept.append((one[0] + share * (two[0] - one[0]), one[1] + share * (two[1] - one[1])))
    return kept


def _area(outline: list[tuple[float, float]]) -> float:
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(outline, outline[1:] + outline[:1], strict=True)) / 2


@settings(max_examples=30)
@given(st.integers(min_value=1, max_value=36), st.integers(min_value=1, max_value=36))
def test_drawing_an_end_back_from_the_corner_never_makes_it_worse(one, other):
    assume(one != other)
    low, high = sorted((one, other))
    rows = [
        part_of("alcove-seat", "seat-back", {**NO_MITRE, "/angles/seat-back/left": f"{n}/16 in",
                                             "/angles/seat-back/length": "57-1/2 in"})
        for n in (low, high)
    ]  # fmt: skip
    assert rows[0].values["corner_overlap"] >= rows[1].values["corner_overlap"]


# Ends and heels


@pytest.mark.parametrize(
    ("changes", "name", "past"),
    [
        ({}, "seat-back", -0.25),
        ({"/angles/seat-left/left": "32-1/2 in"}, "seat-left", 0.5),
        # 1/4 + 32-3/4 - 30 in, and 3 in of that is the mitre round the outside corner
        ({"/angles/seat-pier/ends/right": "mitred", "/angles/seat-pier/length": "32-3/4 in"}, "seat-pier", 0.0),
        ({"/angles/seat-pier/length": "32-1/4 in"}, "seat-pier", 2.5),
    ],
)
def test_how_far_the_steel_runs_past_its_wall(changes, name, past):
    assert part_of("alcove-seat", name, changes).values["past_wall_end"] == near(past)


@pytest.mark.parametrize(
    ("edge", "relief"),
    [
        ({"ease": "round", "size": "5/16 in"}, 5 / 16 + 1 / 16),
        ({"ease": "chamfer", "size": "1/4 in"}, 1 / 4 + 1 / 16),
        ({"ease": "sharp"}, 1 / 16),
        # a full round has half the board, 1-3/4 in thick, for its radius
        ({"ease": "bullnose"}, 7 / 8 + 1 / 16),
    ],
)
def test_what_gap_and_easing_leave_in_the_heel(edge, relief):
    row = part_of("display-shelf", "ledge-back", {"/boards/ledge/edges/back": edge})
    assert row.values["board_meets_fillet"] is True
    assert row.values["edge_relief"] == near(relief)


def test_an_easing_without_a_size_is_not_known():
    row = part_of("display-shelf", "ledge-back", {"/boards/ledge/edges/back": {"ease": "round"}})
    assert row.missing["edge_relief"] == ("/boards/ledge/edges/back/size",)


def test_no_board_lies_in_the_heel_of_a_leg_that_hangs_down():
    row = part_of("alcove-seat", "seat-back")
    assert row.values["board_meets_fillet"] is False
    assert "edge_relief" not in row.values


# What it is made of


def test_section_and_mass_of_a_published_angle():
    """AISC Shapes Database, L3-1/2x2-1/2x1/4: A 1.45 in², I 1.81 in⁴ with the long leg upright; 4.9 lb a foot."""
    row = part_of("alcove-seat", "seat-back")
    assert row.values["section_area"] == pytest.approx(to_si(1.45, "in²"))
    assert row.values["second_moment"] == pytest.approx(to_si(1.81, "in⁴"))
    assert row.values["mass"] == pytest.approx(to_si(4.9 * 59.5 / 12, "lb"), rel=0.01)


def test_aluminium_weighs_a_third():
    steel = part_of("alcove-seat", "seat-back").values["mass"]
    light = part_of("alcove-seat", "seat-back", {"/sections/seat-steel/steel": "6061-T6"}).values["mass"]
    # 2700 against 7850 kg/m³; the rolled area of the table is 1 % more than that of two sharp rectangles
    assert light / steel == pytest.approx(2700 / 7850, rel=0.02)


def test_yield_stress_is_that_of_the_grade_and_a_low_guess_where_none_is_promised():
    """ASTM A36: 36 ksi. An unmarked piece: 30 ksi, common practice."""
    assert part_of("alcove-seat", "seat-back").values["yield_stress"] == pytest.approx(to_si(36, "ksi"))
    row = part_of("alcove-seat", "seat-back", {"/sections/seat-steel/steel": "unmarked"})
    assert row.values["yield_stress"] == pytest.approx(to_si(30, "ksi"))


def test_boards_room_and_wall_that_bear_on_rust_and_stain():
    row = part_of("alcove-seat", "seat-back", {"/walls/back/surface/state": ["greasy", "mouldy"]})
    assert row.values["woods"] == ("white ash",)
    assert row.values["dampest"] == 55
    assert row.values["damp_wall"] is True
    row = part_of("alcove-seat", "seat-back", gone=("/site/humidity", "/walls/back/surface"))
    assert row.missing["dampest"] == ("/site/humidity/dampest",)
    assert row.missing["damp_wall"] == ("/walls/back/surface/state",)


def test_returns_and_brackets():
    assert part_of("alcove-seat", "seat-left").values["is_return"] is True
    assert part_of("alcove-seat", "seat-back").values["is_return"] is False
    row = part_of("bracket-shelf", "shelf-bracket 2")
    fields = ("arm", "upright", "width", "thickness", "board_depth", "screws_per_station")
    assert [row.values[name] for name in fields] == [200, 250, 60, 8, 220, 2]
    assert (row.values["braced"], row.values["steel_grade"]) == (False, "S235")
