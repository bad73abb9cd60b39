"""`--version` is asked by scripts all day: it loads next to nothing."""

from __future__ import annotations

import subprocess
import sys

from command import run

from plumbrule import __version__


def test_version() -> None:
    assert run("--version") == (0, f"plumbrule {__version__}\n", "")


def test_version_loads_next_to_nothing() -> None:
    code = (
        "import sys; before = set(sys.modules); from plumbrule.cli import main; main(['--version']); "
        "print(*sorted(set(sys.modules) - before))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    version, modules = done.stdout.splitlines()
    loaded = modules.split()
    assert version == f"plumbrule {__version__}"
    assert len(loaded) <= 12, loaded
    heavy = {"argparse", "json", "pydantic", "ruamel", "re", "dataclasses", "pathlib", "importlib.metadata", "rich"}
    assert not heavy & {name.partition(".")[0] for name in loaded}


def test_as_a_module() -> None:
    done = subprocess.run([sys.executable, "-m", "plumbrule", "--version"], capture_output=True, text=True, check=True)
    assert done.stdout == f"plumbrule {__version__}\n"
