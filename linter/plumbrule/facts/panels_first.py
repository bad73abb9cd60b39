"""Whether panels are on a wall before something is fixed beside them."""

from __future__ import annotations

from plumbrule.facts.order import order
from plumbrule.facts.supports import Support
from plumbrule.plan.plan_file import Plan


def panels_up_first(plan: Plan, support: Support, wall: str) -> bool:
    """Whether the panels of a wall may be up when the support is fixed: nothing in the steps puts it up before them."""
    steps = order(plan)
    fixing = (*steps.doing("fix steel", support.name), *steps.doing("fix cleats", support.name))
    laying = steps.doing("lay panels", wall)
    if not laying or not fixing:
        return True
    return not any(all(steps.before(fix, lay) for lay in laying) for fix in fixing)
