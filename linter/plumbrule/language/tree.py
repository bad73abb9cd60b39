"""Text to tree: the grammar of a named subset of CEL, and of the formulas that are printed under a finding."""

from __future__ import annotations

import math
from dataclasses import replace

from plumbrule.language.cursor import Cursor
from plumbrule.language.faults import BadExpression, caret
from plumbrule.language.functions import FORMULA_FUNCTIONS, RULE_FUNCTIONS
from plumbrule.language.nodes import (
    COMPARISONS,
    MACROS,
    MOST_CHARACTERS,
    MOST_LEVELS,
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
    parts,
)
from plumbrule.language.scan import Token
from plumbrule.reading.units import CONSTANTS

__all__ = ["FORMULA_FUNCTIONS", "RULE_FUNCTIONS", "BadExpression", "Node", "caret", "parse"]

# The levels of CEL's grammar, loosest first; "?:" stands below them all.
_LEVELS: dict[str, int] = {
    "||": 1, "&&": 2, **dict.fromkeys(COMPARISONS, 3), "+": 4, "-": 4, "*": 5, "/": 5,
}  # fmt: skip
_COMPARISON = 3


def parse(text: str, formula: bool = False) -> Node:
    """The tree of `text`, at most 400 characters and 24 levels deep.

    With `formula`, powers (`^`), the functions of `FORMULA_FUNCTIONS` (angles in degrees), `pi`, any letter and a
    prime in a name, and the signs `× · − ≤ ≥ ≠ =` are read as well, and units are ordinary names: that is for
    formulas written by mechanics, never for rules. Raises BadExpression.
    """
    if len(text) > MOST_CHARACTERS:
        raise BadExpression(
            f"An expression may have {MOST_CHARACTERS} characters, and this one has {len(text)}.",
            MOST_CHARACTERS,
            len(text),
            "Judge a fact that has been worked out, or write two rules.",
        )
    node = _Parser(text, formula).whole()
    _measure_depth(node)
    return node


def _measure_depth(root: Node) -> None:
    waiting = [(root, 1)]
    while waiting:
        node, level = waiting.pop()
        if level > MOST_LEVELS:
            raise _too_deep(node.start, node.end)
        waiting.extend((part, level + 1) for part in parts(node))


def _too_deep(start: int, end: int) -> BadExpression:
    return BadExpression(
        f"The expression is more than {MOST_LEVELS} levels deep.",
        start,
        end,
        'Write fewer brackets and shorter chains: x in ["a", "b"] instead of x == "a" || x == "b".',
    )


class _Parser(Cursor):
    """One pass by precedence climbing. `level` bounds the recursion: no more than a dozen frames each."""

    def whole(self) -> Node:
        if self.next.kind == "end":
            raise BadExpression("The expression is empty.", 0, len(self.text), "Write what the rule demands.")
        node = self.choice()
        if self.next.kind != "end":
            raise self.unexpected(self.next)
        return node

    def choice(self) -> Node:
        """One expression, brackets included: the only way down, so the only place that counts levels."""
        self.level += 1
        if self.level > MOST_LEVELS:
            raise _too_deep(self.next.start, self.next.end)
        node = self.chain(1)
        if self.takes("?"):
            yes = self.chain(1)
            if self.next.text == "?" and self.next.kind == "sign":
                raise BadExpression(
                    'A choice stands inside another, before its ":".', yes.start, self.next.end,
                    "Put brackets around the inner one.",
                )  # fmt: skip
            self.expect(":", 'after the value that holds when the test before "?" is true')
            no = self.choice()
            node = Choice(node, yes, no, node.start, no.end)
        self.level -= 1
        return node

    def chain(self, weakest: int) -> Node:
        node = self.unary()
        compared: Binary | None = None
        while True:
            operator = self.operator()
            level = _LEVELS.get(operator, 0)
            if level < weakest:
                return node
            sign = self.next
            self.at += 1
            if operator == "in" and self.next.kind in ("end", "sign") and self.next.text not in ("[", "("):
                raise BadExpression(
                    '"in" asks whether something is in a list, and no list follows.', sign.start, sign.end,
                    'For inches write "* inch".',
                )  # fmt: skip
            if level == _COMPARISON and compared is not None:
                raise self.chained(compared, sign)
            right = self.chain(level + 1)
            node = Binary(operator, node, right, node.start, right.end)
            compared = node if level == _COMPARISON else None

    def operator(self) -> str:
        token = self.next
        if token.kind == "sign" or (token.kind == "name" and token.text == "in"):
            return token.text
        return ""

    def chained(self, first: Binary, sign: Token) -> BadExpression:
        middle = self.text[first.right.start : first.right.end]
        return BadExpression(
            "Comparisons cannot be chained.",
            first.start,
            sign.end,
            f"Write {self.text[first.start : first.end]} && {middle} {self.text[sign.start : sign.end]} …",
        )

    def unary(self) -> Node:
        token = self.next
        if token.kind != "sign" or token.text not in ("-", "!"):
            return self.power()
        self.at += 1
        signs = [token]
        while self.takes(token.text):
            signs.append(self.tokens[self.at - 1])
            if len(signs) > MOST_LEVELS:
                raise _too_deep(token.start, self.next.end)
        node = self.power()
        for sign in reversed(signs):
            node = Unary(sign.text, node, sign.start, node.end)
        return node

    def power(self) -> Node:
        node = self.member()
        if self.formula and self.takes("^"):
            self.level += 1
            if self.level > MOST_LEVELS:
                raise _too_deep(node.start, self.next.end)
            exponent = self.unary()
            self.level -= 1
            return Binary("^", node, exponent, node.start, exponent.end)
        return node

    def member(self) -> Node:
        node = self.primary()
        while self.takes("."):
            point = self.tokens[self.at - 1]
            if isinstance(node, Numeral):
                raise BadExpression("A point stands where none can.", point.start, point.end, "Write 1.0 or 0.5.")
            node = self.macro(node)
        if self.next.kind == "sign" and self.next.text == "[":
            raise BadExpression(
                "An item of a list cannot be picked by its number.", self.next.start, self.next.end,
                "Use .all(x, …) or .exists(x, …), or judge a field of its own.",
            )  # fmt: skip
        return node

    def macro(self, over: Node) -> Node:
        kind = self.next
        if kind.kind != "name" or kind.text not in MACROS:
            raise BadExpression(
                f'"{kind.text}" does not follow a point.', kind.start, kind.end,
                'Only ".all(x, …)" and ".exists(x, …)" do; a field has a plain name without points.',
            )  # fmt: skip
        self.macros += 1
        if self.macros > 1:
            raise BadExpression(
                'A second "all" or "exists" stands in one expression.', kind.start, kind.end,
                "Write two rules, or judge a fact that has been worked out.",
            )  # fmt: skip
        self.at += 1
        self.expect("(", f'after "{kind.text}"')
        item = self.next
        if item.kind != "name" or item.text in ("true", "false", "in"):
            raise BadExpression(
                f'"{kind.text}" needs a name for the item first.', item.start, item.end,
                f"Write .{kind.text}(x, x > 0).",
            )  # fmt: skip
        if item.text in CONSTANTS and not self.formula:
            raise BadExpression(f'"{item.text}" is a unit.', item.start, item.end, "Give the item another name.")
        self.at += 1
        self.expect(",", f'after the item\'s name in "{kind.text}"')
        body = self.choice()
        closing = self.expect(")", f'at the end of "{kind.text}"')
        return Macro(kind.text, over, item.text, body, over.start, closing.end)

    def primary(self) -> Node:
        token = self.next
        self.at += 1
        if token.kind == "number":
            return self.numeral(token)
        if token.kind == "word":
            return Quoted(token.text, token.start, token.end)
        if token.kind == "name" and token.text != "in":
            return self.named(token)
        if token.kind == "sign" and token.text == "(":
            inner = self.choice()
            closing = self.expect(")", "to close the bracket", token)
            return replace(inner, start=token.start, end=closing.end)
        if token.kind == "sign" and token.text == "[":
            items, closing = self.several("]", token)
            return Several(items, token.start, closing.end)
        raise self.unexpected(token)

    def named(self, token: Token) -> Node:
        if token.text in ("true", "false"):
            return Answer(token.text == "true", token.start, token.end)
        if self.next.kind == "sign" and self.next.text == "(":
            return self.call(token)
        if self.formula:
            if token.text == "pi":
                return UnitName("pi", math.pi, token.start, token.end)
        elif token.text in CONSTANTS:
            return UnitName(token.text, CONSTANTS[token.text].factor, token.start, token.end)
        return Name(token.text, token.start, token.end)

    def call(self, token: Token) -> Node:
        functions = FORMULA_FUNCTIONS if self.formula else RULE_FUNCTIONS
        if token.text not in functions:
            hint = (
                "A rule measures and compares; have the fact worked out and judge that."
                if token.text in FORMULA_FUNCTIONS
                else f"There are {', '.join(functions)}, and .all(x, …) and .exists(x, …) after a list."
            )
            raise BadExpression(f'"{token.text}" is not a function of the rule language.', token.start, token.end, hint)
        opening = self.next
        self.at += 1
        arguments, closing = self.several(")", opening)
        wanted = 2 if token.text in ("min", "max") else 1
        if len(arguments) != wanted and not (self.formula and wanted == 2 and len(arguments) > 2):
            raise BadExpression(
                f'"{token.text}" takes {("one value", "two values")[wanted - 1]}, and here it has {len(arguments)}.',
                token.start,
                closing.end,
                f"Write {token.text}({('x', 'a, b')[wanted - 1]}).",
            )
        return Call(token.text, arguments, token.start, closing.end)

    def several(self, closing: str, opening: Token) -> tuple[tuple[Node, ...], Token]:
        items: list[Node] = []
        if self.takes(closing):
            return (), self.tokens[self.at - 1]
        items.append(self.choice())
        while self.takes(","):
            items.append(self.choice())
        return tuple(items), self.expect(closing, "to close the bracket", opening)

    def numeral(self, token: Token) -> Node:
        value = float(token.text)
        if not math.isfinite(value):
            raise BadExpression(f"{token.text} is too large a number.", token.start, token.end, "Write a smaller one.")
        return Numeral(value, token.text, token.start, token.end)
