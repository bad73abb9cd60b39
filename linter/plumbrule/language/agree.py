"""Which kinds of value may stand together, and the sentence for those that may not."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NoReturn

from plumbrule.language.faults import BadExpression, listed, nearest
from plumbrule.language.nodes import Node, Numeral, Quoted, is_zero
from plumbrule.language.types import ListOf, Number, Type, Word, describe
from plumbrule.reading.units import AREA, CONSTANTS, NUMBER


def refuse(node: Node, message: str, hint: str = "") -> NoReturn:
    """Raises BadExpression at `node`."""
    raise BadExpression(message, node.start, node.end, hint)


def capital(sentence: str) -> str:
    return sentence[0].upper() + sentence[1:]


def common(node: Node, kind: Type, other: Type) -> Type | None:
    """The kind of a value that is either `node`, of `kind`, or something of the kind `other`; None if none is."""
    if isinstance(kind, Word) and isinstance(other, Word):
        if not kind.allowed or not other.allowed:
            return Word()
        return Word(tuple(dict.fromkeys((*other.allowed, *kind.allowed))))
    if isinstance(kind, Number) and isinstance(other, Number) and is_zero(node):
        return other
    if isinstance(kind, ListOf) and isinstance(other, ListOf):
        item = common(node, kind.item, other.item)
        return None if item is None or isinstance(item, ListOf) else ListOf(item)
    return kind if kind == other else None


def joined(node: Node, kinds: Sequence[tuple[Node, Type]], where: str) -> Type:
    """The one kind of several values that may stand for each other. A written 0 takes the kind of the others."""
    measured = [pair for pair in kinds if not is_zero(pair[0])] or kinds
    kind = measured[0][1]
    for other, next_kind in kinds:
        both = common(other, next_kind, kind)
        if both is None:
            if isinstance(kind, Number) and isinstance(next_kind, Number):
                unequal(node, (measured[0][0], kind), (other, next_kind), f"{{a}} and {{b}} stand together {where}.")
            refuse(
                node,
                f"{capital(describe(kind))} and {describe(next_kind)} stand together {where}.",
                "Let both be of one kind.",
            )
        kind = both
    return kind


def compared(node: Node, left: tuple[Node, Number], right: tuple[Node, Number]) -> None:
    """Refuses two numbers of unequal dimension, unless one of them is 0 written out."""
    if left[1] != right[1] and not is_zero(left[0]) and not is_zero(right[0]):
        unequal(node, left, right, "{a} is compared with {b}.")


def unequal(node: Node, left: tuple[Node, Number], right: tuple[Node, Number], sentence: str) -> NoReturn:
    message = sentence.format(a=describe(left[1]), b=describe(right[1]))
    plain, quantity = (left, right) if left[1].dimension == NUMBER else (right, left)
    hint = "Bring both to one kind."
    if plain[1].dimension == NUMBER:
        text = plain[0].text if isinstance(plain[0], Numeral) else "x"
        units = [name for name, unit in CONSTANTS.items() if unit.dimension == quantity[1].dimension]
        if units:
            hint = f"Give the plain number its unit: {' or '.join(f'{text} * {unit}' for unit in units)}."
        elif quantity[1].dimension == AREA:
            hint = f"Give the plain number its unit: {text} * inch * inch."
        else:
            hint = "Make the plain number a setting of the rule, with its unit."
    refuse(node, capital(message), hint)


def words_meet(left: Node, left_kind: Word, right: Node, right_kind: Word) -> None:
    """Refuses two words that can never be equal, at the one that was written out."""
    if not left_kind.allowed or not right_kind.allowed or set(left_kind.allowed) & set(right_kind.allowed):
        return
    node, other = (left, right_kind) if isinstance(left, Quoted) else (right, left_kind)
    if not isinstance(node, Quoted):
        refuse(
            node,
            f"These two are never the same word: one is {describe(left_kind)}, the other {describe(right_kind)}.",
            "Take the comparison out, or compare another field.",
        )
    near = nearest(node.value, other.allowed)
    hint = f'Did you mean "{near}"? ' if near else ""
    refuse(node, f'"{node.value}" cannot occur here.', f"{hint}Allowed: {listed(other.allowed)}.")
