"""What can be asked for, in which words; and one plain sentence where something else was."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import Any, NoReturn

from plumbrule import __version__
from plumbrule.cli.stream import Refused
from plumbrule.report.formats import FORMATS
from plumbrule.rulebook.rule import LEVELS

PLAIN_FORMATS = ("text", "json")
TAKEOFF_FORMATS = ("text", "json", "csv")
PAGES = ("merchant", "saw", "drill")
TABLES = ("needs", "sticks", "panels", "drilling")
SHELLS = ("bash", "zsh", "tcsh")
MOST_JOBS = 64


class Asked(argparse.Namespace):
    """What was asked for. `run` does it and gives the exit code."""

    run: Callable[[Asked], int]

    def __getattr__(self, name: str) -> Any:
        raise AttributeError(name)


class Words(argparse.ArgumentParser):
    """A parser that gives its complaints as one sentence, to be printed by whoever called."""

    def __init__(self, **keywords: Any) -> None:
        keywords.setdefault("formatter_class", partial(argparse.HelpFormatter, width=92, max_help_position=28))
        super().__init__(allow_abbrev=False, **keywords)

    def error(self, message: str) -> NoReturn:
        """Raises Refused."""
        command = self.prog.removeprefix("plumbrule").strip()
        told = message.removeprefix("argument ").replace("expected one argument", "a value is missing after it")
        raise Refused(f"{f'{command}: ' if command else ''}{told}. Try: {self.prog} --help")


def read(words: Sequence[str]) -> Asked | int:
    """What `words` ask for; an exit code where help was printed. Raises Refused."""
    parser, commands = parsers()
    first = next((word for word in words if not word.startswith("-")), None)
    if first is not None and first not in commands:
        raise Refused(f"there is no command {_quoted(first)}. {_meant(first, commands)}")
    try:
        asked, left = parser.parse_known_args(words, Asked())
    except SystemExit as done:
        return int(done.code or 0)
    if asked.command is None:
        if left:
            raise Refused(f"there is no option {left[0]} before the command. Try: plumbrule --help")
        parser.print_help()
        return 2
    if left:
        options = [option for action in commands[asked.command]._actions for option in action.option_strings]
        if left[0].startswith("-") and left[0] != "-":
            raise Refused(
                f"{asked.command}: there is no option {left[0]}. {_meant(left[0].partition('=')[0], options)}"
            )
        raise Refused(
            f"{asked.command}: {_quoted(left[0])} is one thing too many. Try: plumbrule {asked.command} --help"
        )
    return asked


def parsers() -> tuple[Words, dict[str, Words]]:
    """The parser of the whole, and of each command by name."""
    parser = Words(prog="plumbrule", description="Checks the plan of a wall-hung seat, shelf or panelled wall.")
    parser.add_argument("--version", action="version", version=f"plumbrule {__version__}")
    group = parser.add_subparsers(dest="command", metavar="COMMAND", prog="plumbrule", parser_class=Words)
    made: dict[str, Words] = {}
    for name, says, fill in _COMMANDS:
        made[name] = group.add_parser(name, help=says, description=f"{says[:1].upper()}{says[1:]}.")
        fill(made[name])
        made[name].set_defaults(run=partial(_run, name))
    return parser, made


def _run(name: str, asked: Asked) -> int:
    from importlib import import_module

    run: Callable[[Asked], int] = import_module(f"plumbrule.cli.{name}").run
    return run(asked)


def _inspect(parser: Words) -> None:
    _path(
        parser.add_argument(
            "plans", nargs="*", metavar="PLAN", help="a plan, a folder of plans, or - for standard input"
        )
    )
    _format(parser, FORMATS)
    _path(parser.add_argument("--out", type=Path, metavar="FILE", help="write the report to FILE"))
    _rules(parser)
    parser.add_argument(
        "--stop-at", type=_one_of(LEVELS), default="correction", metavar="LEVEL",
        help=f"the lowest level that fails: {', '.join(LEVELS)} (default: correction)",
    )  # fmt: skip
    parser.add_argument("--jobs", type=_jobs, metavar="N", help="inspect N plans at a time (default: by their number)")
    parser.add_argument("--today", type=_day, metavar="DATE", help="the day on which departures are judged, YYYY-MM-DD")
    parser.add_argument("--timing", action="store_true", help="add how long each stage and each rule took")
    _pretty(parser)


def _workings(parser: Words) -> None:
    _path(parser.add_argument("plan", nargs="?", metavar="PLAN", help="a plan, or - for standard input"))
    _format(parser, PLAIN_FORMATS)
    parser.add_argument("--only", metavar="ROW[,ROW]", help="only these kinds of row: hole,screw")
    parser.add_argument("--defaults", action="store_true", help="only what was taken as the worse case")
    _house(parser)
    _pretty(parser)


def _takeoff(parser: Words) -> None:
    _path(parser.add_argument("plan", nargs="?", metavar="PLAN", help="a plan, or - for standard input"))
    _format(parser, TAKEOFF_FORMATS)
    _path(parser.add_argument("--out", type=Path, metavar="FILE", help="write the take-off to FILE"))
    parser.add_argument("--page", type=_one_of(PAGES), metavar="PAGE", help=f"one page: {', '.join(PAGES)}")
    parser.add_argument(
        "--table", type=_one_of(TABLES), metavar="TABLE", help=f"one table of csv: {', '.join(TABLES)}"
    )  # fmt: skip
    _rules(parser)
    _pretty(parser)


def _rulebook(parser: Words) -> None:
    _format(parser, PLAIN_FORMATS)
    _rules(parser)
    _path(parser.add_argument("--check", type=Path, metavar="DIR", help="prove the rules in DIR on their own examples"))
    parser.add_argument(
        "--compile", action="store_true", help="write what is made from the shipped rules, tables and models"
    )
    parser.add_argument("--verify", action="store_true", help="say whether what was made from them is up to date")
    _pretty(parser)


def _lesson(parser: Words) -> None:
    parser.add_argument("rule", nargs="?", metavar="RULE", help="the name of a rule, as findings print it")
    _rules(parser)


def _completion(parser: Words) -> None:
    parser.add_argument("shell", nargs="?", metavar="SHELL", type=_one_of(SHELLS), help=f"one of {', '.join(SHELLS)}")


_COMMANDS: tuple[tuple[str, str, Callable[[Words], None]], ...] = (
    ("inspect", "say what would fail, why, by how much, and what was not looked at", _inspect),
    ("workings", "show what was worked out of a plan, line by line", _workings),
    ("takeoff", "list what to buy, how to cut it and where to drill it", _takeoff),
    ("rulebook", "list the rules, or prove a team's own", _rulebook),
    ("lesson", "explain a rule by its own failing example", _lesson),
    ("completion", "print a script that lets a shell complete these words", _completion),
)


def _format(parser: Words, formats: Sequence[str]) -> None:
    says = f"{', '.join(formats[:-1])} or {formats[-1]} (default: text)"
    parser.add_argument("--format", type=_one_of(formats), default="text", metavar="FORMAT", help=says)


def _house(parser: Words) -> None:
    says = "your house file: settings, levels, trials, hours, loads"
    _path(parser.add_argument("--house", type=Path, metavar="FILE", help=says))


def _rules(parser: Words) -> None:
    _house(parser)
    _path(
        parser.add_argument(
            "--rules",
            type=Path,
            metavar="DIR",
            action="append",
            default=[],
            help="a folder of your own rules; may repeat",
        )
    )


def _pretty(parser: Words) -> None:
    parser.add_argument("--pretty", action="store_true", help="indent JSON, as on a terminal")


def _path(action: argparse.Action) -> None:
    """Lets a shell complete file names for this argument."""
    action.complete = {"bash": "_shtab_compgen_files", "zsh": "_files", "tcsh": "f"}  # type: ignore[attr-defined]


def _one_of(allowed: Sequence[str]) -> Callable[[str], str]:
    def check(word: str) -> str:
        if word not in allowed:
            raise argparse.ArgumentTypeError(
                f"{_quoted(word)} is not one of {', '.join(allowed)}{_near(word, allowed)}"
            )
        return word

    return check


def _jobs(word: str) -> int:
    if not word.isascii() or not word.isdigit() or not 1 <= int(word) <= MOST_JOBS:
        raise argparse.ArgumentTypeError(f"{_quoted(word)} is not a whole number from 1 to {MOST_JOBS}")
    return int(word)


def _day(word: str) -> Any:
    from datetime import date

    try:
        if len(word) != len("2026-01-31"):
            raise ValueError
        return date.fromisoformat(word)
    except ValueError:
        raise argparse.ArgumentTypeError(f"{_quoted(word)} is not a day; write it like 2026-01-31") from None


def _quoted(word: str) -> str:
    from plumbrule.report.clean import one_line

    return f'"{one_line(word)}"'


def _meant(word: str, known: Sequence[str] | dict[str, Words]) -> str:
    return _near(word, tuple(known)).strip(": ").capitalize() or f"There are: {', '.join(known)}."


def _near(word: str, allowed: Sequence[str]) -> str:
    from plumbrule.reading.spelling import nearest

    near = nearest(word, allowed)
    return f": did you mean {near}?" if near else ""
