"""Imports run one way, and the check that says so does see an import that runs the other way."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tomllib
from itertools import pairwise, permutations
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent


def layers() -> list[list[str]]:
    """The layers of pyproject.toml, highest first; packages of one layer know nothing of each other."""
    (contract,) = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["tool"]["importlinter"]["contracts"]
    return [[name.strip() for name in layer.split("|")] for layer in contract["layers"]]


def forbidden() -> list[tuple[str, str]]:
    """Who may not import whom: each package its upper neighbours, and its neighbours of the same layer; both ways
    round where there are two."""
    upward = [(low, high) for above, below in pairwise(layers()) for high in above for low in below]
    sideways = [pair for layer in layers() for pair in permutations(layer, 2)]
    return upward + sideways


def lint(project: Path) -> subprocess.CompletedProcess[str]:
    command = Path(sys.executable).with_name("lint-imports")
    environment = {**os.environ, "PYTHONPATH": str(project / "linter"), "NO_COLOR": "1", "COLUMNS": "200"}
    return subprocess.run(
        [command, "--no-cache"], cwd=project, env=environment, capture_output=True, text=True, check=False
    )


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    """A checkout to spoil."""
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    shutil.copytree(ROOT / "linter", tmp_path / "linter", ignore=shutil.ignore_patterns("__pycache__", ".*"))
    return tmp_path


def test_imports_run_one_way():
    done = lint(ROOT)
    assert done.returncode == 0, done.stdout
    assert "1 kept, 0 broken" in done.stdout


def test_a_copy_is_judged_as_the_checkout_is(copy):
    assert lint(copy).returncode == 0


@pytest.mark.parametrize(("importer", "imported"), forbidden(), ids=lambda name: name)
def test_an_import_the_other_way_is_seen(copy, importer, imported):
    package = copy / "linter" / "plumbrule"
    assert (package / importer).exists() or (package / f"{importer}.py").exists()
    target = package / importer
    module = target / "seeded.py" if target.is_dir() else target.with_suffix(".py")
    with module.open("a", encoding="utf-8") as file:
        file.write(f"\n\ndef seeded() -> None:\n    import plumbrule.{imported}\n")
    done = lint(copy)
    assert done.returncode == 1, done.stdout
    assert "0 kept, 1 broken" in done.stdout
    assert f"plumbrule.{importer} is not allowed to import plumbrule.{imported}" in done.stdout


def test_a_package_that_has_no_layer_is_seen(copy):
    attic = copy / "linter" / "plumbrule" / "attic"
    attic.mkdir()
    (attic / "__init__.py").touch()
    done = lint(copy)
    assert done.returncode == 1, done.stdout
    assert "plumbrule.attic" in done.stdout
