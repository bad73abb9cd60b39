"""Which sealant fills which joint of a panel field."""

from __future__ import annotations

from plumbrule.plan.plan_file import PlanFile


def sealants_for(model: PlanFile, field_name: str, joint: str) -> tuple[str, ...]:
    """The sealants that list this joint and may be meant for this field: all but those that another field alone is
    sealed with. More than one is a contradiction. `kind: none` fills nothing."""
    panels = model.panels or {}
    own = panels[field_name].sealed_with
    foreign = {field.sealed_with for name, field in panels.items() if name != field_name} - {own}
    return tuple(
        name
        for name, sealant in (model.sealants or {}).items()
        if name not in foreign and sealant.kind != "none" and joint in (sealant.joints or ())
    )


def unsaid_for(model: PlanFile, field_name: str) -> tuple[str, ...]:
    """The sealants that may be meant for this field and do not say which joints they fill."""
    panels = model.panels or {}
    own = panels[field_name].sealed_with
    foreign = {field.sealed_with for name, field in panels.items() if name != field_name} - {own}
    return tuple(
        name
        for name, sealant in (model.sealants or {}).items()
        if name not in foreign and sealant.kind != "none" and sealant.joints is None
    )
