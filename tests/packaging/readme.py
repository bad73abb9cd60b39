"""The README's own examples: finds them, runs them, and, as a script, puts in what they print today."""

from __future__ import annotations

import contextlib
import io
import os
import re
from pathlib import Path

from plumbrule.cli import main

ROOT = Path(__file__).resolve().parent.parent.parent
README = ROOT / "README.md"
PROMPT = "$ plumbrule "
_DIGEST = re.compile(r"(?<=rulebook )[0-9.]+ \([0-9a-f]{8}\)")
_BLOCK = re.compile(r"^```(?P<kind>[a-z]+)\n(?P<text>.*?)^```$", re.MULTILINE | re.DOTALL)


def blocks(kind: str) -> list[str]:
    """What stands in the README's blocks of this kind."""
    return [found["text"] for found in _BLOCK.finditer(README.read_text("utf-8")) if found["kind"] == kind]


def printed(command: str) -> str:
    """What `plumbrule` prints for the words after the prompt, run at the root of the checkout."""
    said = io.StringIO()
    here = Path.cwd()
    os.chdir(ROOT)
    try:
        with contextlib.redirect_stdout(said):
            main(command.removeprefix(PROMPT).split())
    finally:
        os.chdir(here)
    return said.getvalue()


def renewed(text: str) -> str:
    """The README with what each of its commands prints today. A rulebook of another digest is no news by itself."""

    def run(found: re.Match[str]) -> str:
        first = found["text"].partition("\n")[0]
        if not first.startswith(PROMPT):
            return found[0]
        now = f"```{found['kind']}\n{first}\n{printed(first)}```"
        return found[0] if _DIGEST.sub("", now) == _DIGEST.sub("", found[0]) else now

    return _BLOCK.sub(run, text)


if __name__ == "__main__":
    os.environ.pop("COLUMNS", None)
    README.write_text(renewed(README.read_text("utf-8")), encoding="utf-8")
