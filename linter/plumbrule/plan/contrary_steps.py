"""Steps that wait for each other, so that none of them can ever begin: each such knot once, named as a loop."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from plumbrule.plan.complaints import Complaints
from plumbrule.plan.plan_file import Plan
from plumbrule.plan.steps import Step

# A loop longer than this is not told step by step.
MOST_NAMED = 8
# Nobody plans a seat in more steps; every pair of them is looked at.
MOST_STEPS = 1000

Waits = Mapping[str, Sequence[str]]


class Steps:
    """One look at what the steps of a plan wait for."""

    def __init__(self, plan: Plan, complaints: Complaints) -> None:
        self._steps: Mapping[str, Step] = plan.model.steps or {}
        self._complain = complaints.add

    def check(self) -> None:
        """Complains of every step that names itself, and of every knot of steps that wait for each other."""
        if len(self._steps) > MOST_STEPS:
            self._complain(
                "/steps",
                f"{len(self._steps):,} steps are a slip.",
                f"Write one plan for each job, of {MOST_STEPS:,} at most.",
            )
        waits: dict[str, list[str]] = {}
        for name, step in self._steps.items():
            others = (*step.after, *step.at_once_after)
            waits[name] = [other for other in others if other in self._steps and other != name]
            if name in others:
                self._complain(self._where(name, name), f"{name} waits for itself.", "Take it out of its own list.")
        for knot in knots(waits):
            loop = shortest_loop(waits, knot)
            self._complain(
                self._where(loop[0], loop[1]), _told(loop), "Take out the one of these waits that is not so."
            )

    def _where(self, name: str, other: str) -> str:
        """Where the one step says that it waits for the other."""
        step = self._steps[name]
        key, others = ("after", step.after) if other in step.after else ("at_once_after", step.at_once_after)
        return f"/steps/{name}/{key}/{others.index(other)}"


def _told(loop: Sequence[str]) -> str:
    """`seal waits for shoe, shoe waits for seal.`"""
    pairs = [f"{name} waits for {other}" for name, other in zip(loop, (*loop[1:], loop[0]), strict=True)]
    if len(pairs) > MOST_NAMED:
        pairs[MOST_NAMED - 1 : -1] = [f"and so on over {len(pairs) - MOST_NAMED} more steps"]
    return f"{', '.join(pairs)}."


def knots(waits: Waits) -> list[list[str]]:
    """Each set of two or more steps of which every one waits, in the end, for every other; in the order of the file.

    They are the strongly connected components of the graph, found by going through it forward and then backward.
    """
    followed: dict[str, list[str]] = {name: [] for name in waits}
    for name, others in waits.items():
        for other in others:
            followed[other].append(name)
    seen: set[str] = set()
    finished = [name for first in waits for name in _finished(first, waits, seen)]
    seen = set()
    place = {name: number for number, name in enumerate(waits)}
    sets = [sorted(_finished(last, followed, seen), key=place.__getitem__) for last in reversed(finished)]
    return sorted((found for found in sets if len(found) > 1), key=lambda found: place[found[0]])


def _finished(first: str, edges: Waits, seen: set[str]) -> Iterator[str]:
    """What can be reached from `first` and was not seen before, each after all that is reached from it."""
    if first in seen:
        return
    seen.add(first)
    way = [(first, iter(edges[first]))]
    while way:
        name, rest = way[-1]
        for other in rest:
            if other not in seen:
                seen.add(other)
                way.append((other, iter(edges[other])))
                break
        else:
            way.pop()
            yield name


def shortest_loop(waits: Waits, knot: Sequence[str]) -> list[str]:
    """The shortest loop through the first step of a knot: each step waits for the next, the last for the first."""
    first = knot[0]
    within = set(knot)
    came_from: dict[str, str] = {}
    reached = [first]
    for name in reached:
        for other in waits[name]:
            if other == first:
                loop = [name]
                while loop[-1] != first:
                    loop.append(came_from[loop[-1]])
                return loop[::-1]
            if other in within and other not in came_from:
                came_from[other] = name
                reached.append(other)
    raise AssertionError(f"{first} is on no loop")
