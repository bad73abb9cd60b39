"""A rule file as it is written: the models that check its keys and words, and give its JSON Schema."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Annotated, Any, ClassVar, Literal

from pydantic import Field, StringConstraints

from plumbrule.reading.model import Listed, Written
from plumbrule.rulebook.rule import Basis, Level, Signal

Sentence = Annotated[str, StringConstraints(min_length=8, max_length=2000, strip_whitespace=True)]
RuleName = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9]*(-[a-z0-9]+)*$", max_length=60)]
FieldName = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9_]*$", max_length=40)]
Text = Annotated[str, StringConstraints(min_length=1, max_length=400, strip_whitespace=True)]
Scalar = float | str


class RequireFile(Written):
    """What must be so: a measure within bounds, or a truth about words."""

    HINTS: ClassVar[Mapping[str, str]] = {
        "max": "Write at_most.",
        "min": "Write at_least.",
        "less_than": "Write at_most: a measure on its limit holds.",
        "more_than": "Write at_least: a measure on its limit holds.",
    }

    measure: Text | None = Field(None, description="expression over the fields of the row that gives a number")
    at_least: Text | float | None = Field(None, description="expression for the lower limit")
    at_most: Text | float | None = Field(None, description="expression for the upper limit")
    between: Annotated[Listed[Text | float], Field(min_length=2, max_length=2)] | None = Field(
        None, description="lower and upper limit"
    )
    that: Text | None = Field(None, description="expression that must be true; for words, truths and lists")
    called: Text | None = Field(None, description="what the measure is called in print")


class SettingFile(Written):
    """A limit that a house may move, within a range."""

    value: Scalar = Field(description="a number, or a quantity with its unit: 1/8 in")
    at_least: Scalar | None = Field(None, description="smallest value a house may set")
    at_most: Scalar | None = Field(None, description="largest value a house may set")
    says: Sentence = Field(description="what the setting means")


class CitationFile(Written):
    """On whose authority."""

    id: RuleName = Field(description="a publication of rules/sources.yaml")
    clause: Text = Field(description="clause, table or equation")
    basis: Basis = Field(description="whether the text was seen, is a rule of the trade, or was recalled")


class CautionFile(Written):
    """What to look out for."""

    signal: Signal = Field(description="signal word as ANSI Z535.4 defines it")
    text: Sentence = Field(description="what may happen, and what not to do")


class RemedyFile(Written):
    """An input worth trying, and which way."""

    change: FieldName = Field(description="a field of the row")
    go: Text = Field(description="smaller, larger, or the word to put there")


class ExampleFile(Written):
    """A base plan, a patch to it, and where the rule must then say what."""

    plan: Annotated[str, StringConstraints(pattern=r"^[a-z0-9-]+$", max_length=60)] = Field(
        description="a base plan, by the name of its file"
    )
    patch: Listed[dict[str, Any]] = Field((), description="RFC 6902 operations")
    at: Text = Field(description="pointer of the row that is judged, or of its part")
    row: Text | None = Field(None, description="label of the row where several stand at one pointer")
    measure: Scalar | None = Field(None, description="what the rule must measure, worked out without this program")
    missing: Text | None = Field(None, description="the plan pointer that must be named as missing")
    by: Literal["hand", "source"] | None = Field(None, description="who says so")
    note: Text | None = Field(None, description="how the figure was worked")


class ExamplesFile(Written):
    """Examples are tests: each is inspected and must come out as it says."""

    breaks: Listed[ExampleFile] = Field(min_length=1, description="plans that break the rule")
    holds: Listed[ExampleFile] = Field(min_length=1, description="plans that keep it")
    limit: Listed[ExampleFile] = Field((), description="plans that stand exactly on the limit, and so keep it")
    unknown: Listed[ExampleFile] = Field((), description="plans that leave out a fact the rule needs")


class RuleFile(Written):
    """One rule of the rulebook."""

    rule: RuleName = Field(description="name of the rule, and of its file")
    trade: Text | None = Field(None, description="only where the folder does not say it")
    title: Sentence = Field(description="what is wrong, in a line")
    level: Level = Field(description="stop-work, correction or advisory")
    looks_at: Text = Field(description="the kind of row it judges")
    when: Text | None = Field(None, description="expression that says on which rows it applies; left out: on all")
    require: RequireFile = Field(description="what must be so")
    settings: dict[FieldName, SettingFile] = Field(default_factory=dict, description="limits that a house may move")
    says: Sentence = Field(description="the sentence of the finding; {row}, {measure}, {limit} and fields are put in")
    why: Annotated[str, StringConstraints(min_length=60, max_length=2000, strip_whitespace=True)] = Field(
        description="what happens on the wall, for whoever must learn it"
    )
    sources: Listed[CitationFile] = Field(min_length=1, description="on whose authority")
    caution: CautionFile = Field(description="what to look out for")
    defer: Sentence = Field(description="who decides: the local code, the licensed trade")
    remedies: Listed[RemedyFile] = Field((), description="inputs worth trying")
    examples: ExamplesFile = Field(description="plans that prove the rule")
    since: Annotated[str, StringConstraints(pattern=r"^[0-9]+\.[0-9]+\.[0-9]+$")] = Field(
        description="version in which it first stood"
    )
    trial: bool = Field(False, description="advisory for one release, whatever its level")


class SourceFile(Written):
    """One publication."""

    title: Sentence = Field(description="title and edition")
    published_by: Text = Field(description="who publishes it")
    where: Text = Field(description="where a reader can get it")


class Bibliography(Written):
    """rules/sources.yaml"""

    sources: dict[RuleName, SourceFile] = Field(description="publications by the name that rules cite")
