"""Measures of the room that cannot both be true."""

from __future__ import annotations

import re
from collections.abc import Iterable

from plumbrule.plan.complaints import INCH, Complaints, length
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.resolve import stud_size
from plumbrule.plan.walls import Wall

# Two tape readings of one point that differ by more are not the same point.
TAPE = INCH / 16
SLACK = 1e-6
MOST_STUDS = 1000


class Room:
    """One look at the site, the walls and their corners."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._plan = plan
        self._model = plan.model
        self._complain = complaints.add
        self._written = complaints.written

    def check(self) -> None:
        """Complains of what lies outside its wall, of a corner that two walls claim, of what is upside down."""
        self._site()
        for name, wall in (self._model.walls or {}).items():
            self._studs(wall, f"/walls/{name}")
            self._runs(wall, f"/walls/{name}")
            self._fixtures(wall, f"/walls/{name}")
            self._flatness(wall, f"/walls/{name}/surface/out_of_flat")
        self._corners()
        self._floor()

    def _site(self) -> None:
        site = self._model.site
        if site is None:
            return
        if site.region is not None and not re.fullmatch("[A-Z]{2}", site.region):
            self._complain("/site/region", f"{site.region} is not a country by its two letters.", "Write US, CA, GB …")
        if site.year_built is not None and not 1000 <= site.year_built <= 2200:
            self._complain("/site/year_built", f"{site.year_built} is not a year.", "Write it like 1996.")
        air = site.temperature
        if air and air.coldest is not None and air.warmest is not None and air.coldest > air.warmest:
            self._complain(
                "/site/temperature/coldest", "coldest is warmer than warmest.", "Change them over.", key=True
            )
        damp = site.humidity
        if damp and damp.driest is not None and damp.dampest is not None and damp.driest > damp.dampest:
            self._complain("/site/humidity/driest", "driest is damper than dampest.", "Change them over.",
                           key=True)  # fmt: skip

    def _flatness(self, wall: Wall, at: str) -> None:
        flat = wall.surface.out_of_flat if wall.surface is not None else None
        if flat is None or flat.gap is None or flat.straightedge is None or flat.gap < flat.straightedge:
            return
        self._complain(f"{at}/gap", f"gap {self._written(f'{at}/gap')} is not less than the straightedge "
                       f"({self._written(f'{at}/straightedge')}).", "Change them over, or measure again.")  # fmt: skip

    def _inside(self, at: str, key: str, reach: float | None, wall: Wall, name: str, what: str = "reaches") -> None:
        """`reach` mm from the left end must lie within the wall."""
        if reach is None or wall.width is None or reach <= wall.width + SLACK:
            return
        width = self._written(f"/walls/{name}/width")
        self._complain(f"{at}/{key}", f"{at.rsplit('/', 1)[-1]} {what} {length(reach, self._written(f'{at}/{key}'))}, "
                       f"wall ends at {width}.", "Measure it again from the left end of the wall.")  # fmt: skip

    def _studs(self, wall: Wall, at: str) -> None:
        framing = wall.framing
        if framing is None:
            return
        if framing.centres is not None and len(framing.centres) > MOST_STUDS:
            self._complain(f"{at}/framing/centres", f"{len(framing.centres):,} studs in one wall are a slip.",
                           "List the studs that were found.", key=True)  # fmt: skip
            return
        seen: dict[float, str] = {}
        for index, centre in enumerate(framing.centres or ()):
            pointer = f"{at}/framing/centres/{index}"
            self._stud(centre, pointer, wall, at)
            if centre is None:
                continue
            if round(centre, 3) in seen:
                self._complain(pointer, f"Stud {self._written(pointer)} is listed twice.", "Keep one of them.")
            seen[round(centre, 3)] = pointer
        if framing.first is not None:
            self._stud(framing.first, f"{at}/framing/first", wall, at)
        size = stud_size(framing)
        least = size.narrow if size is not None else INCH
        if framing.spacing is not None and framing.spacing < least - SLACK:
            pointer = f"{at}/framing/spacing"
            self._complain(pointer, f"Studs {self._written(pointer)} apart would stand in one another.",
                           "Write the distance from centre to centre, like 16 in.")  # fmt: skip

    def _stud(self, centre: float | None, pointer: str, wall: Wall, at: str) -> None:
        if centre is not None and wall.width is not None and centre > wall.width + SLACK:
            self._complain(pointer,
                           f"Stud {self._written(pointer)} is beyond the wall ({self._written(f'{at}/width')}).",
                           "Measure it again from the left end of the wall.")  # fmt: skip

    def _runs(self, wall: Wall, at: str) -> None:
        name = at.rsplit("/", 1)[-1]
        for section in ("cables", "pipes"):
            runs = getattr(wall.services, section) if wall.services is not None else None
            for run_name, run in (runs or {}).items():
                pointer = f"{at}/services/{section}/{run_name}"
                self._inside(pointer, "beside_stud", run.beside_stud, wall, name, "runs at")
                self._inside(pointer, "right", run.right, wall, name)
                self._upside_down(pointer, "left", run.left, "right", run.right, "is not left of")
                low = run.from_ if isinstance(run.from_, float) else None
                high = run.to if isinstance(run.to, float) else None
                self._upside_down(pointer, "from", low, "to", high, "is not below")

    def _upside_down(
        self, at: str, low_key: str, low: float | None, high_key: str, high: float | None, says: str
    ) -> None:
        if low is not None and high is not None and low >= high - SLACK:
            self._complain(f"{at}/{low_key}", f"{low_key} {self._written(f'{at}/{low_key}')} {says} "
                           f"{high_key} {self._written(f'{at}/{high_key}')}.", "Change them over, or measure again.",
                           key=True)  # fmt: skip

    def _fixtures(self, wall: Wall, at: str) -> None:
        name = at.rsplit("/", 1)[-1]
        standing: Iterable[str] = ("openings", "fittings")
        for section in standing:
            for part_name, part in (getattr(wall, section) or {}).items():
                pointer = f"{at}/{section}/{part_name}"
                self._inside(pointer, "width", _sum(part.left, part.width), wall, name)
                self._upside_down(pointer, "bottom", part.bottom, "top", part.top, "is not below")
        for part_name, block in (wall.blocking or {}).items():
            self._inside(f"{at}/blocking/{part_name}", "length", _sum(block.left, block.length), wall, name)
        for part_name, box in (wall.boxes or {}).items():
            pointer = f"{at}/boxes/{part_name}"
            half = 0.0 if box.width is None else box.width / 2
            self._inside(pointer, "centre", _sum(box.centre, half), wall, name)
            if box.centre is not None and box.centre < half - SLACK:
                self._complain(f"{pointer}/centre", f"{part_name} would begin left of the wall.",
                               "Boxes are measured to the centre: write centre.")  # fmt: skip
            # Device yokes stand 1-13/16 in apart; from memory, and generous below.
            if box.gangs is not None and box.width is not None and box.width < (1.75 * box.gangs - 0.25) * INCH:
                about = length((1.8125 * (box.gangs - 1) + 2.1875) * INCH, "in")
                self._complain(f"{pointer}/width", f"width {self._written(f'{pointer}/width')} is small for "
                               f"{box.gangs} gang{'s' if box.gangs > 1 else ''} (about {about}).",
                               "Measure the outside of the box again, or count its devices.")  # fmt: skip

    def _corners(self) -> None:
        claimed: dict[tuple[str, str], str] = {}
        for name, corner in (self._model.corners or {}).items():
            for key, wall, side in (("from", corner.from_, "right"), ("to", corner.to, "left")):
                if wall is None:
                    continue
                pointer = f"/corners/{name}/{key}"
                if (wall, side) in claimed:
                    self._complain(pointer, f"Wall {wall} already has a {side}-hand corner.",
                                   f"It is {claimed[wall, side]}: take one of them out.")  # fmt: skip
                    continue
                claimed[wall, side] = name
                ends = f"/walls/{wall}/ends/{side}"
                if self._plan.is_written(ends):
                    self._complain(ends, f"The {side} end of {wall} stands in corner {name}.",
                                   "Take it out here: an end in a corner is not written twice.", key=True)  # fmt: skip
            if corner.from_ is not None and corner.from_ == corner.to:
                self._complain(f"/corners/{name}/to", f"Wall {corner.to} would meet itself.",
                               "Name the wall on the other side, or leave it out.")  # fmt: skip
            if corner.angle is not None and not 0 < corner.angle < 360:
                self._complain(f"/corners/{name}/angle", "Two walls do not meet at that angle.", "Write it like 90°.")

    def _floor(self) -> None:
        walls = self._model.walls or {}
        for name, corner in (self._model.corners or {}).items():
            before, after = walls.get(corner.from_ or ""), walls.get(corner.to or "")
            if before is None or after is None or before.floor_drop is None or after.floor_drop is None:
                continue
            one, other = before.floor_drop.right, after.floor_drop.left
            if one is not None and other is not None and abs(one - other) > TAPE + SLACK:
                there = f"/walls/{corner.to}/floor_drop/left"
                self._complain(there, f"Floor at corner {name} is "
                               f"{self._written(f'/walls/{corner.from_}/floor_drop/right')} on one wall, "
                               f"{self._written(there)} on the other.",
                               "Measure it again: it is one point.")  # fmt: skip
        drops = [(name, wall.floor_drop) for name, wall in walls.items()]
        known = [drop for _, drop in drops if drop is not None]
        ends = [end for drop in known for end in (drop.left, drop.right, *(point.drop for point in drop.points))]
        if known and len(known) == len(drops) and all(end is not None and end > SLACK for end in ends):
            self._complain(f"/walls/{drops[0][0]}/floor_drop", "No end of any wall has 0: the datum is the high point "
                           "of the floor.", "Write 0 in at the highest end.", key=True)  # fmt: skip


def _sum(start: float | None, size: float | None) -> float | None:
    return None if start is None or size is None else start + size
