"""The command `plumbrule`: what was asked for, done by one module a command, each loaded only when it is wanted."""

from __future__ import annotations

import sys
from collections.abc import Sequence

INTERRUPTED = 130


def main(argv: Sequence[str] | None = None) -> int:
    """Runs one command and gives its exit code: 0 passes, 1 findings at or above the level asked for, 2 something
    could not be read or was asked for wrongly."""
    words = list(sys.argv[1:] if argv is None else argv)
    if words == ["--version"]:
        from plumbrule import __version__

        print(f"plumbrule {__version__}")
        return 0
    from plumbrule.cli.patience import collect_rarely
    from plumbrule.cli.stream import Closed, Refused

    collect_rarely()
    try:
        from plumbrule.cli.arguments import read

        code = read(words)
        if not isinstance(code, int):
            code = code.run(code)
        sys.stdout.flush()
        return code
    except Refused as refused:
        print(f"plumbrule: {refused}", file=sys.stderr)
        return 2
    except (BrokenPipeError, Closed):
        return _closed()
    except KeyboardInterrupt:
        return INTERRUPTED


def _closed() -> int:
    """Whoever was reading has gone: say nothing more, and keep the interpreter from trying to."""
    import os
    from contextlib import suppress

    with suppress(OSError, ValueError, AttributeError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return 141
