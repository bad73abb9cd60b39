"""One row for every board under every load: how it is carried, how it bends, shears, splits, bears and sags. A board
that is not covered has its rows too: they say why, and give no number."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import BOARD_LOAD
from plumbrule.facts import load_back_alone, load_three_sides
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.load_all_uses import every_part_holds
from plumbrule.facts.load_brackets import Brackets
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load, size
from plumbrule.facts.load_seat_screws import seat_screw
from plumbrule.facts.supports import Support
from plumbrule.mechanics import board_bearing, board_strip, bracket, hold_down, loads, simple_span, stiffness
from plumbrule.mechanics.back_angle import spread_load
from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import OutsideRulebook, Worked

COVERED = ("three sides", "back angle alone", "brackets", "cleats")
_HELD_AROUND = ("three sides", "cleats")
_STATICS = "statics"
_ENDS_OF_CASE = {"S1": "S1", "SP": "S1", "S7": "S1", "S3": "S3", "S5": "S5"}


class BoardRow:
    """Writes the row of one board under one load; `others` are the rows of everything under it."""

    def __init__(self, ground: Ground, brackets: Brackets | None, load: Load, others: Sequence[Row]) -> None:
        self._ground, self._brackets, self._load, self._others = ground, brackets, load, others

    def write(self, start: Callable[[Desk], None]) -> Row:
        """The finished row; `start` fills in what every row of a load has."""
        ground, load, path = self._ground, self._load, self._ground.path
        said = load.case if load.kind != "D" else "its own weight"
        desk = Desk(BOARD_LOAD, path.pointer, path.pointer, f"{path.name} under {said}")
        start(desk)
        desk.get("not_covered", lambda: self._why(desk))
        if load.kind not in ("D", "S2", "S6"):
            desk.get("point", lambda: ground.point(desk, load) or 0.0)
        if load.kind in ("S2", "S6", "S7"):
            desk.get("line_load", lambda: ground.line(desk, load) or 0.0)
        if load.kind == "D":
            desk.get("weight", lambda: ground.weight.take(desk))
        desk.get("front", lambda: ground.sizes.take(desk).front)
        if path.carried == "back angle alone":
            self._tipping(desk)
        for field, work in (
            ("bending_stress", self._bending), ("shear_stress", self._shear), ("across_stress", self._across),
            ("bearing_stress", self._bearing),
        ):  # fmt: skip
            desk.get(field, lambda work=work: self._covered(desk, work))  # type: ignore[misc]
        for field, stress in (
            ("bending_strength", "bending"), ("shear_strength", "shear"), ("across_mark", "tension across"),
            ("bearing_strength", "bearing"),
        ):  # fmt: skip
            desk.get(field, lambda stress=stress: ground.strength(desk, stress, load))  # type: ignore[misc]
        desk.get("drop", lambda: self._covered(desk, self._drop))
        desk.get("drop_limit", lambda: self._drop_limit(desk))
        if load.kind in ("S1", "S3", "S5"):
            desk.get("swings", lambda: stiffness.feel(self._covered(desk, self._instant)))
        return desk.row()

    def _why(self, desk: Desk) -> str:
        path = self._ground.path
        desk.need(Input(path.board.bears_on, f"{path.pointer}/bears_on"))
        if path.wanting:
            raise Missing(path.wanting)
        return path.not_covered

    def _covered(self, desk: Desk, work: Callable[[Desk], Worked]) -> Worked:
        self._ground.path.require(*COVERED)
        return work(desk)

    def _tipping(self, desk: Desk) -> None:
        def at() -> load_back_alone.Cantilever:
            return load_back_alone.cantilever(desk, self._ground, self._load)

        desk.get("toe", lambda: at().toe)
        if self._load.case == "one person":
            desk.get("every_part_holds", lambda: every_part_holds(desk, self._others))
        desk.get("beyond_toe", lambda: hold_down.beyond_toe(at().on, at().toe))

    def _spread(self, desk: Desk) -> Worked:
        """All that is spread along the board, its own weight too, N/mm."""
        ground = self._ground
        line = ground.line(desk, self._load)
        return spread_load(0.0 if line is None else line, ground.weight.take(desk), ground.sizes.take(desk).length)

    def _one(self, desk: Desk) -> Given | None:
        point = self._ground.point(desk, self._load)
        return None if point is None or size(point) == 0 else load_three_sides.person(point, self._load)

    def _span(self, desk: Desk) -> float:
        """The length that bends: the board between its returns, or the longest stretch between brackets or beyond."""
        length = self._ground.sizes.take(desk).length
        if self._brackets is None:
            return length
        places = sorted(self._brackets.centres.take(desk))
        runs = [b - a for a, b in pairwise(places)]
        # A free end bends like a span of four times its length under a point, and twice under a spread load.
        return max([*runs, 4 * places[0], 4 * (length - places[-1])])

    def _strip(self, desk: Desk) -> Worked:
        sizes, cracks = self._ground.sizes.take(desk), self._ground.cracks.take(desk)
        return board_strip.front_strip(
            self._span(desk), sizes.depth, lengthwise_check=cracks.to_front is not None or cracks.shallow < 1,
            crack_to_front=cracks.to_front,
        )  # fmt: skip

    def _bending(self, desk: Desk) -> Worked:
        """Along the grain. On a back angle alone the board bends across it, and along it hardly at all."""
        sizes = self._ground.sizes.take(desk)
        span = self._span(desk) if self._ground.path.carried != "back angle alone" else self._along_steel(desk)
        parts = [self._spread_bending(desk, span)]
        one = self._one(desk)
        if one is not None:
            case = _ENDS_OF_CASE[self._load.kind]
            parts.append(
                board_strip.person_bending(case, one, span, self._strip(desk), sizes.thickness)  # type: ignore[arg-type]
            )
        return parts[0] if len(parts) == 1 else add("f_b", "bending of the board along the grain", parts, _STATICS)

    def _spread_bending(self, desk: Desk, span: float) -> Worked:
        sizes = self._ground.sizes.take(desk)
        on = self._brackets
        if on is not None:
            bracket.require_reach(sizes.front, self._least_arm(desk, on))
        run = span if on is None else on.spread_run(desk, span)
        found = board_strip.spread_bending(self._spread(desk), run, sizes.depth, sizes.thickness)
        return found if on is None else bracket.uneven_bending(found)

    @staticmethod
    def _least_arm(desk: Desk, on: Brackets) -> float:
        return min(desk.length(support.seat_leg_size) for support in on.on)

    def _along_steel(self, desk: Desk) -> float:
        """On steel along its whole back only a free end beyond the steel bends lengthwise, as four times its length."""
        back = self._ground.path.back
        assert back is not None
        sizes = self._ground.sizes.take(desk)
        desk.need_all(back.left, back.length)
        begins = self._ground.left.take(desk)
        left, right = desk.length(back.left), desk.length(back.left) + desk.length(back.length)
        return max(4 * (left - begins), 4 * (begins + sizes.length - right), 1.0)

    def _shear(self, desk: Desk) -> Worked:
        sizes = self._ground.sizes.take(desk)
        strip = self._strip(desk)
        half = si(self._spread(desk)) * self._span(desk) / 2
        parts = [simple_span.rectangle_shear_stress(half, sizes.depth, sizes.thickness)]
        one = self._one(desk)
        if one is not None:
            times = {"S5": 2.0, "S3": 2.0}.get(self._load.kind, 1.0)
            parts.append(board_strip.person_shear(times * si(one), strip, sizes.thickness))
        return parts[0] if len(parts) == 1 else add("f_v_all", "shear of the board along the grain", parts, _STATICS)

    def _across(self, desk: Desk) -> Worked:
        ground, kind = self._ground, self._load.kind
        sizes = ground.sizes.take(desk)
        if ground.path.carried == "back angle alone":
            at = load_back_alone.cantilever(desk, ground, self._load)
            width = load_back_alone.spread_width(at, at_end=True)
            moment = hold_down.across_at_toe(at.on, at.toe, width, at.length)
            if moment.value < 0:
                # The loads' middle lies inside the toe: the board is pressed onto the steel, not bent over it.
                return Worked(
                    "f_t", "tension across the grain: the board lies on its steel", "0", (), 0.0, "MPa", _STATICS
                )
            return board_strip.across_stress(moment, sizes.thickness)
        if self._brackets is not None:
            bracket.require_reach(sizes.front, self._least_arm(desk, self._brackets))
        parts = [board_strip.across_moment("S2", self._spread(desk), sizes.length)]
        one = self._one(desk)
        if one is not None and self._brackets is not None:
            arm = self._least_arm(desk, self._brackets)
            parts.append(bracket.across_on_arms(_ENDS_OF_CASE[kind], one, sizes.front, arm))  # type: ignore[arg-type]
        elif one is not None:
            parts.append(board_strip.across_moment(_ENDS_OF_CASE[kind], one, sizes.length))  # type: ignore[arg-type]
        moment = parts[0] if len(parts) == 1 else add("m_all", "bending across the grain", parts, _STATICS)
        return board_strip.across_stress(moment, sizes.thickness)

    def _bearing(self, desk: Desk) -> Worked:
        ground = self._ground
        sizes = ground.sizes.take(desk)
        if ground.path.carried == "back angle alone":
            at = load_back_alone.cantilever(desk, ground, self._load)
            held = load_back_alone.held_down(desk, ground, self._load)
            one = any(load.point for load in at.on)
            along = si(load_back_alone.spread_width(at, at_end=True)) if one else at.length
            return board_bearing.board_bearing_stress(
                held.contact, board_bearing.tip_bearing_area(along, sizes.thickness)
            )
        one_force = self._one(desk)
        times = 2.0 if self._load.kind == "S5" else 1.0
        force = times * si(one_force) if one_force is not None else si(self._spread(desk)) * sizes.length / 4
        patch = si(loads.PATCH) if one_force is not None else sizes.depth / 2
        return board_bearing.board_bearing_stress(force, board_bearing.tip_bearing_area(patch, sizes.thickness))

    def _instant(self, desk: Desk) -> Worked:
        """How far the front edge goes down under this load by itself, its supports with it."""
        ground, load, carried = self._ground, self._load, self._ground.path.carried
        sizes = ground.sizes.take(desk)
        if carried in _HELD_AROUND:
            parts = [load_three_sides.front_drop(desk, ground, load), load_three_sides.settling(desk, ground, load)]
            return add("d_all", "drop of the front edge, returns and all", parts, _STATICS)
        if carried == "back angle alone":
            return load_back_alone.drop(desk, ground, load, seat_screw(desk, ground))
        assert self._brackets is not None
        bracket.require_reach(sizes.front, self._least_arm(desk, self._brackets))
        worst: list[Worked] = []
        for support in self._brackets.on:
            _, moment = self._brackets.tipping(desk, support, load)
            arm, width, thick = (
                desk.length(part) for part in (support.seat_leg_size, support.length, support.thickness)
            )
            heels = [row[0].heel for row in ground.places_on(desk, support)[0].rows]
            require_plain(self._ground, support)
            tip = bracket.unbraced_drop(si(moment) / arm, arm, min(heels), width, thick)
            worst.append(tip if sizes.front <= arm else bracket.drop_beyond(tip, sizes.front, arm))
        second = simple_span.rectangle_second_moment(sizes.depth, sizes.thickness)
        here = [
            max(worst, key=si),
            simple_span.even_sag(self._spread(desk), self._span(desk), ground.modulus(desk), second),
        ]
        one = self._one(desk)
        if one is not None:
            here.append(simple_span.midspan_sag(one, self._span(desk), ground.modulus(desk), second))
        return add("d_all", "drop of the front edge with its bracket", here, _STATICS)

    def _drop(self, desk: Desk) -> Worked:
        """After years: what stays on the board creeps, what comes and goes does not."""
        lasting = self._load.duration in ("permanent", "stored goods")
        instant = self._instant(desk)
        if not lasting:
            return instant
        creep = stiffness.creep_factor(self._ground.service.take(desk), stamped_dry=False)
        return stiffness.long_term_drop(instant, 0.0, creep)

    def _drop_limit(self, desk: Desk) -> Worked:
        path, sizes = self._ground.path, self._ground.sizes.take(desk)
        alone = path.carried == "back angle alone"
        span: Given = stiffness.cantilever_span(sizes.front) if alone else sizes.length
        if path.carried == "brackets":
            span = max(self._span(desk), 2 * sizes.front)
        if self._load.kind in ("S1", "S3", "S5"):
            return stiffness.seat_drop_limit(span)
        return stiffness.full_seat_drop_limit(span) if self._load.kind == "S2" else stiffness.shelf_sag_limit(span)


def require_plain(ground: Ground, support: Support) -> None:
    """Raises OutsideRulebook for a braced bracket: where its brace stands is not in a plan."""
    part = (ground.plan.model.brackets or {}).get(support.name)
    if part is not None and part.braced:
        raise OutsideRulebook(
            "A braced bracket is as strong as its brace and the joint at each end of it, which a plan does not show: "
            "go by its maker's rating."
        )
