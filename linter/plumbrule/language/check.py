"""Does an expression mean anything? Dimensions, words and names are settled here, before any plan is read."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NoReturn

from plumbrule.language.faults import BadExpression, listed, nearest
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
    is_zero,
)
from plumbrule.language.types import ListOf, Number, Truth, Type, Word, describe
from plumbrule.reading.units import CONSTANTS, NUMBER

# What a carpenter may write for a unit of the language.
_MEANT = {
    "inches": "inch", "ft": "foot", "feet": "foot", "lb": "pound", "lbs": "pound", "h": "hour", "hours": "hour",
    "minutes": "minute", "days": "day", "deg": "degree", "degrees": "degree", "millimetre": "mm", "n": "N",
    "kn": "kN", "mpa": "MPa", "pounds": "pound",
}  # fmt: skip


def check(node: Node, names: Mapping[str, Type]) -> Type:
    """The kind of value `node` has when `names` are what it may read.

    Raises BadExpression at the first place that cannot mean anything: an unknown name, quantities of unequal
    dimension, a word that cannot occur, an operand of the wrong kind.
    """
    return _Checker(names).kind(node)


def check_as(node: Node, names: Mapping[str, Type], wanted: Type) -> Type:
    """Like `check`, and the value must be one that may stand beside `wanted`: equal dimension (or 0 written out),
    words that can occur there. Used for the bounds of a measure, and for `when` and `that`."""
    checker = _Checker(names)
    kind = checker.kind(node)
    if checker.common(node, kind, wanted) is None:
        raise BadExpression(
            f"This is {describe(kind)}.", node.start, node.end, f"What belongs here is {describe(wanted)}."
        )
    return kind


def refuse_unit_names(names: Mapping[str, object]) -> None:
    """Raises ValueError for a field or a setting that is named like a unit of the language."""
    taken = sorted(set(names) & set(CONSTANTS))
    if taken:
        raise ValueError(f"{listed(taken, 'and')} is a unit of the rule language: give the field another name.")


class _Checker:
    def __init__(self, names: Mapping[str, Type]) -> None:
        self.names = dict(names)

    def kind(self, node: Node) -> Type:
        if isinstance(node, Name):
            return self.name(node)
        if isinstance(node, Numeral):
            return Number()
        if isinstance(node, UnitName):
            return Number(CONSTANTS[node.name].dimension if node.name in CONSTANTS else NUMBER)
        if isinstance(node, Quoted):
            return Word((node.value,))
        if isinstance(node, Answer):
            return Truth()
        if isinstance(node, Binary):
            return self.binary(node)
        if isinstance(node, Unary):
            return self.unary(node)
        if isinstance(node, Choice):
            return self.choice(node)
        if isinstance(node, Several):
            return self.several(node)
        if isinstance(node, Call):
            return self.call(node)
        return self.macro(node)

    def name(self, node: Name) -> Type:
        known = self.names.get(node.name)
        if known is not None:
            return known
        near = nearest(node.name, self.names) or _MEANT.get(node.name.lower()) or nearest(node.name, CONSTANTS)
        if near is not None:
            hint = f'Did you mean "{near}"?'
        elif self.names:
            hint = f"There are {listed(sorted(self.names), 'and')}."
        else:
            hint = "No name can be used here."
        raise BadExpression(f'There is no "{node.name}" here.', node.start, node.end, hint)

    def unary(self, node: Unary) -> Type:
        kind = self.kind(node.operand)
        if node.operator == "-":
            return self.number(node.operand, kind, 'after "-"')
        if not isinstance(kind, Truth):
            self.wrong(
                node,
                f'"!" turns true into false, and this is {describe(kind)}.',
                "Put brackets: !(a == b), or write a != b.",
            )
        return kind

    def binary(self, node: Binary) -> Type:
        left, right = self.kind(node.left), self.kind(node.right)
        operator = node.operator
        if operator in ("&&", "||"):
            for side, kind in ((node.left, left), (node.right, right)):
                if not isinstance(kind, Truth):
                    self.wrong(
                        side,
                        f'"{operator}" joins what is true or false, and this is {describe(kind)}.',
                        "Compare it with something.",
                    )
            return Truth()
        if operator == "in":
            return self.within(node, left, right)
        if operator in ("==", "!="):
            return self.equality(node, left, right)
        a = self.number(node.left, left, f'before "{operator}"')
        b = self.number(node.right, right, f'after "{operator}"')
        if operator in ("<", "<=", ">", ">="):
            self.same(node, a, b, f'"{operator}" compares')
            return Truth()
        if operator in ("+", "-"):
            if a != b:
                self.unequal(node, a, b, "are added" if operator == "+" else "are subtracted")
            return a
        if operator == "*":
            return Number(a.dimension.times(b.dimension))
        if operator == "/":
            if is_zero(node.right):
                self.wrong(node.right, "Nothing can be divided by zero.", "Take the division out.")
            return Number(a.dimension.over(b.dimension))
        self.wrong(node, "A rule has no powers.", "Write x * x.")

    def equality(self, node: Binary, left: Type, right: Type) -> Type:
        if isinstance(left, ListOf) or isinstance(right, ListOf):
            side = node.left if isinstance(left, ListOf) else node.right
            self.wrong(side, "A list is not compared as a whole.", "Use .all(x, …), .exists(x, …) or size(…).")
        if isinstance(left, Word) and isinstance(right, Word):
            self.words(node.left, left, node.right, right)
        elif isinstance(left, Number) and isinstance(right, Number):
            self.same(node, left, right, f'"{node.operator}" compares')
        elif type(left) is not type(right):
            self.wrong(node, f"{_capital(describe(left))} is never {describe(right)}.", "Compare like with like.")
        return Truth()

    def within(self, node: Binary, left: Type, right: Type) -> Type:
        if not isinstance(right, ListOf):
            self.wrong(node.right, f'After "in" stands {describe(right)}.', 'Write a list: x in ["a", "b"].')
        if isinstance(left, ListOf):
            self.wrong(node.left, 'Before "in" stands a list.', "Write .all(x, x in …) or .exists(x, x in …).")
        items = node.right.items if isinstance(node.right, Several) else (node.right,)
        for item in items:
            kind = right.item if item is node.right else self.kind(item)
            if isinstance(left, Word) and isinstance(kind, Word):
                self.words(node.left, left, item, kind)
            elif isinstance(left, Number) and isinstance(kind, Number):
                if left != kind and not is_zero(item) and not is_zero(node.left):
                    self.unequal(node, left, kind, 'are compared by "in"')
            elif type(left) is not type(kind):
                self.wrong(item, f"{_capital(describe(left))} is never {describe(kind)}.", "Compare like with like.")
        return Truth()

    def choice(self, node: Choice) -> Type:
        test = self.kind(node.test)
        if not isinstance(test, Truth):
            self.wrong(node.test, f'Before "?" stands {describe(test)}.', "Write a comparison.")
        return self.joined(node, ((node.yes, self.kind(node.yes)), (node.no, self.kind(node.no))), "A choice gives")

    def several(self, node: Several) -> Type:
        if not node.items:
            self.wrong(node, "The list is empty.", "Nothing is ever in it: write the items, or take it out.")
        kinds = tuple((item, self.kind(item)) for item in node.items)
        for item, kind in kinds:
            if isinstance(kind, ListOf):
                self.wrong(item, "A list stands inside a list.", "Write one list.")
        joined = self.joined(node, kinds, "The list holds")
        assert not isinstance(joined, ListOf)
        return ListOf(joined)

    def call(self, node: Call) -> Type:
        kinds = tuple((argument, self.kind(argument)) for argument in node.arguments)
        if node.function == "size":
            argument, kind = kinds[0]
            if not isinstance(kind, ListOf):
                self.wrong(argument, f'"size" counts a list, and this is {describe(kind)}.', "Give it a list.")
            return Number()
        if node.function not in ("min", "max"):
            self.wrong(
                node, f'"{node.function}" belongs to formulas, not to rules.', "Judge a fact that has been worked out."
            )
        for argument, kind in kinds:
            self.number(argument, kind, f'in "{node.function}"')
        return self.joined(node, kinds, f'"{node.function}" takes')

    def macro(self, node: Macro) -> Type:
        over = self.kind(node.over)
        if not isinstance(over, ListOf):
            self.wrong(node.over, f'"{node.kind}" goes through a list, and this is {describe(over)}.', "Name a list.")
        if node.item in self.names:
            self.wrong(node, f'"{node.item}" is already a name here.', "Give the item another name.")
        self.names[node.item] = over.item
        body = self.kind(node.body)
        del self.names[node.item]
        if not isinstance(body, Truth):
            self.wrong(
                node.body,
                f'"{node.kind}" asks something of each item, and this is {describe(body)}.',
                "Write a comparison.",
            )
        return body

    def joined(self, node: Node, kinds: tuple[tuple[Node, Type], ...], what: str) -> Type:
        """The one kind of several values that may stand for each other. A written 0 takes the others' dimension."""
        measured = [pair for pair in kinds if not is_zero(pair[0])] or list(kinds)
        first, kind = measured[0]
        for other, next_kind in (*measured[1:], *kinds):
            both = self.common(other, next_kind, kind)
            if both is None:
                if isinstance(kind, Number) and isinstance(next_kind, Number):
                    self.unequal(node, kind, next_kind, f"are mixed: {what[0].lower()}{what[1:]} one kind only")
                self.wrong(node, f"{what} {describe(kind)} and {describe(next_kind)}.", "Let both be of one kind.")
            kind = both
        return kind

    def common(self, node: Node, kind: Type, other: Type) -> Type | None:
        """The kind of a value that is either `node`, of `kind`, or something of the kind `other`."""
        if isinstance(kind, Word) and isinstance(other, Word):
            if not kind.allowed or not other.allowed:
                return Word()
            return Word(tuple(dict.fromkeys((*other.allowed, *kind.allowed))))
        if isinstance(kind, Number) and isinstance(other, Number) and is_zero(node):
            return other
        if isinstance(kind, ListOf) and isinstance(other, ListOf):
            item = self.common(node, kind.item, other.item)
            return None if item is None or isinstance(item, ListOf) else ListOf(item)
        return kind if kind == other else None

    def number(self, node: Node, kind: Type, where: str) -> Number:
        if not isinstance(kind, Number):
            hint = 'Compare words with "==" or "in".' if isinstance(kind, Word) else "Put a number there."
            self.wrong(node, f"A number belongs {where}, and this is {describe(kind)}.", hint)
        return kind

    def same(self, node: Binary, left: Number, right: Number, what: str) -> None:
        if left != right and not is_zero(node.left) and not is_zero(node.right):
            self.unequal(node, left, right, f"are compared: {what} like with like")

    def unequal(self, node: Node, left: Number, right: Number, what: str) -> NoReturn:
        hint = "Bring both to one kind."
        if NUMBER in (left.dimension, right.dimension):
            quantity = right.dimension if left.dimension == NUMBER else left.dimension
            units = [name for name, unit in CONSTANTS.items() if unit.dimension == quantity]
            if units:
                hint = f"Give the plain number a unit, as in 1.5 * {units[-1] if 'inch' not in units else 'inch'}."
        self.wrong(node, f"{_capital(describe(left))} and {describe(right)} {what}.", hint)

    def words(self, left: Node, left_kind: Word, right: Node, right_kind: Word) -> None:
        """Refuses two words that can never be equal."""
        if not left_kind.allowed or not right_kind.allowed or set(left_kind.allowed) & set(right_kind.allowed):
            return
        node, kind, other = (
            (left, left_kind, right_kind) if isinstance(left, Quoted) else (right, right_kind, left_kind)
        )
        if not isinstance(node, Quoted):
            self.wrong(
                node,
                f"These two are never the same word: one is {describe(left_kind)}, the other {describe(right_kind)}.",
                "",
            )
        near = nearest(kind.allowed[0], other.allowed)
        hint = f'Did you mean "{near}"? ' if near else ""
        self.wrong(node, f'"{kind.allowed[0]}" cannot occur here.', f"{hint}Allowed: {listed(other.allowed)}.")

    def wrong(self, node: Node, message: str, hint: str) -> NoReturn:
        raise BadExpression(message, node.start, node.end, hint)


def _capital(sentence: str) -> str:
    return sentence[0].upper() + sentence[1:]
