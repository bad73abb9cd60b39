"""What must be owned so that the steps can be worn and controlled as they are written."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_hazards import PROTECTION
from plumbrule.facts.desk import Desk, Input
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.purchase import PurchaseList
from plumbrule.reading.pointer import escape

# A control that is a thing: the word it is owned or bought by. The others are ways of working and cost nothing.
OWNED: Mapping[str, str] = MappingProxyType({
    "dust extraction": "dust extraction", "HEPA vacuum": "HEPA vacuum", "room sealed off": "dust sheet",
    "extinguisher at hand": "extinguisher", "bit stop": "bit stop", "breaker locked and tagged": "breaker lock",
    "ladder footed": "ladder", "step platform": "step platform",
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


def protection_rows(plan: Plan) -> tuple[Row, ...]:
    """One row a thing. Without steps nobody knows what is needed: one row of the whole says so."""
    if plan.model.steps is None:
        desk = Desk(PROTECTION, "/purchase/protection", "/purchase", "the protection")
        for field in ("needed_by", "on_hand", "bought"):
            desk.copy(field, Input(None, "/steps"))
        return (desk.row(),)
    return tuple(_row(plan, thing, steps) for thing, steps in protection_needed(plan).items())


def _row(plan: Plan, thing: str, steps: tuple[str, ...]) -> Row:
    at = f"/purchase/protection/{thing}"
    desk = Desk(PROTECTION, at, "/purchase", thing)
    desk.set("thing", thing, *steps)
    desk.set("needed_by", float(len(steps)), *steps)
    desk.set("on_hand", thing in plan.model.on_hand, "/on_hand")
    purchase = plan.model.purchase
    desk.get("bought", lambda: _bought(desk, purchase, thing, at))
    return desk.row()


def _bought(desk: Desk, purchase: PurchaseList | None, thing: str, at: str) -> float:
    """How many are bought: a line without a count is one. A list without protection buys none."""
    desk.need(Input(purchase, "/purchase"))
    line = (purchase.protection or {}).get(thing) if purchase else None
    desk.need(Input(True, at))
    return 0.0 if line is None else float(1 if line.count is None else line.count)
