"""Trade notation: what is read, to which SI value, and what is said about everything else."""

from __future__ import annotations

import re
import time
from datetime import date
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from plumbrule.reading import quantities
from plumbrule.reading.labels import GritSize, Unquoted
from plumbrule.reading.mistaken import bare
from plumbrule.reading.notation import KINDS, NotAQuantity, magnitude, measure, parse, pattern
from plumbrule.reading.units import LENGTH, STRESS


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("3/4 in", 0.75), ("97-1/2 in", 97.5), ("97 1/2 in", 97.5), ("4 ft 2 in", 50.0), ("5'-3 1/2\"", 63.5),
        ('16"', 16.0), ("16″", 16.0), ("½ in", 0.5), ("97½ in", 97.5), ("97-½ in", 97.5), ("5′-3½″", 63.5),
        ("4'", 48.0), ("4.5 ft", 54.0), ("4 ft 2-7/16 in", 50.4375), ("0 in", 0.0), ("3in", 3.0), ("5/4 in", 1.25),
        ("40.5 cm", 405 / 25.4), ("405 mm", 405 / 25.4), ("1.2 m", 1200 / 25.4),
    ],
)  # fmt: skip
def test_lengths(text: str, inches: float) -> None:
    """An inch is 25.4 mm exactly (NIST SP 811, appendix B.8)."""
    assert parse("length", text) == pytest.approx(inches * 25.4, rel=1e-15, abs=1e-15)


@pytest.mark.parametrize(
    ("kind", "text", "value"),
    [
        # NIST SP 811 (2008), appendix B.8, where exact or to the digits printed there; loads and densities are
        # quotients of these.
        ("area", "6 ft2", 6 * 92903.04), ("area", "1 in²", 645.16), ("area", "1 m2", 1e6),
        ("volume", "1 gal", 3785411.784), ("volume", "1 qt", 3785411.784 / 4), ("volume", "1/2 pt", 3785411.784 / 16),
        ("volume", "10.1 fl oz", 10.1 * 3785411.784 / 128), ("volume", "300 ml", 3e5), ("volume", "1 l", 1e6),
        ("mass", "1 lb", 0.45359237), ("mass", "2 kg", 2.0), ("mass", "500 g", 0.5),
        ("force", "250 lbf", 250 * 0.45359237 * 9.80665), ("force", "1.1 kN", 1100.0), ("force", "30 N", 30.0),
        ("line load", "20 lbf/ft", 20 * 14.59390 / 1000), ("line load", "1 lbf/in", 175.1268 / 1000),
        ("line load", "0.3 kN/m", 0.3), ("line load", "300 N/m", 0.3),
        ("area load", "100 lbf/ft2", 100 * 47.88026e-6), ("area load", "5 kPa", 0.005),
        ("stress", "36 ksi", 36 * 6.894757), ("stress", "1000 psi", 6.894757), ("stress", "250 MPa", 250.0),
        ("density", "35 lb/ft3", 35 * 16.01846e-9), ("density", "560 kg/m3", 560e-9),
        ("temperature", "68 °F", 20.0), ("temperature", "68 F", 20.0), ("temperature", "-40 °F", -40.0),
        ("temperature", "20 °C", 20.0), ("percent", "30 %", 30.0), ("percent", "30%", 30.0),
        ("angle", "82°", 82.0), ("angle", "82 deg", 82.0),
        ("time", "40 min", 40 / 60), ("time", "1 h", 1.0), ("time", "1-1/2 h", 1.5), ("time", "14 days", 336.0),
        ("time", "1 day", 24.0), ("time", "4 years", 4 * 365.25 * 24),
        ("expansion", "1.2e-4 per °C", 1.2e-4), ("expansion", "1e-5 per °F", 1.8e-5),
        ("signed length", "-1/8 in", -3.175), ("signed length", "-1-1/2 in", -38.1),
        ("signed length", "-1'-6\"", -457.2),
    ],
)  # fmt: skip
def test_every_kind(kind: str, text: str, value: float) -> None:
    assert parse(kind, text) == pytest.approx(value, rel=1e-6)


@pytest.mark.parametrize(
    ("kind", "text", "said"),
    [
        ("length", "48", "48 has no unit. Write 48 in or 48 mm."),
        ("length", "1/2", "1/2 has no unit. Write 1/2 in."),
        ("length", "12,5 mm", "12,5 mm has a comma. Write 12.5 mm."),
        ("length", "1,200 mm", "1,200 mm has a comma. Write 1200 mm."),
        ("volume", "1 oz", "oz is a weight. For a liquid write 1 fl oz."),
        ("force", "250 lb", "A load is a force. Write 250 lbf."),
        ("force", "250 lbs", "A load is a force. Write 250 lbf."),
        ("force", "100 kg", "A load is a force. Write 980.7 N."),
        ("area load", "100 lb/ft2", "A load is a force. Write 100 lbf/ft2."),
        ("area load", "100 psf", "100 psf is not written so here. Write 100 lbf/ft2."),
        ("line load", "20 plf", "20 plf is not written so here. Write 20 lbf/ft."),
        ("density", "35 pcf", "35 pcf is not written so here. Write 35 lb/ft3."),
        ("angle", "82", "82 has no unit. Write 82°."),
        ("angle", "82º", "82º is not written so here. Write 82°."),
        ("percent", "0.3", "0.3 has no unit. Write 30 %."),
        ("percent", "30", "30 has no unit. Write 30 %."),
        ("time", "2", "2 has no unit. Write 2 h or 2 days."),
        ("time", "2 weeks", "weeks are not a unit here. Write 14 days."),
        ("time", "3 hrs", "3 hrs is not written so here. Write 3 h."),
        ("temperature", "68", "68 has no unit. Write 68 °F or 68 °C."),
        ("temperature", "70 degrees F", "70 degrees F is not a temperature. Write it like 68 °F or 20 °C."),
        ("temperature", "-300 °C", "-300 °C is below absolute zero, -273.15 °C: that is a slip. Check the unit."),
        ("length", "3 inches", "3 inches is not written so here. Write 3 in."),
        ("length", "5’ 3”", "5’ 3” is not written so here. Write 5'3\"."),
        ("length", "3\u00a0in", "3\u00a0in is not written so here. Write 3 in."),
        ("length", ".5 in", ".5 in is not written so here. Write 0.5 in."),
        ("length", "3  in", "3  in is not written so here. Write 3 in."),
        ("length", "3 and 1/2 in", "3 and 1/2 in is not written so here. Write 3-1/2 in."),
        ("length", "-3 in", "-3 in is below zero. Write 3 in, or 0 in for nothing."),
        ("length", "300 m", "300 m is more than 100 m: that is a slip. Check the unit."),
        ("length", "20 lbf", "20 lbf is a force; a length is needed. Write it like 3/4 in or 4 ft 2 in."),
        ("length", "4 ft 14 in", "The inches in 4 ft 14 in are a foot or more. Write 5 ft 2 in."),
        ("length", "1-5/4 in",
         "5/4 after a whole number is not less than one. Write the whole number and what is left over, like 2-1/4 in."),
        ("length", "1/0 in", "1/0 in divides by zero. Write it like 3/4 in or 4 ft 2 in."),
        ("length", "", "The value is empty. Write it like 3/4 in or 4 ft 2 in."),
        ("length", "a bit", "a bit is not a length. Write it like 3/4 in or 4 ft 2 in."),
        ("size", "0 in", "0 in is nothing. Write its real size."),
        ("force", "measure on site",
         "Only a length may wait until it is measured; here a force is needed. "
         "Write it like 250 lbf or 1.1 kN, or leave the key out."),
        ("expansion", "1.2e-4", "1.2e-4 has no unit. Write 1.2e-4 per °C."),
        ("expansion", "1.2e-4 /°C", "1.2e-4 /°C is not written so here. Write 1.2e-4 per °C."),
    ],
)  # fmt: skip
def test_what_is_said_instead(kind: str, text: str, said: str) -> None:
    with pytest.raises(NotAQuantity) as refused:
        parse(kind, text)
    assert str(refused.value) == said


def test_what_a_message_says_to_write_can_be_read() -> None:
    """No message sends anyone from one fault to the next."""
    slips = [
        "48",
        "1/2",
        "12,5 mm",
        "3 inches",
        "5’ 3”",
        ".5 in",
        "-3 in",
        "4 ft 14 in",
        "250 lb",
        "1 oz",
        "2",
        "0.3",
        "82",
        "68",
        "100 psf",
        "35 pcf",
        "2 weeks",
        "1 month",
        "6 sq ft",
        "1,5 l",
        "70 f",
        "30 percent",
        "3 hrs",
    ]
    checked = 0
    for kind in KINDS:
        for slip in slips:
            try:
                parse(kind, slip)
            except NotAQuantity as mistake:
                for meant in re.findall("(?:Write|write)(?: it like)? (.+?)(?:, or .*)?[.]$", mistake.write):
                    for one in re.split(" or ", meant):
                        parse(kind, one)
                        checked += 1
    assert checked > 300


@pytest.mark.parametrize(
    ("value", "said"),
    [
        (48, "48 has no unit. Write 48 in or 48 mm."),
        (48.5, "48.5 has no unit. Write 48.5 in or 48.5 mm."),
        (-3, "-3 has no unit and is below zero. Write it like 3/4 in or 4 ft 2 in."),
        (True, "`true` is not a length. Write it like 3/4 in or 4 ft 2 in."),
        (None, "The value is empty. Write it like 3/4 in or 4 ft 2 in."),
        (["3 in"], "A list stands where a length is needed. Write one, like 3/4 in or 4 ft 2 in."),
        ({"a": 1}, "A group of keys stands where a length is needed. Write it like 3/4 in or 4 ft 2 in."),
    ],
)
def test_what_is_no_text_at_all(value: Any, said: str) -> None:
    assert str(bare(KINDS["length"], value)) == said


@pytest.mark.parametrize(
    ("type_", "value", "said"),
    [
        (quantities.ScrewSize, "", "The size is empty. A bare # starts a comment: write No. 10."),
        (quantities.ScrewSize, "10", "10 is not a screw size as it is written here. Write No. 10."),
        (quantities.ScrewSize, 10, "10 is not a screw size as it is written here. Write No. 10."),
        (quantities.ScrewSize, "No. 30", "There is no screw size 30 here. "
         "Write No. 4 to No. 24, or give the diameter."),
        (quantities.ScrewSize, "M5", "M5 is not a screw size. Write it like No. 10."),
        (quantities.Grit, "150 grit", "150 grit is not a grit as it is written here. Write 150 or P150."),
        (quantities.Grit, "150", "150 is not a grit as it is written here. Write 150 or P150."),
        (quantities.Grit, "p150", "p150 is not a grit as it is written here. Write P150."),
        (quantities.Grit, "fine", "fine is not a grit. Write it like 150 or P150."),
        (quantities.Date, Unquoted("2026-03-02"),
         '2026-03-02 stands without quotes. Put the date in quotes: "2026-03-02".'),
        (quantities.Date, "2026-02-30", "There is no day 2026-02-30. Write year, month and day of a real day."),
        (quantities.Date, "3/2/26", '3/2/26 is not a date. Write year, month and day in quotes, like "2026-03-02".'),
        (quantities.Name, "seat 1", "Names have no spaces. Write seat-1."),
        (quantities.Name, ["seat"], "A list stands where a name is needed. Write a name like seat-1."),
        (quantities.Name, "1st", "Names start with a letter. Write n-1st."),
        (quantities.Name, "seat_1", "Names have only the letters a to z, digits and hyphens. Write seat-1."),
        (quantities.LineOrAreaLoad, "100 lb/ft2", "A load is a force. Write 100 lbf/ft2."),
        (quantities.LineOrAreaLoad, "20 lb/ft", "A load is a force. Write 20 lbf/ft."),
    ],
)  # fmt: skip
def test_labels_and_loads_in_models(type_: Any, value: Any, said: str) -> None:
    with pytest.raises(ValidationError) as refused:
        TypeAdapter(type_).validate_python(value)
    assert [error["msg"] for error in refused.value.errors()] == [said]


def test_types_give_what_models_need() -> None:
    def read(type_: Any, value: Any) -> Any:
        return TypeAdapter(type_).validate_python(value)

    assert read(quantities.Length, "1 in") == 25.4
    assert read(quantities.Length, "measure on site") is None
    assert read(quantities.Size, "measure on site") is None
    assert read(quantities.ScrewSize, "No. 10") == read(quantities.ScrewSize, "#10") == 10
    assert read(quantities.Grit, 150) == GritSize(150)
    assert read(quantities.Grit, "P150") == GritSize(150, iso=True)
    assert read(quantities.Date, "2026-03-02") == date(2026, 3, 2)
    over_area = read(quantities.LineOrAreaLoad, "5 kPa")
    along = read(quantities.LineOrAreaLoad, "5 kN/m")
    assert (over_area, over_area.over_area, along, along.over_area) == (pytest.approx(0.005), True, 5.0, False)


def test_a_measure_knows_its_kind() -> None:
    assert measure("5.6 mm")[:2] == (pytest.approx(5.6), LENGTH)
    assert measure("36 ksi").dimension == STRESS
    assert measure("-1/8 in").kind == "length"
    for text in ("", "12", "seat", "measure on site"):
        with pytest.raises(NotAQuantity):
            measure(text)


# One generator of notation for both ways: what it makes is read, and what the pattern and the parser make of damaged
# text must be the same.
RATIO = st.tuples(st.integers(1, 99), st.integers(1, 128)).map(lambda two: f"{two[0]}/{two[1]}")
PROPER = st.tuples(st.integers(1, 63), st.integers(1, 64)).map(lambda two: f"{two[0]}/{two[0] + two[1]}")
GLYPHS = st.sampled_from("½¼¾⅛⅜⅝⅞")
NUMBERS = st.one_of(
    st.integers(0, 99_999).map(str),
    st.decimals(0, 999, places=3).map(str),
    RATIO,
    GLYPHS,
    st.tuples(st.integers(0, 500), st.sampled_from("- "), PROPER).map(lambda p: f"{p[0]}{p[1]}{p[2]}"),
    st.tuples(st.integers(0, 500), st.sampled_from(["", "-", " "]), GLYPHS).map(lambda p: f"{p[0]}{p[1]}{p[2]}"),
)


@st.composite
def notations(draw: st.DrawFn) -> tuple[str, str]:
    kind = draw(st.sampled_from(sorted(KINDS)))
    row = KINDS[kind]
    sign = draw(st.sampled_from(["", "-"])) if row.signed else ""
    space = draw(st.sampled_from(["", " "]))
    number = draw(st.sampled_from(["1.2e-4", "6e-5", "0.00012", "1e-5"]) if kind == "expansion" else NUMBERS)
    if "ft" in row.units and draw(st.booleans()):
        feet = draw(st.integers(0, 300))
        foot, inch = draw(st.sampled_from([("'", '"'), ("′", "″"), (" ft", " in"), ("ft", "in")]))
        return kind, f"{sign}{feet}{foot}{draw(st.sampled_from(['', '-', ' ']))}{number}{inch}"
    return kind, f"{sign}{number}{space}{draw(st.sampled_from(sorted(row.units)))}"


def allowed(kind: str, text: str) -> bool:
    """As a JSON Schema validator has it: a search, anchored by the pattern itself, `$` only at the very end."""
    return re.search(pattern(kind).removesuffix("$") + r"\Z", text) is not None


def readable(kind: str, text: str) -> bool:
    try:
        parse(kind, text)
    except NotAQuantity as mistake:
        return not mistake.notation
    return True


@settings(max_examples=400, deadline=None)
@given(notations())
def test_what_the_generator_makes_is_read_and_allowed(made: tuple[str, str]) -> None:
    kind, text = made
    nothing = kind == "size" and not re.search("[1-9½¼¾⅛⅜⅝⅞]", text)
    assert readable(kind, text) is not nothing
    assert allowed(kind, text) is not nothing


@settings(max_examples=800, deadline=None)
@given(
    notations(),
    st.integers(0, 20),
    st.sampled_from([*"-/. 0e½'\"in°%x\n", "", "ft", "mm", "measure on site"]),
    st.booleans(),
)
def test_pattern_and_parser_agree_on_damaged_text(made: tuple[str, str], at: int, put: str, over: bool) -> None:
    kind, text = made
    damaged = text[:at] + put + text[at + over :]
    if damaged == "measure on site":
        return
    assert readable(kind, damaged) == allowed(kind, damaged), (kind, damaged)


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_patterns_mean_the_same_to_ecma_262(kind: str) -> None:
    """The engine of check-jsonschema, which follows ECMA-262, on texts that are right and nearly right."""
    regress = pytest.importorskip("regress", reason="the ECMA-262 oracle comes with check-jsonschema")
    engine = regress.Regex(pattern(kind), "u")
    texts = [
        "3 in", "3/4 in", "97½ in", "5'-3 1/2\"", "4 ft 2 in", "-3 in", "3 in\n", "3  in", "0 in", "1/0 in", "250 lbf",
        "68 °F", "30 %", "82°", "14 days", "1.2e-4 per °C", "1 fl oz", "6 ft²", "measure on site", "3 in or so", "",
    ]  # fmt: skip
    assert [engine.find(text) is not None for text in texts] == [allowed(kind, text) for text in texts]


@pytest.mark.parametrize("kind", sorted(KINDS))
@pytest.mark.parametrize(
    "text",
    ["1" * 2000, "1/" * 1000, "1-" * 1000, "1 " * 1000, "½" * 2000, "-" * 2000, "1." * 1000, "1' " * 666,
     "9" * 1999 + "in", "1-1/2" * 400, "1 1/2 i" * 285, "1e-" * 666, " " * 2000, "in" * 1000, "1,1" * 666, "´”" * 1000],
)  # fmt: skip
def test_near_misses_of_2000_characters_cost_under_5_ms(kind: str, text: str) -> None:
    parse.cache_clear()
    compiled = re.compile(pattern(kind))

    def cost() -> float:
        begin = time.process_time()
        with pytest.raises(NotAQuantity):
            parse.__wrapped__(kind, text)
        assert compiled.fullmatch(text) is None
        return time.process_time() - begin

    assert min(cost() for _ in range(8)) < 0.005


@given(st.integers(0, 5000), st.integers(0, 63))
def test_sixteenths_and_finer_are_read_exactly(whole: int, sixty_fourths: int) -> None:
    if sixty_fourths:
        assert magnitude(f"{whole}-{sixty_fourths}/64") == whole + sixty_fourths / 64
