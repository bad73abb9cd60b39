"""The shipped rules compiled to JSON, so that a plain inspection need not read and check them again.

Used only while every rule file, the catalogue and the version are the very ones it was made from; else the rules are
read from their files. Plain JSON: nothing in it is run.
"""

from __future__ import annotations

import hashlib
from pathlib import Path
from typing import Any

from plumbrule import __version__
from plumbrule.catalogue.rows import digest as catalogue_digest
from plumbrule.language import Expression, Number, Truth, compile_, from_data, reads, to_data
from plumbrule.reading.units import UNITS
from plumbrule.rulebook.files import BIBLIOGRAPHY, rule_names
from plumbrule.rulebook.rule import Bounds, Caution, Citation, RemedyHint, Rule, Setting, Source

NAME = "compiled.json"


def digest(folder: Path) -> str:
    """Names the content of a rule folder, the catalogue and the version together."""
    whole = hashlib.sha256(f"{__version__} {catalogue_digest()}".encode())
    bibliography = [BIBLIOGRAPHY] if (folder / BIBLIOGRAPHY).is_file() else []
    for name in (*bibliography, *rule_names(folder)):
        whole.update(name.encode())
        with open(f"{folder}/{name}", "rb", buffering=0) as file:  # noqa: PTH123 - a path for each takes longer than reading it
            whole.update(file.read())
    return whole.hexdigest()


def compile_rules(folder: Path, rules: list[Rule], sources: dict[str, Source]) -> str:
    """The text of `compiled.json` for a folder. The same folder gives the same bytes."""
    import json

    data = {
        "digest": digest(folder),
        "sources": {name: [source.title, source.published_by, source.where] for name, source in sources.items()},
        "rules": [_rule_to_data(rule) for rule in rules],
    }
    return json.dumps(data, ensure_ascii=False, indent=0, sort_keys=True) + "\n"


def load_compiled(folder: Path) -> tuple[list[Rule], dict[str, Source], str] | None:
    """Rules, bibliography and digest, or None when there is no compiled form or it is not of these files."""
    import json

    try:
        data = json.loads((folder / NAME).read_bytes())
    except (OSError, ValueError):
        return None
    if not isinstance(data, dict) or data.get("digest") != digest(folder):
        return None
    sources = {name: Source(name, *entry) for name, entry in data["sources"].items()}
    return [_rule_from_data(entry, sources) for entry in data["rules"]], sources, data["digest"]


def _rule_to_data(rule: Rule) -> dict[str, Any]:
    return {
        "id": rule.id, "trade": rule.trade, "title": rule.title, "level": rule.level, "looks_at": rule.looks_at,
        "when": _expression_to_data(rule.when), "measure": _expression_to_data(rule.measure),
        "called": rule.measure_says,
        "at_least": _expression_to_data(rule.bounds.at_least), "at_most": _expression_to_data(rule.bounds.at_most),
        "that": _expression_to_data(rule.that), "says": rule.says, "why": rule.why, "defer": rule.defer,
        "settings": [[s.name, s.unit, s.value, s.least, s.most, s.says, s.written] for s in rule.settings.values()],
        "sources": [[cited.source.id, cited.clause, cited.basis] for cited in rule.sources],
        "caution": [rule.caution.signal, rule.caution.text],
        "remedies": [[hint.change, hint.go] for hint in rule.remedies],
        "since": rule.since, "trial": rule.on_trial, "unit": rule.unit, "path": rule.path,
    }  # fmt: skip


def _rule_from_data(data: dict[str, Any], sources: dict[str, Source]) -> Rule:
    settings = (Setting(name, Number(UNITS[unit].dimension), unit, *rest) for name, unit, *rest in data["settings"])
    unit = data["unit"]
    return Rule(
        id=data["id"], trade=data["trade"], title=data["title"], level=data["level"], looks_at=data["looks_at"],
        when=_truth(data["when"]), measure=_number(data["measure"], unit), measure_says=data["called"],
        bounds=Bounds(_number(data["at_least"], unit), _number(data["at_most"], unit)),
        that=_truth(data["that"]), settings={setting.name: setting for setting in settings},
        says=data["says"], why=data["why"], defer=data["defer"],
        sources=tuple(Citation(sources[name], clause, basis) for name, clause, basis in data["sources"]),
        caution=Caution(*data["caution"]), remedies=tuple(RemedyHint(*hint) for hint in data["remedies"]),
        since=data["since"], on_trial=data["trial"], unit=unit, path=data["path"],
    )  # fmt: skip


def _expression_to_data(expression: Expression | None) -> list[Any] | None:
    return None if expression is None else [expression.source, to_data(expression.node)]


def _truth(data: list[Any] | None) -> Expression | None:
    return None if data is None else _expression(data, Truth())


def _number(data: list[Any] | None, unit: str) -> Expression | None:
    return None if data is None else _expression(data, Number(UNITS[unit].dimension))


def _expression(data: list[Any], kind: Number | Truth) -> Expression:
    source, node = data[0], from_data(data[1])
    return Expression(source, node, compile_(node), reads(node), kind)
