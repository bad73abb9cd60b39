"""Grains, finishes and adhesive: the tables are whole, the directions right, and nonsense is refused."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumbrule.language import rework
from plumbrule.mechanics import bonding, coats, grit, tables
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook, Worked
from plumbrule.plan import words

TABLES = tables.load()
FEW = settings(max_examples=60, deadline=None)
sizes = st.floats(0.1, 1e4)
more = st.floats(0.01, 100.0)
ISO = sorted(int(name[1:]) for name in TABLES.names("abrasives") if name.startswith("P"))
CAMI = sorted(int(name) for name in TABLES.names("abrasives") if not name.startswith("P"))
FINISHES = [name for name in words.FINISHES if name != "none"]


@pytest.mark.parametrize(("numbers", "iso"), [(ISO, True), (CAMI, False)])
def test_a_higher_number_is_a_finer_grain(numbers: list[int], iso: bool) -> None:
    grains = [grit.grain(TABLES, number, iso) for number in numbers]
    assert all(first > second for first, second in pairwise(grains))


@pytest.mark.parametrize(
    ("number", "median"),
    [(240, 58.5), (280, 52.2), (320, 46.2), (360, 40.5), (400, 35.0), (500, 30.2), (600, 25.8), (800, 21.8),
     (1000, 18.3), (1200, 15.3), (1500, 12.6), (2000, 10.3), (2500, 8.4)],
)  # fmt: skip
def test_the_rounded_chart_agrees_with_the_medians_of_the_standard(number: int, median: float) -> None:
    """ISO 6344-3, from memory; the chart prints whole micrometres."""
    assert grit.grain(TABLES, number, iso=True) == pytest.approx(median, abs=2.0)


@pytest.mark.parametrize(("cami", "iso"), [(320, 400), (400, 800), (600, 1200)])
def test_the_two_scales_part_above_220_as_published(cami: int, iso: int) -> None:
    """Published pairs: 320 is about P400, 400 about P800, 600 about P1200."""
    assert grit.grain(TABLES, cami) == pytest.approx(grit.grain(TABLES, iso, iso=True), abs=1)
    assert grit.grain(TABLES, cami, iso=True) > grit.grain(TABLES, cami)


@pytest.mark.parametrize(("number", "iso"), [(130, False), (90, True), (12, False), (5000, True)])
def test_a_grade_that_nobody_makes_has_no_size(number: int, iso: bool) -> None:
    with pytest.raises(OutsideRulebook, match=str(number)):
        grit.grain(TABLES, number, iso)


@pytest.mark.parametrize(("coarse", "fine"), [(0, 10), (10, 0), (-1, 5), (float("inf"), 5), (5, float("nan"))])
def test_a_grain_without_a_size_is_refused(coarse: float, fine: float) -> None:
    with pytest.raises(NotPossible):
        grit.step(coarse, fine)


@FEW
@given(sizes, sizes, more)
def test_a_finer_paper_is_a_wider_step(coarse: float, fine: float, extra: float) -> None:
    assert grit.step(coarse, fine + extra).value <= grit.step(coarse, fine).value


@pytest.mark.parametrize("kind", FINISHES)
def test_every_finish_of_a_plan_has_its_times_in_order(kind: str) -> None:
    recoat, handle, cure = (coats.clock(TABLES, kind, what) for what in ("recoat", "handle", "cure"))
    assert 0 < recoat.value <= 72
    assert recoat.value <= max(handle.value, 72)
    assert handle.value <= cure.value
    assert all(line.unit == "h" and line.source for line in (recoat, handle, cure))
    last = coats.last_grit(TABLES, kind)
    assert last.finest is None or last.finest < last.coarsest
    assert coats.is_film(TABLES, kind) in (True, False)


def test_what_is_not_a_finish_has_no_times() -> None:
    for work in (coats.is_film, coats.last_grit):
        with pytest.raises(OutsideRulebook, match="tin"):
            work(TABLES, "none")
    assert set(TABLES.names("finishes")) == set(FINISHES)


def test_a_time_that_was_only_remembered_says_so() -> None:
    assert coats.clock(TABLES, "oil varnish", "cure").source == "typical, from memory"
    assert "24 h between coats" in coats.clock(TABLES, "oil varnish", "recoat").source


def test_films_want_a_coarser_last_grit_than_thin_oils() -> None:
    film, oil = coats.last_grit(TABLES, "oil varnish"), coats.last_grit(TABLES, "tung oil")
    assert film.coarsest > oil.coarsest
    assert oil.finest is None


@FEW
@given(sizes, sizes, sizes, more)
def test_a_longer_panel_or_a_shorter_straightedge_never_sees_less(
    gap: float, edge: float, panel: float, extra: float
) -> None:
    base = bonding.gap_under_panel(gap, edge, panel).value
    assert base >= gap
    assert bonding.gap_under_panel(gap, edge, panel + extra).value >= base
    assert bonding.gap_under_panel(gap, edge + extra, panel).value <= base
    assert bonding.gap_under_panel(gap + extra, edge, panel).value >= base


@FEW
@given(sizes, sizes, more)
def test_less_adhesive_or_a_heavier_panel_pulls_harder(mass: float, area: float, extra: float) -> None:
    base = bonding.bond_shear(mass, area).value
    assert bonding.bond_shear(mass + extra, area).value >= base
    assert bonding.bond_shear(mass, area + extra).value <= base


@FEW
@given(sizes, st.floats(1, 50), st.floats(1, 50))
def test_strips_never_hold_more_than_the_whole_back(face: float, width: float, apart: float) -> None:
    if width > apart:
        with pytest.raises(NotPossible, match="apart"):
            bonding.bonded_area(face, width, apart)
    else:
        assert bonding.bonded_area(face, width, apart).value <= bonding.bonded_area(face).value * (1 + 1e-12)


@pytest.mark.parametrize(
    "work",
    [
        lambda: bonding.gap_under_panel(-1, 10, 10), lambda: bonding.gap_under_panel(1, 0, 10),
        lambda: bonding.gap_under_panel(1, 10, 0), lambda: bonding.bond_shear(1, 0), lambda: bonding.bond_shear(-1, 1),
        lambda: bonding.bonded_area(0), lambda: bonding.bonded_area(10, 0, 1), lambda: coats.pour_depth(-1, 1),
        lambda: coats.pour_depth(1, 0), lambda: bonding.gap_under_panel(float("nan"), 1, 1),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused(work) -> None:
    with pytest.raises(NotPossible):
        work()


@FEW
@given(sizes, sizes, sizes, st.integers(1, 9))
def test_every_line_works_out_again(one: float, two: float, three: float, pours: int) -> None:
    lines: list[Worked] = [
        grit.step(one, two), bonding.gap_under_panel(one, two, three), bonding.bond_shear(one, two),
        bonding.bonded_area(one), bonding.bonded_area(one, min(two, three), max(two, three)),
        coats.pour_depth(one, pours), coats.clock(TABLES, "paint", "cure"),
    ]  # fmt: skip
    for line in lines:
        assert rework(line.formula, {number.symbol: number.value for number in line.numbers}) == pytest.approx(
            line.value
        )
