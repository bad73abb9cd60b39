"""What may be called by name: three functions in a rule, and the ordinary ones in a printed formula."""

from __future__ import annotations

import math
from collections.abc import Callable

from plumbrule.language.closures import items_of

RULE_FUNCTIONS = ("size", "min", "max")


def _of_degrees(work: Callable[[float], float]) -> Callable[[float], float]:
    return lambda angle: work(math.radians(angle))


def _in_degrees(work: Callable[[float], float]) -> Callable[[float], float]:
    return lambda ratio: math.degrees(work(ratio))


# Angles are in degrees, as everywhere inside; "log" is the natural logarithm, like "ln".
FUNCTIONS: dict[str, Callable[..., float]] = {
    "size": lambda value: len(items_of(value)), "min": min, "max": max, "sqrt": math.sqrt, "exp": math.exp,
    "ln": math.log, "log": math.log, "abs": abs, "ceil": math.ceil, "floor": math.floor,
    "sin": _of_degrees(math.sin), "cos": _of_degrees(math.cos), "tan": _of_degrees(math.tan),
    "asin": _in_degrees(math.asin), "acos": _in_degrees(math.acos), "atan": _in_degrees(math.atan),
}  # fmt: skip
FORMULA_FUNCTIONS = tuple(FUNCTIONS)
