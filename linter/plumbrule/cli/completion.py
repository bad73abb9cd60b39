"""`plumbrule completion`: a script that lets a shell complete the command's words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from plumbrule.cli import stream
from plumbrule.cli.arguments import SHELLS, parsers

if TYPE_CHECKING:
    from plumbrule.cli.arguments import Asked


def run(asked: Asked) -> int:
    """0, with the script on standard output."""
    if asked.shell is None:
        raise stream.Refused(f"completion: no shell was named. Write: plumbrule completion {SHELLS[0]}")
    import shtab

    parser, _ = parsers()
    stream.put([shtab.complete(parser, asked.shell), "\n"], exact=True)
    return 0
