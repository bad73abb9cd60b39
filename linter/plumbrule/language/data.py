"""Trees and kinds as plain JSON, so that a compiled rulebook need not be parsed and checked again."""

from __future__ import annotations

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
    """The tree that `to_data` wrote. Raises ValueError for anything else."""
    try:
        return _node(data)
    except (TypeError, IndexError, KeyError, RecursionError) as fault:
        raise ValueError(f"not a compiled expression: {fault}") from fault


def _node(data: Data) -> Node:
    match data:
        case ["n", name, start, end]:
            return Name(name, start, end)
        case ["#", value, text, start, end]:
            return Numeral(value, text, start, end)
        case ["b", operator, left, right, start, end]:
            return Binary(operator, _node(left), _node(right), start, end)
        case ["w", value, start, end]:
            return Quoted(value, start, end)
        case ["t", value, start, end]:
            return Answer(value, start, end)
        case ["u", name, value, start, end]:
            return UnitName(name, value, start, end)
        case ["l", items, start, end]:
            return Several(tuple(_node(item) for item in items), start, end)
        case ["m", operator, operand, start, end]:
            return Unary(operator, _node(operand), start, end)
        case ["?", test, yes, no, start, end]:
            return Choice(_node(test), _node(yes), _node(no), start, end)
        case ["f", function, arguments, start, end]:
            return Call(function, tuple(_node(argument) for argument in arguments), start, end)
        case ["a", kind, over, item, body, start, end]:
            return Macro(kind, _node(over), item, _node(body), start, end)
    raise ValueError(f"not a compiled expression: {data!r:.60}")


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
