"""What a house makes of the rules: its settings within their range, its levels, what it has on trial."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from plumbrule.plan.house import Hours, House
from plumbrule.plan.words import USUAL_END, USUAL_START
from plumbrule.reading.fault import Fault, Unreadable
from plumbrule.reading.notation import NotAQuantity
from plumbrule.reading.places import Document
from plumbrule.reading.spelling import nearest
from plumbrule.rulebook.rule import Rule
from plumbrule.rulebook.settings import outside, quantity


def in_house(rules: Sequence[Rule], house: House, document: Document) -> tuple[list[Rule], tuple[str, ...]]:
    """The rules as this house has them, and what it changed, in words.

    Raises Unreadable with every fault: a rule or setting that does not exist, a value outside its range or of another
    dimension.
    """
    changes = _Changes(rules, document)
    for rule_id, settings in (house.settings or {}).items():
        for name, written in settings.items():
            changes.setting(rule_id, name, written)
    for rule_id, level in (house.levels or {}).items():
        if (rule := changes.find(rule_id, f"/levels/{rule_id}")) is not None:
            changes.rules[rule_id] = rule._replace(level=level)
            changes.said.append(f"{rule_id}: {rule.level} made {level}")
    for place, rule_id in enumerate(house.trial or ()):
        if (rule := changes.find(rule_id, f"/trial/{place}")) is not None:
            changes.rules[rule_id] = rule._replace(level="advisory", on_trial=True)
            changes.said.append(f"{rule_id}: {rule.level} on trial as advisory")
    if house.hours is not None:
        changes.hours(house.hours)
    if changes.faults:
        raise Unreadable(sorted(changes.faults, key=lambda fault: fault.place.start))
    return list(changes.rules.values()), tuple(changes.said)


class _Changes:
    def __init__(self, rules: Sequence[Rule], document: Document) -> None:
        self.rules = {rule.id: rule for rule in rules}
        self.faults: list[Fault] = []
        self.said: list[str] = []
        self._document = document

    def find(self, rule_id: str, pointer: str) -> Rule | None:
        rule = self.rules.get(rule_id)
        if rule is None:
            self._fault(pointer, f"No rule {rule_id}.", self._near(rule_id, self.rules), key=True)
        return rule

    def setting(self, rule_id: str, name: str, written: float | str) -> None:
        rule = self.find(rule_id, f"/settings/{rule_id}")
        if rule is None:
            return
        pointer = f"/settings/{rule_id}/{name}"
        setting = rule.settings.get(name)
        if setting is None:
            write = self._near(name, rule.settings) if rule.settings else "This rule has no settings."
            self._fault(pointer, f"{rule_id} has no setting {name}.", write, key=True)
            return
        try:
            value, _, kind = quantity(written)
        except NotAQuantity as error:
            self._fault(pointer, error.found, error.write)
            return
        if kind != setting.type:
            self._fault(pointer, f"{written} is not the kind of quantity this is.", f"Write it like {setting.written}.")
        elif beyond := outside(setting, value):
            self._fault(pointer, f"{written} is {beyond}.", f"The rulebook gives {setting.written}.")
        else:
            settings = {**rule.settings, name: setting._replace(value=value, written=str(written))}
            self.rules[rule_id] = rule._replace(settings=settings)
            self.said.append(f"{rule_id}: {name} {setting.written} made {written}")

    def hours(self, hours: Hours) -> None:
        """A day must end after it begins, and a week have a working day; where only one end is given, the usual other
        one is meant."""
        starts, ends = hours.starts or USUAL_START, hours.ends or USUAL_END
        if _minutes(ends) <= _minutes(starts):
            at = "/hours/ends" if hours.ends is not None else "/hours/starts"
            found = f"A day from {starts} to {ends} ends before it begins."
            self._fault(at, found, 'Write both ends, like {starts: "7:30", ends: "16:00"}.')
        if hours.days is not None and not hours.days:
            self._fault(
                "/hours/days", "There is no working day in this week.", "Write the days, like [monday, tuesday]."
            )

    def _near(self, name: str, known: Iterable[str]) -> str:
        near = nearest(name, tuple(known))
        return f"Did you mean {near}?" if near else "See: plumbrule rulebook."

    def _fault(self, pointer: str, found: str, write: str, key: bool = False) -> None:
        place = self._document.key_place(pointer) if key else self._document.place(pointer)
        self.faults.append(Fault(self._document.path, place, pointer, found, write))


def _minutes(clock: str) -> int:
    hour, _, minute = clock.partition(":")
    return int(hour) * 60 + int(minute)
