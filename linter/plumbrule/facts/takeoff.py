"""The take-off of a plan: what goes to the merchant, to the saw and to the drill."""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from plumbrule.catalogue.fact import Row
from plumbrule.facts.purchase import needs
from plumbrule.facts.purchase_sticks import StickJob, stick_jobs
from plumbrule.facts.supports import supports
from plumbrule.facts.takeoff_drilling import DrillSheet, drill_sheets
from plumbrule.facts.takeoff_panels import PanelSheet, panel_sheets
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.purchase import PurchaseList
from plumbrule.reading.pointer import escape


class Takeoff(NamedTuple):
    """Rows of needs beside what is bought, what is cut from sticks and panels, and what is drilled.

    `unused` are lines of the purchase list for which nothing of the plan has any need. `bought` says whether the plan
    has a purchase list at all, `steps` whether it has steps, without which nobody knows what they wear out.
    """

    needs: tuple[Row, ...]
    sticks: tuple[StickJob, ...]
    panels: tuple[PanelSheet, ...]
    drilling: tuple[DrillSheet, ...]
    unused: tuple[tuple[str, str], ...]
    bought: bool
    steps: bool


def take_off(plan: Plan) -> Takeoff:
    """Everything that is taken off a plan."""
    carried = supports(plan)
    rows = needs(plan, carried)
    wanted = {row.pointer for row in rows}
    unused = tuple(
        (group, name) for group, name in _lines(plan) if f"/purchase/{group}/{escape(name)}" not in wanted
    )  # fmt: skip
    return Takeoff(
        rows, stick_jobs(plan, carried), panel_sheets(plan, carried), drill_sheets(plan, carried), unused,
        plan.model.purchase is not None, plan.model.steps is not None,
    )  # fmt: skip


def _lines(plan: Plan) -> Iterator[tuple[str, str]]:
    if plan.model.purchase is None:
        return
    for group in PurchaseList.model_fields:
        for name in getattr(plan.model.purchase, group) or {}:
            yield group, name
