"""What each key of a model means: the line of text that stands below the field in its source.

Read from the source only when it is asked for (schemas, the editor), since it costs more than reading a plan.
"""

from __future__ import annotations

import ast
import inspect
from functools import cache
from textwrap import dedent

from pydantic import BaseModel


@cache
def descriptions(model: type[BaseModel]) -> dict[str, str]:
    """Key as it is written in a file -> what it means. An explicit description wins over the line below the field."""
    said: dict[str, str] = {}
    for base in reversed(model.__mro__):
        if issubclass(base, BaseModel) and base is not BaseModel:
            said.update(_below_fields(base))
    found = {}
    for name, info in model.model_fields.items():
        text = info.description or said.get(name)
        if text:
            found[info.alias or name] = text
    return found


def _below_fields(model: type[BaseModel]) -> dict[str, str]:
    try:
        source = dedent(inspect.getsource(model))
    except (OSError, TypeError):
        return {}
    body = ast.parse(source).body[0]
    if not isinstance(body, ast.ClassDef):
        return {}
    found = {}
    for field, below in zip(body.body, body.body[1:], strict=False):
        if (
            isinstance(field, ast.AnnAssign)
            and isinstance(field.target, ast.Name)
            and isinstance(below, ast.Expr)
            and isinstance(below.value, ast.Constant)
            and isinstance(below.value.value, str)
        ):
            found[field.target.id] = inspect.cleandoc(below.value.value)
    return found
