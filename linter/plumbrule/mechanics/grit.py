"""Abrasives by the median size of their grains, on either published scale, and the step from one to the next."""

from __future__ import annotations

from plumbrule.mechanics.tables import Tables
from plumbrule.mechanics.worked import NotPossible, Number, OutsideRulebook, Worked


def grain(tables: Tables, number: int, iso: bool = False) -> float:
    """Median size of the grains of a grit, in micrometres: `iso` for `P150` of ISO 6344, else the United States scale.

    Raises OutsideRulebook for a number that is on neither chart: sizes are not read in between, since a grade that
    nobody grades to has no median.
    """
    name = f"P{number}" if iso else str(number)
    for row in tables.data["abrasives"]["rows"]:
        if row["name"] == name:
            return float(row["grain"])
    scale = "P scale" if iso else "United States scale"
    raise OutsideRulebook(
        f"No grain size is published for grit {name} on the {scale}: write the grit that is printed on the back."
    )


def step(coarse: float, fine: float) -> Worked:
    """How many times larger the grains of one grit are than those of the next, sizes in micrometres.

    Above 1 the sanding gets finer, below 1 coarser. Raises NotPossible for a size that is not above zero.
    """
    if not (0 < coarse < float("inf") and 0 < fine < float("inf")):
        raise NotPossible("a grain has a size above zero")
    return Worked(
        "r", "grains of one grit over those of the next, by their median size", "d_1 / d_2",
        (Number("d_1", coarse, ""), Number("d_2", fine, "")), coarse / fine, "",
        "ISO 6344 and ANSI B74.18 as charts print them, in micrometres",
    )  # fmt: skip
