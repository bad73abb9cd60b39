"""What a model expects at a place: the way from pydantic's location of an error to a place in the file."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from types import NoneType, UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin

from pydantic import BaseModel
from pydantic import Tag as UnionTag

from plumbrule.reading.quantities import NotationOf

KEY = "[key]"


@dataclass(frozen=True, slots=True)
class Trail:
    """Where an error is. `path` are the steps that exist in the file or are expected there; `branches` are the
    alternatives of unions that were tried on the way, each with the number of steps before it; `wanted` is what the
    model expects at the end and `inside` the models that the last step was looked up in."""

    path: tuple[str | int, ...]
    branches: tuple[tuple[int, str], ...]
    wanted: Any
    inside: tuple[type[BaseModel], ...]
    at_key: bool


@dataclass(slots=True)
class _Walk:
    wanted: Any
    path: list[str | int] = field(default_factory=list)
    branches: list[tuple[int, str]] = field(default_factory=list)
    inside: tuple[type[BaseModel], ...] = ()
    at_key: bool = False

    def step(self, token: str | int) -> None:
        core = stripped(self.wanted)
        if token == KEY:
            self.at_key = True
            return
        choices = alternatives(core)
        if len(choices) > 1:
            self.branches.append((len(self.path), str(token)))
            self.wanted = _chosen(choices, str(token))
            return
        if choices:
            core = stripped(choices[0])
        if isinstance(core, type) and issubclass(core, BaseModel):
            self.inside = (core,)
            self.wanted = _field(core, str(token))
        else:
            self.inside = ()
            arguments = get_args(core)
            origin = get_origin(core)
            if origin is dict and len(arguments) == 2:
                self.wanted = arguments[1]
            elif origin in (tuple, list) and arguments:
                fixed = origin is tuple and arguments[-1] is not Ellipsis and isinstance(token, int)
                self.wanted = arguments[int(token)] if fixed and int(token) < len(arguments) else arguments[0]
            else:
                self.wanted = None
        self.path.append(token)


def trail(kind: type[BaseModel], location: Sequence[str | int]) -> Trail:
    """Follow an error's location through the annotations of `kind`."""
    walk = _Walk(kind)
    for token in location:
        walk.step(token)
    return Trail(tuple(walk.path), tuple(walk.branches), walk.wanted, walk.inside, walk.at_key)


def stripped(annotation: Any) -> Any:
    """The annotation without `Annotated`; a notation is left as it is, since its type says nothing about the file."""
    while get_origin(annotation) is Annotated and not notation(annotation):
        annotation = get_args(annotation)[0]
    return annotation


def notation(annotation: Any) -> str:
    """The name of the notation that a place is written in, or nothing."""
    if get_origin(annotation) is Annotated:
        for mark in annotation.__metadata__:
            if isinstance(mark, NotationOf):
                return mark.name
        return notation(get_args(annotation)[0])
    choices = alternatives(annotation)
    return notation(choices[0]) if len(choices) == 1 else ""


def alternatives(annotation: Any) -> list[Any]:
    """The members of a union, None left out; nothing if it is none. A union that stands alone beside None is its
    members: pydantic does not tell the two apart in a location."""
    annotation = stripped(annotation)
    if get_origin(annotation) not in (Union, UnionType):
        return []
    members = [member for member in get_args(annotation) if member is not NoneType]
    return (alternatives(members[0]) or members) if len(members) == 1 else members


def models(annotation: Any) -> list[type[BaseModel]]:
    """The models that may stand at a place."""
    core = stripped(annotation)
    found = [core] if isinstance(core, type) and issubclass(core, BaseModel) else []
    for member in alternatives(core):
        found += models(member)
    return found


def words(annotation: Any) -> list[Any]:
    """The fixed words that may stand at a place."""
    core = stripped(annotation)
    found = list(get_args(core)) if get_origin(core) is Literal else []
    for member in alternatives(core):
        found += words(member)
    return found


def keys(model: type[BaseModel]) -> list[str]:
    """The keys of a model as they are written in a file."""
    return [info.alias or name for name, info in model.model_fields.items()]


def _field(model: type[BaseModel], key: str) -> Any:
    for name, info in model.model_fields.items():
        if key == (info.alias or name):
            # Pydantic keeps what stood in `Annotated` apart from the annotation.
            return Annotated[info.annotation, *info.metadata] if info.metadata else info.annotation
    return None


def _chosen(choices: list[Any], label: str) -> Any:
    """The member of a union that pydantic calls `label`."""
    for member in choices:
        core = stripped(member)
        if getattr(core, "__name__", None) == label:
            return member
        marks = member.__metadata__ if get_origin(member) is Annotated else ()
        if any(isinstance(mark, UnionTag) and mark.tag == label for mark in marks):
            return member
        if label.startswith("literal[") and get_origin(core) is Literal:
            return member
        if label.startswith("function-plain") and notation(member):
            return member
    return None
