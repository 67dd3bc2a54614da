"""Every text that is said of a standard, with where it comes from: what a translation of it has to cover."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import Enum
from pathlib import Path

from attrs import evolve

from koirules.language import statements as st
from koirules.language import syntax
from koirules.languages import Tongue
from koirules.problems import Place
from koirules.standard.check.needs import expressions_of
from koirules.standard.check.ordering import parts_of
from koirules.standard.parts import Rules
from koirules.standard.titles import Titled
from koirules.values import frozen
from koirules.vocabulary.kinds import Label, words_of
from koirules.vocabulary.subject import Subject
from koirules.vocabulary.traits import Trait


class Source(Enum):
    """Who says a text."""

    TITLE = "rule file"
    REMARK = "remarks"
    VOCABULARY = "vocabulary"


@frozen
class Text:
    """A text. context: the name of its trait, where it is a word of one. titles: in languages in which it is given in place."""

    source: Source
    where: str
    text: str
    context: str = ""
    titles: Mapping[str, str] = {}

    def is_given(self, tongue: Tongue) -> bool:
        """Whether it is given in a language."""
        return tongue.language in self.titles or tongue.found(self.text, self.context) is not None


def texts_of(rules: Rules) -> tuple[Text, ...]:
    """The texts of a standard, each once: those of its rule files and of its bases, then those of its vocabulary."""
    found: dict[tuple[str, str], Text] = {}
    for one in (*_of_rules(rules), *_of_subject(rules.subject), *_of_traits(rules)):
        if any(letter.isalpha() for letter in one.text):
            key = one.context, one.text
            found[key] = evolve(one, titles={**one.titles, **found[key].titles}) if key in found else one
    return tuple(found.values())


def _of_rules(rules: Rules) -> Iterator[Text]:
    header = next(one.place for one in rules.source.statements if isinstance(one, st.Header))
    yield from _titled(rules.title, header)
    for base in rules.source.chain:
        yield from _titled(Titled(base.title.text, base.title.others), header)
    for note in rules.notes:
        yield _said(note, header)
    for setting in rules.settings.values():
        yield from _titled(setting.title, setting.place)
    for term in rules.terms.values():
        yield from _titled(term.title, term.place)
    for part in (*rules.sections, *rules.criteria, *rules.limits, *rules.grades, *rules.alerts, *rules.rounds):
        yield from _titled(part.title, part.place)
        say = getattr(part, "say", None)
        if say is not None:
            yield from _titled(say, part.place)
    for one in rules.rounds:
        yield _said(one.send, one.place)
    if rules.panel is not None and rules.panel.title.text != rules.panel.name:
        yield from _titled(rules.panel.title, rules.panel.place)
    for sample in rules.samples:
        yield _said(sample.title, sample.place)
        for name, reading in sample.record.items():
            if isinstance(reading, str) and isinstance(rules.traits[name].kind, Label):
                yield _said(reading, sample.place)
    for statement in rules.source.statements:
        for expression in expressions_of(statement):
            for inner in parts_of(expression):
                if isinstance(inner, syntax.Text):
                    yield _said(inner.text, inner.place)
    for place, remarks in rules.source.remarks.items():
        for remark in remarks:
            yield Text(Source.REMARK, _where(place), remark)


def _titled(titled: Titled, place: Place) -> Iterator[Text]:
    yield Text(Source.TITLE, _where(place), titled.text, titles=titled.others)


def _said(text: str, place: Place) -> Text:
    return Text(Source.TITLE, _where(place), text)


def _where(place: Place) -> str:
    return f"{Path(place.file).name}:{place.line}"


def _of_subject(subject: Subject) -> Iterator[Text]:
    nouns = (subject.one, subject.many, subject.with_article, subject.opening, subject.begins, subject.many_begin)
    counts = (f"{{number}} {subject.one}", f"{{number}} more {subject.one}")
    titles = (subject.in_hand, subject.at_work, subject.place, subject.places)
    cautions = (words for one in subject.cautions.values() for words in (*one.all, one.short))
    for text in (*nouns, *counts, *titles, *cautions):
        yield Text(Source.VOCABULARY, subject.one, text)


def _of_traits(rules: Rules) -> Iterator[Text]:
    for name in (*(rules.each_variety or (rules.variety or "",)), rules.stage or ""):
        yield Text(Source.VOCABULARY, name, name.replace("_", " "))
    for trait in rules.traits.values():
        yield from _of_trait(trait, Source.TITLE if trait.name in rules.house_traits else Source.VOCABULARY)


def _of_trait(trait: Trait, source: Source) -> Iterator[Text]:
    yield Text(source, trait.name, trait.title, trait.name, trait.titles)
    yield Text(source, trait.name, trait.describe)
    if trait.source:
        yield Text(source, trait.name, trait.source)
    for word in words_of(trait.kind):
        yield Text(source, trait.name, word.replace("_", " "), trait.name)
