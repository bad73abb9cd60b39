"""What all tests share: the same random examples on every machine, no silent skip, and one meaning of "the checkout".

`pytest --wheel` runs against an installed wheel: it refuses to start where `plumbrule` is the one of this checkout.
"""

from __future__ import annotations

import os
from collections.abc import Generator
from pathlib import Path
from typing import TypeVar

import pytest
from hypothesis import settings

ROOT = Path(__file__).resolve().parent.parent
# What no installation can mend: the tests may run as a user whom no file can be kept from.
EXCUSED = "the super-user may read anything"
Report = TypeVar("Report", pytest.TestReport, pytest.CollectReport)

# Nothing may depend on how busy the machine is, and a red run must be red again when it is repeated.
# `pytest --hypothesis-profile=explore` goes looking where no run has been before.
settings.register_profile("settled", derandomize=True, deadline=None, database=None)
settings.register_profile("explore", deadline=None, print_blob=True)
settings.load_profile("settled")

# What the environment of whoever runs the tests says must not change a report.
for name in ("SOURCE_DATE_EPOCH", "COLUMNS", "NO_COLOR", "FORCE_COLOR"):
    os.environ.pop(name, None)


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--wheel", action="store_true", help="plumbrule must be an installed wheel, not this checkout")


def pytest_configure(config: pytest.Config) -> None:
    if config.getoption("--wheel"):
        _refuse_the_checkout()


def _refuse_the_checkout() -> None:
    import plumbrule
    from plumbrule import shipped

    places = [Path(plumbrule.__file__), *(shipped.folder(name) for name in ("rules", "schema", "plans"))]
    ours = [ROOT / name for name in ("linter", "rules", "schema", "plans")]
    for place in places:
        if any(place.resolve().is_relative_to(folder) for folder in ours):
            raise pytest.UsageError(f"--wheel: {place} is part of this checkout, not of an installed wheel")


@pytest.fixture(scope="session")
def checkout() -> Path:
    """The root of the repository."""
    return ROOT


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport() -> Generator[None, pytest.TestReport, pytest.TestReport]:
    return _no_skip((yield))


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report() -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    return _no_skip((yield))


def _no_skip(report: Report) -> Report:
    """With CI set, a test that was left out has failed: there everything is installed that a test can want."""
    if report.skipped and os.environ.get("CI") and EXCUSED not in str(report.longrepr):
        report.outcome = "failed"
        report.longrepr = f"left out, which no run with CI set may do: {report.longrepr}"
    return report
