"""Every hole in an angle, bracket or cleat: how it lies in the steel, what head lies on it, what it can carry."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_steel import HOLE
from plumbrule.facts.board_side import faces_board, gap_at_leg
from plumbrule.facts.corner import ENDS, to_end
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.grid import Grid, grid
from plumbrule.facts.head import LET_IN, ScrewHead, bears_with, head_of, lies_with
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Drilling, Support, boards_on, leg_size, through
from plumbrule.mechanics import countersink, head, hole
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import Number, Worked
from plumbrule.plan.plan_file import Plan

_TIE = 1e-6


def hole_rows(plan: Plan, supports: Sequence[Support]) -> tuple[Row, ...]:
    """One row a hole, support by support, as they are drilled from left to right."""
    rows: list[Row] = []
    for support in supports:
        grids = {leg: grid([one for one in support.drillings if one.leg == leg]) for leg in ("wall", "seat")}
        rows.extend(
            _Hole(plan, supports, support, drilling, grids[drilling.leg]).row() for drilling in support.drillings
        )
    return tuple(rows)


class _Hole:
    """One hole being worked out."""

    def __init__(
        self, plan: Plan, supports: Sequence[Support], support: Support, drilling: Drilling, leg_grid: Grid
    ) -> None:
        self._plan, self._supports = plan, supports
        self._support, self._drilling, self._grid = support, drilling, leg_grid
        self._head = head_of(plan, drilling.holes)
        self._desk = Desk(HOLE, drilling.pointer, support.pointer, drilling.label)
        drilled = drilling.holes.drilled_within
        said = "nothing is written: 1/16 in is taken" if drilled.assumed else ""
        self._drilled = Input(drilled.value, drilled.pointer, said)

    def row(self) -> Row:
        """Works out every field, those that later ones stand on first."""
        self._drill()
        self._place()
        self._lay_head()
        if self._drilling.holes.countersink.value is not None:
            self._sink()
        self._stand()
        if self._support.kind != "cleat":
            self._strength()
        return self._desk.row()

    def _drill(self) -> None:
        desk, support, drilling, holes = self._desk, self._support, self._drilling, self._drilling.holes
        desk.set("support", support.kind, support.pointer)
        desk.set("leg", drilling.leg, drilling.pointer)
        desk.copy("carries_people", support.carries_people)
        desk.copy("diameter", Input(holes.diameter.value, holes.diameter.pointer))
        desk.copy("screw_diameter", self._head.diameter)

        def play() -> float:
            hole_size, screw = desk.numbers("diameter", "screw_diameter")
            return hole_size - screw

        desk.get("play", play)
        desk.copy("steel", through(support, drilling.leg))
        slotted = holes.slot.value is not None or self._plan.is_written(holes.slot.pointer)
        desk.set("slotted", slotted, holes.slot.pointer)
        if slotted:
            desk.copy("slot", Input(holes.slot.value, holes.slot.pointer))
            desk.copy("slot_runs", Input(holes.slot_runs.value, holes.slot_runs.pointer))
        if support.kind != "cleat":
            desk.copy("coating", support.coating)
            burrs = "nothing is written: burrs are taken to be left" if holes.deburr.assumed else ""
            desk.copy("deburr", Input(holes.deburr.value, holes.deburr.pointer, burrs))

    # Where it lies in the steel

    def _place(self) -> None:
        desk, support, drilling = self._desk, self._support, self._drilling
        desk.get("edge_distance", self._edge_distance)
        ends = (0.0, "")

        def end_distance() -> Worked:
            nonlocal ends
            distances = [(self._end_distance(end), support.ends[ENDS.index(end)]) for end in ENDS]
            nearer, cut = min(distances, key=lambda found: si(found[0]))
            ends = (si(nearer), cut)
            return nearer

        desk.get("end_distance", end_distance)
        desk.get("end_cut", lambda: (desk.number("end_distance"), ends[1])[1])
        desk.set("neighbours", float(self._grid.holes - 1), drilling.pointer)
        if self._grid.holes > 1:
            desk.get("pitch", self._pitch)
        if support.kind != "cleat":
            desk.get("heel_room", self._heel_room)

    def _reach(self) -> tuple[float, float]:
        """How far a slot runs each way from the hole's centre to the centres of its ends: along the leg and across
        it, mm. A round hole runs nowhere. A slot in a wall leg is counted both ways: grain says nothing there."""
        desk, support = self._desk, self._support
        if not desk.true("slotted"):
            return 0.0, 0.0
        length, diameter = desk.numbers("slot", "diameter")
        half = max(length - diameter, 0.0) / 2
        if self._drilling.leg == "wall":
            return half, half
        across = desk.text("slot_runs") == "across the grain"
        desk.need(boards_on(support))
        own = {board.wall == support.wall_name for _, board in support.boards}
        ways = {"y" if across == same_wall else "x" for same_wall in own}
        return (half if "x" in ways else 0.0), (half if "y" in ways else 0.0)

    def _edge_distance(self) -> Worked:
        desk, support, drilling = self._desk, self._support, self._drilling
        size = leg_size(support, drilling.leg)
        desk.need_all(drilling.y, size, self._drilled)
        _, reach = self._reach()
        leg, from_heel = desk.length(size), desk.length(drilling.y)
        drawn = leg - from_heel - reach
        if support.kind == "cleat":
            drawn = min(drawn, from_heel - reach)
        numbers = [Number("b", leg, "mm"), Number("g", from_heel, "mm")]
        formula, words = "b - g", "from the hole's centre to the toe of the leg"
        if support.kind == "cleat":
            formula, words = "min(b - g, g)", "from the hole's centre to the nearer edge"
        if reach:
            numbers.append(Number("e", reach, "mm"))
            formula += " - e"
            words = words.replace("the hole's centre", "the slot's end")
        return self._worst(Worked("a_0", words, formula, tuple(numbers), drawn, "mm", "geometry"))

    def _end_distance(self, end: str) -> Worked:
        desk, support, drilling = self._desk, self._support, self._drilling
        needed = (drilling.x, drilling.y, self._drilled, *(() if end == "left" else (support.length,)))
        desk.need_all(*needed)
        along, across = self._reach()
        x = desk.length(drilling.x)
        from_end = (x if end == "left" else desk.length(support.length) - x) - along
        drawn = to_end(
            desk, self._plan, support, self._supports, "left" if end == "left" else "right",
            drilling.leg == "seat", from_end, desk.length(drilling.y) + across,
        )  # fmt: skip
        return self._worst(drawn)

    def _worst(self, drawn: Given) -> Worked:
        return hole.worst_distance(drawn, self._desk.length(self._drilled))

    def _pitch(self) -> float:
        """Centre to centre to the nearest, mm; between slots from the centres of the ends that lie nearest."""
        desk, own, leg_grid = self._desk, self._drilling, self._grid
        along, across = self._reach()
        desk.need_all(*leg_grid.wanting)
        found: list[tuple[float, Input, Input]] = []
        # The way in which they lie apart is noted: there a person would move one of them.
        if mark := leg_grid.next_mark(_mm(own.x)):
            found.append((max(mark[0] - 2 * along, 0.0), own.x, mark[1]))
        if row := leg_grid.next_row(_mm(own.y)):
            found.append((max(row[0] - 2 * across, 0.0), own.y, row[1]))
        apart, here, there = min(found, key=lambda one: one[0])
        desk.need_all(here, there)
        return apart

    def _heel_room(self) -> Worked:
        """On the inside of the heel the fillet begins at t + r. The seat screws of an angle whose wall leg points up
        have their heads on the outer face: there the wall is what they meet."""
        desk, support, drilling = self._desk, self._support, self._drilling
        if drilling.leg == "seat" and support.wall_leg == "up":
            desk.need_all(drilling.y, self._drilled)
            return self._worst(desk.length(drilling.y))
        desk.need_all(drilling.y, support.thickness, support.fillet, self._drilled)
        begins = desk.length(support.thickness) + desk.length(support.fillet)
        return self._worst(hole.heel_room(desk.length(drilling.y), begins))

    # What lies on it

    def _lay_head(self) -> None:
        desk, screw_head, sink = self._desk, self._head, self._drilling.holes.countersink
        desk.copy("head_style", screw_head.style)
        desk.copy("head_diameter", screw_head.head_diameter)
        desk.set("washer", screw_head.washer, screw_head.washer_outside.pointer)
        if screw_head.washer:
            desk.copy("washer_thickness", screw_head.washer_thickness)
        desk.set("countersunk", sink.value is not None, sink.pointer)
        wide = None if sink.value is None else Input(sink.value.diameter, f"{sink.pointer}/diameter")

        def lies() -> float:
            if wide is None:
                return lies_with(desk, screw_head)
            desk.need_all(wide, screw_head.head_diameter)
            return max(desk.length(wide), desk.length(screw_head.head_diameter)) / 2

        desk.get("head_radius", lies)
        # A head in a cone holds with itself, whatever washer comes with it.
        bare = screw_head if wide is None else screw_head._replace(washer=False)
        desk.get("bearing_width", lambda: bears_with(desk, bare))
        desk.get("ring", lambda: head.ring(*desk.numbers("bearing_width", "diameter")))
        desk.get("ring_worst", lambda: self._ring_worst())

    def _ring_worst(self) -> Worked:
        width, diameter, drilled = self._desk.numbers("bearing_width", "screw_diameter", "diameter")
        return head.ring_worst(width, diameter, drilled)

    def _sink(self) -> None:
        desk, sink = self._desk, self._drilling.holes.countersink
        assert sink.value is not None
        desk.copy("sink_angle", Input(sink.value.angle, f"{sink.pointer}/angle"))
        desk.copy("sink_diameter", Input(sink.value.diameter, f"{sink.pointer}/diameter"))
        if self._head.style.value is None or self._head.style.value in LET_IN:
            desk.copy("head_angle", self._head.head_angle)
        desk.get("sink_depth", self._sink_depth)
        desk.get("land", lambda: countersink.land(desk.number("steel"), self._given("sink_depth")))

    def _sink_depth(self) -> Worked:
        desk = self._desk
        sink, angle, drilled = desk.numbers("sink_diameter", "sink_angle", "diameter")
        cut = countersink.cut_depth(sink, drilled, angle)
        if desk.text("head_style") not in LET_IN:
            return cut
        wide, head_angle, screw = desk.numbers("head_diameter", "head_angle", "screw_diameter")
        listed = tables().flat_head(screw, head_angle) if desk.text("head_style") == "flat" else None
        height = listed.height if listed and (listed.head_least is None or wide >= listed.head_least) else None
        return countersink.sink_depth(wide, screw, head_angle, height, cut)

    def _stand(self) -> None:
        desk, support, drilling = self._desk, self._support, self._drilling
        desk.get("head_stand", lambda: _stand(desk, self._head))

        def faces() -> bool:
            if drilling.leg != "wall" or support.kind != "angle" or support.wall_leg != "up":
                return False
            desk.need_all(drilling.y, support.thickness)
            above_seat = desk.length(drilling.y) - desk.length(support.thickness)
            return faces_board(desk, support, above_seat, lambda: desk.number("head_radius"))

        desk.get("faces_board", faces)
        if not (desk.known("faces_board") and not desk.true("faces_board")):
            desk.get("board_gap", lambda: gap_at_leg(desk, self._plan, support))

    # What it can carry

    def _strength(self) -> None:
        desk, support = self._desk, self._support

        def bears() -> Given:
            steel = desk.number("steel")
            return (
                countersink.bearing_thickness(steel, self._given("sink_depth")) if desk.true("countersunk") else steel
            )

        def clear() -> Worked:
            edge, end, drilled = desk.numbers("edge_distance", "end_distance", "diameter")
            return hole.clear_distance(min(edge, end), drilled)

        def grade() -> str:
            return desk.word(support.steel)

        desk.get(
            "bearing_strength",
            lambda: hole.bearing_strength(desk.number("screw_diameter"), bears(), tables().steel(grade())),
        )
        desk.get("tear_out_strength", lambda: hole.tear_out_strength(clear(), bears(), tables().steel(grade())))
        desk.get(
            "hole_strength",
            lambda: hole.hole_strength(
                desk.number("screw_diameter"), bears(), clear(), tables().steel(grade())
            ).worked,
        )  # fmt: skip

    def _given(self, field: str) -> Given:
        """An earlier field with the line it was worked by, so that it becomes a step of the next one."""
        value = self._desk.number(field)
        return self._desk.line(field) or value


def _mm(place: Input) -> float:
    assert isinstance(place.value, int | float)
    return float(place.value)


def _stand(desk: Desk, screw_head: ScrewHead) -> float:
    """How far head and washer stand proud of the leg, mm. A head let into a sink as wide as itself lies flush, an oval
    one shows its dome; a head meant for a cone stands on the rim of a plain hole with all its height."""
    style = desk.text("head_style")
    if style not in LET_IN:
        desk.need_all(screw_head.head_height, *((screw_head.washer_thickness,) if screw_head.washer else ()))
        return desk.length(screw_head.head_height) + (
            desk.length(screw_head.washer_thickness) if screw_head.washer else 0.0
        )
    desk.need_all(screw_head.head_angle, *((screw_head.head_height,) if style == "oval" else ()))
    mouth, wide = desk.numbers("sink_diameter" if desk.true("countersunk") else "diameter", "head_diameter")
    dome = desk.length(screw_head.head_height) if style == "oval" else 0.0
    if wide <= mouth + _TIE:
        return dome
    return si(countersink.cone_height(wide, mouth, desk.length(screw_head.head_angle))) + dome
