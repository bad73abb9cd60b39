"""What trims and sealants say of joints that cannot all be true."""

from __future__ import annotations

from plumbrule.plan.complaints import Complaints
from plumbrule.plan.panels import SealantPart, TrimPart
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.sealing import sealants_for
from plumbrule.plan.words import JOINTS

SLACK = 1e-6
# A trim that is made for one turn of a corner only.
_TURNS = {"outside corner": "outside", "inside corner": "inside", "cove": "inside", "quarter round": "inside"}


class Joints:
    """One look at everything that closes the edges of panels."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._model = plan.model
        self._complain = complaints.add
        self._written = complaints.written

    def check(self) -> None:
        """Complains of a joint listed twice or claimed by two sealants, of a class without a sealant, of a backer that
        fills its joint, and of a trim along a corner of another turn or another wall."""
        for name, sealant in (self._model.sealants or {}).items():
            self._sealant(sealant, f"/sealants/{name}")
        for name in self._model.panels or {}:
            self._claimed(name)
        for name, trim in (self._model.trims or {}).items():
            self._trim(trim, f"/trims/{name}")

    def _sealant(self, sealant: SealantPart, at: str) -> None:
        seen: set[str] = set()
        for index, joint in enumerate(sealant.joints or ()):
            if joint in seen:
                self._complain(f"{at}/joints/{index}", f"{joint} is listed twice.", "Keep one of them.")
            seen.add(joint)
        if sealant.kind == "none" and isinstance(sealant.class_, float | int):
            write = "Name the sealant, or take class out."
            self._complain(f"{at}/class", "kind is none, and nothing has no class.", write, key=True)

    def _claimed(self, name: str) -> None:
        """One joint is filled by one sealant, and no backer is as thick as the joint is deep."""
        said: set[tuple[str, ...]] = set()
        for joint in JOINTS:
            found = sealants_for(self._model, name, joint)
            if len(found) > 1 and found not in said:
                said.add(found)
                listed = [str(one) for one in (self._model.sealants or {})[found[1]].joints or ()]
                self._complain(
                    f"/sealants/{found[1]}/joints/{listed.index(joint)}",
                    f"{joint} of {name} is sealed by {found[0]} and by {found[1]}.",
                    "Take it out of one, or write sealed_with under the panels that each is for.",
                )
            for sealant in found[:1]:
                if joint != "trims":
                    self._fits(name, sealant)

    def _fits(self, name: str, sealant: str) -> None:
        panels, backer = (self._model.panels or {})[name], (self._model.sealants or {})[sealant].backer
        thick, adhesive = panels.panel.thickness, panels.adhesive
        if (
            backer is None
            or backer.thickness is None
            or thick is None
            or adhesive is None
            or adhesive.thickness is None
        ):
            return
        if backer.kind != "none" and backer.thickness >= thick + adhesive.thickness - SLACK:
            at = f"/sealants/{sealant}/backer/thickness"
            deep = f"/panels/{name}/panel/thickness"
            self._complain(at, f"A backer of {self._written(at)} fills a joint that is as deep as the panel "
                           f"({self._written(deep)}) and its adhesive.",
                           "Write a thinner strip, or bond-breaker tape.")  # fmt: skip

    def _trim(self, trim: TrimPart, at: str) -> None:
        corner = (self._model.corners or {}).get(trim.along)
        if corner is None:
            return
        turn = _TURNS.get(trim.kind)
        if turn is not None and turn != corner.turn:
            found = f"Corner {trim.along} is an {corner.turn} corner; {trim.kind} is for an {turn} one."
            write = f"Write {corner.turn} corner, or name the corner that is meant."
            self._complain(f"{at}/kind", found, write)
        here = [wall for wall in (corner.from_, corner.to) if wall is not None]
        for index, wall in enumerate(trim.walls or ()):
            if wall in (self._model.walls or {}) and wall not in here:
                write = f"Write {' or '.join(here)}, or take walls out: the corner says where it is."
                self._complain(f"{at}/walls/{index}", f"Wall {wall} is not at corner {trim.along}.", write)
