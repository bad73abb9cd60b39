"""What is done with the panels of a field: left to settle, tried on the wall, rolled."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from plumbrule.facts.desk import Desk, Missing
from plumbrule.facts.step_times import StepsOf


class Bonding:
    """What is done with the panels of one field on one wall."""

    def __init__(self, desk: Desk, steps: StepsOf, lays: Callable[[], tuple[str, ...]]) -> None:
        self._desk, self._steps, self._lays = desk, steps, lays

    def work(self, tried: Sequence[StepsOf]) -> None:
        """Fills in settling, trying and rolling. `tried` are the walls whose try of the bond also speaks for this."""
        desk = self._desk
        desk.get("panels_settled", lambda: bool(self._settling()))
        if not desk.known("panels_settled") or desk.true("panels_settled"):
            desk.get("panels_settle", self._settles)
        desk.get("bond_tried", lambda: bool(self._tries(tried)))
        if not desk.known("bond_tried") or desk.true("bond_tried"):
            desk.get("bond_tried_for", lambda: self._tried_for(tried))
        desk.get("rolled", lambda: bool(self._rolling()))
        desk.get("rolled_at_once", self._rolled_at_once)

    def _settling(self) -> tuple[str, ...]:
        found = self._steps.done(("acclimatise",), self._lays())
        return tuple(name for name in found if self._steps.step(name).where == "in the room")

    def _settles(self) -> float:
        return min(max(self._steps.hours(name, lay) for name in self._settling()) for lay in self._lays())

    def _tries(self, alike: Sequence[StepsOf]) -> tuple[str, ...]:
        missing: list[str] = []
        for steps in alike:
            try:
                found = self._on_the_face(steps)
            except Missing as error:
                missing.extend(error.pointers)
                continue
            if found:
                return found
        if missing:
            raise Missing(missing)
        return ()

    def _on_the_face(self, steps: StepsOf) -> tuple[str, ...]:
        """Tries on one wall as it will be covered: not before its last sanding, primer or paint."""
        lays = self._lays()
        onto = steps.not_after(("abrade wall", "skim wall", "prime wall", "paint wall"), lays)
        return tuple(name for name in steps.done(("test bond",), lays) if all(steps.before(one, name) for one in onto))

    def _tried_for(self, alike: Sequence[StepsOf]) -> float:
        tries = self._tries(alike)
        return min(max(self._steps.hours(name, lay) for name in tries) for lay in self._lays())

    def _rolling(self) -> tuple[str, ...]:
        lays = self._lays()
        rolls = self._steps.sure("roll panels")
        found = tuple(roll for roll in rolls if any(self._steps.before(lay, roll) for lay in lays))
        unsaid = [name for name in self._steps.possible("roll panels") if name not in rolls]
        if not found and unsaid:
            raise Missing([f"/steps/{name}/works_on" for name in unsaid])
        self._steps.note(*(found or lays))
        return found if all(any(self._steps.before(lay, roll) for roll in found) for lay in lays) else ()

    def _rolled_at_once(self) -> bool:
        rolls = self._rolling()
        return bool(rolls) and all(
            any(lay in self._steps.step(roll).at_once_after for roll in rolls) for lay in self._lays()
        )
