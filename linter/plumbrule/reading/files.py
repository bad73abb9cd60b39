"""From a path to bytes, without trusting what the path leads to."""

from __future__ import annotations

import os
import stat
from pathlib import Path

from plumbrule.reading.characters import LARGEST, refuse


def load(path: Path) -> bytes:
    """The bytes of an ordinary file of at most 1 MB. Raises Unreadable for anything else: nothing there, a folder, a
    pipe or device (neither is waited for), no permission, a larger file (which is not loaded)."""
    name = str(path)
    try:
        # Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
        descriptor = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    except FileNotFoundError:
        raise refuse(name, "There is no such file.", _nearby(path)) from None
    except IsADirectoryError:
        raise refuse(name, "This is a folder.", "Name a file in it.") from None
    except PermissionError:
        # Some systems answer so when a folder is opened.
        if path.is_dir():
            raise refuse(name, "This is a folder.", "Name a file in it.") from None
        raise refuse(name, "You have no permission to read this file.", "Ask its owner for it.") from None
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or "The name cannot be used"
        raise refuse(name, f"The file cannot be opened: {reason}.", "Check the name.") from None
    try:
        about = os.fstat(descriptor)
        if stat.S_ISDIR(about.st_mode):
            raise refuse(name, "This is a folder.", "Name a file in it.")
        if not stat.S_ISREG(about.st_mode):
            raise refuse(name, "This is not an ordinary file but a pipe or a device.", "Name a text file.")
        if about.st_size > LARGEST:
            found = f"The file has {about.st_size:,} bytes."
            raise refuse(name, found, f"A plan has at most {LARGEST:,}: is this the right file?")
        with os.fdopen(descriptor, "rb", closefd=False) as file:
            return file.read(LARGEST + 1)
    except OSError as error:
        raise refuse(name, f"The file cannot be read: {error.strerror}.", "Check the disk.") from None
    finally:
        os.close(descriptor)


def _nearby(path: Path) -> str:
    """A file of nearly the same name, if there is one."""
    from plumbrule.reading.spelling import nearest

    try:
        names = [entry.name for _, entry in zip(range(1000), os.scandir(path.parent), strict=False)]
    except OSError:
        return f"There is no folder {path.parent} either: check the name."
    meant = nearest(path.name, names)
    return f"Did you mean {path.parent / meant}?" if meant else "Check the name."
