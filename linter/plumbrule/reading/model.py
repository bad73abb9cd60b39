"""What every model of a file shares: nothing coerced, nothing unknown, and the sentences for well-known slips."""

from __future__ import annotations

import os
from collections.abc import Mapping
from typing import Annotated, Any, ClassVar, TypeVar

from pydantic import BaseModel, ConfigDict, GetCoreSchemaHandler, Strict
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

T = TypeVar("T")

# Plug-ins of the model library, installed for something else, would run in here and could change what a plan may say.
# Looking for them also opens a file of every installed package.
os.environ["PYDANTIC_DISABLE_PLUGINS"] = "__all__"

# A list in the file, a tuple in the model. (Strict models would refuse a list for a tuple.)
Listed = Annotated[tuple[T, ...], Strict(False)]


class Written(BaseModel):
    """A mapping of a plan, house or rule file, read once and never changed.

    `HINTS` maps a key that people write by habit to the sentence they should read: `{"left": "Boxes are measured to
    the centre: write centre."}`. A hint that names a missing key takes the place of the fault about that key.
    """

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)

    HINTS: ClassVar[Mapping[str, str]] = {}


class WordHints:
    """Beside a `Literal`: what to answer to words that people write by habit. A question back says that the word
    leaves something open; any other answer says that it is no `noun`.

    `Annotated[Literal["red oak", "white oak"], WordHints({"oak": "red oak or white oak?"})]`
    """

    __slots__ = ("hints", "noun")

    def __init__(self, hints: Mapping[str, str], noun: str = "word known here") -> None:
        self.hints = dict(hints)
        self.noun = noun

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        words = handler(source)
        hints, noun = self.hints, self.noun

        # Only a refused word costs anything more.
        def read(value: Any, inner: core_schema.ValidatorFunctionWrapHandler) -> Any:
            if isinstance(value, str) and value in hints:
                answer = hints[value]
                unknown = answer.startswith(("Write ", "Did you mean "))
                raise mistake(f"`{value}` is not {f'a {noun}' if unknown else 'enough to go by'}.", answer)
            return inner(value)

        return core_schema.no_info_wrap_validator_function(read, words)


def mistake(found: str, write: str, at: str = "") -> PydanticCustomError:
    """What a validator of a model raises: two whole sentences, and the place as a pointer below that model
    (`at="/thread"`), where the fault is shown."""
    return PydanticCustomError("mistake", "{found} {write}", {"found": found, "write": write, "at": at})
