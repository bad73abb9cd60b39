"""The purchase list as facts read it: which line is for a need, and how much is bought on it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Generic, NamedTuple, TypeVar

from plumbrule.catalogue.rows_purchase import NEED
from plumbrule.facts.desk import Desk, Input
from plumbrule.mechanics.worked import OutsideRulebook
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.purchase import Purchase
from plumbrule.reading.pointer import escape

T = TypeVar("T")

BY_WEIGHT = "It is bought by weight, and what a weight covers or fills is said on its pack only: read it there."


class Line(NamedTuple):
    """The line of the purchase list that is for a need; `bought` is None where it does not stand there yet."""

    group: str
    name: str
    bought: Purchase | None

    @property
    def at(self) -> str:
        """Its pointer."""
        return f"/purchase/{self.group}/{escape(self.name)}"

    def of(self, key: str) -> Input:
        """A value of the line."""
        return Input(getattr(self.bought, key, None), f"{self.at}/{key}")

    def says(self, key: str) -> bool:
        """Whether the line has that value."""
        return getattr(self.bought, key, None) is not None


def line_for(plan: Plan, group: str, *names: str, else_at: str = "") -> Line:
    """The line of that group with the first of these names that the list has; else where one should stand: at
    `else_at`, or under the first name."""
    lines = getattr(plan.model.purchase, group, None) or {}
    for name in names:
        if name in lines:
            return Line(group, name, lines[name])
    return Line(group, else_at or names[0], None)


class ByLine(Generic[T]):
    """Things by the line of the purchase list that is for them, in the order in which they came."""

    def __init__(self) -> None:
        self._found: dict[str, tuple[Line, list[T]]] = {}

    def put(self, line: Line, thing: T) -> None:
        """One more thing for that line."""
        self._found.setdefault(line.name, (line, []))[1].append(thing)

    def each(self) -> Iterator[tuple[Line, list[T]]]:
        """Every line with its things."""
        yield from self._found.values()


def begin(line: Line, amount: str, part: str) -> Desk:
    """The desk of one need. `part` is the pointer of what needs it."""
    desk = Desk(NEED, line.at, part, f"{line.group} {line.name}")
    desk.set("group", line.group, part)
    desk.set("amount", amount, part)
    desk.set("listed", line.bought is not None, line.at)
    desk.set("guards", line.group == "protection", part)
    desk.set("on_hand", False, "/on_hand")
    for field in ("size_said", "thickness_said", "extends"):
        desk.set(field, False, line.at)
    return desk


def count_bought(desk: Desk, line: Line) -> None:
    """How many are bought, where the list has the line."""
    if line.bought is not None:
        desk.copy("bought_count", line.of("count"))


def size_bought(desk: Desk, line: Line, key: str, planned: Input) -> None:
    """A size that the list may say again: it must then be the one of the plan."""
    if line.bought is None:
        return
    desk.set("size_said", line.says(key), f"{line.at}/{key}")
    if line.says(key):
        desk.copy("planned_size", planned)
        desk.copy("bought_size", line.of(key))


def thickness_bought(desk: Desk, line: Line, planned: Input) -> None:
    """A thickness that the list may say again: every sum of the plan is for its own."""
    if line.says("thickness"):
        desk.set("thickness_said", True, f"{line.at}/thickness")
        desk.copy("planned_thickness", planned)
        desk.copy("bought_thickness", line.of("thickness"))


def volume_bought(desk: Desk, line: Line) -> None:
    """The volume that is bought, and how many times over it does the job. Nothing where the list has no line."""
    if line.bought is None:
        return

    def volume() -> float:
        if line.says("cartridge"):
            desk.need_all(line.of("count"))
            return desk.length(line.of("cartridge")) * desk.length(line.of("count"))
        if line.says("mass") and not line.says("volume"):
            raise OutsideRulebook(BY_WEIGHT)
        # A tin whose number is not said is one tin.
        many = desk.length(line.of("count")) if line.says("count") else 1.0
        return desk.length(line.of("volume")) * many

    def times() -> float:
        bought, needed = desk.numbers("bought_volume", "needed_volume")
        return bought / needed if needed else 1.0

    desk.get("bought_volume", volume)
    desk.get("goes_round", times)


def length_bought(desk: Desk, line: Line) -> None:
    """The length that is bought: of one roll, or of so many."""
    if line.bought is None:
        return

    def length() -> float:
        many = desk.length(line.of("count")) if line.says("count") else 1.0
        return desk.length(line.of("length")) * many

    desk.get("bought_length", length)
