"""The rule language: a named subset of CEL with dimensions, closed word lists, unknowns and a tolerance."""
