"""Measures of screws, steel, boards and panels that cannot both be true."""

from __future__ import annotations

from plumbrule.plan.boards import Board
from plumbrule.plan.complaints import Complaints, length
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.resolve import Holes, Station, bracket_places, holes, lumber, stations, studs
from plumbrule.plan.screws import Screw
from plumbrule.plan.supports import Bracket, Cleat, HoleGroup, SteelAngle

SLACK = 1e-6


class Parts:
    """One look at everything that is bought, drilled and hung."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._plan = plan
        self._model = plan.model
        self._complain = complaints.add
        self._written = complaints.written

    def check(self) -> None:
        """Complains of what cannot be made: a thread longer than its screw, a hole past the end of its steel."""
        for name, screw in (self._model.screws or {}).items():
            self._screw(screw, f"/screws/{name}")
        for name, section in (self._model.sections or {}).items():
            for leg in ("wall", "seat"):
                self._less(f"/sections/{name}", "thickness", section.thickness, f"legs/{leg}",
                           getattr(section.legs, leg), "is not less than")  # fmt: skip
        for name, pattern in (self._model.holes or {}).items():
            at = f"/holes/{name}"
            if pattern.countersink is not None:
                self._least(f"{at}/countersink/diameter", pattern.countersink.diameter, f"{at}/diameter",
                            pattern.diameter, "is smaller than the hole")  # fmt: skip
            self._least(f"{at}/slot", pattern.slot, f"{at}/diameter", pattern.diameter, "is shorter than the hole")
        for name, angle in (self._model.angles or {}).items():
            self._angle(angle, f"/angles/{name}")
        for name, bracket in (self._model.brackets or {}).items():
            self._bracket(bracket, name)
        for name, cleat in (self._model.cleats or {}).items():
            self._cleat(cleat, f"/cleats/{name}")
        for name, board in (self._model.boards or {}).items():
            self._board(board, f"/boards/{name}")
        for name, field in (self._model.panels or {}).items():
            for wall, first in (field.courses.starters or {}).items():
                for index, piece in enumerate(first):
                    at = f"/panels/{name}/courses/starters/{wall}/{index}"
                    self._most(at, piece, f"/panels/{name}/panel/length", field.panel.length, "is longer than a panel")

    # Comparisons. Each says both measures as they were written.

    def _most(self, at: str, value: float | None, of: str, limit: float | None, says: str) -> None:
        if value is not None and limit is not None and value > limit + SLACK:
            self._complain(at, f"{_key(at)} {self._written(at)} {says} ({self._written(of)}).", "Measure both again.")

    def _least(self, at: str, value: float | None, of: str, limit: float | None, says: str) -> None:
        if value is not None and limit is not None and value < limit - SLACK:
            self._complain(at, f"{_key(at)} {self._written(at)} {says} ({self._written(of)}).", "Measure both again.")

    def _less(self, at: str, key: str, value: float | None, other: str, limit: float | None, says: str) -> None:
        if value is not None and limit is not None and value >= limit - SLACK:
            self._complain(f"{at}/{key}", f"{key} {self._written(f'{at}/{key}')} {says} {other.replace('/', '.')} "
                           f"({self._written(f'{at}/{other}')}).", "Measure both again.")  # fmt: skip

    def _screw(self, screw: Screw, at: str) -> None:
        self._most(f"{at}/thread", screw.thread, f"{at}/length", screw.length, "is longer than the screw")
        self._most(f"{at}/tip", screw.tip, f"{at}/thread", screw.thread, "is longer than the thread")
        self._most(f"{at}/tip", screw.tip, f"{at}/length", screw.length, "is longer than the screw")
        if screw.head is not None:
            self._least(f"{at}/head/diameter", screw.head.diameter, f"{at}/diameter", screw.diameter,
                        "is smaller than the screw")  # fmt: skip
        if screw.washer is not None:
            self._less(
                f"{at}/washer", "inside", screw.washer.inside, "outside", screw.washer.outside, "is not less than"
            )
            self._least(f"{at}/washer/inside", screw.washer.inside, f"{at}/diameter", screw.diameter,
                        "does not go over the screw")  # fmt: skip

    def _angle(self, angle: SteelAngle, at: str) -> None:
        section = (self._model.sections or {}).get(angle.section)
        for key, leg in (("wall_holes", "wall"), ("seat_holes", "seat")):
            group: HoleGroup = getattr(angle, key)
            steel = f"/sections/{angle.section}"
            found = self._group(group, f"{at}/{key}")
            if found is not None and section is not None:
                self._passes(found, f"{steel}/thickness", section.thickness)
                self._within_leg(found, f"{steel}/legs/{leg}", getattr(section.legs, leg))
            self._along(angle, group, f"{at}/{key}", at)

    def _cleat(self, cleat: Cleat, at: str) -> None:
        size = lumber(cleat.size)
        thickness = size.narrow if size is not None else cleat.thickness
        found = self._group(cleat.wall_holes, f"{at}/wall_holes")
        if found is not None:
            self._passes(found, f"{at}/size" if size is not None else f"{at}/thickness", thickness, "wood")
        self._along(cleat, cleat.wall_holes, f"{at}/wall_holes", at)
        if cleat.seat_holes is not None:
            self._group(cleat.seat_holes, f"{at}/seat_holes")
            self._along(cleat, cleat.seat_holes, f"{at}/seat_holes", at)

    def _bracket(self, bracket: Bracket, name: str) -> None:
        at = f"/brackets/{name}"
        section = (self._model.sections or {}).get(bracket.section or "")
        steel = f"{at}/thickness" if section is None else f"/sections/{bracket.section}/thickness"
        for key, group in (("wall_holes", bracket.wall_holes), ("seat_holes", bracket.seat_holes)):
            found = self._group(group, f"{at}/{key}")
            if found is not None:
                self._passes(found, steel, bracket.thickness if section is None else section.thickness)
            for index, mark in enumerate(group.from_left or ()):
                self._past(f"{at}/{key}/from_left/{index}", mark, f"{at}/width", bracket.width)
        places = bracket_places(self._plan, name, bracket)
        wall = (self._model.walls or {}).get(bracket.wall)
        if places is not None and not places and bracket.at is not None:
            self._complain(f"{at}/at", f"No stud of wall {bracket.wall} lies under its boards.",
                           "Write from_left with the centre of each bracket.")  # fmt: skip
        for index, place in enumerate(bracket.from_left or ()):
            if wall is not None and wall.width is not None and place is not None and place > wall.width + SLACK:
                pointer = f"{at}/from_left/{index}"
                self._complain(pointer, f"from_left {self._written(pointer)} is past the end of the wall "
                               f"({self._written(f'/walls/{bracket.wall}/width')}).",
                               "Measure it again from the left end of the wall.")  # fmt: skip

    def _group(self, group: HoleGroup, at: str) -> Holes | None:
        """The group with its pattern filled in, where that can be done; what is written in the group is compared."""
        if group.pattern not in (self._model.holes or {}):
            return None
        found = holes(self._plan, group, at)
        sink, diameter = found.countersink, found.diameter
        # A pattern's own sizes were compared once already.
        if sink.value is not None and (group.countersink is not None or group.diameter is not None):
            self._least(f"{sink.pointer}/diameter", sink.value.diameter, diameter.pointer, diameter.value,
                        "is smaller than the hole")  # fmt: skip
        if group.slot is not None or group.diameter is not None:
            self._least(found.slot.pointer, found.slot.value, diameter.pointer, diameter.value,
                        "is shorter than the hole")  # fmt: skip
        return found

    def _passes(self, found: Holes, of: str, thickness: float | None, what: str = "steel") -> None:
        screw = (self._model.screws or {}).get(found.screw.value or "")
        if screw is None or screw.length is None or thickness is None or screw.length > thickness + SLACK:
            return
        long = self._written(f"/screws/{found.screw.value}/length")
        self._complain(found.screw.pointer, f"{found.screw.value} is {long} long, the {what} it goes through is "
                       f"{self._written(of)}.",
                       "Name a longer screw, or measure both again.")  # fmt: skip

    def _within_leg(self, found: Holes, of: str, leg: float | None) -> None:
        for index, distance in enumerate(found.from_heel.value or ()):
            if distance is not None and leg is not None and distance >= leg - SLACK:
                at = f"{found.from_heel.pointer}/{index}"
                self._complain(at, f"from_heel {self._written(at)} is past the toe of the leg ({self._written(of)}).",
                               "Measure it again from the heel.")  # fmt: skip

    def _past(self, at: str, mark: float | None, of: str, limit: float | None) -> bool:
        if mark is None or limit is None or mark <= limit + SLACK:
            return False
        self._complain(at, f"from_left {self._written(at)} is past the end ({self._written(of)}).",
                       "Measure it again from the left end of the part, not of the wall.")  # fmt: skip
        return True

    def _along(self, part: SteelAngle | Cleat, group: HoleGroup, at: str, own: str) -> None:
        """Holes past the end of their part, holes past the end of their block, studs that are nowhere."""
        past = False
        for index, mark in enumerate(group.from_left or ()):
            past |= self._past(f"{at}/from_left/{index}", mark, f"{own}/length", part.length)
        found = stations(self._plan, part, group, at)
        if group.at is not None and found is not None and not found and studs(self._plan, part.wall):
            assert part.left is not None and part.length is not None
            like = self._written(f"{own}/left")
            self._complain(f"{at}/at", f"No stud between {_bare(part.left, like)} and "
                           f"{length(part.left + part.length, like)}.",
                           "Write from_left with the holes, and into with the block they go into.")  # fmt: skip
        if group.into is not None and group.at is None and found is not None and not past:
            self._in_block(part, group.into, found)

    def _in_block(self, part: SteelAngle | Cleat, name: str, found: tuple[Station, ...]) -> None:
        wall = (self._model.walls or {}).get(part.wall)
        block = (wall.blocking or {}).get(name) if wall is not None else None
        if block is None or block.left is None or block.length is None:
            return
        for station in found:
            if station.on_wall is None or block.left - SLACK <= station.on_wall <= block.left + block.length + SLACK:
                continue
            like = self._written(station.pointers[0])
            end, side = (block.left, "begins") if station.on_wall < block.left else (block.left + block.length, "ends")
            self._complain(station.pointers[0], f"Block {name} {side} at {length(end, like)}, hole at "
                           f"{length(station.on_wall, like)}: it misses the block.",
                           "Move the hole, or measure the block again.")  # fmt: skip

    def _board(self, board: Board, at: str) -> None:
        for name, crack in board.cracks.items():
            here = f"{at}/cracks/{name}"
            self._most(f"{here}/length", crack.length, f"{at}/length", board.length, "is longer than the board")
            self._most(f"{here}/depth", crack.depth, f"{at}/thickness", board.thickness, "is deeper than the board")
            self._most(f"{here}/from_left", _sum(crack.from_left, crack.length), f"{at}/length", board.length,
                       "and its length run past the end of the board")  # fmt: skip
            self._most(f"{here}/from_front", crack.from_front, f"{at}/depth", board.depth, "is behind the board")
        if board.finish is not None and board.finish.kind == "none":
            for side in ("top", "bottom", "edges"):
                if count := getattr(board.finish.coats, side):
                    self._complain(f"{at}/finish/coats/{side}", f"{count} coats are given, and the finish is none.",
                                   "Name the finish, or leave the coats out.")  # fmt: skip
        wall = (self._model.walls or {}).get(board.wall)
        if wall is not None and wall.width is not None and board.left is not None and board.left > wall.width + SLACK:
            width = self._written(f"/walls/{board.wall}/width")
            self._complain(f"{at}/left", f"left {self._written(f'{at}/left')} is past the end of the wall ({width}).",
                           "Measure it again from the left end of the wall.")  # fmt: skip


def _key(pointer: str) -> str:
    """What a measure is called: its key, also for an item of a list."""
    steps = [step for step in pointer.split("/") if not step.isdigit()]
    return steps[-1] if "starters" not in steps else "starter"


def _sum(first: float | None, second: float | None) -> float | None:
    return None if first is None or second is None else first + second


def _bare(mm: float, like: str) -> str:
    """A length without its unit, before one that has it."""
    return length(mm, like).rpartition(" ")[0]
