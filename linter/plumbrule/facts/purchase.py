"""Rows of what the job needs, beside what is bought."""

from __future__ import annotations

from collections.abc import Sequence

from plumbrule.catalogue.fact import Row
from plumbrule.catalogue.rows_purchase import NEED
from plumbrule.facts.desk import Desk, Input
from plumbrule.facts.purchase_faces import face_rows
from plumbrule.facts.purchase_pieces import piece_rows
from plumbrule.facts.purchase_spread import spread_rows
from plumbrule.facts.purchase_sticks import stick_rows
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def purchase_rows(plan: Plan, carried: Sequence[Support]) -> dict[str, tuple[Row, ...]]:
    """Rows by kind. A plan that buys nothing has one row that says so, and not a hundred; one without steps has one
    more, since nobody knows what those would wear out and wear."""
    if plan.model.purchase is None:
        return {"need": (_unwritten("purchase list", "/purchase"),)}
    rows = needs(plan, carried)
    return {"need": rows if plan.model.steps is not None else (*rows, _unwritten("what the steps need", "/steps"))}


def needs(plan: Plan, carried: Sequence[Support]) -> tuple[Row, ...]:
    """One row a thing that the job needs, whether or not anything is bought; in the order of the purchase list. Worked
    once for a plan."""
    found: tuple[Row, ...] | None = plan.reckoned.get("/purchase needs")
    if found is None:
        found = plan.reckoned["/purchase needs"] = (
            *piece_rows(plan, carried), *stick_rows(plan, carried), *spread_rows(plan, carried),
            *face_rows(plan, carried),
        )  # fmt: skip
    return found


def _unwritten(label: str, pointer: str) -> Row:
    """A row that lacks the one thing that only the rule on what is not listed asks of it."""
    desk = Desk(NEED, "/purchase", "/purchase", label)
    desk.set("amount", "not reckoned", pointer)
    for field in ("guards", "on_hand", "size_said", "thickness_said", "extends", "flattened"):
        desk.set(field, False, pointer)
    desk.get("listed", lambda: bool(desk.need(Input(None, pointer))))
    return desk.row()
