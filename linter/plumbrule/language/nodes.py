"""The tree of an expression: immutable nodes, each knowing where it stands in the text it was read from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeAlias

MOST_CHARACTERS = 400
MOST_LEVELS = 24

ARITHMETIC = ("+", "-", "*", "/", "^")
COMPARISONS = ("<", "<=", ">", ">=", "==", "!=", "in")
LOGIC = ("&&", "||")
MACROS = ("all", "exists")


@dataclass(frozen=True, slots=True)
class Numeral:
    """A number as it was written; it has no dimension."""

    value: float
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Quoted:
    """A word in quotes, without them."""

    value: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Answer:
    """`true` or `false`."""

    value: bool
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Name:
    """A field of the row, a setting of the rule, or the item of an `all` or `exists`."""

    name: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class UnitName:
    """A unit used as a factor (`1.5 * inch`); in a formula, `pi`. `value` is what it is worth in SI."""

    name: str
    value: float
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Several:
    """A list written out: `["wall", "seat"]`."""

    items: tuple[Node, ...]
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Unary:
    """`-` or `!` before an operand."""

    operator: str
    operand: Node
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Binary:
    """Two operands: arithmetic, comparison, `in`, `&&` or `||`."""

    operator: str
    left: Node
    right: Node
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Choice:
    """`test ? yes : no`."""

    test: Node
    yes: Node
    no: Node
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Call:
    """`size(x)`, `min(a, b)` and, in a formula, `sqrt(x)` and the like."""

    function: str
    arguments: tuple[Node, ...]
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Macro:
    """`over.all(item, body)` or `over.exists(item, body)`."""

    kind: str
    over: Node
    item: str
    body: Node
    start: int
    end: int


Node: TypeAlias = (
    Numeral | Quoted | Answer | Name | UnitName | Several | Unary | Binary | Choice | Call | Macro
)  # fmt: skip


def parts(node: Node) -> tuple[Node, ...]:
    """The nodes directly below, from left to right."""
    if isinstance(node, Binary):
        return (node.left, node.right)
    if isinstance(node, Unary):
        return (node.operand,)
    if isinstance(node, Several):
        return node.items
    if isinstance(node, Call):
        return node.arguments
    if isinstance(node, Choice):
        return (node.test, node.yes, node.no)
    if isinstance(node, Macro):
        return (node.over, node.body)
    return ()


def walk(node: Node) -> Iterator[Node]:
    """The node and everything below it, from left to right."""
    waiting = [node]
    while waiting:
        current = waiting.pop()
        yield current
        waiting.extend(reversed(parts(current)))


def reads(node: Node) -> frozenset[str]:
    """The names that must be given for the expression to be worked: fields and settings, but no units, and not the
    item that an `all` or `exists` binds."""
    if isinstance(node, Name):
        return frozenset((node.name,))
    if isinstance(node, Macro):
        return reads(node.over) | (reads(node.body) - {node.item})
    found: frozenset[str] = frozenset()
    for part in parts(node):
        found |= reads(part)
    return found


def is_zero(node: Node) -> bool:
    """A zero written out. It is the same in every unit, so it may stand beside any quantity."""
    if isinstance(node, Unary) and node.operator == "-":
        return is_zero(node.operand)
    return isinstance(node, Numeral) and node.value == 0
