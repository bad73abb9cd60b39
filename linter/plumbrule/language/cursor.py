"""A place in the tokens of an expression, and the sentences for what stands there and should not."""

from __future__ import annotations

from plumbrule.language.faults import BadExpression
from plumbrule.language.scan import Token, tokens

# How the units of a plan are written in a rule.
_TRADE = {
    "in": "inch", "inches": "inch", "ft": "foot", "feet": "foot", "lb": "pound", "lbs": "pound", "h": "hour",
    "hours": "hour", "min": "minute", "minutes": "minute", "days": "day", "deg": "degree", "degrees": "degree",
}  # fmt: skip


class Cursor:
    """`level` is how deep in the grammar the reading is, `macros` how many `all` and `exists` were met."""

    def __init__(self, text: str, formula: bool) -> None:
        self.text = text
        self.formula = formula
        self.tokens = tokens(text, formula)
        self.at = 0
        self.level = 0
        self.macros = 0

    @property
    def next(self) -> Token:
        return self.tokens[self.at]

    def takes(self, sign: str) -> bool:
        if self.next.kind == "sign" and self.next.text == sign:
            self.at += 1
            return True
        return False

    def expect(self, sign: str, where: str, opening: Token | None = None) -> Token:
        token = self.next
        if self.takes(sign):
            return token
        if opening is not None and token.kind == "end":
            raise BadExpression(
                f'The "{opening.text}" is not closed.', opening.start, opening.end, f'Write "{sign}" where it ends.'
            )
        fault = self.unexpected(token)
        raise BadExpression(fault.message, token.start, token.end, fault.hint or f'Write "{sign}" {where}.')

    def unexpected(self, token: Token) -> BadExpression:
        before = self.tokens[self.at - 1] if self.at and self.tokens[self.at - 1] is not token else None
        if token.kind == "end":
            return BadExpression("The expression stops in the middle.", token.start, token.end, "Write the rest of it.")
        if before is not None and before.kind == "number" and token.kind == "name":
            unit = _TRADE.get(token.text, token.text)
            return BadExpression(
                f'"{token.text}" stands right after a number.', before.start, token.end,
                f'Write "{before.text} * {unit}".',
            )  # fmt: skip
        written = self.text[token.start : token.end]
        return BadExpression(f"{written} cannot stand here.", token.start, token.end, "")
