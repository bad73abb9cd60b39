"""Which plans are named: folders walked in one order, links and dot files left alone, each plan once."""

from __future__ import annotations

from pathlib import Path

import pytest

from plumbrule.cli.plans import named
from plumbrule.cli.stream import Refused


def tree(root: Path) -> Path:
    for name in ("b.yaml", "a.yml", "notes.txt", ".hidden.yaml", "sub/C.YAML", ".git/x.yaml", "sub/.d/y.yaml"):
        path = root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("plan: 1\n")
    (root / "link.yaml").symlink_to(root / "b.yaml")
    (root / "elsewhere").symlink_to(root / "sub", target_is_directory=True)
    (root / "folder.yaml").mkdir()
    return root


def test_a_folder_is_walked(tmp_path: Path) -> None:
    found = [Path(plan.path).relative_to(tmp_path).as_posix() for plan in named([str(tree(tmp_path))])]
    assert found == ["a.yml", "b.yaml", "sub/C.YAML"]


def test_each_plan_once_in_the_order_named(tmp_path: Path) -> None:
    tree(tmp_path)
    first = str(tmp_path / "b.yaml")
    assert [plan.path for plan in named([first, str(tmp_path), first])] == [
        first, str(tmp_path / "a.yml"), str(tmp_path / "sub" / "C.YAML"),
    ]  # fmt: skip


def test_the_house_file_is_no_plan(tmp_path: Path) -> None:
    tree(tmp_path)
    found = [Path(plan.path).name for plan in named([str(tmp_path)], but_not=tmp_path / "b.yaml")]
    assert found == ["a.yml", "C.YAML"]


def test_a_file_is_taken_as_it_is_named(tmp_path: Path) -> None:
    assert [plan.path for plan in named(["no such plan", "a\x00b"])] == ["no such plan", "a\x00b"]


def test_what_is_refused(tmp_path: Path) -> None:
    with pytest.raises(Refused, match="no plan was named"):
        named([])
    with pytest.raises(Refused, match="there is no plan in"):
        named([str(tmp_path)])
