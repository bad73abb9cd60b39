"""What every part of a plan has in common: no unknown keys, nothing changed after reading."""

from __future__ import annotations

from typing import Annotated, Any, ClassVar, TypeVar

from pydantic import BaseModel, ConfigDict, Field, Strict

from plumbrule.reading.quantities import Name

T = TypeVar("T")

# YAML gives lists; parts keep tuples, so that a plan cannot be changed after it was read.
Many = Annotated[tuple[T, ...], Strict(False)]
# Parts by name. `{}` says "looked, none there"; a section that is left out says "not looked".
Named = dict[Name, T]
Text = Annotated[str, Field(min_length=1, max_length=200)]
Count = Annotated[int, Field(ge=0, le=100_000)]
AtLeastOne = Annotated[int, Field(ge=1, le=100_000)]


class Part(BaseModel):
    """One mapping of a plan. The line below a key says what it means: schema and editor show it."""

    model_config = ConfigDict(
        extra="forbid", frozen=True, strict=True, defer_build=True, populate_by_name=False, protected_namespaces=()
    )

    HINTS: ClassVar[dict[str, str]] = {}
    """A key that people write by mistake, and the sentence that puts it right."""


def is_mapping(value: Any) -> str:
    """Tells the two spellings of a value apart: a word or a name, or a mapping of measures."""
    return "mapping" if isinstance(value, dict | Part) else "word"
