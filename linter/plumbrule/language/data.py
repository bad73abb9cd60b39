"""Trees and kinds as plain JSON, so that a compiled rulebook need not be parsed and checked again."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeAlias

from plumbrule.language.nodes import (
    Answer,
    Binary,
    Call,
    Choice,
    Macro,
    Name,
    Node,
    Numeral,
    Quoted,
    Several,
    Unary,
    UnitName,
)
from plumbrule.language.types import ListOf, Number, Truth, Type, Word
from plumbrule.reading.units import Dimension

Data: TypeAlias = list[Any]


def to_data(node: Node) -> Data:
    """The tree as nested lists of JSON values: a letter for the kind, the parts, start and end."""
    if isinstance(node, Name):
        return ["n", node.name, node.start, node.end]
    if isinstance(node, Numeral):
        return ["#", node.value, node.text, node.start, node.end]
    if isinstance(node, Binary):
        return ["b", node.operator, to_data(node.left), to_data(node.right), node.start, node.end]
    if isinstance(node, Quoted):
        return ["w", node.value, node.start, node.end]
    if isinstance(node, Answer):
        return ["t", node.value, node.start, node.end]
    if isinstance(node, UnitName):
        return ["u", node.name, node.value, node.start, node.end]
    if isinstance(node, Several):
        return ["l", [to_data(item) for item in node.items], node.start, node.end]
    if isinstance(node, Unary):
        return ["m", node.operator, to_data(node.operand), node.start, node.end]
    if isinstance(node, Choice):
        return ["?", to_data(node.test), to_data(node.yes), to_data(node.no), node.start, node.end]
    if isinstance(node, Call):
        return ["f", node.function, [to_data(argument) for argument in node.arguments], node.start, node.end]
    return ["a", node.kind, to_data(node.over), node.item, to_data(node.body), node.start, node.end]


def from_data(data: Data) -> Node:
    """The tree that `to_data` wrote. Raises ValueError for data of another shape."""
    try:
        return _READ[data[0]](*data[1:])
    except (TypeError, LookupError, RecursionError) as fault:
        raise ValueError(f"not a compiled expression: {fault}") from fault


def _below(data: Data) -> Node:
    return _READ[data[0]](*data[1:])


def _several(items: list[Data], start: int, end: int) -> Node:
    return Several(tuple([_below(item) for item in items]), start, end)


def _unary(operator: str, operand: Data, start: int, end: int) -> Node:
    return Unary(operator, _below(operand), start, end)


def _binary(operator: str, left: Data, right: Data, start: int, end: int) -> Node:
    return Binary(operator, _below(left), _below(right), start, end)


def _choice(test: Data, yes: Data, no: Data, start: int, end: int) -> Node:
    return Choice(_below(test), _below(yes), _below(no), start, end)


def _call(function: str, arguments: list[Data], start: int, end: int) -> Node:
    return Call(function, tuple([_below(argument) for argument in arguments]), start, end)


def _macro(kind: str, over: Data, item: str, body: Data, start: int, end: int) -> Node:
    return Macro(kind, _below(over), item, _below(body), start, end)


_READ: dict[str, Callable[..., Node]] = {
    "n": Name, "#": Numeral, "w": Quoted, "t": Answer, "u": UnitName, "l": _several, "m": _unary, "b": _binary,
    "?": _choice, "f": _call, "a": _macro,
}  # fmt: skip


def type_to_data(kind: Type) -> Data:
    """The kind as a list of JSON values."""
    if isinstance(kind, Number):
        return ["number", *kind.dimension]
    if isinstance(kind, Word):
        return ["word", *kind.allowed]
    if isinstance(kind, Truth):
        return ["truth"]
    return ["list", type_to_data(kind.item)]


def type_from_data(data: Data) -> Type:
    """The kind that `type_to_data` wrote. Raises ValueError for anything else."""
    match data:
        case ["number", *powers] if len(powers) == len(Dimension._fields):
            return Number(Dimension(*powers))
        case ["word", *allowed]:
            return Word(tuple(allowed))
        case ["truth"]:
            return Truth()
        case ["list", item]:
            inner = type_from_data(item)
            if not isinstance(inner, ListOf):
                return ListOf(inner)
    raise ValueError(f"not a compiled kind: {data!r:.60}")
