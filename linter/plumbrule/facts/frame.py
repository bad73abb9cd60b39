"""Studs as they were found, and blocks of solid wood let in between them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_framing import BLOCK, STUD
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.drilling import studs_wanted
from plumbrule.facts.fastening import diameter
from plumbrule.facts.reference import tables
from plumbrule.facts.room import any_people
from plumbrule.facts.supports import Support
from plumbrule.facts.wood import framing_gravity, stud_depth, stud_width
from plumbrule.mechanics import screw_length
from plumbrule.mechanics.outside import INSIDE, outside, screw_kind_word
from plumbrule.mechanics.table_rows import Fastener
from plumbrule.mechanics.worked import Worked
from plumbrule.plan import resolve
from plumbrule.plan.framing import Block
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.walls import Wall


def stud_rows(plan: Plan, supports: Sequence[Support]) -> tuple[Row, ...]:
    """Every stud that is known, wall by wall. A wall that things hang on and whose studs nobody found has one row of
    unknown place."""
    return tuple(
        row for name, wall in (plan.model.walls or {}).items() for row in _studs_of(plan, name, wall, supports)
    )


def block_rows(plan: Plan, supports: Sequence[Support]) -> tuple[Row, ...]:
    """Every block of the plan."""
    return tuple(
        _block(plan, wall_name, wall, name, block, supports)
        for wall_name, wall in (plan.model.walls or {}).items()
        for name, block in (wall.blocking or {}).items()
    )


def _studs_of(plan: Plan, name: str, wall: Wall, supports: Sequence[Support]) -> Iterator[Row]:
    meant = {
        drilling.stud.number
        for support in supports
        if support.wall_name == name
        for drilling in support.drillings
        if drilling.stud is not None
    }
    here = f"/walls/{name}/framing"
    found = resolve.studs(plan, name)
    before: Input | None = None
    if not found:
        if any(support.wall_name == name for support in supports):
            wanted = studs_wanted(plan, name)
            place = Input(None, wanted[0], also=wanted[1:])
            yield _stud(f"the studs of wall {name}", here, wall, place, None, used=True)
        return
    for stud in found:
        place = Input(stud.centre, stud.pointers[0], also=stud.pointers[1:])
        yield _stud(f"stud {stud.number} of wall {name}", here, wall, place, before, used=stud.number in meant)
        before = place


def _stud(label: str, here: str, wall: Wall, place: Input, before: Input | None, *, used: bool) -> Row:
    desk = Desk(STUD, place.pointer, here.rsplit("/", 1)[0], label)
    framing = wall.framing
    species = Input(framing.species if framing else None, f"{here}/species")
    desk.copy("centre", place)
    desk.copy("width", stud_width(framing, here))
    desk.copy("depth", stud_depth(framing, here))
    desk.copy("species", species)
    desk.get("specific_gravity", lambda: framing_gravity(desk, species))
    desk.set("used", used, place.pointer)
    desk.set("has_one_before", before is not None, place.pointer)
    if before is not None:

        def spacing() -> float:
            assert before is not None
            desk.need_all(place, before)
            return desk.length(place) - desk.length(before)

        desk.get("spacing_before", spacing)
    return desk.row()


def _block(plan: Plan, wall_name: str, wall: Wall, name: str, block: Block, supports: Sequence[Support]) -> Row:
    here = f"/walls/{wall_name}/blocking/{name}"
    desk = Desk(BLOCK, here, here, f"block {name}")
    size = resolve.block_size(block)
    shape = Input(size, f"{here}/size", also=(f"{here}/laid",))
    species = Input(block.species, f"{here}/species")
    on_it = [
        support
        for support in supports
        if support.wall_name == wall_name and any(one.holes.into.value == name for one in support.drillings)
    ]
    desk.copy("length", Input(block.length, f"{here}/length"))
    desk.copy("height", shape._replace(value=size[0] if size else None))
    desk.copy("depth", shape._replace(value=size[1] if size else None))
    desk.copy("species", species)
    desk.get("specific_gravity", lambda: framing_gravity(desk, species))
    desk.set("used", bool(on_it), *(support.pointer for support in on_it))
    desk.get("carries_people", lambda: any_people(desk, on_it))
    _ends(desk, plan, wall_name, wall, block, here)
    _end_screws(desk, plan, wall_name, wall, block, here)
    return desk.row()


def _ends(desk: Desk, plan: Plan, wall_name: str, wall: Wall, block: Block, here: str) -> None:
    framing = wall.framing
    left, length = Input(block.left, f"{here}/left"), Input(block.length, f"{here}/length")
    width = stud_width(framing, f"/walls/{wall_name}/framing")

    def fit() -> float:
        found = resolve.studs(plan, wall_name)
        if not found or any(stud.centre is None for stud in found):
            raise Missing(studs_wanted(plan, wall_name))
        desk.need_all(left, length, width)
        half = desk.length(width) / 2
        start = desk.length(left)
        stop = start + desk.length(length)
        # The stud that an end is meant to meet is the one whose face lies nearest to it.
        gaps = []
        for faces in (
            [(start - (stud.centre + half), stud) for stud in found if stud.centre is not None],
            [((stud.centre - half) - stop, stud) for stud in found if stud.centre is not None],
        ):
            gap, stud = min(faces, key=lambda face: abs(face[0]))
            desk.need_all(*(Input(stud.centre, pointer) for pointer in stud.pointers))
            gaps.append(gap)
        return max(gaps, key=abs)

    desk.get("end_fit", fit)
    within = Input(framing.found_within if framing else None, f"/walls/{wall_name}/framing/found_within")
    desk.copy("end_gap_known_to", within)


def _end_screws(desk: Desk, plan: Plan, wall_name: str, wall: Wall, block: Block, here: str) -> None:
    end = block.each_end
    at = f"{here}/each_end"
    if end is None:
        for field in (
            "end_screw_count", "end_screw_kind", "end_screw_diameter", "end_screw_bite", "end_screw_full_bite",
        ):  # fmt: skip
            desk.copy(field, Input(None, at))
        return
    screw = (plan.model.screws or {})[end.screw]
    screw_at = f"/screws/{end.screw}"
    desk.copy("end_screw_count", Input(float(end.count), f"{at}/count"))
    desk.copy("end_screw_kind", Input(screw.kind, f"{screw_at}/kind", also=(f"{at}/screw",)))
    desk.copy("end_screw_diameter", diameter(screw, screw_at))

    def row() -> Fastener:
        kind = desk.text("end_screw_kind")
        word = screw_kind_word(kind)
        if word != INSIDE:
            raise outside(word)
        return tables().fastener(kind, desk.number("end_screw_diameter"))

    def bite() -> Worked:
        """Through the stud, and through a gap where the block falls short of it."""
        length = Input(screw.length, f"{screw_at}/length")
        width = stud_width(wall.framing, f"/walls/{wall_name}/framing")
        desk.need_all(length, width)
        (fit,) = desk.numbers("end_fit")
        return screw_length.penetration(desk.length(length), desk.length(width), max(fit, 0.0))

    def full_bite() -> Worked:
        (entered,) = desk.numbers("end_screw_bite")
        return screw_length.full_penetration(row().kind, entered, screw_length.tip_length(row()))

    desk.get("end_screw_bite", bite)
    desk.get("end_screw_full_bite", full_bite)
