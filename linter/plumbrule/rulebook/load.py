"""The rulebook in force: shipped rules, a team's folders and packs, with the house's settings and levels applied."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from plumbrule import __version__, shipped
from plumbrule.reading.fault import NOWHERE, Fault, Unreadable
from plumbrule.rulebook.compiled import digest, load_compiled
from plumbrule.rulebook.rule import Rule, Source
from plumbrule.rulebook.rulebook import Rulebook

if TYPE_CHECKING:
    from plumbrule.plan.house import House
    from plumbrule.reading.places import Document


def load(house: Path | None = None, folders: Sequence[Path] = ()) -> Rulebook:
    """Shipped rules, then `folders`, then what the house file names. Raises Unreadable with every fault."""
    rules, sources, name = _shipped()
    extra = list(folders)
    document, house_model = _house(house)
    if document is not None and house_model is not None and house is not None:
        from plumbrule.rulebook.packs import find_packs

        extra += [house.parent / folder for folder in house_model.rules or ()]
        extra += find_packs(house_model.packs or (), document)
    for folder in extra:
        more, more_sources, more_name = _folder(folder, sources)
        rules, sources, name = rules + more, {**sources, **more_sources}, name + more_name
    _refuse_twins(rules)
    changes: tuple[str, ...] = ()
    rules = [_on_trial(rule) for rule in rules]
    if document is not None and house_model is not None:
        from plumbrule.rulebook.house import in_house
        from plumbrule.rulebook.house_loads import loads_of

        rules, changes = in_house(rules, house_model, document)
        changes += loads_of(house_model, document)
        name += hashlib.sha256(document.source).hexdigest()
    whole = hashlib.sha256(name.encode()).hexdigest()[:16]
    hours = house_model.hours if house_model is not None else None
    heavier = house_model.loads if house_model is not None else None
    return Rulebook(tuple(rules), sources, whole, __version__, str(house) if house else "", changes, hours, heavier)


def _shipped() -> tuple[list[Rule], dict[str, Source], str]:
    folder = shipped.folder("rules")
    found = load_compiled(folder)
    return found if found is not None else _folder(folder, {})


def _folder(folder: Path, known: dict[str, Source]) -> tuple[list[Rule], dict[str, Source], str]:
    from plumbrule.rulebook.read import read_rules, read_sources

    sources = read_sources(folder)
    return read_rules(folder, {**known, **sources}), sources, digest(folder)


def _house(path: Path | None) -> tuple[Document | None, House | None]:
    if path is None:
        return None, None
    from plumbrule.plan.house import House
    from plumbrule.reading.places import read_file
    from plumbrule.reading.take import take

    document = read_file(path)
    return document, take(House, document)


def _refuse_twins(rules: Sequence[Rule]) -> None:
    seen: dict[str, Rule] = {}
    faults = []
    for rule in rules:
        if rule.id in seen:
            found = f"The rule {rule.id} stands in two places of the rulebook."
            faults.append(
                Fault(
                    rule.path,
                    NOWHERE,
                    "/rule",
                    found,
                    "Give your own rule another name; change levels in the house file.",
                )
            )
        seen.setdefault(rule.id, rule)
    if faults:
        raise Unreadable(faults)


def _on_trial(rule: Rule) -> Rule:
    """A rule on trial is advisory, whatever level it asks for."""
    return rule._replace(level="advisory") if rule.on_trial else rule
