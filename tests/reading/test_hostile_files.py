"""Files that are broken or meant to break the reader: one clear message each, quickly, whatever is in them."""

from __future__ import annotations

import os
import stat
import subprocess
import sys
import time
from pathlib import Path

import pytest

from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.places import DEEPEST, LONGEST_SCALAR, MOST_FAULTS, MOST_VALUES, read, read_file


def faults(source: bytes) -> tuple[Fault, ...]:
    """The faults of a file, which must be found within a second of work."""
    begin = time.process_time()
    with pytest.raises(Unreadable) as refused:
        read(source, "plan.yaml")
    assert time.process_time() - begin < 2
    return refused.value.faults


def only(source: bytes) -> str:
    found = faults(source)
    assert len(found) == 1, [str(fault) for fault in found]
    return str(found[0])


@pytest.mark.parametrize(
    ("source", "message"),
    [
        (b"", "plan.yaml:1:1: The file is empty. Write `plan: 1` in its first line and the plan below it."),
        (b"\xef\xbb\xbf", "plan.yaml:1:1: The file is empty. Write `plan: 1` in its first line and the plan below it."),
        (b"# nothing yet\n",
         "plan.yaml:1:1: The file has only comments. Write `plan: 1` in its first line and the plan below it."),
        ("plan: 1\n".encode("utf-16"), "plan.yaml:1:1: The file is UTF-16 text. Save it as UTF-8."),
        ("plan: 1\n".encode("utf-16-le"), "plan.yaml:1:1: The file is UTF-16 text. Save it as UTF-8."),
        ("plan: 1\n".encode("utf-16-be"), "plan.yaml:1:1: The file is UTF-16 text. Save it as UTF-8."),
        ("plan: 1\n".encode("utf-32"), "plan.yaml:1:1: The file is UTF-32 text. Save it as UTF-8."),
        ("plan: 1\ntitle: Caf\xe9\n".encode("cp1252"),
         "plan.yaml:2:11: The byte E9 here is not UTF-8 (in Windows text it would be é). Save the file as UTF-8."),
        (b"%PDF-1.7\n", "plan.yaml:1:1: This is a PDF, not a text file. Give the plan as a text file in YAML."),
        (b"\x89PNG\r\n\x1a\n\x00\x00",
         "plan.yaml:1:1: This is a PNG picture, not a text file. Give the plan as a text file in YAML."),
        (b"PK\x03\x04rest",
         "plan.yaml:1:1: This is a zip archive or an office document, not a text file. "
         "Give the plan as a text file in YAML."),
        (b"plan: 1\nx: \x00\n",
         "plan.yaml:2:4: This is a binary file, or one with a null character. Give the plan as a text file in YAML."),
        (b"a: 1\nb: *x\n",
         "plan.yaml:2:4: *x repeats another part of the file. "
         "Write it out. Name a section or a drilling pattern instead."),
        (b"a: &x 1\n",
         "plan.yaml:1:4: Anchors make one line two places. Name a section or a drilling pattern instead."),
        (b"a: !!python/object:os.system x\n",
         "plan.yaml:1:4: tag:yaml.org,2002:python/object:os.syste is a tag, which asks for another type. "
         "Delete it; put text in quotes if it must stay text."),
        (b"<<: {a: 1}\n",
         "plan.yaml:1:1: << merges one part into another. "
         "Write the keys out, or name a section or a drilling pattern instead."),
        (b"%YAML 1.1\n---\na: 1\n", "plan.yaml:1:1: A line that starts with % is an order to the reader. Delete it."),
        (b"a: 1\n---\nb: 2\n",
         "plan.yaml:2:1: A second document starts here. Put one plan in a file, without a line of ---."),
        (b"? [a, b]\n: 1\n",
         "plan.yaml:1:3: A list or a group of keys stands where a key is needed. Write a plain word before the colon."),
        (b"a: 1\nb: 2\na: 3\n",
         "plan.yaml:3:1  /a: `a` is written twice; the first is on line 1. Keep one of them."),
        (b"s:\n  size: #10\n  length: 1 in\n",
         "plan.yaml:2:9  /s/size: size is empty. A bare # starts a comment: write No. 10."),
        (b"s: {size: #8, length: 1 in}\nb: 2\n",
         "plan.yaml:1:11: size is empty. A bare # starts a comment: write No. 8."),
        (b"a:\n\tb: 1\n", "plan.yaml:2:1: A tab stands here. Indent with spaces: two a step."),
        (b"width: 3: 4\n",
         "plan.yaml:1:9: There is a second colon in this line. Put one key a line, or braces round the inner keys: "
         "{key: value}. Text with a colon needs quotes."),
        (b'a: "3 in\nb: 2\n',
         "plan.yaml:1:4: A quotation mark opens here and does not close. Close it on the same line. "
         "Inches need no quotes: write 3 in, or quote the whole value."),
        (b"a: {b: 1\nc: 2\n",
         "plan.yaml:1:4: The brace { is not closed, or a comma is missing between two keys. "
         "Write {key: value, key: value}."),
        (b"a: [1, 2\nc: 2\n",
         "plan.yaml:1:4: The bracket [ is not closed, or a comma is missing between two items. Write [item, item]."),
        (b"wall:\n  width:5 ft\n  ceiling: 8 ft\n",
         "plan.yaml:2:8: There is no space after this colon. Write width: 5 ft."),
        (b"wall:\r\n  width = 5 ft\r\n  ceiling: 8 ft\r\n",
         "plan.yaml:2:3: This line has no colon. Write `key: value`, with a space after the colon."),
        (b"a: 1\n   b: 2\n",
         "plan.yaml:2:5: This line stands further in than the line before it allows. "
         "Start keys that belong together in the same column, and put `:` after each."),
        (b"a:\n   b: 1\n  c: 2\n",
         "plan.yaml:3:3: This line does not line up with the lines above it. "
         "Start keys that belong together in the same column."),
        (b"a: {b: 1}}\n",
         "plan.yaml:1:10: A } stands here with nothing before it that it could belong to. "
         "Delete it, or open the list with [ or the group of keys with {."),
        (b"a: {b: 1,, c: 2}\n",
         "plan.yaml:1:10: A , stands here with nothing before it that it could belong to. "
         "Delete it, or open the list with [ or the group of keys with {."),
        (b"a: |5 ft\n",
         "plan.yaml:1:4: | and > begin a block of text, which starts on the next line. Put the value in quotes."),
        (b"a: 'it's'\n",
         "plan.yaml:1:8: Something follows a closed quotation mark. "
         "Put the quotes round the whole value, or leave them out."),
        (b"s:\n  - #10\n  - 1\n",
         "plan.yaml:2:5  /s/0: The value is empty. A bare # starts a comment: write No. 10."),
        (b"a: @x\n",
         'plan.yaml:1:4: A value cannot start with @. Put the value in quotes, like "@…", or leave the sign out.'),
        (b"a: 1\nb\nc: 2\n",
         "plan.yaml:2:1: This line has no colon. Write `key: value`, with a space after the colon."),
        (b"a: \"x\\q\"\n",
         "plan.yaml:1:6: A backslash inside double quotes has a meaning of its own. "
         "Use single quotes, or write the backslash twice."),
    ],
)  # fmt: skip
def test_one_clear_message(source: bytes, message: str) -> None:
    assert only(source) == message


@pytest.mark.parametrize(
    ("character", "name"),
    [
        ("\x07", "U+0007 (a control character)"),
        ("\x1b", "U+001B (a control character)"),
        ("\x85", "U+0085 (a control character)"),
        ("\u2028", "U+2028 (line separator)"),
        ("\u2029", "U+2029 (paragraph separator)"),
        ("\u202e", "U+202E (right-to-left override)"),
        ("\u2066", "U+2066 (left-to-right isolate)"),
        ("\u200b", "U+200B (zero width space)"),
        ("\ufeff", "U+FEFF (zero width no-break space)"),
    ],
)
def test_characters_that_hide_are_refused_where_they_stand(character: str, name: str) -> None:
    found = only(f"plan: 1\ntitle: se{character}at\n".encode())
    assert found == f"plan.yaml:2:10: {name} stands here, which cannot be seen. Delete it."


def test_lone_surrogates_are_not_utf_8() -> None:
    assert "is not UTF-8" in only("a: \ud800".encode("utf-8", "surrogatepass"))


def test_several_faults_of_values_come_together_and_in_order() -> None:
    found = faults(b"a: .inf\nb: &x 1\na: 2\nc: !t 3\n")
    assert [fault.place.line for fault in found] == [0, 1, 2, 3]


def test_an_alias_bomb_is_refused_before_it_is_followed() -> None:
    bomb = "a: &a [x, x]\n" + "".join(
        f"{chr(98 + i)}: &{chr(98 + i)} [{', '.join([f'*{chr(97 + i)}'] * 9)}]\n" for i in range(9)
    )
    assert "*a repeats" in str(faults(bomb.encode())[-1])


@pytest.mark.parametrize("bracket", [b"[", b"{a: ", b"- "])
def test_deep_nesting_is_refused_while_it_is_read(bracket: bytes) -> None:
    assert "nested more than 24 levels deep" in str(
        faults(bracket * 200_000 if len(bracket) < 3 else bracket * 50_000)[-1]
    )


def test_keys_within_keys_are_refused_at_the_first() -> None:
    assert "stands where a key is needed" in only(b"? " * 200_000)


def test_just_deep_enough_is_read() -> None:
    assert read(b"[" * DEEPEST + b"]" * DEEPEST, "p").value


def test_too_many_values_and_too_long_values() -> None:
    many = b"a: [" + b"1," * (MOST_VALUES + 1) + b"]"
    # The mapping and the list count too, so it is the 49,999th item: at 4 + 2 * 49,998, from 0.
    assert only(many) == "plan.yaml:1:100001: The file has more than 50,000 values. Is this the right file?"
    long = b"a: " + b"x" * (LONGEST_SCALAR + 1)
    assert only(long) == "plan.yaml:1:4  /a: This value has 2,001 characters. Keep it under 2,000."
    assert read(b"a: " + b"x" * LONGEST_SCALAR, "p").value["a"] == "x" * LONGEST_SCALAR


def test_a_million_bytes_is_the_most() -> None:
    assert "The file has 1,000,001 bytes" in only(b"#" * 1_000_001)


@pytest.mark.parametrize(
    "source",
    [
        b"a: #10\n" * 100_000,
        b"a: &x 1\n" * 100_000,
        b"a: |\n x\n" * 60_000,
        b"{" + b"a: 1," * 150_000 + b"}",
        b"'" * 999_999,
        b"a: '" + b"x\n" * 400_000,
        b"#" * 999_999,
        b" " * 999_999,
        b"\n" * 999_999,
        b": " * 400_000,
        b"{" + b",".join(b"k%d:" % index for index in range(49_000)) + b", [",
        b"[" + b"~," * 49_000 + b"{",
        b"a: [" + b"#10 " * 200_000,
        b"a: {b" + b" " * 900_000 + b"[",
        b"a: {b" + b": " * 100 + b"\t" * 900_000 + b"[",
        b"a: {b: " + b"x " * 900 + b"\n" + b"y: #x " * 150_000,
        b"- a\n" * 49_000 + b"-- [",
        b"k" * 900_000 + b": 1",
        "\u202e".encode() * 300_000,
        b"\xff" * 900_000,
        b"a: " + b"9" * 900_000,
        b"a: " + b"1e" * 400_000,
    ],
)  # fmt: skip
def test_a_full_megabyte_of_anything_costs_little(source: bytes) -> None:
    found = faults(source[:1_000_000])
    assert 1 <= len(found) <= MOST_FAULTS


def test_a_folder_a_missing_file_and_a_near_name(tmp_path: Path) -> None:
    (tmp_path / "alcove.yaml").write_bytes(b"plan: 1\n")
    for path, message in (
        (tmp_path, f"{tmp_path}:1:1: This is a folder. Name a file in it."),
        (tmp_path / "alcov.yaml",
         f"{tmp_path}/alcov.yaml:1:1: There is no such file. Did you mean {tmp_path}/alcove.yaml?"),
        (tmp_path / "x" / "y.yaml",
         f"{tmp_path}/x/y.yaml:1:1: There is no such file. There is no folder {tmp_path}/x either: check the name."),
        (tmp_path / "alcove.yaml" / "b", None),
        (tmp_path / ("n" * 300), None),
    ):  # fmt: skip
        with pytest.raises(Unreadable) as refused:
            read_file(path)
        assert len(refused.value.faults) == 1
        if message:
            assert str(refused.value) == message
    assert read_file(tmp_path / "alcove.yaml").value == {"plan": 1}


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes on this system")
def test_a_pipe_or_a_device_is_not_waited_for(tmp_path: Path) -> None:
    pipe = tmp_path / "plan.yaml"
    os.mkfifo(pipe)
    for path in (pipe, Path("/dev/zero"), Path("/dev/null")):
        with pytest.raises(Unreadable, match="not an ordinary file but a pipe or a device"):
            read_file(path)


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="the super-user may read anything")
def test_a_file_without_permission(tmp_path: Path) -> None:
    path = tmp_path / "plan.yaml"
    path.write_bytes(b"plan: 1\n")
    path.chmod(0)
    with pytest.raises(Unreadable, match="You have no permission to read this file"):
        read_file(path)
    path.chmod(stat.S_IRUSR | stat.S_IWUSR)


def test_no_permission_is_said_whoever_asks(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(*_: object) -> int:
        raise PermissionError(13, "Permission denied")

    path = tmp_path / "plan.yaml"
    path.write_bytes(b"plan: 1\n")
    monkeypatch.setattr(os, "open", refuse)
    with pytest.raises(Unreadable, match="You have no permission to read this file"):
        read_file(path)


PEAK = """
import resource, sys
from plumbrule.reading.places import read_file
from plumbrule.reading.fault import Unreadable
before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
try:
    read_file(sys.argv[1])
except Unreadable as refused:
    print(refused)
after = resource.getrusage(resource.RUSAGE_SELF)
print(after.ru_maxrss - before, after.ru_utime + after.ru_stime)
"""


@pytest.mark.skipif(sys.platform == "win32", reason="no measure of memory on this system")
def test_fifty_megabytes_are_not_loaded(tmp_path: Path) -> None:
    path = tmp_path / "plan.yaml"
    path.write_bytes(b"a: 1\n" * 10_000_000)
    output = subprocess.run([sys.executable, "-c", PEAK, str(path)], capture_output=True, text=True, check=True).stdout
    message, measured = output.strip().splitlines()
    assert message.endswith("The file has 50,000,000 bytes. A plan has at most 1,000,000: is this the right file?")
    grown, seconds = measured.split()
    assert int(grown) < 10_000, "kilobytes"
    assert float(seconds) < 2
