"""An expression of a rule, read, checked and ready to be worked."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from plumbrule.language.check import check, check_as
from plumbrule.language.data import Data, from_data, to_data, type_from_data, type_to_data
from plumbrule.language.nodes import Node, reads
from plumbrule.language.tree import parse
from plumbrule.language.types import Type
from plumbrule.language.work import Work, compile_


@dataclass(frozen=True, slots=True)
class Expression:
    """`source` as written, its tree, the function that works it, the names it reads, and the kind of its value."""

    source: str
    node: Node
    work: Work
    reads: frozenset[str]
    type: Type


def expression(source: str, names: Mapping[str, Type], wanted: Type | None = None) -> Expression:
    """Reads, checks and compiles `source`, which may read `names`. With `wanted`, its value must be of that kind (a
    0 written out is of every dimension). Raises BadExpression."""
    node = parse(source)
    kind = check(node, names) if wanted is None else check_as(node, names, wanted)
    return Expression(source, node, compile_(node), reads(node), kind)


def expression_to_data(expression: Expression) -> Data:
    """Source, tree and kind as JSON values, for a compiled rulebook."""
    return [expression.source, to_data(expression.node), type_to_data(expression.type)]


def expression_from_data(data: Data) -> Expression:
    """The expression that `expression_to_data` wrote, neither parsed nor checked again: the compiled rulebook carries
    the digest of what it was made from. Raises ValueError for data of another shape."""
    try:
        source, tree, kind = data
    except (TypeError, ValueError) as fault:
        raise ValueError(f"not a compiled expression: {fault}") from fault
    node = from_data(tree)
    return Expression(source, node, compile_(node), reads(node), type_from_data(kind))
