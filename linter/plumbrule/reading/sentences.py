"""One sentence on what stands there and one on what to write, for each way a value can miss what a model expects."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any, get_origin

from plumbrule.reading import shape
from plumbrule.reading.spelling import either, near, nearest, offer

_LIST = "a list is needed here, one item a line or [a, b]"
_GROUP = "keys are needed here, one `key: value` a line or {key: value}"
_SHORT = 60

# Keys that can be said with an article: "`sand wall` is not a task."
_NOUNS = frozenset(
    ("task", "kind", "stud", "species", "grade", "material", "style", "coating", "texture", "use", "status", "region",
     "cover", "size", "steel", "fill", "core", "trade", "level", "basis", "finish", "fitting", "turn")
)  # fmt: skip


def shown(value: Any) -> str:
    """A value as its reader would recognise it, in at most a line."""
    if value is None:
        return "nothing"
    if value == "":
        return "empty text"
    if isinstance(value, bool):
        return "`true`" if value else "`false`"
    if isinstance(value, (list, tuple)):
        return "a list"
    if isinstance(value, dict):
        return "a group of keys"
    text = f"{value:.10g}" if isinstance(value, float) else str(value)
    return f"`{text}`" if len(text) <= _SHORT else f"`{text[: _SHORT - 1]}…`"


def example(wanted: Any) -> str:
    """What may be written at a place, after `Write depth, `."""
    from plumbrule.reading.quantities import examples

    if name := shape.notation(wanted):
        return examples(name)
    allowed = shape.words(wanted)
    if allowed:
        few = [str(word) for word in allowed[:6]]
        return f"one of {', '.join(few)}{' …' if len(allowed) > 6 else ''}" if len(few) > 1 else few[0]
    core = shape.stripped(wanted)
    choices = shape.alternatives(core)
    core = shape.stripped(choices[0]) if len(choices) == 1 else core
    if found := shape.models(core):
        required = [info.alias or name for name, info in found[0].model_fields.items() if info.is_required()]
        return f"{{{', '.join(f'{key}: …' for key in required or shape.keys(found[0])[:3])}}}"
    origin = get_origin(core)
    if origin in (tuple, list):
        return "a list like [a, b]"
    if origin is dict:
        return "parts by name, or {} if there are none"
    return {str: "a line of text", int: "a whole number", float: "a number", bool: "true or false"}.get(
        core, "its value"
    )


def say(error: dict[str, Any], wanted: Any, key: str, written: str = "") -> tuple[str, str]:
    """Found and write for one of pydantic's errors; `key` names the place to a reader, `written` is the value as it
    stands in the file."""
    kind = error["type"]
    value = error.get("input")
    context = error.get("ctx") or {}
    if kind in ("written", "mistake"):
        return str(context["found"]), str(context["write"])
    if kind == "literal_error" or (kind == "enum" and wanted is not None):
        return word(value, _allowed(context, wanted), key)
    if kind in ("model_type", "model_attributes_type", "dict_type", "dataclass_type"):
        return _group(value, wanted)
    if kind in ("tuple_type", "list_type", "set_type", "frozen_set_type"):
        return f"{_capital(shown(value))} stands here.", f"{_capital(_LIST)}."
    if kind in ("string_type", "string_sub_type"):
        return _text(value, written)
    if kind.startswith(("int_", "float_")) or kind in ("finite_number", "decimal_type"):
        return _number(value, whole=kind.startswith("int_"))
    if kind.startswith("bool_"):
        return _truth(value)
    if found := _bounds(kind, value, context):
        return found
    if kind == "value_error":
        return f"{_capital(shown(value))} cannot be.", _sentence(str(context.get("error", "")))
    if kind == "string_pattern_mismatch":
        return f"{shown(value)} is not written as `{key}` must be.", "Look at its description in the schema."
    if kind == "none_required":
        return f"{_capital(shown(value))} stands here.", f"Leave `{key}` out."
    return f"{_capital(shown(value))} does not fit here.", f"Write {example(wanted)}."


def word(value: Any, allowed: list[Any], key: str, other: Sequence[str] = ()) -> tuple[str, str]:
    """An unknown word: the nearest, and all of them if they are twelve or fewer. `other` are ways to write the value
    that are no words."""
    numbers = [each for each in allowed if not isinstance(each, str)]
    if len(allowed) == 1 and numbers:
        return f"`{key}` is {shown(value)}.", f"This reader knows version {allowed[0]}."
    texts = [str(each) for each in allowed]
    if not isinstance(value, str):
        return (
            f"{_capital(shown(value))} stands where a word is needed.",
            offer("", texts, quote="", other=other)
            if len(texts) <= 12
            else f"Write a word, such as {', '.join(texts[:5])}.",
        )
    here = _capital(shown(value))
    found = f"{here} is not {_article(key)} {key}." if key in _NOUNS else f"{here} is no word for `{key}`."
    if len(texts) > 12 and (close := near(value, texts, most=2)):
        return found, f"Did you mean {' or '.join(close)}?"
    return found, offer(value, texts, quote="", other=other)


def unknown_key(name: str, pointer: str, inside: Any, hints: dict[str, str]) -> tuple[str, str, str]:
    """Found, write, and the key that was probably meant (or nothing)."""
    found = f"`{name[:_SHORT]}` is not a key of {pointer or 'this file'}."
    if name in hints:
        return found, hints[name], ""
    known = [key for model in inside for key in shape.keys(model)]
    first, _, rest = name.partition(" ")
    if rest and first in known:
        return found, f"Put a colon after the key: {first}: {rest[:_SHORT]}.", first
    if meant := nearest(name, known):
        return found, f"Did you mean `{meant}`?", meant
    if known and len(known) <= 12:
        return found, f"Its keys are {', '.join(known)}.", ""
    return found, "Delete it, or look the key up in the list of keys.", ""


def missing(name: str, wanted: Any) -> tuple[str, str]:
    """Something that must be written and is not."""
    return f"`{name}` is missing.", f"Write {name}: {example(wanted)}."


def empty(name: str, wanted: Any) -> tuple[str, str]:
    """A key with nothing after it."""
    core = shape.stripped(wanted)
    choices = shape.alternatives(core)
    core = shape.stripped(choices[0]) if len(choices) == 1 else core
    said = f"`{name}` is empty." if name else "This item is empty."
    if get_origin(core) is dict:
        return said, "Write {} if you looked and there is none; leave the key out if you did not look."
    if get_origin(core) in (tuple, list):
        return said, "Write [] if you looked and there is none; leave the key out if you did not look."
    if wanted is None:
        return said, "Write its value, or leave it out."
    return said, f"Write {example(wanted)}, or leave it out."


def neither(value: Any, errors: list[dict[str, Any]], wanted: Any, key: str) -> tuple[str, str]:
    """A value that fits none of several ways to write it: the way that was probably meant, then the others."""
    allowed = [word for word in shape.words(wanted) if isinstance(word, str)]
    written = next((error for error in errors if error["type"] in ("written", "mistake")), None)
    groups = shape.models(wanted)
    other = [example(groups[0])] if groups else []
    if isinstance(value, str) and allowed and (not written or near(value, allowed)):
        return word(value, allowed, key, other)
    if written:
        found, write = say(written, wanted, key)
        also = f" Or write {' or '.join(allowed)}." if 0 < len(allowed) <= 3 else ""
        return found, f"{write}{also}"
    if allowed:
        return f"{_capital(shown(value))} does not fit here.", f"Write {either([*allowed[:12], *other])}."
    numbers = [error for error in errors if error["type"].startswith(("int_", "float_"))]
    return say((numbers or errors)[0], wanted, key)


def _allowed(context: dict[str, Any], wanted: Any) -> list[Any]:
    known = shape.words(wanted)
    if known:
        return known
    found = re.findall(r"'((?:[^'\\]|\\.)*)'|\"((?:[^\"\\]|\\.)*)\"|(-?[0-9]+)", str(context.get("expected", "")))
    return [single or double or int(number) for single, double, number in found]


def _group(value: Any, wanted: Any) -> tuple[str, str]:
    found = f"{_capital(shown(value))} stands here."
    groups = shape.models(wanted)
    if groups:
        return found, f"{_capital(_GROUP)}: {example(groups[0])}."
    return found, f"{_capital(_GROUP)}; {{}} says that there are none."


def _text(value: Any, written: str) -> tuple[str, str]:
    if isinstance(value, (bool, int, float)):
        plain = written or shown(value).strip("`")
        return (
            f"{plain} is read as {'true or false' if isinstance(value, bool) else 'a number'}, and text is needed.",
            (f'Put it in quotes: "{plain}".'),
        )
    return f"{_capital(shown(value))} stands here.", "A line of text is needed here."


def _number(value: Any, *, whole: bool) -> tuple[str, str]:
    wanted = "a whole number" if whole else "a number"
    if isinstance(value, float) and whole:
        return f"{shown(value)} is not {wanted}.", f"Write {wanted} like {round(value)}."
    if isinstance(value, str) and (found := re.match("[0-9]+(?:[.][0-9]+)?", value)):
        number = found[0] if not whole else found[0].partition(".")[0]
        return f"{shown(value)} is not {wanted}.", f"Write {wanted} without a unit or quotes, like {number}."
    return f"{_capital(shown(value))} is not {wanted}.", f"Write {wanted}."


def _truth(value: Any) -> tuple[str, str]:
    meant = str(value).casefold()
    if meant in ("yes", "y", "on", "1", "1.0"):
        return f"{shown(value)} is not true or false.", "Write true."
    if meant in ("no", "n", "off", "0", "0.0", "none"):
        return f"{shown(value)} is not true or false.", "Write false."
    return f"{_capital(shown(value))} is not true or false.", "Write true or false."


def _bounds(kind: str, value: Any, context: dict[str, Any]) -> tuple[str, str] | None:
    here = _capital(shown(value))
    if kind in ("greater_than_equal", "greater_than"):
        least = context.get("ge", context.get("gt"))
        return f"{here} is too small.", f"Write {'more than ' if kind == 'greater_than' else ''}{least:g}" + (
            "." if kind == "greater_than" else " or more."
        )
    if kind in ("less_than_equal", "less_than"):
        most = context.get("le", context.get("lt"))
        return f"{here} is too large.", f"Write {'less than ' if kind == 'less_than' else ''}{most:g}" + (
            "." if kind == "less_than" else " or less."
        )
    if kind == "string_too_short":
        return f"{here} is too short." if value else "The text is empty.", "Write a line of text."
    if kind == "string_too_long":
        return "The text is too long.", f"Write at most {context.get('max_length')} letters."
    if kind == "too_short":
        least = context.get("min_length")
        return (
            f"The list has {context.get('actual_length')}; it needs {least}." if context.get("actual_length") else
            "The list is empty.", f"Write {least} or more.",
        )  # fmt: skip
    if kind == "too_long":
        return f"The list has more than {context.get('max_length')}.", f"Write at most {context.get('max_length')}."
    return None


def _sentence(text: str) -> str:
    text = text.strip()
    return text if text.endswith((".", "?")) else f"{text}."


def _capital(text: str) -> str:
    """The start of a sentence; what is quoted from the file stays as it is."""
    return text[:1].upper() + text[1:]


def _article(noun: str) -> str:
    return "an" if noun[:1] in "aeiou" else "a"
