"""What panels are cut round: strips left beside it, whether steel goes on first, whether the board hides the cut."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_panels import CUT_OUT
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.layout import PiecePlace, WallLayout
from plumbrule.facts.order import order
from plumbrule.facts.panels_cuts import Cut
from plumbrule.facts.panels_wall_rows import pointer_of, unlaid
from plumbrule.facts.supports import Support
from plumbrule.mechanics.course import Run
from plumbrule.mechanics.course_edges import strips
from plumbrule.mechanics.slabs import TIE, Rect, Slab
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan


def cut_rows(plan: Plan, part: PanelField, layout: WallLayout, carried: Sequence[Support]) -> list[Row]:
    """Every cut-out of a wall; where the wall cannot be laid out, one row that lacks everything beside those of the
    steel on it, of which some things are known without."""
    if layout.ground is None or layout.ground.run is None or not layout.pieces:
        pointer = pointer_of(part, layout)
        desk = Desk(CUT_OUT, pointer, pointer, f"the cut-outs on {layout.wall_name}")
        unlaid(desk, layout, "kind", "in_panels")
        found = [desk.row()]
        for support in carried:
            if support.wall_name == layout.wall_name:
                found.append(_unlaid_steel(plan, part, layout, support))
        return found
    run, cuts = layout.ground.run, layout.ground.cuts
    beside = _Beside(layout)
    return [
        _cut_row(plan, part, layout, cut, beside)
        for cut in cuts
        if not (cut.beyond and _within_another(cut, cuts, run))
    ]


class _Beside:
    """Finds the pieces that a cut-out touches, course by course."""

    def __init__(self, layout: WallLayout) -> None:
        self._courses: dict[int, list[PiecePlace]] = {}
        for piece in layout.pieces:
            self._courses.setdefault(piece.course, []).append(piece)
        laying = layout.laying
        assert laying is not None
        self._line, self._pitch = laying.level_line, laying.height + laying.joint

    def __call__(self, rect: Rect) -> list[Sequence[Slab]]:
        """The shapes of the pieces that lie within a millimetre of the cut-out."""
        lowest, highest = ((y - self._line) // self._pitch + 2 for y in (rect.y0 - 1, rect.y1 + 1))
        lowest, highest = max(lowest, 1.0), min(highest, float(len(self._courses) and max(self._courses)))
        return [
            piece.slabs
            for course in range(int(lowest), int(highest) + 1)
            for piece in self._courses.get(course, ())
            if piece.left < rect.x1 + 1 and rect.x0 - 1 < piece.right
        ]


def _within_another(cut: Cut, cuts: Sequence[Cut], run: Run) -> bool:
    """Whether what comes round a corner lies where this wall's own steel is cut round already."""
    left, right = max(cut.rect.x0, run.left), min(cut.rect.x1, run.right)
    return any(
        not other.beyond and other.rect.x0 <= left + TIE and right <= other.rect.x1 + TIE
        and other.rect.y0 <= cut.rect.y0 + TIE and cut.rect.y1 <= other.rect.y1 + TIE
        for other in cuts
    )  # fmt: skip


def _unlaid_steel(plan: Plan, part: PanelField, layout: WallLayout, support: Support) -> Row:
    desk = Desk(CUT_OUT, support.pointer, support.pointer, f"cut-out at {support.label}")
    desk.set("kind", "steel", support.pointer)
    room = part.cut_outs.angle
    desk.copy("clearance", Input(room, f"{layout.pointer}/cut_outs/angle"))
    unlaid(desk, layout, "in_panels", "under_a_board")
    _steel(desk, plan, layout, support)
    return desk.row()


def _cut_row(plan: Plan, part: PanelField, layout: WallLayout, cut: Cut, touched: _Beside) -> Row:
    desk = Desk(CUT_OUT, cut.pointer, cut.pointer, f"cut-out at {cut.label}")
    at = layout.pointer
    where = {"opening": "bottom", "box": "up", "steel": "bears_at"}[cut.kind]
    how_wide = {"opening": f"{at}/gaps/opening", "box": f"{at}/cut_outs/box", "steel": f"{at}/cut_outs/angle"}[cut.kind]
    across = {"opening": "left", "box": "centre", "steel": "left"}[cut.kind]
    line, firsts = f"{at}/courses/level_line", f"{at}/courses/starters"
    up, along = (line, f"{cut.pointer}/{where}", how_wide), (firsts, f"{cut.pointer}/{across}", how_wide)
    desk.set("kind", cut.kind, cut.pointer)
    desk.set("clearance", cut.clearance, how_wide)
    left = strips(touched(cut.rect), cut.rect)
    upright = [one for one in (left.above, left.below) if one is not None]
    beside = [one for one in (left.left, left.right) if one is not None]
    desk.set("in_panels", bool(upright or beside), *up)
    for field, value in (("strip_above", left.above), ("strip_below", left.below)):
        if value is not None:
            desk.set(field, value, *up)
    if beside:
        desk.set("strip_beside", min(beside), *along)
    if upright or beside:
        least = min((*upright, *beside))
        desk.set("strip", least, *(up if least in upright else along))
    if cut.support is not None:
        _steel(desk, plan, layout, cut.support)
        desk.set("under_a_board", bool(cut.support.boards), f"{cut.pointer}/bears_at")
        if cut.support.boards:
            desk.get("shows_above", lambda: _shows_above(desk, cut, cut.support))
    return desk.row()


def _shows_above(desk: Desk, cut: Cut, support: Support | None) -> float:
    """How far the cut-out stands up past the upper face of the lowest board that lies on the support."""
    assert support is not None
    thick = [Input(board.thickness, f"/boards/{name}/thickness") for name, board in support.boards]
    desk.need_all(support.bears_at, *thick)
    return max(0.0, cut.rect.y1 - desk.length(support.bears_at) - min(desk.length(one) for one in thick))


def _steel(desk: Desk, plan: Plan, layout: WallLayout, support: Support) -> None:
    desk.copy("carries_people", support.carries_people)
    desk.get("fixed_first", lambda: _fixed_first(desk, plan, layout, support))


def _fixed_first(desk: Desk, plan: Plan, layout: WallLayout, support: Support) -> bool:
    """Whether the steps promise that the support is on the wall before a panel is. Steps that nobody wrote promise
    nothing, and are missing."""
    steps = order(plan)
    if not steps.written:
        raise Missing(["/steps"])
    fixing = steps.doing("fix cleats" if support.kind == "cleat" else "fix steel", support.name)
    laying = steps.doing("lay panels", layout.wall_name)
    if not fixing or not laying:
        raise Missing(["/steps"])
    for name in laying:
        desk.need(Input(True, f"{steps.pointer(name)}/after"))
    return all(steps.before(first, second) for first in fixing for second in laying)
