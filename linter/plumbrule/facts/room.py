"""The site and its walls, as they stand before the work."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_site import SITE, WALL
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.supports import Support
from plumbrule.plan.framing import Framing
from plumbrule.plan.plan_file import PlanFile
from plumbrule.plan.steps import Step
from plumbrule.plan.walls import Wall


def site_row(plan: PlanFile) -> Row:
    """The one row of the site."""
    desk = Desk(SITE, "/site", "/site", "the site")
    site = plan.site
    temperature = site.temperature if site else None
    humidity = site.humidity if site else None
    desk.copy("use", Input(site.use if site else None, "/site/use"))
    desk.copy("year_built", Input(site.year_built if site else None, "/site/year_built"))
    desk.copy("people", Input(site.people if site else None, "/site/people"))
    desk.copy("warmest", Input(temperature.warmest if temperature else None, "/site/temperature/warmest"))
    desk.copy("coldest", Input(temperature.coldest if temperature else None, "/site/temperature/coldest"))
    desk.copy("dampest", Input(humidity.dampest if humidity else None, "/site/humidity/dampest"))
    desk.copy("driest", Input(humidity.driest if humidity else None, "/site/humidity/driest"))
    return desk.row()


def wall_row(name: str, wall: Wall, supports: Iterable[Support], steps: Mapping[str, Step] | None) -> Row:
    """One wall. `supports` are the angles, brackets and cleats of the whole plan, `steps` its steps."""
    here = f"/walls/{name}"
    desk = Desk(WALL, here, here, f"wall {name}")
    on_it = [support for support in supports if support.wall_name == name]
    framing = wall.framing
    desk.copy("width", Input(wall.width, f"{here}/width"))
    desk.get("framing_kind", lambda: desk.word(framing_kind(name, wall)))
    desk.copy("separation", Input(wall.separation, f"{here}/separation"))
    lining = [
        Input(layer.thickness, f"{here}/lining/{place}/thickness") for place, layer in enumerate(wall.lining or ())
    ]

    def lining_thickness() -> float:
        desk.need(Input(wall.lining, f"{here}/lining"))
        desk.need_all(*lining)
        return sum(desk.length(layer) for layer in lining)

    desk.get("lining_thickness", lining_thickness)

    def lining_layers() -> float:
        desk.need(Input(wall.lining, f"{here}/lining"))
        return float(len(wall.lining or ()))

    desk.get("lining_layers", lining_layers)
    desk.set("holds_steel", bool(on_it), *(support.pointer for support in on_it))
    desk.get("carries_people", lambda: any_people(desk, on_it))
    opened = [one.lining_behind for one in on_it if one.lining_behind.value != "left in place"]
    desk.set("lining_cut", bool(opened), *(one.pointer for one in opened or [one.lining_behind for one in on_it]))
    desk.get("proof_loaded", lambda: _proof_loaded(desk, on_it, steps))
    found_by = framing.found_by if framing else ()
    desk.set("ways_found", float(len(set(found_by))), f"{here}/framing/found_by")
    desk.set("found_by", tuple(found_by), f"{here}/framing/found_by")
    desk.copy("found_within", Input(framing.found_within if framing else None, f"{here}/framing/found_within"))
    desk.copy("stud_centres_listed", Input(_listed(framing), f"{here}/framing/centres"))
    desk.get("searched", lambda: bool(desk.need(searched(name, wall))))
    species = framing.species if framing else None
    desk.get("species_known", lambda: desk.word(Input(species, f"{here}/framing/species")) != "unknown")
    return desk.row()


def _listed(framing: Framing | None) -> bool | None:
    """Whether each stud was found by itself. None: nobody says where they are."""
    if framing is None or (framing.centres is None and framing.spacing is None):
        return None
    return framing.centres is not None


def _proof_loaded(desk: Desk, supports: Sequence[Support], steps: Mapping[str, Step] | None) -> bool:
    """Whether a proof load is among the steps for each support that carries people, or for the boards on it."""
    desk.need(Input(steps, "/steps"))
    proved = {name for step in (steps or {}).values() if step.task == "proof load" for name in step.works_on or ()}
    wanting = False
    for support in supports:
        boards = {name for name, _ in support.boards}
        if support.name not in proved and not (boards and boards <= proved):
            wanting = bool(desk.need(support.carries_people)) or wanting
    return not wanting


def framing_kind(name: str, wall: Wall) -> Input:
    """What the wall is framed with: what the plan says, or wood studs where it gives a stud size."""
    framing = wall.framing
    here = f"/walls/{name}/framing"
    if framing is None or (framing.kind is None and framing.stud is None):
        return Input(None, f"{here}/kind" if framing is not None else here)
    return Input(framing.kind or "wood studs", f"{here}/kind" if framing.kind else f"{here}/stud")


def searched(name: str, wall: Wall) -> Input:
    """Whether someone looked for cables and pipes in the wall. An empty list says that nobody did, and drawings alone
    say where somebody meant to put them."""
    services = wall.services
    pointer = f"/walls/{name}/services/looked_with"
    if services is None or services.looked_with is None:
        return Input(None, pointer)
    return Input(any(way != "drawings" for way in services.looked_with), pointer)


def any_people(desk: Desk, supports: Iterable[Support]) -> bool:
    """Whether any of the supports carries people. One that does decides it, whatever is unknown of the others."""
    inputs = [support.carries_people for support in supports]
    if any(source.value for source in inputs):
        return True
    desk.need_all(*inputs)
    return False
