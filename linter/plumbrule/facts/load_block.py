"""The screws at the ends of a block under each load: what a support sends into the block must come out at its ends."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_loads import BLOCK_LOAD
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import diameter
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import Load
from plumbrule.facts.reference import tables
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import framing_gravity, stud_width
from plumbrule.mechanics import blocking, factors, wall_leg
from plumbrule.mechanics.given import si
from plumbrule.mechanics.outside import INSIDE, outside, screw_kind_word
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import Number, OutsideRulebook, Worked
from plumbrule.plan import resolve
from plumbrule.plan.framing import Block

Start = Callable[[Desk, Load], None]
Demands = Mapping[tuple[int, Load], Callable[[Desk], Sequence[Demand]]]
# Screws above each other in a block's end keep this off its edges; the rest of its height is shared between them.
_EDGE = 25.4


def block_rows(ground: Ground, demands: Demands, start: Start) -> list[Row]:
    """A row for each block a support of the board is screwed into, under each load."""
    found = []
    for support in ground.path.supports:
        names = {one.holes.into.value for one in support.drillings if one.leg == "wall" and one.holes.into.value}
        for name in sorted(names):
            block = ((support.wall.blocking if support.wall else None) or {})[str(name)]
            found += [
                _row(ground, support, str(name), block, load, work, start)
                for (part, load), work in demands.items()
                if part == id(support)
            ]
    return found


def _row(
    ground: Ground, support: Support, name: str, block: Block, load: Load,
    demand: Callable[[Desk], Sequence[Demand]], start: Start,
) -> Row:  # fmt: skip
    here = f"/walls/{support.wall_name}/blocking/{name}"
    said = load.case if load.kind != "D" else "its own weight"
    desk = Desk(BLOCK_LOAD, here, here, f"ends of block {name} under {said}")
    start(desk, load)
    desk.get("force", lambda: _force(desk, ground, support, name, block, here, demand(desk)))
    desk.get("strength", lambda: _strength(desk, ground, support, block, here, load))
    return desk.row()


def _force(
    desk: Desk, ground: Ground, support: Support, name: str, block: Block, here: str, demands: Sequence[Demand]
) -> Worked:
    """All places in the block together on its worse end: side forces and pulls by the lever rule, every twist whole on
    either end, so that the block's own stiffness is not relied on to share it."""
    size = resolve.block_size(block)
    count = Input(block.each_end.count if block.each_end else None, f"{here}/each_end")
    shape = Input(size, f"{here}/size", also=(f"{here}/laid",))
    left, length, low = (Input(getattr(block, key), f"{here}/{key}") for key in ("left", "length", "bottom"))
    desk.need_all(count, shape, left, length, low, support.bears_at)
    assert size is not None and block.each_end is not None
    number = block.each_end.count
    if number < 2:
        raise OutsideRulebook(
            "A block that is held by glue or by one screw an end can turn or drop out: it counts as absent; drive two "
            "screws or more into each end."
        )
    pitch = (size[0] - 2 * _EDGE) / (number - 1)
    if pitch <= 0:
        raise OutsideRulebook("The block is too low for its end screws to stand above each other: take a higher one.")
    axis = desk.length(low) + size[0] / 2
    places = ground.places_on(desk, support)
    down: wall_leg.WallLeg = "up" if support.wall_leg == "up" else "down"
    ends = [[0.0, 0.0, 0.0], [0.0, 0.0, 0.0]]
    under: list[Worked] = []
    whole, leg = desk.length(length), desk.length(support.wall_leg_size)
    # Where the leg bears on this block too, what the screws pull the leg presses back: the block is turned, not drawn.
    bears = desk.length(support.bears_at) - (0.0 if down == "up" else leg)
    on_block = desk.length(low) <= bears <= desk.length(low) + size[0]
    for place, demand in zip(places, demands, strict=True):
        if not any(one.drilling.holes.into.value == name for one in place.all):
            continue
        x = min(max(place.on_wall - desk.length(left), 0.0), whole)
        heels = [row[0].heel for row in place.rows]
        out = demand.pulls or wall_leg.pulls_of_rows(demand.couple, down, heels, leg)
        pulls = demand.drawn if on_block else sum(si(line) for line in out)
        weights = blocking.end_shares(abs(si(demand.side)), x, whole)
        drawn = blocking.end_shares(pulls, x, whole)
        for end, weight, pull in ((ends[0], weights.left, drawn.left), (ends[1], weights.right, drawn.right)):
            end[0], end[1] = end[0] + si(weight), end[1] + si(pull)
        middle = desk.length(support.bears_at) + (1.0 if down == "up" else -1.0) * sum(heels) / len(heels)
        ends[0 if x <= whole / 2 else 1][2] += si(blocking.twist(demand.couple, demand.side, middle - axis))
        under += [demand.side, demand.couple]
    found = [blocking.end_screw_force(weight, pull, _sum(twist, under), number, pitch) for weight, pull, twist in ends]
    return max(found, key=si)


def _sum(twisting: float, under: Sequence[Worked]) -> Worked:
    return Worked(
        "M_t", "twist of the places nearer to this end", "M_all", (Number("M_all", twisting, "N·mm"),),
        twisting, "N·mm", "statics; the block's own stiffness is not relied on to share it", steps=tuple(under),
    )  # fmt: skip


def _strength(desk: Desk, ground: Ground, support: Support, block: Block, here: str, load: Load) -> Worked:
    framing = support.wall.framing if support.wall else None
    at = f"/walls/{support.wall_name}/framing"
    end = block.each_end
    desk.need(Input(end, f"{here}/each_end"))
    assert end is not None
    screw = (ground.plan.model.screws or {})[end.screw]
    screw_at = f"/screws/{end.screw}"
    length, width = Input(screw.length, f"{screw_at}/length"), stud_width(framing, at)
    desk.need_all(length, width)
    word = screw_kind_word(screw.kind)
    if word != INSIDE:
        raise outside(word)
    row: Fastener = tables().fastener(screw.kind, desk.length(diameter(screw, screw_at)))
    strength = blocking.end_screw_strength(
        row, length=desk.length(length), stud_thickness=desk.length(width), end_gap=0.0,
        stud_gravity=framing_gravity(desk, Input(framing.species if framing else None, f"{at}/species")),
        block_gravity=framing_gravity(desk, Input(block.species, f"{here}/species")),
    ).worked  # fmt: skip
    service = ground.service.take(desk)
    return factors.adjusted(
        strength, factors.load_duration(load.duration), factors.wet_service(service, "lateral", row.diameter)
    )
