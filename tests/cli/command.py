"""The command run in this process, and a rule that every plan with an angle breaks."""

from __future__ import annotations

import contextlib
import io
import os
import sys
from pathlib import Path
from typing import NamedTuple

from plumbrule.cli import main

RULE = """\
rule: angle-longer-than-a-thumb
title: Angle longer than a thumb
level: {level}
looks_at: angle
require: {{measure: length, at_most: 10 * mm}}
says: "{{row}} is {{measure}} long; {{limit}} is allowed."
why: >
  No shelf hangs on an angle as short as a thumb, so that every plan with an angle breaks this rule. It is there so that
  a report has something to say.
sources: [{{id: thumb, clause: the first joint, basis: common practice}}]
caution: {{signal: NOTICE, text: This rule is for trying the command only.}}
defer: Whoever holds the thumb decides.
remedies: [{{change: length, go: smaller}}]
examples:
  breaks: [{{plan: display-shelf, at: /angles/ledge-back, measure: 70 in, by: hand}}]
  holds: [{{plan: display-shelf, at: /angles/ledge-back, patch: []}}]
since: 0.1.0
"""


class Ran(NamedTuple):
    code: int
    out: str
    err: str


class _Stdin:
    def __init__(self, source: bytes) -> None:
        self.buffer = io.BytesIO(source)

    def isatty(self) -> bool:
        return False


def run(*words: object, stdin: bytes | None = None) -> Ran:
    """`plumbrule` with these words."""
    out, err = io.StringIO(), io.StringIO()
    kept = sys.stdin
    try:
        if stdin is not None:
            sys.stdin = _Stdin(stdin)  # type: ignore[assignment]
        with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
            code = main([os.fspath(word) if isinstance(word, Path) else str(word) for word in words])
    finally:
        sys.stdin = kept
    return Ran(code, out.getvalue(), err.getvalue())


def thumb_rules(folder: Path, level: str = "stop-work") -> Path:
    """A rule folder with the one rule that every angle breaks."""
    (folder / "steel").mkdir(parents=True)
    (folder / "sources.yaml").write_text(
        "sources: {thumb: {title: The length of a thumb, published_by: anyone, where: on your hand}}\n"
    )
    (folder / "steel" / "angle-longer-than-a-thumb.yaml").write_text(RULE.format(level=level))
    return folder
