"""Along the screw: what it passes, how far it enters the wood, how much of that is tip, thread and smooth shank."""

from __future__ import annotations

from functools import lru_cache

from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.fastening import Fastening, published
from plumbrule.facts.supports import Support, through
from plumbrule.mechanics import screw_length
from plumbrule.mechanics.given import si
from plumbrule.mechanics.outside import outside
from plumbrule.mechanics.worked import Worked


def work_lengths(desk: Desk, fastening: Fastening) -> None:
    """Everything that is measured along the screw. Needs `kind` and `diameter`."""
    support, wood = fastening.support, fastening.wood
    desk.copy("length", fastening.of_screw("length"))
    desk.copy("steel", through(support, fastening.drilling.leg))
    desk.get("layers", lambda: _layers(desk, fastening))
    desk.get("gap", lambda: lining_between(desk, support, bears=True) if fastening.in_wall else 0.0)
    desk.get("bite", lambda: _bite(desk))
    desk.get("tip", lambda: _tip(desk, fastening))
    desk.get("full_bite", lambda: _full_bite(desk))
    desk.get("thread_in_wood", lambda: _thread_in_wood(desk, fastening))
    desk.get("shank_in_wood", lambda: max(desk.number("bite") - thread(desk, fastening), 0.0))
    desk.copy("wood_depth", wood.depth)
    if fastening.in_wall:
        desk.get("depth_in_wall", lambda: desk.number("bite"))


def lining_between(desk: Desk, support: Support, *, bears: bool) -> float:
    """Lining in mm between the back of the steel and the wood. `bears` asks only for what bears nothing: a solid
    packing takes up length, but holds the screw."""
    behind = desk.word(support.lining_behind)
    if behind == "cut away" or (behind == "packed solid" and bears):
        return 0.0
    return lining_thickness(desk, support)


def lining_thickness(desk: Desk, support: Support) -> float:
    """All layers of the wall's lining together, mm."""
    here = f"/walls/{support.wall_name}/lining"
    layers = support.wall.lining if support.wall else None
    desk.need(Input(layers, here))
    thicknesses = [Input(layer.thickness, f"{here}/{place}/thickness") for place, layer in enumerate(layers or ())]
    desk.need_all(*thicknesses)
    return sum(desk.length(thickness) for thickness in thicknesses)


def thread(desk: Desk, fastening: Fastening) -> float:
    """Threaded length in mm, tip included: measured, or the least that the published tables give such a screw."""
    measured = fastening.of_screw("thread")
    if measured.value is not None:
        return desk.length(measured)
    kind = published(desk).kind
    desk.need(Input(kind, measured.pointer, "nothing is written: the thread of the published tables is taken"))
    return si(_thread_by_rule(kind, *desk.numbers("diameter", "length")))


def _layers(desk: Desk, fastening: Fastening) -> float:
    lining = lining_between(desk, fastening.support, bears=False) if fastening.in_wall else 0.0
    washer = fastening.screw.washer
    if washer is None:
        return lining
    return lining + desk.length(Input(washer.thickness, f"{fastening.here}/washer/thickness"))


def _bite(desk: Desk) -> Worked:
    return _penetration(*desk.numbers("length", "steel", "layers"))


def _tip(desk: Desk, fastening: Fastening) -> float | Worked:
    """A wood screw's tip is two diameters by the standard, whatever the maker ground; a lag screw's is tabulated,
    and a measured one wins where it is longer."""
    row = published(desk)
    tabulated = screw_length.tip_length(row)
    measured = fastening.of_screw("tip")
    if row.kind == "lag screw" and measured.value is not None and desk.length(measured) > si(tabulated):
        return desk.length(measured)
    return tabulated


def _full_bite(desk: Desk) -> Worked:
    published(desk)
    bite, tip = desk.numbers("bite", "tip")
    return screw_length.full_penetration(desk.text("kind"), bite, tip)


def _thread_in_wood(desk: Desk, fastening: Fastening) -> Worked:
    published(desk)
    length = thread(desk, fastening)
    bite, tip = desk.numbers("bite", "tip")
    if bite <= 0:
        raise outside("short bite")
    return screw_length.thread_in_wood(desk.text("kind"), bite, length, tip)


@lru_cache(maxsize=512)
def _penetration(length: float, steel: float, layers: float) -> Worked:
    return screw_length.penetration(length, steel, layers)


@lru_cache(maxsize=512)
def _thread_by_rule(kind: str, diameter: float, length: float) -> Worked:
    return screw_length.thread_by_rule(kind, diameter, length)
