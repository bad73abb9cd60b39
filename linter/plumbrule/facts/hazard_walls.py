"""Walls whose old paint, texture or lining the work disturbs: what is done to them, and what the tests said."""

from __future__ import annotations

from collections.abc import Iterator

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_hazards import OLD_WALL
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.hazard_parts import Parts, children, task_rows
from plumbrule.facts.wall_face import face
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.steps import Step
from plumbrule.plan.walls import Wall

# Kinds that were never made with asbestos; boards, plasters, their compounds and the beds of tiles were.
_NEVER_ASBESTOS = ("plywood", "solid boards")
_PAPERS = ("wallpaper", "vinyl wall covering")
_WHOLE_FACE = ("ground", "stripped")


def old_wall_rows(parts: Parts) -> tuple[Row, ...]:
    """One row a wall."""
    return tuple(_row(parts, name, wall) for name, wall in parts.walls.items())


def _row(parts: Parts, name: str, wall: Wall) -> Row:
    here = f"/walls/{name}"
    desk = Desk(OLD_WALL, here, here, f"wall {name}")
    steps = tuple(_disturbing(parts, name))
    fixed = [support for support in parts.supports if support.wall_name == name]
    cut = [support for support in fixed if support.lining_behind.value != "left in place"]
    what = dict.fromkeys(how for _, _, how in steps)
    what.update({"drilled": None} if fixed else {})
    what.update({"cut": None} if cut else {})
    sources = (*(pointer for pointer, _, _ in steps), *(support.pointer for support in fixed))
    desk.set("touched", bool(what), *(sources or (here,)))
    desk.set("disturbed", tuple(what), *sources)
    _age(desk, parts)
    _face(desk, here, wall, next((pointer for pointer, _, how in steps if how == "pried"), None))
    _tests(desk, wall, f"{here}/surface/tests")
    desk.get("paint_disturbed", lambda: _area(desk, parts, name, steps))

    def lead_safe() -> bool:
        # Those that lack it first: a finding stands where it has to be written.
        for pointer, _, _ in sorted(steps, key=lambda one: "lead-safe work" in one[1].controls):
            desk.need(Input(True, f"{pointer}/controls"))
        desk.need(Input(parts.model.steps, "/steps"))
        return bool(steps) and all("lead-safe work" in step.controls for _, step, _ in steps)

    desk.get("lead_safe", lead_safe)
    desk.get("children", lambda: children(desk, parts.plan))
    return desk.row()


def _disturbing(parts: Parts, wall: str) -> Iterator[tuple[str, Step, str]]:
    """The steps that touch its face: pointer, step, and what they do to it."""
    for name, step in (parts.model.steps or {}).items():
        how = task_rows().task(step.task).disturbs
        if how != "nothing" and wall in parts.walls_of(step):
            yield f"/steps/{name}", step, how


def _age(desk: Desk, parts: Parts) -> None:
    site = parts.model.site
    year = site.year_built if site else None
    old = "" if year is not None else "nothing is written: an old house is taken, with lead paint and asbestos"
    if desk.true("touched"):
        desk.get("year_known", lambda: bool(desk.need(Input(year is not None, "/site/year_built", old))))
    else:
        desk.set("year_known", year is not None, "/site/year_built")
    if year is not None:
        desk.set("year_built", float(year), "/site/year_built")
    region = site.region if site else None
    # Elsewhere the years are later, so a region that nobody names is taken as elsewhere.
    desk.set("region", region if region in ("US", "CA") else "elsewhere", "/site/region")


def _face(desk: Desk, here: str, wall: Wall, pried: str | None) -> None:
    """What is on the wall, and what its lining is made of. `pried` is the step that takes its base trim off, if any: a
    bare wall has painted trim all the same."""
    at = f"{here}/surface"
    surface = wall.surface
    coating = surface.coating if surface else None

    def painted() -> bool:
        if pried is not None and coating == "none":
            return bool(desk.need(Input(True, pried, "nothing says what is on the base trim: paint is taken")))
        return desk.word(Input(coating, f"{at}/coating")) != "none"

    desk.get("painted", painted)
    texture = surface.texture if surface else None
    desk.get("textured", lambda: desk.word(Input(texture, f"{at}/texture")) != "smooth")
    desk.get("papered", lambda: desk.word(Input(coating, f"{at}/coating")) in _PAPERS)

    def suspect() -> bool:
        desk.need(Input(wall.lining, f"{here}/lining"))
        return any(layer.material not in _NEVER_ASBESTOS for layer in wall.lining or ())

    desk.get("lining_suspect", suspect)


def _tests(desk: Desk, wall: Wall, at: str) -> None:
    """What the tests said. Lead shows on a swab; asbestos shows only in a laboratory, so a swab for it is no test."""
    tests = wall.surface.tests if wall.surface else None
    lead, asbestos = (tests.lead, tests.asbestos) if tests else (None, None)
    desk.set("lead", lead.result if lead else "not tested", f"{at}/lead")
    if lead is not None:
        desk.set("lead_by_swab", lead.method == "swab", f"{at}/lead/method")
    swab = asbestos is not None and asbestos.method == "swab"

    def asbestos_said() -> str:
        said = "no swab tells asbestos: it is taken as not tested" if swab else ""
        desk.need(Input(True, f"{at}/asbestos", said))
        return "not tested" if asbestos is None or (swab and asbestos.result == "not found") else asbestos.result

    desk.get("asbestos", asbestos_said)


def _area(desk: Desk, parts: Parts, name: str, steps: tuple[tuple[str, Step, str], ...]) -> float | Worked:
    """How much paint is disturbed: a wall that is ground or stripped with all its face, else the strips that are cut
    away behind steel. Lining that is cut for something else may be all of it. Holes and pried trim count for nothing
    here."""
    wall, here = parts.walls[name], f"/walls/{name}"
    for pointer, _, one in steps:
        if one in (*_WHOLE_FACE, "cut"):
            desk.need(Input(True, pointer))
    desk.need(Input(parts.model.steps, "/steps"))
    how = {one for _, _, one in steps}
    strips = [
        support
        for support in parts.supports
        if support.wall_name == name and support.lining_behind.value != "left in place"
    ]
    if not how.isdisjoint(_WHOLE_FACE) or ("cut" in how and not strips):
        return face(desk, wall, here)
    for support in strips:
        desk.need_all(support.length, support.wall_leg_size)
    return sum(desk.length(support.length) * desk.length(support.wall_leg_size) for support in strips)
