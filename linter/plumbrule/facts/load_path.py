"""How each board is carried: on three sides, on a back angle alone, on brackets, on cleats, or in no way that the
published formulas and the bounds used here cover."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple

from plumbrule.catalogue.rows_loads import BOARD_LOAD
from plumbrule.facts.corner import corner_at
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.stations import Stations
from plumbrule.facts.supports import Support
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.boards import Board
from plumbrule.plan.plan_file import Plan

_ONE_PLACE = (
    "A return that is screwed to the wall at a single place can turn about it, so it counts as absent, and a board "
    "held at its back and one end only is not covered: give each return two places in studs or blocking."
)
_TWO_BACKS = (
    "Two lengths of steel or wood along one back do not carry as one, and which of them takes what is not covered "
    "here: use one length, or have an engineer share the load out."
)
_ONE_RETURN = (
    "A board held at its back and one end only twists off its free corner; no bound is known for it here: hold the "
    "other end too, or hold the back alone and let that be checked."
)
_NO_BACK = (
    "A board that lies on its two ends only, its back free, tips as soon as its load is not in line with the screws "
    "of the returns: give it a back angle."
)
_MIXED = (
    "A mix of angles, brackets and cleats under one board shares its load by their stiffness, which is not worked "
    "out here: hold the board in one way throughout."
)
_ONE_BRACKET = "A board on a single bracket tips to either side of it: use two brackets or more."
_ONE_CLEAT = (
    "A cleat along the back alone holds a board up at its back edge and nothing keeps its front from tipping down: "
    "add cleats at both ends, or brackets."
)
_NOTHING = "Nothing is said to carry this board."

# The short words of `NOT_COVERED`, which a rule may print, and the sentence that explains each.
_WORDS = {
    _ONE_PLACE: "a return is screwed at one place",
    _TWO_BACKS: "its back lies on two pieces",
    _ONE_RETURN: "one end is not held",
    _NO_BACK: "its back is not held",
    _MIXED: "angles, brackets and cleats are mixed",
    _ONE_BRACKET: "it lies on one bracket",
    _ONE_CLEAT: "it lies on one cleat at its back",
    _NOTHING: "nothing is said to carry it",
}


class Path(NamedTuple):
    """One board and what carries it. `reason` says why it is `not covered`; `wanting` are plan pointers without which
    nobody knows how it is carried."""

    name: str
    board: Board
    carried: str
    reason: str
    wanting: tuple[str, ...]
    supports: tuple[Support, ...]
    back: Support | None = None
    left: Support | None = None
    right: Support | None = None

    @property
    def pointer(self) -> str:
        """Where the board stands in the plan."""
        return f"/boards/{self.name}"

    @property
    def not_covered(self) -> str:
        """The word for why nothing covers how it is carried."""
        return _WORDS.get(self.reason, "covered")

    @property
    def behind(self) -> Support:
        """What lies along the board's back: the first of several brackets. There is something it bears on."""
        own = (support for support in self.supports if support.wall_name == self.board.wall)
        return self.back or next(own, self.supports[0])

    @property
    def along_back(self) -> tuple[Support, ...]:
        """Everything it bears on that does not hold one of its ends."""
        return tuple(one for one in self.supports if one is not self.left and one is not self.right)

    @property
    def returns(self) -> tuple[Support, ...]:
        """The supports at its two ends."""
        return tuple(support for support in (self.left, self.right) if support is not None)

    def measure(self, key: str) -> Input:
        """A measure of the board."""
        return Input(getattr(self.board, key), f"{self.pointer}/{key}")

    def require(self, *allowed: str) -> None:
        """Raises Missing or OutsideRulebook unless the board is known to be carried in one of the ways `allowed`."""
        if self.wanting:
            raise Missing(self.wanting)
        if self.carried not in allowed:
            raise OutsideRulebook(self.reason or _MIXED)


def paths(plan: Plan, supports: Sequence[Support]) -> tuple[Path, ...]:
    """Every board of the plan, however it is carried."""
    return tuple(_path(plan, name, board, supports) for name, board in (plan.model.boards or {}).items())


def _path(plan: Plan, name: str, board: Board, supports: Sequence[Support]) -> Path:
    on = tuple(support for support in supports if support.name in board.bears_on)
    kinds = {support.kind for support in on}

    def no(reason: str, wanting: tuple[str, ...] = ()) -> Path:
        return Path(name, board, "not covered", reason, wanting, on)

    if not on:
        return no(_NOTHING)
    if len(kinds) > 1 and "bracket" not in kinds:
        return no(_MIXED)
    backs = [support for support in on if support.wall_name == board.wall]
    others = [support for support in on if support.wall_name != board.wall]
    if "bracket" in kinds:
        return _on_brackets(plan, name, board, on, no)
    if not backs:
        return no(_NO_BACK)
    if len(backs) > 1:
        return no(_TWO_BACKS)
    if not others:
        if kinds == {"cleat"}:
            return no(_ONE_CLEAT)
        return Path(name, board, "back angle alone", "", (), on, backs[0])
    found = _round_the_corners(plan, board, others, no)
    if isinstance(found, Path):
        return found
    if len(found) < 2:
        return no(_ONE_RETURN)
    for end in ("left", "right"):
        at_one = _on_one_place(plan, found[end])
        if at_one is not None:
            return no(_ONE_PLACE) if at_one == () else no("", at_one)
    carried = "cleats" if kinds == {"cleat"} else "three sides"
    return Path(name, board, carried, "", (), on, backs[0], found["left"], found["right"])


def _round_the_corners(
    plan: Plan, board: Board, others: Sequence[Support], no: Callable[..., Path]
) -> dict[str, Support] | Path:
    """What holds each end of the board on the wall there, or why that is not covered."""
    ends = {end: corner_at(plan, board.wall, end) for end in ("left", "right")}
    found: dict[str, Support] = {}
    for support in others:
        side = next((end for end, met in ends.items() if met is not None and met.beyond == support.wall_name), None)
        if side is None:
            return no("", ("/corners",)) if None in ends.values() else no(_MIXED)
        if side in found:
            return no(_TWO_BACKS)
        found[side] = support
    return found


def _on_brackets(plan: Plan, name: str, board: Board, on: tuple[Support, ...], no: Callable[..., Path]) -> Path:
    """Brackets of one kind along the back. An angle or cleat at an end, on the wall there, may steady the board: the
    brackets must carry it without that."""
    brackets = tuple(support for support in on if support.kind == "bracket")
    others = [support for support in on if support.kind != "bracket"]
    if len({support.name for support in brackets}) > 1 or any(one.wall_name != board.wall for one in brackets):
        return no(_MIXED)
    if any(support.wall_name == board.wall for support in others):
        return no(_MIXED)
    if len(brackets) < 2 and not _unplaced(brackets):
        return no(_ONE_BRACKET)
    found = _round_the_corners(plan, board, others, no)
    if isinstance(found, Path):
        return found
    for support in others:
        at_one = _on_one_place(plan, support)
        if at_one is not None:
            return no(_ONE_PLACE) if at_one == () else no("", at_one)
    return Path(name, board, "brackets", "", (), on, None, found.get("left"), found.get("right"))


def _unplaced(brackets: Sequence[Support]) -> bool:
    return all(support.left.value is None for support in brackets)


def _on_one_place(plan: Plan, support: Support) -> tuple[str, ...] | None:
    """None for a return on two places or more, no pointers for one on fewer, what is wanting where it is not known."""
    desk = Desk(BOARD_LOAD, "", "", "")
    try:
        return None if len(Stations(plan, support).places(desk)) > 1 else ()
    except Missing as missing:
        return missing.pointers
    except OutsideRulebook:
        return None
