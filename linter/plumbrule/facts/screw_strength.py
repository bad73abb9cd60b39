"""What one screw can carry, before any factor, and the word for why no published formula says so."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.fastening import Fastening, published
from plumbrule.facts.reference import tables
from plumbrule.facts.room import framing_kind
from plumbrule.facts.wood import cleat_gravity, require_wood_framing
from plumbrule.mechanics import classify, head, withdrawal
from plumbrule.mechanics.bearing_wood import steel_bearing_of, wood_bearing
from plumbrule.mechanics.factors import loaded_edge
from plumbrule.mechanics.lateral import side_strength
from plumbrule.mechanics.lining import require_gap
from plumbrule.mechanics.outside import INSIDE, outside
from plumbrule.mechanics.screw_length import bearing_length, require_penetration
from plumbrule.mechanics.table_rows import Fastener, Steel
from plumbrule.mechanics.worked import OutsideRulebook, Worked
from plumbrule.plan.supports import Cleat

ALONG, ACROSS = 0.0, 90.0
SINKING = ("flat", "oval", "bugle", "trim")
# Packing is seldom written down by species: it is taken as the lightest wood that is sold for framing.
_PACKING = "the wood of the packing is not written down: the lightest framing wood is taken, covering the wood behind \
the leg and fixed to it by itself"
_SUNK = (
    "No published formula covers a countersunk head being drawn through its steel: keep the steel under the head "
    "thick, or use a pan or hex head."
)


def work_outside(desk: Desk, fastening: Fastening) -> None:
    """The first reason why the published formulas stop. What is not known does not hide what is: the word waits only
    where everything that is known is inside."""
    desk.get("outside", lambda: _outside(desk, fastening))


def work_strength(desk: Desk, fastening: Fastening, cleat: Cleat | None) -> None:
    """Side strength of a wall screw, and what every screw stands in a straight pull."""
    if fastening.in_wall:
        desk.get("side_strength", lambda: _side(desk, fastening, cleat))
    desk.get("withdrawal", lambda: _withdrawal(desk, fastening))
    desk.get("root_strength", lambda: withdrawal.root_tension(published(desk).root_diameter))
    desk.get("pull_over", lambda: _pull_over(desk, fastening, cleat))


def _outside(desk: Desk, fastening: Fastening) -> str:
    support = fastening.support

    def framed() -> str:
        if not fastening.in_wall or support.wall is None:
            return INSIDE
        return classify.support_word(desk.word(framing_kind(support.wall_name, support.wall)))

    def covered() -> str:
        if fastening.wood.into != "stud":
            return INSIDE
        face, tip = desk.numbers("wood_beside", "wood_beside_tip")
        return classify.first(classify.cover_word(face), classify.cover_word(tip + desk.number("diameter") / 2))

    def at_edge() -> str:
        if fastening.wood.into != "block":
            return INSIDE
        diameter, edge = desk.numbers("diameter", "loaded_edge_distance")
        return classify.across_grain_word(diameter, max(edge, 0.0), ACROSS)

    kind = desk.text("kind")
    questions: tuple[Callable[[], str], ...] = (
        framed,
        lambda: classify.first(
            classify.screw_kind_word(kind), classify.size_word(tables(), kind, desk.number("diameter"))
        ),
        lambda: classify.wood_word(desk.number("specific_gravity")),
        lambda: classify.bite_word(kind, *desk.numbers("diameter", "bite", "tip")),
        lambda: classify.gap_word(*desk.numbers("gap", "bite")),
        covered,
        at_edge,
        lambda: _flat_in_plain_hole(fastening),
    )
    wanting: list[str] = []
    reason: OutsideRulebook | None = None
    for question in questions:
        try:
            word = question()
        except Missing as missing:
            wanting.extend(missing.pointers)
        except OutsideRulebook as beyond:
            reason = reason or beyond
        else:
            if word != INSIDE:
                return word
    if reason is not None:
        raise reason
    if wanting:
        raise Missing(wanting)
    return INSIDE


def _flat_in_plain_hole(fastening: Fastening) -> str:
    style = fastening.screw.head.style if fastening.screw.head else None
    sunk = fastening.drilling.holes.countersink.value is not None
    steel = fastening.support.kind != "cleat"
    return "flat head in a plain hole" if steel and style in SINKING and not sunk else INSIDE


def _side(desk: Desk, fastening: Fastening, cleat: Cleat | None) -> Worked:
    support = fastening.support
    require_wood_framing(desk, support.wall_name, support.wall)
    row = published(desk)
    bite, tip, gap, side, gravity = desk.numbers("bite", "tip", "gap", "steel", "specific_gravity")
    require_penetration(row.kind, row.diameter, bite, tip)
    packed = support.lining_behind.value == "packed solid"
    held = min(gravity, _packing(desk, fastening)) if packed else gravity
    grain = ACROSS if fastening.wood.into == "block" else ALONG
    if fastening.wood.into == "stud":
        (cover,) = desk.numbers("wood_beside")
        if cover < 0:
            raise outside("off the stud")
    else:
        (edge,) = desk.numbers("loaded_edge_distance")
        loaded_edge(row.diameter, max(edge, 0.0), ACROSS)
    if cleat is None:
        return _through_steel(row, _steel(desk, fastening), side, bite, tip, gap, held, grain)
    desk.need_all(fastening.drilling.y)
    # The screw presses up against the cleat's wood as the cleat is pressed down.
    loaded_edge(row.diameter, desk.length(fastening.drilling.y), ACROSS)
    species = Input(cleat.species, f"{support.pointer}/species")
    return _through_wood(row, cleat_gravity(desk, species), side, bite, tip, gap, held, grain)


@lru_cache(maxsize=512)
def _through_steel(
    row: Fastener, steel: Steel, side: float, bite: float, tip: float, gap: float, gravity: float, grain: float
) -> Worked:
    return side_strength(
        diameter=row.diameter, root_diameter=row.root_diameter, bending_yield=row.bending_yield,
        main_bearing=wood_bearing(gravity, row.diameter, grain), side_bearing=steel_bearing_of(steel),
        main_length=bearing_length(bite, tip), side_length=side, gap=require_gap(gap, bite), grain_angle=grain,
    ).worked  # fmt: skip


@lru_cache(maxsize=512)
def _through_wood(
    row: Fastener, side_gravity: float, side: float, bite: float, tip: float, gap: float, gravity: float, grain: float
) -> Worked:
    """A cleat's grain lies level, so a weight always loads it across: the larger angle counts for both woods."""
    return side_strength(
        diameter=row.diameter, root_diameter=row.root_diameter, bending_yield=row.bending_yield,
        main_bearing=wood_bearing(gravity, row.diameter, grain),
        side_bearing=wood_bearing(side_gravity, row.diameter, ACROSS),
        main_length=bearing_length(bite, tip), side_length=side, gap=require_gap(gap, bite), grain_angle=ACROSS,
    ).worked  # fmt: skip


def _withdrawal(desk: Desk, fastening: Fastening) -> Worked:
    row = published(desk)
    if fastening.in_wall:
        require_wood_framing(desk, fastening.support.wall_name, fastening.support.wall)
    bite, tip, gravity, held = desk.numbers("bite", "tip", "specific_gravity", "thread_in_wood")
    require_penetration(row.kind, row.diameter, bite, tip)
    return _pulled(row, gravity, held)


@lru_cache(maxsize=512)
def _pulled(row: Fastener, gravity: float, held: float) -> Worked:
    return withdrawal.withdrawal(row.kind, gravity, row.diameter, held)


def _pull_over(desk: Desk, fastening: Fastening, cleat: Cleat | None) -> Worked:
    """A leg held by one row of screws is pulled on one side, which halves the figure."""
    style = desk.word(fastening.head("style"))
    width = _bearing_width(desk, fastening)
    (side,) = desk.numbers("steel")
    if cleat is not None:
        gravity = cleat_gravity(desk, Input(cleat.species, f"{fastening.support.pointer}/species"))
        return head.pull_through(gravity, min(width, 12.7), side, style if fastening.screw.washer is None else "round")
    if style in SINKING:
        raise OutsideRulebook(_SUNK)
    one_row = len(fastening.drilling.holes.from_heel.value or ()) < 2
    return head.pull_over(side, width, _steel(desk, fastening), eccentric=one_row)


def _bearing_width(desk: Desk, fastening: Fastening) -> float:
    """Width of the head, or of the washer under it."""
    washer = fastening.screw.washer
    if washer is not None:
        return desk.length(Input(washer.outside, f"{fastening.here}/washer/outside"))
    return desk.length(fastening.head("diameter"))


def _steel(desk: Desk, fastening: Fastening) -> Steel:
    return tables().steel(desk.word(fastening.support.steel))


def _packing(desk: Desk, fastening: Fastening) -> float:
    behind = fastening.support.lining_behind
    desk.need(Input("packed solid", behind.pointer, _PACKING))
    return tables().framing("unknown").gravity
