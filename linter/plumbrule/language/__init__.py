"""The rule language: a named subset of CEL with dimensions, closed word lists, unknowns and a tolerance."""

from __future__ import annotations

from plumbrule.language.check import check, check_as, refuse_unit_names
from plumbrule.language.data import from_data, to_data, type_from_data, type_to_data
from plumbrule.language.expression import Expression, expression, expression_from_data, expression_to_data
from plumbrule.language.faults import BadExpression, CannotWork, caret
from plumbrule.language.manual import DEVIATIONS, SUBSET
from plumbrule.language.nodes import Node, reads
from plumbrule.language.show import rework, show
from plumbrule.language.tree import parse
from plumbrule.language.types import ListOf, Number, Truth, Type, Word, describe, describe_dimension
from plumbrule.language.work import TOLERANCE, Value, Values, Work, compile_, equal, less

__all__ = [
    "DEVIATIONS",
    "SUBSET",
    "TOLERANCE",
    "BadExpression",
    "CannotWork",
    "Expression",
    "ListOf",
    "Node",
    "Number",
    "Truth",
    "Type",
    "Value",
    "Values",
    "Word",
    "Work",
    "caret",
    "check",
    "check_as",
    "compile_",
    "describe",
    "describe_dimension",
    "equal",
    "expression",
    "expression_from_data",
    "expression_to_data",
    "from_data",
    "less",
    "parse",
    "reads",
    "refuse_unit_names",
    "rework",
    "show",
    "to_data",
    "type_from_data",
    "type_to_data",
]
