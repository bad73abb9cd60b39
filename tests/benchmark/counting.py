"""What can be counted and is the same on every machine: modules loaded, files opened, evaluations, calls."""

from __future__ import annotations

import json
import subprocess
import sys
from collections import Counter
from dataclasses import astuple, replace
from datetime import date
from types import FrameType
from typing import Any, NamedTuple

from plumbrule.inspection.examine import examine
from plumbrule.language import Expression
from plumbrule.reading.places import read
from plumbrule.rulebook.load import load
from plumbrule.rulebook.rulebook import Rulebook

# Runs the command inside an interpreter that remembers which modules and files it came to.
_REMEMBER = """
import sys
bare = set(sys.modules)
opened = []
def note(event, args):
    if event == "open" and isinstance(args[0], (str, bytes)):
        opened.append(args[0] if isinstance(args[0], str) else args[0].decode())
sys.addaudithook(note)
from plumbrule.cli import main
import os
kept = os.dup(1)
os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
code = main(sys.argv[1:])
sys.stdout.flush()
os.dup2(kept, 1)
modules = sorted(set(sys.modules) - bare)
import json
json.dump({"code": code, "modules": modules, "opened": opened}, sys.stdout)
"""


class Loaded(NamedTuple):
    """Modules beyond those of the interpreter, and the files opened that are no modules, in order."""

    code: int
    modules: list[str]
    opened: list[str]

    def ours(self) -> int:
        """How many of the modules are plumbrule's own."""
        return sum(name.partition(".")[0] == "plumbrule" for name in self.modules)

    def others(self) -> int:
        """How many are of libraries, the standard one included."""
        return len(self.modules) - self.ours()


def loaded_by(*words: str) -> Loaded:
    """What `plumbrule` with these words loads and opens, in a process of its own."""
    done = subprocess.run([sys.executable, "-c", _REMEMBER, *words], capture_output=True, text=True, check=True)
    found = json.loads(done.stdout)
    opened = [name for name in found["opened"] if not name.endswith((".py", ".pyc", ".so", ".pth", "/dev/null"))]
    return Loaded(found["code"], found["modules"], opened)


class Counts(NamedTuple):
    """Of one inspection: expressions worked, judgements reached, and Python functions called, reading included."""

    evaluations: int
    judgements: int
    calls: int


def counts_of(source: bytes, rulebook: Rulebook | None = None) -> Counts:
    """Inspects a plan once to warm up, and once more to count."""
    whole = rulebook if rulebook is not None else load()
    today = date(2026, 6, 1)
    examine(read(source, "plan.yaml"), whole, today)
    evaluations: Counter[str] = Counter()
    counted = whole._replace(rules=tuple(_counted(rule, evaluations) for rule in whole.rules))
    tally = examine(read(source, "plan.yaml"), counted, today).inspection.tally
    calls = 0

    def count(_frame: FrameType, event: str, _arg: Any) -> None:
        nonlocal calls
        calls += event == "call"

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        examine(read(source, "plan.yaml"), whole, today)
    finally:
        sys.setprofile(before)
    return Counts(evaluations.total(), sum(astuple(tally)), calls)


def _counted(rule: Any, evaluations: Counter[str]) -> Any:
    """The rule with each of its expressions counting how often it is worked."""

    def counting(expression: Expression | None) -> Expression | None:
        if expression is None:
            return None
        work = expression.work

        def worked(names: Any) -> Any:
            evaluations[rule.id] += 1
            return work(names)

        return replace(expression, work=worked)

    bounds = rule.bounds._replace(at_least=counting(rule.bounds.at_least), at_most=counting(rule.bounds.at_most))
    return rule._replace(
        when=counting(rule.when), measure=counting(rule.measure), that=counting(rule.that), bounds=bounds
    )
