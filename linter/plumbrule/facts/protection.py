"""What must be owned so that the steps can be worn and controlled as they are written."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from plumbrule.plan.plan_file import Plan
from plumbrule.reading.pointer import escape

# A control that is a thing: the word it is owned or bought by. The others are ways of working and cost nothing.
OWNED: Mapping[str, str] = MappingProxyType({
    "dust extraction": "dust extraction", "HEPA vacuum": "HEPA vacuum", "room sealed off": "dust sheet",
    "extinguisher at hand": "extinguisher", "bit stop": "bit stop", "breaker locked and tagged": "breaker lock",
    "ladder footed": "ladder", "step platform": "step platform", "laser below eye height": "laser level",
    "eye wash at hand": "eye wash", "rags in water in a metal can": "metal can with lid",
})  # fmt: skip


def protection_needed(plan: Plan) -> Mapping[str, tuple[str, ...]]:
    """What the steps wear, prove with and control with, as it is owned or bought, with the pointers of the steps that
    need it, in the order of the plan. Empty where the plan has no steps: whether it has is the caller's question."""
    if "protection" not in plan.reckoned:
        plan.reckoned["protection"] = _needed(plan)
    found: Mapping[str, tuple[str, ...]] = plan.reckoned["protection"]
    return found


def _needed(plan: Plan) -> Mapping[str, tuple[str, ...]]:
    found: dict[str, list[str]] = {}
    for name, step in (plan.model.steps or {}).items():
        things = [*step.wears, *(OWNED[control] for control in step.controls if control in OWNED)]
        if step.verified is not None:
            things.append(step.verified)
        for thing in dict.fromkeys(things):
            found.setdefault(thing, []).append(f"/steps/{escape(name)}")
    return MappingProxyType({thing: tuple(pointers) for thing, pointers in found.items()})
