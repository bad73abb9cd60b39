"""Where one row is worked out: what was read, what is missing, what was assumed, and how each figure came about."""

from __future__ import annotations

import math
from collections.abc import Callable, Hashable, Iterable, Sequence
from typing import Generic, NamedTuple, TypeVar

from plumbrule.catalogue.fact import Row, RowType, Value
from plumbrule.mechanics.worked import NotPossible, OutsideRulebook, Worked
from plumbrule.plan.plan_file import Plan
from plumbrule.reading.units import to_si

S = TypeVar("S")
T = TypeVar("T")


class Input(NamedTuple):
    """A value of the plan and the pointer it was written at, or should be. `assumed` says, where the plan is silent
    and a worse case was taken, what was taken. `also` are further pointers it depends on or waits for."""

    value: object
    pointer: str
    assumed: str = ""
    also: tuple[str, ...] = ()


class Missing(Exception):
    """The plan does not say what is needed. Carries the pointers to fill in."""

    def __init__(self, pointers: Sequence[str]) -> None:
        super().__init__(", ".join(pointers))
        self.pointers = tuple(dict.fromkeys(pointers))


class Absent(Exception):
    """A field that this row does not have was asked for by another: a mistake of the program, said loudly."""


class Desk:
    """One row being worked out. Fields are worked in the order in which they are given; each may use earlier ones."""

    def __init__(self, row_type: RowType, pointer: str, part: str, label: str) -> None:
        self._type = row_type
        self._pointer, self._part, self._label = pointer, part, label
        self._values: dict[str, Value] = {}
        self._worked: dict[str, Worked] = {}
        self._inputs: dict[str, tuple[str, ...]] = {}
        self._missing: dict[str, tuple[str, ...]] = {}
        self._outside: dict[str, str] = {}
        self._failed: dict[str, str] = {}
        self._assumed: dict[str, str] = {}
        self._reading: dict[str, None] = {}

    def set(self, field: str, value: Value, *pointers: str) -> None:
        """A field that is known outright: a word that follows from the kind of part, say."""
        self._inputs[field] = pointers
        self._keep(field, value)

    def get(self, field: str, work: Callable[[], Worked | Value]) -> None:
        """Works `field` out. What is missing, not covered or impossible is recorded instead of a value."""
        self._reading = {}
        try:
            result = work()
        except Missing as missing:
            self._missing[field] = missing.pointers
        except OutsideRulebook as outside:
            self._outside[field] = outside.reason
        except (NotPossible, ArithmeticError, ValueError) as error:
            self._failed[field] = str(error) or type(error).__name__
        else:
            if isinstance(result, Worked):
                self._worked[field] = result
                result = to_si(result.value, result.unit)
            self._keep(field, result)
        self._inputs[field] = tuple(self._reading)

    def copy(self, field: str, source: Input) -> None:
        """A field that the plan gives as it stands."""
        self.get(field, lambda: self._value(self.need(source)))

    def need(self, source: Input) -> object:
        """The value of an input. Raises Missing when the plan does not give it."""
        value, pointer, assumed, also = source
        reading = self._reading
        reading[pointer] = None
        for other in also:
            reading[other] = None
        if assumed:
            self._assumed[pointer] = assumed
        if value is None:
            raise Missing([pointer, *also])
        return value

    def length(self, source: Input) -> float:
        """An input that is a quantity, in SI."""
        value = self.need(source)
        assert isinstance(value, int | float)
        return float(value)

    def word(self, source: Input) -> str:
        """An input that is a word."""
        value = self.need(source)
        assert isinstance(value, str)
        return value

    def need_all(self, *sources: Input) -> None:
        """Raises one Missing that names everything wanting among `sources`."""
        wanting: list[str] = []
        for source in sources:
            self._note(source)
            if source.value is None:
                wanting.extend((source.pointer, *source.also))
        if wanting:
            raise Missing(wanting)

    def number(self, field: str) -> float:
        """A field worked out before, as a number. Its inputs become inputs of the field in hand."""
        value = self._earlier(field)
        assert isinstance(value, int | float) and not isinstance(value, bool), field
        return float(value)

    def text(self, field: str) -> str:
        """A field worked out before, as a word."""
        value = self._earlier(field)
        assert isinstance(value, str), field
        return value

    def true(self, field: str) -> bool:
        """A field worked out before, as a truth."""
        value = self._earlier(field)
        assert isinstance(value, bool), field
        return value

    def numbers(self, *fields: str) -> tuple[float, ...]:
        """Several fields at once, so that everything missing among them is named together."""
        wanting: list[str] = []
        found: list[float] = []
        for field in fields:
            try:
                found.append(self.number(field))
            except Missing as missing:
                wanting.extend(missing.pointers)
        if wanting:
            raise Missing(wanting)
        return tuple(found)

    def line(self, field: str) -> Worked | None:
        """How an earlier field was worked, where it was."""
        return self._worked.get(field)

    def known(self, field: str) -> bool:
        """Whether an earlier field has a value."""
        return field in self._values

    def read_as(self, other: Desk) -> None:
        """What another desk has read and assumed counts as read and assumed here."""
        self._reading.update(other._reading)
        self._assumed.update(other._assumed)

    def read_row(self, row: Row, field: str) -> None:
        """What a field of a finished row was worked from counts as read here, and what was assumed as assumed."""
        reading, assumed = self._reading, row.assumed
        for pointer in row.inputs.get(field, ()):
            reading[pointer] = None
            if pointer in assumed:
                self._assumed[pointer] = assumed[pointer]

    def beside(self) -> Desk:
        """A desk for trying something out, of which nothing is noted here."""
        return Desk(self._type, "", "", "")

    def row(self) -> Row:
        """The finished row."""
        return Row(
            self._type.kind, self._pointer, self._part, self._label,
            self._values, self._worked, self._inputs, self._missing, self._outside, self._failed, self._assumed,
        )  # fmt: skip

    def _note(self, source: Input) -> None:
        reading = self._reading
        reading[source.pointer] = None
        for pointer in source.also:
            reading[pointer] = None
        if source.assumed:
            self._assumed[source.pointer] = source.assumed

    def _earlier(self, field: str) -> Value:
        reading = self._reading
        for pointer in self._inputs.get(field, ()):
            reading[pointer] = None
        if field in self._values:
            return self._values[field]
        if field in self._missing:
            raise Missing(self._missing[field])
        if field in self._outside:
            raise OutsideRulebook(self._outside[field])
        if field in self._failed:
            raise NotPossible(self._failed[field])
        raise Absent(f"{self._type.kind} {self._label}: {field} was not worked out before it was used")

    def _value(self, value: object) -> Value:
        if isinstance(value, list | tuple):
            return tuple(value)
        assert isinstance(value, int | float | str | bool)
        return value

    def _keep(self, field: str, value: Value) -> None:
        if field not in self._type.by_name:
            raise Absent(f"{field} is not a field of {self._type.kind}")
        if isinstance(value, float) and not math.isfinite(value):
            self._failed[field] = f"{field} came out as {value}"
        else:
            self._values[field] = value


class Once(Generic[T]):
    """Something worked once for several rows. Each row that takes it has read what it was worked from, and lacks what
    it lacks."""

    def __init__(self, row_type: RowType, work: Callable[[Desk], T]) -> None:
        self._desk = Desk(row_type, "", "", "")
        self._work: Callable[[Desk], T] | None = work
        self._result: T | None = None
        self._error: Exception | None = None

    def take(self, desk: Desk) -> T:
        """The result, or what was raised instead of it."""
        work = self._work
        if work is not None:
            # Let go of at once, as is where an error came from: both lead back here, and circles are freed late.
            self._work = None
            try:
                self._result = work(self._desk)
            except (Missing, OutsideRulebook, NotPossible, ArithmeticError, ValueError) as error:
                self._error = error.with_traceback(None)
        desk.read_as(self._desk)
        if self._error is not None:
            raise self._error.with_traceback(None)
        return self._result  # type: ignore[return-value]


def least(desk: Desk, items: Iterable[S], work: Callable[[Desk, S], float]) -> list[float]:
    """What `work` makes of each item, the least first; what makes it the least is noted first, so that a finding
    stands there. Raises one Missing that names everything wanting."""
    tried: list[tuple[float, S]] = []
    wanting: list[str] = []
    for item in items:
        try:
            tried.append((work(desk.beside(), item), item))
        except Missing as missing:
            wanting.extend(missing.pointers)
    if wanting:
        raise Missing(wanting)
    tried.sort(key=lambda one: one[0])
    return [work(desk, item) for _, item in tried]


def kept(plan: Plan, key: Hashable, row_type: RowType, desk: Desk, work: Callable[[Desk], T]) -> T:
    """What `work` gives, worked once for the whole plan: each row that asks with the same key has read and lacks what
    it was worked from. The key must hold all that the work depends on besides the plan."""
    if key not in plan.reckoned:
        plan.reckoned[key] = Once(row_type, work)
    result: T = plan.reckoned[key].take(desk)
    return result
