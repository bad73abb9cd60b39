"""Formulas as they are printed, and worked again from what was printed."""

from __future__ import annotations

import math

import pytest
from expression_maker import NAMES, UNIT_VALUES, Maker

from plumbrule.language import BadExpression, CannotWork, Value, compile_, expression, parse, rework, show
from plumbrule.language.nodes import walk


@pytest.mark.parametrize(
    ("text", "values", "shown"),
    [
        ("factor * diameter", {"factor": "1.5", "diameter": "8.73 mm"}, "1.5 × 8.73 mm"),
        ("factor * diameter", {}, "factor × diameter"),
        ("((a) * (b)) + c", {}, "a × b + c"),
        ("a * (b + c)", {}, "a × (b + c)"),
        ("a - (b - c)", {}, "a − (b − c)"),
        ("(a - b) - c", {}, "a − b − c"),
        ("a / (b / c)", {}, "a / (b / c)"),
        ("a / (b * c)", {}, "a / (b × c)"),
        ("(a || b) && (c || d)", {}, "(a or b) and (c or d)"),
        ("a && (b && c)", {}, "a and b and c"),
        ("!(a == b)", {}, "not (a = b)"),
        ('leg != "wall" && a >= 1.50', {"leg": '"seat"', "a": "1.2"}, '"seat" ≠ "wall" and 1.2 ≥ 1.50'),
        ("a - b", {"a": "-3", "b": "-4"}, "-3 − (-4)"),
        ("-a", {"a": "-4"}, "−(-4)"),
        ("2 * a", {"a": "2-1/2 in"}, "2 × (2-1/2 in)"),
        ("a + b", {"a": "2-1/2 in", "b": "1/4 in"}, "2-1/2 in + 1/4 in"),
        ("a - b", {"a": "2-1/2 in", "b": "1/4 in"}, "2-1/2 in − 1/4 in"),
        ("p / (a * b)", {"p": "250 lbf", "a": "2 in", "b": "3 in"}, "250 lbf / (2 in × 3 in)"),
        ("min(a, 3 * (b))", {"b": "7"}, "min(a, 3 × 7)"),
        ("(p ? a : b) * 2", {}, "(p ? a : b) × 2"),
        ("p ? a : (q ? b : c)", {}, "p ? a : q ? b : c"),
        ("xs.all(x, x > a)", {"x": "9", "a": "3 mm", "xs": "[4 mm, 5 mm]"}, "[4 mm, 5 mm].all(x, x > 3 mm)"),
        ("a in [1, (2)]", {"a": "3"}, "3 in [1, 2]"),
        ("1.5 * inch", {}, "1.5 × inch"),
    ],
)
def test_shown(text: str, values: dict[str, str], shown: str) -> None:
    assert show(parse(text), values) == shown


@pytest.mark.parametrize(
    ("formula", "values", "shown"),
    [
        ("d^2 * pi / 4", {"d": "0.227 in"}, "(0.227 in)^2 × pi / 4"),
        ("(a + b)^2", {}, "(a + b)^2"),
        ("(-a)^2", {}, "(−a)^2"),
        ("-a^2", {"a": "3"}, "−3^2"),
        ("a^-b", {}, "a^−b"),
        ("(a^b)^c", {}, "(a^b)^c"),
        ("sqrt(g^2 + 8 * A * M)", {"g": "0.5"}, "sqrt(0.5^2 + 8 × A × M)"),
    ],
)
def test_formulas_shown(formula: str, values: dict[str, str], shown: str) -> None:
    assert show(parse(formula, formula=True), values) == shown


def printed(value: Value) -> str:
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, str):
        return f'"{value}"'
    if isinstance(value, tuple):
        return f"[{', '.join(map(printed, value))}]"
    return repr(value)


def test_a_shown_expression_worked_again_gives_the_same() -> None:
    """Brackets left out and signs put in must not change what is said, whatever the numbers are."""
    maker = Maker(seed=11)
    compared = 0
    for _ in range(4000):
        text = f"({maker.truth().ours}) ? 1 : 2"
        if len(text) > 300:
            continue
        values = maker.values(missing=0.0)
        made = expression(text, NAMES)
        try:
            expected = made.work(values)
        except CannotWork:
            continue
        shown = show(made.node, {name: printed(value) for name, value in values.items()})
        if len(shown) > 400:
            continue
        compared += 1
        assert rework(shown, UNIT_VALUES) == expected, (text, shown)
    assert compared > 2000


def test_no_bracket_is_shown_that_could_be_left_out() -> None:
    maker = Maker(seed=13)
    brackets = 0
    for _ in range(600):
        text = maker.truth().ours
        if len(text) > 300:
            continue
        shown = show(parse(text), {})
        node = parse(shown, formula=True)
        for opening, sign in enumerate(shown):
            if sign != "(" or (opening and (shown[opening - 1].isalnum())):
                continue
            if shown[opening - 1 : opening + 2] == "−(−":  # two signs never stand side by side
                continue
            depth, closing = 1, opening
            while depth:
                closing += 1
                depth += {"(": 1, ")": -1}.get(shown[closing], 0)
            brackets += 1
            without = f"{shown[:opening]} {shown[opening + 1 : closing]} {shown[closing + 1 :]}"
            try:
                other = parse(without, formula=True)
            except BadExpression:
                continue
            assert kinds(other) != kinds(node), (shown, without)
    assert brackets > 300


def kinds(node: object) -> list[object]:
    """What there is in the tree and in which order it is worked, without its places."""
    return [
        (type(part).__name__, getattr(part, "operator", None), getattr(part, "name", None))
        for part in walk(node)  # type: ignore[arg-type]
    ]


def test_rework_of_a_screw_in_a_stud_through_a_lining() -> None:
    """Yield mode IV with a gap, numbers of a 1/4 in lag through half an inch of board (form of the AWC TR12
    general dowel equations, from memory). Worked by hand: A = 1/39498 + 1/2134 = 4.93921e-4, 8 A M = 0.462310,
    root of 0.712310 = 0.843985, P = 0.343985 / 9.87842e-4 = 348.2 lbf."""
    formula = "(−g + sqrt(g^2 + 8 × A × M)) / (2 × A)"
    numbers = {"g": 0.5, "A": 1 / (2 * 19749) + 1 / (2 * 1067), "M": 117.0}
    assert rework(formula, numbers) == pytest.approx(348.2, abs=0.05)


@pytest.mark.parametrize(
    ("formula", "numbers", "value"),
    [
        ("b * h^3 / 12", {"b": 2.0, "h": 3.0}, 4.5),
        ("sqrt(a^2 + b^2)", {"a": 3.0, "b": 4.0}, 5.0),
        ("sin(alpha)", {"alpha": 30.0}, 0.5),
        ("cos(α)^2 + sin(α)^2", {"α": 17.0}, 1.0),
        ("tan(45)", {}, 1.0),
        ("atan(1)", {}, 45.0),
        ("asin(0.5) + acos(0.5)", {}, 90.0),
        ("ln(exp(2)) + log(1)", {}, 2.0),
        ("abs(-3) + ceil(1.2) + floor(1.8)", {}, 6.0),
        ("min(Z_Im, Z_Is, Z_II, Z_IV)", {"Z_Im": 4.0, "Z_Is": 3.0, "Z_II": 2.0, "Z_IV": 5.0}, 2.0),
        ("max(a, b, 7)", {"a": 1.0, "b": 2.0}, 7.0),
        ("Z' / 2 + W′", {"Z'": 4.0, "W′": 1.0}, 3.0),
        ("N * mm", {"N": 3.0, "mm": 4.0}, 12.0),
        ("pi * d^2 / 4", {"d": 2.0}, math.pi),
        ("-2^2", {}, -4.0),
        ("2^3^2", {}, 512.0),
        ("2^-1", {}, 0.5),
        ("a > 1 and not (a = 3) or false ? 5 : 6", {"a": 2.0}, 5.0),
        ("1 / k", {"k": 1e-12}, 1e12),
    ],
)
def test_formulas(formula: str, numbers: dict[str, float], value: float) -> None:
    assert rework(formula, numbers) == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    "formula", ["1 / k", "sqrt(k - 1)", "ln(k)", "(k - 1)^0.5", "exp(k + 1000)", "asin(k + 2)", "k > 1"]
)
def test_a_formula_without_a_value_says_so(formula: str) -> None:
    with pytest.raises(CannotWork):
        rework(formula, {"k": 0.0})


def test_a_huge_power_is_refused_at_once() -> None:
    with pytest.raises(CannotWork):
        rework("9^9^9^9^9", {})


def test_a_symbol_without_a_number_is_named() -> None:
    with pytest.raises(BadExpression, match=r'"D" has no number.') as caught:
        rework("Z_D / D", {"Z_D": 2.0})
    assert (caught.value.start, caught.value.end) == (6, 7)


@pytest.mark.parametrize(
    "text", ["a^2 > 1", "sqrt(a) > 1", "sin(a) > 0", "a × 2 > 1", "Z' > 1", "α > 1", "a = 1", "not a"]
)
def test_formula_signs_are_refused_in_a_rule(text: str) -> None:
    parse(text, formula=True)
    with pytest.raises(BadExpression):
        parse(text)


def test_pi_is_an_ordinary_name_in_a_rule() -> None:
    assert compile_(parse("pi"))({"pi": 3.0}) == 3.0
