"""RFC 6901 JSON Pointers: how every place in a file is named."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any


def escape(token: str) -> str:
    """One step of a pointer, as it is written: `~` is `~0` and `/` is `~1`."""
    if "~" in token or "/" in token:
        return token.replace("~", "~0").replace("/", "~1")
    return token


def unescape(token: str) -> str:
    """One step of a pointer, as it is meant."""
    return token.replace("~1", "/").replace("~0", "~")


def join(parent: str, token: str | int) -> str:
    """The pointer of a key or an item of what `parent` points at."""
    return f"{parent}/{token if isinstance(token, int) else escape(token)}"


def build(tokens: Iterable[str | int]) -> str:
    """The pointer of a path from the root."""
    return "".join(f"/{escape(str(token))}" for token in tokens)


def split(pointer: str) -> list[str]:
    """The steps from the root, unescaped. Raises ValueError if `pointer` is not one."""
    if not pointer:
        return []
    if not pointer.startswith("/"):
        raise ValueError(f"{pointer} is not a pointer: one starts with /.")
    if "~" in pointer and any(part[:1] not in ("0", "1") for part in pointer.split("~")[1:]):
        raise ValueError(f"{pointer} is not a pointer: ~ is written ~0, / in a name is written ~1.")
    return [unescape(token) for token in pointer[1:].split("/")]


def parent(pointer: str) -> str:
    """The pointer one step up; of the root, the root."""
    return pointer.rpartition("/")[0]


def last(pointer: str) -> str:
    """The last step, unescaped; of the root, nothing."""
    return unescape(pointer.rpartition("/")[2])


def within(pointer: str, above: str) -> bool:
    """Whether `pointer` is `above` or a place below it."""
    return pointer == above or pointer.startswith(f"{above}/")


def get(value: Any, pointer: str) -> Any:
    """What `pointer` points at. Raises LookupError if there is nothing, ValueError if it is no pointer."""
    for token in split(pointer):
        if isinstance(value, dict):
            value = value[token]
        elif isinstance(value, (list, tuple)):
            if not (token.isascii() and token.isdigit()) or (len(token) > 1 and token[0] == "0"):
                raise LookupError(pointer)
            value = value[int(token)]
        else:
            raise LookupError(pointer)
    return value
