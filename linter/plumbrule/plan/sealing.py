"""Which sealant fills which joint of a panel field."""

from __future__ import annotations

from collections.abc import Iterator

from plumbrule.plan.panels import SealantPart
from plumbrule.plan.plan_file import PlanFile


def sealants_for(model: PlanFile, field_name: str, joint: str) -> tuple[str, ...]:
    """The sealants that list this joint and may be meant for this field: all but those that another field alone is
    sealed with. More than one is a contradiction. `kind: none` fills nothing."""
    return tuple(name for name, sealant in _meant_for(model, field_name) if joint in (sealant.joints or ()))


def unsaid_for(model: PlanFile, field_name: str) -> tuple[str, ...]:
    """The sealants that may be meant for this field and do not say which joints they fill."""
    return tuple(name for name, sealant in _meant_for(model, field_name) if sealant.joints is None)


def _meant_for(model: PlanFile, field_name: str) -> Iterator[tuple[str, SealantPart]]:
    panels = model.panels or {}
    own = panels[field_name].sealed_with
    foreign = {field.sealed_with for name, field in panels.items() if name != field_name} - {own}
    for name, sealant in (model.sealants or {}).items():
        if name not in foreign and sealant.kind != "none":
            yield name, sealant
