"""What is read how, and what is refused with which sentence."""

from __future__ import annotations

import string
import time
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.language import BadExpression, Node, caret, parse, reads, to_data
from plumbrule.language.nodes import MOST_CHARACTERS, MOST_LEVELS, walk


def shape(node: Node) -> Any:
    """The tree without its places in the text."""

    def bare(data: Any) -> Any:
        if data and isinstance(data[0], str) and isinstance(data[-1], int):
            return [bare(part) if isinstance(part, list) else part for part in data[:-2]]
        return [bare(part) for part in data]

    return bare(to_data(node))


# CEL language definition, section "Syntax", grammar and table of precedence and associativity: unary before * /, before
# + -, before the relations (one level, from the left), before &&, before ||, before ?: (from the right).
@pytest.mark.parametrize(
    ("text", "bracketed"),
    [
        ("a + b * c", "a + (b * c)"),
        ("a * b + c", "(a * b) + c"),
        ("a - b - c", "(a - b) - c"),
        ("a / b / c", "(a / b) / c"),
        ("a / b * c", "(a / b) * c"),
        ("a - b + c", "(a - b) + c"),
        ("-a * b", "(-a) * b"),
        ("a * -b", "a * (-b)"),
        ("- -a", "-(-a)"),
        ("!!a", "!(!a)"),
        ("!a && b", "(!a) && b"),
        ("!a == b", "(!a) == b"),
        ("a + b < c * d", "(a + b) < (c * d)"),
        ("a + b in c", "(a + b) in c"),
        ("a == b && c != d", "(a == b) && (c != d)"),
        ("a && b || c && d", "(a && b) || (c && d)"),
        ("a || b && c", "a || (b && c)"),
        ("a || b || c", "(a || b) || c"),
        ("a && b && c", "(a && b) && c"),
        ("a || b ? c : d", "(a || b) ? c : d"),
        ("a ? b : c ? d : e", "a ? b : (c ? d : e)"),
        ("a ? b || c : d + e", "a ? (b || c) : (d + e)"),
        ("-a.all(x, x)", "-(a.all(x, x))"),
        ("a in b.all(x, x) ? c : d", "(a in (b.all(x, x))) ? c : d"),
    ],
)
def test_precedence_is_that_of_cel(text: str, bracketed: str) -> None:
    assert shape(parse(text)) == shape(parse(bracketed))


@pytest.mark.parametrize(
    ("text", "bracketed"),
    [("-a^2", "-(a^2)"), ("a^b^c", "a^(b^c)"), ("2 * a^2", "2 * (a^2)"), ("a^-b", "a^(-b)"), ("a^-b^c", "a^(-(b^c))")],
)
def test_a_power_in_a_formula_binds_as_in_print(text: str, bracketed: str) -> None:
    assert shape(parse(text, formula=True)) == shape(parse(bracketed, formula=True))


def test_numbers_words_and_truths() -> None:
    for text, value in (("12", 12.0), ("0.5", 0.5), (".5", 0.5), ("1.5e3", 1500.0), ("2E-3", 0.002), ("007", 7.0)):
        assert parse(text).value == value  # type: ignore[union-attr]
    assert parse('"wall"').value == parse("'wall'").value == "wall"  # type: ignore[union-attr]
    assert parse("true").value is True  # type: ignore[union-attr]


def test_every_node_stands_where_its_text_is() -> None:
    text = 'leg == "wall" && (edge + 2 * bite) >= -gap'
    found = {text[node.start : node.end] for node in walk(parse(text))}
    assert {"leg", '"wall"', 'leg == "wall"', "(edge + 2 * bite)", "2 * bite", "-gap", text} <= found


def test_reads_names_but_neither_units_nor_the_item() -> None:
    assert reads(parse("marks.all(m, m > edge * inch) && size(rows) > 2 ? a : b")) == {
        "marks",
        "edge",
        "rows",
        "a",
        "b",
    }


MISTAKES = [
    # text, what is underlined, message, hint
    ("a < b < c", "a < b <", "Comparisons cannot be chained.", "a < b && b < …"),
    ("a == b == c", "a == b ==", "Comparisons cannot be chained.", ""),
    ("a in b == true", "a in b ==", "Comparisons cannot be chained.", ""),
    ('leg = "wall"', "=", '"=" is not part of the rule language.', 'Write "=="'),
    ("a ≥ b", "≥", '"≥" is not part', 'Write ">="'),
    ("a × b", "×", '"×" is not part', 'Write "*"'),
    ("a – b", "–", '"–" is not part', 'Write "-"'),
    ("leg == “wall”", "“", '"“" is not part', "straight quotes"),
    ("a and b", "and", '"and" is not part', '"&&"'),
    ("a or b", "or", '"or" is not part', '"||"'),
    ("not a", "not", '"not" is not part', '"!"'),
    ("a & b", "&", '"&" is not part', '"&&"'),
    ("a == null", "null", '"null" is not part', "not inspected"),
    ("a == True", "True", '"True" is not part', '"true"'),
    ("while > 1", "while", '"while" is not part', "another name"),
    ("edge > 1.5 in", "in", "no list follows", "* inch"),
    ("edge > 1.5 inch", "1.5 inch", "right after a number", '"1.5 * inch"'),
    ("edge > 3 ft", "3 ft", "right after a number", '"3 * foot"'),
    ("edge > 3mm", "3mm", "right after a number", '"3 * mm"'),
    ("edge > 1.", ".", "A point stands where none can.", "1.0"),
    ("edge^2 > 4", "^", '"^" is not part', "x * x"),
    ("edge % 2 == 0", "%", '"%" is not part', "12, not 12%"),
    ("sqrt(edge) > 4", "sqrt", '"sqrt" is not a function', "fact"),
    ("root(edge) > 4", "root", '"root" is not a function', "size, min, max"),
    ("min(a) > 4", "min(a)", "takes two values, and here it has 1", "min(a, b)"),
    ("min(a, b, c) > 4", "min(a, b, c)", "here it has 3", ""),
    ("size(a, b) > 4", "size(a, b)", "takes one value", "size(x)"),
    ("marks.map(x, x)", "map", '"map" does not follow a point', ".exists"),
    ("hole.edge > 1", "edge", '"edge" does not follow a point', "plain name"),
    ("a.all(x, x) && b.exists(y, y)", "exists", "A second", "two rules"),
    ("a.all(x, b.all(y, x == y))", "all", "A second", ""),
    ("a.all(x > 1)", ">", "cannot stand here", '","'),
    ("a.all(1, x)", "1", "needs a name for the item", "(x, x > 0)"),
    ("a.all(mm, mm > 1)", "mm", '"mm" is a unit.', "another name"),
    ("marks[0] > 1", "[", "cannot be picked by its number", ".all"),
    ("{a: 1}", "{", '"{" is not part', "square brackets"),
    ("(a + b", "(", 'The "(" is not closed.', '")"'),
    ("[a, b", "[", 'The "[" is not closed.', '"]"'),
    ("a + b)", ")", ") cannot stand here.", ""),
    ("a +", "", "stops in the middle", ""),
    ("a b", "b", "b cannot stand here.", ""),
    ("a ? b", "", "stops in the middle", ""),
    ("a ? b ? c : d : e", "b ?", "A choice stands inside another", "brackets"),
    ('leg == "wall', '"wall', "A word is not closed.", "at its end"),
    ('leg == "wa\\"ll"', '"wa\\"ll"', "backslash", "without backslashes"),
    ("", "", "The expression is empty.", ""),
    ("  ", "  ", "The expression is empty.", ""),
    ("a > 1e999", "1e999", "too large a number", ""),
    ("a\x00b", "\x00", '"U+0000" is not part', ""),
    ("a > 10u", "10u", "right after a number", ""),
    ("-!a", "!", "! cannot stand here.", ""),
]  # fmt: skip


@pytest.mark.parametrize(("text", "underlined", "message", "hint"), MISTAKES)
def test_a_mistake_is_named_and_underlined(text: str, underlined: str, message: str, hint: str) -> None:
    with pytest.raises(BadExpression) as caught:
        parse(text)
    fault = caught.value
    assert message in fault.message
    assert hint in fault.hint
    assert text[fault.start : fault.end] == underlined


def test_caret_shows_the_line_and_the_stretch() -> None:
    text = 'leg == "wall" &&\n\tedge_distence > 3'
    start = text.index("edge_distence")
    assert caret(text, start, start + 13) == " edge_distence > 3\n ^^^^^^^^^^^^^"
    assert caret("a +", 3, 3) == "a +\n   ^"
    assert caret("", 0, 0) == "\n^"
    assert caret("a\x1b[2J\u202e > 1", 1, 2) == "a\ufffd[2J\ufffd > 1\n ^"


def test_caret_cuts_a_long_line_around_the_fault() -> None:
    text = "a + " * 60 + "wrong" + " + b" * 20
    shown, mark = caret(text, 240, 245).split("\n")
    assert len(shown) <= 78
    assert shown.startswith("…") and shown.endswith("…")
    assert shown[mark.index("^") : mark.rindex("^") + 1] == "wrong"


@given(st.text(max_size=120), st.integers(-5, 130), st.integers(-5, 130))
def test_caret_never_fails(text: str, start: int, end: int) -> None:
    _, mark = caret(text, start, end).rsplit("\n", 1)
    assert "^" in mark and not mark.strip(" ^")


def test_four_hundred_characters_and_not_one_more() -> None:
    fits = "a" * (MOST_CHARACTERS - 4) + " > 1"
    parse(fits)
    with pytest.raises(BadExpression, match="may have 400 characters, and this one has 401"):
        parse("a" + fits)


@pytest.mark.parametrize("formula", [False, True])
def test_twenty_four_levels_and_not_one_more(formula: bool) -> None:
    for build in (
        lambda n: "-" * (n - 1) + "a",
        lambda n: "(" * (n - 1) + "a" + ")" * (n - 1),
        lambda n: " + ".join("a" * n),
        lambda n: "t ? a : " * (n - 1) + "a",
    ):
        parse(build(MOST_LEVELS), formula)
        with pytest.raises(BadExpression, match="more than 24 levels"):
            parse(build(MOST_LEVELS + 1), formula)


HOSTILE = [
    "(" * 400, "[" * 400, "-" * 400, "!" * 400, "a." * 200, "a?" * 200, "a?b:" * 100, "a&&" * 133, "1^" * 200,
    "min(" * 100, "a.all(x," * 50, "x.all(x,x.all(x,", "9" * 400, "0." + "9" * 398, "1e" + "9" * 398, '"' * 399,
    "'" + "a" * 399, "=" * 400, "<" * 400, ".5" * 200, "\n" * 400, "\u202e" * 400, "\ud800", "\x00" * 400, "a" * 10**6,
    "(" * 199 + "a" + ")" * 199, "a" + "+a" * 199, "[" * 30 + "]" * 30, "in " * 133, "size" * 100,
]  # fmt: skip


@pytest.mark.parametrize("formula", [False, True])
@pytest.mark.parametrize("text", HOSTILE, ids=range(len(HOSTILE)))
def test_hostile_text_is_refused_at_once(text: str, formula: bool) -> None:
    began = time.process_time()
    try:
        parse(text, formula)
    except BadExpression as fault:
        assert 0 <= fault.start <= fault.end <= len(text)
        caret(text, fault.start, fault.end)
    else:
        assert text in ("9" * 400, "0." + "9" * 398, "size" * 100)
    assert time.process_time() - began < 2


def test_the_deepest_text_fits_a_stack_that_is_half_used() -> None:
    def after(frames: int) -> None:
        if frames:
            after(frames - 1)
        else:
            parse("(" * 23 + "a" + ")" * 23)
            with pytest.raises(BadExpression, match="levels"):
                parse("!(" * 199)

    after(450)


PIECES = [
    *string.printable, "&&", "||", "==", " in ", ".all(x, ", ".exists(x, ", "min(", "size(",
    "true", '"wall"', "1.5", "inch",
]  # fmt: skip


@settings(max_examples=400)
@given(st.lists(st.sampled_from(PIECES), max_size=60).map("".join), st.booleans())
def test_any_text_is_read_or_refused_with_a_place(text: str, formula: bool) -> None:
    try:
        node = parse(text, formula)
    except BadExpression as fault:
        assert 0 <= fault.start <= fault.end <= len(text)
        assert fault.message.endswith(".")
    else:
        assert all(0 <= part.start < part.end <= len(text) for part in walk(node))
