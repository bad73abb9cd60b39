"""What is done to the face of a wall before it is covered, in what order, and with what waits."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.step_times import StepsOf
from plumbrule.mechanics import grit
from plumbrule.mechanics.tables import Tables

# Products from mild to strong: of several washes the strongest counts.
_STRONG = ("degreaser", "trisodium phosphate", "alkaline cleaner", "mineral spirits", "deglosser", "mild detergent")
_LAYS_BARE = ("patch wall", "skim wall", "strip wall covering", "scrape wall", "cut away lining")
_BARE_STATES = frozenset({"bare board", "fresh plaster"})
_BARE_COATINGS = ("none", "skim plaster")
_DUSTS = ("abrade wall", "dust off wall", "scrape wall", "cut away lining")
_TAKES_DUST_OFF = ("dust off wall", "wipe wall", "wash wall")
PAINTS = (
    "flat paint", "eggshell paint", "satin paint", "semi-gloss paint", "gloss paint", "scrubbable paint", "varnish",
)  # fmt: skip


class Preparing:
    """One wall being made ready. `covers` gives the steps that cover it: laying, or painting; it raises Missing.
    `drilling` are the steps done to the wall and to what hangs on it."""

    def __init__(
        self,
        desk: Desk,
        steps: StepsOf,
        covers: Callable[[], tuple[str, ...]],
        tables: Tables,
        drilling: StepsOf | None = None,
    ) -> None:
        self._desk, self._steps, self._covers, self._tables = desk, steps, covers, tables
        self._drilling = drilling or steps

    def work(self, coating: Input, state: Input, bonded: bool) -> None:
        """Fills in every field about steps."""
        desk = self._desk
        desk.get("stripped", lambda: self._first("strip wall covering"))
        desk.get("scraped", lambda: self._first("scrape wall"))
        desk.get("skimmed", lambda: self._done("skim wall"))
        desk.get("washed", lambda: self._first("wash wall"))
        if not desk.known("washed") or desk.true("washed"):
            desk.get("washed_with", self._washed_with)
            desk.get("rinsed", self._rinsed)
            desk.get("dries", self._dries)
        desk.get("abraded", lambda: self._first("abrade wall"))
        desk.get("deglossed", self._deglossed)
        desk.get("sanded", lambda: bool(self._sandings()))
        if not desk.known("sanded") or desk.true("sanded"):
            desk.get("abrade_grit", lambda: float(self._grit()[0]))
            desk.get("abrade_grain", lambda: self._grit()[1])
            desk.get("washed_before_sanding", self._washed_before_sanding)
            desk.get("cleaned_after_sanding", self._cleaned_after_sanding)
        desk.get("wiped", lambda: bool(self._wipes()))
        desk.get("bare_spots", lambda: self._bare_spots(coating, state))
        desk.get("primed", self._primed)
        if bonded:
            self._waits(coating)

    def _waits(self, coating: Input) -> None:
        desk = self._desk
        if not desk.known("wiped") or desk.true("wiped"):
            desk.get("wiped_with", self._wiped_with)
            desk.get("wipe_waits", lambda: self._least(self._wipes()))
        desk.get("has_primer", lambda: bool(self._primings()))
        if not desk.known("has_primer") or desk.true("has_primer"):
            desk.get("prime_waits", lambda: self._least(self._primings()))
        desk.get("paint_under", lambda: self._paint_under(coating))

    def paint_age(self, coated_ago: Input) -> None:
        """How old the paint is when panels are laid: that of a new coat where one is painted first."""
        desk = self._desk
        if desk.known("paint_under") and not desk.true("paint_under"):
            return
        desk.get("paint_age", lambda: self._paint_age(coated_ago))

    # Questions about order

    def _before(self, *tasks: str) -> tuple[str, ...]:
        return self._steps.done(tasks, self._covers())

    def _done(self, *tasks: str) -> bool:
        return bool(self._before(*tasks))

    def _coats(self) -> tuple[str, ...]:
        """Whatever coats the wall that is not sure to come after the covering, and the covering."""
        covers = self._covers()
        return (*self._steps.not_after(("prime wall", "paint wall"), covers), *covers)

    def _first(self, task: str) -> bool:
        """Whether the task is done before the first coat: grease and gloss under a primer stay there."""
        return bool(self._steps.done((task,), self._coats()))

    def _sandings(self) -> tuple[str, ...]:
        found = self._steps.not_after(("abrade wall",), self._covers())
        self._steps.note(*found)
        return found

    def _primings(self) -> tuple[str, ...]:
        """Steps that prime the wall and are not sure to come after the covering."""
        found = self._steps.not_after(("prime wall",), self._covers())
        self._steps.note(*found)
        return found

    def _least(self, names: Sequence[str]) -> float:
        """The shortest wait from any of these steps to any covering: the last of them counts."""
        return min(self._steps.hours(name, cover) for name in names for cover in self._covers())

    def _washed_with(self) -> str:
        washes = self._before("wash wall")
        products = [self._steps.step(name).with_ for name in washes]
        for strong in _STRONG:
            for name, product in zip(washes, products, strict=True):
                if product == strong:
                    self._desk.need(Input(product, f"/steps/{name}/with"))
                    return strong
        return self._desk.word(Input(products[0] if products else None, f"/steps/{washes[0]}/with"))

    def _rinsed(self) -> bool:
        rinses = self._before("rinse wall")
        washes = self._steps.not_after(("wash wall",), self._covers())
        self._steps.note(*washes)
        return all(any(self._steps.before(wash, rinse) for rinse in rinses) for wash in washes)

    def _dries(self) -> float:
        """From the last water to whatever wants a dry wall. Water that is not sure to come before or after it may come
        just before."""
        covers = self._covers()
        wet = self._steps.not_after(("wash wall", "rinse wall"), covers)
        dry = (*self._steps.not_after(("abrade wall", "prime wall", "paint wall"), covers), *covers)
        found = []
        for then in dict.fromkeys(dry):
            for water in wet:
                if not self._steps.before(then, water):
                    found.append(self._steps.hours(water, then) if self._is_last(water, wet, then) else None)
        hours = [one for one in found if one is not None]
        return min(hours) if hours else 0.0

    def _is_last(self, water: str, wet: Sequence[str], then: str) -> bool:
        """Whether no other water comes between this and `then`."""
        return not any(
            self._steps.before(water, other) and self._steps.before(other, then) for other in wet if other != water
        )

    def _deglossed(self) -> bool:
        names = self._steps.done(("wash wall", "wipe wall"), self._coats())
        return any(self._steps.step(name).with_ == "deglosser" for name in names)

    def _grit(self) -> tuple[int, float]:
        """The grit of the last sanding, its number and the size of its grains; the coarsest where several may be."""
        sandings = self._sandings()
        last = [one for one in sandings if not any(self._steps.before(one, other) for other in sandings)]
        found = []
        for name in last:
            size = self._steps.step(name).grit
            self._desk.need(Input(True if size is not None else None, f"/steps/{name}/grit"))
            if size is not None:
                found.append((grit.grain(self._tables, size.number, size.iso), size.number))
        grain, number = max(found)
        return number, grain

    def _washed_before_sanding(self) -> bool:
        washes = self._steps.sure("wash wall")
        return all(any(self._steps.before(wash, sanding) for wash in washes) for sanding in self._sandings())

    def _cleaned_after_sanding(self) -> bool:
        """Whether dust is taken off between each sanding and everything that comes onto the wall after it."""
        steps, onto, sandings = self._steps, self._coats(), self._sandings()

        def clean(cleaning: Sequence[str]) -> bool:
            return all(
                any(steps.before(sanding, one) and steps.before(one, then) for one in cleaning)
                for sanding in sandings
                for then in onto
                if not steps.before(then, sanding)
            )

        if clean(steps.sure(*_TAKES_DUST_OFF)):
            return True
        if clean(steps.possible(*_TAKES_DUST_OFF)):
            unsaid = [name for name in steps.possible(*_TAKES_DUST_OFF) if steps.step(name).works_on is None]
            raise Missing([f"/steps/{name}/works_on" for name in unsaid])
        return False

    def _wipes(self) -> tuple[str, ...]:
        """Wipes that come after every sanding and dusting, and after every hole that is drilled above clean face."""
        covers = self._covers()
        dusty = (*self._steps.not_after(_DUSTS, covers), *self._drilling.not_after(("drill pilot holes",), covers))
        wipes = self._before("wipe wall")
        return tuple(wipe for wipe in wipes if all(self._steps.before(one, wipe) for one in dusty))

    def _wiped_with(self) -> str:
        wipes = self._wipes()
        last = [one for one in wipes if not any(self._steps.before(one, other) for other in wipes)]
        return self._desk.word(Input(self._steps.step(last[0]).with_, f"/steps/{last[0]}/with"))

    def _bare_spots(self, coating: Input, state: Input) -> bool:
        if self._steps.not_after(_LAYS_BARE, self._covers()):
            self._steps.note(*self._steps.possible(*_LAYS_BARE))
            return True
        if state.value is not None and not _BARE_STATES.isdisjoint(self._words(state)):
            return True
        if coating.value in _BARE_COATINGS:
            self._desk.need(coating)
            return True
        self._desk.need_all(coating, state)
        return False

    def _words(self, state: Input) -> tuple[str, ...]:
        value = self._desk.need(state)
        assert isinstance(value, tuple | list)
        return tuple(value)

    def _primed(self) -> bool:
        # A wall that gets primer and nothing else is primed by what covers it.
        own = tuple(name for name in self._covers() if self._steps.step(name).task == "prime wall")
        primes = own or self._before("prime wall")
        bared = self._steps.not_after(_LAYS_BARE, self._covers())
        if not bared:
            return bool(primes)
        return all(any(self._steps.before(one, prime) for prime in primes) for one in bared)

    def _paint_under(self, coating: Input) -> bool:
        if self._steps.not_after(("paint wall",), self._covers()):
            return True
        return self._desk.word(coating) in PAINTS

    def _paint_age(self, coated_ago: Input) -> float:
        painting = self._steps.not_after(("paint wall",), self._covers())
        if not painting:
            return self._desk.length(coated_ago)
        return min(self._steps.hours(name, cover) for name in painting for cover in self._covers())
