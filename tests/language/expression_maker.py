"""Random well-typed expressions, each written twice: in the rule language and in CEL.

Both texts have the same shape and the same brackets; they differ only where the language differs on purpose. CEL keeps
whole numbers and decimals apart, so its numbers get a point; `size` gives it a whole number, so that is converted; and
`min` and `max` are `math.least` and `math.greatest` there.
"""

from __future__ import annotations

import random
from dataclasses import dataclass

from plumbrule.language import ListOf, Number, Truth, Type, Value, Word
from plumbrule.reading.units import CONSTANTS, FORCE, LENGTH, NUMBER, STRESS, TIME, Dimension

NAMES: dict[str, Type] = {
    "edge": Number(LENGTH),
    "bite": Number(LENGTH),
    "gap": Number(LENGTH),
    "pull": Number(FORCE),
    "side": Number(FORCE),
    "bearing": Number(STRESS),
    "cure": Number(TIME),
    "factor": Number(NUMBER),
    "count": Number(NUMBER),
    "leg": Word(("wall", "seat", "none")),
    "facing": Word(("up", "down", "wall")),
    "label": Word(),
    "dry": Truth(),
    "found": Truth(),
    "marks": ListOf(Number(LENGTH)),
    "rows": ListOf(Word(("wall", "seat"))),
    "signed": ListOf(Truth()),
}
DIMENSIONS = (LENGTH, LENGTH, FORCE, STRESS, TIME, NUMBER, NUMBER)
UNITS = {LENGTH: ("mm", "inch", "foot"), FORCE: ("N", "lbf"), STRESS: ("MPa", "psi"), TIME: ("hour", "day")}
_CHOICE, _OR, _AND, _COMPARISON, _SUM, _PRODUCT, _SIGN, _ATOM = range(8)


@dataclass(frozen=True, slots=True)
class Pair:
    """`ours` and `cel` say the same; `level` is how tightly the text holds together."""

    ours: str
    cel: str
    level: int


class Maker:
    """Grows expressions from a seeded source, so that every run sees the same ones."""

    def __init__(self, seed: int) -> None:
        self.random = random.Random(seed)
        self.macro_left = True
        self.item: tuple[str, Type] | None = None

    def truth(self, depth: int = 4) -> Pair:
        """An expression that is true or false."""
        self.macro_left, self.item = True, None
        return self._truth(depth)

    def number(self, dimension: Dimension, depth: int = 4) -> Pair:
        """An expression of that dimension."""
        self.macro_left, self.item = True, None
        return self._number(dimension, depth)

    def values(self, missing: float) -> dict[str, Value]:
        """A value for each name; each is left out with the probability `missing`."""
        return {name: self._value(kind) for name, kind in NAMES.items() if self.random.random() >= missing}

    def _value(self, kind: Type) -> Value:
        if isinstance(kind, Number):
            return self.random.randint(-8, 40) / 4
        if isinstance(kind, Word):
            return self.random.choice(kind.allowed or ("lag", "seat", "wall"))
        if isinstance(kind, Truth):
            return self.random.random() < 0.5
        return tuple(self._value(kind.item) for _ in range(self.random.randint(0, 4)))  # type: ignore[misc]

    def _at(self, pair: Pair, level: int) -> Pair:
        """Brackets where the text would fall apart, and now and then where it would not."""
        if pair.level >= level and self.random.random() > 0.05:
            return pair
        return Pair(f"({pair.ours})", f"({pair.cel})", _ATOM)

    def _join(self, operator: str, left: Pair, right: Pair, level: int) -> Pair:
        a = self._at(left, level + (level == _COMPARISON))
        b = self._at(right, level + 1)
        return Pair(f"{a.ours} {operator} {b.ours}", f"{a.cel} {operator} {b.cel}", level)

    def _choose(self, test: Pair, yes: Pair, no: Pair) -> Pair:
        test, yes, no = self._at(test, _OR), self._at(yes, _OR), self._at(no, _CHOICE)
        return Pair(f"{test.ours} ? {yes.ours} : {no.ours}", f"{test.cel} ? {yes.cel} : {no.cel}", _CHOICE)

    def _plain(self, text: str, cel: str | None = None) -> Pair:
        return Pair(text, text if cel is None else cel, _ATOM)

    def _named(self, kind: Type) -> Pair:
        names = [name for name, own in NAMES.items() if own == kind]
        if self.item is not None and self.item[1] == kind:
            names += [self.item[0]] * 3
        return self._plain(self.random.choice(names))

    def _literal(self) -> Pair:
        whole = self.random.randint(1, 20)
        if self.random.random() < 0.5:
            return self._plain(str(whole), f"{whole}.0")
        return self._plain(f"{whole}.25")

    def _number(self, dimension: Dimension, depth: int) -> Pair:
        pick = self.random.randint(0, 11) if depth > 0 else self.random.randint(0, 3)
        if pick <= 2:
            return self._named(Number(dimension))
        if pick == 3:
            if dimension == NUMBER:
                return self._literal()
            unit = self._plain(self.random.choice(UNITS[dimension]))
            return self._join("*", self._literal(), unit, _PRODUCT)
        a = self._number(dimension, depth - 1)
        if pick in (4, 5):
            return self._join("+-"[pick - 4], a, self._number(dimension, depth - 1), _SUM)
        if pick in (6, 7):
            return self._join("*/"[pick - 6], a, self._number(NUMBER, depth - 1), _PRODUCT)
        if pick == 8:
            inner = self._at(a, _SIGN)
            return Pair(f"-{inner.ours}", f"-{inner.cel}", _SIGN)
        if pick == 9:
            b = self._number(dimension, depth - 1)
            ours, cel = self.random.choice((("min", "math.least"), ("max", "math.greatest")))
            return self._plain(f"{ours}({a.ours}, {b.ours})", f"{cel}({a.cel}, {b.cel})")
        if pick == 10:
            return self._choose(self._truth(depth - 2), a, self._number(dimension, depth - 1))
        if dimension == NUMBER:
            if self.random.random() < 0.5:
                listed = self._list(self._kind(), depth - 1)
                return self._plain(f"size({listed.ours})", f"double(size({listed.cel}))")
            other = self.random.choice(DIMENSIONS)
            return self._join("/", self._number(other, depth - 1), self._number(other, depth - 1), _PRODUCT)
        return a

    def _kind(self) -> Number | Word | Truth:
        return self.random.choice((Number(LENGTH), Word(("wall", "seat")), Truth()))

    def _list(self, kind: Number | Word | Truth, depth: int) -> Pair:
        if self.random.random() < 0.6:
            return self._named(ListOf(kind))
        items = [self._one(kind, depth - 1) for _ in range(self.random.randint(1, 3))]
        return self._plain(f"[{', '.join(item.ours for item in items)}]", f"[{', '.join(item.cel for item in items)}]")

    def _one(self, kind: Number | Word | Truth, depth: int) -> Pair:
        if isinstance(kind, Number):
            return self._number(kind.dimension, depth)
        if isinstance(kind, Truth):
            return self._truth(depth)
        return self._word(kind)

    def _word(self, kind: Word) -> Pair:
        if self.item is not None and self.item[1] == kind:
            return self._plain(self.item[0])
        return (
            self._plain("leg") if self.random.random() < 0.1 else self._plain(f'"{self.random.choice(kind.allowed)}"')
        )

    def _truth(self, depth: int) -> Pair:
        pick = self.random.randint(0, 12) if depth > 0 else self.random.choice((0, 1, 9))
        if pick == 0:
            return (
                self._named(Truth())
                if self.random.random() < 0.8
                else self._plain(self.random.choice(("true", "false")))
            )
        if pick == 1:
            return self._about_words()
        if pick in (2, 3, 4):
            operator = self.random.choice(("&&", "||"))
            return self._join(
                operator, self._truth(depth - 1), self._truth(depth - 1), _AND if operator == "&&" else _OR
            )
        if pick == 5:
            inner = self._at(self._truth(depth - 1), _ATOM)
            return Pair(f"!{inner.ours}", f"!{inner.cel}", _SIGN)
        if pick == 6:
            return self._choose(self._truth(depth - 1), self._truth(depth - 1), self._truth(depth - 1))
        if pick == 7:
            kind = self._kind()
            # Two words written out would be refused: the answer stands in the text.
            one = self._plain("leg") if isinstance(kind, Word) else self._one(kind, depth - 1)
            return self._join("in", one, self._list(kind, depth - 1), _COMPARISON)
        if pick == 8:
            operator = self.random.choice(("==", "!="))
            return self._join(operator, self._truth(depth - 1), self._truth(depth - 1), _COMPARISON)
        if pick == 12 and self.macro_left and self.item is None:
            return self._macro(depth)
        dimension = self.random.choice(DIMENSIONS)
        operator = self.random.choice(("<", "<=", ">", ">=", "==", "!="))
        left = self._number(dimension, depth - 1)
        right = self._plain("0", "0.0") if self.random.random() < 0.1 else self._number(dimension, depth - 1)
        return self._join(operator, left, right, _COMPARISON)

    def _about_words(self) -> Pair:
        operator = self.random.choice(("==", "!="))
        texts = (
            f'leg {operator} "wall"',
            f'"seat" {operator} leg',
            f"leg {operator} facing",
            f"label {operator} leg",
            'leg in ["wall", "seat"]',
            "leg in rows",
            '"wall" in rows',
            f'(dry ? leg : facing) {operator} "down"',
            *self._about_item(operator),
        )
        text = self.random.choice(texts)
        return Pair(text, text, _COMPARISON)

    def _about_item(self, operator: str) -> tuple[str, ...]:
        if self.item is None or not isinstance(self.item[1], Word):
            return ()
        return (f'{self.item[0]} {operator} "seat"', f"leg {operator} {self.item[0]}") * 4

    def _macro(self, depth: int) -> Pair:
        self.macro_left = False
        kind = self._kind()
        listed = self._named(ListOf(kind)) if isinstance(kind, Word) else self._list(kind, 1)
        self.item = ("item", kind)
        body = self._truth(depth - 1)
        self.item = None
        name = self.random.choice(("all", "exists"))
        return self._plain(f"{listed.ours}.{name}(item, {body.ours})", f"{listed.cel}.{name}(item, {body.cel})")


UNIT_VALUES = {name: unit.factor for name, unit in CONSTANTS.items()}
