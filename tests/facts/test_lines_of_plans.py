"""Every line of every calculation of every shipped plan is worked again, from its numbers and from its printed text."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from plumbrule import shipped
from plumbrule.facts.facts import work_out
from plumbrule.language import rework
from plumbrule.mechanics.worked import Worked
from plumbrule.plan.read import plan_from_file
from plumbrule.report.worked_line import line

PLANS = shipped.folder("plans")
PATHS = sorted([*PLANS.glob("*.yaml"), *PLANS.glob("faulty/*.yaml")])


def lines(path) -> Iterator[tuple[str, Worked]]:
    seen: set[int] = set()
    facts = work_out(plan_from_file(path))
    for rows in facts.rows.values():
        for row in rows:
            for field, worked in row.worked.items():
                for one in worked.lines():
                    if id(one) not in seen:
                        seen.add(id(one))
                        yield f"{row.kind} {row.label} {field}: {one.symbol} = {one.formula}", one


@pytest.mark.parametrize("path", PATHS, ids=lambda path: path.stem)
def test_every_line_works_out_again(path):
    wrong = []
    for told, one in lines(path):
        symbols = [number.symbol for number in one.numbers]
        if len(symbols) != len(set(symbols)):
            wrong.append(f"{told}: a symbol stands for two numbers")
            continue
        value = rework(one.formula, {number.symbol: number.value for number in one.numbers})
        if value != pytest.approx(one.value, rel=1e-9, abs=1e-12):
            wrong.append(f"{told}: {value} and not {one.value}")
        elif not all(line(one, system).agrees for system in ("inch", "metric")):
            wrong.append(f"{told}: not from what is printed")
    assert not wrong, "\n".join(sorted(set(wrong))[:20])
