"""Does an expression mean anything? Dimensions, words and names are settled here, before any plan is read."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from plumbrule.language.agree import capital, common, compared, joined, refuse, unequal, words_meet
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
from plumbrule.reading.units import CONSTANTS

# What a carpenter may write for a unit of the language.
_MEANT = {
    "inches": "inch", "ft": "foot", "feet": "foot", "lb": "pound", "lbs": "pound", "h": "hour", "hours": "hour",
    "minutes": "minute", "days": "day", "deg": "degree", "degrees": "degree", "n": "N", "kn": "kN", "mpa": "MPa",
    "pounds": "pound",
}  # fmt: skip


def check(node: Node, names: Mapping[str, Type]) -> Type:
    """The kind of value `node` has when `names` are what it may read.

    Raises BadExpression at the first place that cannot mean anything: an unknown name, quantities of unequal
    dimension, a word that cannot occur, an operand of the wrong kind. Raises ValueError when a name is a unit.
    """
    refuse_unit_names(names)
    return _Checker(names).kind(node)


def check_as(node: Node, names: Mapping[str, Type], wanted: Type) -> Type:
    """Like `check`, and the value must be of the kind `wanted`: a truth for `when` and `that`, the dimension of the
    measure for a bound (a 0 written out is of every dimension)."""
    kind = check(node, names)
    if common(node, kind, wanted) is None:
        refuse(node, f"This is {describe(kind)}.", f"What belongs here is {describe(wanted)}.")
    return kind


def refuse_unit_names(names: Iterable[str]) -> None:
    """Raises ValueError for a field or a setting that is named like a unit of the language, which it would hide."""
    taken = CONSTANTS.keys() & names
    if taken:
        raise ValueError(f"{listed(sorted(taken), 'and')} is a unit of the rule language: choose another name.")


class _Checker:
    def __init__(self, names: Mapping[str, Type]) -> None:
        self.names = dict(names)

    def kind(self, node: Node) -> Type:
        if isinstance(node, Name):
            return self.name(node)
        if isinstance(node, Numeral):
            return Number()
        if isinstance(node, UnitName):
            return Number(CONSTANTS[node.name].dimension)
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
        hint = f'Did you mean "{near}"?' if near else "No name can be used here."
        if near is None and self.names:
            hint = f"There are {listed(sorted(self.names), 'and')}."
        raise BadExpression(f'There is no "{node.name}" here.', node.start, node.end, hint)

    def number(self, node: Node, where: str) -> Number:
        kind = self.kind(node)
        if not isinstance(kind, Number):
            hint = 'Compare words with "==" or "in".' if isinstance(kind, Word) else "Put a number there."
            refuse(node, f"A number belongs {where}, and this is {describe(kind)}.", hint)
        return kind

    def truth(self, node: Node, where: str) -> Truth:
        kind = self.kind(node)
        if not isinstance(kind, Truth):
            refuse(node, f"{where}, and this is {describe(kind)}.", "Write a comparison.")
        return kind

    def unary(self, node: Unary) -> Type:
        if node.operator == "-":
            return self.number(node.operand, 'after "-"')
        kind = self.kind(node.operand)
        if not isinstance(kind, Truth):
            hint = "For a whole comparison put brackets, !(a == b), or write a != b."
            refuse(node, f'"!" turns true into false, and this is {describe(kind)}.', hint)
        return kind

    def binary(self, node: Binary) -> Type:
        operator = node.operator
        if operator in ("&&", "||"):
            self.truth(node.left, f'"{operator}" joins what is true or false')
            return self.truth(node.right, f'"{operator}" joins what is true or false')
        if operator == "in":
            return self.within(node)
        if operator in ("==", "!="):
            return self.equality(node)
        a, b = self.number(node.left, f'before "{operator}"'), self.number(node.right, f'after "{operator}"')
        left, right = (node.left, a), (node.right, b)
        if operator == "*":
            return Number(a.dimension.times(b.dimension))
        if operator == "/":
            if is_zero(node.right):
                refuse(node.right, "Nothing can be divided by zero.", "Take the division out.")
            return Number(a.dimension.over(b.dimension))
        if operator == "^":
            refuse(node, "A rule has no powers.", "Write x * x.")
        if operator in ("+", "-"):
            if a != b:
                unequal(node, left, right, "{b} is added to {a}." if operator == "+" else "{b} is taken from {a}.")
            return a
        compared(node, left, right)
        return Truth()

    def equality(self, node: Binary) -> Type:
        left, right = self.kind(node.left), self.kind(node.right)
        for side, kind in ((node.left, left), (node.right, right)):
            if isinstance(kind, ListOf):
                refuse(side, "A list is not compared as a whole.", "Use .all(x, …), .exists(x, …) or size(…).")
        self.alike(node, (node.left, left), (node.right, right))
        return Truth()

    def alike(self, node: Node, left: tuple[Node, Type], right: tuple[Node, Type]) -> None:
        a, b = left[1], right[1]
        if isinstance(a, Word) and isinstance(b, Word):
            words_meet(left[0], a, right[0], b)
        elif isinstance(a, Number) and isinstance(b, Number):
            compared(node, (left[0], a), (right[0], b))
        elif type(a) is not type(b):
            refuse(node, f"{capital(describe(a))} is never {describe(b)}.", "Compare like with like.")

    def within(self, node: Binary) -> Type:
        left, right = self.kind(node.left), self.kind(node.right)
        if not isinstance(right, ListOf):
            refuse(node.right, f'A list belongs after "in", and this is {describe(right)}.', 'Write x in ["a", "b"].')
        if isinstance(left, ListOf):
            refuse(node.left, 'Before "in" stands a list.', "Write .all(x, x in …) or .exists(x, x in …).")
        if isinstance(node.right, Several):
            for item in node.right.items:
                self.alike(item, (node.left, left), (item, self.kind(item)))
        else:
            self.alike(node, (node.left, left), (node.right, right.item))
        return Truth()

    def choice(self, node: Choice) -> Type:
        self.truth(node.test, 'Before "?" stands what is true or false')
        return joined(node, ((node.yes, self.kind(node.yes)), (node.no, self.kind(node.no))), "in a choice")

    def several(self, node: Several) -> Type:
        if not node.items:
            refuse(node, "The list is empty.", "Nothing is ever in it: write the items, or take it out.")
        kinds = [(item, self.kind(item)) for item in node.items]
        for item, kind in kinds:
            if isinstance(kind, ListOf):
                refuse(item, "A list stands inside a list.", "Write one list.")
        kind = joined(node, kinds, "in a list")
        assert not isinstance(kind, ListOf)
        return ListOf(kind)

    def call(self, node: Call) -> Type:
        if node.function == "size":
            kind = self.kind(node.arguments[0])
            if not isinstance(kind, ListOf):
                refuse(node, f'"size" counts a list, and this is {describe(kind)}.', "Give it a list.")
            return Number()
        if node.function not in ("min", "max"):
            refuse(node, f'"{node.function}" belongs to formulas.', "Judge a fact that has been worked out.")
        kinds = [(argument, self.number(argument, f'in "{node.function}"')) for argument in node.arguments]
        return joined(node, kinds, f'in "{node.function}"')

    def macro(self, node: Macro) -> Type:
        over = self.kind(node.over)
        if not isinstance(over, ListOf):
            refuse(node.over, f'"{node.kind}" goes through a list, and this is {describe(over)}.', "Name a list.")
        if node.item in self.names:
            refuse(node, f'"{node.item}" is already a name here.', "Give the item another name.")
        self.names[node.item] = over.item
        kind = self.truth(node.body, f'"{node.kind}" asks of each item what is true or false')
        del self.names[node.item]
        return kind
