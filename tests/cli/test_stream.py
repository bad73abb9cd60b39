"""Where a report goes: colour and width of a terminal, a file replaced in one step, a reader that has gone."""

from __future__ import annotations

import os
import stat
import sys
from pathlib import Path

import pytest

from plumbrule.cli import main, stream


class Terminal:
    def isatty(self) -> bool:
        return True

    def fileno(self) -> int:
        raise OSError


def test_colour_is_for_terminals(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    assert not stream.in_colour()
    monkeypatch.setattr(sys, "stdout", Terminal())
    assert stream.in_colour()
    monkeypatch.setenv("NO_COLOR", "1")
    assert not stream.in_colour()
    monkeypatch.delenv("NO_COLOR")
    monkeypatch.setenv("TERM", "dumb")
    assert not stream.in_colour()


@pytest.mark.parametrize(("asked", "given"), [("72", 72), ("", 100), ("wide", 100), ("0", 100), ("-3", 100)])
def test_width(monkeypatch: pytest.MonkeyPatch, asked: str, given: int) -> None:
    monkeypatch.setenv("COLUMNS", asked)
    monkeypatch.setattr(sys, "stdout", Terminal())
    assert stream.columns() == given


def test_a_file_is_replaced_whole_and_keeps_its_mode(tmp_path: Path) -> None:
    target = tmp_path / "report.txt"
    target.write_text("old")
    target.chmod(0o640)
    stream.replace(stream.checked_target(target), ["new ", "×\n"])
    assert target.read_text(encoding="utf-8") == "new ×\n"
    assert stat.S_IMODE(target.stat().st_mode) == 0o640
    assert [path.name for path in tmp_path.iterdir()] == ["report.txt"]


def test_a_report_that_breaks_off_leaves_the_old_one(tmp_path: Path) -> None:
    target = tmp_path / "report.txt"
    target.write_text("old")

    def pieces() -> object:
        yield "half"
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        stream.replace(target, pieces())  # type: ignore[arg-type]
    assert target.read_text() == "old"
    assert [path.name for path in tmp_path.iterdir()] == ["report.txt"]


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    real, link = tmp_path / "real.txt", tmp_path / "link.txt"
    real.write_text("old")
    link.symlink_to(real)
    stream.replace(stream.checked_target(link), ["new"])
    assert link.is_symlink()
    assert real.read_text() == "new"


def test_what_is_refused(tmp_path: Path) -> None:
    with pytest.raises(stream.Refused, match="there is no folder"):
        stream.checked_target(tmp_path / "none" / "report.txt")
    assert not (tmp_path / "none").exists()
    with pytest.raises(stream.Refused, match="not an ordinary file"):
        stream.checked_target(tmp_path)
    with pytest.raises(stream.Refused, match="not an ordinary file"):
        stream.checked_target(Path(os.devnull))
    os.mkfifo(tmp_path / "pipe")
    with pytest.raises(stream.Refused, match="not an ordinary file"):
        stream.checked_target(tmp_path / "pipe")
    loop = tmp_path / "loop"
    loop.symlink_to(loop)
    with pytest.raises(stream.Refused):
        stream.replace(stream.checked_target(loop), ["x"])


def test_an_interrupt_is_quiet(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    def interrupt(_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("plumbrule.cli.arguments.read", interrupt)
    assert main(["inspect", "x"]) == 130
    assert capsys.readouterr() == ("", "")
