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
    text: Sentence


class RemedyFile(Written):
    """An input worth trying, and which way."""

    change: FieldName = Field(description="a field of the row")
    go: Text = Field(description="smaller, larger, or the word to put there")


class ExampleFile(Written):
    """A base plan, a patch to it, and where the rule must then say what."""

    plan: Annotated[str, StringConstraints(pattern=r"^[a-z0-9-]+$", max_length=60)]
    patch: Listed[dict[str, Any]] = Field((), description="RFC 6902 operations")
    at: Text = Field(description="pointer of the row that is judged, or of its part")
    row: Text | None = Field(None, description="label of the row where several stand at one pointer")
    measure: Scalar | None = Field(None, description="what the rule must measure, worked out without this program")
    missing: Text | None = Field(None, description="the plan pointer that must be named as missing")
    by: Literal["hand", "source"] | None = Field(None, description="who says so")
    note: Text | None = None


class ExamplesFile(Written):
    """Examples are tests: each is inspected and must come out as it says."""

    breaks: Listed[ExampleFile] = Field(min_length=1)
    holds: Listed[ExampleFile] = Field(min_length=1)
    limit: Listed[ExampleFile] = ()
    unknown: Listed[ExampleFile] = ()


class RuleFile(Written):
    """One rule of the rulebook."""

    rule: RuleName
    trade: Text | None = Field(None, description="only where the folder does not say it")
    title: Sentence
    level: Level
    looks_at: Text
    when: Text | None = None
    require: RequireFile
    settings: dict[FieldName, SettingFile] = Field(default_factory=dict)
    says: Sentence
    why: Annotated[str, StringConstraints(min_length=60, max_length=2000, strip_whitespace=True)]
    sources: Listed[CitationFile] = Field(min_length=1)
    caution: CautionFile
    defer: Sentence
    remedies: Listed[RemedyFile] = ()
    examples: ExamplesFile
    since: Annotated[str, StringConstraints(pattern=r"^[0-9]+\.[0-9]+\.[0-9]+$")]
    trial: bool = False


class SourceFile(Written):
    """One publication."""

    title: Sentence
    published_by: Text
    where: Text = Field(description="where a reader can get it")


class Bibliography(Written):
    """rules/sources.yaml"""

    sources: dict[RuleName, SourceFile]
