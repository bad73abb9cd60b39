"""A push sideways at a seat: what it comes to at each place that holds the board's steel, off the wall and along it.

Off the wall the supports on the board's own wall hold it: what lies along its ends gives way in slots, so that the wood
can move. Along the wall an end within 1/8 in of a wall stops it. Where none does, the back holds it, and a return at
the other end is pulled off its own wall; each is held to the whole push, since which is stiffer is not known.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from plumbrule.catalogue.rows_loads import BOARD_LOAD
from plumbrule.facts import load_back_alone, load_three_sides
from plumbrule.facts.board_place import walled_ends
from plumbrule.facts.desk import Desk, Missing, Once
from plumbrule.facts.load_brackets import Brackets
from plumbrule.facts.load_demand import Demand
from plumbrule.facts.load_ground import Ground
from plumbrule.facts.load_kinds import OWN_WEIGHT, PUSH_ALONG, PUSH_OUT, Load
from plumbrule.facts.row_field import number_of
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import stud_width
from plumbrule.mechanics import factors, push, wall_leg
from plumbrule.mechanics.beam_loads import add
from plumbrule.mechanics.given import Given, si
from plumbrule.mechanics.worked import OutsideRulebook, Worked

Demands = Callable[[Desk], Sequence[Demand]]

# An end this near a wall is stopped by it before its screws are bent.
_TOUCHES = 3.175
_STATICS = "statics"
_BRACKETS = (
    "A push along the wall turns brackets on their screws, which no published formula covers: let both ends of the "
    "board lie within 1/8 in of a wall, or screw one end to an angle on the wall there."
)
_BLOCK = (
    "A push along the wall on screws in blocking is not worked out here: let both ends of the board lie within 1/8 in "
    "of a wall."
)


def stopped_by(desk: Desk, ground: Ground) -> str:
    """Which ends of the board a push along the wall cannot move. Raises Missing."""
    placed = ground.placed
    ends = walled_ends(placed)
    desk.need_all(*(placed.gap(end) for end in ends))
    at = [end for end in ends if desk.length(placed.gap(end)) <= _TOUCHES * (1 + 1e-9)]
    if len(at) == 2:
        return "both ends"
    return f"{at[0]} end" if at else "no end"


def far_returns(ground: Ground, stopped: str) -> tuple[Support, ...]:
    """The returns that are pulled off their wall by a push towards an end that nothing stops."""
    path = ground.path
    found = []
    for end, other in (("left", path.right), ("right", path.left)):
        if stopped not in ("both ends", f"{end} end") and other is not None and _screwed_up(other):
            found.append(other)
    return tuple(found)


def pushed_places(ground: Ground, brackets: Brackets | None) -> Iterator[tuple[Support, Load, Demands]]:
    """Every support that holds the board against a push, and what comes to its places."""
    path = ground.path
    own = path.along_back
    for support in own:
        yield support, PUSH_OUT, _once(lambda desk, support=support: _out(desk, ground, brackets, support))  # type: ignore[misc]
    try:
        stopped = stopped_by(Desk(BOARD_LOAD, "", "", ""), ground)
    except Missing:
        stopped = "no end"
    if stopped == "both ends":
        return
    ends = far_returns(ground, stopped)
    held = brackets is not None and len(ends) == (2 if stopped == "no end" else 1)
    for support in () if held else own:
        yield support, PUSH_ALONG, _once(lambda desk, support=support: _along(desk, ground, brackets, support))  # type: ignore[misc]
    for support in ends:
        yield support, PUSH_ALONG, _once(lambda desk, support=support: _off_its_own_wall(desk, ground, support))  # type: ignore[misc]


def _once(work: Callable[[Desk], Sequence[Demand]]) -> Demands:
    return Once(BOARD_LOAD, work).take


def _screwed_up(support: Support) -> bool:
    return any(one.leg == "seat" for one in support.drillings)


def _weight(desk: Desk, ground: Ground, support: Support) -> tuple[Demand, ...]:
    """What lies on the places anyhow: pushes come on top of the weight."""
    if ground.path.carried == "back angle alone":
        return load_back_alone.demands(desk, ground, OWN_WEIGHT)
    if support is ground.path.back:
        return load_three_sides.on_back(desk, ground, OWN_WEIGHT)
    return load_three_sides.on_return(desk, ground, support, OWN_WEIGHT)


def _out(desk: Desk, ground: Ground, brackets: Brackets | None, support: Support) -> tuple[Demand, ...]:
    force = ground.point(desk, PUSH_OUT)
    assert force is not None
    sizes = ground.sizes.take(desk)
    if brackets is not None:
        return (_on_bracket(desk, ground, brackets, support, force),)
    places = ground.places_on(desk, support)
    begins = ground.left.take(desk)
    left = desk.length(support.left)
    at = [left + place.x - begins for place in places]
    return _pulled(desk, ground, support, force, at, (0.0, sizes.length))


def _off_its_own_wall(desk: Desk, ground: Ground, support: Support) -> tuple[Demand, ...]:
    """A return whose wall stands square to the push: the push draws it off, at the front edge at the worst."""
    force = ground.point(desk, PUSH_ALONG)
    assert force is not None
    sizes = ground.sizes.take(desk)
    at = load_three_sides.outs(desk, ground, support, ground.places_on(desk, support))
    return _pulled(desk, ground, support, force, at, (sizes.back, sizes.front))


def _pulled(
    desk: Desk, ground: Ground, support: Support, force: Given, at: Sequence[float], ends: tuple[float, float]
) -> tuple[Demand, ...]:
    found = []
    for index, lasting in enumerate(_weight(desk, ground, support)):
        share = push.push_share(at, index, ends)
        found.append(_with_pull(desk, ground, support, index, lasting, si(force) * share.value, (share,)))
    return tuple(found)


def _with_pull(
    desk: Desk, ground: Ground, support: Support, index: int, lasting: Demand, drawn: float, under: tuple[object, ...]
) -> Demand:
    place = ground.places_on(desk, support)[index]
    up: wall_leg.WallLeg = "up" if support.wall_leg == "up" else "down"
    heels = [row[0].heel for row in place.rows]
    couple = push.push_couple(drawn, _height(desk, ground, support), up, heels, desk.length(support.wall_leg_size))
    couple = couple._replace(steps=(*couple.steps, *under))  # type: ignore[arg-type]
    whole = add("M", "couple on this place, weight and push", (lasting.couple, couple), _STATICS)
    pulls: tuple[Worked, ...] = ()
    if up == "up" and len(heels) > 1:
        # One couple cannot stand for a push that passes between two rows: each row is given its own pull.
        leg = desk.length(support.wall_leg_size)
        by_weight = wall_leg.pulls_of_rows(lasting.couple, up, heels, leg)
        by_push = push.push_pulls(drawn, _height(desk, ground, support), heels, leg)
        pulls = tuple(
            add("T", "pull on this row, weight and push", pair, _STATICS)
            for pair in zip(by_weight, by_push, strict=True)
        )
    return Demand(lasting.side, lasting.steel, whole, "not of this kind", lasting.side, pulls, drawn)


def _height(desk: Desk, ground: Ground, support: Support) -> float:
    """From the heel up to the top of the board, where the push is."""
    thick = ground.sizes.take(desk).thickness
    return thick + (desk.length(support.thickness) if support.wall_leg == "up" else 0.0)


def _on_bracket(desk: Desk, ground: Ground, brackets: Brackets, support: Support, force: Given) -> Demand:
    (lasting,) = brackets.demands(desk, support, OWN_WEIGHT)
    index = brackets.on.index(support)
    centres = brackets.centres.take(desk)
    share = push.push_share(centres, index, (0.0, ground.sizes.take(desk).length))
    upright = desk.length(support.wall_leg_size)
    heels = [row[0].heel for row in ground.places_on(desk, support)[0].rows]
    pulls = push.bracket_push(
        si(force) * share.value, ground.sizes.take(desk).thickness, upright,
        [upright - heel for heel in reversed(heels)], lasting.couple,
    )  # fmt: skip
    kept = tuple(line._replace(steps=(*line.steps, share)) for line in reversed(pulls))
    return Demand(lasting.side, 0.0, lasting.couple, "not of this kind", lasting.side, kept, si(force) * share.value)


def _along(desk: Desk, ground: Ground, brackets: Brackets | None, support: Support) -> tuple[Demand, ...]:
    """Nothing stops the board: its back holds it by the side strength of its screws, across the studs' grain."""
    stopped_by(desk, ground)
    force = ground.point(desk, PUSH_ALONG)
    assert force is not None
    if brackets is not None:
        raise OutsideRulebook(_BRACKETS)
    places, front = ground.places_on(desk, support), ground.sizes.take(desk).front
    framing = support.wall.framing if support.wall else None
    width = desk.length(stud_width(framing, f"/walls/{support.wall_name}/framing"))
    at = [place.x for place in places]
    found = []
    for index, (place, lasting) in enumerate(zip(places, _weight(desk, ground, support), strict=True)):
        for one in place.all:
            if one.drilling.holes.into.value is not None:
                raise OutsideRulebook(_BLOCK)
            factors.loaded_edge(number_of(desk, one.screw, "diameter"), width / 2, 90.0)
        drawn = push.drawn_off(force, front, at, index)
        heels = [row[0].heel for row in place.rows]
        above = _height(desk, ground, support)
        over = abs(above - min(heels)) if support.wall_leg == "up" else above + max(heels)
        demand = _with_pull(desk, ground, support, index, lasting, drawn.value, (drawn,))
        side = push.side_of_push(force, lasting.side, over, at, index)
        found.append(demand._replace(side=side, alone=side))
    return tuple(found)
