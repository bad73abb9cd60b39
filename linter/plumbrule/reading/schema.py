"""The models as published JSON Schema 2020-12, with every notation and every word list under a name of its own."""

from __future__ import annotations

from typing import Any

from pydantic import BaseModel
from pydantic.json_schema import GenerateJsonSchema, JsonSchemaValue

from plumbrule.reading.described import descriptions
from plumbrule.reading.quantities import NAMED, definitions

DIALECT = "https://json-schema.org/draft/2020-12/schema"
_IDENTITY = "https://plumbrule.example/schema/{name}.schema.json"


class _Generator(GenerateJsonSchema):
    """Pydantic's generator in the order of the fields, without the titles that only repeat a name."""

    def sort(self, value: JsonSchemaValue, parent_key: str | None = None) -> JsonSchemaValue:
        return value

    def field_title_should_be_set(self, schema: Any) -> bool:
        return False

    # A key that is left out is the only way to say nothing: null is not one.
    def nullable_schema(self, schema: Any) -> JsonSchemaValue:
        return self.generate_inner(schema["schema"])

    # A default of a quantity is in SI, which nobody may write; words, numbers and truths are as they are written.
    def default_schema(self, schema: Any) -> JsonSchemaValue:
        made = self.generate_inner(schema["schema"])
        default = schema.get("default")
        if NAMED in made or not isinstance(default, (str, bool, int)):
            return made
        return {**made, "default": default}

    def dict_schema(self, schema: Any) -> JsonSchemaValue:
        made = super().dict_schema(schema)
        if "keys_schema" in schema and NAMED in (named := self.generate_inner(schema["keys_schema"])):
            made["propertyNames"] = named
        return made

    def model_schema(self, schema: Any) -> JsonSchemaValue:
        made = super().model_schema(schema)
        for key, text in descriptions(schema["cls"]).items():
            if key in made.get("properties", {}):
                made["properties"][key] = {"description": text, **made["properties"][key]}
        return made


def schema(kind: type[BaseModel], name: str = "") -> dict[str, Any]:
    """The JSON Schema of `kind`; `name` is the stem of its file, for `$id`. The same bytes for the same models.

    What it refuses, `take` refuses. `take` refuses more: values beyond belief, a day that does not exist, a date
    without quotes, names that point nowhere.
    """
    made = kind.model_json_schema(by_alias=True, schema_generator=_Generator)
    known = definitions()
    used: dict[str, dict[str, Any]] = {}
    made = _named(made, known, used)
    inner = made.pop("$defs", {})
    title = made.pop("title", kind.__name__)
    head: dict[str, Any] = {"$schema": DIALECT}
    if name:
        head["$id"] = _IDENTITY.format(name=name)
    head["title"] = title
    if "description" in made:
        head["description"] = made.pop("description")
    both = {**used, **inner}
    return {**head, **made, "$defs": {key: both[key] for key in sorted(both)}} if both else {**head, **made}


def text(kind: type[BaseModel], name: str) -> str:
    """The schema as the file that is published."""
    import json

    return json.dumps(schema(kind, name), ensure_ascii=False, indent=2) + "\n"


def _named(value: Any, known: dict[str, dict[str, Any]], used: dict[str, dict[str, Any]]) -> Any:
    """Every marked fragment becomes a reference to one definition; what stood beside the mark stays beside it."""
    if isinstance(value, list):
        return [_named(item, known, used) for item in value]
    if not isinstance(value, dict):
        return value
    name = value.get(NAMED)
    if not isinstance(name, str):
        return {key: _named(inner, known, used) for key, inner in value.items()}
    anchor = name.replace(" ", "-")
    used[anchor] = known[name]
    beside = {key: _named(inner, known, used) for key, inner in value.items() if key != NAMED}
    return {"$ref": f"#/$defs/{anchor}", **beside}
