"""The JSON Schemas of the files that people write: plan, house, rule and bibliography, made from their models."""

from __future__ import annotations

from pydantic import BaseModel

from plumbrule.plan.house import House
from plumbrule.plan.plan_file import PlanFile
from plumbrule.reading.schema import text
from plumbrule.rulebook.file import Bibliography, RuleFile

MODELS: dict[str, type[BaseModel]] = {
    "plan": PlanFile,
    "house": House,
    "rule": RuleFile,
    "sources": Bibliography,
}


def schemas() -> dict[str, str]:
    """File name to the text that belongs in it."""
    return {f"{name}.schema.json": text(model, name) for name, model in MODELS.items()}
