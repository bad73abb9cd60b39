"""The wheel and the source archive, built once from this checkout, and the wheel that the source archive gives."""

from __future__ import annotations

import subprocess
import sys
import tarfile
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import pytest
from packages import build, pip


class Built(NamedTuple):
    wheel: Path
    sdist: Path
    wheel_of_sdist: Path


@pytest.fixture(scope="session")
def built(checkout: Path, tmp_path_factory: pytest.TempPathFactory) -> Built:
    folder = tmp_path_factory.mktemp("built")
    for name in ("wheel", "sdist", "unpacked", "again"):
        (folder / name).mkdir()
    wheel = build(checkout, folder / "wheel", "wheel")
    sdist = build(checkout, folder / "sdist", "sdist")
    with tarfile.open(sdist) as archive:
        archive.extractall(folder / "unpacked", filter="data")
    (project,) = (folder / "unpacked").iterdir()
    return Built(wheel, sdist, build(project, folder / "again", "wheel"))


@pytest.fixture(scope="session")
def installed(built: Built, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder into which the wheel, and nothing else, was installed."""
    folder = tmp_path_factory.mktemp("installed")
    pip("install", "--no-deps", "--no-index", "--target", folder, built.wheel)
    return folder


@pytest.fixture
def outside(tmp_path: Path, installed: Path) -> Callable[..., subprocess.CompletedProcess[str]]:
    """Runs Python in an empty folder, with the installed wheel before any other plumbrule."""
    here = tmp_path / "elsewhere"
    here.mkdir()

    def run(*words: object) -> subprocess.CompletedProcess[str]:
        command = [sys.executable, *map(str, words)]
        environment = {"PYTHONPATH": str(installed), "PATH": "", "PYTHONDONTWRITEBYTECODE": "1"}
        return subprocess.run(command, cwd=here, env=environment, capture_output=True, text=True, check=False)

    return run
