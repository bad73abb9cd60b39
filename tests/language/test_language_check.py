"""Dimensions, words and names: what can never be true does not get into a rulebook."""

from __future__ import annotations

import pytest

from plumbrule.language import (
    BadExpression,
    ListOf,
    Number,
    Truth,
    Type,
    Word,
    caret,
    check,
    check_as,
    describe,
    expression,
    parse,
)
from plumbrule.reading import units

NAMES: dict[str, Type] = {
    "edge_distance": Number(units.LENGTH),
    "diameter": Number(units.LENGTH),
    "pull": Number(units.FORCE),
    "strength": Number(units.STRESS),
    "area": Number(units.AREA),
    "moisture": Number(),
    "warmth": Number(units.TEMPERATURE),
    "leg": Word(("wall", "seat", "none")),
    "shape": Word(("angle", "flat bar")),
    "stud": Word(),
    "searched": Truth(),
    "marks": ListOf(Number(units.LENGTH)),
    "rows": ListOf(Word(("wall", "seat"))),
}


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("edge_distance", Number(units.LENGTH)),
        ("-edge_distance + 2 * diameter", Number(units.LENGTH)),
        ("edge_distance / diameter", Number()),
        ("edge_distance * diameter", Number(units.AREA)),
        ("pull / (edge_distance * diameter)", Number(units.STRESS)),
        ("pull / area + strength", Number(units.STRESS)),
        ("pull * edge_distance", Number(units.MOMENT)),
        ("1.5 * inch", Number(units.LENGTH)),
        ("250 * lbf", Number(units.FORCE)),
        ("45 * degree", Number(units.ANGLE)),
        ("size(marks)", Number()),
        ("min(edge_distance, 1 * inch)", Number(units.LENGTH)),
        ("max(0, edge_distance)", Number(units.LENGTH)),
        ("max(edge_distance, -0.0)", Number(units.LENGTH)),
        ("searched ? 0 : pull", Number(units.FORCE)),
        ("edge_distance > 0", Truth()),
        ("0 <= pull", Truth()),
        ("edge_distance in [0, 3 * mm]", Truth()),
        ("edge_distance in marks", Truth()),
        ('leg == "wall"', Truth()),
        ('leg in ["wall", "seat"]', Truth()),
        ("leg in rows", Truth()),
        ('stud == "any name at all"', Truth()),
        ("leg == stud", Truth()),
        ("searched == true", Truth()),
        ('"wall" in rows', Truth()),
        ("marks.all(m, m > 3 * diameter)", Truth()),
        ('rows.exists(r, r == "seat")', Truth()),
        ('searched ? "wall" : "flat bar"', Word(("wall", "flat bar"))),
        ("[edge_distance, 0]", ListOf(Number(units.LENGTH))),
    ],
)
def test_kinds(text: str, kind: Type) -> None:
    assert check(parse(text), NAMES) == kind


REFUSED = [
    # text, what is underlined, message, hint
    ("edge_distance > pull", "edge_distance > pull", "A length is compared with a force.", "one kind"),
    ("edge_distance > 600", "edge_distance > 600", "A length is compared with a plain number.", "600 * mm"),
    ("3 == pull", "3 == pull", "A plain number is compared with a force.", "3 * lbf"),
    ("area > 4", "area > 4", "An area is compared with a plain number.", "4 * inch * inch"),
    ("warmth < 10", "warmth < 10", "A temperature is compared with a plain number.", "setting"),
    ("edge_distance + pull > 0", "edge_distance + pull", "A force is added to a length.", ""),
    ("edge_distance - 1 > 0", "edge_distance - 1", "A plain number is taken from a length.", "1 * inch"),
    ("edge_distance + 0 > 0", "edge_distance + 0", "A plain number is added to a length.", ""),
    ("min(edge_distance, pull) > 0", "min(edge_distance, pull)", 'A length and a force stand together in "min".', ""),
    ("searched ? pull : diameter", "", "A force and a length stand together in a choice.", ""),
    ("edge_distance in [1 * inch, pull]", "[1 * inch, pull]", "A length and a force stand together in a list.", ""),
    ("pull in marks", "pull in marks", "A force is compared with a length.", ""),
    ("pull * diameter > 4 * lbf", "pull * diameter > 4 * lbf", "A moment is compared with a force.", ""),
    ("edge_distance * edge_distance * pull > 1", "", "A quantity of length³ × mass / time² is compared", "setting"),
    ('leg == "wal"', '"wal"', '"wal" cannot occur here.', 'Did you mean "wall"? Allowed: "wall", "seat" or "none".'),
    ('"WALL" != leg', '"WALL"', '"WALL" cannot occur here.', 'Did you mean "wall"?'),
    ('shape == "flat_bar"', '"flat_bar"', "cannot occur", 'Did you mean "flat bar"?'),
    ('leg in ["wall", "seet"]', '"seet"', '"seet" cannot occur here.', 'Did you mean "seat"?'),
    ('"none" in rows', '"none"', '"none" cannot occur here.', 'Allowed: "wall" or "seat".'),
    ('rows.all(r, r == "none")', '"none"', '"none" cannot occur here.', ""),
    ("leg == shape", "shape", "These two are never the same word", ""),
    ('"wall" == "seat"', '"wall"', "cannot occur", ""),
    ("edge_distence > 1 * mm", "edge_distence", 'There is no "edge_distence" here.', 'Did you mean "edge_distance"?'),
    ("edge-distance > 1 * mm", "edge", 'There is no "edge" here.', ""),
    ("edge_distance > 2 * inches", "inches", 'There is no "inches" here.', 'Did you mean "inch"?'),
    ("pull > 20 * lb", "lb", 'There is no "lb" here.', 'Did you mean "pound"?'),
    ("pull > 20 * LBF", "LBF", 'There is no "LBF" here.', 'Did you mean "lbf"?'),
    ("zzzzzz > 1", "zzzzzz", 'There is no "zzzzzz" here.', 'There are "area", "diameter"'),
    ('leg < "wall"', "leg", 'A number belongs before "<", and this is one of "wall", "seat" or "none".', '"=="'),
    ('leg + "s" == "walls"', "leg", 'A number belongs before "+"', '"=="'),
    ("leg == 1", "leg == 1", 'One of "wall", "seat" or "none" is never a plain number.', "like with like"),
    ("searched == 1", "searched == 1", "True or false is never a plain number.", ""),
    ("searched > false", "searched", 'A number belongs before ">"', ""),
    ("searched && leg", "leg", '"&&" joins what is true or false', "comparison"),
    ("pull || searched", "pull", '"||" joins what is true or false, and this is a force.', ""),
    ('!leg == "wall"', "!leg", '"!" turns true into false', "!(a == b)"),
    ("-searched", "searched", 'A number belongs after "-"', ""),
    ("pull ? 1 : 2", "pull", 'Before "?" stands what is true or false, and this is a force.', ""),
    ('searched ? 1 : "wall"', 'searched ? 1 : "wall"', 'A plain number and the word "wall" stand together', ""),
    ("leg in shape", "shape", 'A list belongs after "in"', '["a", "b"]'),
    ("marks in marks", "marks", 'Before "in" stands a list.', ""),
    ("marks == marks", "marks", "A list is not compared as a whole.", ".all"),
    ("leg in []", "[]", "The list is empty.", ""),
    ("leg in [rows]", "rows", "A list stands inside a list.", ""),
    ('[1, "a"].all(x, x == x)', '[1, "a"]', "stand together in a list", ""),
    ("size(leg) > 2", "size(leg)", '"size" counts a list', ""),
    ('max(leg, "wall") == 1', "leg", 'A number belongs in "max"', ""),
    ("leg.all(x, true)", "leg", '"all" goes through a list', ""),
    ("marks.all(leg, leg > 0)", "", '"leg" is already a name here.', "another name"),
    ("marks.all(m, m)", "m", '"all" asks of each item what is true or false, and this is a length.', ""),
    ("marks.all(m, m > 0) && m > 0", "m", 'There is no "m" here.', ""),
    ("marks.all(m, m > pull)", "m > pull", "A length is compared with a force.", ""),
    ("pull / 0 > 1", "0", "Nothing can be divided by zero.", ""),
]  # fmt: skip


@pytest.mark.parametrize(("text", "underlined", "message", "hint"), REFUSED)
def test_what_cannot_mean_anything_is_refused(text: str, underlined: str, message: str, hint: str) -> None:
    node = parse(text)
    with pytest.raises(BadExpression) as caught:
        check(node, NAMES)
    fault = caught.value
    assert message in fault.message
    assert hint in fault.hint
    assert text[fault.start : fault.end] == (underlined or text)


def test_a_misspelt_name_as_it_is_printed() -> None:
    text = 'leg == "wall" && edge_distence >= 1.5 * diameter'
    with pytest.raises(BadExpression) as caught:
        expression(text, NAMES)
    fault = caught.value
    assert f"{caret(text, fault.start, fault.end)}\n{fault}" == (
        'leg == "wall" && edge_distence >= 1.5 * diameter\n'
        "                 ^^^^^^^^^^^^^\n"
        'There is no "edge_distence" here. Did you mean "edge_distance"?'
    )


@pytest.mark.parametrize("unit", sorted(units.CONSTANTS))
def test_no_name_may_hide_a_unit(unit: str) -> None:
    with pytest.raises(ValueError, match=f'"{unit}" is a unit of the rule language'):
        check(parse("true"), {unit: Number()})


def test_a_value_must_be_of_the_kind_that_is_wanted() -> None:
    assert check_as(parse("0"), NAMES, Number(units.LENGTH)) == Number()
    assert expression("1.5 * diameter", NAMES, wanted=Number(units.LENGTH)).type == Number(units.LENGTH)
    with pytest.raises(BadExpression, match=r"This is a plain number. What belongs here is a length."):
        expression("1.5", NAMES, wanted=Number(units.LENGTH))
    with pytest.raises(BadExpression, match=r"This is a length. What belongs here is true or false."):
        expression("diameter", NAMES, wanted=Truth())


@pytest.mark.parametrize(
    ("kind", "said"),
    [
        (Number(units.LENGTH), "a length"),
        (Number(units.FORCE.times(units.AREA)), "a quantity of length³ × mass / time²"),
        (Number(units.NUMBER.over(units.TIME)), "a quantity of 1 / time"),
        (Number(units.NUMBER.over(units.AREA.times(units.TIME))), "a quantity of 1 / (length² × time)"),
        (Word(("wall",)), 'the word "wall"'),
        (Word(), "a word"),
        (Word(tuple("abcdefgh")), 'one of "a", "b", "c", "d", "e", "f" or 2 more'),
        (ListOf(Truth()), "a list, each item true or false"),
    ],
)
def test_kinds_in_words(kind: Type, said: str) -> None:
    assert describe(kind) == said
