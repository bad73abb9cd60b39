"""An editable install: the checkout's rules are the ones in force, and no second set lies about to grow old."""

from __future__ import annotations

import subprocess
import sys
import venv
from pathlib import Path

import pytest
from packages import files_in, pip

BUILD = "import sys; from hatchling.build import build_editable; build_editable(sys.argv[1])"
ASK = (
    "import plumbrule; from plumbrule import shipped; "
    "print(plumbrule.__file__, *(shipped.folder(n) for n in ('rules', 'schema', 'plans')), sep='\\n')"
)


@pytest.fixture(scope="module")
def editable(checkout: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel that `pip install -e` would install."""
    folder = tmp_path_factory.mktemp("editable")
    done = subprocess.run(
        [sys.executable, "-c", BUILD, str(folder)], cwd=checkout, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    (made,) = folder.iterdir()
    return made


@pytest.fixture
def environment(editable: Path, tmp_path: Path) -> Path:
    """A fresh environment with the editable install and nothing else in it."""
    venv.create(tmp_path / "fresh", with_pip=False, symlinks=True)
    pip("--python", tmp_path / "fresh" / "bin" / "python", "install", "--no-deps", "--no-index", editable)
    return tmp_path / "fresh"


def places(environment: Path) -> list[Path]:
    python = environment / "bin" / "python"
    done = subprocess.run([python, "-c", ASK], cwd=environment, env={}, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return [Path(line) for line in done.stdout.splitlines()]


def here(checkout: Path) -> list[Path]:
    names = ("linter/plumbrule/__init__.py", "rules", "schema", "plans")
    return [checkout.joinpath(*name.split("/")) for name in names]


def test_it_copies_no_rule_schema_or_plan(editable):
    assert not [name for name in files_in(editable) if not name.endswith(".pth")]


def test_the_checkout_is_what_is_read(environment, checkout):
    assert places(environment) == here(checkout)


def test_a_twin_in_the_installed_packages_is_not_read(environment, checkout):
    """Other build tools, or an install that went before, may leave one."""
    (packages,) = environment.glob("lib/python*/site-packages")
    for name in ("rules", "schema", "plans"):
        (packages / "plumbrule" / name).mkdir(parents=True)
        (packages / "plumbrule" / name / "stale.yaml").write_text("rule: stale\n")
    assert places(environment) == here(checkout)


def test_a_twin_inside_the_sources_is_not_read(environment, checkout, tmp_path):
    """A copy of the data beside the modules of a checkout: the edited folders at its root are still the ones read."""
    package = tmp_path / "checkout" / "linter" / "plumbrule"
    package.mkdir(parents=True)
    for name in ("__init__.py", "shipped.py"):
        (package / name).write_bytes((checkout / "linter" / "plumbrule" / name).read_bytes())
    (tmp_path / "checkout" / "pyproject.toml").touch()
    for name in ("rules", "schema", "plans"):
        (package / name).mkdir()
        (tmp_path / "checkout" / name).mkdir()
    done = subprocess.run(
        [sys.executable, "-c", ASK],
        env={"PYTHONPATH": str(package.parent)},
        capture_output=True,
        text=True,
        check=False,
    )
    assert [Path(line) for line in done.stdout.splitlines()][1:] == here(tmp_path / "checkout")[1:], done.stderr
