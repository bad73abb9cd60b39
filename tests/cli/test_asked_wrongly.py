"""What was asked for wrongly gets one plain sentence on standard error, with what to write, and exit code 2."""

from __future__ import annotations

import pytest
from command import run


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["inspct", "x.yaml"], 'there is no command "inspct". Did you mean inspect?'),
        (["zzz"], 'there is no command "zzz". There are: inspect, workings, takeoff, rulebook, lesson, completion.'),
        (["--colour", "inspect"], "there is no option --colour"),
        (["inspect", "--formt", "json", "x"], "inspect: there is no option --formt. Did you mean --format?"),
        (
            ["inspect", "--format", "jsn", "x"],
            '--format: "jsn" is not one of text, json, sarif, junit: did you mean json?',
        ),
        (["inspect", "--stop-at", "stopwork", "x"], "did you mean stop-work?"),
        (["inspect", "--jobs", "0", "x"], '"0" is not a whole number from 1 to 64'),
        (["inspect", "--jobs", "²", "x"], '"²" is not a whole number from 1 to 64'),
        (["inspect", "--today", "1.3.2026", "x"], '"1.3.2026" is not a day; write it like 2026-01-31'),
        (["inspect", "--today", "2026-02-30", "x"], '"2026-02-30" is not a day'),
        (["inspect", "--out"], "--out: a value is missing after it"),
        (["completion", "fish"], '"fish" is not one of bash, zsh, tcsh'),
        (["completion"], "no shell was named. Write: plumbrule completion bash"),
    ],
)
def test_one_sentence(words: list[str], said: str) -> None:
    ran = run(*words)
    assert ran.code == 2
    assert ran.out == ""
    assert said in ran.err
    assert ran.err.count("\n") == 1
    assert ran.err.startswith("plumbrule: ")


def test_nothing_asked_prints_help_and_fails() -> None:
    ran = run()
    assert ran.code == 2
    assert "inspect" in ran.out


@pytest.mark.parametrize("command", ["inspect", "workings", "rulebook", "lesson", "completion"])
def test_help_of_each_command(command: str) -> None:
    ran = run(command, "--help")
    assert ran.code == 0
    assert f"usage: plumbrule {command}" in ran.out
    assert max(len(line) for line in ran.out.splitlines()) <= 100


@pytest.mark.parametrize("shell", ["bash", "zsh", "tcsh"])
def test_completion_knows_the_words(shell: str) -> None:
    ran = run("completion", shell)
    assert ran.code == 0
    for word in ("inspect", "workings", "stop-at", "format"):
        assert word in ran.out


def test_escapes_in_a_wrong_word_are_not_printed() -> None:
    assert "\x1b" not in run("insp\x1b[2Ject").err
