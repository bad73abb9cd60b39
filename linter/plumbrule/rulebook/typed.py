"""The expressions of one rule, read, and checked against the catalogue and the rule's own settings."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from contextlib import suppress

from plumbrule.catalogue.fact import RowType
from plumbrule.language import BadExpression, Expression, Number, Truth, Type, caret, check, expression
from plumbrule.language.nodes import Binary, walk
from plumbrule.reading.fault import Fault
from plumbrule.reading.places import Document
from plumbrule.reading.spelling import nearest
from plumbrule.reading.units import CONSTANTS, DENSITY, EXPANSION, NUMBER, si_unit
from plumbrule.rulebook.file import RuleFile
from plumbrule.rulebook.rule import Bounds, Setting

_ORDERED = ("<", "<=", ">", ">=")


class Typed:
    """Collects every fault of a rule's expressions, so that all are told at once."""

    def __init__(self, document: Document, file: RuleFile, row: RowType, settings: Mapping[str, Setting]) -> None:
        self.faults: list[Fault] = []
        self._document, self._file, self._row = document, file, row
        self._names: dict[str, Type] = row.types()
        for name, setting in settings.items():
            if name in self._names or name in CONSTANTS:
                self.fault(
                    f"/settings/{name}", f"`{name}` is a field of {row.kind} or a unit already.", "Choose another name."
                )
            self._names[name] = setting.type

    def fault(self, pointer: str, found: str, write: str) -> None:
        """Records a fault at `pointer` of the rule file."""
        self.faults.append(Fault(self._document.path, self._document.place(pointer), pointer, found, write))

    def when(self) -> Expression | None:
        """The condition under which the rule applies."""
        return self._read("/when", self._file.when, Truth())

    def that(self) -> Expression | None:
        """The truth that is required. Quantities may not be compared in it: they would have no margin."""
        found = self._read("/require/that", self._file.require.that, Truth())
        if found is not None:
            for node in walk(found.node):
                if isinstance(node, Binary) and node.operator in _ORDERED:
                    kind = check(node.left, self._names)
                    if not (isinstance(kind, Number) and kind.dimension == NUMBER):
                        self._fault_in(
                            "/require/that", found.source, node.start, node.end,
                            "A quantity is compared here, so the finding could show no margin.",
                            "Write it as measure with at_least, at_most or between.",
                        )  # fmt: skip
        return found

    def measure(self) -> tuple[Expression | None, Bounds, str]:
        """The measure, its bounds in the same dimension, and the SI unit it comes out in."""
        require = self._file.require
        lower, upper = require.at_least, require.at_most
        places = ["/require/at_least", "/require/at_most"]
        if require.between is not None:
            if lower is not None or upper is not None:
                self.fault("/require/between", "between stands beside at_least or at_most.", "Give one or the other.")
            lower, upper = require.between
            places = ["/require/between/0", "/require/between/1"]
        measure = self._read("/require/measure", require.measure)
        if measure is None:
            return None, Bounds(None, None), ""
        if not isinstance(measure.type, Number):
            self.fault("/require/measure", "measure does not give a number.", "For words and truths write `that`.")
            return None, Bounds(None, None), ""
        if measure.type.dimension in (DENSITY, EXPANSION):
            small = "Densities and expansions are kept as very small numbers, too near to each other to be told apart."
            self.fault("/require/measure", small, "Judge the mass or the movement that comes of it.")
        if lower is None and upper is None:
            self.fault("/require", "measure has no limit.", "Add at_least, at_most or between.")
        read = [self._limit(place, text, measure) for place, text in zip(places, (lower, upper), strict=True)]
        return measure, Bounds(*read), self._unit(measure)

    def _limit(self, pointer: str, text: str | float | None, measure: Expression) -> Expression | None:
        return self._read(pointer, None if text is None else str(text), measure.type, bare=True)

    def _unit(self, measure: Expression) -> str:
        assert isinstance(measure.type, Number)
        for name in sorted(measure.reads):
            fact = self._row.by_name.get(name)
            if fact is not None and fact.type == measure.type:
                return fact.unit
        with suppress(KeyError):
            return si_unit(measure.type.dimension)
        self.fault(
            "/require/measure", "measure comes out in a unit that nothing is shown in.", "Divide it into one that is."
        )
        return ""

    def _read(
        self, pointer: str, text: str | None, wanted: Type | None = None, bare: bool = False
    ) -> Expression | None:
        if text is None:
            return None
        try:
            found = expression(text, self._names, wanted)
        except BadExpression as error:
            self._fault_in(pointer, text, error.start, error.end, error.message, error.hint)
            return None
        if not bare and not found.reads & self._row.by_name.keys():
            nothing = f"It reads no field of {self._row.kind}."
            self._fault_in(pointer, text, 0, len(text), nothing, "Name what is looked at.")
        return found

    def _fault_in(self, pointer: str, text: str, start: int, end: int, found: str, write: str) -> None:
        pointed = "\n".join("    " + line for line in caret(text, start, end).splitlines())
        self.fault(pointer, found, f"{write}\n{pointed}")


def placeholders(says: str, row: RowType, fault: Callable[[str, str, str], None]) -> None:
    """Checks the `{…}` of a sentence: `row`, `measure`, `limit`, or a field of the row."""
    import re

    known = ("row", "measure", "limit", *row.by_name)
    for name in re.findall(r"\{([^{}]*)\}", says):
        if name not in known:
            near = nearest(name, known)
            fault("/says", f"`{{{name}}}` cannot be filled in.", f"Did you mean `{{{near}}}`?" if near else "")
