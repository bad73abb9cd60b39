"""Rule packs: installed distributions that carry a folder of rules. Data only: nothing of a pack is imported or run."""

from __future__ import annotations

from collections.abc import Sequence
from importlib.metadata import Distribution, distributions
from pathlib import Path

from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import Document
from plumbrule.reading.spelling import nearest

GROUP = "plumbrule.rulebooks"


def find_packs(names: Sequence[str], document: Document) -> list[Path]:
    """The folders of the packs that a house file names. A pack says where its rules lie by an entry point of the group
    `plumbrule.rulebooks` whose value is a folder inside its distribution. Raises Unreadable for a pack that is not
    installed or whose folder lies outside of it."""
    if not names:
        return []
    installed: dict[str, tuple[Distribution, str]] = {}
    for distribution in distributions():
        for entry in distribution.entry_points:
            if entry.group == GROUP:
                installed[entry.name] = (distribution, entry.value)
    folders, faults = [], []
    for place, name in enumerate(names):
        pointer = f"/packs/{place}"
        folder = _folder(*installed[name]) if name in installed else None
        if folder is not None:
            folders.append(folder)
            continue
        if name in installed:
            found, write = f"The pack {name} names a folder that is not its own.", "Ask who made the pack."
        else:
            near = nearest(name, tuple(installed))
            found = f"No rule pack {name} is installed."
            write = f"Did you mean {near}?" if near else "Install it, or take it out of the house file."
        faults.append(Fault(document.path, document.place(pointer), pointer, found, write))
    if faults:
        raise Unreadable(faults)
    return folders


def _folder(distribution: Distribution, value: str) -> Path | None:
    """The folder, found through the list of files the distribution brought: asking the import system for it would run
    the pack's own code."""
    wanted = value.replace(".", "/").strip("/")
    root = Path(str(distribution.locate_file(""))).resolve()
    for file in distribution.files or ():
        if file.as_posix().startswith(wanted + "/"):
            folder = (root / wanted).resolve()
            return folder if folder.is_dir() and folder.is_relative_to(root) and folder != root else None
    return None
