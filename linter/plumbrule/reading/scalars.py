"""Plain scalars to values by the YAML 1.2 core schema, without its infinities and its not-a-number."""

from __future__ import annotations

import re
from math import isinf

from plumbrule.reading.labels import DATE, Unquoted

_NULL = frozenset(("", "~", "null", "Null", "NULL"))
_TRUTH = {"true": True, "True": True, "TRUE": True, "false": False, "False": False, "FALSE": False}
_INTEGER = re.compile("[-+]?[0-9]{1,18}")
_HEX = re.compile("0x[0-9a-fA-F]{1,15}|0o[0-7]{1,18}")
_FLOAT = re.compile("[-+]?(?:[.][0-9]+|[0-9]+(?:[.][0-9]*)?)(?:[eE][-+]?[0-9]+)?")
_NOT_FINITE = re.compile("[-+]?[.](?:inf|Inf|INF)|[.](?:nan|NaN|NAN)")
_DATE = re.compile(DATE[1:-1])
_STARTS = frozenset("0123456789+-.tTfF~nN")

Scalar = str | int | float | bool | None


class NotFinite(ValueError):
    """A number without an end, or none at all."""


def resolve(text: str) -> Scalar:
    """The value of a plain scalar. Integers of more than 18 digits and `010` with its leading zero stay text: nobody
    means them as numbers, and readers differ. Raises NotFinite."""
    if not text or text[0] not in _STARTS:
        return text if text else None
    first = text[0]
    if first in "tTfF":
        return _TRUTH.get(text, text)
    if first in "~nN":
        return None if text in _NULL else text
    if _INTEGER.fullmatch(text):
        digits = text.lstrip("+-")
        return text if len(digits) > 1 and digits[0] == "0" else int(text)
    if _FLOAT.fullmatch(text):
        if text.lstrip("+-").isdigit():
            return text
        value = float(text)
        if isinf(value):
            raise NotFinite(text)
        return value
    if first == "0" and _HEX.fullmatch(text):
        return int(text, 0)
    if _NOT_FINITE.fullmatch(text):
        raise NotFinite(text)
    return Unquoted(text) if _DATE.fullmatch(text) else text
