"""`plumbrule rulebook`: the rules listed, a team's own proved, the shipped ones compiled."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from plumbrule import shipped
from plumbrule.cli import stream
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.report.figures import many
from plumbrule.report.terms import terms_of
from plumbrule.rulebook.load import load

if TYPE_CHECKING:
    from plumbrule.cli.arguments import Asked


def run(asked: Asked) -> int:
    """0; 1 when an example does not come out as it should or the compiled form is stale; 2 when a file cannot be
    read."""
    try:
        if asked.compile or asked.verify:
            return _compiled(write=asked.compile)
        if asked.check is not None:
            return _check(asked.check)
        rulebook = load(asked.house, asked.rules)
    except Unreadable as error:
        for fault in error.faults:
            stream.complain(str(fault))
        return 2
    on_screen = stream.to_a_terminal()
    terms = terms_of(rulebook, width=stream.columns(), colour=stream.in_colour(), pretty=asked.pretty or on_screen)
    from plumbrule.report import rules

    if asked.format == "json":
        stream.put([rules.data(rulebook, terms)], exact=True)
    else:
        stream.put([rules.text(rulebook, terms)])
    return 0


def _check(folder: Path) -> int:
    """Proves every rule below `folder`. What does not come out as it should is said with its place."""
    from plumbrule.reading.places import read_file
    from plumbrule.reading.take import take
    from plumbrule.rulebook.file import RuleFile
    from plumbrule.rulebook.files import rule_files
    from plumbrule.rulebook.read import build, read_rules, read_sources
    from plumbrule.teaching.prove import prove

    sources = {**load().sources, **read_sources(folder)}
    rules = read_rules(folder, sources)
    proved, wrong = 0, []
    for path in rule_files(folder):
        document = read_file(path)
        file = take(RuleFile, document)
        for outcome in prove(build(document, file, path, sources), file, document):
            if outcome.proved:
                proved += 1
                continue
            pointer = f"/examples/{outcome.kind}/{outcome.number}"
            wrong.append(Fault(str(path), outcome.place, pointer, f"{outcome.says}.", ""))
    for fault in wrong:
        stream.complain(str(fault))
    if not rules:
        raise stream.Refused(f"rulebook: there is no rule in {folder}: no file in it ends in .yaml.")
    came_out = f"{many(proved, 'example')} came out as written, {len(wrong) or 'none'} did not"
    stream.put([f"{many(len(rules), 'rule')} in {folder}: {came_out}\n"])
    return 1 if wrong else 0


def _compiled(write: bool) -> int:
    """Makes what is made from other files: compiled rules and tables, and the schemas of what people write. Or says
    whether those that lie there are the ones that would be made."""
    from plumbrule.mechanics import table_files
    from plumbrule.rulebook import compiled, publish
    from plumbrule.rulebook.read import read_rules, read_sources

    folder = shipped.folder("rules")
    sources = read_sources(folder)
    wanted = {
        folder / "tables" / table_files.COMPILED: table_files.compile_tables(),
        folder / compiled.NAME: compiled.compile_rules(folder, read_rules(folder, sources), sources),
    }
    wanted |= {shipped.folder("schema") / name: text for name, text in publish.schemas().items()}
    stale = [path for path, text in wanted.items() if not path.is_file() or path.read_text(encoding="utf-8") != text]
    if write:
        for path in stale:
            stream.replace(path, [wanted[path]])
        stream.put([f"compiled: {many(len(stale), 'file')} written\n"])
        return 0
    for path in stale:
        stream.complain(f"{path}: out of date. Run: plumbrule rulebook --compile")
    stream.put([f"compiled: {many(len(stale), 'file')} out of date\n"])
    return 1 if stale else 0
