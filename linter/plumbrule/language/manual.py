"""What the rule language leaves out of CEL, and where it differs, in the sentences the manual prints."""

from __future__ import annotations

SUBSET = (
    'numbers · "words" · true false · names · units as factors · + - * / · < <= > >= == != in · && || ! · '
    "test ? yes : no · [lists] · size(list) · min(a, b) max(a, b) · list.all(x, …) · list.exists(x, …)"
)

DEVIATIONS: tuple[str, ...] = (
    "There is one kind of number. CEL keeps whole numbers and decimals apart, so that 2 * diameter would be an error.",
    "Numbers have dimensions, and words a list of what they may be. What can never be true, such as a length compared "
    "with a force or a word that cannot occur, is refused when the rulebook is read.",
    "Two numbers within 1e-9 of the larger, or within 1e-9 where both are below 1, are equal; < and > begin beyond "
    "that.",
    "What a plan leaves out is unknown. It spreads through an expression as an error does in CEL: false && unknown is "
    "false, true || unknown is true, anything else is unknown, and the rule is not inspected.",
    "Dividing by zero, or by what equals zero within the tolerance, and any result that is not finite fail the rule. "
    "CEL gives infinity, or, on one side of && or ||, may overlook it.",
    "min and max of two numbers belong to the language; CEL has them in an extension, as math.least and math.greatest.",
    "Comparisons are not chained: write a < b && b < c. CEL reads a == b == c as (a == b) == c.",
    "Lists are not compared with each other, and are not empty when written out. They hold numbers, words or truths.",
    "all and exists are used once in an expression. There is no map, filter, exists_one or has.",
    "Words are compared with == != and in. They have no order, no length, no escapes, no functions and no patterns.",
    "There are no maps, no picking of items by number, no fields of fields, no remainder, no dates and no conversions.",
    "An expression has at most 400 characters and 24 levels.",
)
