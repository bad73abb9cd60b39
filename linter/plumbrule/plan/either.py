"""One way only: where a plan may say a thing in two ways, it says it in one of them."""

from __future__ import annotations

from plumbrule.plan.complaints import Complaints
from plumbrule.plan.framing import Run
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.supports import HoleGroup

# What a bracket has of its own when it is not cut from a steel section.
BOUGHT = ("upright", "arm", "thickness", "steel", "inside_radius", "coating")


class Choosing:
    """One look at all the keys of which a plan gives one or the other."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._plan = plan
        self._model = plan.model
        self._complain = complaints.add

    def check(self) -> None:
        """Complains where both spellings are given, where neither is, and where a pair is only half there."""
        self._walls()
        self._supports()
        self._others()

    def _has(self, at: str, key: str) -> bool:
        return self._plan.is_written(f"{at}/{key}")

    def _one_of(self, at: str, first: str, second: str, both: str, neither: str) -> None:
        """`first` and `second` are keys of the part at `at`. `neither` is empty where the part does without."""
        has_first, has_second = self._has(at, first), self._has(at, second)
        if has_first and has_second:
            self._complain(f"{at}/{second}", f"Both {first} and {second} are given.", both, key=True)
        elif not has_first and not has_second and neither:
            self._complain(at, f"Neither {first} nor {second} is given.", neither, key=True)

    def _together(self, at: str, *keys: str) -> None:
        """All of `keys` or none of them."""
        missing = [key for key in keys if not self._has(at, key)]
        if missing and len(missing) < len(keys):
            there = next(key for key in keys if key not in missing)
            self._complain(f"{at}/{there}", f"{there} needs {' and '.join(missing)}.",
                           f"Write {' and '.join(missing)} beside it.", key=True)  # fmt: skip

    def _walls(self) -> None:
        for name, wall in (self._model.walls or {}).items():
            at = f"/walls/{name}"
            if wall.framing is not None:
                framing = f"{at}/framing"
                if self._has(framing, "centres"):
                    second = "first" if self._has(framing, "first") else "spacing"
                    self._one_of(framing, "centres", second, "Give the list you found or the spacing, not both.", "")
                else:
                    self._together(framing, "first", "spacing")
            if wall.services is not None:
                for section in ("cables", "pipes"):
                    for run_name, run in (getattr(wall.services, section) or {}).items():
                        self._run(run, f"{at}/services/{section}/{run_name}")
            if wall.surface is not None and wall.surface.state and "sound" in wall.surface.state:
                other = next((state for state in wall.surface.state if state != "sound"), None)
                if other is not None:
                    index = wall.surface.state.index("sound")
                    self._complain(f"{at}/surface/state/{index}", f"sound and {other} cannot both be.",
                                   "Keep what is wrong with the wall, or sound if nothing is.")  # fmt: skip

    def _run(self, run: Run, at: str) -> None:
        upright = [key for key in ("beside_stud", "from", "to") if self._has(at, key)]
        level = [key for key in ("height", "left", "right") if self._has(at, key)]
        if upright and level:
            self._complain(f"{at}/{level[0]}", "This runs both beside a stud and at a height.",
                           "Give each stretch a name of its own.", key=True)  # fmt: skip
        elif not upright and not level:
            self._complain(at, "It is not said where this runs.",
                           "Write {beside_stud, from, to} or {height, left, right}.", key=True)  # fmt: skip
        elif upright:
            self._together(at, "beside_stud", "from", "to")
        else:
            self._together(at, "height", "left", "right")

    def _supports(self) -> None:
        for name in self._model.screws or {}:
            at = f"/screws/{name}"
            self._one_of(at, "size", "diameter", "Give No. or diameter.",
                         "Write size: No. 10 for a wood screw, diameter: 5/16 in for a lag screw.")  # fmt: skip
        for name, angle in (self._model.angles or {}).items():
            self._group(angle.wall_holes, f"/angles/{name}/wall_holes")
            self._group(angle.seat_holes, f"/angles/{name}/seat_holes")
        for name, cleat in (self._model.cleats or {}).items():
            at = f"/cleats/{name}"
            self._group(cleat.wall_holes, f"{at}/wall_holes")
            self._group(cleat.seat_holes, f"{at}/seat_holes")
            measured = "width" if self._has(at, "width") else "thickness"
            self._one_of(at, "size", measured, "Give the name of the size or what was measured, not both.",
                         "Write size: 2x4, or width and thickness as measured.")  # fmt: skip
            if not self._has(at, "size"):
                self._together(at, "width", "thickness")
        for name, bracket in (self._model.brackets or {}).items():
            at = f"/brackets/{name}"
            self._one_of(at, "at", "from_left", "Give at: studs or the list, not both.",
                         "Write at: studs, or from_left with the centre of each bracket.")  # fmt: skip
            bought = ("upright", "arm", "thickness", "steel", "inside_radius", "coating")
            own = [key for key in bought if self._has(at, key)]
            self._one_of(at, "section", own[0] if own else "upright", "Give the steel section or the bracket's sizes.",
                         "Write section, or upright, arm and thickness of a bracket as bought.")  # fmt: skip
            if own and not self._has(at, "section"):
                self._together(at, "upright", "arm", "thickness")
            for group, key in ((bracket.wall_holes, "wall_holes"), (bracket.seat_holes, "seat_holes")):
                # One bracket has its holes on its centre line unless it says otherwise.
                if group.at is not None:
                    self._complain(f"{at}/{key}/at", "The holes of a bracket go where the bracket goes.",
                                   f"Write at: studs beside wall, not in {key}.", key=True)  # fmt: skip

    def _group(self, group: HoleGroup | None, at: str) -> None:
        if group is None:
            return
        self._one_of(at, "at", "from_left", "Give at: studs or the list, not both.",
                     "Write at: studs, or from_left with the distance of each hole from the left end.")  # fmt: skip
        if group.at is not None and group.into is not None:
            self._complain(f"{at}/into", "A hole at a stud goes into the stud.",
                           f"Write from_left with the holes that go into {group.into}.", key=True)  # fmt: skip

    def _others(self) -> None:
        for name, corner in (self._model.corners or {}).items():
            at = f"/corners/{name}"
            if corner.from_ is None and corner.to is None:
                self._complain(at, "Neither from nor to is given.",
                               "Write from: the wall whose right end is here, or to: the one whose left end is.",
                               key=True)  # fmt: skip
        for name in self._model.panels or {}:
            self._one_of(f"/panels/{name}/courses", "starters", "stagger", "Give starters or stagger, not both.",
                         "Write starters: {WALL: [first piece of each course]}, or stagger: 1/2.")  # fmt: skip
