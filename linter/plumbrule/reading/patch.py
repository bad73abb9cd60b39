"""RFC 6902 patches on a plan: what an example changes in its base plan, and what a remedy would change."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from plumbrule.reading import pointer as pointers
from plumbrule.reading.fault import Fault
from plumbrule.reading.places import Document, Spots

_NEEDS = {
    "add": ("path", "value"), "replace": ("path", "value"), "test": ("path", "value"), "remove": ("path",),
    "move": ("path", "from"), "copy": ("path", "from"),
}  # fmt: skip


class PatchRefused(ValueError):
    """A patch that cannot be applied. `index` is the operation, from 0; `found` and `write` are whole sentences."""

    def __init__(self, index: int, found: str, write: str) -> None:
        super().__init__(f"{found} {write}")
        self.index = index
        self.found = found
        self.write = write

    def fault(self, document: Document, at: str) -> Fault:
        """The fault in the file where the patch is written; `at` points at the list of operations in `document`."""
        pointer = f"{at}/{self.index}"
        return Fault(document.path, document.place(pointer), pointer, self.found, self.write)


def apply(value: Any, patch: Sequence[Any]) -> Any:
    """`value` with the operations of `patch` applied in turn; `value` itself stays as it is. Raises PatchRefused."""
    from jsonpatch import JsonPatch, JsonPatchException, JsonPatchTestFailed
    from jsonpointer import JsonPointerException

    operations = [_checked(index, operation) for index, operation in enumerate(patch)]
    try:
        return JsonPatch(operations).apply(value)
    except (JsonPatchException, JsonPointerException, LookupError, TypeError, ValueError):
        pass
    # Once more, one by one, to know which it was.
    for index, operation in enumerate(operations):
        try:
            value = JsonPatch([operation]).apply(value)
        except JsonPatchTestFailed:
            found, write = _differs(value, operation)
            raise PatchRefused(index, found, write) from None
        except (JsonPatchException, JsonPointerException, LookupError, TypeError, ValueError):
            found, write = _nowhere(value, operation)
            raise PatchRefused(index, found, write) from None
    return value


def patched(document: Document, patch: Sequence[Any]) -> Document:
    """`document` with other values. Whatever still has its value keeps its place in the text; what was changed or
    added has none of its own and falls back to what it stands in. Raises PatchRefused."""
    value = apply(document.value, patch)
    kept: set[str] = set()
    empty: list[str] = []
    _keep("", document.value, value, kept, empty)
    spots = document.spots
    left = spots.only(kept) if isinstance(spots, Spots) else {at: spot for at, spot in spots.items() if at in kept}
    return replace(document, value=value, spots=left, empty=tuple(empty))


def _keep(at: str, before: Any, after: Any, kept: set[str], empty: list[str]) -> None:
    """Collect the pointers whose place still tells the truth, and those that have no value."""
    if isinstance(before, dict) and isinstance(after, dict):
        kept.add(at)
        for key, value in after.items():
            _keep(pointers.join(at, key), before.get(key, _ABSENT), value, kept, empty)
    elif isinstance(before, list) and isinstance(after, list):
        kept.add(at)
        for index, value in enumerate(after):
            old = before[index] if index < len(before) else _ABSENT
            _keep(pointers.join(at, index), old, value, kept, empty)
    elif after is None:
        empty.append(at)
    elif type(before) is type(after) and before == after:
        kept.add(at)


_ABSENT = object()


def _checked(index: int, operation: Any) -> dict[str, Any]:
    if not isinstance(operation, dict):
        raise PatchRefused(index, "A change is a group of keys.", "Write {op: replace, path: /…, value: …}.")
    name = operation.get("op")
    if name not in _NEEDS:
        said = "The change has no `op`." if name is None else f"`{name}` is not an op."
        raise PatchRefused(index, said, f"Write one of {', '.join(_NEEDS)}.")
    for key in _NEEDS[name]:
        if key not in operation:
            raise PatchRefused(index, f"The change to {name} has no `{key}`.", f"Write {key}.")
    for key in ("path", "from"):
        if key in operation:
            try:
                pointers.split(str(operation[key]))
            except ValueError as error:
                raise PatchRefused(index, str(error), "Write a pointer like /boards/seat/length.") from None
    return operation


def _differs(value: Any, operation: dict[str, Any]) -> tuple[str, str]:
    path = str(operation["path"])
    try:
        there = pointers.get(value, path)
    except (LookupError, ValueError):
        return _nowhere(value, operation)
    return f"{path} is {_shown(there)}, not {_shown(operation['value'])}.", "Test for what the plan has."


def _nowhere(value: Any, operation: dict[str, Any]) -> tuple[str, str]:
    """The first step of a pointer that leads nowhere, and the nearest that would lead somewhere."""
    from plumbrule.reading.spelling import nearest

    for key in ("from", "path"):
        if key not in operation:
            continue
        wanted = str(operation[key])
        steps = pointers.split(wanted)
        adds = key == "path" and operation["op"] in ("add", "move", "copy")
        there, here = value, ""
        for step in steps[:-1] if adds else steps:
            try:
                there = pointers.get(there, f"/{pointers.escape(step)}")
            except (LookupError, ValueError):
                known = list(there) if isinstance(there, dict) else []
                meant = nearest(step, known)
                found = f"The plan has no {pointers.join(here, step)}."
                if meant:
                    return found, f"Did you mean {pointers.join(here, meant)}?"
                if isinstance(there, list):
                    return found, f"{here} has {len(there)} items, counted from 0."
                return found, "Add it first." if adds else "Use add instead of replace, or check the pointer."
            here = pointers.join(here, step)
        if adds and isinstance(there, list) and steps:
            return f"There is no place {steps[-1]} in {here}.", f"Write /{len(there)} or /- to add at its end."
        if adds and not isinstance(there, dict):
            return f"{here or 'The plan'} has no keys to add to.", "Check the pointer."
    return "This change cannot be made.", "Check its pointers."


def _shown(value: Any) -> str:
    if isinstance(value, dict):
        return "a group of keys"
    if isinstance(value, list):
        return "a list"
    return str(value)[:60]
