"""What every part of a plan has in common: no unknown keys, nothing changed after reading."""

from __future__ import annotations

from collections.abc import Callable
from typing import Annotated, Any, TypeVar

from pydantic import BeforeValidator, ConfigDict, Field

from plumbrule.reading.model import Written, mistake
from plumbrule.reading.quantities import Name

T = TypeVar("T")

# Parts by name. `{}` says "looked, none there"; a section that is left out says "not looked".
Named = dict[Name, T]
Text = Annotated[str, Field(min_length=1, max_length=200)]
Count = Annotated[int, Field(ge=0, le=100_000)]
AtLeastOne = Annotated[int, Field(ge=1, le=100_000)]


class Part(Written):
    """One mapping of a plan. The line below a key says what it means: schema and editor show it.

    Modules with parts do not postpone their annotations: pydantic would have to compile each of the 400 again, which
    costs a quarter of the time it takes to build the models.
    """

    # Only the whole plan is built into a validator, once; its parts are not built a second time for themselves.
    model_config = ConfigDict(defer_build=True, protected_namespaces=())


def is_mapping(value: Any) -> str:
    """Tells the two spellings of a value apart: a word or a name, or a mapping of measures."""
    return "mapping" if isinstance(value, dict | Part) else "word"


def instead(answer: Callable[[str], tuple[str, str]]) -> BeforeValidator:
    """Beside the type of a list or a part: what to say where plain text stands in its place, found and write."""

    def read(value: Any) -> Any:
        if isinstance(value, str):
            raise mistake(*answer(value))
        return value

    return BeforeValidator(read)
