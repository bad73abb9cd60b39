"""What is bought by the volume or the run: finishes, fillers, cleaners, adhesives, sealants and their backers."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from plumbrule.catalogue.fact import Row
from plumbrule.facts.desk import Desk, Input, Missing
from plumbrule.facts.joints_sealant import SealantNeed, sealant_volumes
from plumbrule.facts.layout import WallLayout, layouts
from plumbrule.facts.purchase_lines import ByLine, begin, length_bought, line_for, thickness_bought, volume_bought
from plumbrule.facts.supports import Support
from plumbrule.mechanics import quantities
from plumbrule.mechanics.worked import NotPossible, Worked
from plumbrule.plan.boards import Board, Crack
from plumbrule.plan.panels import PanelField
from plumbrule.plan.plan_file import Plan

# Tape that covers the whole back comes on the panel.
_TAPES = ("acrylic foam tape", "rubber tape")
_NO_CLEANER = ("water", "epoxy", "joint compound", "dust sheet")


def spread_rows(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    """One row a line that should stand in the purchase list."""
    yield from _finishes(plan)
    yield from _fillers(plan)
    yield from _cleaners(plan)
    yield from _adhesives(plan, carried)
    yield from _sealants(plan, carried)


def _finishes(plan: Plan) -> Iterator[Row]:
    for name, board in (plan.model.boards or {}).items():
        if board.finish is None or board.finish.kind == "none":
            continue
        here = f"/boards/{name}"
        line = line_for(plan, "finishes", name)
        desk = begin(line, "volume", here)
        desk.get("spread_area", partial(_coats, desk, board, here))
        desk.get("needed_volume", partial(_finish, desk, board, here))
        volume_bought(desk, line)
        yield desk.row()


def _sizes(desk: Desk, board: Board, here: str) -> tuple[float, float, float]:
    sizes = [Input(getattr(board, key), f"{here}/{key}") for key in ("length", "depth", "thickness")]
    desk.need_all(*sizes)
    length, depth, thickness = (desk.length(size) for size in sizes)
    return length, depth, thickness


def _coats(desk: Desk, board: Board, here: str) -> Worked:
    sizes = _sizes(desk, board, here)
    assert board.finish is not None
    coats = board.finish.coats
    desk.need(Input(True, f"{here}/finish/coats"))
    return quantities.coated(*sizes, coats.top, coats.bottom, coats.edges)


def _finish(desk: Desk, board: Board, here: str) -> Worked:
    desk.number("spread_area")
    area = desk.line("spread_area")
    assert board.finish is not None and area is not None
    return quantities.coats_volume(area, desk.word(Input(board.finish.kind, f"{here}/finish/kind")))


def _fillers(plan: Plan) -> Iterator[Row]:
    """Epoxy by the crack; joint compound where a wall is patched or skimmed, as much as the patches take."""
    cracks: ByLine[tuple[str, Crack]] = ByLine()
    for name, board in (plan.model.boards or {}).items():
        for crack_name, crack in board.cracks.items():
            if crack.fill == "epoxy":
                line = line_for(plan, "fillers", crack_name, name, "epoxy")
                cracks.put(line, (f"/boards/{name}/cracks/{crack_name}", crack))
    for line, filled in cracks.each():
        desk = begin(line, "volume", filled[0][0])
        desk.get("needed_volume", partial(_fills, desk, filled))
        volume_bought(desk, line)
        yield desk.row()
    patches: ByLine[str] = ByLine()
    for name, step in (plan.model.steps or {}).items():
        if step.task in ("patch wall", "skim wall"):
            for wall in step.works_on or ("joint compound",):
                patches.put(line_for(plan, "fillers", "joint compound", wall), f"/steps/{name}")
    for line, pointers in patches.each():
        yield begin(line, "not reckoned", pointers[0]).row()


def _fills(desk: Desk, cracks: Sequence[tuple[str, Crack]]) -> Worked:
    sizes = [
        [Input(getattr(crack, key), f"{at}/{key}") for key in ("length", "width", "depth")] for at, crack in cracks
    ]
    desk.need_all(*(size for three in sizes for size in three))
    found = [quantities.fill_volume(*(desk.length(size) for size in three)) for three in sizes]
    return found[0] if len(found) == 1 else quantities.total("V_e", "epoxy for all cracks", "mm³", found)


def _cleaners(plan: Plan) -> Iterator[Row]:
    seen: set[str] = set()
    for name, step in (plan.model.steps or {}).items():
        product = step.with_
        if product is None or product in _NO_CLEANER or product in seen:
            continue
        seen.add(product)
        walls = [one for one in step.works_on or () if one in (plan.model.walls or {})]
        yield begin(line_for(plan, "cleaners", product, *walls), "not reckoned", f"/steps/{name}").row()


def _adhesives(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    laid = layouts(plan, carried)
    for name, field in (plan.model.panels or {}).items():
        glue, here = field.adhesive, f"/panels/{name}"
        if glue is None or glue.kind == "none" or (glue.kind in _TAPES and glue.covers == "whole back"):
            continue
        line = line_for(plan, "adhesives", name, glue.kind)
        walls = [one for one in laid if one.field_name == name]
        tape = glue.kind in _TAPES
        desk = begin(line, "length" if tape else "volume", here)
        desk.get("spread_area", partial(_backs, desk, here, walls))
        if tape:
            desk.get("needed_length", partial(_tape, desk, field, here))
            length_bought(desk, line)
        else:
            desk.get("needed_volume", partial(_glue, desk, field, here))
            volume_bought(desk, line)
        yield desk.row()


def _backs(desk: Desk, here: str, walls: Sequence[WallLayout]) -> float:
    desk.need(Input(True, f"{here}/panel"))
    if wanting := [pointer for wall in walls for pointer in wall.missing] or ([] if walls else [f"{here}/walls"]):
        raise Missing(wanting)
    return sum(piece.area for wall in walls for piece in wall.pieces)


def _tape(desk: Desk, field: PanelField, here: str) -> Worked:
    area = desk.number("spread_area")
    return quantities.strips(area, desk.length(Input(field.adhesive and field.adhesive.spacing,
                                                     f"{here}/adhesive/spacing")))  # fmt: skip


def _glue(desk: Desk, field: PanelField, here: str) -> Worked:
    area, glue = desk.number("spread_area"), field.adhesive
    assert glue is not None
    covers = desk.word(Input(glue.covers, f"{here}/adhesive/covers"))
    thickness = Input(glue.thickness, f"{here}/adhesive/thickness")
    if covers == "whole back":
        return quantities.glue_volume(area, desk.length(thickness))
    width, spacing = (Input(getattr(glue, key), f"{here}/adhesive/{key}") for key in ("width", "spacing"))
    desk.need_all(thickness, width, spacing)
    if covers == "dabs":
        return quantities.dabs_volume(area, *(desk.length(one) for one in (thickness, width, spacing)))
    return quantities.glue_volume(area, *(desk.length(one) for one in (thickness, width, spacing)))


def _sealants(plan: Plan, carried: Sequence[Support]) -> Iterator[Row]:
    for name, need in sealant_volumes(plan, carried).items():
        sealant, here = (plan.model.sealants or {})[name], f"/sealants/{name}"
        if sealant.kind == "none":
            continue
        line = line_for(plan, "sealants", name)
        desk = begin(line, "volume", here)
        desk.get("needed_volume", partial(_sealed, desk, need, need.volume, here))
        volume_bought(desk, line)
        yield desk.row()
        if sealant.backer is None or sealant.backer.kind == "none":
            continue
        line = line_for(plan, "backers", name)
        desk = begin(line, "length", here)
        desk.get("needed_length", partial(_sealed, desk, need, need.backer_length, here))
        length_bought(desk, line)
        thickness_bought(desk, line, Input(sealant.backer.thickness, f"{here}/backer/thickness"))
        yield desk.row()


def _sealed(desk: Desk, need: SealantNeed, found: Worked | None, here: str) -> Worked:
    desk.need(Input(True, f"{here}/joints"))
    for pointer, said in need.assumed:
        desk.need(Input(True, pointer, said))
    if need.missing:
        raise Missing(need.missing)
    if found is None:
        raise NotPossible(need.reason)
    return found
