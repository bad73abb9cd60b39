"""Text to tokens, with a sentence for everything that is not part of the language."""

from __future__ import annotations

import re
from typing import NamedTuple

from plumbrule.language.faults import BadExpression

# Alternatives start with different characters or are bounded by the text limit; none repeats inside a repeat.
_RULE = re.compile(
    r"""(?P<space>[ \t\r\n]+)
      | (?P<number>(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?)
      | (?P<name>[A-Za-z_][A-Za-z0-9_]*)
      | (?P<word>"[^"\\\r\n]*"|'[^'\\\r\n]*')
      | (?P<sign><=|>=|==|!=|&&|\|\||[-+*/<>!?:.,()\[\]])
    """,
    re.VERBOSE,
)
_FORMULA = re.compile(
    r"""(?P<space>[ \t\r\n]+)
      | (?P<number>(?:[0-9]+(?:\.[0-9]+)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?)
      | (?P<name>[^\W\d]\w*['′]*)
      | (?P<word>"[^"\\\r\n]*")
      | (?P<sign><=|>=|==|!=|&&|\|\||[-+*/<>!?:.,()\[\]^×·−≤≥≠=])
    """,
    re.VERBOSE,
)
# How a printed formula is written, and what it means in the language.
_PRINTED = {
    "×": "*",
    "·": "*",
    "−": "-",
    "≤": "<=",
    "≥": ">=",
    "≠": "!=",
    "=": "==",
    "and": "&&",
    "or": "||",
    "not": "!",
}

_INSTEAD = {
    "=": 'One "=" does not compare. Write "==".',
    "&": 'Write "&&" for "and".',
    "|": 'Write "||" for "or".',
    "≤": 'Write "<=".',
    "≥": 'Write ">=".',
    "≠": 'Write "!=".',
    "×": 'Write "*".',
    "·": 'Write "*".',
    "÷": 'Write "/".',
    "−": 'Write "-".',
    "–": 'Write "-".',
    "“": 'Write straight quotes: ".',
    "”": 'Write straight quotes: ".',
    "‘": 'Write straight quotes: ".',
    "’": 'Write straight quotes: ".',
    "^": "A rule has no powers: write x * x, or judge a fact that has been worked out.",
    "%": "A rule has no remainder, and a percentage is a plain number: write 12, not 12%.",
    "{": "A rule has no maps. A list is written in square brackets.",
    "°": "Write the unit as a factor: 45 * degree.",
    "\\": "A word is written without backslashes.",
    "$": "A name is written without a sign before it.",
    "#": "A rule has no remarks: put them in the YAML around it.",
    ";": "A rule is one expression.",
}
# Reserved by CEL, so that a rule stays readable to other tools.
_RESERVED = frozenset({
    "as", "break", "const", "continue", "else", "for", "function", "if", "import", "let", "loop", "package",
    "namespace", "return", "var", "void", "while", "null",
})  # fmt: skip
_WORDS_INSTEAD = {
    "and": 'Write "&&".',
    "or": 'Write "||".',
    "not": 'Write "!", as in !(a == b), or "!=" between the two.',
    "if": "Write test ? yes : no.",
    "else": "Write test ? yes : no.",
    "null": "What is missing is never compared: a rule on it is not inspected.",
    "True": 'Write "true".',
    "False": 'Write "false".',
}


class Token(NamedTuple):
    """`kind` is number, name, word, sign or end; `text` is as written, quotes taken off a word."""

    kind: str
    text: str
    start: int
    end: int


def tokens(text: str, formula: bool) -> list[Token]:
    """The tokens of `text`, the last one of kind `end`. Raises BadExpression at the first character that fits none."""
    pattern = _FORMULA if formula else _RULE
    found: list[Token] = []
    at = 0
    while at < len(text):
        match = pattern.match(text, at)
        if match is None:
            raise _unreadable(text, at)
        kind, written, start, at = str(match.lastgroup), match.group(), at, match.end()
        if kind == "space":
            continue
        if kind == "word":
            written = written[1:-1]
        elif formula and written in _PRINTED:
            kind, written = "sign", _PRINTED[written]
        elif kind == "name" and (written in _RESERVED or written in _WORDS_INSTEAD):
            hint = _WORDS_INSTEAD.get(written, "Choose another name.")
            raise BadExpression(f'"{written}" is not part of the rule language.', start, at, hint)
        found.append(Token(kind, written, start, at))
    found.append(Token("end", "", len(text), len(text)))
    return found


def _unreadable(text: str, at: int) -> BadExpression:
    sign = text[at]
    if sign in "\"'":
        stop = min(i for i in (text.find("\n", at), len(text)) if i >= 0)
        if "\\" in text[at:stop]:
            return BadExpression("A word holds a backslash.", at, stop, _INSTEAD["\\"])
        return BadExpression("A word is not closed.", at, stop, f"Put {sign} at its end.")
    shown = sign if sign.isprintable() and not sign.isspace() else f"U+{ord(sign):04X}"
    hint = _INSTEAD.get(sign, "Take it out.")
    return BadExpression(f'"{shown}" is not part of the rule language.', at, at + 1, hint)
