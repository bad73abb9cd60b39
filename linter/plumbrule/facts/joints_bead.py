"""What closes a joint: the neighbour's panels, a trim or a sealant; and how the bead of sealant sits in it."""

from __future__ import annotations

from plumbrule.catalogue.rows_joints import JOINT
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.joints_edges import Edge
from plumbrule.mechanics import sealant as mechanics
from plumbrule.mechanics.given import Given
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.panels import TrimPart
from plumbrule.plan.sealing import sealants_for, unsaid_for

LATEX = ("acrylic latex", "siliconised acrylic latex")
RODS = ("closed-cell rod", "open-cell rod")


def work_closing(desk: Desk, edge: Edge) -> None:
    """Whether panels round the corner, a trim or a sealant close the joint."""
    desk.get("hidden", lambda: hidden(desk, edge))
    desk.get("trimmed", lambda: _trimmed(desk, edge))
    if edge.listed_as is None:
        # An outside corner has a trim or nothing: there is no gap that a sealant could fill.
        desk.set("sealed", False, f"{edge.at}/walls")
    else:
        desk.get("sealed", lambda: _sealed(desk, edge))


def work_bead(desk: Desk, edge: Edge) -> None:
    """The sealant in the joint and how deep it lies. Only where one lists the joint, or might."""
    name = sealant_in(edge)
    if name is None:
        return
    sealant = (edge.plan.model.sealants or {})[name]
    here = f"/sealants/{name}"
    kind = Input(sealant.kind, f"{here}/kind")
    stated = Input(sealant.class_, f"{here}/class")
    desk.copy("sealant", kind)
    desk.get("latex", lambda: desk.word(kind) in LATEX)
    desk.get("class_stated", lambda: desk.need(stated) != "none stated")
    if sealant.class_ != "none stated":
        desk.get("sealant_class", lambda: desk.length(stated))
        desk.get("gap_needed", lambda: _gap_needed(desk))
    desk.get("movement_share", lambda: _share(desk))
    said = "" if edge.plan.is_written(f"{here}/foam_safe") else "nothing is written: not safe on foamed plastic"
    desk.get("foam_safe", lambda: bool(desk.need(Input(sealant.foam_safe, f"{here}/foam_safe", said))))
    backer = backer_of(edge, name)
    desk.copy("backer", backer)
    desk.get("rod", lambda: desk.word(backer) in RODS)
    if backer.value != "none":
        desk.get("backer_size", lambda: desk.length(backer_size(edge, name)))
    desk.get("depth", lambda: depth(desk, edge, name))
    desk.get("usual_depth", lambda: mechanics.usual_depth(_given(desk, "gap")))


def hidden(desk: Desk, edge: Edge) -> bool:
    """Whether the panels of the wall round an inside corner come to stand before this joint. Raises Missing."""
    met = edge.met
    if edge.kind != "inside corner" or met is None or met.beyond is None:
        return False
    if not any(met.beyond in field.walls for field in (edge.plan.model.panels or {}).values()):
        return False
    name = next(name for name, corner in (edge.plan.model.corners or {}).items() if corner is met.corner)
    return desk.need(Input(met.corner.panels_run_through, f"/corners/{name}/panels_run_through")) == edge.wall_name


def runs_along(edge: Edge, trim: TrimPart) -> bool:
    """Whether the trim runs along this edge. A trim that names no walls runs along all that are panelled."""
    if trim.walls is not None and edge.wall_name not in trim.walls:
        return False
    if trim.along in ("floor", "ceiling"):
        return edge.kind == trim.along
    if trim.along == "openings":
        return edge.kind == "opening"
    return edge.met is not None and (edge.plan.model.corners or {}).get(trim.along) is edge.met.corner


def sealant_in(edge: Edge) -> str | None:
    """Name of the sealant that lists this joint."""
    if edge.listed_as is None:
        return None
    found = sealants_for(edge.plan.model, edge.field_name, edge.listed_as)
    return found[0] if found else None


def backer_of(edge: Edge, name: str) -> Input:
    """What the sealant is laid against."""
    backer = (edge.plan.model.sealants or {})[name].backer
    return Input(backer.kind if backer else None, f"/sealants/{name}/backer{'/kind' if backer else ''}")


def backer_size(edge: Edge, name: str) -> Input:
    """Thickness of the backer, or diameter of the rod. Tape is too thin to matter."""
    backer = (edge.plan.model.sealants or {})[name].backer
    at = f"/sealants/{name}/backer"
    if backer is None:
        return Input(None, at)
    if backer.thickness is None and backer.kind == "bond-breaker tape" and not edge.plan.is_written(f"{at}/thickness"):
        return Input(0.0, f"{at}/thickness", "nothing is written: the tape is taken as without thickness")
    return Input(backer.thickness, f"{at}/thickness")


def depth(desk: Desk, edge: Edge, name: str) -> Worked:
    """How deep the bead is, mm. Raises Missing."""
    panel, adhesive = edge.field.panel.thickness, edge.field.adhesive
    parts = [Input(panel, f"{edge.at}/panel/thickness")]
    if adhesive is None:
        parts.append(Input(None, f"{edge.at}/adhesive"))
    else:
        parts.append(Input(adhesive.thickness, f"{edge.at}/adhesive/thickness"))
    backer = backer_of(edge, name)
    if backer.value != "none":
        parts.append(backer_size(edge, name) if backer.value is not None else backer)
    else:
        desk.need(backer)
    desk.need_all(*parts)
    behind = desk.length(parts[2]) if len(parts) == 3 else 0.0
    return mechanics.bead_depth(desk.length(parts[0]), desk.length(parts[1]), behind)


def _trimmed(desk: Desk, edge: Edge) -> bool:
    trims = edge.plan.model.trims
    desk.need(Input(trims, "/trims"))
    for name, trim in (trims or {}).items():
        if runs_along(edge, trim):
            return bool(desk.need(Input(True, f"/trims/{name}/along")))
    return False


def _sealed(desk: Desk, edge: Edge) -> bool:
    model = edge.plan.model
    assert edge.listed_as is not None
    desk.need(Input(model.sealants, "/sealants"))
    name = sealant_in(edge)
    if name is None:
        unsaid = unsaid_for(model, edge.field_name)
        if unsaid:
            raise Missing([f"/sealants/{one}/joints" for one in unsaid])
        for one in model.sealants or {}:
            desk.need(Input(True, f"/sealants/{one}/joints"))
        return False
    return bool(desk.need(Input(True, f"/sealants/{name}/joints")))


def _gap_needed(desk: Desk) -> Worked:
    desk.numbers("movement", "sealant_class")
    return mechanics.joint_width(_given(desk, "movement"), desk.number("sealant_class"))


def _share(desk: Desk) -> Worked:
    desk.numbers("movement", "gap")
    return mechanics.movement_share(_given(desk, "movement"), _given(desk, "gap"))


def _given(desk: Desk, field: str) -> Given:
    value = desk.number(field)
    return desk.line(field) or value


def empty() -> Desk:
    """A desk for what is only asked, and belongs to no row."""
    return Desk(JOINT, "", "", "")
