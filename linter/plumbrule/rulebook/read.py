"""A rule file → a Rule, with every fault at its line; a folder → its rules and its bibliography."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path

from plumbrule.catalogue.rows import CATALOGUE
from plumbrule.reading.fault import NOWHERE, Fault, Unreadable
from plumbrule.reading.notation import NotAQuantity
from plumbrule.reading.places import Document, read_file
from plumbrule.reading.spelling import nearest
from plumbrule.reading.take import take
from plumbrule.rulebook.file import Bibliography, RuleFile
from plumbrule.rulebook.files import BIBLIOGRAPHY, rule_files
from plumbrule.rulebook.rule import TRADES, Caution, Citation, RemedyHint, Rule, Setting, Source
from plumbrule.rulebook.settings import setting
from plumbrule.rulebook.typed import Typed, placeholders


def read_sources(folder: Path) -> dict[str, Source]:
    """The bibliography of a folder; a folder without one adds nothing. Raises Unreadable."""
    path = folder / BIBLIOGRAPHY
    if not path.is_file():
        return {}
    file = take(Bibliography, read_file(path))
    return {name: Source(name, entry.title, entry.published_by, entry.where) for name, entry in file.sources.items()}


def read_rules(folder: Path, sources: Mapping[str, Source]) -> list[Rule]:
    """Every rule below `folder`. Raises Unreadable with all faults of all files."""
    if not folder.is_dir():
        raise Unreadable(
            [
                Fault(
                    str(folder),
                    NOWHERE,
                    "",
                    "There is no such rule folder.",
                    "Give the folder that holds the rule files.",
                )
            ]
        )
    rules: list[Rule] = []
    faults: list[Fault] = []
    for path in rule_files(folder):
        try:
            rules.append(read_rule(path, sources))
        except Unreadable as error:
            faults.extend(error.faults)
    if faults:
        raise Unreadable(faults)
    return rules


def read_rule(path: Path, sources: Mapping[str, Source]) -> Rule:
    """One rule, checked against the catalogue. Raises Unreadable with every fault, each at its line."""
    document = read_file(path)
    return build(document, take(RuleFile, document), path, sources)


def build(document: Document, file: RuleFile, path: Path, sources: Mapping[str, Source]) -> Rule:
    """The Rule of a rule file that has the right keys. Raises Unreadable."""
    row = CATALOGUE.get(file.looks_at)
    if row is None:
        raise Unreadable([_unknown(document, "/looks_at", file.looks_at, CATALOGUE, "row of the catalogue")])
    settings, faults = _settings(document, file)
    typed = Typed(document, file, row, settings)
    typed.faults.extend(faults)
    if (file.require.measure is None) == (file.require.that is None):
        typed.fault("/require", "A rule has either `measure` or `that`.", "Write one of the two.")
    when, that = typed.when(), typed.that()
    measure, bounds, unit = typed.measure()
    placeholders(file.says, row, typed.fault)
    trade = file.trade or path.parent.name
    if trade not in TRADES:
        pointer = "/trade" if file.trade else "/rule"
        typed.faults.append(
            _unknown(document, pointer, trade, TRADES, "trade; a rule lies in the folder of its trade, or names it")
        )
    if file.rule != path.stem:
        typed.fault(
            "/rule", f"The rule is called {file.rule}, its file {path.name}.", f"Call the file {file.rule}.yaml."
        )
    for place, hint in enumerate(file.remedies):
        if hint.change not in row.by_name:
            typed.faults.append(
                _unknown(document, f"/remedies/{place}/change", hint.change, row.by_name, f"field of {row.kind}")
            )
    citations = []
    for place, cited in enumerate(file.sources):
        source = sources.get(cited.id)
        if source is None:
            typed.faults.append(
                _unknown(document, f"/sources/{place}/id", cited.id, sources, "publication of sources.yaml")
            )
        else:
            citations.append(Citation(source, cited.clause, cited.basis))
    if typed.faults:
        raise Unreadable(sorted(typed.faults, key=lambda fault: fault.place.start))
    return Rule(
        id=file.rule, trade=trade, title=file.title, level=file.level, looks_at=file.looks_at,
        when=when, measure=measure, measure_says=file.require.called or "", bounds=bounds, that=that, settings=settings,
        says=_one_line(file.says), why=_one_line(file.why), sources=tuple(citations),
        caution=Caution(file.caution.signal, _one_line(file.caution.text)), defer=_one_line(file.defer),
        remedies=tuple(RemedyHint(hint.change, hint.go) for hint in file.remedies),
        since=file.since, on_trial=file.trial, unit=unit, path=path.name,
    )  # fmt: skip


def _settings(document: Document, file: RuleFile) -> tuple[dict[str, Setting], list[Fault]]:
    settings: dict[str, Setting] = {}
    faults: list[Fault] = []
    for name, entry in file.settings.items():
        try:
            settings[name] = setting(name, entry)
        except NotAQuantity as error:
            pointer = f"/settings/{name}/value"
            faults.append(Fault(document.path, document.place(pointer), pointer, error.found, error.write))
    return settings, faults


def _unknown(document: Document, pointer: str, name: str, known: Iterable[str], what: str) -> Fault:
    near = nearest(name, tuple(known))
    write = f"Did you mean `{near}`?" if near else f"Known are: {', '.join(sorted(known))}."
    return Fault(document.path, document.place(pointer), pointer, f"`{name}` is not a {what}.", write)


def _one_line(text: str) -> str:
    return " ".join(text.split())
