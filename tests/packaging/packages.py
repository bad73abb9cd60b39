"""Building and installing, as the packaging tests do it: with the tools of this environment and without a network."""

from __future__ import annotations

import subprocess
import sys
import zipfile
from pathlib import Path


def build(project: Path, into: Path, *targets: str) -> Path:
    """The one file that hatchling makes in `into`."""
    chosen = [word for target in targets for word in ("--target", target)]
    command = [sys.executable, "-m", "hatchling", "build", "--directory", str(into), *chosen]
    done = subprocess.run(command, cwd=project, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    (made,) = into.iterdir()
    return made


def files_in(archive: Path) -> dict[str, bytes]:
    """What a wheel holds, by name, without its own records."""
    with zipfile.ZipFile(archive) as opened:
        names = [name for name in opened.namelist() if ".dist-info/" not in name]
        return {name: opened.read(name) for name in names}


def pip(*words: object) -> None:
    """Runs pip, and fails with what it said."""
    command = [sys.executable, "-m", "pip", "--disable-pip-version-check", "-q", *map(str, words)]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
