"""What may be loaded, and how much of it. Start-up time is imports; these numbers do not depend on the machine."""

from __future__ import annotations

# Modules beyond those that a bare interpreter has: ours, and all others. Ours grow with what is worked out; the others
# are what libraries bring along; the slack is for other versions of Python and of them.
MOST_MODULES = {"--version": (5, 15), "inspect": (320, 250)}

# Found by name in `sys.modules`.
_HEAVY = {
    "asyncio", "cel_expr_python", "click", "difflib", "hypothesis", "jinja2", "jsonpatch", "jsonpointer", "jsonschema",
    "lsprotocol", "multiprocessing", "numpy", "pygls", "pygments", "requests", "rich", "shapely", "shtab", "sympy",
    "unittest", "urllib.request", "xml.etree.ElementTree", "yaml",
}  # fmt: skip
ABSENT_FROM_INSPECT = frozenset(_HEAVY | {"plumbrule.teaching", "plumbrule.report.sarif", "plumbrule.report.junit"})
ABSENT_FROM_VERSION = frozenset(
    ABSENT_FROM_INSPECT
    | {"argparse", "dataclasses", "email", "importlib.metadata", "inspect", "json", "pathlib", "re"}
    | {"pydantic", "ruamel"}
)
